package view

import (
	"fmt"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/render"
)

// besideSection says beside the section whether both can sit up, and until what age.
func (b *binder) besideSection(c *column) {
	c.heading("Can they sit up?")
	for i := range deckNames {
		deck := len(deckNames) - 1 - i
		for k := range b.answers {
			if a := &b.answers[k]; a.ID == [2]string{"sit-up-bottom", "sit-up-top"}[deck] {
				b.sitsUp(c, a, deck)
			}
		}
	}
	c.y += c.step() * 0.5
	c.line("Ages are those at which children of the tables outgrow the headroom; a real child may differ.")
}

// sitsUp adds one answer with its sign.
func (b *binder) sitsUp(c *column, a *fit.Answer, deck int) {
	who := sleeperNames(b.s, deckNames[deck])
	name := joined(", ", who, [2]string{"below", "on top"}[deck])
	c.y += c.step() * 0.4
	c.strong(name)
	if sign, ok := signOf(a.Verdict); ok {
		mid := render.Point{X: c.x + signIndent/2 - 0.4, Y: c.y - c.st.Small.Size*0.35}
		c.marks = append(c.marks, sign.At("answer."+a.ID, mid, c.st.Sign*0.8)...)
	}
	lines := []string{b.s.Called(a.Say(b.o.Unit))}
	for _, f := range a.Figures {
		switch f.Name {
		case "age_p95":
			lines = append(lines, fmt.Sprintf("a tall child until about %.0f", f.Value))
		case "age_p50":
			lines = append(lines, fmt.Sprintf("one of middle height until about %.0f", f.Value))
		}
	}
	if basis := b.seatedBasis(deckNames[deck]); basis != "" {
		lines = append(lines, basis)
	}
	x, w := c.x, c.w
	c.x, c.w = x+signIndent, w-signIndent
	for _, l := range lines {
		c.line(kept(l))
	}
	c.x, c.w = x, w
}

// signIndent is the room for the sign before an answer in a column.
const signIndent render.Paper = 5

// strong adds a line of words that stand out, behind the room for a sign.
func (c *column) strong(words string) {
	in := render.Lettering{Size: c.st.Small.Size, Face: render.Medium}
	for _, l := range render.Wrap(words, in.Size, in.Face, c.w-signIndent) {
		c.y += c.step()
		c.put(c.x+signIndent, in, l, render.Left)
	}
}

// seatedBasis says where the seated height comes from, if one person alone sleeps in the bed.
func (b *binder) seatedBasis(bed string) string {
	var who []job.Sleeper
	for _, p := range b.s.Job.Sleepers {
		if p.Bed == bed {
			who = append(who, p)
		}
	}
	switch {
	case len(who) != 1:
		return ""
	case len(who[0].Seated) > 0:
		return "seated height as measured"
	case len(who[0].Stature) > 0:
		return "seated height from the stature"
	case who[0].Age > 0 && !who[0].Grown():
		return fmt.Sprintf("seated height: that of a tall child of %d", int(who[0].Age))
	}
	return ""
}
