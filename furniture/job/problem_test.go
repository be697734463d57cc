package job_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room/length"
)

// oblong is a room of 4000 by 3000 mm, 2400 high, in which nothing is wrong.
const oblong = `format = 1
unit = "mm"
[room]
outline = "ABCD"
[[wall]]
key = "AB"
length = "4000 mm"
[[wall]]
key = "BC"
length = "3000 mm"
[[wall]]
key = "CD"
length = "4000 mm"
[[wall]]
key = "DA"
length = "3000 mm"
[[ceiling]]
[[ceiling.height]]
corner = "A"
height = "2400 mm"
`

// problems loads the oblong with something put in or changed and lists its problems, each with its line.
func problems(t *testing.T, text string) (*jobfile.File, []job.Problem) {
	t.Helper()
	f, err := jobfile.Load([]byte(text), "job.toml")
	if err != nil {
		t.Fatal(err)
	}
	s, err := f.Job.Survey()
	if err != nil {
		t.Fatal(err)
	}
	return f, job.Problems(&f.Job, s)
}

// TestProblems puts one thing that cannot be into the oblong: exactly this is listed, with its key and the numbers worked out by hand.
func TestProblems(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"nothing wrong", "", ""},
		{"door wider than its wall", "[[door]]\nwall = \"BC\"\nat = \"0 mm\"\nwide = \"3100 mm\"",
			"door.1.wide: 3100 mm wide in wall BC, which is 3000 mm long"},
		{"door past the end", "[[door]]\nkey = \"hall\"\nwall = \"BC\"\nat = \"2500 mm\"\nwide = \"800 mm\"",
			"door.hall.at: it ends 3300 mm from the end of wall BC, which is 3000 mm long"},
		{"door at the end", "[[door]]\nwall = \"BC\"\nat = \"2200 mm\"\nwide = \"800 mm\"", ""},
		{"door higher than the room", "[[door]]\nhigh = \"2500 mm\"",
			"door.1.high: the head of the door at 2500 mm, and the highest ceiling is at 2400 mm"},
		// From A the door takes 500 to 1300; from B the window takes 4000 - 2800 - 600 = 600 to 1200.
		{"window in the door", "[[door]]\nwall = \"AB\"\nat = \"500 mm\"\nwide = \"800 mm\"\n[[window]]\nwall = \"AB\"\nfrom = \"B\"\nat = \"2800 mm\"\nwide = \"600 mm\"\nsill = \"900 mm\"\nhead = \"2000 mm\"",
			"window.1: it and door.1 take up the same piece of wall"},
		{"window over the door", "[[door]]\nwall = \"AB\"\nat = \"500 mm\"\nwide = \"800 mm\"\nhigh = \"2000 mm\"\n[[window]]\nwall = \"AB\"\nat = \"500 mm\"\nwide = \"800 mm\"\nsill = \"2050 mm\"\nhead = \"2300 mm\"", ""},
		{"window upside down", "[[window]]\nsill = \"1200 mm\"\nhead = \"900 mm\"", "window.1.head: the head is at 900 mm, and the sill at 1200 mm"},
		{"clear wider than the window", "[[window]]\nwide = \"600 mm\"\nclear_wide = \"700 mm\"", "window.1.clear_wide: 700 mm clear in a window 600 mm wide"},
		{"clear higher than the window", "[[window]]\nsill = \"900 mm\"\nhead = \"1500 mm\"\nclear_high = \"700 mm\"",
			"window.1.clear_high: 700 mm clear, and it is 600 mm from sill to head"},
		{"clear past the edge", "[[window]]\nwide = \"600 mm\"\nclear_wide = \"400 mm\"\nclear_in = \"300 mm\"",
			"window.1.clear_in: the clear opening ends 700 mm from the window's edge, and the window is 600 mm wide"},
		{"outlet past the wall", "[[outlet]]\nwall = \"DA\"\nat = \"3200 mm\"", "outlet.1.at: 3200 mm along wall DA, which is 3000 mm long"},
		{"outlet over the ceiling", "[[outlet]]\nheight = \"3 m\"", "outlet.1.height: its centre at 3000 mm, and the highest ceiling is at 2400 mm"},
		{"dresser through the wall", "[[furniture]]\nkey = \"dresser\"\nwall = \"AB\"\nat = \"3500 mm\"\nout = \"0 mm\"\nwide = \"900 mm\"\ndeep = \"500 mm\"",
			"furniture.dresser: it reaches 400 mm outside the room"},
		{"register in the wall", "[[register]]\nin = \"wall\"\nwall = \"AB\"\nat = \"500 mm\"\nwide = \"300 mm\"\ndeep = \"3100 mm\"", ""},
		{"register across the room", "[[register]]\nin = \"floor\"\nwall = \"AB\"\nat = \"500 mm\"\nout = \"0 mm\"\nwide = \"300 mm\"\ndeep = \"3100 mm\"",
			"register.1: it reaches 100 mm outside the room"},
		{"heater in the ceiling", "[[heater]]\nhigh = \"2600 mm\"", "heater.1.high: its top at 2600 mm, and the highest ceiling is at 2400 mm"},
		{"fan over the ceiling", "[[fan]]\nblades = \"2500 mm\"", "fan.1.blades: the blades at 2500 mm, and the highest ceiling is at 2400 mm"},
		// its centre is 1400 from wall AB and 1600 from CD: more than 2800 across meets AB
		{"fan as large as it can be", "[[fan]]\nwall = \"AB\"\nat = \"2000 mm\"\nout = \"1400 mm\"\nsweep = \"2800 mm\"", ""},
		{"fan larger than the room", "[[fan]]\nwall = \"AB\"\nat = \"2000 mm\"\nout = \"1400 mm\"\nsweep = \"12800 mm\"",
			"fan.1.sweep: 12800 mm across, and its centre is 1400 mm from the nearest wall"},
		{"fan somewhere", "[[fan]]\nsweep = \"12800 mm\"", "fan.1.sweep: 12800 mm across, and the room is 4000 mm by 3000 mm"},
		{"fan somewhere, as large as the room", "[[fan]]\nsweep = \"3000 mm\"", ""},
		{"lamp larger than its corner", "[[light]]\nwall = \"AB\"\nat = \"300 mm\"\nout = \"1400 mm\"\nwide = \"700 mm\"",
			"light.1.wide: 700 mm across, and its centre is 300 mm from the nearest wall"},
		{"window up further than it is high", "[[window]]\nkind = \"slides up\"\nsill = \"900 mm\"\nhead = \"1500 mm\"\nwide = \"900 mm\"\nopens = \"620 mm\"",
			"window.1.opens: it opens 620 mm, and by its kind and size it can open 600 mm at most"},
		{"window sideways as far as it is wide", "[[window]]\nkind = \"slides sideways\"\nsill = \"900 mm\"\nhead = \"1500 mm\"\nwide = \"900 mm\"\nopens = \"900 mm\"", ""},
		{"window round on its hinges", "[[window]]\nkind = \"hinged at the top\"\nsill = \"900 mm\"\nhead = \"1500 mm\"\nwide = \"900 mm\"\nopens = \"1300 mm\"",
			"window.1.opens: it opens 1300 mm, and by its kind and size it can open 1200 mm at most"},
		{"window of no kind", "[[window]]\nsill = \"900 mm\"\nhead = \"1500 mm\"\nwide = \"900 mm\"\nopens = \"7 m\"",
			"window.1.opens: it opens 7000 mm, and by its kind and size it can open 1800 mm at most"},
		{"window of no size", "[[window]]\nopens = \"7 m\"", ""},
		{"window that does not open", "[[window]]\nkind = \"fixed\"\nopens = \"100 mm\"",
			"window.1.opens: it opens 100 mm, and by its kind and size it can open 0 mm at most"},
		{"fan outside", "[[fan]]\nwall = \"AB\"\nat = \"2000 mm\"\nout = \"3500 mm\"", "fan.1: it reaches 500 mm outside the room"},
		{"light over the ceiling", "[[light]]\nlowest = \"2500 mm\"", "light.1.lowest: its lowest point at 2500 mm, and the highest ceiling is at 2400 mm"},
		{"alarm outside", "[[alarm]]\nwall = \"BC\"\nfrom = \"C\"\nat = \"100 mm\"\nout = \"4200 mm\"", "alarm.1: it reaches 200 mm outside the room"},
		{"hatch outside", "[[hatch]]\nwall = \"BC\"\nat = \"2900 mm\"\nout = \"100 mm\"\nwide = \"600 mm\"\ndeep = \"600 mm\"", "hatch.1: it reaches 500 mm outside the room"},
		{"beam over the ceiling", "[[beam]]\nunder = \"2450 mm\"", "beam.1.under: the underside of the beam at 2450 mm, and the highest ceiling is at 2400 mm"},
		{"sink deeper than the carpet", "[floor]\ncover = \"carpet\"\nthick = \"10 mm\"\nsink = \"15 mm\"", "floor.sink: posts sink 15 mm into a carpet 10 mm thick"},
		{"sink into a hard floor", "[floor]\ncover = \"hard\"\nsink = \"5 mm\"", "floor.sink: a hard floor, and posts that sink into it"},
		{"rise and fall", "[floor]\nrise = \"5 mm\"\nfall = \"5 mm\"", "floor.fall: the floor both rises and falls"},
		{"bed past the wall", "[place]\nwall = \"BC\"\nalong = \"3500 mm\"", "place.along: the bed begins 3500 mm along wall BC, which is 3000 mm long"},
	} {
		t.Run(c.name, func(t *testing.T) { expect(t, oblong+c.text+"\n", c.want) })
	}
}

// expect compares what is listed, without what would be right, which must be there too.
func expect(t *testing.T, text, want string) {
	t.Helper()
	f, found := problems(t, text)
	var got []string
	for _, p := range found {
		got = append(got, p.Key+": "+p.Text)
		if p.Right == "" || f.Line(p.Key) == 0 {
			t.Errorf("%s: without a line, or without what would be right", p)
		}
	}
	if have := strings.Join(got, "\n"); have != want {
		t.Errorf("got:\n%s\nwant:\n%s", have, want)
	}
}

// TestProblemsOfAWall puts studs into the first wall, which is 4000 mm long.
func TestProblemsOfAWall(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"stud outside", "[[wall.stud]]\nfrom = \"B\"\nat = \"4100 mm\"", "wall.AB.stud.1.at: a stud at 4100 mm, and the wall is 4000 mm long"},
		{"two studs in one", "[[wall.stud]]\nat = \"1000 mm\"\n[[wall.stud]]\nkey = \"two\"\nfrom = \"B\"\nat = \"2980 mm\"",
			"wall.AB.stud.two.at: its centre is 20 mm from that of another stud"},
		{"two studs apart", "[[wall.stud]]\nat = \"1000 mm\"\n[[wall.stud]]\nfrom = \"B\"\nat = \"2600 mm\"", ""},
		{"spacing too small", "stud_spacing = \"90 mm\"\n[[wall.stud]]\nat = \"1000 mm\"", "wall.AB.stud_spacing: studs 90 mm apart"},
		{"nothing to count from", "stud_spacing = \"400 mm\"\n[[wall.stud]]\nat = \"1000 mm\"\nfound = \"assumed\"", "wall.AB.stud_spacing: no found stud to count it off from"},
		{"a good spacing", "stud_spacing = \"400 mm\"\n[[wall.stud]]\nat = \"1000 mm\"", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			expect(t, strings.Replace(oblong, "length = \"4000 mm\"\n", "length = \"4000 mm\"\n"+c.text+"\n", 1), c.want)
		})
	}
}

// TestWallAFootTooShort shortens one wall of four by a foot: it and the one opposite, which would have to be a foot shorter to agree,
// are named; with both diagonals (5000 mm by Pythagoras) there is one check, which never tells which of the six it is (room_cases.csv
// roo-015), and the one that would leave the corners square comes first; with the wall read again, right this time, the short reading alone.
func TestWallAFootTooShort(t *testing.T) {
	short := strings.Replace(oblong, "4000 mm", "3695 mm", 1)
	_, found := problems(t, short)
	if keys(found) != "wall.AB.length wall.CD.length" {
		t.Errorf("four walls: %v", found)
	}
	_, found = problems(t, short+"[[diagonal]]\nkey = \"AC\"\nlength = \"5000 mm\"\n[[diagonal]]\nkey = \"BD\"\nlength = \"5000 mm\"\n")
	if !strings.HasPrefix(keys(found), "wall.AB.length ") || len(found) != 6 || !strings.Contains(found[0].Text, "one of 6 readings is off, this one by") {
		t.Errorf("with diagonals: %v", found)
	}
	again := strings.Replace(oblong, "\"4000 mm\"", "[\"3695 mm\", \"4000 mm\"]", 1)
	_, found = problems(t, again+"[[diagonal]]\nkey = \"AC\"\nlength = \"5000 mm\"\n[[diagonal]]\nkey = \"BD\"\nlength = \"5000 mm\"\n")
	if keys(found) != "wall.AB.length" || !strings.Contains(found[0].Text, "305 mm shorter than the other readings say") {
		t.Errorf("read again: %v", found)
	}
}

func keys(ps []job.Problem) string {
	var out []string
	for _, p := range ps {
		out = append(out, p.Key)
	}
	return strings.Join(out, " ")
}

// TestAbsentAndDescribed says of each thing that the room has none, and describes one.
func TestAbsentAndDescribed(t *testing.T) {
	for thing, table := range map[string]string{
		"window": "[[window]]", "fan": "[[fan]]", "light": "[[light]]", "heater": "[[heater]]", "register": "[[register]]", "alarm": "[[alarm]]",
		"hatch": "[[hatch]]", "furniture": "[[furniture]]", "beam": "[[beam]]", "outlet": "[[outlet]]", "switch": "[[outlet]]\nkind = \"switch\"",
		"thermostat": "[[outlet]]\nkind = \"thermostat\"", "cord": "[[window]]\ncord = \"300 mm\"", "closet": "[[door]]\nleads_to = \"closet\"",
	} {
		text := strings.Replace(oblong, "outline = \"ABCD\"", "outline = \"ABCD\"\nabsent = [\""+thing+"\"]", 1)
		if _, found := problems(t, text+table+"\n"); keys(found) != "room.absent" {
			t.Errorf("%s: %v", thing, found)
		}
		if _, found := problems(t, text); len(found) > 0 {
			t.Errorf("%s absent, none described: %v", thing, found)
		}
	}
}

// TestHalfMeasured lists nothing where the readings do not tell: what is not known is no problem.
func TestHalfMeasured(t *testing.T) {
	const text = "format = 1\nunit = \"in\"\n[room]\noutline = \"ABCD\"\n[[wall]]\nkey = \"AB\"\n[[wall.stud]]\nat = \"90 ft\"\n[[door]]\nwall = \"CD\"\nwide = \"30 in\"\n" +
		"[[window]]\nwall = \"CD\"\nsill = \"30 in\"\n[[furniture]]\nwall = \"AB\"\nat = \"10 ft\"\n"
	if _, found := problems(t, text); len(found) > 0 {
		t.Errorf("%v", found)
	}
}

// TestSizeProblems words what cannot be built: 3000 mm is 118.11 in, 9 ft 10-1/8 in to the sixteenth.
func TestSizeProblems(t *testing.T) {
	err := bunk.SizesError{
		{Key: "bed.upper.height", Reason: "lower than the lower bed", Nearest: 40 * length.Inch, Has: true}, {Key: "bed.post", Reason: "not known"},
		{Key: "bed.upper.mattress_wide", Reason: "not chosen", Unset: true},
		{Key: "bed.lower.mattress_long", Reason: "too long", Nearest: 3000 * length.Millimetre, Has: true},
	}
	for unit, want := range map[string]string{
		"in": "bed.upper.height: lower than the lower bed; nearest that can be built: 40 in|bed.post: not known; another size|" +
			"bed.upper.mattress_wide: not chosen; choose the size to build for: mattress_wide = \"...\" under [bed.upper]|" +
			"bed.lower.mattress_long: too long; nearest that can be built: about 9' 10-1/8\", exactly 3000 mm",
		"mm": "bed.upper.height: lower than the lower bed; nearest that can be built: 1016 mm|bed.post: not known; another size|" +
			"bed.upper.mattress_wide: not chosen; choose the size to build for: mattress_wide = \"...\" under [bed.upper]|" +
			"bed.lower.mattress_long: too long; nearest that can be built: 3000 mm",
	} {
		var got []string
		for _, p := range job.SizeProblems(&job.Job{Unit: unit}, err) {
			got = append(got, p.String())
		}
		if strings.Join(got, "|") != want || job.SizeProblems(&job.Job{}, nil) != nil {
			t.Errorf("got %v", got)
		}
	}
}

// TestNoBed loads a job without a bed: what was not chosen is said with a line of the file and the line to write.
func TestNoBed(t *testing.T) {
	f, err := jobfile.Load([]byte(oblong), "job.toml")
	if err != nil {
		t.Fatal(err)
	}
	_, err = bunk.Build(f.Job.Bed)
	found := job.SizeProblems(&f.Job, err)
	if len(found) == 0 || found[0].String() != "bed.upper.height: not chosen; choose the size to build for: height = \"...\" under [bed.upper]" || f.Line(found[0].Key) != 1 {
		t.Errorf("got %v", found)
	}
}

// TestDiagonalOfNoRoom reads diagonal AC of the oblong as what no room with its walls can have: its walls, 4000 + 3000 mm, let it be at
// most 7000 and make it at least 1000. It is listed and left out; the room keeps its 4000 by 3000. A wall that does not go with the
// others is named instead, with the diagonals as witnesses.
func TestDiagonalOfNoRoom(t *testing.T) {
	const ac, bd = "[[diagonal]]\nkey = \"AC\"\nlength = \"%s\"\n", "[[diagonal]]\nkey = \"BD\"\nlength = \"5000 mm\"\n"
	for _, c := range []struct{ length, want string }{
		{"9140 mm", "diagonal.AC.length: read as 9140 mm, and the walls A to B to C let it be at most 7000 mm"},
		{"70 m", "diagonal.AC.length: read as 70000 mm, and the walls A to B to C let it be at most 7000 mm"},
		{"900 mm", "diagonal.AC.length: read as 900 mm, and the walls A to B to C make it at least 1000 mm"},
		{"5000 mm", ""},
	} {
		for _, more := range []string{"", bd} {
			text := oblong + fmt.Sprintf(ac, c.length) + more
			expect(t, text, c.want)
			f, _ := problems(t, text)
			s, err := f.Job.Survey()
			if err != nil || !s.Outline || math.Abs(s.Value(s.Find("corner.C.x"))-4000) > 0.1 || math.Abs(s.Value(s.Find("corner.C.y"))+3000) > 0.1 {
				t.Errorf("diagonal %s: outline %v, %v", c.length, s.Outline, err)
			}
			if got := strings.Contains(fmt.Sprint(s.Gaps), "diagonal A to C cannot be as read: corners taken as square"); got != (c.want != "" && more == "") {
				t.Errorf("diagonal %s: gaps %v", c.length, s.Gaps)
			}
		}
	}
	long := strings.Replace(oblong, "4000 mm", "9 m", 1) + fmt.Sprintf(ac, "5000 mm") + bd
	if _, found := problems(t, long); len(found) == 0 || found[0].Key != "wall.AB.length" || strings.Contains(keys(found), "diagonal") {
		t.Errorf("wall of 9 m: %v", found)
	}
}
