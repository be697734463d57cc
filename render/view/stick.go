package view

import (
	"cmp"
	"math"
	"slices"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/fit"
	"bunkwright/furniture/yardstick"
	"bunkwright/render"
)

// Stick draws the story stick: one upright stick with every height from the floor covering to the ceiling, and beside it who sits up in
// each bed, at real size, with the air over the head. Its origin is the foot of the stick.
func Stick(s *fit.Scene, answers []fit.Answer, o Options) render.Drawing {
	if s.Bed == nil {
		return o.draw("Story stick", 0, 0, func(c *canvas) {
			c.add(render.Words("", c.st.Body.Text(c.pt(0, 0), "no story stick yet: "+s.Wants, render.InkSoft, render.Left)))
		})
	}
	v := &stick{s: s, known: knownOf(s), sit: sittings(s, answers)}
	v.marks = v.heights()
	return o.draw("Story stick", stickWide, v.marks[len(v.marks)-1].z, func(c *canvas) {
		g := *v
		g.canvas = c
		g.paint()
	})
}

// Sizes of the picture in mm of the room: the stick, and the ground beside it for the sleepers.
const (
	stickThick = 60.0
	stickWide  = 1500.0
	sitAt      = 500.0 // from the stick to a sitter's back
)

// mark is one height on the stick.
type mark struct {
	z     float64
	words string
	ref   string
	firm  bool // not resting on a single reading
}

type stick struct {
	*canvas
	s     *fit.Scene
	known known
	sit   [2]sitting
	marks []mark
}

// heights returns the heights of the stick, lowest first; what is less than a hair over another is left out.
func (v *stick) heights() []mark {
	s, b := v.s, v.s.Bed
	up := func(z float64) float64 { return heightOver(s, z) }
	list := []mark{
		{0, floorWords(s), "floor", true},
		{up(b.Lower.Frame), "lower rail, underside", "lower.rail.front", true},
		{up(b.Lower.Top), "lower deck", "lower.deck", true},
		{up(b.Lower.MattressTop), "lower mattress", "mattress.lower", true},
		{up(b.Upper.Frame), "upper bed, underside", "upper.rail.front", true},
		{up(b.Upper.Top), "upper deck", "upper.deck", true},
		{up(b.Upper.MattressTop), "upper mattress", "mattress.upper", true},
	}
	for _, d := range b.Drawers[:min(1, len(b.Drawers))] {
		list = append(list, mark{up(d.Shut.Top()), "drawer top", d.ID, true})
	}
	for _, g := range b.Guards[:min(1, len(b.Guards))] {
		list = append(list, mark{up(g.Top), "rail top", "guard.front", true})
	}
	for _, p := range v.sit {
		if p.known {
			list = append(list, mark{p.seat + p.tall, "seated head", "", true})
		}
	}
	if p := v.sit[1]; p.known {
		list = append(list, mark{p.lowest, overWords(p.what), p.what, true})
	}
	list = append(list, v.hung()...)
	slices.SortStableFunc(list, func(a, c mark) int { return cmp.Compare(a.z, c.z) })
	return slices.CompactFunc(list, func(a, c mark) bool { return math.Abs(a.z-c.z) < shut })
}

// hung returns the heights of what hangs from the ceiling and on the wall.
func (v *stick) hung() []mark {
	var list []mark
	for i := range v.s.Survey.Layout.Fans {
		key := "fan." + keyOr(v.s.Job.Room.Fans[i].Key, i)
		if z := v.s.Survey.Value(v.s.Survey.Layout.Fans[i].Blades); !math.IsNaN(z) {
			list = append(list, mark{z, "fan blades", key, v.known.firm(key + ".blades")})
		}
	}
	for _, c := range v.s.Bed.Cleats {
		list = append(list, mark{c.Box.Top(), "shelf cleat, top", c.ID, true})
	}
	return list
}

// floorWords names the floor.
func floorWords(s *fit.Scene) string {
	if s.Job.Room.Floor.Cover == "carpet" {
		return "carpet top"
	}
	return "floor"
}

// overWords names what is over the upper sleeper's head.
func overWords(what string) string {
	if len(what) > 8 && what[:8] == "ceiling." {
		return "ceiling over the head"
	}
	return what
}

func (v *stick) paint() {
	top := v.marks[len(v.marks)-1].z
	v.body(top)
	v.labels()
	for i := range v.sit {
		v.bed(&v.sit[i], i)
	}
	for i := range v.sit {
		v.sitter(&v.sit[i], i)
	}
	v.stroke("floor", render.Line(v.pt(-stickThick, 0), v.pt(stickWide, 0)), v.st.Cut)
	if p := v.sit[1]; p.known {
		v.stroke(p.what, render.Line(v.pt(-stickThick, p.lowest), v.pt(stickWide, p.lowest)), v.st.Cut)
	}
}

// body draws the stick with its marks every foot, or every 500 mm.
func (v *stick) body(top float64) {
	v.outlined("stick", render.Box(v.rect(0, 0, stickThick, top)), render.InkBoard, v.st.Seen)
	step := 304.8 / 4
	if v.o.Unit != 0 && v.dim(100, true) == "100" {
		step = 100
	}
	var ticks render.Path
	for i := 1; float64(i)*step < top; i++ {
		long := stickThick / 4
		if i%4 == 0 {
			long = stickThick / 2
		}
		z := float64(i) * step
		ticks = append(ticks, render.Line(v.pt(stickThick-long, z), v.pt(stickThick, z))...)
	}
	v.stroke("stick", ticks, v.st.Thin)
}

// labels writes the heights left of the stick, kept apart.
func (v *stick) labels() {
	line := v.st.Body.Leading()
	want, size := make([]render.Paper, len(v.marks)), make([]render.Paper, len(v.marks))
	for i, m := range v.marks {
		want[len(v.marks)-1-i], size[len(v.marks)-1-i] = v.pt(0, m.z).Y, line*2.1
	}
	at := render.Spread(want, size)
	edge := v.pt(0, 0).X
	for i, m := range v.marks {
		y := at[len(v.marks)-1-i]
		x := edge - v.st.Tick*3
		z := v.pt(0, m.z).Y
		v.stroke(m.ref, render.Polyline(render.Point{X: edge, Y: z}, render.Point{X: edge - v.st.Tick, Y: z}, render.Point{X: x + v.st.Gap, Y: y}), v.st.Thin)
		v.add(render.Words(m.ref, v.st.Measure.Text(render.Point{X: x, Y: y}, v.read(m.z, m.firm), render.InkMain, render.Right)))
		v.add(render.Words(m.ref, v.st.Body.Text(render.Point{X: x, Y: y + line}, m.words, render.InkSoft, render.Right)))
	}
}

// bed draws a mattress on its deck, with who sleeps there.
func (v *stick) bed(p *sitting, i int) {
	deck := [2]*bunk.DeckAt{&v.s.Bed.Lower, &v.s.Bed.Upper}[i]
	under := heightOver(v.s, deck.Top)
	v.outlined(mattressRefs[i], render.Box(v.rect(sitAt-200, under, stickWide, p.seat)), render.InkWhite, v.st.Seen)
	v.outlined("deck."+deckNames[i], render.Box(v.rect(sitAt-200, heightOver(v.s, deck.Frame), stickWide, under)), render.InkBoard, v.st.Thin)
	if p.name != "" {
		mid := v.pt((sitAt-200+stickWide)/2, (under+p.seat)/2)
		v.add(render.Words(mattressRefs[i], v.st.Body.Text(mid, p.name, render.InkMain, render.Centre).Middled()))
	}
}

// sitter draws who sits on a mattress, and the headroom with its spare.
func (v *stick) sitter(p *sitting, i int) {
	if !p.known {
		v.add(render.Words("", v.st.Body.Text(v.pt(sitAt-200, p.seat+60), p.answer.Say(v.o.Unit), render.InkSoft, render.Left)))
		return
	}
	v.person("sitter."+deckNames[i], sitAt, p.seat, p.tall, 1)
	v.headroom(p)
}

// headroom brackets the free height over a mattress and writes what is to spare over the head.
func (v *stick) headroom(p *sitting) {
	x := sitAt - 260
	ink := render.InkFits
	if p.spare < 0 {
		ink = render.InkNotFit
	}
	head := p.seat + p.tall
	v.stroke("headroom", render.Line(v.pt(x, p.seat), v.pt(x, p.lowest)), v.st.Thin)
	bar := v.st.Cut
	bar.Ink = ink
	v.stroke("headroom", render.Line(v.pt(x, head), v.pt(x, p.lowest)), bar)
	line := v.st.Body.Leading()
	at := v.pt(sitAt+0.3*p.tall, p.seat+0.66*p.tall)
	v.add(
		render.Words("headroom", v.st.Body.Text(at, "headroom "+v.o.Length(p.lowest-p.seat), render.InkSoft, render.Left)),
		render.Words("headroom", v.st.Measure.Text(at.Plus(render.Point{Y: line}), fit.SpareWords(p.spare, yardstick.MM, v.o.Unit), ink, render.Left)))
}
