package ask

import (
	"slices"
	"strings"
	"sync"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room/length"
)

// card makes the card of a key; ok is false for a key that nobody can be asked for.
func (w *walker) card(key string) (c Card, need fit.Facet, ok bool) {
	if thing, isThing := thingOf(key); isThing {
		return presentCard(thing)
	}
	described, ok := rowsByKey()[pathOf(key)]
	if !ok || !strings.Contains(key, ".") {
		return Card{}, 0, false
	}
	r := rows[described.Key]
	if r == nil {
		return w.plainCard(key, described)
	}
	element := key[:strings.LastIndexByte(key, '.')]
	said := r.say(w.words(element))
	c = Card{
		Key: key, Title: upper(said.title), From: said.from, To: said.to, Hook: said.hook, Ask: said.ask, Other: said.other, Photo: said.photo,
		Why: said.why, Caution: said.caution, Kind: said.kind, Shown: said.shown,
	}
	if c.Kind == "" {
		c.Kind, c.Field = Length, fieldOf(described.Unit)
	}
	if c.Ask == "" {
		c.Ask = "What does the tape say?"
	}
	if c.Shown.View != NoView {
		c.Shown.Wall, c.Shown.Thing = w.wallOf(element), thingRef(element)
	}
	c.Words = w.choices(key, c.Kind, described)
	return c, r.need, true
}

// plainCard asks for a reading that has no words of its own, as the table of keys describes it.
func (w *walker) plainCard(key string, described jobfile.Row) (Card, fit.Facet, bool) {
	if !described.Many {
		return Card{}, 0, false
	}
	element := key[:strings.LastIndexByte(key, '.')]
	return Card{
		Key: key, Title: upper(w.name(element)) + ": " + described.Meaning, Ask: "What does the tape say?", Kind: Length, Field: fieldOf(described.Unit),
		Other: "once more, from the other end", Why: "answers hang on it", Shown: Shown{View: FromAbove, Wall: w.wallOf(element), Thing: thingRef(element)},
	}, 0, true
}

// thingRef is the ref of what is measured, "" for a wall, a diagonal, the floor, a person.
func thingRef(element string) string {
	switch table, _, _ := strings.Cut(element, "."); table {
	case "wall":
		if strings.Contains(element, ".stud.") {
			return element
		}
		return ""
	case "diagonal", "floor", "sleeper":
		return ""
	}
	return element
}

func fieldOf(u jobfile.Unit) length.Field {
	return map[jobfile.Unit]length.Field{jobfile.WallLength: length.WallLength, jobfile.RoomHeight: length.RoomHeight}[u]
}

// pathOf is the key of a row in the table of keys: "wall.stud.at" for "wall.AB.stud.1.at".
func pathOf(key string) string {
	p := strings.Split(key, ".")
	switch {
	case len(p) == 5:
		return p[0] + "." + p[2] + "." + p[4]
	case len(p) == 3:
		return p[0] + "." + p[2]
	}
	return key
}

// rowsByKey are the rows of the table of keys with their words.
var rowsByKey = sync.OnceValue(func() map[string]jobfile.Row {
	out := map[string]jobfile.Row{}
	for _, r := range jobfile.Keys() {
		out[r.Key] = r
	}
	return out
})

// choices are what a card with words may be answered with.
func (w *walker) choices(key string, kind Kind, described jobfile.Row) []Choice {
	if kind != Word {
		return nil
	}
	words := described.Words
	switch described.Unit {
	case jobfile.WallKey:
		words = w.wallKeys()
	case jobfile.WallEnd:
		words = w.corners
		if wall := w.wallOf(key[:strings.LastIndexByte(key, '.')]); len(wall) == 2 {
			words = []string{wall[:1], wall[1:]}
		}
	}
	var out []Choice
	for _, v := range words {
		if v != "" {
			out = append(out, Choice{v, label(described, v)})
		}
	}
	return out
}

// labels say in plain words what the words of a file mean.
var labels = map[string]string{
	"door.swing.in": "into this room", "door.swing.out": "out of it",
	"wall.stud.found.twice": "by two signs, or at two heights", "wall.stud.found.once": "by one sign", "wall.stud.found.assumed": "not found, only expected there",
	"register.kind.supply": "blows air in", "register.kind.return": "draws air out",
}

func label(r jobfile.Row, value string) string {
	switch {
	case labels[r.Key+"."+value] != "":
		return labels[r.Key+"."+value]
	case r.Unit == jobfile.WallKey:
		return "wall " + between(value)
	case r.Unit == jobfile.WallEnd:
		return "corner " + value
	}
	return value
}

// wallOf is the key of the wall that a table is of or on, "" where there is none.
func (w *walker) wallOf(element string) string {
	parts := strings.Split(element, ".")
	switch parts[0] {
	case "wall":
		return parts[1]
	case "ceiling":
		if len(parts) < 4 {
			return ""
		}
		if c := w.heightCorner(element); c != "" {
			return w.wallFrom(c)
		}
	case "beam":
		return jobfile.Shown(w.j, element+".along")
	case "diagonal", "floor", "sleeper":
		return ""
	}
	if wall := jobfile.Shown(w.j, element+".wall"); wall != "" {
		return wall
	}
	if parts[0] == "door" && !exists(w.j, element) {
		return w.wallFrom(w.corners[0])
	}
	return ""
}

// heightCorner is the corner at which a height of the ceiling is read.
func (w *walker) heightCorner(element string) string {
	if c := jobfile.Shown(w.j, element+".corner"); c != "" || exists(w.j, element) {
		return c
	}
	return element[strings.LastIndexByte(element, '.')+1:]
}

// wallFrom is the wall that begins at a corner.
func (w *walker) wallFrom(corner string) string {
	i := slices.Index(w.corners, corner)
	if i < 0 {
		return ""
	}
	return w.wallKeys()[i]
}

// first is the first reading of a key.
func first(j *job.Job, key string) (length.Length, bool) {
	text := jobfile.Shown(j, key)
	if text == "" {
		return 0, false
	}
	r := length.Read(text, length.Context{Unit: unitOf(j.Unit)})
	return r.Value, r.Outcome == length.Value
}

func upper(text string) string {
	if text == "" {
		return ""
	}
	return strings.ToUpper(text[:1]) + text[1:]
}
