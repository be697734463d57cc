package ui

import (
	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/render/view"
)

// inkOf is the ink of a verdict's words.
func inkOf(v fit.Verdict) render.Ink {
	switch v {
	case fit.DoesNotFit:
		return render.InkNotFit
	case fit.TooClose:
		return render.InkTooClose
	case fit.CannotTell:
		return render.InkCannotTell
	case fit.Fits:
		return render.InkFits
	}
	return render.InkSoft
}

// signAt draws the sign of a verdict, nothing for one that stands for itself.
func signAt(v fit.Verdict, c render.Point, wide render.Paper) []render.Mark {
	sign, ok := view.SignOf(v)
	if !ok {
		return nil
	}
	return sign.At("", c, wide)
}
