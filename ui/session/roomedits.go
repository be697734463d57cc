package session

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room"
)

// Firm tells whether a quantity was read twice, or by the maker.
func Firm(j *job.Job, key string) bool {
	how := room.How(jobfile.Shown(j, key+".1.how"))
	return jobfile.Shown(j, key+".2") != "" || how == room.Mine || how == room.Twice
}

// RemoveThing takes a thing out of the room.
func RemoveThing(j *job.Job, key string) (*job.Job, error) { return jobfile.Remove(j, key) }

// AddElement adds an element to a list below a thing, such as the studs of a wall, under the first number that is free.
func AddElement(j *job.Job, list string) (next *job.Job, key string, err error) {
	if j, err = withTable(j, Subject(list)); err != nil {
		return nil, "", err
	}
	for n := 1; ; n++ {
		key = list + "." + strconv.Itoa(n)
		if taken(j, key) {
			continue
		}
		next, err = jobfile.Add(j, list, strconv.Itoa(n))
		return next, key, err
	}
}

// taken tells whether an element of a list goes by a key, by its name or by its number.
func taken(j *job.Job, key string) bool {
	_, err := jobfile.Set(j, jobfile.Change{Key: key + ".note", Text: jobfile.Shown(j, key+".note")})
	return err == nil
}

// AddCeiling adds a face of the ceiling over the whole room, with a height at the first corner that is still to be read.
func AddCeiling(j *job.Job) (*job.Job, error) {
	name := "main"
	if len(j.Room.Ceilings) > 0 {
		name = freeName(j, "ceiling", "face")
	}
	next, err := jobfile.Add(j, "ceiling", name)
	if err != nil || j.Room.Outline == "" {
		return next, err
	}
	corner := string([]rune(j.Room.Outline)[0])
	return jobfile.Add(next, "ceiling."+name+".height", corner, jobfile.Change{Key: "corner", Text: corner})
}

// freeName returns a name that no element of a list goes by yet: "garden", "garden 2".
func freeName(j *job.Job, table, name string) string {
	for n := 1; ; n++ {
		try := name
		if n > 1 {
			try = fmt.Sprintf("%s %d", name, n)
		}
		if !slices.ContainsFunc(Things(&j.Room), func(t Thing) bool { return t.Key == table+"."+try }) {
			return try
		}
	}
}

// SetAbsent says that the room has no thing of a kind, or takes that back.
func SetAbsent(j *job.Job, thing string, absent bool) (*job.Job, error) {
	list := slices.DeleteFunc(slices.Clone(j.Room.Absent), func(a string) bool { return a == thing })
	if absent {
		list = append(list, thing)
	}
	return jobfile.Set(j, jobfile.Change{Key: "room.absent", Text: strings.Join(list, ", ")})
}

// ErrNameTaken means that another thing goes by that name.
var ErrNameTaken = errors.New("another one is called that; choose another name")

// ErrName means that a name cannot be used in keys.
var ErrName = errors.New("a name without dots, such as garden")

// Rename gives a thing another name.
func Rename(j *job.Job, subject, name string) (*job.Job, error) {
	table, _, _ := strings.Cut(subject, ".")
	switch {
	case name == "" || strings.Contains(name, "."):
		return nil, ErrName
	case table+"."+name != subject && slices.ContainsFunc(Things(&j.Room), func(t Thing) bool { return t.Key == table+"."+name }):
		return nil, ErrNameTaken
	}
	return jobfile.Set(j, jobfile.Change{Key: subject + ".key", Text: name})
}
