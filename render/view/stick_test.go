package view

import (
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
