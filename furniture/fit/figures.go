package fit

import (
	"strings"

	"bunkwright/furniture/yardstick"
	"bunkwright/room/length"
)

// figureWords names each figure for people; the part after a point says whose it is.
var figureWords = map[string]string{
	"age_p50":      "outgrown by half of all children at about",
	"age_p95":      "outgrown by a tall child at about",
	"headroom":     "headroom over the mattress",
	"max_mattress": "thickest mattress",
	"second_plane": "next surface behind the slats",
	"impact_area":  "clear floor asked for on playgrounds",
	"fall_height":  "fall height",
	"free_height":  "lowest part over it",
	"out_of_reach": "cord beyond reach by",
	"opens_to":     "opens to",
	"reach":        "level reach of a small woman",
	"far_edge":     "far edge of the mattress from the open side",
	"hidden":       "outlets behind the bed",
	"seen":         "of the lower bed seen from the door",
}

// railOver begins the name of how far a rail stands over a part.
const railOver = "rail_over_"

// Words returns a figure in words: "thickest mattress, US: 7\"".
func (f Figure) Words(unit length.Unit) string {
	name, of, _ := strings.Cut(f.Name, ".")
	words := figureWords[name]
	if strings.HasPrefix(f.Name, railOver) {
		words, of = "top of the rail over", strings.TrimPrefix(f.Name, railOver)
		if f.Value < 0 {
			return "shelf " + of + " over the top of the rail: " + Amount(-f.Value, yardstick.Unit(f.Unit), unit, length.TowardZero)
		}
		return words + " " + of + ": " + Amount(f.Value, yardstick.Unit(f.Unit), unit, length.TowardZero)
	}
	if of != "" {
		words += ", " + Spoken(strings.ReplaceAll(of, "-", " "))
	}
	return words + ": " + Amount(f.Value, yardstick.Unit(f.Unit), unit, length.TowardZero)
}
