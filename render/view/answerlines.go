package view

import (
	"fmt"
	"slices"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/yardstick"
	"bunkwright/render"
	"bunkwright/room/length"
)

// against lists what an answer is measured against: one line for each rule or need, with its source and how strong that is.
func (b *binder) against(w *writer, a fit.Answer, forceAt render.Paper) {
	lines := worstLines(a)
	for _, l := range lines {
		if l.Force == yardstick.OutsideFigure {
			continue
		}
		w.mark(forceAt, l.Force.String())
		w.small(b.lineWords(l))
		if l.Row.Source != "" || l.Row.Basis != "" {
			w.tail(l.Row.Source, l.Row.Basis)
		}
	}
	if out := b.outsideWords(lines); out != "" {
		w.mark(forceAt, "outside")
		w.small(out)
	}
	for _, g := range a.Figures {
		if place, ok := strings.CutPrefix(g.Name, "max_mattress."); ok {
			thick := length.Format(length.FromMM(g.Value), length.Style{Unit: b.o.Unit, Rounding: length.TowardZero})
			w.strong(fmt.Sprintf("Thickest mattress for this bed (%s): %s, topper included. Write it inside the end.", place, thick))
		}
	}
	if a.Caution != "" {
		w.strong(a.Caution)
	}
	if a.Accepted != "" {
		w.strong(b.acceptedWords(a))
	}
}

// mostOutside is how many outside figures of an answer are printed.
const mostOutside = 3

// outsideWords gathers the figures that bind something else, each with its source.
func (b *binder) outsideWords(lines []fit.Line) string {
	var list []string
	more := 0
	for _, l := range lines {
		switch {
		case l.Force != yardstick.OutsideFigure:
		case len(list) == mostOutside:
			more++
		default:
			list = append(list, l.Against(b.o.Unit)+" ("+l.Row.Source+")")
		}
	}
	if len(list) == 0 {
		return ""
	}
	words := "figures that bind other things, no verdict: " + strings.Join(list, "; ")
	if more > 0 {
		words += fmt.Sprintf("; and %d more", more)
	}
	return words
}

func (b *binder) acceptedWords(a fit.Answer) string {
	for _, x := range b.s.Job.Accepted {
		if x.Question == a.ID {
			return joined(", ", "Accepted by "+orElse(x.By, "the maker"), x.When) + ": " + a.Accepted
		}
	}
	return "Accepted: " + a.Accepted
}

func orElse(words, otherwise string) string {
	if words == "" {
		return otherwise
	}
	return words
}

// lineWords says what a line is held against, and what is to spare.
func (b *binder) lineWords(l fit.Line) string {
	words := l.Against(b.o.Unit)
	if words != l.Row.Quantity {
		words += ": " + l.Row.Quantity
	}
	switch {
	case l.Verdict == fit.NotApplicable:
		return words + " (does not apply: " + fit.Spoken(l.Reason) + ")"
	case l.Ask != "":
		return words
	case l.HasSpare && l.Verdict != fit.None:
		return words + "; " + fit.SpareWords(l.Spare, l.Row.Unit, b.o.Unit)
	}
	return words
}

// worstLines returns the worst line of every row, the strongest first. Rows that do not apply are left out where others do.
func worstLines(a fit.Answer) []fit.Line {
	var out []fit.Line
	for _, l := range a.Lines {
		if l.Verdict == fit.NotApplicable && a.Verdict != fit.NotApplicable {
			continue
		}
		k := slices.IndexFunc(out, func(o fit.Line) bool { return o.Row.ID == l.Row.ID })
		switch {
		case k < 0:
			out = append(out, l)
		case l.Verdict.Worse(out[k].Verdict) || l.Verdict == out[k].Verdict && l.Spare < out[k].Spare:
			out[k] = l
		}
	}
	slices.SortStableFunc(out, func(x, y fit.Line) int { return int(y.Force) - int(x.Force) })
	return out
}
