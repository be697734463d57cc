package view

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/length"
)

var update = flag.Bool("update", false, "write the golden dumps anew; look at the drawings before")

// goldens are the drawings that somebody has looked at: a plan and the bed's wall of every sample, and one of each kind of sheet.
func goldens(t *testing.T, sampleName string) []named {
	j := sample(t, sampleName)
	s, answers := asked(t, &j)
	o := screen
	o.Unit = length.Inches
	if j.Unit == "mm" {
		o.Unit = length.Millimetres
	}
	base := strings.TrimSuffix(sampleName, ".toml")
	list := []named{
		{base + "-plan", Plan(s, answers, o)},
		{base + "-wall-" + j.Place.Wall, Wall(s, answers, j.Place.Wall, o)},
	}
	switch base {
	case "town-house":
		return append(list, goldenSheets(s, answers, base, SheetOptions{Unit: o.Unit, Date: "June 9, 2027"}, "Room from above", "Parts", "Caution")...)
	case "attic":
		return append(list, goldenSheets(s, answers, base, SheetOptions{Paper: A4, Portrait: true, Unit: o.Unit, Date: "2027-03-20"}, "Room from above", "Wall C to D")...)
	}
	return list
}

func goldenSheets(s *fit.Scene, answers []fit.Answer, base string, o SheetOptions, titles ...string) []named {
	var list []named
	for _, title := range titles {
		for _, sh := range Sheets(s, answers, o) {
			if sh.Title == title {
				list = append(list, named{base + "-sheet-" + strings.ReplaceAll(strings.ToLower(title), " ", "-"), sh})
				break
			}
		}
	}
	return list
}

func TestGoldenDumps(t *testing.T) {
	for _, name := range sampleNames(t) {
		for _, g := range goldens(t, name) {
			compare(t, filepath.Join("testdata", g.name+".golden"), g.d)
		}
	}
}

// compare holds a drawing against the dump in a file and tells the first line that differs.
func compare(t *testing.T, file string, d render.Drawing) {
	t.Helper()
	got := d.Dump()
	if *update {
		if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	have, want := strings.Split(got, "\n"), strings.Split(string(data), "\n")
	for i := range max(len(have), len(want)) {
		if at(have, i) != at(want, i) {
			t.Errorf("%s:%d: %d lines, want %d\n got %.300s\nwant %.300s", file, i+1, len(have), len(want), at(have, i), at(want, i))
			return
		}
	}
}

func at(lines []string, i int) string {
	if i < len(lines) {
		return lines[i]
	}
	return "(no more lines)"
}
