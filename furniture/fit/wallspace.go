package fit

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"bunkwright/furniture/yardstick"
)

// A run is a stretch of wall between doors, measured round corners from corner A.
type run struct {
	from, to float64
	sockets  []float64 // places of the outlets that count, from the start of the run
}

// alongWalls measures, for each stretch of wall between doors, how far its worst place is from an outlet.
func (s *Scene) alongWalls() []Reading {
	if !s.facts.alongs {
		s.facts.alongs, s.facts.alongList = true, s.measureAlong()
	}
	return s.facts.alongList
}

func (s *Scene) measureAlong() []Reading {
	rows := []string{outletReach}
	runs, what := s.runs()
	if what != "" {
		return []Reading{ask("wall", what, rows...)}
	}
	var out []Reading
	for i, r := range runs {
		have := FurthestFromOutlet(r.to-r.from, r.sockets...)
		q := Reading{At: fmt.Sprintf("wall.%d", i+1), Rows: rows, Have: have, Scope: []Scope{{Row: "outlet-wall-space", Have: r.to - r.from}, {Row: "outlet-height", Have: 0}}}
		if math.IsInf(have, 1) {
			q.Have, q.Edge = r.to-r.from, "no outlet in this stretch"
		}
		out = append(out, q)
	}
	return out
}

// runs cuts the walls at the doors. Without a door the walls are one stretch from corner A round to it again.
func (s *Scene) runs() (runs []run, what string) {
	starts, total := s.wallStarts()
	var doors [][2]float64
	for i := range s.Job.Room.Doors {
		rec, refs := &s.Job.Room.Doors[i], &s.Survey.Layout.Doors[i]
		if what := s.askBeside(s.keys.doors[i], rec.OnWall, refs.OnWallRefs, refs.Wide); what != "" {
			return nil, what
		}
		w, lo, hi, _ := s.interval(refs.OnWallRefs, refs.Wide)
		doors = append(doors, [2]float64{starts[w.Index] + lo, starts[w.Index] + hi})
	}
	slices.SortFunc(doors, func(a, b [2]float64) int { return cmp.Compare(a[0], b[0]) })
	if len(doors) == 0 {
		runs = []run{{0, total, nil}}
	}
	for i, d := range doors {
		next := doors[(i+1)%len(doors)][0]
		if i == len(doors)-1 {
			next += total
		}
		runs = append(runs, run{from: d[1], to: next})
	}
	return runs, s.plugInto(runs, starts, total)
}

// plugInto puts the outlets that count into their stretches.
func (s *Scene) plugInto(runs []run, starts []float64, total float64) (what string) {
	row, _ := yardstick.Find("outlet-height")
	for i := range s.Job.Room.Outlets {
		o, missing := s.socket(i)
		switch {
		case o.kind() != "outlet":
			continue
		case missing != "":
			return missing
		case row.Outcome(o.height) != yardstick.Applies:
			continue
		}
		at := starts[o.wall.Index] + o.along
		for k := range runs {
			for _, p := range [2]float64{at, at + total} {
				if p >= runs[k].from && p <= runs[k].to {
					runs[k].sockets = append(runs[k].sockets, p-runs[k].from)
				}
			}
		}
	}
	for k := range runs {
		slices.Sort(runs[k].sockets)
	}
	return ""
}

// wallStarts returns where each wall begins, measured along the walls from corner A, and the whole way round.
func (s *Scene) wallStarts() (starts []float64, total float64) {
	starts = make([]float64, len(s.Walls))
	for i := range s.Walls {
		starts[i] = total
		total += s.Walls[i].Len
	}
	return starts, total
}
