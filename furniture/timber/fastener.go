package timber

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"sync"

	"bunkwright/room/length"
)

// A FastenerKind is a sort of screw.
type FastenerKind string

// The kinds.
const (
	WoodScrew FastenerKind = "wood_screw"
	LagScrew  FastenerKind = "lag_screw"
)

// A Fastener is a screw as its table gives it. A length of 0 is one that the table does not give.
type Fastener struct {
	ID           string // "screw-10", "lag-5/16"
	Kind         FastenerKind
	Size         string // "10", "5/16"
	D            length.Length
	Root         length.Length // diameter at the root of the thread
	Tip          length.Length
	Penetration  length.Length // least depth in the piece that holds the point
	TipCounts    bool          // the tip is part of that depth
	EdgeDistance length.Length // least distance of the screw's middle from an edge of the wood
	PilotSoft    length.Length // pilot hole in softwood
	PilotHard    length.Length // pilot hole in hardwood
	Head         length.Length
	Source       string
	Basis        string
	Note         string
	perD         float64 // Penetration as a multiple of D
}

// LeastDepth returns how deep the point of the screw must go into the piece that holds it, tip and all.
func (f Fastener) LeastDepth() length.Length {
	if f.TipCounts {
		return f.Penetration
	}
	return f.Penetration + f.Tip
}

var allFasteners = sync.OnceValue(func() []Fastener { return must(parseFasteners(fastenersCSV)) })

func parseFasteners(text string) ([]Fastener, error) {
	recs, err := records(text)
	if err != nil {
		return nil, err
	}
	var out []Fastener
	for _, rec := range recs {
		f, err := parseFastener(rec)
		if err != nil {
			return nil, fmt.Errorf("fastener %s: %w", rec["id"], err)
		}
		out = append(out, f)
	}
	return out, nil
}

func parseFastener(rec record) (Fastener, error) {
	f := Fastener{ID: rec["id"], Kind: FastenerKind(rec["kind"]), Size: rec["size"],
		Source: rec["source"], Basis: rec["basis"], Note: rec["note"]}
	err := rec.fill(map[string]*length.Length{
		"D_in": &f.D, "Dr_root_in": &f.Root, "tip_in": &f.Tip, "min_penetration_in": &f.Penetration,
		"edge_distance_in": &f.EdgeDistance, "pilot_softwood_in": &f.PilotSoft, "pilot_hardwood_in": &f.PilotHard,
		"head_dia_in": &f.Head,
	})
	if err != nil {
		return f, err
	}
	f.perD, f.TipCounts, err = penetrationRule(rec["min_penetration_rule"])
	return f, err
}

// penetrationRule reads "6*D including tip" or "4*D excluding tip".
func penetrationRule(text string) (perD float64, tipCounts bool, err error) {
	times, rest, _ := strings.Cut(text, "*D ")
	perD, err = strconv.ParseFloat(times, 64)
	if err != nil || rest != "including tip" && rest != "excluding tip" {
		return 0, false, fmt.Errorf("penetration %q: want a rule such as 6*D including tip", text)
	}
	return perD, rest == "including tip", nil
}

// FindFastener returns the fastener with that id, such as "screw-10" or "lag-5/16".
func FindFastener(id string) (Fastener, error) {
	var ids []string
	for _, f := range allFasteners() {
		if f.ID == id {
			return f, nil
		}
		ids = append(ids, f.ID)
	}
	return Fastener{}, &UnknownError{"fastener", id, ids}
}

// Fasteners returns every fastener held, in the order of the table.
func Fasteners() []Fastener { return append([]Fastener(nil), allFasteners()...) }

// LeastPenetration returns the least penetration of a kind of screw of diameter d, in the unit of d: 6 D with the tip for
// wood screws (NDS 12.1.5), 4 D without it for lag screws (NDS 12.1.4). It is NaN for a kind the table does not hold.
func LeastPenetration(kind FastenerKind, d float64) float64 {
	for _, f := range allFasteners() {
		if f.Kind == kind {
			return f.perD * d
		}
	}
	return math.NaN()
}

// ClearOfCable reports whether a penetration stays within the depth in front of a bored cable, both in one unit; equal
// is clear. It is false for a missing penetration (NaN).
func ClearOfCable(penetration, cableDepth float64) bool {
	return penetration <= cableDepth+1e-9*math.Abs(cableDepth)
}
