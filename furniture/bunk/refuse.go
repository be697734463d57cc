package bunk

import (
	"fmt"
	"strings"

	"bunkwright/furniture"
	"bunkwright/furniture/timber"
	"bunkwright/room/length"
)

// A SizeError reports a size of which no bed can be built. A published limit is never a reason: that is a question's answer.
type SizeError struct {
	Key     string // file key of the size
	Reason  string
	Nearest length.Length // nearest size of the same key that can be built, the other sizes left alone
	Has     bool          // there is a nearest size; it may still be 0
	Unset   bool          // it was not chosen, and there is no default for it
}

func (e SizeError) Error() string {
	if !e.Has {
		return e.Key + ": " + e.Reason
	}
	return fmt.Sprintf("%s: %s; nearest that can be built: %s", e.Key, e.Reason, length.Exact(e.Nearest, length.Inches))
}

// A SizesError lists every size of which no bed can be built, in the order they were found.
type SizesError []SizeError

func (e SizesError) Error() string {
	lines := make([]string, len(e))
	for i, one := range e {
		lines[i] = one.Error()
	}
	return strings.Join(lines, "\n")
}

// Unwrap lets errors.As find each SizeError.
func (e SizesError) Unwrap() []error {
	out := make([]error, len(e))
	for i, one := range e {
		out[i] = one
	}
	return out
}

// checks collects what cannot be built.
type checks struct{ found SizesError }

func (c *checks) refuse(key, reason string) {
	c.found = append(c.found, SizeError{Key: key, Reason: reason})
}

func (c *checks) near(key, reason string, nearest nm) {
	c.found = append(c.found, SizeError{Key: key, Reason: reason, Nearest: nearest, Has: true})
}

// atLeast and atMost refuse a size beyond a bound, which is then the nearest that can be built.
func (c *checks) atLeast(key string, have, least nm, reason string) {
	if have < least {
		c.near(key, reason, least)
	}
}

func (c *checks) atMost(key string, have, most nm, reason string) {
	if have > most {
		c.near(key, reason, most)
	}
}

// between is atLeast and atMost together. Where they leave nothing between them no nearest size is offered.
func (c *checks) between(key string, have, least, most nm, below, above string) {
	switch {
	case have >= least && have <= most:
	case most < least:
		c.refuse(key, above)
	default:
		c.atLeast(key, have, least, below)
		c.atMost(key, have, most, above)
	}
}

// Bounds of what is taken for wood, a mattress or a height at all; they keep slips and overflow out. Common practice, no source.
const (
	thinnest     = 6 * length.Millimetre
	thickest     = 150 * length.Millimetre
	narrowest    = 10 * length.Millimetre
	widest       = 400 * length.Millimetre
	highest      = 4000 * length.Millimetre
	mostMattress = 3000 * length.Millimetre
	mostPlay     = 200 * length.Millimetre
)

// ThickestMattress is more than any mattress is thick with its topper. Common practice, no source.
const ThickestMattress = 600 * length.Millimetre

// within refuses what is out of all proportion. It offers no nearest size: what can be built is for the checks that follow to say.
func (c *checks) within(key string, have, least, most nm) {
	switch {
	case have == 0 && least > 0:
		c.found = append(c.found, SizeError{Key: key, Reason: "not chosen", Unset: true})
	case have < least:
		c.refuse(key, "less than anything that can be built")
	case have > most:
		c.refuse(key, "more than anything that can be built")
	}
}

// bounded is within where the bounds themselves can be built.
func (c *checks) bounded(key string, have, least, most nm) {
	if have == 0 && least > 0 {
		c.found = append(c.found, SizeError{Key: key, Reason: "not chosen", Unset: true})
		return
	}
	c.atLeast(key, have, least, "less than can be built with")
	c.atMost(key, have, most, "more than can be built with")
}

func (c *checks) stock(key string, s furniture.Stock) {
	if s.Thick == 0 {
		c.refuse(key, fmt.Sprintf("the real section of %q is not known", s.Name))
		return
	}
	c.within(key+".thick", s.Thick, thinnest, thickest)
	if s.Sheet {
		return
	}
	c.within(key+".wide", s.Wide, max(narrowest, min(s.Thick, thickest)), widest)
}

func (c *checks) board(key string, s furniture.Stock) {
	if s.Sheet {
		c.refuse(key, "wants a board, not a sheet")
		return
	}
	c.stock(key, s)
}

func (c *checks) end(key string, e End) {
	if e != Left && e != Right {
		c.refuse(key, fmt.Sprintf("%q is no end of the bed: want left or right", string(e)))
	}
}

func (c *checks) count(key string, n, least, most int) {
	if n < least || n > most {
		c.refuse(key, fmt.Sprintf("%d is out of range: want %d to %d", n, least, most))
	}
}

func (c *checks) fastener(key, id string) {
	if _, err := timber.FindFastener(id); err != nil {
		c.refuse(key, err.Error())
	}
}

// checkBasic refuses what makes every further sum meaningless.
func checkBasic(s *Sizes) SizesError {
	c := &checks{}
	c.deck("bed.upper", &s.Upper)
	c.deck("bed.lower", &s.Lower)
	c.bounded("bed.play", s.Play, 0, mostPlay)
	c.board("bed.post", s.Post)
	c.board("bed.rail", s.Rail)
	c.board("bed.ledge", s.Ledge)
	c.board("bed.slat", s.Slat)
	c.fastener("bed.fastener", s.Fastener)
	c.within("bed.bolt_stand_out", s.BoltStandOff.Value, 0, thickest)
	c.within("bed.tolerance", s.Tolerance, 0, thickest)
	if s.Gaps != ByEye && s.Gaps != BySpacer {
		c.refuse("bed.gaps", fmt.Sprintf("%q is no way to set a gap: want %q or %q", string(s.Gaps), string(ByEye), string(BySpacer)))
	}
	if s.Notched {
		c.within("bed.notch_high", s.NotchHigh, 1, highest)
		c.within("bed.notch_deep", s.NotchDeep, 1, thickest)
	}
	c.basicGuard(s)
	c.basicLadder(s.Ladder)
	c.basicClimb(s.Climb)
	c.basicShelves(s.Shelves)
	c.basicBooks(s.Books)
	c.basicDrawers(s.Drawers)
	return c.found
}

func (c *checks) deck(name string, k *Deck) {
	c.within(name+".height", k.Height, 1, highest)
	c.mattress(name+".mattress_long", k, k.MattressLong, 600*length.Millimetre)
	c.mattress(name+".mattress_wide", k, k.MattressWide, 400*length.Millimetre)
	c.bounded(name+".mattress_thick", k.MattressThick, 0, ThickestMattress)
	c.count(name+".slats", k.Slats, 0, 200)
	if k.Slats == 0 {
		c.within(name+".slat_gap", k.SlatGap, 1, mostMattress)
	}
	c.end(name+".head", k.Head)
}

// mattress bounds one side of a mattress. A name may stand for several sizes: the frame is built for one of them.
func (c *checks) mattress(key string, k *Deck, have, least nm) {
	if have == 0 && k.MattressName != "" {
		c.found = append(c.found, SizeError{Key: key, Reason: fmt.Sprintf("not chosen: %q is a name that may stand for several sizes", k.MattressName), Unset: true})
		return
	}
	c.bounded(key, have, least, mostMattress)
}

// checkFit refuses what cannot be built together.
func checkFit(s *Sizes, d *dims) SizesError {
	c := &checks{}
	c.frame(s, d)
	c.slats("bed.upper", &s.Upper, s, d)
	c.slats("bed.lower", &s.Lower, s, d)
	c.guard(s, d)
	c.ladder(s, d)
	c.climb(s, d)
	c.shelves(s, d)
	c.books(s, d)
	c.drawers(s, d)
	return c.found
}
