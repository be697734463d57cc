package main

import (
	"errors"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/worked"
	"bunkwright/furniture/yardstick"
)

var measureCommand = command{
	name:    "measure",
	args:    "ID [quantity=NAME] KEY=VALUE ... [--json]",
	summary: "work out one case of a rule, a calculation or a trade table; --list names them",
	example: "bunkfit measure us-rail-over-mattress rail_over_base_in=12 mattress_in=7",
}

func init() { measureCommand.run = runMeasure }

// jsonMeasure is the JSON of measure: value in unit, spare in mm for lengths, null where there is no number.
type jsonMeasure struct {
	ID       string   `json:"id"`
	Quantity string   `json:"quantity"`
	Outcome  string   `json:"outcome"`
	Value    *float64 `json:"value"`
	Unit     string   `json:"unit"`
	Spare    *float64 `json:"spare"`
}

func runMeasure(s *session, args []string) (int, error) {
	f := s.flags(measureCommand)
	asJSON := f.Bool("json", false, "print as JSON")
	list := f.Bool("list", false, "list everything that can be measured, each with inputs that work")
	words, err := parse(f, args)
	if err != nil {
		return exitUsage, err
	}
	if *list {
		return exitSettled, listMeasures(s.out, *asJSON)
	}
	if len(words) == 0 {
		return exitUsage, fmt.Errorf("measure wants the id of a rule, a calculation or a case topic\nhint: %s", measureCommand.example)
	}
	r, err := measure(words[0], words[1:])
	if err != nil {
		return exitUsage, withHints(err)
	}
	if *asJSON {
		return exitSettled, writeJSON(s.out, jsonMeasure{r.ID, r.Quantity, r.Outcome, r.Value, r.Unit, r.Spare})
	}
	printMeasure(s.out, r)
	return exitSettled, nil
}

// measure takes the quantity out of the inputs and answers.
func measure(id string, words []string) (worked.Result, error) {
	in, err := worked.ParseInputs(words)
	if err != nil {
		return worked.Result{}, err
	}
	quantity, rest := "", worked.Inputs{}
	for _, i := range in {
		if i.Key == "quantity" && quantity == "" {
			quantity = i.Text
			continue
		}
		rest = append(rest, i)
	}
	return worked.Answer(id, quantity, rest)
}

// withHints adds the nearest word where one is unknown, and inputs that work.
func withHints(err error) error {
	text := err.Error()
	var unknown *worked.UnknownIDError
	var bad *worked.InputError
	switch {
	case errors.As(err, &unknown):
		near := hint(nearest(unknown.ID, unknown.Among))
		if near == "" {
			near = "hint: bunkfit measure --list names everything that can be measured"
		}
		text += "\n" + near
	case errors.As(err, &bad):
		if bad.Word != "" {
			text += "\n" + hint(nearest(bad.Word, bad.Among))
		}
		if bad.ID != "" && len(bad.Example) > 0 {
			text += "\nfor example\n  " + commandLine(bad.ID, bad.Example)
		}
	}
	return errors.New(strings.ReplaceAll(strings.TrimSpace(text), "\n\n", "\n"))
}

// commandLine writes a command as a shell takes it.
func commandLine(id string, inputs []string) string {
	line := "bunkfit measure " + id
	for _, i := range inputs {
		if strings.ContainsAny(i, " ()<>&;|*?$'\"") {
			i = "'" + i + "'"
		}
		line += " " + i
	}
	return line
}

func listMeasures(w io.Writer, asJSON bool) error {
	type entry struct {
		ID      string   `json:"id"`
		Example []string `json:"example"`
	}
	var list []entry
	for _, id := range worked.IDs() {
		if example, ok := worked.Example(id); ok {
			list = append(list, entry{id, example})
		}
	}
	if asJSON {
		return writeJSON(w, list)
	}
	for _, e := range list {
		fmt.Fprintln(w, commandLine(e.ID, e.Example))
	}
	return nil
}

func printMeasure(w io.Writer, r worked.Result) {
	fmt.Fprintln(w, strings.TrimRight(r.ID+": "+measuredWords(r), " "))
	if r.Text != "" {
		fmt.Fprintf(w, "  %s\n", wrapped(r.Text, 96, "  "))
	}
	if row, ok := yardstick.Find(r.ID); ok {
		fmt.Fprintf(w, "  %s\n", wrapped(needWords(row)+": "+row.Quantity, 96, "  "))
		fmt.Fprintf(w, "  %s\n", wrapped(fmt.Sprintf("%s (%s; binds %s; %s)", row.Source, row.Basis, row.Applies, row.Role), 96, "  "))
		if row.Caution != "" {
			fmt.Fprintf(w, "  caution: %s\n", wrapped(row.Caution, 87, "  "))
		}
		fmt.Fprintf(w, "\n%s\n", wrapped(fit.Caution, 100, ""))
		return
	}
	if c, ok := yardstick.FindCalc(r.ID); ok {
		fmt.Fprintf(w, "  %s\n", wrapped(c.What+" = "+c.Formula, 96, "  "))
		fmt.Fprintf(w, "  %s\n", wrapped(fmt.Sprintf("%s (%s)", c.Source, c.Basis), 96, "  "))
		fmt.Fprintf(w, "  caution: %s\n", wrapped(c.Caution, 87, "  "))
		return
	}
	fmt.Fprintf(w, "  %s\n", r.Quantity)
}

// measuredWords is the answer in one line: the number with its unit where that is all, else the word first.
func measuredWords(r worked.Result) string {
	if r.Value == nil {
		return strings.TrimSpace(r.Outcome + " " + r.Unit)
	}
	value := withUnit(*r.Value, r.Unit)
	switch {
	case r.Spare == nil:
		return value
	case *r.Spare < 0:
		return fmt.Sprintf("%s at %s, %s short", r.Outcome, value, withUnit(-*r.Spare, spareUnit(r)))
	}
	return fmt.Sprintf("%s at %s, %s to spare", r.Outcome, value, withUnit(*r.Spare, spareUnit(r)))
}

// withUnit prints a number with its unit; a count has none.
func withUnit(x float64, unit string) string {
	if unit == string(yardstick.Count) {
		unit = ""
	}
	return strings.TrimSpace(decimal(x) + " " + unit)
}

// spareUnit is mm for lengths, whatever they were given in.
func spareUnit(r worked.Result) string {
	if row, ok := yardstick.Find(r.ID); ok {
		return string(row.Unit)
	}
	return ""
}

// decimal prints a number with at most six figures after the point.
func decimal(x float64) string {
	return strconv.FormatFloat(math.Round(x*1e6)/1e6, 'f', -1, 64)
}
