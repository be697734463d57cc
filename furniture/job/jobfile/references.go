package jobfile

import (
	"slices"
	"strings"
)

// outlineFault says what is wrong with corner letters, "" for nothing.
func outlineFault(letters string) string {
	for i, c := range letters {
		switch {
		case c < 'A' || c > 'Z':
			return "corners are single capital letters"
		case strings.ContainsRune(letters[:i], c):
			return "corner " + string(c) + " stands in it twice"
		}
	}
	if len(letters) < 3 {
		return "a room has at least three corners"
	}
	return ""
}

// references checks the texts that name a corner, a wall or an end of one.
var references = map[Unit]func(*decoder, spot, string) bool{
	Outline: func(d *decoder, at spot, text string) bool {
		fault := outlineFault(text)
		if fault != "" {
			d.complain(at, describe(text)+": "+fault, d.suchAs(at.f))
		}
		return fault == ""
	},
	CornerKey:  (*decoder).corner,
	Corners:    (*decoder).someCorners,
	CornerPair: (*decoder).cornerPair,
	WallKey:    (*decoder).wallKey,
	WallEnd:    (*decoder).wallEnd,
	Name:       (*decoder).elementKey,
	Fastener:   (*decoder).fastener,
}

func (d *decoder) corner(at spot, text string) bool {
	if !d.corners() {
		return false
	}
	if len(text) == 1 && strings.Contains(d.outline, text) {
		return true
	}
	d.complain(at, describe(text)+" is no corner of the room", "one of "+anyOf(strings.Split(d.outline, "")))
	return false
}

func (d *decoder) someCorners(at spot, text string) bool {
	if !d.corners() {
		return false
	}
	fault := outlineFault(text)
	if len(text) < 3 {
		fault = "fewer than three corners"
	}
	for _, c := range text {
		if fault == "" && !strings.ContainsRune(d.outline, c) {
			fault = string(c) + " is no corner of the room"
		}
	}
	if fault != "" {
		d.complain(at, describe(text)+": "+fault, "three or more of "+d.outline)
	}
	return fault == ""
}

func (d *decoder) cornerPair(at spot, text string) bool {
	if !d.corners() {
		return false
	}
	i, j := -1, -1
	if len(text) == 2 {
		i, j = strings.IndexByte(d.outline, text[0]), strings.IndexByte(d.outline, text[1])
	}
	switch n := len(d.outline); {
	case i < 0 || j < 0 || i == j:
		d.complain(at, describe(text)+" is no pair of corners", "two letters of "+d.outline)
	case (i+1)%n == j || (j+1)%n == i:
		d.complain(at, describe(text)+" is a wall, no diagonal", "two corners that are not neighbours, or [[wall]]")
	default:
		return true
	}
	return false
}

func (d *decoder) wallKey(at spot, text string) bool {
	if !d.corners() {
		return false
	}
	walls := d.walls()
	if slices.Contains(walls, text) {
		return true
	}
	want := "one of " + anyOf(walls)
	if len(text) == 2 && slices.Contains(walls, text[1:]+text[:1]) {
		want = text[1:] + text[:1] + ": walls are named clockwise"
	}
	d.complain(at, describe(text)+" is no wall of the room", want)
	return false
}

func (d *decoder) wallEnd(at spot, text string) bool {
	if !d.corners() {
		return false
	}
	if !slices.Contains(d.walls(), d.wall) { // complained of at the wall, or none named
		return d.corner(at, text)
	}
	if len(text) == 1 && strings.Contains(d.wall, text) {
		return true
	}
	d.complain(at, describe(text)+" is no end of wall "+d.wall, d.wall[:1]+" or "+d.wall[1:])
	return false
}

// elementKey checks the name of an element of a list: it becomes part of keys, which are parted by dots.
func (d *decoder) elementKey(at spot, text string) bool {
	if text != "" && len(text) <= 40 && !strings.ContainsAny(text, ".+\n\t\"'") && strings.TrimSpace(text) == text {
		return true
	}
	d.complain(at, describe(text)+" cannot be a name here", "a short name without dots, plus signs and quotes, "+d.suchAs(at.f))
	return false
}
