package bunk

import (
	"strconv"

	"bunkwright/furniture"
	"bunkwright/room/length"
)

// The book ledge lies outside the front side rail of the upper bed, in the plane of the posts' outer layer: spacer blocks on the rail, the
// board flat on them with its top level with the rail's, a lip on edge before it.

// spacerStep is the longest stretch of board between spacer blocks. Common practice, no source.
const spacerStep = 24 * length.Inch

// bookRoom is where the ledge may lie along the bed: between the front posts, short of the ladder and the upright at the way in.
func bookRoom(s *Sizes, d *dims) span {
	room := d.between().shrink(d.w)
	if !d.way.onFront() || s.Guard.OpenFront && s.Ladder == nil {
		return room
	}
	keep := d.w
	if l := s.Ladder; l != nil {
		keep = max(keep, 2*l.Stock.Thick) // a sloping ladder's stile and hanger
	}
	taken := d.x(d.way.at, 0, d.w+d.way.gap+keep)
	if d.way.at == Left {
		room.lo = taken.hi
	} else {
		room.hi = taken.lo
	}
	return room
}

func (c *checks) basicBooks(k *BookLedge) {
	if k == nil {
		return
	}
	if k.Long != 0 {
		c.within("bed.books.long", k.Long, 1, highest)
	}
	c.within("bed.books.from", k.From, 0, highest)
}

func (c *checks) books(s *Sizes, d *dims) {
	k := s.Books
	if k == nil {
		return
	}
	before := len(c.found)
	c.board("bed.books.board", k.Board)
	c.board("bed.books.lip", k.Lip)
	if len(c.found) > before {
		return
	}
	c.atLeast("bed.books.board.wide", k.Board.Wide, d.t, "the board would be narrower than its spacer blocks are thick")
	c.between("bed.books.board.thick", k.Board.Thick, thinnest, d.rw-shortest, "", "no height is left for the spacer blocks under the board")
	c.bookPlace(k, s, d)
}

// bookPlace refuses a ledge that a post, the ladder or an upright would stand in.
func (c *checks) bookPlace(k *BookLedge, s *Sizes, d *dims) {
	room := bookRoom(s, d)
	least := 2 * d.w
	switch {
	case room.size() < least:
		c.refuse("bed.books.long", "no room is left for a book ledge beside the way in")
	case k.Long < least:
		c.near("bed.books.long", "shorter than its two spacer blocks", least)
	case k.Long > room.size():
		c.near("bed.books.long", "longer than the room between posts, uprights and ladder", longestBooks(s, d, room.lo, room.size()))
	case k.From < room.lo:
		c.bookFrom(s, d, room.lo)
	case k.From+k.Long > room.hi:
		c.bookFrom(s, d, room.hi-k.Long)
	case d.runs[front].stuck:
		most := longestBooks(s, d, k.From, k.Long)
		if most < least {
			c.refuse("bed.books.from", "no place is left for the upright that the guardrail needs")
			return
		}
		c.near("bed.books.long", "no place is left for the upright that the guardrail needs", most)
	}
}

// bookFrom offers a place along the bed where that is all that is wrong.
func (c *checks) bookFrom(s *Sizes, d *dims, to nm) {
	const reason = "a post, the upright at the way in or the ladder stands there"
	if uprightsFit(s, d, from(to, s.Books.Long)) {
		c.near("bed.books.from", reason, to)
		return
	}
	c.refuse("bed.books.from", reason)
}

func uprightsFit(s *Sizes, d *dims, ledge span) bool {
	if s.Guard.OpenFront {
		return true
	}
	_, ok := fillUprights(d.bare(front), ledge, d.w)
	return ok
}

// longestBooks returns the longest ledge from a place, at most so long, that leaves room for the uprights.
func longestBooks(s *Sizes, d *dims, at, most nm) nm {
	bare := d.bare(front)
	best := nm(0)
	for _, try := range [3]nm{most, mostBare, bare.hi - d.w - at} {
		if try <= most && try > best && uprightsFit(s, d, from(at, try)) {
			best = try
		}
	}
	return best
}

func (b *builder) books() {
	k, d := b.s.Books, b.d
	if k == nil {
		return
	}
	rail := b.ref.rail[upper][front]
	part := func(name, role, words string, stock furniture.Stock) furniture.Part {
		return furniture.Part{ID: "books." + name, Role: role, Name: words + ", book ledge", Assembly: "book ledge", Stock: stock, FaceUp: "outside"}
	}
	z := span{d.up.low, d.up.top - k.Board.Thick}
	y := d.y(front, d.t-k.Board.Wide, d.t)
	p := part("board", RoleBookLedge, "board", k.Board)
	p.FaceUp = "up"
	board := b.add(p, cuboid{from(k.From, k.Long), y, {z.hi, d.up.top}}, flatX)
	n := int((k.Long-d.w+spacerStep-1)/spacerStep) + 1
	for i := range n {
		num := strconv.Itoa(i + 1)
		x := from(k.From+share(k.Long-d.w, i, n-1), d.w)
		p := part("spacer."+num, RoleSpacer, "spacer block "+num, b.s.Post)
		p.Assembly = b.bed.Parts[rail].Assembly
		block := b.add(p, cuboid{x, d.layer(front), z}, upright)
		b.glue(block, rail)
		b.lay(board, block)
	}
	lip := b.add(part("lip", RoleLip, "lip", k.Lip), cuboid{from(k.From, k.Long), {y.lo - k.Lip.Thick, y.lo}, from(z.hi, k.Lip.Wide)}, edgeX)
	b.glueWith(lip, board, seam(k.Long, seamStep)+1)
}
