// Package room answers what was measured of a room and by whom: outline, walls, openings, fixtures, studs, floor, ceiling, each with
// all its readings.
//
// The fields carry their key in a job file (file), what is taken where nothing was read (assume, with its half-width "within"), and
// the words allowed (words). Positions are kept as they were read: from a named end of a wall.
package room

import "bunkwright/room/length"

// A Room is the record of one room. It is a plain value: editing makes a new one.
type Room struct {
	Outline   string        `file:"outline"` // corner letters clockwise seen from above; the first wall holds the room door
	Low       length.Length `file:"low"`     // height over the floor at which walls were read low, in the middle and high
	Middle    length.Length `file:"middle"`
	High      length.Length `file:"high"`
	Absent    []string      `file:"absent"`
	Note      string        `file:"note"`
	Floor     Floor         `file:"floor"`
	Corners   []Corner      `file:"corner"`
	Walls     []Wall        `file:"wall"`
	Diagonals []Diagonal    `file:"diagonal"`
	Ceilings  []Ceiling     `file:"ceiling"`
	Beams     []Beam        `file:"beam"`
	Doors     []Door        `file:"door"`
	Windows   []Window      `file:"window"`
	Outlets   []Outlet      `file:"outlet"`
	Registers []Register    `file:"register"`
	Heaters   []Heater      `file:"heater"`
	Fans      []Fan         `file:"fan"`
	Lights    []Light       `file:"light"`
	Alarms    []Alarm       `file:"alarm"`
	Hatches   []Hatch       `file:"hatch"`
	Pieces    []Piece       `file:"furniture"`
}

// AbsentWords are the things a room may be said not to have. A thing neither listed nor absent was not asked about.
var AbsentWords = []string{"window", "fan", "light", "heater", "register", "outlet", "switch", "alarm", "thermostat", "hatch", "cord", "furniture", "beam", "closet"}

// Lacks tells whether the room was said to have none of a thing.
func (r *Room) Lacks(thing string) bool {
	for _, a := range r.Absent {
		if a == thing {
			return true
		}
	}
	return false
}

// Floor is what the bed stands on.
type Floor struct {
	Cover  string  `file:"cover" words:"carpet|hard"`
	Thick  Measure `file:"thick"` // carpet with its pad
	Sink   Measure `file:"sink"`  // how far a loaded post foot goes down into it
	Rise   Measure `file:"rise"`  // floor at the end of the drawers' travel, higher (or lower, negative words not allowed: use fall)
	Fall   Measure `file:"fall"`
	Ground bool    `file:"ground"` // the floor is at ground level
	Note   string  `file:"note"`
}

// Corner says what is known of one corner beside the lengths that meet in it.
type Corner struct {
	Key    string  `file:"key"`
	Inside float64 `file:"inside"` // inside angle in degrees the outline was drawn with; 0: 90
	Square string  `file:"square" words:"yes|no"`
	Note   string  `file:"note"`
}

// Wall is one straight run between two corners, named by their letters clockwise.
type Wall struct {
	Key         string  `file:"key"`
	Name        string  `file:"name"`
	Length      Measure `file:"length"` // plaster to plaster at middle height
	LowLength   Measure `file:"low"`
	HighLength  Measure `file:"high"`
	Kind        string  `file:"kind" words:"wood studs|steel studs|masonry|plaster on lath"`
	BuildUp     Measure `file:"build_up"` // covering before the stud
	BaseHigh    Measure `file:"baseboard_high"`
	BaseDeep    Measure `file:"baseboard_deep"`
	StudWide    Measure `file:"stud_wide" assume:"1-1/2 in" within:"1/16 in"`
	Studs       []Stud  `file:"stud"`
	Spacing     Measure `file:"stud_spacing"` // counted off from the found stud named by spacing_from
	SpacingFrom string  `file:"spacing_from"`
	Plumbs      []Plumb `file:"plumb"`
	Note        string  `file:"note"`
}

// From returns the letter of the wall's first corner, To that of its second.
func (w Wall) From() string { return first(w.Key) }
func (w Wall) To() string   { return last(w.Key) }

// Stud is one stud, or one place where a stud is only assumed.
type Stud struct {
	Key   string  `file:"key"`
	From  string  `file:"from"`
	At    Measure `file:"at"` // to its centre
	Found string  `file:"found" words:"twice|once|assumed"`
	Note  string  `file:"note"`
}

// Plumb is a plumb line held before a wall: distances from the line to the wall.
type Plumb struct {
	Key    string  `file:"key"`
	Low    Measure `file:"low"`
	Middle Measure `file:"middle"`
	High   Measure `file:"high"`
	Note   string  `file:"note"`
}

// Diagonal is a reading from corner to corner that is no wall.
type Diagonal struct {
	Key    string  `file:"key"`
	Length Measure `file:"length"`
	Note   string  `file:"note"`
}

// Spot is a place in plan: along a wall from a named end, and out from it.
type Spot struct {
	Wall string  `file:"wall"`
	From string  `file:"from"`
	At   Measure `file:"at"`
	Out  Measure `file:"out"`
}

// OnWall is a place on a wall: its near edge from a named end, read also from the far end where somebody did.
type OnWall struct {
	Wall string  `file:"wall"`
	From string  `file:"from"`
	At   Measure `file:"at"`
	Far  Measure `file:"far"`  // its far edge from the same end
	Rest Measure `file:"rest"` // its far edge to the other end of the wall
}

// Ceiling is one plane face of the ceiling; where faces overlap the lowest counts.
type Ceiling struct {
	Key     string   `file:"key"`
	Sloped  bool     `file:"sloped"`      // else it is taken as level
	Along   string   `file:"level_along"` // wall along which a sloped face keeps its height
	Corners string   `file:"over"`        // corner letters of the part of the room it covers; empty: all of it
	Strip   string   `file:"strip"`       // or a strip along this wall
	Deep    Measure  `file:"deep"`        // how far the strip comes out from that wall
	Heights []Height `file:"height"`
	Note    string   `file:"note"`
}

// Height is one reading from the floor covering to a ceiling face, with where it was taken.
type Height struct {
	Key    string `file:"key"`
	Corner string `file:"corner"` // at a corner, or at a spot
	Spot
	Height Measure `file:"height"`
	Note   string  `file:"note"`
}

// Beam hangs below the ceiling along a wall.
type Beam struct {
	Key   string  `file:"key"`
	Along string  `file:"along"` // the wall it runs parallel to, from end to end
	Out   Measure `file:"out"`   // from that wall to its near face
	Wide  Measure `file:"wide"`
	Under Measure `file:"under"` // floor to its underside
	Note  string  `file:"note"`
}

// Door is any door or plain opening in a wall.
type Door struct {
	Key string `file:"key"`
	OnWall
	Wide       Measure `file:"wide"`
	High       Measure `file:"high" assume:"80 in" within:"2 in"`
	Kind       string  `file:"kind" words:"swings|slides|folds|open"`
	Leaves     int     `file:"leaves"`
	Hinge      string  `file:"hinge"` // letter of the wall end the pins are nearer to
	Swing      string  `file:"swing" words:"in|out"`
	Opens      float64 `file:"opens"` // degrees; 0: 90
	LeafThick  Measure `file:"leaf_thick" assume:"1-3/8 in" within:"1/8 in"`
	Handle     Measure `file:"handle_out" assume:"2-1/2 in" within:"1/2 in"`
	HandleIn   Measure `file:"handle_in" assume:"2-3/4 in" within:"1/2 in"` // from the free edge to the handle
	Casing     Measure `file:"casing_wide"`
	CasingDeep Measure `file:"casing_deep" assume:"11/16 in" within:"1/8 in"`
	LeadsTo    string  `file:"leads_to" words:"hall|closet|bathroom|kitchen|outside|other room"`
	Note       string  `file:"note"`
}

// Window is an opening with glass; sill and head are those of the clear opening.
type Window struct {
	Key string `file:"key"`
	OnWall
	Wide       Measure `file:"wide"`
	Sill       Measure `file:"sill"`
	Head       Measure `file:"head"`
	Kind       string  `file:"kind" words:"slides up|slides sideways|hinged at a side|hinged at the top|hinged at the bottom|fixed"`
	ClearWide  Measure `file:"clear_wide"` // clear opening when open
	ClearHigh  Measure `file:"clear_high"`
	ClearIn    Measure `file:"clear_in"` // near edge of the window to the near edge of the clear opening; unread: in the middle
	Opens      Measure `file:"opens"`    // how far it can be opened
	Guard      string  `file:"guard" words:"yes|no"`
	Drop       Measure `file:"drop"` // ground outside to the lowest part of the clear opening
	Cord       Measure `file:"cord"` // reachable length of a blind or curtain cord
	Cordless   bool    `file:"cordless"`
	Casing     Measure `file:"casing_wide"`
	CasingDeep Measure `file:"casing_deep" assume:"11/16 in" within:"1/8 in"`
	SillDeep   Measure `file:"sill_deep"` // how far the inside sill stands out from the wall
	Note       string  `file:"note"`
}

// Outlet is a receptacle, switch or thermostat on a wall.
type Outlet struct {
	Key    string  `file:"key"`
	Kind   string  `file:"kind" words:"outlet|switch|thermostat"`
	Wall   string  `file:"wall"`
	From   string  `file:"from"`
	At     Measure `file:"at"`     // to its centre
	Height Measure `file:"height"` // floor to its centre
	InUse  string  `file:"in_use" words:"yes|no"`
	Note   string  `file:"note"`
}

// Register is a supply register or return grille in the floor, a wall or the ceiling.
type Register struct {
	Key    string  `file:"key"`
	Kind   string  `file:"kind" words:"supply|return"`
	In     string  `file:"in" words:"floor|wall|ceiling"`
	Spot           // near corner: along the wall, and out from it (floor and ceiling)
	Wide   Measure `file:"wide"`   // along the wall
	Deep   Measure `file:"deep"`   // away from the wall; in a wall: its height
	Height Measure `file:"height"` // in a wall: floor to its lower edge
	Note   string  `file:"note"`
}

// Heater gives off heat; clearances on its own sheet win over the planning figures.
type Heater struct {
	Key  string `file:"key"`
	Kind string `file:"kind" words:"electric baseboard|wall heater with fan|portable|radiator|stove"`
	Spot
	Wide  Measure       `file:"wide"`
	Deep  Measure       `file:"deep"`
	High  Measure       `file:"high"`        // floor to its top
	Front length.Length `file:"sheet_front"` // clearances of its own sheet
	Side  length.Length `file:"sheet_side"`
	Above length.Length `file:"sheet_above"`
	Note  string        `file:"note"`
}

// Fan is a ceiling fan.
type Fan struct {
	Key    string  `file:"key"`
	Spot           // its centre
	Sweep  Measure `file:"sweep"`  // diameter over the blade tips
	Blades Measure `file:"blades"` // floor to the underside of the blades
	Note   string  `file:"note"`
}

// Light is a lamp on or in the ceiling, or on a wall.
type Light struct {
	Key    string  `file:"key"`
	Kind   string  `file:"kind" words:"surface|recessed|pendant|wall"`
	Spot           // its centre
	Wide   Measure `file:"wide" assume:"12 in" within:"3 in"` // diameter
	Lowest Measure `file:"lowest"`                            // floor to its lowest point
	Note   string  `file:"note"`
}

// Alarm is a smoke alarm.
type Alarm struct {
	Key   string  `file:"key"`
	In    string  `file:"in" words:"ceiling|wall"`
	Spot          // its centre
	Below Measure `file:"below"` // in a wall: ceiling to its top
	Note  string  `file:"note"`
}

// Hatch is a way through the ceiling.
type Hatch struct {
	Key  string  `file:"key"`
	Spot         // near corner
	Wide Measure `file:"wide"`
	Deep Measure `file:"deep"`
	Note string  `file:"note"`
}

// Piece is furniture that stays.
type Piece struct {
	Key   string  `file:"key"`
	Spot          // near corner
	Wide  Measure `file:"wide"`
	Deep  Measure `file:"deep"`
	High  Measure `file:"high"`
	Climb string  `file:"can_be_climbed" words:"yes|no"`
	Note  string  `file:"note"`
}

func first(key string) string {
	if key == "" {
		return ""
	}
	return key[:1]
}

func last(key string) string {
	if key == "" {
		return ""
	}
	return key[len(key)-1:]
}
