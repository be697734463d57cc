package view

import (
	"math"
	"slices"

	"bunkwright/render"
)

// A crowd knows roughly where on the paper there is ink, so that labels find free ground. Cells are counted, not shapes.
type crowd struct {
	area render.Rect
	cell render.Paper
	w, h int
	ink  []uint16
	thin uint16 // weight of a thin line
	busy []bool // covered by a thing: free of lines, but not for words that belong to the floor
}

// How much stands in the way of a label, per cell: lines may be written across if all else is worse, words and signs may not.
const (
	lineInk    = 6
	apartInk   = 55 // of a line that words keep off: less than a symbol, so that leaders may cross it
	heavyInk   = 12
	symbolInk  = 60
	wordInk    = 400
	outsideInk = 3
	busyInk    = 3
	patchEase  = 3
	mostCells  = 250_000
)

// What a leader costs that crosses words or a cell of a line.
const (
	wordCross = 300.0
	lineCross = 1.2
)

// symbolWide is the size up to which an outline is a symbol, mm.
const symbolWide render.Paper = 5

// newCrowd makes an empty crowd over an area of the paper.
func newCrowd(area render.Rect) *crowd {
	g := &crowd{area: area, cell: 1, thin: lineInk}
	if cells := float64(area.W() * area.H()); cells > mostCells {
		g.cell = render.Paper(math.Sqrt(cells / mostCells))
	}
	g.w, g.h = int(area.W()/g.cell)+1, int(area.H()/g.cell)+1
	g.ink, g.busy = make([]uint16, g.w*g.h), make([]bool, g.w*g.h)
	return g
}

// mark notes the ink of a mark. A fill hides what was under it and is ground to write on.
func (g *crowd) mark(m render.Mark) {
	switch m.Kind {
	case render.KindText:
		g.box(m.Bounds(), wordInk)
	case render.KindFill:
		if m.Ink <= render.InkFits { // a dot or a sign
			g.box(m.Bounds(), wordInk)
			return
		}
		g.hide(m.Path, m.Ink != render.InkPanel && m.Ink != render.InkPaper)
	case render.KindStroke:
		weight := g.thin
		switch b := m.Path.Bounds(); {
		case max(b.W(), b.H()) < symbolWide && len(m.Path) > 3:
			g.box(b, symbolInk)
			return
		case m.Pen.Width > 0.4:
			weight = max(heavyInk, g.thin)
		}
		for _, run := range m.Path.Flatten(0.5) {
			for i := 1; i < len(run.Points); i++ {
				g.line(run.Points[i-1], run.Points[i], weight)
			}
			if n := len(run.Points); run.Closed && n > 1 {
				g.line(run.Points[n-1], run.Points[0], weight)
			}
		}
	}
}

// hide clears the cells whose middles lie inside a shape, row by row.
func (g *crowd) hide(shape render.Path, busy bool) {
	runs := shape.Flatten(0.5)
	_, y0, _, y1, _ := g.cells(shape.Bounds())
	var met []float64
	for y := y0; y <= y1; y++ {
		at := g.area.Min.Y + (render.Paper(y)+0.5)*g.cell
		met = met[:0]
		for _, run := range runs {
			met = crossed(met, run.Points, at)
		}
		slices.Sort(met)
		for i := 1; i < len(met); i += 2 {
			g.clear(y, met[i-1], met[i], busy)
		}
	}
}

// crossed adds where the level line at crosses the closed outline.
func crossed(met []float64, q []render.Point, at render.Paper) []float64 {
	for i := range q {
		a, b := q[i], q[(i+1)%len(q)]
		if (a.Y < at) != (b.Y < at) {
			met = append(met, float64(a.X+(at-a.Y)/(b.Y-a.Y)*(b.X-a.X)))
		}
	}
	return met
}

// clear empties the cells of a row between two places.
func (g *crowd) clear(y int, from, to float64, busy bool) {
	first := int(math.Ceil((from-float64(g.area.Min.X))/float64(g.cell) - 0.5))
	last := int(math.Ceil((to-float64(g.area.Min.X))/float64(g.cell)-0.5)) - 1
	for x := max(first, 0); x <= min(last, g.w-1); x++ {
		g.ink[y*g.w+x], g.busy[y*g.w+x] = 0, busy
	}
}

func (g *crowd) line(a, b render.Point, weight uint16) {
	steps := int(b.Minus(a).Length()/g.cell) + 1
	for i := 0; i <= steps; i++ {
		p := a.Between(b, float64(i)/float64(steps))
		if x, y := g.index(p); x >= 0 && y >= 0 && x < g.w && y < g.h {
			if at := &g.ink[y*g.w+x]; g.thin < apartInk || *at+weight < symbolInk {
				*at += weight
			}
		}
	}
}

func (g *crowd) index(p render.Point) (x, y int) {
	return int(math.Floor(float64((p.X - g.area.Min.X) / g.cell))), int(math.Floor(float64((p.Y - g.area.Min.Y) / g.cell)))
}

// box notes a rectangle full of ink.
func (g *crowd) box(r render.Rect, weight uint16) {
	x0, y0, x1, y1, _ := g.cells(r)
	for y := y0; y <= y1; y++ {
		for x := x0; x <= x1; x++ {
			g.ink[y*g.w+x] += weight
		}
	}
}

// cells returns the cells that a rectangle touches, and how many it has outside the area.
func (g *crowd) cells(r render.Rect) (x0, y0, x1, y1, outside int) {
	x0, y0 = g.index(r.Min)
	x1, y1 = g.index(r.Max)
	all := (x1 - x0 + 1) * (y1 - y0 + 1)
	x0, y0, x1, y1 = max(x0, 0), max(y0, 0), min(x1, g.w-1), min(y1, g.h-1)
	if x1 < x0 || y1 < y0 {
		return x0, y0, x1, y1, all
	}
	return x0, y0, x1, y1, all - (x1-x0+1)*(y1-y0+1)
}

// A ground says what a label may stand on.
type ground uint8

const (
	anyGround   ground = iota
	floorGround        // it keeps off things that stand on the floor or the wall
	patchGround        // the same, and it brings a patch of ground with it that breaks the lines behind
	thingGround        // it belongs on a thing, with a patch of the thing's own ink
	lineGround         // a sign, which covers lines
)

// cost returns how much stands in the way of a label in the rectangle.
func (g *crowd) cost(r render.Rect, on ground) int {
	x0, y0, x1, y1, outside := g.cells(r)
	sum := outside * outsideInk
	for y := y0; y <= y1; y++ {
		for x := x0; x <= x1; x++ {
			ink := int(g.ink[y*g.w+x])
			switch {
			case ink >= symbolInk || on == anyGround || on == floorGround:
			case on == lineGround:
				ink = 0
			default:
				ink /= patchEase
			}
			sum += ink
			if g.busy[y*g.w+x] && (on == floorGround || on == patchGround) {
				sum += busyInk
			}
		}
	}
	return sum
}

// way returns what lies on the way from a to b: a leader may cross lines, and should not cross words.
func (g *crowd) way(a, b render.Point) float64 {
	steps := int(b.Minus(a).Length()/g.cell) + 1
	cost := 0.0
	for i := 0; i <= steps; i++ {
		p := a.Between(b, float64(i)/float64(steps))
		x, y := g.index(p)
		switch {
		case x < 0 || y < 0 || x >= g.w || y >= g.h:
		case g.ink[y*g.w+x] >= symbolInk:
			return cost + wordCross
		case g.ink[y*g.w+x] > 0:
			cost += lineCross
		case g.busy[y*g.w+x]:
			cost += lineCross / 4
		}
	}
	return cost
}
