package ask

import (
	"regexp"
	"slices"
	"strings"
	"unicode"

	"bunkwright/room/length"
)

// A clause is a piece of a line that was typed by hand: words around one value, such as "window 34 3/4 from the corner".
type clause struct {
	words []string // in small letters, corner letters as they are
	value string
	many  bool // more than one value
}

// typed reads a line that names no card by number or key, piece by piece. A piece that fits one card in every word is that card's answer;
// one that fits several, or has a word that nobody knows, is asked about; one without a value is kept as it is.
func (r *reading) typed(b *block, l Line) {
	if r.hand++; r.hand > mostTyped {
		r.unread(l, "more lines than anybody types")
		return
	}
	if brokenLine.MatchString(l.Text) {
		r.unread(l, "the beginning of an answer")
		return
	}
	for _, text := range r.joined(pieces(l.Text)) {
		c := clauseOf(text)
		here := Line{Number: l.Number, Text: text}
		if c.value == "" || !r.speaks(c) {
			r.unread(here, "no answer to a card")
			continue
		}
		r.clause(b, here, c)
	}
}

// joined puts a value that names nothing behind the piece before it: "A to B 12', or 12' 1" is one piece with two values.
func (r *reading) joined(list []string) []string {
	var out []string
	for _, text := range list {
		c := clauseOf(text)
		if n := len(out); n > 0 && c.value != "" && !r.speaks(c) {
			out[n-1] += ", " + text
			continue
		}
		out = append(out, text)
	}
	return out
}

// brokenLine is an answer of a form that ends within its key.
var brokenLine = regexp.MustCompile(`^\d{1,4}\s+[a-z_]+\.\S*$`)

// pieces cuts a line at semicolons, and at commas that a blank follows: "9 ft 10, window" but not "170,5 cm". A piece without a value says
// what the next one is about.
func pieces(line string) []string {
	var out []string
	from := 0
	for i, c := range line {
		if c == ';' || c == ',' && i+1 < len(line) && line[i+1] == ' ' {
			out = append(out, line[from:i])
			from = i + 1
		}
	}
	out = append(out, line[from:])
	for i := range out {
		out[i] = strings.TrimSpace(out[i])
		if i > 0 && clauseOf(out[i-1]).value == "" && clauseOf(out[i]).value != "" {
			out[i-1], out[i] = "", strings.TrimSpace(out[i-1]+", "+out[i])
		}
	}
	return slices.DeleteFunc(out, func(s string) bool { return s == "" })
}

// clauseOf parts the value of a piece from its words.
func clauseOf(text string) clause {
	var c clause
	inside, closed := false, false
	for _, f := range strings.Fields(text) {
		if valuePart(f, inside) {
			c.many = c.many || closed
			c.value = strings.TrimSpace(c.value + " " + f)
			inside = true
			continue
		}
		closed = closed || inside
		inside = false
		c.words = append(c.words, wordsOf(f)...)
	}
	c.value = strings.Trim(c.value, ".:")
	return c
}

// unitWord follows a figure; "in" and "and" are words of their own elsewhere.
var unitWord = regexp.MustCompile(`(?i)^(?:ft|foot|feet|in|inch|inches|mm|cm|m|and|strong|heavy|light)\.?$`)

var hedges = regexp.MustCompile(`(?i)^(?:about|around|roughly|approx\.?|ca\.?|maybe|nearly|almost|~|\?)$`)

// valuePart tells whether a word belongs to a value: it begins with a figure, or goes on with one.
func valuePart(f string, inside bool) bool {
	first := []rune(f)[0]
	switch {
	case unicode.IsDigit(first), unicode.Is(unicode.No, first), strings.ContainsRune(`.~`, first) && len(f) > 1 && unicode.IsDigit(rune(f[1])):
		return true
	case hedges.MatchString(f):
		return true
	}
	return inside && (unitWord.MatchString(f) || strings.Trim(f, `"'′″’”+-/–`) == "")
}

// wordsOf takes a word apart: "A-B" and "AB" are two corners.
func wordsOf(f string) []string {
	f = strings.Trim(f, ".,:;!?()\"“”")
	if pair := cornerPair.FindStringSubmatch(f); pair != nil {
		return []string{pair[1], "to", pair[2]}
	}
	if len(f) == 1 && f[0] >= 'A' && f[0] <= 'Z' {
		return []string{f}
	}
	return strings.FieldsFunc(strings.ToLower(f), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
}

var cornerPair = regexp.MustCompile(`^([A-Z])[-–/>]*([A-Z])$`)

// speaks tells whether a piece has a word that a card could be found by.
func (r *reading) speaks(c clause) bool {
	for _, w := range c.words {
		if len(w) == 1 && w >= "A" && w <= "Z" || topics[w] != "" || measures[w] != nil || len(r.named(w)) > 0 {
			return true
		}
	}
	return false
}

// clause finds the cards that a piece fits and answers the one, or asks.
func (r *reading) clause(b *block, l Line, c clause) {
	m := r.match(c)
	switch {
	case c.many:
		r.ask(l, l.Text, "which value is meant?", "more than one value", r.lines(m.cards, "")...)
	case len(m.cards) == 1 && m.sure && len(m.strange) == 0:
		g := []string{c.value, ""}
		if m.turned {
			g = []string{"", c.value}
		}
		for i, v := range g {
			r.value(b, l, m.cards[0], v, i == 1, "")
		}
	case len(m.cards) == 0:
		r.ask(l, l.Text, "what was measured?", "no card fits these words")
	case len(m.strange) > 0 && len(m.cards) == 1:
		r.ask(l, l.Text, "is it "+quoted(m.cards[0].Title)+"?", "what does "+quoted(strings.Join(m.strange, " "))+" mean here", r.lines(m.cards, c.value)...)
	default:
		why := "more than one card fits these words"
		if m.why != "" {
			why = m.why
		}
		r.ask(l, l.Text, "which is it?", why, r.lines(m.cards, c.value)...)
	}
}

// mostOffers bounds how many lines a question offers.
const mostOffers = 8

// lines are a line of a reply for each card. A value that can mean more than one thing stands there once for each meaning.
func (r *reading) lines(cards []Card, value string) []string {
	var out []string
	for _, c := range cards {
		if len(out) >= mostOffers {
			break
		}
		got := length.Read(value, length.Context{Unit: unitOf(r.sheet.Unit), Field: c.Field})
		if got.Outcome == length.Ask && len(got.Offers) > 0 {
			out = append(out, r.offers(c, Got{}, got.Offers)...)
			continue
		}
		out = append(out, replyLine(c, []string{value}, ""))
	}
	return out[:min(len(out), mostOffers)]
}
