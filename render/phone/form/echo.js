// What the form says it understood, in words, so that a slip of the thumb is seen before it is sent.

// spoken writes a reading in words, the way it was typed: metric, or feet and inches.
function spoken (got) {
  const l = got.value
  const more = got.note64 > 0 ? ', a little more' : got.note64 < 0 ? ', a little less' : ''
  if (got.metric) return metricWords(l) + more
  return (l % SIXTY_FOURTH === 0n ? inchWords(l) : exactText(l)) + more
}

function metricWords (l) {
  const metres = l >= UNITS[METRE].nm ? ' (' + plainText(l, UNITS[METRE].nm, 9) + ' m)' : ''
  return plainText(l, MM_NM, 6) + ' mm' + metres
}

function inchWords (l) {
  const feet = l / FOOT_NM
  const rest = l % FOOT_NM
  const inches = inchesText(rest) + (rest > 0n && rest <= INCH_NM ? ' inch' : ' inches')
  if (feet === 0n) return inches
  const head = feet + (feet === 1n ? ' foot' : ' feet')
  return head + (rest === 0n ? '' : ' ' + inches) + ' (' + inchesText(l) + ' in)'
}

// exactText writes a length without rounding: in inches where they are short, otherwise in millimetres.
function exactText (l) {
  if (l % SIXTY_FOURTH === 0n) return inchesText(l) + ' in'
  if (l % 254n === 0n) return plainText(l / 254n, 100000n, 5) + ' in'
  return plainText(l, MM_NM, 6) + ' mm'
}

// sure writes a choice so that it can mean only one thing.
function sure (choice) {
  const again = read(choice.text, {unit: '', field: 'length'})
  return again.outcome === 'value' && again.value === choice.length ? choice.text : exactText(choice.length)
}
