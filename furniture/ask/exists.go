package ask

import (
	"strconv"
	"strings"

	"bunkwright/furniture/job"
	"bunkwright/room"
)

// exists tells whether a job has a table: an element of a list, or one that is always there.
func exists(j *job.Job, element string) bool {
	parts := strings.Split(element, ".")
	r := &j.Room
	named := func(n int, key func(int) string) int {
		if len(parts) < 2 {
			return -1
		}
		return indexOf(n, key, parts[1])
	}
	switch parts[0] {
	case "floor", "room":
		return true
	case "wall":
		i := named(len(r.Walls), func(i int) string { return r.Walls[i].Key })
		if len(parts) < 4 || i < 0 {
			return i >= 0
		}
		studs, plumbs := r.Walls[i].Studs, r.Walls[i].Plumbs
		if parts[2] == "plumb" {
			return indexOf(len(plumbs), func(k int) string { return plumbs[k].Key }, parts[3]) >= 0
		}
		return indexOf(len(studs), func(k int) string { return studs[k].Key }, parts[3]) >= 0
	case "ceiling":
		i := named(len(r.Ceilings), func(i int) string { return r.Ceilings[i].Key })
		if len(parts) < 4 || i < 0 {
			return i >= 0
		}
		heights := r.Ceilings[i].Heights
		return indexOf(len(heights), func(k int) string { return heights[k].Key }, parts[3]) >= 0
	case "sleeper":
		return named(len(j.Sleepers), func(i int) string { return j.Sleepers[i].Name }) >= 0
	}
	n, key := list(r, parts[0])
	return named(n, key) >= 0
}

// canBe tells whether a table that a job does not have yet is one that a reading may begin: of a wall, a diagonal, a height at a corner.
func canBe(r *room.Room, element string) bool {
	p := strings.Split(element, ".")
	n := len(r.Outline)
	from, to := -1, -1
	if len(p) > 1 && len(p[1]) == 2 {
		from, to = strings.IndexByte(r.Outline, p[1][0]), strings.IndexByte(r.Outline, p[1][1])
	}
	wall := from >= 0 && to == (from+1)%n
	switch {
	case p[0] == "wall" && len(p) == 4:
		i, err := strconv.Atoi(p[3])
		return wall && err == nil && i >= 1 && i < 100 && strconv.Itoa(i) == p[3] && (p[2] == "stud" || p[2] == "plumb")
	case p[0] == "wall":
		return wall && len(p) == 2
	case p[0] == "diagonal":
		other := func(i int) string { return r.Diagonals[i].Key }
		return len(p) == 2 && from >= 0 && from < to && !wall && from != (to+1)%n && indexOf(len(r.Diagonals), other, p[1][1:]+p[1][:1]) < 0
	case p[0] == "ceiling":
		return len(p) == 4 && p[2] == "height" && len(p[3]) == 1 && strings.Contains(r.Outline, p[3]) &&
			(p[1] == "main" && len(r.Ceilings) == 0 || indexOf(len(r.Ceilings), func(i int) string { return r.Ceilings[i].Key }, p[1]) >= 0)
	}
	return false
}

// list gives the length and the keys of a list of the room.
func list(r *room.Room, table string) (n int, key func(int) string) {
	switch table {
	case "diagonal":
		return len(r.Diagonals), func(i int) string { return r.Diagonals[i].Key }
	case "door":
		return len(r.Doors), func(i int) string { return r.Doors[i].Key }
	case "window":
		return len(r.Windows), func(i int) string { return r.Windows[i].Key }
	case "outlet":
		return len(r.Outlets), func(i int) string { return r.Outlets[i].Key }
	case "register":
		return len(r.Registers), func(i int) string { return r.Registers[i].Key }
	case "heater":
		return len(r.Heaters), func(i int) string { return r.Heaters[i].Key }
	case "fan":
		return len(r.Fans), func(i int) string { return r.Fans[i].Key }
	case "light":
		return len(r.Lights), func(i int) string { return r.Lights[i].Key }
	case "alarm":
		return len(r.Alarms), func(i int) string { return r.Alarms[i].Key }
	case "hatch":
		return len(r.Hatches), func(i int) string { return r.Hatches[i].Key }
	case "furniture":
		return len(r.Pieces), func(i int) string { return r.Pieces[i].Key }
	case "beam":
		return len(r.Beams), func(i int) string { return r.Beams[i].Key }
	}
	return 0, nil
}

// indexOf finds an element by its name, else by its running number; -1 for none.
func indexOf(n int, key func(int) string, name string) int {
	for i := range n {
		if key(i) == name {
			return i
		}
	}
	if i, err := strconv.Atoi(name); err == nil && i >= 1 && i <= n {
		return i - 1
	}
	return -1
}
