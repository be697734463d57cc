package ask

import (
	"errors"
	"slices"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room"
)

// Options say what goes on a sheet.
type Options struct {
	All  bool     // also what is known well enough: read twice, or by the maker
	Keys []string // only these, asked once more; empty: everything that is still wanted
}

// ErrNoOutline is returned for a job that does not say how many corners its room has.
var ErrNoOutline = errors.New("the room has no corners yet: give it an outline, such as ABCD")

// New makes the sheet of a job: what this room and this bed need and what is not known well enough yet. It is a pure function. Where the
// readings are so wrong that no question can be answered, everything is asked. The error is ErrNoOutline.
func New(j *job.Job, o Options) (Sheet, error) {
	whole, err := wholeSheet(j)
	if err != nil {
		return Sheet{}, err
	}
	if len(o.Keys) > 0 {
		return onceMore(j, whole, o.Keys), nil
	}
	if o.All {
		return whole, nil
	}
	return whole.only(func(c Card) bool { return open(j, c) }), nil
}

// wholeSheet asks for everything that the room and the bed need, known or not: it gives every card its number.
func wholeSheet(j *job.Job) (Sheet, error) {
	if len(j.Room.Outline) < 3 {
		return Sheet{}, ErrNoOutline
	}
	needs := ^fit.Facet(0)
	scene, answers, err := fit.Answers(j)
	if err == nil {
		needs = needed(answers)
	}
	w := newWalker(j, scene, needs)
	w.shape()
	w.present()
	w.walls()
	w.ceiling()
	w.floor()
	w.people()
	s := Sheet{
		Job: jobNumber(j), Name: j.Name, Unit: j.Unit, Start: w.start(), Bring: bring(j), Cautions: slices.Clone(cautions), Groups: w.groups,
	}
	s.Version = version(j, &s)
	return s, nil
}

// needed is every part of the scene that a question hangs on, those left out that do not apply to this bed in this room.
func needed(answers []fit.Answer) fit.Facet {
	var all fit.Facet
	for _, a := range answers {
		if q, ok := fit.Find(a.ID); ok && a.Verdict != fit.NotApplicable {
			all |= q.Depends
		}
	}
	return all
}

// only keeps some cards, with their numbers.
func (s Sheet) only(keep func(Card) bool) Sheet {
	groups := s.Groups
	s.Groups = nil
	for _, g := range groups {
		g.Cards = slices.DeleteFunc(slices.Clone(g.Cards), func(c Card) bool { return !keep(c) })
		if len(g.Cards) > 0 {
			s.Groups = append(s.Groups, g)
		}
	}
	return s
}

// open tells whether what a card asks for is not known well enough: nobody said, or it was read less than twice where it can be read from
// both ends, less than once where it cannot.
func open(j *job.Job, c Card) bool {
	element, last := c.Key[:strings.LastIndexByte(c.Key, '.')], c.Key[strings.LastIndexByte(c.Key, '.')+1:]
	switch {
	case c.Kind != Length:
		return !said(j, c.Key)
	case last == "far" && firm(readings(j, element+".at"), 2) && firm(readings(j, element+".wide"), 2):
		return false // its near side and its width tell
	case jobfile.Shown(j, element+".found") == "twice" && len(readings(j, c.Key)) > 0:
		return false
	case c.Other == "":
		return !firm(readings(j, c.Key), 1)
	}
	return !firm(readings(j, c.Key), 2)
}

// said tells whether a job answers a card that is no reading.
func said(j *job.Job, key string) bool {
	if thing, ok := thingOf(key); ok {
		return j.Room.Lacks(thing) || there(&j.Room, thing)
	}
	return jobfile.Shown(j, key) != ""
}

// firm tells whether a quantity was read so often with a tape, or by the maker.
func firm(m []room.How, often int) bool {
	taped := 0
	for _, how := range m {
		switch how {
		case room.Mine, room.Twice:
			return true
		case room.Assumed, room.Told, room.Photo:
		default:
			taped++
		}
	}
	return taped >= often
}

// mostReadings is more than any quantity has: it bounds the search for them.
const mostReadings = 1000

// readings lists how each reading of a key is known.
func readings(j *job.Job, key string) []room.How {
	var out []room.How
	for i := 1; i <= mostReadings; i++ {
		if jobfile.Shown(j, numbered(key, i)) == "" {
			break
		}
		out = append(out, room.How(jobfile.Shown(j, numbered(key, i)+".how")))
	}
	return out
}
