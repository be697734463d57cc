// Package pdf answers how drawings are printed true to scale: one document, a page for each.
package pdf

import (
	"errors"
	"fmt"
	"io"
	"time"

	"codeberg.org/go-pdf/fpdf"

	"bunkwright/render"
)

// ErrNoDate says that the document was given no date. The clock is never read, so that the same
// drawings give the same bytes.
var ErrNoDate = errors.New("document without a date")

// ErrNoPages says that there is nothing to print.
var ErrNoPages = errors.New("document without pages")

// FitError says that a drawing is larger than its paper. It is not shrunk: it would no longer
// be true to scale.
type FitError struct {
	Page         int // counted from 1
	W, H         render.Paper
	PaperW, High render.Paper
}

// Error names the page and both sizes.
func (e *FitError) Error() string {
	return fmt.Sprintf("page %d: drawing of %.1f x %.1f mm on paper of %.1f x %.1f mm",
		e.Page, float64(e.W), float64(e.H), float64(e.PaperW), float64(e.High))
}

// Size is a size of paper, upright.
type Size struct{ W, H render.Paper }

// The sizes of paper (A4: ISO 216; Letter: 8.5 by 11 in, ANSI/ASME Y14.1 size A).
var (
	Letter = Size{render.In(8.5), render.In(11)}
	A4     = Size{210, 297}
)

// Page is a drawing and the paper it is printed on, in the middle of it. The zero Size is paper
// as large as the drawing.
type Page struct {
	Drawing   render.Drawing
	Size      Size
	Landscape bool
}

// Paper returns the paper's width and height as it is printed.
func (p Page) Paper() (w, h render.Paper) {
	if p.Size == (Size{}) {
		return p.Drawing.W, p.Drawing.H
	}
	if p.Landscape {
		return p.Size.H, p.Size.W
	}
	return p.Size.W, p.Size.H
}

// On puts drawings on paper of one size, turned as each of them lies. Characters that the fonts lack become question marks.
func On(size Size, drawings []render.Drawing) []Page {
	pages := make([]Page, len(drawings))
	for i, d := range drawings {
		pages[i] = Page{Drawing: d.Substituted(), Size: size, Landscape: d.W > d.H}
	}
	return pages
}

// Info is what the document says of itself.
type Info struct {
	Title string
	Date  time.Time // stands in the document as its date of creation; required
}

// Write writes the pages in black on white, with an outline of their titles, or returns the
// reasons why it cannot. Text can be searched and copied.
func Write(w io.Writer, pages []Page, info Info) error {
	if err := check(pages, info); err != nil {
		return err
	}
	doc := newDocument(pages, info)
	for _, p := range pages {
		doc.page(p)
	}
	return doc.Output(w)
}

// fitSlack allows for a drawing laid out to the paper's size in another unit, in millimetres.
const fitSlack = 0.01

func check(pages []Page, info Info) error {
	var errs []error
	if info.Date.IsZero() {
		errs = append(errs, ErrNoDate)
	}
	if len(pages) == 0 {
		errs = append(errs, ErrNoPages)
	}
	for i, p := range pages {
		if err := p.Drawing.Check(); err != nil {
			errs = append(errs, fmt.Errorf("page %d: %w", i+1, err))
		}
		if w, h := p.Paper(); p.Drawing.W > w+fitSlack || p.Drawing.H > h+fitSlack {
			errs = append(errs, &FitError{i + 1, p.Drawing.W, p.Drawing.H, w, h})
		}
	}
	return errors.Join(errs...)
}

// document writes pages with the last pen and letters set remembered, which keeps files small.
type document struct {
	*fpdf.Fpdf
	palette render.Palette
	at      render.Point // of the drawing's corner on the page
	state   state
}

// state is what was last set on the page.
type state struct {
	pen     render.Pen
	fill    render.Ink
	words   render.Ink
	letters render.Lettering
	set     struct{ pen, fill, words bool }
}

func newDocument(pages []Page, info Info) *document {
	w, h := pages[0].Paper()
	doc := &document{
		Fpdf: fpdf.NewCustom(&fpdf.InitType{
			OrientationStr: "P", UnitStr: "mm", Size: fpdf.SizeType{Wd: float64(w), Ht: float64(h)},
		}),
		palette: render.Print,
	}
	doc.SetCatalogSort(true)
	doc.SetCreationDate(info.Date.UTC())
	doc.SetModificationDate(info.Date.UTC())
	doc.SetProducer("Bunkwright", true)
	doc.SetTitle(info.Title, true)
	doc.SetMargins(0, 0, 0)
	doc.SetAutoPageBreak(false, 0)
	doc.SetLineJoinStyle("round")
	for _, f := range facesOf(pages) {
		doc.AddUTF8FontFromBytes(f.String(), "", f.TTF())
	}
	return doc
}

// facesOf returns every face used, and the regular one in any case: the outline is set with it.
func facesOf(pages []Page) []render.Face {
	all := render.Drawing{Marks: []render.Mark{render.Words("", render.Text{})}}
	for _, p := range pages {
		all.Marks = append(all.Marks, p.Drawing.Marks...)
	}
	return all.Faces()
}

func (d *document) page(p Page) {
	w, h := p.Paper()
	d.AddPageFormat("P", fpdf.SizeType{Wd: float64(w), Ht: float64(h)})
	d.at = render.Point{X: (w - p.Drawing.W) / 2, Y: (h - p.Drawing.H) / 2}
	d.state = state{}
	d.letter(render.Lettering{Size: 3, Face: render.Regular})
	d.Bookmark(p.Drawing.Title, 0, 0)
	for _, m := range p.Drawing.Marks {
		d.mark(m)
	}
}

func (d *document) mark(m render.Mark) {
	switch m.Kind {
	case render.KindStroke:
		d.pen(m.Pen)
		d.trace(m.Path, "D")
	case render.KindFill:
		d.ink(m.Ink)
		d.trace(m.Path, "F*")
	case render.KindText:
		d.text(m.Text)
	}
}
