package view

import (
	"slices"
	"strings"
	"testing"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// everyPlan draws the plan of every sample and odd job for both media.
func everyPlan(t *testing.T, check func(t *testing.T, name string, s *fit.Scene, d render.Drawing, st render.Style)) {
	names := sampleNames(t)
	for _, o := range oddJobs {
		names = append(names, o.name)
	}
	for _, name := range names {
		j := jobNamed(t, name)
		s, answers := asked(t, &j)
		for _, o := range []Options{screen, {On: OnPaper, CutOn: 5}} {
			o.Unit = unitOf(&j)
			check(t, name, s, Plan(s, answers, o), o.Style())
		}
	}
}

// leaders returns the lines from labels to their things: each is followed by its dot.
func leaders(d render.Drawing, st render.Style) []render.Mark {
	var list []render.Mark
	for i := 1; i < len(d.Marks); i++ {
		m, dot := d.Marks[i-1], d.Marks[i]
		if m.Kind == render.KindStroke && m.Pen == st.Extension && dot.Kind == render.KindFill && dot.Ref == m.Ref && dot.Bounds().W() < st.Tick/2 {
			list = append(list, m)
		}
	}
	return list
}

// TestLeadersPointAtTheirThing: a leader ends within what it names, and runs through no words of something else.
func TestLeadersPointAtTheirThing(t *testing.T) {
	everyPlan(t, func(t *testing.T, name string, s *fit.Scene, d render.Drawing, st render.Style) {
		for _, l := range leaders(d, st) {
			dot, end := l.Path[0].To, l.Path[1].To
			var own []render.Mark
			for _, m := range d.Marks {
				if m.Ref == l.Ref && m.Kind != render.KindText && !m.Bounds().Grow(-0.01).Overlaps(render.Around(end).Grow(0.001)) && m.Bounds().W() > 0.5 {
					own = append(own, m)
				}
			}
			if b := render.Bounds(own); len(own) > 1 && !b.Grow(0.2).Contains(dot) {
				t.Errorf("%s: the leader of %s ends at %v, it covers %v", name, l.Ref, dot, b)
			}
			if strings.HasPrefix(l.Ref, "reading.") && onPlanOut(s, d, dot.Between(end, 0.6)) {
				t.Errorf("%s: the leader of %s leaves the room", name, l.Ref)
			}
			for _, m := range d.Marks {
				if m.Kind == render.KindText && m.Ref != l.Ref && strikes(dot, end, m.Bounds().Grow(-0.2)) {
					t.Errorf("%s: the leader of %s runs through %q", name, l.Ref, m.Text.Words)
				}
			}
		}
	})
}

// onPlanOut tells whether a place on a plan lies outside the room.
func onPlanOut(s *fit.Scene, d render.Drawing, at render.Point) bool {
	var q []render.Point
	for _, c := range s.Outline {
		q = append(q, onPlan(s, d, c))
	}
	return !render.Polygon(q...).Inside(at)
}

// strikes tells whether a line has a point in a rectangle.
func strikes(a, b render.Point, r render.Rect) bool {
	const steps = 200
	for i := range steps + 1 {
		if r.Contains(a.Between(b, float64(i)/steps)) {
			return true
		}
	}
	return false
}

// TestHeightsStandAtTheirSpot: the mark of a height of the ceiling stands where it was read, or has a leader there. The chamber's corners are
// those of its walls, and 2440 was read 1200 mm from D on D to A, 1100 mm out.
func TestHeightsStandAtTheirSpot(t *testing.T) {
	everyPlan(t, func(t *testing.T, name string, s *fit.Scene, d render.Drawing, st render.Style) {
		p := newPlanner(s, Options{})
		for i, f := range s.Job.Room.Ceilings {
			for k, h := range f.Heights {
				ref := "ceiling." + keyOr(f.Key, i) + ".height." + keyOr(h.Key, k)
				at, ok := p.readAt(ref, h)
				if !ok || len(h.Height) == 0 {
					continue
				}
				spot := onPlan(s, d, at)
				mark := render.Bounds(under(d, "reading."+ref))
				led := slices.ContainsFunc(leaders(d, st), func(l render.Mark) bool { return l.Ref == "reading."+ref })
				if !mark.Grow(8).Contains(spot) || !led && !render.Bounds(under(d, "reading."+ref)).Grow(st.Gap*2+atSpot).Contains(spot) {
					t.Errorf("%s: %s stands at %v, it was read at %v", name, ref, mark, spot)
				}
			}
		}
	})
}

// onPlan returns where a point of the room stands on a plan whose top wall is the first.
func onPlan(s *fit.Scene, d render.Drawing, q geom.V2) render.Point {
	floor := render.Bounds(under(d, "floor"))
	lo, hi := s.Outline.Bounds()
	k := float64(floor.W()) / (hi.X - lo.X)
	return render.Point{X: floor.Min.X + render.Paper((q.X-lo.X)*k), Y: floor.Min.Y + render.Paper((hi.Y-q.Y)*k)}
}

// TestNothingIsHiddenByWhatIsMovedOut: a drawer pulled out and the floor before it lie under what they collide with.
func TestNothingIsHiddenByWhatIsMovedOut(t *testing.T) {
	everyPlan(t, func(t *testing.T, name string, _ *fit.Scene, d render.Drawing, _ render.Style) {
		last, first := -1, len(d.Marks)
		for i, m := range d.Marks {
			switch kind, _, _ := strings.Cut(m.Ref, "."); {
			case m.Kind == render.KindFill && kind == "drawer" && strings.Count(m.Ref, ".") == 1 && m.Ink > render.InkFits:
				last = i
			case kind == "door" || kind == "heater" || kind == "window" || kind == "furniture" || kind == "register":
				first = min(first, i)
			}
		}
		if last > first {
			t.Errorf("%s: mark %d of a drawer hides %s", name, last, d.Marks[first].Ref)
		}
	})
}

// TestSlopeIsNamed: where a slope or a lower strip of the ceiling begins, the plan says so, and how high the ceiling is stands on a plan with a
// bed as on one without.
func TestSlopeIsNamed(t *testing.T) {
	for _, name := range []string{"chamber", "chamber low", "nook", "attic.toml"} {
		j := jobNamed(t, name)
		s, answers := asked(t, &j)
		for _, o := range []Options{screen, {On: OnPaper}} {
			d := Plan(s, answers, o)
			if !has(d, "slope starts") || len(under(d, "reading.ceiling")) == 0 {
				t.Errorf("%s, medium %d: %q", name, o.On, texts(d.Marks))
			}
		}
	}
}

// TestSectionMarkKeepsOffDimensions: the mark of where the section is cut stands within the outer faces of the walls, also where the bed
// does not: nothing of it strikes words.
func TestSectionMarkKeepsOffDimensions(t *testing.T) {
	everyPlan(t, func(t *testing.T, name string, _ *fit.Scene, d render.Drawing, _ render.Style) {
		for _, m := range d.Marks {
			if m.Ref != "section" || m.Kind == render.KindText {
				continue
			}
			for _, o := range d.Marks {
				if o.Kind == render.KindText && strings.HasPrefix(o.Ref, "reading.window") && m.Bounds().Overlaps(o.Bounds().Grow(-0.1)) {
					t.Errorf("%s: the mark of the section strikes %q", name, o.Text.Words)
				}
			}
		}
	})
}
