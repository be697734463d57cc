package ask

import (
	"strconv"
	"strings"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room/length"
)

// words fills in what the words of a row leave open for one table.
func (w *walker) words(element string) *strings.Replacer {
	wall := w.wallOf(element)
	parts := strings.Split(element, ".")
	left, right := "?", "?"
	if parts[0] == "diagonal" {
		wall = ""
	}
	if two := wall + strings.Repeat(parts[min(1, len(parts)-1)], btoi(parts[0] == "diagonal")); len(two) == 2 {
		left, right = two[:1], two[1:]
	}
	end, rest := left, right
	if from := jobfile.Shown(w.j, element+".from"); from != "" && from == right {
		end, rest = right, left
	}
	low, mid, high := w.levels()
	name := w.name(element)
	return strings.NewReplacer("{left}", left, "{right}", right, "{end}", end, "{rest}", rest, "{wall}", between(wall), "{wallkey}", wall,
		"{things}", name, "{thing}", bare(name), "{low}", low, "{mid}", mid, "{high}", high)
}

func btoi(b bool) int {
	if b {
		return 1
	}
	return 0
}

func bare(name string) string { return strings.TrimPrefix(name, "the ") }

// levels are the heights at which walls are measured, in round figures of the unit where the job does not say.
func (w *walker) levels() (low, mid, high string) {
	r := &w.j.Room
	pick := func(chosen length.Length, inch, mm string) string {
		switch {
		case chosen > 0 && unitOf(w.j.Unit) == length.Inches && chosen%length.Foot == 0:
			return strconv.FormatInt(int64(chosen/length.Foot), 10) + " ft"
		case chosen > 0:
			return length.Format(chosen, length.Style{Unit: unitOf(w.j.Unit), InchesOnly: true})
		case unitOf(w.j.Unit) == length.Millimetres:
			return mm
		}
		return inch
	}
	return pick(r.Low, "6 in", "150 mm"), pick(r.Middle, "4 ft", "1200 mm"), pick(r.High, "7 ft", "2100 mm")
}

// nouns are what the tables of a room hold, in words.
var nouns = map[string]string{
	"door": "door", "window": "window", "outlet": "outlet", "register": "register", "heater": "heater", "fan": "fan", "light": "light",
	"alarm": "smoke alarm", "hatch": "hatch", "furniture": "", "beam": "beam", "ceiling": "ceiling",
}

// name calls a thing what people call it: "the garden window", "the ceiling at C".
func (w *walker) name(element string) string {
	parts := strings.Split(element, ".")
	key := parts[len(parts)-1]
	switch parts[0] {
	case "ceiling":
		return w.ceilingName(element, parts)
	case "sleeper":
		if p := sleeperAt(w.j, key); p != "" {
			return p
		}
		return key
	case "wall":
		if len(parts) > 3 {
			return key
		}
		return "wall " + between(key)
	}
	noun := nouns[parts[0]]
	if parts[0] == "outlet" {
		if kind := jobfile.Shown(w.j, element+".kind"); kind != "" {
			noun = kind
		}
	}
	if parts[0] == "door" && jobfile.Shown(w.j, element+".leads_to") == "closet" {
		noun = "closet door"
	}
	return called(key, noun, len(parts) > 1 && w.alone(parts[0]))
}

// called puts a name before what it is a name of; a number stands behind, and is left out where there is only one.
func called(key, noun string, alone bool) string {
	switch _, err := strconv.Atoi(key); {
	case err == nil && alone:
		return "the " + noun
	case err == nil:
		return strings.TrimSpace(orElse(noun, "furniture") + " " + key)
	case noun == "" || strings.Contains(key, noun):
		return "the " + key
	}
	for _, word := range strings.Fields(noun) { // "closet" needs no "closet closet door"
		key = strings.TrimSpace(strings.ReplaceAll(" "+key+" ", " "+word+" ", " "))
	}
	return strings.Join(strings.Fields("the "+key+" "+noun), " ")
}

// alone tells whether a table has one element at most.
func (w *walker) alone(table string) bool {
	return jobfile.Shown(w.j, table+".2.wall") == "" && !exists(w.j, table+".2")
}

func (w *walker) ceilingName(element string, parts []string) string {
	name := "the ceiling"
	if parts[1] != "main" && len(w.j.Room.Ceilings) > 1 {
		name = "the ceiling (" + parts[1] + ")"
	}
	if len(parts) < 4 {
		return name
	}
	if c := w.heightCorner(element); c != "" {
		return name + " at corner " + c
	}
	return name + " at the point called " + parts[3]
}

func sleeperAt(j *job.Job, key string) string {
	if n, err := strconv.Atoi(key); err == nil && n >= 1 && n <= len(j.Sleepers) {
		return j.Sleepers[n-1].Name
	}
	return ""
}

func orElse(a, b string) string {
	if a != "" {
		return a
	}
	return b
}
