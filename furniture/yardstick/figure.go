package yardstick

import "fmt"

// Ids of the planning figures that measurements and models take. What each is, its basis and its reason stand in its row.
const (
	HeadCylinder  = "own-head-cylinder"
	SeatNear      = "own-seat-near"
	SeatFar       = "own-seat-far"
	SeatFront     = "own-seat-front"
	SeatClearance = "own-seat-clearance"
	Slump         = "own-slump"
	WayOutDepth   = "own-way-out-depth"
	BedBeside     = "own-bed-beside"
	AirHeight     = "own-air-height"
	BuildByEye    = "own-build-by-eye"
	BuildBySpacer = "own-build-by-spacer"
	FootholdDepth = "own-foothold-depth"
	ScrewsPerStud = "own-screws-per-stud"
	Agree         = "own-agree"
	StairTurn     = "own-stair-turn"
	TiltAir       = "own-tilt-air"
	BedLoad       = "own-bed-load"
	PointLoad     = "own-point-load"
	BookLoad      = "own-book-load"
	RailPush      = "own-rail-push"
	SwayPush      = "own-sway-push"
	TipLoad       = "own-tip-load"
	Pillow        = "own-pillow"       // a list: length, width, thickness
	ParentStand   = "own-parent-stand" // a list: eyes of a short and of a tall parent
)

// Figure returns the one number of a row, in mm for lengths and in the row's unit otherwise. An id that no row has, or
// a row without exactly one number, is a slip in the calling code: it panics.
func Figure(id string) float64 {
	list := Figures(id)
	if len(list) != 1 {
		panic(fmt.Sprintf("yardstick: %s has %d numbers, not one", id, len(list)))
	}
	return list[0]
}

// Figures returns all numbers of a row that holds at least one, in mm for lengths. It panics like Figure.
func Figures(id string) []float64 {
	r, ok := Find(id)
	if !ok || len(r.Need) == 0 {
		panic("yardstick: no number in a row " + id)
	}
	return r.Need
}
