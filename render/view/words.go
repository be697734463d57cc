package view

import (
	"regexp"
	"strings"
	"unicode"
	"unicode/utf8"
)

// capital returns the text with a capital first letter.
func capital(text string) string {
	r, n := utf8.DecodeRuneInString(text)
	if n == 0 {
		return text
	}
	return string(unicode.ToUpper(r)) + text[n:]
}

// between writes a pair of corner letters as "A to B".
func between(key string) string {
	letters := []rune(key)
	if len(letters) != 2 {
		return key
	}
	return string(letters[0]) + " to " + string(letters[1])
}

// joined writes parts that are not empty with a separator.
func joined(sep string, parts ...string) string {
	var list []string
	for _, p := range parts {
		if p != "" {
			list = append(list, p)
		}
	}
	return strings.Join(list, sep)
}

// kept holds a measure together when words are wrapped: feet with their inches, a number with its unit.
func kept(words string) string {
	words = feetInches.ReplaceAllString(words, "$1\u00a0$2")
	return numberUnit.ReplaceAllString(words, "$1\u00a0$2")
}

var (
	feetInches = regexp.MustCompile(`([0-9]') ([0-9])`)
	numberUnit = regexp.MustCompile(`([0-9]"?) (mm|in|ft2|to spare|short)\b`)
)
