package ask

import (
	"slices"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/room"
)

// presence begins the key of a card that asks whether the room has something: "room.absent.fan".
const presence = "room.absent."

// thingOf returns the word of a card that asks whether the room has something.
func thingOf(key string) (string, bool) { return strings.CutPrefix(key, presence) }

// a presentRow asks for something that a job neither lists nor says is not there.
type presentRow struct {
	thing, ask, why string
	kind            Kind
	need            fit.Facet
}

var presentRows = []presentRow{
	{"window", "How many windows are there? 0 for none", "a window may be the way out, and a child may fall out of it", Count, fit.Windows},
	{"heater", "How many heaters are there, radiators and baseboard heaters too? 0 for none", "bedding too near can catch fire", Count, fit.Heaters},
	{"register", "How many registers and grilles does air come out of or go into? 0 for none", "a bed must not cover one", Count, fit.Registers},
	{"outlet", "How many outlets are there? 0 for none", "a plug must not be crushed behind the bed", Count, fit.Outlets},
	{"switch", "How many light switches are there? 0 for none", "a switch must stay in reach", Count, fit.Outlets},
	{"thermostat", "Is there a thermostat?", "it must not be covered", YesNo, fit.Outlets},
	{"fan", "Is there a ceiling fan?", "its blades must stay out of reach of the top bed", YesNo, fit.Fans},
	{"light", "How many lights are there on the ceiling, or on a wall near the bed? 0 for none", "a lamp gets hot and is in reach of hands", Count, fit.Lights},
	{"alarm", "Is there a smoke alarm?", "there has to be one, and smoke has to reach it", YesNo, fit.Alarms},
	{"hatch", "Is there a hatch in the ceiling?", "it has to be opened over the bed", YesNo, fit.Furniture},
	{"beam", "Is there a beam, or a box under the ceiling?", "a head may hit it", YesNo, fit.Ceiling},
	{"furniture", "How many pieces of furniture stay in the room? 0 for none", "the bed has to pass them, and a child may climb over from one", Count, fit.Furniture},
}

// present asks which things there are.
func (w *walker) present() {
	w.group("What there is in the room", "Stand in the middle and look round, the ceiling too.")
	for _, p := range presentRows {
		w.add(presence + p.thing)
	}
	w.drop()
}

func presentCard(thing string) (Card, fit.Facet, bool) {
	i := slices.IndexFunc(presentRows, func(p presentRow) bool { return p.thing == thing })
	if i < 0 {
		return Card{}, 0, false
	}
	p := presentRows[i]
	title := map[bool]string{true: strings.ToUpper(thing[:1]) + thing[1:] + "s", false: strings.ToUpper(thing[:1]) + thing[1:]}[p.kind == Count && thing != "furniture" && thing != "switch"]
	if thing == "switch" {
		title = "Light switches"
	}
	return Card{Key: presence + thing, Title: title, Ask: p.ask, Why: p.why, Kind: p.kind}, p.need, true
}

// there tells whether a room lists a thing.
func there(r *room.Room, thing string) bool {
	switch thing {
	case "outlet", "switch", "thermostat":
		return slices.ContainsFunc(r.Outlets, func(o room.Outlet) bool { return o.Kind == thing || o.Kind == "" && thing == "outlet" })
	}
	n, ok := map[string]int{
		"window": len(r.Windows), "heater": len(r.Heaters), "register": len(r.Registers), "fan": len(r.Fans), "light": len(r.Lights),
		"alarm": len(r.Alarms), "hatch": len(r.Hatches), "beam": len(r.Beams), "furniture": len(r.Pieces),
	}[thing]
	return ok && n > 0
}
