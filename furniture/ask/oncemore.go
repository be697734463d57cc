package ask

import (
	"slices"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
)

// onceMore keeps the cards of some keys, and makes one for each key that the whole sheet would not have asked for.
func onceMore(j *job.Job, whole Sheet, keys []string) Sheet {
	var wanted []string
	for _, k := range keys {
		wanted = append(wanted, toTake(j, k)...)
	}
	s := whole.only(func(c Card) bool { return slices.Contains(wanted, c.Key) })
	s.Again = true
	for i := range s.Groups {
		s.Groups[i].Lead = ""
	}
	w := newWalker(j, nil, ^fit.Facet(0))
	w.n = len(whole.Cards())
	w.group("Others", "")
	for _, k := range wanted {
		_, there := s.Card(k)
		if i := strings.LastIndexByte(k, '.'); !there && i >= 0 && (exists(j, k[:i]) || canBe(&j.Room, k[:i])) {
			w.add(k)
		}
	}
	w.drop()
	s.Groups = append(s.Groups, w.groups...)
	return s
}

// toTake are the readings to take for what MeasureAgain names: a plumb line before a wall low and high, a ceiling at all its heights and at
// the corners where it was not read yet.
func toTake(j *job.Job, key string) []string {
	p := strings.Split(key, ".")
	switch {
	case len(p) == 3 && p[0] == "wall" && p[2] == "plumb":
		line := key + ".1"
		if w, _ := j.Room.Wall(p[1]); len(w.Plumbs) > 0 {
			line = key + "." + keyOr(w.Plumbs[0].Key, 0)
		}
		return []string{line + ".low", line + ".high"}
	case len(p) == 3 && p[0] == "ceiling" && p[2] == "height":
		return heightsOf(j, p[1])
	}
	return []string{key}
}

// heightsOf are the heights of a face of the ceiling, and those at corners of it where none was read.
func heightsOf(j *job.Job, ceiling string) []string {
	var out []string
	corners := j.Room.Outline
	for i, c := range j.Room.Ceilings {
		if keyOr(c.Key, i) != ceiling {
			continue
		}
		if c.Corners != "" {
			corners = c.Corners
		}
		for k, h := range c.Heights {
			out = append(out, "ceiling."+ceiling+".height."+keyOr(h.Key, k)+".height")
			corners = strings.ReplaceAll(corners, h.Corner, "")
		}
		if c.Strip != "" || c.Sloped {
			corners = ""
		}
	}
	for _, c := range corners {
		out = append(out, "ceiling."+ceiling+".height."+string(c)+".height")
	}
	return out
}
