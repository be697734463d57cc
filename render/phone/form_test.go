package phone

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"bunkwright/furniture/ask"
	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/render/view"
	"bunkwright/samples"
)

// sampleJob is a job that comes with the program.
func sampleJob(t *testing.T, name string) *job.Job {
	t.Helper()
	data, err := samples.Files.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	file, err := jobfile.Load(data, name)
	if err != nil {
		t.Fatal(err)
	}
	return &file.Job
}

func sheetOf(t *testing.T, j *job.Job, all bool) ask.Sheet {
	t.Helper()
	sheet, err := ask.New(j, ask.Options{All: all})
	if err != nil {
		t.Fatal(err)
	}
	return sheet
}

// written is the form of a sheet.
func written(t *testing.T, j *job.Job, sheet ask.Sheet) []byte {
	t.Helper()
	scene, _, err := fit.Answers(j)
	if err != nil {
		t.Fatal(err)
	}
	var drawings []render.Drawing
	for _, c := range sheet.Cards() {
		drawings = append(drawings, view.CardDrawing(scene, c, view.Options{}))
	}
	var b bytes.Buffer
	if err := Write(&b, sheet, drawings); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// attached puts the form where a browser can open it, and returns its address.
func attached(t *testing.T, j *job.Job, sheet ask.Sheet) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "sheet.html")
	if err := os.WriteFile(path, written(t, j, sheet), 0o600); err != nil {
		t.Fatal(err)
	}
	return "file://" + path
}

// most is how large a form may be: it goes as an attachment (issue of this project: 150 kB).
const most = 150_000

func TestFormIsSmallAndTheSameEveryTime(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"town-house.toml", "half-measured.toml", "attic.toml", "l-shaped.toml", "basement.toml"} {
		j := sampleJob(t, name)
		sheet := sheetOf(t, j, true)
		first := written(t, j, sheet)
		if len(first) > most {
			t.Errorf("%s: %d cards make %d bytes, want at most %d", name, len(sheet.Cards()), len(first), most)
		}
		if !bytes.Equal(first, written(t, j, sheet)) {
			t.Errorf("%s: two forms of one sheet differ", name)
		}
	}
}

func TestOneDrawingForEachCard(t *testing.T) {
	t.Parallel()
	j := sampleJob(t, "half-measured.toml")
	if err := Write(&bytes.Buffer{}, sheetOf(t, j, false), nil); err == nil {
		t.Error("a form was written without its drawings")
	}
}

// TestNothingLeft: a sheet without cards says so, and has no script to run.
func TestNothingLeft(t *testing.T) {
	t.Parallel()
	var b bytes.Buffer
	if err := Write(&b, ask.Sheet{Name: "A bunk", Unit: "in"}, nil); err != nil {
		t.Fatal(err)
	}
	if got := b.String(); !strings.Contains(got, "Nothing is left to ask") || strings.Contains(got, "<script") {
		t.Errorf("%s", got)
	}
}

// TestSqueezedScript: spaces go where only people need them, never within strings and patterns.
func TestSqueezedScript(t *testing.T) {
	t.Parallel()
	for text, want := range map[string]string{
		`const a = b + c`:                  `const a=b+c`,
		`if (a) return 'x  y' + "it's"`:    `if(a)return'x  y'+"it's"`,
		`a = b / c, d / e`:                 `a=b/c,d/e`,
		`x.replace(/[ ,'/] +/g, ' ') || y`: `x.replace(/[ ,'/] +/g,' ')||y`,
		"`a ${b} c` + ' \\' '":             "`a ${b} c`+' \\' '",
		`return n - -1 + +2`:               `return n- -1+ +2`,
	} {
		if got := squeezeScript(text); got != want {
			t.Errorf("%s: %s, want %s", text, got, want)
		}
	}
}

func BenchmarkWriteTownHouse(b *testing.B) {
	data, err := samples.Files.ReadFile("town-house.toml")
	if err != nil {
		b.Fatal(err)
	}
	file, err := jobfile.Load(data, "town-house.toml")
	if err != nil {
		b.Fatal(err)
	}
	sheet, err := ask.New(&file.Job, ask.Options{All: true})
	if err != nil {
		b.Fatal(err)
	}
	scene, _, err := fit.Answers(&file.Job)
	if err != nil {
		b.Fatal(err)
	}
	var drawings []render.Drawing
	for _, c := range sheet.Cards() {
		drawings = append(drawings, view.CardDrawing(scene, c, view.Options{}))
	}
	for b.Loop() {
		if err := Write(&bytes.Buffer{}, sheet, drawings); err != nil {
			b.Fatal(err)
		}
	}
}
