package view

import (
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"testing"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/room/length"
	"bunkwright/samples"
)

// sampleNames lists the samples that come with the program.
func sampleNames(t testing.TB) []string {
	t.Helper()
	names, err := fs.Glob(samples.Files, "*.toml")
	if err != nil || len(names) == 0 {
		t.Fatalf("samples: %v %v", names, err)
	}
	return names
}

// sample returns a sample's job.
func sample(t testing.TB, name string) job.Job {
	t.Helper()
	data, err := samples.Files.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	file, err := jobfile.Load(data, name)
	if err != nil {
		t.Fatal(err)
	}
	return file.Job
}

// asked returns a job's scene with its answers.
func asked(t testing.TB, j *job.Job) (*fit.Scene, []fit.Answer) {
	t.Helper()
	s, answers, err := fit.Answers(j)
	if err != nil {
		t.Fatal(err)
	}
	return s, answers
}

// screen is a picture of 1200 x 800 pixels.
var screen = Options{W: render.Px(1200), H: render.Px(800)}

// named is a drawing with what it is of.
type named struct {
	name string
	d    render.Drawing
}

// everyView draws all views of a job for one medium and unit.
func everyView(s *fit.Scene, answers []fit.Answer, o Options) []named {
	list := []named{{"plan", Plan(s, answers, o)}}
	for _, w := range s.Walls {
		list = append(list, named{"wall " + w.Key, Wall(s, answers, w.Key, o)})
	}
	return list
}

// TestViewsAreClean: nothing is cut off, no words stand on words, no letters are smaller than allowed, and every output takes it.
func TestViewsAreClean(t *testing.T) {
	for _, name := range sampleNames(t) {
		j := sample(t, name)
		s, answers := asked(t, &j)
		for _, unit := range []length.Unit{length.Inches, length.Millimetres} {
			onScreen, onPaper := screen, Options{On: OnPaper}
			onScreen.Unit, onPaper.Unit = unit, unit
			for _, o := range []Options{onScreen, onPaper} {
				for _, v := range everyView(s, answers, o) {
					clean(t, fmt.Sprintf("%s, %s, %v, medium %d", name, v.name, unit, o.On), v.d, o.On)
				}
			}
		}
	}
}

// clean holds a drawing against what every drawing must keep.
func clean(t *testing.T, name string, d render.Drawing, on Medium) {
	t.Helper()
	if err := d.Check(); err != nil {
		t.Errorf("%s: %v", name, err)
	}
	least := render.Px(13)
	if on == OnPaper {
		least = render.Pt(7)
	}
	var words []render.Mark
	for _, m := range d.Marks {
		if b := m.Bounds(); !d.Page().Grow(0.01).Holds(b) {
			t.Errorf("%s: %.60s reaches out of the drawing", name, m)
		}
		if m.Kind != render.KindText || strings.Contains(m.Text.Words, "?") && len(m.Text.Words) == 1 {
			continue
		}
		if m.Text.Size < least-1e-9 {
			t.Errorf("%s: %q is set in %v", name, m.Text.Words, m.Text.Size)
		}
		for _, o := range words {
			if m.Bounds().Grow(-0.1).Overlaps(o.Bounds()) {
				t.Errorf("%s: %q stands on %q", name, m.Text.Words, o.Text.Words)
			}
		}
		words = append(words, m)
	}
}

// texts returns all words of a drawing.
func texts(marks []render.Mark) []string {
	var list []string
	for _, m := range marks {
		if m.Kind == render.KindText {
			list = append(list, m.Text.Words)
		}
	}
	return list
}

// has tells whether a drawing holds words.
func has(d render.Drawing, words string) bool { return slices.Contains(texts(d.Marks), words) }
