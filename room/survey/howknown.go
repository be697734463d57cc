package survey

import (
	_ "embed"
	"encoding/csv"
	"math"
	"strconv"
	"strings"

	"bunkwright/room"
)

// howKnownCSV holds the default standard uncertainty of a reading by how it is known (a proposal of this project).
//
//go:embed how_known.csv
var howKnownCSV string

// Uncertainties are the standard uncertainties of readings by how they are known, in mm, and of what is taken for granted.
type Uncertainties struct {
	Reading   map[room.How]float64
	StudTwice float64 // stud centre found twice
	StudOnce  float64 // found by one sign, or only assumed to be there
	StudBay   float64 // counted off from a found one, times the root of the number of bays
	Lean      float64 // of a wall that nobody plumbed: mm per mm of height
	Square    float64 // of a corner that nobody measured, degrees
}

// leanOver is the height over which the table states the lean: 32 in.
const leanOver = 32 * 25.4

// DefaultUncertainties returns the table of how_known.csv.
func DefaultUncertainties() Uncertainties {
	table := map[string]float64{}
	rows := csv.NewReader(strings.NewReader(howKnownCSV))
	rows.Comment = '#'
	records, err := rows.ReadAll()
	if err != nil {
		panic("survey: how_known.csv: " + err.Error())
	}
	for _, r := range records[1:] {
		inches, err := strconv.ParseFloat(r[3], 64)
		if err != nil {
			panic("survey: how_known.csv: " + err.Error())
		}
		table[r[0]] = inches
	}
	u := Uncertainties{
		Reading:   map[room.How]float64{},
		StudTwice: table["stud-twice"] * 25.4,
		StudOnce:  table["stud-once"] * 25.4,
		StudBay:   table["stud-spacing"] * 25.4,
		Lean:      table["lean"] * 25.4 / leanOver,
		Square:    table["square"],
	}
	for _, how := range room.Hows {
		u.Reading[how] = table[string(how)] * 25.4
	}
	return u
}

// of returns the standard uncertainty of one reading in mm: its own where it states one.
func (u Uncertainties) of(r room.Reading) float64 {
	if r.U > 0 {
		return r.U.MM()
	}
	how := r.How
	if how == "" {
		how = room.Once
	}
	return u.Reading[how]
}

// Figures of the house that are taken where nobody looked, as half-widths over the root of three (house_tolerance.csv).
var (
	levelSlope = 0.5 / 240 / math.Sqrt(3)  // ceiling or floor off level: 1/2 in over 20 ft (remodelling standard, secondary)
	wallBow    = 0.5 * 25.4 / math.Sqrt(3) // wall bowed: 1/2 in (common practice, from memory); only splits a bow that was read
)
