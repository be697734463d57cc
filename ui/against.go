package ui

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
)

// chooseAgainst lets the maker choose whose texts the bed is measured against: in this one place.
func (w *Window) chooseAgainst() {
	j := w.session.Job()
	if j == nil {
		return
	}
	group := widget.NewCheckGroup(job.PlaceNames(), nil)
	group.SetSelected(slices.Clone(j.Places))
	words := widget.NewLabel("Named texts are used as a yardstick. None of them is met by fitting, and local code decides.")
	words.Wrapping = fyne.TextWrapWord
	d := dialog.NewCustomConfirm("Measured against", "Measure", "Leave it", container.NewVBox(words, group), func(yes bool) {
		if yes {
			w.do("Measure against "+strings.Join(group.Selected, ", "), "", func(j *job.Job) (*job.Job, error) {
				return jobfile.Set(j, jobfile.Change{Key: "places", Text: strings.Join(group.Selected, ", ")})
			})
		}
	}, w.win)
	d.Show()
}

// caution shows the whole text behind the line at the foot of the questions.
func (w *Window) caution() { w.list("The whole caution", fit.Cautions, nil) }
