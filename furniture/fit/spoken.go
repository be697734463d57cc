package fit

import "regexp"

var (
	pieceKey = regexp.MustCompile(`(^|[^\w.])furniture\.([\pL\pN_-]+)`)
	roomKey  = regexp.MustCompile(`(^|[^\w.])(wall|ceiling|beam|door|window|outlet|switch|register|heater|fan|light|alarm)\.([\pL\pN_-]+)`)
)

// Spoken returns a text for people: keys of the room's things in words, such as "register floor" for register.floor and "desk" for
// furniture.desk. Names of parts stay as the parts list has them.
func Spoken(text string) string {
	return roomKey.ReplaceAllString(pieceKey.ReplaceAllString(text, "$1$2"), "$1$2 $3")
}
