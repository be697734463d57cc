// Package job answers what was measured and decided for one bed in one room: the saved document, its edits and its problems.
package job

import (
	"bunkwright/furniture/bunk"
	"bunkwright/room"
	"bunkwright/room/length"
)

// Format is the number of the file format that this program writes.
const Format = 1

// A Job is one document. It is a plain value, never changed in place: an edit returns a new one.
type Job struct {
	Format    int               `file:"format"`
	Name      string            `file:"name"`
	Unit      string            `file:"unit" words:"in|mm"`
	Places    []string          `file:"places"`
	Note      string            `file:"note"`
	Readings  Habits            `file:"readings"`
	Room      room.Room         `file:"room"`
	Bed       bunk.Sizes        `file:"bed"`
	Place     Placement         `file:"place"`
	Sleepers  []Sleeper         `file:"sleeper"`
	Confirmed map[string]string `file:"confirmed"` // id of an attribute row -> "yes" or "no"
	Accepted  []Accept          `file:"accepted"`
	Replaced  []Replaced        `file:"replaced"` // readings that no longer count
	Another   []map[string]any  `file:"another"`  // other ways of this job, kept as written; jobfile.Ways makes jobs of them
	Comments  map[string]string `file:"-"`        // key -> the comment lines that stood before it
}

// Habits are what a reading takes where it does not say otherwise, and the standard uncertainty of each way of knowing.
type Habits struct {
	By      string        `file:"by"`
	When    string        `file:"when"`
	How     room.How      `file:"how"`
	Note    string        `file:"note"`
	Mine    length.Length `file:"u_mine"`
	Twice   length.Length `file:"u_twice"`
	Once    length.Length `file:"u_once"`
	Photo   length.Length `file:"u_photo"`
	Told    length.Length `file:"u_told"`
	Assumed length.Length `file:"u_assumed"`
}

// Placement says where the bed stands: never as x and y, so that it moves with its wall when the room moves within what is known.
type Placement struct {
	Wall   string        `file:"wall"`
	From   string        `file:"from"`  // letter of the wall end that Along counts from
	Along  length.Length `file:"along"` // from that end to the nearest side of the bed
	Gap    Maybe         `file:"gap"`   // wall's nearest point to the bed; not set: what the baseboard holds it off
	Turn   Turn          `file:"against"`
	Mirror bool          `file:"mirrored"`
	Note   string        `file:"note"`
}

// Maybe is a length that may be left unset.
type Maybe = length.Maybe

// Turn names the part of the bed that stands against the wall.
type Turn string

const (
	AgainstSide  Turn = "wall side"
	AgainstLeft  Turn = "left end"
	AgainstRight Turn = "right end"
	AgainstFront Turn = "front"
)

// Turns lists the words in the order of quarter turns.
var Turns = []Turn{AgainstSide, AgainstLeft, AgainstFront, AgainstRight}

// Sleeper is somebody the bed is for; grown-ups who sit there too.
type Sleeper struct {
	Name    string       `file:"name"`
	Age     float64      `file:"age"` // years
	Sex     string       `file:"sex" words:"girl|boy|woman|man"`
	Bed     string       `file:"bed" words:"upper|lower"`
	Seated  room.Measure `file:"seated"`  // seat to top of head
	Stature room.Measure `file:"stature"` // standing
	Note    string       `file:"note"`
}

// Grown tells whether the sizes of adults apply.
func (s Sleeper) Grown() bool { return s.Sex == "woman" || s.Sex == "man" || s.Age > 18 }

// Accept is an answer that the maker lives with, and why. It holds as long as the inputs of that answer are what they were.
type Accept struct {
	Question string `file:"question"`
	Reason   string `file:"reason"`
	By       string `file:"by"`
	When     string `file:"when"`
	Inputs   string `file:"inputs"` // print of the inputs it was given for; empty: tied to nothing yet
	Note     string `file:"note"`
}
