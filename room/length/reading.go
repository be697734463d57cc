package length

import (
	"strconv"
	"strings"
	"unicode"
)

// Outcome says what came of a text.
type Outcome int

// Outcomes. The zero Outcome is Refuse, so that a reading nobody made is no value.
const (
	Refuse Outcome = iota // cannot be a length here: Reason says why
	Ask                   // can be read in more than one way: Question says which
	Value                 // exactly one meaning
)

// String returns "refuse", "ask" or "value".
func (o Outcome) String() string {
	switch o {
	case Ask:
		return "ask"
	case Value:
		return "value"
	}
	return "refuse"
}

// Reading is what a text was found to mean. Value and Second are set only where Outcome is Value.
type Reading struct {
	Outcome  Outcome
	Value    Length
	Second   Length   // the second size of a section
	Note64   int      // remark kept beside the value: strong +2, light -2, in 64ths of an inch
	Question string   // Ask: what to ask, with the readings it may have
	Offers   []Length // Ask: those readings that are one length, in the order of the question
	Reason   string   // why it is asked or refused; a remark beside a value
	Rule     string   // the notation rule that asked, refused or remarked: R1 to R19
}

// Read says what a typed text means. It never guesses: what has two meanings is asked about and what has none is refused.
// Values are exact, not negative and at most MaxRead. The rules R1 to R19 are in testdata/notation_rules.csv.
func Read(text string, c Context) Reading {
	toks, refused := lex(text)
	if refused != nil {
		return refused.reading()
	}
	r := reader{ctx: c, toks: groupDigits(toks)}
	if refused = r.setAside(); refused != nil {
		return refused.reading()
	}
	if c.Field == Section {
		return r.section()
	}
	return r.single()
}

// Parse reads a text that must mean one length. The error is a *RefuseError or an *AskError.
func Parse(text string, c Context) (Length, error) {
	if c.Field == Section {
		return 0, &RefuseError{text, "a section has two sizes: it is no length", "R15"}
	}
	got := Read(text, c)
	return got.Value, got.Err(text)
}

// ParseSection reads the two sizes of a section in the order typed. The error is a *RefuseError or an *AskError.
func ParseSection(text string, u Unit) (first, second Length, err error) {
	got := Read(text, Context{Unit: u, Field: Section})
	return got.Value, got.Second, got.Err(text)
}

// Err returns nil for a value, otherwise a *RefuseError or an *AskError that quotes the text.
func (r Reading) Err(text string) error {
	switch r.Outcome {
	case Value:
		return nil
	case Ask:
		return &AskError{text, r.Question, r.Reason, r.Rule, r.Offers}
	}
	return &RefuseError{text, r.Reason, r.Rule}
}

// AskError is a text that can be read in more than one way.
type AskError struct {
	Text, Question, Reason, Rule string
	Offers                       []Length
}

func (e *AskError) Error() string {
	return "length " + quote(e.Text) + ": " + e.Reason + ": " + e.Question
}

// RefuseError is a text that means no length.
type RefuseError struct {
	Text, Reason, Rule string
}

func (e *RefuseError) Error() string {
	return "length " + quote(e.Text) + ": " + e.Reason
}

// quote leaves inch marks as they were typed; only what cannot be seen is escaped.
func quote(text string) string {
	const longest = 60
	if r := []rune(text); len(r) > longest {
		text = string(r[:longest]) + "..."
	}
	if strings.IndexFunc(text, func(r rune) bool { return !unicode.IsPrint(r) }) >= 0 {
		return strconv.Quote(text)
	}
	return `"` + text + `"`
}
