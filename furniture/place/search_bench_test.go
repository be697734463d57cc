package place_test

import (
	"context"
	"testing"
	"time"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/furniture/place"
	"bunkwright/samples"
)

// sample returns a job that comes with the program.
func sample(t testing.TB, name string) *job.Job {
	t.Helper()
	data, err := samples.Files.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	file, err := jobfile.Load(data, name)
	if err != nil {
		t.Fatal(err)
	}
	return &file.Job
}

// BenchmarkTownHouse searches the whole town-house room at 1/4 in, all walls, both ways round (budget 1 s to the full ranking, 0.2 s to the
// first spot).
func BenchmarkTownHouse(b *testing.B) {
	j := sample(b, "town-house.toml")
	var first time.Duration
	for b.Loop() {
		begin, any := time.Now(), false
		_, err := place.Search(context.Background(), j, place.Options{Found: func(place.Spot) {
			if !any {
				first, any = time.Since(begin), true
			}
		}})
		if err != nil {
			b.Fatal(err)
		}
	}
	b.ReportMetric(float64(first.Milliseconds()), "ms-to-first")
}

// BenchmarkPlacement is the nominal search alone, by the placement (budget 50 us on average).
func BenchmarkPlacement(b *testing.B) {
	j := sample(b, "town-house.toml")
	tried := 0
	for b.Loop() {
		r, err := place.Search(context.Background(), j, place.Options{Nominal: true, Workers: 1})
		if err != nil {
			b.Fatal(err)
		}
		tried += r.Tried
	}
	b.ReportMetric(float64(b.Elapsed().Microseconds())/float64(tried), "us/placement")
	b.ReportMetric(float64(tried)/float64(b.N), "placements")
}
