package fit

import (
	"fmt"
	"strings"
)

// rollingFloor is a floor with its rolling coefficient under hard rubber wheels, mm (Applied Ergonomics 30 (1999) 235-245).
type rollingFloor struct {
	name        string
	coefficient float64
}

var rollingFloors = []rollingFloor{{"concrete", 2.2}, {"tile", 2.4}, {"asphalt", 3.3}, {"industrial carpet", 4.5}}

// RollingForce returns the force that keeps a load rolling over a floor, in the unit of the load, on wheels of a diameter in mm:
// coefficient x load / radius. The width of the wheels has no effect. Floors: concrete, tile, asphalt, industrial carpet.
func RollingForce(floor string, load, diameter float64) (float64, error) {
	var names []string
	for _, f := range rollingFloors {
		if f.name == floor {
			return f.coefficient * load / (diameter / 2), nil
		}
		names = append(names, f.name)
	}
	return 0, fmt.Errorf("floor %q: want one of %s", floor, strings.Join(names, ", "))
}
