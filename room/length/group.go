package length

// groupDigits joins figures in groups of three where a metric unit follows (rule R10): 1 700 mm.
func groupDigits(toks []token) []token {
	var out []token
	for i := 0; i < len(toks); i++ {
		n := groupAt(toks, i)
		if n < 2 {
			out = append(out, toks[i])
			continue
		}
		out = append(out, joinGroup(toks[i:i+n]))
		i += n - 1
	}
	return out
}

// groupAt counts the tokens from i on that make one grouped number; less than two means none.
func groupAt(toks []token, i int) int {
	first := toks[i]
	if !first.whole() || len(first.text) > 3 || first.text[0] == '0' || i > 0 && toks[i-1].kind == bar {
		return 0
	}
	n := 1
	for i+n < len(toks) && toks[i+n-1].whole() && isGroup(toks[i+n]) {
		n++
	}
	if i+n == len(toks) || !toks[i+n].unit.metric() {
		return 0
	}
	return n
}

// isGroup reports three figures after a space, with or without decimals.
func isGroup(t token) bool {
	head := len(t.text)
	if t.sep != 0 {
		head -= t.tail + 1
	}
	return t.kind == number && t.gap && !t.odd && head == 3
}

func joinGroup(parts []token) token {
	t := parts[len(parts)-1]
	t.gap, t.grouped, t.text = parts[0].gap, true, ""
	for _, p := range parts {
		t.text += p.text
	}
	t.val = numeral(t.text)
	return t
}
