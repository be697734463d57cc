package view

import (
	"fmt"
	"strings"

	"bunkwright/furniture/ask"
	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/length"
)

// AskCards returns the pages of an asking sheet as cards: each with its drawing, from where to where in words, and blanks to write on. A scene
// that holds nothing but the job will do, where its readings give it no shape.
func AskCards(s *fit.Scene, sheet ask.Sheet, o SheetOptions) []render.Drawing {
	b := newAsker(s, sheet, o)
	area := b.listArea()
	wide := (area.W() - againGap) / 2
	blocks := []block{b.askLead(wide)}
	for _, g := range sheet.Groups {
		head := b.askGroup(g, wide)
		for i, c := range g.Cards {
			card := b.askCard(c, wide)
			if i == 0 { // a heading never stands alone
				card = oneOver(head, card)
			}
			blocks = append(blocks, card)
		}
	}
	b.columns(blocks, area, wide, "Asking sheet", "what to measure, in the order in which you walk round the room")
	return b.all()
}

// AskTable returns an asking sheet as a table with blanks, on one page unless it asks for more than a page holds.
func AskTable(s *fit.Scene, sheet ask.Sheet, o SheetOptions) []render.Drawing {
	b := newAsker(s, sheet, o)
	area := b.listArea()
	wide := (area.W() - againGap) / 2
	blocks := []block{b.tableLead(wide)}
	for _, g := range sheet.Groups {
		head := b.tableHead(g, wide)
		for i, c := range g.Cards {
			row := b.tableRow(c, wide)
			if i == 0 {
				row = oneOver(head, row)
			}
			blocks = append(blocks, row)
		}
	}
	b.columns(blocks, area, wide, "Asking sheet, short", "every reading once from each end; what a number means is on the cards")
	return b.all()
}

// asker is a binder of asking sheets.
type asker struct {
	*binder
	sheet ask.Sheet
}

func newAsker(s *fit.Scene, sheet ask.Sheet, o SheetOptions) *asker {
	b := &asker{&binder{s: s, o: o, st: render.SheetStyle}, sheet}
	b.unitSaid = "feet and inches, or whatever the tape shows: write the unit behind the number"
	if o.Unit == length.Millimetres {
		b.unitSaid = "mm, or whatever the tape shows: write the unit behind the number"
	}
	b.foot = b.askEntries
	return b
}

// all makes the sheets.
func (b *asker) all() []render.Drawing {
	sheets := make([]render.Drawing, len(b.pages))
	for i := range b.pages {
		sheets[i] = b.binder.sheet(i)
	}
	return sheets
}

// askEntries are the columns of the block under an asking sheet.
func (b *asker) askEntries(f *frame, p *page) []entry {
	return []entry{
		{"Job", b.sheet.Name, true},
		{"Page", fmt.Sprintf("%d of %d", f.n, len(f.pages)), true},
		{"Answers go back as", lowered(b.sheet.Head()), true},
		{"Measured by, on which day", "", false},
		{"Date", b.o.Date, false},
	}
}

// columns deals blocks out to two columns a page.
func (b *asker) columns(blocks []block, area render.Rect, wide render.Paper, title, sub string) {
	if b.sheet.Again {
		sub = "a few readings once more, as if it were the first time"
	}
	dealt := paged(blocks, area.H())
	for i := 0; i < len(dealt); i += 2 {
		b.pages = append(b.pages, page{title: title, sub: sub, list: func(area render.Rect) []render.Mark {
			marks := stack(dealt[i], area.Min.X, area.Min.Y)
			if i+1 < len(dealt) {
				marks = append(marks, stack(dealt[i+1], area.Min.X+wide+againGap, area.Min.Y)...)
			}
			return marks
		}})
	}
}

// oneOver puts one block under another.
func oneOver(a, b block) block {
	return block{append(a.marks, render.Shift(b.marks, render.Point{Y: a.high})...), a.high + b.high}
}

// askLead says how to begin, and what to be careful of.
func (b *asker) askLead(wide render.Paper) block {
	w := &writer{st: b.st, ref: "lead", w: wide}
	if b.sheet.Start != "" {
		w.bold("Where to begin")
		w.all(b.st.Body, b.sheet.Start)
		w.y += b.st.Gap
	}
	w.bold("How to read the tape")
	w.all(b.st.Body, howToRead)
	w.y += b.st.Gap
	w.bold("At hand")
	w.all(b.st.Body, strings.Join(b.sheet.Bring, "; ")+".")
	w.y += b.st.Gap
	b.cautions(w)
	return block{w.marks, w.y + 4}
}

// howToRead goes for every card.
const howToRead = "Write down what the tape says, with its unit, not what it should be. Where a card has a second blank, turn the tape round and " +
	"read it again without looking at the first. Leave out what you cannot reach: the rest is of use."

func (b *asker) cautions(w *writer) {
	for i, text := range b.sheet.Cautions {
		if i == 0 {
			w.bold("Take care")
		}
		w.all(render.Lettering{Size: b.st.Body.Size, Face: render.Bold}, text)
	}
}

// askGroup is the heading of a group.
func (b *asker) askGroup(g ask.Group, wide render.Paper) block {
	w := &writer{st: b.st, w: wide}
	w.all(b.st.Heading, g.Title)
	if g.Lead != "" {
		w.all(b.st.Body, g.Lead)
	}
	y := w.y + b.st.Gap*1.6
	w.marks = append(w.marks, render.Stroke("", render.Line(render.Point{Y: y}, render.Point{X: wide, Y: y}), b.st.Cut))
	return block{w.marks, y + 1.2}
}

// How wide the drawing of a card is, and that of one that only points at something.
const (
	cardPicture render.Paper = 47
	cardPointer render.Paper = 34
)

// askCard is one card: its title, its drawing with the words beside it, and the blanks.
func (b *asker) askCard(c ask.Card, wide render.Paper) block {
	title := &writer{st: b.st, ref: c.Key, w: wide}
	title.all(render.Lettering{Size: b.st.Body.Size, Face: render.Bold}, fmt.Sprintf("%d  %s", c.Number, c.Title))
	y := title.y + b.st.Gap
	marks := title.marks
	x, high := render.Paper(0), render.Paper(0)
	if c.Shown.View != ask.NoView {
		o := Options{On: OnPaper, Unit: b.o.Unit, W: cardPicture}
		if c.Kind != ask.Length {
			o.W = cardPointer
		}
		d := CardDrawing(b.s, c, o)
		marks = append(marks, render.Shift(d.Marks, render.Point{Y: y})...)
		x, high = cardPicture+b.st.Gap*2, d.H
	}
	w := &writer{st: b.st, ref: c.Key, x: x, w: wide - x}
	b.cardWords(w, c)
	marks = append(marks, render.Shift(w.marks, render.Point{Y: y})...)
	y += max(high, w.y) + b.st.Gap
	marks = append(marks, b.blanks(c, y, wide)...)
	y += blankHigh
	marks = append(marks, render.Stroke("", render.Line(render.Point{Y: y}, render.Point{X: wide, Y: y}), b.st.Thin))
	return block{marks, y + 2}
}

// cardWords are what stands beside the drawing.
func (b *asker) cardWords(w *writer, c ask.Card) {
	if c.Kind != ask.Length {
		w.all(b.st.Body, c.Ask)
	}
	for _, part := range [][2]string{{"From", c.From}, {"To", c.To}, {"Hook", c.Hook}, {"Then", c.Other}, {"Photo", c.Photo}, {"Why", c.Why}} {
		if part[1] != "" {
			w.named(part[0], part[1])
		}
	}
	if c.Caution != "" {
		w.strong(c.Caution)
	}
}

// named sets a bold word and small words after it.
func (w *writer) named(name, words string) {
	in, plain := render.Lettering{Size: w.st.Small.Size, Face: render.Bold}, w.st.Small
	indent := in.Wide(name + "  ")
	w.put(in, name)
	for i, l := range wrapAfter(kept(words), plain, indent, w.w) {
		if i == 0 {
			w.marks = append(w.marks, render.Words(w.ref, plain.Text(render.Point{X: w.x + indent, Y: w.y}, l, render.InkMain, render.Left)))
			continue
		}
		w.put(plain, l)
	}
}

// blankHigh is the height of the strip with the blanks.
const blankHigh render.Paper = 9.5

// blanks draws what is to be written on, from y down.
func (b *asker) blanks(c ask.Card, y, wide render.Paper) []render.Mark {
	base := y + blankHigh - 2.6
	if c.Kind != ask.Length {
		return b.choices(c, base, wide)
	}
	half := wide
	words := []string{"the tape says"}
	if c.Other != "" {
		half, words = wide/2, append(words, "other end")
	}
	var marks []render.Mark
	for i, name := range words {
		x := half * render.Paper(i)
		marks = append(marks, render.Words(c.Key, b.st.Small.Text(render.Point{X: x, Y: base}, name, render.InkMain, render.Left)))
		from := x + b.st.Small.Wide(name) + b.st.Gap
		marks = append(marks, b.line(from, x+half-b.st.Gap*2, base))
	}
	return marks
}

func (b *asker) line(from, to, y render.Paper) render.Mark {
	return render.Stroke("", render.Line(render.Point{X: from, Y: y}, render.Point{X: to, Y: y}), b.st.Thin)
}

// choices draws a box for each answer of a card that is not read off a tape, or a blank.
func (b *asker) choices(c ask.Card, base, wide render.Paper) []render.Mark {
	labels := labelsOf(c)
	if c.Kind == ask.Count {
		marks := []render.Mark{render.Words(c.Key, b.st.Small.Text(render.Point{Y: base}, "how many", render.InkMain, render.Left))}
		return append(marks, b.line(b.st.Small.Wide("how many")+b.st.Gap, wide/2, base))
	}
	var marks []render.Mark
	x, y, box := render.Paper(0), base, b.st.Small.Size
	rows := 1
	for _, l := range labels {
		need := box + b.st.Gap*2 + b.st.Small.Wide(l) + b.st.Gap*3
		if x > 0 && x+need > wide {
			x, rows = 0, rows+1
			y += b.st.Small.Leading() * 1.2
		}
		r := render.Rect{Min: render.Point{X: x, Y: y - box*0.8}, Max: render.Point{X: x + box*0.9, Y: y + box*0.1}}
		marks = append(marks, render.Stroke("", render.Box(r), b.st.Thin), render.Words(c.Key, b.st.Small.Text(render.Point{X: r.Max.X + b.st.Gap, Y: y}, l, render.InkMain, render.Left)))
		x += need
	}
	return render.Shift(marks, render.Point{Y: -render.Paper(rows-1) * b.st.Small.Leading() * 1.2})
}

func labelsOf(c ask.Card) []string {
	if c.Kind == ask.YesNo {
		return []string{"yes", "no"}
	}
	var out []string
	for _, w := range c.Words {
		out = append(out, w.Label)
	}
	return out
}
