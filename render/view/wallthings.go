package view

import (
	"math"

	"bunkwright/render"
	"bunkwright/room/survey"
)

// Sizes at which small things on a wall are drawn, mm.
const (
	plateWide    = 70.0
	plateHigh    = 115.0
	usualOutlet  = 300.0
	usualHeater  = 600.0
	usualInWall  = 1200.0
	alarmAcross  = 120.0
	usualFurnish = 900.0
)

// things draws what is fixed to the wall.
func (f *facing) things() {
	f.outlets()
	f.grilles()
	f.heaters()
	f.alarms()
	f.lamps()
}

func (f *facing) outlets() {
	for i, o := range f.s.Job.Room.Outlets {
		refs := &f.s.Survey.Layout.Outlets[i]
		if refs.Wall != f.w.Index {
			continue
		}
		ref := "outlet." + keyOr(o.Key, i)
		at, _ := onWall(f.s, survey.OnWallRefs{Wall: refs.Wall, FromEnd: refs.FromEnd, At: refs.At}, 0, 0)
		z := f.s.Survey.Value(refs.Height)
		guessed := math.IsNaN(f.s.Survey.Value(refs.At)) || math.IsNaN(z)
		if math.IsNaN(z) {
			z = usualOutlet
		}
		f.plate(ref, o.Kind, at.middle(), z, guessed)
	}
}

// plate draws the plate of an outlet, a switch or a thermostat.
func (f *facing) plate(ref, kind string, x, z float64, guessed bool) {
	pen := f.st.Thin
	if guessed {
		pen = pen.In(render.InkCannotTell)
		f.notIn(ref, outletWord(kind), x, z+plateHigh*1.6)
	}
	f.spots[ref] = f.pt(x, z)
	r := f.rect(x-plateWide/2, z-plateHigh/2, x+plateWide/2, z+plateHigh/2)
	if least := f.st.Tick * 0.8; r.W() < least {
		r = r.Grow((least - r.W()) / 2)
	}
	f.outlined(ref, render.RoundBox(r, r.W()/4), render.InkPaper, pen)
	c := r.Centre()
	at := func(dx, dy float64) render.Point {
		return render.Point{X: c.X + r.W()*render.Paper(dx), Y: c.Y + r.H()*render.Paper(dy)}
	}
	switch kind {
	case "switch":
		f.stroke(ref, render.Box(render.Around(at(-0.14, -0.2), at(0.14, 0.2))), pen)
		f.stroke(ref, render.Line(at(-0.14, 0), at(0.14, 0)), pen)
	case "thermostat":
		f.stroke(ref, render.Circle(c, r.W()*0.28), pen)
	default:
		for _, dy := range []float64{-0.22, 0.22} {
			f.stroke(ref, append(render.Line(at(-0.14, dy-0.09), at(-0.14, dy+0.09)), render.Line(at(0.14, dy-0.09), at(0.14, dy+0.09))...), pen)
		}
	}
}

// grilles draws registers and returns in the wall.
func (f *facing) grilles() {
	for i, r := range f.s.Job.Room.Registers {
		refs := &f.s.Survey.Layout.Registers[i]
		if r.In != "wall" || refs.Wall != f.w.Index {
			continue
		}
		ref := "register." + keyOr(r.Key, i)
		at, _, deep, _ := area(f.s, refs.SpotRefs, refs.Wide, refs.Deep, usualGrille)
		low := f.s.Survey.Value(refs.Height)
		if at.guessed || math.IsNaN(low) {
			f.unplaced(ref, registerWord(r.Kind), at, zeroIfUnread(low)+50, zeroIfUnread(low)+50+deep)
			continue
		}
		f.barred(ref, at.lo, low, at.hi, low+deep, false)
		f.label(ref, at.middle(), low+deep+float64(f.st.Body.Leading())*0.7/f.k, 12, f.soft(registerWord(r.Kind)))
	}
}

// barred draws a box with bars: level ones for a grille, upright ones for a heater.
func (f *facing) barred(ref string, x0, z0, x1, z1 float64, upright bool) {
	r := f.rect(x0, z0, x1, z1)
	f.outlined(ref, render.Box(r), render.InkPaper, f.st.Seen)
	f.spots[ref] = r.Centre()
	var bars render.Path
	across := r.H()
	if upright {
		across = r.W()
	}
	n := max(3, int(across/1.6))
	for i := 1; i < n; i++ {
		t := render.Paper(i) / render.Paper(n)
		a, b := render.Point{X: r.Min.X, Y: r.Min.Y + r.H()*t}, render.Point{X: r.Max.X, Y: r.Min.Y + r.H()*t}
		if upright {
			a, b = render.Point{X: r.Min.X + r.W()*t, Y: r.Min.Y}, render.Point{X: r.Min.X + r.W()*t, Y: r.Max.Y}
		}
		bars = append(bars, render.Line(a, b)...)
	}
	f.stroke(ref, bars, f.st.Thin)
}

func (f *facing) heaters() {
	for i, h := range f.s.Job.Room.Heaters {
		refs := &f.s.Survey.Layout.Heaters[i]
		if refs.Wall != f.w.Index {
			continue
		}
		ref := "heater." + keyOr(h.Key, i)
		at, _, _, _ := area(f.s, refs.SpotRefs, refs.Wide, refs.Deep, usualPiece)
		high := f.s.Survey.Value(refs.High)
		if math.IsNaN(f.s.Survey.Value(refs.At)) || math.IsNaN(high) {
			f.unplaced(ref, heaterWord(h.Kind), at, 50, usualHeater)
			continue
		}
		f.barred(ref, at.lo, min(60, high/4), at.hi, high, true)
		f.label(ref, at.middle(), high+float64(f.st.Body.Leading())*0.7/f.k, 14, f.soft(heaterWord(h.Kind)))
	}
}

func (f *facing) alarms() {
	for i, a := range f.s.Job.Room.Alarms {
		refs := &f.s.Survey.Layout.Alarms[i]
		if a.In != "wall" || refs.Wall != f.w.Index {
			continue
		}
		ref := "alarm." + keyOr(a.Key, i)
		_, along, _, guessed, _ := spot(f.s, refs.SpotRefs)
		below := f.s.Survey.Value(refs.Below)
		if guessed || math.IsNaN(below) || f.guessed {
			f.notIn(ref, "smoke alarm", along, f.high-200)
			continue
		}
		z := heightOf(f.edge, along) - below - alarmAcross/2
		f.spots[ref] = f.pt(along, z)
		r := max(f.mm(alarmAcross/2), f.st.Tick*0.4)
		f.outlined(ref, render.Circle(f.pt(along, z), r), render.InkPaper, f.st.Thin)
		f.stroke(ref, render.Circle(f.pt(along, z), r*0.5), f.st.Thin)
		f.label(ref, along, z-alarmAcross*1.4, 14, f.soft("smoke alarm"))
	}
}

func (f *facing) lamps() {
	for i, l := range f.s.Job.Room.Lights {
		refs := &f.s.Survey.Layout.Lights[i]
		if l.Kind != "wall" || refs.Wall != f.w.Index {
			continue
		}
		ref := "light." + keyOr(l.Key, i)
		_, along, _, guessed, _ := spot(f.s, refs.SpotRefs)
		low, wide := f.s.Survey.Value(refs.Lowest), f.s.Survey.Value(refs.Wide)
		if guessed || math.IsNaN(low+wide) {
			f.notIn(ref, "light", along, f.high*0.75)
			continue
		}
		f.spots[ref] = f.pt(along, low+wide/2)
		f.outlined(ref, render.Circle(f.spots[ref], f.mm(wide/2)), render.InkPaper, f.st.Seen)
		f.label(ref, along, low+wide+80, 14, f.soft("light"))
	}
}

// pieces draws the furniture that stays at this wall.
func (f *facing) pieces() {
	for i, p := range f.s.Job.Room.Pieces {
		refs := &f.s.Survey.Layout.Pieces[i]
		if refs.Wall != f.w.Index {
			continue
		}
		ref, name := "furniture."+keyOr(p.Key, i), keyOr(p.Key, i)
		at, _, _, _ := area(f.s, refs.SpotRefs, refs.Wide, refs.Deep, usualPiece)
		high := f.s.Survey.Value(refs.High)
		if at.guessed || math.IsNaN(high) {
			f.unplaced(ref, name, at, 0, usualFurnish)
			continue
		}
		f.outlined(ref, f.box(at.lo, 0, at.hi, high), render.InkWell, f.st.Seen)
		f.spots[ref] = f.pt(at.middle(), high/2)
		f.label(ref, at.middle(), high/2, 12, f.words(name))
	}
}
