package view

import (
	"math"
	"strconv"

	"bunkwright/render"
	"bunkwright/room/length"
)

// A stickBody is the stick itself with its labels: right is its right edge on paper, top the height it reaches up to.
type stickBody struct {
	*canvas
	right render.Paper
	thick render.Paper
	top   float64
	marks []mark
	inner bool // labels keep between floor and ceiling
	brief bool // they are short
}

// stickBody makes one that is thick enough for the figures on it.
func (c *canvas) stickBody(right render.Paper, top float64, marks []mark) *stickBody {
	b := &stickBody{canvas: c, right: right, thick: c.st.Tick * 1.4, top: top, marks: marks}
	if c.paper() {
		b.thick = c.st.Small.Wide("000") + c.st.Tick*1.3
		if c.o.Unit == length.Millimetres { // figures keep clear of the marks on both edges
			b.thick = (c.st.Small.Wide("2 m") + c.st.Gap*0.4) / (1 - levelShare - scaleShare)
		}
	}
	return b
}

// How long the marks of levels and of the scale are, as shares of the stick's thickness.
const (
	levelShare = 0.3
	scaleShare = 0.26
)

// y is a height on paper.
func (b *stickBody) y(z float64) render.Paper { return b.pt(0, z).Y }

// paint draws the stick and its labels and returns the left edge of all.
func (b *stickBody) paint() render.Paper {
	box := render.Rect{Min: render.Point{X: b.right - b.thick, Y: b.y(b.top)}, Max: render.Point{X: b.right, Y: b.y(0)}}
	b.outlined("stick", render.Box(box), render.InkBoard, b.st.Seen)
	b.scale(box)
	var levels render.Path
	for _, m := range b.marks {
		levels = append(levels, render.Line(render.Point{X: box.Min.X, Y: b.y(m.z)}, render.Point{X: box.Min.X + b.thick*levelShare, Y: b.y(m.z)})...)
	}
	b.stroke("stick", levels, b.st.Seen)
	return b.labels(box.Min.X)
}

// scale marks feet with their quarters, or every 100 mm, along the right edge; on paper the feet and every 500 mm are numbered.
func (b *stickBody) scale(box render.Rect) {
	step, each := length.Foot.MM()/4, 4
	if b.o.Unit == length.Millimetres {
		step, each = 100, 5
	}
	var ticks render.Path
	for i := 1; float64(i)*step < b.top; i++ {
		long := b.thick * 0.16
		y := b.y(float64(i) * step)
		if i%each == 0 {
			long = b.thick * scaleShare
			b.number(box, i/each, y)
		}
		ticks = append(ticks, render.Line(render.Point{X: box.Max.X - long, Y: y}, render.Point{X: box.Max.X, Y: y})...)
	}
	b.stroke("stick", ticks, b.st.Thin)
}

func (b *stickBody) number(box render.Rect, n int, y render.Paper) {
	if !b.paper() {
		return
	}
	words := strconv.Itoa(n)
	if b.o.Unit == length.Millimetres {
		if n%2 == 1 {
			return
		}
		words = strconv.Itoa(n/2) + " m"
	}
	at := render.Point{X: box.Min.X + b.thick*(1+levelShare-scaleShare)/2, Y: y}
	if y-box.Min.Y > b.st.Small.Size && box.Max.Y-y > b.st.Small.Size {
		b.add(render.Words("stick", b.st.Small.Text(at, words, render.InkMain, render.Centre).Middled()))
	}
}

// Lines of a label: the height, and what it is the height of.
const labelLines = 2

// labels writes the heights left of an edge, kept apart, each with a line to its level, and returns how far left they reach.
func (b *stickBody) labels(edge render.Paper) render.Paper {
	row := b.st.Body.Leading()
	if b.brief {
		b.marks = spared(b.marks, b.holds(row))
	}
	lines := labelLines
	if len(b.marks) > b.holds(row) {
		lines = 1
	}
	at := b.spread(row, lines)
	right := edge - b.st.Tick*1.3
	reach := right
	for i, m := range b.marks {
		z, y := b.y(m.z), at[i]
		knee, end := render.Point{X: edge - b.st.Tick*0.35, Y: z}, render.Point{X: right + b.st.Gap*0.6, Y: y}
		b.stroke(m.ref, render.Polyline(render.Point{X: edge, Y: z}, knee, end), b.st.Thin)
		text := m.words
		if b.brief {
			text = m.brief()
		}
		value := b.st.Measure.Text(render.Point{X: right, Y: y}, b.dim(m.z, m.firm), render.InkMain, render.Right).Middled()
		words := b.st.Body.Text(render.Point{X: right, Y: y + row*0.95}, text, render.InkSoft, render.Right).Middled()
		if lines == 1 {
			words.At = render.Point{X: value.Bounds().Min.X - b.st.Gap, Y: value.At.Y}
		}
		b.add(render.Words(m.ref, value), render.Words(m.ref, words))
		reach = min(reach, value.Bounds().Min.X, words.Bounds().Min.X)
	}
	return reach
}

// holds returns how many labels of two lines have room along the stick.
func (b *stickBody) holds(row render.Paper) int {
	return int((b.y(0) - b.y(b.top)) / (labelLines * row * 1.04))
}

// spread returns where the first line of each label stands, from the lowest up: at its level if it can, else as near as its neighbours
// and the ends of the stick let it.
func (b *stickBody) spread(row render.Paper, lines int) []render.Paper {
	n := len(b.marks)
	size := row * render.Paper(lines) * 1.04
	down := size/2 - row/2 // from the first line to the middle of the label
	want, sizes := make([]render.Paper, n), make([]render.Paper, n)
	for i, m := range b.marks {
		want[n-1-i], sizes[n-1-i] = b.y(m.z)+down, size
	}
	at := render.Spread(want, sizes)
	low, high := b.y(0)-size/2+row*0.8, b.y(b.top)+size/2-row/2
	if b.inner {
		low, high = b.y(0)-size/2-b.st.Gap*0.3, b.y(b.top)+size/2+b.st.Gap*0.3
	}
	for i := n - 1; i >= 0; i-- {
		at[i] = min(at[i], low-render.Paper(n-1-i)*size)
	}
	for i := range at {
		at[i] = max(at[i], high+render.Paper(i)*size)
	}
	out := make([]render.Paper, n)
	for i := range at {
		out[n-1-i] = at[i] - down
	}
	return out
}

// levels draws the level of every mark from the stick to the right, as far as to an edge.
func (b *stickBody) levels(to render.Paper) {
	for _, m := range b.marks {
		y := b.y(m.z)
		b.stroke(m.ref, render.Line(render.Point{X: b.right + b.st.Gap, Y: y}, render.Point{X: to, Y: y}), b.st.Extension)
	}
}

// rounded returns a height just over another, for a stick that stops where nothing is known: a whole step.
func rounded(z float64) float64 { return math.Ceil(z/100) * 100 }
