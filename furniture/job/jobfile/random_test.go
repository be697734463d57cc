package jobfile

import (
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"pgregory.net/rapid"

	"bunkwright/furniture"
	"bunkwright/furniture/job"
	"bunkwright/furniture/timber"
	"bunkwright/room"
	"bunkwright/room/length"
)

// maker makes random jobs that a file may hold.
type maker struct {
	*rapid.T
	walls []string
	wall  string
}

func (m *maker) flip() bool { return rapid.Bool().Draw(m.T, "set") }

// randomJob makes a job in an oblong room, or in an L without lengths of walls: lengths at random would make its walls cross.
func randomJob(t *rapid.T) *job.Job {
	m := &maker{T: t, walls: []string{"AB", "BC", "CD", "DA"}}
	j := &job.Job{}
	l := rapid.Bool().Draw(t, "L")
	if l {
		m.walls = []string{"AB", "BC", "CD", "DE", "EF", "FA"}
	}
	m.table(whole(), reflect.ValueOf(j).Elem())
	j.Format = 1
	j.Unit = rapid.SampledFrom([]string{"in", "mm"}).Draw(t, "unit")
	j.Room.Outline = "ABCD"
	j.Room.Corners = nil
	if l {
		j.Room.Outline = "ABCDEF"
		j.Room.Corners = []room.Corner{{Key: "D", Inside: 270}, {Key: "B", Square: "no"}}
		for i := range j.Room.Walls {
			j.Room.Walls[i].Length = nil
		}
	}
	m.comments(j)
	return j
}

func (m *maker) table(t *table, v reflect.Value) {
	for _, f := range t.fields {
		if f.row.Default != Required && !m.flip() {
			continue
		}
		dst := v.FieldByIndex(f.index)
		switch f.form {
		case single:
			m.single(f, dst)
		case section:
			m.inTable(f, dst)
		case optional:
			dst.Set(reflect.New(dst.Type().Elem()))
			m.table(f.sub, dst.Elem())
		case list:
			m.list(f, dst)
		case answers:
			dst.Set(reflect.ValueOf(map[string]string{job.ConfirmIDs()[0]: "yes", job.ConfirmIDs()[3]: "no"}))
		case verbatim:
			dst.Set(reflect.ValueOf([]map[string]any{m.anything(2).(map[string]any)}))
		}
	}
}

func (m *maker) list(f *field, dst reflect.Value) {
	n := rapid.IntRange(1, 3).Draw(m.T, "n")
	switch f.path {
	case "corner":
		return
	case "diagonal":
		n = min(n, 2)
	}
	dst.Set(reflect.MakeSlice(dst.Type(), n, n))
	for i := range n {
		if f.path == "wall" {
			m.wall = m.walls[i]
		}
		m.inTable(f, dst.Index(i))
		if own := f.sub.name; own != nil && dst.Index(i).FieldByIndex(own.index).String() != "" {
			dst.Index(i).FieldByIndex(own.index).SetString(m.name(own.row.Unit, i))
		}
	}
}

// inTable makes a table, all of it at one wall.
func (m *maker) inTable(f *field, dst reflect.Value) {
	if f.sub.byKey["wall"] != nil {
		m.wall = rapid.SampledFrom(m.walls).Draw(m.T, "wall")
	}
	m.table(f.sub, dst)
}

// name makes names that differ from each other and from the places in the list.
func (m *maker) name(u Unit, i int) string {
	switch u {
	case WallKey:
		return m.walls[i]
	case CornerPair:
		return []string{"AC", "BD"}[i]
	}
	return fmt.Sprintf("no %d", i+1)
}

func (m *maker) single(f *field, dst reflect.Value) {
	switch dst.Interface().(type) {
	case length.Length:
		dst.SetInt(int64(m.length(1)))
	case job.Maybe:
		dst.Set(reflect.ValueOf(job.Maybe{Value: m.length(0), Set: true}))
	case []length.Length:
		dst.Set(reflect.ValueOf([]length.Length{m.length(0), m.length(0)}))
	case room.Measure:
		dst.Set(reflect.ValueOf(m.measure(f)))
	case furniture.Stock:
		dst.Set(reflect.ValueOf(m.stock()))
	case []string:
		words := room.AbsentWords
		if f.row.Unit == Places {
			words = job.PlaceNames()
		}
		dst.Set(reflect.ValueOf(slices.Clone(words[:rapid.IntRange(1, len(words)).Draw(m.T, "words")])))
	case bool:
		dst.SetBool(true)
	case int:
		dst.SetInt(int64(rapid.IntRange(1, 2).Draw(m.T, "count")))
	case float64:
		dst.SetFloat(rapid.Float64Range(0.001, 119).Draw(m.T, "number"))
	default:
		dst.SetString(m.text(f))
	}
}

func (m *maker) text(f *field) string {
	switch f.row.Unit {
	case Word:
		return rapid.SampledFrom(f.words).Draw(m.T, "word")
	case WallKey:
		if f.key == "wall" && m.wall != "" {
			return m.wall
		}
		return rapid.SampledFrom(m.walls).Draw(m.T, "wall")
	case WallEnd:
		if m.wall == "" {
			return "A"
		}
		return m.wall[1:]
	case CornerKey:
		return "B"
	case Corners:
		return "ABD"
	case CornerPair:
		return "AC"
	case Fastener:
		return timber.Fasteners()[3].ID
	case Date:
		return rapid.SampledFrom([]string{"", "2027-06-02", "2028-02-29"}).Draw(m.T, "day")
	case StudKey: // named only where a stud bears the name
		return ""
	}
	text := rapid.String().Draw(m.T, "text")
	if text == "" && f.row.Default == Required {
		return "x"
	}
	return text
}

// length makes lengths from least nm: whole 64ths of an inch, tenths of a millimetre, or any number of nanometres.
func (m *maker) length(least int64) length.Length {
	unit := rapid.SampledFrom([]length.Length{length.Inch / 64, length.Inch / 100, length.Millimetre / 10, 1}).Draw(m.T, "step")
	return unit * length.Length(rapid.Int64Range(least, int64(10_000*length.Millimetre/unit)).Draw(m.T, "length"))
}

func (m *maker) measure(f *field) room.Measure {
	least := int64(1)
	if f.row.Unit == FromZero {
		least = 0
	}
	var out room.Measure
	for range rapid.IntRange(1, 3).Draw(m.T, "readings") {
		r := room.Reading{Value: m.length(least)}
		if m.flip() {
			m.table(readings(), reflect.ValueOf(&r).Elem())
			r.Value = m.length(least)
			r.Light = rapid.SampledFrom([]int{0, 2, -2}).Draw(m.T, "light")
		}
		out = append(out, r)
	}
	return out
}

func (m *maker) stock() furniture.Stock {
	thick := m.length(1) % (100 * length.Millimetre)
	s := furniture.Stock{Name: rapid.SampledFrom([]string{"", "2x4", "45x95 mm", "45x95", "1-1/2 x 5-1/2 in", "plywood 1/2 in", "shop board"}).Draw(m.T, "name")}
	switch same, fault := named(s.Name, length.Inches); {
	case fault == "" && m.flip():
		return same
	case m.flip():
		s.Thick, s.Sheet = thick+1, true
	default:
		s.Thick, s.Wide = thick+1, thick+1+m.length(0)%(900*length.Millimetre)
	}
	return s
}

// anything makes a table, list or value that a later version might write.
func (m *maker) anything(deep int) any {
	if deep == 2 || deep > 0 && m.flip() {
		out := map[string]any{}
		for range rapid.IntRange(0, 3).Draw(m.T, "keys") {
			out[rapid.StringN(0, 5, 20).Draw(m.T, "key")] = m.anything(deep - 1)
		}
		return out
	}
	switch rapid.IntRange(0, 4).Draw(m.T, "sort") {
	case 0:
		return rapid.Int64().Draw(m.T, "int")
	case 1:
		return rapid.Float64().Draw(m.T, "float")
	case 2:
		return m.flip()
	case 3:
		return []any{m.anything(0), "x"}
	}
	return rapid.String().Draw(m.T, "text")
}

// comments puts comments at some of the keys that are written.
func (m *maker) comments(j *job.Job) {
	w := newWriter(j)
	w.whole(j)
	line := rapid.StringMatching(`[a-zä #"=\[\]]{0,12}[a-z#]`)
	for i, key := range slices.Sorted(maps.Keys(w.keys)) {
		if i%5 == 0 && w.keys[key] && m.flip() {
			lines := rapid.SliceOfN(line, 1, 2).Draw(m.T, "comment")
			if j.Comments == nil {
				j.Comments = map[string]string{}
			}
			j.Comments[key] = strings.Join(lines, "\n") + strconv.Itoa(i)
		}
	}
}
