package jobfile

import (
	"fmt"
	"strings"
	"unicode/utf8"
)

// quote writes a text for a file: in single quotes where it holds inch marks, over several lines where it has several.
func quote(text string) string {
	text = strings.ToValidUTF8(text, string(utf8.RuneError))
	switch {
	case strings.Contains(text, "\n"):
		return "\"\"\"\n" + escape(text) + `"""`
	case strings.Contains(text, `"`) && !strings.ContainsFunc(text, func(r rune) bool { return r == '\'' || control(r) }):
		return "'" + text + "'"
	}
	return `"` + escape(text) + `"`
}

func control(r rune) bool { return r < ' ' && r != '\t' || r == 0x7f }

// escape writes what cannot stand in double quotes as it is. Line ends stay: only texts of several lines hold them.
func escape(text string) string {
	var b strings.Builder
	for _, r := range text {
		switch {
		case r == '"' || r == '\\':
			b.WriteByte('\\')
			b.WriteRune(r)
		case control(r) && r != '\n':
			fmt.Fprintf(&b, `\u%04X`, r)
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}

// keyText writes a key, in quotes where it needs them.
func keyText(key string) string {
	for i := range len(key) {
		if !bareKey(key[i]) {
			return `"` + escapeKey(key) + `"`
		}
	}
	if key == "" {
		return `""`
	}
	return key
}

// escapeKey is escape for keys, which stand on one line.
func escapeKey(key string) string {
	return strings.ReplaceAll(escape(strings.ToValidUTF8(key, string(utf8.RuneError))), "\n", `\n`)
}

// widest is how long a list may be on one line.
const widest = 100

// bracketed writes a list, over several lines where it is long.
func bracketed(items []string) string {
	line := "[" + strings.Join(items, ", ") + "]"
	if len(line) <= widest {
		return line
	}
	return "[\n  " + strings.Join(items, ",\n  ") + ",\n]"
}
