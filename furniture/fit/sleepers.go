package fit

import (
	"math"
	"strings"

	"bunkwright/furniture/job"
	"bunkwright/furniture/people"
)

// sitter is somebody sitting up in bed: how high the head comes, and how sure that is beside the readings.
type sitter struct {
	name   string // "Ida"; of several without a name their number; "" where one of no name has the bed alone
	who    string // as a question names them: "Ida", "the upper sleeper"
	key    string
	seated float64 // mm
	u      float64 // own standard uncertainty, of a ratio
	use    Use
	sex    people.Sex
	age    float64 // to look body sizes up with
	grown  bool
	ask    string
}

// sleepersOf returns the sleepers of a bed, with their places in the job.
func (s *Scene) sleepersOf(bed string) (list []job.Sleeper, keys []string) {
	for i, p := range s.Job.Sleepers {
		if p.Bed == bed {
			list, keys = append(list, p), append(keys, p.Key(i))
		}
	}
	return list, keys
}

// sexOf turns a sleeper's word into that of the tables.
func sexOf(word string) people.Sex {
	switch word {
	case "girl", "woman":
		return people.Female
	case "boy", "man":
		return people.Male
	}
	return people.Unknown
}

// sitters returns who sits up in a bed.
func (s *Scene) sitters(bed string) []sitter {
	list, keys := s.sleepersOf(bed)
	out := make([]sitter, 0, len(list))
	for i, p := range list {
		q := s.sitter(p, keys[i])
		if p.Name == "" && len(list) > 1 { // each has a place of its own among the readings
			q.name = strings.TrimPrefix(keys[i], "sleeper.")
		}
		out = append(out, q)
	}
	return out
}

// called names a sleeper in a question.
func called(p job.Sleeper) string {
	if p.Name == "" {
		return "the " + p.Bed + " sleeper"
	}
	return p.Name
}

// sitter finds a seated height: measured, else from stature, else that of a tall one of the age (P95). Grown-ups need no age.
func (s *Scene) sitter(p job.Sleeper, key string) sitter {
	q := sitter{name: p.Name, key: key, sex: sexOf(p.Sex), age: tableAge(p), grown: p.Grown()}
	q.who = called(p)
	seated, stature := s.v(s.Survey.Find(key+".seated")), s.v(s.Survey.Find(key+".stature"))
	switch {
	case !math.IsNaN(seated):
		q.seated = seated
	case !math.IsNaN(stature):
		q.fromStature(stature)
	case p.Age <= 0 && !p.Grown():
		q.ask = "how old is " + q.who + ", or how high does " + q.who + " sit?"
	default:
		q.fromAge()
	}
	return q
}

// fromStature takes the share of the stature that is above the seat. The table ends at 18, where nobody grows any more: grown-ups are
// taken at that age.
func (q *sitter) fromStature(stature float64) {
	age := min(q.age, people.LastChildAge)
	ratio, err1 := people.SittingRatio(q.sex, age, people.Mean)
	sd, err2 := people.SittingRatio(q.sex, age, people.SD)
	if err1 != nil || err2 != nil {
		q.ask = "how high does " + q.who + " sit?"
		return
	}
	q.seated, q.u = people.SittingFromStature(stature, ratio), sd*stature
	q.use = Use{Key: "sitting ratio", Value: ratio, How: "table"}
}

func (q *sitter) fromAge() {
	p95, err := people.SeatedHeight(q.sex, q.age, "p95")
	if err != nil {
		q.ask = "how high does " + q.who + " sit?"
		return
	}
	q.seated = p95
	of := "child of " + q.who + "'s age"
	if q.grown {
		of = "grown-up, for " + q.who
	}
	q.use = Use{Key: "seated height of a tall " + of, Value: p95, Unit: "mm", How: "table"}
}

// Age figures: the ages at which children of middle height and tall ones outgrow a free height, whole years rounded down. A figure is
// left out where nobody outgrows it by 18.
func outgrown(h float64, sex people.Sex) []Figure {
	var out []Figure
	for _, f := range []struct {
		name string
		stat people.Stat
	}{{"age_p50", "p50"}, {"age_p95", "p95"}} {
		age, is, err := people.HeadroomAge(h, 0, 0, sex, f.stat)
		if err == nil && is {
			out = append(out, Figure{f.name, math.Floor(age), "year"})
		}
	}
	return out
}

// SeatedAt is how high somebody sits, as the questions take it.
type SeatedAt struct {
	Sleeper int     // place in the job's list
	Height  float64 // seat to the top of the head, mm; NaN where it is not known
	Own     bool    // measured, or from the stature: not from the age alone
	Ask     string  // what is missing to tell
}

// Seated returns how high everybody in the job sits.
func (s *Scene) Seated() []SeatedAt {
	out := make([]SeatedAt, len(s.Job.Sleepers))
	for i, p := range s.Job.Sleepers {
		q := s.sitter(p, p.Key(i))
		out[i] = SeatedAt{i, q.seated, len(p.Seated) > 0 || len(p.Stature) > 0, q.ask}
		if q.ask != "" {
			out[i].Height = math.NaN()
		}
	}
	return out
}
