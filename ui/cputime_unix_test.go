//go:build unix

package ui

import (
	"syscall"
	"time"
)

// cpuTime is how long the processors have worked for this program.
func cpuTime() time.Duration {
	var r syscall.Rusage
	if syscall.Getrusage(syscall.RUSAGE_SELF, &r) != nil {
		return 0
	}
	return time.Duration(r.Utime.Nano() + r.Stime.Nano())
}
