package fit_test

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"bunkwright/furniture/fit"
)

// A side is what a fixture expects beside the answer that decides: a line, a figure or words.
type side struct {
	kind, question string
	words          []string
}

var verdicts = []string{"fits", "does-not-fit", "too-close", "cannot-tell", "not-applicable", "none"}

// readSide reads a line of a fixture's head such as "# figure: doors-swing opens_to 61.04".
func readSide(line string) (sd side, ok bool) {
	for _, kind := range []string{"line", "figure", "says"} {
		if text, is := strings.CutPrefix(line, "# "+kind+": "); is {
			words := strings.Fields(text)
			return side{kind, words[0], words[1:]}, true
		}
	}
	return side{}, false
}

func (sd side) check(t *testing.T, answers []fit.Answer) {
	t.Helper()
	i := slices.IndexFunc(answers, func(a fit.Answer) bool { return a.ID == sd.question })
	if i < 0 {
		t.Errorf("there is no question %q", sd.question)
		return
	}
	switch a := &answers[i]; sd.kind {
	case "line":
		sd.checkLine(t, a)
	case "figure":
		sd.checkFigure(t, a)
	default:
		sd.checkWords(t, a)
	}
}

// checkLine looks for a row at a place, with its verdict and perhaps its value: "row at verdict have 45".
func (sd side) checkLine(t *testing.T, a *fit.Answer) {
	t.Helper()
	v := slices.IndexFunc(sd.words, func(w string) bool { return slices.Contains(verdicts, w) })
	if v < 2 {
		t.Fatalf("%s: line %q: want a row, a place and a verdict", a.ID, sd.words)
	}
	row, at, verdict := sd.words[0], strings.Join(sd.words[1:v], " "), sd.words[v]
	for _, l := range a.Lines {
		if l.Row.ID != row || l.At != at {
			continue
		}
		if l.Verdict.String() != verdict {
			t.Errorf("%s: %s at %s: %v (%s%s; have %g, u %g), want %s", a.ID, row, at, l.Verdict, l.Reason, l.Ask, l.Value, l.U, verdict)
		}
		if len(sd.words) > v+2 {
			near(t, a.ID+": "+row+" at "+at, l.Value, sd.words[v+2])
		}
		return
	}
	t.Errorf("%s: no line of %s at %s", a.ID, row, at)
}

func (sd side) checkFigure(t *testing.T, a *fit.Answer) {
	t.Helper()
	for _, f := range a.Figures {
		if f.Name == sd.words[0] {
			near(t, a.ID+": "+f.Name, f.Value, sd.words[1])
			return
		}
	}
	t.Errorf("%s: no figure %s", a.ID, sd.words[0])
}

func (sd side) checkWords(t *testing.T, a *fit.Answer) {
	t.Helper()
	all := strings.Join(append([]string{a.Reason, a.Ask, a.Band}, a.Notes...), "\n")
	if text := strings.Join(sd.words, " "); !strings.Contains(all, text) {
		t.Errorf("%s: nothing of %q says %q", a.ID, all, text)
	}
}

func near(t *testing.T, what string, got float64, want string) {
	t.Helper()
	w, err := strconv.ParseFloat(want, 64)
	if err != nil {
		t.Fatalf("%s: %v", what, err)
	}
	if !(math.Abs(got-w) <= spareWithin) {
		t.Errorf("%s: %g, want %g", what, got, w)
	}
}
