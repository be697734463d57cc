package fit

import (
	"testing"

	"bunkwright/room/length"
)

// Posts at most 5 over their neighbour (EN 747-1:2015 4.1.1), heads at most 8 out of the surface (Australian mandatory standard).
func TestNothingCatches(t *testing.T) {
	post := func(top float64) func(*Scene) { return func(s *Scene) { s.Bed.Posts[0].Top = top } }
	head := func(d float64) func(*Scene) { return func(s *Scene) { s.Bed.Sizes.BoltStandOff = length.Some(mm(d)) } }
	runCases(t, "nothing-catches", []bedCase{
		{"EU", "EU", nil, Fits, 5, "posts"},
		{"AU", "AU", nil, Fits, 8 - 4, "heads"},
		{"a tall post", "EU", post(1810), DoesNotFit, 5 - 10, "posts"},
		{"just 5", "EU", post(1805), Fits, 0, "posts"},
		{"a post below the rail", "EU", post(1790), Fits, 15, "posts"},
		{"a proud bolt", "AU", head(10), DoesNotFit, 8 - 10, "heads"},
		{"heads all flush", "AU", head(0), Fits, 8, "heads"},
		{"bolts not looked at", "AU", func(s *Scene) { s.Bed.Sizes.BoltStandOff = length.Maybe{} }, CannotTell, none, "heads"},
		{"US, nothing hung", "US", confirm("us-nothing-hung"), Fits, none, ""},
		{"US, not confirmed yet", "US", nil, CannotTell, none, "confirmed.us-nothing-hung"},
		{"CA, tied", "CA", func(s *Scene) { s.Job.Confirmed = map[string]string{"ca-nothing-tied": "no"} }, DoesNotFit, none, "confirmed.ca-nothing-tied"},
		{"outside the scope", "EU", low, NotApplicable, none, ""},
		{"no bed", "AU", unbuildable, CannotTell, none, "heads"},
	})
}
