package phone

import (
	"encoding/csv"
	"encoding/json"
	"fmt"
	"math/big"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/google/go-cmp/cmp"

	"bunkwright/room/length"
)

// asked is a text and what is known about it.
type asked struct {
	Text  string   `json:"text"`
	Unit  string   `json:"unit"`
	Field string   `json:"field"`
	Near  []string `json:"near"` // nanometres
}

// answered is a reading the way the browser writes it, its lengths in nanometres.
type answered struct {
	Outcome, Value, Second, Question, Reason, Rule string
	Note64                                         int
	Offers                                         []string
}

// harness opens nothing but the reader, and puts one function where the test can call it.
const harness = `<!DOCTYPE html><meta charset="utf-8"><script>(() => { 'use strict'
%s
globalThis.answers = cases => cases.map(c => {
  const got = read(c.text, {unit: c.unit, field: c.field, near: c.near.map(BigInt)})
  return Object.assign(got, {value: String(got.value), second: String(got.second), offers: got.choices.map(c => String(c.length)), choices: null})
})
})()</script>`

// inBrowser reads the texts with the form's own reader.
func inBrowser(t *testing.T, cases []asked) []answered {
	t.Helper()
	page := filepath.Join(t.TempDir(), "reader.html")
	if err := os.WriteFile(page, fmt.Appendf(nil, harness, lean(readerFiles...)), 0o600); err != nil {
		t.Fatal(err)
	}
	data, err := json.Marshal(cases)
	if err != nil {
		t.Fatal(err)
	}
	w := open(t, t.TempDir())
	w.do(chromedp.Navigate("file://" + page))
	return get(w, chromedp.Evaluate[[]answered]("answers("+string(data)+")"))
}

// here reads a text with the program's reader.
func (a asked) here(t *testing.T) answered {
	t.Helper()
	unit, err := length.ParseUnit(a.Unit)
	if err != nil && a.Unit != "" {
		t.Fatal(err)
	}
	c := length.Context{Unit: unit, Field: length.Field(a.Field)}
	for _, n := range a.Near {
		var nm int64
		if _, err := fmt.Sscan(n, &nm); err != nil {
			t.Fatal(err)
		}
		c.Near = append(c.Near, length.Length(nm))
	}
	r := length.Read(a.Text, c)
	out := answered{Outcome: r.Outcome.String(), Value: nm(r.Value), Second: nm(r.Second), Question: r.Question,
		Reason: r.Reason, Rule: r.Rule, Note64: r.Note64, Offers: []string{}}
	for _, o := range r.Offers {
		out.Offers = append(out.Offers, nm(o))
	}
	return out
}

func nm(l length.Length) string { return fmt.Sprint(int64(l)) }

// TestNotations: the form's reader passes every row of notations.csv (our rules R1 to R19; HABS recording guideline 3.1.4).
func TestNotations(t *testing.T) {
	t.Parallel()
	rows := notations(t)
	if len(rows) != 146 {
		t.Fatalf("%d rows, want 146", len(rows))
	}
	var cases []asked
	for _, n := range rows {
		cases = append(cases, n.asked(t))
	}
	for i, got := range inBrowser(t, cases) {
		n := rows[i]
		want := fmt.Sprintln(n["outcome"], n.nanometres(t, "num", "den"), n.nanometres(t, "second_num", "second_den"), n.note())
		if have := fmt.Sprintln(got.Outcome, got.Value, got.Second, got.Note64); have != want {
			t.Errorf("%s %q: %s, want %s (%s)", n["id"], n["text"], have, want, n["reason"])
		}
		if n["outcome"] != "value" && got.Rule != n["rule"] {
			t.Errorf("%s %q: rule %s, want %s", n["id"], n["text"], got.Rule, n["rule"])
		}
	}
}

// TestReadersAgree: on texts nobody thought of, the form understands what the program will read from its reply, word for word.
func TestReadersAgree(t *testing.T) {
	t.Parallel()
	random := rand.New(rand.NewPCG(1, 64))
	var seeds []string
	for _, n := range notations(t) {
		seeds = append(seeds, n["text"])
	}
	var cases []asked
	for range 4000 {
		cases = append(cases, randomAsked(random, seeds))
	}
	count := map[string]int{}
	for i, got := range inBrowser(t, cases) {
		want := cases[i].here(t)
		count[want.Outcome]++
		if diff := cmp.Diff(want, got); diff != "" {
			t.Errorf("%q in %+v: the program and the form differ:\n%s", cases[i].Text, cases[i], diff)
		}
	}
	for _, outcome := range []string{"value", "ask", "refuse"} {
		if count[outcome] < 400 {
			t.Errorf("of 4000 texts only %d end in %s: the texts test little", count[outcome], outcome)
		}
	}
}

// pieces that notations are made of, the likely ones more often.
var pieces = strings.Split("1|2|3|5|7|8|12|16|43|67|96|120|700|1700|0|007|3/8|1/2|15/16|9/8|2/3|1/64|5/7|.5|5.8|67.375|1,7|1,700|10.25|3.10.1|"+
	"1.234,5| | | | |-|-|-|'|'|\"|\"| in| ft|in.|ft.|feet|mm| mm|cm| m|m|½|⅜|⅚|’|”|″|′|–|−|—|⁄|+|*|(|)|x|×| by | and | or |, |;|:|/|?|~|"+
	" strong| light|about |or so|\u00a0|\u202f|Ft|MM|e3|abc|İn|\\|\u200b|😀|=cmd()|±|+/-", "|")

func randomAsked(r *rand.Rand, seeds []string) asked {
	pick := func(list []string) string { return list[r.IntN(len(list))] }
	a := asked{Unit: pick([]string{"in", "in", "mm", ""}), Near: []string{},
		Field: pick([]string{"length", "length", "wall_length", "room_height", "board_thickness", "section"})}
	if r.IntN(4) == 0 {
		a.Near = []string{nm(66 * length.Inch), nm(78 * length.Inch)}
	}
	switch r.IntN(3) {
	case 0:
		a.Text = mutated(r, []rune(pick(seeds)), []rune(pick(pieces)))
	case 1:
		a.Text = asTyped(r)
	default:
		for range 1 + r.IntN(7) {
			a.Text += pick(pieces)
		}
	}
	return a
}

// mutated changes one place of a text: a piece put in, a piece in place of a letter, a letter left out.
func mutated(r *rand.Rand, text, piece []rune) string {
	at := r.IntN(len(text) + 1)
	rest := text[at:]
	switch r.IntN(3) {
	case 0:
		piece = nil
		rest = rest[min(1, len(rest)):]
	case 1:
		rest = rest[min(1, len(rest)):]
	}
	return string(text[:at]) + string(piece) + string(rest)
}

// asTyped is a length the way people type it.
func asTyped(r *rand.Rand) string {
	den := 1 << (1 + r.IntN(6))
	fraction := fmt.Sprintf("%d/%d", 1+r.IntN(den), den)
	feet, inches := r.IntN(30), r.IntN(13)
	switch r.IntN(8) {
	case 0:
		return fmt.Sprintf(`%d' %d"`, feet, inches)
	case 1:
		return fmt.Sprintf(`%d' %d-%s"`, feet, inches, fraction)
	case 2:
		return fmt.Sprintf(`%d ft %d %s in`, feet, inches, fraction)
	case 3:
		return fmt.Sprintf(`%d-%s`, r.IntN(300), fraction)
	case 4:
		return fmt.Sprintf(`%d.%d cm`, r.IntN(600), r.IntN(1000))
	case 5:
		return fmt.Sprintf(`%d %s`, feet, fraction)
	case 6:
		return fmt.Sprintf(`%d mm`, r.IntN(9000))
	}
	return fmt.Sprintf(`%d %d %s`, feet, inches, fraction)
}

// notation is a row of the table that the program's reader is held to.
type notation map[string]string

func notations(t *testing.T) []notation {
	t.Helper()
	f, err := os.Open("../../room/length/testdata/notations.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
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

// asked of a row: "length, neighbours 5.5 to 6.5 in" is a plain length with two neighbours.
func (n notation) asked(t *testing.T) asked {
	t.Helper()
	field, near, _ := strings.Cut(n["field"], ", ")
	a := asked{Text: n["text"], Unit: n["project_unit"], Field: field, Near: []string{}}
	if near == "" {
		return a
	}
	var low, high float64
	if _, err := fmt.Sscanf(near, "neighbours %g to %g in", &low, &high); err != nil {
		t.Fatal(err)
	}
	a.Near = []string{nm(length.FromMM(low * 25.4)), nm(length.FromMM(high * 25.4))}
	return a
}

// nanometres of num/den in the row's unit, by rational arithmetic; 0 where the row has none.
func (n notation) nanometres(t *testing.T, num, den string) string {
	t.Helper()
	if n[num] == "" {
		return "0"
	}
	v, ok := new(big.Rat).SetString(n[num] + "/" + n[den])
	scale := map[string]int64{"in": 25_400_000, "mm": 1_000_000}[n["unit"]]
	if !ok || scale == 0 {
		t.Fatalf("%s: %s/%s %s", n["id"], n[num], n[den], n["unit"])
	}
	return v.Mul(v, big.NewRat(scale, 1)).RatString()
}

func (n notation) note() string {
	if n["note_64ths"] == "" {
		return "0"
	}
	return n["note_64ths"]
}
