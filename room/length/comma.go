package length

import "strings"

// checkCommas asks about a comma that may be a decimal comma or may group figures (rule R11).
func (p *reader) checkCommas(ps []piece) {
	united := p.ctx.Field == Section && p.unitWritten()
	for _, pc := range ps {
		united = united || pc.unit != bare
	}
	for _, pc := range ps {
		t := pc.lead
		if t.sep != ',' || pc.below != nil || united && !t.odd && t.tail != 3 {
			continue
		}
		p.askComma(pc)
	}
}

func (p *reader) askComma(pc piece) {
	decimal := p.option(p.nm(pc.v, pc.unit), pc.unit)
	switch t := pc.lead; {
	case t.odd:
		p.ask("R11", "more than one separator in a number", decimal, readAgain)
	case t.tail == 3:
		grouped := numeral(strings.Replace(t.text, ",", "", 1))
		p.ask("R11", "a decimal comma, or figures in groups", decimal, p.option(p.nm(grouped, pc.unit), pc.unit))
	default:
		p.ask("R11", "a decimal comma without a unit", decimal, option{text: "another unit"})
	}
}

// unitWritten reports a unit anywhere in the text: in a section the one at the end holds for both sizes.
func (p *reader) unitWritten() bool {
	for _, t := range p.toks {
		if t.kind == mark {
			return true
		}
	}
	return false
}
