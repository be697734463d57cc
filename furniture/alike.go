package furniture

import (
	"slices"
	"strings"

	"bunkwright/room/length"
)

// Alike is a number of parts that are cut the same.
type Alike struct {
	Part  Part // the first of them
	Count int
	Parts []Part
}

// IDs returns the ids of all of them, separated by blanks.
func (a Alike) IDs() string {
	var ids []string
	for _, p := range a.Parts {
		ids = append(ids, p.ID)
	}
	return strings.Join(ids, " ")
}

// sameCut is what two parts must share to be cut in one go.
type sameCut struct {
	role, stock string
	wide, long  length.Length
	class       Class
	cuts        string
}

// CountAlike gathers parts that are cut the same, in the order in which each kind first appears.
func CountAlike(parts []Part) []Alike {
	var out []Alike
	place := map[sameCut]int{}
	for _, p := range parts {
		k := sameCut{p.Role, p.Stock.Name, p.Width(), p.Length, p.Class, cutWords(p.Cuts)}
		i, ok := place[k]
		if !ok {
			i = len(out)
			place[k] = i
			out = append(out, Alike{Part: p})
		}
		out[i].Count++
		out[i].Parts = append(out[i].Parts, p)
	}
	return out
}

// cutWords writes the cuts that make two boards of one length different.
func cutWords(cuts []Cut) string {
	var words []string
	for _, c := range cuts {
		if c.Kind != Square {
			words = append(words, string(c.Kind))
		}
	}
	slices.Sort(words)
	return strings.Join(words, " ")
}
