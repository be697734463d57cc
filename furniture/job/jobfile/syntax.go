package jobfile

import (
	"errors"
	"fmt"
	"strings"
	"unicode/utf8"

	"github.com/BurntSushi/toml"
)

// A parsed text: its values as the library reads them and its nodes as the scan does.
type parsed struct {
	values map[string]any // nil where the text is no TOML even with its faults mended
	scan   *scanner
	faults []fault
}

// A fault is a place where the text is no TOML.
type fault struct {
	line       int
	have, want string
	known      int  // line whose key it is about, where that is another
	keyless    bool // no key can be told
	mended     bool // a value alone is at fault, and this is it:
	bare       string
}

// mostMends bounds how often a text with faults is read again, largestMended how large it may be for that.
const (
	mostMends     = 40
	largestMended = 1 << 20
)

// parse reads the text. A fault that concerns one value alone is mended for the rest of the reading, so that everything else in the
// file is complained about at the same time.
func parse(text string) parsed {
	p := parsed{scan: scan(text)}
	switch {
	case !utf8.ValidString(text):
		p.faults = []fault{{line: invalidLine(text), have: "letters that are no UTF-8", want: "save the file as UTF-8 text"}}
		return p
	case p.scan.deep > 0:
		p.faults = []fault{{line: p.scan.deep, have: "brackets or keys nested too deep", want: "a job needs no more than three or four levels"}}
		return p
	}
	text = p.headers(p.scan.src)
	for range mostMends {
		var err *toml.ParseError
		p.values, err = decode(text)
		if err == nil {
			if len(p.faults) > 0 {
				p.scan = scan(text)
			}
			return p
		}
		p.values = nil
		var mended bool
		if text, mended = p.mend(text, err); !mended {
			return p
		}
	}
	return p
}

// decode reads TOML. The library panics where it meets a mistake of its own; that is reported like any other fault.
func decode(text string) (values map[string]any, fault *toml.ParseError) {
	defer func() {
		if r := recover(); r != nil {
			values, fault = nil, &toml.ParseError{Message: fmt.Sprint(r), Position: toml.Position{Line: 1}}
		}
	}()
	_, err := toml.Decode(text, &values)
	if err == nil {
		return values, nil
	}
	if perr := (toml.ParseError{}); errors.As(err, &perr) {
		return nil, &perr
	}
	return nil, &toml.ParseError{Message: err.Error(), Position: toml.Position{Line: 1}}
}

// headers complains of [wall] where only [[wall]] can stand, and mends it.
func (p *parsed) headers(text string) string {
	lists := listPaths()
	lines := strings.Split(text, "\n")
	for _, h := range p.scan.visits {
		name := strings.Join(h.path(), ".")
		if !h.header || !lists[name] || !strings.Contains(lines[h.line-1], "]") {
			continue
		}
		p.faults = append(p.faults, fault{line: h.line, have: fmt.Sprintf("[%s] in single brackets", name),
			want: fmt.Sprintf("[[%s]], which may stand several times", name)})
		lines[h.line-1] = "[[" + name + "]]"
	}
	return strings.Join(lines, "\n")
}

// invalidLine returns the line of the first byte that is no UTF-8.
func invalidLine(text string) int {
	line := 1
	for _, l := range strings.SplitAfter(text, "\n") {
		if !utf8.ValidString(l) {
			break
		}
		line++
	}
	return line
}
