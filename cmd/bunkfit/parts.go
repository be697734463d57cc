package main

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room/length"
)

var partsCommand = command{
	name:    "parts",
	args:    "JOB.toml [--json | --csv]",
	summary: "list the boards of the bed",
	example: "bunkfit parts samples/town-house.toml",
}

func init() { partsCommand.run = runParts }

func runParts(s *session, args []string) (int, error) {
	f := s.flags(partsCommand)
	asJSON := f.Bool("json", false, "print every part and joint as JSON")
	asCSV := f.Bool("csv", false, "print the list as comma-separated values")
	words, err := parse(f, args)
	if err != nil {
		return exitUsage, err
	}
	if len(words) != 1 {
		return exitUsage, fmt.Errorf("parts wants one job file\nhint: %s", partsCommand.example)
	}
	file, err := open(words[0])
	if err != nil {
		return exitUsage, err
	}
	bed, err := bunk.Build(file.Job.Bed)
	if err != nil {
		return exitUsage, notBuilt(file, err)
	}
	unit := unitOf(file.Job.Unit)
	switch {
	case *asJSON:
		return exitSettled, writeJSON(s.out, partsJSON(bed))
	case *asCSV:
		return exitSettled, partsCSV(s.out, furniture.CountAlike(bed.Parts), unit)
	}
	printParts(s.out, file.Job.Name, bed, unit)
	return exitSettled, nil
}

// notBuilt says which sizes no bed can be built of, each with its line.
func notBuilt(file *jobfile.File, err error) error {
	text := "the bed cannot be built:"
	for _, p := range job.SizeProblems(&file.Job, err) {
		text += fmt.Sprintf("\n%s:%d: %s", file.Name, file.Line(p.Key), p)
	}
	return errors.New(text)
}

func printParts(w io.Writer, name string, bed bunk.Bed, unit length.Unit) {
	show := func(l length.Length) string { return length.Format(l, length.Style{Unit: unit}) }
	rows := [][]string{{"count", "part", "cut from", "section", "length", "when"}}
	for _, a := range furniture.CountAlike(bed.Parts) {
		p := a.Part
		section := show(p.Stock.Thick) + " x " + show(p.Width())
		rows = append(rows, []string{strconv.Itoa(a.Count), p.Role, p.Stock.Name, section, show(p.Length), p.Class.String()})
	}
	fmt.Fprintf(w, "%s: %d boards\n\n%s", name, len(bed.Parts), inColumns(rows, "><<<><"))
}

// inColumns writes rows below each other, each column as wide as its widest text, with < set left and > set right.
func inColumns(rows [][]string, set string) string {
	wide := make([]int, len(set))
	for _, row := range rows {
		for i, text := range row {
			wide[i] = max(wide[i], utf8.RuneCountInString(text))
		}
	}
	var b strings.Builder
	for _, row := range rows {
		var cells []string
		for i, text := range row {
			fill := strings.Repeat(" ", wide[i]-utf8.RuneCountInString(text))
			if set[i] == '>' {
				text, fill = fill, text
			}
			cells = append(cells, text+fill)
		}
		b.WriteString(strings.TrimRight(strings.Join(cells, "  "), " ") + "\n")
	}
	return b.String()
}

func partsCSV(w io.Writer, alike []furniture.Alike, unit length.Unit) error {
	out := csv.NewWriter(w)
	rows := [][]string{{"count", "part", "cut from", "thick", "wide", "length", "when", "ids"}}
	for _, a := range alike {
		p := a.Part
		exact := func(l length.Length) string { return length.Exact(l, unit) }
		rows = append(rows, []string{fmt.Sprint(a.Count), p.Role, p.Stock.Name, exact(p.Stock.Thick), exact(p.Width()), exact(p.Length), p.Class.String(), a.IDs()})
	}
	return out.WriteAll(rows)
}

// The JSON of parts: lengths in mm, positions in the bed's own axes (or those of the wall for what hangs on it).
type (
	jsonParts struct {
		Parts  []jsonPart  `json:"parts"`
		Joints []jsonJoint `json:"joints"`
	}
	jsonPart struct {
		ID       string     `json:"id"`
		Role     string     `json:"role"`
		Name     string     `json:"name"`
		Assembly string     `json:"assembly"`
		Stock    string     `json:"stock"`
		Thick    float64    `json:"thick"`
		Wide     float64    `json:"wide"`
		Length   float64    `json:"length"`
		Sheet    bool       `json:"sheet"`
		On       string     `json:"on"`
		Centre   [3]float64 `json:"centre"`
		Along    [3]float64 `json:"along"`
		Across   [3]float64 `json:"across"`
		FaceUp   string     `json:"face_up"`
		Mirror   string     `json:"mirror"`
		Cuts     []jsonCut  `json:"cuts"`
		Holes    []jsonHole `json:"holes"`
		Class    string     `json:"class"`
		After    string     `json:"after"`
	}
	jsonCut struct {
		Kind  string  `json:"kind"`
		End   int     `json:"end"`
		Angle float64 `json:"angle"`
		Along float64 `json:"along"`
		Deep  float64 `json:"deep"`
	}
	jsonHole struct {
		Joint  string  `json:"joint"`
		Along  float64 `json:"along"`
		Across float64 `json:"across"`
		Dia    float64 `json:"dia"`
		Depth  float64 `json:"depth"`
	}
	jsonJoint struct {
		ID         string `json:"id"`
		A          string `json:"a"`
		B          string `json:"b"`
		FaceA      string `json:"face_a"`
		FaceB      string `json:"face_b"`
		Glued      bool   `json:"glued"`
		Fastener   string `json:"fastener"`
		Count      int    `json:"count"`
		From       string `json:"from"`
		ComesApart bool   `json:"comes_apart"`
		Carries    bool   `json:"carries"`
	}
)

func partsJSON(bed bunk.Bed) jsonParts {
	out := jsonParts{Parts: []jsonPart{}, Joints: []jsonJoint{}}
	for _, p := range bed.Parts {
		out.Parts = append(out.Parts, partJSON(p))
	}
	for _, j := range bed.Joints {
		out.Joints = append(out.Joints, jsonJoint{j.ID, j.A, j.B, j.FaceA, j.FaceB, j.Glued, j.Fastener, j.Count, j.From, j.ComesApart, j.Carries})
	}
	return out
}

func partJSON(p furniture.Part) jsonPart {
	out := jsonPart{
		ID: p.ID, Role: p.Role, Name: p.Name, Assembly: p.Assembly, Stock: p.Stock.Name, Thick: p.Stock.Thick.MM(), Wide: p.Width().MM(),
		Length: p.Length.MM(), Sheet: p.Stock.Sheet, On: [...]string{"bed", "wall"}[p.Frame], FaceUp: p.FaceUp, Mirror: p.Mirror,
		Centre: [3]float64{p.Box.C.X, p.Box.C.Y, p.Box.C.Z}, Along: [3]float64{p.Box.Ax[0].X, p.Box.Ax[0].Y, p.Box.Ax[0].Z},
		Across: [3]float64{p.Box.Ax[1].X, p.Box.Ax[1].Y, p.Box.Ax[1].Z}, Cuts: []jsonCut{}, Holes: []jsonHole{}, Class: p.Class.String(), After: p.After,
	}
	for _, c := range p.Cuts {
		out.Cuts = append(out.Cuts, jsonCut{string(c.Kind), c.End, c.Angle, c.Along.MM(), c.Deep.MM()})
	}
	for _, h := range p.Holes {
		out.Holes = append(out.Holes, jsonHole{h.Joint, h.Along.MM(), h.Across.MM(), h.Dia.MM(), h.Depth.MM()})
	}
	return out
}
