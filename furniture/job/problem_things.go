package job

import (
	"math"

	"bunkwright/room"
	"bunkwright/room/geom"
	"bunkwright/room/survey"
)

// opening is a door or window as it takes up its wall: along it from its first corner, and up from the floor.
type opening struct {
	key          string
	wall         int
	lo, hi       float64
	bottom, head float64
}

func (f *finder) openings() {
	var all []opening
	l := &f.s.Layout
	for i, d := range f.j.Room.Doors {
		refs := l.Doors[i]
		o := f.opening(keyOr("door", d.Key, i), refs.OnWallRefs, refs.Wide)
		o.head = f.s.Value(refs.High)
		f.below(o.key+".high", "the head of the door", o.head)
		all = append(all, o)
	}
	for i, w := range f.j.Room.Windows {
		refs := l.Windows[i]
		o := f.opening(keyOr("window", w.Key, i), refs.OnWallRefs, refs.Wide)
		o.bottom, o.head = f.s.Value(refs.Sill), f.s.Value(refs.Head)
		f.window(o, w.Kind, refs)
		all = append(all, o)
	}
	for i, o := range all {
		for _, p := range all[:i] {
			if o.overlaps(p) {
				f.add(o.key, "positions and widths that leave both their place", "it and %s take up the same piece of wall", p.key)
			}
		}
	}
}

// opening places an opening on its wall and looks whether it is within.
func (f *finder) opening(key string, refs survey.OnWallRefs, wide survey.Ref) opening {
	wall, long := f.wall(refs.Wall)
	at, w := f.s.Value(refs.At), f.s.Value(wide)
	switch {
	case w > long+slack:
		f.add(key+".wide", "at most the length of its wall", "%s wide in wall %s, which is %s long", f.say(w), wall, f.say(long))
	case at+w > long+slack:
		f.add(key+".at", "position and width within the wall", "it ends %s from the end of wall %s, which is %s long", f.say(at+w), wall, f.say(long))
	case at < -slack:
		f.add(key+".at", "positions that agree", "by its readings it begins %s before the wall", f.say(-at))
	}
	if refs.FromEnd {
		at = long - at - w
	}
	return opening{key: key, wall: refs.Wall, lo: at, hi: at + w}
}

// overlaps reports two openings that share a piece of wall; what is not known is no overlap.
func (o opening) overlaps(p opening) bool {
	within := func(alo, ahi, blo, bhi float64) bool { return math.Min(ahi, bhi)-math.Max(alo, blo) > slack }
	return o.wall == p.wall && o.wall >= 0 && within(o.lo, o.hi, p.lo, p.hi) && within(o.bottom, o.head, p.bottom, p.head)
}

func (f *finder) window(o opening, kind string, refs survey.WindowRefs) {
	wide, high := f.s.Value(refs.Wide), o.head-o.bottom
	clearWide, clearHigh := f.s.Value(refs.ClearWide), f.s.Value(refs.ClearHigh)
	f.below(o.key+".head", "the head of the window", o.head)
	if high <= 0 {
		f.add(o.key+".head", "higher than the sill", "the head is at %s, and the sill at %s", f.say(o.head), f.say(o.bottom))
	}
	if clearWide > wide+slack {
		f.add(o.key+".clear_wide", "at most the width of the window", "%s clear in a window %s wide", f.say(clearWide), f.say(wide))
	}
	if high > 0 && clearHigh > high+slack {
		f.add(o.key+".clear_high", "at most from sill to head", "%s clear, and it is %s from sill to head", f.say(clearHigh), f.say(high))
	}
	f.opens(o.key+".opens", kind, wide, high, f.s.Value(refs.Opens))
	if in := f.s.Value(refs.ClearIn); in+clearWide > wide+slack {
		f.add(o.key+".clear_in", "the clear opening within the window", "the clear opening ends %s from the window's edge, and the window is %s wide",
			f.say(in+clearWide), f.say(wide))
	}
}

// opens looks whether a window is said to open further than its kind can: a sash that slides by its own length, one on hinges by the
// two lengths it is apart when turned right round.
func (f *finder) opens(key, kind string, wide, high, opens float64) {
	most := math.Max(2*wide, 2*high) // NaN where either is not known
	switch kind {
	case "slides up":
		most = high
	case "slides sideways":
		most = wide
	case "hinged at a side":
		most = 2 * wide
	case "hinged at the top", "hinged at the bottom":
		most = 2 * high
	case "fixed":
		most = 0
	}
	if opens > most+slack {
		f.add(key, "how far it really opens", "it opens %s, and by its kind and size it can open %s at most", f.say(opens), f.say(most))
	}
}

// fixtures looks whether everything else is in the room.
func (f *finder) fixtures() {
	r, l := &f.j.Room, &f.s.Layout
	for i, o := range r.Outlets {
		key := keyOr("outlet", o.Key, i)
		if wall, long := f.wall(l.Outlets[i].Wall); f.s.Value(l.Outlets[i].At) > long+slack {
			f.add(key+".at", "at most the length of the wall", "%s along wall %s, which is %s long", f.say(f.s.Value(l.Outlets[i].At)), wall, f.say(long))
		}
		f.below(key+".height", "its centre", f.s.Value(l.Outlets[i].Height))
	}
	for i, x := range r.Registers {
		f.inRoom(keyOr("register", x.Key, i), l.Registers[i].SpotRefs, l.Registers[i].Wide, deepOf(x, l.Registers[i]))
		f.below(keyOr("register", x.Key, i)+".height", "its lower edge", f.s.Value(l.Registers[i].Height))
	}
	for i, x := range r.Heaters {
		f.inRoom(keyOr("heater", x.Key, i), l.Heaters[i].SpotRefs, l.Heaters[i].Wide, l.Heaters[i].Deep)
		f.below(keyOr("heater", x.Key, i)+".high", "its top", f.s.Value(l.Heaters[i].High))
	}
	for i, x := range r.Fans {
		f.inRoom(keyOr("fan", x.Key, i), l.Fans[i].SpotRefs, 0, 0)
		f.round(keyOr("fan", x.Key, i)+".sweep", l.Fans[i].SpotRefs, l.Fans[i].Sweep)
		f.below(keyOr("fan", x.Key, i)+".blades", "the blades", f.s.Value(l.Fans[i].Blades))
	}
	for i, x := range r.Lights {
		f.inRoom(keyOr("light", x.Key, i), l.Lights[i].SpotRefs, 0, 0)
		f.round(keyOr("light", x.Key, i)+".wide", l.Lights[i].SpotRefs, l.Lights[i].Wide)
		f.below(keyOr("light", x.Key, i)+".lowest", "its lowest point", f.s.Value(l.Lights[i].Lowest))
	}
	for i, x := range r.Alarms {
		f.inRoom(keyOr("alarm", x.Key, i), l.Alarms[i].SpotRefs, 0, 0)
	}
	for i, x := range r.Hatches {
		f.inRoom(keyOr("hatch", x.Key, i), l.Hatches[i].SpotRefs, l.Hatches[i].Wide, l.Hatches[i].Deep)
	}
	for i, x := range r.Pieces {
		f.inRoom(keyOr("furniture", x.Key, i), l.Pieces[i].SpotRefs, l.Pieces[i].Wide, l.Pieces[i].Deep)
		f.below(keyOr("furniture", x.Key, i)+".high", "its top", f.s.Value(l.Pieces[i].High))
	}
}

// deepOf is what a register takes of the floor: one in a wall takes nothing.
func deepOf(x room.Register, refs survey.RegisterRefs) survey.Ref {
	if x.In == "wall" {
		return 0
	}
	return refs.Deep
}

// inRoom looks whether the near corner of a thing and what it takes of the plan lie in the room. Unread sizes count as nothing.
func (f *finder) inRoom(key string, refs survey.SpotRefs, wide, deep survey.Ref) {
	at, out := f.s.Value(refs.At), f.orZero(refs.Out)
	if _, long := f.wall(refs.Wall); math.IsNaN(long + at + out) {
		return
	}
	for _, d := range [][2]float64{{0, 0}, {f.orZero(wide), f.orZero(deep)}} {
		p, ok := f.plan(refs.Wall, refs.FromEnd, at+d[0], out+d[1])
		if ok && !f.inside(p) {
			f.add(key, "a place and a size within the room", "it reaches %s outside the room", f.say(f.outline.Distance(p)))
			return
		}
	}
}

// round looks whether something round goes between the walls: with its centre where it is, or anywhere where that is not known.
func (f *finder) round(key string, refs survey.SpotRefs, across survey.Ref) {
	d := f.s.Value(across)
	p, ok := f.plan(refs.Wall, refs.FromEnd, f.s.Value(refs.At), f.s.Value(refs.Out))
	switch {
	case f.outline == nil || math.IsNaN(d):
	case !ok || math.IsNaN(p.X+p.Y):
		if lo, hi := f.outline.Bounds(); d > math.Min(hi.X-lo.X, hi.Y-lo.Y)+slack {
			f.add(key, "less than the room is wide", "%s across, and the room is %s by %s", f.say(d), f.say(hi.X-lo.X), f.say(hi.Y-lo.Y))
		}
	case f.outline.Contains(p):
		if free := f.outline.Distance(p); d/2 > free+slack {
			f.add(key, "a diameter that stays clear of the walls", "%s across, and its centre is %s from the nearest wall", f.say(d), f.say(free))
		}
	}
}

// spot looks whether a place given by readings alone lies in the room.
func (f *finder) spot(key string, s room.Spot, at, out room.Measure) {
	wall := indexOf(f.j.Room.Outline, room.Wall{Key: s.Wall})
	if s.Wall == "" || !at.Read() || !out.Read() {
		return
	}
	fromEnd := s.From != "" && s.From == room.Wall{Key: s.Wall}.To()
	if p, ok := f.plan(wall, fromEnd, at[0].Value.MM(), out[0].Value.MM()); ok && !f.inside(p) {
		f.add(key, "a place within the room", "it lies %s outside the room", f.say(f.outline.Distance(p)))
	}
}

func (f *finder) inside(p geom.V2) bool {
	return f.outline.Contains(p) || f.outline.Distance(p) <= slack
}

// plan returns a point a distance along a wall from one of its ends and out into the room.
func (f *finder) plan(wall int, fromEnd bool, along, out float64) (geom.V2, bool) {
	if f.outline == nil || wall < 0 {
		return geom.V2{}, false
	}
	a, b := f.outline.Edge(wall)
	dir := b.Sub(a).Unit()
	in := dir.Right()
	if fromEnd {
		a, dir = b, dir.Mul(-1)
	}
	return a.Add(dir.Mul(along)).Add(in.Mul(out)), true
}

// place looks whether the bed begins on its wall; how far it reaches is for whoever stands it there.
func (f *finder) place() {
	p := f.j.Place
	wall, long := f.wall(indexOf(f.j.Room.Outline, room.Wall{Key: p.Wall}))
	if p.Wall != "" && p.Along.MM() > long {
		f.add("place.along", "less than the length of the wall", "the bed begins %s along wall %s, which is %s long", f.say(p.Along.MM()), wall, f.say(long))
	}
}
