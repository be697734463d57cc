package geom

import "math"

// A Leaf is a door leaf seen from above: a rectangle that turns about a pin on the room face, at one of its corners. Shut, its room face
// lies from the pin along Shut; it opens towards In, which is square to Shut.
type Leaf struct {
	Pin      V2
	Shut, In V2
	Wide     float64
	Thick    float64
	Opens    float64 // radians, at most pi
	HandleAt float64 // from the pin along the room face; 0: no handle
	Handle   float64 // how far the handle stands out from the room face
}

// Reach returns how far the leaf's outermost corner is from the pin.
func (l Leaf) Reach() float64 { return math.Hypot(l.Wide, l.Thick) }

// Bounds returns the corners of an upright rectangle that holds all that the leaf and its handle sweep.
func (l Leaf) Bounds() (lo, hi V2) {
	r := max(l.Reach(), math.Hypot(l.HandleAt, l.Handle))
	back := -l.Thick - max(l.Handle, 0)
	if l.Opens > math.Pi/2 {
		back = -r
	}
	at := func(u, v float64) V2 { return l.Pin.Add(l.Shut.Mul(u)).Add(l.In.Mul(v)) }
	return Polygon{at(back, 0), at(r, 0), at(r, r), at(back, r)}.Bounds()
}

// local returns a point in the leaf's own axes: along Shut, and towards In.
func (l Leaf) local(p V2) V2 {
	d := p.Sub(l.Pin)
	return V2{d.Dot(l.Shut), d.Dot(l.In)}
}

// frame returns an outline in the leaf's own axes, anticlockwise there, less what lies behind the wall's face.
func (l Leaf) frame(p Polygon) Polygon {
	out := make(Polygon, len(p))
	for i, q := range p {
		out[i] = l.local(q)
	}
	if out.Area() < 0 {
		for i, j := 0, len(out)-1; i < j; i, j = i+1, j-1 {
			out[i], out[j] = out[j], out[i]
		}
	}
	return out.Clip(V2{}, V2{1, 0})
}

// Gap returns how far the convex outline p is from what the leaf with its handle sweeps, in mm. Where p stands in it the result is
// negative: the leaf's width less the distance from the pin to the nearest point of p that is in the way, which is what the leaf
// lacks. Between a leaf's width and the reach of its corner, under 1 mm further, half of what the corner lacks counts, so that the
// result has no jump.
func (l Leaf) Gap(p Polygon) float64 {
	q := l.frame(p)
	if len(q) == 0 {
		return math.Inf(1)
	}
	if near := l.nearestMet(q); !math.IsInf(near, 1) {
		return l.lacks(near)
	}
	return l.clear(q)
}

// lacks is what a leaf lacks that is stopped at a distance from the pin, negative.
func (l Leaf) lacks(near float64) float64 {
	return min(near-l.Wide, (near-l.Reach())/2)
}

// turned returns the direction along the room face of the leaf at an angle, in its own axes.
func turned(angle float64) V2 { return V2{math.Cos(angle), math.Sin(angle)} }

// sliver is the area in mm2 up to which a part of an outline is only rounding of one that touches.
const sliver = 1e-3

// sector returns the part of q between the directions 0 and angle from the pin, nil where it only touches them.
func sector(q Polygon, angle float64) Polygon {
	if angle < math.Pi {
		q = q.Clip(V2{}, turned(angle).Mul(-1))
	}
	if q.Area() < sliver {
		return nil
	}
	return q
}

// toPin returns how far the outline is from the pin, +Inf where nothing is left of it.
func toPin(q Polygon) float64 {
	switch {
	case len(q) == 0:
		return math.Inf(1)
	case len(q) > 2 && q.Contains(V2{}):
		return 0
	}
	return q.Distance(V2{})
}

// nearestMet returns the distance from the pin to the nearest point of q that is swept, +Inf where none is.
func (l Leaf) nearestMet(q Polygon) float64 {
	least := math.Inf(1)
	meets := func(d, reach float64) {
		if d < reach {
			least = min(least, d)
		}
	}
	meets(toPin(sector(q, l.Opens)), l.Wide)
	meets(toPin(sector(q, l.corner())), l.Reach())
	if h := l.handle(); h != nil {
		if part := q.Intersect(h); part.Area() > sliver {
			meets(toPin(part), math.Inf(1))
		}
	}
	return least
}

// corner returns the angle that the leaf's outermost corner reaches: it follows the room face.
func (l Leaf) corner() float64 { return max(0, l.Opens-math.Atan2(l.Thick, l.Wide)) }

// flat is how far a handle stands out, in mm, up to which there is none: its triangle would have no sides to clip by.
const flat = 1e-3

// handle returns what the handle sweeps beyond the open leaf: its place on the leaf, its tip, and where the tip passed the leaf. The arc
// between the last two is left out, under 1 mm.
func (l Leaf) handle() Polygon {
	if l.HandleAt <= 0 || l.Handle < flat {
		return nil
	}
	u := turned(l.Opens)
	foot := u.Mul(l.HandleAt)
	return Polygon{foot, u.Mul(math.Hypot(l.HandleAt, l.Handle)), foot.Add(u.Left().Mul(l.Handle))}
}

// clear returns the distance from q to what is swept, where they do not meet: a sector out to the outermost corner, the open leaf,
// and the handle.
func (l Leaf) clear(q Polygon) float64 {
	least := math.Inf(1)
	if in := sector(q, l.corner()); len(in) > 0 {
		least = max(0, toPin(in)-l.Reach())
	}
	for _, part := range [4]Polygon{
		{{}, turned(0).Mul(l.Reach())}, {{}, turned(l.corner()).Mul(l.Reach())}, l.open(), l.handle(),
	} {
		if len(part) > 0 {
			d, _, _ := Closest(q, part)
			least = min(least, d)
		}
	}
	return least
}

// open returns the leaf's outline when it is open, in its own axes.
func (l Leaf) open() Polygon {
	u := turned(l.Opens)
	far, back := u.Mul(l.Wide), u.Left().Mul(-l.Thick)
	return Polygon{{}, back, far.Add(back), far}
}

// MeetsAt returns the angle in radians at which the leaf or its handle first meets the convex outline p; ok is false where it opens
// fully.
func (l Leaf) MeetsAt(p Polygon) (angle float64, ok bool) {
	q := l.frame(p)
	angle = math.Inf(1)
	for i := range q {
		a, b := q.Edge(i)
		l.meet(a, &angle)
		if _, t := SegmentPoint(a, b, V2{}); t > 0 && t < 1 {
			l.meet(a.Lerp(b, t), &angle)
		}
		for _, r := range l.radii() {
			l.meetAtRadius(a, b, r, &angle)
		}
	}
	if angle > l.Opens-1e-9 {
		return l.Opens, false
	}
	return angle, true
}

// radii returns the distances from the pin at which another part of the leaf comes first.
func (l Leaf) radii() [4]float64 {
	return [4]float64{l.Wide, l.Reach(), l.HandleAt, math.Hypot(l.HandleAt, l.Handle)}
}

func (l Leaf) meetAtRadius(a, b V2, r float64, least *float64) {
	u := b.Sub(a)
	k, m, n := u.Dot(u), a.Dot(u), a.Dot(a)-r*r
	root := m*m - k*n
	if root < 0 || k == 0 {
		return
	}
	for _, t := range [2]float64{(-m - math.Sqrt(root)) / k, (-m + math.Sqrt(root)) / k} {
		if t >= 0 && t <= 1 {
			l.meet(a.Lerp(b, t), least)
		}
	}
}

// onCircle lets a point that was worked out to lie on a circle count as on it, mm.
const onCircle = 1e-9

// meet lowers the angle to that at which a point is met.
func (l Leaf) meet(p V2, least *float64) {
	r := p.Len()
	at := math.Atan2(max(0, p.Y), p.X)
	switch tip := math.Hypot(l.HandleAt, l.Handle); {
	case r > l.Reach()+onCircle:
		return
	case r > l.Wide:
		at += math.Acos(min(1, l.Wide/r))
	case l.HandleAt > 0 && r >= l.HandleAt && r <= tip+onCircle:
		at -= math.Acos(min(1, l.HandleAt/r))
	}
	*least = min(*least, max(0, at))
}
