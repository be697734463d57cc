package survey

import (
	"reflect"

	"bunkwright/room"
	"bunkwright/room/length"
)

// A Ref points to one adjusted quantity of a Survey; the zero Ref is a quantity that nobody read.
type Ref int

// Known tells whether the quantity was read, or taken with a stated default.
func (r Ref) Known() bool { return r > 0 }

// Refs of the room's fixtures, in the order of the room's own lists, with the names of its measures.
type (
	// SpotRefs is a place in plan; Wall is the index of its wall, or -1.
	SpotRefs struct {
		Wall    int
		FromEnd bool // counted from the wall's second corner
		At, Out Ref
	}
	// OnWallRefs is an interval on a wall.
	OnWallRefs struct {
		Wall    int
		FromEnd bool
		At      Ref // from the named end to the near edge
	}
	// WallRefs are the measures of one wall beside its length.
	WallRefs struct {
		BuildUp, BaseHigh, BaseDeep, StudWide Ref
		Lean, Bow                             Ref // mm per mm of height, outwards; mm at the low and high readings
		Studs                                 []StudRef
	}
	// StudRef is one stud: found, assumed, or counted off.
	StudRef struct {
		Key     string
		At      Ref // distance of its centre from the end named by FromEnd
		FromEnd bool
		Found   string // "twice", "once", "assumed", "counted"
	}
	// FloorRefs are the measures of the floor.
	FloorRefs struct{ Thick, Sink, Rise, Fall Ref }
	// CeilingRefs is a plane: its height where x = X0, y = Y0, and its slopes.
	CeilingRefs struct {
		Z, SlopeX, SlopeY Ref
		Deep              Ref
	}
	// BeamRefs are the measures of a beam.
	BeamRefs struct{ Out, Wide, Under Ref }
	// DoorRefs are the measures of a door.
	DoorRefs struct {
		OnWallRefs
		Wide, High, LeafThick, Handle, HandleIn, Casing, CasingDeep Ref
	}
	// WindowRefs are the measures of a window.
	WindowRefs struct {
		OnWallRefs
		Wide, Sill, Head, ClearWide, ClearHigh, ClearIn, Opens, Drop, Cord, Casing, CasingDeep, SillDeep Ref
	}
	// OutletRefs are the measures of an outlet, switch or thermostat.
	OutletRefs struct {
		OnWallRefs
		Height Ref
	}
	// RegisterRefs are the measures of a register or return.
	RegisterRefs struct {
		SpotRefs
		Wide, Deep, Height Ref
	}
	// HeaterRefs are the measures of a heater.
	HeaterRefs struct {
		SpotRefs
		Wide, Deep, High Ref
	}
	// FanRefs are the measures of a fan.
	FanRefs struct {
		SpotRefs
		Sweep, Blades Ref
	}
	// LightRefs are the measures of a light.
	LightRefs struct {
		SpotRefs
		Wide, Lowest Ref
	}
	// AlarmRefs are the measures of an alarm.
	AlarmRefs struct {
		SpotRefs
		Below Ref
	}
	// PieceRefs are the measures of furniture that stays, and of a hatch.
	PieceRefs struct {
		SpotRefs
		Wide, Deep, High Ref
	}
)

// Layout says which quantity is which.
type Layout struct {
	X, Y      []Ref // corner coordinates; 0 where they are fixed at zero
	Walls     []WallRefs
	Floor     FloorRefs
	Ceilings  []CeilingRefs
	Beams     []BeamRefs
	Doors     []DoorRefs
	Windows   []WindowRefs
	Outlets   []OutletRefs
	Registers []RegisterRefs
	Heaters   []HeaterRefs
	Fans      []FanRefs
	Lights    []LightRefs
	Alarms    []AlarmRefs
	Hatches   []PieceRefs
	Pieces    []PieceRefs
}

var measureType = reflect.TypeFor[room.Measure]()

// measures calls f with every measure of a fixture: the name of its field, its key in the file and its default.
func measures(fixture reflect.Value, f func(name, key string, m room.Measure, tag reflect.StructTag)) {
	t := fixture.Type()
	for i := 0; i < t.NumField(); i++ {
		field := t.Field(i)
		switch {
		case field.Type == measureType:
			f(field.Name, field.Tag.Get("file"), fixture.Field(i).Interface().(room.Measure), field.Tag)
		case field.Anonymous:
			measures(fixture.Field(i), f)
		}
	}
}

// Default returns what a field's tag says is taken where nothing was read, and within what half-width.
func Default(tag reflect.StructTag) (value, within length.Length, ok bool) {
	text, there := tag.Lookup("assume")
	if !there {
		return 0, 0, false
	}
	value, err := length.Parse(text, length.Context{})
	if err != nil {
		panic("room: assume " + text + ": " + err.Error())
	}
	within, err = length.Parse(tag.Get("within"), length.Context{})
	if err != nil {
		panic("room: within: " + err.Error())
	}
	return value, within, true
}
