package session

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// freedom says which measures of a thing follow a hand: along its wall, out from it, and up the wall.
type freedom struct {
	along, out bool
	up         []string // measures from the floor
	down       string   // a measure from the ceiling
}

// freedomOf returns how a thing can be moved; nothing for what is no thing, and for the faces of the ceiling.
func freedomOf(j *job.Job, key string) freedom {
	table, _, _ := strings.Cut(key, ".")
	inWall := jobfile.Shown(j, key+".in") == "wall" || jobfile.Shown(j, key+".kind") == "wall"
	switch table {
	case "door":
		return freedom{along: true}
	case "window":
		return freedom{along: true, up: []string{"sill", "head"}}
	case "outlet":
		return freedom{along: true, up: []string{"height"}}
	case "register", "light", "alarm":
		if inWall {
			return freedom{along: true, up: map[string][]string{"register": {"height"}, "light": {"lowest"}}[table], down: map[string]string{"alarm": "below"}[table]}
		}
		return freedom{along: true, out: true}
	case "heater", "fan", "hatch", "furniture":
		return freedom{along: true, out: true}
	case "beam":
		return freedom{out: true}
	}
	return freedom{}
}

// Movable tells whether a thing of the room can be moved by hand.
func Movable(j *job.Job, key string) bool {
	f := freedomOf(j, key)
	return Subject(key) == key && (f.along || f.out)
}

// OnWall returns the wall on whose face a thing is seen, "" for what stands or hangs out in the room.
func OnWall(j *job.Job, key string) string {
	if f := freedomOf(j, key); f.out || !f.along {
		return ""
	}
	return jobfile.Shown(j, key+".wall")
}

// MoveThing moves a thing of the room by a way in the room, z up, in mm: along its wall, and where it stands or hangs out in the room also out
// from it. Its place is written as the reading it was given by, counted from the same end, rounded to the step and marked as assumed: a hand is
// no tape. Measures that do not change keep their readings. It stops at the ends of its wall and at the walls of the room. The job is for
// looking at; Kept makes it one to keep.
func MoveThing(s *fit.Scene, key string, by geom.V3, step length.Length) (Reshaped, error) {
	m := mover{s: s, key: key, step: step, free: freedomOf(s.Job, key)}
	if !m.find() {
		return Reshaped{}, ErrNoShape
	}
	along, out := m.ways(by.XY())
	if m.free.out && !m.stays(along, out) {
		switch {
		case m.stays(along, 0):
			out = 0
		case m.stays(0, out):
			along = 0
		default:
			along, out = 0, 0
		}
	}
	m.shift(along, out)
	for _, k := range m.free.up {
		m.lift(k, by.Z)
	}
	if m.free.down != "" {
		m.lift(m.free.down, -by.Z)
	}
	return m.done()
}

// Kept returns a job that was pulled or had something moved in it, where it can be saved and opened again.
func Kept(r Reshaped) (*job.Job, error) { return checked(r.Job) }

// mover moves one thing.
type mover struct {
	s          *fit.Scene
	key        string
	step       length.Length
	free       freedom
	wall       *fit.Wall
	from       string // the letter of the end that it is counted from
	at, out    float64
	wide, deep float64
	changes    []jobfile.Change
	moved      []Taken
	aside      []string
}

// find looks where the thing is drawn now: without a reading in the middle of its wall.
func (m *mover) find() bool {
	j := m.s.Job
	name := jobfile.Shown(j, m.key+".wall")
	if name == "" {
		name = jobfile.Shown(j, m.key+".along")
	}
	i := slices.IndexFunc(m.s.Walls, func(w fit.Wall) bool { return w.Key == name })
	if i < 0 {
		return false
	}
	m.wall = &m.s.Walls[i]
	if m.from = jobfile.Shown(j, m.key+".from"); m.from == "" {
		m.from = ends(name)[0]
	}
	m.wide, m.deep = zeroWithout(m.value("wide")), zeroWithout(m.value("deep"))
	if table, _, _ := strings.Cut(m.key, "."); table == "fan" || table == "light" { // round, and placed by its middle
		m.wide, m.deep = 0, 0
	}
	m.out = zeroWithout(m.value("out"))
	if m.at = m.value("at"); math.IsNaN(m.at) {
		m.at = (m.wall.Len - m.wide) / 2
	}
	return true
}

// ends are the letters of the corners of a wall.
func ends(wall string) [2]string {
	r := []rune(wall)
	return [2]string{string(r[0]), string(r[len(r)-1])}
}

func zeroWithout(mm float64) float64 {
	if math.IsNaN(mm) {
		return 0
	}
	return mm
}

// value is a measure of the thing in mm, NaN where it was not read.
func (m *mover) value(k string) float64 {
	if ref := m.s.Survey.Find(m.key + "." + k); ref.Known() {
		return m.s.Survey.Value(ref)
	}
	return m.first(k)
}

// first is the first reading of a measure in mm, NaN where there is none.
func (m *mover) first(k string) float64 {
	l, err := length.Parse(jobfile.Shown(m.s.Job, m.key+"."+k), length.Context{Unit: unitOf(m.s.Job)})
	if err != nil {
		return math.NaN()
	}
	return l.MM()
}

// ways splits a way in the room into one along the wall, counted from the thing's end, and one out from it.
func (m *mover) ways(by geom.V2) (along, out float64) {
	if m.free.along {
		along = by.Dot(m.wall.Dir)
	}
	if m.fromEnd() {
		along = -along
	}
	if m.free.out {
		out = by.Dot(m.wall.In)
	}
	if !m.free.out { // it is in the wall: it stays between the ends
		along = min(max(along, -m.at), max(m.wall.Len-m.wide-m.at, 0))
	}
	return max(along, -m.at), max(out, -m.out)
}

func (m *mover) fromEnd() bool { return m.from == ends(m.wall.Key)[1] }

// outBy is how far outside the room a thing may be read to be, mm: walls are not straight.
const outBy = 10.0

// stays tells whether the near and the far corner of the thing are in the room once it is moved; one that was outside may go anywhere.
func (m *mover) stays(along, out float64) bool {
	if !m.free.along {
		return true
	}
	for _, d := range [2][2]float64{{0, 0}, {m.wide, m.deep}} {
		if was := m.point(m.at+d[0], m.out+d[1]); !m.inside(was) {
			return true
		}
		if !m.inside(m.point(m.at+along+d[0], m.out+out+d[1])) {
			return false
		}
	}
	return true
}

func (m *mover) inside(q geom.V2) bool {
	return m.s.Outline.Contains(q) || m.s.Outline.Distance(q) <= outBy
}

func (m *mover) point(at, out float64) geom.V2 {
	if m.fromEnd() {
		at = m.wall.Len - at
	}
	return m.wall.Point(at, out)
}

// shift writes where the thing is now.
func (m *mover) shift(along, out float64) {
	if m.still(along) {
		along = 0
	} else {
		k := m.given()
		at := m.at
		if k != "at" {
			at = m.first(k)
		}
		if k == "rest" {
			along = -along
		}
		m.set(k, at+along)
		for _, other := range [3]string{"at", "far", "rest"} { // they would contradict it
			if other != k {
				m.forget(other)
			}
		}
	}
	if !m.still(out) {
		m.set("out", m.out+out)
	}
}

// still tells whether a way is less than half a step: what does not move keeps its readings.
func (m *mover) still(mm float64) bool { return math.Abs(mm) < m.step.MM()/2 || mm == 0 }

// given is the measure that a place along the wall was given by.
func (m *mover) given() string {
	for _, k := range [3]string{"at", "far", "rest"} {
		if jobfile.Shown(m.s.Job, m.key+"."+k) != "" {
			return k
		}
	}
	return "at"
}

// lift writes a height that was read.
func (m *mover) lift(k string, by float64) {
	if was := m.value(k); !math.IsNaN(was) && !m.still(by) && jobfile.Shown(m.s.Job, m.key+"."+k) != "" {
		m.set(k, was+by)
	}
}

func (m *mover) set(k string, mm float64) {
	l := max(length.FromMM(mm), 0)
	if m.step > 0 {
		l = l.Round(m.step, length.Nearest)
	}
	m.forget(k)
	key, text := m.key+"."+k, jobfile.ShownLength(l, unitOf(m.s.Job))
	m.changes = append(m.changes, jobfile.Change{Key: key, Text: text}, jobfile.Change{Key: key + ".1.how", Text: string(room.Assumed)})
	m.moved = append(m.moved, Taken{Key: key, Wall: m.wall.Key, From: m.from, First: text, How: room.Assumed, State: Once})
}

// forget takes all readings of a measure away, and notes which were more than assumed.
func (m *mover) forget(k string) {
	key := m.key + "." + k
	if WasRead(m.s.Job, key) {
		m.aside = append(m.aside, key)
	}
	for n := 1; jobfile.Shown(m.s.Job, key+"."+strconv.Itoa(n)) != ""; n++ {
		m.changes = append(m.changes, jobfile.Change{Key: key})
	}
}

func (m *mover) done() (Reshaped, error) {
	if len(m.changes) == 0 {
		return Reshaped{Job: m.s.Job}, nil
	}
	next, err := jobfile.Draft(m.s.Job, m.changes...)
	return Reshaped{Job: next, Lengths: m.moved, Aside: m.aside}, err
}

// WasRead tells whether somebody measured a quantity: it is neither assumed nor told.
func WasRead(j *job.Job, key string) bool {
	how := room.How(jobfile.Shown(j, key+".1.how"))
	return jobfile.Shown(j, key) != "" && (how != room.Assumed && how != room.Told || jobfile.Shown(j, key+".2") != "")
}

// PlaceRead tells whether somebody measured where a thing is.
func PlaceRead(j *job.Job, key string) bool {
	for _, k := range [4]string{"at", "far", "rest", "out"} {
		if WasRead(j, key+"."+k) {
			return true
		}
	}
	return false
}
