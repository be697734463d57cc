package render

// Style is all that differs between a drawing for the screen and one for paper: pens, type
// sizes, and the sizes of signs, ticks and gaps. Views take one and stay the same for both.
type Style struct {
	Cut       Pen // cut through: walls, floor, ceiling
	Section   Pen // a board in section
	Post      Pen // posts and other heavy edges
	Seen      Pen // an edge seen
	Thin      Pen // small parts, arcs, dimension lines, hatching
	Extension Pen // from the thing to its dimension line
	Lit       Pen // outline of what is lit
	Behind    Pen // behind or overhead
	KeepClear Pen // ground to keep clear
	Refused   Pen // a size that cannot be built
	Axis      Pen // where a section is cut

	Title   Lettering
	Heading Lettering
	Body    Lettering
	Measure Lettering // values on dimension lines
	Small   Lettering // the smallest allowed

	Gap   Paper // air between a text and a line
	Tick  Paper // length of a dimension tick
	Over  Paper // how far an extension line passes its dimension line
	Sign  Paper // width of a verdict sign
	Hatch Paper // distance of hatching lines
}

// ScreenStyle draws for the screen; its sizes are pixels at 1x.
var ScreenStyle = Style{
	Cut:       Pen{Width: Px(3)},
	Section:   Pen{Width: Px(2.5)},
	Post:      Pen{Width: Px(2)},
	Seen:      Pen{Width: Px(1.5)},
	Thin:      Pen{Width: Px(1)},
	Extension: Pen{Width: Px(0.75), Ink: InkSoft},
	Lit:       Pen{Width: Px(2.5)},
	Behind:    dashed(Px(1), InkMain, Px(6), Px(4)),
	KeepClear: dashed(Px(1), InkSoft, Px(2), Px(3)),
	Refused:   dashed(Px(1.5), InkNotFit, Px(6), Px(3)),
	Axis:      dashed(Px(1), InkMain, Px(14), Px(3), Px(2), Px(3)),

	Title:   Lettering{Px(18), Bold},
	Heading: Lettering{Px(15), Medium},
	Body:    Lettering{Px(13), Regular},
	Measure: Lettering{Px(14), Medium},
	Small:   Lettering{Px(13), Regular},

	Gap: Px(4), Tick: Px(10), Over: Px(4), Sign: Px(16), Hatch: Px(6),
}

// SheetStyle draws for printed sheets. Lines come in three weights, no text is under 7 points.
var SheetStyle = Style{
	Cut:       Pen{Width: 0.5},
	Section:   Pen{Width: 0.5},
	Post:      Pen{Width: 0.35},
	Seen:      Pen{Width: 0.35},
	Thin:      Pen{Width: 0.18},
	Extension: Pen{Width: 0.18},
	Lit:       Pen{Width: 0.5},
	Behind:    dashed(0.18, InkMain, 2, 1.2),
	KeepClear: dashed(0.25, InkMain, 0.5, 0.9),
	Refused:   dashed(0.35, InkNotFit, 2, 1),
	Axis:      dashed(0.18, InkMain, 4, 0.9, 0.6, 0.9),

	Title:   Lettering{Pt(15), Bold},
	Heading: Lettering{Pt(9.5), Medium},
	Body:    Lettering{Pt(8), Regular},
	Measure: Lettering{Pt(8), Medium},
	Small:   Lettering{Pt(7), Regular},

	Gap: 0.9, Tick: 2.2, Over: 1.2, Sign: 3.6, Hatch: 1.4,
}
