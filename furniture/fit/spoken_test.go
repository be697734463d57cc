package fit

import (
	"testing"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
)

func TestSpoken(t *testing.T) {
	for text, want := range map[string]string{
		"how far is the near edge of register.floor from corner B along wall BC?": "how far is the near edge of register floor from corner B along wall BC?",
		"can furniture.desk be climbed?":                                          "can desk be climbed?",
		"meets left.post.wall at 67°":                                             "meets left.post.wall at 67°",
		"guard.wall.1 to wall.AB":                                                 "guard.wall.1 to wall AB",
	} {
		if got := Spoken(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

func TestPartsAreCalledByName(t *testing.T) {
	s := &Scene{Bed: &bunk.Bed{Parts: []furniture.Part{{ID: "guard.front.upright.1", Name: "upright 1, guardrail, front"}}}}
	for text, want := range map[string]string{
		"nearest is guard.front.upright.1":  "nearest is upright 1, guardrail, front",
		"nearest is guard.front.upright.12": "nearest is guard.front.upright.12",
		"3.5 in; e.g. wall AB":              "3.5 in; e.g. wall AB",
	} {
		if got := s.Called(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
	if got := (*Scene)(nil).Called("left.post.wall"); got != "left.post.wall" {
		t.Errorf("without a scene: %q", got)
	}
}
