package survey

import (
	"math"
	"slices"
	"strings"
	"testing"

	"bunkwright/room"
	"bunkwright/room/length"
	"bunkwright/room/misread"
)

var inInches = length.Style{Unit: length.Inches}

// twelveMore is the room of six readings with 12 in more in DA (room_cases.csv, case six_readings_DA_plus_12).
func twelveMore() *room.Room {
	r := sixReadings()
	r.Walls[3].Length = in(132.125)
	return r
}

// TestOneOfSix: with one check left a room says that one of six is off, by how much, and never which (roo-015); none is set aside.
func TestOneOfSix(t *testing.T) {
	s := surveyed(t, twelveMore(), Options{})
	if len(s.Conflicts) != 1 || len(s.Conflicts[0].Suspects) != 6 {
		t.Fatalf("conflicts %+v", s.Conflicts)
	}
	got := s.Say(s.Conflicts[0], inInches)
	if !strings.HasPrefix(got, "one of these six is off, by 7-1/2 in to 12 in depending on which: take them again: wall.") {
		t.Errorf("said %q", got)
	}
	for i, src := range s.Sources {
		if st := s.Standing(i); src.Index >= 0 && st.State != Doubtful || src.Index < 0 && st.State != Agrees {
			t.Errorf("%s: %+v", src.Key, st)
		}
	}
	first := s.Conflicts[0].Suspects[0] // the one that would leave the corners square
	if s.Sources[first.Source].Key != "wall.DA.length" || first.Causes[0].ID != misread.Feet || first.Causes[0].Value != length.FromMM(120.125*25.4) {
		t.Errorf("first suspect %+v", first)
	}
	if got := s.Standing(first.Source).Questions(inInches)[0]; got != `read as 11' 0-1/8" instead of 10' 0-1/8"? A foot dropped or added?` {
		t.Errorf("asked %q", got)
	}
}

// TestReadAgainNames: the same slip, and every length read twice: it is named, set aside, and the room is as it would be without it.
func TestReadAgainNames(t *testing.T) {
	r, clean := twelveMore(), sixReadings()
	for i := range r.Walls {
		again := sixReadings().Walls[i].Length
		r.Walls[i].Length = append(r.Walls[i].Length, again...)
		if i != 3 {
			clean.Walls[i].Length = append(clean.Walls[i].Length, again...)
		}
	}
	s, without := surveyed(t, r, Options{}), surveyed(t, clean, Options{})
	if len(s.Conflicts) != 1 || !s.Conflicts[0].Found() {
		t.Fatalf("conflicts %+v", s.Conflicts)
	}
	source := s.Conflicts[0].Suspects[0].Source
	if s.Named(source) != "wall.DA.length, reading 1" || s.Standing(source).State != Wrong {
		t.Errorf("%s: %+v", s.Named(source), s.Standing(source))
	}
	wantNear(t, "off", s.Standing(source).Off/25.4, 12, 0.15)
	for _, key := range []string{"corner.B.x", "corner.C.x", "corner.C.y", "corner.D.x", "corner.D.y"} {
		wantNear(t, key, s.Value(s.Find(key)), without.Value(without.Find(key)), 1e-4)
		wantNear(t, "u of "+key, s.Sigma(s.Find(key)), without.Sigma(without.Find(key)), 1e-4)
	}
	got := s.Say(s.Conflicts[0], inInches)
	if !strings.HasPrefix(got, `wall.DA.length, reading 1, read as 11' 0-1/8", is 1`) || !strings.HasSuffix(got, " more than the other readings say: take it again") {
		t.Errorf("said %q", got)
	}
}

// TestOtherwise: the room as it would be with a reading back that was set aside, or without one that was not, is the room worked out that way:
// to first order, so a slip of an inch is tried: within 1/64 in.
func TestOtherwise(t *testing.T) {
	r := sixReadings()
	r.Walls[3].Length = in(121.625, 120.125, 120.125)
	s := surveyed(t, r, Options{})
	if len(s.Conflicts) != 1 || !s.Conflicts[0].Found() {
		t.Fatalf("conflicts %+v", s.Conflicts)
	}
	b, err := adjust(r, Options{U: DefaultUncertainties()}, manner{}) // with all readings
	if err != nil {
		t.Fatal(err)
	}
	for u, x := range s.Otherwise(s.Conflicts[0].Suspects[0]) {
		wantNear(t, s.Keys[u], x, b.s.adjusted.X[u], 25.4/64)
	}
}

// TestPairOfOneThing: of a sill read twice nothing tells which reading is off; of three the odd one is.
func TestPairOfOneThing(t *testing.T) {
	r := sixReadings()
	r.Windows = []room.Window{{Key: "w", OnWall: room.OnWall{Wall: "AB", From: "A", At: in(92)}, Wide: in(34), Sill: in(27, 43)}}
	s := surveyed(t, r, Options{Agree: 2.58})
	if got := s.Say(s.Conflicts[0], inInches); got != `two readings of window.w.sill do not agree, 2' 3" and 3' 7": take it again` {
		t.Errorf("said %q", got)
	}
	r.Windows[0].Sill = in(27, 43, 27)
	if s = surveyed(t, r, Options{Agree: 2.58}); len(s.Conflicts) != 1 || s.Named(s.Conflicts[0].Suspects[0].Source) != "window.w.sill, reading 2" {
		t.Errorf("conflicts %+v", s.Conflicts)
	}
	r.Windows[0].Sill = in(27, 27.48) // 2.7 u of their difference: the pair does not agree (own-agree), the whole room accuses nobody
	if s = surveyed(t, r, Options{Agree: 2.58}); len(s.Conflicts) != 1 || !s.Conflicts[0].Repeat {
		t.Errorf("conflicts %+v", s.Conflicts)
	}
}

// TestSmallest holds what a room can find against room_cases.csv: roo-056 to 058 for readings once, 062 to 064 for twice (d0 4.132, readings
// watched by readings alone), and a wall of four without a diagonal against what is believed (roo-068).
func TestSmallest(t *testing.T) {
	for _, c := range []struct {
		times, diagonals int
		key              string
		want             float64
	}{
		{1, 2, "wall.AB.length", 1.34}, {1, 2, "wall.BC.length", 1.61}, {1, 2, "diagonal.AC.length", 1.03},
		{2, 2, "wall.AB.length", 0.68}, {2, 2, "wall.BC.length", 0.70}, {2, 2, "diagonal.AC.length", 0.65},
		{1, 0, "wall.AB.length", 4.39}, {1, 0, "wall.BC.length", 5.24},
	} {
		s := surveyed(t, oblong(c.times, c.diagonals), Options{})
		i := slices.IndexFunc(s.Sources, func(src Source) bool { return src.Key == c.key })
		wantNear(t, c.key, s.Standing(i).Smallest/25.4, c.want, 0.006)
		if want := map[bool]State{true: Agrees, false: Believed}[c.diagonals > 0]; s.Standing(i).State != want {
			t.Errorf("%s: %v, want %v", c.key, s.Standing(i).State, want)
		}
	}
	s := surveyed(t, oblong(1, 1), Options{NoSoftAngles: true})
	if st := s.Standing(0); st.State != Unwatched || !math.IsInf(st.Smallest, 1) {
		t.Errorf("four walls and a diagonal: %+v, want nothing watched (roo-050)", st)
	}
}

// oblong is a room of 144 by 120 in, exactly, every length read so many times.
func oblong(times, diagonals int) *room.Room {
	m := func(v float64) room.Measure { return slices.Repeat(in(v), times) }
	r := &room.Room{Outline: "ABCD", Walls: []room.Wall{
		{Key: "AB", Length: m(144)}, {Key: "BC", Length: m(120)}, {Key: "CD", Length: m(144)}, {Key: "DA", Length: m(120)}}}
	for _, key := range []string{"AC", "BD"}[:diagonals] {
		r.Diagonals = append(r.Diagonals, room.Diagonal{Key: key, Length: m(math.Hypot(144, 120))})
	}
	return r
}

// TestIfOff: nobody watches the length of the first wall of four and a diagonal; off by an inch it moves B by an inch, and A not at all.
func TestIfOff(t *testing.T) {
	s := surveyed(t, oblong(1, 1), Options{NoSoftAngles: true})
	for _, shift := range s.IfOff(0, 25.4) {
		switch shift.Corner {
		case "A":
			wantNear(t, "A", math.Hypot(shift.X, shift.Y), 0, 1e-9)
		case "B":
			wantNear(t, "B", shift.X, 25.4, 1e-9)
		}
	}
}

// TestChains: a window 34 in wide, 92 in from A and 18 in from B, on a wall of 144-1/8 in: three pieces, 1/8 in short of it, within 1/8 in
// times the root of three; a rest of 20 in is not. The far edge makes a chain of two.
func TestChains(t *testing.T) {
	r := sixReadings()
	r.Windows = []room.Window{{Key: "w", OnWall: room.OnWall{Wall: "AB", From: "A", At: in(92), Far: in(126.1), Rest: in(18)}, Wide: in(34)}}
	chains := surveyed(t, r, Options{}).Chains()
	if len(chains) != 2 || !chains[0].AddsUp() || !chains[1].AddsUp() {
		t.Fatalf("chains %+v", chains)
	}
	wantNear(t, "tolerance of two", chains[0].Tolerance/25.4, 0.125*math.Sqrt2, 1e-9)
	wantNear(t, "tolerance of three", chains[1].Tolerance/25.4, 0.125*math.Sqrt(3), 1e-9)
	wantNear(t, "off", chains[1].Off()/25.4, -0.125, 1e-6)
	r.Windows[0].Rest = in(20)
	s := surveyed(t, r, Options{})
	if s.Chains()[1].AddsUp() {
		t.Error("two inches too much add up")
	}
	// The adjustment sees it too: at, wide and far are one check among themselves, so the rest is what does not go with them.
	if len(s.Conflicts) != 1 || s.Sources[s.Conflicts[0].Suspects[0].Source].Key != "window.w.rest" {
		t.Errorf("conflicts %+v", s.Conflicts)
	}
}

// TestLeaningWall: high up a wall is read 3/4 in longer than low down, and the middle is between: that is offered as the cause, before anybody
// is asked to measure again.
func TestLeaningWall(t *testing.T) {
	r := sixReadings()
	r.Walls[0].LowLength, r.Walls[0].HighLength = in(141.125), in(147.125)
	s := surveyed(t, r, Options{})
	leans := false
	for _, c := range s.Conflicts {
		for _, one := range c.Suspects {
			leans = leans || slices.ContainsFunc(one.Causes, func(c misread.Cause) bool { return c.ID == misread.OutOfPlumb })
		}
	}
	if !leans {
		t.Errorf("conflicts %+v", s.Conflicts)
	}
}

// TestGrossSlip: a wall of 126.6 in read twice, once as 726.6 in, a 7 for a 1: no room can be worked out with it, and with no triangle of the
// other readings anything is wrong: it is found, and the room is that of the rest.
func TestGrossSlip(t *testing.T) {
	r := oblong(2, 2)
	r.Walls[1].Length[0].Value += 600 * length.Inch
	s := surveyed(t, r, Options{})
	if len(s.Conflicts) != 1 || !s.Conflicts[0].Found() || s.Named(s.Conflicts[0].Suspects[0].Source) != "wall.BC.length, reading 1" {
		t.Fatalf("conflicts %+v", s.Conflicts)
	}
	wantNear(t, "off", s.Conflicts[0].Suspects[0].Off/25.4, 600, 1e-3)
	wantNear(t, "C", s.Value(s.Find("corner.C.y"))/25.4, -120, 1e-4)
	if causes := s.Conflicts[0].Suspects[0].Causes; len(causes) == 0 || causes[0].ID != misread.LookAlike {
		t.Errorf("causes %+v", causes)
	}
}
