package fit_test

import (
	"bytes"
	"fmt"
	"io/fs"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/BurntSushi/toml"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/samples"
)

// A fixture is a job file that says in its first lines what is expected of it:
//
//	# want: sit-up-top does-not-fit spare -12 mm at top.pillow
//	# want: rail-height fits
//	# base: plain
//
//	# line: power own-plug-depth outlet.far.plug does-not-fit have 45
//	# figure: doors-swing opens_to 61.04
//	# says: drawers-open meets door.hall
//
// A line is one reading held against one row, which shows what stands beside the answer that decides; says looks for a text in an
// answer's reason, question back, band or notes.
//
// With a base it only holds what differs from that file: tables are merged, lists of tables by their key (or name, or for), and the
// text "unset" takes a key away. The number of a spare is a hand calculation, shown in a comment of the file.
type fixture struct {
	path  string
	wants []want
	sides []side
	data  []byte
}

type want struct {
	question, verdict, at string
	spare                 float64
	hasSpare              bool
}

// spareWithin is how near a spare must come to the hand calculation, in the unit of the answer.
const spareWithin = 0.06

// TestFixtures asks each fixture's questions and holds the answers against what its file says.
func TestFixtures(t *testing.T) {
	for _, f := range fixtures(t) {
		t.Run(strings.TrimSuffix(f.path, ".toml"), func(t *testing.T) {
			_, answers := ask(t, f.path, f.data)
			for _, w := range f.wants {
				w.check(t, answers)
			}
			for _, sd := range f.sides {
				sd.check(t, answers)
			}
		})
	}
}

func ask(t *testing.T, name string, data []byte) (*fit.Scene, []fit.Answer) {
	t.Helper()
	file, err := jobfile.Load(data, name)
	if err != nil {
		t.Fatalf("%v", err)
	}
	scene, answers, err := fit.Answers(&file.Job)
	if err != nil {
		t.Fatal(err)
	}
	return scene, answers
}

func (w want) check(t *testing.T, answers []fit.Answer) {
	t.Helper()
	for _, a := range answers {
		if a.ID != w.question {
			continue
		}
		at := ""
		if a.Decides >= 0 {
			at = a.Lines[a.Decides].At
		}
		switch {
		case a.Verdict.String() != w.verdict:
			t.Errorf("%s: %v (%s%s; decided at %q, spare %g, u %g), want %s", w.question, a.Verdict, a.Reason, a.Ask, at, a.Spare, a.U, w.verdict)
		case w.hasSpare && math.Abs(a.Spare-w.spare) > spareWithin:
			t.Errorf("%s: spare %g at %q, want %g", w.question, a.Spare, at, w.spare)
		case w.at != "" && at != w.at:
			t.Errorf("%s: decided at %q, want %q", w.question, at, w.at)
		}
		return
	}
	t.Errorf("there is no question %q", w.question)
}

// fixtures reads every fixture of testdata.
func fixtures(t *testing.T) []fixture {
	t.Helper()
	var out []fixture
	err := fs.WalkDir(os.DirFS("testdata"), ".", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || filepath.Ext(path) != ".toml" || !strings.Contains(path, "/") {
			return err
		}
		data, err := os.ReadFile(filepath.Join("testdata", path))
		if err != nil {
			return err
		}
		out = append(out, readFixture(t, path, data))
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

func readFixture(t *testing.T, path string, data []byte) fixture {
	t.Helper()
	f := fixture{path: path, data: data}
	for _, line := range strings.Split(string(data), "\n") {
		if text, ok := strings.CutPrefix(line, "# want: "); ok {
			f.wants = append(f.wants, readWant(t, path, text))
		}
		if sd, ok := readSide(line); ok {
			f.sides = append(f.sides, sd)
		}
		if base, ok := strings.CutPrefix(line, "# base: "); ok {
			f.data = overlay(t, base, data)
		}
	}
	if len(f.wants) == 0 {
		t.Fatalf("%s: says nothing of what is wanted", path)
	}
	return f
}

func readWant(t *testing.T, path, text string) want {
	t.Helper()
	words := strings.Fields(text)
	if len(words) < 2 {
		t.Fatalf("%s: want line %q: want a question and a verdict", path, text)
	}
	w := want{question: words[0], verdict: words[1]}
	for i := 2; i < len(words); i++ {
		switch words[i] {
		case "spare":
			v, err := strconv.ParseFloat(words[i+1], 64)
			if err != nil {
				t.Fatalf("%s: %v", path, err)
			}
			w.spare, w.hasSpare = v, true
		case "at":
			w.at = words[i+1]
		}
	}
	return w
}

// overlay puts the differences of a fixture over its base and writes the whole as one file again.
func overlay(t *testing.T, base string, data []byte) []byte {
	t.Helper()
	below, err := os.ReadFile(filepath.Join("testdata", base+".toml"))
	if err != nil {
		t.Fatal(err)
	}
	var under, over map[string]any
	for _, x := range []struct {
		data []byte
		into *map[string]any
	}{{below, &under}, {data, &over}} {
		if err := toml.Unmarshal(x.data, x.into); err != nil {
			t.Fatal(err)
		}
	}
	merge(under, over)
	var out bytes.Buffer
	if err := toml.NewEncoder(&out).Encode(under); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

const unset = "unset"

func merge(under, over map[string]any) {
	for k, v := range over {
		switch v := v.(type) {
		case string:
			if v == unset {
				delete(under, k)
				continue
			}
			under[k] = v
		case map[string]any:
			inner, ok := under[k].(map[string]any)
			if !ok {
				inner = map[string]any{}
			}
			merge(inner, v)
			under[k] = inner
		case []map[string]any:
			under[k] = mergeList(under[k], v)
		default:
			under[k] = v
		}
	}
}

// mergeList merges lists of tables by the word that names an element.
func mergeList(under any, over []map[string]any) []map[string]any {
	list, _ := under.([]map[string]any)
	for _, o := range over {
		found := false
		for _, u := range list {
			if nameOf(u) == nameOf(o) {
				merge(u, o)
				found = true
			}
		}
		if !found {
			fresh := map[string]any{}
			merge(fresh, o)
			list = append(list, fresh)
		}
	}
	return list
}

func nameOf(table map[string]any) string {
	for _, k := range []string{"key", "name", "for", "question"} {
		if v, ok := table[k]; ok {
			return fmt.Sprint(v)
		}
	}
	return ""
}

// sampleFiles returns the jobs that come with the program.
func sampleFiles(t *testing.T) map[string][]byte {
	t.Helper()
	out := map[string][]byte{}
	names, err := fs.Glob(samples.Files, "*.toml")
	if err != nil {
		t.Fatal(err)
	}
	for _, n := range names {
		if out[n], err = fs.ReadFile(samples.Files, n); err != nil {
			t.Fatal(err)
		}
	}
	return out
}
