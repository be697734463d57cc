package view

import (
	"bunkwright/furniture/fit"
	"bunkwright/render"
)

// SignOf returns the sign of a verdict; ok is false for one that stands for itself.
func SignOf(v fit.Verdict) (sign render.Sign, ok bool) { return signOf(v) }
