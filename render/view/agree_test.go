package view

import (
	"slices"
	"testing"

	"bunkwright/render"
)

// TestDrawingsAgreeOnTheBed: plan, walls and section print the same length, width and gaps of the bed, whether or not the corners of the
// room are square: the bed's own size, the distance along the wall that was typed, and the gap to the wall. By hand: the chamber's bed is
// pressed to a baseboard of 15 mm and stands 20 mm from C, the nook's to one of 1/2 in and 1 ft from C.
func TestDrawingsAgreeOnTheBed(t *testing.T) {
	for name, want := range map[string]struct {
		gap, along string
		walls      []string
	}{
		"chamber":     {"15", "20", []string{"AB", "CD"}},
		"chamber low": {"15", "20", []string{"CD"}},
		"nook":        {`1/2"`, `1' 0"`, []string{"BC"}},
	} {
		j := odd(t, name)
		s, answers := asked(t, &j)
		o := screen
		o.Unit = unitOf(&j)
		c := newCanvas(o, 1)
		wide, long := c.dim(s.Bed.Wide, true), c.dim(s.Bed.Long, true)
		check := func(what string, d render.Drawing, words ...string) {
			for _, w := range words {
				if !has(d, w) {
					t.Errorf("%s, %s: no %q among %q", name, what, w, texts(d.Marks))
				}
			}
		}
		check("plan", Plan(s, answers, o), wide, long, want.gap, want.along)
		check("bed's wall", Wall(s, answers, s.At.Key, o), long, want.along)
		check("section", Section(s, answers, o), long, want.along)
		for _, key := range want.walls {
			check("wall "+key, Wall(s, answers, key, o), wide, want.gap)
		}
	}
}

// TestBedKeepsItsSize: beside every wall that the bed is dimensioned at, in every sample and odd job, it is as long or as wide as it is built.
func TestBedKeepsItsSize(t *testing.T) {
	for _, name := range append(sampleNames(t), "chamber", "chamber low", "nook") {
		j := jobNamed(t, name)
		s, _ := asked(t, &j)
		if !s.Stands {
			continue
		}
		for i := range s.Walls {
			lo, hi := footAlong(s, &s.Walls[i])
			size := []float64{s.Bed.Long, s.Bed.Wide}
			if f := newFacing(s, &s.Walls[i]); !f.beside {
				continue
			}
			if !slices.ContainsFunc(size, func(v float64) bool { return hi-lo > v-0.1 && hi-lo < v+0.1 }) {
				t.Errorf("%s: the bed takes %.1f of wall %s, it is %.1f by %.1f", name, hi-lo, s.Walls[i].Key, s.Bed.Long, s.Bed.Wide)
			}
		}
	}
}
