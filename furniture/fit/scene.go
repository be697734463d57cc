package fit

import (
	"context"
	"fmt"
	"slices"
	"strings"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/furniture/yardstick"
	"bunkwright/room/geom"
	"bunkwright/room/survey"
)

// A Scene is the bed standing in the room, in one coordinate system: corner A at the origin, x towards B, z up from the top of the
// floor covering as found; the room lies at y < 0. Facts that several questions need are worked out once.
type Scene struct {
	Job    *job.Job
	Bed    *bunk.Bed // nil where it cannot be built
	BedErr error
	Survey *survey.Survey
	Places []yardstick.Place

	Outline geom.Polygon // corners, nil where the readings do not give the room a shape
	Walls   []Wall
	Stands  bool    // the bed has a place in the room
	Wants   string  // what is missing for it to have one
	Feet    float64 // z of the underside of the post feet; NaN where the carpet's sink is unknown
	ToRoom  geom.Place
	ToWall  geom.Place  // furniture.OnWall axes into the room
	At      *Wall       // the wall it stands at
	Solids  []Solid     // bed, then what hangs on the wall
	All     Solid       // the bounds of all of them, of no part
	Boxes   [2]geom.Box // mattresses in the room: lower, upper
	hangs   bool        // some parts hang on the wall

	tallest  float64    // height of the bed over its feet
	blanks   []geom.Box // the boxes of the parts, turned so that axis 2 is up where they stand upright
	lines    []Line     // room to judge in, used again and again
	blockers []blocker  // and to look past
	bounds   []float64  // and to sort by
	overBed  []*Solid   // and to look up at
	bedPlan  bedPlan
	turned   turnedParts
	facets   []Facet
	facetsOf string // the place that they are of; "": of none
	keys     keys
	moving   bool            // one quantity is moved just now
	held     float64         // its own value
	which    int             // its number
	surveyed []float64       // all quantities as the survey has them, once the scene was taken into another room
	ctx      context.Context // of what is asked just now; nil: nothing ends it
	brief    bool            // only verdicts are asked for: what is far enough, or in the way at all, need not be measured out
	facts    facts
	forces   map[string]force
	ofBed    map[string]Answer // nominal answers of the bed alone
}

// Solid is one part standing in the room.
type Solid struct {
	Part   *furniture.Part
	Box    geom.Box
	Lo, Hi geom.V3
}

type force struct {
	row   *yardstick.Row
	force yardstick.Force
	place yardstick.Place
}

// NewScene solves the room, builds the bed and puts it where the job says. What is missing is left open, question by question; err is
// only for a job that cannot be put into numbers at all.
func NewScene(j *job.Job) (*Scene, error) {
	solved, err := j.Survey()
	if err != nil {
		return nil, err
	}
	s := &Scene{Job: j, Survey: solved, forces: map[string]force{}, ofBed: map[string]Answer{}, keys: keysOf(&j.Room)}
	for _, p := range j.Places {
		if place, err := yardstick.ParsePlace(p); err == nil {
			s.Places = append(s.Places, place)
		}
	}
	s.build()
	s.settleFacets()
	s.settle()
	return s, nil
}

// Put stands the bed somewhere else in the same room, in the scene itself: the room is not solved and the bed not built again. The job
// that the scene was made of stays as it is.
func (s *Scene) Put(p job.Placement) {
	j := *s.Job
	j.Place = p
	s.Job = &j
	s.Solids = s.Solids[:0]
	s.forgetPlace()
	s.stand()
}

// Change gives the scene another job with the same room and the same sleepers: the bed is built again and stands where that job has it, the
// room is not solved again.
func (s *Scene) Change(j *job.Job) {
	s.Job = j
	s.build()
	s.Solids = s.Solids[:0]
	s.forgetPlace()
	s.stand()
}

// build builds the bed of the job.
func (s *Scene) build() {
	s.Bed, s.BedErr, s.blanks = nil, nil, s.blanks[:0]
	clear(s.ofBed)
	bed, err := bunk.Build(s.Job.Bed)
	if err != nil {
		s.BedErr = err
		return
	}
	s.Bed, s.tallest = &bed, tallestOf(&bed)
	for _, p := range bed.Parts {
		s.blanks = append(s.blanks, p.Solid())
	}
}

// settleFacets works out which part of the scene each quantity moves, which hangs on the walls that the bed stands at.
func (s *Scene) settleFacets() {
	at := fmt.Sprintf("%q %q %t", s.Job.Place.Wall, s.Job.Place.From, s.Job.Place.Along > 0)
	if s.facetsOf == at {
		return
	}
	s.facetsOf, s.facets = at, s.facets[:0]
	for _, key := range s.Survey.Keys {
		s.facets = append(s.facets, s.facetOf(key))
	}
}

// settle works out everything that follows from the quantities of the survey.
func (s *Scene) settle() {
	s.walls()
	s.feet()
	s.stand()
}

// row returns a row of the yardstick with its force at the job's places.
func (s *Scene) row(id string) (*yardstick.Row, yardstick.Force, yardstick.Place) {
	f, ok := s.forces[id]
	if !ok {
		r, found := yardstick.Find(id)
		if !found {
			panic("fit: no row " + id)
		}
		fo, place := yardstick.StrongestForce(s.Places, r)
		f = force{&r, fo, place}
		if _, judged := r.JudgedBy(); judged {
			f.force = yardstick.NoForce
		}
		s.forces[id] = f
	}
	return f.row, f.force, f.place
}

// speaks tells whether any of some rows means something at the job's places.
func (s *Scene) speaks(rows []string) bool {
	for _, id := range rows {
		if _, force, _ := s.row(id); force != yardstick.NoForce {
			return true
		}
	}
	return false
}

// InRoom takes the scene into another room that the readings allow: every quantity of the survey has another value, and the bed stands in it as
// the job has it. What is planned beforehand, such as the places of screws, stays as the survey has it. Nil takes it back.
func (s *Scene) InRoom(x []float64) {
	if s.surveyed == nil {
		s.surveyed = slices.Clone(s.Survey.X)
	}
	if x == nil {
		x = s.surveyed
	}
	copy(s.Survey.X, x)
	s.forget()
	s.settle()
}

// moved returns the scene with one quantity moved by d. It is the same scene, changed in place: restore puts it back.
func (s *Scene) moved(quantity int, d float64) *Scene {
	if !s.moving {
		s.moving, s.held, s.which = true, s.Survey.X[quantity], quantity
	}
	s.Survey.X[quantity] = s.held + d
	s.forget()
	s.settleAfter(quantity)
	return s
}

// settleAfter works out again what one quantity moves: things that stand in the room do not move walls or bed.
func (s *Scene) settleAfter(quantity int) {
	if s.facets[quantity]&(Standing|FarLean|FarTrim) != 0 {
		s.settle()
	}
}

func (s *Scene) restore(quantity int) {
	s.Survey.X[quantity], s.moving = s.held, false
	s.forget()
	s.settleAfter(quantity)
}

// scale is the size of one step of a quantity: slopes of ceilings and leans of walls are numbers without a unit.
func (s *Scene) scale(quantity int) float64 {
	key := s.Survey.Keys[quantity]
	if strings.HasSuffix(key, ".slope_x") || strings.HasSuffix(key, ".slope_y") || strings.HasSuffix(key, ".lean") {
		return 1e-3
	}
	return 1
}

// facetOf tells which part of the scene a quantity moves.
func (s *Scene) facetOf(key string) Facet {
	table, rest, _ := strings.Cut(key, ".")
	switch table {
	case "corner":
		return Outline
	case "wall":
		wall, what, _ := strings.Cut(rest, ".")
		return wallFacet(what, s.leansOn(wall))
	case "floor":
		if rest == "rise" || rest == "fall" {
			return Rise
		}
		return Floor
	case "ceiling", "beam":
		return Ceiling
	case "door":
		return openingFacet(rest, Doors, Leaves)
	case "window":
		return openingFacet(rest, Windows, Panes)
	case "outlet":
		return Outlets
	case "register":
		return Registers
	case "heater":
		return Heaters
	case "fan":
		return Fans
	case "light":
		return Lights
	case "alarm":
		return Alarms
	case "furniture", "hatch":
		return Furniture
	case "sleeper":
		return People
	}
	return 0
}

// openingFacet tells whether a quantity of a door or window is its place or what opens in it.
func openingFacet(rest string, place, moves Facet) Facet {
	switch rest[strings.LastIndexByte(rest, '.')+1:] {
	case "at", "wide", "high", "sill", "head", "casing_wide", "casing_deep", "sill_deep":
		return place
	}
	return moves
}

// leansOn tells whether the bed stands against a wall: its own, and the one at an end of it that the bed is pushed against.
func (s *Scene) leansOn(wall string) bool {
	own := s.Job.Place.Wall
	if wall == own {
		return true
	}
	if s.Job.Place.Along > 0 || own == "" || wall == "" {
		return false
	}
	at := s.Job.Place.From
	if at == "" {
		at = own[:1]
	}
	return strings.Contains(wall, at)
}

// wallFacet tells what a quantity of a wall moves; studs of a wall that nothing is fixed to move nothing.
func wallFacet(what string, own bool) Facet {
	near := func(own1, far Facet) Facet {
		if own {
			return own1
		}
		return far
	}
	switch {
	case strings.HasPrefix(what, "lean"), strings.HasPrefix(what, "bow"), strings.HasPrefix(what, "plumb"):
		return near(Lean, FarLean)
	case strings.HasPrefix(what, "baseboard"):
		return near(Trim, FarTrim)
	}
	return near(Studs, 0)
}

// v returns a quantity in mm, NaN where it is not known.
func (s *Scene) v(r survey.Ref) float64 { return s.Survey.Value(r) }

// planned returns a quantity as the plan has it, whatever is moved just now: what is marked on a board beforehand stays there while
// the wall behind it moves within what is known.
func (s *Scene) planned(r survey.Ref) float64 {
	switch {
	case s.moving && int(r) == s.which+1:
		return s.held
	case s.surveyed != nil && r > 0:
		return s.surveyed[r-1]
	}
	return s.v(r)
}
