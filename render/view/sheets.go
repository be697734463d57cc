package view

import (
	"bunkwright/furniture/bunk"
	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/length"
)

// PaperSize is a size of paper.
type PaperSize uint8

// The sizes.
const (
	Letter PaperSize = iota
	A4
)

// Size returns the shorter and the longer side.
func (p PaperSize) Size() (short, long render.Paper) {
	if p == A4 {
		return 210, 297
	}
	return render.In(8.5), render.In(11)
}

// SheetOptions say how sheets are made.
type SheetOptions struct {
	Paper    PaperSize
	Portrait bool        // drawings upright, else as it suits; lists always are
	Unit     length.Unit // of all measures
	Date     string      // printed as it stands; the clock is not asked
}

// Sheets returns the pages to print of a job, each with its title: the drawings, the answers, the parts and the whole caution.
func Sheets(s *fit.Scene, answers []fit.Answer, o SheetOptions) []render.Drawing {
	b := &binder{s: s, answers: answers, o: o, st: render.SheetStyle, known: knownOf(s)}
	b.drawings()
	b.againPages()
	b.answerPages()
	b.partPages()
	b.cautionPage()
	sheets := make([]render.Drawing, len(b.pages))
	for i := range b.pages {
		sheets[i] = b.sheet(i)
	}
	return sheets
}

// bedSheet is a view of the bed that gets a sheet of its own.
type bedSheet struct {
	title, sub string
	view       func(*fit.Scene, []fit.Answer, Options) render.Drawing
	section    bool // the plan marks where it is cut
}

// bedSheets lists the views of the bed in the order of their sheets, after those of the room.
var bedSheets = []bedSheet{
	{title: "Section through both beds", sub: "cut along the middle of the mattresses", view: Section, section: true},
	{title: "Story stick", sub: "heights over the floor", view: Stick},
	{title: "Bed from the front", sub: "as built; what hangs on the wall is drawn with the wall", view: ofBed(BedFront)},
	{title: "Bed from the left end", sub: "seen from outside", view: ofBed(leftEnd)},
	{title: "Bed from the right end", sub: "seen from outside", view: ofBed(rightEnd)},
	{title: "Bed from above", sub: "mattresses left off, the wall side at the top", view: ofBed(BedAbove)},
}

// ofBed makes a view of the bed alone one of the scene.
func ofBed(view func(*bunk.Bed, Options) render.Drawing) func(*fit.Scene, []fit.Answer, Options) render.Drawing {
	return func(s *fit.Scene, _ []fit.Answer, o Options) render.Drawing {
		o.Mirror = s.Job.Place.Mirror
		return view(s.Bed, o)
	}
}

func leftEnd(b *bunk.Bed, o Options) render.Drawing  { return BedEnd(b, bunk.Left, o) }
func rightEnd(b *bunk.Bed, o Options) render.Drawing { return BedEnd(b, bunk.Right, o) }

// binder gathers the pages before they are numbered.
type binder struct {
	s       *fit.Scene
	answers []fit.Answer
	o       SheetOptions
	st      render.Style
	known   known
	pages   []page
	cutOn   int // number of the sheet with the section
	againOn int // number of the sheet that lists all readings to take again, 0 where there is none

	foot     func(*frame, *page) []entry // of sheets of another kind: the entries of their block
	unitSaid string                      // and what it says of units
}

// page is one sheet to be: a drawing at the largest usual scale, or a list.
type page struct {
	title, sub string
	view       func(Options) render.Drawing
	legend     bool
	turns      bool                                 // it stands upright where that allows a larger scale
	beside     func(c *column)                      // further words beside a drawing
	list       func(area render.Rect) []render.Mark // what stands on a list's page
}

// drawings lists the pages with drawings.
func (b *binder) drawings() {
	b.pages = append(b.pages, page{
		title: "Room from above", sub: b.planSub(), legend: true, turns: true, beside: b.besidePlan,
		view: func(o Options) render.Drawing {
			o.CutOn = b.cutOn
			return Plan(b.s, b.answers, o)
		},
	})
	for _, w := range b.walls() {
		b.pages = append(b.pages, page{
			title: "Wall " + between(w.Key), sub: b.wallSub(w), legend: true,
			view: func(o Options) render.Drawing { return Wall(b.s, b.answers, w.Key, o) },
		})
	}
	if b.s.Bed == nil {
		b.unbuiltPage()
		return
	}
	for _, v := range bedSheets {
		p := page{
			title: v.title, sub: v.sub, legend: true,
			view: func(o Options) render.Drawing { return v.view(b.s, b.answers, o) },
		}
		if v.section {
			b.cutOn = len(b.pages) + 1
			p.beside = b.besideSection
			p.sub += b.lookedAt()
		}
		b.pages = append(b.pages, p)
	}
}

func (b *binder) planSub() string {
	switch {
	case b.s.Stands:
		return "walls cut through; the bed seen from over it"
	case b.s.Bed == nil:
		return "walls cut through; the bed cannot be built"
	}
	return "walls cut through; the bed is not placed yet"
}

// lookedAt says which wall the section looks at, and where it is cut.
func (b *binder) lookedAt() string {
	if !b.s.Stands {
		return ""
	}
	words := "; where it is cut is on sheet 1"
	if w := newSection(b.s, nil).behind; w != nil {
		words = ", looking at wall " + between(w.Key) + words
	}
	return words
}

func (b *binder) wallSub(w *fit.Wall) string {
	sub := "face on, seen from inside"
	if w == b.s.At {
		sub += ", with the bed before it"
	}
	if read, _ := b.s.Job.Room.Wall(w.Key); read.Name != "" {
		sub = read.Name + "; " + sub
	}
	return sub
}

// walls returns the walls that are drawn face on: the bed's own and those at its ends.
func (b *binder) walls() []*fit.Wall {
	at := b.s.At
	if at == nil {
		at = wallNamed(b.s, b.s.Job.Place.Wall)
	}
	if at == nil {
		return nil
	}
	n := len(b.s.Walls)
	return []*fit.Wall{at, wallAt(b.s, (at.Index+n-1)%n), wallAt(b.s, (at.Index+1)%n)}
}

// sheet makes page i.
func (b *binder) sheet(i int) render.Drawing {
	p := &b.pages[i]
	f := b.frame(i, b.o.Portrait || p.list != nil)
	if p.list != nil {
		f.add(p.list(f.area)...)
	} else {
		f.place(p)
	}
	if p.turns && !f.upright {
		if g := b.frame(i, true); g.place(p) && g.scale.k > f.scale.k {
			f = g
		}
	}
	f.finish(p)
	f.d.Title = p.title
	return f.d
}
