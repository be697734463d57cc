package job

import "bunkwright/furniture/yardstick"

// PlaceNames returns the places that a job may be measured against, in the order in which they are listed.
func PlaceNames() []string {
	var names []string
	for _, p := range yardstick.Places() {
		names = append(names, string(p))
	}
	return names
}

// ConfirmIDs returns the ids of the requirements that nobody can measure: the maker answers them with yes or no.
func ConfirmIDs() []string {
	var ids []string
	for _, r := range yardstick.All() {
		if r.Role == yardstick.RoleAttribute {
			ids = append(ids, r.ID)
		}
	}
	return ids
}
