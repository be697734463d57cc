package view

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/room/length"
	"bunkwright/samples"
)

func askedSample(t *testing.T, name string) (*fit.Scene, []fit.Answer) {
	t.Helper()
	data, err := samples.Files.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	f, err := jobfile.Load(data, name)
	if err != nil {
		t.Fatal(err)
	}
	s, answers, err := fit.Answers(&f.Job)
	if err != nil {
		t.Fatal(err)
	}
	return s, answers
}

// TestHeightsByHand: the town-house bed sinks 1/4 in into the carpet. Upper mattress 55 + 6 - 1/4 = 60-3/4, rail 66-3/4 - 1/4 = 66-1/2,
// lower mattress 13 + 7 - 1/4 = 19-3/4, Ida's head 19-3/4 + 25-1/4 = 45, upper bed's underside 52-3/4 - 1/4 = 52-1/2, rail over the
// mattress 66-3/4 - 61 = 5-3/4; under the slats (55 - 3/4 - 1/4 = 54) Ida has 54 - 19-3/4 = 34-1/4 of headroom, 54 - 45 = 9 of it over her
// head. The rail is 11-3/4 over the deck and has to stand 5 over the mattress (16 CFR 1213.3(b)): at most 6-3/4.
func TestHeightsByHand(t *testing.T) {
	s, answers := askedSample(t, "town-house.toml")
	o := Options{Unit: length.Inches, W: render.Px(1200), H: render.Px(800)}
	for _, c := range []struct {
		view  render.Drawing
		words []string
	}{
		{Stick(s, answers, o), []string{`5' 0-3/4"`, `5' 6-1/2"`, `1' 7-3/4"`, `3' 9"`, `4' 4-1/2"`, `(7' 0-1/2")`, `9" spare`, "Maren, 9", "Ida, 6"}},
		{Section(s, answers, o), []string{`5-3/4"`, `9" spare`, `2' 10-1/4"`, `mattress 7"`, `mattress 6", at most 6-3/4"`, "Maren, 9", "Ida, 6"}},
	} {
		for _, w := range c.words {
			if !has(c.view, w) {
				t.Errorf("%s: no %q among %q", c.view.Title, w, texts(c.view.Marks))
			}
		}
	}
}

// everyBedView draws the section and the story stick, and the views of the bed alone if asked.
func everyBedView(s *fit.Scene, answers []fit.Answer, o Options, alone bool) []named {
	list := []named{{"section", Section(s, answers, o)}, {"stick", Stick(s, answers, o)}}
	if o.On == OnScreen {
		narrow := o
		narrow.W = render.Px(208)
		list = append(list, named{"narrow stick", Stick(s, answers, narrow)})
	}
	if s.Bed == nil || !alone {
		return list
	}
	for _, mirror := range []bool{false, true} {
		o.Mirror = mirror
		list = append(list, named{"front", BedFront(s.Bed, o)}, named{"above", BedAbove(s.Bed, o)},
			named{"left end", BedEnd(s.Bed, bunk.Left, o)}, named{"right end", BedEnd(s.Bed, bunk.Right, o)}, named{"together", BedViews(s.Bed, bunk.Right, o)})
	}
	return list
}

// TestBedViewsAreClean draws every sample, as it is and placed in other ways, in both units and media.
func TestBedViewsAreClean(t *testing.T) {
	for _, name := range sampleNames(t) {
		for i, way := range ways {
			j := sample(t, name)
			way.change(&j)
			s, answers := asked(t, &j)
			for _, unit := range []length.Unit{length.Inches, length.Millimetres} {
				onScreen, onPaper := screen, Options{On: OnPaper, Scale: 1.0 / 16}
				onScreen.Unit, onPaper.Unit = unit, unit
				for _, o := range []Options{onScreen, onPaper} {
					for _, v := range everyBedView(s, answers, o, i == 0) {
						clean(t, fmt.Sprintf("%s %s, %s, %v, medium %d", name, way.name, v.name, unit, o.On), v.d, o.On)
					}
				}
			}
		}
	}
}

// ways are ways in which a bed may stand and be.
var ways = []struct {
	name   string
	change func(*job.Job)
}{
	{"as it is", func(*job.Job) {}},
	{"mirrored", func(j *job.Job) { j.Place.Mirror = true }},
	{"left end to the wall", func(j *job.Job) { j.Place.Turn = job.AgainstLeft }},
	{"right end to the wall", func(j *job.Job) { j.Place.Turn = job.AgainstRight }},
	{"front to the wall", func(j *job.Job) { j.Place.Turn = job.AgainstFront }},
	{"too high", func(j *job.Job) { j.Bed.Upper.Height += 8 * length.Inch; j.Bed.Guard.Top += 8 * length.Inch }},
	{"without sleepers", func(j *job.Job) { j.Sleepers = nil }},
	{"without a ceiling", func(j *job.Job) { j.Room.Ceilings = nil }},
	{"that cannot be built", func(j *job.Job) { j.Bed.Upper.Height = j.Bed.Lower.Height }},
}

// TestUnknownIsSaid: without a place, a ceiling or a bed the drawings say what is missing.
func TestUnknownIsSaid(t *testing.T) {
	j := sample(t, "half-measured.toml")
	s, answers := asked(t, &j)
	d := Section(s, answers, screen)
	if !has(d, "ceiling") || !has(d, s.Wants) {
		t.Errorf("the section says %q, not that %q", texts(d.Marks), s.Wants)
	}
	j = sample(t, "town-house.toml")
	j.Bed.Upper.Height = j.Bed.Lower.Height
	s, answers = asked(t, &j)
	for _, d := range []render.Drawing{Section(s, answers, screen), Stick(s, answers, screen)} {
		if !strings.Contains(strings.Join(texts(d.Marks), " "), "cannot be built") {
			t.Errorf("%s of a bed that cannot be built: %q", d.Title, texts(d.Marks))
		}
	}
}

// TestHeadIsWhereItIs: on the section the crown of the head stands at the seated height over the mattress, and the bar of the spare goes
// from there to what is over it. Heights are measured back from the paper.
func TestHeadIsWhereItIs(t *testing.T) {
	j := sample(t, "town-house.toml")
	s, answers := asked(t, &j)
	const k = 1.0 / 16
	d := Section(s, answers, Options{On: OnPaper, Scale: k, Unit: length.Inches})
	var floor render.Paper
	for _, m := range d.Marks {
		if m.Ref == "floor" && m.Kind == render.KindStroke && m.Pen == render.SheetStyle.Cut {
			floor = m.Path.Bounds().Min.Y
		}
	}
	for _, c := range []struct {
		ref       string
		crown, to float64 // inches over the carpet, as in TestHeightsByHand
	}{{"sitter.lower", 45, 54}, {"sitter.upper", 60.75 + 28.875, 96.31}} {
		up := func(y render.Paper) float64 { return float64(floor-y) / k / 25.4 }
		if got := up(boundsOf(d, c.ref, render.KindFill).Min.Y); math.Abs(got-c.crown) > 0.05 {
			t.Errorf("%s: crown at %.2f in, want %.2f", c.ref, got, c.crown)
		}
		bar := pathsOf(d, "spare."+c.ref)
		if a, b := up(bar.Max.Y), up(bar.Min.Y); math.Abs(a-c.crown) > 0.05 || math.Abs(b-c.to) > 0.05 {
			t.Errorf("%s: the bar goes from %.2f to %.2f in, want %.2f to %.2f", c.ref, a, b, c.crown, c.to)
		}
	}
}

// boundsOf returns what the marks of one kind under a ref cover.
func boundsOf(d render.Drawing, ref string, kind render.Kind) render.Rect {
	var list []render.Mark
	for _, m := range d.Marks {
		if m.Ref == ref && m.Kind == kind {
			list = append(list, m)
		}
	}
	return render.Bounds(list)
}

// pathsOf returns what the lines under a ref cover, without the width of the pen.
func pathsOf(d render.Drawing, ref string) render.Rect {
	for _, m := range d.Marks {
		if m.Ref == ref && m.Kind == render.KindStroke {
			return m.Path.Bounds()
		}
	}
	return render.Rect{}
}

// TestShortIsRed: on the screen a head that meets something has its shortage in the ink of what does not fit, with the sign; the basement's
// ceiling is under the seated head.
func TestShortIsRed(t *testing.T) {
	j := sample(t, "basement.toml")
	s, answers := asked(t, &j)
	narrow := screen
	narrow.W = render.Px(208)
	for _, d := range []render.Drawing{Section(s, answers, screen), Stick(s, answers, narrow)} {
		red := 0
		for _, m := range d.Marks {
			if m.Kind == render.KindText && strings.Contains(m.Text.Words, "short") && m.Text.Ink == render.InkNotFit {
				red++
			}
		}
		if red != 2 {
			t.Errorf("%s: %d shortages in red, want 2", d.Title, red)
		}
	}
}

// TestSpareIsTheAnswers: the drawings write the spare of the answers, whichever seat decides.
func TestSpareIsTheAnswers(t *testing.T) {
	for _, name := range sampleNames(t) {
		j := sample(t, name)
		s, answers := asked(t, &j)
		d := Section(s, answers, screen)
		for _, a := range answers {
			if (a.ID == "sit-up-top" || a.ID == "sit-up-bottom") && a.HasSpare {
				words := strings.Replace(fit.SpareWords(a.Spare, a.Unit, length.Inches), " to spare", " spare", 1)
				if !has(d, words) {
					t.Errorf("%s: no %q for %s among %q", name, words, a.ID, texts(d.Marks))
				}
			}
		}
	}
}

// benchmarkView times one view of the town house.
func benchmarkView(b *testing.B, draw func(*fit.Scene, []fit.Answer) render.Drawing) {
	j := sample(b, "town-house.toml")
	s, answers := asked(b, &j)
	for b.Loop() {
		draw(s, answers)
	}
}

func BenchmarkSection(b *testing.B) {
	benchmarkView(b, func(s *fit.Scene, answers []fit.Answer) render.Drawing { return Section(s, answers, screen) })
}

func BenchmarkNarrowStick(b *testing.B) {
	narrow := screen
	narrow.W = render.Px(208)
	benchmarkView(b, func(s *fit.Scene, answers []fit.Answer) render.Drawing { return Stick(s, answers, narrow) })
}

func BenchmarkBedFront(b *testing.B) {
	benchmarkView(b, func(s *fit.Scene, _ []fit.Answer) render.Drawing { return BedFront(s.Bed, screen) })
}

func BenchmarkBedViews(b *testing.B) {
	benchmarkView(b, func(s *fit.Scene, _ []fit.Answer) render.Drawing { return BedViews(s.Bed, bunk.Right, screen) })
}

// TestNamesKeepOffTheFigures: on a section no name of a shelf or a sleeper lies over somebody's chest, no shelf's name in the hatching of the
// ceiling, and no name is broken within a word.
func TestNamesKeepOffTheFigures(t *testing.T) {
	for _, o := range oddJobs {
		j := o.load(t)
		s, answers := asked(t, &j)
		if s.Bed == nil {
			continue
		}
		for _, opt := range []Options{screen, {On: OnPaper, Scale: 1.0 / 16}} {
			opt.Unit, opt.Origin, opt.W, opt.H = unitOf(&j), &render.Point{X: 100, Y: 250}, 400, 400
			if opt.Scale == 0 {
				opt.Scale = 1.0 / 20
			}
			d := Section(s, answers, opt)
			v := newSection(s, answers)
			v.canvas = newCanvas(opt, opt.Scale)
			for _, m := range d.Marks {
				words := m.Text.Words
				shelf, named := words == "wall shelf", strings.HasPrefix(m.Ref, "sitter.") && words != "seated head" && !isFigure(words)
				if m.Kind != render.KindText || !shelf && !named {
					continue
				}
				for i := range v.sit {
					if p := &v.sit[i]; p.known && v.chestOf(p).Grow(-0.5).Overlaps(m.Bounds()) {
						t.Errorf("%s: %q stands on %s", o.name, m.Text.Words, p.ref)
					}
				}
				if b := m.Bounds(); shelf && b.Min.Y < v.ceilingAt(b.Centre().X)-0.1 {
					t.Errorf("%s: %q stands over the ceiling", o.name, m.Text.Words)
				}
				if named && !strings.Contains(v.sit[0].who+" "+v.sit[1].who+" ", m.Text.Words+" ") {
					t.Errorf("%s: %q is broken within a word", o.name, m.Text.Words)
				}
				if i := slices.Index([]string{"sitter.lower", "sitter.upper"}, m.Ref); named && m.Bounds().Max.Y > v.pt(0, v.sit[i].seat).Y {
					t.Errorf("%s: %q stands under the mattress of %s", o.name, words, m.Ref)
				}
			}
		}
	}
}

// isFigure tells a measure from words.
func isFigure(words string) bool {
	return len(words) > 2 && strings.ContainsAny(words[:1], "0123456789(")
}

// TestFiguresOnTheStickStandFree: on paper the numbers of a stick stand clear of the marks at both its edges.
func TestFiguresOnTheStickStandFree(t *testing.T) {
	for _, name := range []string{"chamber", "chamber low", "nook"} {
		j := odd(t, name)
		s, answers := asked(t, &j)
		d := Stick(s, answers, Options{On: OnPaper, Scale: 1.0 / 20, Unit: unitOf(&j)})
		for _, m := range under(d, "stick") {
			for _, o := range under(d, "stick") {
				if m.Kind != render.KindText || o.Kind != render.KindStroke {
					continue
				}
				for _, line := range boxesOf([]render.Mark{o}).lines {
					if line.H() == 0 && line.W() < 3 && line.Grow(0.01).Overlaps(m.Bounds()) {
						t.Errorf("%s: a mark strikes %q", name, m.Text.Words)
					}
				}
			}
		}
	}
}

// TestSectionNamesItsWall: the section's sheet says which wall it looks at, as the plan's letters have it.
func TestSectionNamesItsWall(t *testing.T) {
	for name, wall := range map[string]string{"chamber": "wall B to C", "chamber low": "wall D to A", "nook": "wall C to D"} {
		j := odd(t, name)
		s, answers := asked(t, &j)
		for _, sh := range Sheets(s, answers, SheetOptions{Unit: unitOf(&j)}) {
			if all := strings.Join(texts(sh.Marks), " "); strings.HasPrefix(sh.Title, "Section") && !strings.Contains(all, "looking at "+wall) {
				t.Errorf("%s: no %q in %.200q", name, wall, all)
			}
		}
	}
}
