package fit

import (
	"cmp"
	"slices"
)

func sortInputs(in []Input) {
	slices.SortStableFunc(in, func(a, b Input) int {
		if c := cmp.Compare(b.Share, a.Share); c != 0 {
			return c
		}
		return cmp.Compare(a.Key, b.Key)
	})
}

// ForPeople returns the answers in the order they are read in: verdict, force, safety before build before comfort, then table order.
func ForPeople(answers []Answer) []Answer {
	out := slices.Clone(answers)
	group := [...]int{Build: 1, Safety: 0, Comfort: 2}
	slices.SortStableFunc(out, func(a, b Answer) int {
		return cmp.Or(
			cmp.Compare(a.Verdict.rank(), b.Verdict.rank()),
			cmp.Compare(b.Force, a.Force),
			cmp.Compare(group[a.Group], group[b.Group]))
	})
	return out
}

// Settled tells whether nothing is left open: no answer does not fit, cannot be told or is too close, unless it was accepted.
func Settled(answers []Answer) bool {
	return !slices.ContainsFunc(answers, func(a Answer) bool { return a.Verdict.Open() && a.Accepted == "" })
}
