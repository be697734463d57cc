package bunk_test

import (
	"errors"
	"strings"
	"testing"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/room/length"

	"pgregory.net/rapid"
)

// sizeAt finds the size that a file key names, as far as Build offers nearest ones. A section that was left to its default is filled in.
func sizeAt(s *bunk.Sizes, key string) *length.Length {
	if name, ok := strings.CutSuffix(key, ".thick"); ok {
		return &stockAt(s, name).Thick
	}
	if name, ok := strings.CutSuffix(key, ".wide"); ok {
		return &stockAt(s, name).Wide
	}
	at := map[string]*length.Length{
		"bed.upper.slat_gap": &s.Upper.SlatGap, "bed.lower.slat_gap": &s.Lower.SlatGap, "bed.upper.height": &s.Upper.Height, "bed.lower.height": &s.Lower.Height, "bed.play": &s.Play,
		"bed.upper.mattress_long": &s.Upper.MattressLong, "bed.lower.mattress_long": &s.Lower.MattressLong,
		"bed.upper.mattress_wide": &s.Upper.MattressWide, "bed.lower.mattress_wide": &s.Lower.MattressWide,
		"bed.upper.mattress_thick": &s.Upper.MattressThick, "bed.lower.mattress_thick": &s.Lower.MattressThick,
		"bed.notch_high": &s.NotchHigh, "bed.notch_deep": &s.NotchDeep, "bed.guard.top": &s.Guard.Top, "bed.guard.gap": &s.Guard.Gap,
	}
	if c := s.Climb; c != nil {
		at["bed.climb.top"], at["bed.climb.pitch"], at["bed.climb.gap"], at["bed.climb.hold_deep"] = &c.Top, &c.Pitch, &c.Gap, &c.HoldDeep
	}
	if k := s.Books; k != nil {
		at["bed.books.long"], at["bed.books.from"] = &k.Long, &k.From
	}
	if w := s.Drawers; w != nil {
		at["bed.drawers.box_high"], at["bed.drawers.deep"], at["bed.drawers.travel"], at["bed.drawers.casters"] = &w.BoxHigh, &w.Deep, &w.Travel, &w.Casters
	}
	for i := range s.Shelves {
		k, n := &s.Shelves[i], "bed.shelf."+string(rune('1'+i))
		at[n+".height"], at[n+".from"], at[n+".long"], at[n+".cleat_long"] = &k.Height, &k.From, &k.Long, &k.CleatLong
	}
	return at[key]
}

func stockAt(s *bunk.Sizes, key string) *furniture.Stock {
	at := map[string]*furniture.Stock{
		"bed.post": &s.Post, "bed.rail": &s.Rail, "bed.ledge": &s.Ledge, "bed.slat": &s.Slat, "bed.guard.board": &s.Guard.Stock,
	}
	if l := s.Ladder; l != nil {
		at["bed.ladder.stile"], at["bed.ladder.tread"], at["bed.ladder.block"] = &l.Stock, &l.Tread, &l.Block
	}
	if c := s.Climb; c != nil {
		at["bed.climb.slat"], at["bed.climb.panel"] = &c.Slat, &c.Panel
	}
	if k := s.Books; k != nil {
		at["bed.books.board"], at["bed.books.lip"] = &k.Board, &k.Lip
	}
	if w := s.Drawers; w != nil {
		at["bed.drawers.side"], at["bed.drawers.bottom"], at["bed.drawers.front"] = &w.Side, &w.Bottom, &w.Front
	}
	for i := range s.Shelves {
		n := "bed.shelf." + string(rune('1'+i))
		at[n+".board"], at[n+".cleat"] = &s.Shelves[i].Board, &s.Shelves[i].Cleat
	}
	if at[key] == nil {
		return &furniture.Stock{}
	}
	return at[key]
}

// take sets a size to the nearest that can be built. A section left to its default is filled in first.
func take(s, filled *bunk.Sizes, e bunk.SizeError) bool {
	for _, side := range []string{".thick", ".wide"} {
		if name, ok := strings.CutSuffix(e.Key, side); ok && stockAt(s, name).Thick == 0 {
			*stockAt(s, name) = *stockAt(filled, name)
		}
	}
	to := sizeAt(s, e.Key)
	if to != nil {
		*to = e.Nearest
	}
	return to != nil
}

func refusals(t testing.TB, s bunk.Sizes) (bunk.Sizes, bunk.SizesError) {
	t.Helper()
	b, err := bunk.Build(s)
	var all bunk.SizesError
	if err != nil && !errors.As(err, &all) {
		t.Fatalf("%T: %v", err, err)
	}
	return b.Sizes, all
}

func TestEachSizeThatCannotBeBuiltIsRefused(t *testing.T) {
	ply := furniture.Stock{Name: "plywood", Thick: in / 2, Sheet: true}
	for _, c := range []struct {
		key     string
		nearest length.Length // by hand, from the sizes of twin; 0: none is offered
		edit    func(*bunk.Sizes)
	}{
		// A deck needs slat 3/4 + ledge 1-1/2 + foot block 2.
		{"bed.lower.height", 17 * in / 4, func(s *bunk.Sizes) { s.Lower.Height = 4 * in }},
		// Lower deck 13 + side rail 5-1/2 + middle piece 2.
		{"bed.upper.height", 41 * in / 2, func(s *bunk.Sizes) { s.Upper.Height = 20 * in }},
		// Slat 3/4 + ledge 1-1/2 + 1/16.
		{"bed.rail.wide", 37 * in / 16, func(s *bunk.Sizes) {
			s.Rail = furniture.Stock{Name: "2x2", Thick: 3 * in / 2, Wide: 2 * in}
		}},
		// Side rail top 58-1/4 + board 5-1/2.
		{"bed.guard.top", 255 * in / 4, func(s *bunk.Sizes) { s.Guard.Top = 60 * in }},
		// 58-1/4 + two boards.
		{"bed.guard.top", 277 * in / 4, func(s *bunk.Sizes) { s.Guard.Top, s.Guard.Rows = 67*in, 2 }},
		// Inside 75-3/4 less two posts and an upright of 3-1/2.
		{"bed.guard.gap", 261 * in / 4, func(s *bunk.Sizes) { s.Ladder, s.Guard.Gap = &bunk.Ladder{}, 70*in }},
		// Overall 44-3/4 less two uprights of 3-1/2 and a post's 1-1/2.
		{"bed.guard.gap", 145 * in / 4, func(s *bunk.Sizes) { s.Ladder, s.Guard.Gap = &bunk.Ladder{OnEnd: true}, 40*in }},
		// Two blocks of 1-1/2 and an inch between.
		{"bed.guard.gap", 4 * in, func(s *bunk.Sizes) { s.Ladder, s.Guard.Gap = &bunk.Ladder{}, 2*in }},
		// 21 slats of 3-1/2 leave 2-1/4 in 22 gaps: 2-1/4/22 in = 2,597,727.27 nm, so the next whole nanometre.
		{"bed.upper.slat_gap", 2_597_728, func(s *bunk.Sizes) { s.Upper.SlatGap = 2 * mm }},
		{"bed.upper.slats", 0, func(s *bunk.Sizes) { s.Upper.Slats = 22 }},
		// Layer 1-1/2 less 1/2.
		{"bed.notch_deep", in, func(s *bunk.Sizes) { s.Notched, s.NotchHigh, s.NotchDeep = true, 4*in, 5*in/4 }},
		{"bed.notch_high", 0, func(s *bunk.Sizes) { s.Notched, s.NotchDeep = true, in/2 }},
		{"bed.ladder.treads", 0, func(s *bunk.Sizes) { s.Ladder = &bunk.Ladder{Treads: 25} }},
		{"bed.ladder.angle", 0, func(s *bunk.Sizes) { s.Ladder = &bunk.Ladder{Angle: 20} }},
		{"bed.climb.at", 0, func(s *bunk.Sizes) {
			s.Ladder, s.Climb = &bunk.Ladder{OnEnd: true, At: bunk.Left}, &bunk.Climb{At: bunk.Left}
		}},
		{"bed.climb.top", 267 * in / 4, func(s *bunk.Sizes) { s.Climb = &bunk.Climb{Holds: true, Top: 80 * in} }},
		// Left end 1-1/2 + post 3-1/2.
		{"bed.books.from", 5 * in, func(s *bunk.Sizes) { s.Books = &bunk.BookLedge{From: 2 * in, Long: 20 * in} }},
		// Right post at 73-3/4 less the ledge's 20.
		{"bed.books.from", 215 * in / 4, func(s *bunk.Sizes) { s.Books = &bunk.BookLedge{From: 60 * in, Long: 20 * in} }},
		// The ladder takes way in 14-1/2 and upright 3-1/2 before the post: 73-3/4 - 18 - 20.
		{"bed.books.from", 143 * in / 4, func(s *bunk.Sizes) {
			s.Ladder, s.Books = &bunk.Ladder{}, &bunk.BookLedge{From: 50 * in, Long: 20 * in}
		}},
		// An upright of 3-1/2 must stand between the ledge and the way in: 55-3/4 - 3-1/2 - 5.
		{"bed.books.long", 189 * in / 4, func(s *bunk.Sizes) {
			s.Ladder, s.Books = &bunk.Ladder{}, &bunk.BookLedge{From: 5 * in, Long: 48 * in}
		}},
		// Side rail underside 10-3/4 less casters 2.
		{"bed.drawers.box_high", 35 * in / 4, func(s *bunk.Sizes) {
			s.Drawers = &bunk.Drawers{BoxHigh: 10 * in, Casters: 2 * in, Side: furniture.Stock{Name: "1x10", Thick: 3 * in / 4, Wide: 37 * in / 4}}
		}},
		// Side boards 5-1/2 on a bottom of 1/2.
		{"bed.drawers.box_high", 6 * in, func(s *bunk.Sizes) { s.Drawers = &bunk.Drawers{BoxHigh: 8 * in, Bottom: ply} }},
		// 44-3/4 overall less the posts' 1-1/2.
		{"bed.drawers.deep", 173 * in / 4, func(s *bunk.Sizes) { s.Drawers = &bunk.Drawers{Deep: 50 * in} }},
		{"bed.drawers.travel", 20 * in, func(s *bunk.Sizes) { s.Drawers = &bunk.Drawers{Deep: 20 * in, Travel: 30 * in} }},
		// Cleat 3-1/2 and board 3/4 over the floor.
		{"bed.shelf.1.height", 17 * in / 4, func(s *bunk.Sizes) { s.Shelves = []bunk.Shelf{{For: "lower", Height: 3 * in}} }},
		// Clear of the left post, whose inner edge is at 5.
		{"bed.shelf.1.from", 5 * in, func(s *bunk.Sizes) { s.Shelves = []bunk.Shelf{{For: "lower", Height: 40 * in, From: 2 * in}} }},
		// Down to the underside of the upper side rail.
		{"bed.shelf.1.height", 211 * in / 4, func(s *bunk.Sizes) { s.Shelves = []bunk.Shelf{{For: "lower", Height: 54 * in}} }},
		{"bed.shelf.1.for", 0, func(s *bunk.Sizes) { s.Shelves = []bunk.Shelf{{Height: 40 * in}} }},
		{"bed.upper.mattress_long", 0, func(s *bunk.Sizes) { s.Upper.MattressLong = 0 }},
		{"bed.post", 0, func(s *bunk.Sizes) { s.Post = furniture.Stock{Name: "unheard of"} }},
		{"bed.fastener", 0, func(s *bunk.Sizes) { s.Fastener = "string" }},
		{"bed.lower.head", 0, func(s *bunk.Sizes) { s.Lower.Head = "middle" }},
	} {
		s := twin()
		c.edit(&s)
		filled, all := refusals(t, s)
		if len(all) != 1 || all[0].Key != c.key || all[0].Nearest != c.nearest || all[0].Has != (c.nearest != 0) || all[0].Reason == "" {
			t.Errorf("%s: want nearest %v, got %v", c.key, c.nearest, all)
			continue
		}
		if all[0].Has && (!take(&s, &filled, all[0]) || !builds(s)) {
			t.Errorf("%s: the nearest size %v does not build", c.key, c.nearest)
		}
	}
}

func builds(s bunk.Sizes) bool {
	_, err := bunk.Build(s)
	return err == nil
}

// TestAllRefusalsAtOnce: three slips, three complaints.
func TestAllRefusalsAtOnce(t *testing.T) {
	s := twin()
	s.Lower.Height, s.Guard.Top, s.Drawers = 3*in, 60*in, &bunk.Drawers{BoxHigh: 30 * in}
	_, all := refusals(t, s)
	var keys []string
	for _, e := range all {
		keys = append(keys, e.Key)
	}
	if got := strings.Join(keys, " "); got != "bed.lower.height bed.guard.top bed.drawers.box_high" {
		t.Errorf("refused %q", got)
	}
	var one bunk.SizeError
	if _, err := bunk.Build(s); !errors.As(err, &one) || one.Key != "bed.lower.height" {
		t.Errorf("errors.As finds %+v", one)
	}
}

// TestNearestSizeBuilds: taking every nearest size that is offered leads to a bed, and where only one size is refused its nearest alone does.
func TestNearestSizeBuilds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := wild(t)
		for range 12 {
			filled, all := refusalsOf(t, s)
			if len(all) == 0 {
				return
			}
			for _, e := range all {
				if !e.Has {
					return
				}
				if !take(&s, &filled, e) {
					t.Fatalf("no size has the key %s", e.Key)
				}
			}
			if _, again := refusalsOf(t, s); len(all) == 1 && len(again) > 0 && again[0].Key == all[0].Key {
				t.Fatalf("%v does not help: %v", all[0], again)
			}
		}
		t.Fatalf("taking the nearest sizes does not come to an end")
	})
}

func refusalsOf(t *rapid.T, s bunk.Sizes) (bunk.Sizes, bunk.SizesError) {
	b, err := bunk.Build(s)
	var all bunk.SizesError
	if err != nil && !errors.As(err, &all) {
		t.Fatalf("%T: %v", err, err)
	}
	return b.Sizes, all
}

// wild draws sizes and pushes some of them out of what can be built.
func wild(t *rapid.T) bunk.Sizes {
	s := anySizes(t)
	push := func(name string, to *length.Length, lo, hi length.Length) {
		if rapid.IntRange(0, 3).Draw(t, "push "+name) == 0 {
			*to = anyLength(t, name, lo, hi)
		}
	}
	push("lower height", &s.Lower.Height, 10*mm, 300*mm)
	push("upper height", &s.Upper.Height, 100*mm, 1000*mm)
	push("guard top", &s.Guard.Top, 500*mm, 2000*mm)
	push("gap", &s.Guard.Gap, 20*mm, 2200*mm)
	push("upper gap", &s.Upper.SlatGap, 1*mm, 12*mm)
	push("notch", &s.NotchDeep, 1*mm, 60*mm)
	if s.Books != nil {
		push("books from", &s.Books.From, 1*mm, 2000*mm)
		push("books to", &s.Books.Long, 50*mm, 2200*mm)
	}
	if s.Drawers != nil {
		push("box", &s.Drawers.BoxHigh, 10*mm, 500*mm)
		push("deep", &s.Drawers.Deep, 10*mm, 1500*mm)
		push("casters far", &s.Drawers.Casters, 0, 400*mm)
	}
	for i := range s.Shelves {
		push("from", &s.Shelves[i].From, 1*mm, 2000*mm)
		push("height", &s.Shelves[i].Height, 10*mm, 2400*mm)
		push("cleat", &s.Shelves[i].CleatLong, 10*mm, 1500*mm)
	}
	return s
}

// TestNoSizesPanic: whatever stands in the fields, Build returns a bed or says what is wrong.
func TestNoSizesPanic(t *testing.T) {
	far := rapid.Custom(func(t *rapid.T) length.Length {
		return rapid.OneOf(rapid.SampledFrom([]length.Length{0, -1, 1, length.OutOfRange, length.Max, -length.Max, 1 << 62}),
			rapid.Map(rapid.Int64Range(-int64(3000*mm), int64(3000*mm)), func(n int64) length.Length { return length.Length(n) })).Draw(t, "far")
	})
	rapid.Check(t, func(t *rapid.T) {
		s := wild(t)
		for _, key := range []string{
			"bed.upper.height", "bed.lower.height", "bed.play", "bed.upper.mattress_long", "bed.lower.mattress_wide", "bed.upper.mattress_thick", "bed.guard.top", "bed.guard.gap",
			"bed.books.from", "bed.books.long", "bed.drawers.box_high", "bed.drawers.deep", "bed.drawers.casters", "bed.drawers.travel", "bed.shelf.1.from",
			"bed.shelf.1.height", "bed.shelf.2.long", "bed.post.thick", "bed.post.wide", "bed.rail.wide", "bed.ledge.wide", "bed.slat.wide", "bed.guard.board.wide",
			"bed.books.board.wide", "bed.drawers.side.wide", "bed.drawers.bottom.thick", "bed.climb.panel.thick", "bed.climb.pitch", "bed.ladder.tread.wide",
		} {
			if to := sizeAt(&s, key); to != nil && rapid.IntRange(0, 5).Draw(t, key) == 0 {
				*to = far.Draw(t, "to")
			}
		}
		s.Guard.Rows += rapid.SampledFrom([]int{0, 0, -5, 1 << 40}).Draw(t, "more rows")
		s.Upper.Slats = rapid.SampledFrom([]int{0, 0, -5, 1 << 40}).Draw(t, "more slats")
		bunk.Build(s)
	})
}
