package worked

import (
	"errors"
	"math"
)

func rad(d float64) float64 { return d * math.Pi / 180 }
func viewThrough(s, h, slat, profile float64) float64 {
	return math.Max(0, 1-s/h*math.Abs(math.Cos(rad(slat-profile)))/math.Cos(rad(profile)))
}
func viewShare(face, thick, gap, angle float64) float64 {
	return math.Max(0, gap-thick*math.Tan(rad(angle))) / (gap + face)
}
func viewCutoff(thick, gap float64) float64 { return math.Atan(gap/thick) / math.Pi * 180 }
func rollingForce(floor string, load, diameter float64) (any, error) {
	mu, ok := map[string]float64{"concrete": 2.2, "tile": 2.4, "asphalt": 3.3, "industrial carpet": 4.5}[floor]
	if !ok {
		return nil, errors.New("no such floor")
	}
	return mu * load / (diameter / 2), nil
}
