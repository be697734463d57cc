package ask

import (
	"cmp"
	"strconv"
	"strings"
	"unicode"

	"bunkwright/furniture/job/jobfile"
	"bunkwright/room/length"
)

// value reads one answer to a card, as typed.
func (r *reading) value(b *block, l Line, c Card, text string, turned bool, note string) {
	if isBlank(text) {
		return
	}
	g := Got{
		Key: c.Key, Number: c.Number, Title: c.Title, Kind: c.Kind, Turned: turned, Text: text, By: b.by, When: b.when, Note: note, Line: l.Number,
	}
	if c.Kind == Length {
		r.length(b, l, c, g)
		return
	}
	if turned {
		r.ask(l, text, "what does it say?", "this card has one blank")
		return
	}
	word, ok := wordOf(c, text)
	if !ok {
		r.ask(l, text, c.Ask, "the answer is "+wanted(c), offersOf(c, note)...)
		return
	}
	g.Word = word
	r.take(l, g)
}

// length reads a length in the unit of the reply. What has two meanings is asked about, with a line for each.
func (r *reading) length(b *block, l Line, c Card, g Got) {
	text, mood := moodOff(g.Text)
	g.Note = strings.TrimSpace(g.Note + " " + mood)
	got := length.Read(b.inUnit(text), length.Context{Unit: b.jobUnit(r.sheet.Unit), Field: c.Field, Near: r.near(c.Key)})
	switch {
	case got.Outcome == length.Ask:
		r.ask(l, g.Text, c.Title+": "+got.Question, got.Reason, r.offers(c, g, got.Offers)...)
		return
	case got.Outcome != length.Value:
		r.ask(l, g.Text, c.Title+": what does the tape say?", got.Reason)
		return
	case got.Value > longest:
		r.ask(l, g.Text, c.Title+": what does the tape say?", "more than 100 m")
		return
	case got.Value == 0 && rowsByKey()[pathOf(c.Key)].Unit != jobfile.FromZero:
		r.ask(l, g.Text, c.Title+": what does the tape say?", "0 is the same as nothing here")
		return
	}
	g.Value, g.Light = got.Value, got.Note64
	r.take(l, g)
}

// longest bounds every length of a job, 100 m, as its file does.
const longest = 100_000 * length.Millimetre

// near are the readings that the job has of the same thing, to notice a swapped mark.
func (r *reading) near(key string) []length.Length {
	near, ok := r.nears[key]
	if !ok {
		if l, read := first(r.j, key); read && l > 0 {
			near = []length.Length{l}
		}
		r.nears[key] = near
	}
	return near
}

// offers are lines of a reply, one for each meaning of a value.
func (r *reading) offers(c Card, g Got, lengths []length.Length) []string {
	var out []string
	for _, l := range lengths {
		values := []string{length.Exact(l, unitOf(r.sheet.Unit))}
		if g.Turned {
			values = []string{"", values[0]}
		}
		out = append(out, replyLine(c, values, g.Note))
	}
	return out
}

// jobUnit is the unit of a number without one.
func (b *block) jobUnit(sheet string) length.Unit { return unitOf(cmp.Or(b.unit, sheet)) }

// inUnit adds the unit of the reply to a number without one, where that is none that a job can have.
func (b *block) inUnit(text string) string {
	switch b.unit {
	case "cm", "m", "ft":
		if strings.IndexFunc(text, func(r rune) bool { return unicode.IsLetter(r) || strings.ContainsRune(`"'′″’”‘“`, r) }) < 0 {
			return text + " " + b.unit
		}
	}
	return text
}

// moodOff takes the little pictures off the end of a value: they change nothing of it and are kept in the note.
func moodOff(text string) (value, mood string) {
	value = strings.TrimRightFunc(text, func(r rune) bool {
		return r == ' ' || r == '\ufe0f' || r >= 0x2600 && r <= 0x27bf || r >= 0x1f000 && r <= 0x1faff
	})
	if value == "" {
		return text, ""
	}
	return value, strings.TrimSpace(strings.TrimPrefix(text[len(value):], "\ufe0f"))
}

// wordOf reads a count, a choice, or yes or no, and returns it as the job keeps it.
func wordOf(c Card, text string) (string, bool) {
	plain := strings.ToLower(strings.Trim(text, " .!"))
	switch c.Kind {
	case Count:
		if n, err := strconv.Atoi(plain); err == nil && n >= 0 && n <= mostCount {
			return strconv.Itoa(n), true
		}
		n, ok := countWords[plain]
		return strconv.Itoa(n), ok
	case YesNo:
		yes, ok := yesWords[plain]
		if !ok {
			return "", false
		}
		return yesAs(c.Key, yes), true
	}
	for _, w := range c.Words {
		if plain == strings.ToLower(w.Value) || plain == strings.ToLower(w.Label) {
			return w.Value, true
		}
	}
	return "", false
}

// mostCount bounds a count: no room has more of anything that is asked for.
const mostCount = 20

var countWords = map[string]int{"none": 0, "no": 0, "zero": 0, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6}

var yesWords = map[string]bool{"yes": true, "y": true, "true": true, "no": false, "n": false, "false": false, "none": false}

// yesAs is yes or no as a key of the job keeps it.
func yesAs(key string, yes bool) string {
	if rowsByKey()[pathOf(key)].Unit == jobfile.TrueFalse {
		return strconv.FormatBool(yes)
	}
	return map[bool]string{true: "yes", false: "no"}[yes]
}

// wanted says what a card may be answered with.
func wanted(c Card) string {
	switch c.Kind {
	case Count:
		return "a whole number"
	case YesNo:
		return "yes or no"
	}
	var labels []string
	for _, w := range c.Words {
		labels = append(labels, w.Label)
	}
	return "one of: " + strings.Join(labels, ", ")
}

func offersOf(c Card, note string) []string {
	var out []string
	for _, w := range c.Words {
		out = append(out, replyLine(c, []string{w.Value}, note))
	}
	if c.Kind == YesNo {
		out = []string{replyLine(c, []string{"yes"}, note), replyLine(c, []string{"no"}, note)}
	}
	return out
}
