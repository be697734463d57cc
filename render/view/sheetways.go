package view

import (
	"fmt"
	"math"
	"strings"

	"bunkwright/furniture/fit"
	placing "bunkwright/furniture/place"
	"bunkwright/render"
)

// WaysSheets returns the sheet, or sheets, that set some ways of a job side by side: the answers in which they differ, the headrooms and the
// boards. The scene and its answers are those of the job as it is.
func WaysSheets(s *fit.Scene, answers []fit.Answer, c *placing.Comparison, o SheetOptions) []render.Drawing {
	b := &binder{s: s, answers: answers, o: o, st: render.SheetStyle, known: knownOf(s)}
	b.wayPages(c)
	b.cautionPage()
	sheets := make([]render.Drawing, len(b.pages))
	for i := range b.pages {
		sheets[i] = b.sheet(i)
	}
	return sheets
}

// wayNames is the share of the width that the names of the rows take.
const wayNames render.Paper = 0.26

// waysTable lays the columns of a comparison out.
type waysTable struct {
	*binder
	c    *placing.Comparison
	wide render.Paper
}

func (w *waysTable) x(column int) render.Paper {
	first := w.wide * wayNames
	return first + (w.wide-first)*render.Paper(column)/render.Paper(len(w.c.Names))
}

func (w *waysTable) cellWide() render.Paper { return w.x(1) - w.x(0) - 2 }

// wayPages lists the rows, on as many pages as it takes.
func (b *binder) wayPages(c *placing.Comparison) {
	area := b.listArea()
	w := &waysTable{b, c, area.W()}
	blocks, alike := []block{w.where()}, 0
	for i := range c.Answers {
		if c.Answers[i].Differs() {
			blocks = append(blocks, w.answers(&c.Answers[i]))
		} else {
			alike++
		}
	}
	for i := range c.Heads {
		blocks = append(blocks, w.heads(&c.Heads[i]))
	}
	var same []string
	for i := range c.Boards {
		if c.Boards[i].Differs() {
			blocks = append(blocks, w.boards(&c.Boards[i]))
		} else {
			same = append(same, c.Boards[i].Stock)
		}
	}
	if len(same) > 0 {
		blocks = append(blocks, w.sameBoards(same))
	}
	const head render.Paper = 9
	pages := paged(blocks, area.H()-head)
	for i, list := range pages {
		sub := fmt.Sprintf("what differs, the headrooms and the boards; %d answers are the same in all", alike)
		if len(pages) > 1 {
			sub += fmt.Sprintf("; page %d of %d", i+1, len(pages))
		}
		b.pages = append(b.pages, page{title: "Ways side by side", sub: sub, list: func(area render.Rect) []render.Mark {
			return append(w.names(area, area.Min.Y+head-1), stack(list, area.Min.X, area.Min.Y+head)...)
		}})
	}
}

// names writes the heads of the columns.
func (w *waysTable) names(area render.Rect, y render.Paper) []render.Mark {
	var marks []render.Mark
	in := render.Lettering{Size: w.st.Body.Size, Face: render.Medium}
	for i, name := range w.c.Names {
		lines := render.Wrap(name, in.Size, in.Face, w.cellWide())
		at := render.Point{X: area.Min.X + w.x(i), Y: y - 1.6}
		marks = append(marks, render.Words("way", in.Text(at, lines[0], render.InkMain, render.Left)))
	}
	return append(marks, render.Stroke("", render.Line(render.Point{X: area.Min.X, Y: y}, render.Point{X: area.Max.X, Y: y}), w.st.Cut))
}

// rowOf makes one row: its name, and in each column what write puts there.
func (w *waysTable) rowOf(ref, name string, write func(column int, in *writer)) block {
	first := &writer{st: w.st, ref: ref, w: w.wide*wayNames - 3}
	first.bold(name)
	out := block{first.marks, first.y}
	for i := range w.c.Names {
		in := &writer{st: w.st, ref: ref, x: w.x(i), w: w.cellWide()}
		write(i, in)
		out.marks = append(out.marks, in.marks...)
		out.high = max(out.high, in.y)
	}
	out.high += 2.2
	y := out.high - 1
	out.marks = append(out.marks, render.Stroke("", render.Line(render.Point{Y: y}, render.Point{X: w.wide, Y: y}), w.st.Thin))
	return out
}

func (w *waysTable) where() block {
	return w.rowOf("place", "Where it stands", func(i int, in *writer) { in.all(w.st.Body, placing.WhereWords(w.c.Places[i], w.o.Unit)) })
}

// answers writes a question and the answer of each way, its sign before it.
func (w *waysTable) answers(r *placing.AnswerRow) block {
	return w.rowOf("answer."+r.ID, r.Answers[0].Sentence, func(i int, in *writer) {
		a := r.Answers[i]
		if sign, ok := signOf(a.Verdict); ok {
			in.marks = append(in.marks, sign.At(in.ref, render.Point{X: in.x + w.st.Sign/2, Y: w.st.Sign/2 + 0.2}, w.st.Sign)...)
			in.x, in.w = in.x+w.st.Sign+1.2, in.w-w.st.Sign-1.2
		}
		in.all(w.st.Body, verdictWords(a))
		if a.HasSpare && a.Verdict != fit.NotApplicable && a.Verdict != fit.None {
			in.all(w.st.Body, fit.SpareWords(a.Spare, a.Unit, w.o.Unit))
		} else if a.Verdict == fit.CannotTell {
			in.small(fit.Spoken(a.Ask))
		}
	})
}

func (w *waysTable) heads(r *placing.HeadRow) block {
	name := map[string]string{"sit-up-top": "Headroom over the upper mattress", "sit-up-bottom": "Headroom over the lower mattress"}[r.ID]
	return w.rowOf("headroom", name, func(i int, in *writer) {
		if i >= len(r.Free) || math.IsNaN(r.Free[i]) {
			in.small("not known")
			return
		}
		in.put(w.st.Measure, Options{Unit: w.o.Unit}.Length(r.Free[i]))
	})
}

// sameBoards names the boards of which all ways take as many.
func (w *waysTable) sameBoards(stocks []string) block {
	in := &writer{st: w.st, ref: "boards", w: w.wide}
	in.all(w.st.Body, "The same in all: boards of "+strings.Join(stocks, ", "))
	return block{in.marks, in.y + 2.2}
}

func (w *waysTable) boards(r *placing.BoardRow) block {
	return w.rowOf("boards", "Boards: "+r.Stock, func(i int, in *writer) {
		if r.Pieces[i] == 0 {
			in.small("none")
			return
		}
		words := fmt.Sprintf("%d pieces", r.Pieces[i])
		if r.Pieces[i] == 1 {
			words = "1 piece"
		}
		if !r.Sheet {
			words += ", " + Options{Unit: w.o.Unit}.Length(r.Long[i])
		}
		in.all(w.st.Body, words)
	})
}
