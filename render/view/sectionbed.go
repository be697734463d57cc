package view

import (
	"math"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// bedBehind draws the parts of the bed that lie behind the cut, what is nearer over what is farther.
func (v *section) bedBehind() {
	var list []bedBody
	for _, b := range v.outlines() {
		if lo, hi := b.box.Bounds(); b.part != nil && b.role != bunk.RoleSlat && lo.Y >= v.plane-1 && hi.Y > v.plane {
			list = append(list, b)
		}
	}
	for i := range list {
		if !covered(list[i], list[i+1:]) {
			v.paintBody(&list[i], v.st.Thin)
		}
	}
}

// shelves draws what hangs on the wall that is looked at, with the screws of the cleats.
func (v *section) shelves() {
	if v.s.Stands && v.behind != v.s.At {
		return
	}
	for i := range v.b.Parts {
		p := &v.b.Parts[i]
		if p.Frame != furniture.OnWall {
			continue
		}
		lo, hi := p.Box.Bounds()
		v.outlined(p.ID, render.Box(v.rect(v.along(lo.X), lo.Z, v.along(hi.X), hi.Z)), render.InkBoard, v.st.Thin)
		if p.Role == bunk.RoleCleat {
			v.screws(p, lo, hi)
			v.nameShelf(p.ID, v.rect(v.along(lo.X), lo.Z, v.along(hi.X), hi.Z))
		}
	}
}

// nameShelf names a shelf on its cleat where that is free of who sits before it and under the ceiling, else below it.
func (v *section) nameShelf(ref string, cleat render.Rect) {
	const words = "wall shelf"
	free := cleat
	for i := range v.sit {
		if p := &v.sit[i]; p.known {
			free = beside(free, v.chestOf(p), v.st.Gap)
		}
	}
	ceiling := v.ceilingAt(free.Centre().X)
	if free.W() > v.st.Body.Wide(words)+v.st.Gap*2 && free.H() > v.st.Body.Size && free.Min.Y > ceiling {
		v.nameIn(ref, free, words, render.InkMain, false)
		return
	}
	home := render.Point{X: free.Centre().X, Y: max(free.Max.Y, ceiling) + v.st.Body.Leading()}
	v.notes = append(v.notes, label{ref: ref, lines: []line{v.words(words)}, home: home, near: farAway, dot: free.Centre(), on: patchGround})
}

// screws crosses a cleat where it meets the studs, or at the places chosen for its screws.
func (v *section) screws(p *furniture.Part, lo, hi geom.V3) {
	var at []float64
	each := 1
	for _, c := range v.b.Cleats {
		if c.ID == p.ID {
			each = max(v.b.Sizes.Shelves[c.Shelf].ScrewsPerStud, 1)
			for _, x := range c.Screws {
				at = append(at, v.along(x))
			}
		}
	}
	a, b := min(v.along(lo.X), v.along(hi.X)), max(v.along(lo.X), v.along(hi.X))
	if len(at) == 0 && v.behind != nil {
		for _, st := range studsOf(v.s, v.behind) {
			if x := v.behind.Point(st.at, 0).Sub(v.from).Dot(v.dir); x > a && x < b {
				at = append(at, x)
			}
		}
	}
	var crosses render.Path
	for _, x := range at {
		for k := range each {
			crosses = append(crosses, crossAt(v.pt(x, lo.Z+(hi.Z-lo.Z)*(float64(k)+1)/float64(each+1)), v.st.Tick*0.22)...)
		}
	}
	if len(crosses) > 0 {
		v.stroke(p.ID+".screws", crosses, v.st.Thin)
	}
}

// inCut draws the boards that the cut goes through.
func (v *section) inCut() {
	for i := range v.b.Parts {
		p := &v.b.Parts[i]
		lo, hi := p.Box.Bounds()
		if p.Frame != furniture.OnBed || lo.Y >= v.plane || hi.Y <= v.plane {
			continue
		}
		v.cutThrough(p.ID, render.Box(v.rect(v.along(lo.X), v.lift+lo.Z, v.along(hi.X), v.lift+hi.Z)))
	}
	for _, d := range v.b.Drawers {
		lo, hi := d.Shut.Bounds()
		v.nameIn(d.ID, v.rect(v.along(lo.X), v.lift+lo.Z, v.along(hi.X), v.lift+hi.Z), "drawer", render.InkMain, false)
	}
}

// sectionHatch is how fine boards are hatched that are cut through, in the hatching of walls.
const sectionHatch = 0.75

// cutThrough draws a board in section: filled on the screen, hatched on paper.
func (v *section) cutThrough(ref string, box render.Path) {
	b := box.Bounds()
	pen := v.st.Section
	pen.Width = min(pen.Width, min(b.W(), b.H())*0.45)
	if v.paper() {
		v.fill(ref, box, render.InkPaper)
		v.stroke(ref, render.Hatch(box, v.st.Hatch*sectionHatch, 45), v.st.Thin)
	} else {
		v.fill(ref, box, render.InkEndGrain)
	}
	v.stroke(ref, box, pen)
}

// mattress draws a mattress cut through, with its wavy filling, its thickness and the most that the rail leaves room for.
func (v *section) mattress(i int) {
	m := [2]geom.Box{v.b.Lower.Mattress, v.b.Upper.Mattress}[i]
	lo, hi := m.Bounds()
	r := v.rect(v.along(lo.X), v.lift+lo.Z, v.along(hi.X), v.lift+hi.Z)
	v.outlined(mattressRefs[i], render.RoundBox(r, min(r.H()/4, 1.6)), render.InkWhite, v.st.Seen)
	v.stroke(mattressRefs[i], waves(r), v.st.Thin)
	words, and := "mattress "+v.o.Length(hi.Z-lo.Z), ", "
	if hi.Z == lo.Z {
		words, and = "mattress: how thick?", " "
	}
	if most := v.mostThick(); i == 1 && most > 0 {
		words += and + "at most " + v.least(most)
	}
	mid := r.Centre()
	if p := &v.sit[0]; i == 1 && p.known && p.spare < 0 { // that bar stands in the middle
		_, dir := v.facing(p)
		mid.X += render.Paper(dir) * r.W() * 0.25
	}
	at := v.st.Body.Text(mid, words, render.InkMain, render.Centre).Middled()
	v.add(render.Label(mattressRefs[i], at, render.InkWhite, v.st.Gap*0.8)...)
}

// waves is the line that stands for the filling of a mattress.
func waves(r render.Rect) render.Path {
	inset := r.H() * 0.45
	long := r.W() - 2*inset
	n := max(1, int(math.Round(float64(long/(r.H()*1.5)))))
	step := long / render.Paper(2*n)
	y := r.Centre().Y
	path := render.Path{}.Move(render.Point{X: r.Min.X + inset, Y: y})
	for k := range 2 * n {
		x := r.Min.X + inset + render.Paper(k)*step
		d := r.H() * 0.40 * render.Paper(2*(k%2)-1)
		path = path.Cubic(render.Point{X: x + step*0.36, Y: y + d}, render.Point{X: x + step*0.64, Y: y + d}, render.Point{X: x + step, Y: y})
	}
	return path
}

// mostThick returns the thickest mattress that the rail leaves room for wherever the bed is to stand, 0 where no text tells.
func (v *section) mostThick() float64 {
	most := math.Inf(1)
	if v.thick == nil {
		return 0
	}
	for _, f := range v.thick.Figures {
		if len(f.Name) > len(maxMattress) && f.Name[:len(maxMattress)] == maxMattress {
			most = min(most, f.Value)
		}
	}
	if math.IsInf(most, 1) {
		return 0
	}
	return most
}

// maxMattress begins the names of the figures that tell the thickest mattress in each place.
const maxMattress = "max_mattress."
