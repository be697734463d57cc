package job

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"bunkwright/room"
	"bunkwright/room/survey"
)

// absent looks for things that the room is said not to have and that are described all the same.
func (f *finder) absent() {
	for _, thing := range f.j.Room.Absent {
		if key := f.described(thing); key != "" {
			f.add("room.absent", "one or the other", "%q is said to be absent, and %s describes one", thing, key)
		}
	}
}

// described returns the key of a thing of the room, "" where there is none.
func (f *finder) described(thing string) string {
	r := &f.j.Room
	switch thing {
	case "window":
		return first("window", len(r.Windows))
	case "fan":
		return first("fan", len(r.Fans))
	case "light":
		return first("light", len(r.Lights))
	case "heater":
		return first("heater", len(r.Heaters))
	case "register":
		return first("register", len(r.Registers))
	case "alarm":
		return first("alarm", len(r.Alarms))
	case "hatch":
		return first("hatch", len(r.Hatches))
	case "furniture":
		return first("furniture", len(r.Pieces))
	case "beam":
		return first("beam", len(r.Beams))
	case "outlet", "switch", "thermostat":
		return f.outletOf(thing)
	case "cord":
		return f.cord()
	case "closet":
		return f.closet()
	}
	return ""
}

func first(table string, n int) string {
	if n == 0 {
		return ""
	}
	return "[[" + table + "]]"
}

func (f *finder) outletOf(kind string) string {
	for i, o := range f.j.Room.Outlets {
		if o.Kind == kind || o.Kind == "" && kind == "outlet" {
			return keyOr("outlet", o.Key, i)
		}
	}
	return ""
}

func (f *finder) cord() string {
	for i, w := range f.j.Room.Windows {
		if w.Cord.Read() && !w.Cordless {
			return keyOr("window", w.Key, i) + ".cord"
		}
	}
	return ""
}

func (f *finder) closet() string {
	for i, d := range f.j.Room.Doors {
		if d.LeadsTo == "closet" {
			return keyOr("door", d.Key, i)
		}
	}
	return ""
}

func (f *finder) floor() {
	fl, refs := f.j.Room.Floor, f.s.Layout.Floor
	if fl.Cover == "hard" && fl.Sink.Read() {
		f.add("floor.sink", "carpet, or no sink", "a hard floor, and posts that sink into it")
	}
	if thick, sink := f.s.Value(refs.Thick), f.s.Value(refs.Sink); sink > thick {
		f.add("floor.sink", "at most as deep as the carpet is thick", "posts sink %s into a carpet %s thick", f.say(sink), f.say(thick))
	}
	if fl.Rise.Read() && fl.Fall.Read() {
		f.add("floor.fall", "rise or fall, not both", "the floor both rises and falls")
	}
}

// misfit is what is off by less than a problem, in mm: it is for the survey to weigh, no impossibility (our own figure).
const misfit = 50.0

// closing lists readings that the others contradict, such as a wall a foot too short. Of several that cannot be told apart each is listed. Two readings of one thing that differ are not listed here, nor the diagonals that leftOut has.
func (f *finder) closing() {
	for _, c := range f.s.Conflicts {
		if _, most := c.Size(); most <= misfit || c.Cannot || f.oneThing(c) {
			continue
		}
		for _, one := range c.Suspects {
			f.contradicted(c, one)
		}
	}
}

func (f *finder) contradicted(c survey.Conflict, one survey.Suspect) {
	src, more := f.s.Sources[one.Source], "longer"
	if one.Off < 0 {
		more = "shorter"
	}
	off := f.say(math.Abs(one.Off)) + " " + more + " than the other readings say"
	if c.Found() {
		f.add(src.Key, "read it again, and one more thing that checks it", "read as %s, which is %s", f.say(src.Value), off)
		return
	}
	f.add(src.Key, "read them again, and one more thing that checks them", "read as %s; one of %d readings is off, this one by %s if it is",
		f.say(src.Value), len(c.Suspects), off)
}

// oneThing tells whether all suspects are readings of one quantity.
func (f *finder) oneThing(c survey.Conflict) bool {
	for _, one := range c.Suspects {
		if f.s.Sources[one.Source].Key != c.Key {
			return false
		}
	}
	return len(c.Suspects) > 1
}

// leftOut lists the diagonals that no room with these walls can have.
func (f *finder) leftOut() {
	for _, l := range f.s.LeftOut {
		let := fmt.Sprintf("the walls %s let it be at most %s", by(l.Corners), f.say(l.Most))
		if l.Value < l.Least {
			let = fmt.Sprintf("the walls %s make it at least %s", by(l.Corners), f.say(l.Least))
		}
		f.add(l.Key, "read it again, and those walls; until then the room is worked out without it", "read as %s, and %s", f.say(l.Value), let)
	}
}

// by names a way along walls by its corners: "A to B to C".
func by(corners string) string { return strings.Join(strings.Split(corners, ""), " to ") }

// closest is the least spacing that is taken for framing, as the survey has it: 100 mm, about 4 in.
const closest = 100.0

func (f *finder) walls() {
	for _, w := range f.j.Room.Walls {
		i := indexOf(f.j.Room.Outline, w)
		if i < 0 {
			continue
		}
		key, long := f.wall(i)
		f.studs("wall."+key, long, f.s.Layout.Walls[i])
		f.spacing("wall."+key, w)
	}
}

func indexOf(outline string, w room.Wall) int {
	for i := range outline {
		if w.From() == outline[i:i+1] {
			return i
		}
	}
	return -1
}

// studs looks for studs outside their wall and for two in one place.
func (f *finder) studs(wall string, long float64, refs survey.WallRefs) {
	var places []float64
	for _, st := range refs.Studs {
		at := f.s.Value(st.At)
		if st.Found == "counted" {
			continue
		}
		key := wall + ".stud." + st.Key + ".at"
		if at > long+slack {
			f.add(key, "at most the length of the wall", "a stud at %s, and the wall is %s long", f.say(at), f.say(long))
		}
		if st.FromEnd {
			at = long - at
		}
		for _, other := range places {
			if apart := math.Abs(at - other); apart < f.s.Value(refs.StudWide) {
				f.add(key, "one table for a stud, with all its readings", "its centre is %s from that of another stud", f.say(apart))
				break
			}
		}
		places = append(places, at)
	}
}

func (f *finder) spacing(wall string, w room.Wall) {
	key, found := wall+".stud_spacing", false
	if !w.Spacing.Read() {
		return
	}
	if s := w.Spacing[0].Value.MM(); s < closest {
		f.add(key, "centre to centre, usually 16 in or 24 in, 400 mm or 600 mm", "studs %s apart", f.say(s))
	}
	for _, st := range w.Studs {
		found = found || st.At.Read() && st.Found != "assumed"
	}
	if !found {
		f.add(key, "the place of one stud that was found", "no found stud to count it off from")
	}
}

// ceilings looks for faces and beams that leave no room.
func (f *finder) ceilings() {
	for i, b := range f.j.Room.Beams {
		key, refs := keyOr("beam", b.Key, i), f.s.Layout.Beams[i]
		f.below(key+".under", "the underside of the beam", f.s.Value(refs.Under))
	}
	for i, c := range f.j.Room.Ceilings {
		for k, h := range c.Heights {
			key := keyOr("ceiling", c.Key, i) + ".height." + strconv.Itoa(k+1)
			if h.Key != "" {
				key = keyOr("ceiling", c.Key, i) + ".height." + h.Key
			}
			f.spot(key, h.Spot, h.At, h.Out)
		}
	}
}

// below looks for a height that is above every reading of the ceiling.
func (f *finder) below(key, what string, mm float64) {
	if mm > f.ceiling+slack {
		f.add(key, "below the ceiling", "%s at %s, and the highest ceiling is at %s", what, f.say(mm), f.say(f.ceiling))
	}
}
