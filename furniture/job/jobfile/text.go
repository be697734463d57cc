package jobfile

import (
	"reflect"
	"slices"
	"time"

	"bunkwright/furniture/job"
	"bunkwright/furniture/timber"
	"bunkwright/room"
)

// textKind is a text, free or one of some words.
type textKind struct{}

func (textKind) read(d *decoder, at spot, v any, dst reflect.Value) {
	if day, ok := v.(time.Time); ok && at.f.row.Unit == Date && day.Year() > 0 { // a time of day has the year 0
		v = day.Format(time.DateOnly)
	}
	text, ok := v.(string)
	if !ok {
		d.wrong(at, v)
		return
	}
	if d.fits(at, text) {
		dst.SetString(text)
	}
}

// fits checks a text against what its key allows.
func (d *decoder) fits(at spot, text string) bool {
	unit := at.f.row.Unit
	if check := references[unit]; check != nil {
		return check(d, at, text)
	}
	if text == "" && at.f.row.Default == Required {
		d.complain(at, "empty", d.suchAs(at.f))
		return false
	}
	if unit == Date && text != "" {
		return d.day(at, text)
	}
	if unit != Word || slices.Contains(at.f.words, text) || text == "" && at.f.path == "reading.how" {
		return true
	}
	d.complain(at, describe(text), oneOf(text, at.f.words))
	return false
}

// day checks a date: the form of ISO 8601, year-month-day, and a day that there is.
func (d *decoder) day(at spot, text string) bool {
	if isDay(text) {
		return true
	}
	d.complain(at, describe(text)+" is no day", "year-month-day, "+d.suchAs(at.f))
	return false
}

func isDay(text string) bool {
	day, err := time.Parse(time.DateOnly, text)
	return err == nil && day.Year() > 0
}

// oneOf lists the words that are allowed, the likely one first.
func oneOf(text string, words []string) string {
	if near := nearest(text, words); near != "" {
		return "did you mean " + near + "? It is one of " + anyOf(words)
	}
	return anyOf(words)
}

func (textKind) write(w *writer, f *field, v reflect.Value) (string, bool) {
	return quote(v.String()), v.String() != ""
}

// textsKind is a list of places, or of things that a room does not have.
type textsKind struct{}

func (textsKind) read(d *decoder, at spot, v any, dst reflect.Value) {
	items, ok := v.([]any)
	if !ok {
		d.wrong(at, v)
		return
	}
	if d.tooMany(at, len(items)) {
		return
	}
	words := room.AbsentWords
	if at.f.row.Unit == Places {
		words = job.PlaceNames()
	}
	var out []string
	for i, item := range items {
		here := at
		if n := at.n.at(i); n.where() > 0 {
			here.line = n.line
		}
		text, ok := item.(string)
		switch {
		case !ok:
			d.wrong(here, item)
		case !slices.Contains(words, text):
			d.complain(here, describe(text), oneOf(text, words))
		case slices.Contains(out, text):
			d.complain(here, describe(text)+" stands here twice", "each once")
		default:
			out = append(out, text)
		}
	}
	dst.Set(reflect.ValueOf(out))
}

func (textsKind) write(w *writer, f *field, v reflect.Value) (string, bool) {
	var items []string
	for i := range v.Len() {
		items = append(items, quote(v.Index(i).String()))
	}
	return bracketed(items), len(items) > 0
}

// fastener checks the id of a screw.
func (d *decoder) fastener(at spot, text string) bool {
	if _, err := timber.FindFastener(text); err == nil {
		return true
	}
	var ids []string
	for _, f := range timber.Fasteners() {
		ids = append(ids, f.ID)
	}
	d.complain(at, describe(text)+" is no screw of the tables", oneOf(text, ids))
	return false
}
