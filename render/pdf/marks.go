package pdf

import "bunkwright/render"

// pen sets round ends for solid lines and square-cut ends for dashes.
func (d *document) pen(p render.Pen) {
	last, fresh := d.state.pen, !d.state.set.pen
	d.state.pen, d.state.set.pen = p, true
	if fresh || last.Ink != p.Ink {
		c := d.palette.Color(p.Ink)
		d.SetDrawColor(int(c.R), int(c.G), int(c.B))
	}
	if fresh || last.Width != p.Width {
		d.SetLineWidth(float64(p.Width))
	}
	if fresh || last.Dash != p.Dash {
		d.dash(p.Dash)
	}
}

func (d *document) dash(dash render.Dash) {
	var lengths []float64
	for _, l := range dash.Lengths() {
		lengths = append(lengths, float64(l))
	}
	d.SetDashPattern(lengths, float64(dash.Phase))
	if dash.Solid() {
		d.SetLineCapStyle("round")
	} else {
		d.SetLineCapStyle("butt")
	}
}

func (d *document) ink(i render.Ink) {
	if d.state.set.fill && d.state.fill == i {
		return
	}
	c := d.palette.Color(i)
	d.SetFillColor(int(c.R), int(c.G), int(c.B))
	d.state.fill, d.state.set.fill = i, true
}

func (d *document) text(t render.Text) {
	d.letter(render.Lettering{Size: t.Size, Face: t.Face})
	if !d.state.set.words || d.state.words != t.Ink {
		c := d.palette.Color(t.Ink)
		d.SetTextColor(int(c.R), int(c.G), int(c.B))
		d.state.words, d.state.set.words = t.Ink, true
	}
	x, y := d.place(t.Start())
	d.Text(x, y, t.Words)
}

func (d *document) letter(l render.Lettering) {
	if d.state.letters == l {
		return
	}
	d.SetFont(l.Face.String(), "", float64(l.Size/render.Pt(1)))
	d.state.letters = l
}

// trace draws the path with a path-painting operator of the library's.
func (d *document) trace(p render.Path, operator string) {
	if len(p) == 0 {
		return
	}
	for _, s := range p {
		x, y := d.place(s.To)
		switch s.Op {
		case render.OpMove:
			d.MoveTo(x, y)
		case render.OpLine:
			d.LineTo(x, y)
		case render.OpCubic:
			x1, y1 := d.place(s.C1)
			x2, y2 := d.place(s.C2)
			d.CurveBezierCubicTo(x1, y1, x2, y2, x, y)
		case render.OpClose:
			d.ClosePath()
		}
	}
	d.DrawPath(operator)
}

func (d *document) place(p render.Point) (x, y float64) {
	return float64(d.at.X + p.X), float64(d.at.Y + p.Y)
}
