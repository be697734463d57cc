package render

import "strings"

// Measure returns the width of a line of text and how far it reaches above and below its
// baseline. Widths are sums of the font's own advances: the family has no kerning.
func Measure(text string, size Paper, face Face) (width, ascent, descent Paper) {
	l := &loadedFaces()[face]
	var sum, top, bottom int32
	for _, r := range text {
		g := l.glyph(r)
		sum += g.advance
		top, bottom = max(top, g.top), max(bottom, g.bottom)
	}
	unit := size / Paper(l.units)
	return Paper(sum) * unit, Paper(top) * unit, Paper(bottom) * unit
}

// Advance returns the width of one character.
func Advance(r rune, size Paper, face Face) Paper {
	l := &loadedFaces()[face]
	return size * Paper(l.glyph(r).advance) / Paper(l.units)
}

// CapHeight returns the height of a capital letter; the middle of a line of text is half of it
// above the baseline.
func CapHeight(size Paper, face Face) Paper {
	l := &loadedFaces()[face]
	return size * Paper(l.glyph('H').top) / Paper(l.units)
}

// Missing returns the characters of the text that the fonts lack, each once, in order. Line
// breaks are missing too: a text is one line.
func Missing(text string) []rune {
	l := &loadedFaces()[Regular]
	var list []rune
	for _, r := range text {
		if !l.glyph(r).has && !strings.ContainsRune(string(list), r) {
			list = append(list, r)
		}
	}
	return list
}

// Substituted returns the text with a question mark for every character the fonts lack.
func Substituted(text string) string {
	l := &loadedFaces()[Regular]
	return strings.Map(func(r rune) rune {
		if l.glyph(r).has {
			return r
		}
		return '?'
	}, text)
}

// Wrap breaks the text into lines no wider than width, at spaces and at the text's own line
// breaks; a word wider than that is broken between letters. A no-break space (U+00A0) holds a
// value and its unit together.
func Wrap(text string, size Paper, face Face, width Paper) []string {
	var lines []string
	for _, paragraph := range strings.Split(text, "\n") {
		line := ""
		for _, word := range strings.FieldsFunc(paragraph, isSpace) {
			if tried := joined(line, word); fits(tried, size, face, width) {
				line = tried
				continue
			}
			if line != "" {
				lines = append(lines, line)
			}
			var full []string
			full, line = breakWord(word, size, face, width)
			lines = append(lines, full...)
		}
		lines = append(lines, line)
	}
	return lines
}

func isSpace(r rune) bool { return r == ' ' || r == '\t' || r == '\r' }

func joined(line, word string) string {
	if line == "" {
		return word
	}
	return line + " " + word
}

func fits(text string, size Paper, face Face, width Paper) bool {
	w, _, _ := Measure(text, size, face)
	return w <= width
}

// breakWord returns the full lines that a word fills, and what is left for the next line. A
// line takes at least one letter however narrow it is.
func breakWord(word string, size Paper, face Face, width Paper) (full []string, rest string) {
	for _, r := range word {
		if rest != "" && !fits(rest+string(r), size, face, width) {
			full = append(full, rest)
			rest = ""
		}
		rest += string(r)
	}
	return full, rest
}
