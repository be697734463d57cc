package ask

import (
	"strings"

	"bunkwright/furniture/fit"
)

// A row holds the words of one kind of card. In its words stand {end} and {rest} for the corner that a position is counted from and the
// other corner of that wall, {left} and {right} for the corners of the wall, {wall} for the wall, {thing} and {things} for what is measured
// (at the start and within a sentence), {low}, {mid} and {high} for the heights at which a wall is measured.
type row struct {
	key                 string // with its tables, as the table of keys of a job file has it
	title               string
	from, to            string
	hook, other         string
	ask                 string // what is asked where no tape is read
	photo, why, caution string
	kind                Kind // of no kind: a length
	shown               Shown
	need                fit.Facet // asked only where a question hangs on it; 0: always
}

// rows lists the kinds of cards; a key without one is never asked by itself.
var rows = func() map[string]*row {
	out := map[string]*row{}
	for _, list := range [][]row{wallRows, openingRows, thingRows, ceilingRows, floorRows} {
		for i := range list {
			out[list[i].key] = &list[i]
		}
	}
	return out
}()

// Words that come back on many cards.
const (
	ladder  = "Stand on a firm step ladder with somebody holding it, never on a chair or a bed; two people, one tape."
	fanOff  = "Switch the fan off at the wall and wait until it stands still; keep the metal tape away from the lamp and its wires."
	plugs   = "Keep the metal tape and its hook out of the slots and off a plug that is not all the way in; never take a cover off."
	hot     = "Let it cool first, and keep the tape off its wires."
	outside = "Keep both feet on the floor: do not lean out. Measure from the ground outside, or leave it out."
)

func corner(name string) Mark { return Mark{At: AtCorner, Name: name} }
func at(p Place) Mark         { return Mark{At: p} }

// face is a drawing of the wall with two arrows.
func face(from, to Mark) Shown { return Shown{View: FaceOn, From: from, To: to} }

func faceAt(l Level, from, to Mark) Shown {
	return Shown{View: FaceOn, Level: l, From: from, To: to}
}
func above(from, to Mark) Shown   { return Shown{View: FromAbove, From: from, To: to} }
func closeUp(from, to Mark) Shown { return Shown{View: CloseUp, From: from, To: to} }

var (
	end  = corner("{end}")
	near = at(AtNear)
	far  = at(AtFar)
)

// say fills the words of a row in.
func (r *row) say(words *strings.Replacer) row {
	out := *r
	for _, s := range []*string{&out.title, &out.from, &out.to, &out.hook, &out.other, &out.ask, &out.photo, &out.why, &out.caution,
		&out.shown.From.Name, &out.shown.To.Name} {
		*s = words.Replace(*s)
	}
	return out
}
