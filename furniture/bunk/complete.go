package bunk

import (
	"math"
	"strconv"

	"bunkwright/furniture"
	"bunkwright/furniture/timber"
)

// A filler fills in the sizes that were not chosen and keeps their keys.
type filler struct {
	s       Sizes
	assumed []string
}

// complete returns a copy of s with the defaults that do not hang on the frame; rest fills in the others.
func complete(s Sizes) *filler {
	f := &filler{s: s}
	f.own()
	f.frame()
	f.guard()
	if f.s.Ladder != nil {
		f.ladder(f.s.Ladder)
	}
	if f.s.Climb != nil {
		f.climb(f.s.Climb)
	}
	for i := range f.s.Shelves {
		f.shelf(i)
	}
	f.guardTop()
	return f
}

// own copies what the caller's sizes point to.
func (f *filler) own() {
	f.s.Ladder, f.s.Climb, f.s.Books, f.s.Drawers = clone(f.s.Ladder), clone(f.s.Climb), clone(f.s.Books), clone(f.s.Drawers)
	if len(f.s.Shelves) > 0 {
		f.s.Shelves = append([]Shelf(nil), f.s.Shelves...)
	}
}

func clone[T any](p *T) *T {
	if p == nil {
		return nil
	}
	c := *p
	return &c
}

func (f *filler) note(key string) { f.assumed = append(f.assumed, key) }

func (f *filler) length(key string, to *nm) {
	if *to == 0 {
		*to = defaultByKey()[key].Length
		f.note(key)
	}
}

// derived fills in a length that follows from others.
func (f *filler) derived(key string, to *nm, value nm) {
	if *to == 0 {
		*to = value
		f.note(key)
	}
}

// stock fills in a stock that was not chosen, and the section of one that is only named.
func (f *filler) stock(key string, to *furniture.Stock) {
	if to.Thick != 0 {
		return
	}
	if to.Name == "" {
		*to = defaultByKey()[key].Stock
		f.note(key)
		return
	}
	if size, err := timber.DressedSize(to.Name, timber.Dry); err == nil && !to.Sheet {
		to.Thick, to.Wide = size.Thick, size.Wide
		f.note(key)
	}
}

func (f *filler) word(key string, to *string) {
	if *to == "" {
		*to = defaultByKey()[key].Word
		f.note(key)
	}
}

func (f *filler) count(key string, to *int) {
	if *to == 0 {
		*to = defaultByKey()[key].Count
		f.note(key)
	}
}

func (f *filler) end(key string, to *End, value End) {
	if *to == "" {
		*to = value
		f.note(key)
	}
}

func (f *filler) frame() {
	s := &f.s
	f.length("bed.play", &s.Play)
	f.stock("bed.post", &s.Post)
	f.stock("bed.rail", &s.Rail)
	f.stock("bed.ledge", &s.Ledge)
	f.stock("bed.slat", &s.Slat)
	if s.Upper.Slats == 0 {
		f.length("bed.upper.slat_gap", &s.Upper.SlatGap)
	}
	if s.Lower.Slats == 0 {
		f.length("bed.lower.slat_gap", &s.Lower.SlatGap)
	}
	f.word("bed.fastener", &s.Fastener)
	f.word("bed.gaps", (*string)(&s.Gaps))
	f.end("bed.upper.head", &s.Upper.Head, Left)
	f.end("bed.lower.head", &s.Lower.Head, s.Upper.Head)
}

func (f *filler) guard() {
	g := &f.s.Guard
	f.stock("bed.guard.board", &g.Stock)
	f.count("bed.guard.rows", &g.Rows)
	if f.s.Ladder != nil || f.s.Climb != nil {
		f.length("bed.guard.gap", &g.Gap)
	}
}

func (f *filler) guardTop() {
	s := &f.s
	row := s.Guard.Stock.Wide + defaultGuardGap
	f.derived("bed.guard.top", &s.Guard.Top, levelOf(s, s.Upper.Height).top+nm(clampCount(s.Guard.Rows, mostRows))*row)
}

func clampCount(n, most int) int { return max(0, min(n, most)) }

func (f *filler) ladder(l *Ladder) {
	f.end("bed.ladder.at", &l.At, f.s.Upper.Head.Other())
	if l.Angle == 0 {
		l.Angle = defaultByKey()["bed.ladder.angle"].Degrees
		f.note("bed.ladder.angle")
	}
	if l.Treads == 0 {
		n := math.Round(float64(f.s.Upper.Height) / float64(defaultPitch))
		l.Treads = int(max(1, min(n, mostTreads)))
		f.note("bed.ladder.treads")
	}
	f.stock("bed.ladder.stile", &l.Stock)
	f.stock("bed.ladder.tread", &l.Tread)
	f.stock("bed.ladder.block", &l.Block)
}

func (f *filler) climb(k *Climb) {
	at := f.s.Upper.Head.Other()
	if l := f.s.Ladder; l != nil && l.OnEnd && l.At == at {
		at = at.Other()
	}
	f.end("bed.climb.at", &k.At, at)
	if !k.Holds {
		f.stock("bed.climb.slat", &k.Slat)
		f.length("bed.climb.gap", &k.Gap)
		return
	}
	f.stock("bed.climb.panel", &k.Panel)
	f.length("bed.climb.pitch", &k.Pitch)
	f.derived("bed.climb.top", &k.Top, f.s.Upper.Height)
	f.length("bed.climb.hold_deep", &k.HoldDeep)
}

// shelfKey names a size of one shelf; Defaults leave the number out.
func shelfKey(i int, name string) string { return "bed.shelf." + strconv.Itoa(i+1) + "." + name }

func (f *filler) shelf(i int) {
	k := &f.s.Shelves[i]
	first := len(f.assumed)
	f.stock("bed.shelf.board", &k.Board)
	f.stock("bed.shelf.cleat", &k.Cleat)
	f.length("bed.shelf.long", &k.Long)
	f.derived("bed.shelf.cleat_long", &k.CleatLong, k.Long)
	f.word("bed.shelf.fastener", &k.Fastener)
	f.length("bed.shelf.fastener_long", &k.FastenerLong)
	f.count("bed.shelf.screws_per_stud", &k.ScrewsPerStud)
	for n := first; n < len(f.assumed); n++ {
		f.assumed[n] = shelfKey(i, f.assumed[n][len("bed.shelf."):])
	}
}

// rest fills in what follows from the frame, then tells where the book ledge lies so that the uprights can keep clear.
func (f *filler) rest(d *dims) {
	s := &f.s
	for i := range s.Shelves {
		k := &s.Shelves[i]
		f.derived(shelfKey(i, "from"), &k.From, (d.long-k.Long)/2)
	}
	if b := s.Books; b != nil {
		f.books(b, d)
	}
	if w := s.Drawers; w != nil {
		f.drawers(w, d)
	}
}

func (f *filler) books(b *BookLedge, d *dims) {
	f.stock("bed.books.board", &b.Board)
	f.stock("bed.books.lip", &b.Lip)
	f.length("bed.books.long", &b.Long)
	f.derived("bed.books.from", &b.From, bookRoom(&f.s, d).lo)
}

func (f *filler) drawers(w *Drawers, d *dims) {
	f.count("bed.drawers.count", &w.Count)
	f.stock("bed.drawers.side", &w.Side)
	f.stock("bed.drawers.bottom", &w.Bottom)
	f.stock("bed.drawers.front", &w.Front)
	box := d.low.low - w.Casters - drawerAir
	if !w.Side.Sheet {
		box = min(box, w.Side.Wide+w.Bottom.Thick)
	}
	f.derived("bed.drawers.box_high", &w.BoxHigh, box)
	f.derived("bed.drawers.deep", &w.Deep, drawerDepth(d))
	f.derived("bed.drawers.travel", &w.Travel, w.Deep)
}

// What is taken for a number of boards or treads at all; it keeps slips out.
const (
	mostRows   = 8
	mostTreads = 30
)
