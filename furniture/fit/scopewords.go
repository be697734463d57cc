package fit

import "bunkwright/furniture/yardstick"

// outsideWords says in words that a scope row does not hold: "drop from the window: not more than 72 in".
func (s *Scene) outsideWords(scope *yardstick.Row) string {
	if scope.Relation.Answer() {
		return scope.Quantity + ": not so here"
	}
	return scope.Quantity + ": not " + Line{Row: scope}.Against(s.unit())
}
