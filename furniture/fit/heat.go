package fit

import (
	"fmt"
	"math"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/room"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

var heat = Question{
	ID:       "heat",
	Sentence: "Is the bed clear of heaters?",
	Group:    Safety,
	Why:      "Boards and bedding too near a heater scorch, and a covered heater overheats.",
	How: "Nearest distance of each heater, taken as a box from the floor to its top, to the bed's boards, mattresses, wall shelves and " +
		"drawers all the way out: what overlaps it in plan and is higher is above it, what overlaps its length is before it, the rest is " +
		"beside it. Bedding is the mattress; a blanket that hangs down is not counted. A clearance on the heater's own sheet wins.",
	Caution: "The heater's own sheet and an electrician or heating engineer decide. Keep bedding tucked in, and never dry things on a heater.",
	Depends: Standing | FarLean | Heaters,
	Propose: []Driver{Slide, DrawerTravel, Mirrored, OtherWall},
	Measure: func(s *Scene) Finding { return s.heat() },
}

// A side is where a thing is as seen from a heater.
type side int

const (
	heatFront side = iota
	heatSide
	heatAbove
)

func (k side) String() string { return [...]string{"front", "side", "above"}[k] }

// heaterRows are the rows of each kind of heater: front, side, above. The rows of rules.csv behind the planning figures stand beside
// them.
var heaterRows = map[string][3][]string{
	"electric baseboard":   {{"own-heater-front", "heater-front"}, {"own-heater-side", "heater-side"}, {"own-heater-above", "heater-above"}},
	"wall heater with fan": threeTimes("own-heater-wall-fan", "heater-wall-fan"),
	"portable":             threeTimes("own-heater-portable", "heater-portable"),
	"radiator":             threeTimes("own-heater-radiator", "heater-radiator"),
	"stove":                threeTimes("own-heater-stove", "heater-stove"),
}

func threeTimes(rows ...string) [3][]string { return [3][]string{rows, rows, rows} }

const outletAbove = "heater-no-outlet-above"

// heaterAt is a heater standing in the room.
type heaterAt struct {
	key    string
	rec    *room.Heater
	wall   *Wall
	plan   geom.Polygon
	box    geom.Box
	lo, hi geom.V3
	from   [2]float64 // along the wall
	top    float64
}

func (s *Scene) heat() Finding {
	list := s.Job.Room.Heaters
	switch {
	case s.unlisted(len(list), "heater"):
		return Finding{Readings: []Reading{ask("heater", "is there a heater in the room, and of what kind?", "own-heater-front")}}
	case len(list) == 0:
		return absent("there is no heater")
	}
	var f Finding
	for i := range list {
		f.Readings = append(f.Readings, s.heaterReadings(i)...)
	}
	return f
}

func (s *Scene) heaterReadings(i int) []Reading {
	h, what := s.heater(i)
	rows, known := heaterRows[h.rec.Kind]
	switch {
	case !known:
		return []Reading{ask(h.key, fmt.Sprintf("what kind of heater is %s on wall %s?", h.key, h.rec.Wall), "own-heater-front")}
	case !s.Stands:
		return []Reading{ask(h.key, s.Wants, rows[heatFront]...)}
	case what != "":
		return []Reading{ask(h.key, what, rows[heatFront]...)}
	}
	var out []Reading
	for k, n := range s.nearestSides(&h) {
		if n.part == "" {
			continue
		}
		k := side(k)
		r := Reading{At: h.key + "." + k.String(), Rows: rows[k], Have: n.d, Parts: []string{h.key, n.part}}
		r.Edge = n.part + n.how + " " + h.key
		r.Need, r.From = h.sheet(k)
		out = append(out, r)
	}
	if h.rec.Kind == "electric baseboard" {
		out = append(out, s.outletOver(&h))
	}
	return out
}

// heater finds a heater's box, or what is missing for it.
func (s *Scene) heater(i int) (h heaterAt, what string) {
	rec, refs := &s.Job.Room.Heaters[i], &s.Survey.Layout.Heaters[i]
	h = heaterAt{key: s.keys.heaters[i], rec: rec, wall: s.wallOf(refs.Wall), top: s.v(refs.High)}
	switch {
	case h.wall == nil:
		return h, askWall(h.key)
	case s.unread(refs.At):
		return h, askAlong("the near end of", h.key, rec.Wall, rec.From)
	case s.unread(refs.Wide):
		return h, askSize("long", h.key, rec.Wall)
	case s.unread(refs.Deep):
		return h, askSize("deep", h.key, rec.Wall)
	case s.unread(refs.High):
		return h, askHigh("the top of", h.key, rec.Wall)
	}
	h.plan, _ = s.rect(refs.SpotRefs, refs.Wide, refs.Deep)
	h.box, _ = s.heaterBox(i)
	h.lo, h.hi = h.box.Bounds()
	h.from[0], h.from[1], _, _ = h.wall.level(&h.box)
	return h, ""
}

// sheet returns the clearance on the heater's own sheet, nil where none was entered.
func (h *heaterAt) sheet(k side) (need *float64, from string) {
	l := [...]length.Length{h.rec.Front, h.rec.Side, h.rec.Above}[k]
	if l <= 0 {
		return nil, ""
	}
	mm := l.MM()
	return &mm, "the heater's own sheet"
}

// nearest is the nearest thing on one side of a heater.
type nearest struct {
	d    float64
	part string
	how  string
}

// nearestSides returns what is nearest before, beside and above a heater.
func (s *Scene) nearestSides(h *heaterAt) [3]nearest {
	out := [3]nearest{{d: math.Inf(1)}, {d: math.Inf(1)}, {d: math.Inf(1)}}
	s.things(everywhere, func(t *Solid) { h.take(&out, t, &inPlace) })
	for i := range s.Bed.Drawers {
		d := &s.Bed.Drawers[i]
		box := s.ToRoom.Box(pulled(d))
		t := Solid{Part: &furniture.Part{ID: d.ID}, Box: box}
		t.Lo, t.Hi = box.Bounds()
		h.take(&out, &t, &pulledOut)
	}
	return out
}

// pulled returns what a drawer goes through from shut to all the way out, in the bed's axes.
func pulled(d *bunk.DrawerAt) geom.Box {
	lo, hi := d.Shut.Bounds()
	lo.Y -= d.Travel
	return geom.NewBox(lo, hi)
}

// How a thing stands to a heater, in words, by its side.
var (
	inPlace   = [3]string{" before", " beside", " above"}
	pulledOut = [3]string{", pulled out, before", ", pulled out, beside", ", pulled out, above"}
)

// take measures one thing and keeps it where it is the nearest on its side.
func (h *heaterAt) take(out *[3]nearest, t *Solid, how *[3]string) {
	gap := boundsGap(h.lo, h.hi, t.Lo, t.Hi)
	if gap >= out[heatFront].d && gap >= out[heatSide].d && gap >= out[heatAbove].d {
		return
	}
	k := h.sideOf(t)
	if gap >= out[k].d {
		return
	}
	d := t.Lo.Z - h.top
	if k != heatAbove {
		d = geom.BoxGap(h.box, t.Box)
	}
	if d < out[k].d {
		out[k] = nearest{d, t.Part.ID, how[k]}
	}
}

// sideOf tells on which side of the heater a thing is.
func (h *heaterAt) sideOf(t *Solid) side {
	lo, hi, _, _ := h.wall.level(&t.Box)
	switch {
	case lo >= h.from[1]-touch || hi <= h.from[0]+touch:
		return heatSide
	case t.Lo.Z >= h.top && t.Lo.X < h.hi.X && h.lo.X < t.Hi.X && t.Lo.Y < h.hi.Y && h.lo.Y < t.Hi.Y &&
		geom.Gap(h.plan, t.Box.Footprint()) < -touch:
		return heatAbove
	}
	return heatFront
}

// outletOver answers whether an outlet is over a baseboard heater, on its wall.
func (s *Scene) outletOver(h *heaterAt) Reading {
	r := Reading{At: h.key + ".outlet", Rows: []string{outletAbove}, Parts: []string{h.key}}
	if s.unlisted(len(s.Job.Room.Outlets), "outlet") {
		r.Ask = "is there an outlet or a cord over " + h.key + " on wall " + h.rec.Wall + "?"
		return r
	}
	for i := range s.Job.Room.Outlets {
		o, what := s.socket(i)
		switch {
		case o.rec.Kind != "outlet" && o.rec.Kind != "", o.rec.Wall != h.rec.Wall:
		case what != "":
			r.Ask = what
		case o.along > h.from[0] && o.along < h.from[1] && o.height > h.top:
			r.Yes, r.Edge, r.Parts = true, o.key+" is over "+h.key, append(r.Parts, o.key)
		}
	}
	if r.Yes {
		r.Ask = ""
	}
	return r
}
