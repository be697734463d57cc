package jobfile

import (
	"fmt"
	"math"
	"reflect"
	"strings"

	"bunkwright/furniture/job"
	"bunkwright/room/length"
)

// longest bounds every length of a job, 100 m: more than that is a slip in any house (our own bound).
const longest = 100_000 * length.Millimetre

// fieldOf tells what a number without a unit is held against.
var fieldOf = map[Unit]length.Field{WallLength: length.WallLength, RoomHeight: length.RoomHeight}

// length reads a text in tape notation as the key of at wants it. Zero is refused where it would be the same as nothing.
func (d *decoder) length(at spot, v any, unit Unit) (length.Reading, bool) {
	text, ok := v.(string)
	if !ok {
		d.notText(at, v)
		return length.Reading{}, false
	}
	got := length.Read(text, length.Context{Unit: d.unit, Field: fieldOf[unit]})
	if d.noUnit && got.Outcome != length.Value { // the missing unit is one complaint, not one for every length
		got = length.Read(text, length.Context{Unit: length.Millimetres})
	}
	switch {
	case got.Outcome == length.Ask:
		d.complain(at, describe(text)+": "+got.Reason, got.Question+" Write it with its unit"+d.offer(got))
	case got.Outcome != length.Value:
		reason, _, _ := strings.Cut(got.Reason, ": want") // the example below is of this very key
		d.complain(at, describe(text)+": "+reason, d.suchAs(at.f))
	case got.Value > longest:
		d.complain(at, describe(text)+" is more than 100 m", d.suchAs(at.f))
	case got.Value == 0 && unit != FromZero:
		d.complain(at, describe(text)+": 0 is the same as nothing here", "leave the key out, or write "+inUnit(at.f.row, d.unit))
	default:
		return got, true
	}
	return got, false
}

// notText complains of a length that is no text.
func (d *decoder) notText(at spot, v any) {
	if n, ok := number(v); ok && n > 0 && n < longest.MM() && !d.noUnit {
		d.complain(at, describe(v)+" has no quotes", fmt.Sprintf("a length is text: %s = %s", lastKey(at.f.key), quote(fmt.Sprintf("%v %s", v, d.unit))))
		return
	}
	d.wrong(at, v)
}

func number(v any) (float64, bool) {
	switch v := v.(type) {
	case int64:
		return float64(v), true
	case float64:
		return v, !math.IsNaN(v)
	}
	return 0, false
}

func lastKey(key string) string { return key[strings.LastIndexByte(key, '.')+1:] }

// offer shows the first answer to a question as a file would write it.
func (d *decoder) offer(r length.Reading) string {
	if len(r.Offers) == 0 {
		return ""
	}
	return ", such as " + quote(length.Exact(r.Offers[0], d.unit))
}

// exact writes a length so that it reads back as it is.
func (w *writer) exact(l length.Length) string { return quote(length.Exact(l, w.unit)) }

// lengthKind is a length of which 0 means that it was not chosen.
type lengthKind struct{}

func (lengthKind) read(d *decoder, at spot, v any, dst reflect.Value) {
	if got, ok := d.length(at, v, at.f.row.Unit); ok && d.unmarked(at, got) {
		dst.SetInt(int64(got.Value))
	}
}

// unmarked complains of strong or light where no reading is kept.
func (d *decoder) unmarked(at spot, got length.Reading) bool {
	if got.Note64 != 0 {
		d.complain(at, "strong or light is kept with readings only", "the length alone")
	}
	return got.Note64 == 0
}

func (lengthKind) write(w *writer, f *field, v reflect.Value) (string, bool) {
	return w.exact(length.Length(v.Int())), v.Int() != 0
}

// maybeKind is a length that may be 0 or not be set.
type maybeKind struct{}

func (maybeKind) read(d *decoder, at spot, v any, dst reflect.Value) {
	if got, ok := d.length(at, v, FromZero); ok && d.unmarked(at, got) {
		dst.Set(reflect.ValueOf(length.Some(got.Value)))
	}
}

func (maybeKind) write(w *writer, f *field, v reflect.Value) (string, bool) {
	m := v.Interface().(job.Maybe)
	return w.exact(m.Value), m.Set
}

// lengthsKind is a list of lengths.
type lengthsKind struct{}

func (lengthsKind) read(d *decoder, at spot, v any, dst reflect.Value) {
	items, ok := v.([]any)
	if !ok {
		d.wrong(at, v)
		return
	}
	if d.tooMany(at, len(items)) {
		return
	}
	var out []length.Length
	for i, item := range items {
		here := at
		if n := at.n.at(i); n.where() > 0 {
			here.line = n.line
		}
		if got, ok := d.length(here, item, FromZero); ok && d.unmarked(here, got) {
			out = append(out, got.Value)
		}
	}
	dst.Set(reflect.ValueOf(out))
}

func (lengthsKind) write(w *writer, f *field, v reflect.Value) (string, bool) {
	var items []string
	for i := range v.Len() {
		items = append(items, w.exact(length.Length(v.Index(i).Int())))
	}
	return bracketed(items), len(items) > 0
}
