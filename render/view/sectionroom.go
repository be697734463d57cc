package view

import (
	"math"

	"bunkwright/render"
	"bunkwright/room/geom"
)

// wallBehind draws the wall that is looked at: its ground, studs, baseboard, and the ceiling where that is lower or higher at the wall.
func (v *section) wallBehind() {
	if v.ceiling == nil {
		v.fill("", render.Box(v.rect(v.lo, 0, v.hi, v.high)), v.ground())
	} else {
		v.fill("", v.shape(append(geom.Polygon{{X: v.hi}, {X: v.lo}}, v.ceiling...)), v.ground())
	}
	if v.behind == nil {
		return
	}
	ref := "wall." + v.behind.Key
	over := ceilingsOf(v.s)
	for _, st := range studsOf(v.s, v.behind) {
		q := v.behind.Point(st.at, 1)
		x := q.Sub(v.from).Dot(v.dir)
		if z, _, ok := over.at(q); ok && x > v.lo && x < v.hi {
			v.stroke(st.ref, render.Line(v.pt(x, 0), v.pt(x, min(z, heightOf(v.ceilingOr(z), x)))), v.st.Behind)
		}
	}
	if h := v.behind.BaseHigh; h > 0 {
		v.stroke(ref+".baseboard", render.Line(v.pt(v.lo, h), v.pt(v.hi, h)), v.st.Thin)
	}
	v.edgeBehind(over)
}

// ceilingOr returns the ceiling over the section, or a level one where it is not known.
func (v *section) ceilingOr(z float64) []geom.V2 {
	if v.ceiling != nil {
		return v.ceiling
	}
	return []geom.V2{{X: v.lo, Y: z}, {X: v.hi, Y: z}}
}

// edgeBehind draws where the ceiling meets the wall, if that is seen under the cut.
func (v *section) edgeBehind(over ceilings) {
	if v.ceiling == nil {
		return
	}
	const steps = 24
	var line []render.Point
	lower := false
	for i := 0; i <= steps; i++ {
		x := v.lo + (v.hi-v.lo)*(0.001+0.998*float64(i)/steps)
		along, _ := v.behind.Along(v.from.Add(v.dir.Mul(x)))
		z, _, ok := over.at(v.behind.Point(along, 1))
		if !ok {
			return
		}
		lower = lower || z < heightOf(v.ceiling, x)-5
		line = append(line, v.pt(x, min(z, heightOf(v.ceiling, x))))
	}
	if lower {
		v.stroke("wall."+v.behind.Key, render.Polyline(line...), v.st.Seen)
	}
}

// shape returns an outline on paper.
func (v *section) shape(q geom.Polygon) render.Path {
	points := make([]render.Point, len(q))
	for i := range q {
		points[i] = v.pt(q[i].X, q[i].Y)
	}
	return render.Polygon(points...)
}

// frameOfRoom draws what is cut of the room: floor, ceiling, beams, and the walls at its ends, or where the drawing is broken off.
func (v *section) frameOfRoom() {
	over := v.mm(v.outer(0))
	v.add(v.st.Ground("floor", v.pt(v.lo, 0).Plus(render.Point{X: -over}), v.pt(v.hi, 0).Plus(render.Point{X: v.mm(v.outer(1))}))...)
	v.beams()
	v.cutCeiling()
	for i := range v.ends {
		v.end(i)
	}
}

// outer is how thick the wall at an end is drawn, 0 where there is none.
func (v *section) outer(i int) float64 {
	if v.ends[i].wall == nil {
		return 0
	}
	read, _ := v.s.Job.Room.Wall(v.ends[i].wall.Key)
	return wallDeep(read.Kind)
}

// cutCeiling draws the ceiling, hatched like ground, or says that it is not known.
func (v *section) cutCeiling() {
	if v.ceiling == nil {
		v.notes = append(v.notes, label{
			ref: "ceiling", lines: []line{{"ceiling", v.st.Body, render.InkCannotTell}}, home: v.pt((v.lo+v.hi)/2, v.high-60), near: farAway,
			sign: render.SignCannotTell, signs: true,
		})
		v.add(v.st.BreakLine("ceiling", v.pt(v.lo, v.high), v.pt(v.hi, v.high)))
		return
	}
	over := ceilingsOf(v.s)
	for i := 1; i < len(v.ceiling); i++ {
		a, b := v.ceiling[i-1], v.ceiling[i]
		ref := "ceiling"
		if _, which, ok := over.at(v.from.Add(v.dir.Mul((a.X + b.X) / 2))); ok {
			ref = over.faces[which].ref
		}
		v.add(v.st.Ground(ref, v.pt(b.X, b.Y), v.pt(a.X, a.Y))...)
	}
}

// end draws the wall at one end cut through, or the line along which the drawing is broken off.
func (v *section) end(i int) {
	e := v.ends[i]
	top := v.high
	if v.ceiling != nil {
		top = heightOf(v.ceiling, e.at)
	}
	if e.wall == nil {
		over := float64(v.st.Tick*0.8) / v.k
		v.add(v.st.BreakLine("", v.pt(e.at, -over), v.pt(e.at, top+over)))
		return
	}
	ref := "wall." + e.wall.Key
	x := e.at + v.outer(i)*float64(2*i-1)
	box := render.Box(v.rect(e.at, 0, x, top))
	v.fill(ref, box, render.InkWallCut)
	if v.paper() {
		v.fill(ref, box, render.InkPaper)
	}
	v.stroke(ref, render.Hatch(box, v.st.Hatch, 45), v.st.Thin)
	v.stroke(ref, box, v.st.Cut)
}

// beams draws beams that the section cuts across.
func (v *section) beams() {
	for i, b := range v.s.Job.Room.Beams {
		refs := &v.s.Survey.Layout.Beams[i]
		out, wide, under := v.s.Survey.Value(refs.Out), v.s.Survey.Value(refs.Wide), v.s.Survey.Value(refs.Under)
		w := wallNamed(v.s, b.Along)
		if w == nil || v.ceiling == nil || math.IsNaN(out+wide+under) || math.Abs(w.Dir.Dot(v.dir)) > 0.7 {
			continue
		}
		at := func(out float64) float64 {
			return w.Point(0, out).Sub(v.from).Cross(w.Dir) / v.dir.Cross(w.Dir)
		}
		lo, hi := max(min(at(out), at(out+wide)), v.lo), min(max(at(out), at(out+wide)), v.hi)
		if hi <= lo {
			continue
		}
		ref := "beam." + keyOr(b.Key, i)
		box := render.Box(v.rect(lo, under, hi, max(heightOf(v.ceiling, lo), heightOf(v.ceiling, hi))))
		v.cutThrough(ref, box)
		v.name(ref, v.pt((lo+hi)/2, under-60), 12, v.soft("beam"))
	}
}
