package length

import "math/big"

// reader goes through the tokens of one text once. A refusal ends the reading; a question is kept and the reading goes on,
// because what follows may still be impossible.
type reader struct {
	ctx     Context
	toks    []token
	pos     int
	note    int
	hedge   string   // the first word or sign of doubt
	pending *Reading // the first question found
}

// peek returns the token n places on; its kind is end past the last.
func (p *reader) peek(n int) token {
	if p.pos+n >= len(p.toks) {
		return token{}
	}
	return p.toks[p.pos+n]
}

func (p *reader) next() token {
	t := p.peek(0)
	p.pos++
	return t
}

// setAside takes hedges and remarks out of the text and refuses what is left without a number.
func (p *reader) setAside() *refusal {
	empty := len(p.toks) == 0
	p.dropHedges()
	numbers := 0
	for _, t := range p.toks {
		if t.kind == number || t.kind == vulgar {
			numbers++
		}
	}
	switch {
	case empty:
		return refuse("nothing typed: missing, not zero")
	case numbers == 0:
		return refuse("no number in it: %s", want)
	}
	return p.takeNote()
}

func (p *reader) dropHedges() {
	var kept []token
	for _, t := range p.toks {
		if t.kind != hedge {
			kept = append(kept, t)
			continue
		}
		if p.hedge == "" {
			p.hedge = t.text
		}
		if n := len(kept); t.text == "so" && n > 0 && kept[n-1].text == "or" {
			kept = kept[:n-1]
		}
	}
	p.toks = kept
}

// takeNote takes the remark strong, heavy or light from either end (rule R14).
func (p *reader) takeNote() *refusal {
	if n := len(p.toks); p.toks[n-1].kind == note {
		p.note, p.toks = p.toks[n-1].note, p.toks[:n-1]
	} else if p.toks[0].kind == note {
		p.note, p.toks = p.toks[0].note, p.toks[1:]
	}
	for _, t := range p.toks {
		if t.kind == note {
			return &refusal{"R14", "strong, heavy or light stands once, after the length"}
		}
	}
	return nil
}

// single reads the text of a field that holds one length.
func (p *reader) single() Reading {
	for _, t := range p.toks {
		if t.kind == by {
			return (&refusal{"R15", "a size of lumber, not a length; a product is written with *"}).reading()
		}
	}
	q, refused := p.values()
	if refused != nil {
		return refused.reading()
	}
	return p.finish(q)
}

// values reads lengths up to the end of the text; more than one is asked about (rule R18).
func (p *reader) values() (quantity, *refusal) {
	first, refused := p.sum()
	found, comma := []quantity{first}, p.peek(0).text == ","
	for refused == nil && p.peek(0).kind != end {
		if !p.apart() {
			return first, p.misplaced()
		}
		var q quantity
		q, refused = p.sum()
		found = append(found, q)
	}
	switch {
	case refused != nil || len(found) == 1:
	case comma && len(found) == 2 && first.feetOnly() && found[1].inchesOnly():
		p.ask("R11", "a comma between feet and inches", p.optionOf(p.add(first, found[1])), twoLengths)
	case comma:
		p.ask("R11", "a comma between two values", p.optionsOf(found)...)
	default:
		p.ask("R18", "two values", p.optionsOf(found)...)
	}
	return first, refused
}

// apart passes what stands between two values; false where nothing of the kind does.
func (p *reader) apart() bool {
	switch p.peek(0).kind {
	case split, bar:
		p.pos++
		return true
	case opening:
		return true
	case number, vulgar:
		return p.toks[p.pos-1].kind == closing
	}
	return false
}

// misplaced refuses the next token: nothing of the kind can stand here.
func (p *reader) misplaced() *refusal {
	t := p.peek(0)
	switch {
	case t.kind == end:
		return refuse("not finished: %s", want)
	case t.kind == closing:
		return refuse("a bracket is closed that was not opened, or holds nothing")
	case t.kind == mark:
		return refuse("marks in an order nobody writes: %s", want)
	case (t.kind == dash || t.kind == minus) && p.pos == 0:
		return refuse("a length is not negative")
	}
	return refuse("%q does not belong here: %s", t.text, want)
}

// option is one way to answer a question: a length, or words.
type option struct {
	nm   *big.Rat
	text string
}

// ask keeps the first question. Its text is the options in order.
func (p *reader) ask(rule, reason string, options ...option) {
	if p.pending != nil {
		return
	}
	q := &Reading{Outcome: Ask, Reason: reason, Rule: rule}
	for i, o := range options {
		switch {
		case i > 0 && i == len(options)-1:
			q.Question += " or "
		case i > 0:
			q.Question += ", "
		}
		q.Question += o.text
		if l, ok := exact(o.nm); ok {
			q.Offers = append(q.Offers, l)
		}
	}
	q.Question += "?"
	p.pending = q
}
