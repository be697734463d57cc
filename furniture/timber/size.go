package timber

import (
	"fmt"
	"strings"
	"sync"

	"bunkwright/room/length"
)

// A State says how wet lumber was when it was dressed.
type State string

// The states: dry means at most 19 percent moisture (PS 20).
const (
	Dry   State = "dry"
	Green State = "green"
)

// A Size is the real section of a board.
type Size struct{ Thick, Wide length.Length }

// A StateError reports a size that is not held for a state.
type StateError struct {
	Nominal string
	State   State
}

func (e *StateError) Error() string {
	return fmt.Sprintf("lumber %s: no size for the state %q: want dry or green, and timbers are held dry only", e.Nominal, e.State)
}

type lumber struct {
	nominal string
	sizes   map[State]Size
}

var allLumber = sync.OnceValue(func() []lumber { return must(parseLumber(lumberCSV)) })

func parseLumber(text string) ([]lumber, error) {
	recs, err := records(text)
	if err != nil {
		return nil, err
	}
	var out []lumber
	for _, rec := range recs {
		var dry, green Size
		err := rec.fill(map[string]*length.Length{
			"thickness_dry_in": &dry.Thick, "width_dry_in": &dry.Wide,
			"thickness_green_in": &green.Thick, "width_green_in": &green.Wide,
		})
		if err != nil {
			return nil, fmt.Errorf("lumber %s: %w", rec["nominal"], err)
		}
		out = append(out, lumber{rec["nominal"], map[State]Size{Dry: dry, Green: green}})
	}
	return out, nil
}

var spelling = strings.NewReplacer(" ", "", "X", "x", "×", "x")

// DressedSize returns the real size of lumber called by a nominal size such as "2x4" or "5/4 x 6".
// Source: American Softwood Lumber Standard PS 20. Hardwood does not follow it: measure that.
func DressedSize(nominal string, state State) (Size, error) {
	name := spelling.Replace(nominal)
	for _, l := range allLumber() {
		if l.nominal != name {
			continue
		}
		size := l.sizes[state]
		if size.Thick == 0 || size.Wide == 0 {
			return Size{}, &StateError{name, state}
		}
		return size, nil
	}
	return Size{}, &UnknownError{"lumber size", nominal, Nominals()}
}

// Nominals returns every nominal size held, boards first, in the order of the table.
func Nominals() []string {
	var names []string
	for _, l := range allLumber() {
		names = append(names, l.nominal)
	}
	return names
}
