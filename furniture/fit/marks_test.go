package fit

import (
	"strings"
	"testing"
)

// What the maker confirms: in the US release, label and mattress size; in the EU the mattress mark and tool; in AU the mark line, where
// the rail is less than 360 over the base (it is 300).
func TestMarks(t *testing.T) {
	us := confirm("us-rail-release", "us-warning-label", "us-max-mattress-stated")
	high := func(s *Scene) {
		for i := range s.Bed.Guards {
			s.Bed.Guards[i].Top = 1860
		}
	}
	runCases(t, "marks", []bedCase{
		{"US, all confirmed", "US", us, Fits, none, ""},
		{"US, one open", "US", confirm("us-rail-release", "us-warning-label"), CannotTell, none, "confirmed.us-max-mattress-stated"},
		{"US, one not", "US", func(s *Scene) { us(s); s.Job.Confirmed["us-warning-label"] = "no" }, DoesNotFit, none, "confirmed.us-warning-label"},
		{"EU", "EU", confirm("eu-max-mattress-mark", "eu-tool-only"), Fits, none, ""},
		{"AU, mark needed", "AU", nil, CannotTell, none, "confirmed.au-mark-line"},
		{"AU, mark drawn", "AU", confirm("au-mark-line"), Fits, none, ""},
		{"AU, rail of 360 needs none", "AU", high, NotApplicable, none, ""},
		{"advice only", "CA", nil, None, none, ""},
		{"no bed", "US", unbuildable, CannotTell, none, ""},
	})
	a := answer(t, plainScene(t, "AU"), "marks")
	if want := "is the length of the mattress height mark line at least 150 mm?"; a.Ask != want {
		t.Errorf("asks %q, want %q", a.Ask, want)
	}
}

// The label names the highest age asked here, the mattress, and the thickest that every place takes: 173 in the US, 140 in AU.
func TestLabel(t *testing.T) {
	for places, wants := range map[string][]string{
		"US":    {"No child under 6 years", "2000 mm x 900 mm", "at most 173 mm thick"},
		"US AU": {"No child under 9 years", "at most 140 mm thick"},
		"UK":    {"Mattress 2000 mm"},
	} {
		notes := strings.Join(answer(t, plainScene(t, places), "marks").Notes, " ")
		for _, want := range wants {
			if !strings.Contains(notes, want) {
				t.Errorf("%s: %q lacks %q", places, notes, want)
			}
		}
	}
	s := plainScene(t, "US")
	for i := range s.Bed.Guards {
		s.Bed.Guards[i].Top += 0.9 // 173.9 is rounded down
	}
	if notes := strings.Join(answer(t, s, "marks").Notes, " "); !strings.Contains(notes, "at most 173 mm thick") {
		t.Errorf("%q", notes)
	}
	if notes := strings.Join(answer(t, plainScene(t, "UK"), "marks").Notes, " "); strings.Contains(notes, "years") {
		t.Errorf("UK: an age that no text asks for: %q", notes)
	}
}
