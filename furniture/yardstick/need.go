package yardstick

import (
	"math/big"
	"strings"
)

// Nanometres in the units that lengths are written in; plain numbers have none.
const (
	nmPerInch = 25_400_000
	nmPerMM   = 1_000_000
	plain     = 0
)

// parseNeed takes the need from the column that governs.
func parseNeed(rec record, r *Row) error {
	switch rec["governs"] {
	case "in":
		r.Unit = MM
		return r.setNeed(rec["value_in"], "in", nmPerInch)
	case "mm":
		r.Unit = MM
		return r.setNeed(rec["value_mm"], "mm", nmPerMM)
	case "other":
		r.Unit = Unit(rec["unit_other"])
		return r.setNeed(rec["value_other"], rec["unit_other"], plain)
	case "none":
		if r.Relation.Answer() {
			r.Unit = YesNo
			return nil
		}
		return checkNeed(r, "")
	}
	return &RowError{r.ID, "governs", rec["governs"], "in, mm, other or none"}
}

func (r *Row) setNeed(text, unit string, nmEach int64) error {
	need, ok := numbers(text, nmEach)
	if !ok {
		return &RowError{r.ID, "value", text, "decimal numbers, whole nanometres for a length"}
	}
	r.Need, r.Written = need, text+" "+unit
	return checkNeed(r, text)
}

func checkNeed(r *Row, text string) error {
	switch {
	case r.Relation.Band() && (len(r.Need) != 2 || r.Need[0] > r.Need[1]):
		return &RowError{r.ID, "value", text, "a lower and an upper end, such as 60..75"}
	case r.Relation != Equals && !r.Relation.Band() && len(r.Need) != 1:
		return &RowError{r.ID, "value", text, "one number"}
	}
	return nil
}

// numbers reads "5", "60..75", "26x20x4" or "1421 1753". With nmEach, the nanometres in one of the unit written, the
// results are mm and must be whole nanometres; with plain they stay as they are.
func numbers(text string, nmEach int64) (list []float64, ok bool) {
	apart := strings.NewReplacer("..", " ", "x", " ").Replace(text)
	for _, word := range strings.Fields(apart) {
		x, ok := number(word, nmEach)
		if !ok {
			return nil, false
		}
		list = append(list, x)
	}
	return list, true
}

func number(word string, nmEach int64) (x float64, ok bool) {
	if strings.Trim(word, "-.0123456789") != "" { // no exponents or fractions: a file has none, and they can be huge
		return 0, false
	}
	exact, ok := new(big.Rat).SetString(word)
	if !ok {
		return 0, false
	}
	if nmEach != plain {
		exact.Mul(exact, big.NewRat(nmEach, 1))
		if !exact.IsInt() {
			return 0, false
		}
		exact.Quo(exact, big.NewRat(nmPerMM, 1))
	}
	x, _ = exact.Float64()
	return x, true
}
