package fit

import "bunkwright/furniture/yardstick"

// confirmations returns a reading for each attribute row of a question: what the maker says of it in the job.
func (s *Scene) confirmations(question string) []Reading {
	var out []Reading
	for _, row := range yardstick.OfQuestion(question) {
		if row.Role == yardstick.RoleAttribute {
			out = append(out, Reading{At: "confirmed." + row.ID, Rows: []string{row.ID}})
		}
	}
	return out
}

// confirmWords is the question that a maker answers for a row: its own, or whether the need of a number is met.
func (s *Scene) confirmWords(row *yardstick.Row) string {
	if row.Relation.Answer() {
		return row.Quantity + "?"
	}
	return "is the " + row.Quantity + " " + Line{Row: row}.Against(s.unit()) + "?"
}
