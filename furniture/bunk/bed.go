package bunk

import (
	"bunkwright/furniture"
	"bunkwright/room/geom"
)

// Bed is the bed as boards, with the features that questions ask about. All numbers are mm in the bed's own axes (see
// furniture.OnBed): x = 0 is the outermost face of the left end, y = 0 that of the wall side. Only a ladder at the left end reaches
// to negative x.
type Bed struct {
	Sizes    Sizes    // with defaults filled in
	Assumed  []string // which sizes were not chosen and took their default, by file key
	Parts    []furniture.Part
	Joints   []furniture.Joint
	Foot     geom.Polygon // outline over everything that stands or hangs within the posts and ends, ladder and drawers left out
	Long     float64      // overall, end to end, climbing slats included
	Wide     float64      // overall, wall side to front, ladder and book ledge left out
	Inside   Inside
	Upper    DeckAt
	Lower    DeckAt
	Guards   []GuardAt
	Openings []Opening
	WayIn    WayIn
	Steps    *Steps
	Climb    *ClimbAt
	Drawers  []DrawerAt
	Cleats   []CleatAt
	Posts    []PostAt
}

// Inside is the room that the frame leaves for a mattress: between the end members, and between the side rails, which lie further apart
// where they are thinner than the posts or the guardrail.
type Inside struct{ Long, Wide float64 }

// DeckAt is one bed's heights and its mattress.
type DeckAt struct {
	Top         float64  // what carries the mattress
	Underside   float64  // underside of the slats
	Frame       float64  // underside of the lowest member of this bed's frame (ledges, side rails, end members)
	Mattress    geom.Box // flat on the deck where its thickness is not known
	MattressTop float64  // NaN where its thickness is not known
	SlatGap     float64
	SlatCount   int
	SlatWide    float64
	HeadAtRight bool
}

// GuardAt is one run of guardrail with its rows: the rail of one side.
type GuardAt struct {
	Side           string // "front", "wall", "left", "right"
	Top            float64
	Low            float64 // underside of the top board
	From, To       float64 // along the side: x for front and wall, distance from the wall side for ends
	Full           bool    // reaches from end structure to end structure
	GapFrom, GapTo float64 // clear distance from its ends to the end structure (for a side) or the posts
	Parts          []string
}

// Opening is a hole in the outline of the bed that a child could enter.
type Opening struct {
	ID       string
	Side     string  // "front", "wall", "left", "right"
	Zone     string  // "rail" (below the top rail, down to the deck's underside), "upper end" (above the deck), "lower end" (between the decks)
	Bottom   float64 // over the post feet
	Top      float64
	Wide     float64  // level clear width
	From, To float64  // where along the side: x for front and wall, distance from the wall side for ends
	Grows    float64  // width in mm of the boards whose drying makes it wider (half of each board beside it)
	Set      bool     // its height follows from boards set by hand, so the gap setting counts
	Parts    []string // the boards beside it
}

// WayIn is the gap in the rail over the ladder.
type WayIn struct {
	Side     string
	From, To float64 // along that side
	Clear    float64
	Short    float64 // end of the shorter rail to the bed end structure, where the way in is
	Parts    []string
}

// Steps is the ladder as feet and heads meet it.
type Steps struct {
	Side  string
	Tops  []float64 // tread tops, lowest first
	Thick float64
	Deep  float64      // front to back
	Clear float64      // between the stiles
	Angle float64      // degrees from the floor
	ToBed float64      // top tread to the nearest part of the upper bed, in a straight line
	Foot  geom.Polygon // outline of the lowest tread, in the bed's axes
	Out   geom.V2      // level unit direction in which one steps off
	Parts []string
}

// ClimbAt is the climbing end.
type ClimbAt struct {
	End       End
	Footholds []Foothold
	Gaps      []float64 // clear gaps between members, the floor counted as one, bottom up; heights between rows on a panel
	Face      float64   // x of its outer face
	Grip      float64   // width across a member meant to be gripped: a slat's thickness; 0 for holds, which are not known
	Parts     []string
}

// Foothold is one level member that takes a foot.
type Foothold struct {
	Top, Deep float64
	Part      string
}

// DrawerAt is one drawer: its box shut, and how far it comes out.
type DrawerAt struct {
	ID              string
	Shut            geom.Box // drawer with its front, shut
	Travel          float64
	BoxHigh, Caster float64
	Over            float64 // underside of the lowest thing it passes under, over the post feet
	Parts           []string
}

// CleatAt is a cleat on the wall (furniture.OnWall axes).
type CleatAt struct {
	ID     string
	Shelf  int
	Box    geom.Box
	Thick  float64
	High   float64
	Screws []float64 // chosen screw places, x from the bed's left end; empty: at the studs
	Parts  []string
}

// PostAt is a post and the highest neighbour beside it.
type PostAt struct {
	Part      string
	Top       float64
	Neighbour float64
}
