package worked

import (
	"slices"
	"strings"
	"sync"

	"bunkwright/furniture/yardstick"
)

// A way turns inputs into what a row is held against: one value for each thing that must meet it, in base units; 1 and 0
// stand for yes and no.
type way struct {
	needs []string // all of them must be given
	any   []string // at least one of them must be given
	not   []string // with one of these it is not the way: they ask for another
	of    func(g *given) []float64
}

func (w way) complete(g *given) bool {
	return len(w.lacking(g)) == 0 && !slices.ContainsFunc(w.not, g.has)
}

// unless is the way where none of some keys is given.
func (w way) unless(names ...string) way {
	w.not = names
	return w
}

// lacking lists the keys that are still to be given; of those of which one is enough, the first.
func (w way) lacking(g *given) []string {
	var out []string
	for _, name := range w.needs {
		if !g.has(name) {
			out = append(out, name)
		}
	}
	if len(w.any) > 0 && !slices.ContainsFunc(w.any, g.has) {
		out = append(out, w.any[0])
	}
	return out
}

// given counts the keys that are there.
func (w way) given(g *given) int { return len(w.needs) + min(1, len(w.any)) - len(w.lacking(g)) }

// sample lists the keys of an example.
func (w way) sample() []string {
	if len(w.any) == 0 {
		return w.needs
	}
	return append(slices.Clone(w.needs), w.any[0])
}

// each takes the value itself from any of some keys: everything that is given must meet the row.
func each(names ...string) way {
	return way{any: names, of: func(g *given) []float64 { return g.all(names) }}
}

// one and those after it call a function with the values of so many keys.
func one(f func(a float64) float64, a string) way {
	return way{needs: []string{a}, of: func(g *given) []float64 { return []float64{f(g.v(a))} }}
}

func two(f func(a, b float64) float64, a, b string) way {
	return way{needs: []string{a, b}, of: func(g *given) []float64 { return []float64{f(g.v(a), g.v(b))} }}
}

func three(f func(a, b, c float64) float64, a, b, c string) way {
	return way{needs: []string{a, b, c}, of: func(g *given) []float64 { return []float64{f(g.v(a), g.v(b), g.v(c))} }}
}

func four(f func(a, b, c, d float64) float64, a, b, c, d string) way {
	return way{needs: []string{a, b, c, d}, of: func(g *given) []float64 { return []float64{f(g.v(a), g.v(b), g.v(c), g.v(d))} }}
}

// yes answers a yes-or-no row from some keys.
func yes(f func(g *given) bool, names ...string) way {
	return way{needs: names, of: func(g *given) []float64 { return []float64{truth(f(g))} }}
}

func truth(b bool) float64 {
	if b {
		return 1
	}
	return 0
}

// all returns the values of those keys that are given.
func (g *given) all(names []string) []float64 {
	var out []float64
	for _, name := range names {
		out = append(out, g.values[name]...)
	}
	return out
}

// A measured is what some rows are held against, and the ways to it; the first whose keys are given is taken.
type measured struct {
	rows string // ids with blanks between them
	ways []way
	// settled ends a case without a number, from what the inputs say beside it: the outcome, and why. NotJudged goes on to
	// measure, with why as a remark.
	settled func(g *given) (yardstick.Outcome, string)
}

// measures maps the id of a row to what it measures.
var measures = sync.OnceValue(func() map[string]measured {
	out := map[string]measured{}
	for _, list := range [][]measured{bedMeasures, gapMeasures, climbMeasures, headroomMeasures, houseMeasures, roomMeasures} {
		for _, m := range list {
			for _, id := range strings.Fields(m.rows) {
				out[id] = m
			}
		}
	}
	return out
})

// values takes the first way that is complete; ok is false when there is none.
func (m measured) values(g *given) (list []float64, ok bool) {
	for _, w := range m.ways {
		if w.complete(g) {
			return w.of(g), true
		}
	}
	return nil, false
}

// nearest returns the way of which most is given already, the first of equals.
func (m measured) nearest(g *given) way {
	best := m.ways[0]
	for _, w := range m.ways[1:] {
		if w.given(g) > best.given(g) {
			best = w
		}
	}
	return best
}
