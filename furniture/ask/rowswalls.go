package ask

import "bunkwright/furniture/fit"

// plumbLine says how to make one.
const plumbLine = "hang a string with a weight from the ceiling, a hand's width before the wall, and let it come to rest"

// wallRows ask for the walls themselves. Lengths of walls are plaster to plaster: a baseboard is stepped over.
var wallRows = []row{
	{
		key: "wall.length", title: "Corner {left} to corner {right}, {mid} up",
		from: "the plaster in corner {left}", to: "the plaster in corner {right}",
		hook:  "in corner {left}, {mid} up; the tape level and tight along the wall, its case pushed into corner {right}: add the length printed on the case",
		other: "hook in corner {right}, read at corner {left}",
		photo: "the tape at corner {right}: a slip of a foot shows at once",
		why:   "the walls make the shape of the room; everything else hangs on them",
		shown: faceAt(Middle, corner("{left}"), corner("{right}")),
	},
	{
		key: "wall.low", title: "Corner {left} to corner {right}, low: {low} up",
		from: "the plaster in corner {left}, just over the baseboard", to: "the plaster in corner {right}, just over the baseboard",
		hook:  "in corner {left}, {low} up, over the baseboard and not on it; the tape level",
		other: "hook in corner {right}, read at corner {left}",
		why:   "walls lean: the bed stands with its feet down there",
		shown: faceAt(Low, corner("{left}"), corner("{right}")), need: fit.Lean,
	},
	{
		key: "wall.high", title: "Corner {left} to corner {right}, high: {high} up",
		from: "the plaster in corner {left}", to: "the plaster in corner {right}",
		hook:  "in corner {left}, {high} up; the tape level, held up in the middle",
		other: "hook in corner {right}, read at corner {left}",
		why:   "walls lean: the top bed is up there", caution: ladder,
		shown: faceAt(High, corner("{left}"), corner("{right}")), need: fit.Lean,
	},
	{
		key: "wall.baseboard_high", title: "Height of the baseboard on wall {wall}",
		from: "the top of the floor covering", to: "the top edge of the baseboard",
		hook:  "on the floor covering, pressed down as a post foot would press it",
		photo: "its shape",
		why:   "the bed stands off the wall by it, or is cut out round it",
		shown: face(at(AtFloor), at(AtTop)), need: fit.Trim,
	},
	{
		key: "wall.baseboard_deep", title: "How far the baseboard stands out of wall {wall}",
		from: "the plaster over the baseboard", to: "the baseboard's face, where it is thickest",
		hook: "stand a straight edge on the floor against the baseboard's face; measure from it back to the plaster",
		why:  "the bed stands off the wall by it",

		shown: closeUp(at(AtBack), at(AtFront)), need: fit.Trim,
	},
	{
		key: "wall.kind", title: "What wall {wall} is made of", kind: Word, ask: "What is behind the plaster? Knock: hollow between solid strips is studs.",
		why: "shelves hang on it, and each kind of wall wants other screws", shown: Shown{View: FaceOn}, need: fit.Studs,
	},
	{
		key: "wall.build_up", title: "Thickness of the board on wall {wall}",
		from: "the face of the wall", to: "the face of the stud behind it",
		hook:  "look where it can be seen anyway, such as behind the cover of a vent or in a closet; leave it out where it cannot",
		why:   "it tells how much of a screw is left for the stud",
		shown: closeUp(at(AtFront), at(AtBack)), need: fit.Studs, caution: "Do not open an outlet or drill for this.",
	},
	{
		key: "wall.stud.at", title: "Corner {end} to the middle of stud {thing}, wall {wall}",
		from: "the plaster in corner {end}", to: "the middle of the stud: halfway between its two edges",
		hook:  "in corner {end}, at the height where a shelf would hang; mark both edges of the stud with a pencil first, at two heights",
		other: "hook on the pencil mark, read at the corner",
		photo: "the pencil marks with the tape under them",
		why:   "the screws of the shelves must go into it", caution: "Cables and pipes run in walls: knock, use a magnet or a finder; drill nothing.",
		shown: face(end, at(AtCentre)), need: fit.Studs,
	},
	{
		key: "wall.stud.found", title: "How stud {thing} of wall {wall} was found", kind: Word, ask: "By how many signs was it found, or at how many heights?",
		why: "a stud that is only thought to be there holds nothing", shown: Shown{View: FaceOn}, need: fit.Studs,
	},
	{
		key: "wall.plumb.low", title: "Plumb line before wall {wall}, low: {low} up",
		from: "the plaster of the wall, over the baseboard", to: "the line",
		hook: plumbLine + "; hook on the plaster, {low} up, the tape square to the wall and not pushing the line",
		why:  "with the distance high it tells how the wall leans", shown: closeUp(at(AtBack), at(AtFront)),
	},
	{
		key: "wall.plumb.high", title: "Plumb line before wall {wall}, high: {high} up",
		from: "the plaster of the wall", to: "the line",
		hook: plumbLine + "; hook on the plaster, {high} up, the tape square to the wall and not pushing the line", caution: ladder,
		why: "with the distance low it tells how the wall leans", shown: closeUp(at(AtBack), at(AtFront)),
	},
	{
		key: "diagonal.length", title: "Corner {left} across to corner {right}",
		from: "the plaster in corner {left}", to: "the plaster in corner {right}",
		hook:  "in corner {left}, {mid} up; straight through the room, level and tight, over what stands there",
		other: "hook in corner {right}, read at corner {left}",
		photo: "the tape at corner {right}",
		why:   "it tells whether the corners are square, and catches a slip in any of the walls",
		shown: above(corner("{left}"), corner("{right}")),
	},
}
