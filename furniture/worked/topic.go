package worked

import (
	"slices"
	"strings"
)

// A topic is one kind of case of a trade table or formula. It has its own keys, and answers one or more quantities.
type topic struct {
	name       string
	keys       vocabulary
	quantities []asked
	// further answers quantities whose name holds a number, such as mdb_wall_144, the like of which are named in such; nil where
	// there are none.
	further func(quantity string) (asked, bool)
	such    []string
	shown   []string // an example, where the first quantity with the samples of its keys is none
}

// An asked is one quantity of a topic.
type asked struct {
	name  string
	unit  string   // of the result; asInputs for the unit of the inputs
	needs []string // keys that must be given; empty: all of the topic that are not optional
	of    func(g *given) (any, error)
}

// topics in the order of the files that hold their cases.
var topics = slices.Concat(timberTopics, viewTopics, surveyTopics, peopleTopics)

func (t topic) answer(quantity string, in Inputs) (Result, error) {
	a, err := t.choose(quantity)
	if err != nil {
		return Result{}, err
	}
	g, err := t.keys.read(in)
	if err != nil {
		return Result{}, err
	}
	if lacking := (way{needs: t.needs(a)}).lacking(g); len(lacking) > 0 {
		return Result{}, missing(t.keys.pick(lacking))
	}
	v, err := a.of(g)
	if err != nil {
		return Result{}, err
	}
	return finished(a.name, a.unit, v, g), nil
}

// choose finds a quantity by name; without a name that of a topic which has only one.
func (t topic) choose(name string) (asked, error) {
	if name == "" && len(t.quantities) == 1 {
		return t.quantities[0], nil
	}
	var names []string
	for _, a := range t.quantities {
		if a.name == name {
			return a, nil
		}
		names = append(names, a.name)
	}
	names = append(names, t.such...)
	if t.further != nil && name != "" {
		if a, ok := t.further(name); ok {
			return a, nil
		}
	}
	problem := "not given"
	if name != "" {
		problem = name + " is none of this topic"
	}
	return asked{}, &InputError{Key: "quantity", Problem: problem, Want: "one of " + strings.Join(names, ", "), Word: name, Among: names}
}

func (t topic) needs(a asked) []string {
	if len(a.needs) > 0 {
		return a.needs
	}
	var names []string
	for _, k := range t.keys {
		if !k.optional {
			names = append(names, k.name)
		}
	}
	return names
}

func (t topic) example() []string {
	if len(t.shown) > 0 {
		return t.shown
	}
	var out []string
	if len(t.quantities) > 1 {
		out = append(out, "quantity="+t.quantities[0].name)
	}
	for _, k := range t.keys.pick(t.needs(t.quantities[0])) {
		out = append(out, k.sampleWord())
	}
	return out
}

// inch is a key of a length that counts as inches where nothing else is said, as in the trade tables.
func inch(name, sample, means string) key {
	return key{name: name, dim: lengths, sample: sample + " in", means: means, bare: "in"}
}

// plain is a key of a number whose unit, if it has one, is part of its name.
func plain(name, sample, means string) key {
	return key{name: name, dim: numbers, sample: sample, means: means}
}

func word(name, sample, means string) key {
	return key{name: name, dim: words, sample: sample, means: means}
}

// maybe makes a key one that has a default.
func maybe(k key) key {
	k.optional = true
	return k
}

// whole reads a count.
func (g *given) whole(name string) (int, error) {
	x := g.v(name)
	if x != float64(int(x)) || x < 0 || x > 1e6 {
		return 0, &InputError{Key: name, Problem: g.texts[name], Want: "a whole number"}
	}
	return int(x), nil
}
