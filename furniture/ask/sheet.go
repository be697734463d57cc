// Package ask answers what is still to be measured in a room, how to ask for it so that the answer can only mean one thing, and what a
// reply says.
//
// A Sheet is made from a job and goes out as a form, on paper or over the phone; a reply comes back as a short plain text (see ReadReply
// for its grammar) and is merged into the job. No sheet shows what was read before: a second reading is to be taken as if it were the first.
package ask

import (
	"bunkwright/room/length"
)

// A Sheet is everything that is asked at one time, in the order in which somebody walks round the room.
type Sheet struct {
	Job      string   `json:"job"`      // number of the job, six figures: a reply names it
	Version  string   `json:"version"`  // number of the sheet, four figures: it changes when the room gets other walls, openings or things
	Name     string   `json:"name"`     // what the job is called
	Unit     string   `json:"unit"`     // "in" or "mm": unit of a number without one
	Again    bool     `json:"again"`    // asks a few readings once more
	Start    string   `json:"start"`    // how to find corner A and which way to go
	Bring    []string `json:"bring"`    // what to have at hand
	Cautions []string `json:"cautions"` // read before anything is measured
	Groups   []Group  `json:"groups"`
}

// A Group is cards that belong together: what makes a usable shape first, then one wall after the other, then what is not on a wall.
type Group struct {
	Title string `json:"title"` // "The shape of the room"
	Lead  string `json:"lead"`  // one sentence before its cards, may be empty
	Cards []Card `json:"cards"`
}

// A Card asks for one value.
type Card struct {
	Key     string       `json:"key"`     // of the job: "wall.AB.length"
	Number  int          `json:"number"`  // stays the same on every sheet of one version; a sheet may leave numbers out
	Title   string       `json:"title"`   // "Corner A to corner B, 4 ft up"
	From    string       `json:"from"`    // "the plaster in corner A"; empty where nothing is measured
	To      string       `json:"to"`      // "the plaster in corner B"
	Hook    string       `json:"hook"`    // where the hook of the tape goes, and how the tape lies
	Ask     string       `json:"ask"`     // the question: "What does the tape say?"
	Other   string       `json:"other"`   // how to read it from the other end; empty: there is no second blank
	Photo   string       `json:"photo"`   // what a photograph with the tape in it tells; empty: none is wanted
	Why     string       `json:"why"`     // why it is asked
	Caution string       `json:"caution"` // what can hurt here; empty for most
	Kind    Kind         `json:"kind"`
	Field   length.Field `json:"field,omitempty"` // of a length: what a number without a unit is held against
	Words   []Choice     `json:"words,omitempty"` // of a choice: what may be answered
	Shown   Shown        `json:"shown"`           // what its drawing shows
}

// Kind says what an answer is.
type Kind string

// Kinds of answers.
const (
	Length Kind = "length" // in any notation
	Count  Kind = "count"  // a whole number; 0 for none
	Word   Kind = "word"   // one of some words
	YesNo  Kind = "yes-no"
)

// A Choice is one answer of a few: what the job keeps, and what a person reads.
type Choice struct {
	Value string `json:"value"`
	Label string `json:"label"`
}

// Shown says what the drawing of a card shows, without any value.
type Shown struct {
	View  View   `json:"view"`
	Wall  string `json:"wall,omitempty"`  // key of the wall it is about: "AB"
	Thing string `json:"thing,omitempty"` // ref of what is measured: "window.garden"; empty for a wall itself
	Level Level  `json:"level,omitempty"` // how high the tape lies, where that matters
	From  Mark   `json:"from"`            // the hook end
	To    Mark   `json:"to"`
}

// View is how a drawing looks at the room.
type View string

// The views.
const (
	FaceOn    View = "face-on"    // a wall seen from inside the room
	FromAbove View = "from-above" // the whole room
	CloseUp   View = "close-up"   // a cut through a wall and what stands out of it, seen from above; or through the floor
	NoView    View = ""           // nothing to draw
)

// Level is a height at which a wall is measured.
type Level string

// The levels.
const (
	Low    Level = "low"
	Middle Level = "middle"
	High   Level = "high"
)

// A Mark is a place that one of the two arrows points at.
type Mark struct {
	At   Place  `json:"at"`
	Name string `json:"name,omitempty"` // letter of a corner, key of a wall
}

// Place is a kind of place.
type Place string

// The places.
const (
	Nowhere   Place = ""
	AtCorner  Place = "corner"   // the plaster in the corner Name
	AtWall    Place = "wall"     // the plaster of the wall Name
	AtFloor   Place = "floor"    // the top of the floor covering
	AtCeiling Place = "ceiling"  // the plaster of the ceiling
	AtNear    Place = "near"     // the edge of the thing that is nearer to the hook end of its wall
	AtFar     Place = "far"      // its other edge
	AtCentre  Place = "centre"   // its centre
	AtBottom  Place = "bottom"   // its lower edge: a sill, the lowest point of a fixture
	AtTop     Place = "top"      // its upper edge
	AtFront   Place = "front"    // the face that looks into the room
	AtBack    Place = "back"     // what it stands out from
	AtOther   Place = "opposite" // the far side of something round
)

// Cards returns all cards of a sheet in order.
func (s Sheet) Cards() []Card {
	var out []Card
	for _, g := range s.Groups {
		out = append(out, g.Cards...)
	}
	return out
}

// Card returns the card of a key.
func (s Sheet) Card(key string) (Card, bool) {
	for _, g := range s.Groups {
		for _, c := range g.Cards {
			if c.Key == key {
				return c, true
			}
		}
	}
	return Card{}, false
}

// Numbered returns the card of a number.
func (s Sheet) Numbered(n int) (Card, bool) {
	for _, g := range s.Groups {
		for _, c := range g.Cards {
			if c.Number == n {
				return c, true
			}
		}
	}
	return Card{}, false
}
