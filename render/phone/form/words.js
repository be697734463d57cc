// The words and signs of a length. Kinds of a token: number, vulgar (a fraction in one character),
// mark (a unit), bar, dash, minus, plus, times, opening, closing, by, colon, split, and, note, hedge.
const WORDS = new Map()
const SIGNS = new Map()

function name (words, token) {
  for (const w of words.split(' ')) WORDS.set(w, token)
}

function sign (signs, token) {
  for (const s of signs) SIGNS.set(s, token)
}

name('ft foot feet', {kind: 'mark', unit: FOOT})
name('in inch inches', {kind: 'mark', unit: INCH})
name('mm millimetre millimetres millimeter millimeters', {kind: 'mark', unit: MILLIMETRE})
name('cm centimetre centimetres centimeter centimeters', {kind: 'mark', unit: CENTIMETRE})
name('m metre metres meter meters', {kind: 'mark', unit: METRE})
name('and', {kind: 'and'})
name('x by', {kind: 'by'})
name('or to', {kind: 'split'})
name('strong heavy', {kind: 'note', note: 2})
name('light', {kind: 'note', note: -2})
name('about around roughly approx approximately circa ca nearly almost maybe perhaps probably say ish so', {kind: 'hedge'})

sign('"\u2033\u201d\u201c', {kind: 'mark', unit: INCH})
sign("'\u2032\u2019\u2018", {kind: 'mark', unit: FOOT})
sign('/\u2044\u2215', {kind: 'bar'})
sign('-\u2010\u2011\u2012\u2013', {kind: 'dash'})
sign('\u2014\u2212', {kind: 'minus'})
sign('+', {kind: 'plus'})
sign('*', {kind: 'times'})
sign('(', {kind: 'opening'})
sign(')', {kind: 'closing'})
sign('\u00d7', {kind: 'by'})
sign(':', {kind: 'colon'})
sign(',;=\u00b1', {kind: 'split'})
sign('?~\u2248', {kind: 'hedge'})

const VULGAR = {
  '\u00bd': [1, 2], '\u00bc': [1, 4], '\u00be': [3, 4],
  '\u215b': [1, 8], '\u215c': [3, 8], '\u215d': [5, 8], '\u215e': [7, 8],
  '\u2153': [1, 3], '\u2154': [2, 3],
  '\u2155': [1, 5], '\u2156': [2, 5], '\u2157': [3, 5], '\u2158': [4, 5],
  '\u2159': [1, 6], '\u215a': [5, 6], '\u2150': [1, 7], '\u2151': [1, 9], '\u2152': [1, 10]
}
for (const [s, [n, d]] of Object.entries(VULGAR)) {
  SIGNS.set(s, {kind: 'vulgar', val: rat(BigInt(n), BigInt(d))})
}
