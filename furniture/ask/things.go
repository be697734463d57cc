package ask

import (
	"slices"
	"strconv"
	"strings"

	"bunkwright/room"
	"bunkwright/room/length"
)

// A thing is something in the room and how it is asked for.
type thing struct {
	left float64 // from the left end of its wall, in mm, to put things in order
	ask  func(*walker)
}

// thingsOn lists what is on a wall or nearest to it; those without a wall for "".
func (w *walker) thingsOn(wall string) []thing {
	var out []thing
	r := &w.j.Room
	add := func(table, key string, i int, on, from, fields string) {
		whole := table + "." + keyOr(key, i)
		if on != wall {
			return
		}
		if on == "" {
			fields = "wall " + fields
		}
		t := thing{ask: func(w *walker) { w.fields(whole, fields) }}
		if on != "" {
			t.left = w.leftOf(on, from, whole+".at")
		}
		out = append(out, t)
	}
	for i, d := range r.Doors {
		add("door", d.Key, i, d.Wall, d.From, "at far wide "+w.leaf(d))
	}
	for i, t := range r.Windows {
		add("window", t.Key, i, t.Wall, t.From, "at far wide sill head "+w.pane(t))
	}
	for i, t := range r.Outlets {
		fields := "at height"
		if t.Kind == "" || t.Kind == "outlet" {
			fields += " in_use"
		}
		add("outlet", t.Key, i, t.Wall, t.From, fields)
	}
	for i, t := range r.Registers {
		fields := "kind in at out wide deep"
		if t.In == "wall" {
			fields = "kind at height wide"
		}
		add("register", t.Key, i, t.Wall, t.From, fields)
	}
	for i, t := range r.Heaters {
		add("heater", t.Key, i, t.Wall, t.From, "kind at out wide deep high")
	}
	for i, t := range r.Pieces {
		add("furniture", t.Key, i, t.Wall, t.From, "at out wide deep high can_be_climbed")
	}
	return out
}

// leaf lists what is asked of the part of a door that moves; nothing of an opening without a leaf.
func (w *walker) leaf(d room.Door) string {
	fields := "kind leads_to"
	if d.Kind == "" || d.Kind == "swings" || d.Kind == "folds" {
		fields += " leaves swing"
		if d.Leaves < 2 {
			fields += " hinge"
		}
	}
	if d.Wall != "" && w.bedAt(d.Wall) {
		fields += " casing_wide"
	}
	return fields
}

// pane lists what is asked of the part of a window that opens.
func (w *walker) pane(t room.Window) string {
	fields := "kind"
	if t.Kind != "fixed" {
		fields += " clear_wide clear_high opens guard"
	}
	if !w.j.Room.Floor.Ground {
		fields += " drop"
	}
	if !t.Cordless && !t.Cord.Read() && !w.j.Room.Lacks("cord") {
		fields += " cordless"
	}
	if !t.Cordless && !w.j.Room.Lacks("cord") {
		fields += " cord"
	}
	if t.Wall != "" && w.bedAt(t.Wall) {
		fields += " casing_wide sill_deep"
	}
	return fields
}

// ceiling asks for the other heights of the ceiling and for what hangs from it.
func (w *walker) ceiling() {
	w.group("The ceiling and what hangs from it", "Two people for this; nobody climbs on furniture.")
	r := &w.j.Room
	for i, c := range r.Ceilings {
		key := "ceiling." + keyOr(c.Key, i) + ".height."
		for k, h := range c.Heights {
			if h.Corner == "" && h.Wall != "" {
				w.fields(key+keyOr(h.Key, k), "at out height")
				continue
			}
			w.add(key + keyOr(h.Key, k) + ".height")
		}
	}
	w.opposite()
	for i, t := range r.Beams {
		w.fields("beam."+keyOr(t.Key, i), "out wide under")
	}
	for i, t := range r.Fans {
		w.fields("fan."+keyOr(t.Key, i), spotFields(t.Spot, "at out")+" sweep blades")
	}
	for i, t := range r.Lights {
		fields := "kind " + spotFields(t.Spot, "at out")
		if t.Kind == "wall" {
			fields = "kind at"
		}
		w.fields("light."+keyOr(t.Key, i), fields+" wide lowest")
	}
	for i, t := range r.Alarms {
		fields := "in " + spotFields(t.Spot, "at out")
		if t.In == "wall" {
			fields = "in at below"
		}
		w.fields("alarm."+keyOr(t.Key, i), fields)
	}
	for i, t := range r.Hatches {
		w.fields("hatch."+keyOr(t.Key, i), spotFields(t.Spot, "at out")+" wide deep")
	}
	w.drop()
}

// opposite asks for a second height of a level ceiling, at the corner across from the first.
func (w *walker) opposite() {
	r := &w.j.Room
	key, have, first := "main", 0, ""
	if len(r.Ceilings) > 0 {
		key, have = keyOr(r.Ceilings[0].Key, 0), len(r.Ceilings[0].Heights)
		if have > 0 {
			first = r.Ceilings[0].Heights[0].Corner
		}
	} else if len(w.corners) > 0 {
		first, have = w.corners[0], 1
	}
	i := strings.Index(w.j.Room.Outline, first)
	if have != 1 || first == "" || i < 0 || len(w.corners) < 4 || len(r.Ceilings) > 0 && r.Ceilings[0].Sloped {
		return
	}
	w.add("ceiling." + key + ".height." + w.corners[(i+len(w.corners)/2)%len(w.corners)] + ".height")
}

// spotFields asks for the wall first where it is not known.
func spotFields(s room.Spot, fields string) string {
	if s.Wall == "" {
		return "wall " + fields
	}
	return fields
}

func (w *walker) floor() {
	w.group("The floor", "")
	w.add("floor.cover")
	if w.j.Room.Floor.Cover != "hard" {
		w.add("floor.thick")
	}
	if slices.ContainsFunc(w.j.Room.Windows, func(t room.Window) bool { return !t.Drop.Read() }) {
		w.add("floor.ground")
	}
	w.drop()
}

func (w *walker) people() {
	w.group("Who sleeps there", "")
	for i, p := range w.j.Sleepers {
		if p.Bed != "" {
			w.add(sleeperKey(p.Name, i) + ".seated")
		}
	}
	w.drop()
}

// sleeperKey reaches a sleeper; a name with a dot in it would part the key.
func sleeperKey(name string, i int) string {
	if name == "" || strings.Contains(name, ".") {
		name = keyOr("", i)
	}
	return "sleeper." + name
}

// keyOr returns a key, or the running number of a thing without one.
func keyOr(key string, i int) string {
	if key != "" {
		return key
	}
	return strconv.Itoa(i + 1)
}

// mm is the first reading of a key.
func (w *walker) mm(key string) (float64, bool) {
	if l, ok := first(w.j, key); ok {
		return l.MM(), true
	}
	return 0, false
}

// between names a wall or diagonal by its corners: "A to B".
func between(key string) string {
	if len(key) != 2 {
		return key
	}
	return key[:1] + " to " + key[1:]
}

func unitOf(name string) length.Unit {
	if u, err := length.ParseUnit(name); err == nil {
		return u
	}
	return length.Inches
}
