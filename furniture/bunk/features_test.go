package bunk_test

import (
	"math"
	"reflect"
	"strings"
	"testing"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/room/geom"

	"pgregory.net/rapid"
)

// hole returns the solid that an opening leaves free, over the thickness of what is beside it; above the deck an end's opening lies in
// the plane of its boards, behind which the guardrails of the long sides end.
func hole(b *bunk.Bed, o bunk.Opening, parts map[string]furniture.Part) geom.Box {
	lo, hi := parts[o.Parts[2]].Box.Bounds()
	alo, ahi := parts[o.Parts[1]].Box.Bounds()
	if o.Side == "front" || o.Side == "wall" {
		return geom.NewBox(geom.V3{X: o.From, Y: math.Min(lo.Y, alo.Y), Z: o.Bottom}, geom.V3{X: o.To, Y: math.Max(hi.Y, ahi.Y), Z: o.Top})
	}
	if o.Zone == bunk.ZoneUpper {
		lo, hi = alo, ahi
	}
	return geom.NewBox(geom.V3{X: math.Min(lo.X, alo.X), Y: -o.To, Z: o.Bottom}, geom.V3{X: math.Max(hi.X, ahi.X), Y: -o.From, Z: o.Top})
}

// TestOpeningsAreOpen: nothing of the bed stands in an opening, and the boards named beside it bound it.
func TestOpeningsAreOpen(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		parts := byID(&b)
		for _, o := range b.Openings {
			if o.Top <= o.Bottom || o.Wide <= 0 || math.Abs(o.To-o.From-o.Wide) > speck || len(o.Parts) != 4 {
				t.Fatalf("%+v", o)
			}
			free := hole(&b, o, parts)
			for _, p := range b.Parts {
				if p.Frame == furniture.OnBed && p.Assembly != "ladder" && geom.BoxGap(free, p.Solid()) < -speck {
					t.Fatalf("%s stands in the opening %+v", p.ID, o)
				}
			}
			for i, id := range o.Parts[:2] {
				edge := [2]float64{parts[id].Box.Top() - o.Bottom, parts[id].Box.Bottom() - o.Top}[i]
				if math.Abs(edge) > speck {
					t.Fatalf("%s does not bound the opening %+v", id, o)
				}
			}
		}
	})
}

// TestRailsAndOpeningsFillTheSide: over every stretch of a railed side, boards and openings together reach from the side rail to the guard's top.
func TestRailsAndOpeningsFillTheSide(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		s := &b.Sizes
		railTop := s.Upper.Height - s.Slat.Thick - s.Ledge.Wide + s.Rail.Wide
		boards := float64(s.Guard.Rows) * s.Guard.Stock.Wide.MM()
		open := map[string]map[float64]float64{}
		for _, o := range b.Openings {
			if o.Zone == bunk.ZoneRail {
				if open[o.Side] == nil {
					open[o.Side] = map[float64]float64{}
				}
				open[o.Side][o.From] += o.Top - o.Bottom
			}
		}
		for _, g := range b.Guards {
			for _, air := range open[g.Side] {
				if math.Abs(air+boards-(s.Guard.Top-railTop).MM()) > speck {
					t.Fatalf("%s: %g mm of boards and %g mm of openings do not fill %v", g.Side, boards, air, s.Guard.Top-railTop)
				}
			}
			if math.Abs(g.Top-s.Guard.Top.MM()) > speck && !strings.HasPrefix(g.Parts[0], "upper.member") {
				t.Fatalf("%s: rail ends at %g mm", g.Side, g.Top)
			}
		}
	})
}

func TestNoStretchOfRailIsBare(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		for _, o := range b.Openings {
			if o.Zone == bunk.ZoneRail && o.Wide > 1220+speck {
				t.Fatalf("%g mm of rail without post or upright: %+v", o.Wide, o)
			}
		}
	})
}

func TestSlatsLieInEqualGaps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		rail := part(t, &b, "upper.rail.wall").Box
		left := rail.C.X - rail.Half.X
		for i, name := range []string{"lower", "upper"} {
			deck, want := []bunk.DeckAt{b.Lower, b.Upper}[i], []bunk.Deck{b.Sizes.Lower, b.Sizes.Upper}[i]
			end, n := left, 0
			for _, p := range b.Parts {
				if !strings.HasPrefix(p.ID, name+".slat.") {
					continue
				}
				lo, hi := p.Box.Bounds()
				if math.Abs(lo.X-end-deck.SlatGap) > 2e-6 || math.Abs(hi.Z-deck.Top) > speck {
					t.Fatalf("%s: gap %g before it, want %g", p.ID, lo.X-end, deck.SlatGap)
				}
				end, n = hi.X, n+1
			}
			if math.Abs(left+b.Inside.Long-end-deck.SlatGap) > 2e-6 || n != deck.SlatCount {
				t.Fatalf("%s bed: %d slats, last gap %g", name, n, left+b.Inside.Long-end)
			}
			if want.Slats == 0 && deck.SlatGap > want.SlatGap.MM()+1e-6 || want.Slats > 0 && want.Slats != n {
				t.Fatalf("%s bed: %d slats in gaps of %g, asked for %+v", name, n, deck.SlatGap, want)
			}
		}
	})
}

func TestMattressFitsBetweenTheSideRails(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		for _, k := range []bunk.DeckAt{b.Upper, b.Lower} {
			if math.Abs(k.Mattress.Bottom()-k.Top) > speck || math.Abs(k.Mattress.Top()-k.MattressTop) > speck {
				t.Fatalf("mattress does not lie on the deck: %+v", k)
			}
			for _, p := range b.Parts {
				if p.Frame == furniture.OnBed && geom.BoxGap(k.Mattress, p.Solid()) < -speck && !overHead(p, k) {
					t.Fatalf("%s stands in a mattress", p.ID)
				}
			}
		}
	})
}

// overHead tells whether a part belongs to the upper bed, which a very thick lower mattress may reach: that is for a question to say.
func overHead(p furniture.Part, k bunk.DeckAt) bool { return p.Box.Bottom() > k.Top+300 }

func TestTreadsClimbToTheDeck(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		st := b.Steps
		if st == nil {
			if b.Sizes.Ladder != nil {
				t.Fatal("a ladder without steps")
			}
			return
		}
		pitch := b.Upper.Top / float64(len(st.Tops))
		for i, z := range st.Tops {
			if math.Abs(z-pitch*float64(i+1)) > 1e-6 {
				t.Fatalf("tread %d at %g mm, pitch %g", i+1, z, pitch)
			}
		}
		if math.Abs(st.Out.Len()-1) > 1e-9 || len(st.Foot) != 4 || math.Abs(st.Clear-b.Sizes.Guard.Gap.MM()) > speck {
			t.Fatalf("%+v", st)
		}
		if st.ToBed < b.Sizes.Post.Thick.MM()-speck {
			t.Fatalf("the top tread stands %g mm from the bed, within the uprights", st.ToBed)
		}
	})
}

// TestDrawersPullOut: a drawer meets nothing of the bed on its way, and only the floor under it.
func TestDrawersPullOut(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		for _, d := range b.Drawers {
			own := map[string]bool{}
			for _, id := range d.Parts {
				own[id] = true
				if gap := geom.BoxGap(part(t, &b, id).Solid(), d.Shut); gap > 0 {
					t.Fatalf("%s is not in its drawer", id)
				}
			}
			lo, hi := d.Shut.Bounds()
			path := geom.NewBox(geom.V3{X: lo.X, Y: lo.Y - d.Travel, Z: lo.Z}, hi)
			if hi.Z > d.Over+speck {
				t.Fatalf("%s is higher than what it passes under", d.ID)
			}
			for _, p := range b.Parts {
				if p.Frame == furniture.OnBed && !own[p.ID] && geom.BoxGap(path, p.Solid()) < -speck {
					t.Fatalf("%s stands in the way of %s", p.ID, d.ID)
				}
			}
		}
	})
}

func TestClimbingEndAddsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		k := b.Climb
		if k == nil {
			return
		}
		sum := 0.0
		for _, g := range k.Gaps {
			sum += g
		}
		last := 0.0
		for _, f := range k.Footholds {
			if f.Top <= last || f.Deep <= 0 || f.Part == "" {
				t.Fatalf("footholds out of order: %+v", k.Footholds)
			}
			last = f.Top
			if !b.Sizes.Climb.Holds {
				sum += 2 * part(t, &b, f.Part).Box.Reach(geom.V3{Z: 1})
			}
		}
		if math.Abs(sum-last) > 1e-5 {
			t.Fatalf("gaps and members add up to %g mm of %g", sum, last)
		}
		if face := map[bunk.End]float64{bunk.Left: 0, bunk.Right: b.Long}[k.End]; math.Abs(face-k.Face) > speck {
			t.Fatalf("face at %g mm", k.Face)
		}
	})
}

func TestWayInIsClear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		w := b.WayIn
		if (w.Side == "") != (b.Sizes.Ladder == nil && b.Sizes.Climb == nil && !b.Sizes.Guard.OpenFront) {
			t.Fatalf("way in %+v", w)
		}
		if w.Side == "" {
			return
		}
		if cut := !b.Sizes.Guard.OpenFront || w.Side != "front"; cut && math.Abs(w.Clear-b.Sizes.Guard.Gap.MM()) > speck {
			t.Fatalf("way in %+v, chosen %v", w, b.Sizes.Guard.Gap)
		}
		lo, hi := geom.V3{X: w.From, Y: -b.Wide}, geom.V3{X: w.To, Y: -b.Wide + b.Sizes.Post.Thick.MM()}
		if w.Side != "front" {
			e := map[string]float64{"left": 0, "right": b.Long - b.Sizes.Post.Thick.MM()}[w.Side]
			lo, hi = geom.V3{X: e, Y: -w.To}, geom.V3{X: e + b.Sizes.Post.Thick.MM(), Y: -w.From}
		}
		lo.Z, hi.Z = b.Upper.Top, b.Sizes.Guard.Top.MM()
		free := geom.NewBox(lo, hi)
		for _, p := range b.Parts {
			inWay := geom.BoxGap(free, p.Solid()) < -speck
			if inWay && p.Role != bunk.RoleMember && !(b.Sizes.Guard.OpenFront && p.Frame == furniture.OnBed) && !strings.HasPrefix(p.ID, "books.") && p.Frame == furniture.OnBed {
				t.Fatalf("%s stands in the way in %+v", p.ID, w)
			}
		}
	})
}

func TestPostsStandLevelWithTheirNeighbours(t *testing.T) {
	b := mustBuild(t, dressed())
	if len(b.Posts) != 7 { // four posts, one upright on the wall side, two on the front
		t.Errorf("%d posts and uprights", len(b.Posts))
	}
	for _, p := range b.Posts {
		if p.Top != p.Neighbour {
			t.Errorf("%+v", p)
		}
	}
	s := twin()
	s.Ladder, s.Guard.OpenFront = &bunk.Ladder{}, true
	b = mustBuild(t, s)
	last := b.Posts[len(b.Posts)-1]
	if got := inches(last.Top) + " " + inches(last.Neighbour); got != "66.75 58.25" {
		t.Errorf("an upright beside no rail stands at %s", got)
	}
}

// TestDefaultKeysAreFileKeys: every default is one of the keys that the file tags spell.
func TestDefaultKeysAreFileKeys(t *testing.T) {
	keys := map[string]bool{}
	fileKeys("bed", reflect.TypeFor[bunk.Sizes](), keys)
	for _, d := range bunk.Defaults() {
		if !keys[d.Key] {
			t.Errorf("%q is no key of the file", d.Key)
		}
	}
}

func fileKeys(path string, s reflect.Type, into map[string]bool) {
	for i := range s.NumField() {
		f := s.Field(i)
		key := path + "." + f.Tag.Get("file")
		into[key] = true
		in := f.Type
		for in.Kind() == reflect.Pointer || in.Kind() == reflect.Slice {
			in = in.Elem()
		}
		if in.Kind() == reflect.Struct && in != reflect.TypeFor[furniture.Stock]() {
			fileKeys(key, in, into)
		}
	}
}
