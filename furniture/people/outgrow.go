package people

import (
	"errors"
	"math"
)

// ErrNoNumber reports a measurement that is missing (NaN).
var ErrNoNumber = errors.New("a measurement is missing")

// HeadroomAge returns the first age in years at which sitting height + clearance - compression exceeds a headroom, all in
// mm: until then somebody of that percentile can sit up. It is 2, the first age of the table, for a headroom that is too
// low even then; outgrown is false when it is not by 18. An unknown sex takes the earlier of the two.
func HeadroomAge(headroom, clearance, compression float64, sex Sex, stat Stat) (age float64, outgrown bool, err error) {
	limit := headroom - clearance + compression
	return earlier(sex, func(s Sex) (float64, bool, error) {
		return firstOver(limit, FirstChildAge, func(a float64) (float64, error) { return sittingAt(s, a, stat) })
	})
}

// NamedZ returns how many standard deviations one child's measured sitting height in mm lies over the mean of that age.
func NamedZ(sex Sex, age, sitting float64) (float64, error) {
	mean, err := sittingAt(sex, age, Mean)
	if err != nil {
		return 0, err
	}
	sd, err := sittingAt(sex, age, SD)
	if err != nil {
		return 0, err
	}
	return (sitting - mean) / sd, nil
}

// NamedAge is HeadroomAge for one measured child, followed upward from its age at a steady z (an assumption through
// puberty). It is the age given when the headroom is too low already.
func NamedAge(sex Sex, age, sitting, headroom, clearance, compression float64) (outgrownAt float64, outgrown bool, err error) {
	limit := headroom - clearance + compression
	return earlier(sex, func(s Sex) (float64, bool, error) {
		z, err := NamedZ(s, age, sitting)
		if err != nil {
			return 0, false, err
		}
		return firstOver(limit, age, func(a float64) (float64, error) { return sittingAtZ(s, a, z) })
	})
}

func sittingAtZ(sex Sex, age, z float64) (float64, error) {
	mean, err := sittingAt(sex, age, Mean)
	if err != nil {
		return 0, err
	}
	sd, err := sittingAt(sex, age, SD)
	return mean + z*sd, err
}

// firstOver follows a height over age, straight between half-years, to where it first exceeds the limit.
// Equal to 1 nm is not over.
func firstOver(limit, from float64, height func(age float64) (float64, error)) (age float64, over bool, err error) {
	before, err := height(from)
	if err != nil {
		return 0, false, err
	}
	if math.IsNaN(limit - before) {
		return 0, false, ErrNoNumber
	}
	if toNM(before) > toNM(limit) {
		return from, true, nil
	}
	for at := from; at < LastChildAge; {
		next := (math.Floor(at/halfYear) + 1) * halfYear
		after, err := height(next)
		if err != nil {
			return 0, false, err
		}
		if toNM(after) > toNM(limit) {
			return at + (next-at)*max(limit-before, 0)/(after-before), true, nil
		}
		at, before = next, after
	}
	return 0, false, nil
}

// toNM rounds mm to whole nanometres, so that sums that are equal in exact arithmetic compare equal.
func toNM(mm float64) float64 { return math.Round(mm * 1e6) }

// earlier settles an unknown sex by the sex that outgrows the headroom first.
func earlier(sex Sex, of func(Sex) (float64, bool, error)) (age float64, outgrown bool, err error) {
	if sex != Unknown {
		return of(sex)
	}
	m, mOver, err := of(Male)
	if err != nil {
		return 0, false, err
	}
	f, fOver, err := of(Female)
	if err != nil || !fOver || mOver && m <= f {
		return m, mOver, err
	}
	return f, fOver, nil
}
