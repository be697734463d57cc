package ask

import (
	"cmp"
	"math"
	"strings"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/furniture/yardstick"
	"bunkwright/room"
	"bunkwright/room/length"
)

// byCard puts answers in the order of the sheet; those of one card by end, person, day and value, so that the order of the lines does not
// matter.
func byCard(a, b Got) int {
	return cmp.Or(cmp.Compare(a.Number, b.Number), strings.Compare(a.Key, b.Key), btoi(a.Turned)-btoi(b.Turned), strings.Compare(a.By, b.By),
		strings.Compare(a.When, b.When), cmp.Compare(a.Value, b.Value), a.Light-b.Light, strings.Compare(a.Word, b.Word))
}

// exact writes a length so that it reads back as it is.
func exact(l length.Length, j *job.Job) string { return length.Exact(l, unitOf(j.Unit)) }

// taken is one reading of the job.
type taken struct {
	value        length.Length
	light        int
	how          room.How
	by, when     string
	turned, ours bool
}

// takenOf lists the readings of a key.
func takenOf(j *job.Job, key string) []taken {
	var out []taken
	for i, how := range readings(j, key) {
		at := numbered(key, i+1)
		r := length.Read(jobfile.Shown(j, at), length.Context{Unit: unitOf(j.Unit)})
		out = append(out, taken{
			value: r.Value, light: r.Note64, how: how, by: jobfile.Shown(j, at+".by"), when: jobfile.Shown(j, at+".when"), ours: true,
			turned: turnedNote(jobfile.Shown(j, at+".note")),
		})
	}
	return out
}

// setAsideOf lists the readings of a key that no longer count, as they were read.
func setAsideOf(j *job.Job, key string) []taken {
	var out []taken
	for _, r := range j.Replaced {
		for _, was := range r.Was {
			if r.Reading == key {
				out = append(out, taken{value: was.Value, light: was.Light, by: was.By, when: was.When, turned: turnedNote(was.Note)})
			}
		}
	}
	return out
}

// fromOther begins the note of a reading that was taken from the other end.
const fromOther = "from the other end"

func turnedNote(note string) bool { return strings.HasPrefix(note, fromOther) }

// known marks the answers that the job holds already, also among what no longer counts, each reading of it once.
func (r *reading) known() {
	have := map[string][]taken{}
	for i := range r.out.Got {
		g := &r.out.Got[i]
		if g.Kind != Length {
			g.Known = r.agrees(g.Key, g.Word)
		} else {
			if _, ok := have[g.Key]; !ok {
				have[g.Key] = append(takenOf(r.j, g.Key), setAsideOf(r.j, g.Key)...)
			}
			list := have[g.Key]
			for k, t := range list {
				if t.value == g.Value && t.light == g.Light && t.by == g.By && t.when == g.When && t.turned == g.Turned {
					g.Known = true
					have[g.Key] = append(append([]taken(nil), list[:k]...), list[k+1:]...)
					break
				}
			}
		}
		if g.Known {
			r.out.Already++
		}
	}
}

// agrees tells whether the job says the same word.
func (r *reading) agrees(key, word string) bool {
	thing, ok := thingOf(key)
	if !ok {
		return jobfile.Shown(r.j, key) == word
	}
	none := word == "0" || word == "no"
	return none && r.j.Room.Lacks(thing) || !none && there(&r.j.Room, thing)
}

// differ finds what does not agree: lengths further apart than their uncertainties let them be, and words.
func (r *reading) differ() {
	for i := 0; i < len(r.out.Got); {
		n := i + 1
		for n < len(r.out.Got) && r.out.Got[n].Key == r.out.Got[i].Key {
			n++
		}
		if r.out.Got[i].Kind == Length {
			r.apart(r.out.Got[i:n])
		} else {
			r.words(r.out.Got[i:n])
		}
		i = n
	}
}

// apart holds the answers to one card against each other and against the readings of the job.
func (r *reading) apart(got []Got) {
	all := takenOf(r.j, got[0].Key)
	for _, g := range got {
		if !g.Known {
			all = append(all, taken{value: g.Value, light: g.Light, how: room.Once, by: g.By, when: g.When, turned: g.Turned})
		}
	}
	if len(all) < 2 {
		return
	}
	u := r.j.Uncertainties().Reading
	far := false
	lo, hi := all[0].value, all[0].value
	for i, a := range all {
		lo, hi = min(lo, a.value), max(hi, a.value)
		for _, b := range all[:i] {
			may := yardstick.Figure(yardstick.Agree) * math.Hypot(u[a.how], u[b.how])
			far = far || math.Abs(a.value.MM()-b.value.MM()) > may && (!a.ours || !b.ours)
		}
	}
	if !far {
		return
	}
	d := Differ{Key: got[0].Key, Off: length.Format(hi-lo, length.Style{Unit: unitOf(r.j.Unit)})}
	for _, t := range all {
		d.Have = append(d.Have, withName(jobfile.ShownLength(t.value, unitOf(r.j.Unit))+lights[t.light], t.by, t.when))
	}
	r.out.Differ = append(r.out.Differ, d)
}

// words holds what was said against what the job says; what differs is left as the job has it.
func (r *reading) words(got []Got) {
	d := Differ{Key: got[0].Key}
	if have := r.jobWord(got[0].Key); have != "" {
		d.Have = append(d.Have, have)
	}
	same := true
	for i := range got {
		same = same && got[i].Word == got[0].Word && (len(d.Have) == 0 || got[i].Known)
	}
	if same {
		for i := range got[1:] { // said by two people
			got[i+1].Known = true
		}
		return
	}
	for i := range got {
		d.Have = append(d.Have, withName(got[i].Word, got[i].By, got[i].When))
		got[i].Known = true
	}
	r.out.Differ = append(r.out.Differ, d)
}

// jobWord is what the job says, in words, "" for nothing.
func (r *reading) jobWord(key string) string {
	thing, ok := thingOf(key)
	switch {
	case !ok && rowsByKey()[pathOf(key)].Unit == jobfile.TrueFalse && jobfile.Shown(r.j, key) != "true":
		return ""
	case !ok:
		return jobfile.Shown(r.j, key)
	case r.j.Room.Lacks(thing):
		return "none, says the job"
	case there(&r.j.Room, thing):
		return "listed in the job"
	}
	return ""
}

func withName(text, by, when string) string {
	var said []string
	for _, s := range []string{by, when} {
		if s != "" {
			said = append(said, s)
		}
	}
	if len(said) == 0 {
		return text
	}
	return text + " (" + strings.Join(said, ", ") + ")"
}
