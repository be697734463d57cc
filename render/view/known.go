package view

import (
	"bunkwright/furniture/fit"
	"bunkwright/room"
)

// known says how well each quantity of the survey was read.
type known map[string]bool

// knownOf goes through the sources: a quantity is firm once it was read twice, or by the maker.
func knownOf(s *fit.Scene) known {
	k := make(known, len(s.Survey.Sources))
	for _, src := range s.Survey.Sources {
		if src.Index < 0 {
			continue
		}
		firm := src.How == room.Mine || src.How == room.Twice || src.Index > 0
		k[src.Key] = k[src.Key] || firm
	}
	return k
}

// firm tells whether a quantity was read twice, or by the maker.
func (k known) firm(key string) bool { return k[key] }

// read tells whether anybody read it.
func (k known) read(key string) bool {
	_, ok := k[key]
	return ok
}
