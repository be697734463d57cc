// Exact numbers, and how a length is written. A length is a BigInt of whole nanometres, a number a
// fraction {n, d} in lowest terms with d > 0. The same rules as the program that reads the reply.
const BARE = 0, FOOT = 1, INCH = 2, MILLIMETRE = 3, CENTIMETRE = 4, METRE = 5
const UNITS = [
  null,
  {nm: 304800000n, name: 'ft', plural: 'feet'},
  {nm: 25400000n, name: 'in', plural: 'inches'},
  {nm: 1000000n, name: 'mm', plural: 'millimetres'},
  {nm: 10000000n, name: 'cm', plural: 'centimetres'},
  {nm: 1000000000n, name: 'm', plural: 'metres'}
]
const INCH_NM = UNITS[INCH].nm
const FOOT_NM = UNITS[FOOT].nm
const MM_NM = UNITS[MILLIMETRE].nm
const SIXTY_FOURTH = INCH_NM / 64n
// 1 km: more than that is a slip in any house.
const MOST_READ = 1000000000000n

const isMetric = unit => unit >= MILLIMETRE
const isImperial = unit => unit === FOOT || unit === INCH

function gcd (a, b) {
  while (b !== 0n) [a, b] = [b, a % b]
  return a < 0n ? -a : a
}

function rat (n, d = 1n) {
  if (d < 0n) { n = -n; d = -d }
  const g = gcd(n, d)
  return g > 1n ? {n: n / g, d: d / g} : {n, d}
}

const add = (a, b) => rat(a.n * b.d + b.n * a.d, a.d * b.d)
const negative = a => ({n: -a.n, d: a.d})
const subtract = (a, b) => add(a, negative(b))
const times = (a, b) => rat(a.n * b.n, a.d * b.d)
const over = (a, b) => rat(a.n * b.d, a.d * b.n)
const isLess = (a, b) => a.n * b.d < b.n * a.d
const isSame = (a, b) => a.n === b.n && a.d === b.d
const isWhole = a => a.d === 1n
const isZero = a => a.n === 0n
const inUnit = (v, unit) => times(v, rat(UNITS[unit].nm))

// numeral is the number that figures mean with the last separator taken for the decimal one.
function numeral (text) {
  const at = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','))
  const tail = at < 0 ? 0 : text.length - at - 1
  return rat(BigInt(text.replace(/[.,]/g, '')), 10n ** BigInt(tail))
}

// numberText shows a number with at most four decimals, halves away from zero.
function numberText (v) {
  const size = v.n < 0n ? -v.n : v.n
  const scaled = (size * 20000n + v.d) / (2n * v.d)
  const text = plainText(scaled, 10000n, 4)
  return v.n < 0n && scaled >= 0n ? '-' + text : text
}

// plainText writes scaled / unit, where unit is 10 to the power of places.
function plainText (scaled, unit, places) {
  const tail = String(scaled % unit).padStart(places, '0').replace(/0+$/, '')
  return String(scaled / unit) + (tail ? '.' + tail : '')
}

// lengthOf returns a number of nanometres as a length where it is one that can be read, else null.
function lengthOf (nm) {
  return nm && isWhole(nm) && nm.n >= 0n && nm.n <= MOST_READ ? nm.n : null
}

// nearestLength rounds a number of nanometres to a whole one; null where it is no length.
function nearestLength (nm) {
  if (nm.n < 0n || nm.n > MOST_READ * nm.d) return null
  return (2n * nm.n + nm.d) / (2n * nm.d)
}

const roundDown = (l, step) => l - l % step
const roundUp = (l, step) => roundDown(l + step - 1n, step)

// roundNearest takes ties to the even multiple.
function roundNearest (l, step) {
  const rest = l % step
  const odd = (l / step) % 2n === 1n
  return 2n * rest > step || (2n * rest === step && odd) ? l - rest + step : l - rest
}

// inchesText writes whole inches and a reduced fraction; l is a whole number of 1/64 in.
function inchesText (l) {
  const whole = String(l / INCH_NM)
  const f = rat((l % INCH_NM) / SIXTY_FOURTH, 64n)
  if (isZero(f)) return whole
  const fraction = f.n + '/' + f.d
  return l < INCH_NM ? fraction : whole + '-' + fraction
}

// tapeText writes feet and inches; l is a whole number of 1/64 in.
function tapeText (l) {
  if (l < FOOT_NM) return inchesText(l) + '"'
  const rest = l % FOOT_NM
  const zero = rest > 0n && rest < INCH_NM ? '0-' : ''
  return l / FOOT_NM + "' " + zero + inchesText(rest) + '"'
}

// inchText shows nanometres in tape notation where a tape has the mark, otherwise in decimal inches
// with the nearest mark beside it.
function inchText (nm) {
  const l = nearestLength(nm)
  const decimal = numberText(over(nm, rat(INCH_NM))) + ' in'
  if (l === null) return decimal
  if (isSame(rat(l), nm) && l % SIXTY_FOURTH === 0n) return tapeText(l)
  return decimal + ' (about ' + tapeText(roundNearest(l, INCH_NM / 16n)) + ')'
}
