package render

// Ink is what a mark is drawn for, not a colour: a palette turns it into one.
type Ink uint8

// The inks. Text is set in the inks up to InkFits, and on boards, cut walls and lit fills only
// in InkMain, so that it reads in every palette.
const (
	InkMain         Ink = iota // lines and words
	InkSoft                    // secondary words
	InkNotFit                  // does not fit, does not agree; nothing else is red
	InkTooClose                // too close to call
	InkCannotTell              // cannot tell yet
	InkFits                    // fits
	InkNotFitTint              // ground of what does not fit
	InkTooCloseTint            // ground of what is too close to call
	InkOnSign                  // the cross or tick upon a filled sign
	InkPaper                   // ground of drawings
	InkPanel                   // ground of panels
	InkWell                    // sunken ground
	InkTape                    // ground of the tape strip
	InkField                   // ground of fields
	InkChosenRow               // ground of a chosen row
	InkWhite                   // bedding and whatever is white in the room
	InkBoard                   // a board's face
	InkEndGrain                // a board's end, a post
	InkDrawerFront             // a drawer's front
	InkWallCut                 // a wall cut through
	InkChosenWall              // the chosen wall
	InkGlass                   // window panes
	InkHairline                // rules between rows
	InkLit                     // being edited, at the stop, or shown by a question
	inks
)

var inkNames = [inks]string{
	"main", "soft", "not-fit", "too-close", "cannot-tell", "fits", "not-fit-tint", "too-close-tint",
	"on-sign", "paper", "panel", "well", "tape", "field", "chosen-row", "white", "board",
	"end-grain", "drawer-front", "wall-cut", "chosen-wall", "glass", "hairline", "lit",
}

// String returns the ink's name as Dump prints it.
func (i Ink) String() string {
	if i >= inks {
		return "unknown"
	}
	return inkNames[i]
}
