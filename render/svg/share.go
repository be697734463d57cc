package svg

import (
	"fmt"
	"slices"
	"strings"
)

// leastShared is the length of what is worth a reference, which takes some 25 letters.
const leastShared = 34

// share writes what stands in several drawings once: how they begin, elements that always stand together, and single elements
// that stand in different places. It returns what is shared and, for each drawing, its elements and references.
func share(sheets [][]drawn) (defs string, bodies []string) {
	begins := beginnings(sheets)
	var all [][]drawn
	for _, b := range begins {
		all = append(all, b.shortened(begins))
	}
	for _, sheet := range sheets {
		all = append(all, beginning{elements: sheet}.shortened(begins))
	}
	s := counted(all)
	for i, sheet := range all {
		body := s.body(sheet)
		if i < len(begins) {
			fmt.Fprintf(&s.groups, "<g id=%s>%s</g>", begins[i].name, body)
		} else {
			bodies = append(bodies, body)
		}
	}
	return "<svg class=ink width=0 height=0 aria-hidden=true><defs>" + s.groups.String() + "</defs></svg>", bodies
}

// beginning is how several drawings begin: the same wall, the same room.
type beginning struct {
	name     string
	elements []drawn
}

// beginnings are the longest that each drawing has in common with another, the short ones first.
func beginnings(sheets [][]drawn) []beginning {
	var out []beginning
	for i, a := range sheets {
		most := 0
		for j, b := range sheets {
			if i != j {
				most = max(most, common(a, b))
			}
		}
		known := slices.ContainsFunc(out, func(b beginning) bool { return slices.Equal(b.elements, a[:most]) })
		if most > 1 && !known {
			out = append(out, beginning{fmt.Sprintf("b%d", len(out)), a[:most]})
		}
	}
	slices.SortStableFunc(out, func(a, b beginning) int { return len(a.elements) - len(b.elements) })
	return out
}

// common is how many elements two drawings begin with alike.
func common(a, b []drawn) int {
	n := 0
	for n < len(a) && n < len(b) && a[n] == b[n] {
		n++
	}
	return n
}

// shortened refers to the longest other beginning that these elements begin with.
func (b beginning) shortened(begins []beginning) []drawn {
	out := b.elements
	for _, other := range begins {
		n := len(other.elements)
		if other.name != b.name && n <= len(b.elements) && slices.Equal(other.elements, b.elements[:n]) {
			out = append([]drawn{{ref: other.name}}, b.elements[n:]...)
		}
	}
	return out
}

// sharer counts what stands in several drawings, and names what it writes once.
type sharer struct {
	count    map[drawn]int
	after    map[[2]drawn]int // one right after the other
	anywhere map[drawn]int
	names    map[string]string
	groups   strings.Builder
}

func counted(sheets [][]drawn) *sharer {
	s := &sharer{count: map[drawn]int{}, after: map[[2]drawn]int{}, anywhere: map[drawn]int{}, names: map[string]string{}}
	for _, sheet := range sheets {
		for i, e := range sheet {
			s.count[e]++
			s.anywhere[e.atOrigin()]++
			if i > 0 {
				s.after[[2]drawn{sheet[i-1], e}]++
			}
		}
	}
	return s
}

func (e drawn) atOrigin() drawn {
	e.x, e.y = 0, 0
	return e
}

func (s *sharer) body(sheet []drawn) string {
	var body strings.Builder
	for i := 0; i < len(sheet); {
		n := s.run(sheet[i:])
		body.WriteString(s.write(sheet[i : i+n]))
		i += n
	}
	return body.String()
}

// run is how many of the next elements always stand together: one always follows the other, and the other never stands
// without it.
func (s *sharer) run(next []drawn) int {
	n := 1
	for n < len(next) && s.after[[2]drawn{next[n-1], next[n]}] == s.count[next[n-1]] && s.count[next[n-1]] == s.count[next[n]] {
		n++
	}
	return n
}

// write writes elements that always stand together.
func (s *sharer) write(run []drawn) string {
	var text strings.Builder
	for _, e := range run {
		text.WriteString(e.String())
	}
	if s.count[run[0]] > 1 && text.Len() >= leastShared {
		return drawn{ref: s.named(text.String(), "<g id=%s>%s</g>")}.String()
	}
	text.Reset()
	for _, e := range run {
		text.WriteString(s.single(e))
	}
	return text.String()
}

// single writes one element; what stands in several places is moved there.
func (s *sharer) single(e drawn) string {
	whole := e.atOrigin().String()
	if s.anywhere[e.atOrigin()] < 2 || len(whole) < 2*leastShared-len("<use  x= y=>") || e.ref != "" {
		return e.String()
	}
	tag, rest, _ := strings.Cut(whole, " ")
	return fmt.Sprintf(`<use href="#%s" x=%d y=%d />`, s.named(rest, tag+" id=%s %s"), e.x, e.y)
}

// named returns the name of a part that is written once.
func (s *sharer) named(part, form string) string {
	if s.names[part] == "" {
		s.names[part] = fmt.Sprintf("g%d", len(s.names))
		fmt.Fprintf(&s.groups, form, s.names[part], part)
	}
	return s.names[part]
}
