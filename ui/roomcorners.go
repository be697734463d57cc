package ui

import (
	"strings"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/ui/session"
)

// addCorner splits the chosen wall, and goes to the new corner.
func (r *roomPanel) addCorner() {
	table, wall, _ := strings.Cut(session.Subject(r.chosen), ".")
	s := r.w.live.scene
	if table != "wall" || s == nil {
		r.w.status.at("choose the wall that gets a corner, then press C")
		return
	}
	corner := ""
	r.w.do("Add a corner", "", func(*job.Job) (next *job.Job, err error) {
		next, corner, err = session.SplitWall(s, wall)
		return next, err
	})
	if corner == "" || !session.Exists(r.w.session.Job(), "corner."+corner) {
		return
	}
	r.choose("corner."+corner, false)
	words := "corner " + corner + " is between " + wall[:1] + " and " + wall[1:] + ": drag it, or a wall beside it for a step; then type the lengths"
	if was := "wall." + wall; jobfile.Shown(s.Job, was+".low") != "" || jobfile.Shown(s.Job, was+".high") != "" {
		words += "; the low and high readings of the whole wall are put aside"
	}
	r.w.status.at(words)
}

// removeCorner makes one wall of the two at the chosen corner.
func (r *roomPanel) removeCorner() {
	_, corner, _ := strings.Cut(session.Subject(r.chosen), ".")
	s := r.w.live.scene
	if s == nil {
		return
	}
	before := r.w.session.Job()
	r.w.do("Remove corner "+corner, "", func(*job.Job) (*job.Job, error) { return session.RemoveCorner(s, corner) })
	if r.w.session.Job() != before {
		r.w.status.at("corner " + corner + " is removed, with what was read to it; Undo brings it back")
	}
}
