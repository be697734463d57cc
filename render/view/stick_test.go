package view

import (
	"math"
	"strings"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/render"
	"bunkwright/room/length"
)

// withoutPlace is the attic with its bed nowhere; its upper shelf hangs well above the guardrail.
func withoutPlace(t *testing.T) job.Job {
	j := sample(t, "attic.toml")
	j.Place.Wall = ""
	return j
}

// TestStickGoesBeyondWhatHangs: without a ceiling, both sticks reach beyond every height that is marked on them, and nothing of the
// section hangs over its upper edge.
func TestStickGoesBeyondWhatHangs(t *testing.T) {
	j := withoutPlace(t)
	s, answers := asked(t, &j)
	const k = 1.0 / 16
	for _, d := range []render.Drawing{
		Section(s, answers, Options{On: OnPaper, Scale: k, Unit: length.Inches}), Stick(s, answers, Options{On: OnPaper, Scale: k, Unit: length.Inches}),
	} {
		top := boundsOf(d, "stick", render.KindFill).Min.Y
		for _, m := range d.Marks {
			if b := m.Bounds(); (strings.Contains(m.Ref, "cleat") || strings.HasPrefix(m.Ref, "shelf")) && b.Min.Y < top {
				t.Errorf("%s: %s is at %.1f mm, the stick ends at %.1f", d.Title, m.Ref, b.Min.Y, top)
			}
		}
	}
}

// TestHeightsWithoutAPlace are over the post feet, and say so: the half-measured carpet swallows nobody knows how much of a post.
func TestHeightsWithoutAPlace(t *testing.T) {
	j := sample(t, "half-measured.toml")
	s, answers := asked(t, &j)
	if s.Stands {
		t.Fatal("the half-measured bed stands")
	}
	for _, d := range []render.Drawing{Section(s, answers, screen), Stick(s, answers, screen)} {
		if !has(d, "post feet") || has(d, "carpet top") {
			t.Errorf("%s: heights are over %q", d.Title, texts(d.Marks))
		}
	}
}

// TestStickCeilingIsWhereItIs: on the story stick the ceiling's line stands at the ceiling's height, and no mark of a stick, alone or
// beside the section, lies beyond its end. In the nook the fan's blades (84.5 in) hang higher than the slope over the upper head, which is
// 11/48 lower for each inch towards wall B to C than 95 in at 42 in from it: the line is lower than the blades.
func TestStickCeilingIsWhereItIs(t *testing.T) {
	for _, name := range []string{"nook", "chamber low", "chamber"} {
		j := odd(t, name)
		s, answers := asked(t, &j)
		sit := sittings(s, answers)
		over, marks := ceilingMark(s, nil, &sit[1]), stickMarks(s, knownOf(s), sit)
		const k = 1.0 / 16
		o := Options{On: OnPaper, Unit: unitOf(&j), Scale: k}
		stick := Stick(s, answers, o)
		up := func(d render.Drawing, y render.Paper) float64 { return float64(stickFoot(d)-y) / k }
		if got := up(stick, heavyLine(stick, over[0].ref)); math.Abs(got-over[0].z) > 0.1 {
			t.Errorf("%s: the ceiling is drawn at %.1f, it is at %.1f", name, got, over[0].z)
		}
		for _, d := range []render.Drawing{stick, Section(s, answers, o)} {
			top := up(d, boundsOf(d, "stick", render.KindFill).Min.Y)
			if last := marks[len(marks)-1].z; last > top+0.1 {
				t.Errorf("%s, %s: the stick ends at %.1f, the mark %q stands at %.1f", name, d.Title, top, marks[len(marks)-1].words, last)
			}
		}
	}
}

// stickFoot is where a stick stands on paper.
func stickFoot(d render.Drawing) render.Paper { return boundsOf(d, "stick", render.KindFill).Max.Y }

// heavyLine returns the height on paper of the level line of a ref in the pen of what is cut.
func heavyLine(d render.Drawing, ref string) render.Paper {
	for _, m := range d.Marks {
		if m.Ref == ref && m.Kind == render.KindStroke && m.Pen.Width == render.SheetStyle.Cut.Width && m.Path.Bounds().H() == 0 {
			return m.Path.Bounds().Min.Y
		}
	}
	return 0
}

// TestNoCeilingThroughWords: beside the screen's drawings too, the heavy line of a ceiling, a lower one included, runs through no words.
func TestNoCeilingThroughWords(t *testing.T) {
	for _, name := range sampleNames(t) {
		j := sample(t, name)
		s, answers := asked(t, &j)
		for high := 480.0; high < 800; high += 20 {
			o := Options{W: render.Px(204), H: render.Px(high), Beside: true}
			d := Stick(s, answers, o)
			for _, m := range d.Marks {
				if m.Kind != render.KindStroke || m.Pen != o.Style().Cut || m.Ref == "floor" {
					continue
				}
				for _, w := range boxesOf(d.Marks).words {
					if w.Grow(-0.3).Overlaps(m.Path.Bounds().Grow(0.01)) {
						t.Errorf("%s, %g high: the line of %s runs through the words at %v", name, high, m.Ref, w)
					}
				}
			}
		}
	}
}
