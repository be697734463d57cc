package fit

import (
	"strings"

	"bunkwright/room/survey"
)

// leftOut tells an answer that hangs on the corners of the room of a diagonal they were worked out without: the walls do not allow it, and
// either it or they are wrong. Such an answer is at best too close to call, like one that hangs on two readings which do not agree.
func (j judge) leftOut(a *Answer) {
	if len(j.s.Survey.LeftOut) == 0 || !hangsOnCorners(a.Inputs) {
		return
	}
	why := leftOutWords(j.s.Survey.LeftOut[0])
	if a.Verdict == Fits {
		a.Verdict, a.Reason = TooClose, why
		return
	}
	a.Notes = append(a.Notes, why)
}

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

func leftOutWords(l survey.LeftOut) string {
	_, key, _ := strings.Cut(strings.TrimSuffix(l.Key, ".length"), ".")
	return "the diagonal " + strings.Join(strings.Split(key, ""), " to ") + " cannot be as read, and the room is worked out without it: read it again"
}
