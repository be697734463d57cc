package fit

import (
	"strings"
	"testing"

	"bunkwright/furniture/job"
)

// TestBedOutOfTheRoomIsListed: the bed is 2108 mm long (2000 + 18 of play + 2 x 45) in the metric stock; a room of 4000 with 2500 left
// free before it holds 1500 of it. The file loads, the bed is listed, and the question says that it does not stand there.
func TestBedOutOfTheRoomIsListed(t *testing.T) {
	s := stage(t, bedroom(4000, 3500, func(j *job.Job) { j.Place.Along = mm(2500) }))
	over := 2500 + s.Bed.Long - 4000
	var listed string
	for _, p := range s.Problems() {
		if p.Key == "place.along" {
			listed = p.Text
		}
	}
	if !strings.Contains(listed, s.size(over)) {
		t.Errorf("listed %q, want %s out of the room", listed, s.size(over))
	}
	if a := s.Ask(stands); a.Verdict != DoesNotFit {
		t.Errorf("stands: %v, want does-not-fit", a.Verdict)
	}
}

// TestAcceptedQuestionMustBeOne: a slip in the id of an accepted question is listed.
func TestAcceptedQuestionMustBeOne(t *testing.T) {
	s := stage(t, bedroom(4000, 3500, func(j *job.Job) { j.Accepted = []job.Accept{{Question: "fan", Reason: "comes down"}} }))
	if len(s.Problems()) == 0 {
		t.Error("nothing is listed")
	}
}

// TestNamedMattressIsNoSize: a deck that only names its mattress is listed with what is missing, not with "another size".
func TestNamedMattressIsNoSize(t *testing.T) {
	s, err := NewScene(bedroom(4000, 3500, func(j *job.Job) {
		j.Bed.Upper.MattressLong, j.Bed.Upper.MattressWide, j.Bed.Upper.MattressName = 0, 0, "twin"
	}))
	if err != nil {
		t.Fatal(err)
	}
	want := `bed.upper.mattress_long: not chosen: "twin" is a name that may stand for several sizes; choose the size to build for: mattress_long = "..." under [bed.upper]`
	for _, p := range s.Problems() {
		if p.String() == want {
			return
		}
	}
	t.Errorf("%v, want %q among them", s.Problems(), want)
}

// TestScopeInWords: why a row does not apply is said in words and in the unit of the job, no sign of the table's among them.
func TestScopeInWords(t *testing.T) {
	row, _, _ := stage(t, bedroom(4000, 3500)).row("au-mark-scope")
	for unit, want := range map[string]string{"mm": "less than 360 mm", "in": "less than 360 mm"} {
		s := stage(t, bedroom(4000, 3500, func(j *job.Job) { j.Unit = unit }))
		if got := s.outsideWords(row); got != row.Quantity+": not "+want {
			t.Errorf("%s: %q", unit, got)
		}
	}
}
