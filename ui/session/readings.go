package session

import (
	"math"
	"slices"
	"strings"
	"sync"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room"
	"bunkwright/room/survey"
)

// State says how a quantity is known.
type State int

// The states, from the best.
const (
	Agree  State = iota // read twice, or by the maker
	Once                // one reading, or not even that: see How
	Differ              // readings that do not agree
	NotIn               // not read yet
)

// A Taken is one quantity of the room with its readings: a row of the table of readings.
type Taken struct {
	Key           string // "wall.AB.length"
	Wall          string // key of the wall it is listed with, "" for none
	From, To      string // in words
	First, Second string // as shown; a value that is not firm in parentheses
	How           room.How
	State         State
}

// wanted are the measures that a table cannot do without; the others are listed once they were read.
var wanted = map[string]string{
	"wall": "length", "diagonal": "length", "door": "at wide", "window": "at wide sill head", "outlet": "at height", "register": "at",
	"heater": "at wide deep high", "fan": "at out sweep blades", "light": "at out lowest", "alarm": "at", "hatch": "at out wide deep",
	"furniture": "at wide deep high", "beam": "out wide under", "ceiling.height": "height", "wall.stud": "at",
}

// measureKeys are the keys of every table that hold readings, in the order of the file.
var measureKeys = sync.OnceValue(func() map[string][]string {
	out := map[string][]string{}
	for _, row := range jobfile.Keys() {
		if row.Many {
			i := strings.LastIndexByte(row.Key, '.')
			out[row.Key[:i]] = append(out[row.Key[:i]], row.Key[i+1:])
		}
	}
	return out
})

// Readings lists what was read of a room and what is still to be read: wall by wall with what is in it, then what hangs and stands in the
// room. The survey may be nil.
func Readings(j *job.Job, s *survey.Survey) []Taken {
	l := lister{j: j, differ: map[string]bool{}}
	if s != nil {
		for _, c := range s.Conflicts {
			l.differ[c.Key] = true
		}
	}
	things := Things(&j.Room)
	for _, key := range WallKeys(&j.Room) {
		l.wall(key, things)
	}
	l.diagonals()
	for i := range things {
		if l.free(things[i]) {
			l.thing(things[i], "")
		}
	}
	l.table("floor", "floor", "", "")
	return l.out
}

// lister collects rows.
type lister struct {
	j      *job.Job
	differ map[string]bool
	out    []Taken
}

// free tells whether a thing is listed by itself, not with its wall.
func (l *lister) free(t Thing) bool {
	switch table, _, _ := strings.Cut(t.Key, "."); table {
	case "door", "window", "outlet", "register", "heater":
		return !slices.Contains(WallKeys(&l.j.Room), t.Wall)
	}
	return true
}

func (l *lister) wall(key string, things []Thing) {
	l.table("wall", "wall."+key, "wall", key)
	for i := range things {
		if things[i].Wall == key && !l.free(things[i]) {
			l.thing(things[i], key)
		}
	}
	w, _ := l.j.Room.Wall(key)
	for i, st := range w.Studs {
		l.table("wall.stud", "wall."+key+".stud."+KeyOr(st.Key, i), "stud "+KeyOr(st.Key, i), key)
		l.found(st.Found)
	}
	for i, p := range w.Plumbs {
		l.table("wall.plumb", "wall."+key+".plumb."+KeyOr(p.Key, i), "plumb "+KeyOr(p.Key, i), key)
	}
}

// found says of the stud listed last how it is known: by how it was found.
func (l *lister) found(how string) {
	t := &l.out[len(l.out)-1]
	switch {
	case how == "twice" && t.State == Once:
		t.State, t.First = Agree, strings.Trim(t.First, "()")
	case how == "assumed" && t.State != NotIn:
		t.How = room.Assumed
	}
}

// diagonals lists those that were read, and where none was one that would do.
func (l *lister) diagonals() {
	for _, d := range l.j.Room.Diagonals {
		l.table("diagonal", "diagonal."+d.Key, "", "")
	}
	o := l.j.Room.Outline
	for i := 0; len(l.j.Room.Diagonals) == 0 && len(o) > 3 && i+2 < len(o); i++ {
		if math.Abs(l.j.Room.Corner(o[i+1:i+2]).Angle()-180) > 3 { // else it would say nothing of the angles
			l.table("diagonal", "diagonal."+o[i:i+1]+o[i+2:i+3], "", "")
			return
		}
	}
}

func (l *lister) thing(t Thing, wall string) {
	table, name, _ := strings.Cut(t.Key, ".")
	l.table(table, t.Key, t.Name, wall)
	if table != "ceiling" {
		return
	}
	for i, c := range l.j.Room.Ceilings {
		if KeyOr(c.Key, i) != name {
			continue
		}
		for k, h := range c.Heights {
			l.table("ceiling.height", t.Key+".height."+KeyOr(h.Key, k), t.Name, "")
		}
	}
}

// table lists the measures of one element of a table.
func (l *lister) table(table, element, name, wall string) {
	keys := slices.Clone(measureKeys()[table])
	if table == "wall" { // as they stand on the wall
		keys = []string{"high", "length", "low"}
		for _, k := range measureKeys()[table] {
			if !slices.Contains(keys, k) {
				keys = append(keys, k)
			}
		}
	}
	for _, k := range keys {
		t := l.row(element+"."+k, wall)
		if t.State == NotIn && !slices.Contains(strings.Fields(wanted[table]), k) {
			continue
		}
		t.From, t.To = l.words(table, element, name, k)
		l.out = append(l.out, t)
	}
}

func (l *lister) row(key, wall string) Taken {
	t := Taken{Key: key, Wall: wall, State: NotIn, First: jobfile.Shown(l.j, key), Second: jobfile.Shown(l.j, key+".2")}
	if t.First == "" {
		return t
	}
	t.How = room.How(jobfile.Shown(l.j, key+".1.how"))
	t.State = Agree
	switch {
	case l.differ[key]:
		t.State = Differ
	case t.Second == "" && t.How != room.Mine && t.How != room.Twice:
		t.State = Once
		t.First = "(" + t.First + ")"
	}
	return t
}

// words say from where to where a measure goes.
func (l *lister) words(table, element, name, k string) (from, to string) {
	end := jobfile.Shown(l.j, element+".from")
	on := jobfile.Shown(l.j, element+".wall")
	if end == "" && on != "" {
		end = string([]rune(on)[0])
	}
	short := name
	if _, key, _ := strings.Cut(element, "."); !isNumber(key) && (table == "door" || table == "window") {
		short = key
	}
	if key := []rune(element[strings.LastIndexByte(element, '.')+1:]); table == "wall" || table == "diagonal" {
		return wallWords(k, string(key[0]), string(key[len(key)-1]), table)
	}
	switch {
	case table == "wall.stud":
		if end == "" {
			end = string([]rune(strings.Split(element, ".")[1])[0])
		}
		return end, name
	case table == "ceiling.height" && k == "height":
		corner := jobfile.Shown(l.j, element+".corner")
		if corner == "" {
			return "floor", name + ", " + element[strings.LastIndexByte(element, '.')+1:]
		}
		return "floor", name + " at " + corner
	case k == "at":
		return end, name
	case k == "far":
		return end, short + ", far"
	case k == "out" && on != "":
		return wallShort(on), name
	case k == "out":
		return wallShort(jobfile.Shown(l.j, element+".along")), name
	}
	if w, ok := measureWords[k]; ok {
		return w[0], strings.TrimSpace(short + " " + w[1])
	}
	return "", short + ", " + strings.ReplaceAll(k, "_", " ")
}

// wallShort names a wall in little room: "wall A-B".
func wallShort(key string) string {
	r := []rune(key)
	if len(r) != 2 {
		return "wall"
	}
	return "wall " + string(r[0]) + "-" + string(r[1])
}

// wallWords are the ends of what is read of a wall itself.
func wallWords(k, a, b, table string) (from, to string) {
	switch k {
	case "length":
		if table == "diagonal" {
			return a, b + ", corners"
		}
		return a, b + ", middle"
	case "low", "high":
		return a, b + ", " + k
	}
	w := measureWords[k]
	return w[0], w[1]
}

// measureWords say from where to where the measures of a thing go.
var measureWords = map[string][2]string{
	"build_up": {"face", "stud"}, "baseboard_high": {"floor", "baseboard"}, "baseboard_deep": {"wall", "baseboard"},
	"stud_wide": {"across", "a stud"}, "stud_spacing": {"stud", "next stud"},
	"wide": {"across", ""}, "deep": {"depth", ""}, "high": {"floor", "top"}, "height": {"floor", ""}, "sill": {"floor", "sill"},
	"head": {"floor", "head"}, "blades": {"floor", "blades"}, "sweep": {"across", "blades"}, "lowest": {"floor", ""},
	"under": {"floor", "underside"}, "below": {"ceiling", ""}, "rest": {"end", "far side"}, "thick": {"carpet", "thick"}, "sink": {"post", "sinks"},
	"rise": {"floor", "rise"}, "fall": {"floor", "fall"}, "drop": {"ground", "opening"}, "cord": {"cord", ""},
	"casing_wide": {"across", "trim"}, "casing_deep": {"wall", "trim"}, "leaf_thick": {"across", "leaf"}, "handle_out": {"leaf", "handle"},
	"handle_in": {"edge", "handle"}, "clear_wide": {"across", "clear"}, "clear_high": {"height", "clear"}, "opens": {"opens", ""}, "sill_deep": {"wall", "sill edge"},
}
