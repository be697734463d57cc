package ask

import (
	"regexp"
	"strconv"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"
)

// mostText bounds what is read of a reply, 4 MiB: a sheet of a hundred cards has some ten thousand letters.
const mostText = 4 << 20

// block is what one person sent: its heads and its other lines.
type block struct {
	job, sheet     string
	by, when, unit string
	older          bool
	sent           int // answers that its end counts, -1 without an end
	lines          []Line
}

var (
	headLine = regexp.MustCompile(`(?i)reply\s+to\s+sheet\s+(\d{4})\s+of\s+job\s+(\d{6})`)
	sideLine = regexp.MustCompile(`(?i)^(by|on|unit|note|end)\s*:\s*(.*)$`)
	endLine  = regexp.MustCompile(`(?i)^end\s*(?:of reply)?\s*:?\s*(\d+)?\s*(?:answers?)?\s*\.?$`)
)

// blocks cuts a text into what each person sent. By, On and Unit hold for the whole block, wherever they stand in it; a second name begins
// a block of its own with the same head.
func blocks(text string, out *Reply) []block {
	if len(text) > mostText {
		cut := text[mostText:]
		text = text[:mostText]
		out.Unread = append(out.Unread, Line{Text: clipped(cut), Why: "more than 4 MB: the rest was not read"})
	}
	list := []block{{sent: -1}}
	for i, raw := range strings.Split(tidy(text), "\n") {
		b := &list[len(list)-1]
		line := Line{Number: i + 1, Text: unquoted(raw)}
		side := sideLine.FindStringSubmatch(line.Text)
		switch head := headLine.FindStringSubmatch(line.Text); {
		case line.Text == "":
		case head != nil:
			list = append(list, block{job: head[2], sheet: head[1], sent: -1})
		case endLine.MatchString(line.Text):
			b.sent = 0
			if n := endLine.FindStringSubmatch(line.Text)[1]; n != "" {
				b.sent, _ = strconv.Atoi(n)
			}
		case side == nil:
			b.lines = append(b.lines, line)
		default:
			list = b.side(list, line, strings.ToLower(side[1]), unescape(strings.TrimSpace(side[2])), out)
		}
	}
	return list
}

// side reads a line that says something of the whole block; it returns the blocks, one more where another person begins.
func (b *block) side(list []block, line Line, name, value string, out *Reply) []block {
	switch {
	case value == "":
	case name == "by" && b.by != "" && b.by != shortName(value):
		return append(list, block{job: b.job, sheet: b.sheet, by: shortName(value), when: b.when, unit: b.unit, sent: -1})
	case name == "by":
		b.by = shortName(value)
	case name == "on" && isDay(value):
		b.when = value
	case name == "unit" && units[strings.ToLower(value)]:
		b.unit = strings.ToLower(value)
	case name == "note":
		out.Notes = append(out.Notes, value)
	default:
		line.Why = "a day such as 2027-06-05, or a unit: in, ft, mm, cm or m"
		out.Unread = append(out.Unread, line)
	}
	return list
}

var units = map[string]bool{"in": true, "ft": true, "mm": true, "cm": true, "m": true}

func isDay(text string) bool {
	day, err := time.Parse(time.DateOnly, text)
	return err == nil && day.Year() > 0
}

// longestName is how much of a name is kept, in letters.
const longestName = 80

func shortName(text string) string {
	if r := []rune(text); len(r) > longestName {
		text = string(r[:longestName])
	}
	return strings.TrimSpace(text)
}

// cutAt is the last answer of a block that a form made and whose end is missing: the end of its number may be missing too. -1 for none.
func (b *block) cutAt() int {
	if b.sent >= 0 || b.job == "" {
		return -1
	}
	last, keyed := -1, false
	for i, l := range b.lines {
		if a, ok := answerLine(l.Text); ok {
			last = i
			keyed = keyed || a.key != ""
		}
	}
	if !keyed {
		return -1
	}
	return last
}

// short tells whether fewer answers are here than the end counts.
func (b *block) short() bool {
	n := 0
	for _, l := range b.lines {
		if a, ok := answerLine(l.Text); ok && !blankAnswer(a.values) {
			n++
		}
	}
	return b.sent > n
}

// tidy makes a text out of whatever was pasted: UTF-8, plain line ends, no characters that cannot be seen.
func tidy(text string) string {
	text = strings.ToValidUTF8(text, string(utf8.RuneError))
	text = strings.NewReplacer("\r\n", "\n", "\r", "\n", "\u2028", "\n", "\u2029", "\n", "\t", " ").Replace(text)
	return strings.Map(func(r rune) rune {
		if r != '\n' && (unicode.IsControl(r) || unicode.Is(unicode.Cf, r)) {
			return -1
		}
		return r
	}, text)
}

// unquoted takes the signs of a quoted mail off a line.
func unquoted(line string) string {
	line = strings.TrimSpace(line)
	for strings.HasPrefix(line, ">") {
		line = strings.TrimSpace(line[1:])
	}
	return line
}

// clipped shortens what is shown of a text that is too long to be read.
func clipped(text string) string {
	const most = 200
	if len(text) <= most {
		return strings.ToValidUTF8(text, "")
	}
	return strings.ToValidUTF8(text[:most], "") + " ..."
}

// answer is a line that names its card.
type answer struct {
	number   int
	numbered bool
	key      string
	values   []string // as typed, the second from the other end
	note     string
}

// numberLine is an answer: its number, its key, a colon and what was answered. A form's key has no blank and a dot in it.
var numberLine = regexp.MustCompile(`^(?:#|(?i:card|no\.?)\s*)?(\d{1,4})\s*(?:\s([^\s:|]+\.[^\s:|]+))?\s*[:=)]\s*(.*)$`)

// keyLine is an answer without its number.
var keyLine = regexp.MustCompile(`^([a-z_]+\.[^\s:|]+)\s*[:=]\s*(.*)$`)

func answerLine(line string) (answer, bool) {
	var a answer
	rest := ""
	if m := numberLine.FindStringSubmatch(line); m != nil {
		a.number, _ = strconv.Atoi(m[1])
		a.numbered = true
		a.key, rest = unescape(m[2]), m[3]
	} else if m := keyLine.FindStringSubmatch(line); m != nil {
		a.key, rest = unescape(m[1]), m[2]
	} else {
		return a, false
	}
	parts := strings.SplitN(rest, "|", 3)
	for i, p := range parts {
		p = strings.TrimSpace(unescape(p))
		if i == 2 {
			a.note = p
			break
		}
		a.values = append(a.values, p)
	}
	return a, true
}

// blankAnswer tells whether nothing was answered.
func blankAnswer(values []string) bool {
	for _, v := range values {
		if !isBlank(v) {
			return false
		}
	}
	return true
}

// isBlank tells whether a value says that there is none.
func isBlank(v string) bool {
	switch strings.ToLower(strings.Trim(v, " ._-\u2013\u2014")) {
	case "", "n/a", "not now", "skip", "skipped":
		return true
	}
	return false
}
