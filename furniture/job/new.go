package job

import (
	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/room"
	"bunkwright/room/length"
)

// Start is what a new job begins with.
type Start struct {
	Name    string
	Unit    length.Unit
	Places  []string
	Shape   Shape         // "": a rectangle
	AB, BC  length.Length // two walls: the whole room across and down
	Ceiling length.Length // 0: not read yet
	Assumed bool          // nobody measured anything: the lengths only begin the drawing
}

// New returns a starting job: a room with what was given, read once or only assumed, and a plain bunk against wall A to B. Nothing is said
// about what the room has; the questions ask for it.
func New(s Start) Job {
	j := Job{
		Format: Format, Name: s.Name, Unit: s.Unit.String(), Places: s.Places,
		Room:  room.Room{},
		Bed:   plainBed(s.Unit),
		Place: Placement{Wall: "AB", From: "A", Turn: AgainstSide},
	}
	s.shape(&j.Room)
	if s.Ceiling > 0 {
		j.Room.Ceilings = append([]room.Ceiling{{Key: "main", Heights: []room.Height{{Key: "A", Corner: "A", Height: s.given(s.Ceiling)}}}}, j.Room.Ceilings...)
	}
	return j
}

// given is a length as it stands in the job.
func (s Start) given(l length.Length) room.Measure {
	how := room.Once
	if s.Assumed {
		how = room.Assumed
	}
	return room.Measure{{Value: l, How: how}}
}

// plainBed is a bunk of usual sizes (common practice, no source), in the stock that is sold in that unit.
func plainBed(u length.Unit) bunk.Sizes {
	if u == length.Millimetres {
		return metricBed()
	}
	in := func(n, d length.Length) length.Length { return n * length.Inch / d }
	deck := func(high, thick length.Length) bunk.Deck {
		return bunk.Deck{Height: high, MattressLong: in(75, 1), MattressWide: in(38, 1), MattressThick: thick, MattressName: "twin", Head: bunk.Left}
	}
	return bunk.Sizes{
		Upper:  deck(in(55, 1), in(6, 1)),
		Lower:  deck(in(13, 1), in(6, 1)),
		Guard:  bunk.Guard{Rows: 1, Top: in(267, 4)},
		Ladder: &bunk.Ladder{At: bunk.Right, Angle: 90},
		Gaps:   bunk.BySpacer,
	}
}

func metricBed() bunk.Sizes {
	const mm = length.Millimetre
	deck := func(high, thick length.Length) bunk.Deck {
		return bunk.Deck{Height: high, MattressLong: 2000 * mm, MattressWide: 900 * mm, MattressThick: thick, MattressName: "single 90", Head: bunk.Left}
	}
	board := func(name string, thick, wide length.Length) furniture.Stock {
		return furniture.Stock{Name: name, Thick: thick * mm, Wide: wide * mm}
	}
	return bunk.Sizes{
		Upper: deck(1350*mm, 120*mm), Lower: deck(350*mm, 140*mm), Play: 18 * mm,
		Post: board("45x95 mm", 45, 95), Rail: board("45x145 mm", 45, 145), Ledge: board("45x45 mm", 45, 45), Slat: board("20x95 mm", 20, 95),
		Guard:  bunk.Guard{Stock: board("20x145 mm", 20, 145), Rows: 1, Top: 1650 * mm, Gap: 360 * mm},
		Ladder: &bunk.Ladder{At: bunk.Right, Angle: 90, Stock: board("45x95 mm", 45, 95), Tread: board("45x95 mm", 45, 95)},
		Gaps:   bunk.BySpacer,
	}
}
