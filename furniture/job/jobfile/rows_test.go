package jobfile

import (
	"reflect"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/room/survey"
)

// tagged collects every file tag under a struct by walking its types, without the help of the tables under test.
func tagged(t reflect.Type, path string, out map[string]reflect.StructField) {
	for i := range t.NumField() {
		f := t.Field(i)
		key := f.Tag.Get("file")
		here := path
		if key == "-" {
			continue
		}
		if key != "" {
			here = strings.TrimPrefix(strings.TrimPrefix(path+"."+key, "."), "room.")
			if path == "room" && reflect.Struct != f.Type.Kind() && (f.Type.Kind() != reflect.Slice || f.Type.Elem().Kind() != reflect.Struct) {
				here = "room." + key
			}
			out[here] = f
		}
		inner := f.Type
		for inner.Kind() == reflect.Pointer || inner.Kind() == reflect.Slice {
			inner = inner.Elem()
		}
		switch {
		case inner == reflect.TypeFor[furniture.Stock](), inner == reflect.TypeFor[job.Maybe](), inner == readingType:
		case inner.Kind() == reflect.Struct:
			tagged(inner, here, out)
		}
	}
}

// TestEveryTagHasARow holds the tags of the record against the table of keys, both ways.
func TestEveryTagHasARow(t *testing.T) {
	tags := map[string]reflect.StructField{}
	tagged(reflect.TypeFor[job.Job](), "", tags)
	tagged(readingType, "reading", tags)
	tagged(reflect.TypeFor[soldStock](), "stock", tags)
	tags["reading"], tags["stock"] = reflect.StructField{}, reflect.StructField{}
	tags["another.name"], tags["another.without"] = reflect.StructField{}, reflect.StructField{}
	if len(tags) < 250 {
		t.Errorf("%d tags found: the walk misses some", len(tags))
	}
	for key := range tags {
		if _, _, ok := rowsOnce().row(key); !ok {
			t.Errorf("tag %s has no row", key)
		}
	}
	for _, r := range rowsOnce().rows {
		if _, ok := tags[r.Key]; !ok && !strings.HasPrefix(r.Key, anyTable) {
			t.Errorf("row %s has no tag", r.Key)
		}
	}
}

// TestRowsAreWhole looks for rows that say nothing, and for words that are no words of the record.
func TestRowsAreWhole(t *testing.T) {
	for _, r := range Keys() {
		if r.Meaning == "" || r.Unit == "" || r.Example == "" {
			t.Errorf("row %s lacks its meaning, unit or example", r.Key)
		}
		if (r.Unit == Word) != (len(r.Words) > 0) {
			t.Errorf("row %s: unit %s, words %v", r.Key, r.Unit, r.Words)
		}
	}
}

// TestDefaultsOfTheRecord finds every default that stands in a tag of the room or in the list of the bed in the printed rows.
func TestDefaultsOfTheRecord(t *testing.T) {
	rows := map[string]Row{}
	for _, r := range Keys() {
		rows[r.Key] = r
	}
	for _, d := range bunk.Defaults() {
		r, ok := rows[d.Key]
		if !ok || r.Default != d.Value() {
			t.Errorf("%s: default %q, the bed takes %q", d.Key, r.Default, d.Value())
		}
	}
	tags := map[string]reflect.StructField{}
	tagged(reflect.TypeFor[job.Job](), "", tags)
	for key, f := range tags {
		if _, _, ok := survey.Default(f.Tag); ok && !strings.HasPrefix(rows[key].Default, f.Tag.Get("assume")) {
			t.Errorf("%s: default %q, the survey takes %s", key, rows[key].Default, f.Tag.Get("assume"))
		}
	}
	// The figures of how_known.csv and the heights of room.ReadAt, written out in the table.
	for key, want := range map[string]string{
		"readings.u_mine": "1/16 in", "readings.u_twice": "1/16 in", "readings.u_once": "1/8 in", "readings.u_photo": "1/2 in",
		"readings.u_told": "1 in", "readings.u_assumed": "3 in", "room.low": "150 mm", "room.middle": "1200 mm", "room.high": "2100 mm",
	} {
		if rows[key].Default != want {
			t.Errorf("%s: default %q, want %q", key, rows[key].Default, want)
		}
	}
}

// needs are the lines that a table may not lack, and those that the examples in it lean on.
var needs = map[string][]string{
	"": {"format = 1", `unit = "in"`}, "room": {`outline = "ABCD"`}, "corner": {`key = "C"`}, "wall": {`key = "AB"`}, "diagonal": {`key = "AC"`},
	"accepted": {`question = "air"`, `reason = "kept open by hand"`},
	"replaced": {`reading = "wall.AB.length"`, `was = "11 ft"`, `why = "a foot dropped"`},
}

// around puts the example of a row into the least file that it may stand in.
func around(r Row) string {
	table, key := "", r.Key
	if cut := strings.LastIndexByte(r.Key, '.'); cut >= 0 {
		table, key = r.Key[:cut], r.Key[cut+1:]
	}
	header := strings.HasPrefix(r.Example, "[")
	switch {
	case header:
		table, key = r.Key, ""
	case table == "reading" || r.Key == "reading":
		table = "wall"
	case table == "stock" || r.Key == "stock":
		table = "bed"
	case table == "*":
		table = ""
	}
	var b strings.Builder
	done := map[string]bool{}
	parts := strings.Split(table, ".")
	for _, t := range []string{"", "room", parts[0], table} {
		if done[t] {
			continue
		}
		done[t] = true
		b.WriteString(headerLine(t))
		lines := needs[t]
		if _, there := rowsOnce().at[t+".wall"]; there && t != "" {
			lines = append(lines, rowsOnce().rows[rowsOnce().at[t+".wall"]].Example)
		}
		for _, line := range lines {
			if before, _, _ := strings.Cut(line, " "); t != table || before != key {
				b.WriteString(line + "\n")
			}
		}
		if t == table && !header {
			b.WriteString(r.Example + "\n")
		}
	}
	if key == "spacing_from" {
		b.WriteString("[[wall.stud]]\nat = \"2 ft\"\n")
	}
	return b.String()
}

func headerLine(table string) string {
	switch {
	case table == "":
		return ""
	case listPaths()[table]:
		return "[[" + table + "]]\n"
	}
	return "[" + table + "]\n"
}

// TestExamplesLoad loads the example of every row and finds its key.
func TestExamplesLoad(t *testing.T) {
	for _, r := range Keys() {
		text := around(r)
		f, err := Load([]byte(text), "example.toml")
		if err != nil {
			t.Errorf("%s: %v\n%s", r.Key, err, text)
			continue
		}
		if again, err := Load(Encode(&f.Job), "again.toml"); err != nil || !cmp.Equal(f.Job, again.Job) {
			t.Errorf("%s: does not come back: %v %s", r.Key, err, cmp.Diff(f.Job, again.Job))
		}
		plain := strings.Replace(text, r.Example+"\n", "", 1)
		if p, err := Load([]byte(plain), "plain.toml"); err == nil && string(Encode(&p.Job)) == string(Encode(&f.Job)) && !quiet(r) {
			t.Errorf("%s: the example %s changes nothing", r.Key, r.Example)
		}
	}
}

// quiet rows bring in a table that may be empty.
func quiet(r Row) bool { return r.Unit == Table || r.Unit == Answers }
