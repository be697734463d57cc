package svg

import (
	"math"
	"strconv"
	"strings"

	"bunkwright/render"
)

// quarters of a pixel at 1x, 1/384 in: as fine as a phone shows.
func quarters(v render.Paper) int { return int(math.Round(float64(v) * 384 / 25.4)) }

// compact returns where a path begins, and its shape in the fewest letters of the SVG path grammar: whole quarters of a pixel,
// each place counted from the one before it, level and upright lines by one number. The same shape elsewhere has the same
// letters.
func compact(p render.Path) (x, y int, shape string) {
	if len(p) == 0 {
		return 0, 0, ""
	}
	c := compactor{from: p[0].To}
	for _, s := range p[1:] {
		c.step(s)
	}
	return quarters(c.from.X), quarters(c.from.Y), c.String()
}

// compactor counts from where the path begins.
type compactor struct {
	strings.Builder
	from   render.Point
	x, y   int // where the pen is
	x0, y0 int // where the subpath began
}

func (c *compactor) at(p render.Point) (x, y int) {
	p = p.Minus(c.from)
	return quarters(p.X), quarters(p.Y)
}

func (c *compactor) step(s render.Step) {
	x, y := c.at(s.To)
	switch s.Op {
	case render.OpMove:
		c.write('m', x-c.x, y-c.y)
		c.x0, c.y0 = x, y
	case render.OpLine:
		c.line(x-c.x, y-c.y)
	case render.OpCubic:
		x1, y1 := c.at(s.C1)
		x2, y2 := c.at(s.C2)
		c.write('c', x1-c.x, y1-c.y, x2-c.x, y2-c.y, x-c.x, y-c.y)
	case render.OpClose:
		c.WriteByte('z')
		x, y = c.x0, c.y0
	}
	c.x, c.y = x, y
}

func (c *compactor) line(dx, dy int) {
	switch {
	case dx == 0 && dy == 0:
	case dx == 0:
		c.write('v', dy)
	case dy == 0:
		c.write('h', dx)
	default:
		c.write('l', dx, dy)
	}
}

// write writes a letter and its numbers; a minus parts two numbers by itself.
func (c *compactor) write(letter byte, numbers ...int) {
	c.WriteByte(letter)
	for i, n := range numbers {
		if i > 0 && n >= 0 {
			c.WriteByte(' ')
		}
		c.WriteString(strconv.Itoa(n))
	}
}
