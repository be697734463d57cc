package fit

import (
	"strings"
	"testing"

	"bunkwright/room/length"
)

// TestEveryFigureHasWords: what a person reads of a figure is never its key.
func TestEveryFigureHasWords(t *testing.T) {
	for _, name := range []string{"town-house.toml", "attic.toml", "basement.toml", "l-shaped.toml"} {
		for _, a := range stage(t, sample(t, name)).Answers() {
			for _, f := range a.Figures {
				if words := f.Words(length.Inches); words == "" || strings.HasPrefix(words, ":") || strings.HasPrefix(words, ",") || strings.Contains(words, "_") {
					t.Errorf("%s, %s: figure %s reads %q", name, a.ID, f.Name, words)
				}
			}
		}
	}
}
