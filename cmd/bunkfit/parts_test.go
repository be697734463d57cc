package main

import "testing"

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
