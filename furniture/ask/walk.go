package ask

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
)

// walker makes cards in the order in which somebody walks round the room.
type walker struct {
	j       *job.Job
	scene   *fit.Scene // nil: no shape is known
	needs   fit.Facet
	corners []string // clockwise seen from above, A first
	groups  []Group
	n       int
	asked   map[string]bool
}

func newWalker(j *job.Job, s *fit.Scene, needs fit.Facet) *walker {
	return &walker{j: j, scene: s, needs: needs, corners: strings.Split(j.Room.Outline, ""), asked: map[string]bool{}}
}

// group begins a new group; one that stays empty is dropped when the next begins.
func (w *walker) group(title, lead string) {
	w.drop()
	w.groups = append(w.groups, Group{Title: title, Lead: lead})
}

func (w *walker) drop() {
	if n := len(w.groups); n > 0 && len(w.groups[n-1].Cards) == 0 {
		w.groups = w.groups[:n-1]
	}
}

// add puts the cards of some keys on the sheet, those that a question hangs on.
func (w *walker) add(keys ...string) {
	for _, key := range keys {
		c, need, ok := w.card(key)
		if !ok || w.asked[key] || need != 0 && need&w.needs == 0 {
			continue
		}
		if len(w.groups) == 0 {
			w.group("", "")
		}
		w.n++
		c.Number = w.n
		w.asked[key] = true
		g := &w.groups[len(w.groups)-1]
		g.Cards = append(g.Cards, c)
	}
}

// fields adds several keys of one table.
func (w *walker) fields(table, names string) {
	for _, f := range strings.Fields(names) {
		w.add(table + "." + f)
	}
}

// wallKeys are the keys of the walls in order.
func (w *walker) wallKeys() []string {
	var out []string
	for i, c := range w.corners {
		out = append(out, c+w.corners[(i+1)%len(w.corners)])
	}
	return out
}

// shape asks for what makes a drawing of the room: its walls, one or two diagonals, its height.
func (w *walker) shape() {
	w.group("The shape of the room", "About ten minutes for two: after this the room can be drawn.")
	for _, key := range w.wallKeys() {
		w.add("wall." + key + ".length")
	}
	for _, d := range w.diagonals() {
		w.add("diagonal." + d + ".length")
	}
	if len(w.j.Room.Ceilings) == 0 {
		w.add("ceiling.main.height." + w.corners[0] + ".height")
		return
	}
	if heights := w.j.Room.Ceilings[0].Heights; len(heights) > 0 {
		w.add("ceiling." + keyOr(w.j.Room.Ceilings[0].Key, 0) + ".height." + keyOr(heights[0].Key, 0) + ".height")
	}
}

// diagonals are those that the job has, and where there are too few others that can be seen: as many as hold the shape.
func (w *walker) diagonals() []string {
	var out []string
	for _, d := range w.j.Room.Diagonals {
		out = append(out, d.Key)
	}
	n := len(w.corners)
	want := max(n-3, 2)
	for i := 0; i < n && n > 3 && len(out) < want; i++ {
		a, b := w.corners[min(i, (i+2)%n)], w.corners[max(i, (i+2)%n)]
		if !slices.Contains(out, a+b) && !slices.Contains(out, b+a) && w.sees(i, (i+2)%n) {
			out = append(out, a+b)
		}
	}
	return out
}

// sees tells whether a tape can go straight from one corner to another but one: through the room where its shape is known, else round a
// corner that points outwards.
func (w *walker) sees(i, k int) bool {
	between := w.corners[(i+1)%len(w.corners)]
	if w.j.Room.Corner(between).Angle() >= 180 {
		return false
	}
	if w.scene == nil || len(w.scene.Outline) != len(w.corners) {
		return true
	}
	const steps = 64
	a, b := w.scene.Outline[i], w.scene.Outline[k]
	for s := 1; s < steps; s++ {
		p := a.Add(b.Sub(a).Mul(float64(s) / steps))
		if !w.scene.Outline.Contains(p) {
			return false
		}
	}
	return true
}

// walls goes from wall to wall, and on each from its left end to its right one.
func (w *walker) walls() {
	for i, key := range w.wallKeys() {
		title := "Wall " + between(key)
		read, _ := w.j.Room.Wall(key)
		if read.Name != "" {
			title += ", " + read.Name
		}
		w.group(title, "From its left end, corner "+key[:1]+", to the right.")
		if i == 0 && len(w.j.Room.Doors) == 0 {
			w.fields("door."+roomDoor, "at far wide kind swing hinge leads_to")
		}
		things := w.thingsOn(key)
		slices.SortStableFunc(things, func(a, b thing) int { return cmp.Compare(a.left, b.left) })
		for _, t := range things {
			t.ask(w)
		}
		w.ofWall(key)
	}
	w.group("Things whose wall is not known", "")
	for _, t := range w.thingsOn("") {
		t.ask(w)
	}
	w.drop()
}

// roomDoor names the door of a room that lists none: by the order of the corners it is in the first wall.
const roomDoor = "room"

// ofWall asks for the wall itself where the bed stands at it: how it leans, its baseboard, what holds a screw.
func (w *walker) ofWall(key string) {
	if !w.bedAt(key) {
		return
	}
	w.fields("wall."+key, "low high baseboard_high baseboard_deep")
	if key != w.j.Place.Wall {
		return
	}
	w.fields("wall."+key, "kind build_up")
	read, _ := w.j.Room.Wall(key)
	for i, st := range read.Studs {
		if st.Found != "assumed" {
			w.fields("wall."+key+".stud."+keyOr(st.Key, i), "at found")
		}
	}
	for i := len(read.Studs); i < 2; i++ {
		w.fields("wall."+key+".stud."+keyOr("", i), "at found")
	}
}

// bedAt tells whether the bed stands at a wall: its own, and the one at the end that it is pushed to.
func (w *walker) bedAt(key string) bool {
	p := w.j.Place
	if key == p.Wall || p.Wall == "" {
		return key == p.Wall
	}
	at := p.From
	if at == "" {
		at = p.Wall[:1]
	}
	return p.Along == 0 && strings.Contains(key, at)
}

// leftOf is where something begins on its wall, from the left end; far away where that is not known.
func (w *walker) leftOf(wall, from, atKey string) float64 {
	x, ok := w.mm(atKey)
	if !ok {
		return math.Inf(1)
	}
	if from != "" && from != wall[:1] {
		long, ok := w.mm("wall." + wall + ".length")
		if !ok {
			return math.Inf(1)
		}
		return long - x
	}
	return x
}
