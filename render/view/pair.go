package view

import (
	"bunkwright/furniture/fit"
	"bunkwright/render"
)

// Pair draws the room from above and, below it, a wall face on, in one scale and from one left edge, so that a stud stands straight under
// itself. The wall lies at the top of the plan. The box of the options holds both; share is the part of its height that is the plan's,
// 0 where each is to take what it needs.
func Pair(s *fit.Scene, answers []fit.Answer, key string, o Options, share float64) (plan, wall render.Drawing) {
	w := wallNamed(s, key)
	if w == nil || !(o.W > 0 && o.H > 0) {
		return Plan(s, answers, o), Wall(s, answers, key, o)
	}
	o.Top = key
	p := pairing{o: o, share: share}
	planner, facing := newPlanner(s, o), newFacing(s, w)
	p.views[0] = pairView{func(c *canvas) { q := *planner; q.canvas = c; q.paint(answers) }, 0, render.Rect{}}
	p.views[1] = pairView{func(c *canvas) { q := *facing; q.canvas = c; q.paint(answers) }, facing.high, render.Rect{}}
	lo, hi := planner.outline.Bounds()
	p.wide, p.views[0].high = max(hi.X-lo.X, w.Len), hi.Y-lo.Y
	o.Scale = p.fit()
	return p.draw("Room from above", o, 0), p.draw("Wall "+between(key), o, 1)
}

// pairing is two views that share a scale and a left edge.
type pairing struct {
	o     Options
	share float64
	wide  float64 // of the wider view, mm
	views [2]pairView
}

// pairView is one of them: how it is painted, how high it is in mm, and what it covers on paper about its origin.
type pairView struct {
	paint func(*canvas)
	high  float64
	b     render.Rect
}

// fit finds the largest scale at which both fit the box.
func (p *pairing) fit() float64 {
	k := p.o.Scale
	if k > 0 {
		p.measure(k)
		return k
	}
	k = 0.6 * min(float64(p.o.W)/p.wide, float64(p.o.H)/(p.views[0].high+p.views[1].high))
	for range tries {
		p.measure(k)
		next := p.larger(k)
		if next < k*1.005 && next > k*0.995 {
			break
		}
		k = max(next, k/4)
	}
	p.measure(k)
	return k
}

// measure notes what the views cover at a scale.
func (p *pairing) measure(k float64) {
	o := p.o
	o.Origin = &render.Point{}
	for i := range p.views {
		p.views[i].b = render.Bounds(o.rough(k, p.views[i].paint))
	}
}

// larger returns the scale at which the views would fill the box, if what stands round them keeps its size.
func (p *pairing) larger(k float64) float64 {
	a, b := p.views[0], p.views[1]
	round := float64(max(a.b.Max.X, b.b.Max.X)-min(a.b.Min.X, b.b.Min.X)) - k*p.wide
	next := (float64(p.o.W-2*edge) - round) / p.wide
	if p.share > 0 {
		for i, v := range p.views {
			next = min(next, (float64(p.height(i)-2*edge-v.b.H())+k*v.high)/v.high)
		}
		return next
	}
	both := a.high + b.high
	return min(next, (float64(p.o.H-4*edge-a.b.H()-b.b.H())+k*both)/both)
}

// height is the height of a view's own box.
func (p *pairing) height(i int) render.Paper {
	first := p.o.H * render.Paper(p.share)
	if p.share <= 0 {
		spare := p.o.H - p.views[0].b.H() - p.views[1].b.H()
		first = p.views[0].b.H() + spare/2
	}
	if i == 0 {
		return first
	}
	return p.o.H - first
}

// draw draws a view in its box, from the left edge that both share.
func (p *pairing) draw(title string, o Options, i int) render.Drawing {
	o.H = p.height(i)
	if o.Origin == nil {
		a, b := p.views[0].b, p.views[1].b
		left, right := min(a.Min.X, b.Min.X), max(a.Max.X, b.Max.X)
		own := p.views[i].b
		o.Origin = &render.Point{X: (o.W-(right-left))/2 - left, Y: (o.H-own.H())/2 - own.Min.Y}
	}
	return o.draw(title, 0, 0, p.views[i].paint)
}
