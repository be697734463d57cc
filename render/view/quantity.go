package view

import (
	"fmt"
	"strconv"
	"strings"

	"bunkwright/furniture/yardstick"
	"bunkwright/room"
	"bunkwright/room/length"
)

// quantity says in words what a key stands for: a height of the ceiling by where it was read, a part by what it is, a figure of the yardstick
// by what it measures.
func (b *binder) quantity(key string) string {
	if words := b.heightWords(key); words != "" {
		return words
	}
	if words := b.bedWords(key); words != "" {
		return words
	}
	if row, ok := yardstick.Find(key); ok {
		return row.Quantity
	}
	return quantityWords(key)
}

// bedWords names a part or an opening of the bed.
func (b *binder) bedWords(key string) string {
	if b.s.Bed == nil {
		return ""
	}
	for i := range b.s.Bed.Parts {
		if p := &b.s.Bed.Parts[i]; p.ID == key {
			return orElse(partWords[p.Role], p.Role) + " " + key
		}
	}
	for i := range b.s.Bed.Openings {
		if o := &b.s.Bed.Openings[i]; o.ID == key {
			return fmt.Sprintf(zoneWords[o.Zone], o.Side)
		}
	}
	return ""
}

// zoneWords name the openings of the zones of a bed; the side goes in.
var zoneWords = map[string]string{
	"rail": "gap in the %s rail", "upper end": "gap in the %s end over the upper deck", "lower end": "gap in the %s end between the decks",
}

// heightWords names a height of the ceiling that has no name of its own: "ceiling flat at B", "ceiling slope, 1200 mm from D".
func (b *binder) heightWords(key string) string {
	parts := strings.Split(key, ".")
	if len(parts) < 5 || parts[0] != "ceiling" || parts[2] != "height" {
		return ""
	}
	for i, c := range b.s.Job.Room.Ceilings {
		for k, h := range c.Heights {
			if keyOr(c.Key, i) != parts[1] || h.Key != "" || strconv.Itoa(k+1) != parts[3] {
				continue
			}
			return ceilingName(parts[1]) + b.spotWords(h) + ceilingMeasure(parts[4])
		}
	}
	return ""
}

// spotWords says where a height was read.
func (b *binder) spotWords(h room.Height) string {
	if h.Corner != "" {
		return " at " + h.Corner
	}
	if len(h.At) == 0 {
		return ""
	}
	from := h.From
	if from == "" && h.Wall != "" {
		from = h.Wall[:1]
	}
	return ", " + length.Format(h.At[0].Value, length.Style{Unit: b.o.Unit}) + " from " + from
}

// quantityWords says in words what a key of a quantity stands for: "wall.AB.length" is "wall A to B".
func quantityWords(key string) string {
	parts := strings.Split(key, ".")
	for i, p := range parts {
		parts[i] = strings.ReplaceAll(p, "_", " ")
	}
	n := len(parts)
	if n < 2 {
		return strings.Join(parts, " ")
	}
	switch parts[0] {
	case "wall":
		return wallQuantity(between(parts[1]), parts[2:])
	case "diagonal":
		return between(parts[1]) + ", corners"
	case "ceiling":
		return ceilingWords(parts[1:])
	case "bed":
		return strings.Join(parts[1:], " ")
	case "sleeper":
		return strings.Join(parts[1:n-1], " ") + ", " + parts[n-1]
	}
	return strings.Join(parts[:n-1], " ") + ", " + orElse(placeWords[parts[n-1]], parts[n-1])
}

// placeWords say what the measures are that place a thing.
var placeWords = map[string]string{"at": "how far along", "far": "its far edge", "out": "how far out", "wide": "width", "high": "height", "deep": "depth"}

// wallQuantity says what a measure of a wall is, or names the wall alone: a gap to it is known by its name.
func wallQuantity(name string, of []string) string {
	if len(of) == 0 || len(of) == 1 && of[0] == "length" {
		return "wall " + name
	}
	if of[0] == "stud" && len(of) > 1 {
		return "wall " + name + ", stud " + of[1]
	}
	return "wall " + name + ", " + orElse(wallWords[of[0]], strings.Join(of, " "))
}

// wallWords say what the measures of a wall are.
var wallWords = map[string]string{
	"low": "length low down", "high": "length high up", "build up": "board on the studs", "baseboard high": "baseboard height",
	"baseboard deep": "baseboard depth", "stud wide": "width of a stud", "stud spacing": "spacing of studs",
}

// ceilingWords writes "main height C height" as "ceiling at C".
func ceilingWords(parts []string) string {
	words := ceilingName(parts[0])
	if len(parts) < 4 || parts[1] != "height" {
		return joined(", ", words, strings.Join(parts[1:], " "))
	}
	return words + " at " + parts[2] + ceilingMeasure(parts[len(parts)-1])
}

func ceilingName(key string) string {
	if key == "main" {
		return "ceiling"
	}
	return "ceiling " + key
}

// ceilingMeasure tells where a height was read from the height itself.
func ceilingMeasure(last string) string {
	if last == "height" {
		return ""
	}
	return ", how far " + map[string]string{"at": "along", "out": "out"}[last]
}
