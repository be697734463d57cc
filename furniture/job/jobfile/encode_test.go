package jobfile

import (
	"fmt"
	"strings"
	"testing"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/room"
	"bunkwright/room/length"
)

// written is the job of TestEncode as it must be written, by hand.
const written = `# mine
format = 1
unit = "in"
places = ["US", "CA"]

[readings]
by = "Ida"
how = "once"

[room]
outline = "ABCD"

[[wall]]
key = "AB"
length = ["138-1/8 in", { read = "138.3 in light", how = "", by = "", u = "1/4 in" }]

[[wall.stud]]
at = "0 in"

[[sleeper]]
name = "O'Neil \"Bo\""
age = 7.5
`

// TestEncode writes what is set and nothing else, in the order of the table: an embedded quote, a length that no tape of inches shows
// (138.3 in), and a reading that does not share what the others do.
func TestEncode(t *testing.T) {
	in := length.Inch
	usual := room.Reading{Value: 138*in + in/8, How: room.Once, By: "Ida"}
	j := &job.Job{
		Format: 1, Unit: "in", Places: []string{"US", "CA"}, Readings: job.Habits{By: "Ida", How: room.Once},
		Room: room.Room{Outline: "ABCD", Walls: []room.Wall{{Key: "AB",
			Length: room.Measure{usual, {Value: 1383 * in / 10, Light: -2, U: in / 4}},
			Studs:  []room.Stud{{At: room.Measure{{How: room.Once, By: "Ida"}}}},
		}}},
		Sleepers: []job.Sleeper{{Name: `O'Neil "Bo"`, Age: 7.5}},
		Comments: map[string]string{"format": "mine"},
	}
	if got := string(Encode(j)); got != written {
		t.Errorf("got:\n%s\nwant:\n%s", got, written)
	}
}

// TestStock writes boards so that their name alone tells their size, or the size beside it.
func TestStock(t *testing.T) {
	mm, in := length.Millimetre, length.Inch
	for _, c := range []struct {
		s      furniture.Stock
		inches string
		mm     string
	}{
		{furniture.Stock{Name: "2x4", Thick: 3 * in / 2, Wide: 7 * in / 2}, `"2x4"`, `"2x4"`},
		{furniture.Stock{Name: "2x4", Thick: 37 * mm, Wide: 88 * mm}, `{ sold = "2x4", actual = "37 x 88 mm" }`, `{ sold = "2x4", actual = "37 x 88 mm" }`},
		{furniture.Stock{Name: "45x95", Thick: 45 * mm, Wide: 95 * mm}, `{ sold = "45x95", actual = "45 x 95 mm" }`, `"45x95"`},
		{furniture.Stock{Thick: in, Wide: 5 * in / 2}, `{ actual = "1 x 2-1/2 in" }`, `{ actual = "25.4 x 63.5 mm" }`},
		{furniture.Stock{Name: "plywood 1/2 in", Thick: in / 2, Sheet: true}, `"plywood 1/2 in"`, `"plywood 1/2 in"`},
		{furniture.Stock{Name: "plywood 1/2 in", Thick: 15 * in / 32, Sheet: true}, `{ sold = "plywood 1/2 in", actual = "15/32 in" }`,
			`{ sold = "plywood 1/2 in", actual = "11.90625 mm" }`},
	} {
		for unit, want := range map[string]string{"in": c.inches, "mm": c.mm} {
			text := string(Encode(&job.Job{Format: 1, Unit: unit, Bed: bunk.Sizes{Post: c.s}}))
			if !strings.Contains(text, "post = "+want+"\n") {
				t.Errorf("%+v in %s: want %s, got\n%s", c.s, unit, want, text)
			}
		}
	}
}

// TestNearest counts slips by hand: one for two letters swapped, one for each letter put in, left out or changed.
func TestNearest(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want int
	}{{"lenght", "length", 1}, {"sil", "sill", 1}, {"width", "wide", 2}, {"", "at", 2}, {"at", "at", 0}, {"hinge", "swing", 3}} {
		if got := distance(c.a, c.b); got != c.want || distance(c.b, c.a) != got {
			t.Errorf("%s to %s: %d, want %d", c.a, c.b, got, c.want)
		}
	}
	if got := nearest("colour", []string{"sill", "head"}); got != "" {
		t.Errorf("colour is taken for %s", got)
	}
}

// TestManyComplaints prints the first and the number of the rest.
func TestManyComplaints(t *testing.T) {
	var b strings.Builder
	b.WriteString("format = 1\nunit = \"in\"\n")
	for i := range 300 {
		fmt.Fprintf(&b, "q%d = 1\n", i)
	}
	_, err := Load([]byte(b.String()), "x.toml")
	lines := strings.Split(err.Error(), "\n")
	if len(lines) != mostPrinted+1 || lines[mostPrinted] != "x.toml: and 100 more" {
		t.Errorf("%d lines, the last %q", len(lines), lines[len(lines)-1])
	}
}

// TestZeroIsNotUnset: a bolt head that is flush stands out 0 mm, which is not the same as one that nobody looked at; both come back as
// they were saved.
func TestZeroIsNotUnset(t *testing.T) {
	for _, want := range []length.Maybe{{}, length.Some(0), length.Some(3 * length.Millimetre)} {
		j := &job.Job{Format: 1, Unit: "mm", Places: []string{"AU"}, Room: room.Room{Outline: "ABCD"}, Bed: bunk.Sizes{BoltStandOff: want}}
		data := Encode(j)
		f, err := Load(data, "flush.toml")
		if err != nil {
			t.Errorf("%+v: %v", want, err)
			continue
		}
		if got := f.Job.Bed.BoltStandOff; got != want {
			t.Errorf("%+v came back as %+v:\n%s", want, got, data)
		}
	}
}
