package view

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"bunkwright/render"
	"bunkwright/room"
	"bunkwright/room/survey"
)

// readAgain names what is to be read on arrival: what was not read at all, then what was read once, the readings that matter most to the
// answers first.
func (b *binder) readAgain() []string {
	weight := map[string]float64{}
	for _, a := range b.answers {
		for _, in := range a.Inputs {
			weight[in.Key] = math.Max(weight[in.Key], in.Share)
		}
	}
	var once []string
	for _, src := range b.s.Survey.Sources {
		if src.Index == 0 && src.How != room.Mine && !b.known.firm(src.Key) && !strings.HasPrefix(src.Key, "sleeper.") && !slices.Contains(once, src.Key) {
			once = append(once, src.Key)
		}
	}
	slices.SortStableFunc(once, func(x, y string) int { return cmp.Compare(weight[y], weight[x]) })
	var words []string
	for _, k := range append(b.unread(), once...) {
		words = append(words, b.quantity(k))
	}
	return words
}

// mostBeside is how many readings to take again stand beside the plan alone; a longer list gets its own sheet, with all of them.
const mostBeside = 6

// againPages lists all that is to be read again, in two columns.
func (b *binder) againPages() {
	again := b.readAgain()
	if len(again) <= mostBeside {
		return
	}
	area := b.listArea()
	wide := (area.W() - againGap) / 2
	var rows []block
	for _, words := range again {
		c := &column{st: b.st, w: wide}
		c.tickBox(words)
		rows = append(rows, block{c.marks, c.y + c.step()*0.4})
	}
	b.againOn = len(b.pages) + 1
	columns := paged(rows, area.H())
	for i := 0; i < len(columns); i += 2 {
		b.pages = append(b.pages, page{
			title: "Read again on arrival", sub: "before any cut, what matters most first: write down what the tape says now",
			list: func(area render.Rect) []render.Mark {
				marks := stack(columns[i], area.Min.X, area.Min.Y)
				if i+1 < len(columns) {
					marks = append(marks, stack(columns[i+1], area.Min.X+wide+againGap, area.Min.Y)...)
				}
				return marks
			},
		})
	}
}

// againGap is the air between the columns of that list.
const againGap render.Paper = 8

// unread lists what nobody read: lengths of walls, and the places of things.
func (b *binder) unread() []string {
	var keys []string
	for _, g := range b.s.Survey.Gaps {
		if strings.HasSuffix(g.Key, ".length") {
			keys = append(keys, g.Key)
		}
	}
	r, l := &b.s.Job.Room, &b.s.Survey.Layout
	add := func(table, key string, i int, at survey.Ref) {
		if math.IsNaN(b.s.Survey.Value(at)) {
			keys = append(keys, table+"."+keyOr(key, i)+".place")
		}
	}
	for i := range r.Doors {
		add("door", r.Doors[i].Key, i, l.Doors[i].At)
	}
	for i := range r.Windows {
		add("window", r.Windows[i].Key, i, l.Windows[i].At)
	}
	for i := range r.Outlets {
		add("outlet", r.Outlets[i].Key, i, l.Outlets[i].At)
	}
	for i := range r.Registers {
		add("register", r.Registers[i].Key, i, l.Registers[i].At)
	}
	for i := range r.Heaters {
		add("heater", r.Heaters[i].Key, i, l.Heaters[i].At)
	}
	return append(keys, b.unreadAbove()...)
}

// unreadAbove is unread for what hangs from the ceiling or stands in the room.
func (b *binder) unreadAbove() []string {
	var keys []string
	r, l := &b.s.Job.Room, &b.s.Survey.Layout
	add := func(table, key string, i int, spot survey.SpotRefs) {
		if math.IsNaN(b.s.Survey.Value(spot.At)) {
			keys = append(keys, table+"."+keyOr(key, i)+".place")
		}
	}
	for i := range r.Fans {
		add("fan", r.Fans[i].Key, i, l.Fans[i].SpotRefs)
	}
	for i := range r.Lights {
		add("light", r.Lights[i].Key, i, l.Lights[i].SpotRefs)
	}
	for i := range r.Alarms {
		add("alarm", r.Alarms[i].Key, i, l.Alarms[i].SpotRefs)
	}
	for i := range r.Pieces {
		add("furniture", r.Pieces[i].Key, i, l.Pieces[i].SpotRefs)
	}
	return keys
}
