package survey

import (
	"math"

	"bunkwright/room"
)

// fixtures makes the quantities of everything that stands, hangs or opens in the room.
func (b *builder) fixtures() {
	r, l := b.s.Room, &b.s.Layout
	b.floor(r.Floor)
	each(b, "beam", r.Beams, &l.Beams, func(f room.Beam) string { return f.Key })
	each(b, "door", r.Doors, &l.Doors, func(f room.Door) string { return f.Key })
	for i, d := range r.Doors {
		l.Doors[i].OnWallRefs = b.onWall("door."+keyOr(d.Key, i), d.OnWall, l.Doors[i].At, l.Doors[i].Wide)
	}
	each(b, "window", r.Windows, &l.Windows, func(f room.Window) string { return f.Key })
	for i, w := range r.Windows {
		l.Windows[i].OnWallRefs = b.onWall("window."+keyOr(w.Key, i), w.OnWall, l.Windows[i].At, l.Windows[i].Wide)
	}
	each(b, "outlet", r.Outlets, &l.Outlets, func(f room.Outlet) string { return f.Key })
	for i, o := range r.Outlets {
		l.Outlets[i].Wall, l.Outlets[i].FromEnd = b.end(o.Wall, o.From)
	}
	each(b, "register", r.Registers, &l.Registers, func(f room.Register) string { return f.Key })
	each(b, "heater", r.Heaters, &l.Heaters, func(f room.Heater) string { return f.Key })
	each(b, "fan", r.Fans, &l.Fans, func(f room.Fan) string { return f.Key })
	each(b, "light", r.Lights, &l.Lights, func(f room.Light) string { return f.Key })
	each(b, "alarm", r.Alarms, &l.Alarms, func(f room.Alarm) string { return f.Key })
	each(b, "hatch", r.Hatches, &l.Hatches, func(f room.Hatch) string { return f.Key })
	each(b, "furniture", r.Pieces, &l.Pieces, func(f room.Piece) string { return f.Key })
	b.spots()
}

// each makes the refs of every fixture of one kind.
func each[F, R any](b *builder, table string, fixtures []F, refs *[]R, key func(F) string) {
	*refs = make([]R, len(fixtures))
	for i, f := range fixtures {
		b.fill(table+"."+keyOr(key(f), i), f, &(*refs)[i])
	}
}

// spots notes which wall each place in plan is counted along.
func (b *builder) spots() {
	r, l := b.s.Room, &b.s.Layout
	set := func(dst *SpotRefs, from room.Spot) { dst.Wall, dst.FromEnd = b.end(from.Wall, from.From) }
	for i := range r.Registers {
		set(&l.Registers[i].SpotRefs, r.Registers[i].Spot)
	}
	for i := range r.Heaters {
		set(&l.Heaters[i].SpotRefs, r.Heaters[i].Spot)
	}
	for i := range r.Fans {
		set(&l.Fans[i].SpotRefs, r.Fans[i].Spot)
	}
	for i := range r.Lights {
		set(&l.Lights[i].SpotRefs, r.Lights[i].Spot)
	}
	for i := range r.Alarms {
		set(&l.Alarms[i].SpotRefs, r.Alarms[i].Spot)
	}
	for i := range r.Hatches {
		set(&l.Hatches[i].SpotRefs, r.Hatches[i].Spot)
	}
	for i := range r.Pieces {
		set(&l.Pieces[i].SpotRefs, r.Pieces[i].Spot)
	}
}

// end returns the wall's place in the outline and whether a position counts from its second corner.
func (b *builder) end(wall, from string) (i int, fromEnd bool) {
	i = b.s.wallIndex(wall)
	return i, i >= 0 && from != "" && from == room.Wall{Key: wall}.To()
}

// onWall ties the near edge of an opening to the readings of its far edge and of the rest of the wall, which may stand in for it.
func (b *builder) onWall(prefix string, on room.OnWall, at, wide Ref) OnWallRefs {
	i, fromEnd := b.end(on.Wall, on.From)
	if at == 0 && (len(on.Far) > 0 || len(on.Rest) > 0) && wide.Known() && i >= 0 {
		at = b.unknown(prefix+".at", b.roughStart(i, on, wide))
	}
	if at.Known() && wide.Known() && i >= 0 {
		terms := []Term{{int(at - 1), 1}, {int(wide - 1), 1}}
		key := prefix + ".far"
		b.read(key, on.Far, func(v, u float64) Equation { return LinearEquation(key, terms, 0, v, u) })
		b.rest(prefix+".rest", on.Rest, i, terms)
	}
	return OnWallRefs{Wall: i, FromEnd: fromEnd, At: at}
}

// rest observes what is left of a wall beyond the far edge: its length less the position and the width.
func (b *builder) rest(key string, m room.Measure, wall int, taken []Term) {
	minus := make([]Term, len(taken))
	for k, t := range taken {
		minus[k] = Term{t.Unknown, -t.D}
	}
	if length := b.s.refs["wall."+b.s.wallKeys()[wall]+".length"]; length != 0 { // the corners are not worked out
		minus = append(minus, Term{int(length - 1), 1})
		b.read(key, m, func(v, u float64) Equation { return LinearEquation(key, minus, 0, v, u) })
		return
	}
	n := len(b.corners)
	b.read(key, m, func(v, u float64) Equation {
		return plusTerms(DistanceEquation(key, b.corners[wall], b.corners[(wall+1)%n], v, u), minus)
	})
}

func (b *builder) roughStart(wall int, on room.OnWall, wide Ref) float64 {
	if len(on.Far) > 0 {
		return on.Far[0].Value.MM() - b.start[wide-1]
	}
	return b.roughLength(b.s.wallKeys()[wall]) - on.Rest[0].Value.MM() - b.start[wide-1]
}

// floor makes the floor; how far a foot sinks into a carpet that nobody tried is half its thickness, give or take all of it.
func (b *builder) floor(f room.Floor) {
	refs := &b.s.Layout.Floor
	b.fill("floor", f, refs)
	if refs.Sink == 0 && refs.Thick.Known() && f.Cover == "carpet" {
		thick := b.start[refs.Thick-1]
		refs.Sink = b.unknown("floor.sink", thick/2)
		terms := []Term{{int(refs.Sink - 1), 1}, {int(refs.Thick - 1), -0.5}}
		b.suppose(LinearEquation("floor.sink", terms, 0, 0, thick/math.Sqrt(12)))
	}
}
