package session

import (
	"errors"
	"math"
	"slices"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/room"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// ErrLetters means that a room has as many corners as there are letters.
var ErrLetters = errors.New("a room has at most 26 corners, one for each letter")

// An InTheWayError means that something of the room would lose its place.
type InTheWayError struct {
	Name string // "garden window"
	Why  string
}

func (e *InTheWayError) Error() string { return "the " + e.Name + " " + e.Why }

// SplitWall adds a corner to a wall, as near to its middle as what is on the wall allows; the walls on both sides of it run on straight until
// somebody pulls them. What was read of the whole wall is kept as a reading from corner to corner; the two parts are assumed. Everything on the
// wall keeps its place, counted from the corner that the wall has always had. It returns the letter of the new corner.
func SplitWall(s *fit.Scene, wall string) (*job.Job, string, error) {
	i := slices.IndexFunc(s.Walls, func(w fit.Wall) bool { return w.Key == wall })
	if i < 0 {
		return nil, "", ErrNoShape
	}
	p := splitter{s: s, w: &s.Walls[i], first: ends(wall)[0], last: ends(wall)[1], corner: freeLetter(s.Job.Room.Outline)}
	if p.corner == "" {
		return nil, "", ErrLetters
	}
	if err := p.choose(); err != nil {
		return nil, "", err
	}
	p.j = own(s.Job)
	r := &p.j.Room
	r.Outline = strings.Replace(r.Outline, p.first, p.first+p.corner, 1)
	setCorner(r, p.corner, 180)
	for _, q := range places(r) {
		p.place(q)
	}
	p.walls()
	p.along()
	j, err := checked(p.j)
	return j, p.corner, err
}

// splitter splits one wall in two.
type splitter struct {
	s           *fit.Scene
	w           *fit.Wall
	first, last string // letters of its ends
	corner      string // letter between them
	cut         length.Length
	j           *job.Job
}

func (p *splitter) near() string { return p.first + p.corner }
func (p *splitter) far() string  { return p.corner + p.last }

// choose looks for the place nearest to the middle of the wall that lies in nothing on it.
func (p *splitter) choose() error {
	for _, c := range p.s.Job.Room.Ceilings {
		if c.Strip == p.w.Key {
			return &InTheWayError{thingName(c.Key, 0, "ceiling"), "runs along this wall as a strip: a corner would cut it off"}
		}
	}
	step := 25.4
	if unitOf(p.s.Job) == length.Millimetres {
		step = 10
	}
	var blocking string
	for n := 0.0; n*step < p.w.Len/2-leastWall; n++ {
		for _, sign := range [2]float64{1, -1} {
			at := math.Round((p.w.Len/2+sign*n*step)/step) * step
			if in := p.thingAt(at); in == "" {
				p.cut = length.FromMM(at)
				return nil
			} else if blocking == "" {
				blocking = in
			}
		}
	}
	if blocking == "" {
		return ErrTooShort
	}
	return &InTheWayError{blocking, "takes the wall: there is no room for a corner beside it"}
}

// thingAt names what is in the wall or fixed to it at a place, "" for nothing.
func (p *splitter) thingAt(at float64) string {
	for _, t := range Things(&p.s.Job.Room) {
		if OnWall(p.s.Job, t.Key) != p.w.Key {
			continue
		}
		if lo, hi, ok := span(p.s, t.Key); ok && lo-1 < at && at < hi+1 {
			return t.Name
		}
	}
	return ""
}

// span returns the stretch of its wall that a thing takes, its trim counted in, mm from the wall's first corner; ok is false where nobody read
// where it is.
func span(s *fit.Scene, key string) (lo, hi float64, ok bool) {
	m := mover{s: s, key: key, free: freedomOf(s.Job, key)}
	if !m.find() || math.IsNaN(m.value("at")) {
		return 0, 0, false
	}
	trim := zeroWithout(m.value("casing_wide"))
	lo, hi = m.at, m.at+m.wide
	if m.fromEnd() {
		lo, hi = m.wall.Len-hi, m.wall.Len-lo
	}
	return lo - trim, hi + trim, true
}

// place says where something is along the part of the wall that it is on.
func (p *splitter) place(q placed) {
	if *q.wall != p.w.Key {
		return
	}
	lo, hi, read := span(p.s, q.key)
	inWall := OnWall(p.s.Job, q.key) != ""
	mid, cut := (lo+hi)/2, p.cut.MM()
	fromFirst := q.end() == p.first
	switch {
	case inWall && read && fromFirst && mid > cut:
		q.turn(p.far(), p.last, p.fromOther(q.key))
	case inWall && read && !fromFirst && mid < cut:
		q.turn(p.near(), p.first, p.fromOther(q.key))
	case fromFirst:
		q.keep(p.near(), p.first)
	default:
		q.keep(p.far(), p.last)
	}
	if q.hinge != nil && *q.hinge != "" && !strings.Contains(*q.wall, *q.hinge) {
		*q.hinge = p.corner
	}
}

// fromOther is how far a thing begins from the end of the wall that it is not counted from, to the step of the unit.
func (p *splitter) fromOther(key string) length.Length {
	m := mover{s: p.s, key: key, free: freedomOf(p.s.Job, key)}
	m.find()
	return onStep(p.w.Len-m.at-m.wide, fine(p.s.Job))
}

// fine is the step of lengths that are worked out from readings.
func fine(j *job.Job) length.Length {
	if unitOf(j) == length.Millimetres {
		return length.Millimetre
	}
	return length.Inch / 16
}

// walls puts two walls in the place of one.
func (p *splitter) walls() {
	r := &p.j.Room
	i := slices.IndexFunc(r.Walls, func(w room.Wall) bool { return w.Key == p.w.Key })
	if i < 0 {
		r.Walls, i = append(r.Walls, room.Wall{Key: p.w.Key}), len(r.Walls)
	}
	was := r.Walls[i]
	near, far := was, was
	near.Key, far.Key, far.Note = p.near(), p.far(), ""
	near.LowLength, near.HighLength, far.LowLength, far.HighLength = nil, nil, nil, nil
	near.Length = assumedMeasure(p.cut)
	if far.Length = nil; was.Length.Read() {
		far.Length = assumedMeasure(was.Length[0].Value - p.cut)
		if WasRead(p.s.Job, "wall."+was.Key+".length") {
			r.Diagonals = append(r.Diagonals, room.Diagonal{Key: p.first + p.last, Length: was.Length})
		}
	}
	near.Studs, far.Studs = p.studs(was.Studs)
	spaced(&near, was)
	spaced(&far, was)
	r.Walls = slices.Replace(r.Walls, i, i+1, near, far)
}

// studs shares the studs out between both parts.
func (p *splitter) studs(list []room.Stud) (near, far []room.Stud) {
	for i, st := range list {
		st.Key = KeyOr(st.Key, i)
		fromFirst := st.From == "" || st.From == p.first
		at := math.NaN()
		if st.At.Read() {
			at = st.At[0].Value.MM()
		}
		beyond := at > p.cut.MM()
		if !fromFirst {
			beyond = at > p.w.Len-p.cut.MM()
		}
		if beyond {
			st.At = assumedMeasure(onStep(p.w.Len-at, fine(p.s.Job)))
		}
		if fromFirst != beyond {
			st.From = p.first
			near = append(near, st)
		} else {
			st.From = p.last
			far = append(far, st)
		}
	}
	return near, far
}

// spaced counts the studs of a part off from the same stud as before, or from another one that is on it.
func spaced(w *room.Wall, was room.Wall) {
	has := func(key string) bool {
		return slices.ContainsFunc(w.Studs, func(s room.Stud) bool { return s.Key == key })
	}
	switch {
	case was.SpacingFrom == "" || has(was.SpacingFrom):
	case len(w.Studs) > 0:
		w.SpacingFrom = w.Studs[0].Key
	default:
		w.SpacingFrom, w.Spacing = "", nil
	}
}

// along says of what runs along the wall, and of the bed, which part they go by.
func (p *splitter) along() {
	r := &p.j.Room
	for i := range r.Beams {
		if r.Beams[i].Along == p.w.Key {
			r.Beams[i].Along = p.near()
		}
	}
	for i := range r.Ceilings {
		c := &r.Ceilings[i]
		if c.Along == p.w.Key {
			c.Along = p.near()
		}
		c.Corners = strings.Replace(c.Corners, p.w.Key, p.first+p.corner+p.last, 1)
		if n := len(c.Corners); n > 2 && c.Corners[n-1:] == p.first && c.Corners[:1] == p.last {
			c.Corners += p.corner
		}
	}
	if bed := &p.j.Place; bed.Wall == p.w.Key {
		bed.Wall = p.near()
		if bed.From == p.last {
			bed.Wall = p.far()
		}
	}
}

// straight tells whether the walls at a corner run on in one line.
func straight(outline geom.Polygon, i int) bool {
	n := len(outline)
	a, b := outline[i].Sub(outline[(i+n-1)%n]).Unit(), outline[(i+1)%n].Sub(outline[i]).Unit()
	return math.Abs(a.Cross(b)) < straightTo && a.Dot(b) > 0
}

// straightTo is the sine of the angle up to which a corner counts as none, about 3 degrees.
const straightTo = 0.05

// insideAngle returns the angle of a corner within the room, in degrees and tenths.
func insideAngle(outline geom.Polygon, i int) float64 {
	n := len(outline)
	a, b := outline[i].Sub(outline[(i+n-1)%n]), outline[(i+1)%n].Sub(outline[i])
	return math.Round((180+math.Atan2(a.Cross(b), a.Dot(b))*180/math.Pi)*10) / 10
}
