package jobfile

import (
	"reflect"

	"bunkwright/furniture/job"
	"bunkwright/room/length"
)

// context is what the rest of a file is read with: its unit, the corners of its room, and what a reading takes where it says nothing.
type context struct {
	unit       length.Unit
	noUnit     bool   // the unit is missing or wrong, which is one complaint, not one for every length
	outline    string // corner letters; "" where they are missing or wrong
	badOutline bool   // they are there and wrong
	readings   job.Habits
	wall       string // the wall of the table being read
	asked      bool   // the missing outline has been complained of
}

// look finds the context before the tables are read, without complaints: each key is read again in its turn.
func (d *decoder) look() {
	unit, _ := d.values["unit"].(string)
	var err error
	if d.unit, err = length.ParseUnit(unit); err != nil {
		d.unit, d.noUnit = length.Inches, true
	}
	if room, ok := d.values["room"].(map[string]any); ok {
		outline, there := room["outline"].(string)
		if there && outlineFault(outline) == "" {
			d.outline = outline
		} else {
			d.badOutline = room["outline"] != nil
		}
	}
	if habits, ok := d.values["readings"].(map[string]any); ok {
		quiet := newDecoder(parsed{scan: &scanner{}})
		quiet.context = d.context
		quiet.table(whole().byKey["readings"].sub, habits, reflect.ValueOf(&d.readings).Elem(), spot{})
	}
}

// enter notes the wall of a table: a wall's own, or the one that a fixture is on. The function it returns goes back.
func (d *decoder) enter(t *table, v map[string]any) func() {
	before := d.wall
	name, there := v["wall"].(string)
	if t.path == "wall" {
		name, there = v["key"].(string)
	}
	if _, has := t.byKey["wall"]; there && (has || t.path == "wall") {
		d.wall = name
	}
	return func() { d.wall = before }
}

// walls returns the keys of the walls round the outline.
func (c *context) walls() []string {
	var keys []string
	for i := range c.outline {
		next := (i + 1) % len(c.outline)
		keys = append(keys, c.outline[i:i+1]+c.outline[next:next+1])
	}
	return keys
}

// corners reports whether there are corners to check against; it complains once where something hangs on corners that are missing.
func (d *decoder) corners() bool {
	if d.outline == "" && !d.badOutline && !d.asked {
		d.asked = true
		d.complain(d.room().in("outline"), "missing, and walls or corners are named", d.suchAs(whole().byKey[roomTable].sub.byKey["outline"]))
	}
	return d.outline != ""
}

// room returns the spot of the table [room].
func (d *decoder) room() spot { return spot{n: d.root, line: 1}.in(roomTable) }
