package fit

import "testing"

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
