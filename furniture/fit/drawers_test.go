package fit

import (
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/room"
	"bunkwright/room/geom"
)

func v(x, y float64) geom.V2 { return geom.V2{X: x, Y: y} }

func rectangle(p [4]float64) geom.Polygon { return geom.Rect(p[0], p[1], p[2], p[3]) }

// TestDrawerAir: the frame is 292.85 over the post feet. On a hard floor the box stands on its casters; on carpet the posts sink and the
// box slides on its base.
func TestDrawerAir(t *testing.T) {
	drawers := func(j *job.Job) { j.Bed.Drawers = &bunk.Drawers{BoxHigh: mm(150), Casters: mm(50)} }
	a := stage(t, bedroom(3500, 3000, drawers)).Nominal(drawersSlide)
	nearly(t, "on casters", a.Value, 292.85-150-50)
	a = stage(t, bedroom(3500, 3000, drawers, func(j *job.Job) {
		j.Room.Floor = room.Floor{Cover: "carpet", Thick: read(20), Sink: read(8), Rise: read(5)}
	})).Nominal(drawersSlide)
	nearly(t, "on carpet", a.Value, 292.85-8-5-150)
}

// TestDrawerAirUnreadSink: half the cover's thickness is taken, with u = thickness / root 12 (settled reading of the project).
func TestDrawerAirUnreadSink(t *testing.T) {
	s := stage(t, bedroom(3500, 3000, func(j *job.Job) {
		j.Bed.Drawers = &bunk.Drawers{BoxHigh: mm(150)}
		j.Room.Floor = room.Floor{Cover: "carpet", Thick: read(24), Rise: read(0)}
	}))
	a := s.Ask(drawersSlide)
	nearly(t, "the air", a.Value, 292.85-12-150)
	if a.U < 24/3.4642 || a.U > 8 { // with a little of its own for thickness and rise
		t.Errorf("u is %g, want a little over %g", a.U, 24/3.4642)
	}
}

// TestDrawersPullOut: before the drawers the floor is free for 1928.55; somebody kneels behind the travel. A chest 900 off leaves less.
func TestDrawersPullOut(t *testing.T) {
	drawers := func(j *job.Job) { j.Bed.Drawers = &bunk.Drawers{Travel: mm(600)} }
	a := stage(t, bedroom(3500, 3000, drawers)).Nominal(drawersOpen)
	nearly(t, "behind the drawer", a.Value, 1928.55-600)
	s := stage(t, bedroom(3500, 3000, drawers, func(j *job.Job) {
		j.Room.Pieces = []room.Piece{
			{Key: "chest", Spot: room.Spot{Wall: "AB", From: "A", At: read(1600), Out: read(0)}, Wide: read(300), Deep: read(1028.55), High: read(900)},
			{Key: "desk"},
		}
	}))
	a = s.Nominal(drawersOpen)
	nearly(t, "before the chest", a.Value, 900-600)
	if a.Verdict != DoesNotFit { // whatever the desk, whose place nobody read, takes besides
		t.Errorf("%v", a.Verdict)
	}
}

// screen is a wall of furniture before the whole bed.
func screen(j *job.Job) {
	j.Room.Pieces = []room.Piece{{
		Key: "screen", Spot: room.Spot{Wall: "AB", From: "A", At: read(10), Out: read(1500)}, Wide: read(3480), Deep: read(50), High: read(2400), Climb: "no",
	}}
}
