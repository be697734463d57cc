package jobfile

import "strings"

// Bounds of the scan: deeper than any job, and shallow enough that no reader runs out of stack or time.
const (
	deepest  = 40 // brackets within brackets
	mostKeys = 20 // parts of a dotted key
)

// scanner goes through a TOML text once and notes where each key and element stands, with the comments beside it. It relies on the
// library for what is TOML at all: on a text that the library refuses it may note anything, but it ends.
type scanner struct {
	src    string
	pos    int
	line   int
	root   *node
	table  *node   // the table that keys go to
	stmt   *node   // the key or header being read: comments inside it are its own
	above  comment // comment lines since the last key
	blank  bool    // a blank line stands between them and here
	tail   comment // comments after the last key
	visits []visit // every header and key in order
	deep   int     // line where something is nested beyond the bounds, 0 for none
}

// A visit is one place where a header or a key stands; a key that stands twice has one node.
type visit struct {
	*node
	line   int
	header bool // [table], not [[list]] and no key
}

// scan reads a text into its tree of nodes.
func scan(src string) *scanner {
	s := &scanner{src: strings.TrimPrefix(src, "\ufeff"), line: 1, root: &node{}}
	s.table = s.root
	for s.pos < len(s.src) && s.deep == 0 {
		s.statement()
	}
	s.tail = s.above
	return s
}

// statement reads one line: blank, a comment, a header, or a key with its value.
func (s *scanner) statement() {
	s.spaces()
	switch s.peek() {
	case '\n', '\r':
		s.blank = len(s.above) > 0
		s.newline()
	case '#':
		if s.blank {
			s.above = s.above.add("")
		}
		s.blank, s.above = false, s.above.add(s.comment())
		s.newline()
	case '[':
		s.header()
		s.ending()
	default:
		if s.pos < len(s.src) {
			s.pair(s.table, true)
			s.ending()
		}
	}
}

// header reads [table] or [[list]].
func (s *scanner) header() {
	s.pos++
	list := s.peek() == '['
	if list {
		s.pos++
	}
	line := s.line
	n := s.root
	for _, part := range s.dotted() {
		n = n.child(part, line)
	}
	if n == s.root {
		s.stmt = nil
		return
	}
	s.visits = append(s.visits, visit{n, line, !list})
	if list {
		n = n.element(line)
	}
	n.line = line
	s.table = n
	s.begin(n)
	for s.peek() == ']' {
		s.pos++
	}
}

// pair reads a key and its value into table. A whole statement takes the comment lines above it.
func (s *scanner) pair(table *node, whole bool) {
	line := s.line
	parts := s.dotted()
	if len(parts) == 0 {
		s.pos++ // no key: step on, so that the scan ends
		return
	}
	n := table
	for _, part := range parts {
		n = n.child(part, line)
	}
	s.visits = append(s.visits, visit{n, line, false})
	if whole {
		s.begin(n)
	}
	s.spaces()
	if s.peek() == '=' {
		s.pos++
		s.value(n, 0)
	}
}

// begin hands the comment lines above a statement to its node.
func (s *scanner) begin(n *node) {
	n.comment = n.comment.add(s.above...)
	s.above, s.blank, s.stmt = nil, false, n
}

// ending reads what stands behind a statement on its line.
func (s *scanner) ending() {
	for s.pos < len(s.src) && s.peek() != '\n' {
		if s.peek() == '#' {
			s.remark()
			continue
		}
		s.pos++
	}
	s.newline()
}

// remark hands a comment inside or behind a statement to its node.
func (s *scanner) remark() {
	text := s.comment()
	if s.stmt == nil {
		s.above = s.above.add(text)
		return
	}
	s.stmt.comment = s.stmt.comment.add(text)
}

// comment reads from the sign to the end of the line.
func (s *scanner) comment() string {
	start := s.pos
	for s.pos < len(s.src) && s.src[s.pos] != '\n' {
		s.pos++
	}
	return uncomment(s.src[start:s.pos])
}

func (s *scanner) newline() {
	if s.peek() == '\r' {
		s.pos++
	}
	if s.peek() == '\n' {
		s.pos++
		s.line++
	}
}

func (s *scanner) spaces() {
	for s.peek() == ' ' || s.peek() == '\t' {
		s.pos++
	}
}

// peek returns the next byte, 0 at the end.
func (s *scanner) peek() byte {
	if s.pos < len(s.src) {
		return s.src[s.pos]
	}
	return 0
}
