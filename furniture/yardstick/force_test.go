package yardstick

import (
	"errors"
	"strings"
	"testing"
)

// Expected forces read by hand from places.csv and the role of each row.
func TestForceByHand(t *testing.T) {
	for _, c := range []struct {
		place Place
		id    string
		want  Force
	}{
		{US, "us-rail-over-mattress", Limit},
		{US, "us-rail-release", Limit},    // an attribute of a deciding text
		{US, "us-bunk-scope", NoForce},    // a scope row
		{US, "ladder-clear-gap", Advice},  // advisory
		{US, "ny-camp", OutsideFigure},    // a camp
		{US, "osha-labor", OutsideFigure}, // reference of the US itself
		{US, "eu-rail-over-mattress", NoForce},
		{US, "register-cover", Advice}, // jurisdiction any
		{EU, "eu-rail-over-mattress", Limit},
		{EU, "fr-age-upper", NoForce},
		{EU, "us-rail-over-mattress", NoForce},
		{FR, "fr-age-upper", Limit},
		{FR, "eu-rail-over-mattress", Limit},
		{UK, "eu-rail-over-mattress", Limit},
		{UK, "uk-1987-surface-gap", OutsideFigure}, // revoked: history
		{CA, "ca-age-upper", Limit},
		{CA, "us-rail-over-mattress", Advice},
		{CA, "us-rail-release", Advice},
		{CA, "eu-rail-over-mattress", NoForce},
		{AU, "au-rail-over-mattress", Limit},
		{AU, "asnzs-age-upper", Limit},
		{AU, "qld-wall-gap", Advice}, // a limit of a state is advice in the country
		{AU, "qld-age-upper", Advice},
		{AU, "nz-ceiling-fitting-distance", NoForce},
		{NZ, "au-gap-head", Limit},
		{NZ, "asnzs-age-upper", Limit},
		{NZ, "nz-ceiling-fitting-distance", Limit},
		{NZ, "qld-wall-gap", NoForce},
		{EU, "own-seat-clearance", Advice},
		{EU, "own-walkway", Need},
		{EU, "own-seat-near", NoForce}, // a parameter
	} {
		r, ok := Find(c.id)
		if got := ForceOf(c.place, r); !ok || got != c.want {
			t.Errorf("%s at %s: got %q, want %q", c.id, c.place, got, c.want)
		}
	}
}

// Outside figures are outside figures everywhere, and no row of a state is ever a limit (header of places.csv).
func TestForceOfEveryRow(t *testing.T) {
	for _, r := range All() {
		for _, p := range Places() {
			f := ForceOf(p, r)
			if (r.Role == RoleReference) != (f == OutsideFigure) {
				t.Errorf("%s (%s) at %s: %q", r.ID, r.Role, p, f)
			}
			if strings.Contains(r.Jurisdiction, "-") && f == Limit {
				t.Errorf("%s of %s decides at %s", r.ID, r.Jurisdiction, p)
			}
		}
	}
}

func TestStrongestForce(t *testing.T) {
	rail, _ := Find("us-rail-over-mattress")
	own, _ := Find("own-walkway")
	for _, c := range []struct {
		places []Place
		row    Row
		force  Force
		place  Place
	}{
		{[]Place{CA, US}, rail, Limit, US},
		{[]Place{EU, CA}, rail, Advice, CA},
		{[]Place{EU, AU}, rail, NoForce, EU},
		{nil, rail, NoForce, ""},
		{nil, own, Need, ""},
	} {
		if f, p := StrongestForce(c.places, c.row); f != c.force || p != c.place {
			t.Errorf("%s at %v: got %q of %q", c.row.ID, c.places, f, p)
		}
	}
}

func TestOnlyNeedsAndLimitsCount(t *testing.T) {
	for f, want := range map[Force]bool{NoForce: false, OutsideFigure: false, Advice: false, Need: true, Limit: true} {
		if f.Judged() != want {
			t.Errorf("%q counts for the verdict: %v", f, f.Judged())
		}
	}
}

func TestParsePlace(t *testing.T) {
	for _, p := range Places() {
		if got, err := ParsePlace(string(p)); got != p || err != nil {
			t.Errorf("%s: got %q, %v", p, got, err)
		}
	}
	_, err := ParsePlace("USA")
	var place *PlaceError
	if !errors.As(err, &place) || err.Error() != `place "USA": want one of US, EU, FR, UK, CA, AU, NZ` {
		t.Errorf("got %v", err)
	}
	if len(stands()) != len(Places()) {
		t.Errorf("places.csv has %d places, the code %d", len(stands()), len(Places()))
	}
	if !strings.Contains(US.Note(), "outside figures") || FR.Note() != "" {
		t.Errorf("notes: %q, %q", US.Note(), FR.Note())
	}
}
