package ask

import (
	"slices"
	"strings"

	"bunkwright/furniture/job/jobfile"
)

// topics are the words by which people call a table of the job, and the parts of its keys that a word means.
var topics = map[string]string{
	"wall": "wall", "walls": "wall", "diagonal": "diagonal", "across": "diagonal",
	"window": "window", "door": "door", "closet": "door", "outlet": "outlet", "socket": "outlet", "plug": "outlet", "switch": "outlet",
	"register": "register", "vent": "register", "heater": "heater", "radiator": "heater", "fan": "fan", "light": "light", "lamp": "light",
	"alarm": "alarm", "hatch": "hatch", "ceiling": "ceiling", "beam": "beam", "carpet": "floor", "baseboard": "wall",
}

// measures are the words by which people call what is measured: the last parts of keys.
var measures = map[string][]string{
	"wide": {"wide", "clear_wide", "casing_wide", "sweep"}, "width": {"wide", "clear_wide", "casing_wide", "sweep"},
	"high": {"high", "height", "head", "baseboard_high", "clear_high"}, "height": {"high", "height", "head", "baseboard_high", "clear_high"},
	"deep": {"deep", "baseboard_deep", "sill_deep"}, "depth": {"deep", "baseboard_deep", "sill_deep"}, "thick": {"thick", "baseboard_deep"},
	"sill": {"sill"}, "head": {"head"}, "clear": {"clear_wide", "clear_high"}, "opens": {"opens"}, "cord": {"cord"}, "drop": {"drop"},
	"trim": {"casing_wide"}, "casing": {"casing_wide"}, "blades": {"blades"}, "sweep": {"sweep"}, "lowest": {"lowest"},
	"near": {"at"}, "far": {"far"}, "low": {"low"}, "baseboard": {"baseboard_high", "baseboard_deep"},
}

// fillers mean nothing by themselves.
var fillers = map[string]bool{
	"the": true, "a": true, "an": true, "is": true, "was": true, "it": true, "of": true, "from": true, "to": true, "and": true, "at": true, "i": true,
	"get": true, "got": true, "measured": true, "measures": true, "read": true, "we": true, "now": true, "in": true, "wall": true, "side": true,
	"edge": true, "corner": true, "for": true, "on": true, "here": true, "then": true, "also": true, "its": true, "that": true, "this": true,
}

// matched is what the words of a piece were found to fit.
type matched struct {
	cards   []Card
	strange []string // words that nobody knows
	sure    bool     // they name what is measured, not only the thing
	turned  bool     // the ends were named the other way round
	why     string   // why it is not sure
}

// match finds the cards of lengths that fit every word of a piece.
func (r *reading) match(c clause) matched {
	var m matched
	letters, measure, topic, names, fromCorner := r.sorted(c, &m)
	for _, card := range r.sheet.Cards() {
		if card.Kind == Length && fits(card, letters, measure, topic, names, r) {
			m.cards = append(m.cards, card)
		}
	}
	pair := len(letters) == 2 && slices.Contains(c.words, "to")
	m.sure = pair || measure != nil || topic == "ceiling"
	if pair && len(m.cards) == 1 {
		m.turned = strings.HasSuffix(pathOf(m.cards[0].Key), ".length") && strings.Contains(m.cards[0].Key, "."+letters[1]+letters[0]+".")
	}
	if fromCorner {
		m.why, m.sure = "from which corner, and to which edge", false
	}
	return m
}

// sorted sorts the words of a piece: corner letters, what is measured, what kind of thing, which of them.
func (r *reading) sorted(c clause, m *matched) (letters, measure []string, topic string, names []string, fromCorner bool) {
	for i, w := range c.words {
		switch {
		case len(w) == 1 && w >= "A" && w <= "Z" && strings.Contains(r.j.Room.Outline, w):
			letters = append(letters, w)
		case measures[w] != nil:
			measure = narrowed(measure, measures[w])
			if topics[w] != "" {
				topic = topics[w]
			}
		case topics[w] != "" && (topic == "" || topic == "wall"):
			topic = topics[w]
		case w == "corner":
			fromCorner = fromCorner || i+1 == len(c.words) || len(c.words[i+1]) != 1
		case fillers[w] || topics[w] != "":
		case len(r.named(w)) > 0:
			names = append(names, w)
		default:
			m.strange = append(m.strange, w)
		}
	}
	if fromCorner = fromCorner && len(letters) == 0; fromCorner && measure == nil {
		measure = []string{"at", "far"}
	}
	return letters, measure, topic, names, fromCorner
}

// narrowed keeps what two words have in common.
func narrowed(a, b []string) []string {
	if a == nil {
		return b
	}
	return slices.DeleteFunc(slices.Clone(a), func(s string) bool { return !slices.Contains(b, s) })
}

// named are the things whose own name has a word in it.
func (r *reading) named(word string) []string {
	var out []string
	for _, c := range r.sheet.Cards() {
		p := strings.Split(c.Key, ".")
		if len(p) > 2 && p[0] != "wall" && slices.Contains(strings.Fields(strings.ToLower(p[1])), word) && !slices.Contains(out, p[0]+"."+p[1]) {
			out = append(out, p[0]+"."+p[1])
		}
	}
	return out
}

// fits tells whether a card is about everything that was named.
func fits(c Card, letters, measure []string, topic string, names []string, r *reading) bool {
	p := strings.Split(c.Key, ".")
	last := p[len(p)-1]
	if measure != nil && !slices.Contains(measure, last) || measure == nil && (last == "low" || last == "high") && p[0] == "wall" && len(letters) != 2 {
		return false
	}
	for _, n := range names {
		if !slices.Contains(r.named(n), p[0]+"."+p[min(1, len(p)-1)]) {
			return false
		}
	}
	if topic != "" && topic != p[0] {
		return false
	}
	if len(letters) == 2 && (topic == "" || topic == "wall" || topic == "diagonal") {
		return (p[0] == "wall" || p[0] == "diagonal") && len(p) == 3 && pairOf(p[1], letters) && (measure != nil || slices.Contains([]string{"length", "low", "high"}, last))
	}
	for _, l := range letters {
		if !strings.Contains(c.Shown.Wall+jobfile.Shown(r.j, strings.Join(p[:len(p)-1], ".")+".corner"), l) {
			return false
		}
	}
	return topic != "" || names != nil || measure != nil && letters == nil
}

// pairOf tells whether two letters are the ends of a wall or diagonal, either way round.
func pairOf(key string, letters []string) bool {
	return key == letters[0]+letters[1] || key == letters[1]+letters[0]
}
