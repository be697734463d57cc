package view

import (
	"strings"

	"bunkwright/furniture/ask"
	"bunkwright/furniture/fit"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/room/length"
)

// cardWide is how wide the drawing of a card is for a screen where nobody says, in px; it is a share of that high, more for a whole room.
const (
	cardWide      = 300.0
	cardShare     = 0.62
	cardShareRoom = 0.76
)

// CardDrawing draws what one card of an asking sheet asks for: the wall or the room in outline, the tape from its hook to its case, and two
// arrows. It is no drawing to scale and shows no value: where something was not read it stands somewhere, and what is small is drawn large.
// A card with nothing to show has a drawing without marks. A scene that holds nothing but the job will do.
func CardDrawing(s *fit.Scene, c ask.Card, o Options) render.Drawing {
	if o.W <= 0 {
		o.W = render.Px(cardWide)
	}
	if o.H <= 0 {
		o.H = o.W * cardShare
		if c.Shown.View == ask.FromAbove {
			o.H = o.W * cardShareRoom
		}
	}
	p := newCardPainter(s, c, o)
	switch c.Shown.View {
	case ask.FaceOn:
		p.faceOn()
	case ask.FromAbove:
		p.fromAbove()
	case ask.CloseUp:
		p.closeUp()
	}
	return render.Drawing{Title: c.Title, W: o.W, H: o.H, Marks: p.marks}
}

// cardPainter draws one card. Its places are on paper at once: x to the right, y down.
type cardPainter struct {
	s     *fit.Scene
	c     ask.Card
	o     Options
	st    render.Style
	words render.Lettering
	page  render.Rect
	marks []render.Mark
	body  []render.Rect // letters and words, which others keep off
}

func newCardPainter(s *fit.Scene, c ask.Card, o Options) *cardPainter {
	p := &cardPainter{s: s, c: c, o: o, st: o.Style(), page: render.Rect{Max: render.Point{X: o.W, Y: o.H}}}
	p.words = render.Lettering{Size: render.Px(16), Face: render.Medium}
	if o.On == OnPaper {
		p.words = p.st.Measure
	}
	return p
}

func (p *cardPainter) add(marks ...render.Mark) { p.marks = append(p.marks, marks...) }

func (p *cardPainter) stroke(path render.Path, pen render.Pen) {
	p.add(render.Stroke(p.c.Shown.Thing, path, pen))
}

func (p *cardPainter) outlined(path render.Path, ink render.Ink, pen render.Pen) {
	p.add(render.Outlined(p.c.Shown.Thing, path, ink, pen)...)
}

// letter rings the letter of a corner.
func (p *cardPainter) letter(letter string, at render.Point) {
	r := p.words.Size * 0.8
	p.add(render.Outlined("corner."+letter, render.Circle(at, r), render.InkField, p.st.Thin)...)
	p.add(render.Words("corner."+letter, p.words.Text(at, letter, render.InkMain, render.Centre).Middled()))
	p.body = append(p.body, render.Around(at).Grow(r))
}

// mm is the first reading of a key of the job, in mm, or what is taken where nobody read it.
func (p *cardPainter) mm(key string, otherwise float64) float64 {
	text := jobfile.Shown(p.s.Job, key)
	l, err := length.Parse(text, length.Context{Unit: jobUnit(p.s.Job.Unit)})
	if text == "" || err != nil {
		return otherwise
	}
	return l.MM()
}

func jobUnit(name string) length.Unit {
	u, _ := length.ParseUnit(name)
	return u
}

// cardThing is where something is drawn: along its wall from the left end, up from the floor, and out from the wall, in mm.
type cardThing struct {
	table            string
	x0, x1           float64
	z0, z1           float64
	out0, out1       float64
	round            bool
	fromRight, found bool
}

// usual are the sizes that a thing is drawn with where nobody read them: wide, bottom, top, out, deep; our own, for drawings only.
var usual = map[string][5]float64{
	"door": {760, 0, 2030, 0, 0}, "window": {900, 750, 2000, 0, 0}, "outlet": {80, 250, 370, 0, 0}, "register": {300, 100, 250, 150, 150},
	"heater": {900, 30, 250, 0, 100}, "furniture": {800, 0, 900, 20, 450}, "fan": {1100, 2100, 2250, 1500, 0}, "light": {350, 2150, 2400, 1500, 0},
	"alarm": {130, 2150, 2280, 500, 0}, "hatch": {600, 0, 0, 900, 700}, "stud": {40, 0, 2440, 0, 0}, "ceiling": {0, 0, 2440, 600, 0},
	"beam": {0, 2150, 2440, 1200, 200},
}

// leastShare is how much of the wall a thing takes up at least, so that both its edges can be seen.
var leastShare = map[string]float64{"outlet": 0.055, "register": 0.13, "alarm": 0.07, "stud": 0.03, "light": 0.1, "window": 0.24, "door": 0.2, "heater": 0.25, "furniture": 0.2, "hatch": 0.16, "fan": 0.3}

// thing finds out where something is drawn on a wall of a length and a room of a height.
func (p *cardPainter) thing(ref string, long, high float64) cardThing {
	table, _, _ := strings.Cut(ref, ".")
	if strings.Contains(ref, ".stud.") {
		table = "stud"
	}
	u, known := usual[table]
	if !known {
		return cardThing{}
	}
	t := cardThing{table: table, found: true, z0: u[1], z1: min(u[2], high), round: table == "fan" || table == "light" || table == "alarm"}
	if table == "outlet" {
		mid := p.mm(ref+".height", (u[1]+u[2])/2)
		t.z0, t.z1 = mid-0.045*high, mid+0.045*high
	}
	width := u[0]
	for _, key := range []string{"wide", "sweep"} {
		width = p.mm(ref+"."+key, width)
	}
	if least := leastShare[table] * long; width < least {
		width = least
	}
	width = min(width, long*0.8)
	t.fromRight = p.fromRight(ref)
	at := p.mm(ref+".at", (long-width)/2)
	centred := t.round || table == "outlet" || table == "stud" || table == "ceiling"
	if centred && jobfile.Shown(p.s.Job, ref+".at") != "" {
		at -= width / 2
	}
	at = min(max(at, 0.07*long), 0.93*long-width)
	if t.round {
		at = min(max(at, 0.3*long), 0.7*long-width)
	}
	if table == "stud" && at < 0.2*long {
		at = 0.2 * long
	}
	t.x0 = at
	if t.fromRight {
		t.x0 = long - at - width
	}
	t.x1 = t.x0 + width
	t.out0 = p.mm(ref+".out", u[3])
	if t.round || strings.HasSuffix(p.c.Key, ".out") {
		t.out0 = min(max(t.out0, 0.22*long), 0.5*long)
	}
	t.out1 = t.out0 + p.mm(ref+".deep", u[4])
	return t
}

// fromRight tells whether a thing is counted from the right end of its wall, as seen from inside.
func (p *cardPainter) fromRight(ref string) bool {
	wall, from := p.c.Shown.Wall, jobfile.Shown(p.s.Job, ref+".from")
	return from != "" && len(wall) == 2 && from == wall[1:]
}
