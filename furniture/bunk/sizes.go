// Package bunk answers which boards make a bunk bed of few chosen sizes, where each sits and what holds it.
package bunk

import (
	"bunkwright/furniture"
	"bunkwright/room/length"
)

// End names an end of the bed as seen from the front.
type End string

const (
	Left  End = "left"
	Right End = "right"
)

// Other returns the opposite end.
func (e End) Other() End {
	if e == Left {
		return Right
	}
	return Left
}

// Sizes are the sizes to choose. A zero length means "not chosen": Build fills in the default where there is one and says so.
// Heights are over the underside of the post feet. The file tags are the keys of the job file under [bed].
type Sizes struct {
	Upper        Deck            `file:"upper"`
	Lower        Deck            `file:"lower"`
	Play         length.Length   `file:"play"` // inside of the frame less the mattress, on both axes, both sides together
	Post         furniture.Stock `file:"post"`
	Rail         furniture.Stock `file:"rail"`  // side rails and end members
	Ledge        furniture.Stock `file:"ledge"` // slat bearers
	Slat         furniture.Stock `file:"slat"`
	Notched      bool            `file:"notched"` // posts at the wall are notched round the baseboard
	NotchHigh    length.Length   `file:"notch_high"`
	NotchDeep    length.Length   `file:"notch_deep"`
	Guard        Guard           `file:"guard"`
	Ladder       *Ladder         `file:"ladder"`
	Climb        *Climb          `file:"climb"`
	Shelves      []Shelf         `file:"shelf"`
	Books        *BookLedge      `file:"books"`
	Drawers      *Drawers        `file:"drawers"`
	Gaps         GapSetting      `file:"gaps"`           // how gaps between boards are set
	BoltStandOff length.Maybe    `file:"bolt_stand_out"` // how far the proudest bolt or screw head stands out of an outside face; 0: flush or below it
	Fastener     string          `file:"fastener"`       // for joints of the frame; default "screw-10"
	Tolerance    length.Length   `file:"tolerance"`      // build tolerance the maker states for heights and lengths, as a half-width; 0: none
}

// Deck is one bed: what is slept on and how high it lies.
type Deck struct {
	Height        length.Length `file:"height"` // top of the slats
	MattressLong  length.Length `file:"mattress_long"`
	MattressWide  length.Length `file:"mattress_wide"`
	MattressThick length.Length `file:"mattress_thick"`    // the thickest that will be used, topper included; 0: not known
	MattressName  string        `file:"mattress"`          // a named size ("twin") where the real mattress has not been measured
	Slats         int           `file:"slats"`             // 0: as many as SlatGap asks for
	SlatGap       length.Length `file:"slat_gap"`          // largest gap wanted; 0: the default
	Head          End           `file:"head"`              // the end the pillow lies at
	MattressKnown bool          `file:"mattress_measured"` // the real mattress was measured in length and width
}

// Guard is the guardrail all round the upper bed.
type Guard struct {
	Stock     furniture.Stock `file:"board"`
	Top       length.Length   `file:"top"`        // top edge
	Rows      int             `file:"rows"`       // boards one over the other
	OpenWall  bool            `file:"open_wall"`  // no rail on the wall side
	OpenFront bool            `file:"open_front"` // no rail on the front
	Gap       length.Length   `file:"gap"`        // way in over the ladder, clear; 0: the default
}

// Ladder is the way up: on the front or on one end, upright or sloping.
type Ladder struct {
	OnEnd  bool            `file:"on" words:"front|end"` // on the end named by At, else on the front next to that end
	At     End             `file:"at"`
	Angle  float64         `file:"angle"`  // degrees from the floor; 90 is upright
	Treads int             `file:"treads"` // 0: from the deck height and the default pitch
	Stock  furniture.Stock `file:"stile"`  // stiles
	Tread  furniture.Stock `file:"tread"`
	Block  furniture.Stock `file:"block"` // blocks under the treads
}

// Climb is an end made to be climbed.
type Climb struct {
	At       End             `file:"at"`
	Holds    bool            `file:"holds"`     // a panel with holds, else slats across the end
	Slat     furniture.Stock `file:"slat"`      // slats
	Gap      length.Length   `file:"gap"`       // largest gap wanted between slats
	Panel    furniture.Stock `file:"panel"`     // sheet for holds
	Pitch    length.Length   `file:"pitch"`     // largest height from one row of holds to the next
	Top      length.Length   `file:"top"`       // highest row of holds; 0: the upper deck
	HoldDeep length.Length   `file:"hold_deep"` // how far a hold stands out of the panel: what a foot finds
}

// Shelf hangs on the wall on a cleat for one sleeper.
type Shelf struct {
	For           string          `file:"for" words:"upper|lower"`
	Height        length.Length   `file:"height"` // top of the board over the floor covering
	From          length.Length   `file:"from"`   // left end of the bed to the left end of the board
	Long          length.Length   `file:"long"`
	Board         furniture.Stock `file:"board"`
	Cleat         furniture.Stock `file:"cleat"`
	CleatLong     length.Length   `file:"cleat_long"`    // one cleat under the board along the wall; 0: the board's length
	Fastener      string          `file:"fastener"`      // cleat to studs
	FastenerLong  length.Length   `file:"fastener_long"` // length of that screw under its head
	ScrewsPerStud int             `file:"screws_per_stud"`
	ScrewAt       []length.Length `file:"screw_at"` // chosen screw places from the left end of the cleat; empty: at the studs, set by whoever places the bed
}

// BookLedge hangs outside the front side rail of the upper bed on spacer blocks.
type BookLedge struct {
	From  length.Length   `file:"from"` // left end of the bed to its left end
	Long  length.Length   `file:"long"`
	Board furniture.Stock `file:"board"`
	Lip   furniture.Stock `file:"lip"`
}

// Drawers stand on the floor under the lower bed.
type Drawers struct {
	Count   int             `file:"count"`
	BoxHigh length.Length   `file:"box_high"`
	Travel  length.Length   `file:"travel"`  // how far one pulls out; 0: its depth
	Deep    length.Length   `file:"deep"`    // front to back; 0: what the frame takes
	Casters length.Length   `file:"casters"` // height of a caster with its plate; 0: the box slides on its base
	Side    furniture.Stock `file:"side"`
	Bottom  furniture.Stock `file:"bottom"` // plywood
	Front   furniture.Stock `file:"front"`
}

// GapSetting tells how gaps are set when boards are fixed.
type GapSetting string

const (
	ByEye    GapSetting = "by eye"
	BySpacer GapSetting = "by spacer"
)
