package length_test

import (
	"encoding/csv"
	"fmt"
	"math/big"
	"os"
	"strings"
	"testing"

	"bunkwright/room/length"
)

// notation is a row of testdata/notations.csv.
type notation map[string]string

func notations(tb testing.TB) []notation { return table(tb, "testdata/notations.csv") }

// table reads a file of comma separated values below a header, without its comment lines.
func table(tb testing.TB, name string) []notation {
	tb.Helper()
	f, err := os.Open(name)
	if err != nil {
		tb.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		tb.Fatal(err)
	}
	var out []notation
	for _, row := range rows[1:] {
		n := notation{}
		for i, key := range rows[0] {
			n[key] = row[i]
		}
		out = append(out, n)
	}
	return out
}

// context of a row: "length, neighbours 5.5 to 6.5 in" is a plain length with two neighbours.
func (n notation) context(tb testing.TB) length.Context {
	tb.Helper()
	unit, err := length.ParseUnit(n["project_unit"])
	if err != nil {
		tb.Fatal(err)
	}
	name, near, _ := strings.Cut(n["field"], ", ")
	field, err := length.ParseField(name)
	if err != nil {
		tb.Fatal(err)
	}
	c := length.Context{Unit: unit, Field: field}
	if near != "" {
		var low, high float64
		if _, err := fmt.Sscanf(near, "neighbours %g to %g in", &low, &high); err != nil {
			tb.Fatal(err)
		}
		c.Near = []length.Length{length.FromMM(low * 25.4), length.FromMM(high * 25.4)}
	}
	return c
}

// nanometres of num/den in the row's unit, by rational arithmetic; 0 where the row has none.
func (n notation) nanometres(tb testing.TB, num, den string) length.Length {
	tb.Helper()
	if n[num] == "" {
		return 0
	}
	v, ok := new(big.Rat).SetString(n[num] + "/" + n[den])
	scale := map[string]int64{"in": 25_400_000, "mm": 1_000_000}[n["unit"]]
	v.Mul(v, big.NewRat(scale, 1))
	if !ok || !v.IsInt() || scale == 0 {
		tb.Fatalf("%s: %s/%s %s is no whole number of nanometres", n["id"], n[num], n[den], n["unit"])
	}
	return length.Length(v.Num().Int64())
}

func TestNotations(t *testing.T) {
	rows := notations(t)
	if len(rows) != 146 {
		t.Fatalf("%d rows, want 146", len(rows))
	}
	for _, n := range rows {
		t.Run(n["id"], func(t *testing.T) {
			got := length.Read(n["text"], n.context(t))
			note := "0"
			if n["note_64ths"] != "" {
				note = n["note_64ths"]
			}
			want := fmt.Sprintln(n["outcome"], n.nanometres(t, "num", "den"), n.nanometres(t, "second_num", "second_den"), note)
			if have := fmt.Sprintln(got.Outcome, got.Value, got.Second, got.Note64); have != want {
				t.Errorf("%q: %s, want %s (%s)", n["text"], have, want, n["reason"])
			}
			if n["outcome"] != "value" {
				checkWords(t, n["text"], got, n["rule"])
			}
		})
	}
}

// checkWords holds what a question or a refusal must have besides its outcome.
func checkWords(t *testing.T, text string, got length.Reading, rule string) {
	t.Helper()
	if got.Rule != rule {
		t.Errorf("%q: rule %s, want %s", text, got.Rule, rule)
	}
	if got.Reason == "" || got.Value != 0 || got.Second != 0 {
		t.Errorf("%q: want a reason and no value: %+v", text, got)
	}
	if (got.Outcome == length.Ask) != strings.HasSuffix(got.Question, "?") {
		t.Errorf("%q: want a question exactly where it is asked: %+v", text, got)
	}
}

// TestEveryRuleHasRows: the rules that the code names are those of testdata/notation_rules.csv, and each but R19 has several
// rows.
func TestEveryRuleHasRows(t *testing.T) {
	count := map[string]int{}
	for _, n := range notations(t) {
		count[n["rule"]]++
	}
	rules := table(t, "testdata/notation_rules.csv")
	for _, r := range rules {
		if n := count[r["rule"]]; n == 0 || n < 2 && r["rule"] != "R19" {
			t.Errorf("%s has %d rows", r["rule"], n)
		}
		delete(count, r["rule"])
	}
	if len(rules) != 19 || len(count) != 0 {
		t.Errorf("%d rules; rows of no rule: %v", len(rules), count)
	}
}
