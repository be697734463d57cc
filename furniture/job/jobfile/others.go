package jobfile

import (
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strconv"

	"bunkwright/furniture/job"
)

// answers reads the table of what the maker says of requirements that nobody can measure.
func (d *decoder) answers(v any, dst reflect.Value, at spot) {
	m, ok := v.(map[string]any)
	if !ok {
		d.complain(at, describe(v), fmt.Sprintf("a table: [%s]", at.f.path))
		return
	}
	ids, out := job.ConfirmIDs(), map[string]string{}
	for _, id := range slices.Sorted(maps.Keys(m)) {
		here := at.in(id)
		d.note(here)
		text, ok := m[id].(string)
		switch {
		case !slices.Contains(ids, id):
			d.complain(here, "no requirement that a maker answers", likely(id, ids))
		case !ok || text != "yes" && text != "no":
			d.complain(here, describe(m[id]), `"yes" or "no"`)
		default:
			out[id] = text
		}
	}
	if len(out) > 0 {
		dst.Set(reflect.ValueOf(out))
	}
}

func likely(id string, ids []string) string {
	if near := nearest(id, ids); near != "" {
		return "did you mean " + near + "?"
	}
	return "an id such as " + ids[0]
}

// verbatim keeps tables as they are written.
func (d *decoder) verbatim(v any, dst reflect.Value, at spot) {
	tables, ok := asTables(v)
	if !ok {
		d.complain(at, describe(v), fmt.Sprintf("a list of tables: [[%s]]", at.f.path))
		return
	}
	if d.tooMany(at, len(tables)) {
		return
	}
	var out []map[string]any
	for i, m := range tables {
		d.note(at.step(strconv.Itoa(i+1), at.n.at(i)))
		out = append(out, alike(m).(map[string]any))
	}
	dst.Set(reflect.ValueOf(out))
}

// alike gives a list of tables the same type however it was written.
func alike(v any) any {
	switch v := v.(type) {
	case map[string]any:
		out := make(map[string]any, len(v))
		for k, e := range v {
			out[k] = alike(e)
		}
		return out
	case []map[string]any:
		out := make([]any, len(v))
		for i, e := range v {
			out[i] = alike(e)
		}
		return out
	case []any:
		out := make([]any, len(v))
		for i, e := range v {
			out[i] = alike(e)
		}
		return out
	}
	return v
}
