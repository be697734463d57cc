package view

import (
	"bunkwright/furniture/fit"
	"bunkwright/render"
)

// signOf returns the sign of a verdict.
func signOf(v fit.Verdict) (render.Sign, bool) {
	switch v {
	case fit.DoesNotFit:
		return render.SignDoesNotFit, true
	case fit.TooClose:
		return render.SignTooClose, true
	case fit.CannotTell:
		return render.SignCannotTell, true
	case fit.Fits:
		return render.SignFits, true
	}
	return 0, false
}

// verdicts puts a sign at the parts of every answer that is open, on the screen, and at what is lit. Each place carries the worst of its
// answers.
func (c *canvas) verdicts(s *fit.Scene, answers []fit.Answer) {
	if c.paper() {
		return
	}
	taken := map[render.Point]bool{}
	if sign, ok := signOf(c.o.LitAs); ok {
		if at, ref := c.spotOf(c.o.Lit); ref != "" {
			taken[at] = true
			c.signAt("lit", at, sign)
		}
	}
	for _, a := range fit.ForPeople(answers) {
		sign, ok := signOf(a.Verdict)
		if !ok || !a.Verdict.Open() || a.Accepted != "" {
			continue
		}
		if at, ref := c.spotOf(a.Parts); ref != "" && !taken[at] && !(a.Verdict == fit.CannotTell && c.rings[ref]) {
			taken[at] = true
			c.signAt("answer."+a.ID, at, sign)
		}
	}
}

func (c *canvas) signAt(ref string, at render.Point, sign render.Sign) {
	c.notes = append(c.notes, label{ref: ref, home: at, near: 5, dot: at, sign: sign, on: lineGround})
}

// spotOf returns where the first of the parts that is in the view stands, and which it is.
func (c *canvas) spotOf(parts []string) (at render.Point, ref string) {
	for _, ref := range parts {
		if at, ok := c.spots[ref]; ok {
			return at, ref
		}
	}
	return render.Point{}, ""
}
