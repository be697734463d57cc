package ask

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room"
)

// ErrOtherJob is returned for a reply that names another job.
var ErrOtherJob = errors.New("the reply is to another job")

// Merge returns a job with what a reply brought, in one step: new readings stand beside old ones, each with who and when. Words that the
// job says otherwise stay as they are; the reply lists them among what differs. The job itself stays as it is.
func Merge(j *job.Job, r Reply) (*job.Job, error) {
	if r.Other {
		return nil, ErrOtherJob
	}
	m := merger{j: j, next: map[string]int{}}
	for _, g := range r.Got {
		if g.Known {
			continue
		}
		if err := m.take(g); err != nil {
			return nil, fmt.Errorf("card %d, %s: %w", g.Number, g.Key, err)
		}
	}
	return jobfile.Set(m.j, m.changes...)
}

// merger gathers changes; tables that are missing are made at once, because keys go through them.
type merger struct {
	j       *job.Job
	changes []jobfile.Change
	next    map[string]int // the number of the next reading of a key
}

func (m *merger) take(g Got) error {
	if thing, ok := thingOf(g.Key); ok {
		return m.presence(thing, g.Word)
	}
	if err := m.ensure(g.Key[:strings.LastIndexByte(g.Key, '.')]); err != nil {
		return err
	}
	if g.Kind != Length {
		if jobfile.Shown(m.j, g.Key) == "" || rowsByKey()[pathOf(g.Key)].Unit == jobfile.TrueFalse {
			m.set(g.Key, g.Word)
		}
		return nil
	}
	m.reading(g)
	return nil
}

func (m *merger) set(key, text string) {
	m.changes = append(m.changes, jobfile.Change{Key: key, Text: text})
}

// lights are the words for what was between two marks of the tape.
var lights = map[int]string{2: " strong", -2: " light"}

// reading adds one reading behind those that are there.
func (m *merger) reading(g Got) {
	if m.next[g.Key] == 0 {
		m.next[g.Key] = len(readings(m.j, g.Key)) + 1
	}
	key := numbered(g.Key, m.next[g.Key])
	m.next[g.Key]++
	m.set(key, exact(g.Value, m.j)+lights[g.Light])
	m.set(key+".how", string(room.Once))
	m.set(key+".by", g.By)
	m.set(key+".when", g.When)
	note := g.Note
	if g.Turned {
		note = strings.TrimSuffix(fromOther+"; "+note, "; ")
	}
	m.set(key+".note", note)
}

// presence notes that a room has none of a thing, or adds as many as were counted, still to be measured.
func (m *merger) presence(thing, word string) error {
	n, err := strconv.Atoi(word)
	if err != nil {
		n = map[string]int{"yes": 1}[word]
	}
	if n == 0 {
		absent := append(append([]string(nil), m.j.Room.Absent...), thing)
		next, err := jobfile.Set(m.j, jobfile.Change{Key: "room.absent", Text: strings.Join(absent, ",")})
		if err == nil {
			m.j = next
		}
		return err
	}
	table, changes := thing, []jobfile.Change(nil)
	if thing == "switch" || thing == "thermostat" {
		table, changes = "outlet", []jobfile.Change{{Key: "kind", Text: thing}}
	}
	for range n {
		next, err := jobfile.Add(m.j, table, "", append([]jobfile.Change(nil), changes...)...)
		if err != nil {
			return err
		}
		m.j = next
	}
	return nil
}

// ensure makes the table of a key where the job does not have it yet.
func (m *merger) ensure(element string) error {
	if exists(m.j, element) {
		return nil
	}
	parts := strings.Split(element, ".")
	switch {
	case parts[0] == "ceiling" && len(parts) == 4:
		if err := m.addAll("ceiling", parts[1]); err != nil {
			return err
		}
		return m.add("ceiling."+parts[1]+".height", parts[3], jobfile.Change{Key: "corner", Text: parts[3]})
	case parts[0] == "wall" && len(parts) == 4:
		if err := m.addAll("wall", parts[1]); err != nil {
			return err
		}
		return m.add("wall."+parts[1]+"."+parts[2], parts[3])
	case parts[0] == "door" && parts[1] == roomDoor && len(m.j.Room.Outline) > 1:
		return m.add("door", roomDoor, jobfile.Change{Key: "wall", Text: m.j.Room.Outline[:2]})
	}
	return m.add(parts[0], parts[1])
}

// addAll adds an element of a list unless it is there.
func (m *merger) addAll(table, name string) error {
	if exists(m.j, table+"."+name) {
		return nil
	}
	return m.add(table, name)
}

func (m *merger) add(list, name string, changes ...jobfile.Change) error {
	next, err := jobfile.Add(m.j, list, name, changes...)
	if err == nil {
		m.j = next
	}
	return err
}
