package ui

import (
	"fmt"

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
	table   string                 // the keys of its sizes begin with it
	has     func(*job.Job) bool    // the bed has this add-on; nil: every bed has it
	summary func(*bunk.Bed) string // of the bed as it is built
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
func bedGroups(l *live) []bedGroup {
	return []bedGroup{
		{
			title: "Mattresses", table: "bed", open: true,
			summary: func(b *bunk.Bed) string {
				return l.shows(b.Sizes.Upper.MattressThick) + " and " + l.shows(b.Sizes.Lower.MattressThick) + " thick"
			},
			rows: [][]bedCell{
				{sized("upper.mattress_thick", "Top, thick"), sized("lower.mattress_thick", "Lower, thick")},
				{sized("upper.mattress_long", "Top, long"), sized("lower.mattress_long", "Lower, long")},
				{sized("upper.mattress_wide", "Top, wide"), sized("lower.mattress_wide", "Lower, wide")},
				{yesNo("upper.mattress_measured", "Top measured"), yesNo("lower.mattress_measured", "Lower measured")},
			},
		},
		{
			title: "Decks", table: "bed", open: true,
			summary: func(b *bunk.Bed) string {
				return l.shows(b.Sizes.Upper.Height) + " and " + l.shows(b.Sizes.Lower.Height) + " over the floor"
			},
			rows: [][]bedCell{
				{sized("upper.height", "Upper"), sized("lower.height", "Lower")},
				{worded("upper.head", "Pillow, top", "left", "right"), worded("lower.head", "Lower", "left", "right")},
			},
		},
		{
			title: "Boards", table: "bed",
			summary: func(b *bunk.Bed) string {
				return b.Sizes.Post.Name + " posts, " + b.Sizes.Rail.Name + " rails, " + b.Sizes.Slat.Name + " slats"
			},
			rows: [][]bedCell{
				{boarded("post", "Posts, uprights")}, {boarded("rail", "Side rails, ends")}, {boarded("ledge", "Ledges")},
				{boarded("slat", "Slats")}, {boarded("guard.board", "Guardrails")},
			},
		},
		{
			title: "Slats", table: "bed",
			summary: func(b *bunk.Bed) string {
				return fmt.Sprintf("%d and %d, %s apart", b.Upper.SlatCount, b.Lower.SlatCount, l.say(b.Upper.SlatGap))
			},
			rows: [][]bedCell{
				{counted("upper.slats", "Top, count"), counted("lower.slats", "Lower, count")},
				{sized("upper.slat_gap", "Top, gap"), sized("lower.slat_gap", "Lower, gap")},
			},
		},
		{
			title: "Rails", table: "bed.guard", open: true,
			summary: func(b *bunk.Bed) string {
				return "top at " + l.shows(b.Sizes.Guard.Top) + ", " + plural(b.Sizes.Guard.Rows, "board") + " each"
			},
			rows: [][]bedCell{
				{sized("top", "Top at"), sized("gap", "Ladder gap")},
				{counted("rows", "Boards high")},
				{yesNo("open_wall", "Open at wall"), yesNo("open_front", "Open in front")},
			},
		},
		{
			title: "Ladder", table: "bed.ladder", has: func(j *job.Job) bool { return j.Bed.Ladder != nil },
			summary: func(b *bunk.Bed) string {
				if b.Steps == nil || len(b.Steps.Tops) == 0 {
					return ""
				}
				return fmt.Sprintf("%s, the first at %s", plural(len(b.Steps.Tops), "tread"), l.say(b.Steps.Tops[0]))
			},
			rows: [][]bedCell{
				{worded("on", "Stands at", "front", "end"), worded("at", "Near end", "left", "right")},
				{counted("treads", "Treads"), counted("angle", "Slope, degrees")},
				{boarded("stile", "Sides")}, {boarded("tread", "Treads")}, {boarded("block", "Blocks under them")},
			},
		},
		{
			title: "Climbing end", table: "bed.climb", has: func(j *job.Job) bool { return j.Bed.Climb != nil },
			summary: func(b *bunk.Bed) string {
				if b.Climb == nil {
					return ""
				}
				return fmt.Sprintf("%s end, %s", b.Climb.End, plural(len(b.Climb.Footholds), "foothold"))
			},
			rows: [][]bedCell{
				{worded("at", "End", "left", "right"), yesNo("holds", "With holds")},
				{sized("gap", "Slats apart"), sized("pitch", "Holds apart")},
				{sized("top", "Highest hold"), sized("hold_deep", "Holds deep")},
				{boarded("slat", "Climbing slats")}, {boarded("panel", "Panel for holds")},
			},
		},
		{
			title: "Shelves", table: "bed.shelf", has: func(j *job.Job) bool { return len(j.Bed.Shelves) > 0 },
			summary: func(b *bunk.Bed) string { return fmt.Sprintf("%d on the wall, drawn in Place", len(b.Sizes.Shelves)) },
		},
		{
			title: "Book ledge", table: "bed.books", has: func(j *job.Job) bool { return j.Bed.Books != nil },
			summary: func(b *bunk.Bed) string {
				if b.Sizes.Books == nil {
					return ""
				}
				return l.shows(b.Sizes.Books.Long) + " long"
			},
			rows: [][]bedCell{
				{sized("from", "From left"), sized("long", "Long")},
				{boarded("board", "Board")}, {boarded("lip", "Lip in front")},
			},
		},
		{
			title: "Drawers", table: "bed.drawers", has: func(j *job.Job) bool { return j.Bed.Drawers != nil },
			summary: func(b *bunk.Bed) string {
				if b.Sizes.Drawers == nil {
					return ""
				}
				return fmt.Sprintf("%d, %s high", b.Sizes.Drawers.Count, l.shows(b.Sizes.Drawers.BoxHigh))
			},
			rows: [][]bedCell{
				{counted("count", "How many"), sized("box_high", "Box high")},
				{sized("deep", "Deep"), sized("travel", "Pull out")},
				{sized("casters", "Casters")},
				{boarded("side", "Sides")}, {boarded("bottom", "Bottom")}, {boarded("front", "Fronts")},
			},
		},
		{
			title: "Making", table: "bed",
			summary: func(b *bunk.Bed) string { return "gaps " + string(b.Sizes.Gaps) + ", " + b.Sizes.Fastener },
			rows: [][]bedCell{
				{worded("gaps", "Gaps are set", string(bunk.ByEye), string(bunk.BySpacer))},
				{sized("play", "Mattress play"), sized("tolerance", "Built within")},
				{counted("fastener", "Screws"), sized("bolt_stand_out", "Heads proud")},
				{yesNo("notched", "Posts notched round the baseboard")},
				{sized("notch_high", "Notch high"), sized("notch_deep", "Notch deep")},
			},
		},
	}
}

// shelfRows are the sizes of one shelf.
var shelfRows = [][]bedCell{
	{worded("for", "For the sleeper in the", "upper", "lower")},
	{sized("height", "Top at"), sized("from", "From left")},
	{sized("long", "Long"), counted("screws_per_stud", "Screws a stud")},
	{boarded("board", "Board")}, {boarded("cleat", "Cleat")},
}

func plural(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
