package fit

// facts are what several questions need of the room, and of the bed where it stands, each worked out when it is first asked for. What is
// handed out is shared: nobody may change it.
type facts struct {
	swings, panes, things, walls, alongs, floor bool // worked out

	swingList []swing
	paneList  []pane
	thingList []stander
	thingAsk  string
	wallList  []stander
	alongList []Reading
	floorList []stander // hangs on where the bed stands
}

// forgetPlace drops the facts that hang on where the bed stands.
func (s *Scene) forgetPlace() { s.facts.floor = false }

// forget drops all facts: a quantity of the room was moved.
func (s *Scene) forget() { s.facts = facts{} }
