package bunk

import (
	"strconv"

	"bunkwright/furniture"
)

// An endPlan tells what closes one end.
type endPlan struct {
	outer  nm              // inner plane to the outermost face
	slats  bool            // climbing slats instead of end boards
	panel  bool            // a climbing panel outside the end members
	stock  furniture.Stock // end boards above the upper end member
	rip    nm              // width they are ripped to; 0: the full width
	boards span            // y of the end boards
	rows   []span          // heights of the end boards
	way    span            // y of the way in, clear; empty where there is none
	free   span            // y of the upright at the boards' free end
	beside span            // y of the upright before the front post
}

// planEnd lays out one end. Where the way in is cut into the end boards these are rail stock, so that an upright can lap flat on the
// outer faces of both the end member and the boards.
func planEnd(s *Sizes, d *dims, e End) endPlan {
	p := endPlan{stock: s.Guard.Stock, boards: d.across(), rows: d.rows, outer: max(d.r, s.Guard.Stock.Thick)}
	switch climb := s.Climb; {
	case climb != nil && climb.At == e && climb.Holds:
		p.panel = true
		p.outer = max(p.outer, d.r+climb.Panel.Thick)
	case climb != nil && climb.At == e:
		p.slats = true
		p.outer = max(d.r, climb.Slat.Thick)
	}
	if d.way.cut && d.way.atEnd && d.way.at == e {
		p.cutFor(s, d)
	}
	return p
}

// cutFor makes place for the way in beside the front post.
func (p *endPlan) cutFor(s *Sizes, d *dims) {
	gap := d.way.gap
	p.stock = s.Rail
	if s.Rail.Wide > s.Guard.Stock.Wide {
		p.rip = s.Guard.Stock.Wide
	}
	wide := min(s.Rail.Wide, s.Guard.Stock.Wide)
	p.rows = make([]span, len(d.rows))
	for i, r := range d.rows {
		p.rows[i] = span{r.hi - wide, r.hi}
	}
	p.way, p.free, p.beside = d.y(front, d.w, d.w+gap), d.y(front, d.w+gap, 2*d.w+gap), d.y(front, 0, d.w)
	p.boards = span{p.way.hi, 0}
	p.outer = max(p.outer, d.r+d.t)
}

// endAbove closes an end above the upper end member with boards in the rows of the guardrail.
func (b *builder) endAbove(e End) {
	p, i := b.d.end(e), e.index()
	if p.slats {
		return
	}
	if p.way.size() > 0 {
		b.endUprights(e)
	}
	for n, z := range p.rows {
		num := strconv.Itoa(n + 1)
		board := b.add(furniture.Part{
			ID: string(e) + ".board." + num, Role: RoleEndBoard, Name: "end board " + num + ", " + string(e) + " end",
			Assembly: string(e) + " end", Stock: p.stock, Rip: p.rip, FaceUp: "outside",
		}, cuboid{b.d.x(e, -p.stock.Thick, 0), p.boards, z}, edgeY)
		b.ref.boards[i] = append(b.ref.boards[i], board)
		b.glue(board, b.ref.post[i][wall])
		if p.way.size() > 0 {
			b.glue(b.ref.wayUpright[0], board)
		} else {
			b.glue(board, b.ref.post[i][front])
		}
	}
	b.pairBoards()
}

// pairBoards pairs the end boards where both ends have the same.
func (b *builder) pairBoards() {
	left, right := b.ref.boards[0], b.ref.boards[1]
	if len(left) == 0 || len(left) != len(right) || b.d.way.cut && b.d.way.atEnd {
		return
	}
	for i := range left {
		b.pair(left[i], right[i])
	}
}

// endUprights stand on both sides of a way in at an end, on the end member's outer face. The one before the front post has a
// packing behind it that fills the end member's thickness above the end member.
func (b *builder) endUprights(e End) {
	d, p, i := b.d, b.d.end(e), e.index()
	x := d.x(e, -d.r-d.t, -d.r)
	packing := b.add(furniture.Part{
		ID: string(e) + ".packing", Role: RolePacking, Name: "packing before the front post, " + string(e) + " end",
		Assembly: string(e) + " end", Stock: b.s.Rail, Rip: d.t, FaceUp: "outside",
	}, cuboid{d.x(e, -d.r, 0), d.layer(front), {d.up.top, b.s.Guard.Top}}, uprightY)
	b.glue(packing, b.ref.post[i][front])
	for k, y := range [2]span{p.free, p.beside} {
		num := strconv.Itoa(k + 1)
		u := b.add(furniture.Part{
			ID: string(e) + ".upright." + num, Role: RoleUpright, Name: "upright " + num + ", " + string(e) + " end",
			Assembly: string(e) + " end", Stock: b.s.Post, FaceUp: "outside",
		}, cuboid{x, y, {d.up.low, b.s.Guard.Top}}, uprightY)
		b.glue(u, b.ref.member[upper][i])
		b.ref.wayUpright[k] = u
	}
	b.glue(b.ref.wayUpright[1], packing)
}
