package fit

import (
	"bunkwright/furniture/yardstick"
	"bunkwright/room/length"
)

// unbuilt is the finding of a question about the bed alone while no bed can be built.
func unbuilt(at string, rows ...string) Finding {
	return Finding{Readings: []Reading{ask(at, noBed, rows...)}}
}

// traced gives readings that name no input the measured value itself as one, so that an accepted answer comes back when it changes.
func (s *Scene) traced(f Finding) Finding {
	for i := range f.Readings {
		r := &f.Readings[i]
		row, _, _ := s.row(r.Rows[0])
		if len(r.Uses) > 0 || r.Ask != "" || r.Skip != "" || row.Role == yardstick.RoleAttribute {
			continue
		}
		have := r.Have
		if r.Yes {
			have = 1
		}
		r.Uses = []Use{{r.At, have, string(row.Unit), "worked out"}}
	}
	return f
}

// overFloor turns a height over the post feet into one over the floor. A bed that has no place yet is taken to stand on a hard floor.
func (s *Scene) overFloor(z float64) float64 {
	if s.Stands {
		return z + s.Feet
	}
	return z
}

// words writes a size in the job's unit, rounded as asked.
func (s *Scene) words(mm float64, r length.Rounding) string {
	return length.Format(length.FromMM(mm), length.Style{Unit: s.unit(), InchesOnly: true, Rounding: r})
}

// unit is the unit that the job is written in.
func (s *Scene) unit() length.Unit {
	if s.Job.Unit == length.Millimetres.String() {
		return length.Millimetres
	}
	return length.Inches
}
