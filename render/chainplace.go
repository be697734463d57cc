package render

// placeEnds moves the first and the last label of a level chain beyond its ends if they have no
// room in the line. An upright chain has room for them beside it, at their own height.
func (s Style) placeEnds(c Chain, labels []label, before bool) {
	if c.Along == Upright {
		return
	}
	first, last := &labels[0], &labels[len(labels)-1]
	if first.place == inRow && (len(labels) > 1 || before) {
		first.place = atEnd
		first.along = c.Stops[0] - s.Over - first.half.X
	}
	if last.place == inRow {
		last.place = atEnd
		last.along = c.Stops[len(labels)] + s.Over + last.half.X
	}
}

// placeRow lays out the second row and returns how far off the line its leaders bend and end.
func (s Style) placeRow(c Chain, labels []label) (knee, edge Paper) {
	row := rowOf(labels)
	moved, deep := false, Paper(0)
	for _, l := range row {
		moved = moved || l.moved()
		deep = max(deep, l.half.Y)
	}
	knee = s.clearOf(c, labels, row, moved)
	edge = knee
	if moved {
		edge += s.Tick * 0.8 // room for the slanted part of the leaders
	}
	for _, l := range row {
		switch {
		case c.Along == Level: // on one baseline
			l.off = c.out(edge + deep)
		case l.alone(labels):
			l.off = c.out(s.clearOfTicks() + l.half.Y)
		default: // in one column
			l.off = c.out(edge + l.half.Y)
		}
	}
	return knee, edge
}

// rowOf returns the labels of the second row, spread out so that they clear each other.
func rowOf(labels []label) []*label {
	var row []*label
	var want, size []Paper
	for i := range labels {
		if l := &labels[i]; l.place == inRow {
			row = append(row, l)
			want, size = append(want, l.mid), append(size, 2*l.half.X)
		}
	}
	for i, at := range Spread(want, size) {
		row[i].along = at
	}
	return row
}

// moved reports whether a label no longer stands over its own span and needs a leader.
func (l *label) moved() bool { return max(l.along-l.mid, l.mid-l.along) > l.length/2 }

// alone reports whether a label of the second row of an upright chain can stand at the line
// itself: it is at its own span, and neither a label in the line nor a leader is in its way.
func (l *label) alone(labels []label) bool {
	if l.moved() {
		return false
	}
	for i := range labels {
		o := &labels[i]
		away := max(o.mid-l.along, l.along-o.mid)
		if o.place == inLine && away < l.half.X+o.half.X || o.place == inRow && o != l && away < l.half.X {
			return false
		}
	}
	return true
}

// clearOf returns the distance off the line that clears the ticks and those labels in the line
// which the second row could touch: on a level chain any of them, on an upright one only those
// at the same height, so that a figure stays near its span.
func (s Style) clearOf(c Chain, labels []label, row []*label, moved bool) Paper {
	clear := s.clearOfTicks()
	for i := range labels {
		l := &labels[i]
		if l.place != inLine && l.place != atEnd {
			continue
		}
		if c.Along == Level || moved || l.besideAny(row) {
			clear = max(clear, l.half.Y)
		}
	}
	return clear
}

func (s Style) clearOfTicks() Paper { return max(s.Over, s.Tick/2) }

func (l *label) besideAny(row []*label) bool {
	for _, r := range row {
		if max(l.along-r.along, r.along-l.along) < l.half.X+r.half.X {
			return true
		}
	}
	return false
}
