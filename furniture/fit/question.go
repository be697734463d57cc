package fit

// Facet is a part of the scene that a question may depend on; its uncertainty is differentiated in those only.
type Facet uint32

// The facets of a scene.
const (
	Outline Facet = 1 << iota // corners
	Lean                      // lean and bow of the walls that the bed stands against
	Trim                      // their baseboards
	FarLean                   // lean and bow of the other walls
	FarTrim                   // their baseboards
	Studs                     // stud places, stud faces, build-up of the wall that the bed stands at
	Floor                     // cover and sink
	Rise                      // rise and fall of the floor along the drawers' travel
	Ceiling                   // faces and beams
	Doors                     // where they are, their casings
	Leaves                    // what swings in them
	Windows                   // where they are, their casings
	Panes                     // what opens in them, their cords, the drop outside
	Outlets
	Registers
	Heaters
	Fans
	Lights
	Alarms
	Furniture
	People
	// Standing is what moves a placed bed: the wall it stands at and the floor under it.
	Standing = Outline | Lean | Trim | Floor
)

// Group orders answers for people: safety before build before comfort.
type Group int

// The groups.
const (
	Build Group = iota
	Safety
	Comfort
)

// A Question is one thing asked of a bed in a room. Its words are fields, so that every screen, sheet and help text prints the same.
type Question struct {
	ID       string
	Sentence string
	Group    Group
	Why      string // one sentence: what goes wrong otherwise
	How      string // how it is measured
	Caution  string // printed with a safety answer
	Depends  Facet
	OfBed    bool     // asks of the bed and its people alone: room and place do not matter
	Propose  []Driver // what may make it fit, the most likely first
	Measure  func(*Scene) Finding
}

// Placed tells whether the answer hangs on where the bed stands. A question that depends on nothing that is uncertain, and not on the bed
// alone, is about the room as a whole.
func (q Question) Placed() bool {
	return !q.OfBed && (q.Depends == 0 || q.Depends&Standing == Standing)
}

// Finding is what a question measured: readings, each to be held against rows of the yardstick, and what else it has to tell.
type Finding struct {
	Readings []Reading
	Absent   string // the thing asked about is not there: why the question does not apply
	Band     string
	Figures  []Figure
	Notes    []string // remarks printed under the answer

	finish func(*Answer) // adds what needs the answer first, or what nothing of how sure it is hangs on: band, figures of tables
}

// A Reading is one measured value and the rows it is held against.
type Reading struct {
	At    string   // where: "top.pillow"; unique within the question
	Rows  []string // ids of the yardstick
	Have  float64  // in the rows' unit; mm for lengths
	Yes   bool     // the answer, for rows that are answered by yes or no
	Ask   string   // what is missing to tell: nothing else counts then
	Skip  string   // why the rows do not apply to this one
	Doubt string   // why it is not sure that they apply: what does not fit is then too close to call
	Parts []string // what it is about: ids of parts and keys of room things
	U     float64  // standard uncertainty of its own, beside that of the room's readings
	UKey  string   // what that uncertainty belongs to: "bed.gaps"
	Cap   string   // why it is at best too close to call
	Scope []Scope  // values of scope rows that differ from thing to thing
	Uses  []Use    // exact inputs, for the list of inputs
	Edge  string   // the fact that an answer turns on, in words
	Need  *float64 // a need of its own that wins over that of the rows, in their unit
	From  string   // where that need comes from: "the heater's own sheet"
}

// Scope is the value that a scope row is asked with.
type Scope struct {
	Row  string
	Have float64
	U    float64 // its standard uncertainty
	Ask  string  // what is missing to tell whether the row applies
}

// Use is an exact input: a chosen size or a figure of a table.
type Use struct {
	Key   string
	Value float64
	Unit  string
	How   string // "chosen", "table", "confirmed"
}

// Figure is a number shown beside an answer, such as the thickest mattress.
type Figure struct {
	Name  string
	Value float64
	Unit  string
}

// ask makes a reading that cannot be taken yet.
func ask(at, what string, rows ...string) Reading { return Reading{At: at, Rows: rows, Ask: what} }

// absent makes a finding of a question that does not apply.
func absent(why string) Finding { return Finding{Absent: why} }
