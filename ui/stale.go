package ui

// stale keeps a stage that is not shown from being drawn, and remembers that it has to be once it is.
type stale struct {
	w   *Window
	of  stage
	yes bool
}

// unless draws where the stage is shown.
func (s *stale) unless(draw func()) {
	if s.w.stage != s.of {
		s.yes = true
		return
	}
	draw()
}

// now draws what was not drawn while another stage was shown.
func (s *stale) now(draw func()) {
	if s.yes {
		s.yes = false
		draw()
	}
}
