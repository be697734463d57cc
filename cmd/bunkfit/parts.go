package main

import (
	"errors"
	"fmt"
	"io"

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
		return exitSettled, furniture.ListCSV(s.out, bed.Parts, unit)
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
	fmt.Fprintf(w, "%s: %d boards\n\n%s", name, len(bed.Parts), furniture.ListText(bed.Parts, unit))
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
