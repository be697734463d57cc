package ui

// keys lists what the keys do that stand in no menu, stage by stage; those of the menus stand in the menus.
func (w *Window) keys() { w.list("Keys", keyLines, nil) }

var keyLines = []string{
	"Everywhere: Tab and Shift+Tab go on and back, Enter or Space does what has the focus, Esc gives up or closes. Commands have their keys in the menus.",
	"Room: Page Down and Page Up go through corners, walls and things; Left and Right go round the walls. A adds something, C adds a corner, Del takes away.",
	"Room: with a thing chosen, arrow keys move it by the step, with Shift by eight. Enter or Tab goes to its numbers, Esc back to the drawing. F shows all of the room.",
	"Room: dragging a wall that was measured wants Shift.",
	"Bed: on the view from a corner, arrow keys turn the bed and Home brings it back.",
	"Place: arrow keys move the bed by the step, with Shift by eight. R turns it, M mirrors it, W presses it to the nearest wall, Esc drops a drag.",
	"Place: Alt while dragging keeps the bed from settling on walls and studs. The wheel zooms, dragging the ground moves the drawing.",
	"Questions: Up and Down go from one to the next, Enter opens it.",
	"Dividers between columns: Left and Right move them.",
}
