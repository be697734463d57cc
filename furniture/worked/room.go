package worked

import (
	"bunkwright/furniture/fit"
	"bunkwright/furniture/yardstick"
)

var roomMeasures = []measured{
	{rows: "irc-ceiling", ways: []way{each("ceiling")}},
	{rows: "irc-ceiling-slope-share", ways: []way{two(fit.SlopeShare, "area_at_84", "required")}},
	{rows: "irc-ceiling-slope-min", ways: []way{each("lowest", "ceiling_low")}},
	{rows: "irc-room-area", ways: []way{each("area"), two(squareMM, "room_w", "room_l")}},
	{rows: "irc-room-least", ways: []way{each("room_w", "room_l")}},
	{rows: "dresser-anchor", ways: []way{each("dresser_height")}},

	{rows: "hud-bedside lth-bedside ada-bedside ud-bedside housing-bedmaking hud-leastused", ways: []way{each("bed_to_wall", "gap")}},
	{rows: "hud-dressing", ways: []way{each("bed_to_wall", "bed_foot", "gap")}},
	{rows: "hud-drawers", ways: []way{each("drawers_front", "gap")}},
	{rows: "hud-circulation housing-circulation", ways: []way{each("path", "gap")}},
	{rows: "hud-gap", ways: []way{each("bed_to_dresser", "gap")}},
	{rows: "housing-twins camp-single camp-double", ways: []way{each("bed_to_bed", "gap")}},
	{rows: "ud-foot", ways: []way{each("bed_foot", "gap")}},

	{rows: "irc-hall-width", ways: []way{each("hall")}},
	{rows: "irc-door-width", ways: []way{each("door_w")}},
	{rows: "irc-door-height", ways: []way{each("door_h")}},
	{rows: "irc-stair-width", ways: []way{each("stair")}},
	{rows: "irc-stair-width-one-rail irc-stair-width-two-rails", ways: []way{each("stair_at_rail")}},
	{rows: "irc-stair-headroom", ways: []way{each("stair_headroom")}},
	{rows: "irc-stair-riser", ways: []way{each("riser")}},
	{rows: "irc-stair-tread", ways: []way{each("stair_tread")}},
}

func squareMM(a, b float64) float64 { return fit.SquareFeet(a, b) * scale(yardstick.SquareFoot) }
