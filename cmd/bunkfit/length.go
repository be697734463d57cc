package main

import (
	"fmt"
	"strings"

	"bunkwright/room/length"
)

var lengthCommand = command{
	name:    "length",
	args:    "TEXT [--unit in|mm] [--field NAME] [--near TEXT,TEXT] [--json]",
	summary: "say how a length is understood",
	example: `bunkfit length "5' 7-3/8"`,
}

func init() { lengthCommand.run = runLength }

// jsonLength is the JSON of length: nm is null unless the outcome is value.
type jsonLength struct {
	Outcome  string `json:"outcome"`
	NM       *int64 `json:"nm"`
	SecondNM *int64 `json:"second_nm"`
	Note64   int    `json:"note_64ths"`
	Question string `json:"question"`
	Reason   string `json:"reason"`
}

func runLength(s *session, args []string) (int, error) {
	f := s.flags(lengthCommand)
	unit := f.String("unit", "in", "unit of a number without one: in or mm")
	field := f.String("field", "length", "what it is for: length, wall_length, room_height, board_thickness, section")
	near := f.String("near", "", "readings of the same thing, separated by commas")
	asJSON := f.Bool("json", false, "print as JSON")
	words, err := parse(f, args)
	if err != nil {
		return exitUsage, err
	}
	if len(words) != 1 {
		return exitUsage, fmt.Errorf("length wants one text, in quotes\nhint: %s", lengthCommand.example)
	}
	c, err := lengthContext(*unit, *field, *near)
	if err != nil {
		return exitUsage, err
	}
	r := length.Read(words[0], c)
	code := exitSettled
	if r.Outcome != length.Value {
		code = exitOpen
	}
	if *asJSON {
		return code, writeJSON(s.out, lengthJSON(r, c))
	}
	fmt.Fprintln(s.out, lengthWords(r, c))
	return code, nil
}

// lengthContext reads the flags; neighbours are read in the same unit, as plain lengths.
func lengthContext(unit, field, near string) (length.Context, error) {
	var c length.Context
	var err error
	if c.Unit, err = length.ParseUnit(unit); err != nil {
		return c, err
	}
	if c.Field, err = length.ParseField(field); err != nil {
		return c, err
	}
	for _, text := range strings.Split(near, ",") {
		if strings.TrimSpace(text) == "" {
			continue
		}
		l, err := length.Parse(text, length.Context{Unit: c.Unit})
		if err != nil {
			return c, fmt.Errorf("--near: %w", err)
		}
		c.Near = append(c.Near, l)
	}
	return c, nil
}

func lengthJSON(r length.Reading, c length.Context) jsonLength {
	out := jsonLength{Outcome: r.Outcome.String(), Note64: r.Note64, Question: r.Question, Reason: r.Reason}
	if r.Outcome == length.Value {
		nm := int64(r.Value)
		out.NM = &nm
		if c.Field == length.Section {
			second := int64(r.Second)
			out.SecondNM = &second
		}
	}
	return out
}

func lengthWords(r length.Reading, c length.Context) string {
	switch {
	case r.Outcome == length.Ask:
		return "ask: " + r.Question
	case r.Outcome != length.Value:
		return "not a length: " + r.Reason
	case c.Field == length.Section:
		return fmt.Sprintf("%s by %s", length.Exact(r.Value, c.Unit), length.Exact(r.Second, c.Unit))
	}
	text := fmt.Sprintf("%s = %s = %s", length.Format(r.Value, length.Style{Unit: length.Inches}), length.Exact(r.Value, length.Inches), length.Exact(r.Value, length.Millimetres))
	if r.Note64 != 0 {
		text += fmt.Sprintf(", noted %+d/64 in", r.Note64)
	}
	return text
}
