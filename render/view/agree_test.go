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

// TestReadOnceIsMarkedEverywhere: a height of the ceiling that was read once stands in parentheses in every view that prints it, with the
// value that was read, and what is over a head does so on the section and on the story stick alike. The chamber's slope is 1600 mm high at
// D, so along D to A and where C to D and A to B end there; the nook's is 6 ft high at C and level along B to C.
func TestReadOnceIsMarkedEverywhere(t *testing.T) {
	for _, c := range []struct {
		name, want string
		bare       []string
		walls      []string
	}{
		{"chamber", "(1600)", []string{"1600", "1601", "(1601)"}, []string{"AB", "CD", "DA"}},
		{"chamber low", "(1600)", []string{"1600", "1601", "(1601)"}, []string{"AB", "CD", "DA"}},
		{"nook", `(6' 0")`, []string{`6' 0"`, `5' 11-15/16"`, `(5' 11-15/16")`}, []string{"BC"}},
	} {
		j := odd(t, c.name)
		s, answers := asked(t, &j)
		o := screen
		o.Unit = unitOf(&j)
		for _, key := range c.walls {
			d := Wall(s, answers, key, o)
			if !has(d, c.want) {
				t.Errorf("%s, wall %s: no %q among %q", c.name, key, c.want, texts(d.Marks))
			}
			for _, w := range c.bare {
				if has(d, w) {
					t.Errorf("%s, wall %s: %q stands there", c.name, key, w)
				}
			}
		}
		head := newCanvas(o, 1).dim(sittings(s, answers)[1].free, false)
		for _, d := range []render.Drawing{Section(s, answers, o), Stick(s, answers, o)} {
			if !has(d, head) {
				t.Errorf("%s, %s: the headroom %s is not among %q", c.name, d.Title, head, texts(d.Marks))
			}
		}
	}
}
