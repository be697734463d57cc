package ask

import (
	"fmt"
	"slices"
	"strings"
)

// Filled is what somebody answered to a sheet, as typed.
type Filled struct {
	By, When, Unit string
	Answers        map[string]Answered // by key
}

// Answered is one card filled in.
type Answered struct{ Value, Turned, Note string }

// Text writes the reply to a sheet as the form sends it. ReadReply reads it back.
func (s Sheet) Text(f Filled) string {
	var b strings.Builder
	b.WriteString(s.head())
	for _, side := range [][2]string{{"By", f.By}, {"On", f.When}, {"Unit", f.Unit}} {
		if side[1] != "" {
			fmt.Fprintf(&b, "%s: %s\n", side[0], escape(side[1]))
		}
	}
	b.WriteString("\n")
	n := 0
	for _, c := range s.Cards() {
		a, ok := f.Answers[c.Key]
		if !ok || isBlank(a.Value) && isBlank(a.Turned) {
			continue
		}
		n++
		b.WriteString(replyLine(c, []string{a.Value, a.Turned}, a.Note) + "\n")
	}
	fmt.Fprintf(&b, "\nEnd: %d answers\n", n)
	return b.String()
}

// Form writes a reply to copy and fill in by hand: a line for each card.
func (s Sheet) Form() string {
	var b strings.Builder
	b.WriteString(s.head() + "By: \nOn: \nUnit: " + s.Unit + "\n\n")
	for _, c := range s.Cards() {
		line := replyLine(c, nil, "")
		if c.Kind == Length && c.Other != "" {
			line += " |"
		}
		b.WriteString(line + "\n")
	}
	b.WriteString("\nEnd\n")
	return b.String()
}

func (s Sheet) head() string { return s.Head() + ": " + escape(s.Name) + "\n" }

// Head is the first line of a reply, without the name of the job.
func (s Sheet) Head() string { return "Reply to sheet " + s.Version + " of job " + s.Job }

// replyLine writes an answer: number, key, values and note. Whatever is empty at the end is left out.
func replyLine(c Card, values []string, note string) string {
	parts := slices.Clone(values)
	for len(parts) < 2 && note != "" {
		parts = append(parts, "")
	}
	if note != "" {
		parts = append(parts, note)
	}
	for len(parts) > 0 && parts[len(parts)-1] == "" {
		parts = parts[:len(parts)-1]
	}
	for i := range parts {
		parts[i] = escape(strings.TrimSpace(parts[i]))
	}
	return strings.TrimRight(fmt.Sprintf("%d %s: %s", c.Number, escapeKey(c.Key), strings.Join(parts, " | ")), " ")
}
