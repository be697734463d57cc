package main

import (
	"bunkwright/furniture/job/jobfile"
)

// open reads a job file; whatever is wrong with it is said with file, line and key.
func open(name string) (*jobfile.File, error) { return jobfile.Open(name) }
