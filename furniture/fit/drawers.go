package fit

import (
	"fmt"
	"math"
	"strings"

	"bunkwright/room/geom"
)

var drawersSlide = Question{
	ID:       "drawers-slide",
	Sentence: "Do the drawers slide over this floor?",
	Group:    Build,
	Why:      "The bed sinks into the carpet and the floor may rise before it: a drawer that clears on paper jams in the room.",
	How: "Underside of what is over the drawer, from the post feet, less how far the posts sink, less the rise of the floor up to the end of the " +
		"travel, less the box (on a hard floor the box on its casters; on carpet it slides on its base).",
	Depends: Floor | Rise,
	Propose: []Driver{DrawerLow, LowerUp, Pads},
	Measure: func(s *Scene) Finding { return s.drawersSlide() },
}

var drawersOpen = Question{
	ID:       "drawers-open",
	Sentence: "Do the drawers pull right out, with someone there?",
	Group:    Build,
	Why:      "A drawer that cannot be pulled out with somebody kneeling before it is a box for things that are never used.",
	How:      "Free depth before the shut drawer over its width, less its travel; what it meets is named, and so is a door whose arc it enters.",
	Depends:  Standing | FarLean | Doors | Leaves | Registers | Heaters | Furniture,
	Propose:  []Driver{DrawerTravel, Slide, Mirrored, LadderEnd, OtherWall},
	Measure:  func(s *Scene) Finding { return s.drawersOpen() },
}

var (
	slideRows    = []string{"own-drawer-air"}
	openRows     = []string{"own-drawer-body"}
	openDeepRows = []string{"hud-drawers", "hud-dressing"}
	besideRows   = []string{"hud-gap"}
)

// DrawerAir returns the air over a drawer: the underside of what is over it, how far the posts sink, how much the floor rises up to the end
// of its travel, and the height of the box with what it stands on; all in one unit.
func DrawerAir(over, sink, rise, box float64) float64 { return over - sink - rise - box }

func (s *Scene) drawersSlide() Finding {
	switch {
	case s.Bed == nil:
		return unbuilt("drawers", slideRows...)
	case len(s.Bed.Drawers) == 0:
		return absent("there are no drawers")
	}
	cover := s.Job.Room.Floor.Cover
	rise, want := s.floorRise()
	switch {
	case cover == "":
		want = "is the floor carpet or hard?"
	case math.IsNaN(s.Feet):
		want = "how thick is the carpet, and how far does a post sink into it?"
	}
	var f Finding
	for _, d := range s.Bed.Drawers {
		box := d.BoxHigh
		if cover == "hard" {
			box += d.Caster
		}
		f.Readings = append(f.Readings, Reading{
			At: d.ID, Rows: slideRows, Ask: want, Have: DrawerAir(d.Over, -s.Feet, rise, box), Parts: append([]string{d.ID}, d.Parts...),
			Uses: []Use{{"bed.drawers.over", d.Over, "mm", "chosen"}, {"bed.drawers.box_high", d.BoxHigh, "mm", "chosen"}, {"bed.drawers.casters", d.Caster, "mm", "chosen"}},
		})
	}
	s.addBuildTolerance(f.Readings)
	return f
}

// floorRise returns how much the floor rises at most from the posts to the end of the drawers' travel: a floor that falls gains nothing,
// since the shut drawer stands level with the posts.
func (s *Scene) floorRise() (rise float64, want string) {
	up, down := s.v(s.Survey.Layout.Floor.Rise), s.v(s.Survey.Layout.Floor.Fall)
	switch {
	case !math.IsNaN(up) && !math.IsNaN(down):
		return max(0, up-down), ""
	case !math.IsNaN(up):
		return up, ""
	case !math.IsNaN(down):
		return 0, ""
	}
	return 0, "does the floor rise or fall where the drawers pull out, and by how much?"
}

func (s *Scene) drawersOpen() Finding {
	switch {
	case s.Bed == nil && s.Job.Bed.Drawers == nil || s.Bed != nil && len(s.Bed.Drawers) == 0:
		return absent("there are no drawers")
	case !s.Stands:
		return Finding{Readings: []Reading{ask("drawers", s.Wants, openRows...)}}
	}
	all, want := s.beforeDrawers()
	var f Finding
	least := math.Inf(1)
	for i := range s.Bed.Drawers {
		d := &s.Bed.Drawers[i]
		depth, what := s.free(s.drawerStrip(i), all)
		least = min(least, depth)
		f.Readings = append(f.Readings, Reading{
			At: d.ID, Rows: openRows, Have: depth - d.Travel, Parts: append([]string{d.ID, what}, d.Parts...), Edge: "up to " + what,
			Uses: []Use{{"bed.drawers.travel", d.Travel, "mm", "chosen"}},
		})
		if s.brief {
			continue // what is told beside changes no verdict
		}
		if m := s.drawerMeets(i); m.door != "" {
			f.Notes = append(f.Notes, "advice: "+m.words(s))
		}
	}
	f.Readings = append(f.Readings, Reading{At: "before", Rows: openDeepRows, Have: least})
	if s.idle(besideRows) {
		return s.stillUnread(want, f)
	}
	f.Notes = append(f.Notes, s.overRegisters()...)
	f.Readings = append(f.Readings, s.besideDresser())
	return s.traced(s.stillUnread(want, f))
}

// kneeling is up to where a thing is in the way of somebody who kneels before a drawer or stands close to the bed, mm; a book ledge
// hangs higher.
const kneeling = 900

// beforeDrawers returns what a pulled drawer may meet: everything on the floor but the bed itself and its drawers.
func (s *Scene) beforeDrawers() (all []stander, want string) {
	list, want := s.onFloor()
	for _, x := range list {
		if x.what != "bed" && x.low < kneeling && !x.drawer {
			all = append(all, x)
		}
	}
	return all, want
}

// drawerStrip is the band of floor before a shut drawer.
func (s *Scene) drawerStrip(i int) strip {
	b := s.Bed.Drawers[i].Shut
	from := s.ToRoom.Point(geom.V3{X: b.C.X, Y: b.C.Y - b.Half.Y}).XY()
	return strip{from: from, out: s.ToRoom.Dir(geom.V3{Y: -1}).XY(), half: b.Half.X}
}

// meeting is a door that a pulled drawer stands in the way of.
type meeting struct {
	drawer, door string
	opens        float64 // degrees
}

func (m meeting) words(s *Scene) string {
	return fmt.Sprintf("%s, pulled out, meets %s at %s", m.drawer, m.door, s.angleWords(m.opens))
}

// drawerMeets returns the first door whose arc a pulled drawer enters.
func (s *Scene) drawerMeets(i int) meeting {
	d := &s.Bed.Drawers[i]
	out := s.drawerStrip(i).outline(d.Travel)
	for _, g := range s.swings() {
		for _, l := range g.leaves {
			if clearOf(l, out) || l.Gap(out) >= 0 {
				continue
			}
			if a, ok := l.MeetsAt(out); ok {
				return meeting{d.ID, g.what, a * 180 / math.Pi}
			}
		}
	}
	return meeting{}
}

// overRegisters names the drawers that stand over a floor register when they are pulled out.
func (s *Scene) overRegisters() []string {
	var notes []string
	registers, _ := s.floorRegisters()
	for i := range s.Bed.Drawers {
		out := s.drawerStrip(i).outline(s.Bed.Drawers[i].Travel)
		for _, r := range registers {
			if geom.Gap(out, r.outline) < -touching {
				notes = append(notes, s.Bed.Drawers[i].ID+", pulled out, stands over "+r.what)
			}
		}
	}
	return notes
}

// besideDresser measures from the side of the bed to furniture that stays, which is only shown.
func (s *Scene) besideDresser() Reading {
	things, want := s.thingsOnFloor()
	r := Reading{At: "beside", Rows: besideRows, Ask: want}
	least := math.Inf(1)
	foot := s.foot()
	for _, x := range things {
		if strings.HasPrefix(x.what, "furniture.") {
			least = min(least, planGap(foot, x.outline))
		}
	}
	if math.IsInf(least, 1) {
		if want == "" {
			r.Skip = "no furniture stays"
		}
		return r
	}
	r.Have = least
	return r
}
