package furniture

// Wall stands for the room's wall as the second part of a joint: a cleat screwed to studs.
const Wall = "wall"

// A Joint holds two parts together.
type Joint struct {
	ID         string
	A, B       string // ids of the parts; B may be Wall
	FaceA      string // which face of A meets B: "outside face", "end", "underside"
	FaceB      string
	Glued      bool
	Fastener   string // id of fastenings known to timber ("screw-8", "lag-5/16"), or "" where the one only rests on the other
	Count      int
	From       string // id of the part the fasteners are driven through first
	ComesApart bool   // undone to take the bed apart: never glued
	Carries    bool   // B rests on A: the load passes by wood on wood, not by the screws alone
}
