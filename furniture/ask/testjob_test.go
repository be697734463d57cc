package ask

import (
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/samples"
)

// plain is a room of 12 ft by 10 ft with a door, two windows on one wall, and a bed with a wall shelf: read once by Wim.
const plain = `format = 1
name = "Plain"
unit = "in"
places = ["US"]
[readings]
by = "Wim"
when = "2027-04-11"
[room]
outline = "ABCD"
absent = ["heater", "register", "outlet", "switch", "thermostat", "fan", "light", "hatch", "beam", "furniture", "cord"]
[floor]
cover = "hard"
ground = true
[[wall]]
key = "AB"
length = "143-7/8 in"
[[wall]]
key = "BC"
length = "119-1/4 in"
[[wall]]
key = "CD"
kind = "wood studs"
build_up = "1/2 in"
baseboard_high = "3-1/2 in"
baseboard_deep = "1/2 in"
[[ceiling]]
key = "main"
[[ceiling.height]]
key = "A"
corner = "A"
height = "95-3/4 in"
[[door]]
key = "hall"
wall = "AB"
from = "B"
at = "5 in"
wide = "30 in"
kind = "swings"
hinge = "B"
swing = "in"
leaves = 1
leads_to = "hall"
[[window]]
key = "yard"
wall = "BC"
from = "C"
at = "8 in"
kind = "fixed"
[[window]]
key = "street"
wall = "BC"
from = "B"
at = "10 in"
kind = "fixed"
[bed]
[bed.upper]
height = "55 in"
mattress_long = "75 in"
mattress_wide = "38 in"
mattress_thick = "6 in"
head = "left"
[bed.lower]
height = "13 in"
mattress_long = "75 in"
mattress_wide = "38 in"
mattress_thick = "6 in"
head = "left"
[bed.guard]
top = "66-3/4 in"
rows = 1
[place]
wall = "CD"
from = "D"
along = "6 in"
[[sleeper]]
name = "Maren"
age = 9
sex = "girl"
bed = "upper"
`

// shelf needs studs.
const shelf = `[[bed.shelf]]
for = "upper"
height = "89 in"
from = "14 in"
long = "36 in"
`

func load(t testing.TB, text string) *job.Job {
	t.Helper()
	f, err := jobfile.Load([]byte(text), "job.toml")
	if err != nil {
		t.Fatal(err)
	}
	return &f.Job
}

func sampleJob(t testing.TB, name string) *job.Job {
	t.Helper()
	data, err := samples.Files.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return load(t, string(data))
}

func sampleNames(t testing.TB) []string {
	t.Helper()
	files, err := samples.Files.ReadDir(".")
	if err != nil {
		t.Fatal(err)
	}
	var out []string
	for _, f := range files {
		out = append(out, f.Name())
	}
	return out
}

func sheetOf(t testing.TB, j *job.Job, o Options) Sheet {
	t.Helper()
	s, err := New(j, o)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func keysOf(s Sheet) []string {
	var out []string
	for _, c := range s.Cards() {
		out = append(out, c.Key)
	}
	return out
}
