package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math"
	"os"
	"path/filepath"

	"bunkwright/room/survey"
)

var solveCommand = command{
	name:    "solve",
	args:    "NETWORK-FOLDER [--json] [--tau]",
	summary: "adjust a network of distances and angles (points.csv, observations.csv)",
	example: "bunkfit solve room/survey/testdata/networks/n1_braced_square",
}

func init() { solveCommand.run = runSolve }

// The JSON of solve, in the folder's own unit; angles in arc seconds.
type (
	jsonSolve struct {
		Points       []jsonPoint       `json:"points"`
		S0           float64           `json:"s0"`
		F            int               `json:"f"`
		VPV          float64           `json:"vpv"`
		Observations []jsonObservation `json:"observations"`
		Slips        []jsonSlip        `json:"slips"`
	}
	jsonSlip struct {
		Readings []string  `json:"readings"` // the likeliest first; one: it is found
		Errors   []float64 `json:"errors"`   // how far each is off, if it alone is
	}
	jsonPoint struct {
		ID string  `json:"id"`
		X  float64 `json:"x"`
		Y  float64 `json:"y"`
		SX float64 `json:"sx"`
		SY float64 `json:"sy"`
	}
	jsonObservation struct {
		ID         string   `json:"id"`
		Residual   float64  `json:"residual"`
		Redundancy float64  `json:"redundancy"`
		W          *float64 `json:"w"`
		Tau        *float64 `json:"tau"`
		Error      *float64 `json:"error"`    // how far it is off, if it alone is
		Smallest   *float64 `json:"smallest"` // the smallest slip that would be noticed
	}
)

func runSolve(s *session, args []string) (int, error) {
	f := s.flags(solveCommand)
	asJSON := f.Bool("json", false, "print as JSON")
	tau := f.Bool("tau", false, "the sds are only relative weights: look for wrong readings by tau")
	words, err := parse(f, args)
	if err != nil {
		return exitUsage, err
	}
	if len(words) != 1 {
		return exitUsage, fmt.Errorf("solve wants one folder\nhint: %s", solveCommand.example)
	}
	network, err := readNetwork(words[0])
	if err != nil {
		return exitUsage, err
	}
	adjusted, err := survey.Adjust(network)
	if err != nil {
		return exitUsage, fmt.Errorf("%s: %w", words[0], err)
	}
	found, err := survey.FindSlipsIn(network, survey.Testing{Tau: *tau})
	if err != nil {
		return exitUsage, fmt.Errorf("%s: %w", words[0], err)
	}
	if *asJSON {
		return exitSettled, writeJSON(s.out, solveJSON(adjusted, found.Misfits))
	}
	printSolved(s.out, adjusted, found.Misfits)
	return exitSettled, nil
}

// readNetwork reads a folder; where a file is not there it says which, and what the folder is to hold.
func readNetwork(name string) (survey.Network, error) {
	network, err := survey.ReadNetwork(os.DirFS(name))
	var path *fs.PathError
	if !errors.As(err, &path) {
		if err != nil {
			err = fmt.Errorf("%s: %w", name, err)
		}
		return network, err
	}
	why := "cannot be read: " + path.Err.Error()
	if errors.Is(err, fs.ErrNotExist) {
		why = "no such file"
	}
	return network, fmt.Errorf("%s: %s\nhint: want a folder that holds points.csv and observations.csv", filepath.Join(name, path.Path), why)
}

func solveJSON(a survey.Adjusted, slips []survey.Misfit) jsonSolve {
	out := jsonSolve{S0: a.S0, F: a.F, VPV: a.VPV, Points: []jsonPoint{}, Observations: []jsonObservation{}, Slips: []jsonSlip{}}
	for _, p := range a.Points {
		out.Points = append(out.Points, jsonPoint{p.ID, p.X, p.Y, p.SX, p.SY})
	}
	for _, c := range a.Observations {
		checked := c.Checked() && !math.IsInf(c.Tau, 0) && !math.IsNaN(c.Tau)
		out.Observations = append(out.Observations, jsonObservation{c.Key, c.Residual, c.Redundancy, number(checked, c.W), number(checked, c.Tau), number(checked, c.Error), number(checked, c.Smallest)})
	}
	for _, m := range slips {
		var slip jsonSlip
		for _, one := range m.Suspects {
			slip.Readings, slip.Errors = append(slip.Readings, a.Observations[one.Equation].Key), append(slip.Errors, one.Off)
		}
		out.Slips = append(out.Slips, slip)
	}
	return out
}

func printSolved(w io.Writer, a survey.Adjusted, slips []survey.Misfit) {
	fmt.Fprintf(w, "%-12s %16s %16s %10s %10s\n", "point", "x", "y", "sx", "sy")
	for _, p := range a.Points {
		fmt.Fprintf(w, "%-12s %16.4f %16.4f %10.5f %10.5f\n", p.ID, p.X, p.Y, p.SX, p.SY)
	}
	fmt.Fprintf(w, "\ns0 %.5f, %d more than needed\n\n%-8s %12s %12s %10s %10s\n", a.S0, a.F, "reading", "residual", "redundancy", "w", "tau")
	for _, c := range a.Observations {
		if !c.Checked() {
			fmt.Fprintf(w, "%-8s %12.6f %12.6f   not checked by the others\n", c.Key, c.Residual, c.Redundancy)
			continue
		}
		fmt.Fprintf(w, "%-8s %12.6f %12.6f %10.4f %10.4f\n", c.Key, c.Residual, c.Redundancy, c.W, c.Tau)
	}
	for _, m := range slips {
		fmt.Fprintln(w, slipWords(a, m))
	}
}

// slipWords says which reading is off, or which of several that cannot be told apart.
func slipWords(a survey.Adjusted, m survey.Misfit) string {
	text := "\noff by, if it alone is:"
	if len(m.Suspects) > 1 {
		text = "\none of these is off, by, if it alone is:"
	}
	for _, one := range m.Suspects {
		text += fmt.Sprintf(" %s %.4f", a.Observations[one.Equation].Key, one.Off)
	}
	return text
}
