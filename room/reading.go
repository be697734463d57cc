package room

import "bunkwright/room/length"

// How tells how a value is known.
type How string

const (
	Mine    How = "mine"    // the maker's own reading on arrival
	Twice   How = "twice"   // two readings from opposite ends that agree
	Once    How = "once"    // one reading
	Photo   How = "photo"   // read off a photograph with the tape in it
	Told    How = "told"    // told from memory
	Assumed How = "assumed" // nobody measured it
)

// Hows lists the words in falling order of trust.
var Hows = []How{Mine, Twice, Once, Photo, Told, Assumed}

// A Reading is one value that somebody read or told.
type Reading struct {
	Value length.Length `file:"read"`
	How   How           `file:"how"`
	By    string        `file:"by"`
	When  string        `file:"when"`
	Photo string        `file:"photo"` // file name of a photograph with the tape in the picture
	U     length.Length `file:"u"`     // standard uncertainty; 0: by How
	Light int           `file:"-"`     // 64ths of an inch that "strong" or "light" adds; the value is unchanged
	Note  string        `file:"note"`
}

// A Measure is all readings of one quantity, kept apart and in the order they came.
type Measure []Reading

// Read tells whether anybody gave a value.
func (m Measure) Read() bool { return len(m) > 0 }

// Exact makes a measure of one reading of the maker's own, for tests and new jobs.
func Exact(l length.Length) Measure { return Measure{{Value: l, How: Mine}} }
