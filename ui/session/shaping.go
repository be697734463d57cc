package session

import (
	"errors"
	"math"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// ErrNoShape means that the readings do not give the room a shape yet.
var ErrNoShape = errors.New("the room has no shape yet: read its walls first")

// A WasReadError means that a wall or diagonal that would change was measured: a hand on the drawing is no reason to forget that.
type WasReadError struct{ Key string }

func (e *WasReadError) Error() string { return e.Key + " was read" }

// Reshaped is a job whose room was pulled into another shape by hand, or had something in it moved.
type Reshaped struct {
	Job     *job.Job
	Lengths []Taken  // of the walls that changed, or where the thing is now
	Aside   []string // keys of what was read and is no longer
}

// Pulling says how a wall is pulled.
type Pulling struct {
	Step     length.Length // lengths are whole multiples of it
	Override bool          // readings that stand in the way are put aside
}

// PullWall moves a wall of the room by a way in the room, its neighbours following in their own lines; PullCorner moves both walls of a corner.
// Where a neighbour runs on straight, a wall that is pulled leaves it behind a step, and a corner that is pulled turns both its walls. The
// lengths that change are marked as assumed. What was read is only put aside where p says so.
func PullWall(s *fit.Scene, wall int, by geom.V2, p Pulling) (Reshaped, error) {
	n := len(s.Walls)
	if n < 3 {
		return Reshaped{}, ErrNoShape
	}
	if straight(s.Outline, wall) || straight(s.Outline, (wall+1)%n) {
		return stepped(s, wall, by, p)
	}
	return reshape(s, s.Job, s.Outline, pulled(s.Outline, wall, by), p)
}

// PullCorner moves a corner: see PullWall.
func PullCorner(s *fit.Scene, corner int, by geom.V2, p Pulling) (Reshaped, error) {
	n := len(s.Walls)
	if n < 3 {
		return Reshaped{}, ErrNoShape
	}
	if straight(s.Outline, corner) {
		outline := slices.Clone(s.Outline)
		outline[corner] = outline[corner].Add(by)
		return reshape(s, s.Job, s.Outline, outline, p)
	}
	return reshape(s, s.Job, s.Outline, pulled(pulled(s.Outline, corner, by), (corner+n-1)%n, by), p)
}

// pulled moves the side from corner i to the next square to itself.
func pulled(outline geom.Polygon, i int, by geom.V2) geom.Polygon {
	n := len(outline)
	at := func(k int) geom.V2 { return outline[(k+n)%n] }
	dir := at(i + 1).Sub(at(i)).Unit()
	square := geom.V2{X: -dir.Y, Y: dir.X}
	by = square.Mul(by.Dot(square))
	out := slices.Clone(outline)
	out[i] = meet(at(i).Add(by), dir, at(i-1), at(i).Sub(at(i-1)))
	out[(i+1)%n] = meet(at(i).Add(by), dir, at(i+2), at(i+1).Sub(at(i+2)))
	return out
}

// meet returns where a line meets another one; the first line's point where they all but run side by side.
func meet(a, dir, b, other geom.V2) geom.V2 {
	cross := dir.Cross(other)
	if math.Abs(cross) < 1e-3*other.Len() {
		return a
	}
	return a.Add(dir.Mul(b.Sub(a).Cross(other) / cross))
}

// leastWall is the shortest that a wall is pulled to, mm.
const leastWall = 100.0

// changed is how much a length must differ to count as changed, mm.
const changed = 0.5

// reshape gives the room of a job another outline. Was is the outline before, with a corner for each of the job's.
func reshape(s *fit.Scene, j *job.Job, was, outline geom.Polygon, p Pulling) (Reshaped, error) {
	r := Reshaped{Job: j}
	n := len(outline)
	moved := map[rune]bool{}
	letters := []rune(j.Room.Outline)
	for i := range outline {
		if outline[i].Dist(was[i]) > changed {
			moved[letters[i]] = true
		}
	}
	if !outline.Simple() {
		return Reshaped{}, ErrTooShort
	}
	for i, key := range WallKeys(&j.Room) {
		side, before := outline[(i+1)%n].Sub(outline[i]), was[(i+1)%n].Sub(was[i])
		if before.Len() > changed && side.Dot(before.Unit()) < leastWall {
			return Reshaped{}, ErrTooShort
		}
		if math.Abs(side.Len()-before.Len()) < changed {
			continue
		}
		if err := r.wall(key, side.Len(), p); err != nil {
			return Reshaped{}, err
		}
	}
	for _, d := range s.Job.Room.Diagonals {
		if ends := []rune(d.Key); len(ends) == 2 && (moved[ends[0]] || moved[ends[1]]) {
			if err := r.forget("diagonal."+d.Key+".length", p); err != nil {
				return Reshaped{}, err
			}
		}
	}
	return r, r.angles(was, outline)
}

// turnedBy is how much an angle must differ to count as changed, in degrees.
const turnedBy = 0.3

// angles says the angles that differ, all at once: an outline only closes with all of them.
func (r *Reshaped) angles(was, outline geom.Polygon) error {
	next := own(r.Job)
	turned := false
	for i, letter := range r.Job.Room.Outline {
		if is := insideAngle(outline, i); math.Abs(is-insideAngle(was, i)) > turnedBy {
			setCorner(&next.Room, string(letter), is)
			turned = true
		}
	}
	if !turned {
		return nil
	}
	j, err := checked(next)
	if err == nil {
		r.Job = j
	}
	return err
}

// ErrTooShort means that a wall would have no length left.
var ErrTooShort = errors.New("that would leave a wall without length")

// wall sets the length of a wall that changed. One that nobody read is left to be worked out from the others.
func (r *Reshaped) wall(key string, mm float64, p Pulling) error {
	e := "wall." + key
	if jobfile.Shown(r.Job, e+".length") == "" {
		return nil
	}
	for _, k := range []string{".length", ".low", ".high"} {
		if err := r.forget(e+k, p); err != nil {
			return err
		}
	}
	l := length.FromMM(mm)
	if p.Step > 0 {
		l = length.Length(math.Round(float64(l)/float64(p.Step))) * p.Step
	}
	text := jobfile.ShownLength(l, unitOf(r.Job))
	next, err := jobfile.Set(r.Job, jobfile.Change{Key: e + ".length", Text: text}, jobfile.Change{Key: e + ".length.1.how", Text: string(room.Assumed)})
	if err != nil {
		return err
	}
	r.Job = next
	r.Lengths = append(r.Lengths, Taken{Key: e + ".length", Wall: key, First: text, How: room.Assumed})
	return nil
}

// forget takes readings away that a hand may put aside.
func (r *Reshaped) forget(key string, p Pulling) error {
	if WasRead(r.Job, key) {
		if !p.Override {
			return &WasReadError{key}
		}
		r.Aside = append(r.Aside, key)
	}
	next, err := Forget(r.Job, key)
	if err == nil {
		r.Job = next
	}
	return err
}
