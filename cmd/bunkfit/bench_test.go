package main

import (
	"image"
	"testing"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/render/raster"
	"bunkwright/render/view"
	"bunkwright/room/length"
	"bunkwright/samples"
)

func benchTownHouse(b *testing.B) (*fit.Scene, []fit.Answer, view.Options) {
	b.Helper()
	data, err := samples.Files.ReadFile("town-house.toml")
	if err != nil {
		b.Fatal(err)
	}
	f, err := jobfile.Load(data, "town-house.toml")
	if err != nil {
		b.Fatal(err)
	}
	s, answers, err := fit.Answers(&f.Job)
	if err != nil {
		b.Fatal(err)
	}
	return s, answers, view.Options{Unit: length.Inches, W: render.Px(1200), H: render.Px(800)}
}

// BenchmarkPlan1200x800 draws the town-house plan and turns it into a picture of 1200 x 800 (budget 30 ms).
func BenchmarkPlan1200x800(b *testing.B) {
	s, answers, o := benchTownHouse(b)
	if len(view.Plan(s, answers, o).Marks) < 100 {
		b.Fatal("the plan is all but empty")
	}
	for b.Loop() {
		raster.Draw(view.Plan(s, answers, o), 1, render.Light)
	}
}

// BenchmarkDragStep1200x800 is one step of a drag: all answers nominal, the plan, and the picture in a frame that is kept (budget 16 ms).
func BenchmarkDragStep1200x800(b *testing.B) {
	s, answers, o := benchTownHouse(b)
	frame := image.NewRGBA(image.Rect(0, 0, 1200, 800))
	var p raster.Painter
	for b.Loop() {
		for _, q := range fit.All() {
			s.Nominal(q)
		}
		p.Draw(frame, view.Plan(s, answers, o), 1, render.Light)
	}
}

// BenchmarkDrawOnly draws the plan without turning it into a picture.
func BenchmarkDrawOnly(b *testing.B) {
	s, answers, o := benchTownHouse(b)
	for b.Loop() {
		view.Plan(s, answers, o)
	}
}

// BenchmarkSheets makes all sheets of the town house.
func BenchmarkSheets(b *testing.B) {
	s, answers, _ := benchTownHouse(b)
	for b.Loop() {
		view.Sheets(s, answers, view.SheetOptions{Unit: length.Inches, Date: "June 9, 2027"})
	}
}
