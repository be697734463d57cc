package view

import "bunkwright/render"

// others are the doors and windows of the wall beside what is measured: they tell which wall it is.
func (f *cardFace) others() []string {
	var out []string
	r := &f.s.Job.Room
	add := func(ref, wall string) {
		if wall == f.c.Shown.Wall && ref != f.c.Shown.Thing && f.c.Shown.Thing == "" {
			out = append(out, ref)
		}
	}
	for i, d := range r.Doors {
		add("door."+keyOr(d.Key, i), d.Wall)
	}
	for i, w := range r.Windows {
		add("window."+keyOr(w.Key, i), w.Wall)
	}
	return out
}

// draw draws a thing on the wall.
func (f *cardFace) draw(ref string, t cardThing) {
	if !t.found {
		return
	}
	r := f.rect(t.x0, t.z0, t.x1, t.z1)
	switch t.table {
	case "window":
		f.window(r)
	case "door":
		f.door(r, t)
	case "outlet":
		f.outlet(r)
	case "register":
		f.outlined(render.Box(r), render.InkWell, f.st.Seen)
		for i := 1; i < 4; i++ {
			y := r.Min.Y + r.H()*render.Paper(i)/4
			f.stroke(render.Line(render.Point{X: r.Min.X, Y: y}, render.Point{X: r.Max.X, Y: y}), f.st.Thin)
		}
	case "stud":
		f.stroke(render.Box(r), f.st.Behind)
	case "fan":
		f.fan(r)
	case "light", "alarm":
		f.light(r, t.table)
	case "beam":
		f.outlined(render.Box(render.Rect{Min: render.Point{X: f.box.Min.X, Y: r.Min.Y}, Max: render.Point{X: f.box.Max.X, Y: r.Max.Y}}), render.InkWallCut, f.st.Seen)
	case "ceiling":
	default:
		f.outlined(render.RoundBox(r, f.st.Gap/2), render.InkWell, f.st.Seen)
	}
}

// trim is how wide a casing is drawn, as a share of the wall.
const trim = 0.03

func (f *cardFace) window(r render.Rect) {
	w := f.box.W() * trim
	f.outlined(render.Box(r.Grow(w)), render.InkBoard, f.st.Seen)
	f.outlined(render.Box(r), render.InkGlass, f.st.Seen)
	y := r.Centre().Y
	f.stroke(render.Line(render.Point{X: r.Min.X, Y: y}, render.Point{X: r.Max.X, Y: y}), f.st.Seen)
	sill := render.Rect{Min: render.Point{X: r.Min.X - w*1.5, Y: r.Max.Y}, Max: render.Point{X: r.Max.X + w*1.5, Y: r.Max.Y + w*0.7}}
	f.outlined(render.Box(sill), render.InkBoard, f.st.Seen)
}

func (f *cardFace) door(r render.Rect, t cardThing) {
	w := f.box.W() * trim
	outer := render.Rect{Min: render.Point{X: r.Min.X - w, Y: r.Min.Y - w}, Max: render.Point{X: r.Max.X + w, Y: r.Max.Y}}
	f.outlined(render.Box(outer), render.InkBoard, f.st.Seen)
	f.outlined(render.Box(r), render.InkDrawerFront, f.st.Seen)
	f.add(render.Fill("", render.Circle(render.Point{X: r.Max.X - w*1.2, Y: r.Centre().Y + r.H()*0.06}, w*0.45), render.InkMain))
}

func (f *cardFace) outlet(r render.Rect) {
	f.outlined(render.RoundBox(r, f.st.Gap/3), render.InkWhite, f.st.Seen)
	for _, y := range []render.Paper{0.3, 0.7} {
		for _, x := range []render.Paper{0.38, 0.62} {
			at := render.Point{X: r.Min.X + r.W()*x, Y: r.Min.Y + r.H()*y}
			f.stroke(render.Line(render.Point{X: at.X, Y: at.Y - r.H()*0.08}, render.Point{X: at.X, Y: at.Y + r.H()*0.08}), f.st.Thin)
		}
	}
}

func (f *cardFace) fan(r render.Rect) {
	c := r.Centre()
	f.stroke(render.Line(render.Point{X: c.X, Y: f.box.Min.Y}, c), f.st.Cut)
	blade := render.Rect{Min: render.Point{X: r.Min.X, Y: r.Max.Y - r.H()*0.35}, Max: r.Max}
	f.outlined(render.RoundBox(blade, blade.H()/2), render.InkBoard, f.st.Seen)
	f.outlined(render.RoundBox(render.Around(c).Grow(r.H()*0.5), f.st.Gap/2), render.InkWell, f.st.Seen)
}

func (f *cardFace) light(r render.Rect, table string) {
	c := r.Centre()
	f.stroke(render.Line(render.Point{X: c.X, Y: f.box.Min.Y}, render.Point{X: c.X, Y: r.Min.Y}), f.st.Seen)
	ink := render.InkTape
	if table == "alarm" {
		ink = render.InkWhite
	}
	f.outlined(render.RoundBox(r, min(r.W(), r.H())*0.4), ink, f.st.Seen)
}
