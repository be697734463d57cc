package people

import "math"

// A Posture says how a sleeper can sit; the zero value says that a measurement is missing.
type Posture string

// The postures, best first.
const (
	SitsFreely   Posture = "sits-freely"
	ErectTight   Posture = "erect-tight"
	SlumpedOnly  Posture = "slumped-only"
	ReclinesOnly Posture = "reclines-only"
)

// PostureBand returns how somebody of a sitting height sits under a headroom, all in mm: with the clearance over the head
// freely, without it erect but tight, else slumped by at most slump, else only reclining. Equality counts for the better.
// Source: common practice, no source.
func PostureBand(headroom, sitting, clearance, slump float64) Posture {
	air := toNM(headroom - sitting)
	switch {
	case math.IsNaN(air + clearance + slump):
		return ""
	case air >= toNM(clearance):
		return SitsFreely
	case air >= 0:
		return ErectTight
	case air >= -toNM(slump):
		return SlumpedOnly
	}
	return ReclinesOnly
}
