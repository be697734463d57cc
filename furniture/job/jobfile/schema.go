package jobfile

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
	"sync"

	"bunkwright/furniture/job"
)

// A table is what one table of the file may hold, worked out from the tags of the record and the table of keys.
type table struct {
	path   string // "wall.stud"; "" for the whole file
	fields []*field
	byKey  map[string]*field
	name   *field // the key that names an element of a list; nil where there is none
}

// A field is one key of a table and the place in the record where its value goes.
type field struct {
	key   string // "at"
	path  string // "wall.stud.at"
	index []int
	row   Row
	place int // in the table of keys
	tag   reflect.StructTag
	words []string
	form  form
	kind  kind   // reads and writes its value, nil for tables and lists
	sub   *table // of a table or of each element of a list
}

// form says how a field stands in the file.
type form int

const (
	single   form = iota
	section       // a table that is always there in the record
	optional      // a table that may be missing: a pointer
	list          // any number of tables
	answers       // a table whose keys are not known beforehand
	verbatim      // tables kept as they are written
)

// whole is the table of the whole file; readings is the inline table of one reading.
var (
	whole    = sync.OnceValue(func() *table { return newTable("", reflect.TypeFor[job.Job]()) })
	readings = sync.OnceValue(func() *table {
		t := newTable("reading", readingType)
		t.byKey["read"].kind = readKind{}
		return t
	})
	stocks = sync.OnceValue(func() *table { return newTable("stock", reflect.TypeFor[soldStock]()) })
)

// newTable works out the table of a struct, its fields in the order of the table of keys.
func newTable(path string, t reflect.Type) *table {
	out := &table{path: path, byKey: map[string]*field{}}
	out.collect(t, nil)
	slices.SortStableFunc(out.fields, func(a, b *field) int { return a.place - b.place })
	for _, f := range out.fields {
		if _, twice := out.byKey[f.key]; twice {
			panic("jobfile: two fields for " + f.path)
		}
		out.byKey[f.key] = f
	}
	for _, name := range []string{"key", "name", "question"} {
		if f := out.byKey[name]; f != nil && path != "" && out.name == nil {
			out.name = f
		}
	}
	return out
}

// collect adds the fields of a struct. An embedded struct lends its fields; the lists and tables of the room stand beside [room], not
// inside it: a hand-written file starts its walls with [[wall]].
func (t *table) collect(s reflect.Type, index []int) {
	for i := range s.NumField() {
		sf := s.Field(i)
		key := sf.Tag.Get("file")
		at := append(slices.Clone(index), i)
		switch {
		case key == "-":
		case key == "" && sf.Anonymous:
			t.collect(sf.Type, at)
		case key == "":
			panic(fmt.Sprintf("jobfile: %s.%s has no file tag", s, sf.Name))
		case t.path == roomTable && formOf(sf.Type) != single:
		default:
			t.add(sf, key, at)
		}
		if t.path == "" && key == roomTable {
			t.lift(sf.Type, at)
		}
	}
}

const roomTable = "room"

// lift puts the tables and lists of the room beside it.
func (t *table) lift(s reflect.Type, index []int) {
	for i := range s.NumField() {
		if sf := s.Field(i); formOf(sf.Type) != single {
			t.add(sf, sf.Tag.Get("file"), append(slices.Clone(index), i))
		}
	}
}

func (t *table) add(sf reflect.StructField, key string, index []int) {
	f := &field{key: key, path: join(t.path, key), index: index, tag: sf.Tag, form: formOf(sf.Type)}
	f.row, f.place, _ = rowsOnce().row(f.path)
	f.words = wordsOf(sf)
	switch f.form {
	case single:
		f.kind = kindOf(sf.Type)
	case section:
		f.sub = newTable(f.path, sf.Type)
	case optional, list:
		f.sub = newTable(f.path, sf.Type.Elem())
	}
	t.fields = append(t.fields, f)
}

func formOf(t reflect.Type) form {
	switch {
	case kindOf(t) != nil:
		return single
	case t.Kind() == reflect.Struct:
		return section
	case t.Kind() == reflect.Pointer:
		return optional
	case t.Kind() == reflect.Map:
		return answers
	case t.Elem().Kind() == reflect.Map:
		return verbatim
	}
	return list
}

// wordsOf returns the words that a field may be: of its tag, or of its type.
func wordsOf(sf reflect.StructField) []string {
	if text := sf.Tag.Get("words"); text != "" {
		return strings.Split(text, "|")
	}
	return typeWords[sf.Type]
}

func join(path, key string) string {
	if path == "" {
		return key
	}
	return path + "." + key
}
