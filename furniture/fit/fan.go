package fit

import (
	"math"

	"bunkwright/furniture/people"
	"bunkwright/room/geom"
)

var fanAndLights = Question{
	ID:       "fan-and-lights",
	Sentence: "Are fan and lights out of reach of the top bed?",
	Group:    Safety,
	Why:      "A child who kneels up in the top bed reaches for what turns or glows.",
	How: "Nearest distance of the fan's sweep (a disc at blade height) or of a light (a cylinder from its lowest point up) to all of the " +
		"upper bed from the deck up; and to the reach of whoever sleeps there: kneeling reach over the mattress, frontal grip reach beyond " +
		"the bed's outline all round. Of several sleepers the one who reaches furthest counts. A recessed light whose height nobody read lies " +
		"in the ceiling. What the lamp is made of is not asked: surface, pendant and wall lights stand beside the figure for enclosed lamps.",
	Caution: "Do not swing things from the top bed. An electrician moves a fan or a light; a switch or a guard does not put it out of reach.",
	Depends: Standing | FarLean | Fans | Lights | Ceiling,
	Propose: []Driver{Slide, DeckDown, ThinnerUpper, Mirrored, OtherWall},
	Measure: func(s *Scene) Finding { return s.fanAndLights() },
}

var (
	fanDistanceRows   = []string{"asnzs-fan-distance", "qld-fan-distance", "nz-ceiling-fitting-distance"}
	lightDistanceRows = []string{"nz-ceiling-fitting-distance"}
	reachUpRows       = []string{"own-reach-up"}
	overheadRows      = []string{"us-not-under-fan"}
	fanWallRows       = []string{"fan-wall"}
	fanFloorRows      = []string{"fan-floor"}
	lampRows          = []string{"light-storage-surface"}
	recessedRows      = []string{"light-storage-recessed"}
	fanAsked          = []string{"own-reach-up", "asnzs-fan-distance", "qld-fan-distance", "nz-ceiling-fitting-distance"}
	lightAsked        = []string{"own-reach-up", "nz-ceiling-fitting-distance"}
)

// FanDistance returns the distance between a fan's sweep and a thing under it (calc-fan-distance): top of the thing and blade height,
// level distance to the fan's centre and radius of the sweep, all in one unit. A negative term counts as 0.
func FanDistance(top, toCentre, radius, blades float64) float64 {
	return math.Hypot(max(0, toCentre-radius), max(0, blades-top))
}

// fitting is a fan or a light as a round thing in the room.
type fitting struct {
	key      string
	at       geom.V2
	radius   float64
	low      float64 // blades, or the lowest point of a light
	disc     bool    // nothing of it counts over its low height
	recessed bool
	ask      string
}

func (s *Scene) fanAndLights() Finding {
	fans, lights := len(s.Job.Room.Fans), len(s.Job.Room.Lights)
	if fans+lights == 0 && s.Job.Room.Lacks("fan") && s.Job.Room.Lacks("light") {
		return absent("there is no fan and no light")
	}
	if !s.Stands {
		return Finding{Readings: []Reading{ask("fan", s.Wants, fanAsked...)}}
	}
	f := Finding{Readings: make([]Reading, 0, 5*fans+4*lights+2)}
	k := s.kneeling()
	if s.unlisted(fans, "fan") {
		f.Readings = append(f.Readings, ask("fan", "is there a ceiling fan?", fanAsked...))
	}
	for i := range s.Job.Room.Fans {
		fan := s.fan(i)
		f.Readings = append(f.Readings, s.fanReadings(&fan, &k)...)
	}
	if s.unlisted(lights, "light") {
		f.Readings = append(f.Readings, ask("light", "is there a light on the ceiling or near the bed?", lightAsked...))
	}
	for i := range s.Job.Room.Lights {
		light := s.light(i)
		f.Readings = append(f.Readings, s.lightReadings(&light, &k)...)
	}
	return f
}

func (s *Scene) fan(i int) fitting {
	rec, refs := &s.Job.Room.Fans[i], &s.Survey.Layout.Fans[i]
	f := fitting{key: s.keys.fans[i], radius: s.v(refs.Sweep) / 2, low: s.v(refs.Blades), disc: true}
	f.ask = s.askSpot("the middle of", f.key, rec.Spot, refs.SpotRefs)
	switch {
	case f.ask != "":
	case math.IsNaN(f.radius):
		f.ask = askSweep(f.key, rec.Wall)
	case math.IsNaN(f.low):
		f.ask = "how high over the floor are the blades of " + f.key + " by wall " + rec.Wall + "?"
	}
	f.at, _ = s.spot(refs.SpotRefs)
	return f
}

func askSweep(key, wall string) string {
	return "how wide is the sweep of " + key + " by wall " + wall + " over its blade tips?"
}

func (s *Scene) light(i int) fitting {
	rec, refs := &s.Job.Room.Lights[i], &s.Survey.Layout.Lights[i]
	f := fitting{key: s.keys.lights[i], radius: s.v(refs.Wide) / 2, low: s.v(refs.Lowest), recessed: rec.Kind == "recessed"}
	f.ask = s.askSpot("the middle of", f.key, rec.Spot, refs.SpotRefs)
	f.at, _ = s.spot(refs.SpotRefs)
	switch {
	case f.ask != "":
	case math.IsNaN(f.radius):
		f.ask = askSize("wide", f.key, rec.Wall)
	case math.IsNaN(f.low) && f.recessed:
		o := s.ceilingOver(disc(f.at, f.radius))
		f.low, f.ask = o.Z, o.Ask
	case math.IsNaN(f.low):
		f.ask = "how high over the floor is the lowest point of " + f.key + " by wall " + rec.Wall + "?"
	}
	return f
}

func (s *Scene) fanReadings(f *fitting, k *kneel) []Reading {
	if f.ask != "" {
		return []Reading{ask(f.key+".distance", f.ask, fanDistanceRows...), ask(f.key+".reach", f.ask, reachUpRows...)}
	}
	var d float64
	var part string
	if !s.idle(fanDistanceRows) {
		d, part = s.fromUpperBed(f)
	}
	return []Reading{
		{At: f.key + ".distance", Rows: fanDistanceRows, Have: d, Ask: s.thickNear(f, d, upperBed), Parts: []string{f.key, part}, Edge: "nearest is " + part},
		s.kneelingReading(f, k),
		s.underReading(f),
		{At: f.key + ".floor", Rows: fanFloorRows, Have: f.low, Parts: []string{f.key}},
		{At: f.key + ".wall", Rows: fanWallRows, Have: s.tipToWall(f), Parts: []string{f.key}},
	}
}

func (s *Scene) lightReadings(f *fitting, k *kneel) []Reading {
	if f.ask != "" {
		return []Reading{ask(f.key+".distance", f.ask, lightDistanceRows...), ask(f.key+".reach", f.ask, reachUpRows...)}
	}
	var d, near float64
	var part, what string
	if !s.idle(lightDistanceRows) {
		d, part = s.fromUpperBed(f)
	}
	rows := lampRows
	if f.recessed {
		rows = recessedRows
	}
	if !s.idle(rows) {
		near, what = s.fromBedding(f)
	}
	return []Reading{
		{At: f.key + ".distance", Rows: lightDistanceRows, Have: d, Ask: s.thickNear(f, d, upperBed), Parts: []string{f.key, part}, Edge: "nearest is " + part},
		s.kneelingReading(f, k),
		s.underReading(f),
		{At: f.key + ".storage", Rows: rows, Have: near, Ask: s.thickNear(f, near, lowerBed, upperBed), Parts: []string{f.key, what}, Edge: "nearest is " + what},
	}
}

// from returns how far the fitting is from what stands over an outline between two heights.
func (f *fitting) from(plan float64, bottom, top float64) float64 {
	if f.disc && bottom > f.low { // blades lower than the thing: the same distance turned upside down
		return FanDistance(-bottom, plan, f.radius, -f.low)
	}
	return FanDistance(top, plan, f.radius, f.low)
}

// fromUpperBed returns the least distance of a fitting from the upper bed, all its solids from the deck up and the mattress, and what
// is nearest.
func (s *Scene) fromUpperBed(f *fitting) (d float64, part string) {
	deck := s.Feet + s.Bed.Upper.Top
	return s.nearestTo(f, deck, func(t *Solid) bool {
		return !t.hung() && t.Hi.Z >= deck-touch && t.Part != &mattressPart[lowerBed]
	})
}

// fromBedding is the same for mattresses and shelf boards, from any height.
func (s *Scene) fromBedding(f *fitting) (d float64, part string) {
	return s.nearestTo(f, math.Inf(-1), func(t *Solid) bool { return t.mattress() || t.isBoard() })
}

func (s *Scene) nearestTo(f *fitting, above float64, counts func(*Solid) bool) (d float64, part string) {
	d = math.Inf(1)
	lo := geom.V3{X: f.at.X - f.radius, Y: f.at.Y - f.radius, Z: f.low}
	hi := geom.V3{X: f.at.X + f.radius, Y: f.at.Y + f.radius, Z: f.low}
	if !f.disc {
		hi.Z = math.Inf(1)
	}
	s.things(everywhere, func(t *Solid) {
		if boundsGap(lo, hi, t.Lo, t.Hi) >= d || !counts(t) {
			return
		}
		if e := s.toThing(f, t, above); e < d {
			d, part = e, t.Part.ID
		}
	})
	return d, part
}

// toThing returns the distance of a fitting from the part of a thing that lies above a height; a sloping board is taken in pieces.
func (s *Scene) toThing(f *fitting, t *Solid, above float64) float64 {
	if !sloping(&t.Box) {
		return f.from(planFrom(&t.Box, f.at), max(t.Lo.Z, above), t.Hi.Z)
	}
	d := math.Inf(1)
	for _, p := range piecesOf(t.Box) {
		if p.Top() >= above-touch {
			d = min(d, f.from(near(p.Footprint(), f.at), max(p.Bottom(), above), p.Top()))
		}
	}
	return d
}

// kneel is how far whoever sleeps in the top bed reaches when kneeling up: over the mattress, and sideways beyond the bed.
type kneel struct {
	up, side float64
	ask      string
}

func (s *Scene) kneeling() kneel {
	up, what := s.furthestReach(upperBed, people.KneelingReach)
	side, more := s.sideways(upperBed)
	if what == "" {
		what = more
	}
	return kneel{up, side, what}
}

// kneelingReading is how far a fitting stays out of that reach.
func (s *Scene) kneelingReading(f *fitting, k *kneel) Reading {
	r := Reading{At: f.key + ".reach", Rows: reachUpRows, Parts: []string{f.key, "mattress.upper"}}
	if r.Ask = k.ask; k.ask != "" {
		return r
	}
	r.Have = outside(signedFrom(s.foot(), f.at)-f.radius-k.side, f.low-s.mattressTop(upperBed)-k.up)
	r.Edge = "kneeling up on the upper mattress"
	r.Uses = append([]Use{{"kneeling reach over the mattress", k.up, "mm", "table"}, {"reach sideways beyond the rail", k.side, "mm", "table"}},
		s.thickUses(upperBed)...)
	r.orThick(s, upperBed)
	return r
}

// outside returns how far something is from a reach that ends level and upwards: level and up are how far it lies beyond either end,
// negative within it.
func outside(level, up float64) float64 {
	if level > 0 && up > 0 {
		return math.Hypot(level, up)
	}
	return max(level, up)
}

// signedFrom returns how far a point is from an outline in plan, negative inside.
func signedFrom(p geom.Polygon, q geom.V2) float64 {
	if p.Contains(q) {
		return -p.Distance(q)
	}
	return p.Distance(q)
}

// underReading answers whether the bed's outline is clear of a fitting over it.
func (s *Scene) underReading(f *fitting) Reading {
	r := Reading{At: f.key + ".under", Rows: overheadRows, Yes: near(s.foot(), f.at) >= f.radius, Parts: []string{f.key}}
	if !r.Yes {
		r.Edge = f.key + " is over the bed"
	}
	return r
}

// tipToWall returns the least level distance of the blade tips from a wall or the bed.
func (s *Scene) tipToWall(f *fitting) float64 {
	least := near(s.foot(), f.at)
	for i := range s.Walls {
		w := &s.Walls[i]
		d, _ := geom.SegmentPoint(w.A, w.B, f.at)
		least = min(least, d-s.Nearest(w, f.low, f.low))
	}
	return least - f.radius
}
