package job

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"

	"bunkwright/furniture/bunk"
	"bunkwright/room/geom"
	"bunkwright/room/length"
	"bunkwright/room/survey"
)

// A Problem is something that a job says and that cannot be, such as a door wider than its wall. It hinders neither opening nor
// saving; what hangs on it is answered with "does not fit" or "cannot tell yet".
type Problem struct {
	Key   string // of the value, as jobfile.File.Line takes it
	Text  string // what is there
	Right string // what would be right
}

func (p Problem) String() string { return p.Key + ": " + p.Text + "; " + p.Right }

// slack is how far something may reach past what holds it before it is a problem, in mm: readings of a wall and of what is on it
// differ by that much in any house (our own figure).
const slack = 10.0

// Problems lists what cannot be in a job whose room was solved, table by table. How the bed stands in the room is not
// looked at, nor whether it can be built: see SizeProblems.
func Problems(j *Job, s *survey.Survey) []Problem {
	f := newFinder(j, s)
	f.absent()
	f.floor()
	f.leftOut()
	f.closing()
	f.walls()
	f.ceilings()
	f.openings()
	f.fixtures()
	f.place()
	return f.found
}

// SizeProblems turns what bunk.Build refuses into problems; none for any other error.
func SizeProblems(j *Job, err error) []Problem {
	unit, _ := length.ParseUnit(j.Unit)
	var refused bunk.SizesError
	if !errors.As(err, &refused) {
		return nil
	}
	var out []Problem
	for _, e := range refused {
		out = append(out, Problem{Key: e.Key, Text: e.Reason, Right: rightSize(e, unit)})
	}
	return out
}

// rightSize says what size would do, in the unit of the job.
func rightSize(e bunk.SizeError, unit length.Unit) string {
	if e.Has {
		return "nearest that can be built: " + nearestSize(e.Nearest, unit)
	}
	table, key := "", e.Key
	if i := strings.LastIndexByte(key, '.'); i >= 0 {
		table, key = key[:i], key[i+1:]
	}
	if e.Unset {
		return fmt.Sprintf("choose the size to build for: %s = \"...\" under [%s]", key, table)
	}
	return "another size"
}

// nearestSize writes a size that can be built so that it may be copied: one that is no 64th of an inch is given in mm too, since
// what it is rounded to may lie on the wrong side of it.
func nearestSize(l length.Length, unit length.Unit) string {
	if unit == length.Inches && l%(length.Inch/64) != 0 {
		return fmt.Sprintf("about %s, exactly %s", length.Format(l, length.Style{Unit: unit}), length.Exact(l, length.Millimetres))
	}
	return length.Exact(l, unit)
}

// finder collects problems.
type finder struct {
	j       *Job
	s       *survey.Survey
	outline geom.Polygon // nil where the readings do not give the room a shape
	ceiling float64      // highest reading of any face in mm, NaN where there is none
	style   length.Style
	found   []Problem
}

func newFinder(j *Job, s *survey.Survey) *finder {
	f := &finder{j: j, s: s, ceiling: math.NaN()}
	f.style.Unit, _ = length.ParseUnit(j.Unit)
	if s.Outline {
		for i := range s.Layout.X {
			f.outline = append(f.outline, geom.V2{X: f.orZero(s.Layout.X[i]), Y: f.orZero(s.Layout.Y[i])})
		}
	}
	for _, c := range j.Room.Ceilings {
		for _, h := range c.Heights {
			for _, r := range h.Height {
				f.ceiling = math.Max(r.Value.MM(), orLowest(f.ceiling))
			}
		}
	}
	return f
}

func orLowest(v float64) float64 {
	if math.IsNaN(v) {
		return math.Inf(-1)
	}
	return v
}

func (f *finder) orZero(r survey.Ref) float64 {
	if r == 0 {
		return 0
	}
	return f.s.Value(r)
}

func (f *finder) add(key, right, text string, args ...any) {
	f.found = append(f.found, Problem{Key: key, Text: fmt.Sprintf(text, args...), Right: right})
}

// say writes a length in the unit of the job.
func (f *finder) say(mm float64) string { return length.Format(length.FromMM(mm), f.style) }

// wall returns the letters of a wall and its length in mm; NaN where its shape is not known.
func (f *finder) wall(i int) (key string, long float64) {
	if i < 0 || i >= len(f.j.Room.Outline) {
		return "", math.NaN()
	}
	o := f.j.Room.Outline
	next := (i + 1) % len(o)
	key = o[i:i+1] + o[next:next+1]
	if f.outline == nil {
		return key, math.NaN()
	}
	return key, f.outline[i].Dist(f.outline[next])
}

// keyOr returns the key of an element of a list, or its place in the list.
func keyOr(table, key string, i int) string {
	if key == "" {
		key = strconv.Itoa(i + 1)
	}
	return table + "." + key
}
