package view

import (
	"math"

	"bunkwright/render"
	"bunkwright/room"
)

// Heights at which openings are drawn that nobody measured, and widths of their members, in mm.
const (
	usualSill  = 900.0
	usualHead  = 2000.0
	sashWide   = 45.0
	knobHigh   = 1000.0
	panelFrame = 110.0
)

// studs draws the studs behind the wall, broken where an opening is, with a dot by how each was found.
func (f *facing) studs() {
	for _, st := range studsOf(f.s, f.w) {
		top := heightOf(f.edge, st.at)
		at := 0.0
		for _, o := range f.openingsOver(st.at) {
			f.studLine(st, at, o.lo)
			at = max(at, o.hi)
		}
		f.studLine(st, at, top)
		sign := render.DotOpen
		if st.found == "twice" {
			sign = render.DotFilled
		}
		dot := f.pt(st.at, top-float64(f.st.Tick)*1.6/f.k)
		f.spots[st.ref] = dot
		f.add(sign.At(st.ref, dot, f.st.Tick)...)
	}
}

func (f *facing) studLine(st stud, from, to float64) {
	if to > from {
		f.stroke(st.ref, render.Line(f.pt(st.at, from), f.pt(st.at, to)), f.st.Behind)
	}
}

// openingsOver returns the heights over a place of the wall that are open.
func (f *facing) openingsOver(x float64) []gap {
	var out []gap
	l := &f.s.Survey.Layout
	for i := range l.Doors {
		at, ok := onWall(f.s, l.Doors[i].OnWallRefs, l.Doors[i].Wide, usualDoor)
		if high := f.s.Survey.Value(l.Doors[i].High); ok && !at.guessed && at.w == f.w && at.lo < x && x < at.hi && high > 0 {
			out = append(out, gap{0, high})
		}
	}
	for i := range l.Windows {
		at, ok := onWall(f.s, l.Windows[i].OnWallRefs, l.Windows[i].Wide, usualWindow)
		sill, head := f.s.Survey.Value(l.Windows[i].Sill), f.s.Survey.Value(l.Windows[i].Head)
		if ok && !at.guessed && at.w == f.w && at.lo < x && x < at.hi && head > sill {
			out = append(out, gap{sill, head})
		}
	}
	sortGaps(out)
	return out
}

func (f *facing) windows() {
	for i := range f.s.Job.Room.Windows {
		win, refs := &f.s.Job.Room.Windows[i], &f.s.Survey.Layout.Windows[i]
		at, ok := onWall(f.s, refs.OnWallRefs, refs.Wide, usualWindow)
		if !ok || at.w != f.w {
			continue
		}
		ref := "window." + keyOr(win.Key, i)
		sill, head := f.s.Survey.Value(refs.Sill), f.s.Survey.Value(refs.Head)
		if at.guessed || !(head > sill) {
			f.unplaced(ref, "window", at, usualSill, usualHead)
			continue
		}
		f.windowTrim(ref, at, sill, head, f.s.Survey.Value(refs.Casing))
		f.sashes(ref, win.Kind, at, sill, head)
		f.stroke(ref, f.box(at.lo, sill, at.hi, head), f.st.Seen)
		f.spots[ref] = f.pt(at.middle(), (sill+head)/2)
		f.label(ref, at.middle(), sill+(head-sill)*0.3, 20, f.words("window"))
	}
}

// unplaced draws an opening whose place nobody read: dashed, with the sign of what is not in.
func (f *facing) unplaced(ref, name string, at place, low, high float64) {
	f.stroke(ref, f.box(at.lo, low, at.hi, high), f.st.Behind.In(render.InkCannotTell))
	f.notIn(ref, name, at.middle(), (low+high)/2)
}

// windowTrim draws the casing round a window and the ledge under it.
func (f *facing) windowTrim(ref string, at place, sill, head, casing float64) {
	if !(casing > 0) {
		return
	}
	ledge := casing * 0.35
	f.outlined(ref, f.box(at.lo-casing, sill, at.hi+casing, head+casing), render.InkBoard, f.st.Thin)
	f.outlined(ref, f.box(at.lo-casing, sill-ledge-casing*0.8, at.hi+casing, sill-ledge), render.InkBoard, f.st.Thin)
	f.outlined(ref, f.box(at.lo-casing*1.3, sill-ledge, at.hi+casing*1.3, sill), render.InkBoard, f.st.Thin)
}

// sashes draws the frames of the glass by how the window opens; dashed lines meet at the side of the hinges where that is known.
func (f *facing) sashes(ref, kind string, at place, sill, head float64) {
	mid, high := at.middle(), (sill+head)/2
	pane := func(x0, z0, x1, z1 float64) {
		f.outlined(ref, f.box(x0, z0, x1, z1), render.InkDrawerFront, f.st.Thin)
		f.outlined(ref, f.box(x0+sashWide, z0+sashWide, x1-sashWide, z1-sashWide), render.InkGlass, f.st.Thin)
	}
	hinge := func(x0, z0, x1, z1, x2, z2 float64) {
		f.stroke(ref, render.Polyline(f.pt(x0, z0), f.pt(x1, z1), f.pt(x2, z2)), f.st.Behind)
	}
	switch kind {
	case "slides up":
		pane(at.lo, sill, at.hi, high+sashWide/2)
		pane(at.lo, high-sashWide/2, at.hi, head)
	case "slides sideways":
		pane(at.lo, sill, mid+sashWide/2, head)
		pane(mid-sashWide/2, sill, at.hi, head)
	case "hinged at the top":
		pane(at.lo, sill, at.hi, head)
		hinge(at.lo, sill, mid, head, at.hi, sill)
	case "hinged at the bottom":
		pane(at.lo, sill, at.hi, head)
		hinge(at.lo, head, mid, sill, at.hi, head)
	default:
		pane(at.lo, sill, at.hi, head)
	}
}

func (f *facing) doors() {
	for i := range f.s.Job.Room.Doors {
		d, refs := &f.s.Job.Room.Doors[i], &f.s.Survey.Layout.Doors[i]
		at, ok := onWall(f.s, refs.OnWallRefs, refs.Wide, usualDoor)
		if !ok || at.w != f.w {
			continue
		}
		ref := "door." + keyOr(d.Key, i)
		high := f.s.Survey.Value(refs.High)
		if math.IsNaN(high) {
			high = usualHead
		}
		if at.guessed {
			f.unplaced(ref, doorName(d), at, 0, high)
			continue
		}
		f.door(ref, d, at, high, f.s.Survey.Value(refs.Casing))
		f.spots[ref] = f.pt(at.middle(), high/2)
		f.label(ref, at.middle(), high*0.62, 25, f.wrapped(f.mm(at.hi-at.lo)-f.st.Gap*2, doorName(d), render.InkMain)...)
	}
}

// door draws a door shut: casing, leaves with a panel each, knobs at the free edges.
func (f *facing) door(ref string, d *room.Door, at place, high, casing float64) {
	if casing > 0 {
		f.outlined(ref, f.box(at.lo-casing, 0, at.hi+casing, high+casing), render.InkBoard, f.st.Thin)
	}
	f.outlined(ref, f.box(at.lo, 0, at.hi, high), f.ground(), f.st.Seen)
	if d.Kind == "open" {
		return
	}
	n := max(d.Leaves, 1)
	if d.Kind == "slides" || d.Kind == "folds" {
		n *= 2
	}
	wide := (at.hi - at.lo) / float64(n)
	for k := range n {
		lo := at.lo + float64(k)*wide
		f.outlined(ref, f.box(lo, 0, lo+wide, high), render.InkDrawerFront, f.st.Seen)
		f.stroke(ref, f.box(lo+panelFrame, panelFrame*2, lo+wide-panelFrame, high-panelFrame), f.st.Thin)
	}
	f.knobs(ref, d, at)
}

// knobs draws a knob at the free edge of each hinged leaf. Where the hinges are not known there is none.
func (f *facing) knobs(ref string, d *room.Door, at place) {
	if d.Kind != "swings" {
		return
	}
	for _, l := range leavesOf(d, at) {
		pin := f.project(l.pin.At(0))
		free := pin.X + l.wide*l.shut.Dot(f.w.Dir)
		back := math.Copysign(70, pin.X-free)
		f.outlined(ref, render.Circle(f.pt(free+back, knobHigh), max(f.mm(28), 0.6)), render.InkPaper, f.st.Thin)
	}
}
