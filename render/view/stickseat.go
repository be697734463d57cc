package view

import (
	"strings"

	"bunkwright/furniture/bunk"
	"bunkwright/render"
)

// A stickSeat draws one bed beside the stick: its mattress on its deck, who sits up there, and the headroom with its spare.
type stickSeat struct {
	*stick
	sit   *sitting
	deck  *bunk.DeckAt
	clip  render.Rect  // what is beyond it is cut off
	bar   render.Paper // where the spare is drawn
	under float64      // words over the head keep below this height
}

// Sizes beside the stick: where the bed begins on paper, in ticks, and how deep a back is behind the middle of the head, as a share of
// the seated height.
const (
	bedFrom = 0.9
	backOut = 0.165
)

// bedLeft is where mattresses begin.
func (f *stickSeat) bedLeft() render.Paper { return f.bar + f.st.Tick*bedFrom }

// figure places who sits up.
func (f *stickSeat) figure() person {
	x := float64(f.bedLeft()-f.pt(0, 0).X)/f.k + backOut*f.sit.tall
	return person{ref: f.sit.ref, x: x, seat: f.sit.seat, tall: f.sit.tall, dir: 1, ground: render.InkPaper}
}

// sitter draws the figure, cut off where there is no room for its legs.
func (f *stickSeat) sitter() {
	if !f.sit.known || f.clip.Max.X-f.bedLeft() < f.st.Body.Wide("headroom") {
		return
	}
	marks := f.figure().marks(f.canvas)
	if render.Bounds(marks).Max.X <= f.clip.Max.X {
		f.add(marks...)
		return
	}
	zig := f.st.Tick * 0.35
	x := f.clip.Max.X - zig
	f.clip.Max.X = x
	f.clipped(marks...)
	f.clip.Max.X += zig
	y := func(share float64) render.Paper { return f.pt(0, f.sit.seat+share*f.sit.tall).Y }
	mid := y(0.16)
	at := func(across, down render.Paper) render.Point {
		return render.Point{X: x + zig*across, Y: mid + zig*down}
	}
	bottom, top := render.Point{X: x, Y: y(0)}, render.Point{X: x, Y: y(0.34)}
	f.stroke(f.sit.ref, render.Polyline(bottom, at(0, 1.5), at(1, 0.5), at(-1, -0.5), at(0, -1.5), top), f.st.Thin)
}

// over draws what lies over the figure: the headroom, and its outline dashed where it runs into what is above.
func (f *stickSeat) over() {
	if !f.sit.known {
		return
	}
	if f.sit.spare < 0 && f.sit == &f.stick.sit[0] {
		hidden := f.clip
		hidden.Max.Y = f.pt(0, f.sit.lowest).Y
		for _, m := range f.figure().hidden(f.canvas) {
			f.add(m.Clip(hidden)...)
		}
	}
	f.headroom()
}

// clipped adds marks as far as they lie within the figure's ground.
func (f *stickSeat) clipped(marks ...render.Mark) {
	for _, m := range marks {
		f.add(m.Clip(f.clip)...)
	}
}

// bed draws mattress and deck.
func (f *stickSeat) bed(i int) {
	left := f.bedLeft()
	up := func(z float64) render.Paper { return f.pt(0, heightOver(f.s, z)).Y }
	right := min(f.clip.Max.X, f.pt(stickFigure, 0).X)
	box := func(top, bottom float64) render.Path {
		return render.Box(render.Rect{Min: render.Point{X: left, Y: up(top)}, Max: render.Point{X: right, Y: up(bottom)}})
	}
	f.outlined(deckNames[i]+".rail", box(f.deck.Top, f.deck.Frame), render.InkBoard, f.st.Thin)
	f.outlined(mattressRefs[i], box(drawnTop(f.deck), f.deck.Top), render.InkWhite, f.st.Seen)
}

// name writes on the mattress who sleeps there, in as many lines as there is room for.
func (f *stickSeat) name(i int) {
	left, right := f.bedLeft(), min(f.clip.Max.X, f.pt(stickFigure, 0).X)
	top, bottom := f.pt(0, heightOver(f.s, drawnTop(f.deck))).Y, f.pt(0, heightOver(f.s, f.deck.Top)).Y
	wide, row := right-left-f.st.Gap, f.st.Body.Size*1.15
	lines := render.Wrap(strings.ReplaceAll(f.sit.who, "-", "- "), f.st.Body.Size, f.st.Body.Face, wide)
	for len(lines) > 1 && row*render.Paper(len(lines)) > bottom-top {
		lines = lines[:len(lines)-1]
	}
	y := (top+bottom)/2 - row*render.Paper(len(lines)-1)/2
	for _, l := range lines {
		if l = strings.ReplaceAll(strings.TrimSuffix(l, ","), "- ", "-"); f.st.Body.Wide(l) <= wide && row <= bottom-top {
			t := f.st.Body.Text(render.Point{X: (left + right) / 2, Y: y}, l, render.InkMain, render.Centre).Middled()
			f.add(render.Label(mattressRefs[i], t, render.InkWhite, f.st.Gap*0.3)...)
		}
		y += row
	}
}

// missing says over the mattress what nobody knows yet.
func (f *stickSeat) missing() {
	left := f.bedLeft()
	words := f.sit.wants
	if words == "" {
		words = "cannot tell yet who sits up here"
	}
	wide := f.clip.Max.X - left
	lines := render.Wrap(kept(words), f.st.Body.Size, f.st.Body.Face, wide-f.st.Gap)
	y := f.pt(0, f.sit.seat).Y - f.st.Body.Leading()*(render.Paper(len(lines))-0.5)
	if f.o.On == OnScreen {
		f.add(render.SignCannotTell.At(f.sit.ref, render.Point{X: left + f.st.Sign/2, Y: y - f.st.Sign*1.3}, f.st.Sign)...)
	}
	f.add(f.st.Body.Lines(f.sit.ref, render.Point{X: left, Y: y}, lines, render.InkSoft, render.Left)...)
}

// headroom brackets the free height over the mattress, and the part of it over the head as a bar.
func (f *stickSeat) headroom() {
	p := f.sit
	y := func(z float64) render.Paper { return f.pt(0, z).Y }
	at := func(z float64) render.Point { return render.Point{X: f.bar, Y: y(z)} }
	f.add(f.st.Dimension(render.Dimension{Ref: "headroom", From: at(p.seat), To: at(p.lowest)})...)
	bar := f.st.Cut.In(p.ink(f.canvas))
	bar.Width *= spareThick * 0.65
	f.stroke("spare."+p.ref, render.Line(at(p.head()), at(p.lowest)), bar)
	f.clipped(render.Stroke(p.ref, render.Line(at(p.head()), render.Point{X: f.clip.Max.X, Y: y(p.head())}), f.levelPen()))
	if p.lowest < f.top-1 {
		f.clipped(render.Stroke(p.ref, render.Line(at(p.lowest), render.Point{X: f.bedLeft(), Y: y(p.lowest)}), f.st.Extension))
	}
	f.say()
}

// levelPen draws the level of a head: dashed on the screen, as on paper dashes stand for what is hidden.
func (f *stickSeat) levelPen() render.Pen {
	if f.paper() {
		return f.st.Extension
	}
	return f.st.Behind
}

// say writes headroom and spare: before the figure where there is room, else in the air over the head, and where there is too little of
// that, headroom and then spare go before the chest.
func (f *stickSeat) say() {
	p := f.sit
	x := f.bar + f.st.Gap
	strong := render.Lettering{Size: f.st.Body.Size, Face: render.Medium}
	if f.clip.Max.X-x < strong.Wide("headroom") { // the bar alone: the questions have the words
		return
	}
	free := []line{{"headroom", f.st.Body, render.InkSoft}, {f.dim(p.free, overFirm(f.s, f.known, p)), strong, render.InkMain}}
	var spare []line
	for _, w := range render.Wrap(p.spareWords(f.canvas), strong.Size, strong.Face, f.clip.Max.X-x) {
		spare = append(spare, line{w, strong, p.ink(f.canvas)})
	}
	row := f.st.Body.Size * 1.22
	top := render.Point{X: x, Y: f.pt(0, min(p.lowest, f.under)).Y + f.st.Gap*0.4}
	air := f.pt(0, p.head()).Y - top.Y
	chest := render.Point{X: f.bedLeft() + f.st.Gap, Y: f.pt(0, p.seat+0.66*p.tall).Y}
	aside := render.Point{X: f.pt(f.figure().x+0.3*p.tall, 0).X, Y: chest.Y}
	switch {
	case aside.X+f.st.Body.Wide("headroom ") < f.clip.Max.X:
		f.lines(aside, row, append(free, spare...))
	case air >= row*render.Paper(len(free)+len(spare)):
		f.lines(top, row, append(free, spare...))
	case air >= row*render.Paper(len(spare)):
		f.lines(top, row, spare)
		f.lines(chest, row, free)
	default:
		f.lines(chest, row, append(free, spare...))
		if p.spare < 0 && !f.paper() {
			y := chest.Y + row*render.Paper(len(free)+len(spare)) + f.st.Sign*0.7
			f.add(render.SignDoesNotFit.At("spare", render.Point{X: chest.X + f.st.Sign/2, Y: y}, f.st.Sign)...)
		}
	}
}

// lines writes lines one below the other on patches of ground, from the top down.
func (f *stickSeat) lines(at render.Point, row render.Paper, lines []line) {
	for i, l := range lines {
		x := min(at.X, f.clip.Max.X-l.in.Wide(l.words)-f.st.Gap*0.3)
		t := l.in.Text(render.Point{X: x, Y: at.Y + row*(render.Paper(i)+0.5)}, l.words, l.ink, render.Left).Middled()
		f.add(render.Label("spare", t, render.InkPaper, f.st.Gap*0.3)...)
	}
}
