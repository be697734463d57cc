package main

import (
	"fmt"
	"strings"

	"bunkwright/furniture/ask"
	"bunkwright/furniture/fit"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room/length"
	"bunkwright/room/survey"
)

var answersCommand = command{
	name:    "answers",
	args:    "JOB.toml [REPLY.txt] [-o NEW.toml] [--json] [--all]",
	summary: "take in a reply, and hold the readings of a room against each other",
	example: "bunkfit answers samples/half-measured.toml reply.txt -o new.toml",
}

func init() { answersCommand.run = runAnswers }

func runAnswers(s *session, args []string) (int, error) {
	f := s.flags(answersCommand)
	asJSON := f.Bool("json", false, "print all that is known of every reading as JSON")
	all := f.Bool("all", false, "list every reading")
	out := f.String("o", "", "job file to write with the reply merged; the job itself is left as it is")
	words, err := parse(f, args)
	if err != nil {
		return exitUsage, err
	}
	if len(words) < 1 || len(words) > 2 || len(words) == 1 && *out != "" {
		return exitUsage, fmt.Errorf("answers wants one job file, and a reply to merge where there is one\nhint: %s", answersCommand.example)
	}
	file, err := open(words[0])
	if err != nil {
		return exitUsage, err
	}
	var reply *ask.Reply
	if len(words) == 2 {
		if reply, err = takeReply(s, file, words[1], *out, *asJSON); err != nil {
			return exitUsage, err
		}
	}
	scene, answers, err := fit.Answers(&file.Job)
	if err != nil {
		return exitUsage, err
	}
	r := readings{file, scene.Survey, ask.WhatIsMissing(scene.Survey, answers), ask.MeasureAgain(scene.Survey, answers, ask.Most)}
	code := exitSettled
	if len(r.s.Conflicts)+len(r.missing) > 0 || reply != nil && !settledReply(reply) {
		code = exitOpen
	}
	if *asJSON {
		return code, writeJSON(s.out, r.jsonWith(reply))
	}
	report{s: s, unit: unitOf(file.Job.Unit), all: *all, job: &file.Job}.readings(r)
	return code, nil
}

// readings is what is known of the readings of a job.
type readings struct {
	file    *jobfile.File
	s       *survey.Survey
	missing []ask.Missing
	again   []ask.Again
}

// readings prints them for people.
func (r report) readings(of readings) {
	style := length.Style{Unit: r.unit}
	r.line("%s: %s", r.job.Name, of.tally())
	if r.all {
		r.line("")
		for i, src := range of.s.Sources {
			if src.Index >= 0 {
				r.line("  %s", of.oneLine(i, style))
			}
		}
	}
	for _, c := range of.s.Conflicts {
		r.line("\n%s", wrapped(of.s.Say(c, style), 100, "  "))
		for _, one := range c.Suspects {
			r.causes(of.s, c, one, style)
		}
	}
	for _, c := range of.s.Chains() {
		if !c.AddsUp() {
			r.line("\n%s", wrapped(chainWords(c, style), 100, "  "))
		}
	}
	r.list("missing", of.missingWords())
	r.list("worth taking again", of.againWords())
}

// causes prints what a suspect may come from; of one among several, with its name.
func (r report) causes(s *survey.Survey, c survey.Conflict, one survey.Suspect, style length.Style) {
	name := ""
	if !c.Found() {
		name = s.Named(one.Source) + ": "
	}
	for _, q := range s.Standing(one.Source).Questions(style) {
		r.line("  %s", wrapped(name+q, 96, "    "))
	}
}

func (r report) list(title string, lines []string) {
	if len(lines) == 0 {
		return
	}
	r.line("\n%s", title)
	for _, l := range lines {
		r.line("  %s", wrapped(l, 96, "    "))
	}
}

// tally counts the readings by how they stand.
func (r readings) tally() string {
	count, n := map[survey.State]int{}, 0
	for i, src := range r.s.Sources {
		if src.Index >= 0 {
			count[r.s.Standing(i).State]++
			n++
		}
	}
	words := fmt.Sprintf("%d readings", n)
	for _, st := range []struct {
		state survey.State
		text  string
	}{{survey.Agrees, "agree with others"}, {survey.Believed, "agree with what is taken for granted"}, {survey.Unwatched, "that nothing checks"},
		{survey.Doubtful, "in doubt"}, {survey.Wrong, "wrong"}} {
		if k := count[st.state]; k > 0 {
			words += fmt.Sprintf(", %d %s", k, st.text)
		}
	}
	return words
}

// oneLine is one reading: what, how much, how known, how watched.
func (r readings) oneLine(source int, style length.Style) string {
	src, st := r.s.Sources[source], r.s.Standing(source)
	line := fmt.Sprintf("%-34s %12s  %-6s %-9s", r.s.Named(source), length.Format(src.Exact, style), src.How, st.State)
	if st.State == survey.Unwatched {
		return line + " no slip would be noticed"
	}
	return line + " a slip of " + length.Format(length.FromMM(st.Smallest), style) + " would be noticed"
}

// chainWords says that pieces do not add up, and asks.
func chainWords(c survey.Chain, style length.Style) string {
	last := len(c.Keys) - 1
	return fmt.Sprintf("%s add up to %s, and %s was read as %s: measure the chain again from the other end", strings.Join(c.Keys[:last], " + "),
		length.Format(length.FromMM(c.Sum), style), c.Keys[last], length.Format(length.FromMM(c.Whole), style))
}

func (r readings) missingWords() []string {
	var out []string
	for _, m := range r.missing {
		text := m.Text
		if len(m.Answers) > 0 {
			text += " (" + strings.Join(m.Answers, ", ") + ")"
		}
		out = append(out, text)
	}
	return out
}

func (r readings) againWords() []string {
	var out []string
	for _, a := range r.again {
		var why []string
		if len(a.Open) > 0 {
			why = append(why, "too close to call: "+strings.Join(a.Open, ", "))
		}
		if len(a.Unnoticed) > 0 {
			why = append(why, "a slip that nobody notices would turn: "+strings.Join(a.Unnoticed, ", "))
		}
		out = append(out, a.Key+": "+strings.Join(why, "; "))
	}
	return out
}
