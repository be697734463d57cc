package length

import (
	"fmt"
	"math/big"
	"strings"
	"unicode"
	"unicode/utf8"
)

// maxText is the longest text that is read, in bytes: it bounds the work and no length needs as much.
const maxText = 200

// want is the right example that refusals show.
const want = "want a number and a unit, such as 31-1/2 in or 800 mm"

// refusal is why a text is no length.
type refusal struct{ rule, reason string }

func (r *refusal) reading() Reading { return Reading{Outcome: Refuse, Reason: r.reason, Rule: r.rule} }

// refuse makes a refusal under R16, the rule of what is no number, not finished or impossible.
func refuse(format string, args ...any) *refusal {
	return &refusal{"R16", fmt.Sprintf(format, args...)}
}

// token is a piece of the text that means something by itself.
type token struct {
	kind    kind
	gap     bool   // a space stands before it
	text    string // as typed
	unit    unit
	note    int
	val     *big.Rat // number and vulgar
	sep     rune     // the point or comma of a number, 0 in a whole one
	tail    int      // figures after sep
	odd     bool     // more than one separator, one of them a comma
	grouped bool     // made of figures in groups of three
}

// whole reports a number written without point or comma.
func (t token) whole() bool { return t.kind == number && t.sep == 0 }

type lexer struct {
	src []rune
	pos int
	gap bool
	out []token
}

// lex cuts a text into tokens; it refuses what no length can contain.
func lex(text string) ([]token, *refusal) {
	switch {
	case len(text) > maxText:
		return nil, refuse("too long for one length: %s", want)
	case !utf8.ValidString(text):
		return nil, refuse("not a text: %s", want)
	}
	lx := lexer{src: []rune(text)}
	for lx.pos < len(lx.src) {
		if refused := lx.step(); refused != nil {
			return nil, refused
		}
	}
	return lx.out, nil
}

// step reads one token or one space.
func (lx *lexer) step() *refusal {
	r := lx.src[lx.pos]
	switch {
	case unicode.IsSpace(r):
		lx.pos++
		lx.gap = len(lx.out) > 0
		return nil
	case isDigit(r), (r == '.' || r == ',') && isDigit(lx.at(1)):
		return lx.number()
	case unicode.IsLetter(r):
		return lx.word()
	}
	return lx.sign(r)
}

// at returns the rune n places on, 0 past the end.
func (lx *lexer) at(n int) rune {
	if lx.pos+n >= len(lx.src) {
		return 0
	}
	return lx.src[lx.pos+n]
}

func (lx *lexer) emit(t token, n int) {
	t.gap, lx.gap = lx.gap, false
	t.text = string(lx.src[lx.pos : lx.pos+n])
	lx.out = append(lx.out, t)
	lx.pos += n
}

func isDigit(r rune) bool { return '0' <= r && r <= '9' }

// sign reads a single character; two feet marks together are an inch mark (rule R4).
func (lx *lexer) sign(r rune) *refusal {
	t, known := signs[r]
	switch {
	case r == '.':
		return refuse("a point without figures after it: not finished")
	case !known && unicode.IsPrint(r):
		return refuse("%q has no meaning in a length: %s", r, want)
	case !known:
		return refuse("a character that cannot be seen (U+%04X): %s", r, want)
	}
	switch {
	case t.unit == foot && signs[lx.at(1)].unit == foot:
		lx.emit(token{kind: mark, unit: inch}, 2)
	case r == '+' && lx.at(1) == '/' && lx.at(2) == '-':
		lx.emit(signs['±'], 3)
	default:
		lx.emit(t, 1)
	}
	return nil
}

// number reads figures with points and commas between them.
func (lx *lexer) number() *refusal {
	n := 0
	for isDigit(lx.at(n)) || (lx.at(n) == '.' || lx.at(n) == ',') && isDigit(lx.at(n+1)) {
		n++
	}
	text := string(lx.src[lx.pos : lx.pos+n])
	points, commas := strings.Count(text, "."), strings.Count(text, ",")
	if points > 1 && commas == 0 {
		return dotted(text, points)
	}
	t := token{kind: number, odd: points+commas > 1}
	if at := strings.LastIndexAny(text, ".,"); at >= 0 {
		t.sep, t.tail = rune(text[at]), len(text)-at-1
	}
	if t.odd {
		t.sep = ','
	}
	t.val = numeral(text)
	if commas > 1 && points == 0 {
		t.val = numeral(strings.ReplaceAll(text, ",", ""))
	}
	lx.emit(t, n)
	return nil
}

var separators = strings.NewReplacer(".", "", ",", "")

// numeral is the number that figures mean with the last separator taken for the decimal one.
func numeral(text string) *big.Rat {
	at := strings.LastIndexAny(text, ".,")
	digits := separators.Replace(text)
	v, _ := new(big.Int).SetString(digits, 10)
	scale := big.NewInt(1)
	if at >= 0 {
		scale.Exp(big.NewInt(10), big.NewInt(int64(len(text)-at-1)), nil)
	}
	return new(big.Rat).SetFrac(v, scale)
}

// dotted refuses feet.inches.parts, whose last figure counts quarters in one office and sixteenths in another (HABS
// Recording Guideline 3.1.4 has both).
func dotted(text string, points int) *refusal {
	if points > 2 {
		return refuse("%q is no number: %s", text, want)
	}
	f := strings.Split(text, ".")
	return &refusal{"R12", fmt.Sprintf("survey shorthand: %s ft %s in and %s, which may be quarters, eighths or sixteenths of an "+
		"inch: write the fraction, such as 3' 10-1/4\"", f[0], f[1], f[2])}
}

// word reads letters: a unit, a separator or a remark.
func (lx *lexer) word() *refusal {
	n := 0
	for unicode.IsLetter(lx.at(n)) {
		n++
	}
	text := strings.ToLower(string(lx.src[lx.pos : lx.pos+n]))
	t, known := words[text]
	if front, cut := strings.CutSuffix(text, "x"); !known && cut && words[front].kind == mark {
		t, known, n = words[front], true, n-1 // 18mmx95mm
	}
	if !known {
		return lx.unknown(text, n)
	}
	dotted := lx.at(n) == '.' && (t.kind == mark || t.kind == hedge)
	if dotted && isDigit(lx.at(n+1)) {
		return refuse("the point after %q can belong to the number or to the word: put a space after it", text)
	}
	if dotted {
		n++
	}
	lx.emit(t, n)
	return nil
}

func (lx *lexer) unknown(text string, n int) *refusal {
	if text == "e" && isDigit(lx.before()) && !lx.gap {
		return refuse("an exponent: not a tape reading")
	}
	return refuse("%q is no length: %s", string(lx.src[lx.pos:lx.pos+n]), want)
}

func (lx *lexer) before() rune {
	if lx.pos == 0 {
		return 0
	}
	return lx.src[lx.pos-1]
}
