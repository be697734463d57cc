package bunk

import (
	"strconv"
	"sync"

	"bunkwright/furniture"
	"bunkwright/furniture/timber"
	"bunkwright/room/length"
)

// A Default is what a size that was not chosen is taken for. One of its values is set; Rule tells in words how the value
// follows from other sizes where it is no fixed one.
type Default struct {
	Key     string // file key; "bed.shelf.board" stands for bed.shelf.1.board and so on
	Meaning string
	Length  length.Length
	Stock   furniture.Stock
	Count   int
	Degrees float64
	Word    string
	Rule    string
}

// Value writes the default with its unit.
func (d Default) Value() string {
	switch {
	case d.Rule != "":
		return d.Rule
	case d.Length != 0:
		return length.Exact(d.Length, length.Inches)
	case d.Stock.Sheet:
		return d.Stock.Name + " (" + length.Exact(d.Stock.Thick, length.Inches) + ")"
	case d.Stock.Name != "":
		in := length.Style{InchesOnly: true}
		return d.Stock.Name + " (" + length.Format(d.Stock.Thick, in) + " x " + length.Format(d.Stock.Wide, in) + ")"
	case d.Count != 0:
		return strconv.Itoa(d.Count)
	case d.Degrees != 0:
		return strconv.FormatFloat(d.Degrees, 'f', -1, 64) + " degrees"
	}
	return d.Word
}

// lumber returns US softwood as it is dressed (PS 20).
func lumber(name string) furniture.Stock {
	size, err := timber.DressedSize(name, timber.Dry)
	if err != nil {
		return furniture.Stock{Name: name}
	}
	return furniture.Stock{Name: name, Thick: size.Thick, Wide: size.Wide}
}

func plywood(name string, thick length.Length) furniture.Stock {
	return furniture.Stock{Name: "plywood " + name, Thick: thick, Sheet: true}
}

// Planning figures behind the defaults; each is common practice, no source, unless it says otherwise.
const (
	defaultPlay     = 3 * length.Inch / 4
	defaultSlatGap  = 5 * length.Inch / 2  // foam mattresses want at most 3 in
	defaultGuardGap = 3 * length.Inch      // under and between guardrail boards
	defaultWayIn    = 29 * length.Inch / 2 // 14-1/2 in, 368 mm
	defaultPitch    = 11 * length.Inch     // of treads, 280 mm
	defaultClimbGap = 3 * length.Inch      // between climbing slats
	defaultHolds    = 8 * length.Inch      // between rows of holds
	defaultHold     = 2 * length.Inch      // how far a hold stands out
	defaultBooks    = 24 * length.Inch     // length of the book ledge
	defaultShelf    = 36 * length.Inch     // length of a shelf
	defaultScrew    = 3 * length.Inch      // cleat screw under its head
	drawerAir       = length.Inch          // under the side rail, and no more than the side boards give
)

var defaultTable = sync.OnceValue(func() []Default {
	return []Default{
		{Key: "bed.play", Meaning: "inside of the frame less the mattress, both sides together", Length: defaultPlay},
		{Key: "bed.post", Meaning: "posts and uprights", Stock: lumber("2x4")},
		{Key: "bed.rail", Meaning: "side rails and end members", Stock: lumber("2x6")},
		{Key: "bed.ledge", Meaning: "what the slats lie on", Stock: lumber("2x2")},
		{Key: "bed.slat", Meaning: "slats under the mattress", Stock: lumber("1x4")},
		{Key: "bed.upper.slat_gap", Meaning: "largest gap between slats, upper bed", Length: defaultSlatGap},
		{Key: "bed.lower.slat_gap", Meaning: "largest gap between slats, lower bed", Length: defaultSlatGap},
		{Key: "bed.fastener", Meaning: "screws of the frame", Word: "screw-10"},
		{Key: "bed.gaps", Meaning: "how gaps are set", Word: string(ByEye)},
		{Key: "bed.upper.head", Meaning: "end of the pillow", Word: string(Left)},
		{Key: "bed.lower.head", Meaning: "end of the pillow", Rule: "as the upper bed"},
		{Key: "bed.guard.board", Meaning: "guardrail and end boards", Stock: lumber("1x6")},
		{Key: "bed.guard.rows", Meaning: "boards one over the other", Count: 1},
		{Key: "bed.guard.top", Meaning: "top edge of the guardrail", Rule: "a gap of 3 in under each board"},
		{Key: "bed.guard.gap", Meaning: "way in, clear", Length: defaultWayIn},
		{Key: "bed.ladder.at", Meaning: "end the ladder is at", Rule: "the upper bed's foot end"},
		{Key: "bed.ladder.angle", Meaning: "slope from the floor", Degrees: 90},
		{Key: "bed.ladder.treads", Meaning: "treads, the top one level with the deck", Rule: "nearest to 11 in apart"},
		{Key: "bed.ladder.stile", Meaning: "sides of the ladder", Stock: lumber("2x4")},
		{Key: "bed.ladder.tread", Meaning: "treads", Stock: lumber("2x4")},
		{Key: "bed.ladder.block", Meaning: "blocks under the treads", Stock: lumber("2x2")},
		{Key: "bed.climb.at", Meaning: "end to be climbed", Rule: "the upper bed's foot end, or the other where a ladder stands there"},
		{Key: "bed.climb.slat", Meaning: "climbing slats", Stock: lumber("1x4")},
		{Key: "bed.climb.gap", Meaning: "largest gap between climbing slats", Length: defaultClimbGap},
		{Key: "bed.climb.panel", Meaning: "panel for holds", Stock: plywood("3/4", 3*length.Inch/4)},
		{Key: "bed.climb.pitch", Meaning: "largest height from one row of holds to the next", Length: defaultHolds},
		{Key: "bed.climb.top", Meaning: "highest row of holds", Rule: "the upper deck"},
		{Key: "bed.climb.hold_deep", Meaning: "how far a hold stands out", Length: defaultHold},
		{Key: "bed.shelf.board", Meaning: "shelf board", Stock: lumber("1x6")},
		{Key: "bed.shelf.cleat", Meaning: "cleat and cheeks", Stock: lumber("1x4")},
		{Key: "bed.shelf.long", Meaning: "length of the shelf", Length: defaultShelf},
		{Key: "bed.shelf.from", Meaning: "left end of the bed to the shelf", Rule: "in the middle of the bed"},
		{Key: "bed.shelf.cleat_long", Meaning: "length of the cleat", Rule: "the shelf's length"},
		{Key: "bed.shelf.fastener", Meaning: "screws from the cleat into the studs", Word: "screw-10"},
		{Key: "bed.shelf.fastener_long", Meaning: "length of that screw under its head", Length: defaultScrew},
		{Key: "bed.shelf.screws_per_stud", Meaning: "screws per stud", Count: 2},
		{Key: "bed.books.board", Meaning: "book ledge", Stock: lumber("1x6")},
		{Key: "bed.books.lip", Meaning: "lip in front of the books", Stock: lumber("1x4")},
		{Key: "bed.books.long", Meaning: "length of the book ledge", Length: defaultBooks},
		{Key: "bed.books.from", Meaning: "left end of the bed to the book ledge", Rule: "beside the left post or ladder"},
		{Key: "bed.drawers.count", Meaning: "drawers", Count: 2},
		{Key: "bed.drawers.side", Meaning: "sides, back and inner front", Stock: lumber("1x6")},
		{Key: "bed.drawers.bottom", Meaning: "bottom", Stock: plywood("1/2", length.Inch/2)},
		{Key: "bed.drawers.front", Meaning: "drawer fronts", Stock: lumber("1x6")},
		{Key: "bed.drawers.box_high", Meaning: "height of the box", Rule: "1 in under the side rail, at most what the side boards give"},
		{Key: "bed.drawers.deep", Meaning: "front to back", Rule: "to the wall-side posts"},
		{Key: "bed.drawers.travel", Meaning: "how far one pulls out", Rule: "its depth"},
	}
})

var defaultByKey = sync.OnceValue(func() map[string]Default {
	out := map[string]Default{}
	for _, d := range defaultTable() {
		out[d.Key] = d
	}
	return out
})

// Defaults lists what Build takes for sizes that were not chosen, in the order of the job file.
func Defaults() []Default { return append([]Default(nil), defaultTable()...) }
