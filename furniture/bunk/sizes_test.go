package bunk_test

import (
	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/room/length"

	"pgregory.net/rapid"
)

const (
	in = length.Inch
	mm = length.Millimetre
)

// twin is the bed of the hand calculations: US twin mattresses of 75 x 38 in, decks at 13 and 55 in, everything else left to the
// defaults, which are 2x4 posts, 2x6 rails, 2x2 ledges, 1x4 slats and 1x6 guardrails.
func twin() bunk.Sizes {
	return bunk.Sizes{
		Upper: bunk.Deck{Height: 55 * in, MattressLong: 75 * in, MattressWide: 38 * in, MattressThick: 5 * in},
		Lower: bunk.Deck{Height: 13 * in, MattressLong: 75 * in, MattressWide: 38 * in, MattressThick: 7 * in},
	}
}

// dressed is the twin bed with every add-on that goes together.
func dressed() bunk.Sizes {
	s := twin()
	s.Ladder, s.Climb, s.Books = &bunk.Ladder{}, &bunk.Climb{}, &bunk.BookLedge{Long: 33 * in}
	s.Drawers = &bunk.Drawers{}
	s.Shelves = []bunk.Shelf{{For: "upper", Height: 80 * in}, {For: "lower", Height: 45 * in, ScrewAt: []length.Length{4 * in, 20 * in}}}
	return s
}

func mustBuild(t rapid.TB, s bunk.Sizes) bunk.Bed {
	t.Helper()
	b, err := bunk.Build(s)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func part(t rapid.TB, b *bunk.Bed, id string) furniture.Part {
	t.Helper()
	for _, p := range b.Parts {
		if p.ID == id {
			return p
		}
	}
	t.Fatalf("no part %s", id)
	return furniture.Part{}
}

// anyLength draws a length in steps of 1/16 in or 1 mm.
func anyLength(t *rapid.T, name string, lo, hi length.Length) length.Length {
	step := length.Length(rapid.SampledFrom([]int64{int64(in / 16), int64(mm)}).Draw(t, name+" step"))
	return length.Length(rapid.Int64Range(int64(lo/step), int64(hi/step)).Draw(t, name)) * step
}

// anyStock draws a board: US, metric, or one measured on the day.
func anyStock(t *rapid.T, name string, thick, wide [2]length.Length) furniture.Stock {
	s := furniture.Stock{Name: name, Thick: anyLength(t, name+" thick", thick[0], thick[1]), Wide: anyLength(t, name+" wide", wide[0], wide[1])}
	if rapid.Bool().Draw(t, name+" default") {
		return furniture.Stock{}
	}
	return s
}

func anyDeck(t *rapid.T, name string, lo, hi length.Length) bunk.Deck {
	k := bunk.Deck{
		Height: anyLength(t, name, lo, hi), MattressLong: anyLength(t, name+" long", 1500*mm, 2100*mm),
		MattressWide: anyLength(t, name+" wide", 700*mm, 1400*mm), MattressThick: anyLength(t, name+" thick", 80*mm, 250*mm),
	}
	if rapid.Bool().Draw(t, name+" counted") {
		k.Slats = rapid.IntRange(1, 16).Draw(t, name+" slats")
	} else {
		k.SlatGap = anyLength(t, name+" gap", 20*mm, 100*mm)
	}
	return k
}

func anyEnd(t *rapid.T, name string) bunk.End {
	return rapid.SampledFrom([]bunk.End{"", bunk.Left, bunk.Right}).Draw(t, name)
}

// anySizes draws sizes of which most can be built.
func anySizes(t *rapid.T) bunk.Sizes {
	thick, thin := [2]length.Length{30 * mm, 50 * mm}, [2]length.Length{14 * mm, 32 * mm}
	s := bunk.Sizes{
		Lower: anyDeck(t, "lower deck", 180*mm, 500*mm),
		Upper: anyDeck(t, "upper deck", 1100*mm, 1800*mm),
		Play:  anyLength(t, "play", 0, 40*mm),
		Post:  anyStock(t, "post", thick, [2]length.Length{60 * mm, 120 * mm}),
		Rail:  anyStock(t, "rail", thick, [2]length.Length{110 * mm, 190 * mm}),
		Ledge: anyStock(t, "ledge", thick, [2]length.Length{50 * mm, 60 * mm}),
		Slat:  anyStock(t, "slat", thin, [2]length.Length{60 * mm, 100 * mm}),
		Guard: bunk.Guard{
			Stock: anyStock(t, "guard", thin, [2]length.Length{60 * mm, 150 * mm}),
			Rows:  rapid.IntRange(0, 3).Draw(t, "rows"), OpenWall: rapid.Bool().Draw(t, "open wall"),
			OpenFront: rapid.IntRange(0, 4).Draw(t, "open front") == 0,
		},
	}
	if rapid.Bool().Draw(t, "notched") {
		s.Notched, s.NotchHigh, s.NotchDeep = true, anyLength(t, "notch high", 40*mm, 160*mm), anyLength(t, "notch deep", 5*mm, 18*mm)
	}
	anyAddOns(t, &s)
	return s
}

func anyAddOns(t *rapid.T, s *bunk.Sizes) {
	yes := func(name string) bool { return rapid.Bool().Draw(t, name) }
	if yes("ladder") {
		s.Ladder = &bunk.Ladder{OnEnd: yes("on end"), At: anyEnd(t, "ladder at")}
		s.Guard.Gap = anyLength(t, "way in", 280*mm, 450*mm)
		if yes("sloping") {
			s.Ladder.Angle = float64(rapid.IntRange(50, 89).Draw(t, "angle"))
		}
	}
	if yes("climb") {
		s.Climb = &bunk.Climb{At: anyEnd(t, "climb at"), Holds: yes("holds"), Gap: anyLength(t, "climb gap", 40*mm, 150*mm)}
	}
	if yes("books") {
		s.Books = &bunk.BookLedge{Long: anyLength(t, "books long", 300*mm, 1200*mm)}
	}
	if yes("drawers") {
		s.Drawers = &bunk.Drawers{Count: rapid.IntRange(0, 3).Draw(t, "drawers"), Casters: anyLength(t, "casters", 0, 60*mm)}
	}
	if yes("shelves") {
		s.Shelves = []bunk.Shelf{{For: "upper", Height: anyLength(t, "shelf", 2100*mm, 2400*mm)}, {For: "lower", Height: anyLength(t, "low shelf", 900*mm, 1100*mm)}}
	}
}

// buildable draws sizes of which a bed can be built.
var buildable = rapid.Custom(anySizes).Filter(func(s bunk.Sizes) bool {
	_, err := bunk.Build(s)
	return err == nil
})

func anyBed(t *rapid.T) bunk.Bed {
	b, err := bunk.Build(buildable.Draw(t, "sizes"))
	if err != nil {
		t.Fatal(err)
	}
	return b
}
