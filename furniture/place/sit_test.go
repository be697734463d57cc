package place_test

import (
	"context"
	"math"
	"testing"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/people"
	"bunkwright/furniture/place"
)

// TestWhoSitsUp in a room under a level ceiling of 2150 mm, deck 1400, mattress 80: by hand the top sleeper's air is 2150 - 1480 - 700 = -30 mm with
// the deck as it is and grows by as much as the deck goes down, and the lower one's shrinks by as much.
func TestWhoSitsUp(t *testing.T) {
	j := low()
	s, _ := answered(t, j)
	table, err := place.WhoSitsUp(context.Background(), s, place.SitOptions{})
	if err != nil || table.Chosen < 0 || len(table.Rows) != 13 {
		t.Fatalf("%v, row %d of %d", err, table.Chosen, len(table.Rows))
	}
	now := table.Rows[table.Chosen]
	if a := now.Upper[place.Now]; math.Abs(a.Spare+30) > 1e-6 || a.Verdict != fit.DoesNotFit {
		t.Errorf("upper %v %g, want -30", a.Verdict, a.Spare)
	}
	for i, r := range table.Rows {
		down := float64(i-table.Chosen) * 25
		if a := r.Upper[place.Now]; math.Abs(a.Spare-(down-30)) > 1e-6 {
			t.Errorf("deck %v: upper %g, want %g", r.Deck, a.Spare, down-30)
		}
		if a := r.Lower[place.Now]; math.Abs(a.Spare-(now.Lower[place.Now].Spare-down)) > 1e-6 {
			t.Errorf("deck %v: lower %g, want %g", r.Deck, a.Spare, now.Lower[place.Now].Spare-down)
		}
		for w := place.InFiveYears; w <= place.AsAdults; w++ {
			if r.Upper[w].Spare > r.Upper[w-1].Spare || r.Lower[w].Spare > r.Lower[w-1].Spare {
				t.Errorf("deck %v: more air %s than before", r.Deck, w.Words())
			}
		}
	}
}

// TestSeatedLater: who was measured is followed from there (people.SittingLater has the tables by hand), who was not is a tall one of the age.
func TestSeatedLater(t *testing.T) {
	j := low()
	j.Sleepers[0].Sex, j.Sleepers[1].Sex, j.Sleepers[1].Seated = "girl", "boy", nil
	s, _ := answered(t, j)
	table, err := place.WhoSitsUp(context.Background(), s, place.SitOptions{Each: 1})
	if err != nil {
		t.Fatal(err)
	}
	want, _ := people.SittingLater(people.Female, 8, 700, 13)
	tall, _ := people.SittingHeight(people.Male, 11, people.P95)
	if got := table.Sleepers[0].Seated[place.InFiveYears]; got != want || !table.Sleepers[0].Own {
		t.Errorf("measured: %g, want %g", got, want)
	}
	if got := table.Sleepers[1].Seated[place.InFiveYears]; got != tall || table.Sleepers[1].Own {
		t.Errorf("by age: %g, want %g", got, tall)
	}
	for w, a := range table.Rows[table.Chosen].Upper {
		free := 2150.0 - 1480
		if got, want := a.Spare, free-table.Sleepers[0].Seated[w]; math.Abs(got-want) > 1e-5 {
			t.Errorf("%s: %g of air, by hand %g", place.When(w).Words(), got, want)
		}
	}
}

// TestNobodySleepsThere: without sleepers the table says what is missing.
func TestNobodySleepsThere(t *testing.T) {
	j := low()
	j.Sleepers = nil
	s, _ := answered(t, j)
	if table, err := place.WhoSitsUp(context.Background(), s, place.SitOptions{}); err != nil || table.Wants == "" {
		t.Errorf("%+v, %v", table, err)
	}
}
