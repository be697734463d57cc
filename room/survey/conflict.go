package survey

import (
	"math"
	"slices"

	"bunkwright/room"
	"bunkwright/room/misread"
)

// A Conflict is readings of which one is off, found by the search for wrong readings or by holding two readings of one thing together. Until
// it is settled whatever hangs on one of them is not sure. The room is worked out without one that is Found.
type Conflict struct {
	Key      string    // of the quantity of the likeliest
	Suspects []Suspect // the likeliest first; several cannot be told apart
	Believed bool      // only what is taken for granted speaks against them: square corners, a level ceiling, upright walls
	Repeat   bool      // two readings of one thing that are further apart than such readings agree; the search accuses neither
	Cannot   bool      // a diagonal that the walls do not allow: it comes first, then those walls that no other reading watches
	Agree    float64   // the largest error of the likeliest that nobody would have been asked about, mm
}

// A Suspect is one reading of a conflict.
type Suspect struct {
	Source int             // index into Survey.Sources
	Off    float64         // how far it is off, if it alone is: read less what the others say, mm
	Causes []misread.Cause // what it may come from, the likeliest first
}

// Found tells whether one reading is known to be the wrong one: by other readings, not by what was taken for granted.
func (c Conflict) Found() bool { return len(c.Suspects) == 1 && !c.Believed }

// Has tells whether a source is among the suspects.
func (c Conflict) Has(source int) bool {
	return slices.ContainsFunc(c.Suspects, func(s Suspect) bool { return s.Source == source })
}

// Size returns how far off the readings are, if one of them alone is: from the smallest to the largest, mm without sign.
func (c Conflict) Size() (least, most float64) {
	least = math.Inf(1)
	for _, s := range c.Suspects {
		least, most = min(least, math.Abs(s.Off)), max(most, math.Abs(s.Off))
	}
	return least, most
}

// Otherwise returns the quantities as they would be without a suspect; for one that the room was worked out without, as they would be with it.
func (s *Survey) Otherwise(one Suspect) []float64 {
	out, back := slices.Clone(s.X), -1.0
	for _, a := range s.found.Aside {
		if a.Equation == one.Source {
			back = a.Back
		}
	}
	for u := range out {
		equations, gain := s.adjusted.Gain(u)
		if k, ok := slices.BinarySearch(equations, one.Source); ok {
			out[u] += back * gain[k] * one.Off
		}
	}
	return out
}

// conflicts collects what the search found, the diagonals that cannot be as read, and the readings of one thing that do not agree.
func (b *builder) conflicts() {
	for _, m := range b.s.found.Misfits {
		b.conflict(m)
	}
	b.grossly()
	for _, l := range b.s.LeftOut {
		b.impossible(l)
	}
	b.s.compareRepeats(b.o.Agree)
	for i := range b.s.Conflicts {
		for k := range b.s.Conflicts[i].Suspects {
			b.explain(&b.s.Conflicts[i].Suspects[k])
		}
	}
}

func (b *builder) conflict(m Misfit) {
	c := Conflict{Key: b.s.Sources[m.Suspects[0].Equation].Key, Believed: m.Believed}
	for _, s := range m.Suspects {
		c.Suspects = append(c.Suspects, Suspect{Source: s.Equation, Off: s.Off})
	}
	c.Agree = b.s.quiet(m.Suspects[0].Equation)
	b.s.Conflicts = append(b.s.Conflicts, c)
}

// quiet is the error of a reading at which the search would just begin to ask, mm.
func (s *Survey) quiet(source int) float64 {
	c := s.found.Checks[source]
	return s.found.Limit * s.Sources[source].U / math.Sqrt(c.Redundancy)
}

// impossible makes a conflict of a diagonal that no room with these walls can have: it is wrong, or one of the walls on the way is, unless
// other readings watch these.
func (b *builder) impossible(l LeftOut) {
	s := b.s
	i := slices.IndexFunc(s.Sources, func(src Source) bool { return src.Key == l.Key && src.Index == l.Index })
	if i < 0 {
		return
	}
	c := Conflict{Key: l.Key, Suspects: []Suspect{{Source: i, Off: s.found.Checks[i].Error}}, Agree: impossible, Cannot: true}
	if math.Abs(c.Suspects[0].Off) < impossible {
		c.Suspects[0].Off = l.Value - min(max(l.Value, l.Least), l.Most)
	}
	missing := l.Value - l.Most // what the walls are too short by, at least
	if l.Value < l.Least {
		missing = l.Least - l.Value
	}
	letters := []rune(l.Corners)
	for k := range len(letters) - 1 {
		key := "wall." + string(letters[k:k+2]) + ".length"
		for w, src := range s.Sources {
			if src.Key == key && src.Index >= 0 && !s.found.Watched[w] {
				c.Suspects = append(c.Suspects, Suspect{Source: w, Off: -missing})
			}
		}
	}
	s.Conflicts = append(s.Conflicts, c)
}

// compareRepeats holds all readings of one quantity together, pair by pair, each with the uncertainty of a single reading: they agree within
// agree times the root of the sum of their squares.
func (s *Survey) compareRepeats(agree float64) {
	if agree <= 0 {
		return
	}
	byKey := map[string][]int{}
	for i, src := range s.Sources {
		if src.Index < 0 || src.Aside {
			continue
		}
		for _, k := range byKey[src.Key] {
			s.compare(k, i, agree)
		}
		byKey[src.Key] = append(byKey[src.Key], i)
	}
}

func (s *Survey) compare(i, j int, factor float64) {
	a, c := s.Sources[i], s.Sources[j]
	agree, d := factor*math.Hypot(s.singleU(a), s.singleU(c)), a.Value-c.Value
	known := func(c Conflict) bool { return c.Has(i) || c.Has(j) }
	if math.Abs(d) > agree && !slices.ContainsFunc(s.Conflicts, known) {
		s.Conflicts = append(s.Conflicts, Conflict{Key: a.Key, Suspects: []Suspect{{Source: i, Off: d}, {Source: j, Off: -d}}, Repeat: true, Agree: agree})
	}
}

// singleU is the uncertainty of one reading of a pair: for readings marked twice, that of once.
func (s *Survey) singleU(src Source) float64 {
	return math.Max(src.U, s.u.Reading[room.Once])
}
