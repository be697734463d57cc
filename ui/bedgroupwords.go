package ui

import (
	"fmt"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/room/length"
)

// lengthWords writes lengths as people read them, in the unit of the job.
type lengthWords interface {
	shows(length.Length) string
	say(mm float64) string
}

// What a bed has of what not every bed has.
func hasLadder(j *job.Job) bool  { return j.Bed.Ladder != nil }
func hasClimb(j *job.Job) bool   { return j.Bed.Climb != nil }
func hasShelves(j *job.Job) bool { return len(j.Bed.Shelves) > 0 }
func hasBooks(j *job.Job) bool   { return j.Bed.Books != nil }
func hasDrawers(j *job.Job) bool { return j.Bed.Drawers != nil }

// What stands in the head of a group: what it comes to in the bed as it is built.

func mattressWords(b *bunk.Bed, l lengthWords) string {
	return l.shows(b.Sizes.Upper.MattressThick) + " and " + l.shows(b.Sizes.Lower.MattressThick) + " thick"
}

func deckWords(b *bunk.Bed, l lengthWords) string {
	return l.shows(b.Sizes.Upper.Height) + " and " + l.shows(b.Sizes.Lower.Height) + " over the floor"
}

func boardWords(b *bunk.Bed, _ lengthWords) string {
	return b.Sizes.Post.Name + " posts, " + b.Sizes.Rail.Name + " rails, " + b.Sizes.Slat.Name + " slats"
}

func slatWords(b *bunk.Bed, l lengthWords) string {
	return fmt.Sprintf("%d and %d, %s apart", b.Upper.SlatCount, b.Lower.SlatCount, l.say(b.Upper.SlatGap))
}

func railWords(b *bunk.Bed, l lengthWords) string {
	return "top at " + l.shows(b.Sizes.Guard.Top) + ", " + plural(b.Sizes.Guard.Rows, "board") + " each"
}

func ladderWords(b *bunk.Bed, l lengthWords) string {
	if b.Steps == nil || len(b.Steps.Tops) == 0 {
		return ""
	}
	return fmt.Sprintf("%s, the first at %s", plural(len(b.Steps.Tops), "tread"), l.say(b.Steps.Tops[0]))
}

func climbWords(b *bunk.Bed, _ lengthWords) string {
	if b.Climb == nil {
		return ""
	}
	return fmt.Sprintf("%s end, %s", b.Climb.End, plural(len(b.Climb.Footholds), "foothold"))
}

func shelvesWords(b *bunk.Bed, _ lengthWords) string {
	return fmt.Sprintf("%d on the wall, drawn in Place", len(b.Sizes.Shelves))
}

func bookWords(b *bunk.Bed, l lengthWords) string {
	if b.Sizes.Books == nil {
		return ""
	}
	return l.shows(b.Sizes.Books.Long) + " long"
}

func drawerWords(b *bunk.Bed, l lengthWords) string {
	if b.Sizes.Drawers == nil {
		return ""
	}
	return fmt.Sprintf("%d, %s high", b.Sizes.Drawers.Count, l.shows(b.Sizes.Drawers.BoxHigh))
}

func makingWords(b *bunk.Bed, _ lengthWords) string {
	return "gaps " + string(b.Sizes.Gaps) + ", " + b.Sizes.Fastener
}

func plural(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
