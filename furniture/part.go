// Package furniture answers what any built thing is made of: parts cut from boards, where they sit, and the joints that hold them.
package furniture

import (
	"math"

	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// Stock is what a part is cut from: its name as sold and the section as it really is.
type Stock struct {
	Name  string        // as sold: "2x4", "1x6", "38x63", "plywood 1/2"
	Thick length.Length // the smaller side of the section, or the thickness of a sheet
	Wide  length.Length // the larger side of the section; 0 for a sheet
	Sheet bool          // plywood: grain runs along the part's length
}

// Class tells when a part may be cut.
type Class int

const (
	CutNow     Class = iota // in one batch, from paper
	CutAfter                // once the reading named in Part.After has been checked
	FitToPlace              // held up where it goes and marked there
)

func (c Class) String() string {
	return [...]string{"cut now", "cut after a reading", "fit in place"}[c]
}

// Frame tells whose axes a part's box is given in.
type Frame int

const (
	// OnBed: x from the left end as seen from the front, y from the wall side (0) towards the front (negative), z up from the
	// underside of the post feet.
	OnBed Frame = iota
	// OnWall: x as OnBed, y from the wall's face (0) into the room (negative), z up from the top of the floor covering.
	OnWall
)

// A Part is one piece of wood or sheet.
type Part struct {
	ID       string // stable, in dots: "left.post.front"
	Role     string // what it is: "post", "side rail", "slat"
	Name     string // in words for lists: "post, front, left end"
	Assembly string // what it is put together with before it is carried in
	Stock    Stock
	Length   length.Length // finished length; Width is Stock.Wide unless Rip is set
	Rip      length.Length // width the board is ripped to, 0 where the full width is used
	Frame    Frame
	Box      geom.Box // the finished blank: axis 0 along the length, axis 1 across the width, axis 2 through the thickness
	FaceUp   string   // which face is shown or marked: "outside", "up"
	Mirror   string   // id of the partner that is its mirror image
	Cuts     []Cut
	Holes    []Hole
	Class    Class
	After    string // key of the reading that a CutAfter part waits for
}

// Width returns the finished width.
func (p Part) Width() length.Length {
	if p.Rip > 0 {
		return p.Rip
	}
	return p.Stock.Wide
}

// CutKind names how an end or an edge is cut.
type CutKind string

const (
	Square CutKind = "square"
	Bevel  CutKind = "bevel"
	Notch  CutKind = "notch"
	Scribe CutKind = "to scribe"
)

// A Cut is one cut of a part, measured on the part itself.
type Cut struct {
	Kind   CutKind
	End    int           // 0 at the start of the length, 1 at its end
	Angle  float64       // bevel, degrees off square; positive where the far edge of the width (along axis 1) is the longer one
	Along  length.Length // notch: how far along from that end
	Deep   length.Length // notch: how deep into the width or thickness
	Across bool          // notch goes into the thickness (else into the width)
	Far    bool          // notch is cut from the far side of that axis of the box (else from the near one)
	Edge   bool          // the cut runs along an edge of the width instead of across an end: End 0 the near edge, 1 the far one
}

// A Hole is drilled for a screw of a joint, square through the thickness of the part that the screw passes first.
type Hole struct {
	Joint  string        // id of the joint
	Along  length.Length // from the start of the length
	Across length.Length // from the near edge of the width, the low side of axis 1
	Dia    length.Length
	Depth  length.Length // 0: right through
}

// Solid returns the part's box with the axes renamed so that axis 2 points up where one of them is upright. The solid is the
// same, and geom takes the short way with such boxes.
func (p Part) Solid() geom.Box {
	b := p.Box
	for k := range b.Ax {
		if math.Abs(b.Ax[k].Z) <= 1-1e-12 {
			continue
		}
		i, j := (k+1)%3, (k+2)%3
		up, ax := b.Ax[k], b.Ax[i]
		if up.Z < 0 {
			up, ax = up.Mul(-1), ax.Mul(-1)
		}
		return geom.Box{
			C:    b.C,
			Ax:   [3]geom.V3{ax, b.Ax[j], up},
			Half: geom.V3{X: b.Half.Axis(i), Y: b.Half.Axis(j), Z: b.Half.Axis(k)},
		}
	}
	return b
}

// Corners returns the eight corners of the part with its bevels cut, in the order of geom.Box.Corner. Notches are not seen.
func (p Part) Corners() [8]geom.V3 {
	var shift [2][2]float64 // by end and edge: how far the corner lies in from the end of the blank
	for _, c := range p.Cuts {
		if c.Kind != Bevel || c.End < 0 || c.End > 1 {
			continue
		}
		short := 0
		if c.Angle < 0 {
			short = 1
		}
		shift[c.End][short] = 2 * p.Box.Half.Y * math.Tan(math.Abs(c.Angle)*math.Pi/180)
	}
	var out [8]geom.V3
	for i := range out {
		end, edge := i&1, i>>1&1
		in := shift[end][edge] * float64(1-2*end)
		out[i] = p.Box.Corner(i).Add(p.Box.Ax[0].Mul(in))
	}
	return out
}

// HoleAt returns the middle of a hole, half way through the thickness.
func (p Part) HoleAt(h Hole) geom.V3 {
	along, across := h.Along.MM()-p.Box.Half.X, h.Across.MM()-p.Box.Half.Y
	return p.Box.C.Add(p.Box.Ax[0].Mul(along)).Add(p.Box.Ax[1].Mul(across))
}
