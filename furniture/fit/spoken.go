package fit

import "regexp"

var (
	pieceKey = regexp.MustCompile(`(^|[^\w.])furniture\.([\pL\pN_-]+)`)
	roomKey  = regexp.MustCompile(`(^|[^\w.])(wall|ceiling|beam|door|window|outlet|switch|register|heater|fan|light|alarm)\.([\pL\pN_-]+)`)
)

// partID finds what may be the id of a part in a text.
var partID = regexp.MustCompile(`[\pL\pN_-]+(\.[\pL\pN_-]+)+`)

// Called returns a text with the ids of the bed's parts as their names: "upright 1, guardrail, front" for guard.front.upright.1.
func (s *Scene) Called(text string) string {
	if s == nil || s.Bed == nil {
		return text
	}
	return partID.ReplaceAllStringFunc(text, func(id string) string {
		for i := range s.Bed.Parts {
			if p := &s.Bed.Parts[i]; p.ID == id {
				return p.Name
			}
		}
		return id
	})
}

// Spoken returns a text for people: keys of the room's things in words, such as "register floor" for register.floor and "desk" for
// furniture.desk. Ids of parts stay; Called has their names.
func Spoken(text string) string {
	return roomKey.ReplaceAllString(pieceKey.ReplaceAllString(text, "$1$2"), "$1$2 $3")
}
