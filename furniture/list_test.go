package furniture

import (
	"strings"
	"testing"

	"bunkwright/room/length"
)

// TestInColumns sets a name longer than its heading: no row leaves its columns.
func TestInColumns(t *testing.T) {
	rows := [][]string{{"count", "cut from", "length"}, {"4", "2x4", `5' 6"`}, {"10", "plywood ½ in", `6"`}}
	want := "count  cut from      length\n" +
		"    4  2x4            5' 6\"\n" +
		"   10  plywood ½ in      6\"\n"
	if got := inColumns(rows, "><>"); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}

// TestList counts what is cut alike: two posts of 66 in from a dressed 2x4 (1-1/2 x 3-1/2 in, PS 20) and a shorter one.
func TestList(t *testing.T) {
	stud := Stock{Name: "2x4", Thick: 3 * length.Inch / 2, Wide: 7 * length.Inch / 2}
	post := func(id string, long length.Length) Part {
		return Part{ID: id, Role: "post", Stock: stud, Length: long}
	}
	parts := []Part{post("a", 66*length.Inch), post("b", 60*length.Inch), post("c", 66*length.Inch)}
	var csv strings.Builder
	if err := ListCSV(&csv, parts, length.Inches); err != nil {
		t.Fatal(err)
	}
	want := "count,part,cut from,thick,wide,length,when,ids\n" +
		"2,post,2x4,1-1/2 in,3-1/2 in,66 in,cut now,a c\n1,post,2x4,1-1/2 in,3-1/2 in,60 in,cut now,b\n"
	if csv.String() != want {
		t.Errorf("got\n%s\nwant\n%s", csv.String(), want)
	}
	got := strings.Split(ListText(parts, length.Inches), "\n")
	if len(got) != 4 || strings.Join(strings.Fields(got[1]), " ") != `2 post 2x4 1-1/2" x 3-1/2" 5' 6" cut now` {
		t.Errorf("got %q", got)
	}
}
