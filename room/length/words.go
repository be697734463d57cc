package length

import "math/big"

// kind is what a token is for.
type kind int

const (
	end     kind = iota // past the last token
	number              // figures with at most one point or comma
	vulgar              // a fraction in one character
	mark                // a unit: word or mark
	bar                 // fraction bar
	dash                // hyphen or en dash: separator where it is tight, minus where a space stands before it
	minus               // a dash that is no hyphen: always asked about
	plus                // adds
	times               // multiplies
	opening             // bracket
	closing             // bracket
	by                  // between the sizes of a section
	colon               // between feet and inches, asked about
	split               // between two values
	and                 // separator
	note                // strong, light
	hedge               // about, a question mark
)

// unit is a unit of length as written; bare is none.
type unit int

const (
	bare unit = iota
	foot
	inch
	millimetre
	centimetre
	metre
)

var units = map[unit]struct {
	length Length
	name   string
	plural string
}{
	foot:       {Foot, "ft", "feet"},
	inch:       {Inch, "in", "inches"},
	millimetre: {Millimetre, "mm", "millimetres"},
	centimetre: {10 * Millimetre, "cm", "centimetres"},
	metre:      {1000 * Millimetre, "m", "metres"},
}

func (u unit) imperial() bool { return u == foot || u == inch }
func (u unit) metric() bool   { return u >= millimetre }

// words are matched without regard to case; a unit or hedge may end in a point (rules R1, R3, R10, R14, R15, R18).
var words = map[string]token{
	"ft": {kind: mark, unit: foot}, "foot": {kind: mark, unit: foot}, "feet": {kind: mark, unit: foot},
	"in": {kind: mark, unit: inch}, "inch": {kind: mark, unit: inch}, "inches": {kind: mark, unit: inch},
	"mm": {kind: mark, unit: millimetre}, "cm": {kind: mark, unit: centimetre}, "m": {kind: mark, unit: metre},
	"millimetre": {kind: mark, unit: millimetre}, "millimetres": {kind: mark, unit: millimetre},
	"millimeter": {kind: mark, unit: millimetre}, "millimeters": {kind: mark, unit: millimetre},
	"centimetre": {kind: mark, unit: centimetre}, "centimetres": {kind: mark, unit: centimetre},
	"centimeter": {kind: mark, unit: centimetre}, "centimeters": {kind: mark, unit: centimetre},
	"metre": {kind: mark, unit: metre}, "metres": {kind: mark, unit: metre},
	"meter": {kind: mark, unit: metre}, "meters": {kind: mark, unit: metre},

	"and": {kind: and}, "x": {kind: by}, "by": {kind: by}, "or": {kind: split}, "to": {kind: split},

	"strong": {kind: note, note: 2}, "heavy": {kind: note, note: 2}, "light": {kind: note, note: -2},

	"about": {kind: hedge}, "around": {kind: hedge}, "roughly": {kind: hedge}, "approx": {kind: hedge},
	"approximately": {kind: hedge}, "circa": {kind: hedge}, "ca": {kind: hedge}, "nearly": {kind: hedge},
	"almost": {kind: hedge}, "maybe": {kind: hedge}, "perhaps": {kind: hedge}, "probably": {kind: hedge},
	"say": {kind: hedge}, "ish": {kind: hedge}, "so": {kind: hedge},
}

// signs are single characters (rules R1, R2, R4, R6). A spaced-out dash and the true minus sign are no hyphen.
var signs = map[rune]token{
	'"': {kind: mark, unit: inch}, '″': {kind: mark, unit: inch}, '”': {kind: mark, unit: inch}, '“': {kind: mark, unit: inch},
	'\'': {kind: mark, unit: foot}, '′': {kind: mark, unit: foot}, '’': {kind: mark, unit: foot}, '‘': {kind: mark, unit: foot},
	'/': {kind: bar}, '\u2044': {kind: bar}, '\u2215': {kind: bar},
	'-': {kind: dash}, '\u2010': {kind: dash}, '\u2011': {kind: dash}, '\u2012': {kind: dash}, '\u2013': {kind: dash},
	'\u2014': {kind: minus}, '\u2212': {kind: minus},
	'+': {kind: plus}, '*': {kind: times}, '(': {kind: opening}, ')': {kind: closing},
	'×': {kind: by}, ':': {kind: colon}, ',': {kind: split}, ';': {kind: split}, '=': {kind: split}, '±': {kind: split},
	'?': {kind: hedge}, '~': {kind: hedge}, '≈': {kind: hedge},

	'½': part(1, 2), '¼': part(1, 4), '¾': part(3, 4), '⅛': part(1, 8), '⅜': part(3, 8), '⅝': part(5, 8), '⅞': part(7, 8),
	'⅓': part(1, 3), '⅔': part(2, 3), '⅕': part(1, 5), '⅖': part(2, 5), '⅗': part(3, 5), '⅘': part(4, 5),
	'⅙': part(1, 6), '⅚': part(5, 6), '⅐': part(1, 7), '⅑': part(1, 9), '⅒': part(1, 10),
}

func part(n, d int64) token { return token{kind: vulgar, val: big.NewRat(n, d)} }
