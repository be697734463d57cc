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

// Where the columns of the answers stand, in mm from the left edge of the list.
const (
	answerIn    render.Paper = 6.5 // question and answer
	forceShare  render.Paper = 0.485
	forceWide   render.Paper = 11.5
	answerAbove render.Paper = 13 // counts and heads over the list
)

// block is a piece of a list that is never broken over two pages, drawn from 0 down.
type block struct {
	marks []render.Mark
	high  render.Paper
}

// answerPages lists every answer, the worst first, on as many pages as it takes.
func (b *binder) answerPages() {
	if len(b.answers) == 0 {
		return
	}
	area := b.listArea()
	var blocks []block
	for _, a := range fit.ForPeople(b.answers) {
		blocks = append(blocks, b.answerBlock(a, area.W()))
	}
	pages := paged(blocks, area.H()-answerAbove)
	for i, list := range pages {
		sub := "what was asked of this bed in this room, worst first"
		if len(pages) > 1 {
			sub += fmt.Sprintf("; page %d of %d", i+1, len(pages))
		}
		b.pages = append(b.pages, page{title: "Answers", sub: sub, list: func(area render.Rect) []render.Mark {
			return append(b.answerHead(area), stack(list, area.Min.X, area.Min.Y+answerAbove)...)
		}})
	}
}

// listArea is where lists stand on an upright sheet.
func (b *binder) listArea() render.Rect {
	short, long := b.o.Paper.Size()
	r := render.Rect{Max: render.Point{X: short, Y: long}}.Grow(-margin)
	r.Min.Y += titleHigh
	r.Max.Y -= footerHigh + 4
	return r
}

// paged deals blocks out to pages of a height.
func paged(blocks []block, high render.Paper) [][]block {
	var pages [][]block
	var used render.Paper
	for _, b := range blocks {
		if len(pages) == 0 || used+b.high > high {
			pages, used = append(pages, nil), 0
		}
		n := len(pages) - 1
		pages[n], used = append(pages[n], b), used+b.high
	}
	return pages
}

// stack sets blocks one below the other.
func stack(blocks []block, x, y render.Paper) []render.Mark {
	var marks []render.Mark
	for _, b := range blocks {
		marks = append(marks, render.Shift(b.marks, render.Point{X: x, Y: y})...)
		y += b.high
	}
	return marks
}

// answerHead draws the counts and the heads of the columns.
func (b *binder) answerHead(area render.Rect) []render.Mark {
	x, y := area.Min.X, area.Min.Y+2.5
	var marks []render.Mark
	for _, v := range []fit.Verdict{fit.DoesNotFit, fit.CannotTell, fit.TooClose, fit.Fits} {
		n, accepted := b.count(v)
		if n == 0 {
			continue
		}
		words := fmt.Sprintf("%d %s", n, countWords(v, n))
		if accepted > 0 {
			words += fmt.Sprintf(" (%d accepted)", accepted)
		}
		sign, _ := signOf(v)
		marks = append(marks, sign.At("", render.Point{X: x + b.st.Sign/2, Y: y}, b.st.Sign)...)
		in := render.Lettering{Size: b.st.Body.Size, Face: render.Medium}
		marks = append(marks, render.Words("", in.Text(render.Point{X: x + b.st.Sign + b.st.Gap, Y: y}, words, render.InkMain, render.Left).Middled()))
		x += b.st.Sign + b.st.Gap*5 + in.Wide(words)
	}
	line := area.Min.Y + answerAbove - 1
	head := func(x render.Paper, words string, anchor render.Anchor) {
		marks = append(marks, render.Words("", b.st.Small.Text(render.Point{X: x, Y: line - 1.6}, words, render.InkMain, anchor)))
	}
	head(area.Min.X+answerIn, "Question and answer", render.Left)
	head(area.Min.X+area.W()*forceShare, "Measured against", render.Left)
	head(area.Max.X, "Source: basis", render.Right)
	return append(marks, render.Stroke("", render.Line(render.Point{X: area.Min.X, Y: line}, render.Point{X: area.Max.X, Y: line}), b.st.Cut))
}

func (b *binder) count(v fit.Verdict) (n, accepted int) {
	for _, a := range b.answers {
		if a.Verdict == v {
			n++
			if a.Accepted != "" {
				accepted++
			}
		}
	}
	return n, accepted
}

// countWords are the words of a verdict after a number.
func countWords(v fit.Verdict, n int) string {
	words := strings.ToLower(v.Words())
	if n == 1 {
		return words
	}
	return map[fit.Verdict]string{fit.DoesNotFit: "do not fit", fit.Fits: "fit", fit.CannotTell: "cannot be told yet", fit.TooClose: "too close to call"}[v]
}

// answerBlock draws one answer over the width of the list.
func (b *binder) answerBlock(a fit.Answer, wide render.Paper) block {
	right := wide * forceShare
	l := &writer{st: b.st, ref: "answer." + a.ID, x: answerIn, w: right - answerIn - 4}
	l.bold(a.Sentence)
	l.lead(verdictWords(a), b.s.Called(a.Tell(b.o.Unit)))
	for _, n := range b.answerNotes(a) {
		l.small(n)
	}
	r := &writer{st: b.st, ref: l.ref, x: right + forceWide, w: wide - right - forceWide}
	b.against(r, a, right)
	out := block{marks: append(l.marks, r.marks...), high: max(l.y, r.y) + 2.6}
	if sign, ok := signOf(a.Verdict); ok {
		out.marks = append(out.marks, sign.At(l.ref, render.Point{X: b.st.Sign / 2, Y: b.st.Sign/2 + 0.2}, b.st.Sign)...)
	}
	y := out.high - 1.3
	out.marks = append(out.marks, render.Stroke("", render.Line(render.Point{Y: y}, render.Point{X: wide, Y: y}), b.st.Thin))
	return out
}

func verdictWords(a fit.Answer) string {
	words := a.Verdict.Words()
	if a.Accepted != "" {
		words += ", accepted"
	}
	return words
}

// answerNotes says what went into an answer: its band, its figures, and the readings that weigh most.
func (b *binder) answerNotes(a fit.Answer) []string {
	var notes []string
	if a.Band != "" {
		notes = append(notes, strings.ReplaceAll(a.Band, "-", " "))
	}
	if in := b.inputWords(a); in != "" {
		notes = append(notes, in)
	}
	return append(notes, a.Notes...)
}

// mostInputs is how many inputs of an answer are printed.
const mostInputs = 3

func (b *binder) inputWords(a fit.Answer) string {
	var keys, list []string
	for _, in := range a.Inputs {
		if len(list) == mostInputs {
			break
		}
		if slices.Contains(keys, in.Key) {
			continue
		}
		keys = append(keys, in.Key)
		value := fit.Amount(in.Value, yardstick.Unit(in.Unit), b.o.Unit, length.Nearest)
		list = append(list, joined(" ", b.quantity(in.Key)+":", value, b.how(in)))
	}
	return strings.Join(list, "; ")
}

// how says how an input is known.
func (b *binder) how(in fit.Input) string {
	switch {
	case in.How == "" || in.How == "chosen" || in.How == "table":
		return in.How
	case b.known.firm(in.Key):
		return "(twice)"
	}
	return "(" + in.How + ")"
}
