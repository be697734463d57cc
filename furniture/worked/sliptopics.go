package worked

import (
	"strings"

	"bunkwright/room/length"
	"bunkwright/room/misread"
	"bunkwright/room/survey"
)

// What a wrong reading looks like (misread_cases), and the tests that find one.
var slipTopics = []topic{misreadTopic, testTopic, limitTopic}

var misreadTopic = topic{
	name: "misread",
	keys: vocabulary{
		maybe(inch("first", "132.125", "one reading")), maybe(inch("second", "120.125", "another of the same thing")),
		maybe(word("kind", "inside", "inside: between two faces, where the tape's case has to be added")),
		maybe(inch("casing", "2.5", "width of the trim beside an opening")),
		maybe(plain("pieces", "4", "pieces of a chain that make up one of the two")),
		maybe(inch("low", "120", "length of a wall low down")), maybe(inch("mid", "120.25", "at middle height")), maybe(inch("high", "120.5", "high up")),
	},
	quantities: []asked{
		{name: "signature", of: signatures},
		{name: "question", needs: []string{"first", "second"}, of: questions},
	},
	shown: []string{"quantity=signature", "first=132.125", "second=120.125"},
}

// signatures names what two readings of one thing look like, the likeliest first, with blanks between them.
func signatures(g *given) (any, error) {
	if g.has("low") && g.has("mid") && g.has("high") {
		if misread.Trend(g.length("low"), g.length("mid"), g.length("high")) {
			return misread.OutOfPlumb, nil
		}
		return "none", nil
	}
	if !g.has("first") || !g.has("second") {
		return nil, &InputError{Key: "first", Problem: "not given", Want: "first and second, or low, mid and high"}
	}
	c, err := g.taking()
	var ids []string
	for _, s := range misread.Pair(g.length("first"), g.length("second"), c) {
		ids = append(ids, s.ID)
	}
	if len(ids) == 0 {
		return "none", err
	}
	return strings.Join(ids, " "), err
}

// questions asks after the likeliest cause of the first reading, if the second is right.
func questions(g *given) (any, error) {
	c, err := g.taking()
	if err != nil {
		return nil, err
	}
	for _, cause := range misread.Causes(g.length("first"), g.v("second"), 0, c) {
		return cause.Question(length.Style{Unit: c.Unit}), nil
	}
	return "none", nil
}

// taking is how the readings were taken.
func (g *given) taking() (misread.Context, error) {
	c := misread.Context{Inside: g.said("kind", "inside")}
	if g.unit.name == "mm" {
		c.Unit = length.Millimetres
	}
	if g.has("casing") {
		c.Casing = g.length("casing")
	}
	var err error
	if g.has("pieces") {
		c.Pieces, err = g.whole("pieces")
	}
	return c, err
}

func (g *given) length(name string) length.Length { return length.FromMM(g.v(name)) }

var (
	residual = inch("residual", "-0.5", "adjusted less read")
	sd       = inch("sd", "0.125", "standard uncertainty of the reading")
	share    = plain("redundancy", "0.25", "share of a slip that shows in the residual")
)

var testTopic = topic{
	name: "reading_test",
	keys: vocabulary{residual, sd, share, maybe(plain("s0", "1.5", "standard deviation of unit weight")),
		maybe(plain("alpha", "0.001", "chance of a false alarm, two-sided")), maybe(plain("power", "0.8", "chance of finding a slip"))},
	quantities: []asked{
		{name: "w", needs: []string{"residual", "sd", "redundancy"}, of: func(g *given) (any, error) {
			return survey.TestOf(g.v("residual"), g.v("sd"), g.v("redundancy"), 1).W, nil
		}},
		{name: "tau", needs: []string{"residual", "sd", "redundancy", "s0"}, of: func(g *given) (any, error) {
			return survey.TestOf(g.v("residual"), g.v("sd"), g.v("redundancy"), g.v("s0")).Tau, nil
		}},
		{name: "estimated_error", unit: asInputs, needs: []string{"residual", "redundancy"}, of: func(g *given) (any, error) {
			return survey.TestOf(g.v("residual"), 1, g.v("redundancy"), 1).Error, nil
		}},
		{name: "mdb", unit: asInputs, needs: []string{"sd", "redundancy"}, of: func(g *given) (any, error) {
			d0 := survey.Noncentrality(g.or("alpha", survey.DefaultAlpha), g.or("power", survey.DefaultPower))
			return survey.SmallestBlunder(g.v("sd"), g.v("redundancy"), d0), nil
		}},
	},
}

var limitTopic = topic{
	name: "slip_limit",
	keys: vocabulary{plain("readings", "12", "readings that are tested"), maybe(plain("alpha", "0.01", "chance of a false alarm for all of them, two-sided")),
		maybe(plain("f", "7", "readings more than needed"))},
	quantities: []asked{
		{name: "w", needs: []string{"readings"}, of: func(g *given) (any, error) {
			n, err := g.whole("readings")
			return survey.NormalQuantile(1 - g.or("alpha", survey.DefaultSetAlpha)/float64(max(1, n))/2), err
		}},
		{name: "tau", needs: []string{"readings", "f"}, of: func(g *given) (any, error) {
			n, err := g.whole("readings")
			if err != nil {
				return nil, err
			}
			f, err := g.whole("f")
			return survey.TauCritical(f, g.or("alpha", survey.DefaultSetAlpha)/float64(max(1, n))), err
		}},
	},
}
