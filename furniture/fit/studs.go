package fit

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"sync"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/timber"
	"bunkwright/furniture/yardstick"
	"bunkwright/room/geom"
	"bunkwright/room/survey"
)

var studsHit = Question{
	ID:       "studs-hit",
	Sentence: "Do the shelf cleats hit studs?",
	Group:    Safety,
	Why:      "A shelf full of books on screws in plaster comes down on a sleeper.",
	How: "Per cleat: a stud is crossed where its middle lies behind the cleat. Screws sit where they were chosen to, else in the middle of " +
		"every stud crossed as the plan has it; each must stay inside the stud's edges by its fastener's edge distance. A cleat needs its " +
		"number of good screws in each of two studs, and must not reach too far past its last one. A stud that is assumed or counted off is at best too " +
		"close to call. Plaster on lath is taken to hang on wood studs.",
	Caution: "Probe each stud with a thin nail before drilling, and look for cables and pipes first. Masonry and steel studs need fixings of their own: ask.",
	Depends: Standing | Studs,
	Propose: []Driver{ShelfAlong, CleatShort, Slide, OtherWall},
	Measure: func(s *Scene) Finding { return s.studsHit() },
}

const (
	cleatOverhang = "own-cleat-overhang"
	screwEdge     = "own-screw-edge"
	anchorStud    = "anchor-to-stud"
)

// lowCleat is the height in mm of a cleat from which two screws per stud are wanted: 2-1/2 in, the note of own-screws-per-stud.
const lowCleat = 2.5 * 25.4

// ScrewToEdge returns how far inside the edge distance a screw sits: half the width of the stud's face, less how far the screw is from
// its middle, less the edge distance; all in one unit.
func ScrewToEdge(wide, offMiddle, edgeDistance float64) float64 {
	return wide/2 - math.Abs(offMiddle) - edgeDistance
}

// studAt is a stud of the wall that the bed stands at, and its middle along the wall.
type studAt struct {
	ref  survey.StudRef
	wall *Wall
	at   float64 // as the wall is just now
	plan float64 // where the plan has it
}

// name names the stud; one that is counted off from another by how many places it is away.
func (st *studAt) name() string {
	base, n, ok := countedFrom(st.ref.Key)
	if st.ref.Found != "counted" || !ok {
		return "stud " + st.ref.Key + " of wall " + st.wall.Key
	}
	way := "on"
	if n < 0 {
		n, way = -n, "back"
	}
	return fmt.Sprintf("the stud %s %s from stud %s of wall %s", plural(float64(n), "place"), way, base, st.wall.Key)
}

// countedFrom takes the key of a stud that is counted off apart: "1+2" is 2 on from stud 1.
func countedFrom(key string) (base string, n int, ok bool) {
	i := strings.LastIndexAny(key, "+-")
	if i <= 0 {
		return "", 0, false
	}
	n, err := strconv.Atoi(key[i:])
	return key[:i], n, err == nil
}

// doubt tells why a stud may not be there, "" where somebody found it.
func (st *studAt) doubt() string {
	switch st.ref.Found {
	case "assumed":
		return st.name() + " is only assumed: probe it"
	case "counted":
		return st.name() + " is only counted off: probe it"
	}
	return ""
}

// cleatAt is a cleat on its wall with its screws.
type cleatAt struct {
	*bunk.CleatAt
	shelf  *bunk.Shelf
	screw  timber.Fastener
	lo, hi float64   // along the wall
	places []float64 // of the screws, along the wall
	parts  []string  // the wall and the shelf
	studs  []studAt  // crossed, in rising order
}

func (s *Scene) studsHit() Finding {
	rows := []string{screwEdge, yardstick.ScrewsPerStud, cleatOverhang, anchorStud}
	if f, done := s.withoutCleats(rows); done {
		return f
	}
	if !s.Stands {
		return Finding{Readings: []Reading{ask("cleat", s.Wants, rows...)}}
	}
	if what := s.wallTakesScrews(s.At); what != "" {
		return Finding{Readings: []Reading{ask("cleat", what, rows...)}}
	}
	studs := s.studs(s.At)
	if len(studs) == 0 {
		what := fmt.Sprintf("where are the studs in wall %s, measured from corner %s?", s.At.Key, cornerOf(s.At.Key, ""))
		return Finding{Readings: []Reading{ask("cleat", what, rows...)}}
	}
	f := Finding{Readings: make([]Reading, 0, 8*len(s.Bed.Cleats))}
	for i := range s.Bed.Cleats {
		f.Readings = append(f.Readings, s.cleatReadings(i, studs)...)
	}
	return f
}

// withoutCleats is the finding where there is nothing to fix to a wall, or no bed.
func (s *Scene) withoutCleats(rows []string) (f Finding, done bool) {
	switch {
	case s.Bed == nil && len(s.Job.Bed.Shelves) > 0:
		return Finding{Readings: []Reading{ask("cleat", noBed, rows...)}}, true
	case s.Bed == nil || len(s.Bed.Cleats) == 0:
		return absent("there is no wall shelf"), true
	}
	return f, false
}

// wallTakesScrews tells why wood screws cannot be judged in a wall, or what to ask.
func (s *Scene) wallTakesScrews(w *Wall) string {
	rec, _ := s.Job.Room.Wall(w.Key)
	switch rec.Kind {
	case "wood studs", "plaster on lath":
		return ""
	case "masonry":
		return fmt.Sprintf("wall %s is masonry: plugs, not studs: ask which plugs hold a shelf in it", w.Key)
	case "steel studs":
		return fmt.Sprintf("wall %s has steel studs, and wood is assumed: ask what holds a shelf in them", w.Key)
	}
	return fmt.Sprintf("what is wall %s from corner %s to corner %s made of: wood studs, steel studs, masonry, plaster on lath?", w.Key,
		string([]rune(w.Key)[0]), string([]rune(w.Key)[1]))
}

// studs returns the studs of a wall in rising order of their places.
func (s *Scene) studs(w *Wall) []studAt {
	out := make([]studAt, 0, len(w.Refs.Studs))
	for _, r := range w.Refs.Studs {
		if st := (studAt{r, w, w.from(r.FromEnd, s.v(r.At)), w.from(r.FromEnd, s.planned(r.At))}); !math.IsNaN(st.at) {
			out = append(out, st)
		}
	}
	sortStuds(out)
	return out
}

// cleatReadings measures one cleat: each screw, the good screws in two studs, the overhang.
func (s *Scene) cleatReadings(i int, studs []studAt) []Reading {
	c, known := s.cleat(i, studs)
	if !known {
		return []Reading{ask(c.ID, fmt.Sprintf("which screws hold %s to wall %s?", c.ID, s.At.Key), screwEdge)}
	}
	out := make([]Reading, 0, len(c.places)+3)
	good := make(map[string]int, len(c.studs))
	all := len(c.places) > 0
	for k, at := range c.places {
		st := nearestStud(studs, at)
		r := s.screwReading(&c, st, at, k)
		row, _, _ := s.row(screwEdge)
		if row.Outcome(r.Have) == yardstick.Pass {
			good[st.ref.Key] += c.shelf.ScrewsPerStud
		} else {
			all = false
		}
		out = append(out, r)
	}
	anchored := Reading{At: c.ID + ".anchored", Rows: []string{anchorStud}, Yes: all && len(good) > 1, Parts: c.Parts}
	if !anchored.Yes {
		anchored.Edge = c.ID + " is not held by two studs"
	}
	return append(out, c.countReading(good), c.overhangReading(good), anchored)
}

// cleat puts a cleat on its wall. Where no places were chosen, the screws are planned in the middle of every stud that it crosses.
func (s *Scene) cleat(i int, studs []studAt) (c cleatAt, known bool) {
	c = cleatAt{CleatAt: &s.Bed.Cleats[i]}
	c.shelf, c.parts = &s.Bed.Sizes.Shelves[c.Shelf], append([]string{s.At.Name}, c.Parts...)
	box := s.ToWall.Box(c.Box)
	c.lo, c.hi, _, _ = s.At.level(&box)
	for _, st := range studs {
		if st.plan > c.lo && st.plan < c.hi {
			c.studs = append(c.studs, st)
		}
	}
	for _, x := range c.Screws {
		p := s.ToWall.Point(geom.V3{X: x})
		along, _ := s.At.Along(p.XY())
		c.places = append(c.places, along)
	}
	if len(c.Screws) == 0 {
		for _, st := range c.studs {
			c.places = append(c.places, st.plan)
		}
	}
	c.screw, known = fastener(c.shelf.Fastener)
	return c, known
}

func (s *Scene) screwReading(c *cleatAt, st *studAt, at float64, k int) Reading {
	wide := s.v(s.At.Refs.StudWide)
	return Reading{
		At: c.ID + ".screw." + strconv.Itoa(k+1), Rows: []string{screwEdge}, Have: ScrewToEdge(wide, at-st.at, c.screw.EdgeDistance.MM()),
		Parts: c.parts, Cap: st.doubt(), Edge: "into " + st.name(),
		Uses: []Use{{c.screw.ID + " edge distance", c.screw.EdgeDistance.MM(), "mm", "table"}},
	}
}

// countReading is the number of good screws in the second best stud: a cleat that hangs in one stud turns about it.
func (c *cleatAt) countReading(good map[string]int) Reading {
	best, second, doubt := 0, 0, ""
	for _, st := range c.studs {
		n := good[st.ref.Key]
		switch {
		case n > best:
			best, second = n, best
		case n > second:
			second = n
		}
		if n > 0 && doubt == "" {
			doubt = st.doubt()
		}
	}
	r := Reading{At: c.ID + ".screws", Rows: []string{yardstick.ScrewsPerStud}, Have: float64(second), Parts: c.Parts, Cap: doubt,
		Edge: fmt.Sprintf("%s crosses %s", c.ID, plural(float64(len(c.studs)), "stud"))}
	if c.High < lowCleat {
		one := 1.0
		r.Need, r.From = &one, "own-screws-per-stud: one in a cleat lower than 2-1/2 in"
	}
	return r
}

// overhangReading is how far the cleat reaches past the last stud that holds it, at either end.
func (c *cleatAt) overhangReading(good map[string]int) Reading {
	r := Reading{At: c.ID + ".overhang", Rows: []string{cleatOverhang}, Parts: c.parts}
	first, last := -1, -1
	for k, st := range c.studs {
		if good[st.ref.Key] == 0 {
			continue
		}
		if first < 0 {
			first = k
		}
		last = k
	}
	if first < 0 {
		r.Skip = "no stud holds " + c.ID
		return r
	}
	a, b := &c.studs[first], &c.studs[last]
	r.Have, r.Edge, r.Cap = a.at-c.lo, "past "+a.name(), a.doubt()
	if over := c.hi - b.at; over > r.Have {
		r.Have, r.Edge = over, "past "+b.name()
	}
	if r.Cap == "" {
		r.Cap = b.doubt()
	}
	return r
}

// fastenersByID holds the fasteners as they are asked for again and again.
var fastenersByID = sync.OnceValue(func() map[string]timber.Fastener {
	out := map[string]timber.Fastener{}
	for _, f := range timber.Fasteners() {
		out[f.ID] = f
	}
	return out
})

func fastener(id string) (f timber.Fastener, known bool) {
	f, known = fastenersByID()[id]
	return f, known
}

func sortStuds(studs []studAt) {
	slices.SortStableFunc(studs, func(a, b studAt) int { return cmp.Compare(a.at, b.at) })
}

// nearestStud returns the stud whose middle is nearest to a place along the wall.
func nearestStud(studs []studAt, at float64) *studAt {
	best := &studs[0]
	for i := range studs {
		if math.Abs(studs[i].at-at) < math.Abs(best.at-at) {
			best = &studs[i]
		}
	}
	return best
}
