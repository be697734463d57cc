package ask

import (
	"strings"
)

// toRead names what has to be read to know a quantity better: itself, or what stands behind something taken for granted. Not ok for what
// nobody can read in the room, such as how exactly the bed gets built.
func (r *ranking) toRead(key string) (string, bool) {
	parts := strings.Split(key, ".")
	last := parts[len(parts)-1]
	switch {
	case parts[0] == "bed":
		return "", false
	case parts[0] == "corner" && last == "square":
		return r.diagonalAcross(parts[1]), true
	case parts[0] == "wall" && (last == "lean" || last == "bow"):
		return parts[0] + "." + parts[1] + ".plumb", true
	case parts[0] == "ceiling" && strings.HasPrefix(last, "level_"):
		return parts[0] + "." + parts[1] + ".height", true
	}
	return key, true
}

// diagonalAcross names the diagonal between the neighbours of a corner, which tells its angle, as the job names it.
func (r *ranking) diagonalAcross(corner string) string {
	letters := []rune(r.s.Room.Outline)
	n := len(letters)
	for i, c := range letters {
		if string(c) != corner {
			continue
		}
		before, after := string(letters[(i+n-1)%n]), string(letters[(i+1)%n])
		for _, d := range r.s.Room.Diagonals {
			if d.Key == before+after || d.Key == after+before {
				return "diagonal." + d.Key + ".length"
			}
		}
		if before > after {
			before, after = after, before
		}
		return "diagonal." + before + after + ".length"
	}
	return ""
}
