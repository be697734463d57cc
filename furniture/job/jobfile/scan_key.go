package jobfile

import (
	"strings"

	"github.com/BurntSushi/toml"
)

// dotted reads a key, bare or quoted, in its parts; none where no key stands.
func (s *scanner) dotted() []string {
	var parts []string
	for {
		s.spaces()
		part, ok := s.part()
		if !ok {
			return parts
		}
		parts = append(parts, part)
		if len(parts) > mostKeys {
			s.deep, s.pos = s.line, len(s.src)
			return parts
		}
		s.spaces()
		if s.peek() != '.' {
			return parts
		}
		s.pos++
	}
}

func (s *scanner) part() (string, bool) {
	switch c := s.peek(); {
	case c == '"':
		return unescape(s.quoted()), true
	case c == '\'':
		return s.quoted(), true
	}
	start := s.pos
	for bareKey(s.peek()) {
		s.pos++
	}
	return s.src[start:s.pos], s.pos > start
}

func bareKey(c byte) bool {
	return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '_' || c == '-'
}

// unescape returns a quoted key as it is meant; what the library does not read stays as written.
func unescape(text string) string {
	if !strings.Contains(text, `\`) {
		return text
	}
	var out map[string]string
	if _, err := toml.Decode(`x = "`+text+`"`, &out); err != nil {
		return text
	}
	return out["x"]
}
