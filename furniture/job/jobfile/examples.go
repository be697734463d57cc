package jobfile

import (
	"strings"
	"sync"

	"bunkwright/room/length"
)

// suchAs shows the example of a key, in the unit of the job.
func (d *decoder) suchAs(f *field) string {
	return "such as " + inUnit(f.row, d.unit)
}

// inUnit returns the example of a row with its length in mm where the job is in mm.
func inUnit(r Row, u length.Unit) string {
	head, quoted, ok := strings.Cut(r.Example, `"`)
	text, tail, closed := strings.Cut(quoted, `"`)
	if u != length.Millimetres || !ok || !closed {
		return r.Example
	}
	switch r.Unit {
	case Size, FromZero, WallLength, RoomHeight:
	default:
		return r.Example
	}
	l, err := length.Parse(text, length.Context{Unit: length.Inches})
	if err != nil {
		return r.Example
	}
	return head + quote(length.Exact(l.Round(length.Millimetre, length.Nearest), u)) + tail
}

// listPaths holds the tables that may stand several times.
var listPaths = sync.OnceValue(func() map[string]bool {
	out := map[string]bool{}
	whole().each(func(_ *table, f *field) {
		if f.form == list || f.form == verbatim {
			out[f.path] = true
		}
	})
	return out
})

// each calls f with every field of a table and of the tables in it.
func (t *table) each(f func(*table, *field)) {
	for _, one := range t.fields {
		f(t, one)
		if one.sub != nil {
			one.sub.each(f)
		}
	}
}

// tablesWith names the tables that have a key, "" where none or too many have it.
func tablesWith(key string) string {
	var names []string
	whole().each(func(t *table, f *field) {
		switch {
		case f.key == key && t.path == "":
			names = append(names, "the top of the file, before the first [table]")
		case f.key == key:
			names = append(names, t.String())
		}
	})
	if len(names) > 3 {
		return ""
	}
	return anyOf(names)
}
