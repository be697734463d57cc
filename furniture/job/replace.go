package job

import (
	"errors"
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"bunkwright/room"
	"bunkwright/room/length"
	"bunkwright/room/misread"
	"bunkwright/room/survey"
)

// Replaced is a reading that no longer counts: as it was read, what stands in its place, and why.
type Replaced struct {
	Reading string        `file:"reading"` // key of the quantity: "wall.DA.length"
	Was     room.Measure  `file:"was"`     // one reading, with all that was said of it
	Taken   length.Length `file:"taken"`   // 0: nothing stands in its place
	Why     string        `file:"why"`
	By      string        `file:"by"` // who decided
	When    string        `file:"when"`
	Note    string        `file:"note"`
}

// Decision says why a reading no longer counts, who said so and when.
type Decision struct{ Why, By, When string }

// ErrNothingToReplace is returned for a cause that leaves the reading as it is, such as a wall that leans.
var ErrNothingToReplace = errors.New("the reading stays as it is")

// NoReadingError names a reading that a job does not have.
type NoReadingError struct {
	Key   string
	Index int // 0 the first
}

func (e *NoReadingError) Error() string {
	return fmt.Sprintf("%s has no reading %d", e.Key, e.Index+1)
}

// Replace puts a value in the place of reading i (0 the first) of a quantity. Who read it and how stays as it was; the reading as it was is
// kept in Replaced. Errors are *NoReadingError.
func (j *Job) Replace(key string, i int, value length.Length, d Decision) (*Job, error) {
	return j.replace(key, i, value, d)
}

// SetAside takes reading i of a quantity out of what counts and keeps it in Replaced. Errors are *NoReadingError.
func (j *Job) SetAside(key string, i int, d Decision) (*Job, error) { return j.replace(key, i, 0, d) }

// TakeCause settles a doubtful reading by the cause that whoever read it confirmed: what the tape must have said stands in its place. Where the
// cause gives only about what that was, the reading is set aside, for what the others say of it is no reading of its own. Errors are
// *NoReadingError, and ErrNothingToReplace.
func (j *Job) TakeCause(src survey.Source, c misread.Cause, d Decision) (*Job, error) {
	switch d.Why = strings.TrimPrefix(d.Why+"; "+c.Cause, "; "); {
	case c.Value == c.Read:
		return nil, ErrNothingToReplace
	case c.About:
		return j.SetAside(src.Key, src.Index, d)
	}
	return j.Replace(src.Key, src.Index, c.Value, d)
}

func (j *Job) replace(key string, i int, value length.Length, d Decision) (*Job, error) {
	out, was := *j, room.Reading{}
	found := out.editMeasure(key, func(m room.Measure) room.Measure {
		if i < 0 || i >= len(m) {
			return m
		}
		was, m = m[i], slices.Clone(m)
		if value == 0 {
			return slices.Delete(m, i, i+1)
		}
		m[i].Value, m[i].Light = value, 0
		return m
	})
	if !found || was.Value == 0 {
		return nil, &NoReadingError{key, i}
	}
	out.Replaced = append(slices.Clone(j.Replaced), Replaced{Reading: key, Was: room.Measure{was}, Taken: value, Why: d.Why, By: d.By, When: d.When})
	return &out, nil
}

// editMeasure changes the measure of a key in a job that is a copy: the lists on the way are copied, what hangs on them stays the old job's.
func (j *Job) editMeasure(key string, do func(room.Measure) room.Measure) bool {
	path := strings.Split(key, ".")
	return editMeasure(reflect.ValueOf(&j.Room).Elem(), path, do) || editMeasure(reflect.ValueOf(j).Elem(), path, do)
}

var measureType = reflect.TypeFor[room.Measure]()

func editMeasure(table reflect.Value, path []string, do func(room.Measure) room.Measure) bool {
	for i := range table.NumField() {
		f, at := table.Type().Field(i), table.Field(i)
		switch {
		case f.Anonymous:
			if editMeasure(at, path, do) {
				return true
			}
		case f.Tag.Get("file") == path[0]:
			return editField(at, path[1:], do)
		}
	}
	return false
}

func editField(at reflect.Value, rest []string, do func(room.Measure) room.Measure) bool {
	switch {
	case at.Type() == measureType:
		if len(rest) == 0 {
			m := do(at.Interface().(room.Measure))
			if len(m) == 0 {
				m = nil
			}
			at.Set(reflect.ValueOf(m))
		}
		return len(rest) == 0
	case at.Kind() == reflect.Struct && len(rest) > 0:
		return editMeasure(at, rest, do)
	case at.Kind() == reflect.Slice && at.Type().Elem().Kind() == reflect.Struct && len(rest) > 1:
		k := named(at, rest[0])
		if k < 0 {
			return false
		}
		list := reflect.MakeSlice(at.Type(), at.Len(), at.Len())
		reflect.Copy(list, at)
		at.Set(list)
		return editMeasure(list.Index(k), rest[1:], do)
	}
	return false
}

// named finds an element of a list by its key or name, else by its place, 1 the first.
func named(list reflect.Value, name string) int {
	for i := range list.Len() {
		for k := range list.Type().Elem().NumField() {
			tag := list.Type().Elem().Field(k).Tag.Get("file")
			if (tag == "key" || tag == "name") && list.Index(i).Field(k).String() == name {
				return i
			}
		}
	}
	if n, err := strconv.Atoi(name); err == nil && n >= 1 && n <= list.Len() {
		return n - 1
	}
	return -1
}
