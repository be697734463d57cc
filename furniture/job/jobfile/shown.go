package jobfile

import (
	"reflect"
	"strconv"
	"strings"

	"bunkwright/furniture"
	"bunkwright/furniture/job"
	"bunkwright/room"
	"bunkwright/room/length"
)

// Shown returns a key of a job as a field shows it and Set takes it; "" where it is not set or the job does not have it. Lengths are in
// tape notation or mm, by the unit of the job.
func Shown(j *job.Job, key string) string {
	t, v, path := whole(), reflect.ValueOf(j).Elem(), strings.Split(key, ".")
	for {
		f := t.byKey[path[0]]
		if f == nil {
			return ""
		}
		at, rest := v.FieldByIndex(f.index), path[1:]
		switch {
		case f.form == single:
			return shown(f, at, rest, unitOf(j))
		case f.form == answers && len(rest) == 1:
			return at.Interface().(map[string]string)[rest[0]]
		}
		if at, path = within(f, at, rest); path == nil {
			return ""
		}
		t, v = f.sub, at
	}
}

// within goes one table down; no path where there is no such table.
func within(f *field, v reflect.Value, path []string) (reflect.Value, []string) {
	switch {
	case len(path) == 0:
	case f.form == section:
		return v, path
	case f.form == optional && !v.IsNil():
		return v.Elem(), path
	case f.form == list && len(path) > 1:
		if i := element(f, v, path[0]); i >= 0 {
			return v.Index(i), path[1:]
		}
	}
	return v, nil
}

func unitOf(j *job.Job) length.Unit {
	if unit, err := length.ParseUnit(j.Unit); err == nil {
		return unit
	}
	return length.Millimetres
}

func shown(f *field, v reflect.Value, rest []string, u length.Unit) string {
	if m, ok := v.Interface().(room.Measure); ok {
		return shownReading(m, rest, u)
	}
	if len(rest) > 0 || v.IsZero() && f.words == nil {
		return ""
	}
	switch x := v.Interface().(type) {
	case length.Length:
		return ShownLength(x, u)
	case job.Maybe:
		return ShownLength(x.Value, u)
	case []length.Length:
		var items []string
		for _, l := range x {
			items = append(items, ShownLength(l, u))
		}
		return strings.Join(items, ", ")
	case []string:
		return strings.Join(x, ", ")
	case furniture.Stock:
		return shownStock(x, u)
	case bool:
		if f.words != nil && x {
			return f.words[1]
		} else if f.words != nil {
			return f.words[0]
		}
		return strconv.FormatBool(x)
	case int:
		return strconv.Itoa(x)
	case float64:
		return strconv.FormatFloat(x, 'g', -1, 64)
	}
	return v.String()
}

// ShownLength writes a length as a tape shows it where that is exact, else exactly.
func ShownLength(l length.Length, u length.Unit) string {
	text := length.Format(l, length.Style{Unit: u})
	if back, err := length.Parse(text, length.Context{Unit: u}); err == nil && back == l {
		return text
	}
	return length.Exact(l, u)
}

// shownReading is the first reading, the one of a number, or what is said beside that.
func shownReading(m room.Measure, rest []string, u length.Unit) string {
	i := 0
	if len(rest) > 0 {
		n, err := strconv.Atoi(rest[0])
		if err != nil {
			return ""
		}
		i = n - 1
	}
	switch {
	case i < 0 || i >= len(m) || len(rest) > 2:
		return ""
	case len(rest) == 2:
		if f := readings().byKey[rest[1]]; f != nil && rest[1] != "read" {
			return shown(f, reflect.ValueOf(m[i]).FieldByIndex(f.index), nil, u)
		}
		return ""
	}
	return ShownLength(m[i].Value, u) + remarks[m[i].Light]
}

// shownStock is the name of a stock where the name says its size, else its name and what it really measures: "2x4 = 1-7/16 x 3-7/16 in".
func shownStock(s furniture.Stock, u length.Unit) string {
	if same, fault := named(s.Name, u); fault == "" && same == s {
		return s.Name
	}
	actual := length.Exact(s.Thick, u)
	if !s.Sheet {
		actual = (&writer{unit: u}).across(s)
	}
	if s.Name == "" {
		return actual
	}
	return s.Name + " = " + actual
}
