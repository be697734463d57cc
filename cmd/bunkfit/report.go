package main

import (
	"fmt"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/furniture/yardstick"
	"bunkwright/room/length"
)

// report prints the answers for people.
type report struct {
	s    *session
	unit length.Unit
	all  bool
	job  *job.Job

	scene *fit.Scene
}

// marks stand before an answer where there is no colour to tell verdicts apart.
var marks = map[fit.Verdict]string{
	fit.DoesNotFit: "x", fit.CannotTell: "?", fit.TooClose: "~", fit.Fits: "+", fit.NotApplicable: "-", fit.None: "-",
}

// colours are the usual colours of a terminal: red, blue, yellow, green, grey.
var colours = map[fit.Verdict]string{
	fit.DoesNotFit: "31", fit.CannotTell: "34", fit.TooClose: "33", fit.Fits: "32", fit.NotApplicable: "90", fit.None: "90",
}

func (r report) print(f *jobfile.File, s *fit.Scene, answers []fit.Answer) {
	r.line("%s: measured against %s", f.Job.Name, strings.Join(f.Job.Places, ", "))
	r.line("%s", tally(answers))
	for _, p := range s.Problems() {
		r.line("\n%s:%d: %s: %s; %s", f.Name, f.Line(p.Key), p.Key, p.Text, p.Right)
	}
	r.line("")
	for _, a := range fit.ForPeople(answers) {
		r.answer(a)
	}
	r.survey(s)
	r.line("\n%s", wrapped(fit.Caution, 100, ""))
}

func (r report) line(format string, args ...any) { fmt.Fprintf(r.s.out, format+"\n", args...) }

func (r report) paint(v fit.Verdict, text string) string {
	if !r.s.colour {
		return text
	}
	return "\x1b[" + colours[v] + "m" + text + "\x1b[0m"
}

func (r report) answer(a fit.Answer) {
	r.line("%s %s (%s)", r.paint(a.Verdict, marks[a.Verdict]), a.Sentence, a.ID)
	r.line("    %s", r.paint(a.Verdict, wrapped(r.scene.Called(a.Say(r.unit)), 96, "    ")))
	if a.Accepted != "" {
		r.line("    %s", wrapped("accepted: "+a.Accepted+r.tied(a), 96, "    "))
	}
	if words := r.figures(a); words != "" {
		r.line("    %s", wrapped(words, 96, "      "))
	}
	if r.all {
		r.line("    print: %s", a.Print())
	}
	said := map[string]bool{}
	for i, l := range a.Lines {
		if text := r.rule(a, l, i == a.Decides); text != "" && !said[text] {
			said[text] = true
			r.line("    %s", wrapped(text, 96, "      "))
		}
	}
	for _, n := range a.Notes {
		r.line("    %s", wrapped(r.scene.Called(n), 96, "    "))
	}
	if a.Caution != "" && a.Verdict != fit.NotApplicable {
		r.line("    %s", wrapped("caution: "+a.Caution, 96, "    "))
	}
}

// tied tells how an acceptance is made to come back once what it was given for has changed.
func (r report) tied(a fit.Answer) string {
	for _, x := range r.job.Accepted {
		if x.Question == a.ID && x.Inputs != "" {
			return ""
		}
	}
	return fmt.Sprintf(" (whatever changes; inputs = %q in [[accepted]] brings it back when what it was judged by does)", a.Print())
}

// figures prints what an answer worked out beside its verdict.
func (r report) figures(a fit.Answer) string {
	var words []string
	if a.Band != "" {
		words = append(words, strings.ReplaceAll(a.Band, "-", " "))
	}
	for _, f := range a.Figures {
		words = append(words, f.Words(r.unit))
	}
	return strings.Join(words, "; ")
}

// rule returns a line of an answer in words: the one that decides always, advice that does not fit, all of them when asked for.
func (r report) rule(a fit.Answer, l fit.Line, decides bool) string {
	advice := l.Force == yardstick.Advice && l.Verdict.Open()
	if !r.all && !decides && !advice {
		return ""
	}
	against := l.Against(r.unit)
	if against != l.Row.Quantity {
		against += ", " + l.Row.Quantity
	}
	text := fmt.Sprintf("%s: %s (%s: %s)", l.Force, against, l.Row.Source, l.Row.Basis)
	if advice || r.all {
		text += ": " + r.scene.Called(tell(l, r.unit))
	}
	if r.all {
		text += " [" + l.Row.ID + " at " + l.At + "]"
	}
	return text
}

func tell(l fit.Line, unit length.Unit) string {
	switch {
	case l.Ask != "":
		return fit.Spoken(l.Ask)
	case l.Verdict == fit.NotApplicable:
		return "does not apply: " + fit.Spoken(l.Reason)
	case l.HasSpare && l.Verdict == fit.DoesNotFit && l.Reason != "":
		return fit.SpareWords(l.Spare, l.Row.Unit, unit) + ", " + fit.Spoken(l.Reason)
	case l.HasSpare:
		return fit.SpareWords(l.Spare, l.Row.Unit, unit)
	}
	return strings.ToLower(l.Verdict.Words())
}

func (r report) survey(s *fit.Scene) {
	for _, g := range s.Survey.Gaps {
		r.line("gap: %s", g.Text)
	}
	for _, c := range s.Survey.Conflicts {
		r.line("%s", wrapped(s.Survey.Say(c, length.Style{Unit: r.unit}), 100, "  "))
	}
}

// tally counts the verdicts in one line.
func tally(answers []fit.Answer) string {
	var parts []string
	count := map[fit.Verdict]int{}
	for _, a := range answers {
		count[a.Verdict]++
	}
	for _, w := range []struct {
		v    fit.Verdict
		text string
	}{{fit.DoesNotFit, "do not fit"}, {fit.CannotTell, "cannot be told yet"}, {fit.TooClose, "too close to call"}, {fit.Fits, "fit"}} {
		if n := count[w.v]; n > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", n, w.text))
		}
	}
	return strings.Join(parts, ", ")
}

// wrapped breaks a text into lines of at most n letters; further lines start with the indent.
func wrapped(text string, n int, indent string) string {
	var b strings.Builder
	line := 0
	for i, w := range strings.Fields(text) {
		if i > 0 && line+1+len(w) > n {
			b.WriteString("\n" + indent)
			line = 0
		} else if i > 0 {
			b.WriteByte(' ')
			line++
		}
		b.WriteString(w)
		line += len(w)
	}
	return b.String()
}
