package view

import (
	"fmt"
	"math"
	"slices"

	"bunkwright/furniture/bunk"
	"bunkwright/render"
)

// dimensions draws what stands round the section: the story stick on its left, the rail over the mattress on its right, lengths below.
func (v *section) dimensions() {
	v.stickBeside()
	v.railOver()
	v.lengths()
}

// stickBeside puts the story stick to the left of the section, at its heights.
func (v *section) stickBeside() {
	marks := stickMarks(v.s, v.known, v.sit)
	left := v.pt(v.lo-v.outer(0), 0).X - v.st.Tick*0.8
	top := v.high
	over := marks[len(marks)-1].z > top+shut // beside a slope, what hangs under the rest of the ceiling
	if over {
		top = marks[len(marks)-1].z + overTop/2
	}
	b := v.stickBody(left-v.st.Tick*2.2, top, marks)
	b.levels(left)
	b.paint()
	if v.ceiling != nil && !over {
		return
	}
	y := v.pt(0, top).Y
	v.add(v.st.BreakLine("stick", render.Point{X: b.right - b.thick - v.st.Gap, Y: y}, render.Point{X: b.right + v.st.Gap, Y: y}))
}

// railWords say what the rail's dimension is of.
var railWords = []string{"rail over", "mattress"}

// railRoom is how much room the rail's dimension takes beside the bed.
func (v *section) railRoom() render.Paper {
	wide := v.st.Measure.Wide(v.railValue())
	for _, w := range railWords {
		wide = max(wide, v.st.Body.Wide(w))
	}
	return v.st.Tick*1.4 + wide + v.st.Gap*2.5
}

func (v *section) railValue() string {
	if g := lowestGuard(v.b); g != nil && !math.IsNaN(v.b.Upper.MattressTop) {
		return v.dim(g.Top-v.b.Upper.MattressTop, true)
	}
	return ""
}

// railOver dimensions the lowest guardrail over the upper mattress: beside the bed where the drawing is broken off, else beyond the wall.
func (v *section) railOver() {
	g := lowestGuard(v.b)
	if g == nil || math.IsNaN(v.b.Upper.MattressTop) {
		return
	}
	dir := render.Paper(2*v.railAt - 1)
	lo, hi := v.reach()
	end := []float64{lo, hi}[v.railAt]
	x := v.pt(end, 0).X + dir*v.st.Tick*0.9
	if v.ends[v.railAt].wall != nil {
		x = v.pt(v.ends[v.railAt].at, 0).X + dir*(v.mm(v.outer(v.railAt))+v.st.Tick*1.6)
	}
	at := func(z float64) render.Point { return render.Point{X: x, Y: v.pt(0, v.lift+z).Y} }
	from, to := v.b.Upper.MattressTop, g.Top
	for _, z := range []float64{from, to} {
		v.add(v.st.ExtensionLine("", v.pt(end, v.lift+z), at(z)))
	}
	d := render.Dimension{Ref: "rail.over", From: at(from), To: at(to), Words: v.railValue(), Beside: true, Before: dir < 0}
	if to < from && !v.paper() {
		d.Ink = render.InkNotFit
	}
	v.onPatches(v.st.Dimension(d))
	anchor := render.Left
	if dir < 0 {
		anchor = render.Right
	}
	y := at(max(from, to)).Y - v.st.Body.Leading()*1.8
	if v.ceilingAt(x+dir*v.railRoom()) > y-v.st.Body.Leading() { // a slope is in the way
		y = at(min(from, to)).Y + v.st.Body.Leading()*0.8
	}
	for _, words := range railWords {
		t := v.st.Body.Text(render.Point{X: x - dir*v.st.Tick*0.4, Y: y}, words, render.InkMain, anchor).Middled()
		v.add(render.Label(d.Ref, t, v.ground(), v.st.Gap*0.2)...)
		y += v.st.Body.Leading()
	}
}

// ceilingAt returns where the ceiling is at a place on paper.
func (v *section) ceilingAt(x render.Paper) render.Paper {
	if v.ceiling == nil {
		return v.pt(0, v.high).Y
	}
	at := min(max(float64(x-v.at.X)/v.k, v.lo), v.hi)
	return v.pt(0, heightOf(v.ceiling, at)).Y
}

// lowestGuard returns the run of guardrail along a side of the bed whose top is lowest, nil where there is none.
func lowestGuard(b *bunk.Bed) *bunk.GuardAt {
	var low *bunk.GuardAt
	for i := range b.Guards {
		g := &b.Guards[i]
		if (g.Side == "front" || g.Side == "wall") && (low == nil || g.Top < low.Top) {
			low = g
		}
	}
	return low
}

// lengths dimensions the bed along the section, with the air to the walls at its ends, and says what the slats are.
func (v *section) lengths() {
	lo, hi := v.insideAlong()
	stops := []float64{0, lo, hi, v.b.Long}
	for i, e := range v.ends {
		if e.wall != nil {
			stops = append(stops, v.endStop(i))
		}
	}
	frame := v.rect(v.lo-v.outer(0), -float64(v.st.Tick*0.9)/v.k, v.hi+v.outer(1), v.high)
	first := len(v.marks)
	v.ruleApart(below, frame, rulesOf(v.levelAt(v.stopsOf(stops...), 0), v.levelAt(v.stopsOf(0, v.b.Long), 0)))
	v.wordsUnder(v.marks[first:], v.b.Long/2, v.slatWords()...)
}

// endStop returns where the dimension of the air at an end stops: at the wall, but as far from the bed as along the wall it stands at, where
// that is the same on paper. The plan says so, and it was chosen so; a wall out of square is a little nearer or farther at the cut.
func (v *section) endStop(i int) float64 {
	e, at := v.ends[i], v.s.At
	if at == nil || math.Abs(at.Dir.Dot(v.dir)) < 0.99 {
		return e.at
	}
	lo, hi := footAlong(v.s, at)
	air := at.Len - hi
	switch n := len(v.s.Walls); e.wall.Index {
	case (at.Index + n - 1) % n:
		air = lo
	case (at.Index + 1) % n:
	default:
		return e.at
	}
	stop := [2]float64{-air, v.b.Long + air}[i]
	if math.Abs(stop-e.at) > sameOnPaper {
		return e.at
	}
	return stop
}

// sameOnPaper is how far two places may be apart and still be drawn as one, mm.
const sameOnPaper = 8.0

// slatWords says what the slats of the beds are, in one line where they are alike.
func (b *bedView) slatWords() []string {
	var lines []string
	for i, d := range decksOf(b.b) {
		words := b.slatsOf(d)
		if i == 1 && len(lines) == 1 && lines[0] == words {
			return []string{"in each bed " + words}
		}
		lines = append(lines, words)
	}
	lines[0], lines[1] = "upper bed: "+lines[1], "lower bed: "+lines[0]
	return slices.Clone(lines)
}

// slatsOf says what the slats of one bed are.
func (b *bedView) slatsOf(d *bunk.DeckAt) string {
	wide, thick, gap := b.o.Length(d.SlatWide), b.o.Length(d.Top-d.Underside), b.o.Length(d.SlatGap)
	return fmt.Sprintf("%d slats of %s by %s, gaps %s", d.SlatCount, wide, thick, gap)
}
