package fit

// A Driver is one thing that a maker can change about a job so that an answer comes out otherwise. A question names those that may help it;
// whoever tries them says which do.
type Driver string

// The drivers. Sizes go by the least step, the others are one choice.
const (
	DeckUp       Driver = "deck-up" // the upper deck with its rail
	DeckDown     Driver = "deck-down"
	LowerUp      Driver = "lower-up" // the lower deck
	LowerDown    Driver = "lower-down"
	ThinnerUpper Driver = "thinner-upper" // the upper mattress
	ThinnerLower Driver = "thinner-lower"
	RailUp       Driver = "rail-up"
	RailRow      Driver = "rail-row"   // one more board
	RailStock    Driver = "rail-stock" // another board
	RailAllRound Driver = "rail-all-round"
	WayIn        Driver = "way-in" // the gap in the rail over the ladder
	LadderEnd    Driver = "ladder-end"
	LadderSide   Driver = "ladder-side" // on an end in place of the front, or the other way round
	Treads       Driver = "treads"
	ClimbEnd     Driver = "climb-end"
	Slats        Driver = "slats"
	Play         Driver = "play" // between frame and mattress
	Mirrored     Driver = "mirrored"
	Slide        Driver = "slide"
	OtherWall    Driver = "other-wall"
	Notch        Driver = "notch" // posts round the baseboard
	Pads         Driver = "pads"  // under the feet: both decks and the rail higher
	DrawerTravel Driver = "drawer-travel"
	DrawerLow    Driver = "drawer-low"
	ShelfUp      Driver = "shelf-up"
	ShelfDown    Driver = "shelf-down"
	ShelfAlong   Driver = "shelf-along" // until its cleats meet studs
	CleatShort   Driver = "cleat-short"
	ScrewLong    Driver = "screw-long"
)

// A Setting is one key of a job and the text that it gets, as a file has it; "" takes the key away.
type Setting struct{ Key, From, To string }

// A Change is one thing that a maker changes: a driver, in words, with the keys that it sets.
type Change struct {
	Driver   Driver
	Words    string
	Settings []Setting
}

// A Cost is an answer that has less to spare after a remedy.
type Cost struct {
	ID            string
	Spare, Before float64 // in the unit of the answer
	Answer        Answer  // afterwards
}

// A Remedy is changes that were tried and make an answer fit without another one coming out worse.
type Remedy struct {
	Answer  string // id of the question
	Changes []Change
	After   Answer // what the answer is then
	Costs   []Cost // those that lose, the one that has the least left over first
}
