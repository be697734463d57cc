package view

import "bunkwright/render"

// column is the strip of words beside a drawing, filled from the top.
type column struct {
	st    render.Style
	x, w  render.Paper
	y, to render.Paper // next free height, and where the title block begins
	marks []render.Mark
}

// fits tells whether so many more lines have room.
func (c *column) fits(lines int) bool { return c.y+render.Paper(lines)*c.step() <= c.to }

func (c *column) step() render.Paper { return c.st.Small.Leading() * 1.25 }

func (c *column) put(x render.Paper, in render.Lettering, words string, anchor render.Anchor) {
	c.marks = append(c.marks, render.Words("", in.Text(render.Point{X: x, Y: c.y}, words, render.InkMain, anchor)))
}

// heading starts a new list.
func (c *column) heading(words string) {
	c.y += c.step() * 0.7
	in := render.Lettering{Size: c.st.Body.Size, Face: render.Medium}
	for _, l := range render.Wrap(words, in.Size, in.Face, c.w) {
		c.y += c.step()
		c.put(c.x, in, l, render.Left)
	}
	c.y += c.step() * 0.2
}

// line adds plain words.
func (c *column) line(words string) {
	for _, l := range render.Wrap(words, c.st.Small.Size, c.st.Small.Face, c.w) {
		c.y += c.step()
		c.put(c.x, c.st.Small, l, render.Left)
	}
}

// pair adds words with a value at the right.
func (c *column) pair(words, value string) {
	c.y += c.step()
	c.put(c.x, c.st.Small, words, render.Left)
	c.put(c.x+c.w, render.Lettering{Size: c.st.Small.Size, Face: render.Medium}, value, render.Right)
}

// blank is the length of a line to write on.
const blank render.Paper = 10

// boxWords wraps the words behind an open box.
func (c *column) boxWords(words string) []string {
	return render.Wrap(words, c.st.Small.Size, c.st.Small.Face, c.w-c.st.Small.Size*1.5-blank-c.st.Gap)
}

func (c *column) boxLines(words string) int { return len(c.boxWords(words)) }

// tickBox adds words behind an open box, with a line to write on.
func (c *column) tickBox(words string) {
	size := c.st.Small.Size
	indent := size * 1.5
	for i, l := range c.boxWords(words) {
		c.y += c.step()
		if i == 0 {
			box := render.Rect{Min: render.Point{X: c.x, Y: c.y - size*0.75}, Max: render.Point{X: c.x + size*0.85, Y: c.y + size*0.1}}
			c.marks = append(c.marks, render.Stroke("", render.Box(box), c.st.Thin))
		}
		c.put(c.x+indent, c.st.Small, l, render.Left)
	}
	at := render.Point{X: c.x + c.w, Y: c.y}
	c.marks = append(c.marks, render.Stroke("", render.Line(render.Point{X: at.X - blank, Y: at.Y}, at), c.st.Thin))
}
