package session

import (
	"math"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// An Addable is something that can be put into a room, in plain words.
type Addable struct {
	Word   string // "smoke alarm"
	Table  string
	Name   string // what it is called until somebody names it
	Says   []jobfile.Change
	sizes  [2]length.Length // along the wall and out from it, assumed until they are read; 0: none
	absent string           // its word in the list of what a room has not
	out    bool             // its place is also read out from the wall
}

// Addables lists them as a menu shows them. Sizes are common ones (common practice, no source): they only draw the thing until it is read.
var Addables = []Addable{
	{Word: "door", Table: "door", Name: "hall", sizes: [2]length.Length{30 * length.Inch}},
	{Word: "closet", absent: "closet", Table: "door", Name: "closet", Says: []jobfile.Change{{Key: "leads_to", Text: "closet"}}, sizes: [2]length.Length{48 * length.Inch}},
	{Word: "window", absent: "window", Table: "window", Name: "window", sizes: [2]length.Length{36 * length.Inch}},
	{Word: "outlet", absent: "outlet", Table: "outlet", Name: "outlet", Says: []jobfile.Change{{Key: "kind", Text: "outlet"}}},
	{Word: "light switch", absent: "switch", Table: "outlet", Name: "switch", Says: []jobfile.Change{{Key: "kind", Text: "switch"}}},
	{Word: "thermostat", absent: "thermostat", Table: "outlet", Name: "thermostat", Says: []jobfile.Change{{Key: "kind", Text: "thermostat"}}},
	{Word: "register", absent: "register", Table: "register", Name: "register", Says: []jobfile.Change{{Key: "in", Text: "floor"}}, sizes: [2]length.Length{12 * length.Inch, 4 * length.Inch}, out: true},
	{Word: "heater", absent: "heater", Table: "heater", Name: "heater", sizes: [2]length.Length{40 * length.Inch, 4 * length.Inch}},
	{Word: "ceiling fan", absent: "fan", Table: "fan", Name: "ceiling", out: true},
	{Word: "light", absent: "light", Table: "light", Name: "light", Says: []jobfile.Change{{Key: "kind", Text: "surface"}}, out: true},
	{Word: "smoke alarm", absent: "alarm", Table: "alarm", Name: "smoke", Says: []jobfile.Change{{Key: "in", Text: "ceiling"}}, out: true},
	{Word: "furniture that stays", absent: "furniture", Table: "furniture", Name: "piece", sizes: [2]length.Length{32 * length.Inch, 18 * length.Inch}, out: true},
	{Word: "hatch in the ceiling", absent: "hatch", Table: "hatch", Name: "hatch", sizes: [2]length.Length{22 * length.Inch, 30 * length.Inch}, out: true},
	{Word: "beam", absent: "beam", Table: "beam", Name: "beam"},
	{Word: "height of the ceiling", Table: "ceiling.height", out: true},
}

// AddAt puts something into the room where it was pointed at. Its place and its sizes are marked as assumed: a pointer is no tape. It returns
// the key of the measure to read first.
func AddAt(s *fit.Scene, what Addable, at geom.V2) (next *job.Job, key string, err error) {
	w, along, out := nearestWall(s, at)
	if w == nil {
		return nil, "", ErrNoShape
	}
	a := adder{s: s, w: w, what: what}
	switch what.Table {
	case "beam":
		return a.beam(out)
	case "ceiling.height":
		return a.height(along, out)
	}
	name := freeName(s.Job, what.Table, what.Name)
	a.place(along, out)
	j, err := withoutAbsent(s.Job, what)
	if err != nil {
		return nil, "", err
	}
	next, err = jobfile.Add(j, what.Table, name, append(a.changes, what.Says...)...)
	return next, what.Table + "." + name + ".at", err
}

// adder collects what is known of a thing that is added.
type adder struct {
	s       *fit.Scene
	w       *fit.Wall
	what    Addable
	changes []jobfile.Change
}

func (a *adder) say(key, text string) {
	a.changes = append(a.changes, jobfile.Change{Key: key, Text: text})
}

// assume notes a length that nobody read, in whole inches or centimetres.
func (a *adder) assume(key string, mm float64) {
	step := 25.4
	if unitOf(a.s.Job) == length.Millimetres {
		step = 10
	}
	l := length.FromMM(math.Max(math.Round(mm/step), 0) * step)
	a.say(key, jobfile.ShownLength(l, unitOf(a.s.Job)))
	a.say(key+".1.how", "assumed")
}

func unitOf(j *job.Job) length.Unit {
	unit, err := length.ParseUnit(j.Unit)
	if err != nil {
		return length.Millimetres
	}
	return unit
}

// place says where a thing is: from the nearer end of its wall, and out from it.
func (a *adder) place(along, out float64) {
	wide, deep := a.what.sizes[0].MM(), a.what.sizes[1].MM()
	lo := math.Max(0, math.Min(along-wide/2, a.w.Len-wide))
	from, at := string([]rune(a.w.Key)[0]), lo
	if along > a.w.Len/2 {
		from, at = string([]rune(a.w.Key)[1]), a.w.Len-lo-wide
	}
	a.say("wall", a.w.Key)
	a.say("from", from)
	a.assume("at", at)
	if a.what.out {
		a.assume("out", math.Max(0, out-deep/2))
	}
	if wide > 0 {
		a.assume("wide", wide)
	}
	if deep > 0 {
		a.assume("deep", deep)
	}
}

func (a *adder) beam(out float64) (*job.Job, string, error) {
	name := freeName(a.s.Job, "beam", "beam")
	a.say("along", a.w.Key)
	a.assume("out", out)
	a.assume("wide", 8*25.4)
	j, err := withoutAbsent(a.s.Job, a.what)
	if err != nil {
		return nil, "", err
	}
	next, err := jobfile.Add(j, "beam", name, a.changes...)
	return next, "beam." + name + ".out", err
}

// height adds a place where the height of the ceiling is to be read, to its first face.
func (a *adder) height(along, out float64) (*job.Job, string, error) {
	j := a.s.Job
	if len(j.Room.Ceilings) == 0 {
		next, err := jobfile.Add(j, "ceiling", "main")
		if err != nil {
			return nil, "", err
		}
		j = next
	}
	next, key, err := AddElement(j, "ceiling."+KeyOr(j.Room.Ceilings[0].Key, 0)+".height")
	if err != nil {
		return nil, "", err
	}
	a.place(along, out)
	for i := range a.changes {
		a.changes[i].Key = key + "." + a.changes[i].Key
	}
	next, err = jobfile.Set(next, a.changes...)
	return next, key + ".height", err
}

// withoutAbsent takes back that the room has none of what is added.
func withoutAbsent(j *job.Job, what Addable) (*job.Job, error) {
	if what.absent == "" || !j.Room.Lacks(what.absent) {
		return j, nil
	}
	return SetAbsent(j, what.absent, false)
}

// nearestWall returns the wall nearest to a point of the room, and where the point is: along the wall and out from it.
func nearestWall(s *fit.Scene, at geom.V2) (near *fit.Wall, along, out float64) {
	least := math.Inf(1)
	for i := range s.Walls {
		w := &s.Walls[i]
		x, y := w.Along(at)
		x = math.Max(0, math.Min(x, w.Len))
		if d := w.Point(x, 0).Dist(at); d < least {
			near, along, out, least = w, x, math.Max(0, y), d
		}
	}
	return near, along, out
}
