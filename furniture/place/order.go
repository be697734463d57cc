package place

import (
	"fmt"
	"slices"

	"bunkwright/furniture/fit"
)

// A Criterion is one thing that spots are ranked by: the verdict of a question, or a measure of comfort that is worked out here.
type Criterion struct {
	ID      string
	Group   fit.Group
	Words   string // as a list of them shows it
	Measure bool   // it is a measure, not a question
}

// Criteria lists everything that spots may be ranked by, in the order that counts where the maker chooses no other: safety answers, then
// the build, then comfort. Whether cleats find studs is asked with the build here: where the bed stands can still be changed for it.
func Criteria() []Criterion { return slices.Clone(criteria) }

var criteria = []Criterion{
	{"way-out", fit.Safety, "Way out kept", false},
	{"fan-and-lights", fit.Safety, "Fan and lights out of reach", false},
	{"window-fall", fit.Safety, "No fall out of the window", false},
	{"window-cords", fit.Safety, "Cords out of reach", false},
	{"heat", fit.Safety, "Clear of heaters", false},
	{"wall-gap", fit.Safety, "Gap at the wall closed", false},
	{"climb-space", fit.Safety, "Floor below the climbing end", false},
	{"shelf-heights", fit.Safety, "Shelves within reach", false},
	{"stands", fit.Build, "Stands there", false},
	{"doors-swing", fit.Build, "Doors open fully", false},
	{"drawers-open", fit.Build, "Drawers come out", false},
	{"ladder-landing", fit.Build, "Room off the ladder", false},
	{"walkway", fit.Build, "Clear way to the door", false},
	{"studs-hit", fit.Build, "Studs for shelves", false},
	{"screw-length", fit.Build, "Screws into the wood", false},
	{"air", fit.Build, "Registers left open", false},
	{"power", fit.Build, "Outlets within reach", false},
	{"sit-up-top", fit.Comfort, "Top sleeper sits up", false},
	{"sit-up-bottom", fit.Comfort, "Lower sleeper sits up", false},
	{"lie-and-turn", fit.Comfort, "Room to turn over", false},
	{"make-the-bed", fit.Comfort, "Top bed can be made", false},
	{"see-them", fit.Comfort, "Lower pillow seen", false},
	{PillowOutlet, fit.Comfort, "Outlet by the pillow", true},
	{FreeSquare, fit.Comfort, "Largest clear floor", true},
	{WayLength, fit.Comfort, "Short way from the door", true},
	{PillowWindow, fit.Comfort, "Pillow away from the window", true},
	{StudsBehind, fit.Comfort, "Studs found behind shelves", true},
}

// An Order is the ids of criteria, the one that counts most first. A spot goes before another by the first of them in which they differ.
type Order []string

// DefaultOrder returns the order of Criteria.
func DefaultOrder() Order {
	out := make(Order, len(criteria))
	for i, c := range criteria {
		out[i] = c.ID
	}
	return out
}

// Move returns the order with one criterion moved up (negative) or down by some places.
func (o Order) Move(id string, by int) Order {
	out := slices.Clone(o)
	i := slices.Index(out, id)
	if i < 0 {
		return out
	}
	to := min(max(i+by, 0), len(out)-1)
	out = slices.Delete(out, i, i+1)
	return slices.Insert(out, to, id)
}

// An OrderError reports an id that no criterion has, or one that is there twice.
type OrderError struct{ ID string }

func (e *OrderError) Error() string {
	return fmt.Sprintf("order of spots: %q is no criterion, or is there twice", e.ID)
}

// complete returns the order with what it leaves out at its end, in the usual order.
func (o Order) complete() (Order, error) {
	var out Order
	for _, id := range o {
		if find(id) < 0 || slices.Contains(out, id) {
			return nil, &OrderError{id}
		}
		out = append(out, id)
	}
	for _, c := range criteria {
		if !slices.Contains(out, c.ID) {
			out = append(out, c.ID)
		}
	}
	return out, nil
}

func find(id string) int {
	return slices.IndexFunc(criteria, func(c Criterion) bool { return c.ID == id })
}
