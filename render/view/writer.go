package view

import "bunkwright/render"

// writer sets lines of words one below the other from 0 down.
type writer struct {
	st    render.Style
	ref   string
	x, w  render.Paper
	y     render.Paper
	marks []render.Mark
}

// put sets one line on the next baseline.
func (w *writer) put(in render.Lettering, words string) {
	w.y += in.Leading()
	w.marks = append(w.marks, render.Words(w.ref, in.Text(render.Point{X: w.x, Y: w.y}, words, render.InkMain, render.Left)))
}

func (w *writer) all(in render.Lettering, words string) {
	for _, l := range render.Wrap(kept(words), in.Size, in.Face, w.w) {
		w.put(in, l)
	}
}

// bold sets the question.
func (w *writer) bold(words string) {
	w.all(render.Lettering{Size: w.st.Body.Size, Face: render.Medium}, words)
}

// small sets what is printed small.
func (w *writer) small(words string) { w.all(w.st.Small, words) }

// strong sets a caution.
func (w *writer) strong(words string) {
	w.all(render.Lettering{Size: w.st.Small.Size, Face: render.Bold}, words)
}

// lead sets bold words, a colon, and plain words after them.
func (w *writer) lead(first, rest string) {
	in, plain := render.Lettering{Size: w.st.Body.Size, Face: render.Bold}, w.st.Body
	if rest != "" {
		first += ": "
	}
	indent := in.Wide(first)
	w.put(in, first)
	for i, l := range wrapAfter(kept(rest), plain, indent, w.w) {
		if i == 0 {
			w.marks = append(w.marks, render.Words(w.ref, plain.Text(render.Point{X: w.x + indent, Y: w.y}, l, render.InkMain, render.Left)))
			continue
		}
		w.put(plain, l)
	}
}

// wrapAfter wraps words whose first line begins after an indent.
func wrapAfter(words string, in render.Lettering, indent, wide render.Paper) []string {
	if words == "" {
		return nil
	}
	first := render.Wrap(words, in.Size, in.Face, wide-indent)
	if len(first) == 1 {
		return first
	}
	rest := words[min(len(first[0])+1, len(words)):]
	return append(first[:1:1], render.Wrap(rest, in.Size, in.Face, wide)...)
}

// tail sets a source with its basis in bold at the end.
func (w *writer) tail(source, basis string) {
	lines := render.Wrap(source, w.st.Small.Size, w.st.Small.Face, w.w-w.st.Small.Wide(": "))
	strong := render.Lettering{Size: w.st.Small.Size, Face: render.Bold}
	for i, l := range lines {
		if i < len(lines)-1 || basis == "" {
			w.put(w.st.Small, l)
			continue
		}
		if l != "" {
			l += ": "
		}
		at := w.st.Small.Wide(l)
		if at+strong.Wide(basis) > w.w {
			w.put(w.st.Small, l)
			at, l = 0, ""
		}
		w.put(w.st.Small, l)
		w.marks = append(w.marks, render.Words(w.ref, strong.Text(render.Point{X: w.x + at, Y: w.y}, basis, render.InkMain, render.Left)))
	}
}

// mark sets a word to the left of the next line.
func (w *writer) mark(x render.Paper, word string) {
	in := render.Lettering{Size: w.st.Small.Size, Face: render.Medium}
	y := w.y + w.st.Small.Leading()
	for _, l := range render.Wrap(word, in.Size, in.Face, w.x-x) {
		w.marks = append(w.marks, render.Words(w.ref, in.Text(render.Point{X: x, Y: y}, l, render.InkMain, render.Left)))
		y += in.Leading()
	}
}
