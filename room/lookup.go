package room

// Corner returns what is known of a corner; a corner without a row of its own is a square one.
func (r *Room) Corner(letter string) Corner {
	for _, c := range r.Corners {
		if c.Key == letter {
			return c
		}
	}
	return Corner{Key: letter}
}

// Angle returns the inside angle the corner was drawn with, in degrees.
func (c Corner) Angle() float64 {
	if c.Inside == 0 {
		return 90
	}
	return c.Inside
}

// Wall returns a wall by its key, such as "AB".
func (r *Room) Wall(key string) (Wall, bool) {
	for _, w := range r.Walls {
		if w.Key == key {
			return w, true
		}
	}
	return Wall{Key: key}, false
}

// Heights at which the lengths of walls are read where the job does not say: low, middle and high, in mm.
const (
	defaultLow    = 150.0
	defaultMiddle = 1200.0
	defaultHigh   = 2100.0
)

// ReadAt returns the heights over the floor, in mm, at which the lengths of walls were read.
func (r *Room) ReadAt() (low, middle, high float64) {
	pick := func(chosen, otherwise float64) float64 {
		if chosen > 0 {
			return chosen
		}
		return otherwise
	}
	return pick(r.Low.MM(), defaultLow), pick(r.Middle.MM(), defaultMiddle), pick(r.High.MM(), defaultHigh)
}
