package survey

import "math"

// outline makes the corners: A at the origin, B on the x axis, walls clockwise seen from above, so that the room lies at y < 0.
func (b *builder) outline() {
	letters := []rune(b.s.Room.Outline)
	n := len(letters)
	b.plan, b.roundOff = b.sketch()
	b.roundOff = b.roundOff || b.unsettled
	for i, c := range letters {
		var x, y Ref
		pos := Position{X: Known(0), Y: Known(0)}
		if i > 0 {
			x = b.unknown("corner."+string(c)+".x", b.plan[i].x)
			pos.X = Unknown(int(x - 1))
		}
		if i > 1 {
			y = b.unknown("corner."+string(c)+".y", b.plan[i].y)
			pos.Y = Unknown(int(y - 1))
		}
		b.s.Layout.X, b.s.Layout.Y = append(b.s.Layout.X, x), append(b.s.Layout.Y, y)
		b.corners = append(b.corners, pos)
	}
	switch {
	case n < 3:
		return
	case b.roundOff:
		b.holdSketch()
		return
	}
	for _, w := range b.s.Room.Walls {
		if i := b.s.wallIndex(w.Key); i >= 0 {
			key := "wall." + w.Key + ".length"
			b.read(key, w.Length, func(v, u float64) Equation {
				return DistanceEquation(key, b.corners[i], b.corners[(i+1)%n], v, u)
			})
		}
	}
	for _, d := range b.s.Room.Diagonals {
		b.diagonal(d)
	}
	if !b.o.NoSoftAngles {
		b.softAngles()
	}
}

// sketched is how loosely corners are held where they cannot be worked out, mm.
const sketched = 1000

// holdSketch keeps the corners loosely where the sketch has them, so that the rest can be worked out; they stay unknown. What was read of
// walls and diagonals stands for itself.
func (b *builder) holdSketch() {
	hold := func(r Ref, at float64) {
		if r != 0 {
			b.suppose(LinearEquation(b.s.Key(r), []Term{{int(r - 1), 1}}, 0, at, sketched))
		}
	}
	for i := range b.corners {
		hold(b.s.Layout.X[i], b.plan[i].x)
		hold(b.s.Layout.Y[i], b.plan[i].y)
	}
	for _, w := range b.s.Room.Walls {
		b.quantity("wall."+w.Key+".length", w.Length, 0)
	}
	for _, d := range b.s.Room.Diagonals {
		b.quantity("diagonal."+d.Key+".length", b.possible(d), 0)
	}
}

func (b *builder) cornerIndex(letter string) int {
	for i, c := range []rune(b.s.Room.Outline) {
		if string(c) == letter {
			return i
		}
	}
	return -1
}

// softAngles believes every corner to be what it was drawn as, within half a degree, unless the job says otherwise.
func (b *builder) softAngles() {
	n := len(b.corners)
	for i, c := range []rune(b.s.Room.Outline) {
		corner := b.s.Room.Corner(string(c))
		if corner.Square == "no" {
			continue
		}
		angle := corner.Angle()
		if angle > 180 {
			angle = 360 - angle
		}
		key := "corner." + string(c) + ".square"
		b.suppose(CornerEquation(key, b.corners[i], b.corners[(i+n-1)%n], b.corners[(i+1)%n], angle, b.s.u.Square, Degree))
	}
}

// sketch draws the outline roughly, from the angles it was drawn with and whatever lengths were read; walls without a reading are
// stretched so that it closes.
func (b *builder) sketch() (pts []vec2, failed bool) {
	keys := b.s.wallKeys()
	n := len(keys)
	lengths, known := make([]float64, n), make([]bool, n)
	for i, k := range keys {
		if w, ok := b.s.Room.Wall(k); ok && len(w.Length) > 0 {
			lengths[i], known[i] = w.Length[0].Value.MM(), true
		}
	}
	dirs := make([]vec2, n)
	heading := 0.0
	for i, c := range []rune(b.s.Room.Outline) {
		if i > 0 {
			heading -= math.Pi - b.s.Room.Corner(string(c)).Angle()*math.Pi/180
		}
		dirs[i] = vec2{math.Cos(heading), math.Sin(heading)}
	}
	failed = !closeUp(dirs, lengths, known)
	pts = make([]vec2, n)
	at := vec2{}
	for i := range pts {
		pts[i] = at
		at = vec2{at.x + dirs[i].x*lengths[i], at.y + dirs[i].y*lengths[i]}
	}
	return pts, failed
}

// A wall that the readings say nothing of is sketched about so long, in mm, only to start from somewhere: no two of them alike, so that
// no corner comes to lie on another.
const usualWall, unlike = 3000, 400

// closeUp chooses the lengths that nobody read so that the walk round comes back: the least-squares choice of smallest lengths. It
// reports whether every length came out positive.
func closeUp(dirs []vec2, lengths []float64, known []bool) bool {
	var rx, ry, xx, xy, yy float64
	for i, d := range dirs {
		if known[i] {
			rx, ry = rx-d.x*lengths[i], ry-d.y*lengths[i]
			continue
		}
		xx, xy, yy = xx+d.x*d.x, xy+d.x*d.y, yy+d.y*d.y
	}
	det := xx*yy - xy*xy
	var lx, ly float64
	switch {
	case det > 1e-9:
		lx, ly = (rx*yy-ry*xy)/det, (ry*xx-rx*xy)/det
	case xx+yy > 1e-9: // all unread walls run one way: along (ex, ey)
		sum := xx + yy
		ex, ey := math.Sqrt(xx/sum), math.Copysign(math.Sqrt(yy/sum), xy)
		along := (rx*ex + ry*ey) / sum
		lx, ly = along*ex, along*ey
	}
	ok := true
	for i, d := range dirs {
		if !known[i] {
			if lengths[i] = lx*d.x + ly*d.y; lengths[i] <= 1 {
				lengths[i], ok = usualWall+float64(i)*unlike, false
			}
		}
	}
	return ok
}
