package worked

import "strings"

// A key is the name of an input, without its unit.
type key struct {
	name   string
	dim    dimension
	sample string // a value that works, with its unit: "12 in", "10 y", "wall"
	means  string // from where to where
	// bare is the unit of a value whose key and text name none; where it is empty such a value is refused.
	bare string
	// optional keys have a default, or only say whether a rule applies.
	optional bool
	// list keys hold several values with / between them.
	list bool
}

// sampleWord is the key with a value that works: mattress_in=7.
func (k key) sampleWord() string {
	value, u, _ := strings.Cut(k.sample, " ")
	_, known := unitNamed(u)
	switch {
	case !known:
		return k.name + "=" + k.sample
	case u == k.bare && (u == "in" || u == k.name):
		return k.name + "=" + value
	}
	return k.name + "_" + u + "=" + value
}

// A vocabulary is the keys that a case may give.
type vocabulary []key

func (v vocabulary) find(name string) (key, bool) {
	for _, k := range v {
		if k.name == name {
			return k, true
		}
	}
	return key{}, false
}

// resolve finds the key of an input, and the unit at the end of its name if there is one.
func (v vocabulary) resolve(name string) (k key, u unit, ok bool) {
	if k, ok = v.find(name); ok {
		return k, unit{}, true
	}
	stem, u, split := splitUnit(name)
	if !split {
		return key{}, unit{}, false
	}
	k, ok = v.find(stem)
	return k, u, ok && k.dim == u.dim
}

// names lists the keys as somebody would type them, for hints.
func (v vocabulary) names() []string {
	var out []string
	for _, k := range v {
		name, _, _ := strings.Cut(k.sampleWord(), "=")
		out = append(out, name)
	}
	return out
}

// pick returns the keys of some names, in that order.
func (v vocabulary) pick(names []string) []key {
	var out []key
	for _, name := range names {
		if k, ok := v.find(name); ok {
			out = append(out, k)
		}
	}
	return out
}

// join puts a vocabulary together from lists of keys; a name that comes twice keeps its first meaning.
func join(lists ...[]key) vocabulary {
	var out vocabulary
	for _, list := range lists {
		for _, k := range list {
			if _, taken := out.find(k.name); !taken {
				out = append(out, k)
			}
		}
	}
	return out
}
