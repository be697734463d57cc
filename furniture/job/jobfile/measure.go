package jobfile

import (
	"reflect"
	"strings"

	"bunkwright/room"
)

// measureKind is all readings of one quantity: a text, a table, or a list of them.
type measureKind struct{}

func (measureKind) read(d *decoder, at spot, v any, dst reflect.Value) {
	var items []any
	switch v := v.(type) {
	case []any:
		items = v
	case []map[string]any:
		for _, m := range v {
			items = append(items, m)
		}
	default:
		if r, ok := d.reading(at, v); ok {
			dst.Set(reflect.ValueOf(room.Measure{r}))
		}
		return
	}
	if d.tooMany(at, len(items)) {
		return
	}
	if len(items) == 0 {
		d.complain(at, "an empty list", "leave the key out where nothing was read, or write "+inUnit(at.f.row, d.unit))
	}
	var m room.Measure
	for i, item := range items {
		here := at
		if n := at.n.at(i); n != nil {
			here.n, here.line = n, n.line
		}
		if r, ok := d.reading(here, item); ok {
			m = append(m, r)
		}
	}
	dst.Set(reflect.ValueOf(m))
}

// reading reads one of them; what it does not say it takes from [readings].
func (d *decoder) reading(at spot, v any) (room.Reading, bool) {
	r := room.Reading{How: d.readings.How, By: d.readings.By, When: d.readings.When}
	where, text := at, v
	if m, ok := v.(map[string]any); ok {
		d.table(readings(), m, reflect.ValueOf(&r).Elem(), at)
		if text, ok = m["read"]; !ok {
			return r, false
		}
		where = at.in("read")
	}
	got, ok := d.length(where, text, at.f.row.Unit)
	r.Value, r.Light = got.Value, got.Note64
	return r, ok
}

// readKind is what was read in a reading's own table: the measure reads it, because it knows what was measured.
type readKind struct{ lengthKind }

func (readKind) read(*decoder, spot, any, reflect.Value) {}

func (measureKind) write(w *writer, f *field, v reflect.Value) (string, bool) {
	var items []string
	for _, r := range v.Interface().(room.Measure) {
		items = append(items, w.reading(r))
	}
	if len(items) == 1 {
		return items[0], true
	}
	return bracketed(items), len(items) > 0
}

// remarks are the words for what was between two marks of the tape, in 64ths of an inch.
var remarks = map[int]string{2: " strong", -2: " light"}

// reading writes what a reading says beside what it takes from [readings].
func (w *writer) reading(r room.Reading) string {
	text := strings.TrimSuffix(w.exact(r.Value), `"`) + remarks[r.Light] + `"`
	usual := reflect.ValueOf(room.Reading{How: w.readings.How, By: w.readings.By, When: w.readings.When})
	items := []string{"read = " + text}
	for _, f := range readings().fields {
		if f.key == "read" {
			continue
		}
		v := reflect.ValueOf(r).FieldByIndex(f.index)
		if said, _ := f.kind.write(w, f, v); !v.Equal(usual.FieldByIndex(f.index)) {
			items = append(items, f.key+" = "+said)
		}
	}
	if len(items) == 1 {
		return text
	}
	return "{ " + strings.Join(items, ", ") + " }"
}
