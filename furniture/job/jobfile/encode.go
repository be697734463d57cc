package jobfile

import (
	"bytes"
	"maps"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"github.com/BurntSushi/toml"

	"bunkwright/furniture/job"
	"bunkwright/room/length"
)

// Encode writes a job as the text of a file: in the order of the table of keys, what is set and nothing else, lengths exact and in
// the unit of the job, comments before the key they belong to. The same job gives the same bytes, and Load gives the job back.
func Encode(j *job.Job) []byte {
	return encode(j, settled(j))
}

// writer writes the tables of a job.
type writer struct {
	unit     length.Unit
	readings job.Habits
	comments map[string]string
	keys     map[string]bool // keys that were written, or tables that a comment would bring in
	out      bytes.Buffer
}

func newWriter(j *job.Job) *writer {
	unit, err := length.ParseUnit(j.Unit)
	if err != nil {
		unit = length.Millimetres
	}
	return &writer{unit: unit, readings: j.Readings, keys: map[string]bool{}}
}

func encode(j *job.Job, comments map[string]string) []byte {
	w := newWriter(j)
	w.comments = comments
	w.whole(j)
	if comments[""] != "" {
		w.blank()
		w.comment("")
	}
	return w.out.Bytes()
}

func (w *writer) whole(j *job.Job) { w.table(whole(), reflect.ValueOf(j).Elem(), "") }

// table writes the values of a table, then the tables in it.
func (w *writer) table(t *table, v reflect.Value, key string) {
	for _, f := range t.fields {
		if f.form != single {
			continue
		}
		if text, set := f.kind.write(w, f, v.FieldByIndex(f.index)); set {
			w.pair(join(key, f.key), f.key, text)
		}
	}
	for _, f := range t.fields {
		if f.form != single {
			w.tables(f, v.FieldByIndex(f.index), join(key, f.key))
		}
	}
}

func (w *writer) pair(key, name, text string) {
	w.keys[key] = true
	w.comment(key)
	w.out.WriteString(name + " = " + text + "\n")
}

// tables writes what stands under a header.
func (w *writer) tables(f *field, v reflect.Value, key string) {
	switch f.form {
	case section:
		w.section(f, v, key)
	case optional:
		if !v.IsNil() {
			w.header(key, "["+f.path+"]")
			w.table(f.sub, v.Elem(), key)
		}
	case list:
		w.list(f, v, key)
	case answers:
		w.answers(f, v, key)
	case verbatim:
		w.verbatim(f, v, key)
	}
}

// section writes a table that is always there in the record; its header only where a value or a comment stands under it.
func (w *writer) section(f *field, v reflect.Value, key string) {
	w.keys[key] = true
	if w.comments[key] != "" || w.holds(f.sub, v) {
		w.header(key, "["+f.path+"]")
	}
	w.table(f.sub, v, key)
}

// holds reports whether a table has values beside the tables in it.
func (w *writer) holds(t *table, v reflect.Value) bool {
	for _, f := range t.fields {
		if f.form != single {
			continue
		}
		if _, set := f.kind.write(w, f, v.FieldByIndex(f.index)); set {
			return true
		}
	}
	return false
}

func (w *writer) list(f *field, v reflect.Value, key string) {
	taken := map[string]bool{}
	for i := range v.Len() {
		name := strconv.Itoa(i + 1)
		if f.sub.name != nil {
			if own := v.Index(i).FieldByIndex(f.sub.name.index).String(); own != "" && !taken[own] {
				name = own
			}
		}
		taken[name] = true
		w.header(join(key, name), "[["+f.path+"]]")
		w.table(f.sub, v.Index(i), join(key, name))
	}
}

func (w *writer) answers(f *field, v reflect.Value, key string) {
	m := v.Interface().(map[string]string)
	w.keys[key] = len(m) > 0
	if len(m) == 0 {
		return
	}
	w.header(key, "["+f.path+"]")
	for _, id := range slices.Sorted(maps.Keys(m)) {
		w.pair(join(key, id), keyText(id), quote(m[id]))
	}
}

func (w *writer) verbatim(f *field, v reflect.Value, key string) {
	for i, m := range v.Interface().([]map[string]any) {
		w.header(join(key, strconv.Itoa(i+1)), "[["+f.path+"]]")
		for _, k := range slices.Sorted(maps.Keys(m)) {
			w.out.WriteString(keyText(k) + " = " + inline(m[k]) + "\n")
		}
	}
}

// inline writes any value on one line. Numbers and times are written by the library.
func inline(v any) string {
	switch v := v.(type) {
	case string:
		return `"` + escapeKey(v) + `"`
	case map[string]any:
		var items []string
		for _, k := range slices.Sorted(maps.Keys(v)) {
			items = append(items, keyText(k)+" = "+inline(v[k]))
		}
		return "{" + strings.Join(items, ", ") + "}"
	case []map[string]any, []any:
		var items []string
		list := reflect.ValueOf(v)
		for i := range list.Len() {
			items = append(items, inline(list.Index(i).Interface()))
		}
		return "[" + strings.Join(items, ", ") + "]"
	}
	text, err := toml.Marshal(map[string]any{"x": v})
	if err != nil {
		return `""`
	}
	return strings.TrimSpace(strings.TrimPrefix(string(text), "x = "))
}

// header writes [table] or [[list]] after a blank line.
func (w *writer) header(key, text string) {
	w.keys[key] = true
	w.blank()
	w.comment(key)
	w.out.WriteString(text + "\n")
}

func (w *writer) blank() {
	if w.out.Len() > 0 {
		w.out.WriteByte('\n')
	}
}

// comment writes the comment lines of a key.
func (w *writer) comment(key string) {
	text := w.comments[key]
	if text == "" {
		return
	}
	for line := range strings.SplitSeq(text, "\n") {
		w.out.WriteString(commentLine(line) + "\n")
	}
}
