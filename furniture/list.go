package furniture

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"

	"bunkwright/room/length"
)

// A Listed is one line of a parts list: how many parts are cut alike, and their words and sizes as people read them.
type Listed struct {
	Count, Part, From, Section, Length, When string
	Of                                       Alike
}

// ListHead names the columns of a parts list.
var ListHead = Listed{Count: "count", Part: "part", From: "cut from", Section: "section", Length: "length", When: "when"}

// Columns returns the texts of the line from left to right.
func (l Listed) Columns() []string {
	return []string{l.Count, l.Part, l.From, l.Section, l.Length, l.When}
}

// ListSet says how each column is set: < left, > right.
const ListSet = "><<<><"

// List returns the parts list of some parts, those cut alike in one line, sizes rounded as a tape shows them.
func List(parts []Part, unit length.Unit) []Listed {
	show := func(l length.Length) string { return length.Format(l, length.Style{Unit: unit}) }
	var out []Listed
	for _, a := range CountAlike(parts) {
		p := a.Part
		section := show(p.Stock.Thick) + " x " + show(p.Width())
		out = append(out, Listed{strconv.Itoa(a.Count), p.Role, p.Stock.Name, section, show(p.Length), p.Class.String(), a})
	}
	return out
}

// ListText is the parts list as lines of text under its head.
func ListText(parts []Part, unit length.Unit) string {
	rows := [][]string{ListHead.Columns()}
	for _, l := range List(parts, unit) {
		rows = append(rows, l.Columns())
	}
	return inColumns(rows, ListSet)
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

// ListCSV writes the parts list as comma-separated values, sizes exact, with the ids of the parts.
func ListCSV(w io.Writer, parts []Part, unit length.Unit) error {
	rows := [][]string{{"count", "part", "cut from", "thick", "wide", "length", "when", "ids"}}
	exact := func(l length.Length) string { return length.Exact(l, unit) }
	for _, a := range CountAlike(parts) {
		p := a.Part
		rows = append(rows, []string{strconv.Itoa(a.Count), p.Role, p.Stock.Name, exact(p.Stock.Thick), exact(p.Width()), exact(p.Length), p.Class.String(), a.IDs()})
	}
	return csv.NewWriter(w).WriteAll(rows)
}
