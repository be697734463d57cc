package yardstick

import (
	"encoding/csv"
	"fmt"
	"strings"
)

// A RowError says which cell of a data file cannot be used.
type RowError struct {
	ID     string // of the row
	Column string
	Text   string // what is there
	Want   string // what would be right
}

func (e *RowError) Error() string {
	return fmt.Sprintf("row %s: %s: %q: want %s", e.ID, e.Column, e.Text, e.Want)
}

// A record is one line of a file by column name.
type record map[string]string

func records(text string) ([]record, error) {
	in := csv.NewReader(strings.NewReader(text))
	in.Comment = '#'
	lines, err := in.ReadAll()
	if err != nil || len(lines) == 0 {
		return nil, err
	}
	var out []record
	for _, line := range lines[1:] {
		rec := record{}
		for i, name := range lines[0] {
			rec[name] = line[i]
		}
		out = append(out, rec)
	}
	return out, nil
}

func parseRules(text string) ([]Row, error) {
	return parseRows(text, func(rec record, r *Row) error {
		r.About, r.Role, r.Jurisdiction = rec["about"], Role(rec["role"]), rec["jurisdiction"]
		r.Kind, r.Applies, r.Caution = rec["kind"], rec["applies"], rec["caution"]
		r.Source, r.When = rec["source"], strings.Fields(rec["when"])
		r.Questions = append(r.Questions, alsoAsked[r.ID]...)
		return parseEqual(rec["at_limit"], r)
	})
}

func parsePractice(text string) ([]Row, error) {
	return parseRows(text, func(rec record, r *Row) error {
		r.Role, r.Jurisdiction, r.Kind, r.Applies = Role(rec["use"]), "any", "practice", "any"
		r.Source, r.Note = "planning figure of this project", rec["note"]
		r.equalLow, r.equalHigh = r.Relation.equality()
		return parseOwn(rec["force"], r)
	})
}

// parseRows reads what both files have in common and leaves the rest to more.
func parseRows(text string, more func(record, *Row) error) ([]Row, error) {
	recs, err := records(text)
	if err != nil {
		return nil, err
	}
	var rows []Row
	for _, rec := range recs {
		r := Row{ID: rec["id"], Questions: strings.Fields(rec["question"]), Quantity: rec["quantity"],
			Relation: Relation(rec["relation"]), Basis: rec["basis"]}
		if !r.Relation.known() {
			return nil, &RowError{r.ID, "relation", string(r.Relation), "a relation such as >= or inside [a..b]"}
		}
		if err := parseNeed(rec, &r); err != nil {
			return nil, err
		}
		if err := more(rec, &r); err != nil {
			return nil, err
		}
		if !r.Role.known() {
			return nil, &RowError{r.ID, "role", string(r.Role), "a role such as limit"}
		}
		rows = append(rows, r)
	}
	return rows, nil
}

var equalWords = map[string]Equality{"pass": EqualPasses, "fail": EqualFails, "borderline": EqualBorderline}

func parseEqual(text string, r *Row) error {
	low, high, two := strings.Cut(text, "/")
	if !two {
		high = low
	}
	r.equalLow, r.equalHigh = equalWords[low], equalWords[high]
	said := r.equalLow != EqualUnsaid && r.equalHigh != EqualUnsaid
	if said == r.Relation.Answer() {
		return &RowError{r.ID, "at_limit", text, "pass, fail, borderline or pass/fail, and nothing for yes and no"}
	}
	return nil
}

func parseOwn(text string, r *Row) error {
	switch text {
	case "need":
		r.Own = Need
	case "advice":
		r.Own = Advice
	default:
		return &RowError{r.ID, "force", text, "need or advice"}
	}
	return nil
}
