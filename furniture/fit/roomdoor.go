package fit

// roomDoors returns the places, in the room's list, of the doors that may be the door of the room: those in the first wall of the outline
// that do not lead to a closet, a bathroom or outside; where there is none, those in the other walls; where there is none either, those
// that lead outside.
func (s *Scene) roomDoors() []int {
	var first, others, outside []int
	for i := range s.Job.Room.Doors {
		switch to := s.Job.Room.Doors[i].LeadsTo; {
		case to == "closet" || to == "bathroom":
		case to == "outside":
			outside = append(outside, i)
		case s.Survey.Layout.Doors[i].Wall == 0:
			first = append(first, i)
		default:
			others = append(others, i)
		}
	}
	switch {
	case len(first) > 0:
		return first
	case len(others) > 0:
		return others
	}
	return outside
}

// askRoomDoor asks for a door where none may be the door of the room.
const askRoomDoor = "where is the door of the room?"

// askDoor asks where a door is.
func (s *Scene) askDoor(i int) string { return "where is " + s.keys.doors[i] + ", and how wide?" }

// roomDoorWords says in the help of a question which door is meant.
const roomDoorWords = "The door of the room is the one in the first wall of the outline that does not lead to a closet, a bathroom or outside; " +
	"where that wall has none, one in another wall, then one that leads outside, and without any it is asked for;"
