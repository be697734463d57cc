package main

import (
	"fmt"
	"io"
	"os"
	"strings"

	"bunkwright/furniture/ask"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room/length"
)

// mostReply bounds what is read of a reply, 8 MB: what is longer is no reply to a sheet of a hundred cards.
const mostReply = 8 << 20

// takeReply merges a reply into the job of a file, in memory, and writes the merged job where that was asked for. It prints what the reply
// brought unless the answer is to be JSON.
func takeReply(s *session, file *jobfile.File, name, out string, quiet bool) (*ask.Reply, error) {
	text, err := replyText(s, name)
	if err != nil {
		return nil, err
	}
	sheet, err := ask.New(&file.Job, ask.Options{All: true})
	if err != nil {
		return nil, err
	}
	reply := ask.ReadReply(text, sheet, &file.Job)
	if reply.Other {
		return nil, fmt.Errorf("%s: it answers job %s, and %s is job %s: nothing was merged", name, reply.Job, file.Job.Name, sheet.Job)
	}
	merged, err := ask.Merge(&file.Job, reply)
	if err != nil {
		return nil, err
	}
	if !quiet {
		printReply(s.out, reply, sheet, &file.Job)
	}
	file.Job = *merged
	if out == "" {
		return &reply, nil
	}
	if err := jobfile.Save(out, merged); err != nil {
		return nil, unwritten(out, err)
	}
	if !quiet {
		fmt.Fprintf(s.out, "\nwrote %s\n", out)
	}
	return &reply, nil
}

// replyText reads a reply from a file, or from what is piped in for "-".
func replyText(s *session, name string) (string, error) {
	from := s.in
	if name != "-" {
		f, err := os.Open(name)
		if err != nil {
			return "", fmt.Errorf("%s: cannot be read: %w", name, cause(err))
		}
		defer f.Close()
		from = f
	}
	data, err := io.ReadAll(io.LimitReader(from, mostReply))
	if err != nil {
		return "", fmt.Errorf("%s: cannot be read: %w", name, cause(err))
	}
	return string(data), nil
}

// settledReply tells whether a reply leaves nothing to look at.
func settledReply(r *ask.Reply) bool { return len(r.Asks)+len(r.Differ)+len(r.Unread) == 0 && !r.Cut }

// printReply says what came in, what does not agree, what is asked back, what could not be read, and what is still missing.
func printReply(w io.Writer, r ask.Reply, sheet ask.Sheet, j *job.Job) {
	from := strings.Join(r.By, " and ")
	if from == "" {
		from = "somebody who gave no name"
	}
	fmt.Fprintf(w, "reply from %s: %d came in", from, len(r.Got)-r.Already)
	if r.Already > 0 {
		fmt.Fprintf(w, ", %d more were there already", r.Already)
	}
	fmt.Fprintln(w)
	for _, remark := range replyRemarks(r, sheet) {
		indent := remark[:len(remark)-len(strings.TrimLeft(remark, " "))]
		fmt.Fprintf(w, "  %s%s\n", indent, wrapped(remark, 98, "    "))
	}
	for _, g := range r.Got {
		if !g.Known {
			fmt.Fprintf(w, "  %s\n", wrapped(gotLine(g, unitOf(j.Unit)), 98, "    "))
		}
	}
	printDiffer(w, r, sheet)
	printAsks(w, r)
	printUnread(w, r)
	printMissing(w, r, sheet)
	fmt.Fprintln(w)
}

// replyRemarks say what is odd about the reply as a whole.
func replyRemarks(r ask.Reply, sheet ask.Sheet) []string {
	var out []string
	if r.Older {
		out = append(out, fmt.Sprintf("it answers sheet %s, and the sheet of this job is now %s: a number without its key is asked about", r.Sheet, sheet.Version))
	}
	if r.Job == "" && len(r.Asks) > 0 {
		out = append(out, "it names no sheet; where it answers this one, put this line at its top:", "    "+sheet.Head())
	}
	if r.Cut {
		out = append(out, "it may be cut off: ask whether this is all of it")
	}
	for _, n := range r.Notes {
		out = append(out, "note: "+n)
	}
	return out
}

func gotLine(g ask.Got, unit length.Unit) string {
	value := g.Word
	if g.Kind == ask.Length {
		value = jobfile.ShownLength(g.Value, unit)
	}
	text := fmt.Sprintf("%d. %s: %s", g.Number, g.Title, value)
	if g.Turned {
		text += ", from the other end"
	}
	if g.Light != 0 {
		text += map[bool]string{true: ", strong", false: ", light"}[g.Light > 0]
	}
	if g.Note != "" {
		text += " (" + g.Note + ")"
	}
	return text
}

func printDiffer(w io.Writer, r ask.Reply, sheet ask.Sheet) {
	if len(r.Differ) > 0 {
		fmt.Fprintln(w, "\ndoes not agree; all are kept, none is averaged away")
	}
	for _, d := range r.Differ {
		line := titleOf(sheet, d.Key) + ": " + strings.Join(d.Have, "; ")
		if d.Off != "" {
			line += "; " + d.Off + " apart"
		} else {
			line += "; left as the job has it"
		}
		fmt.Fprintf(w, "  %s\n", wrapped(line, 98, "    "))
	}
}

func printAsks(w io.Writer, r ask.Reply) {
	if len(r.Asks) > 0 {
		fmt.Fprintln(w, "\nto be asked, because it can mean two things; the right line, put into the reply, settles it")
	}
	for _, q := range r.Asks {
		fmt.Fprintf(w, "  %s\n", wrapped(fmt.Sprintf("line %d, %q: %s (%s)", q.Line, shortened(q.Text), q.Ask, q.Why), 98, "    "))
		for _, o := range q.Offers {
			fmt.Fprintf(w, "      %s\n", o)
		}
	}
}

// mostPrinted bounds what is printed of a text that is nothing but lines nobody can read; all of it is in the JSON.
const mostPrinted = 60

func printUnread(w io.Writer, r ask.Reply) {
	if len(r.Unread) > 0 {
		fmt.Fprintln(w, "\nkept, but no answer")
	}
	for i, l := range r.Unread {
		if i == mostPrinted {
			fmt.Fprintf(w, "  and %d lines more: --json has them all\n", len(r.Unread)-i)
			break
		}
		fmt.Fprintf(w, "  line %d: %s (%s)\n", l.Number, shortened(l.Text), l.Why)
	}
}

func printMissing(w io.Writer, r ask.Reply, sheet ask.Sheet) {
	if len(r.Missing) > 0 {
		fmt.Fprintf(w, "\n%d cards have no answer yet\n", len(r.Missing))
	}
	for _, key := range r.Missing {
		c, _ := sheet.Card(key)
		fmt.Fprintf(w, "  %d. %s\n", c.Number, c.Title)
	}
}

func titleOf(sheet ask.Sheet, key string) string {
	if c, ok := sheet.Card(key); ok {
		return c.Title
	}
	return key
}

// shortened keeps a line that somebody pasted from filling the screen.
func shortened(text string) string {
	const most = 120
	if r := []rune(text); len(r) > most {
		return string(r[:most]) + " ..."
	}
	return text
}

// jsonReplied is the JSON of answers with the reply that was merged first.
type jsonReplied struct {
	jsonAnswers
	Reply *ask.Reply `json:"reply,omitempty"`
}

func (r readings) jsonWith(reply *ask.Reply) jsonReplied { return jsonReplied{r.json(), reply} }
