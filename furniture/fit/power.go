package fit

import (
	"fmt"
	"math"
	"slices"

	"bunkwright/furniture/yardstick"
	"bunkwright/room"
	"bunkwright/room/geom"
)

var power = Question{
	ID:       "power",
	Sentence: "Are the outlets and switches still within reach?",
	Group:    Build,
	Why:      "A plug behind a bed is bent until it fails, and a switch behind one is lost.",
	How: "An outlet, switch or thermostat is hidden where a straight line out from its middle meets the bed, a mattress, a drawer or a " +
		"shelf within own-walkway of the wall: with more than that before it somebody can walk up to it. The free depth before an outlet that " +
		"stays in use is measured along that line. Distances along the walls are counted round corners, doors end a stretch.",
	Depends: Standing | FarLean | Outlets | Doors | Leaves,
	Propose: []Driver{Slide, Mirrored, OtherWall},
	Measure: func(s *Scene) Finding { return s.power() },
}

const (
	plugDepth    = "own-plug-depth"
	plugPressure = "outlet-behind-bed"
	outletReach  = "outlet-reach"
	tamper       = "outlet-tamper"
)

// onTheWall are the sorts of things that the question is about, as the room's list of absent things names them.
var onTheWall = []string{"outlet", "switch", "thermostat"}

// socket is an outlet, switch or thermostat on its wall.
type socket struct {
	key    string
	rec    *room.Outlet
	wall   *Wall
	along  float64 // from the wall's first corner
	height float64
}

// kind returns what it is; a thing without a kind is taken as an outlet.
func (o *socket) kind() string {
	if o.rec.Kind == "" {
		return "outlet"
	}
	return o.rec.Kind
}

// socket finds a thing on its wall, or what is missing for it.
func (s *Scene) socket(i int) (o socket, what string) {
	rec, refs := &s.Job.Room.Outlets[i], &s.Survey.Layout.Outlets[i]
	o = socket{key: s.keys.outlets[i], rec: rec, wall: s.wallOf(refs.Wall), height: s.v(refs.Height)}
	switch {
	case o.wall == nil:
		return o, askWall(o.key)
	case s.unread(refs.At):
		return o, askAlong("the middle of", o.key, rec.Wall, rec.From)
	case s.unread(refs.Height):
		return o, askHigh("the middle of", o.key, rec.Wall)
	}
	o.along = o.wall.from(refs.FromEnd, s.v(refs.At))
	return o, ""
}

func (s *Scene) power() Finding {
	missing := s.notAsked()
	switch {
	case len(s.Job.Room.Outlets) == 0 && len(missing) == 0:
		return absent("there is no outlet, switch or thermostat")
	case !s.Stands:
		return Finding{Readings: []Reading{ask("outlet", s.Wants, plugDepth, plugPressure)}}
	}
	f := Finding{Readings: make([]Reading, 0, len(s.Job.Room.Outlets)+len(s.Job.Room.Doors)+5)}
	for _, thing := range missing {
		f.Readings = append(f.Readings, ask(thing, fmt.Sprintf("is there %s %s in the room?", article(thing), thing), plugDepth))
	}
	f.Readings = append(f.Readings, s.socketReadings(&f)...)
	f.Readings = append(f.Readings, s.tamperReading())
	f.Readings = append(f.Readings, s.alongWalls()...)
	return f
}

func article(word string) string {
	if word[0] == 'o' {
		return "an"
	}
	return "a"
}

// notAsked lists the sorts that are neither listed nor absent.
func (s *Scene) notAsked() []string {
	var out []string
	for _, kind := range onTheWall {
		listed := slices.ContainsFunc(s.Job.Room.Outlets, func(o room.Outlet) bool { return o.Kind == kind || o.Kind == "" && kind == "outlet" })
		if !listed && !s.Job.Room.Lacks(kind) {
			out = append(out, kind)
		}
	}
	return out
}

// socketReadings measures the free depth before each outlet, and tells of everything that is hidden.
func (s *Scene) socketReadings(f *Finding) []Reading {
	out := make([]Reading, 0, len(s.Job.Room.Outlets)+1)
	hidden := 0
	pressed := Reading{At: "behind", Rows: []string{plugPressure}, Yes: true, Skip: "no outlet is behind the bed"}
	for i := range s.Job.Room.Outlets {
		o, what := s.socket(i)
		r := Reading{At: o.key + ".plug", Rows: []string{plugDepth}, Ask: what, Parts: []string{o.key}}
		if what == "" {
			if behind, part := s.measurePlug(&r, &o); behind {
				hidden++
				f.Notes = append(f.Notes, fmt.Sprintf("%s on wall %s is behind %s", o.key, o.rec.Wall, part))
				pressed.behind(&r, &o)
			}
		}
		out = append(out, r)
	}
	f.Figures = []Figure{{"hidden", float64(hidden), "count"}}
	return append(out, pressed)
}

// measurePlug fills in the free depth before a thing on the wall and tells whether the bed hides it.
func (s *Scene) measurePlug(r *Reading, o *socket) (behind bool, part string) {
	depth, part := s.depthBefore(o)
	if part == "" {
		spot := geom.V2{X: o.along, Y: o.height}
		r.Ask = s.thickBefore(o.wall, geom.Rectangle{Lo: spot, Hi: spot}, depth)
	}
	switch {
	case r.Ask != "":
		return false, ""
	case part == "":
		r.Skip = "nothing of the bed is before " + o.key
	case o.kind() != "outlet":
		r.Skip = o.key + " takes no plug"
	case o.rec.InUse == "no":
		r.Skip = o.key + " does not stay in use"
	case o.rec.InUse == "":
		r.Ask = fmt.Sprintf("does %s on wall %s stay in use behind the bed?", o.key, o.rec.Wall)
	}
	r.Have, r.Edge = depth, part+" is before "+o.key
	if part == "" {
		r.Edge = ""
		return false, ""
	}
	r.Parts = append(r.Parts, part)
	return true, part
}

// behind counts one hidden outlet: its plug is pressed on where the depth before it does not do.
func (pressed *Reading) behind(r *Reading, o *socket) {
	if o.kind() != "outlet" || o.rec.InUse == "no" {
		return
	}
	pressed.Skip = ""
	pressed.Parts = append(pressed.Parts, o.key)
	row, _ := yardstick.Find(plugDepth)
	if row.Outcome(r.Have) != yardstick.Pass {
		pressed.Yes, pressed.Edge = false, r.Edge
	}
}

// depthBefore returns the free depth before a thing on the wall, straight out from its middle, and the first thing in the way; nobody is
// in the way where somebody can walk up to it.
func (s *Scene) depthBefore(o *socket) (depth float64, part string) {
	depth = yardstick.Figure("own-walkway")
	from := o.wall.Point(o.along, -s.Offset(o.wall, o.height)).At(o.height)
	dir := o.wall.In.At(0)
	s.things(along(from, dir, depth), func(t *Solid) {
		if t0, t1, ok := t.Box.Ray(from, dir); ok && t1 > 0 && t0 < depth {
			depth, part = t0, t.Part.ID
		}
	})
	return depth, part
}

// tamperReading is what the maker says of the outlets.
func (s *Scene) tamperReading() Reading {
	r := Reading{At: "tamper", Rows: []string{tamper}}
	switch s.Job.Confirmed[tamper] {
	case "yes":
		r.Yes = true
	case "no":
	default:
		r.Ask = "are the outlets made so that a child cannot push something in (tamper-resistant)?"
	}
	if s.Job.Room.Lacks("outlet") {
		r.Skip = "there is no outlet"
	}
	return r
}

// FurthestFromOutlet returns how far along the wall the worst place of a stretch is from the nearest of its outlets: length of the
// stretch and places of the outlets from its start in rising order, all in one unit. It is infinite without outlets.
func FurthestFromOutlet(stretch float64, at ...float64) float64 {
	if len(at) == 0 {
		return math.Inf(1)
	}
	worst := max(at[0], stretch-at[len(at)-1])
	for i := 1; i < len(at); i++ {
		worst = max(worst, (at[i]-at[i-1])/2)
	}
	return worst
}
