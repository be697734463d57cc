package jobfile

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"github.com/BurntSushi/toml"
)

// mend records the fault that the library found and takes it out of the text, where it concerns one line with one value. It reports
// false where the rest of the text cannot be read without guessing.
func (p *parsed) mend(text string, err *toml.ParseError) (string, bool) {
	lines := strings.Split(text, "\n")
	line := lineOf(text, err, len(lines))
	here := lines[line-1]
	key, value, pair := cutPair(here)
	if p.known(line) {
		if !pair {
			return text, false
		}
		lines[line-1] = "" // its value in quotes is still none: do without
		return strings.Join(lines, "\n"), true
	}
	f, mended, ok := fault{}, "", false
	switch {
	case strings.Contains(err.Message, "unexpected EOF"), strings.Contains(err.Message, "terminator"):
		f = unclosed(text, line, err.Message)
	case strings.Contains(err.Message, "already been defined"):
		f, ok = again(text, line), pair // without its header a table's keys would go to another
	case strings.ContainsFunc(strings.TrimRight(here, "\r"), control) && !pair:
		f = fault{line: line, have: "a control character, which no text holds", want: "save the file as plain text", keyless: true}
	case pair && onOneLine(value):
		f, mended = unquoted(line, key, value)
		ok = true
	case !strings.Contains(here, "=") && !strings.HasPrefix(strings.TrimSpace(here), "["):
		f, mended = noEquals(line, here)
		ok = p.few()
	default:
		f = other(line, here, err.Message)
	}
	p.faults = append(p.faults, f)
	lines[line-1] = mended
	return strings.Join(lines, "\n"), ok && len(text) <= largestMended
}

// known reports that a line has been complained of.
func (p *parsed) known(line int) bool {
	return slices.ContainsFunc(p.faults, func(f fault) bool { return f.line == line })
}

// few reports that there are few lines without a =: a text of nothing else is no job at all.
func (p *parsed) few() bool {
	n := 0
	for _, f := range p.faults {
		if f.keyless {
			n++
		}
	}
	return n < 3
}

// lineOf returns the line of a fault. Where the library stumbled over a line end it may name the next line.
func lineOf(text string, err *toml.ParseError, lines int) int {
	line, at := err.Position.Line, err.Position.Start
	if strings.Contains(err.Message, `'\n'`) && at < len(text) {
		line = 1 + strings.Count(text[:at], "\n")
	}
	return min(max(1, line), lines)
}

// unclosed complains of a value that runs on where another line was meant: at the key that it belongs to.
func unclosed(text string, line int, message string) fault {
	start := line
	for _, v := range scan(text).visits {
		if v.line <= line {
			start = v.line
		}
	}
	if start == line && !strings.Contains(message, "EOF") {
		return fault{line: line, have: plain(message), want: "texts in quotes, with commas between them; lists in [ ], readings in { }"}
	}
	return fault{line: start, have: "its quotes or brackets are not closed", want: fmt.Sprintf("close them before line %d ends", line)}
}

// again complains of a key or a table that stands twice.
func again(text string, line int) fault {
	f := fault{line: line, have: "stands here for the second time", want: "one of the two, with everything in it"}
	first := map[*node]int{}
	for _, v := range scan(text).visits {
		if v.line == line && first[v.node] > 0 {
			f.known = first[v.node]
			f.have += fmt.Sprintf(", first on line %d", f.known)
		}
		first[v.node] = cmp.Or(first[v.node], v.line)
	}
	return f
}

// cutPair takes a line with a bare or dotted key and a value apart.
func cutPair(line string) (key, value string, ok bool) {
	key, value, ok = strings.Cut(line, "=")
	key = strings.TrimSpace(key)
	return key, strings.TrimSpace(value), ok && bareKeys(key)
}

func bareKeys(key string) bool {
	for i := range len(key) {
		if !bareKey(key[i]) && key[i] != '.' {
			return false
		}
	}
	return key != ""
}

// onOneLine reports a value that does not run on over the next lines.
func onOneLine(value string) bool {
	for _, opens := range []string{`"""`, "'''", "[", "{"} {
		if strings.HasPrefix(value, opens) {
			return false
		}
	}
	return true
}

// unquoted complains of a value that is no TOML and returns the line with the value in quotes.
func unquoted(line int, key, value string) (fault, string) {
	f := fault{line: line}
	bare := uncommented(strings.TrimLeft(value, "= "))
	inner := meant(bare)
	right := key + " = " + quote(inner)
	f.bare, f.mended = bare, true
	switch {
	case bare == "":
		f.have, f.want = "no value behind the =", "a value, or no line at all"
	case strings.HasPrefix(value, "="):
		f.have, f.want = "two = in a row", right
	case bare == inner:
		f.have, f.want = clip(bare)+" without quotes", right
	default:
		f.have, f.want = clip(bare)+": its quotes do not match, or \\ stands in it", right
	}
	return f, right
}

// meant returns what a value is to say whose quotes are not right. Where none stands at its beginning, marks behind a figure are feet and
// inches.
func meant(bare string) string {
	n := len(bare)
	switch {
	case n == 0:
		return ""
	case strings.HasPrefix(bare, "“"), strings.HasPrefix(bare, "‘"): // as word processors write them
		return strings.Trim(bare, "“”‘’")
	case bare[0] != '"' && bare[0] != '\'':
		if text := strings.TrimRight(bare, `"'`); text == "" || text[len(text)-1] < '0' || text[len(text)-1] > '9' {
			return text
		}
		return bare
	case n > 3 && bare[0] == bare[n-1] && (strings.HasSuffix(bare, `""`) || bare[0] == '\''):
		bare = bare[1 : n-1] // "67-3/8"" means 67-3/8"
	case n > 1 && bare[0] == bare[n-1]:
		bare = bare[1 : n-1]
	default:
		bare = bare[1:]
	}
	return strings.NewReplacer(`\'`, "'", `\"`, `"`).Replace(bare)
}

// uncommented cuts a comment off a value, one behind its last quote where it has quotes.
func uncommented(value string) string {
	last := 1 + max(strings.LastIndexByte(value, '"'), strings.LastIndexByte(value, '\''))
	head, tail := value[:last], value[last:]
	tail, _, _ = strings.Cut(tail, "#")
	return strings.TrimSpace(head + tail)
}

// noEquals complains of a line that is no comment, header or key; with a colon it is read as if a = stood there.
func noEquals(line int, here string) (f fault, mended string) {
	here = strings.TrimSpace(here)
	f = fault{line: line, have: clip(here) + ": no = between a key and its value", want: `a line such as name = "back bedroom"`}
	if key, value, ok := strings.Cut(here, ":"); ok && bareKeys(key) && value != "" {
		mended = key + " =" + value
		f.want = mended
		return f, mended
	}
	f.keyless = true
	return f, ""
}

// other complains of a fault that cannot be mended.
func other(line int, here, message string) fault {
	if strings.HasPrefix(strings.TrimSpace(here), "[") {
		return fault{line: line, have: plain(message), want: "a header such as [floor] or [[wall]]", keyless: true}
	}
	return fault{line: line, have: plain(message), want: "texts in quotes, with commas between them; lists in [ ], readings in { }"}
}

// plain takes the library's own manner off its message.
func plain(message string) string {
	message = strings.TrimPrefix(message, "toml: ")
	return "no TOML: " + strings.TrimSuffix(message, ".")
}
