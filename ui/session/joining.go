package session

import (
	"errors"
	"slices"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/room"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// ErrThreeCorners means that a room with three corners needs all of them.
var ErrThreeCorners = errors.New("a room has at least three corners")

// ErrCrossing means that the walls would run into each other.
var ErrCrossing = errors.New("without that corner the walls would run into each other")

// RemoveCorner makes one wall of the two at a corner. Where they run on straight, everything on them keeps its place; at any other corner it is
// refused while something is on them that would lose its own. The length of the wall is what was read from corner to corner, else assumed.
func RemoveCorner(s *fit.Scene, letter string) (*job.Job, error) {
	i := strings.Index(s.Job.Room.Outline, letter)
	n := len(s.Walls)
	switch {
	case n < 3 || i < 0 || letter == "":
		return nil, ErrNoShape
	case n == 3:
		return nil, ErrThreeCorners
	}
	o := s.Job.Room.Outline
	before, after := (i+n-1)%n, (i+1)%n
	p := joiner{
		s: s, corner: letter, first: o[before : before+1], last: o[after : after+1],
		a: &s.Walls[before], b: &s.Walls[i], straight: straight(s.Outline, i), outline: slices.Delete(slices.Clone(s.Outline), i, i+1),
	}
	if err := p.allowed(); err != nil {
		return nil, err
	}
	p.j = own(s.Job)
	p.join(i)
	return checked(p.j)
}

// joiner makes one wall of two.
type joiner struct {
	s           *fit.Scene
	corner      string
	first, last string    // letters of the ends of the new wall
	a, b        *fit.Wall // before and after the corner
	straight    bool
	outline     geom.Polygon // without the corner
	j           *job.Job
}

func (p *joiner) wall() string { return p.first + p.last }

func (p *joiner) on(wall string) bool { return wall == p.a.Key || wall == p.b.Key }

// allowed looks for what would lose its place.
func (p *joiner) allowed() error {
	r := &p.s.Job.Room
	for i, c := range r.Ceilings {
		name := thingName(c.Key, i, "ceiling")
		if p.on(c.Strip) {
			return &InTheWayError{name, "runs along a wall at this corner as a strip"}
		}
		if strings.Contains(c.Corners, p.corner) && len(c.Corners) < 4 {
			return &InTheWayError{name, "is said to lie over this corner"}
		}
		if slices.ContainsFunc(c.Heights, func(h room.Height) bool { return h.Corner == p.corner }) {
			return &InTheWayError{name, "has a height that is read at this corner"}
		}
		if !p.straight && p.on(c.Along) {
			return &InTheWayError{name, "goes by a wall at this corner"}
		}
	}
	if p.straight {
		return nil
	}
	if !p.outline.Simple() || p.outline.Area()*p.s.Outline.Area() <= 0 {
		return ErrCrossing
	}
	const why = "is placed by a wall at this corner, which would go: place it by another wall first, or remove it"
	for _, t := range Things(r) {
		if p.on(t.Wall) {
			return &InTheWayError{t.Name, why}
		}
	}
	for _, q := range places(r) {
		if p.on(*q.wall) {
			return &InTheWayError{"height of the ceiling", why}
		}
	}
	for _, w := range r.Walls {
		if p.on(w.Key) && len(w.Studs) > 0 {
			return &InTheWayError{"wall " + w.Key[:1] + " to " + w.Key[1:], "has studs, which would lose their place"}
		}
	}
	return nil
}

func (p *joiner) join(i int) {
	r := &p.j.Room
	for _, q := range places(r) {
		p.place(q)
	}
	p.walls(r)
	r.Outline = strings.Replace(r.Outline, p.corner, "", 1)
	if i == 0 { // the first wall stays the first
		r.Outline = p.first + strings.TrimSuffix(r.Outline, p.first)
	}
	r.Corners = slices.DeleteFunc(r.Corners, func(c room.Corner) bool { return c.Key == p.corner })
	r.Diagonals = slices.DeleteFunc(r.Diagonals, func(d room.Diagonal) bool {
		return strings.Contains(d.Key, p.corner) || d.Key == p.wall() || d.Key == p.last+p.first
	})
	if !p.straight {
		p.angles(r, i)
	}
	for k := range r.Beams {
		if p.on(r.Beams[k].Along) {
			r.Beams[k].Along = p.wall()
		}
	}
	for k := range r.Ceilings {
		c := &r.Ceilings[k]
		c.Corners = strings.Replace(c.Corners, p.corner, "", 1)
		if p.on(c.Along) {
			c.Along = p.wall()
		}
	}
	p.bed()
}

// angles says what angle the neighbours of the corner have now.
func (p *joiner) angles(r *room.Room, i int) {
	n := len(p.outline)
	setCorner(r, p.first, insideAngle(p.outline, (i+n-1)%n))
	setCorner(r, p.last, insideAngle(p.outline, i%n))
}

// place says where something is on the joined wall: from the end that stays.
func (p *joiner) place(q placed) {
	if !p.on(*q.wall) {
		return
	}
	if q.hinge != nil && *q.hinge == p.corner {
		*q.hinge = map[bool]string{true: p.last, false: p.first}[*q.wall == p.a.Key]
	}
	switch from := q.end(); {
	case from != p.corner:
		q.keep(p.wall(), from)
	case *q.wall == p.a.Key:
		q.turn(p.wall(), p.first, p.other(q.key, p.a.Len))
	default:
		q.turn(p.wall(), p.last, p.other(q.key, p.b.Len))
	}
}

// other is how far a thing begins from the other end of a wall so long.
func (p *joiner) other(key string, long float64) length.Length {
	m := mover{s: p.s, key: key, free: freedomOf(p.s.Job, key)}
	m.find()
	return onStep(long-m.at-m.wide, fine(p.s.Job))
}

// walls puts one wall in the place of two: made as the first of them.
func (p *joiner) walls(r *room.Room) {
	a, _ := p.s.Job.Room.Wall(p.a.Key)
	b, _ := p.s.Job.Room.Wall(p.b.Key)
	w := a
	w.Key, w.LowLength, w.HighLength = p.wall(), nil, nil
	w.Length = p.length(a, b)
	w.Studs = append(p.studs(a, p.first, p.a.Len), p.studs(b, p.last, p.b.Len)...)
	for i := range w.Studs {
		w.Studs[i].Key = KeyOr("", i)
	}
	if w.SpacingFrom = ""; w.Spacing.Read() && len(w.Studs) > 0 {
		w.SpacingFrom = w.Studs[max(0, slices.IndexFunc(a.Studs, func(s room.Stud) bool { return s.Key == a.SpacingFrom }))].Key
	}
	at := slices.IndexFunc(r.Walls, func(x room.Wall) bool { return p.on(x.Key) })
	if at < 0 {
		return // nobody said anything of them
	}
	r.Walls[at] = w
	rest := slices.DeleteFunc(r.Walls[at+1:], func(x room.Wall) bool { return p.on(x.Key) })
	r.Walls = r.Walls[:at+1+len(rest)]
}

// length is what is known of the whole: what was read from corner to corner, else what the drawing says.
func (p *joiner) length(a, b room.Wall) room.Measure {
	for _, d := range p.s.Job.Room.Diagonals {
		if (d.Key == p.wall() || d.Key == p.last+p.first) && d.Length.Read() {
			return d.Length
		}
	}
	if !a.Length.Read() && !b.Length.Read() {
		return nil
	}
	return assumedMeasure(onStep(p.a.A.Dist(p.b.B), fine(p.s.Job)))
}

// studs counts the studs of a wall from the end that stays.
func (p *joiner) studs(w room.Wall, from string, long float64) (out []room.Stud) {
	for _, st := range w.Studs {
		end := st.From
		if end == "" {
			end = ends(w.Key)[0]
		}
		if end != from && st.At.Read() {
			st.At = assumedMeasure(onStep(long-st.At[0].Value.MM(), fine(p.s.Job)))
		}
		st.From = from
		out = append(out, st)
	}
	return out
}

// bed keeps the bed where it stands.
func (p *joiner) bed() {
	bed := &p.j.Place
	if !p.on(bed.Wall) {
		return
	}
	from := bed.From
	if from == "" {
		from = ends(bed.Wall)[0]
	}
	if from == p.corner {
		if from = p.last; bed.Wall == p.b.Key {
			from = p.first
			bed.Along += length.FromMM(p.a.Len).Round(fine(p.j), length.Nearest)
		} else {
			bed.Along += length.FromMM(p.b.Len).Round(fine(p.j), length.Nearest)
		}
		if !p.straight {
			from, bed.Along = p.first, 0
		}
	}
	bed.Wall, bed.From = p.wall(), from
}
