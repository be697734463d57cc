package ask

import (
	"strings"

	"bunkwright/furniture/job"
	"bunkwright/room/length"
)

// start says how to find the first corner and which way to go round.
func (w *walker) start() string {
	order := strings.Join(w.corners, ", ")
	wall := w.wallKeys()[0]
	for _, d := range w.j.Room.Doors {
		if d.Wall != "" && d.LeadsTo != "closet" && d.LeadsTo != "bathroom" {
			wall = d.Wall
			break
		}
	}
	text := "Stand inside and face the wall with the door of the room: its left end is corner " + wall[:1] + "."
	return text + " Going on to the right, round the room, the corners are " + rotated(w.corners, wall[:1], order) + ". Write the letters on paper and put one in each corner."
}

// rotated lists the corners from one on.
func rotated(corners []string, from, order string) string {
	i := strings.Index(strings.Join(corners, ""), from)
	if i < 0 {
		return order
	}
	return strings.Join(append(append([]string(nil), corners[i:]...), corners[:i]...), ", ")
}

// bring lists what to have at hand.
func bring(j *job.Job) []string {
	tape := "a tape of 16 ft or more"
	if unitOf(j.Unit) == length.Millimetres {
		tape = "a tape of 5 m or more"
	}
	return []string{tape + ", the same one throughout: say which unit it reads", "somebody to hold the other end", "a phone that takes pictures", "paper and a pencil", "a firm step ladder for the ceiling"}
}

// cautions are read before anything is measured (usual cautions, common practice, no source).
var cautions = []string{
	"Stand on a firm step ladder, never on a chair or a bed, and have somebody hold it. What cannot be reached safely is left out.",
	"A ceiling fan is switched off at the wall and stands still before a tape goes near it.",
	"A tape is metal: keep it and its hook out of outlets and away from lamps and wires. Take no cover off.",
	"Measure a window from inside with both feet on the floor.",
}
