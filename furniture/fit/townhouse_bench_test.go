package fit_test

import (
	"testing"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/samples"
)

// townHouse is the fullest of the samples.
func townHouse(b *testing.B) *fit.Scene {
	b.Helper()
	data, err := samples.Files.ReadFile("town-house.toml")
	if err != nil {
		b.Fatal(err)
	}
	file, err := jobfile.Load(data, "town-house.toml")
	if err != nil {
		b.Fatal(err)
	}
	scene, err := fit.NewScene(&file.Job)
	if err != nil {
		b.Fatal(err)
	}
	if !scene.Stands {
		b.Fatal(scene.Wants)
	}
	return scene
}

// BenchmarkTownHouseNominal asks all questions of one placement as if every reading were exact (budget 0.2 ms).
func BenchmarkTownHouseNominal(b *testing.B) {
	s := townHouse(b)
	for b.Loop() {
		for _, q := range fit.All() {
			s.Nominal(q)
		}
	}
}

// BenchmarkTownHouseAnswers asks all questions with how sure they are (budget 10 ms).
func BenchmarkTownHouseAnswers(b *testing.B) {
	s := townHouse(b)
	for b.Loop() {
		s.Answers()
	}
}

// BenchmarkTownHouseEach asks one question nominally, to see which costs what.
func BenchmarkTownHouseEach(b *testing.B) {
	s := townHouse(b)
	for _, q := range fit.All() {
		b.Run(q.ID, func(b *testing.B) {
			for b.Loop() {
				s.Nominal(q)
			}
		})
	}
}
