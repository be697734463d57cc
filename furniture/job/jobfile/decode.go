package jobfile

import (
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strconv"
	"strings"
)

// A spot is where a value stands: its key as the survey and the questions name it, its node, and its line or that of its table.
type spot struct {
	f    *field
	key  string
	n    *node
	line int
}

// in returns the spot of a key of the table at s.
func (s spot) in(name string) spot { return s.step(name, s.n.key(name)) }

func (s spot) step(name string, n *node) spot {
	out := spot{f: s.f, key: join(s.key, name), n: n, line: s.line}
	if n.where() > 0 {
		out.line = n.line
	}
	return out
}

func (d *decoder) complain(s spot, have, want string) {
	if !d.faulty[s.line] {
		d.complaints = append(d.complaints, Complaint{Line: s.line, Key: s.key, Have: have, Want: want})
	}
}

// wrong complains of a value of the wrong type; the right one is shown by the example of its key.
func (d *decoder) wrong(s spot, v any) {
	d.complain(s, describe(v), d.suchAs(s.f))
}

// table reads a table into a struct.
func (d *decoder) table(t *table, v map[string]any, dst reflect.Value, at spot) {
	defer d.enter(t, v)()
	for _, key := range slices.Sorted(maps.Keys(v)) {
		f, here := t.byKey[key], at.in(key)
		if f == nil {
			d.unknown(t, key, here)
			continue
		}
		here.f = f
		d.note(here)
		d.field(v[key], dst.FieldByIndex(f.index), here)
	}
	for _, f := range t.fields {
		if _, there := v[f.key]; !there && f.row.Default == Required {
			d.missing(at, f)
		}
	}
}

func (d *decoder) missing(at spot, f *field) {
	at.key = join(at.key, f.key)
	d.complain(at, "missing", d.suchAs(f))
}

// unknown complains of a key that its table does not have.
func (d *decoder) unknown(t *table, key string, at spot) {
	var names []string
	for _, f := range t.fields {
		names = append(names, f.key)
	}
	want := "its keys are " + strings.Join(names, ", ")
	if beside := whole().byKey[key]; t.path == roomTable && beside != nil && beside.sub != nil {
		want = "it stands beside [room]: " + beside.sub.String()
	} else if near := nearest(key, names); near != "" {
		want = "did you mean " + near + "?"
	} else if elsewhere := tablesWith(key); elsewhere != "" && t != readings() && t != stocks() {
		want = "it is a key of " + elsewhere
	}
	have := "no key of " + t.String()
	d.complain(at, have, want)
}

// String names a table as a file writes it.
func (t *table) String() string {
	switch {
	case t.path == "":
		return "a job file"
	case t == readings():
		return "a reading"
	case t == stocks():
		return "a stock"
	case listPaths()[t.path]:
		return "[[" + t.path + "]]"
	}
	return "[" + t.path + "]"
}

// field reads one key of a table.
func (d *decoder) field(v any, dst reflect.Value, at spot) {
	f := at.f
	switch f.form {
	case single:
		f.kind.read(d, at, v, dst)
	case answers:
		d.answers(v, dst, at)
	case verbatim:
		d.verbatim(v, dst, at)
	case list:
		d.list(v, dst, at)
	default:
		m, ok := v.(map[string]any)
		if !ok {
			d.complain(at, describe(v), fmt.Sprintf("a table: [%s]", f.path))
			return
		}
		if f.form == optional {
			dst.Set(reflect.New(dst.Type().Elem()))
			dst = dst.Elem()
		}
		d.table(f.sub, m, dst, at)
	}
}

// list reads the tables of a list.
func (d *decoder) list(v any, dst reflect.Value, at spot) {
	tables, ok := asTables(v)
	if !ok {
		d.complain(at, describe(v), fmt.Sprintf("a list of tables: [[%s]]", at.f.path))
		return
	}
	if len(tables) == 0 || d.tooMany(at, len(tables)) {
		return
	}
	dst.Set(reflect.MakeSlice(dst.Type(), len(tables), len(tables)))
	taken := map[string]int{}
	for i, m := range tables {
		n := at.n.at(i)
		if n == nil {
			n = at.n // [[wall]] written as a single table
		}
		name, f := elementName(at.f.sub, m, i), at.f
		here := at.step(name, n)
		if line, twice := taken[name]; twice && f.sub.path == "accepted" {
			here = at.step(strconv.Itoa(i+1), n)
		} else if twice {
			d.complain(here, fmt.Sprintf("stands here for the second time, first on line %d", line), "one table for each, with all its readings")
		}
		taken[name] = here.line
		d.note(here)
		d.table(f.sub, m, dst.Index(i), here)
	}
}

// mostElements bounds every list: no room has more of anything, and what follows takes time that grows with it.
const mostElements = 200

func (d *decoder) tooMany(at spot, n int) bool {
	if n > mostElements {
		d.complain(at, fmt.Sprintf("%d of them", n), fmt.Sprintf("at most %d", mostElements))
	}
	return n > mostElements
}

// elementName returns what an element of a list is called in keys: its own name, else its place in the list.
func elementName(t *table, m map[string]any, i int) string {
	if t.name != nil {
		if name, ok := m[t.name.key].(string); ok && name != "" {
			return name
		}
	}
	return strconv.Itoa(i + 1)
}

// asTables returns a list of tables however it is written.
func asTables(v any) ([]map[string]any, bool) {
	switch v := v.(type) {
	case []map[string]any:
		return v, true
	case []any:
		out := make([]map[string]any, len(v))
		for i, e := range v {
			m, ok := e.(map[string]any)
			if !ok {
				return nil, false
			}
			out[i] = m
		}
		return out, true
	}
	return nil, false
}

// note remembers the line of a key and the comments that stand with it.
func (d *decoder) note(at spot) {
	if at.n == nil {
		return
	}
	if _, there := d.lines[at.key]; !there {
		d.lines[at.key], d.fields[at.key] = at.n.line, at.f
	}
	said := at.n.comment
	if at.f.form == single || at.key != at.f.path && (at.f.form == answers || at.f.form == verbatim) {
		said = gather(at.n)
	}
	if len(said) > 0 {
		d.said[at.key] = d.said[at.key].add(said...)
	}
}
