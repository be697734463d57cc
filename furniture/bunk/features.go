package bunk

import (
	"math"

	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// features describes the bed for the questions.
func (b *builder) features() {
	d := b.d
	b.bed.Long, b.bed.Wide = d.long.MM(), d.wide.MM()
	b.bed.Foot = geom.Rect(0, -b.bed.Wide, b.bed.Long, 0)
	b.bed.Inside = Inside{Long: d.li.MM(), Wide: (d.wi + 2*(d.plane-d.r)).MM()}
	b.bed.Lower, b.bed.Upper = b.deckAt(lower), b.deckAt(upper)
	for i := range d.runs {
		b.guardAt(side(i))
	}
	for _, e := range ends {
		b.endGuardAt(e)
	}
	b.openings()
	b.wayIn()
	b.steps()
	b.climbAt()
	b.postsAt()
}

func (b *builder) deckAt(deck int) DeckAt {
	k, s, d := b.d.level(deck), b.s.deck(deck), b.d
	n := len(b.ref.slats[deck])
	x, y := centred(d.between(), s.MattressLong), centred(d.across(), s.MattressWide)
	top := math.NaN()
	if s.MattressThick > 0 {
		top = (k.deck + s.MattressThick).MM()
	}
	return DeckAt{
		Top: k.deck.MM(), Underside: k.under.MM(), Frame: k.low.MM(),
		Mattress:    geom.NewBox(corner(x.lo, y.lo, k.deck), corner(x.hi, y.hi, k.deck+s.MattressThick)),
		MattressTop: top,
		SlatGap:     (d.li - nm(n)*b.s.Slat.Wide).MM() / float64(n+1), SlatCount: n, SlatWide: b.s.Slat.Wide.MM(),
		HeadAtRight: s.Head == Right,
	}
}

func (b *builder) ids(parts []int) []string {
	out := make([]string, len(parts))
	for i, p := range parts {
		out[i] = b.id(p)
	}
	return out
}

func (b *builder) guardAt(at side) {
	run := &b.d.runs[at]
	if run.open {
		return
	}
	top := b.d.rows[len(b.d.rows)-1]
	g := GuardAt{
		Side: at.String(), Top: top.hi.MM(), Low: top.lo.MM(), From: run.boards.lo.MM(), To: run.boards.hi.MM(),
		Full: run.way.size() == 0, Parts: b.ids(b.ref.guards[at]),
	}
	switch {
	case g.Full:
	case b.d.way.at == Left:
		g.GapFrom = run.way.size().MM()
	default:
		g.GapTo = run.way.size().MM()
	}
	b.bed.Guards = append(b.bed.Guards, g)
}

// endGuardAt describes what closes an end above the deck as the rail of that end.
func (b *builder) endGuardAt(e End) {
	p := b.d.end(e)
	rows := b.ref.boards[e.index()]
	if p.slats {
		rows = b.climbWithin(span{b.d.up.top, b.s.Guard.Top})
	}
	if len(rows) == 0 {
		rows = []int{b.ref.member[upper][e.index()]}
	}
	top := b.solids[rows[len(rows)-1]]
	b.bed.Guards = append(b.bed.Guards, GuardAt{
		Side: string(e), Top: top[2].hi.MM(), Low: top[2].lo.MM(), From: (-top[1].hi).MM(), To: (-top[1].lo).MM(),
		Full: p.way.size() == 0, GapTo: p.way.size().MM(), Parts: b.ids(rows),
	})
}

// wayIn describes the gap in the rail. Where the front has no rail at all the whole side between the posts is the way in.
func (b *builder) wayIn() {
	d := b.d
	w := WayIn{Side: front.String()}
	var at span
	switch {
	case d.runs[front].open && !d.way.atEnd:
		at = d.between().shrink(d.w)
		w.Parts = b.ids([]int{b.ref.post[0][front], b.ref.post[1][front]})
	case d.way.atEnd:
		w.Side = string(d.way.at)
		way := d.end(d.way.at).way
		at = span{-way.hi, -way.lo}
		w.Parts = b.ids(b.ref.wayUpright[:])
	case d.way.cut:
		at = d.runs[front].way
		free := b.ref.uprights[front][0]
		if d.way.at == Right {
			free = b.ref.uprights[front][len(b.ref.uprights[front])-1]
		}
		w.Parts = b.ids([]int{free, b.ref.post[d.way.at.index()][front]})
	default:
		return
	}
	w.From, w.To, w.Clear, w.Short = at.lo.MM(), at.hi.MM(), at.size().MM(), at.size().MM()
	b.bed.WayIn = w
}

// climbAt describes the climbing end. On a panel the rows of holds are the footholds; how thick a hold is to the hand is not known.
func (b *builder) climbAt() {
	k := b.s.Climb
	if k == nil {
		return
	}
	at := &ClimbAt{End: k.At, Parts: b.ids(b.ref.climb)}
	outer := b.d.x(k.At, -b.d.end(k.At).outer, 0)
	at.Face = outer.lo.MM()
	if k.At == Right {
		at.Face = outer.hi.MM()
	}
	b.bed.Climb = at
	if k.Holds {
		below := nm(0)
		for _, z := range holdRows(k) {
			at.Footholds = append(at.Footholds, Foothold{Top: z.MM(), Deep: k.HoldDeep.MM(), Part: at.Parts[0]})
			at.Gaps = append(at.Gaps, (z - below).MM())
			below = z
		}
		return
	}
	at.Grip = k.Slat.Thick.MM()
	b.slatFootholds(at)
}

// slatFootholds lists slats and end members bottom up, each as deep as it is thick, and the clear gaps between them.
func (b *builder) slatFootholds(at *ClimbAt) {
	i := at.End.index()
	low, up := b.ref.member[lower][i], b.ref.member[upper][i]
	all := append(b.climbWithin(span{0, b.d.low.low}), low)
	all = append(all, b.climbWithin(span{b.d.low.top, b.d.up.low})...)
	all = append(append(all, up), b.climbWithin(span{b.d.up.top, b.s.Guard.Top})...)
	below := nm(0)
	for _, p := range all {
		z := b.solids[p][2]
		at.Footholds = append(at.Footholds, Foothold{Top: z.hi.MM(), Deep: b.bed.Parts[p].Stock.Thick.MM(), Part: b.id(p)})
		if z.lo > below {
			at.Gaps = append(at.Gaps, (z.lo - below).MM())
		}
		below = z.hi
	}
	at.Parts = append(at.Parts, b.id(low), b.id(up))
}

// postsAt lists posts and uprights with the top of the highest board beside each.
func (b *builder) postsAt() {
	for i := range ends {
		for at := range b.ref.post[i] {
			b.postAt(b.ref.post[i][at], b.endTop(i))
		}
	}
	for at := range b.ref.uprights {
		beside := b.d.up.top
		if !b.d.runs[at].open {
			beside = b.s.Guard.Top
		}
		for _, u := range b.ref.uprights[at] {
			b.postAt(u, beside)
		}
	}
	if b.d.way.cut && b.d.way.atEnd {
		b.postAt(b.ref.wayUpright[0], b.s.Guard.Top)
		b.postAt(b.ref.wayUpright[1], b.s.Guard.Top)
	}
}

// endTop is the top of the highest board of an end.
func (b *builder) endTop(end int) nm {
	for _, g := range b.bed.Guards {
		if g.Side == string(ends[end]) {
			return length.FromMM(g.Top)
		}
	}
	return b.d.up.top
}

func (b *builder) postAt(part int, beside nm) {
	b.bed.Posts = append(b.bed.Posts, PostAt{Part: b.id(part), Top: b.solids[part][2].hi.MM(), Neighbour: beside.MM()})
}
