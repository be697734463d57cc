package view

import (
	"math"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/yardstick"
	"bunkwright/render"
	"bunkwright/room/length"
)

// Where the figures stand beside who sits up, as shares of the seated height from the middle of the head towards the feet.
const (
	spareAt = 0.62
	freeAt  = 1.30
)

// spareThick is how much thicker the bar of the spare is than an edge cut through.
const spareThick = 2.2

// sitter draws who sits up, the free cylinder round the head, and the air over it.
func (v *section) sitter(i int) {
	p := &v.sit[i]
	if !p.known {
		return
	}
	x, dir := v.facing(p)
	r := yardstick.Figure(yardstick.HeadCylinder)
	free := render.Polyline(v.pt(x-r, p.seat+0.72*p.tall), v.pt(x-r, p.lowest), v.pt(x+r, p.lowest), v.pt(x+r, p.seat+0.72*p.tall))
	v.stroke("cylinder", free, v.st.KeepClear)
	v.add(v.figure(p).marks(v.canvas)...)
	if p.who != "" {
		home := v.pt(x+dir*0.36*p.tall, p.seat+0.42*p.tall)
		wide := v.mm((spareAt - chestAt) * p.tall)
		for _, word := range strings.Fields(p.who) { // a word is never broken
			wide = max(wide, v.st.Body.Wide(word)+0.1)
		}
		lines := v.wrapped(wide, p.who, render.InkMain)
		v.notes = append(v.notes, label{
			ref: p.ref, lines: lines, home: home, near: farAway, on: patchGround, only: v.lapOf(p), needed: true, dot: v.pt(x, p.seat+0.4*p.tall),
		})
	}
}

// chestAt and thighAt are how far a figure reaches towards the feet and up beside what is written before its chest, as shares of its height.
const (
	chestAt = 0.14
	thighAt = 0.24
)

// lapOf is the free ground before a chest, over the legs and under what is over them.
func (v *section) lapOf(p *sitting) render.Rect {
	x, dir := v.facing(p)
	far, hi := v.insideAlong()
	if dir > 0 {
		far = hi
	}
	return v.rect(x+dir*chestAt*p.tall, p.seat+thighAt*p.tall, far, min(p.lowest, p.head()))
}

// chestOf is what the upright part of a figure covers.
func (v *section) chestOf(p *sitting) render.Rect {
	x, dir := v.facing(p)
	return v.rect(x-dir*backOut*1.05*p.tall, p.seat, x+dir*chestAt*p.tall, p.head())
}

// facing returns where a head is, and which way the legs are stretched.
func (v *section) facing(p *sitting) (x, dir float64) {
	if v.mirrored {
		return v.along(p.x), -p.legs
	}
	return v.along(p.x), p.legs
}

func (v *section) figure(p *sitting) person {
	x, dir := v.facing(p)
	return person{ref: p.ref, x: x, seat: p.seat, tall: p.tall, dir: dir, ground: v.ground()}
}

// over draws what stands over everything: the air over the heads, and a figure's outline, dashed, where it runs into what is above.
func (v *section) over() {
	for i := range v.sit {
		p := &v.sit[i]
		if !p.known {
			if i == 0 || v.sit[0].known || v.sit[0].wants != p.wants { // what is missing for both is said once
				v.missing(p)
			}
			continue
		}
		if p.spare < 0 && i == 0 {
			above := v.rect(v.lo, v.high+p.tall, v.hi, p.lowest)
			for _, m := range v.figure(p).hidden(v.canvas) {
				v.add(m.Clip(above)...)
			}
		}
		v.air(p)
	}
}

// missing says over the mattress what is not known yet.
func (v *section) missing(p *sitting) {
	words := p.wants
	if words == "" {
		words = "cannot tell yet who sits up here"
	}
	lines := v.wrapped(v.mm(v.b.Inside.Long*0.8), kept(words), render.InkCannotTell)
	v.notes = append(v.notes, label{
		ref: p.ref, lines: lines, home: v.pt(v.along(p.x), p.seat+250), near: farAway, sign: render.SignCannotTell, signs: true, on: patchGround,
	})
}

// air dimensions the seated height and the headroom, and draws what is to spare over the head as a bar.
func (v *section) air(p *sitting) {
	x, dir := v.facing(p)
	at := v.clearOfStuds(x + dir*spareAt*p.tall)
	over := float64(v.st.Tick) / v.k
	v.stroke(p.ref, render.Line(v.pt(x+dir*0.04*p.tall, p.head()), v.pt(at+dir*over, p.head())), v.st.Extension)
	d := render.Dimension{Ref: p.ref + ".tall", From: v.pt(at, p.seat), To: v.pt(at, p.head()), Words: v.dim(p.tall, true)}
	v.onPatches(v.st.Dimension(d))
	v.spare(p, at, dir)
	words := v.dim(p.free, overFirm(v.s, v.known, p))
	apart := float64((v.st.Measure.Wide(d.Words)+max(v.st.Measure.Wide(words), v.st.Body.Wide("headroom")))/2+v.st.Gap*2) / v.k
	free := at + dir*max(apart, dir*(v.clearOfStuds(x+dir*freeAt*p.tall)-at))
	d = render.Dimension{Ref: "headroom." + p.ref, From: v.pt(free, p.seat), To: v.pt(free, p.lowest), Words: words}
	v.onPatches(v.st.Dimension(d))
	mid := v.pt(free, p.seat+(p.lowest-p.seat)/2)
	mid.Y += v.st.Body.Leading()
	t := v.st.Body.Text(mid, "headroom", render.InkMain, render.Centre).Middled()
	v.add(render.Label(d.Ref, t, v.ground(), v.st.Gap*0.4)...)
}

// onPatches adds marks, their words on patches of ground.
func (v *section) onPatches(marks []render.Mark) {
	for _, m := range marks {
		if m.Kind == render.KindText {
			v.fill("", render.Box(m.Bounds().Grow(v.st.Gap*0.3)), v.ground())
		}
		v.add(m)
	}
}

// clearOfStuds returns the place nearest to x at which an upright line does not run into the line of a stud.
func (v *section) clearOfStuds(x float64) float64 {
	if v.behind == nil {
		return x
	}
	air := float64(v.st.Tick) * 1.6 / v.k
	for _, st := range studsOf(v.s, v.behind) {
		if at := v.behind.Point(st.at, 0).Sub(v.from).Dot(v.dir); math.Abs(x-at) < air {
			return at + math.Copysign(air, x-at)
		}
	}
	return x
}

// spare draws the bar with its words beside it, towards the feet.
func (v *section) spare(p *sitting, at, dir float64) {
	bar := v.st.Cut.In(p.ink(v.canvas))
	bar.Width *= spareThick
	v.stroke("spare."+p.ref, render.Line(v.pt(at, p.head()), v.pt(at, p.lowest)), bar)
	anchor := render.Left
	if dir < 0 {
		anchor = render.Right
	}
	mid := v.pt(at, (p.head()+p.lowest)/2).Plus(render.Point{X: render.Paper(dir) * v.st.Gap * 2})
	if p.lowest < p.head() {
		mid.Y = v.pt(0, p.lowest).Y + v.st.Body.Leading()*0.75
	}
	t := v.st.Measure.Text(mid, p.spareWords(v.canvas), bar.Ink, anchor).Middled()
	v.add(render.Label("spare."+p.ref, t, v.ground(), v.st.Gap*0.4)...)
	if p.spare < 0 && !v.paper() {
		b := t.Bounds()
		x := b.Max.X + v.st.Gap + v.st.Sign/2
		if dir < 0 {
			x = b.Min.X - v.st.Gap - v.st.Sign/2
		}
		v.add(render.SignDoesNotFit.At("spare."+p.ref, render.Point{X: x, Y: b.Centre().Y}, v.st.Sign)...)
	}
}

// overFirm tells whether what is over a head does not rest on a single reading.
func overFirm(s *fit.Scene, k known, p *sitting) bool {
	marks := append(ceilingMark(s, k, p), overMark(s, k, p)...)
	for _, m := range append(marks, hungMarks(s, k)...) {
		if m.ref == p.what {
			return m.firm
		}
	}
	return true
}

// least writes a length rounded down: the most that there is room for.
func (c *canvas) least(mm float64) string {
	return fit.Amount(mm, yardstick.MM, c.o.Unit, length.TowardZero)
}
