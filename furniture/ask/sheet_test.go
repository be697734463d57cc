package ask

import (
	"encoding/json"
	"slices"
	"strconv"
	"strings"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"

	"github.com/google/go-cmp/cmp"
)

// TestWalkingOrder: written down by hand for the plain room. The shape first, walls from the first one round; on wall B to C the street window,
// 10 in from the left end B, comes before the yard window, counted from the right end C (119 less 8 less its width).
func TestWalkingOrder(t *testing.T) {
	s := sheetOf(t, load(t, plain), Options{})
	want := strings.Fields(`
		wall.AB.length wall.BC.length wall.CD.length wall.DA.length diagonal.AC.length diagonal.BD.length ceiling.main.height.A.height
		room.absent.alarm
		door.hall.at door.hall.far door.hall.wide
		window.street.at window.street.far window.street.wide window.street.sill window.street.head
		window.yard.at window.yard.far window.yard.wide window.yard.sill window.yard.head
		wall.CD.low wall.CD.high
		ceiling.main.height.C.height
		sleeper.Maren.seated`)
	if d := cmp.Diff(want, keysOf(s)); d != "" {
		t.Error(d)
	}
	var titles []string
	for _, g := range s.Groups {
		titles = append(titles, g.Title)
	}
	want = []string{"The shape of the room", "What there is in the room", "Wall A to B", "Wall B to C", "Wall C to D", "The ceiling and what hangs from it", "Who sleeps there"}
	if d := cmp.Diff(want, titles); d != "" {
		t.Error(d)
	}
	if !strings.Contains(s.Start, "its left end is corner A. Going on to the right, round the room, the corners are A, B, C, D.") {
		t.Errorf("start: %s", s.Start)
	}
}

// TestOnlyWhatTheBedNeeds: studs are asked for where a shelf hangs on them, and only on the wall the bed stands at.
func TestOnlyWhatTheBedNeeds(t *testing.T) {
	studs := func(text string) (n int) {
		for _, k := range keysOf(sheetOf(t, load(t, text), Options{All: true})) {
			if strings.Contains(k, ".stud.") {
				n++
				if !strings.HasPrefix(k, "wall.CD.") {
					t.Errorf("%s: the bed stands at wall CD", k)
				}
			}
		}
		return n
	}
	if got := studs(plain); got != 0 {
		t.Errorf("without a shelf: %d cards about studs", got)
	}
	if got := studs(plain + shelf); got != 4 { // two studs, each with its place and how it was found
		t.Errorf("with a shelf: %d cards about studs", got)
	}
}

// TestKnownWellEnough: what was read twice with a tape or by the maker is not asked again; what was told or assumed is.
func TestKnownWellEnough(t *testing.T) {
	for how, want := range map[string]bool{
		`"143-7/8 in"`:                                                 true,
		`["143-7/8 in", "144 in"]`:                                     false,
		`{ read = "143-7/8 in", how = "mine" }`:                        false,
		`{ read = "143-7/8 in", how = "twice" }`:                       false,
		`[{ read = "143-7/8 in", how = "told" }, "144 in"]`:            true,
		`[{ read = "12 ft", how = "assumed" }, "143-7/8 in", "12 ft"]`: false,
	} {
		j := load(t, strings.Replace(plain, `"143-7/8 in"`, how, 1))
		if got := slices.Contains(keysOf(sheetOf(t, j, Options{})), "wall.AB.length"); got != want {
			t.Errorf("%s: asked %v, want %v", how, got, want)
		}
	}
}

// TestNumbersStay: a number means the same card on every sheet of one version, and another version has another number.
func TestNumbersStay(t *testing.T) {
	j := load(t, plain)
	all, some := sheetOf(t, j, Options{All: true}), sheetOf(t, j, Options{})
	again := sheetOf(t, j, Options{Keys: []string{"window.yard.sill", "wall.AB.length", "wall.DA.baseboard_high"}})
	for _, s := range []Sheet{some, again} {
		if s.Version != all.Version || s.Job != all.Job {
			t.Errorf("sheet %s of job %s, want %s of %s", s.Version, s.Job, all.Version, all.Job)
		}
	}
	for _, c := range some.Cards() {
		if same, _ := all.Numbered(c.Number); same.Key != c.Key {
			t.Errorf("%d is %s and %s", c.Number, c.Key, same.Key)
		}
	}
	want := []string{"wall.AB.length", "window.yard.sill", "wall.DA.baseboard_high"} // as one walks; what no sheet asks for stands last
	if d := cmp.Diff(want, keysOf(again)); d != "" || !again.Again {
		t.Error(d)
	}
	if last := again.Cards()[2]; last.Number <= len(all.Cards()) {
		t.Errorf("%d is a number of the whole sheet", last.Number)
	}
	more, err := jobfile.Add(j, "window", "side")
	if err != nil {
		t.Fatal(err)
	}
	if sheetOf(t, more, Options{}).Version == all.Version {
		t.Error("one more window is another sheet")
	}
	if other := sheetOf(t, load(t, strings.Replace(plain, "Plain", "Other", 1)), Options{}); other.Job == all.Job || other.Version != all.Version {
		t.Errorf("another job: %s, sheet %s", other.Job, other.Version)
	}
}

// TestOnceMore: what MeasureAgain names is asked as readings: a plumb line low and high, a ceiling at every corner. Answers to them are merged
// into the job, where there was no plumb line and no such height.
func TestOnceMore(t *testing.T) {
	j := load(t, plain)
	s := sheetOf(t, j, Options{Keys: []string{"wall.BC.plumb", "ceiling.main.height", "diagonal.BD.length"}})
	want := strings.Fields("diagonal.BD.length ceiling.main.height.A.height ceiling.main.height.C.height wall.BC.plumb.1.low wall.BC.plumb.1.high ceiling.main.height.B.height ceiling.main.height.D.height")
	if d := cmp.Diff(want, keysOf(s)); d != "" {
		t.Error(d)
	}
	r := ReadReply(s.Text(Filled{Answers: map[string]Answered{"wall.BC.plumb.1.low": {Value: "2 in"}, "ceiling.main.height.D.height": {Value: "96"}}}), sheetOf(t, j, Options{All: true}), j)
	merged, err := Merge(j, r)
	if err != nil || len(r.Asks) > 0 {
		t.Fatal(err, r.Asks)
	}
	if low, high := jobfile.Shown(merged, "wall.BC.plumb.1.low"), jobfile.Shown(merged, "ceiling.main.height.D.height"); low != `2"` || high != `8' 0"` {
		t.Errorf("low %q, height %q", low, high)
	}
}

// TestNoFirstValue: whatever was read, the sheet is the same: nothing on it gives a reading away.
func TestNoFirstValue(t *testing.T) {
	text := func(s string) string {
		data, err := json.Marshal(sheetOf(t, load(t, s), Options{All: true}))
		if err != nil {
			t.Fatal(err)
		}
		return string(data)
	}
	changed := strings.NewReplacer("143-7/8", "141-1/8", "119-1/4", "117-3/4", "95-3/4", "93-1/4", `at = "5 in"`, `at = "7 in"`, `wide = "30 in"`, `wide = "28 in"`).Replace(plain)
	if text(plain) != text(changed) {
		t.Error("the sheet changes with what was read")
	}
}

// TestEveryCard: every card of every sample says what it has to, once, and can be answered.
func TestEveryCard(t *testing.T) {
	for _, name := range sampleNames(t) {
		j := sampleJob(t, name)
		s := sheetOf(t, j, Options{All: true})
		keys, numbers := map[string]bool{}, map[int]bool{}
		for _, c := range s.Cards() {
			if keys[c.Key] || numbers[c.Number] || c.Number < 1 {
				t.Errorf("%s: %d %s stands twice", name, c.Number, c.Key)
			}
			keys[c.Key], numbers[c.Number] = true, true
			if c.Title == "" || c.Ask == "" || c.Why == "" {
				t.Errorf("%s: %s: nothing said: %+v", name, c.Key, c)
			}
			if c.Kind == Length && (c.From == "" || c.To == "" || c.Hook == "") {
				t.Errorf("%s: %s: from where to where? %+v", name, c.Key, c)
			}
			if c.Kind == Word && len(c.Words) < 2 {
				t.Errorf("%s: %s: nothing to choose from", name, c.Key)
			}
			for _, words := range []string{c.Title, c.From, c.To, c.Hook, c.Other, c.Shown.From.Name, c.Shown.To.Name} {
				if strings.ContainsAny(words, "{}?") {
					t.Errorf("%s: %s: %q has a hole in it", name, c.Key, words)
				}
			}
			for _, m := range []Mark{c.Shown.From, c.Shown.To} {
				if m.At == AtCorner && !strings.Contains(j.Room.Outline, m.Name) {
					t.Errorf("%s: %s: there is no corner %q", name, c.Key, m.Name)
				}
			}
		}
	}
}

// TestCautionsStandWhereTheyBelong: ladder, fan and outlets (usual cautions, common practice, no source).
func TestCautionsStandWhereTheyBelong(t *testing.T) {
	s := sheetOf(t, sampleJob(t, "town-house.toml"), Options{All: true})
	for key, want := range map[string]string{
		"ceiling.main.height.A.height": "ladder", "fan.ceiling.blades": "Switch the fan off", "outlet.window wall.at": "out of the slots", "wall.AB.high": "ladder",
	} {
		if c, ok := s.Card(key); !ok || !strings.Contains(c.Caution, want) {
			t.Errorf("%s: %q, want %q in it", key, c.Caution, want)
		}
	}
}

// TestFilledInFully: a sheet whose every card is answered from both ends leaves nothing open, on every sample and on a job just begun.
func TestFilledInFully(t *testing.T) {
	jobs := map[string]*job.Job{}
	for _, name := range sampleNames(t) {
		jobs[name] = sampleJob(t, name)
	}
	begun := job.New(job.Start{Name: "New", Unit: 1, AB: 144 * 25_400_000, BC: 120 * 25_400_000})
	jobs["a job just begun"] = &begun
	for name, j := range jobs {
		for round := 0; ; round++ {
			s := sheetOf(t, j, Options{})
			if len(s.Groups) == 0 {
				break
			}
			if round == 3 { // the things that were counted, then what depends on how they open
				t.Errorf("%s: still open after three sheets: %v", name, keysOf(s))
				break
			}
			r := ReadReply(s.Text(filledIn(s)), sheetOf(t, j, Options{All: true}), j)
			if len(r.Asks)+len(r.Unread) > 0 || r.Cut || r.Older || r.Other {
				t.Fatalf("%s: %+v %+v", name, r.Asks, r.Unread)
			}
			next, err := Merge(j, r)
			if err != nil {
				t.Fatalf("%s: %v", name, err)
			}
			j = next
		}
	}
}

// filledIn answers every card with something that it can be.
func filledIn(s Sheet) Filled {
	f := Filled{By: "Lena", When: "2027-06-05", Answers: map[string]Answered{}}
	for i, c := range s.Cards() {
		a := Answered{Value: strconv.Itoa(100+i) + " in"}
		switch {
		case c.Kind == Count:
			a.Value = "1"
		case c.Kind == YesNo:
			a.Value = "yes"
		case c.Kind == Word:
			a.Value = c.Words[0].Value
		case c.Other != "":
			a.Turned = a.Value
		}
		f.Answers[c.Key] = a
	}
	return f
}
