package place

import (
	"slices"
	"strconv"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/room/length"
)

// An attempt is one value of one driver.
type attempt struct {
	driver fit.Driver
	moves  bool // it only moves the bed: that need not be built again
	edit   func(*editor)
}

// An editor makes one attempt on a job of its own and keeps which keys it set.
type editor struct {
	j        *job.Job
	unit     length.Unit
	words    string
	settings []fit.Setting
}

// edited returns a job with one attempt made on it, and the change that it was.
func edited(j *job.Job, a attempt) (*job.Job, fit.Change) {
	e := &editor{j: owned(j)}
	e.unit, _ = length.ParseUnit(j.Unit)
	a.edit(e)
	return e.j, fit.Change{Driver: a.driver, Words: e.words, Settings: e.settings}
}

// owned copies a job with all that an attempt may change.
func owned(j *job.Job) *job.Job {
	out := *j
	b := &out.Bed
	b.Ladder, b.Climb, b.Drawers, b.Shelves = clone(b.Ladder), clone(b.Climb), clone(b.Drawers), slices.Clone(b.Shelves)
	return &out
}

func clone[T any](p *T) *T {
	if p == nil {
		return nil
	}
	c := *p
	return &c
}

func (e *editor) set(key, from, to string) {
	if from != to {
		e.settings = append(e.settings, fit.Setting{Key: key, From: from, To: to})
	}
}

// length sets a length; 0 takes the key away.
func (e *editor) length(key string, at *length.Length, to length.Length) {
	e.set(key, e.text(*at), e.text(to))
	*at = to
}

func (e *editor) text(l length.Length) string {
	if l == 0 {
		return ""
	}
	return length.Exact(l, e.unit)
}

// gap writes a gap, which may be 0 and may be left out.
func (e *editor) gap(l length.Maybe) string {
	if !l.Set {
		return ""
	}
	return length.Exact(l.Value, e.unit)
}

func (e *editor) count(key string, at *int, to int) {
	text := func(n int) string {
		if n == 0 {
			return ""
		}
		return strconv.Itoa(n)
	}
	e.set(key, text(*at), text(to))
	*at = to
}

// word sets a word; T is one of the word types of a job.
func word[T ~string](e *editor, key string, at *T, to T) {
	e.set(key, string(*at), string(to))
	*at = to
}

func (e *editor) flag(key string, at *bool, to bool) {
	e.set(key, strconv.FormatBool(*at), strconv.FormatBool(to))
	*at = to
}

// place moves the bed.
func (e *editor) place(to job.Placement) {
	p := &e.j.Place
	word(e, "place.wall", &p.Wall, to.Wall)
	word(e, "place.from", &p.From, to.From)
	e.set("place.along", length.Exact(p.Along, e.unit), length.Exact(to.Along, e.unit))
	p.Along = to.Along
	if to.Turn != turnOf(*p) {
		word(e, "place.against", &p.Turn, to.Turn)
	}
	e.flag("place.mirrored", &p.Mirror, to.Mirror)
}

// say writes a size of a change, always positive.
func (e *editor) say(l length.Length) string {
	return length.Format(max(l, -l), length.Style{Unit: e.unit})
}
