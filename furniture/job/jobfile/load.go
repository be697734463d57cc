package jobfile

import (
	"cmp"
	"fmt"
	"reflect"
	"strings"

	"bunkwright/furniture/job"
)

// A File is a job with the places of its keys in the text it was read from.
type File struct {
	Name string
	Job  job.Job

	lines map[string]int
}

// Line returns the line of a key such as "wall.AB.length"; where the file does not hold it, that of the nearest table that would, and the
// first line where there is none, as for a missing format.
func (f *File) Line(key string) int {
	for {
		if line, ok := f.lines[key]; ok {
			return line
		}
		cut := strings.LastIndexByte(key, '.')
		if cut < 0 {
			return 1
		}
		key = key[:cut]
	}
}

// MaxSize is the largest file that is read, in bytes: a job holds a room's readings and a bed, no pictures.
const MaxSize = 8 << 20

// Load reads a job from the text of a file; name is used in messages. The error is a *ReadError that lists everything that cannot be
// read; what can be read but cannot be (a door wider than its wall) loads, see job.Problems.
func Load(data []byte, name string) (*File, error) {
	if len(data) > MaxSize {
		return nil, tooLarge(name, int64(len(data)))
	}
	p := parse(string(data))
	d := newDecoder(p)
	if p.values != nil {
		if err := newer(name, p); err != nil {
			return nil, err
		}
		d.whole()
	}
	d.syntax(p)
	if len(d.complaints) > 0 {
		inOrder(d.complaints)
		return nil, &ReadError{Name: name, Complaints: d.complaints}
	}
	return &File{Name: name, Job: *d.job, lines: d.lines}, nil
}

// newer refuses a format that this program does not know: nothing else in such a file can be judged.
func newer(name string, p parsed) error {
	n, ok := p.values["format"].(int64)
	if !ok || n <= job.Format {
		return nil
	}
	return &ReadError{Name: name, Err: ErrNewerFormat, Complaints: []Complaint{{
		Line: p.scan.root.key("format").where(), Key: "format",
		Have: fmt.Sprintf("format %d is newer than this program, which knows format %d", n, job.Format),
		Want: "open it with the program that wrote it, or a newer one",
	}}}
}

func tooLarge(name string, size int64) error {
	return &ReadError{Name: name, Err: ErrTooLarge, Complaints: []Complaint{{
		Have: fmt.Sprintf("%d MB, and a job file has at most %d", (size+1<<20-1)>>20, MaxSize>>20),
		Want: "is it another kind of file?",
	}}}
}

// decoder fills a job from the values of a text and collects what is wrong with them.
type decoder struct {
	job        *job.Job
	values     map[string]any
	root       *node
	tail       comment
	faulty     map[int]bool // lines whose fault is already known
	lines      map[string]int
	fields     map[string]*field
	said       map[string]comment // comments by key
	complaints []Complaint
	context
}

func newDecoder(p parsed) *decoder {
	d := &decoder{job: &job.Job{}, values: p.values, root: p.scan.root, tail: p.scan.tail,
		faulty: map[int]bool{}, lines: map[string]int{}, fields: map[string]*field{}, said: map[string]comment{}}
	for _, f := range p.faults {
		d.faulty[f.line] = true
	}
	return d
}

// whole reads the whole file.
func (d *decoder) whole() {
	top := spot{n: d.root, line: 1}
	d.look()
	d.table(whole(), d.values, reflect.ValueOf(d.job).Elem(), top)
	d.job.Format = job.Format
	d.together()
	d.comments()
}

// syntax adds the faults of the text itself, each with the key that stands on its line.
func (d *decoder) syntax(p parsed) {
	for _, f := range p.faults {
		c := Complaint{Line: f.line, Have: f.have, Want: f.want}
		if !f.keyless {
			c.Key = d.keyAt(cmp.Or(f.known, f.line), p.scan)
		}
		if at := d.fields[c.Key]; at != nil && f.mended {
			c.Have, c.Want = d.better(f, at)
		}
		d.complaints = append(d.complaints, c)
	}
}

// better says what would be right for a value whose key is known: no quotes where a number is wanted.
func (d *decoder) better(f fault, at *field) (have, want string) {
	switch unit := at.row.Unit; {
	case f.bare == "":
		return f.have, d.suchAs(at)
	case unit == Count || unit == Degrees || unit == Years:
		return clip(f.bare) + " is no number", d.suchAs(at)
	case unit == Date && !isDay(meant(f.bare)):
		return clip(f.bare) + " is no day", "year-month-day, " + d.suchAs(at)
	case unit == TrueFalse:
		return clip(f.bare), "true or false, in small letters"
	}
	return f.have, f.want
}

// keyAt returns the key that stands on a line: as the rest of the job names it where the tables could be read.
func (d *decoder) keyAt(line int, s *scanner) string {
	best := ""
	for key, at := range d.lines {
		if at == line && (len(key) > len(best) || len(key) == len(best) && key > best) {
			best = key
		}
	}
	for _, v := range s.visits {
		if best == "" && v.line == line {
			best = v.numbered()
		}
	}
	return best
}
