package fit

import (
	"strings"
	"testing"

	"bunkwright/furniture/job/jobfile"
	"bunkwright/samples"
)

// TestLeftOutDiagonal gives the town house a diagonal of 90 ft: the room is worked out without it, no answer that hangs on the corners
// fits for sure, each that did says why, and no answer is lost by it.
func TestLeftOutDiagonal(t *testing.T) {
	data, err := samples.Files.ReadFile("town-house.toml")
	if err != nil {
		t.Fatal(err)
	}
	ask := func(text string) []Answer {
		f, err := jobfile.Load([]byte(text), "job.toml")
		if err != nil {
			t.Fatal(err)
		}
		_, answers, err := Answers(&f.Job)
		if err != nil {
			t.Fatal(err)
		}
		return answers
	}
	head, rest, ok := strings.Cut(string(data), "[[diagonal]]")
	if !ok {
		t.Fatal("the sample has no diagonal")
	}
	_, rest, _ = strings.Cut(rest, "[[")
	before, after := ask(string(data)), ask(head+"[[diagonal]]\nkey = \"AC\"\nlength = \"90 ft\"\n\n[["+rest)
	told := 0
	for i, a := range after {
		if a.Verdict == CannotTell && before[i].Verdict != CannotTell {
			t.Errorf("%s: cannot be told any more: %s", a.ID, a.Ask)
		}
		if !hangsOnCorners(a.Inputs) {
			continue
		}
		told++
		if a.Verdict == Fits || before[i].Verdict == Fits && !strings.Contains(a.Reason+strings.Join(a.Notes, " "), "diagonal.AC.length cannot be as read") {
			t.Errorf("%s: %v, %q, %q", a.ID, a.Verdict, a.Reason, a.Notes)
		}
	}
	if told < 5 {
		t.Errorf("%d answers hang on the corners", told)
	}
}

// hangsOnCorners tells whether an answer has a length of the outline or a square corner among its inputs.
func hangsOnCorners(in []Input) bool {
	for _, i := range in {
		table, _, _ := strings.Cut(i.Key, ".")
		switch {
		case table == "diagonal",
			table == "corner" && strings.HasSuffix(i.Key, ".square"),
			table == "wall" && strings.HasSuffix(i.Key, ".length"):
			return true
		}
	}
	return false
}
