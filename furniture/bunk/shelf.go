package bunk

import (
	"slices"
	"strconv"

	"bunkwright/furniture"
	"bunkwright/room/length"
)

// A wall shelf is a cleat on edge along the wall, the board on it, and two cheeks before the cleat under the board's ends, as high as
// the cleat: they keep the board from tipping forward and nothing hangs lower than the cleat.

// cheekBack is how far the cheeks stay behind the board's front edge. Common practice, no source.
const cheekBack = length.Inch / 2

// leastCheek is the shortest cheek that helps. Common practice, no source.
const leastCheek = length.Inch

func (k *Shelf) hangs() nm { return k.Board.Thick + k.Cleat.Wide } // board and cleat together, in height

func (k *Shelf) cleat() span { return centred(from(k.From, k.Long), k.CleatLong) }

func (c *checks) basicShelves(all []Shelf) {
	for i := range all {
		k, key := &all[i], func(name string) string { return shelfKey(i, name) }
		if k.For != deckNames[upper] && k.For != deckNames[lower] {
			c.refuse(key("for"), strconv.Quote(k.For)+" is no bed: want upper or lower")
		}
		c.board(key("board"), k.Board)
		c.board(key("cleat"), k.Cleat)
		c.within(key("long"), k.Long, 1, highest)
		c.within(key("height"), k.Height, 1, highest)
		c.within(key("from"), k.From, -highest, highest)
		c.fastener(key("fastener"), k.Fastener)
		c.within(key("fastener_long"), k.FastenerLong, 1, widest)
		c.count(key("screws_per_stud"), k.ScrewsPerStud, 1, 6)
	}
}

func (c *checks) shelves(s *Sizes, d *dims) {
	inWay := wallSolids(s, d)
	for i := range s.Shelves {
		k, key := &s.Shelves[i], func(name string) string { return shelfKey(i, name) }
		c.atLeast(key("board.wide"), k.Board.Wide, k.Cleat.Thick+leastCheek+cheekBack, "no room is left for the cheeks before the cleat")
		if cheeks := 2 * k.Cleat.Thick; k.Long < cheeks {
			c.near(key("long"), "the board is too short for the cheeks under its ends", cheeks)
		} else {
			c.between(key("cleat_long"), k.CleatLong, cheeks, k.Long,
				"the cleat is too short for the cheeks at its ends", "the cleat would reach past the board")
		}
		for _, at := range k.ScrewAt {
			if at <= 0 || at >= k.CleatLong {
				c.refuse(key("screws"), "a screw would miss the cleat")
				break
			}
		}
		c.shelfClear(i, k, d, inWay)
		inWay = append(inWay, facing{from(k.From, k.Long), span{k.Height - k.hangs(), k.Height}, "another shelf"})
	}
}

// A facing is what stands before the wall, seen from the front.
type facing struct {
	x, z span
	what string
}

func (f facing) meets(k *Shelf) bool {
	return f.x.overlaps(from(k.From, k.Long)) && f.z.overlaps(span{k.Height - k.hangs(), k.Height})
}

// wallSolids lists what a shelf behind the bed must keep clear of, as if the bed stood against the wall on a hard floor.
func wallSolids(s *Sizes, d *dims) []facing {
	whole := span{0, d.long}
	up := span{d.up.low, d.up.top}
	if !s.Guard.OpenWall {
		up.hi = s.Guard.Top
	}
	return []facing{
		{span{0, d.post(Left).hi}, span{0, s.Guard.Top}, "a post"},
		{span{d.post(Right).lo, d.long}, span{0, s.Guard.Top}, "a post"},
		{whole, span{d.low.low, d.low.top}, "the lower bed's frame"},
		{whole, up, "the upper bed's frame and guardrail"},
	}
}

// shelfClear refuses a shelf that reaches below the floor, or that the bed or another shelf stands in the way of, with the nearest place
// along the wall or height that is free.
func (c *checks) shelfClear(i int, k *Shelf, d *dims, inWay []facing) {
	free := func(try Shelf) bool {
		return try.Height >= try.hangs() && try.Height <= highest &&
			!slices.ContainsFunc(inWay, func(f facing) bool { return f.meets(&try) })
	}
	if free(*k) {
		return
	}
	reason := "the cleat would reach below the floor"
	if hit := slices.IndexFunc(inWay, func(f facing) bool { return f.meets(k) }); hit >= 0 {
		reason = inWay[hit].what + " would stand in the shelf's way"
	}
	try := *k
	for _, try.From = range nearestFirst(k.From, d.post(Left).hi, d.post(Right).lo-k.Long) {
		if free(try) {
			c.near(shelfKey(i, "from"), reason, try.From)
			return
		}
	}
	try.From = k.From
	heights := []nm{k.hangs()}
	for _, f := range inWay {
		heights = append(heights, f.z.lo, f.z.hi+k.hangs())
	}
	for _, try.Height = range nearestFirst(k.Height, heights...) {
		if free(try) {
			c.near(shelfKey(i, "height"), reason, try.Height)
			return
		}
	}
	c.refuse(shelfKey(i, "from"), reason)
}

// nearestFirst sorts candidates by their distance from what was asked for.
func nearestFirst(want nm, all ...nm) []nm {
	far := func(a nm) nm { return max(a-want, want-a) }
	slices.SortStableFunc(all, func(a, b nm) int { return int(max(-1, min(1, far(a)-far(b)))) })
	return all
}

func (b *builder) shelves() {
	for i := range b.s.Shelves {
		b.shelf(i)
	}
}

func (b *builder) shelfPart(i int, name, role, words string, stock furniture.Stock) furniture.Part {
	n := strconv.Itoa(i + 1)
	return furniture.Part{
		ID: "shelf." + n + "." + name, Role: role, Name: words + ", shelf " + n, Assembly: "shelf " + n, Stock: stock,
		Frame: furniture.OnWall, FaceUp: "inside",
	}
}

func (b *builder) shelf(i int) {
	k := &b.s.Shelves[i]
	z := span{k.Height - k.hangs(), k.Height - k.Board.Thick}
	p := b.shelfPart(i, "cleat", RoleCleat, "cleat", k.Cleat)
	p.Class, p.After = furniture.CutAfter, "studs"
	cleat := b.add(p, cuboid{k.cleat(), {-k.Cleat.Thick, 0}, z}, edgeX)

	p = b.shelfPart(i, "board", RoleShelf, "board", k.Board)
	p.Class, p.FaceUp = furniture.FitToPlace, "up"
	p.Cuts = []furniture.Cut{{Kind: furniture.Scribe, Edge: true, End: 1}}
	board := b.add(p, cuboid{from(k.From, k.Long), {-k.Board.Wide, 0}, {z.hi, k.Height}}, flatX)
	b.lay(board, cleat)

	at := k.cleat()
	var cheeks [2]int
	for j, x := range [2]span{from(at.lo, k.Cleat.Thick), from(at.hi-k.Cleat.Thick, k.Cleat.Thick)} {
		name := string(ends[j])
		cheeks[j] = b.add(b.shelfPart(i, "cheek."+name, RoleCheek, "cheek, "+name, k.Cleat),
			cuboid{x, {cheekBack - k.Board.Wide, -k.Cleat.Thick}, z}, edgeY)
		b.glue(cleat, cheeks[j])
		b.lay(board, cheeks[j])
	}
	b.pair(cheeks[0], cheeks[1])
	b.hang(i, cleat)
}

// hang fixes a cleat to the studs and describes it.
func (b *builder) hang(i, cleat int) {
	k, p := &b.s.Shelves[i], &b.bed.Parts[cleat]
	b.bed.Joints = append(b.bed.Joints, furniture.Joint{
		ID: p.ID + "/" + furniture.Wall, A: p.ID, B: furniture.Wall, FaceA: "outside face", FaceB: "face",
		Fastener: k.Fastener, Count: len(k.ScrewAt) * k.ScrewsPerStud, From: p.ID, ComesApart: true,
	})
	at := CleatAt{ID: p.ID, Shelf: i, Box: p.Box, Thick: k.Cleat.Thick.MM(), High: k.Cleat.Wide.MM()}
	for _, x := range k.ScrewAt {
		at.Screws = append(at.Screws, (k.cleat().lo + x).MM())
	}
	for _, part := range b.bed.Parts[cleat:] {
		at.Parts = append(at.Parts, part.ID)
	}
	b.bed.Cleats = append(b.bed.Cleats, at)
}
