package main

import (
	"fmt"
	"io"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/furniture/yardstick"
)

var explainCommand = command{
	name:    "explain",
	args:    "format | QUESTION | RULE [--json]",
	summary: "explain the file format, a question, or what a rule says and where it comes from",
	example: "bunkfit explain sit-up-top",
}

func init() { explainCommand.run = runExplain }

func runExplain(s *session, args []string) (int, error) {
	f := s.flags(explainCommand)
	asJSON := f.Bool("json", false, "print as JSON")
	words, err := parse(f, args)
	if err != nil {
		return exitUsage, err
	}
	if len(words) != 1 {
		return exitUsage, fmt.Errorf("explain wants one word: format, a question or a rule\n%s", explainable())
	}
	id := words[0]
	if id == "format" {
		return exitSettled, s.explainFormat(*asJSON)
	}
	if q, ok := fit.Find(id); ok {
		return exitSettled, s.explainQuestion(q, *asJSON)
	}
	if r, ok := yardstick.Find(id); ok {
		return exitSettled, s.explainRow(r, *asJSON)
	}
	help := explainable()
	if near := nearest(id, everyID()); near != "" {
		help = strings.TrimSpace(hint(near))
	}
	return exitUsage, fmt.Errorf("there is no question or rule %q\n%s", id, help)
}

func explainable() string {
	var ids []string
	for _, q := range fit.All() {
		ids = append(ids, q.ID)
	}
	return "questions: " + wrapped(strings.Join(ids, ", "), 88, "  ")
}

func everyID() []string {
	ids := []string{"format"}
	for _, q := range fit.All() {
		ids = append(ids, q.ID)
	}
	for _, r := range yardstick.All() {
		ids = append(ids, r.ID)
	}
	return ids
}

func (s *session) explainFormat(asJSON bool) error {
	rows := jobfile.Keys()
	if asJSON {
		return writeJSON(s.out, rows)
	}
	_, err := io.WriteString(s.out, jobfile.Explain())
	return err
}

// jsonQuestion is the JSON of explain for a question.
type jsonQuestion struct {
	ID       string   `json:"id"`
	Sentence string   `json:"sentence"`
	Why      string   `json:"why"`
	How      string   `json:"how"`
	MayHelp  []string `json:"may_help"`
	Caution  string   `json:"caution"`
	Rules    []string `json:"rules"`
}

func (s *session) explainQuestion(q fit.Question, asJSON bool) error {
	rows := yardstick.OfQuestion(q.ID)
	if asJSON {
		out := jsonQuestion{ID: q.ID, Sentence: q.Sentence, Why: q.Why, How: q.How, Caution: q.Caution, Rules: []string{}, MayHelp: list(driverWords(q))}
		for _, r := range rows {
			out.Rules = append(out.Rules, r.ID)
		}
		return writeJSON(s.out, out)
	}
	fmt.Fprintf(s.out, "%s\n\n%s\n\nHow it is measured: %s\n", q.Sentence, wrapped(q.Why, 96, ""), wrapped(q.How, 96, ""))
	if help := driverWords(q); len(help) > 0 {
		fmt.Fprintf(s.out, "What may help (bunkfit mend tries it): %s\n", wrapped(strings.Join(help, ", "), 96, ""))
	}
	if q.Caution != "" {
		fmt.Fprintf(s.out, "\nCaution: %s\n", wrapped(q.Caution, 96, ""))
	}
	fmt.Fprintln(s.out, "\nMeasured against:")
	for _, r := range rows {
		fmt.Fprintf(s.out, "  %-28s %-9s %s\n", r.ID, r.Jurisdiction, wrapped(needWords(r)+": "+r.Quantity, 70, strings.Repeat(" ", 41)))
	}
	return nil
}

// needWords writes what a row asks for, in its source's own unit.
func needWords(r yardstick.Row) string {
	if r.Written == "" {
		return string(r.Relation)
	}
	return string(r.Relation) + " " + r.Written
}

// jsonRow is the JSON of explain for a rule or planning figure.
type jsonRow struct {
	ID           string   `json:"id"`
	Questions    []string `json:"questions"`
	Quantity     string   `json:"quantity"`
	Need         string   `json:"need"`
	Role         string   `json:"role"`
	Jurisdiction string   `json:"jurisdiction"`
	Kind         string   `json:"kind"`
	Applies      string   `json:"applies"`
	When         []string `json:"when"`
	Caution      string   `json:"caution"`
	Source       string   `json:"source"`
	Basis        string   `json:"basis"`
	Note         string   `json:"note"`
}

func (s *session) explainRow(r yardstick.Row, asJSON bool) error {
	if asJSON {
		return writeJSON(s.out, jsonRow{r.ID, list(r.Questions), r.Quantity, needWords(r), string(r.Role), r.Jurisdiction, r.Kind, r.Applies, list(r.When), r.Caution, r.Source, r.Basis, r.Note})
	}
	fmt.Fprintf(s.out, "%s: %s\n", r.ID, needWords(r))
	for _, l := range []struct{ name, text string }{
		{"measured", r.Quantity}, {"asked by", strings.Join(r.Questions, ", ")}, {"role", string(r.Role)}, {"place", r.Jurisdiction},
		{"kind", r.Kind}, {"binds", r.Applies}, {"when", strings.Join(r.When, ", ")}, {"caution", r.Caution}, {"note", r.Note},
		{"source", r.Source}, {"basis", basisWords(r.Basis)},
	} {
		if l.text != "" {
			fmt.Fprintf(s.out, "  %-9s %s\n", l.name, wrapped(l.text, 84, strings.Repeat(" ", 12)))
		}
	}
	return nil
}

// basisWords says how far a row may be relied on.
func basisWords(basis string) string {
	switch basis {
	case "published":
		return "published: the text itself, or the issuing body's own summary, was read, often only as an excerpt"
	case "secondary":
		return "secondary: seen only in a page quoting it; check the text before relying on it"
	case "practice":
		return "practice: common practice, no source"
	case "proposal":
		return "proposal: this project's own judgement"
	case "derived":
		return "derived: follows from a published value"
	}
	return basis
}

// driverWords lists what may make a question fit.
func driverWords(q fit.Question) []string {
	var out []string
	for _, d := range q.Propose {
		out = append(out, strings.ReplaceAll(string(d), "-", " "))
	}
	return out
}
