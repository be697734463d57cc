package fit

import (
	"math"
	"testing"
)

// TestEveryNumberIsFinite: wherever the bed is put, in the room or through a wall, every number of every answer can be printed.
func TestEveryNumberIsFinite(t *testing.T) {
	for _, name := range []string{"town-house.toml", "basement.toml", "l-shaped.toml"} {
		j := sample(t, name)
		s := stage(t, j)
		for _, p := range places(j) {
			for _, along := range []float64{0, 700, 2500} {
				p.Along = mm(along)
				s.Put(p)
				for _, q := range questions {
					finite(t, name, p.Wall, s.Nominal(q))
				}
			}
		}
	}
}

func finite(t *testing.T, name, wall string, a Answer) {
	t.Helper()
	bad := func(x float64) bool { return math.IsNaN(x) || math.IsInf(x, 0) }
	for _, l := range a.Lines {
		if l.Has && (bad(l.Value) || bad(l.Spare) || bad(l.U)) {
			t.Errorf("%s at %s: %s %s at %s: value %v, spare %v, u %v", name, wall, a.ID, l.Row.ID, l.At, l.Value, l.Spare, l.U)
		}
	}
	for _, f := range a.Figures {
		if bad(f.Value) {
			t.Errorf("%s at %s: %s figure %s: %v", name, wall, a.ID, f.Name, f.Value)
		}
	}
}
