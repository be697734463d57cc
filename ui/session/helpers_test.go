package session

import (
	"bunkwright/room"
	"bunkwright/room/length"
)

func reading(mm float64) room.Reading { return room.Reading{Value: length.FromMM(mm), How: room.Mine} }

func studs(at ...float64) (out []room.Stud) {
	for _, mm := range at {
		out = append(out, room.Stud{From: "A", At: room.Measure{reading(mm)}, Found: "twice"})
	}
	return out
}
