package view

import (
	"math"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/furniture/fit"
	"bunkwright/furniture/yardstick"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// Section draws the bed cut along the middle of the mattresses, looking at its wall side: boards that are cut through, mattresses, who
// sits up in each bed with the air over the head, and the ceiling over them. Its origin is the bed's left end at the floor.
func Section(s *fit.Scene, answers []fit.Answer, o Options) render.Drawing {
	const title = "Section through both beds"
	if s.Bed == nil {
		return o.draw(title, 0, 0, func(c *canvas) {
			c.add(render.Words("", c.st.Body.Text(c.pt(0, 0), "no section yet: "+s.Wants, render.InkSoft, render.Left)))
		})
	}
	v := &section{s: s, sit: sittings(s, answers), plane: s.Bed.Upper.Mattress.C.Y}
	high := heightOver(s, 0)
	for _, q := range v.ceilingLine() {
		high = max(high, q.Y)
	}
	v.bedView = bedView{b: s.Bed, across: v.placeAcross, up: func(q geom.V3) float64 { return heightOver(s, q.Z) }, near: func(q geom.V3) float64 { return -q.Y }}
	return o.draw(title, s.Bed.Long+2*beyond, max(high, v.top()), func(c *canvas) {
		g := *v
		g.canvas = c
		g.paint()
	})
}

// beyond is how far the section shows the room beyond the bed's ends, mm.
const beyond = 250.0

type section struct {
	bedView
	s     *fit.Scene
	sit   [2]sitting
	plane float64 // y of the cut, in the bed's own axes
}

// placeAcross turns x of the bed's own axes into the place on the drawing: a mirrored bed is drawn as it stands.
func (v *section) placeAcross(q geom.V3) float64 {
	if v.s.ToRoom.Mirrored {
		return v.s.Bed.Long - q.X
	}
	return q.X
}

func (v *section) paint() {
	v.beyondCut()
	v.inCut()
	for i := range v.sit {
		v.mattress(i)
	}
	for i := range v.sit {
		v.sitter(i)
	}
	v.floorLine(-beyond, v.b.Long+beyond)
	if line := v.ceilingLine(); len(line) > 1 {
		pts := make([]render.Point, len(line))
		for i, q := range line {
			pts[i] = v.pt(q.X, q.Y)
		}
		v.stroke("ceiling", render.Polyline(pts...), v.st.Cut)
	}
	v.heights()
}

// beyondCut draws what lies behind the cut: posts, rails, shelves on the wall.
func (v *section) beyondCut() {
	for _, b := range v.outlines() {
		if lo, hi := b.box.Bounds(); b.part != nil && b.role != bunk.RoleSlat && lo.Y >= v.plane-1 && hi.Y > v.plane {
			v.paintSeen(&b)
		}
	}
	for i := range v.b.Parts {
		if p := &v.b.Parts[i]; p.Frame == furniture.OnWall {
			lo, hi := p.Box.Bounds()
			v.outlined(p.ID, render.Box(v.rect(v.placeAcross(lo), lo.Z, v.placeAcross(hi), hi.Z)), v.ground(), v.st.Thin)
		}
	}
}

// paintSeen draws one body behind the cut, untinted on paper.
func (v *section) paintSeen(b *bedBody) {
	points := make([]render.Point, len(b.outline))
	for i, q := range b.outline {
		points[i] = v.pt(q.X, q.Y)
	}
	ink := b.ink()
	if v.paper() {
		ink = render.InkPaper
	}
	v.outlined(b.ref, render.Polygon(points...), ink, v.st.Thin)
}

// inCut draws the boards that the cut goes through.
func (v *section) inCut() {
	for i := range v.b.Parts {
		p := &v.b.Parts[i]
		lo, hi := p.Box.Bounds()
		if p.Frame != furniture.OnBed || lo.Y >= v.plane || hi.Y <= v.plane {
			continue
		}
		r := v.rect(v.placeAcross(lo), heightOver(v.s, lo.Z), v.placeAcross(hi), heightOver(v.s, hi.Z))
		v.fill(p.ID, render.Box(r), render.InkEndGrain)
		if v.paper() {
			v.fill(p.ID, render.Box(r), render.InkPaper)
			v.stroke(p.ID, render.Hatch(render.Box(r), 1.2, 45), v.st.Thin)
		}
		v.stroke(p.ID, render.Box(r), v.st.Section)
	}
}

// mattress draws a mattress cut through, with its wavy filling and who sleeps on it.
func (v *section) mattress(i int) {
	m := [2]geom.Box{v.b.Lower.Mattress, v.b.Upper.Mattress}[i]
	lo, hi := m.Bounds()
	z0, z1 := heightOver(v.s, lo.Z), heightOver(v.s, hi.Z)
	r := v.rect(v.placeAcross(lo), z0, v.placeAcross(hi), z1)
	v.outlined(mattressRefs[i], render.RoundBox(r, min(r.H()/4, 2)), render.InkWhite, v.st.Seen)
	wave := render.Path{}.Move(render.Point{X: r.Min.X + r.H()/2, Y: r.Centre().Y})
	n := max(2, math.Round(float64((r.W()-r.H())/r.H())))
	step := (r.W() - r.H()) / render.Paper(n)
	for k := range int(n) {
		x := r.Min.X + r.H()/2 + render.Paper(k)*step
		d := r.H() * 0.35 * render.Paper(1-2*(k%2))
		wave = wave.Cubic(render.Point{X: x + step/3, Y: r.Centre().Y - d}, render.Point{X: x + 2*step/3, Y: r.Centre().Y - d}, render.Point{X: x + step, Y: r.Centre().Y})
	}
	v.stroke(mattressRefs[i], wave, v.st.Thin)
	words := "mattress " + v.o.Length(hi.Z-lo.Z)
	if p := v.sit[i]; p.name != "" {
		words = p.name + ": " + words
	}
	v.add(render.Label(mattressRefs[i], v.st.Body.Text(r.Centre(), words, render.InkMain, render.Centre).Middled(), render.InkWhite, v.st.Gap)...)
}

// sitter draws who sits up, the free cylinder round the head, and the air over it.
func (v *section) sitter(i int) {
	p := &v.sit[i]
	deck := [2]*bunk.DeckAt{&v.b.Lower, &v.b.Upper}[i]
	if !p.known {
		x := v.placeAcross(deck.Mattress.C)
		v.add(render.Words("", v.st.Body.Text(v.pt(x, p.seat+80), p.answer.Say(v.o.Unit), render.InkSoft, render.Centre)))
		return
	}
	head, dir := deck.Mattress.C, 1.0
	near := deck.Mattress.Half.X - yardstick.Figure(yardstick.SeatNear)
	if deck.HeadAtRight {
		head.X += near
		dir = -1
	} else {
		head.X -= near
	}
	x := v.placeAcross(head)
	if v.s.ToRoom.Mirrored {
		dir = -dir
	}
	r := yardstick.Figure(yardstick.HeadCylinder)
	v.stroke("cylinder", render.Box(v.rect(x-r, p.seat+0.7*p.tall, x+r, p.lowest)), v.st.KeepClear)
	v.person("sitter."+deckNames[i], x, p.seat, p.tall, dir)
	v.air(p, x+dir*0.45*p.tall, dir)
}

// air brackets the free height over a mattress, and the spare over the head as a bar.
func (v *section) air(p *sitting, x, dir float64) {
	head := p.seat + p.tall
	v.stroke("headroom", render.Line(v.pt(x-dir*p.tall*0.3, head), v.pt(x+dir*40, head)), v.st.Extension)
	bar := v.st.Cut
	bar.Width *= 2
	if !v.paper() {
		bar.Ink = render.InkFits
		if p.spare < 0 {
			bar.Ink = render.InkNotFit
		}
	}
	v.stroke("headroom", render.Line(v.pt(x, head), v.pt(x, p.lowest)), bar)
	at, anchor := v.pt(x+dir*50, (head+p.lowest)/2), render.Left
	if dir < 0 {
		anchor = render.Right
	}
	v.add(render.Label("headroom", v.st.Measure.Text(at, fit.SpareWords(p.spare, yardstick.MM, v.o.Unit), bar.Ink, anchor).Middled(), v.ground(), v.st.Gap/2)...)
	d := render.Dimension{Ref: "headroom", From: v.pt(x+dir*420, p.seat), To: v.pt(x+dir*420, p.lowest), Words: "headroom " + v.dim(p.lowest-p.seat, true)}
	v.add(v.st.Dimension(d)...)
}

// ceilingLine returns the ceiling over the cut, where it is known.
func (v *section) ceilingLine() []geom.V2 {
	if !v.s.Stands {
		return nil
	}
	c := ceilingsOf(v.s)
	var line []geom.V2
	const steps = 48
	for i := 0; i <= steps; i++ {
		x := -beyond + (v.s.Bed.Long+2*beyond)*float64(i)/steps
		q := v.s.ToRoom.Point(geom.V3{X: x, Y: v.plane}).XY()
		if z, _, ok := c.at(q); ok && v.s.Outline.Contains(q) {
			line = append(line, geom.V2{X: v.placeAcross(geom.V3{X: x}), Y: z})
		}
	}
	return line
}

// heights draws the chain of heights on the left and the rail over the mattress on the right.
func (v *section) heights() {
	b := v.b
	up := func(z float64) float64 { return heightOver(v.s, z) }
	lo, hi := -beyond, b.Long+beyond
	frame := v.rect(lo, 0, hi, v.top())
	stops := []float64{0, up(b.Lower.Top), up(b.Lower.MattressTop), up(b.Upper.Frame), up(b.Upper.Top), up(b.Upper.MattressTop)}
	if p := v.sit[1]; p.known {
		stops = append(stops, p.lowest)
	}
	v.ruleSide(left, frame, rulesOf(v.uprightAt(v.stopsOf(stops...), lo)), 0)
	for i := range b.Guards {
		if g := &b.Guards[i]; g.Side == "wall" || len(b.Guards) == 1 {
			v.ruleSide(right, frame, rulesOf(v.uprightAt(v.stopsOf(up(b.Upper.MattressTop), up(g.Top)), hi)), 0)
		}
	}
}
