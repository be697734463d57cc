package fit

import (
	"strconv"

	"bunkwright/room"
)

// keys are the names of the things of the room, as the survey and the drawings know them: "window.1", "wall.AB".
type keys struct {
	walls, ceilings, beams, doors, windows, outlets, registers, heaters, fans, lights, alarms, pieces []string
}

func keysOf(r *room.Room) keys {
	return keys{
		walls:     wallKeys([]rune(r.Outline)),
		ceilings:  keyAll("ceiling", len(r.Ceilings), func(i int) string { return r.Ceilings[i].Key }),
		beams:     keyAll("beam", len(r.Beams), func(i int) string { return r.Beams[i].Key }),
		doors:     keyAll("door", len(r.Doors), func(i int) string { return r.Doors[i].Key }),
		windows:   keyAll("window", len(r.Windows), func(i int) string { return r.Windows[i].Key }),
		outlets:   keyAll("outlet", len(r.Outlets), func(i int) string { return r.Outlets[i].Key }),
		registers: keyAll("register", len(r.Registers), func(i int) string { return r.Registers[i].Key }),
		heaters:   keyAll("heater", len(r.Heaters), func(i int) string { return r.Heaters[i].Key }),
		fans:      keyAll("fan", len(r.Fans), func(i int) string { return r.Fans[i].Key }),
		lights:    keyAll("light", len(r.Lights), func(i int) string { return r.Lights[i].Key }),
		alarms:    keyAll("alarm", len(r.Alarms), func(i int) string { return r.Alarms[i].Key }),
		pieces:    keyAll("furniture", len(r.Pieces), func(i int) string { return r.Pieces[i].Key }),
	}
}

// keyAll names n things of a table, each by its own key, else by its place in the list.
func keyAll(table string, n int, key func(int) string) []string {
	out := make([]string, n)
	for i := range out {
		out[i] = table + "." + keyOr(key(i), i)
	}
	return out
}

// keyOr returns a key, or the running number of a thing without one, as the survey counts it.
func keyOr(key string, i int) string {
	if key != "" {
		return key
	}
	return strconv.Itoa(i + 1)
}

func wallKeys(corners []rune) []string {
	out := make([]string, len(corners))
	for i, c := range corners {
		out[i] = "wall." + string(c) + string(corners[(i+1)%len(corners)])
	}
	return out
}
