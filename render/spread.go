package render

// Spread moves labels along a line, as little as possible, until none overlaps the next. Label
// i wants its middle at want[i] and takes size[i]; want must not decrease. The result keeps the
// order and makes the sum of the squared moves least (pooling of adjacent violators, as in
// isotonic regression: Barlow and others, Statistical Inference under Order Restrictions, 1972).
func Spread(want, size []Paper) []Paper {
	// Taking off the room that the labels before need leaves places that must only not decrease.
	var pools []pool
	room := make([]Paper, len(want))
	for i := range want {
		if i > 0 {
			room[i] = room[i-1] + (size[i-1]+size[i])/2
		}
		pools = append(pools, pool{want[i] - room[i], 1})
		for n := len(pools); n > 1 && pools[n-2].mean > pools[n-1].mean; n-- {
			pools[n-2] = pools[n-2].with(pools[n-1])
			pools = pools[:n-1]
		}
	}
	at := make([]Paper, 0, len(want))
	for _, p := range pools {
		for range p.count {
			at = append(at, p.mean+room[len(at)])
		}
	}
	return at
}

// pool is a number of labels that touch each other.
type pool struct {
	mean  Paper
	count int
}

func (p pool) with(q pool) pool {
	n := p.count + q.count
	return pool{(p.mean*Paper(p.count) + q.mean*Paper(q.count)) / Paper(n), n}
}
