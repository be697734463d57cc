package jobfile

import (
	"reflect"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/room"
	"bunkwright/room/length"
)

// A kind reads one sort of value into the record and writes it again.
type kind interface {
	// read complains of what it cannot read and leaves dst as it is.
	read(d *decoder, at spot, v any, dst reflect.Value)
	// write returns the value as text; set is false where it is what a missing key means.
	write(w *writer, f *field, v reflect.Value) (text string, set bool)
}

var readingType = reflect.TypeFor[room.Reading]()

var kinds = map[reflect.Type]kind{
	reflect.TypeFor[length.Length]():   lengthKind{},
	reflect.TypeFor[job.Maybe]():       maybeKind{},
	reflect.TypeFor[[]length.Length](): lengthsKind{},
	reflect.TypeFor[room.Measure]():    measureKind{},
	reflect.TypeFor[furniture.Stock](): stockKind{},
	reflect.TypeFor[[]string]():        textsKind{},
}

// kindOf returns the kind of a type, nil for what is a table or a list of them.
func kindOf(t reflect.Type) kind {
	if k, ok := kinds[t]; ok {
		return k
	}
	switch t.Kind() {
	case reflect.String:
		return textKind{}
	case reflect.Bool:
		return boolKind{}
	case reflect.Int:
		return countKind{}
	case reflect.Float64:
		return numberKind{}
	}
	return nil
}

// typeWords are the words of types that have a list of them.
var typeWords = map[reflect.Type][]string{
	reflect.TypeFor[room.How]():        plainWords(room.Hows),
	reflect.TypeFor[job.Turn]():        plainWords(job.Turns),
	reflect.TypeFor[bunk.End]():        {string(bunk.Left), string(bunk.Right)},
	reflect.TypeFor[bunk.GapSetting](): {string(bunk.ByEye), string(bunk.BySpacer)},
}

func plainWords[W ~string](words []W) []string {
	var out []string
	for _, w := range words {
		out = append(out, string(w))
	}
	return out
}
