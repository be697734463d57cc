package misread

import (
	_ "embed"
	"encoding/csv"
	"strings"
	"sync"
)

// signaturesCSV is the table of what a misfit looks like and what it usually comes from (sources in the file).
//
//go:embed signatures.csv
var signaturesCSV string

// A Signature is one row of the table.
type Signature struct {
	ID, Pattern, Test, Tolerance string
	Cause                        string // "two digits swapped"
	Ask                          string // the question of the table, with its own example figures
	Source, Basis                string
}

// The signatures by what they are.
const (
	Inches        = "ms-01" // one or two inches
	Ten           = "ms-02" // ten inches or 100 mm
	Feet          = "ms-03" // whole feet
	Case          = "ms-04" // the tape's case left out
	Swapped       = "ms-05" // two digits swapped
	LookAlike     = "ms-06" // 6 and 9, 1 and 7, 4 and 9
	CountedBack   = "ms-07" // fraction counted back from the next inch
	Small         = "ms-08" // marks miscounted, hook, sag
	OtherUnit     = "ms-09" // the other side of a two-unit tape
	Casing        = "ms-10" // trim instead of opening
	OutOfPlumb    = "ms-11" // a trend over three heights: real
	NoneOfTheRest = "ms-12"
)

// Signatures returns the table in its order.
var Signatures = sync.OnceValue(func() []Signature {
	r := csv.NewReader(strings.NewReader(signaturesCSV))
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		panic("misread: signatures.csv: " + err.Error())
	}
	var out []Signature
	for _, f := range rows[1:] {
		out = append(out, Signature{f[0], f[1], f[2], f[3], f[4], f[5], f[6], f[7]})
	}
	return out
})

// Find returns the signature of an id; the zero Signature where there is none.
func Find(id string) Signature {
	for _, s := range Signatures() {
		if s.ID == id {
			return s
		}
	}
	return Signature{}
}
