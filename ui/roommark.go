package ui

import (
	"fmt"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/room"
	"bunkwright/room/survey"
	"bunkwright/ui/session"
)

// roomMark is what is open in the room: readings that do not agree or cannot be, and readings that are not in.
type roomMark struct {
	of      *job.Job
	wrong   int
	missing int
}

// mark counts what is open in the room of the job as it is; a job is counted once.
func (r *roomPanel) mark() roomMark {
	l := r.w.live
	if l.of == r.open.of || l.of == nil {
		return r.open
	}
	r.open = roomMark{of: l.of}
	var s *survey.Survey
	if l.scene != nil {
		s = l.scene.Survey
		for _, p := range l.scene.Problems() {
			if saidOfRoom(p.Key) {
				r.open.wrong++
			}
		}
	}
	for _, t := range session.Readings(l.of, s) {
		switch {
		case t.State == session.Differ:
			r.open.wrong++
		case missing(t):
			r.open.missing++
		}
	}
	return r.open
}

// missing tells whether nobody read a quantity yet: an assumed one is no reading.
func missing(t session.Taken) bool { return t.State == session.NotIn || t.How == room.Assumed }

// saidOfRoom tells whether a problem is one of the room, not of the bed or of where it stands.
func saidOfRoom(key string) bool {
	table, _, _ := strings.Cut(key, ".")
	return table != "bed" && table != "place" && table != "sleeper" && table != "accepted"
}

// verdict is the mark on the tape; ok is false where nothing is open.
func (m roomMark) verdict() (v fit.Verdict, ok bool) {
	switch {
	case m.wrong > 0:
		return fit.DoesNotFit, true
	case m.missing > 0:
		return fit.CannotTell, true
	}
	return v, false
}

// words say what is open.
func (m roomMark) words() string {
	var parts []string
	switch {
	case m.wrong == 1:
		parts = append(parts, "1 thing that was read cannot be")
	case m.wrong > 1:
		parts = append(parts, fmt.Sprintf("%d things that were read cannot be", m.wrong))
	}
	switch {
	case m.missing == 1:
		parts = append(parts, "1 reading is not in")
	case m.missing > 1:
		parts = append(parts, fmt.Sprintf("%d readings are not in", m.missing))
	}
	if len(parts) == 0 {
		return ""
	}
	return ": " + strings.Join(parts, ", ")
}
