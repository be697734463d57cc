package survey

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
)

// Conformity says, in words, whether a measured value meets a need.
type Conformity string

// The words of the project rule: fits at a probability of conformity of 0.95 and more, does not fit at 0.05 and less.
const (
	Fits       Conformity = "fits"
	TooClose   Conformity = "too close to call"
	DoesNotFit Conformity = "does not fit"
)

// SafetyCover is how many standard uncertainties a safety item must keep to its limit (probability 0.977).
const SafetyCover = 2

// ConformityProbability returns the chance that a value measured with a margin over its need really meets it:
// the normal distribution at margin / u (JCGM 106:2012, 7.3). Without uncertainty it is 1 or 0, and 1 at margin 0.
func ConformityProbability(margin, u float64) float64 {
	switch {
	case u > 0:
		return NormalCDF(margin / u)
	case margin >= 0:
		return 1
	}
	return 0
}

// ConformityWord returns the word for a margin with standard uncertainty u: a probability of 0.95 is a margin of 1.645 u.
func ConformityWord(margin, u float64) Conformity {
	switch pc := ConformityProbability(margin, u); {
	case pc >= 0.95:
		return Fits
	case pc <= 0.05:
		return DoesNotFit
	}
	return TooClose
}

// SafetyConforms reports whether a margin keeps SafetyCover standard uncertainties.
func SafetyConforms(margin, u float64) bool { return margin >= SafetyCover*u }

// GuardBandRisk returns the largest chance of accepting what does not conform, when the acceptance limit lies
// guard times the expanded uncertainty U = k u inside the tolerance (ILAC-G8:09/2019, 4.2).
func GuardBandRisk(guard, k float64) float64 { return NormalCDF(-guard * k) }

var guardRule = regexp.MustCompile(`^g = (0|(?:([0-9.]+) ?)?U)(?:, k = ([0-9.]+))?$`)

// ParseGuardBand reads a rule such as "g = U, k = 2", "g = 0.83 U" or "g = 0"; k is 2 where the rule leaves it out.
func ParseGuardBand(rule string) (guard, k float64, err error) {
	m := guardRule.FindStringSubmatch(rule)
	if m == nil {
		return 0, 0, fmt.Errorf("guard band %q: want a rule such as g = U, k = 2", rule)
	}
	guard, k = 1, 2
	if m[1] == "0" {
		guard = 0
	}
	if m[2] != "" {
		guard, err = strconv.ParseFloat(m[2], 64)
	}
	if m[3] != "" && err == nil {
		k, err = strconv.ParseFloat(m[3], 64)
	}
	if err != nil {
		return 0, 0, fmt.Errorf("guard band %q: %w", rule, err)
	}
	return guard, k, nil
}

// SmallestReadingBeyond returns the smallest reading that shows, with probability pc, that the true value is above the
// limit, for an instrument with a relative standard uncertainty: limit / (1 - relativeU z(pc)), JCGM 106:2012, 8.3.3.2.
// +Inf where no reading would show it.
func SmallestReadingBeyond(limit, relativeU, pc float64) float64 {
	left := 1 - relativeU*NormalQuantile(pc)
	if left <= 0 {
		return math.Inf(1)
	}
	return limit / left
}
