package yardstick

import "sync"

// A Calc describes a calculation that stands beside the rows; the code of each lives where it is used.
type Calc struct {
	ID, About string
	What      string
	Formula   string
	Unit      string
	Source    string
	Basis     string
	Caution   string
}

var calcs = sync.OnceValue(func() []Calc {
	recs, err := records(calcsCSV)
	if err != nil {
		panic(err)
	}
	var out []Calc
	for _, rec := range recs {
		out = append(out, Calc{rec["id"], rec["about"], rec["what"], rec["formula"], rec["unit"],
			rec["source"], rec["basis"], rec["caution"]})
	}
	return out
})

// FindCalc returns the description of a calculation, such as that of "calc-headroom".
func FindCalc(id string) (Calc, bool) {
	for _, c := range calcs() {
		if c.ID == id {
			return c, true
		}
	}
	return Calc{}, false
}

// Calcs returns the descriptions of all calculations in file order.
func Calcs() []Calc { return append([]Calc(nil), calcs()...) }
