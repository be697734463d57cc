// A text cut into tokens: {kind, gap, text, unit, note, val, sep, tail, odd, grouped}. gap: a space
// stands before it; sep: the point or comma of a number, '' in a whole one; tail: figures after it;
// odd: more than one separator, one of them a comma.
const WANT = 'want a number and a unit, such as 31-1/2 in or 800 mm'

// Refusal is thrown where a text cannot be a length. R16 is the rule of what is no number, not
// finished or impossible.
class Refusal {
  constructor (reason, rule = 'R16') {
    this.reason = reason
    this.rule = rule
  }
}

function refuse (reason, rule) { throw new Refusal(reason, rule) }

const isDigit = c => c >= '0' && c <= '9'
const isLetter = c => /^\p{L}$/u.test(c)
const isSpace = c => /^\p{White_Space}$/u.test(c)
const isSeen = c => /^[\p{L}\p{M}\p{N}\p{P}\p{S}]$/u.test(c)
const isPoint = c => c === '.' || c === ','
const wholeToken = t => t.kind === 'number' && t.sep === ''

function lex (text) {
  if (new TextEncoder().encode(text).length > 200) refuse('too long for one length: ' + WANT)
  if (/\p{Surrogate}/u.test(text)) refuse('not a text: ' + WANT)
  return new Lexer(text).tokens()
}

class Lexer {
  constructor (text) {
    this.src = Array.from(text)
    this.pos = 0
    this.gap = false
    this.out = []
  }

  tokens () {
    while (this.pos < this.src.length) this.step()
    return this.out
  }

  at (n) { return this.src[this.pos + n] || '' }

  step () {
    const c = this.at(0)
    if (isSpace(c)) {
      this.pos++
      this.gap = this.out.length > 0
    } else if (isDigit(c) || (isPoint(c) && isDigit(this.at(1)))) this.number()
    else if (isLetter(c)) this.word()
    else this.sign(c)
  }

  emit (token, n) {
    const blank = {unit: BARE, note: 0, val: null, sep: '', tail: 0, odd: false, grouped: false}
    const text = this.src.slice(this.pos, this.pos + n).join('')
    this.out.push(Object.assign(blank, token, {gap: this.gap, text}))
    this.gap = false
    this.pos += n
  }

  // sign reads a single character; two feet marks together are an inch mark (rule R4).
  sign (c) {
    const t = SIGNS.get(c)
    const after = SIGNS.get(this.at(1))
    if (c === '.') refuse('a point without figures after it: not finished')
    if (!t && isSeen(c)) refuse(`'${c === '\\' ? '\\\\' : c}' has no meaning in a length: ${WANT}`)
    if (!t) refuse(`a character that cannot be seen (U+${c.codePointAt(0).toString(16).toUpperCase().padStart(4, '0')}): ${WANT}`)
    if (t.unit === FOOT && after && after.unit === FOOT) this.emit({kind: 'mark', unit: INCH}, 2)
    else if (c === '+' && this.at(1) === '/' && this.at(2) === '-') this.emit(SIGNS.get('\u00b1'), 3)
    else this.emit(t, 1)
  }

  number () {
    let n = 0
    while (isDigit(this.at(n)) || (isPoint(this.at(n)) && isDigit(this.at(n + 1)))) n++
    const text = this.src.slice(this.pos, this.pos + n).join('')
    const points = text.split('.').length - 1
    const commas = text.split(',').length - 1
    if (points > 1 && commas === 0) refuseDotted(text, points)
    const last = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','))
    const odd = points + commas > 1
    const grouped = commas > 1 && points === 0
    this.emit({
      kind: 'number',
      odd,
      sep: odd ? ',' : last < 0 ? '' : text[last],
      tail: last < 0 ? 0 : text.length - last - 1,
      val: numeral(grouped ? text.replace(/,/g, '') : text)
    }, n)
  }

  // word reads letters: a unit, a separator or a remark. The x of 18mmx95mm stands alone.
  word () {
    let n = 0
    while (isLetter(this.at(n))) n++
    const typed = this.src.slice(this.pos, this.pos + n)
    const text = typed.map(lowered).join('')
    let t = WORDS.get(text)
    if (!t && text.endsWith('x')) {
      const front = WORDS.get(text.slice(0, -1))
      if (front && front.kind === 'mark') { t = front; n-- }
    }
    if (!t) this.unknown(text, typed.join(''))
    const dotted = this.at(n) === '.' && (t.kind === 'mark' || t.kind === 'hedge')
    if (dotted && isDigit(this.at(n + 1))) {
      refuse(`the point after "${text}" can belong to the number or to the word: put a space after it`)
    }
    this.emit(t, dotted ? n + 1 : n)
  }

  unknown (text, typed) {
    if (text === 'e' && this.pos > 0 && isDigit(this.at(-1)) && !this.gap) refuse('an exponent: not a tape reading')
    refuse(`"${typed}" is no length: ${WANT}`)
  }
}

// lowered is one letter for one, so that a capital with a dot does not grow.
function lowered (c) { return Array.from(c.toLowerCase())[0] }

// refuseDotted: feet.inches.parts, whose last figure counts quarters in one office and sixteenths in another.
function refuseDotted (text, points) {
  if (points > 2) refuse(`"${text}" is no number: ${WANT}`)
  const [feet, inches, parts] = text.split('.')
  refuse(`survey shorthand: ${feet} ft ${inches} in and ${parts}, which may be quarters, eighths or sixteenths of an ` +
    'inch: write the fraction, such as 3\' 10-1/4"', 'R12')
}

// groupDigits joins figures in groups of three where a metric unit follows (rule R10): 1 700 mm.
function groupDigits (toks) {
  const out = []
  for (let i = 0; i < toks.length; i++) {
    const n = groupAt(toks, i)
    if (n < 2) { out.push(toks[i]); continue }
    out.push(joinGroup(toks.slice(i, i + n)))
    i += n - 1
  }
  return out
}

function groupAt (toks, i) {
  const first = toks[i]
  if (!wholeToken(first) || first.text.length > 3 || first.text[0] === '0' || (i > 0 && toks[i - 1].kind === 'bar')) return 0
  let n = 1
  while (i + n < toks.length && wholeToken(toks[i + n - 1]) && isGroup(toks[i + n])) n++
  return i + n < toks.length && isMetric(toks[i + n].unit) ? n : 0
}

// isGroup reports three figures after a space, with or without decimals.
function isGroup (t) {
  const head = t.sep ? t.text.length - t.tail - 1 : t.text.length
  return t.kind === 'number' && t.gap && !t.odd && head === 3
}

function joinGroup (parts) {
  const text = parts.map(p => p.text).join('')
  return Object.assign({}, parts[parts.length - 1], {gap: parts[0].gap, grouped: true, text, val: numeral(text)})
}
