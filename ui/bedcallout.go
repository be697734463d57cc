package ui

import (
	"fmt"
	"slices"

	"bunkwright/furniture/bunk"
	"bunkwright/render"
)

// callout says over the view from the front what cannot be built, between its heading and the next one's, with a leader to the first part
// that it is of. Marks are what is drawn already; to is where the next heading begins. In little room the column alone says it.
func (b *bedPane) callout(marks []render.Mark, to render.Paper) []render.Mark {
	if len(b.refused) == 0 || b.bed() == nil {
		return nil
	}
	st, words := render.ScreenStyle, b.calloutWords()
	from := render.Px(16) + st.Title.Wide("From the front") + render.Px(20)
	wide := st.Body.Wide(words) + render.Px(38)
	if room := to - render.Px(12) - from; wide > room {
		if room < render.Px(120) {
			return nil
		}
		words, wide = shortened(words, st.Body, room-render.Px(38)), room
	}
	at, leads := b.calloutAt(marks, to)
	left := max(from, min(at.X-wide/2, to-render.Px(12)-wide))
	box := render.Rect{Min: render.Point{X: left, Y: render.Px(8)}, Max: render.Point{X: left + wide, Y: render.Px(34)}}
	out := render.Outlined("", render.RoundBox(box, render.Px(3)), render.InkNotFitTint, render.Pen{Width: render.Px(1), Ink: render.InkNotFit})
	out = append(out, render.SignDoesNotFit.At("", render.Point{X: left + render.Px(16), Y: box.Centre().Y}, render.Px(14))...)
	out = append(out, render.Words("", st.Body.Text(render.Point{X: left + render.Px(30), Y: box.Centre().Y}, words, render.InkNotFit, render.Left).Middled()))
	if leads {
		foot := render.Point{X: max(box.Min.X+render.Px(8), min(at.X, box.Max.X-render.Px(8))), Y: box.Max.Y}
		out = append(out, render.Stroke("", render.Line(foot, at), render.Pen{Width: render.Px(0.75), Ink: render.InkNotFit}))
	}
	return out
}

// calloutWords are the first size that cannot be built, as it was typed, and the nearest that can.
func (b *bedPane) calloutWords() string {
	first := refusal{s: b.sizes, e: b.refused[0]}
	words := first.name()
	if shown := b.w.shown(first.e.Key); shown != "" {
		words += " " + shown
	}
	switch near := first.nearest(); {
	case near != "":
		words += ": " + near + " is the nearest"
	default:
		words += " cannot be built"
	}
	if n := len(b.refused) - 1; n > 0 {
		words += fmt.Sprintf(", and %d more", n)
	}
	return words
}

// calloutAt is where a leader ends: the top of the first part that a size at fault is of, where nothing written stands in its way.
func (b *bedPane) calloutAt(marks []render.Mark, to render.Paper) (at render.Point, leads bool) {
	at = render.Point{X: to / 2, Y: 0}
	var written []render.Rect
	for _, m := range marks {
		if m.Kind == render.KindText {
			written = append(written, m.Bounds().Grow(render.Px(2)))
		}
	}
	for _, m := range marks {
		box := m.Bounds()
		if m.Kind == render.KindText || box.Max.X > to || !b.refusedPart(b.refused[0], m.Ref) {
			continue
		}
		for _, share := range []render.Paper{0.5, 0.3, 0.7, 0.15, 0.85} {
			p := render.Point{X: box.Min.X + box.W()*share, Y: box.Min.Y}
			way := render.Rect{Min: render.Point{X: p.X, Y: render.Px(34)}, Max: p}
			if !slices.ContainsFunc(written, way.Overlaps) {
				return p, true
			}
		}
		at.X = box.Centre().X
	}
	return at, false
}

func (b *bedPane) refusedPart(e bunk.SizeError, ref string) bool {
	return ref != "" && slices.ContainsFunc(partsOf(b.bed(), e.Key), func(of string) bool { return render.Under(ref, of) })
}
