package jobfile

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"bunkwright/room"
	"bunkwright/room/geom"
)

// together checks what can be told only once the tables are read: each check waits until its own parts are right.
func (d *decoder) together() {
	d.spacings()
	d.diagonals()
	if d.outline != "" && d.clean("corner") && d.angles() && d.clean("wall") {
		d.crossing()
	}
}

// clean reports that nothing under a key has been complained of.
func (d *decoder) clean(key string) bool {
	return !slices.ContainsFunc(d.complaints, func(c Complaint) bool {
		return c.Key == key || strings.HasPrefix(c.Key, key+".")
	})
}

func (d *decoder) complainOf(key, have, want string) {
	line := (&File{lines: d.lines}).Line(key)
	d.complain(spot{key: key, line: line}, have, want)
}

// spacings looks for the stud that a spacing is counted off from.
func (d *decoder) spacings() {
	for _, w := range d.job.Room.Walls {
		key := "wall." + w.Key
		if w.SpacingFrom == "" || !d.clean(key+".stud") {
			continue
		}
		var names []string
		for i, s := range w.Studs {
			if s.Key == "" {
				s.Key = strconv.Itoa(i + 1)
			}
			names = append(names, s.Key)
		}
		if !slices.Contains(names, w.SpacingFrom) {
			d.complainOf(key+".spacing_from", quote(w.SpacingFrom)+" is no stud of this wall", "the key of one of its studs: "+anyOf(names))
		}
	}
}

// diagonals looks for one that is written both ways round.
func (d *decoder) diagonals() {
	for i, one := range d.job.Room.Diagonals {
		for _, two := range d.job.Room.Diagonals[:i] {
			if len(one.Key) == 2 && two.Key == one.Key[1:]+one.Key[:1] {
				d.complainOf("diagonal."+one.Key, "the same diagonal as "+two.Key, "one table for it, with all its readings")
			}
		}
	}
}

// angles checks that the inside angles belong to a figure that closes: n corners have (n - 2) times 180 degrees. They are rough where
// a corner is not square, so only a sum that is half a right angle or more off is refused.
func (d *decoder) angles() bool {
	sum, want := 0.0, float64(len(d.outline)-2)*180
	for _, c := range d.outline {
		sum += d.job.Room.Corner(string(c)).Angle()
	}
	if math.Abs(sum-want) < 45 {
		return true
	}
	d.complainOf("room.outline", fmt.Sprintf("inside angles that add up to %.4g degrees, and %d corners have %.4g", sum, len(d.outline), want),
		`the angle of each corner that is not 90, such as [[corner]] with key = "C" and inside = 270`)
	return false
}

// crossing walks round the outline with the lengths and angles that were given, shares out what is missing at the end over the walls,
// and looks for two walls that cross. It needs every wall's length; lengths that do not close are a problem of the job, not of the file.
func (d *decoder) crossing() {
	walls := d.walls()
	points, gap := walk(&d.job.Room, d.outline)
	if points == nil || gap > perimeter(points)/10 || points.Simple() {
		return
	}
	for i := range walls {
		for j := i + 2; j < len(walls); j++ {
			a, b := points.Edge(i)
			e, f := points.Edge(j)
			if (i > 0 || j < len(walls)-1) && geom.SegmentsCross(a, b, e, f) {
				d.complainOf("room.outline", fmt.Sprintf("with these lengths and angles wall %s crosses wall %s", walls[i], walls[j]),
					"corners in order round the room, each wall's length, and the angle of each corner that is not 90")
				return
			}
		}
	}
}

// walk returns the corners in mm and how far the last wall ends from the first corner; no corners where a length is missing.
func walk(r *room.Room, outline string) (points geom.Polygon, gap float64) {
	var at geom.V2
	heading := 0.0
	var far []float64
	for i, c := range outline {
		if i > 0 {
			heading -= math.Pi - r.Corner(string(c)).Angle()*math.Pi/180
		}
		w, _ := r.Wall(string(c) + string(outline[(i+1)%len(outline)]))
		if !w.Length.Read() {
			return nil, 0
		}
		points = append(points, at)
		l := w.Length[0].Value.MM()
		far = append(far, l)
		at = at.Add(geom.V2{X: math.Cos(heading), Y: math.Sin(heading)}.Mul(l))
	}
	return shared(points, far, at), at.Len()
}

// shared takes the misclosure off the corners in proportion to the way walked (the compass rule of surveying, common practice).
func shared(points geom.Polygon, far []float64, miss geom.V2) geom.Polygon {
	total := 0.0
	for _, l := range far {
		total += l
	}
	gone := 0.0
	for i := range points {
		points[i] = points[i].Sub(miss.Mul(gone / total))
		gone += far[i]
	}
	return points
}

func perimeter(p geom.Polygon) float64 {
	sum := 0.0
	for i := range p {
		a, b := p.Edge(i)
		sum += a.Dist(b)
	}
	return sum
}
