package jobfile

import (
	_ "embed"
	"slices"
	"strings"
	"sync"
)

//go:embed keys.txt
var keysText string

// A Row says what one key of a job file means.
type Row struct {
	Key     string   `json:"key"` // with its tables: "wall.stud.at"; "*.note" for a key that every table may have
	Meaning string   `json:"meaning"`
	Unit    Unit     `json:"unit"`     // what its value is
	Words   []string `json:"words"`    // the words it may be, nil for any
	Many    bool     `json:"readings"` // may be a list of readings, each with who read it and how it is known
	Default string   `json:"default"`  // what is taken where it is missing; Required where it may not be
	Example string   `json:"example"`  // a line of a file that is right
}

// Required stands for the default of a key that may not be missing.
const Required = "required"

// A Unit says what kind of value a key has, and so how it is read and checked.
type Unit string

// Units of values. The lengths differ in what is plausible and in whether they may be 0.
const (
	Table    Unit = "table"
	List     Unit = "list"    // a table that may stand several times
	Answers  Unit = "answers" // a table of yes and no
	Verbatim Unit = "as written"
	KeyList  Unit = "keys"

	Text      Unit = "text"
	Date      Unit = "date"
	Word      Unit = "word"
	TrueFalse Unit = "true or false"
	Count     Unit = "count"
	Degrees   Unit = "degrees"
	Years     Unit = "years"

	Size       Unit = "length"
	FromZero   Unit = "length or 0"
	WallLength Unit = "wall length"
	RoomHeight Unit = "room height"
	Sizes      Unit = "lengths"
	Section    Unit = "section"
	Stock      Unit = "stock"
	Fastener   Unit = "fastener"

	Name       Unit = "name" // of an element of a list
	Outline    Unit = "corner letters"
	CornerKey  Unit = "corner"
	Corners    Unit = "corners" // some letters of the outline
	CornerPair Unit = "two corners"
	WallKey    Unit = "wall"
	WallEnd    Unit = "wall end"
	StudKey    Unit = "stud"
	Places     Unit = "places"
	Things     Unit = "things"
)

// anyTable begins the key of a row that holds for every table.
const anyTable = "*."

// rowTable is the table of keys as the loader uses it.
type rowTable struct {
	rows []Row
	at   map[string]int // place of a row by its key
}

var rowsOnce = sync.OnceValue(func() rowTable {
	t := rowTable{at: map[string]int{}}
	for line := range strings.Lines(keysText) {
		line = strings.TrimRight(line, "\n")
		if line == "" || strings.HasPrefix(line, "# ") {
			continue
		}
		r := parseRow(line)
		t.at[r.Key] = len(t.rows)
		t.rows = append(t.rows, r)
	}
	return t
})

// parseRow panics on a line that is not five columns: the table travels inside the program.
func parseRow(line string) Row {
	c := strings.Split(line, "|")
	if len(c) != 5 {
		panic("jobfile: keys.txt: " + line)
	}
	for i := range c {
		c[i] = strings.TrimSpace(c[i])
	}
	return Row{Key: c[0], Unit: Unit(c[1]), Default: c[2], Example: c[3], Meaning: c[4]}
}

// row returns the row of a key and its place in the table.
func (t rowTable) row(key string) (r Row, place int, ok bool) {
	if place, ok = t.at[key]; ok {
		return t.rows[place], place, true
	}
	last := key[strings.LastIndexByte(key, '.')+1:]
	place, ok = t.at[anyTable+last]
	if !ok {
		return Row{}, len(t.rows), false
	}
	return t.rows[place], len(t.rows), true // a note stands last in its table
}

// Keys returns every key in the order in which a file is written, with its words and its default.
func Keys() []Row { return slices.Clone(described()) }

// Find returns the row of a key of a job, such as "wall.AB.length" or "window.garden.sill": names of elements and numbers are left out of
// the keys of rows.
func Find(key string) (Row, bool) {
	parts := strings.Split(key, ".")
	for _, cut := range [][2]int{{0, 0}, {1, 2}, {2, 3}} { // no element, one in the first list, one in the second table
		if cut[1] > len(parts) {
			continue
		}
		if i, ok := rowsOnce().at[strings.Join(append(slices.Clone(parts[:cut[0]]), parts[cut[1]:]...), ".")]; ok {
			return rowsOnce().rows[i], true
		}
	}
	return Row{}, false
}
