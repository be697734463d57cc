package view

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/room/length"
)

// An odd job is one that strained the drawings: a file of testdata/jobs, changed or as it is.
type oddJob struct {
	name   string
	file   string
	change func(*job.Job)
}

// oddJobs lists them; every view of each must be clean.
var oddJobs = []oddJob{
	{"chamber", "chamber.toml", nil},
	{"chamber that cannot be built", "chamber.toml", func(j *job.Job) { j.Bed.Guard.Top = length.FromMM(1750) }},
	{"chamber low", "chamber-low.toml", nil},
	{"nook", "nook.toml", nil},
	{"nook, mattress past the window", "nook.toml", func(j *job.Job) {
		j.Bed.Upper.MattressLong, j.Bed.Lower.MattressLong = 117*length.Inch, 117*length.Inch
	}},
	{"nook, long name", "nook.toml", func(j *job.Job) {
		j.Sleepers[0].Name = "Maximiliana-Theodora Friederike Wilhelmina von und zu Hinterhof"
	}},
}

// load returns an odd job.
func (o oddJob) load(t testing.TB) job.Job {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("testdata", "jobs", o.file))
	if err != nil {
		t.Fatal(err)
	}
	file, err := jobfile.Load(data, o.file)
	if err != nil {
		t.Fatal(err)
	}
	if o.change != nil {
		o.change(&file.Job)
	}
	return file.Job
}

// odd returns the odd job of a name.
func odd(t testing.TB, name string) job.Job {
	t.Helper()
	for _, o := range oddJobs {
		if o.name == name {
			return o.load(t)
		}
	}
	t.Fatalf("no odd job %q", name)
	return job.Job{}
}

// TestOddJobsAreClean draws all views and sheets of the odd jobs, in both media.
func TestOddJobsAreClean(t *testing.T) {
	for _, odd := range oddJobs {
		j := odd.load(t)
		s, answers := asked(t, &j)
		onScreen, onPaper := screen, Options{On: OnPaper}
		onScreen.Unit = unitOf(&j)
		onPaper.Unit = onScreen.Unit
		for _, o := range []Options{onScreen, onPaper} {
			for _, v := range append(everyView(s, answers, o), everyBedView(s, answers, o, true)...) {
				clean(t, odd.name+", "+v.name, v.d, o.On)
			}
		}
		for _, paper := range []PaperSize{Letter, A4} {
			o := SheetOptions{Paper: paper, Unit: onScreen.Unit, Date: "June 9, 2027"}
			sheetsAreClean(t, odd.name, Sheets(s, answers, o), o)
		}
	}
}

func unitOf(j *job.Job) length.Unit {
	if j.Unit == "mm" {
		return length.Millimetres
	}
	return length.Inches
}

// jobNamed returns a sample or an odd job.
func jobNamed(t testing.TB, name string) job.Job {
	t.Helper()
	if strings.HasSuffix(name, ".toml") {
		return sample(t, name)
	}
	return odd(t, name)
}

// TestUnbuiltIsSaid: where the bed cannot be built, the plan, each picture of the bed and the sheets name the size at fault, why, and the
// nearest that can be built: guardrail tops of 1769 mm, from two boards of 145 mm over a side rail.
func TestUnbuiltIsSaid(t *testing.T) {
	j := odd(t, "chamber that cannot be built")
	s, answers := asked(t, &j)
	for _, o := range []Options{screen, {On: OnPaper}} {
		o.Unit = length.Millimetres
		list := []render.Drawing{Plan(s, answers, o), Section(s, answers, o), Stick(s, answers, o), NoBed(s, "Bed from the front", o)}
		for _, sh := range Sheets(s, answers, SheetOptions{Unit: o.Unit}) {
			if sh.Title == "Bed" {
				list = append(list, sh)
			}
		}
		if len(list) != 5 {
			t.Fatalf("%d drawings, want 5: no sheet says it", len(list))
		}
		for _, d := range list {
			all := strings.ReplaceAll(strings.Join(texts(d.Marks), " "), "\u00a0", " ")
			for _, w := range []string{"cannot be built", "bed.guard.top", "the boards would reach down", "1769 mm"} {
				if !strings.Contains(all, w) {
					t.Errorf("%s, medium %d: no %q in %q", d.Title, o.On, w, all)
				}
			}
		}
	}
}
