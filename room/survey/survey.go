package survey

import (
	"errors"
	"math"
	"slices"

	"bunkwright/room"
	"bunkwright/room/length"
)

// Options change how a room is solved.
type Options struct {
	U            Uncertainties // DefaultUncertainties where Reading is nil
	NoSoftAngles bool          // leave out the soft right angles: lengths alone decide
	Agree        float64       // two readings of one thing agree within this many u of their difference; 0: not compared
	Also         []Quantity    // measures that do not belong to the room, such as a sleeper's seated height
	Unit         length.Unit   // of the figures on the tape: what digits a reader may have taken for others
}

// Quantity is a measure with its key.
type Quantity struct {
	Key     string
	Measure room.Measure
}

// Source is one reading as the adjustment saw it, or something that was taken for granted.
type Source struct {
	Key   string  // of the quantity: "wall.AB.length"
	Value float64 // mm; degrees for a corner taken as square
	U     float64
	How   room.How
	By    string
	When  string
	Index int           // which reading of the quantity, 0 the first; -1 for what was taken for granted
	Aside bool          // it is wrong, or cannot be: the room was worked out without it
	Exact length.Length // the reading as it was read
}

// Gap names something that the readings do not tell and what was done about it.
type Gap struct {
	Key  string // the measure to take
	Text string // "diagonal A to C not read: corners taken as square"
}

// Survey is a solved room: every quantity with the readings it came from.
type Survey struct {
	Room      *room.Room
	Layout    Layout
	X         []float64 // quantities, mm unless their key says otherwise
	Keys      []string  // key of each quantity
	Sources   []Source
	Gaps      []Gap
	Conflicts []Conflict
	LeftOut   []LeftOut
	Outline   bool // the corners are determined

	refs     map[string]Ref
	adjusted Solution
	found    Found
	gross    []int // readings of which one is so far off that nothing settles with it
	u        Uncertainties
}

// OfRoom adjusts the readings of a room and of the quantities named beside it. What the readings do not determine is a named gap,
// never a guess; err is only for a room that cannot be put into numbers at all.
func OfRoom(r *room.Room, o Options) (*Survey, error) {
	if o.U.Reading == nil {
		o.U = DefaultUncertainties()
	}
	b, err := adjust(r, o, manner{})
	if err == nil && len(b.s.LeftOut) > 0 && !b.s.wallsAgree() { // then a wall may be what is wrong, and the diagonals tell which
		if with, err := adjust(r, o, manner{keepAll: true}); err == nil {
			b = with
		}
	}
	if errors.Is(err, ErrNotConverged) || err == nil && b.s.adjusted.S0 > distorted {
		if one := withoutGross(r, o, b); one != nil {
			return one.finish()
		}
	}
	if errors.Is(err, ErrNotConverged) {
		b, err = adjust(r, o, manner{unsettled: true})
	}
	if err != nil {
		return nil, err
	}
	return b.finish()
}

// manner is how the outline is worked out.
type manner struct {
	without   *Source // with this reading set aside
	unsettled bool    // not at all: the readings of the walls are known not to come to rest
	keepAll   bool    // with the diagonals that the walls do not allow
}

// adjust works everything out, as if no reading were wrong.
func adjust(r *room.Room, o Options, how manner) (*builder, error) {
	s := &Survey{Room: r, u: o.U, refs: map[string]Ref{}}
	b := &builder{s: s, o: o, half: map[Ref]bool{}, manner: how}
	b.outline()
	b.walls()
	b.fixtures()
	for _, q := range o.Also {
		b.quantity(q.Key, q.Measure, 0)
	}
	b.ceilings()
	return b, b.solve()
}

// finish looks for wrong readings and says what is missing.
func (b *builder) finish() (*Survey, error) {
	if err := b.search(); err != nil {
		return nil, err
	}
	b.gaps()
	b.conflicts()
	return b.s, nil
}

// Value returns a quantity in mm, NaN where it is not known.
func (s *Survey) Value(r Ref) float64 {
	if r == 0 {
		return math.NaN()
	}
	return s.X[r-1]
}

// Find returns the quantity of a key.
func (s *Survey) Find(key string) Ref { return s.refs[key] }

// Key returns the key of a quantity, "" for none.
func (s *Survey) Key(r Ref) string {
	if r == 0 {
		return ""
	}
	return s.Keys[r-1]
}

// Sigma returns the standard uncertainty of a quantity, 0 for none.
func (s *Survey) Sigma(r Ref) float64 {
	if r == 0 {
		return 0
	}
	return s.adjusted.Sigma(int(r - 1))
}

// ByReading returns how far something moves with every reading, given how it moves with the quantities; it fills into where that is
// long enough. The squares of the results times Sources[i].U add up to its variance, but for those set aside: for these it is how far it
// would move if they were taken back one by one.
func (s *Survey) ByReading(gradient []Term, into []float64) []float64 {
	into = s.adjusted.ByReading(gradient, into)
	for _, a := range s.found.Aside {
		into[a.Equation] *= a.Back
	}
	return into
}

// Checks returns how well each source is watched, in the order of Sources: by the other readings, or by what is taken for granted where no
// reading watches it. Smallest is the slip that would be noticed with a chance of 0.80 by a test at 0.001: d0 = 4.13 (Baarda 1968).
func (s *Survey) Checks() []Check { return s.found.Checks }

// wallIndex returns the place of a wall in the outline: wall i leaves corner i.
func (s *Survey) wallIndex(key string) int {
	return slices.Index(s.wallKeys(), key)
}

// WallKeys returns the keys of the walls round the outline: "AB", "BC", ...
func (s *Survey) wallKeys() []string {
	letters := []rune(s.Room.Outline)
	keys := make([]string, len(letters))
	for i, a := range letters {
		keys[i] = string(a) + string(letters[(i+1)%len(letters)])
	}
	return keys
}
