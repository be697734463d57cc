package fit

import (
	"bunkwright/furniture/yardstick"
	"bunkwright/room/length"
)

// held returns the row that the reading is held against: with the reading's own need, and where that comes from, in place of the row's.
func (r *Reading) held(general *yardstick.Row) *yardstick.Row {
	if r.Need == nil {
		return general
	}
	row := *general
	row.Need, row.Source, row.Basis = []float64{*r.Need}, r.From, "entered"
	row.Written = Amount(*r.Need, row.Unit, length.Inches, length.Nearest)
	if row.Unit == yardstick.MM {
		row.Written = length.Exact(length.FromMM(*r.Need), length.Inches)
	}
	return &row
}
