package worked

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"bunkwright/room/length"
)

// given holds the inputs of one case by key, numbers in the base unit of their dimension.
type given struct {
	values map[string][]float64
	texts  map[string]string
	unit   unit // of the first length given; zero where there is none
}

// read takes inputs by the keys of a vocabulary.
func (v vocabulary) read(in Inputs) (*given, error) {
	g := &given{values: map[string][]float64{}, texts: map[string]string{}}
	for _, i := range in {
		k, u, ok := v.resolve(i.Key)
		switch {
		case !ok:
			return nil, v.unknown(i)
		case g.has(k.name):
			return nil, &InputError{Key: i.Key, Problem: k.name + " is given twice"}
		}
		if err := g.take(k, u, i); err != nil {
			return nil, err
		}
	}
	return g, nil
}

// unknown reports a key that is not in the vocabulary, or is there with units of another dimension.
func (v vocabulary) unknown(i Input) error {
	stem, u, split := splitUnit(i.Key)
	if k, ok := v.find(stem); ok && split && unitsOf(k.dim) != "" {
		return &InputError{Key: i.Key, Problem: fmt.Sprintf("%s is no unit of %s", u.name, k.name), Want: "the key to end in one of " + unitsOf(k.dim)}
	}
	return &InputError{Key: i.Key, Problem: "is no key that is known here", Word: i.Key, Among: v.names()}
}

func (g *given) take(k key, u unit, i Input) error {
	g.texts[k.name] = i.Text
	switch k.dim {
	case words:
		return nil
	case answers:
		if i.Text != "yes" && i.Text != "no" {
			return &InputError{Key: i.Key, Problem: fmt.Sprintf("%q", i.Text), Want: "yes or no"}
		}
		return nil
	}
	if u.name == "" {
		u, _ = unitNamed(k.bare)
	}
	for _, text := range k.parts(i.Text) {
		x, u, ok := quantity(text, k.dim, u)
		if !ok {
			return &InputError{Key: i.Key, Problem: fmt.Sprintf("%q", i.Text), Want: k.wants()}
		}
		g.values[k.name] = append(g.values[k.name], x)
		if k.dim == lengths && g.unit.name == "" {
			g.unit = u
		}
	}
	return nil
}

// parts splits the values of a list: 3.25/3.25 or, as the survey files write it, 100,100,36.48.
func (k key) parts(text string) []string {
	if !k.list {
		return []string{text}
	}
	return strings.Split(strings.ReplaceAll(text, ",", "/"), "/")
}

// wants says what a value of the key looks like.
func (k key) wants() string {
	switch {
	case k.list:
		return "decimal numbers with / between them, such as " + k.sampleWord()
	case base[k.dim] != "":
		return "one number with its unit in the key, such as " + k.sampleWord()
	}
	return "a number, such as " + k.sampleWord()
}

// quantity reads a number in a unit; a length may also be written as on a tape, 7-1/2 or 5 ft 10 in. The number comes back
// in the base unit, with the unit that it was written in.
func quantity(text string, d dimension, u unit) (float64, unit, bool) {
	x, err := strconv.ParseFloat(text, 64)
	switch {
	case err == nil && d == numbers:
		return x, u, finite(x)
	case err == nil && u.name != "":
		return x * u.per, u, finite(x * u.per)
	case err == nil || d != lengths:
		return 0, u, false
	}
	return readOnTape(text, u)
}

// readOnTape reads a length in tape notation; without a unit in the key it must name its own.
func readOnTape(text string, u unit) (float64, unit, bool) {
	c := length.Context{}
	switch u.name {
	case "in":
		c.Unit = length.Inches
	case "mm":
		c.Unit = length.Millimetres
	case "":
		u = ownUnit(text)
	default:
		return 0, u, false
	}
	l, err := length.Parse(text, c)
	return l.MM(), u, err == nil
}

// ownUnit is the unit in which an answer is given to a length that was written with its own: metric or inches.
func ownUnit(text string) unit {
	name := "in"
	if strings.Contains(text, "m") {
		name = "mm"
	}
	u, _ := unitNamed(name)
	return u
}

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }

func (g *given) has(name string) bool { return g.texts[name] != "" }

// v returns the one value of a key that is given.
func (g *given) v(name string) float64 { return g.values[name][0] }

// or returns the value of a key, or a default where it is not given.
func (g *given) or(name string, otherwise float64) float64 {
	if !g.has(name) {
		return otherwise
	}
	return g.v(name)
}

// said tells whether a key is given with this word.
func (g *given) said(name, word string) bool { return g.texts[name] == word }

// lengthUnit is the unit of an answer that is a length: that of the inputs, else mm.
func (g *given) lengthUnit() unit {
	if g.unit.name == "" {
		u, _ := unitNamed("mm")
		return u
	}
	return g.unit
}
