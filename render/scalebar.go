package render

import "strconv"

// ScaleBar returns a bar of n equal units from its top left at p, alternately filled and open,
// with the count of units over the joints and the unit's name over the last.
func (s Style) ScaleBar(ref string, p Point, unit Paper, n int, name string) []Mark {
	top := p.Y + s.Small.Size + s.Gap
	high := s.Tick * 0.55
	var marks []Mark
	for i := range n {
		box := Box(Rect{Point{p.X + Paper(i)*unit, top}, Point{p.X + Paper(i+1)*unit, top + high}})
		ink := InkMain
		if i%2 == 1 {
			ink = InkPaper
		}
		marks = append(marks, Outlined(ref, box, ink, s.Thin)...)
	}
	for i := range n + 1 {
		at := Point{p.X + Paper(i)*unit, p.Y + s.Small.Size}
		digits := s.Small.Text(at, strconv.Itoa(i), InkMain, Centre)
		if i == n { // the figure stays over the joint, the unit follows it
			digits.At, digits.Anchor = digits.Start(), Left
			digits.Words += " " + name
		}
		marks = append(marks, Words(ref, digits))
	}
	return marks
}

// CheckBar is a line of known length that the reader measures before trusting a sheet.
type CheckBar struct {
	Words  string
	Length Paper
	Step   Paper // distance of its ticks
	Middle int   // every how many steps the tick is longer
	Long   int   // every how many steps the tick is longest
}

// The check bars.
var (
	CheckTwoInches = CheckBar{"2 in", In(2), In(0.25), 2, 4}
	CheckFourInch  = CheckBar{"4 in", In(4), In(0.25), 2, 4}
	CheckFiftyMM   = CheckBar{"50 mm", 50, 5, 2, 10}
	CheckHundredMM = CheckBar{"100 mm", 100, 5, 2, 10}
)

// CheckBar returns the bar with its sentence, from its top left at p. The ticks stand on the
// line, and their outer edges, not their middles, are the length apart.
func (s Style) CheckBar(ref string, p Point, bar CheckBar) []Mark {
	words := "Measure this line: it must be " + bar.Words + " long."
	base := p.Y + s.Small.Leading() + s.Tick + s.Gap
	marks := []Mark{Words(ref, s.Small.Text(Point{p.X, p.Y + s.Small.Size*0.8}, words, InkMain, Left))}
	half := s.Cut.Width / 2
	line := Polyline(
		Point{p.X + half, base - s.Tick}, Point{p.X + half, base},
		Point{p.X + bar.Length - half, base}, Point{p.X + bar.Length - half, base - s.Tick})
	return append(marks, Stroke(ref, line, s.Cut), Stroke(ref, bar.ticks(p.X, base, s.Tick), s.Thin))
}

func (bar CheckBar) ticks(x, base, high Paper) Path {
	var ticks Path
	for i := 1; Paper(i)*bar.Step < bar.Length-bar.Step/2; i++ {
		h := high * 0.45
		if i%bar.Long == 0 {
			h = high
		} else if i%bar.Middle == 0 {
			h = high * 0.65
		}
		at := Point{x + Paper(i)*bar.Step, base}
		ticks = append(ticks, Line(at, Point{at.X, base - h})...)
	}
	return ticks
}
