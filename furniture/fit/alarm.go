package fit

import (
	"fmt"
	"math"

	"bunkwright/furniture/yardstick"
	"bunkwright/room"
	"bunkwright/room/geom"
)

var smokeAlarm = Question{
	ID:       "smoke-alarm",
	Sentence: "Is the smoke alarm left free?",
	Group:    Safety,
	Why:      "Smoke that goes round a shelf, or air that blows past, lets an alarm sleep.",
	How: "Number of alarms in the room; level distance of each from the tips of a ceiling fan, from a supply register (a register that nobody " +
		"called supply or return counts as supply) and from a door to a kitchen or bathroom; how far below the ceiling a wall alarm sits. " +
		"What of the bed or its shelves is straight below it, or straight before it on a wall, is told beside.",
	Caution: "Test the alarm with the bed in place. Where it must hang is for local code and its own sheet.",
	Depends: Outline | Lean | FarLean | Alarms | Fans | Registers | Doors,
	Measure: func(s *Scene) Finding { return s.smokeAlarm() },
}

const (
	alarmCount    = "alarm-count"
	alarmFan      = "alarm-fan"
	alarmRegister = "alarm-register"
	alarmDoor     = "alarm-wet-door"
	alarmDrop     = "alarm-wall-drop"
)

// alarmAt is a smoke alarm in the room.
type alarmAt struct {
	key  string
	rec  *room.Alarm
	wall *Wall
	at   geom.V2
}

func (s *Scene) smokeAlarm() Finding {
	list := s.Job.Room.Alarms
	_, force, _ := s.row(alarmCount)
	switch {
	case s.unlisted(len(list), "alarm"):
		return Finding{Readings: []Reading{ask("alarms", "is there a smoke alarm in this room?", alarmCount)}}
	case len(list) == 0 && force == yardstick.NoForce:
		return absent("there is no smoke alarm in this room")
	case len(list) == 0:
		return Finding{Readings: []Reading{{At: "alarms", Rows: []string{alarmCount}, Edge: "there is no smoke alarm in this room"}}}
	}
	f := Finding{Readings: []Reading{{At: "alarms", Rows: []string{alarmCount}, Have: float64(len(list))}}}
	for i := range list {
		s.alarmReadings(i, &f)
	}
	return f
}

// alarmReadings measures one alarm against everything that may keep smoke from it.
func (s *Scene) alarmReadings(i int, f *Finding) {
	a, what := s.alarm(i)
	f.Readings[0].Parts = append(f.Readings[0].Parts, a.key)
	if what != "" {
		f.Readings = append(f.Readings, ask(a.key, what, alarmFan, alarmRegister, alarmDoor, alarmDrop))
		return
	}
	f.Readings = append(f.Readings, s.alarmFans(&a)...)
	f.Readings = append(f.Readings, s.alarmRegisters(&a)...)
	f.Readings = append(f.Readings, s.alarmDoors(&a)...)
	f.Readings = append(f.Readings, s.alarmBelow(i, &a))
	if note := s.inTheWay(i, &a); note != "" {
		f.Notes = append(f.Notes, note)
	}
}

// alarm finds an alarm, or what is missing for it.
func (s *Scene) alarm(i int) (a alarmAt, what string) {
	rec, refs := &s.Job.Room.Alarms[i], &s.Survey.Layout.Alarms[i]
	a = alarmAt{key: s.keys.alarms[i], rec: rec, wall: s.wallOf(refs.Wall)}
	out := s.v(refs.Out)
	if rec.In == "wall" && math.IsNaN(out) {
		out = 0
	}
	switch {
	case s.Walls == nil:
		return a, noShape
	case a.wall == nil:
		return a, askWall(a.key)
	case rec.In == "":
		return a, fmt.Sprintf("is %s on the ceiling or on wall %s?", a.key, rec.Wall)
	case s.unread(refs.At):
		return a, askAlong("the middle of", a.key, rec.Wall, rec.From)
	case math.IsNaN(out):
		return a, fmt.Sprintf("how far out from wall %s is the middle of %s?", rec.Wall, a.key)
	}
	a.at = a.wall.Point(a.wall.from(refs.FromEnd, s.v(refs.At)), out)
	return a, ""
}

func (s *Scene) alarmFans(a *alarmAt) []Reading {
	rows := []string{alarmFan}
	switch {
	case s.unlisted(len(s.Job.Room.Fans), "fan"):
		return []Reading{ask(a.key+".fan", "is there a ceiling fan?", rows...)}
	case len(s.Job.Room.Fans) == 0:
		return []Reading{{At: a.key + ".fan", Rows: rows, Skip: "there is no fan"}}
	}
	var out []Reading
	for i, refs := range s.Survey.Layout.Fans {
		rec := &s.Job.Room.Fans[i]
		key := s.keys.fans[i]
		r := Reading{At: a.key + "." + key, Rows: rows, Parts: []string{a.key, key}, Ask: s.askSpot("the middle of", key, rec.Spot, refs.SpotRefs)}
		if r.Ask == "" && s.unread(refs.Sweep) {
			r.Ask = askSweep(key, rec.Wall)
		}
		if at, ok := s.spot(refs.SpotRefs); ok {
			r.Have = at.Dist(a.at) - s.v(refs.Sweep)/2
		}
		out = append(out, r)
	}
	return out
}

func (s *Scene) alarmRegisters(a *alarmAt) []Reading {
	rows := []string{alarmRegister}
	if s.unlisted(len(s.Job.Room.Registers), "register") {
		return []Reading{ask(a.key+".register", "is there a register in the floor, a wall or the ceiling?", rows...)}
	}
	var out []Reading
	for i := range s.Job.Room.Registers {
		if s.Job.Room.Registers[i].Kind == "return" {
			continue
		}
		g, what := s.grille(i)
		r := Reading{At: a.key + "." + g.key, Rows: rows, Ask: what, Parts: []string{a.key, g.key}}
		switch {
		case what != "":
		case g.rec.In == "wall":
			d, _ := geom.SegmentPoint(g.wall.Point(g.face.Lo.X, 0), g.wall.Point(g.face.Hi.X, 0), a.at)
			r.Have = d
		default:
			r.Have = near(g.plan, a.at)
		}
		out = append(out, r)
	}
	if len(out) == 0 {
		out = []Reading{{At: a.key + ".register", Rows: rows, Skip: "there is no supply register"}}
	}
	return out
}

// alarmDoors measures the way to every door that leads to a kitchen or bathroom, or may.
func (s *Scene) alarmDoors(a *alarmAt) []Reading {
	rows := []string{alarmDoor}
	row, _, _ := s.row(alarmDoor)
	var out []Reading
	for i := range s.Job.Room.Doors {
		rec, refs := &s.Job.Room.Doors[i], &s.Survey.Layout.Doors[i]
		if rec.LeadsTo != "" && rec.LeadsTo != "bathroom" && rec.LeadsTo != "kitchen" {
			continue
		}
		key := s.keys.doors[i]
		r := Reading{At: a.key + "." + key, Rows: rows, Parts: []string{a.key, key}, Ask: s.askBeside(key, rec.OnWall, refs.OnWallRefs, refs.Wide)}
		if w, lo, hi, ok := s.interval(refs.OnWallRefs, refs.Wide); ok {
			r.Have, _ = geom.SegmentPoint(w.Point(lo, 0), w.Point(hi, 0), a.at)
		}
		if r.Ask == "" && rec.LeadsTo == "" && row.Outcome(r.Have) != yardstick.Pass {
			r.Ask = "where does " + key + " in wall " + rec.Wall + " lead to?"
		}
		out = append(out, r)
	}
	if len(out) == 0 {
		out = []Reading{{At: a.key + ".door", Rows: rows, Skip: "no door leads to a kitchen or bathroom"}}
	}
	return out
}

func (s *Scene) alarmBelow(i int, a *alarmAt) Reading {
	r := Reading{At: a.key + ".below", Rows: []string{alarmDrop}, Parts: []string{a.key}, Have: s.v(s.Survey.Layout.Alarms[i].Below)}
	switch {
	case a.rec.In == "ceiling":
		r.Skip = a.key + " is on the ceiling"
	case math.IsNaN(r.Have):
		r.Ask = fmt.Sprintf("how far below the ceiling is the top of %s on wall %s?", a.key, a.rec.Wall)
	}
	return r
}

// inTheWay names what of the bed and its shelves is straight below an alarm on the ceiling, or straight before one on a wall.
func (s *Scene) inTheWay(i int, a *alarmAt) string {
	if !s.Stands {
		return ""
	}
	from, dir, words := a.at.At(0), geom.V3{Z: -1}, "below"
	o := s.ceilingOver(disc(a.at, 1))
	from.Z = o.Z
	if a.rec.In == "wall" {
		from.Z -= s.v(s.Survey.Layout.Alarms[i].Below)
		dir, words = a.wall.In.At(0), "before"
	}
	if o.Ask != "" || math.IsNaN(from.Z) {
		return ""
	}
	name, least := "", math.Inf(1)
	s.things(along(from, dir, 1e5), func(t *Solid) {
		if t0, t1, ok := t.Box.Ray(from, dir); ok && t1 > 0 && t0 < least {
			name, least = t.Part.ID, t0
		}
	})
	if name == "" {
		return ""
	}
	return fmt.Sprintf("%s is straight %s %s", name, words, a.key)
}
