package ui

import (
	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
)

// bedKind says how a size is chosen.
type bedKind int

const (
	typedLength bedKind = iota // typed, read by a tape's notation
	typedText                  // typed: a count, degrees
	typedBoard                 // typed: a board as sold, or what it really measures
	chosenWord                 // one of a few words
	ticked                     // yes or no
)

// bedCell is one size to choose: the rest of its key after the group's table, and its label.
type bedCell struct {
	key, label string
	kind       bedKind
	words      []string
}

// bedGroup is what folds as one: a title, what of the bed it is when folded, and rows of sizes.
type bedGroup struct {
	title   string
	table   string                              // the keys of its sizes begin with it
	has     func(*job.Job) bool                 // the bed has this add-on; nil: every bed has it
	summary func(*bunk.Bed, lengthWords) string // of the bed as it is built
	rows    [][]bedCell
	open    bool // at first
}

func sized(key, label string) bedCell   { return bedCell{key, label, typedLength, nil} }
func counted(key, label string) bedCell { return bedCell{key, label, typedText, nil} }
func boarded(key, label string) bedCell { return bedCell{key, label, typedBoard, nil} }
func yesNo(key, label string) bedCell   { return bedCell{key, label, ticked, nil} }
func worded(key, label string, words ...string) bedCell {
	return bedCell{key, label, chosenWord, words}
}

// bedGroups are the sizes to choose, in the order in which a bed is thought of.
var bedGroups = []bedGroup{
	{title: "Mattresses", table: "bed", rows: mattressRows, summary: mattressWords, open: true},
	{title: "Decks", table: "bed", rows: deckRows, summary: deckWords, open: true},
	{title: "Boards", table: "bed", rows: boardRows, summary: boardWords},
	{title: "Slats", table: "bed", rows: slatRows, summary: slatWords},
	{title: "Rails", table: "bed.guard", rows: railRows, summary: railWords, open: true},
	{title: "Ladder", table: "bed.ladder", rows: ladderRows, summary: ladderWords, has: hasLadder},
	{title: "Climbing end", table: "bed.climb", rows: climbRows, summary: climbWords, has: hasClimb},
	{title: "Shelves", table: "bed.shelf", summary: shelvesWords, has: hasShelves},
	{title: "Book ledge", table: "bed.books", rows: bookRows, summary: bookWords, has: hasBooks},
	{title: "Drawers", table: "bed.drawers", rows: drawerRows, summary: drawerWords, has: hasDrawers},
	{title: "Making", table: "bed", rows: makingRows, summary: makingWords},
}

// The rows of each group: a line of the column each.
var (
	mattressRows = [][]bedCell{
		{sized("upper.mattress_thick", "Top, thick"), sized("lower.mattress_thick", "Lower, thick")},
		{sized("upper.mattress_long", "Top, long"), sized("lower.mattress_long", "Lower, long")},
		{sized("upper.mattress_wide", "Top, wide"), sized("lower.mattress_wide", "Lower, wide")},
		{yesNo("upper.mattress_measured", "Top measured"), yesNo("lower.mattress_measured", "Lower measured")},
	}
	deckRows = [][]bedCell{
		{sized("upper.height", "Upper"), sized("lower.height", "Lower")},
		{worded("upper.head", "Pillow, top", "left", "right"), worded("lower.head", "Lower", "left", "right")},
	}
	boardRows = [][]bedCell{
		{boarded("post", "Posts, uprights")}, {boarded("rail", "Side rails, ends")}, {boarded("ledge", "Ledges")},
		{boarded("slat", "Slats")}, {boarded("guard.board", "Guardrails")},
	}
	slatRows = [][]bedCell{
		{counted("upper.slats", "Top, count"), counted("lower.slats", "Lower, count")},
		{sized("upper.slat_gap", "Top, gap"), sized("lower.slat_gap", "Lower, gap")},
	}
	railRows = [][]bedCell{
		{sized("top", "Top at"), sized("gap", "Ladder gap")},
		{counted("rows", "Boards high")},
		{yesNo("open_wall", "Open at wall"), yesNo("open_front", "Open in front")},
	}
	ladderRows = [][]bedCell{
		{worded("on", "Stands at", "front", "end"), worded("at", "Near end", "left", "right")},
		{counted("treads", "Treads"), counted("angle", "Slope, degrees")},
		{boarded("stile", "Sides")}, {boarded("tread", "Treads")}, {boarded("block", "Blocks under them")},
	}
	climbRows = [][]bedCell{
		{worded("at", "End", "left", "right"), yesNo("holds", "With holds")},
		{sized("gap", "Slats apart"), sized("pitch", "Holds apart")},
		{sized("top", "Highest hold"), sized("hold_deep", "Holds deep")},
		{boarded("slat", "Climbing slats")}, {boarded("panel", "Panel for holds")},
	}
	bookRows = [][]bedCell{
		{sized("from", "From left"), sized("long", "Long")},
		{boarded("board", "Board")}, {boarded("lip", "Lip in front")},
	}
	drawerRows = [][]bedCell{
		{counted("count", "How many"), sized("box_high", "Box high")},
		{sized("deep", "Deep"), sized("travel", "Pull out")},
		{sized("casters", "Casters")},
		{boarded("side", "Sides")}, {boarded("bottom", "Bottom")}, {boarded("front", "Fronts")},
	}
	makingRows = [][]bedCell{
		{worded("gaps", "Gaps are set", string(bunk.ByEye), string(bunk.BySpacer))},
		{sized("play", "Mattress play"), sized("tolerance", "Built within")},
		{counted("fastener", "Screws"), sized("bolt_stand_out", "Heads proud")},
		{yesNo("notched", "Posts notched round the baseboard")},
		{sized("notch_high", "Notch high"), sized("notch_deep", "Notch deep")},
	}
	shelfRows = [][]bedCell{ // of one shelf
		{worded("for", "For the sleeper in the", "upper", "lower")},
		{sized("height", "Top at"), sized("from", "From left")},
		{sized("long", "Long"), counted("screws_per_stud", "Screws a stud")},
		{boarded("board", "Board")}, {boarded("cleat", "Cleat")},
	}
)
