package survey

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"
)

// record is one line of a data file, by column name.
type record map[string]string

func (r record) float(t *testing.T, column string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(r[column], 64)
	if err != nil {
		t.Fatalf("%v: %s is not a number", r, column)
	}
	return v
}

// readRecords reads a data file of testdata: comment lines, a header, records.
func readRecords(t testing.TB, name string) []record {
	t.Helper()
	f, err := os.Open("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	lines, err := r.ReadAll()
	if err != nil || len(lines) < 2 {
		t.Fatalf("%s: no records: %v", name, err)
	}
	records := make([]record, len(lines)-1)
	for i, line := range lines[1:] {
		records[i] = record{}
		for k, column := range lines[0] {
			records[i][column] = line[k]
		}
	}
	return records
}

// readCases reads a case file and leaves the rows whose topic is in the list; it fails if one topic has none.
func readCases(t *testing.T, name string, topics ...string) []record {
	t.Helper()
	var cases []record
	found := map[string]bool{}
	for _, r := range readRecords(t, name) {
		for _, topic := range topics {
			if r["topic"] == topic {
				cases = append(cases, r)
				found[topic] = true
			}
		}
	}
	if len(found) != len(topics) {
		t.Fatalf("%s: rows found only for %v", name, found)
	}
	return cases
}

// inputs splits key=value;key=value. A value that itself holds "=" is kept whole.
func (r record) inputs() record {
	in := record{}
	for _, part := range strings.Split(r["inputs"], ";") {
		key, value, _ := strings.Cut(part, "=")
		in[key] = value
	}
	return in
}

// compare holds a computed number against the row, by its tolerance and the kind of it.
func (r record) compare(t *testing.T, got float64) {
	t.Helper()
	want, tolerance := r.float(t, "expected"), r.float(t, "tolerance")
	ok := false
	switch r["tolerance_kind"] {
	case "abs":
		ok = math.Abs(got-want) <= tolerance
	case "rel":
		ok = math.Abs(got-want) <= tolerance*math.Abs(want)
	case "ceil":
		ok = math.Ceil(got/tolerance)*tolerance == want
	}
	if !ok {
		t.Errorf("%s %s: got %.9g, want %s within %s (%s)", r["id"], r["inputs"], got, r["expected"], r["tolerance"], r["source"])
	}
}

// compareText holds a computed word against the row.
func (r record) compareText(t *testing.T, got string) {
	t.Helper()
	if got != r["expected"] {
		t.Errorf("%s %s: got %q, want %q", r["id"], r["inputs"], got, r["expected"])
	}
}

// numbers reads "1,2,3".
func (r record) numbers(t *testing.T, column string) []float64 {
	t.Helper()
	var list []float64
	for _, part := range strings.Split(r[column], ",") {
		list = append(list, record{"": part}.float(t, ""))
	}
	return list
}
