package survey

import (
	"math"

	"bunkwright/room/misread"
)

// ReadingStepU returns the standard uncertainty of a reading rounded to step: step / sqrt(12) (JCGM 100:2008, 4.3.7).
func ReadingStepU(step float64) float64 { return step / math.Sqrt(12) }

// NearestGraduation rounds a value to a whole number of steps, an exact half to the even one (NIST Handbook 44, 10.3).
func NearestGraduation(value, step float64) float64 { return math.RoundToEven(value/step) * step }

// SteelExpansionF is the expansion of steel per degree Fahrenheit (handbook value).
const SteelExpansionF = 6.45e-6

// TemperatureChange returns how much longer a steel tape is when it is degreesF warmer, in the unit of length.
func TemperatureChange(length, degreesF float64) float64 { return length * degreesF * SteelExpansionF }

// OffLineExcess returns how much too long a length is read when one end is offset to the side: h^2 / (2 L).
func OffLineExcess(length, offset float64) float64 { return offset * offset / (2 * length) }

// SagExcess returns how much too long a hanging tape reads over one span: w^2 L^3 / (24 P^2), with the tape's weight per
// length, the span in the same length and the pull in the same force (surveying text).
func SagExcess(weight, span, pull float64) float64 {
	return weight * weight * span * span * span / (24 * pull * pull)
}

// CombinedU returns the standard uncertainty of a sum of independent parts: the root of their squares
// (JCGM 100:2008, 5.1.2).
func CombinedU(parts ...float64) float64 {
	sum := 0.0
	for _, p := range parts {
		sum += p * p
	}
	return math.Sqrt(sum)
}

// ClosureTolerance returns, in inches, how far a sum of n pieces may miss the whole before anybody is asked:
// 1/8 in, and 1/8 in times sqrt(n) for more pieces (project rule; 1/16 in of tape by NIST Handbook 44, 5.52, and 1/16 in of reading).
func ClosureTolerance(pieces int) float64 { return misread.QuietUpTo(pieces) / 25.4 }

// Taping is one length taken with a steel tape, and the tape; feet, pounds, square inches, degrees Fahrenheit.
type Taping struct {
	Measured               float64   // as read
	Nominal, True          float64   // the tape's length by its marks, and by the test at StandardPull and StandardTemp
	StandardPull, UsedPull float64   // lb
	StandardTemp, UsedTemp float64   // degrees F
	WeightPerFoot          float64   // lb/ft
	Area, Elasticity       float64   // in2, psi
	Expansion              float64   // per degree F
	HangingSpans           []float64 // ft, the spans in which it hung; the rest lay supported
}

// Corrected returns the length in feet after the corrections for the tape's length, temperature, pull and sag
// (surveying text).
func (t Taping) Corrected() float64 {
	sum := t.Measured * (t.True - t.Nominal) / t.Nominal
	sum += t.Measured * t.Expansion * (t.UsedTemp - t.StandardTemp)
	sum += t.Measured * (t.UsedPull - t.StandardPull) / (t.Area * t.Elasticity)
	for _, span := range t.HangingSpans {
		sum -= SagExcess(t.WeightPerFoot, span, t.UsedPull)
	}
	return t.Measured + sum
}
