package yardstick

import (
	"fmt"
	"slices"
	"strings"
	"sync"
)

// A Place is where a job is measured against the rules.
type Place string

// The places.
const (
	US Place = "US"
	EU Place = "EU"
	FR Place = "FR"
	UK Place = "UK"
	CA Place = "CA"
	AU Place = "AU"
	NZ Place = "NZ"
)

// A PlaceError reports a place that the yardstick does not know.
type PlaceError struct{ Text string }

func (e *PlaceError) Error() string {
	return fmt.Sprintf("place %q: want one of %s", e.Text, strings.Join(placeNames(), ", "))
}

// ParsePlace reads the name of a place, such as "US".
func ParsePlace(text string) (Place, error) {
	if _, ok := stands()[Place(text)]; !ok {
		return "", &PlaceError{text}
	}
	return Place(text), nil
}

// Places returns every place, in the order in which they are listed to a reader.
func Places() []Place { return []Place{US, EU, FR, UK, CA, AU, NZ} }

func placeNames() []string {
	var names []string
	for _, p := range Places() {
		names = append(names, string(p))
	}
	return names
}

// Note says what to know about the rows of a place; empty when there is nothing.
func (p Place) Note() string { return stands()[p].note }

// A stand says whose rows decide at a place and whose are advice there.
type stand struct {
	decides, advice []string
	note            string
}

var stands = sync.OnceValue(func() map[Place]stand {
	recs, err := records(placesCSV)
	if err != nil {
		panic(err)
	}
	out := map[Place]stand{}
	for _, rec := range recs {
		out[Place(rec["place"])] = stand{strings.Fields(rec["decides"]), strings.Fields(rec["advice"]), rec["note"]}
	}
	return out
})

// covers reports whether a jurisdiction is among the names, where US-* stands for every state of the US.
func covers(names []string, jurisdiction string) bool {
	return slices.ContainsFunc(names, func(name string) bool {
		if all, ok := strings.CutSuffix(name, "*"); ok {
			return strings.HasPrefix(jurisdiction, all)
		}
		return name == jurisdiction
	})
}
