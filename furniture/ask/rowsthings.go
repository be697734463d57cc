package ask

import "bunkwright/furniture/fit"

// thingRows ask for what is on the walls and stands in the room.
var thingRows = join(
	[]row{
		{
			key: "outlet.at", title: "Corner {end} to {things}",
			from: "the plaster in corner {end}", to: "the middle of its plate",
			hook: "in corner {end}; the tape level along the wall", other: "hook at the middle of the plate, read at the corner",
			why: "a plug must not be crushed behind the bed", caution: plugs, shown: face(end, at(AtCentre)), need: fit.Outlets,
		},
		{
			key: "outlet.height", title: "Floor to {things}",
			from: "the top of the floor covering", to: "the middle of its plate",
			hook: "on the floor; the tape upright beside the plate", why: "it says whether a mattress or a board covers it", caution: plugs,
			shown: face(at(AtFloor), at(AtCentre)), need: fit.Outlets,
		},
		{
			key: "outlet.in_use", title: "Is {things} in use", kind: YesNo, ask: "Will something stay plugged in there?",
			why: "a plug stands out of the wall", shown: face(Mark{}, Mark{}), need: fit.Outlets,
		},
		{
			key: "register.kind", title: "What {things} does", kind: Word, ask: "Does it blow air in or draw it out?", why: "a bed must not cover it",
			shown: Shown{View: FromAbove}, need: fit.Registers,
		},
		{
			key: "register.in", title: "Where {things} is", kind: Word, ask: "Is it in the floor, in a wall or in the ceiling?", why: "a bed must not cover it",
			shown: Shown{View: FromAbove}, need: fit.Registers,
		},
		{
			key: "register.height", title: "Floor to {things}", from: "the top of the floor covering", to: "the lower edge of its frame",
			hook: "on the floor; the tape upright", why: "a bed must not cover it", shown: face(at(AtFloor), at(AtBottom)), need: fit.Registers,
		},
		{
			key: "heater.kind", title: "What {things} is", kind: Word, ask: "What kind of heater is it?", photo: "the heater and its name plate",
			why: "each kind wants its own distance to bedding", shown: Shown{View: FromAbove}, need: fit.Heaters,
		},
		{
			key: "heater.high", title: "Floor to the top of {things}", from: "the top of the floor covering", to: "its highest point",
			hook: "on the floor; the tape upright beside it", why: "bedding over it can catch fire", caution: hot,
			shown: face(at(AtFloor), at(AtTop)), need: fit.Heaters,
		},
		{
			key: "furniture.high", title: "Floor to the top of {things}", from: "the top of the floor covering", to: "its highest point",
			hook: "on the floor; the tape upright beside it", why: "a child may climb over from it", shown: face(at(AtFloor), at(AtTop)), need: fit.Furniture,
		},
		{
			key: "furniture.can_be_climbed", title: "Climbing onto {things}", kind: YesNo, ask: "Could a child climb onto it?",
			why: "a child may climb over from it to the top bed", shown: Shown{View: FromAbove}, need: fit.Furniture,
		},
	},
	box("register", fit.Registers, "", "a bed must not cover it"),
	box("heater", fit.Heaters, hot, "bedding too near can catch fire"),
	box("furniture", fit.Furniture, "", "it stays where it is, and the bed has to pass it"),
	box("hatch", fit.Furniture, ladder, "it has to be opened over the bed"),
)

// box asks where something with a near corner is, and how large.
func box(table string, need fit.Facet, caution, why string) []row {
	return []row{
		{
			key: table + ".wall", title: "The wall that {things} is at", kind: Word, ask: "Which wall is it in, or nearest to?",
			why: why, shown: Shown{View: FromAbove}, need: need,
		},
		{
			key: table + ".at", title: "Corner {end} to {things}", from: "the plaster in corner {end}", to: "its edge that is nearer to corner {end}",
			hook: "in corner {end}; the tape along wall {wall}", other: "hook on that edge, read at the corner",
			why: why, caution: caution, shown: above(end, near), need: need,
		},
		{
			key: table + ".out", title: "Wall {wall} to {things}", from: "the plaster of wall {wall}", to: "its edge that is nearer to the wall",
			hook: "on the plaster, over the baseboard; the tape square to the wall; 0 where it touches the wall",
			why:  why, caution: caution, shown: above(Mark{At: AtWall, Name: "{wallkey}"}, at(AtBack)), need: need,
		},
		{
			key: table + ".wide", title: "Width of {things}, along wall {wall}", from: "its edge nearer to corner {end}", to: "its other edge",
			hook: "on one edge; the tape along the wall", why: why, caution: caution, shown: above(near, far), need: need,
		},
		{
			key: table + ".deep", title: "Depth of {things}, away from wall {wall}", from: "its back", to: "its front, with whatever stands out furthest",
			hook: "at the back; the tape square to the wall", why: why, caution: caution, shown: above(at(AtBack), at(AtFront)), need: need,
		},
	}
}

// ceilingRows ask for the ceiling and what hangs from it.
var ceilingRows = join(
	[]row{
		{
			key: "ceiling.height.height", title: "Floor to {things}",
			from: "the top of the floor covering", to: "the plaster of the ceiling",
			hook:  "case on the floor, hook pushed up to the ceiling; or a broom handle cut to the height and measured: upright, not leaning",
			other: "hook on the floor, read at the ceiling",
			photo: "the tape where it meets the floor",
			why:   "somebody sits up in the top bed", caution: ladder, shown: face(at(AtFloor), at(AtCeiling)),
		},
		{
			key: "ceiling.height.at", title: "Corner {end} to where {things} was read", from: "the plaster in corner {end}", to: "the point on the floor under it",
			hook: "in corner {end}; the tape along wall {wall}", why: "a sloped ceiling is known by where it was read", shown: above(end, at(AtCentre)),
		},
		{
			key: "ceiling.height.out", title: "Wall {wall} to where {things} was read", from: "the plaster of wall {wall}", to: "the point on the floor under it",
			hook: "on the plaster; the tape square to the wall", why: "a sloped ceiling is known by where it was read",
			shown: above(Mark{At: AtWall, Name: "{wallkey}"}, at(AtCentre)),
		},
		{
			key: "beam.out", title: "Wall {wall} to {things}", from: "the plaster of wall {wall}", to: "the near face of the beam",
			hook: "on the plaster, up under the ceiling; the tape square to the wall", caution: ladder,
			why: "the bed may have to stand clear of it", shown: above(Mark{At: AtWall, Name: "{wallkey}"}, at(AtBack)),
		},
		{
			key: "beam.wide", title: "Width of {things}", from: "its near face", to: "its far face", hook: "under it, level", caution: ladder,
			why: "the bed may have to stand clear of it", shown: above(at(AtBack), at(AtFront)),
		},
		{
			key: "beam.under", title: "Floor to the underside of {things}", from: "the top of the floor covering", to: "its lowest point",
			hook: "on the floor; the tape upright", other: "hook on the beam, read at the floor", why: "a head may hit it",
			caution: ladder, shown: face(at(AtFloor), at(AtBottom)),
		},
		{
			key: "fan.sweep", title: "Across {things}, blade tip to blade tip", from: "the tip of one blade", to: "the tip of the blade opposite",
			hook: "on one tip, past the middle; with an odd number of blades measure middle to tip and write it twice with a + between",
			why:  "blades must stay out of reach", caution: fanOff + " " + ladder, shown: above(near, at(AtOther)), need: fit.Fans,
		},
		{
			key: "fan.blades", title: "Floor to the blades of {things}", from: "the top of the floor covering", to: "the underside of the lowest blade",
			hook: "on the floor; the tape upright", other: "hook on the blade, read at the floor", photo: "the tape at the blade",
			why: "blades must stay out of reach of a child kneeling up", caution: fanOff + " " + ladder, shown: face(at(AtFloor), at(AtBottom)), need: fit.Fans,
		},
		{
			key: "light.kind", title: "What {things} is", kind: Word, ask: "How is it fitted?", why: "a lamp gets hot and is in reach of hands",
			shown: Shown{View: FromAbove}, need: fit.Lights,
		},
		{
			key: "light.wide", title: "Across {things}", from: "one side", to: "the other side", hook: "under it, across its widest", caution: fanOff + " " + ladder,
			why: "a lamp gets hot and is in reach of hands", shown: above(near, at(AtOther)), need: fit.Lights,
		},
		{
			key: "light.lowest", title: "Floor to {things}", from: "the top of the floor covering", to: "the lowest point of the fixture",
			hook: "on the floor; the tape upright", other: "hook at the lowest point, read at the floor",
			why: "a head may hit it", caution: fanOff + " " + ladder, shown: face(at(AtFloor), at(AtBottom)), need: fit.Lights,
		},
		{
			key: "alarm.in", title: "Where {things} is", kind: Word, ask: "Is it on the ceiling or on a wall?", why: "smoke has to reach it",
			shown: Shown{View: FromAbove}, need: fit.Alarms,
		},
		{
			key: "alarm.below", title: "Ceiling to {things}", from: "the plaster of the ceiling", to: "the top of the alarm",
			hook: "on the ceiling; the tape upright", why: "smoke has to reach it", caution: ladder, shown: face(at(AtCeiling), at(AtTop)), need: fit.Alarms,
		},
	},
	spot("fan", fit.Fans, fanOff, "blades must stay out of reach"),
	spot("light", fit.Lights, fanOff, "a lamp gets hot and is in reach of hands"),
	spot("alarm", fit.Alarms, ladder, "smoke has to reach it"),
)

// spot asks where the centre of something on the ceiling is.
func spot(table string, need fit.Facet, caution, why string) []row {
	return []row{
		{
			key: table + ".wall", title: "The wall that {things} is at", kind: Word, ask: "Which wall is it on, or nearest to?",
			why: why, shown: Shown{View: FromAbove}, need: need,
		},
		{
			key: table + ".at", title: "Corner {end} to {things}, along wall {wall}", from: "the plaster in corner {end}", to: "the point on the floor under its middle",
			hook:  "in corner {end}; the tape along the wall. Hang a string from its middle, or have somebody sight it, to find the point",
			other: "hook at the point, read at the corner", why: why, caution: caution, shown: above(end, at(AtCentre)), need: need,
		},
		{
			key: table + ".out", title: "Wall {wall} to {things}", from: "the plaster of wall {wall}", to: "the point on the floor under its middle",
			hook: "on the plaster, over the baseboard; the tape square to the wall", other: "hook at the point, read at the wall",
			why: why, caution: caution, shown: above(Mark{At: AtWall, Name: "{wallkey}"}, at(AtCentre)), need: need,
		},
	}
}

// floorRows ask for the floor and for who sleeps in the bed.
var floorRows = []row{
	{
		key: "floor.cover", title: "What the floor is", kind: Word, ask: "Is it carpet, or hard (wood, tile, vinyl)?",
		why: "post feet sink into carpet", need: fit.Floor,
	},
	{
		key: "floor.thick", title: "Thickness of the carpet with its pad", from: "the floor under the carpet", to: "the top of the carpet",
		hook: "push a pin through beside a wall until it meets the floor, hold a thumbnail at the top of the pile, and measure the pin; leave it out on a hard floor",
		why:  "all heights are taken from the top of it, and post feet sink into it", shown: closeUp(at(AtBack), at(AtFront)), need: fit.Floor,
	},
	{
		key: "floor.ground", title: "The storey", kind: YesNo, ask: "Is this room on the ground floor?", why: "it says how far down it is outside the window",
		need: fit.Panes,
	},
	{
		key: "sleeper.seated", title: "Sitting height: {things}", from: "the seat of a hard chair", to: "the top of the head",
		hook: "on the seat, behind the back; sitting up straight, a book flat on the head", other: "once more, after getting up in between",
		why: "there has to be room to sit up in bed", need: fit.People,
	},
}

func join(lists ...[]row) []row {
	var out []row
	for _, l := range lists {
		out = append(out, l...)
	}
	return out
}
