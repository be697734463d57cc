package jobfile

import (
	"reflect"
	"strconv"
	"strings"

	"bunkwright/furniture/job"
	"bunkwright/room"
	"bunkwright/room/length"
)

// A Change is one key of a job and the text it is set to, as a file would say it; an empty text takes the key away. A list of readings
// is reached by number, the first 1 ("wall.AB.length.2", "wall.AB.length.2.how"); without one it is the first.
type Change struct{ Key, Text string }

// Set returns a job with some keys changed, all or none. The job itself stays as it is. What cannot be read is a *ReadError with a
// complaint for each fault.
func Set(j *job.Job, changes ...Change) (*job.Job, error) {
	out := *j
	e := newEditor(&out)
	e.apply(changes)
	return e.done()
}

// Draft is Set without the look at whether the whole can be saved and opened: for a job that is only shown while a hand moves. One that is
// kept goes through Set.
func Draft(j *job.Job, changes ...Change) (*job.Job, error) {
	out := *j
	e := newEditor(&out)
	e.apply(changes)
	if len(e.complaints) > 0 {
		return nil, &ReadError{Complaints: e.complaints}
	}
	return e.job, nil
}

// Add returns a job with one more element in a list ("window", "wall.AB.stud") or with a table that may be missing ("bed.ladder"), and
// what is known of it: changes whose keys begin at the element ("sill"). A list whose elements are named takes the name.
func Add(j *job.Job, key, name string, changes ...Change) (*job.Job, error) {
	out := *j
	e := newEditor(&out)
	whole := e.add(key, name)
	for i := range changes {
		changes[i].Key = join(whole, changes[i].Key)
	}
	e.apply(changes)
	return e.done()
}

// Remove returns a job without an element of a list ("window.garden") or without a table that may be missing.
func Remove(j *job.Job, key string) (*job.Job, error) {
	out := *j
	e := newEditor(&out)
	e.remove(key)
	return e.done()
}

// editor changes a job that is its own. It reads texts by the rules of the file.
type editor struct {
	*decoder
	found bool // the key of the change at hand is there
}

func (e *editor) apply(changes []Change) {
	for _, c := range changes {
		e.at(c.Key, func(f *field, v reflect.Value, rest []string) { e.set(f, v, c.Key, rest, c.Text) })
	}
}

// at calls f with the field of a key, copying what it goes through, and what of the key is left there. It complains where there is none.
func (e *editor) at(key string, f func(f *field, v reflect.Value, rest []string)) {
	e.found = false
	e.table(whole(), reflect.ValueOf(e.job).Elem(), strings.Split(key, "."), f)
	if !e.found {
		e.complaints = append(e.complaints, Complaint{Key: key, Have: "no such key"})
	}
}

func (e *editor) add(key, name string) (whole string) {
	whole = key
	e.at(key, func(f *field, v reflect.Value, rest []string) {
		switch {
		case len(rest) > 0:
		case f.form == optional && v.IsNil():
			e.found = true
			v.Set(reflect.New(v.Type().Elem()))
		case f.form == list && !e.tooMany(spot{f: f, key: key}, v.Len()+1):
			e.found = true
			v.Set(reflect.Append(cloned(v), reflect.Zero(v.Type().Elem())))
			whole = join(key, strconv.Itoa(v.Len()))
			if n := f.sub.name; n != nil && name != "" {
				v.Index(v.Len() - 1).FieldByIndex(n.index).SetString(name)
				whole = join(key, name)
			}
		}
	})
	return whole
}

func (e *editor) remove(key string) {
	e.at(key, func(f *field, v reflect.Value, rest []string) {
		switch {
		case f.form == optional && len(rest) == 0 && !v.IsNil():
			e.found = true
			v.SetZero()
		case f.form == list && len(rest) == 1:
			if i := element(f, v, rest[0]); i >= 0 {
				e.found = true
				v.Set(reflect.AppendSlice(cloned(v.Slice(0, i)), v.Slice(i+1, v.Len())))
				if v.Len() == 0 {
					v.SetZero()
				}
			}
		}
	})
}

func newEditor(j *job.Job) *editor {
	d := newDecoder(parsed{scan: &scanner{root: &node{}}})
	d.job = j
	unit, err := length.ParseUnit(j.Unit)
	d.context = context{unit: unit, noUnit: err != nil, outline: j.Room.Outline, readings: j.Readings}
	return &editor{decoder: d}
}

// done returns the job where the edit could be read and the whole can still be saved and opened.
func (e *editor) done() (*job.Job, error) {
	if len(e.complaints) > 0 {
		return nil, &ReadError{Complaints: e.complaints}
	}
	if _, err := Load(Encode(e.job), ""); err != nil {
		return nil, err
	}
	return e.job, nil
}

// table goes down to a key, copying what it goes through.
func (e *editor) table(t *table, v reflect.Value, path []string, do func(*field, reflect.Value, []string)) {
	f := t.byKey[path[0]]
	if f == nil {
		return
	}
	e.onWall(t, v)
	at, rest := v.FieldByIndex(f.index), path[1:]
	switch {
	case f.form == list && len(rest) > 1:
		if i := element(f, at, rest[0]); i >= 0 {
			at.Set(cloned(at))
			e.table(f.sub, at.Index(i), rest[1:], do)
		}
	case f.form == optional && len(rest) > 0 && !at.IsNil():
		copied := reflect.New(at.Type().Elem())
		copied.Elem().Set(at.Elem())
		at.Set(copied)
		e.table(f.sub, copied.Elem(), rest, do)
	case f.form == section && len(rest) > 0:
		e.table(f.sub, at, rest, do)
	default:
		do(f, at, rest)
	}
}

// onWall notes the wall that a table is on, for texts that name one of its ends.
func (e *editor) onWall(t *table, v reflect.Value) {
	if w := t.byKey["wall"]; w != nil && w.form == single {
		e.wall = v.FieldByIndex(w.index).String()
	} else if t.path == "wall" {
		e.wall = v.FieldByIndex(t.name.index).String()
	}
}

// set gives a field the value of a text.
func (e *editor) set(f *field, at reflect.Value, key string, rest []string, text string) {
	switch {
	case f.form == single:
		e.value(f, at, key, rest, text)
	case f.form == answers && len(rest) == 1:
		e.answer(at, key, rest[0], text)
	}
}

func (e *editor) value(f *field, at reflect.Value, key string, rest []string, text string) {
	here := spot{f: f, key: key}
	if f.kind == (measureKind{}) {
		e.reading(here, at, rest, text)
		return
	}
	if len(rest) > 0 {
		return
	}
	e.found = true
	if text == "" {
		if f.row.Default == Required {
			e.complain(here, "empty", e.suchAs(f))
			return
		}
		at.SetZero()
		return
	}
	f.kind.read(e.decoder, here, e.written(here, text), at)
}

// written turns what was typed into the value that a file would hold.
func (e *editor) written(at spot, text string) any {
	switch at.f.kind.(type) {
	case lengthsKind, textsKind:
		var out []any
		for part := range strings.SplitSeq(text, ",") {
			out = append(out, strings.TrimSpace(part))
		}
		return out
	case countKind:
		if n, err := strconv.ParseInt(strings.TrimSpace(text), 10, 64); err == nil {
			return n
		}
	case numberKind:
		if x, err := strconv.ParseFloat(strings.TrimSpace(text), 64); err == nil {
			return x
		}
	case boolKind:
		if b, err := strconv.ParseBool(text); err == nil && at.f.words == nil {
			return b
		}
	case stockKind:
		if sold, actual, ok := strings.Cut(text, "="); ok {
			return map[string]any{"sold": strings.TrimSpace(sold), "actual": strings.TrimSpace(actual)}
		}
	}
	return text
}

// reading sets one reading of a measure, or what is said beside it.
func (e *editor) reading(at spot, v reflect.Value, rest []string, text string) {
	m := append(room.Measure(nil), v.Interface().(room.Measure)...)
	i := 0
	if len(rest) > 0 {
		n, err := strconv.Atoi(rest[0])
		if err != nil || n < 1 || n > len(m)+1 {
			return
		}
		i = n - 1
	}
	e.found = true
	if i == len(m) {
		if text == "" || len(rest) > 1 {
			return
		}
		m = append(m, room.Reading{How: e.readings.How, By: e.readings.By, When: e.readings.When})
	}
	switch {
	case len(rest) > 1:
		e.beside(at, &m[i], rest[1], text)
	case text == "":
		m = append(m[:i], m[i+1:]...)
	default:
		if got, ok := e.length(at, text, at.f.row.Unit); ok {
			m[i].Value, m[i].Light = got.Value, got.Note64
		}
	}
	if len(m) == 0 {
		m = nil
	}
	v.Set(reflect.ValueOf(m))
}

// beside sets what a reading says beside its length.
func (e *editor) beside(at spot, r *room.Reading, name, text string) {
	f := readings().byKey[name]
	if f == nil || name == "read" {
		e.found = false
		return
	}
	at = spot{f: f, key: at.key}
	to := reflect.ValueOf(r).Elem().FieldByIndex(f.index)
	if text == "" {
		to.SetZero()
		return
	}
	f.kind.read(e.decoder, at, text, to)
}

func (e *editor) answer(v reflect.Value, key, id, text string) {
	e.found = true
	m := map[string]any{}
	for k, said := range v.Interface().(map[string]string) {
		m[k] = said
	}
	if m[id] = text; text == "" {
		delete(m, id)
	}
	v.SetZero()
	e.answers(m, v, spot{f: whole().byKey["confirmed"], key: key})
}

// element finds an element of a list by its name, else by its number.
func element(f *field, list reflect.Value, name string) int {
	if f.sub.name != nil {
		for i := range list.Len() {
			if list.Index(i).FieldByIndex(f.sub.name.index).String() == name {
				return i
			}
		}
	}
	if n, err := strconv.Atoi(name); err == nil && n >= 1 && n <= list.Len() {
		return n - 1
	}
	return -1
}

func cloned(list reflect.Value) reflect.Value {
	out := reflect.MakeSlice(list.Type(), list.Len(), list.Len())
	reflect.Copy(out, list)
	return out
}
