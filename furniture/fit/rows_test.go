package fit

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/furniture/yardstick"
	"bunkwright/room"
	"bunkwright/room/length"
)

// askedLater are questions that rows already name and that are not asked yet.
var askedLater = map[string]string{
	"gets-in": "carrying comes with the steps of assembly", "stands-up": "standing up comes with the steps of assembly",
	"slats-hold": strengthLater, "side-rails-hold": strengthLater, "ledges-hold": strengthLater, "rungs-hold": strengthLater,
	"shelves-hold": strengthLater, "shelves-sag": strengthLater, "rail-push": strengthLater, "does-not-sway": strengthLater, "does-not-tip": strengthLater,
}

const (
	strengthLater = "strength comes later"
)

// unmeasured rows are used by no reading, for the reason that stands beside them.
var unmeasured = map[string]string{
	"dresser-anchor":   "drawers under a bed are no loose dresser, and other furniture is not weighed",
	"own-agree":        "belongs to no question: the survey tells by it whether two readings agree",
	"own-mattress-gap": "a source line of own-mattress-gap-need, which judges in its stead",
}

// TestEveryRowIsUsed walks every row of rules.csv and practice.csv: each is used by every question it names, or one of the tables above
// says why not. No reason outlives its need.
func TestEveryRowIsUsed(t *testing.T) {
	used := rowsUsed(t)
	source := sourceText(t)
	for _, r := range yardstick.All() {
		why, is := unmeasured[r.ID], isUsed(r, used, source)
		switch {
		case is && why != "":
			t.Errorf("%s of %v is used by now: take it from the table", r.ID, r.Questions)
		case !is && why == "":
			t.Errorf("%s is not used by each of %v", r.ID, r.Questions)
		}
	}
	for id := range unmeasured {
		if _, ok := yardstick.Find(id); !ok {
			t.Errorf("there is no row %s", id)
		}
	}
	for id := range askedLater {
		if _, asked := Find(id); asked {
			t.Errorf("%s is asked by now: take it from the table", id)
		}
	}
}

// isUsed tells whether a row is used wherever it belongs. What belongs to later questions counts as used.
func isUsed(r yardstick.Row, used map[string]map[string]bool, source string) bool {
	switch r.Role {
	case yardstick.RoleParameter:
		return strings.Contains(source, `"`+r.ID+`"`) || allLater(r.Questions)
	case yardstick.RoleScope:
		return used["scope"][r.ID] || strings.Contains(source, `row("`+r.ID+`")`) || allLater(r.Questions)
	}
	for _, q := range r.Questions {
		if askedLater[q] == "" && !used[q][r.ID] {
			return false
		}
	}
	return true
}

func allLater(questions []string) bool {
	return len(questions) > 0 && !slices.ContainsFunc(questions, func(q string) bool { return askedLater[q] == "" })
}

// rowsUsed collects which rows each question holds a reading against in any of the scenes, and under "scope" the rows that were asked
// whether they apply. A row at a question that it does not name is a slip.
func rowsUsed(t *testing.T) map[string]map[string]bool {
	used := map[string]map[string]bool{"scope": {}}
	for _, s := range rowScenes(t) {
		for _, q := range All() {
			if used[q.ID] == nil {
				used[q.ID] = map[string]bool{}
			}
			for _, r := range q.Measure(s).Readings {
				for _, id := range r.Rows {
					row, _, _ := s.row(id)
					if !slices.Contains(row.Questions, q.ID) {
						t.Errorf("%s holds %s against %s, which belongs to %v", q.ID, r.At, id, row.Questions)
					}
					used[q.ID][id] = true
					for _, w := range row.When {
						used["scope"][w] = true
					}
				}
				for _, sc := range r.Scope {
					used["scope"][sc.Row] = true
				}
			}
		}
	}
	return used
}

// sourceText is the code of the package without its tests, with the names of planning figures written out as ids.
func sourceText(t *testing.T) string {
	t.Helper()
	var text strings.Builder
	files, err := filepath.Glob("*.go")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range files {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		text.Write(data)
	}
	names, err := os.ReadFile("../yardstick/figure.go")
	if err != nil {
		t.Fatal(err)
	}
	code := text.String()
	for _, m := range regexp.MustCompile(`(\w+)\s*= "(own-[\w-]+)"`).FindAllStringSubmatch(string(names), -1) {
		code = regexp.MustCompile(`yardstick\.`+m[1]+`\b`).ReplaceAllString(code, `"`+m[2]+`"`)
	}
	return code
}

// rowScenes are beds of every kind in a bare room, and one in a room with a thing of every kind.
func rowScenes(t *testing.T) []*Scene {
	var out []*Scene
	for _, edit := range []func(*job.Job){
		func(j *job.Job) { j.Bed.Ladder = &bunk.Ladder{} },
		func(j *job.Job) { j.Bed.Climb = &bunk.Climb{} },
		func(j *job.Job) { j.Bed.Climb = &bunk.Climb{Holds: true} },
		furnished,
		furnishedOtherwise,
	} {
		out = append(out, stage(t, bedroom(4500, 4000, sleepers, allOver, edit)))
	}
	return out
}

// allOver measures against every place: what means nothing anywhere need not be measured.
func allOver(j *job.Job) {
	j.Places = nil
	for _, p := range yardstick.Places() {
		j.Places = append(j.Places, string(p))
	}
}

func sleepers(j *job.Job) {
	j.Sleepers = []job.Sleeper{{Name: "Ida", Age: 10, Bed: "upper"}, {Name: "Bo", Age: 4, Bed: "lower"}}
}

// furnished puts a thing of every kind into the room, and every add-on on the bed.
func furnished(j *job.Job) {
	j.Room.Absent = nil
	spot := func(wall, from string, at, out float64) room.Spot {
		return room.Spot{Wall: wall, From: from, At: read(at), Out: read(out)}
	}
	on := func(wall, from string, at float64) room.OnWall {
		return room.OnWall{Wall: wall, From: from, At: read(at)}
	}
	r := &j.Room
	r.Windows = []room.Window{{Key: "east", OnWall: on("BC", "C", 200), Wide: read(900), Sill: read(600), Head: read(1800), Kind: "slides up",
		ClearWide: read(800), ClearHigh: read(550), Opens: read(550), Drop: read(3000), Cord: read(700), Guard: "no"}}
	r.Outlets = []room.Outlet{
		{Key: "1", Kind: "outlet", Wall: "CD", From: "C", At: read(500), Height: read(300), InUse: "yes"},
		{Key: "2", Kind: "switch", Wall: "AB", From: "B", At: read(950), Height: read(1100), InUse: "yes"},
		{Key: "3", Kind: "thermostat", Wall: "DA", From: "A", At: read(700), Height: read(1500)},
	}
	r.Registers = []room.Register{{Key: "1", Kind: "supply", In: "floor", Spot: spot("CD", "D", 300, 1200), Wide: read(250), Deep: read(100)}}
	for i, kind := range []string{"electric baseboard", "wall heater with fan", "portable", "radiator", "stove"} {
		r.Heaters = append(r.Heaters, room.Heater{Key: kind, Kind: kind, Spot: spot("DA", "A", 400+600*float64(i), 0), Wide: read(400), Deep: read(80), High: read(200)})
	}
	r.Fans = []room.Fan{{Key: "main", Spot: spot("AB", "A", 2200, 2000), Sweep: read(1000), Blades: read(2200)}}
	r.Lights = []room.Light{{Key: "main", Kind: "surface", Spot: spot("AB", "A", 3800, 700), Wide: read(300), Lowest: read(2300)}}
	r.Alarms = []room.Alarm{{Key: "1", In: "wall", Spot: spot("AB", "B", 300, 0), Below: read(200)}, {Key: "2", In: "ceiling", Spot: spot("AB", "A", 3000, 1000)}}
	r.Beams = []room.Beam{{Key: "1", Along: "AB", Out: read(300), Wide: read(100), Under: read(2300)}}
	r.Pieces = []room.Piece{{Key: "desk", Spot: spot("AB", "A", 300, 0), Wide: read(900), Deep: read(500), High: read(750), Climb: "yes"}}
	r.Hatches = []room.Hatch{{Key: "loft", Spot: spot("AB", "A", 1000, 1000), Wide: read(600), Deep: read(600)}}
	for i := range r.Walls {
		r.Walls[i].BuildUp, r.Walls[i].StudWide = read(12), read(38)
		r.Walls[i].Studs = []room.Stud{{Key: "1", At: read(800), Found: "twice"}, {Key: "2", At: read(1200), Found: "twice"}, {Key: "3", At: read(1600), Found: "twice"}}
	}
	j.Bed.Ladder = &bunk.Ladder{}
	j.Bed.Drawers = &bunk.Drawers{}
	j.Bed.Books = &bunk.BookLedge{}
	j.Bed.Shelves = []bunk.Shelf{{For: "upper", Height: 2000 * length.Millimetre, Long: 900 * length.Millimetre}, {For: "lower", Height: 1000 * length.Millimetre, Long: 900 * length.Millimetre}}
}

// furnishedOtherwise is furnished with a heater under the bed and one before its end, and a light in the ceiling.
func furnishedOtherwise(j *job.Job) {
	furnished(j)
	heater := func(key, wall, from string, at float64) room.Heater {
		return room.Heater{Key: key, Kind: "electric baseboard", Spot: room.Spot{Wall: wall, From: from, At: read(at), Out: read(0)}, Wide: read(800), Deep: read(60), High: read(180)}
	}
	j.Room.Heaters = []room.Heater{heater("under", "CD", "C", 600), heater("end", "BC", "C", 200)}
	j.Place.Along = mm(900)
	j.Room.Lights[0].Kind = "recessed"
}
