package jobfile

import "strings"

// value reads a value into n: the elements of a list and the keys of an inline table get nodes of their own.
func (s *scanner) value(n *node, depth int) {
	if depth > deepest {
		s.deep = s.line
		s.pos = len(s.src)
		return
	}
	s.spaces()
	switch rest := s.src[s.pos:]; {
	case strings.HasPrefix(rest, `"""`), strings.HasPrefix(rest, "'''"):
		s.paragraph()
	case strings.HasPrefix(rest, `"`), strings.HasPrefix(rest, "'"):
		s.quoted()
	case strings.HasPrefix(rest, "["):
		s.pos++
		s.elements(n, depth)
	case strings.HasPrefix(rest, "{"):
		s.pos++
		s.pairs(n, depth)
	default:
		s.bare()
	}
}

// elements reads a list up to its bracket.
func (s *scanner) elements(n *node, depth int) {
	for s.gap(']') {
		s.value(n.element(s.line), depth+1)
	}
	s.pos++
}

// pairs reads an inline table up to its brace.
func (s *scanner) pairs(n *node, depth int) {
	for s.gap('}') {
		line := s.line
		parts := s.dotted()
		if len(parts) == 0 {
			s.pos++
			continue
		}
		c := n
		for _, part := range parts {
			c = c.child(part, line)
		}
		s.visits = append(s.visits, visit{c, line, false})
		s.spaces()
		if s.peek() == '=' {
			s.pos++
			s.value(c, depth+1)
		}
	}
	s.pos++
}

// gap passes blanks, commas, line ends and comments inside brackets and reports whether something other than the end follows.
func (s *scanner) gap(end byte) bool {
	for s.pos < len(s.src) {
		switch c := s.peek(); c {
		case ' ', '\t', ',', '\r':
			s.pos++
		case '\n':
			s.newline()
		case '#':
			s.remark()
		default:
			return c != end
		}
	}
	return false
}

// bare reads a number, a date or a word.
func (s *scanner) bare() {
	start := s.pos
	for s.pos < len(s.src) && !strings.ContainsRune(",]}#\n", rune(s.src[s.pos])) {
		s.pos++
	}
	if s.pos == start && s.pos < len(s.src) && s.src[s.pos] != '\n' {
		s.pos++ // a sign out of place: step on
	}
}

// quoted reads a text of one line and returns what stands between its quotes.
func (s *scanner) quoted() string {
	quote := s.src[s.pos]
	s.pos++
	start := s.pos
	for s.pos < len(s.src) && s.src[s.pos] != quote && s.src[s.pos] != '\n' {
		if s.src[s.pos] == '\\' && quote == '"' && s.pos+1 < len(s.src) && s.src[s.pos+1] != '\n' {
			s.pos++
		}
		s.pos++
	}
	text := s.src[start:s.pos]
	if s.peek() == quote {
		s.pos++
	}
	return text
}

// paragraph reads a text of several lines. Up to two quotes may stand right before the three that close it.
func (s *scanner) paragraph() {
	quotes := s.src[s.pos : s.pos+3]
	s.pos += 3
	for s.pos < len(s.src) {
		switch c := s.src[s.pos]; {
		case c == '\n':
			s.line++
		case c == '\\' && quotes[0] == '"' && s.pos+1 < len(s.src) && s.src[s.pos+1] != '\n':
			s.pos++
		case strings.HasPrefix(s.src[s.pos:], quotes):
			s.pos += 3
			for i := 0; i < 2 && s.peek() == quotes[0]; i++ {
				s.pos++
			}
			return
		}
		s.pos++
	}
}
