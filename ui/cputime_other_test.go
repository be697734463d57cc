//go:build !unix

package ui

import "time"

// cpuTime is not known here; benchmarks then tell the time on the clock alone.
func cpuTime() time.Duration { return 0 }
