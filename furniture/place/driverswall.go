package place

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"bunkwright/furniture/job"
	"bunkwright/room/length"
)

// slide moves the bed along its wall, the nearest place first.
func (g *generator) slide() {
	if !g.s.Stands {
		return
	}
	l := &lane{wall: g.s.At.Index, turn: turnOf(g.j.Place), mirror: g.j.Place.Mirror}
	l.span = spanOf(g.s, l.turn)
	lo, _ := reach(g.s)
	starts := l.along(g.s, g.step)
	slices.SortStableFunc(starts, func(a, b start) int { return cmp.Compare(math.Abs(a.at-lo), math.Abs(b.at-lo)) })
	for _, at := range starts {
		p := at.place
		p.Gap, p.Note = g.j.Place.Gap, g.j.Place.Note
		if p == g.j.Place || math.Abs(at.at-lo) < g.step.MM()/2 {
			continue
		}
		g.out = append(g.out, attempt{g.driver, true, func(e *editor) {
			e.words = fmt.Sprintf("bed slid %s along the wall, to %s from corner %s", e.say(length.FromMM(at.at-lo)), e.say(p.Along), p.From)
			if p.Along == 0 {
				e.words = fmt.Sprintf("bed slid %s along the wall, into corner %s", e.say(length.FromMM(at.at-lo)), p.From)
			}
			e.place(p)
		}})
	}
}

// otherWallStep is how many steps of a search lie between the places that are tried at other walls: a search finds the best place there.
const otherWallStep = 16

// otherWall moves the bed to another wall, the same side of it to the wall, corners first.
func (g *generator) otherWall() {
	if !g.s.Stands {
		return
	}
	o := Options{Step: otherWallStep * g.step, Turns: []job.Turn{turnOf(g.j.Place)}}
	for _, l := range lanes(g.s, o) {
		if l.wall == g.s.At.Index {
			continue
		}
		slices.SortStableFunc(l.starts, func(a, b start) int { return cmp.Compare(fromCorner(a), fromCorner(b)) })
		for _, at := range l.starts {
			g.out = append(g.out, attempt{g.driver, true, func(e *editor) {
				e.words = fmt.Sprintf("bed at wall %s, %s from corner %s", at.place.Wall, e.say(at.place.Along), at.place.From)
				if at.place.Along == 0 {
					e.words = fmt.Sprintf("bed at wall %s, in corner %s", at.place.Wall, at.place.From)
				}
				if at.place.Mirror != e.j.Place.Mirror {
					e.words += ", built the other way round"
				}
				if e.j.Place.Gap != at.place.Gap {
					e.set("place.gap", e.gap(e.j.Place.Gap), e.gap(at.place.Gap))
					e.j.Place.Gap = at.place.Gap
				}
				e.place(at.place)
			}})
		}
	}
}

// fromCorner returns how far a placement is from the end of the wall that it is counted from.
func fromCorner(at start) length.Length { return at.place.Along }

func (g *generator) mirrored() {
	g.out = append(g.out, attempt{g.driver, true, func(e *editor) {
		e.words = "bed built as its mirror image"
		if e.j.Place.Mirror {
			e.words = "bed built the other way round, not as its mirror image"
		}
		e.flag("place.mirrored", &e.j.Place.Mirror, !e.j.Place.Mirror)
	}})
}

// notch cuts the posts at the wall round its baseboard, with a step of air.
func (g *generator) notch() {
	if g.b.Notched || !g.s.Stands || !(g.s.At.BaseDeep > 0) || !(g.s.At.BaseHigh > 0) {
		return
	}
	up := func(mm float64) length.Length {
		return (length.FromMM(mm) + g.step/2).Round(g.step, length.AwayFromZero)
	}
	high, deep := up(g.s.At.BaseHigh), up(g.s.At.BaseDeep)
	g.add(func(e *editor) {
		e.words = fmt.Sprintf("posts notched round the baseboard, %s high and %s deep", e.say(high), e.say(deep))
		b := &e.j.Bed
		e.flag("bed.notched", &b.Notched, true)
		e.length("bed.notch_high", &b.NotchHigh, high)
		e.length("bed.notch_deep", &b.NotchDeep, deep)
	})
}

// shelfKey names a size of a shelf, as a job file does.
func shelfKey(i int, name string) string { return fmt.Sprintf("bed.shelf.%d.%s", i+1, name) }

// shelfName is how a shelf is called: by its place in the list where there are several.
func (g *generator) shelfName(which ...int) string {
	if len(g.b.Shelves) == 1 {
		return "shelf"
	}
	names := make([]string, len(which))
	for k, i := range which {
		names[k] = fmt.Sprintf("shelf %d", i+1)
	}
	return strings.Join(names, " and ")
}

// shelves lists each shelf alone, then all of them.
func (g *generator) shelves() (out [][]int) {
	var all []int
	for i := range g.b.Shelves {
		out, all = append(out, []int{i}), append(all, i)
	}
	if len(all) > 1 {
		out = append(out, all)
	}
	return out
}

func (g *generator) shelfHeight(sign length.Length) {
	for by := 2 * g.step; by <= mostShelf; by += 2 * g.step {
		for _, which := range g.shelves() {
			g.add(func(e *editor) {
				e.words = fmt.Sprintf("%s %s %s", g.shelfName(which...), e.say(by), upOrDown(sign))
				for _, i := range which {
					at := &e.j.Bed.Shelves[i].Height
					e.length(shelfKey(i, "height"), at, *at+sign*by)
				}
			})
		}
	}
}

// shelfAlong moves shelves along the wall; screws whose places were chosen go back to the studs.
func (g *generator) shelfAlong() {
	for by := 2 * g.step; by <= mostShelf; by += 2 * g.step {
		for _, sign := range []length.Length{1, -1} {
			for _, which := range g.shelves() {
				g.add(func(e *editor) {
					e.words = fmt.Sprintf("%s %s to the %s along the bed", g.shelfName(which...), e.say(by), map[bool]string{true: "right", false: "left"}[sign > 0])
					for _, i := range which {
						e.length(shelfKey(i, "from"), &e.j.Bed.Shelves[i].From, max(0, g.full.Shelves[i].From+sign*by))
						if len(e.j.Bed.Shelves[i].ScrewAt) > 0 {
							e.set(shelfKey(i, "screw_at"), "chosen", "")
							e.j.Bed.Shelves[i].ScrewAt = nil
						}
					}
				})
			}
		}
	}
}

func (g *generator) cleatShort() {
	for by := 2 * g.step; by <= mostShelf; by += 2 * g.step {
		for _, which := range g.shelves() {
			g.add(func(e *editor) {
				e.words = fmt.Sprintf("cleat of %s %s shorter", g.shelfName(which...), e.say(by))
				for _, i := range which {
					e.length(shelfKey(i, "cleat_long"), &e.j.Bed.Shelves[i].CleatLong, max(1, g.full.Shelves[i].CleatLong-by))
				}
			})
		}
	}
}

func (g *generator) screwLong() {
	for by := g.step; by <= mostScrew; by += g.step {
		for _, which := range g.shelves() {
			g.add(func(e *editor) {
				e.words = fmt.Sprintf("screws %s longer for %s", e.say(by), g.shelfName(which...))
				for _, i := range which {
					e.length(shelfKey(i, "fastener_long"), &e.j.Bed.Shelves[i].FastenerLong, g.full.Shelves[i].FastenerLong+by)
				}
			})
		}
	}
}
