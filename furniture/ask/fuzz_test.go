package ask

import (
	"strings"
	"testing"

	"bunkwright/furniture/job/jobfile"
)

// FuzzReadReply: whatever comes back, no line of it is lost, it can be merged, the merged job can be opened again, and merging it once more
// changes nothing.
func FuzzReadReply(f *testing.F) {
	j := load(f, plain)
	s := sheetOf(f, j, Options{All: true})
	for _, seed := range []string{
		s.Text(filledIn(s)), s.Form(), s.Text(filledIn(s)) + s.Form(),
		"A to B 11 6 1/2, window 34 3/4 from the corner", "By: Lena\nBy: Otto\nUnit: cm\n1: 3,5", "1 wall.AB.length: 12' | 11' 11 | %0A%7C",
		s.Head() + "\nroom.absent.fan: 3\nroom.absent.alarm: yes\nEnd: 99", "Reply to sheet 1000 of job 100000\n1: 2", "> > 1) 5' 7\u2033\r\n\x00\u202e",
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		r := ReadReply(text, s, j)
		if lost := lostLines(text, &r, s); lost != "" {
			t.Fatalf("lost: %q", lost)
		}
		if r.Other {
			return
		}
		merged, err := Merge(j, r)
		if err != nil {
			t.Fatalf("%v\n%+v", err, r.Got)
		}
		data := jobfile.Encode(merged)
		if _, err := jobfile.Load(data, "job.toml"); err != nil {
			t.Fatal(err)
		}
		again := ReadReply(text, s, merged)
		if twice, err := Merge(merged, again); err != nil || string(jobfile.Encode(twice)) != string(data) {
			t.Fatalf("merged twice it is another job: %v", err)
		}
	})
}

// lostLines returns a line with a figure or letter in it that nothing came of.
func lostLines(text string, r *Reply, s Sheet) string {
	seen := map[int]bool{}
	for _, g := range r.Got {
		seen[g.Line] = true
	}
	for _, q := range r.Asks {
		seen[q.Line] = true
	}
	for _, l := range r.Unread {
		seen[l.Number] = true
	}
	kept := 0
	for i, line := range strings.Split(tidy(text), "\n") {
		line = unquoted(line)
		a, answered := answerLine(line)
		switch {
		case seen[i+1], line == "", headLine.MatchString(line), endLine.MatchString(line), sideLine.MatchString(line):
		case answered && blankAnswer(a.values):
		case answered: // the same answer once more
			kept++
		case len(r.Got) > 0: // typed by hand, the same once more
			kept++
		default:
			return line
		}
	}
	if kept > 0 && len(r.Got) == 0 && len(r.Asks) == 0 && len(r.Unread) == 0 {
		return text
	}
	return ""
}
