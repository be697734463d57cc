package session

import (
	"slices"
	"strings"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room"
	"bunkwright/room/length"
)

// placed is where something of the room is said to be, so that it can be said of another wall.
type placed struct {
	key       string
	wall      *string
	from      *string
	at        *room.Measure
	far, rest *room.Measure // of openings, nil for others
	hinge     *string       // of doors, nil for others
}

// own returns a job whose lists of the room may be changed.
func own(j *job.Job) *job.Job {
	next := *j
	r := &next.Room
	r.Corners, r.Walls, r.Diagonals = slices.Clone(r.Corners), slices.Clone(r.Walls), slices.Clone(r.Diagonals)
	r.Ceilings, r.Beams, r.Doors, r.Windows = slices.Clone(r.Ceilings), slices.Clone(r.Beams), slices.Clone(r.Doors), slices.Clone(r.Windows)
	r.Outlets, r.Registers, r.Heaters, r.Fans = slices.Clone(r.Outlets), slices.Clone(r.Registers), slices.Clone(r.Heaters), slices.Clone(r.Fans)
	r.Lights, r.Alarms, r.Hatches, r.Pieces = slices.Clone(r.Lights), slices.Clone(r.Alarms), slices.Clone(r.Hatches), slices.Clone(r.Pieces)
	for i := range r.Ceilings {
		r.Ceilings[i].Heights = slices.Clone(r.Ceilings[i].Heights)
	}
	for i := range r.Walls {
		r.Walls[i].Studs = slices.Clone(r.Walls[i].Studs)
	}
	return &next
}

// places lists everything of a room that is placed along a wall.
func places(r *room.Room) (out []placed) {
	on := func(table, key string, i int, at *room.OnWall, hinge *string) {
		out = append(out, placed{table + "." + KeyOr(key, i), &at.Wall, &at.From, &at.At, &at.Far, &at.Rest, hinge})
	}
	spot := func(key string, s *room.Spot) {
		out = append(out, placed{key: key, wall: &s.Wall, from: &s.From, at: &s.At})
	}
	for i := range r.Doors {
		on("door", r.Doors[i].Key, i, &r.Doors[i].OnWall, &r.Doors[i].Hinge)
	}
	for i := range r.Windows {
		on("window", r.Windows[i].Key, i, &r.Windows[i].OnWall, nil)
	}
	for i := range r.Outlets {
		o := &r.Outlets[i]
		out = append(out, placed{key: "outlet." + KeyOr(o.Key, i), wall: &o.Wall, from: &o.From, at: &o.At})
	}
	for i := range r.Registers {
		spot("register."+KeyOr(r.Registers[i].Key, i), &r.Registers[i].Spot)
	}
	for i := range r.Heaters {
		spot("heater."+KeyOr(r.Heaters[i].Key, i), &r.Heaters[i].Spot)
	}
	for i := range r.Fans {
		spot("fan."+KeyOr(r.Fans[i].Key, i), &r.Fans[i].Spot)
	}
	for i := range r.Lights {
		spot("light."+KeyOr(r.Lights[i].Key, i), &r.Lights[i].Spot)
	}
	for i := range r.Alarms {
		spot("alarm."+KeyOr(r.Alarms[i].Key, i), &r.Alarms[i].Spot)
	}
	for i := range r.Hatches {
		spot("hatch."+KeyOr(r.Hatches[i].Key, i), &r.Hatches[i].Spot)
	}
	for i := range r.Pieces {
		spot("furniture."+KeyOr(r.Pieces[i].Key, i), &r.Pieces[i].Spot)
	}
	for i := range r.Ceilings {
		for k := range r.Ceilings[i].Heights {
			h := &r.Ceilings[i].Heights[k]
			spot("ceiling."+KeyOr(r.Ceilings[i].Key, i)+".height."+KeyOr(h.Key, k), &h.Spot)
		}
	}
	return out
}

// end returns the letter that a place is counted from: the wall's first corner where it does not say.
func (p placed) end() string {
	if *p.from != "" || *p.wall == "" {
		return *p.from
	}
	return ends(*p.wall)[0]
}

// keep says a place of another wall that has the end it is counted from. A reading to the end that it has no more is gone.
func (p placed) keep(wall, from string) {
	*p.wall, *p.from = wall, from
	if p.rest != nil {
		*p.rest = nil
	}
}

// turn says a place from the other end: what was read from there is kept, else it follows from the lengths, mm, and is assumed.
func (p placed) turn(wall, from string, at length.Length) {
	read := p.at.Read() || p.far != nil && p.far.Read()
	*p.wall, *p.from = wall, from
	switch {
	case p.rest != nil && p.rest.Read():
		*p.at = *p.rest
	case read:
		*p.at = assumedMeasure(at)
	}
	if p.far != nil {
		*p.far, *p.rest = nil, nil
	}
}

func assumedMeasure(l length.Length) room.Measure {
	return room.Measure{{Value: max(l, 0), How: room.Assumed}}
}

// renamed gives the ends of a wall other letters, with everything that is said of it; its things keep what they are counted by.
func renamed(r *room.Room, wall, to string) {
	was, is := ends(wall), ends(to)
	letter := func(s *string) {
		for i := range was {
			if *s == was[i] {
				*s = is[i]
				return
			}
		}
	}
	for i := range r.Walls {
		if w := &r.Walls[i]; w.Key == wall {
			w.Key = to
			for k := range w.Studs {
				letter(&w.Studs[k].From)
			}
		}
	}
	for _, p := range places(r) {
		if *p.wall == wall {
			*p.wall = to
			letter(p.from)
			if p.hinge != nil {
				letter(p.hinge)
			}
		}
	}
	for i := range r.Beams {
		if r.Beams[i].Along == wall {
			r.Beams[i].Along = to
		}
	}
	for i := range r.Ceilings {
		if c := &r.Ceilings[i]; c.Along == wall {
			c.Along = to
		} else if c.Strip == wall {
			c.Strip = to
		}
	}
}

// setCorner says the inside angle of a corner, in whole degrees and tenths.
func setCorner(r *room.Room, letter string, inside float64) {
	i := slices.IndexFunc(r.Corners, func(c room.Corner) bool { return c.Key == letter })
	if i < 0 {
		r.Corners, i = append(r.Corners, room.Corner{Key: letter}), len(r.Corners)
	}
	r.Corners[i].Inside = inside
	if r.Corners[i].Square == "yes" {
		r.Corners[i].Square = ""
	}
}

// freeLetter returns the first letter that no corner has, "" for none.
func freeLetter(outline string) string {
	for c := 'A'; c <= 'Z'; c++ {
		if !strings.ContainsRune(outline, c) {
			return string(c)
		}
	}
	return ""
}

// checked returns the job where it can be saved and opened again.
func checked(j *job.Job) (*job.Job, error) { return jobfile.Set(j) }
