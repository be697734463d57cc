package main

import (
	"context"
	"fmt"
	"os"
	"os/signal"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/place"
)

var mendCommand = command{
	name:    "mend",
	args:    "JOB.toml [ANSWER] [--json]",
	summary: "try what to change so that an answer fits",
	example: "bunkfit mend samples/basement.toml sit-up-top",
}

func init() { mendCommand.run = runMend }

func runMend(s *session, args []string) (int, error) {
	f := s.flags(mendCommand)
	asJSON := f.Bool("json", false, "print the changes as JSON, with the keys that they set")
	words, err := parse(f, args)
	if err != nil {
		return exitUsage, err
	}
	if len(words) < 1 || len(words) > 2 {
		return exitUsage, fmt.Errorf("mend wants a job file, and one answer or none for all\nhint: %s", mendCommand.example)
	}
	file, err := open(words[0])
	if err != nil {
		return exitUsage, err
	}
	if len(words) > 1 {
		if _, ok := fit.Find(words[1]); !ok {
			return exitUsage, fmt.Errorf("there is no answer %q\n%s", words[1], hint(nearest(words[1], questionIDs())))
		}
	}
	scene, answers, err := fit.Answers(&file.Job)
	if err != nil {
		return exitUsage, err
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	if len(words) > 1 {
		i := slices.IndexFunc(answers, func(a fit.Answer) bool { return a.ID == words[1] })
		answers[i].Remedies, err = place.Mend(ctx, scene, answers, words[1])
		answers = answers[i : i+1]
	} else {
		err = place.MendAll(ctx, scene, answers)
	}
	if err != nil {
		return exitUsage, err
	}
	code := exitSettled
	if !fit.Settled(answers) {
		code = exitOpen
	}
	if *asJSON {
		return code, writeJSON(s.out, remediesJSON(answers))
	}
	remedyReport{report{s: s, unit: unitOf(file.Job.Unit), job: &file.Job}}.print(answers)
	return code, nil
}

func questionIDs() []string {
	var out []string
	for _, q := range fit.All() {
		out = append(out, q.ID)
	}
	return out
}

// The JSON of mend: a key that is to be set to "" is taken out of the file; spares are in the unit of the answer.
type (
	jsonRemedies struct {
		Remedies []jsonRemedy `json:"remedies"`
	}
	jsonRemedy struct {
		Answer  string       `json:"answer"`
		Changes []jsonChange `json:"changes"`
		Verdict string       `json:"verdict"`
		Spare   *float64     `json:"spare"`
		Costs   []jsonCost   `json:"costs"`
	}
	jsonChange struct {
		Driver string        `json:"driver"`
		Words  string        `json:"words"`
		Keys   []jsonSetting `json:"keys"`
	}
	jsonSetting struct {
		Key  string `json:"key"`
		From string `json:"from"`
		To   string `json:"to"`
	}
	jsonCost struct {
		ID     string  `json:"id"`
		Before float64 `json:"before"`
		Spare  float64 `json:"spare"`
		Unit   string  `json:"unit"`
	}
)

func remediesJSON(answers []fit.Answer) jsonRemedies {
	out := jsonRemedies{Remedies: []jsonRemedy{}}
	for _, a := range answers {
		for _, r := range a.Remedies {
			one := jsonRemedy{Answer: r.Answer, Verdict: r.After.Verdict.String(), Spare: number(r.After.HasSpare, r.After.Spare), Costs: []jsonCost{}}
			for _, c := range r.Changes {
				change := jsonChange{string(c.Driver), c.Words, []jsonSetting{}}
				for _, s := range c.Settings {
					change.Keys = append(change.Keys, jsonSetting(s))
				}
				one.Changes = append(one.Changes, change)
			}
			for _, c := range r.Costs {
				one.Costs = append(one.Costs, jsonCost{c.ID, c.Before, c.Spare, string(c.Answer.Unit)})
			}
			out.Remedies = append(out.Remedies, one)
		}
	}
	return out
}

// remedyReport prints remedies for people.
type remedyReport struct{ report }

func (r remedyReport) print(answers []fit.Answer) {
	for _, a := range fit.ForPeople(answers) {
		if !a.Verdict.Open() && len(answers) > 1 {
			continue
		}
		r.line("%s %s (%s)", r.paint(a.Verdict, marks[a.Verdict]), a.Sentence, a.ID)
		r.line("    %s", wrapped(a.Say(r.unit), 96, "    "))
		for _, one := range a.Remedies {
			r.remedy(one)
		}
		q, _ := fit.Find(a.ID)
		if tried := a.Verdict == fit.DoesNotFit || a.Verdict == fit.TooClose; tried && len(a.Remedies) == 0 && len(q.Propose) > 0 {
			r.line("    nothing that was tried makes it fit and spoils nothing else")
		}
	}
	r.line("\n%s", wrapped(fit.Caution, 100, ""))
}

// mostCosts is how many of the answers that lose are printed.
const mostCosts = 3

func (r remedyReport) remedy(one fit.Remedy) {
	words := "try: "
	for i, c := range one.Changes {
		if i > 0 {
			words += ", and "
		}
		words += c.Words
	}
	r.line("    %s", wrapped(words+". "+one.After.Say(r.unit), 96, "        "))
	for _, c := range one.Costs[:min(len(one.Costs), mostCosts)] {
		was := fit.SpareWords(c.Before, c.Answer.Unit, r.unit)
		r.line("        %s", wrapped(fmt.Sprintf("costs %s: %s, %s before", c.ID, fit.SpareWords(c.Spare, c.Answer.Unit, r.unit), was), 92, "            "))
	}
	if more := len(one.Costs) - mostCosts; more > 0 {
		r.line("        and %d more have less to spare", more)
	}
}
