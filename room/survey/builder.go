package survey

import (
	"math"
	"reflect"
	"slices"

	"bunkwright/room"
)

// builder turns the record of a room into unknowns and equations.
type builder struct {
	s         *Survey
	o         Options
	start     []float64
	equations []Equation
	half      map[Ref]bool // quantities that only a combination of readings determines
	corners   []Position
	plan      []vec2 // approximate corners
	roundOff  bool   // the outline could not be drawn even roughly
	finder    *finder
	manner
}

type vec2 struct{ x, y float64 }

// unknown makes a new quantity with an approximate value.
func (b *builder) unknown(key string, start float64) Ref {
	b.start = append(b.start, start)
	b.s.Keys = append(b.s.Keys, key)
	r := Ref(len(b.start))
	b.s.refs[key] = r
	return r
}

// observe adds an equation with the source it came from.
func (b *builder) observe(e Equation, src Source) {
	src.Value, src.U = e.Observed, e.Sigma
	b.equations = append(b.equations, e)
	b.s.Sources = append(b.s.Sources, src)
}

// read adds one equation for each reading of a measure.
func (b *builder) read(key string, m room.Measure, make func(observed, sigma float64) Equation) {
	for i, r := range m {
		b.readOne(key, i, r, make)
	}
}

func (b *builder) readOne(key string, i int, r room.Reading, make func(observed, sigma float64) Equation) {
	how := r.How
	if how == "" {
		how = room.Once
	}
	b.observe(make(r.Value.MM(), b.s.u.of(r)), Source{Key: key, How: how, By: r.By, When: r.When, Index: i, Exact: r.Value})
	last := &b.s.Sources[len(b.s.Sources)-1]
	last.Aside = b.without != nil && b.without.Key == key && b.without.Index == i
}

// suppose adds an equation for what is taken for granted.
func (b *builder) suppose(e Equation) {
	b.observe(e, Source{Key: e.Key, How: room.Assumed, Index: -1})
}

// quantity makes a quantity that is read directly; without a reading it stays unknown unless a default is given with its standard
// uncertainty in mm (sigma 0: none).
func (b *builder) quantity(key string, m room.Measure, sigma float64) Ref {
	if len(m) == 0 {
		return 0
	}
	r := b.unknown(key, m[0].Value.MM())
	b.read(key, m, func(observed, s float64) Equation {
		if sigma > 0 {
			s = sigma
		}
		return LinearEquation(key, []Term{{int(r - 1), 1}}, 0, observed, s)
	})
	return r
}

// assumed makes a quantity of a default value.
func (b *builder) assumed(key string, value, within float64) Ref {
	r := b.unknown(key, value)
	b.suppose(LinearEquation(key, []Term{{int(r - 1), 1}}, 0, value, within/math.Sqrt(3)))
	return r
}

// fill makes the quantities of a fixture and writes their refs into the fields of refs that bear the same names.
func (b *builder) fill(prefix string, fixture, refs any) {
	dst := reflect.ValueOf(refs).Elem()
	measures(reflect.ValueOf(fixture), func(name, key string, m room.Measure, tag reflect.StructTag) {
		field := dst.FieldByName(name)
		if !field.IsValid() || field.Int() != 0 {
			return
		}
		full := prefix + "." + key
		r := b.quantity(full, m, 0)
		if r == 0 {
			if value, within, ok := Default(tag); ok {
				r = b.assumed(full, value.MM(), within.MM())
			}
		}
		field.SetInt(int64(r))
	})
}

// solve adjusts everything but the readings known to be impossible.
func (b *builder) solve() error {
	t := Testing{Believed: map[int]bool{}}
	for i, src := range b.s.Sources {
		if src.Index < 0 {
			t.Believed[i] = true
		}
		if src.Aside {
			t.Aside = append(t.Aside, i)
		}
	}
	b.finder = newFinder(Problem{Start: b.start, Equations: b.equations, FreeDatum: true}, t)
	var err error
	b.s.adjusted, err = b.finder.solve(false)
	return err
}

// search looks for wrong readings and keeps the adjustment without them; quantities that the readings leave open become unknown.
func (b *builder) search() error {
	found, err := b.finder.run(b.s.adjusted)
	if err != nil {
		return err
	}
	b.s.found, b.s.adjusted, b.s.X = found, found.Solution, found.Solution.X
	for _, a := range found.Aside {
		b.s.Sources[a.Equation].Aside = true
	}
	b.s.Outline = len(b.corners) > 2 && !b.roundOff
	for _, i := range found.Solution.Undetermined {
		b.forget(Ref(i + 1))
	}
	if b.roundOff {
		b.forgetCorners()
	}
	return nil
}

func (b *builder) forgetCorners() {
	for _, r := range slices.Concat(b.s.Layout.X, b.s.Layout.Y) {
		if r != 0 {
			b.forget(r)
		}
	}
}

// forget makes a quantity unknown after all.
func (b *builder) forget(r Ref) {
	key := b.s.Key(r)
	if slices.Contains(b.s.Layout.X, r) || slices.Contains(b.s.Layout.Y, r) {
		b.s.Outline = false
	}
	b.s.X[r-1] = math.NaN()
	delete(b.s.refs, key)
}
