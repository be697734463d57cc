package people

import "math"

// Differences of percentiles below are a stand-in: the tables hold no reach of a kneeling or a sitting child.

// KneelingReach returns how high over the mattress somebody kneeling up may grip, in mm: vertical grip reach less knee
// height seated, both P95. Grown-ups: overhead reach to the fingertip in place of the grip, which errs upward.
func KneelingReach(sex Sex, age float64) (float64, error) {
	up := VerticalGripReach
	if age > LastChildAge {
		up = OverheadReach
	}
	return larger(sex, func(s Sex) (float64, error) {
		reach, err := Size(up, s, age, P95)
		if err != nil {
			return 0, err
		}
		knee, err := Size(KneeHeightSeated, s, age, P95)
		return reach - knee, err
	})
}

// SeatedGripReach returns how high over the mattress a sitter can surely grip, in mm: vertical grip reach less the part of
// the stature below the seat (stature less sitting height), all P5. Grown-ups: overhead reach seated, P5.
func SeatedGripReach(sex Sex, age float64) (float64, error) {
	if age > LastChildAge {
		return SmallestSize(OverheadReachSeated, sex, age, P5)
	}
	return smaller(sex, func(s Sex) (float64, error) {
		sum := 0.0
		for _, part := range []struct {
			measure string
			sign    float64
		}{{VerticalGripReach, 1}, {Stature, -1}, {SittingHeightErect, 1}} {
			size, err := ChildSize(part.measure, s, age, P5)
			if err != nil {
				return 0, err
			}
			sum += part.sign * size
		}
		return sum, nil
	})
}

// SidewaysReach returns how far somebody may reach level from the mattress, in mm: frontal grip reach, P95. Grown-ups:
// thumb-tip reach, which errs outward.
func SidewaysReach(sex Sex, age float64) (float64, error) {
	if age > LastChildAge {
		return LargestSize(ThumbtipReach, sex, age, P95)
	}
	return LargestSize(FrontalGripReach, sex, age, P95)
}

// BedMaker returns shoulder height and forward reach in mm of the one who makes the top bed from the floor: a small woman,
// P5 of both.
func BedMaker() (shoulder, reach float64, err error) {
	if shoulder, err = AdultSize(ShoulderHeight, Female, P5); err != nil {
		return 0, 0, err
	}
	reach, err = AdultSize(ThumbtipReach, Female, P5)
	return shoulder, reach, err
}

// ParentEyes returns the eye heights in mm of a short and a tall parent standing barefoot: P5 woman and P95 man.
func ParentEyes() (short, tall float64, err error) {
	if short, err = AdultSize(EyeHeight, Female, P5); err != nil {
		return 0, 0, err
	}
	tall, err = AdultSize(EyeHeight, Male, P95)
	return short, tall, err
}

// backToShoulder is what a reach measured from the back loses at the shoulder, in mm; a judgement of the planner's
// calculation calc-bunk-reach, no source.
const backToShoulder = 110

// BunkReach returns how far in, level, a standing adult reaches over a mattress top, all in mm, from shoulder height and
// forward reach measured from the back. ok is false when the top is farther from the shoulder than the arm is long.
func BunkReach(shoulder, reach, mattressTop float64) (level float64, ok bool) {
	arm, rise := reach-backToShoulder, mattressTop-shoulder
	if !(arm >= math.Abs(rise)) {
		return 0, false
	}
	return math.Sqrt(arm*arm - rise*rise), true
}

// SightLine returns the height at which the line from an eye to a target crosses upright slats between them: eye and
// target are heights, eyeToSlats and targetBehind level distances of eye and target from the slats, all in one unit.
// It is NaN when both distances are 0.
func SightLine(eye, eyeToSlats, target, targetBehind float64) float64 {
	return target + (eye-target)*targetBehind/(targetBehind+eyeToSlats)
}
