package ask

import (
	"errors"
	"strings"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"

	"github.com/google/go-cmp/cmp"
)

// read reads a reply to the plain room; {head} in it is the head of the sheet.
func read(t testing.TB, j *job.Job, text string) Reply {
	t.Helper()
	s := sheetOf(t, j, Options{All: true})
	return ReadReply(strings.ReplaceAll(text, "{head}", s.Head()), s, j)
}

// got lists what came in: "wall.AB.length = 143-7/8 in", with "turned" behind what was read from the other end.
func got(r Reply) []string {
	var out []string
	for _, g := range r.Got {
		text := g.Word
		if g.Kind == Length {
			text = g.Value.String()
		}
		text = g.Key + " = " + text
		if g.Turned {
			text += " turned"
		}
		out = append(out, text)
	}
	return out
}

// TestReadReply: values in mm by hand: 1 in is 25.4 mm. Keys are those of the plain room.
func TestReadReply(t *testing.T) {
	for name, c := range map[string]struct {
		text string
		got  []string
		asks []string // parts of the question and its reason
		kept []string // lines that are no answer
	}{
		"as a form writes it": {
			text: "{head}: Plain\nBy: Lena\nOn: 2027-06-05\n\n1 wall.AB.length: 12' | 143 7/8\"\n2 wall.BC.length: | 9 ft 11 1/4\nEnd: 2 answers\n",
			got:  []string{"wall.AB.length = 3657.6 mm", "wall.AB.length = 3654.425 mm turned", "wall.BC.length = 3028.95 mm turned"},
		},
		"numbers alone, typed by thumb": {
			text: "{head}\n1: 12'\n2)119 1/4\n#3: 143\ncard 4: 10'\n",
			got:  []string{"wall.AB.length = 3657.6 mm", "wall.BC.length = 3028.95 mm", "wall.CD.length = 3632.2 mm", "wall.DA.length = 3048 mm"},
		},
		"quoted in a mail": {
			text: "On Friday somebody wrote:\n> > {head}\r\n> > 1: 12'\r\n>2: 119 1/4 \r\n",
			got:  []string{"wall.AB.length = 3657.6 mm", "wall.BC.length = 3028.95 mm"}, kept: []string{"On Friday somebody wrote:"},
		},
		"a phone's quotes, and a little picture": {
			text: "{head}\n1: 11’ 11 7/8” 👍🏽\n2: 119¼\n", got: []string{"wall.AB.length = 3654.425 mm", "wall.BC.length = 3028.95 mm"},
		},
		"commas for decimals, centimetres for an inch job": {
			text: "{head}\n1: 365,4 cm\n2: 3,03 m\n", got: []string{"wall.AB.length = 3654 mm", "wall.BC.length = 3030 mm"},
		},
		"all in centimetres": {
			text: "{head}\nUnit: cm\n1: 365,4\n2: 303\n3: 12'\n", got: []string{"wall.AB.length = 3654 mm", "wall.BC.length = 3030 mm", "wall.CD.length = 3657.6 mm"},
		},
		"all in millimetres": {text: "{head}\nUnit: mm\n1: 3654\n", got: []string{"wall.AB.length = 3654 mm"}},
		"a comma that can be two things": {
			text: "{head}\n1: 143,875\n", asks: []string{"143,875: Corner A to corner B, 4 ft up: "},
		},
		"feet and inches without marks": {
			text: "{head}\n1 wall.AB.length: 11 11 7/8\nEnd", asks: []string{"11 11 7/8: Corner A to corner B, 4 ft up: 11' 11-7/8\"?"},
		},
		"an estimate": {text: "{head}\n1: about 12'\n", asks: []string{"about 12'"}},
		"a foot mark for an inch mark": { // the job has 143-7/8 in: 12 in is a twelfth of about that
			text: "{head}\n1: 12\"\n", asks: []string{"12\": Corner A to corner B, 4 ft up: "},
		},
		"nothing, and not now":          {text: "{head}\n1:\n2: -\n3: n/a\n4: |\n5: not now\n"},
		"zero where there is something": {text: "{head}\n4: 0\n", asks: []string{"0: "}},
		"too long for any house":        {text: "{head}\n6 diagonal.BD.length: 200 m\nEnd", asks: []string{"200 m: "}},
		"words": {
			text: "{head}\nroom.absent.alarm: Yes!\ndoor.hall.swing: out of it\ndoor.hall.kind: teleports\nEnd",
			got:  []string{"room.absent.alarm = yes", "door.hall.swing = out"}, asks: []string{"teleports: How does it open?"},
		},
		"no such number":                 {text: "{head}\n99: 12'\n", asks: []string{"99: 12': which card is it?"}},
		"no such key":                    {text: "{head}\n1 wall.XY.length: 12'\nEnd", asks: []string{"1 wall.XY.length: 12': what is “wall.XY.length”?"}},
		"number and key of two cards":    {text: "{head}\n1 wall.BC.length: 12'\nEnd", asks: []string{"1 wall.BC.length: 12': is it “Corner B to corner C, 4 ft up” or "}},
		"numbers without the sheet":      {text: "1: 12'\n2: 119 1/4\n", asks: []string{"1: 12': is it “Corner A to corner B, 4 ft up”?", "2: 119 1/4: is it "}},
		"an older sheet, with its keys":  {text: "Reply to sheet 0001 of job " + "JOB" + "\n9 wall.AB.length: 12'\n7: 3'\nEnd: 2", got: []string{"wall.AB.length = 3657.6 mm"}, asks: []string{"7: 3': is it "}},
		"garbled lines":                  {text: "{head}\n1: 12'\n%%%\n=cmd|' /C calc'!A0\n<script>alert(1)</script>\n\x00\x01\x02lorem\n", got: []string{"wall.AB.length = 3657.6 mm"}, kept: []string{"%%%", "=cmd|' /C calc'!A0", "<script>alert(1)</script>", "lorem"}},
		"one blank only":                 {text: "{head}\nroom.absent.alarm: yes | no\nEnd", got: []string{"room.absent.alarm = yes"}, asks: []string{"no: what does it say?"}},
		"cut off in the middle of a key": {text: "{head}\n1 wall.AB.length: 12'\n2 wall.BC.len", got: nil, asks: []string{"1 wall.AB.length: 12': is this line whole?"}, kept: []string{"2 wall.BC.len"}},
		"cut off in a number":            {text: "{head}\n1 wall.AB.length: 12'\n2 wall.BC.length: 119 1", got: []string{"wall.AB.length = 3657.6 mm"}, asks: []string{"2 wall.BC.length: 119 1: is this line whole?"}},
	} {
		t.Run(name, func(t *testing.T) {
			j := load(t, plain)
			r := read(t, j, strings.ReplaceAll(c.text, "JOB", jobNumber(j)))
			if d := cmp.Diff(c.got, got(r)); d != "" {
				t.Error(d)
			}
			if len(r.Asks) != len(c.asks) {
				t.Errorf("asks %+v, want %q", r.Asks, c.asks)
			}
			for i := range min(len(r.Asks), len(c.asks)) {
				if text := r.Asks[i].Text + ": " + r.Asks[i].Ask; !strings.HasPrefix(text, c.asks[i]) {
					t.Errorf("asks %q, want %q", text, c.asks[i])
				}
			}
			var kept []string
			for _, l := range r.Unread {
				kept = append(kept, l.Text)
			}
			if d := cmp.Diff(c.kept, kept); d != "" {
				t.Error(d)
			}
			if _, err := Merge(j, r); err != nil {
				t.Error(err)
			}
		})
	}
}

// TestTypedByHand: a message that names no card is read as far as it can be; the rest is asked.
func TestTypedByHand(t *testing.T) {
	for text, want := range map[string]string{
		`A to B 11' 11 7/8"`:        "wall.AB.length = 3654.425 mm",
		`B to C is 119 1/4 in.`:     "wall.BC.length = 3028.95 mm",
		`BC 119 1/4`:                "wall.BC.length = 3028.95 mm",
		`C to B 119 1/4`:            "wall.BC.length = 3028.95 mm turned",
		`across from A to C 15' 7"`: "diagonal.AC.length = 4749.8 mm",
		`ceiling at C 7' 11"`:       "ceiling.main.height.C.height = 2413 mm",
		`street window width 3 ft`:  "window.street.wide = 914.4 mm",
		// what has no value is kept
		`low, C to D`:                       "kept",
		`C to D low down`:                   "kept",
		`the sill of the yard window 90 cm`: "window.yard.sill = 900 mm",
		// what can mean two things is asked
		"A to B 11 11 7/8":              "ask: 11' 11-7/8\"",
		"C to D 143":                    "ask: which is it?", // middle, low or high
		"window 34 3/4 from the corner": "ask: which is it?",
		"window 3 ft wide":              "ask: which is it?",
		"A to B behind the dresser 12'": "ask: is it",
		"A to B 12', or 12' 1\"":        "ask: which value is meant?",
		"door 30 or 31":                 "ask: which value is meant?",
	} {
		j := load(t, plain)
		r := read(t, j, text)
		switch asked, isAsk := strings.CutPrefix(want, "ask: "); {
		case want == "kept":
			if len(r.Got)+len(r.Asks) > 0 || len(r.Unread) == 0 {
				t.Errorf("%s: got %v, asks %+v", text, got(r), r.Asks)
			}
		case isAsk && (len(r.Got) > 0 || len(r.Asks) != 1 || !strings.Contains(r.Asks[0].Ask, asked)):
			t.Errorf("%s: got %v, asks %+v", text, got(r), r.Asks)
		case !isAsk && (len(r.Asks) > 0 || len(r.Got) != 1 || got(r)[0] != want):
			t.Errorf("%s: got %v, asks %+v, want %s", text, got(r), r.Asks, want)
		}
	}
}

// TestTheMessageOfTheIssue: both pieces are asked about, with lines that settle them: 11 6 1/2 is 138-1/2 in.
func TestTheMessageOfTheIssue(t *testing.T) {
	j := load(t, plain)
	r := read(t, j, "A to B 11 6 1/2, window 34 3/4 from the corner")
	if len(r.Got) > 0 || len(r.Asks) != 2 {
		t.Fatalf("%+v", r)
	}
	if d := cmp.Diff([]string{"1 wall.AB.length: 138-1/2 in"}, r.Asks[0].Offers); d != "" {
		t.Error(d)
	}
	want := []string{"12 window.street.at: 34 3/4", "13 window.street.far: 34 3/4", "18 window.yard.at: 34 3/4", "19 window.yard.far: 34 3/4"}
	for i, o := range r.Asks[1].Offers { // numbers hang on the whole sheet: the keys are what counts
		if o[strings.IndexByte(o, ' '):] != want[i][strings.IndexByte(want[i], ' '):] {
			t.Errorf("offers %q, want %q", o, want[i])
		}
	}
	for _, q := range r.Asks { // an offered line, put into a reply, is read
		for _, line := range q.Offers {
			if again := read(t, j, "{head}\n"+line+"\nEnd"); len(again.Got) != 1 || len(again.Asks) > 0 {
				t.Errorf("%s: %+v", line, again)
			}
		}
	}
}

// TestMergeStandsBeside: new readings stand behind old ones with who, when and how, and nothing else of the job changes.
func TestMergeStandsBeside(t *testing.T) {
	j := load(t, plain)
	before := string(jobfile.Encode(j))
	r := read(t, j, "{head}\nBy: Lena\nOn: 2027-06-05\n1 wall.AB.length: 12' | 143 7/8 strong | behind the dresser\n4 wall.DA.length: 10'\nEnd: 2")
	merged, err := Merge(j, r)
	if err != nil {
		t.Fatal(err)
	}
	if string(jobfile.Encode(j)) != before {
		t.Error("the job itself changed")
	}
	text := string(jobfile.Encode(merged))
	for _, want := range []string{
		`"143-7/8 in",`,
		`{ read = "144 in", how = "once", by = "Lena", when = "2027-06-05", note = "behind the dresser" }`,
		`{ read = "143-7/8 in strong", how = "once", by = "Lena", when = "2027-06-05", note = "from the other end; behind the dresser" }`,
		"key = \"DA\"\nlength = { read = \"120 in\", how = \"once\", by = \"Lena\", when = \"2027-06-05\" }",
	} {
		if !strings.Contains(text, want) {
			t.Errorf("no %s in\n%s", want, text[:900])
		}
	}
	again := read(t, merged, "{head}\nBy: Lena\nOn: 2027-06-05\n1 wall.AB.length: 12' | 143 7/8 strong\n4 wall.DA.length: 10'\nEnd: 2")
	if twice, err := Merge(merged, again); err != nil || string(jobfile.Encode(twice)) != text || again.Already != 3 {
		t.Errorf("merged twice: %d known, %v", again.Already, err)
	}
}

// TestNobodyIsTakenForTheMaker: a reply without a name or a day is not put down to whom the job's readings are from.
func TestNobodyIsTakenForTheMaker(t *testing.T) {
	j := load(t, plain)
	merged, err := Merge(j, read(t, j, "{head}\n4: 10'"))
	if err != nil {
		t.Fatal(err)
	}
	if by, when := jobfile.Shown(merged, "wall.DA.length.1.by"), jobfile.Shown(merged, "wall.DA.length.1.when"); by != "" || when != "" {
		t.Errorf("by %q on %q", by, when)
	}
}

// TestWhatIsThere: none is noted as absent, a number makes things to be measured, and what the job says otherwise is left alone.
func TestWhatIsThere(t *testing.T) {
	j := load(t, strings.Replace(plain, `"heater", "register", `, "", 1))
	r := read(t, j, "{head}\nroom.absent.heater: none\nroom.absent.register: 2\nroom.absent.window: 0\nroom.absent.fan: yes\nEnd")
	merged, err := Merge(j, r)
	if err != nil {
		t.Fatal(err)
	}
	room := &merged.Room
	if !room.Lacks("heater") || len(room.Registers) != 2 || len(room.Windows) != 2 || len(room.Fans) != 0 || len(r.Differ) != 2 {
		t.Errorf("%v, %d registers, %d windows, %d fans; differ %+v", room.Absent, len(room.Registers), len(room.Windows), len(room.Fans), r.Differ)
	}
}

// TestTwoPeople: two replies pasted one after the other are two people's; where they differ both are kept and it is said. Readings taken once
// may be 2.58 x 1/8 in x sqrt 2 = 0.456 in apart.
func TestTwoPeople(t *testing.T) {
	j := load(t, plain)
	text := "{head}\nBy: Lena\nOn: 2027-06-05\n4 wall.DA.length: 119 1/2\n6 diagonal.BD.length: 187\nroom.absent.alarm: yes\nEnd: 3\n" +
		"{head}\nBy: Otto\nOn: 2027-06-06\n4 wall.DA.length: 120\n6 diagonal.BD.length: 187 7/16\nroom.absent.alarm: no\nEnd: 3\n"
	r := read(t, j, text)
	if d := cmp.Diff([]string{"Lena", "Otto"}, r.By); d != "" {
		t.Error(d)
	}
	want := []Differ{
		{Key: "wall.DA.length", Have: []string{"9' 11-1/2\" (Lena, 2027-06-05)", "10' 0\" (Otto, 2027-06-06)"}, Off: `1/2"`},
		{Key: "room.absent.alarm", Have: []string{"yes (Lena, 2027-06-05)", "no (Otto, 2027-06-06)"}},
	}
	if d := cmp.Diff(want, r.Differ); d != "" {
		t.Error(d)
	}
	merged, err := Merge(j, r)
	if err != nil {
		t.Fatal(err)
	}
	if n := len(readings(merged, "wall.DA.length")); n != 2 || len(merged.Room.Alarms) != 0 || merged.Room.Lacks("alarm") {
		t.Errorf("%d readings; %d alarms, absent %v", n, len(merged.Room.Alarms), merged.Room.Absent)
	}
}

// TestSaidOtherwise: a word that the job says otherwise stays until the maker changes it.
func TestSaidOtherwise(t *testing.T) {
	j := load(t, plain)
	r := read(t, j, "{head}\nBy: Lena\ndoor.hall.swing: out\nEnd")
	if d := cmp.Diff([]Differ{{Key: "door.hall.swing", Have: []string{"in", "out (Lena)"}}}, r.Differ); d != "" {
		t.Error(d)
	}
	if merged, err := Merge(j, r); err != nil || merged.Room.Doors[0].Swing != "in" {
		t.Errorf("%v, %v", merged.Room.Doors[0].Swing, err)
	}
}

// TestOtherJob: nothing of a reply to another job is merged, and all of it is kept.
func TestOtherJob(t *testing.T) {
	j := load(t, plain)
	r := read(t, j, "Reply to sheet 1234 of job 999999: Another\nBy: Lena\n1 wall.AB.length: 12'\nEnd: 1")
	if !r.Other || len(r.Got) > 0 || len(r.Unread) != 1 {
		t.Errorf("%+v", r)
	}
	if _, err := Merge(j, r); !errors.Is(err, ErrOtherJob) {
		t.Errorf("got %v", err)
	}
}

// TestAnswersThatAreMissing: the end counts three answers and two are here.
func TestAnswersThatAreMissing(t *testing.T) {
	j := load(t, plain)
	if r := read(t, j, "{head}\n1 wall.AB.length: 12'\n4 wall.DA.length: 10'\nEnd: 3 answers"); !r.Cut || len(r.Got) != 2 {
		t.Errorf("%+v", r)
	}
}

// TestSetAside: a reading that was found wrong and set aside does not come back with a reply that is merged once more.
func TestSetAside(t *testing.T) {
	j := load(t, plain)
	text := "{head}\nBy: Lena\nOn: 2027-06-05\n4 wall.DA.length: 9'\nEnd: 1"
	merged, err := Merge(j, read(t, j, text))
	if err != nil {
		t.Fatal(err)
	}
	aside, err := merged.SetAside("wall.DA.length", 0, job.Decision{Why: "a foot dropped or added"})
	if err != nil {
		t.Fatal(err)
	}
	if again, err := Merge(aside, read(t, aside, text)); err != nil || len(readings(again, "wall.DA.length")) != 0 {
		t.Errorf("came back: %v", err)
	}
}

// TestNamesAreText: what somebody types into a name is kept as it stands, in the job's file too.
func TestNamesAreText(t *testing.T) {
	for _, name := range []string{`<b onclick="x()">Lena</b>`, `=HYPERLINK("x")`, "Zoë 🎈", `"; drop`, `C:\x`, "100% | sure"} {
		j := load(t, plain)
		s := sheetOf(t, j, Options{All: true})
		text := s.Text(Filled{By: name, Answers: map[string]Answered{"wall.DA.length": {Value: "10'", Note: name}}})
		if strings.ContainsFunc(text, func(r rune) bool { return r > '~' }) {
			t.Errorf("not plain ASCII: %q", text)
		}
		merged, err := Merge(j, ReadReply(text, s, j))
		if err != nil {
			t.Fatal(err)
		}
		back, err := jobfile.Load(jobfile.Encode(merged), "job.toml")
		if err != nil {
			t.Fatal(err)
		}
		if by, note := jobfile.Shown(&back.Job, "wall.DA.length.1.by"), jobfile.Shown(&back.Job, "wall.DA.length.1.note"); by != name || note != name {
			t.Errorf("by %q, note %q, want %q", by, note, name)
		}
	}
}
