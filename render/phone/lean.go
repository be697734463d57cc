package phone

import "strings"

// lean returns embedded files as one text, without comment lines, indents and the spaces that only people read: a phone does
// not.
func lean(names ...string) string {
	var all strings.Builder
	for _, name := range names {
		data, err := form.ReadFile("form/" + name)
		if err != nil {
			panic(err) // embedded
		}
		squeeze := squeezeScript
		if strings.HasSuffix(name, ".css") {
			squeeze = squeezeStyle
		}
		for line := range strings.Lines(string(data)) {
			line = strings.TrimSpace(line)
			if line != "" && !strings.HasPrefix(line, "//") && !strings.HasPrefix(line, "/*") {
				all.WriteString(squeeze(line) + "\n")
			}
		}
	}
	return all.String()
}

var squeezeStyle = strings.NewReplacer(": ", ":", "; }", "}", "; ", ";", " { ", "{", ", ", ",").Replace

// squeezeScript takes out spaces beside signs, but none within strings and patterns and none that part two equal signs. A
// pattern begins after a sign and never right after a word; no string goes on in the next line.
func squeezeScript(line string) string {
	var out strings.Builder
	before := byte('(')
	for i := 0; i < len(line); i++ {
		c := line[i]
		switch {
		case c == ' ' && i+1 < len(line) && parted(before, line[i+1]):
			continue
		case c == '\'' || c == '"' || c == '`' || c == '/' && !inWord(before) && before != ')' && before != ']':
			n := literal(line[i:])
			out.WriteString(line[i : i+n])
			i += n - 1
			before = 'a' // what follows is no pattern
			if c == '/' {
				before = ')'
			}
			continue
		}
		out.WriteByte(c)
		before = c
	}
	return out.String()
}

// parted tells whether two letters stay apart without a space between them.
func parted(a, b byte) bool { return (!inWord(a) || !inWord(b)) && a != b }

func inWord(c byte) bool {
	return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '_' || c == '$' || c >= 0x80
}

// literal is the length of a string or a pattern.
func literal(text string) int {
	inClass := false
	for i := 1; i < len(text); i++ {
		switch c := text[i]; {
		case c == '\\':
			i++
		case text[0] == '/' && (c == '[' || c == ']'):
			inClass = c == '['
		case c == text[0] && !inClass:
			return i + 1
		}
	}
	return len(text)
}
