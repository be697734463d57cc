package jobfile

import (
	"bytes"
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"github.com/BurntSushi/toml"

	"bunkwright/furniture/job"
)

// A Way is another way of a job: the job that it makes of the one it is kept in.
type Way struct {
	Name string
	Job  *job.Job
}

// MostWays is how many other ways a job keeps: more than four nobody compares.
const MostWays = 4

// ErrTooManyWays means that a job keeps MostWays already.
var ErrTooManyWays = fmt.Errorf("a job keeps %d other ways: take one away first", MostWays)

// Keys of another way that are its own and not those of a job.
const (
	wayName    = "name"
	wayWithout = "without"
	wayNote    = "note"
)

// Ways returns the other ways of a job, each made of the job as it is now: what another way does not say is as in the job. The error is a
// *ReadError for the first way that gives no job.
func Ways(j *job.Job) ([]Way, error) {
	var out []Way
	for i := range j.Another {
		name := nameOfWay(j, i)
		other, err := changedBy(j, j.Another[i])
		if err != nil {
			return nil, fmt.Errorf("another way %q: %w", name, err)
		}
		out = append(out, Way{name, other})
	}
	return out, nil
}

// nameOfWay returns what a way is called: its place in the list where it has no name.
func nameOfWay(j *job.Job, i int) string {
	if name, _ := j.Another[i][wayName].(string); name != "" {
		return name
	}
	return strconv.Itoa(i + 1)
}

// KeepWay returns a job that keeps another one as another way, under a name; one of that name is replaced. Only what differs is kept.
func KeepWay(j *job.Job, name string, other *job.Job) (*job.Job, error) {
	from, err := values(j)
	if err != nil {
		return nil, err
	}
	to, err := values(other)
	if err != nil {
		return nil, err
	}
	way, without := differing(from, to, "")
	way[wayName] = name
	if len(without) > 0 {
		way[wayWithout] = without
	}
	out := *j
	out.Another = slices.Clone(j.Another)
	at := slices.IndexFunc(out.Another, func(m map[string]any) bool { return m[wayName] == name })
	switch {
	case at >= 0:
		out.Another[at] = way
	case len(out.Another) >= MostWays:
		return nil, ErrTooManyWays
	default:
		out.Another = append(out.Another, way)
	}
	return &out, nil
}

// DropWay returns a job without one of its other ways.
func DropWay(j *job.Job, name string) *job.Job {
	out := *j
	out.Another = nil
	for i, m := range j.Another {
		if nameOfWay(j, i) != name {
			out.Another = append(out.Another, m)
		}
	}
	return &out
}

// values returns a job as the values of its file, without the ways it keeps.
func values(j *job.Job) (map[string]any, error) {
	bare := *j
	bare.Another, bare.Comments = nil, nil
	var m map[string]any
	if err := toml.Unmarshal(Encode(&bare), &m); err != nil {
		return nil, err
	}
	return alike(m).(map[string]any), nil
}

// changedBy makes the job of another way.
func changedBy(j *job.Job, way map[string]any) (*job.Job, error) {
	m, err := values(j)
	if err != nil {
		return nil, err
	}
	without, _ := way[wayWithout].([]any)
	for _, key := range without {
		if key, ok := key.(string); ok {
			take(m, strings.Split(key, "."))
		}
	}
	own := map[string]any{}
	for k, v := range way {
		if k != wayName && k != wayWithout && k != wayNote {
			own[k] = v
		}
	}
	merge(m, alike(own).(map[string]any))
	var text bytes.Buffer
	if err := toml.NewEncoder(&text).Encode(tablesOf(m)); err != nil {
		return nil, err
	}
	file, err := Load(text.Bytes(), "")
	if err != nil {
		return nil, err
	}
	return &file.Job, nil
}

// merge puts values into others: tables are gone into, all else is replaced as a whole.
func merge(into, from map[string]any) {
	for k, v := range from {
		below, is := v.(map[string]any)
		at, there := into[k].(map[string]any)
		if is && there {
			merge(at, below)
			continue
		}
		into[k] = v
	}
}

// take removes a key, however deep.
func take(m map[string]any, path []string) {
	if len(path) == 1 {
		delete(m, path[0])
		return
	}
	if below, ok := m[path[0]].(map[string]any); ok {
		take(below, path[1:])
	}
}

// differing returns what another job has that the first has not or has otherwise, and the keys that it does not have.
func differing(from, to map[string]any, path string) (way map[string]any, without []any) {
	way = map[string]any{}
	for k, v := range to {
		was, there := from[k]
		a, is := was.(map[string]any)
		b, same := v.(map[string]any)
		switch {
		case is && same:
			below, gone := differing(a, b, join(path, k))
			if len(below) > 0 {
				way[k] = below
			}
			without = append(without, gone...)
		case !there || !reflect.DeepEqual(was, v):
			way[k] = v
		}
	}
	for k := range from {
		if _, there := to[k]; !there {
			without = append(without, join(path, k))
		}
	}
	slices.SortFunc(without, func(a, b any) int { return strings.Compare(a.(string), b.(string)) })
	return way, without
}

// tablesOf gives lists of tables a type of their own again, as they are written.
func tablesOf(v any) any {
	switch v := v.(type) {
	case map[string]any:
		out := make(map[string]any, len(v))
		for k, e := range v {
			out[k] = tablesOf(e)
		}
		return out
	case []any:
		var list []map[string]any
		for _, e := range v {
			m, ok := e.(map[string]any)
			if !ok {
				return v
			}
			list = append(list, tablesOf(m).(map[string]any))
		}
		if list != nil {
			return list
		}
	}
	return v
}
