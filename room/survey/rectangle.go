package survey

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// RectanglePlan is a set of readings thought out for a room of A by B before anybody measures it: corners A, B, C, D,
// the first wall of length A along x, lengths in one unit, angles in degrees.
type RectanglePlan struct {
	A, B                          float64
	Sigma, AngleSigma             float64 // of a length, of a right angle that is only believed
	Walls, Diagonals, RightAngles int     // how many of each are taken: up to 4, 2 and 4
	Times                         int     // how often every length is taken
}

// RectangleOutlook is what such a set of readings could find. Corner A is the origin and B lies on the x axis.
type RectangleOutlook struct {
	F        int
	Corners  [4][2]float64 // standard uncertainty of x and y of A, B, C, D
	Wall     [4]Check      // first reading of walls AB, BC, CD, DA
	Diagonal [2]Check      // first reading of diagonals AC, BD
}

// ParseRectangleSet reads a set such as "4 walls 2 diagonals" or "each twice and 4 soft right angles" into the plan; "each" alone
// means four walls and two diagonals.
func (r *RectanglePlan) ParseRectangleSet(set string) error {
	r.Walls, r.Diagonals, r.RightAngles, r.Times = 0, 0, 0, 1
	words := strings.Fields(strings.NewReplacer(" and ", " ", " with ", " ", ",", " ", "+", " ", "soft ", "", "right angle", "angle").Replace(set))
	for i := 0; i+1 < len(words); i += 2 {
		if !r.take(words[i], words[i+1]) {
			return fmt.Errorf("set %q: %q is not understood, want such as 4 walls 2 diagonals 4 soft right angles", set, words[i]+" "+words[i+1])
		}
	}
	if len(words) == 0 || len(words)%2 != 0 {
		return fmt.Errorf("set %q: want such as 4 walls 2 diagonals 4 soft right angles", set)
	}
	if r.Times > 1 && r.Walls+r.Diagonals == 0 {
		r.Walls, r.Diagonals = 4, 2
	}
	return nil
}

// take reads one pair of words such as "4 walls" or "each twice".
func (r *RectanglePlan) take(count, what string) bool {
	if count == "each" {
		r.Times = map[string]int{"once": 1, "twice": 2}[what]
		return r.Times > 0
	}
	n, err := strconv.Atoi(count)
	limit, into := 0, (*int)(nil)
	switch strings.TrimSuffix(what, "s") {
	case "wall":
		limit, into = 4, &r.Walls
	case "diagonal":
		limit, into = 2, &r.Diagonals
	case "angle":
		limit, into = 4, &r.RightAngles
	}
	if into == nil || err != nil || n < 0 || n > limit {
		return false
	}
	*into = n
	return true
}

// Outlook solves the plan on exact readings: the uncertainties and checks do not depend on what will be read.
func (r RectanglePlan) Outlook() (RectangleOutlook, error) {
	p, walls, diagonals := r.problem()
	s, err := Solve(p)
	if err != nil {
		return RectangleOutlook{}, fmt.Errorf("rectangle of %d walls, %d diagonals and %d right angles: %w", r.Walls, r.Diagonals, r.RightAngles, err)
	}
	out := RectangleOutlook{F: s.F}
	out.Corners[1][0] = s.Sigma(0)
	for i, c := range [][2]int{{2, 0}, {2, 1}, {3, 0}, {3, 1}} {
		out.Corners[c[0]][c[1]] = s.Sigma(1 + i)
	}
	for i, e := range walls {
		out.Wall[i] = s.Checks[e]
	}
	for i, e := range diagonals {
		out.Diagonal[i] = s.Checks[e]
	}
	return out, nil
}

// problem writes the plan's equations; unknowns are x of B, x and y of C, x and y of D.
func (r RectanglePlan) problem() (p Problem, walls, diagonals []int) {
	p.Start = []float64{r.A, r.A, r.B, 0, r.B}
	corners := []Position{{}, {X: Unknown(0)}, {Unknown(1), Unknown(2)}, {Unknown(3), Unknown(4)}}
	length := func(from, to int, value float64) int {
		key := string("ABCD"[from]) + string("ABCD"[to])
		for range max(1, r.Times) {
			p.Equations = append(p.Equations, DistanceEquation(key, corners[from], corners[to], value, r.Sigma))
		}
		return len(p.Equations) - max(1, r.Times)
	}
	for i := range min(4, r.Walls) {
		walls = append(walls, length(i, (i+1)%4, []float64{r.A, r.B}[i%2]))
	}
	for i := range min(2, r.Diagonals) {
		diagonals = append(diagonals, length(i, i+2, math.Hypot(r.A, r.B)))
	}
	for i := range min(4, r.RightAngles) {
		key := "square " + string("ABCD"[i])
		p.Equations = append(p.Equations, CornerEquation(key, corners[i], corners[(i+3)%4], corners[(i+1)%4], 90, r.AngleSigma, Degree))
	}
	return p, walls, diagonals
}
