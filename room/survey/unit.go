package survey

import "strings"

// Unit returns the unit of a source's value and of its U: "mm", "deg" for a corner taken as square, "mm per mm" for a lean or a slope.
func (src Source) Unit() string {
	last := src.Key[strings.LastIndexByte(src.Key, '.')+1:]
	switch {
	case src.Index >= 0:
		return "mm" // whatever is read is a length
	case last == "square":
		return "deg"
	case last == "lean", strings.HasPrefix(last, "level_"):
		return "mm per mm"
	}
	return "mm"
}
