package jobfile

import (
	"fmt"
	"strings"
	"sync"

	"bunkwright/furniture/bunk"
	"bunkwright/room/length"
	"bunkwright/room/survey"
)

// described is the table of keys with the words and the defaults that stand in the record's own tags and in the bed's list.
var described = sync.OnceValue(func() []Row {
	t := rowsOnce()
	rows := append([]Row(nil), t.rows...)
	fill := func(_ *table, f *field) {
		if i, there := t.at[f.path]; there {
			rows[i].Words = f.words
			rows[i].Default = defaultOf(f)
			_, rows[i].Many = f.kind.(measureKind)
		}
	}
	whole().each(fill)
	readings().each(fill)
	return rows
})

// defaultOf returns what is taken where a key is missing.
func defaultOf(f *field) string {
	if f.row.Default != "" {
		return f.row.Default
	}
	if value, within, ok := survey.Default(f.tag); ok {
		return length.Exact(value, length.Inches) + ", give or take " + length.Exact(within, length.Inches)
	}
	for _, d := range bunk.Defaults() {
		if d.Key == f.path {
			return d.Value()
		}
	}
	return ""
}

// Explain returns every key with its meaning, unit, default and an example, as text for people.
func Explain() string {
	var b strings.Builder
	for _, r := range Keys() {
		fmt.Fprintf(&b, "%s\n    %s\n    unit: %s\n", r.Key, r.Meaning, r.unitText())
		if r.Default != "" {
			fmt.Fprintf(&b, "    default: %s\n", r.Default)
		}
		fmt.Fprintf(&b, "    example: %s\n", r.Example)
	}
	return b.String()
}

// unitText says what a value may be: its words, else its unit with how it is written.
func (r Row) unitText() string {
	if r.Words != nil {
		return "one of " + anyOf(r.Words)
	}
	text := string(r.Unit)
	if hint := unitHints[r.Unit]; hint != "" {
		text += ", " + hint
	}
	if r.Many {
		text += "; one reading or a list of them"
	}
	return text
}

var unitHints = map[Unit]string{
	Size:       "in quotes, in tape notation or mm",
	FromZero:   "in quotes, in tape notation or mm",
	WallLength: "in quotes; a number alone is taken in the job's unit from 2 ft to 40 ft",
	RoomHeight: "in quotes; a number alone is taken in the job's unit from 6 ft to 12 ft",
	Sizes:      "in quotes, in a list",
	Stock:      `"2x4" for its dressed size, "45x95 mm" for an actual one, "plywood 1/2 in"`,
	Section:    "thickness x width, or the thickness of a sheet",
	Degrees:    "a number",
	Years:      "a number",
	Count:      "a whole number",
	WallEnd:    "the letter of the corner there",
	WallKey:    "its two corner letters, clockwise",
	Date:       "year-month-day, in quotes or as a TOML date",
	Places:     "a list of US, EU, FR, UK, CA, AU, NZ",
	Things:     "a list of words",
	Answers:    "each key an id, each value yes or no",
	Verbatim:   "anything",
	KeyList:    "a list of keys",
}
