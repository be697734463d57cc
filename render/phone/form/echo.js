// What the form says it understood, in words, so that a slip of the thumb is seen before it is sent.

// counted writes a number with its unit: 1 foot, 2 feet.
function counted (n, one, many) { return n + ' ' + (n === '1' ? one : many) }

// spoken writes a length in words, the way it was typed: metric, or feet and inches.
function spoken (l, metric) {
  if (metric) return plainText(l, MM_NM, 6) + ' mm' + (l >= UNITS[METRE].nm ? ' (' + plainText(l, UNITS[METRE].nm, 9) + ' m)' : '')
  if (l % SIXTY_FOURTH !== 0n) return exactText(l)
  const feet = l / FOOT_NM
  const rest = l % FOOT_NM
  const inches = inchesText(rest)
  const tail = counted(inches, 'inch', rest < INCH_NM && rest > 0n ? 'inch' : 'inches')
  if (feet === 0n) return tail
  const head = counted(String(feet), 'foot', 'feet') + (rest === 0n ? '' : ' ' + tail)
  return head + ' (' + inchesText(l) + ' in)'
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
