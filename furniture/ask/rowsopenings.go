package ask

import "bunkwright/furniture/fit"

// openingRows ask for doors and windows. Edges are those of the opening: the inner edge of the casing, at the glass for a window.
var openingRows = []row{
	{
		key: "door.wall", title: "Which wall {things} is in", kind: Word, ask: "Which wall is it in?",
		why: "it says where to draw it", shown: Shown{View: FromAbove}, need: fit.Doors,
	},
	{
		key: "door.at", title: "Corner {end} to {things}, near side",
		from: "the plaster in corner {end}", to: "the casing's inner edge, at the opening, on the side nearer to corner {end}",
		hook:  "in corner {end}; the tape level along the wall",
		other: "hook on that casing edge, read at the corner",
		why:   "no bed may stand in the way of a door", shown: face(end, near), need: fit.Doors,
	},
	{
		key: "door.far", title: "Corner {end} to {things}, far side",
		from: "the plaster in corner {end}", to: "the far casing, its inner edge, at the opening",
		hook:  "in corner {end}, left there after the near side; the tape level along the wall",
		other: "hook on the far casing edge, read at the corner",
		why:   "with the near side it gives the width once more: a slip shows", shown: face(end, far), need: fit.Doors,
	},
	{
		key: "door.wide", title: "Width of {things}",
		from: "one casing, its inner edge, at the opening", to: "the other casing, its inner edge",
		hook:  "on one casing edge, hip high",
		other: "hook on the other casing edge",
		why:   "boards and mattresses are carried through it, and it swings", shown: face(near, far), need: fit.Doors,
	},
	{
		key: "door.kind", title: "How {things} opens", kind: Word, ask: "How does it open?",
		why: "what swings needs room", shown: face(Mark{}, Mark{}), need: fit.Leaves,
	},
	{
		key: "door.leaves", title: "Leaves of {things}", kind: Count, ask: "How many leaves swing, 1 or 2?",
		why: "two narrow leaves reach less far", shown: face(Mark{}, Mark{}), need: fit.Leaves,
	},
	{
		key: "door.hinge", title: "Hinges of {things}", kind: Word, ask: "Which corner are the hinge pins nearer to?",
		why: "it says where the door swings", shown: Shown{View: FromAbove}, need: fit.Leaves,
	},
	{
		key: "door.swing", title: "Which way {things} swings", kind: Word, ask: "Does it open into this room or out of it?",
		why: "it says whether it can hit the bed", shown: Shown{View: FromAbove}, need: fit.Leaves,
	},
	{
		key: "door.casing_wide", title: "Width of the casing of {things}",
		from: "the casing's inner edge, at the opening", to: "the casing's outer edge, at the plaster",
		hook: "on the inner edge", why: "a bed beside it stands off by it", shown: face(near, at(AtFront)), need: fit.Doors,
	},
	{
		key: "door.leads_to", title: "Where {things} leads", kind: Word, ask: "Where does it lead?",
		why: "the way out in the night goes through it", shown: Shown{View: FromAbove}, need: fit.Doors,
	},
	{
		key: "window.wall", title: "Which wall {things} is in", kind: Word, ask: "Which wall is it in?",
		why: "it says where to draw it", shown: Shown{View: FromAbove}, need: fit.Windows,
	},
	{
		key: "window.at", title: "Corner {end} to {things}, near side",
		from: "the plaster in corner {end}", to: "the near trim, its inside edge, at the glass",
		hook:  "in corner {end}; the tape level, just over the sill",
		other: "hook on the trim edge, read at the corner",
		why:   "it tells whether the bed stands before the window", shown: face(end, near), need: fit.Windows,
	},
	{
		key: "window.far", title: "Corner {end} to {things}, far side",
		from: "the plaster in corner {end}", to: "the far trim, its inside edge, at the glass",
		hook:  "in corner {end}, left there after the near side; the tape level, just over the sill",
		other: "hook on the far trim edge, read at the corner",
		photo: "the tape at the far edge: it tells which edge was taken",
		why:   "with the near side it gives the width once more: a slip shows", shown: face(end, far), need: fit.Windows,
	},
	{
		key: "window.wide", title: "Width of {things}",
		from: "one trim, its inside edge, at the glass", to: "the other trim, its inside edge",
		hook:  "on one trim edge; the glass opening, not the outside of the trim",
		other: "hook on the other trim edge",
		why:   "guides mean three things by the width of a window: this is the opening with the glass in it", shown: face(near, far), need: fit.Windows,
	},
	{
		key: "window.sill", title: "Floor to the sill of {things}",
		from: "the top of the floor covering", to: "the top of the sill, where the opening begins",
		hook:  "case on the floor, its back against the wall; pull the hook up to the sill",
		other: "hook on the floor, read at the sill",
		why:   "it says how far over a mattress the way to the window begins", shown: face(at(AtFloor), at(AtBottom)), need: fit.Windows,
	},
	{
		key: "window.head", title: "Floor to the head of {things}",
		from: "the top of the floor covering", to: "the upper edge of the glass opening",
		hook:  "on the floor; the tape upright",
		other: "hook on the upper edge, read at the floor",
		why:   "it says which bed the window lies beside", shown: face(at(AtFloor), at(AtTop)), need: fit.Windows,
	},
	{
		key: "window.kind", title: "How {things} opens", kind: Word, ask: "How does it open?",
		photo: "the window from two steps back",
		why:   "the window may be the way out in a fire", shown: face(Mark{}, Mark{}), need: fit.Panes,
	},
	{
		key: "window.clear_wide", title: "{thing} opened wide: the clear width",
		from: "the frame on one side of the gap", to: "the frame on the other side of the gap",
		hook: "open the window as far as it goes; measure the gap a person would climb through", other: "hook on the other side of the gap",
		photo: "the open window with the tape across it: it tells how wide the way out is",
		why:   "somebody may have to climb out there", shown: face(near, far), need: fit.Panes,
	},
	{
		key: "window.clear_high", title: "{thing} opened wide: the clear height",
		from: "the lower edge of the gap", to: "the upper edge of the gap",
		hook: "open the window as far as it goes; measure the gap a person would climb through", other: "hook on the upper edge",
		why: "somebody may have to climb out there", shown: face(at(AtBottom), at(AtTop)), need: fit.Panes,
	},
	{
		key: "window.opens", title: "How far {things} can be opened",
		from: "the frame", to: "the edge of the part that moves, as far as it goes",
		hook: "on the frame; a stop that is fitted counts",
		why:  "a child may not fall through, and a grown-up has to get out", shown: face(Mark{}, Mark{}), need: fit.Panes,
	},
	{
		key: "window.guard", title: "A guard on {things}", kind: YesNo, ask: "Is there a guard or a stop for children on it?",
		why: "a child on the bed may lean against it", shown: face(Mark{}, Mark{}), need: fit.Panes,
	},
	{
		key: "window.drop", title: "Ground outside to the opening of {things}",
		from: "the ground under the window, outside", to: "the lowest part of the clear opening",
		hook: "on the ground, outside; leave it out where that cannot be done safely", caution: outside,
		why: "it says how far somebody would fall", need: fit.Panes,
	},
	{
		key: "window.cordless", title: "Cords at {things}", kind: YesNo, ask: "Is it without any cord, chain or loop, on blinds and curtains too?",
		why: "a cord in reach of a bed can strangle a child", shown: face(Mark{}, Mark{}), need: fit.Panes,
	},
	{
		key: "window.cord", title: "Length of the cord at {things}",
		from: "where the cord begins to hang free", to: "its lowest point, pulled out as long as it goes",
		hook: "at its upper end; leave it out where there is no cord", why: "a cord in reach of a bed can strangle a child",
		shown: face(at(AtTop), at(AtBottom)), need: fit.Panes,
	},
	{
		key: "window.casing_wide", title: "Width of the trim of {things}",
		from: "the trim's inside edge, at the glass", to: "the trim's outer edge, at the plaster",
		hook: "on the inside edge", why: "a bed beside it stands off by it", shown: face(near, at(AtFront)), need: fit.Windows,
	},
	{
		key: "window.sill_deep", title: "How far the sill of {things} stands out",
		from: "the plaster beside the window", to: "the front edge of the inside sill",
		hook: "on the plaster, under the sill", why: "a bed before it is held off the wall by it", shown: closeUp(at(AtBack), at(AtFront)), need: fit.Windows,
	},
}
