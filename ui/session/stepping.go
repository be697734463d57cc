package session

import (
	"slices"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/room"
	"bunkwright/room/geom"
)

// stepped moves a wall that runs on straight into a neighbour: between the two a wall of its own comes to stand, square to both.
func stepped(s *fit.Scene, wall int, by geom.V2, p Pulling) (Reshaped, error) {
	n := len(s.Walls)
	w := s.Walls[wall]
	depth := by.Dot(w.In)
	if l := onStep(depth, p.Step); l == 0 {
		return Reshaped{Job: s.Job}, nil
	}
	j := own(s.Job)
	letters := strings.Split(j.Room.Outline, "")
	was, outline := slices.Clone(s.Outline), pulledBeside(s.Outline, wall, w.In.Mul(depth))
	key := w.Key
	if k := (wall + 1) % n; straight(s.Outline, k) { // at its end: a corner before the next wall's
		letter := freeLetter(strings.Join(letters, ""))
		if letter == "" {
			return Reshaped{}, ErrLetters
		}
		to := key[:1] + letter
		renamed(&j.Room, key, to)
		addWall(&j.Room, to, letter+letters[k])
		at := wall + 1
		letters, was = slices.Insert(letters, at, letter), slices.Insert(was, at, s.Outline[k])
		outline = slices.Insert(outline, at, s.Outline[k].Add(w.In.Mul(depth)))
		key = to
	}
	if straight(s.Outline, wall) { // at its beginning: a corner after the wall's before
		letter := freeLetter(strings.Join(letters, ""))
		if letter == "" {
			return Reshaped{}, ErrLetters
		}
		renamed(&j.Room, key, letter+key[1:])
		addWall(&j.Room, letter+key[1:], key[:1]+letter)
		letters, was = slices.Insert(letters, wall+1, letter), slices.Insert(was, wall+1, s.Outline[wall])
		outline = slices.Insert(outline, wall+1, s.Outline[wall].Add(w.In.Mul(depth)))
	}
	j.Room.Outline = strings.Join(letters, "")
	for i, l := range letters { // what the corners are as they are drawn, before the lengths are said
		if i < len(outline) && !near(insideAngle(outline, i), j.Room.Corner(l).Angle()) {
			setCorner(&j.Room, l, insideAngle(outline, i))
		}
	}
	return reshape(s, j, was, outline, p)
}

// near tells whether two angles in degrees are the same for all that a room is drawn by: corners that are read as square stay so.
func near(a, b float64) bool { return a-b < 45 && b-a < 45 }

// pulledBeside moves the ends of a wall along those neighbours that turn off from it; an end where the next wall runs on straight stays behind.
func pulledBeside(outline geom.Polygon, wall int, by geom.V2) geom.Polygon {
	n := len(outline)
	out := pulled(outline, wall, by)
	for _, k := range [2]int{wall, (wall + 1) % n} {
		if straight(outline, k) {
			out[k] = outline[k]
		}
	}
	return out
}

// addWall puts a wall without readings but an assumed length beside another one, made like it.
func addWall(r *room.Room, like, key string) {
	w := room.Wall{Key: key, Length: assumedMeasure(1)}
	i := slices.IndexFunc(r.Walls, func(x room.Wall) bool { return x.Key == like })
	if i < 0 {
		r.Walls = append(r.Walls, w)
		return
	}
	w.Kind, w.BuildUp, w.BaseHigh, w.BaseDeep = r.Walls[i].Kind, r.Walls[i].BuildUp, r.Walls[i].BaseHigh, r.Walls[i].BaseDeep
	r.Walls = slices.Insert(r.Walls, i+1, w)
}
