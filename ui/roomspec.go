package ui

import (
	"slices"
	"strings"
	"sync"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room"
	"bunkwright/ui/session"
)

// A spec is one line of a form: what kind it is, the key it is of, and its words.
type spec struct {
	kind  specKind
	key   string
	label string
	words []string // to choose from
}

type specKind int

const (
	sectionSpec specKind = iota
	pictureSpec
	readingSpec // a length with its readings
	lengthSpec  // a length that is no reading
	textSpec
	choiceSpec
	studSpec    // a stud with how it was found
	countedSpec // a stud counted off by the spacing
	absentSpec  // a thing that the room may be said not to have
	buttonSpec
	noteSpec
)

// keyRows are the rows of the table of keys by key.
var keyRows = sync.OnceValue(func() map[string]jobfile.Row {
	out := map[string]jobfile.Row{}
	for _, r := range jobfile.Keys() {
		out[r.Key] = r
	}
	return out
})

// isReading tells whether a key is of a measure, which may have readings.
func isReading(key string) bool {
	row, ok := jobfile.Find(key)
	return ok && keyRows()[row.Key].Many
}

// specsOf lists the lines of the form of what is chosen. They hang on what there is, never on values, so that a form stays while it is
// typed in.
func specsOf(j *job.Job, s *fit.Scene, chosen string) []spec {
	subject := session.Subject(chosen)
	table, name, _ := strings.Cut(subject, ".")
	b := &specBuilder{j: j, chosen: chosen}
	switch table {
	case "wall":
		b.wall(name, s)
	case "ceiling":
		b.thing(table, subject)
		b.heights(subject, name)
	case "room":
		b.room()
	case "corner":
		b.thing(table, subject)
		b.button("remove", "Remove the corner (Del)")
	case "floor", "diagonal":
		b.thing(table, subject)
	default:
		if wall := session.OnWall(j, subject); wall != "" {
			b.add(pictureSpec, "wall."+wall, "")
		}
		b.thing(table, subject)
		b.button("remove", "Remove (Del)")
	}
	return b.out
}

// specBuilder collects the lines of one form.
type specBuilder struct {
	j      *job.Job
	chosen string
	out    []spec
}

func (b *specBuilder) add(kind specKind, key, label string, words ...string) {
	b.out = append(b.out, spec{kind, key, label, words})
}

func (b *specBuilder) section(title string) { b.add(sectionSpec, "", title) }

func (b *specBuilder) button(key, label string) { b.add(buttonSpec, key, label) }

// reading adds a length with its readings; of the chosen one also the second reading, how it is known and who read it.
func (b *specBuilder) reading(key, label string) {
	b.add(readingSpec, key, label)
	if key != b.chosen {
		return
	}
	b.add(readingSpec, key+".2", "second reading")
	b.add(choiceSpec, key+".1.how", "how it is known", plainHows()...)
	b.add(textSpec, key+".1.by", "read by")
}

func plainHows() (words []string) {
	for _, h := range room.Hows {
		words = append(words, string(h))
	}
	return words
}

// key adds a line for any key, by what it may be.
func (b *specBuilder) key(element string, row jobfile.Row) {
	last := row.Key[strings.LastIndexByte(row.Key, '.')+1:]
	key, label := element+"."+last, labelOf(row.Key)
	switch {
	case row.Many:
		b.reading(key, label)
	case row.Unit == jobfile.WallKey:
		b.add(choiceSpec, key, label, session.WallKeys(&b.j.Room)...)
	case row.Unit == jobfile.WallEnd:
		b.add(choiceSpec, key, label, b.ends(element)...)
	case row.Unit == jobfile.CornerKey && last != "key":
		b.add(choiceSpec, key, label, strings.Split(b.j.Room.Outline, "")...)
	case row.Unit == jobfile.TrueFalse:
		b.add(choiceSpec, key, label, "true", "false")
	case row.Words != nil:
		b.add(choiceSpec, key, label, row.Words...)
	case row.Unit == jobfile.Size || row.Unit == jobfile.FromZero || row.Unit == jobfile.WallLength || row.Unit == jobfile.RoomHeight:
		b.add(lengthSpec, key, label)
	default:
		b.add(textSpec, key, label)
	}
}

// ends are the letters of the wall that an element is on, of all corners where it is on none yet.
func (b *specBuilder) ends(element string) []string {
	wall := jobfile.Shown(b.j, element+".wall")
	if wall == "" && strings.HasPrefix(element, "wall.") {
		wall = strings.Split(element, ".")[1]
	}
	if wall == "" {
		wall = b.j.Room.Outline
	}
	return strings.Split(wall, "")
}

// thing adds all keys of an element: where it is, its sizes, what it is.
func (b *specBuilder) thing(table, element string) {
	where := []string{"wall", "from", "at", "far", "rest", "out", "along", "in", "level_along", "over", "strip", "deep"}
	parts := [3][]jobfile.Row{}
	for _, row := range jobfile.Keys() {
		if i := strings.LastIndexByte(row.Key, '.'); i < 0 || row.Key[:i] != table || row.Unit == jobfile.List {
			continue
		}
		last := row.Key[len(table)+1:]
		switch {
		case table == "diagonal" && last == "key" || table == "corner" && last == "key":
		case slices.Contains(where, last) && !(last == "deep" && table != "ceiling"):
			parts[0] = append(parts[0], row)
		case row.Many || row.Unit == jobfile.Size:
			parts[1] = append(parts[1], row)
		default:
			parts[2] = append(parts[2], row)
		}
	}
	titles := [3]string{"Where it is", "Sizes", "What it is"}
	if table == "floor" || table == "corner" || table == "diagonal" {
		titles = [3]string{"", "Readings", "What it is"}
	}
	for i, rows := range parts {
		if len(rows) == 0 {
			continue
		}
		b.section(titles[i])
		for _, row := range rows {
			b.key(element, row)
		}
	}
	if table != "floor" && table != "diagonal" {
		b.add(textSpec, element+".note", "Note")
	}
}

// wall adds the form of a wall.
func (b *specBuilder) wall(name string, s *fit.Scene) {
	e := "wall." + name
	b.add(pictureSpec, e, "")
	b.section("Length")
	b.reading(e+".high", "High")
	b.reading(e+".length", "Middle")
	b.reading(e+".low", "Low")
	b.button("add corner", "Add a corner (C)")
	b.section("Trim")
	b.reading(e+".baseboard_high", "Baseboard high")
	b.reading(e+".baseboard_deep", "Baseboard thick")
	for _, t := range session.Things(&b.j.Room) {
		if table, _, _ := strings.Cut(t.Key, "."); t.Wall == name && (table == "door" || table == "window") {
			b.reading(t.Key+".casing_wide", capital(t.Name)+" trim")
		}
	}
	b.section("Wall build-up")
	b.add(choiceSpec, e+".kind", "Made of", keyRows()["wall.kind"].Words...)
	b.reading(e+".build_up", "Covering")
	b.reading(e+".stud_wide", "Face of a stud")
	b.studs(e, name, s)
	b.section("Name")
	b.add(textSpec, e+".name", "Called")
	b.add(textSpec, e+".note", "Note")
}

// studs lists the studs of a wall, those that are counted off too.
func (b *specBuilder) studs(e, name string, s *fit.Scene) {
	b.section("Studs, from corner " + name[:1])
	w, _ := b.j.Room.Wall(name)
	var keys []string
	for i, st := range w.Studs {
		key := e + ".stud." + orNumber(st.Key, i)
		keys = append(keys, orNumber(st.Key, i))
		label := ""
		if st.From != "" && st.From != name[:1] {
			label = "from " + st.From
		}
		b.add(studSpec, key, label)
		if key+".at" == b.chosen {
			b.add(choiceSpec, key+".from", "counted from", strings.Split(name, "")...)
			b.add(textSpec, key+".note", "note")
		}
	}
	if s != nil {
		for i := range s.Walls {
			if s.Walls[i].Key != name {
				continue
			}
			for _, r := range s.Walls[i].Refs.Studs {
				if r.Found == "counted" {
					b.add(countedSpec, e+".stud."+r.Key, "")
				}
			}
		}
	}
	b.button("add stud", "Add a stud")
	b.reading(e+".stud_spacing", "Spacing")
	if len(keys) > 0 {
		b.add(choiceSpec, e+".spacing_from", "Counted from", keys...)
	}
}

// heights lists the heights of a face of the ceiling.
func (b *specBuilder) heights(subject, name string) {
	for i, c := range b.j.Room.Ceilings {
		if orNumber(c.Key, i) != name {
			continue
		}
		for k, h := range c.Heights {
			e := subject + ".height." + orNumber(h.Key, k)
			b.section("Height " + orNumber(h.Key, k))
			b.reading(e+".height", "Floor to ceiling")
			b.add(choiceSpec, e+".corner", "At corner", strings.Split(b.j.Room.Outline, "")...)
			if h.Corner == "" {
				b.add(choiceSpec, e+".wall", "Or along wall", session.WallKeys(&b.j.Room)...)
				b.add(choiceSpec, e+".from", "Counted from", b.ends(e)...)
				b.reading(e+".at", "Along the wall")
				b.reading(e+".out", "Out from it")
			}
		}
	}
	b.button("add height", "Add a height")
	b.button("add face", "Add a face")
	b.button("remove", "Remove (Del)")
}

// room adds what is of the whole room: what it does not have, and the heights at which walls are read.
func (b *specBuilder) room() {
	b.section("The room has no")
	for _, word := range room.AbsentWords {
		b.add(absentSpec, word, word)
	}
	b.section("Walls are read at")
	for _, k := range []string{"high", "middle", "low"} {
		b.add(lengthSpec, "room."+k, labelOf("room."+k))
	}
	b.section("The job")
	b.add(textSpec, "name", "Name")
	b.add(textSpec, "readings.by", "Read by")
	b.add(choiceSpec, "readings.how", "Known", plainHows()...)
}

func orNumber(key string, i int) string { return session.KeyOr(key, i) }

// labels are the words of keys where the key itself is no word for people.
var labels = map[string]string{
	"key": "Name", "wall": "Wall", "from": "Counted from", "at": "Along the wall", "far": "To its far edge", "rest": "Far edge to the end",
	"out": "Out from the wall", "wide": "Width", "deep": "Depth", "high": "Height", "height": "Floor to middle", "sill": "Floor to sill",
	"head": "Floor to head", "kind": "Kind", "leads_to": "Leads to", "leaf_thick": "Leaf thick", "handle_out": "Handle stands out",
	"handle_in": "Edge to handle", "casing_wide": "Trim wide", "casing_deep": "Trim thick", "clear_wide": "Clear width", "clear_high": "Clear height",
	"clear_in": "Edge to clear", "opens": "Opens", "drop": "Ground outside", "cord": "Cord reach", "cordless": "Without cord", "sill_deep": "Sill stands out",
	"guard": "Guard fitted", "hinge": "Pins near", "in_use": "In use", "sweep": "Across blades", "blades": "Floor to blades", "lowest": "Lowest point",
	"below": "Ceiling to top", "can_be_climbed": "Can be climbed", "sheet_front": "Sheet: in front", "sheet_side": "Sheet: beside", "sheet_above": "Sheet: above",
	"under": "Underside", "along": "Runs along wall", "thick": "Carpet thick", "sink": "Post sinks in", "rise": "Rises by", "fall": "Falls by",
	"ground": "Ground floor", "cover": "Covering", "inside": "Inside angle", "square": "Square", "level_along": "Level along", "over": "Over corners",
	"strip": "Strip along", "sloped": "Sloped", "leaves": "Leaves", "swing": "Swings", "length": "Corner to corner", "in": "In the",
}

// labelOf returns the words of a key.
func labelOf(rowKey string) string {
	last := rowKey[strings.LastIndexByte(rowKey, '.')+1:]
	if rowKey == "register.height" || rowKey == "room.high" || rowKey == "outlet.height" {
		return map[string]string{"register.height": "Floor to edge", "room.high": "High", "outlet.height": "Floor to middle"}[rowKey]
	}
	if words, ok := labels[last]; ok {
		return words
	}
	return capital(strings.ReplaceAll(last, "_", " "))
}

// capital begins words with a capital letter.
func capital(words string) string {
	r := []rune(words)
	if len(r) == 0 {
		return words
	}
	return strings.ToUpper(string(r[:1])) + string(r[1:])
}
