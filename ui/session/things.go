package session

import (
	"slices"
	"strconv"
	"strings"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room"
)

// A Thing is one thing of the room as a list may show it.
type Thing struct {
	Key  string // "window.garden"
	Name string // "garden window"
	Wall string // key of its wall, "" where it has none
}

// Things lists what is in the room, table by table, walls left out.
func Things(r *room.Room) []Thing {
	var out []Thing
	add := func(table, key string, i int, wall, word string) {
		out = append(out, Thing{table + "." + KeyOr(key, i), thingName(key, i, word), wall})
	}
	for i, d := range r.Doors {
		word := "door"
		if d.LeadsTo == "closet" && !strings.Contains(d.Key, "closet") {
			word = "closet"
		}
		add("door", d.Key, i, d.Wall, word)
	}
	for i, t := range r.Windows {
		add("window", t.Key, i, t.Wall, "window")
	}
	for i, t := range r.Outlets {
		add("outlet", t.Key, i, t.Wall, orElse(t.Kind, "outlet"))
	}
	for i, t := range r.Registers {
		add("register", t.Key, i, t.Wall, "register")
	}
	for i, t := range r.Heaters {
		add("heater", t.Key, i, t.Wall, "heater")
	}
	for i, t := range r.Fans {
		add("fan", t.Key, i, t.Wall, "fan")
	}
	for i, t := range r.Lights {
		add("light", t.Key, i, t.Wall, "light")
	}
	for i, t := range r.Alarms {
		add("alarm", t.Key, i, t.Wall, "alarm")
	}
	for i, t := range r.Hatches {
		add("hatch", t.Key, i, t.Wall, "hatch")
	}
	for i, t := range r.Pieces {
		add("furniture", t.Key, i, t.Wall, "")
	}
	for i, t := range r.Beams {
		add("beam", t.Key, i, t.Along, "beam")
	}
	for i, t := range r.Ceilings {
		add("ceiling", t.Key, i, "", "ceiling")
	}
	return out
}

// thingName puts a key before what it is a key of: "garden window"; what has no key goes by its number.
func thingName(key string, i int, word string) string {
	switch {
	case key == "main" && word == "ceiling":
		return "ceiling"
	case key == "" || isNumber(key):
		return strings.TrimSpace(orElse(word, "furniture") + " " + KeyOr(key, i))
	case word == "" || strings.Contains(key, word):
		return key
	}
	return key + " " + word
}

func isNumber(text string) bool {
	_, err := strconv.Atoi(text)
	return err == nil
}

// KeyOr returns the key of a thing, or its running number where it has none.
func KeyOr(key string, i int) string {
	if key != "" {
		return key
	}
	return strconv.Itoa(i + 1)
}

func orElse(a, b string) string {
	if a != "" {
		return a
	}
	return b
}

// WallKeys returns the keys of the walls round a room.
func WallKeys(r *room.Room) []string {
	letters := []rune(r.Outline)
	keys := make([]string, len(letters))
	for i, a := range letters {
		keys[i] = string(a) + string(letters[(i+1)%len(letters)])
	}
	return keys
}

// Subject returns what a key is of, as a form shows it: "wall.AB" for "wall.AB.stud.1.at", "window.garden" for "window.garden.sill",
// "floor" for "floor.thick".
func Subject(key string) string {
	parts := strings.SplitN(key, ".", 3)
	if parts[0] == "floor" || parts[0] == "room" || len(parts) < 2 {
		return parts[0]
	}
	return parts[0] + "." + parts[1]
}

// Exists tells whether a job has a thing, wall, corner or diagonal of the room.
func Exists(j *job.Job, subject string) bool {
	table, name, _ := strings.Cut(subject, ".")
	switch table {
	case "floor", "room":
		return true
	case "wall":
		return slices.Contains(WallKeys(&j.Room), name)
	case "corner":
		return name != "" && strings.Contains(j.Room.Outline, name)
	case "diagonal":
		return len([]rune(name)) == 2
	}
	return slices.ContainsFunc(Things(&j.Room), func(t Thing) bool { return t.Key == subject })
}

// SetRoom sets a key of the room. Walls, corners and diagonals that the job says nothing of yet get their table first. A length that stands in
// the place of one that was only assumed, told or read off a photograph is a reading like any other.
func SetRoom(j *job.Job, key, text string) (*job.Job, error) {
	j, err := withTable(j, Subject(key))
	if err != nil {
		return nil, err
	}
	changes := []jobfile.Change{{Key: key, Text: text}}
	if how := jobfile.Shown(j, key+".1.how"); text != "" && weak(room.How(how)) {
		changes = append(changes, jobfile.Change{Key: key + ".1.how", Text: string(usualHow(j))})
	}
	return jobfile.Set(j, changes...)
}

func weak(how room.How) bool { return how == room.Photo || how == room.Told || how == room.Assumed }

// usualHow is how a reading is known that says nothing of it.
func usualHow(j *job.Job) room.How {
	if how := j.Readings.How; how != "" && !weak(how) {
		return how
	}
	return room.Once
}

// Forget takes all readings of a quantity away.
func Forget(j *job.Job, key string) (*job.Job, error) {
	for jobfile.Shown(j, key) != "" {
		next, err := jobfile.Set(j, jobfile.Change{Key: key})
		if err != nil {
			return nil, err
		}
		j = next
	}
	return j, nil
}

func withTable(j *job.Job, subject string) (*job.Job, error) {
	table, name, _ := strings.Cut(subject, ".")
	there := true
	switch table {
	case "wall":
		_, there = j.Room.Wall(name)
	case "corner":
		there = slices.ContainsFunc(j.Room.Corners, func(c room.Corner) bool { return c.Key == name })
	case "diagonal":
		there = slices.ContainsFunc(j.Room.Diagonals, func(d room.Diagonal) bool { return d.Key == name })
	}
	if there {
		return j, nil
	}
	return jobfile.Add(j, table, name)
}
