package ask

import (
	"fmt"
	"strings"
	"unicode/utf8"
)

// escape writes a text for a reply: "%", "|" and everything outside printable ASCII byte by byte.
func escape(text string) string {
	return escaped(text, func(c byte) bool { return c == '%' || c == '|' || c < ' ' || c > '~' })
}

// escapeKey writes a key for a reply, as encodeURIComponent does.
func escapeKey(key string) string {
	return escaped(key, func(c byte) bool {
		return !(c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || strings.IndexByte("-_.!~*'()", c) >= 0)
	})
}

func escaped(text string, must func(byte) bool) string {
	var b strings.Builder
	for i := range len(text) {
		if must(text[i]) {
			fmt.Fprintf(&b, "%%%02X", text[i])
			continue
		}
		b.WriteByte(text[i])
	}
	return b.String()
}

// unescape is the other way round. A "%" that begins no byte, and bytes that are no text, stay as they are; so do line breaks and other
// characters that cannot be seen.
func unescape(text string) string {
	if !strings.Contains(text, "%") {
		return text
	}
	var b strings.Builder
	for i := 0; i < len(text); i++ {
		if c, ok := hexByte(text[i:]); ok {
			b.WriteByte(c)
			i += 2
			continue
		}
		b.WriteByte(text[i])
	}
	if !utf8.ValidString(b.String()) {
		return text
	}
	return strings.ReplaceAll(tidy(b.String()), "\n", " ")
}

// hexByte reads "%7C".
func hexByte(text string) (byte, bool) {
	if len(text) < 3 || text[0] != '%' {
		return 0, false
	}
	hi, lo := strings.IndexByte(hexFigures, lower(text[1])), strings.IndexByte(hexFigures, lower(text[2]))
	return byte(hi<<4 | lo), hi >= 0 && lo >= 0
}

const hexFigures = "0123456789abcdef"

func lower(c byte) byte {
	if c >= 'A' && c <= 'Z' {
		return c + 'a' - 'A'
	}
	return c
}
