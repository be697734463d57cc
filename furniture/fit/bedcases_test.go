package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/furniture/yardstick"
	"bunkwright/room/length"
)

// A bedCase is a question asked of the plain bed below with something changed. The spare is worked out by hand from the numbers of that
// bed and those of the rows (rules.csv and practice.csv name the source of each); NaN where there is none to tell.
type bedCase struct {
	name    string
	places  string
	edit    func(*Scene)
	verdict Verdict
	spare   float64
	at      string
}

var none = math.NaN()

func (c bedCase) run(t *testing.T, question string) {
	t.Run(c.name, func(t *testing.T) {
		s := plainScene(t, c.places)
		if c.edit != nil {
			c.edit(s)
		}
		a := answer(t, s, question)
		at := ""
		if a.Decides >= 0 {
			at = a.Lines[a.Decides].At
		}
		if a.Verdict != c.verdict || c.at != "" && at != c.at {
			t.Errorf("%v at %q, spare %v, %s%s; want %v at %q", a.Verdict, at, a.Spare, a.Reason, a.Ask, c.verdict, c.at)
		}
		if !math.IsNaN(c.spare) && (!a.HasSpare || math.Abs(a.Spare-c.spare) > 1e-6) {
			t.Errorf("spare %v at %q, want %v", a.Spare, at, c.spare)
		}
	})
}

func runCases(t *testing.T, question string, cases []bedCase) {
	t.Helper()
	for _, c := range cases {
		c.run(t, question)
	}
}

func answer(t *testing.T, s *Scene, id string) Answer {
	t.Helper()
	q, ok := Find(id)
	if !ok {
		t.Fatalf("no question %s", id)
	}
	return s.Ask(q)
}

// line returns the line of a row at a place of an answer.
func line(t *testing.T, a Answer, row, at string) Line {
	t.Helper()
	for _, l := range a.Lines {
		if l.Row.ID == row && l.At == at {
			return l
		}
	}
	t.Fatalf("%s: no line %s at %s", a.ID, row, at)
	return Line{}
}

// plainScene is a bed of round numbers that meets every row of US, EU and AU texts, in an exact room on a hard floor.
func plainScene(t *testing.T, places string) *Scene {
	t.Helper()
	s := stage(t, bedroom(3500, 2990, func(j *job.Job) {
		j.Bed.Ladder = &bunk.Ladder{At: bunk.Left}
		j.Sleepers = []job.Sleeper{{Name: "Ida", Age: 10, Bed: "upper"}, {Name: "Bo", Age: 4, Bed: "lower"}}
	}))
	s.Places, s.forces = splitPlaces(places), map[string]force{}
	*s.Bed = plainBed()
	return s
}

func splitPlaces(text string) []yardstick.Place {
	var out []yardstick.Place
	for i := 0; i+2 <= len(text); i += 3 {
		out = append(out, yardstick.Place(text[i:i+2]))
	}
	return out
}

// plainBed has mattresses 2000 x 900 in a frame 2020 x 920; the upper deck at 1500 with 120 of mattress, so its top at 1620; the lower
// deck at 350 with 150, so its top at 500. Rails and ends reach 1800: 180 over the mattress and 300 over the base.
func plainBed() bunk.Bed {
	b := bunk.Bed{Long: 2100, Wide: 1000, Inside: bunk.Inside{Long: 2020, Wide: 920}}
	b.Upper = bunk.DeckAt{Top: 1500, Underside: 1480, Frame: 1440, MattressTop: 1620, SlatGap: 60, SlatCount: 12, SlatWide: 95}
	b.Lower = bunk.DeckAt{Top: 350, Underside: 330, Frame: 290, MattressTop: 500, SlatGap: 60, SlatCount: 12, SlatWide: 95}
	b.Sizes.Post.Thick, b.Sizes.Rail.Wide, b.Sizes.Ledge.Thick = mm(40), mm(140), mm(40)
	b.Sizes.Gaps, b.Sizes.BoltStandOff = bunk.BySpacer, length.Some(mm(4))
	deck := bunk.Deck{MattressLong: mm(2000), MattressWide: mm(900), MattressKnown: true}
	b.Sizes.Upper, b.Sizes.Lower = deck, deck
	b.Guards = []bunk.GuardAt{
		{Side: "wall", Top: 1800, From: 40, To: 2060, Full: true, Parts: []string{"guard.wall.1"}},
		{Side: "front", Top: 1800, From: 500, To: 2060, GapFrom: 360, Parts: []string{"guard.front.1"}},
		{Side: "left", Top: 1800, From: 0, To: 1000, Full: true, Parts: []string{"left.board.1"}},
		{Side: "right", Top: 1800, From: 0, To: 1000, Full: true, Parts: []string{"right.board.1"}},
	}
	b.WayIn = bunk.WayIn{Side: "front", From: 140, To: 500, Clear: 360, Short: 360}
	b.Openings = []bunk.Opening{
		{ID: "wall.rail.1", Side: "wall", Zone: bunk.ZoneRail, Bottom: 1580, Top: 1648, Wide: 1800},
		{ID: "left.upper.1", Side: "left", Zone: bunk.ZoneUpper, Bottom: 1580, Top: 1650, Wide: 920},
		{ID: "left.lower.1", Side: "left", Zone: bunk.ZoneLower, Bottom: 430, Top: 1440, Wide: 840},
	}
	b.Steps = &bunk.Steps{Side: "front", Tops: []float64{300, 600, 900, 1200, 1500}, Thick: 40, Deep: 95, Clear: 360, Angle: 90, ToBed: 40}
	b.Posts = []bunk.PostAt{{Part: "left.post.front", Top: 1800, Neighbour: 1800}}
	return b
}

func unbuildable(s *Scene) { s.Bed = nil }

// low lowers the upper bed out of the scope of the US and EU texts: base 500, underside 480.
func low(s *Scene) { s.Bed.Upper.Top, s.Bed.Upper.Underside = 500, 480 }

func confirm(rows ...string) func(*Scene) {
	return func(s *Scene) {
		s.Job.Confirmed = map[string]string{}
		for _, id := range rows {
			s.Job.Confirmed[id] = "yes"
		}
	}
}
