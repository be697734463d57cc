package fit

import "bunkwright/room/geom"

var walkway = Question{
	ID:       "walkway",
	Sentence: "Is there a clear way from the bed to the door?",
	Group:    Build,
	Why:      "At night and in a fire the way out must be found without turning sideways.",
	How: "The widest disc that can go along from before the lowest tread to the doorway line, the door shut and the drawers in, between walls, bed, " +
		"ladder, heaters and furniture: exact between two things, found by halving to a ten-millionth of a millimetre where the doorway line decides. " +
		roomDoorWords + " of several the one that is reached best counts.",
	Depends: Standing | FarLean | Doors | Heaters | Furniture,
	Propose: []Driver{Slide, Mirrored, LadderEnd, LadderSide, OtherWall},
	Measure: func(s *Scene) Finding { return s.way() },
}

var (
	walkRows    = []string{"own-walkway", "hud-circulation", "housing-circulation"}
	footRows    = []string{"ud-foot"}
	oneBedRows  = []string{"housing-twins", "camp-single", "camp-double"}
	leastUseRow = []string{"hud-leastused"}
)

func (s *Scene) way() Finding {
	if !s.Stands {
		return Finding{Readings: []Reading{ask("way", s.Wants, walkRows...)}}
	}
	all, want := s.onFloor()
	outlines := make([]geom.Polygon, len(all))
	for i := range all {
		outlines[i] = all[i].outline
	}
	best, door, wantDoor := s.widestWay(outlines)
	r := Reading{At: "way", Rows: walkRows, Have: best.Width, Ask: wantDoor, Parts: []string{door}}
	if best.I >= 0 {
		r.Edge = "between " + all[best.I].what + " and " + all[best.J].what
		r.Parts = append(r.Parts, all[best.I].what, all[best.J].what)
	}
	return s.traced(s.stillUnread(want, Finding{Readings: []Reading{
		r, s.footOfBed(all),
		{At: "one-bed", Rows: oneBedRows, Skip: "there is one bed"},
		{At: "least-used-side", Rows: leastUseRow, Skip: "a twin bed may stand against the wall"},
	}}))
}

// widestWay returns the widest way to the door of the room; of several that may be it, to the one that is reached best.
func (s *Scene) widestWay(outlines []geom.Polygon) (best geom.Narrow, door, want string) {
	best.Width = -1
	from := s.bedGate()
	for _, i := range s.roomDoors() {
		refs := &s.Survey.Layout.Doors[i]
		w, lo, hi, ok := s.interval(refs.OnWallRefs, refs.Wide)
		if !ok {
			want = or(want, s.askDoor(i))
			continue
		}
		in := s.Nearest(w, 0, walkHigh)
		n := geom.WidestDisc(outlines, from, geom.Gate{A: w.Point(lo, in), B: w.Point(hi, in), Side: w.In})
		if n.Width > best.Width {
			best, door = n, s.keys.doors[i]
		}
	}
	if best.Width >= 0 {
		return best, door, ""
	}
	return geom.Narrow{I: -1, J: -1}, door, or(want, askRoomDoor)
}

// bedGate is the line that one leaves the bed over: before the lowest tread, or along the front where there is no ladder. The stiles of a
// sloping ladder stand out farther than its treads, so the line lies before all of the ladder.
func (s *Scene) bedGate() geom.Gate {
	if s.Bed.Steps != nil {
		b := s.beforeTread()
		across, from := b.out.Left().Mul(b.half), b.from.Add(b.out.Mul(s.ladderFoot(b)))
		return geom.Gate{A: from.Sub(across), B: from.Add(across), Side: b.out}
	}
	lo, hi := s.Bed.Foot.Bounds()
	at := func(x float64) geom.V2 { return s.ToRoom.Point(geom.V3{X: x, Y: lo.Y}).XY() }
	return geom.Gate{A: at(lo.X), B: at(hi.X), Side: s.ToRoom.Dir(geom.V3{Y: -1}).XY()}
}

// ladderFoot returns how far the ladder stands out before its lowest tread.
func (s *Scene) ladderFoot(b strip) float64 {
	most, name := 0.0, s.ladderAssembly()
	for _, x := range s.plan().standers {
		if x.what != name {
			continue
		}
		for _, p := range x.outline {
			most = max(most, s.ToRoom.Point(p.At(0)).XY().Sub(b.from).Dot(b.out))
		}
	}
	return most
}

// footOfBed measures the free floor beyond the foot end, which is only shown.
func (s *Scene) footOfBed(all []stander) Reading {
	if s.idle(footRows) {
		return Reading{At: "foot", Rows: footRows}
	}
	lo, hi := s.Bed.Foot.Bounds()
	x, d := hi.X, geom.V3{X: 1}
	if s.Bed.Lower.HeadAtRight {
		x, d = lo.X, geom.V3{X: -1}
	}
	b := strip{from: s.ToRoom.Point(geom.V3{X: x, Y: (lo.Y + hi.Y) / 2}).XY(), out: s.ToRoom.Dir(d).XY(), half: (hi.Y - lo.Y) / 2}
	depth, what := s.free(b, append(s.across(b), all[len(s.Walls):]...))
	return Reading{At: "foot", Rows: footRows, Have: depth, Parts: []string{what}}
}
