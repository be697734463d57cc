package view

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/room/geom"
)

// mark is one height on the story stick, in mm over the floor covering.
type mark struct {
	z     float64
	words string
	ref   string
	firm  bool   // it does not rest on a single reading
	short string // the words where there is little room; empty: the same
}

// stickMarks returns the heights of a job from the floor up; heights that are the same share a mark.
func stickMarks(s *fit.Scene, k known, sit [2]sitting) []mark {
	list := append(bedMarks(s), hungMarks(s, k)...)
	for i := range sit {
		if p := &sit[i]; p.known {
			list = append(list, mark{p.head(), "seated head", p.ref, true, ""})
			list = append(list, overMark(s, k, p)...)
		}
	}
	list = append(list, ceilingMark(s, k, &sit[1])...)
	slices.SortStableFunc(list, func(a, b mark) int { return cmp.Compare(a.z, b.z) })
	return merged(list)
}

// merged joins the words of heights that are the same.
func merged(list []mark) []mark {
	out := list[:0]
	for _, m := range list {
		n := len(out)
		if n == 0 || m.z-out[n-1].z >= shut {
			out = append(out, m)
			continue
		}
		last := &out[n-1]
		if !strings.Contains(last.words, m.words) {
			last.words, last.short = last.words+"; "+m.words, last.brief()
		}
		last.firm = last.firm && m.firm
	}
	return out
}

// dispensable are the heights that go first where there is little room: the rest tells where they are.
var dispensable = []string{"upper rail, below", "lower rail, below", "drawer top"}

// spared leaves dispensable heights out until no more than n are left, where that is enough; else it leaves all.
func spared(list []mark, n int) []mark {
	out := list
	for _, words := range dispensable {
		if len(out) > n {
			out = slices.DeleteFunc(slices.Clone(out), func(m mark) bool { return m.words == words })
		}
	}
	if len(out) > n {
		return list
	}
	return out
}

// brief returns the words where there is little room.
func (m mark) brief() string {
	if m.short != "" {
		return m.short
	}
	return m.words
}

// bedMarks are the heights of floor and bed.
func bedMarks(s *fit.Scene) []mark {
	b := s.Bed
	up := func(z float64) float64 { return heightOver(s, z) }
	list := []mark{
		{0, floorWords(s), "floor", true, ""},
		{up(b.Lower.Frame), "lower rail, below", "lower.rail.front", true, "rail, below"},
		{up(b.Lower.Top), "lower deck", "lower.slat", true, ""},
		{up(b.Lower.MattressTop), "lower mattress", mattressRefs[0], true, ""},
		{up(b.Upper.Frame), "upper rail, below", "upper.rail.front", true, "underside"},
		{up(b.Upper.Top), "upper deck", "upper.slat", true, ""},
		{up(b.Upper.MattressTop), "upper mattress", mattressRefs[1], true, ""},
	}
	list = slices.DeleteFunc(list, func(m mark) bool { return math.IsNaN(m.z) }) // a mattress of unknown thickness
	if len(b.Drawers) > 0 {
		list = append(list, mark{up(b.Drawers[0].Shut.Top()), "drawer top", b.Drawers[0].ID, true, ""})
	}
	rail := mark{}
	for _, g := range b.Guards {
		if z := up(g.Top); z > rail.z && len(g.Parts) > 0 {
			rail = mark{z, "rail top", g.Parts[0], true, ""}
		}
	}
	if rail.z > 0 {
		list = append(list, rail)
	}
	return list
}

// hungMarks are the heights of what hangs from the ceiling and on the wall.
func hungMarks(s *fit.Scene, k known) []mark {
	var list []mark
	for i := range s.Survey.Layout.Fans {
		key := "fan." + keyOr(s.Job.Room.Fans[i].Key, i)
		if z := s.Survey.Value(s.Survey.Layout.Fans[i].Blades); !math.IsNaN(z) {
			list = append(list, mark{z, "fan blades", key, k.firm(key + ".blades"), ""})
		}
	}
	for _, c := range s.Bed.Cleats {
		words := "shelf cleat"
		if shelves := s.Bed.Sizes.Shelves; c.Shelf < len(shelves) {
			words = shelves[c.Shelf].For + " cleat"
		}
		list = append(list, mark{c.Box.Top(), words, c.ID, true, ""})
	}
	return list
}

// overMark is the height of what is over a head, where that is neither the ceiling nor has a mark of its own.
func overMark(s *fit.Scene, k known, p *sitting) []mark {
	kind, _, _ := strings.Cut(p.what, ".")
	switch kind {
	case "ceiling", "fan", "":
		return nil
	case "upper":
		return []mark{{p.lowest, "slats, below", p.what, true, ""}}
	case "beam", "light":
		return []mark{{p.lowest, kind + ", below", p.what, k.firm(p.what+".under") || k.firm(p.what+".lowest"), ""}}
	case "shelf":
		return []mark{{p.lowest, "shelf, below", p.what, true, ""}}
	}
	return []mark{{p.lowest, "over the head", p.what, true, ""}}
}

// ceilingMark is the height of the ceiling over the upper head, or over the middle of the bed while nobody sits there. Where a lower part
// of the ceiling is over the head, both are marked.
func ceilingMark(s *fit.Scene, k known, p *sitting) []mark {
	if !s.Stands {
		return nil
	}
	over := ceilingsOf(s)
	z, i, ok := over.at(s.ToRoom.Point(geom.V3{X: p.x, Y: s.Bed.Upper.Mattress.C.Y}).XY())
	var list []mark
	if ok && p.known && p.what == over.faces[i].ref {
		z = p.lowest // over all of the head, where the face slopes
	}
	if ok {
		list = append(list, mark{z, "ceiling", over.faces[i].ref, faceFirm(s, k, over.faces[i].ref), ""})
	}
	if ref := p.what; p.known && strings.HasPrefix(ref, "ceiling.") && (!ok || ref != over.faces[i].ref) {
		list = append(list, mark{p.lowest, "lower ceiling", ref, faceFirm(s, k, ref), ""})
	}
	return list
}

// faceFirm tells whether some height of a face of the ceiling was read twice.
func faceFirm(s *fit.Scene, k known, ref string) bool {
	for i, c := range s.Job.Room.Ceilings {
		if "ceiling."+keyOr(c.Key, i) != ref {
			continue
		}
		for j, h := range c.Heights {
			if k.firm(ref + ".height." + keyOr(h.Key, j) + ".height") {
				return true
			}
		}
	}
	return false
}

// floorWords names what the heights are over: the floor, or the feet of the posts while it is not known how the bed stands on it.
func floorWords(s *fit.Scene) string {
	if !s.Stands {
		return "post feet"
	}
	if s.Job.Room.Floor.Cover == "carpet" {
		return "carpet top"
	}
	return "floor"
}
