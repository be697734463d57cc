package ask

import (
	"bytes"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"bunkwright/furniture/job/jobfile"
	"bunkwright/room/length"

	"pgregory.net/rapid"
)

// drawn is a sheet filled in at random: lengths of 1/64 in or of half a millimetre, in the notation of a tape or exactly, and what each
// means.
func drawn(r *rapid.T, s Sheet) (Filled, map[string][]length.Length) {
	f := Filled{By: rapid.String().Filter(tame).Draw(r, "by"), When: "2027-06-05", Answers: map[string]Answered{}}
	want := map[string][]length.Length{}
	for _, c := range s.Cards() {
		if c.Kind != Length || rapid.IntRange(0, 3).Draw(r, "left out") > 0 {
			continue
		}
		a := Answered{Note: rapid.String().Filter(tame).Draw(r, "note")}
		var l length.Length
		a.Value, l = drawnLength(r)
		want[c.Key] = append(want[c.Key], l)
		if c.Other != "" {
			a.Turned, l = drawnLength(r)
			want[c.Key] = append(want[c.Key], l)
		}
		f.Answers[c.Key] = a
	}
	return f, want
}

// tame are texts that a file keeps letter by letter: without what cannot be seen, blanks at the ends, or more letters than a name may have.
func tame(text string) bool {
	return utf8.ValidString(text) && tidy(text) == text && !strings.Contains(text, "\n") && strings.TrimSpace(text) == text && len([]rune(text)) < longestName && text != "\ufffd"
}

func drawnLength(r *rapid.T) (string, length.Length) {
	if rapid.Bool().Draw(r, "metric") {
		l := length.Length(rapid.IntRange(2*700, 2*9000).Draw(r, "half mm")) * length.Millimetre / 2
		return length.Exact(l, length.Millimetres), l
	}
	l := length.Length(rapid.IntRange(64*30, 64*350).Draw(r, "64ths")) * length.Inch / 64
	if rapid.Bool().Draw(r, "feet") {
		return length.Format(l, length.Style{Step: length.Inch / 64}), l
	}
	return length.Exact(l, length.Inches), l
}

// TestWrittenIsRead: what was filled in comes back exactly, to 1/64 in and 0.5 mm, whatever the order of the lines, and doubled it merges once.
func TestWrittenIsRead(t *testing.T) {
	for _, name := range []string{"half-measured.toml", "attic.toml"} {
		j := sampleJob(t, name)
		s := sheetOf(t, j, Options{All: true})
		rapid.Check(t, func(r *rapid.T) {
			f, want := drawn(r, s)
			text := s.Text(f)
			reply := ReadReply(text, s, j)
			if len(reply.Asks)+len(reply.Unread) > 0 || reply.Cut || reply.Older {
				for _, q := range reply.Asks {
					if !strings.Contains(q.Why, "the neighbours are near") { // rule R19: a mark probably swapped
						r.Fatalf("%q is asked: %s\n%s", q.Text, q.Ask, q.Why)
					}
				}
				if len(reply.Unread) > 0 {
					r.Fatalf("%+v", reply.Unread)
				}
				return
			}
			have := map[string][]length.Length{}
			for _, g := range reply.Got {
				have[g.Key] = append(have[g.Key], g.Value)
				if a := f.Answers[g.Key]; g.By != f.By || g.Note != a.Note {
					r.Fatalf("by %q, note %q; want %q, %q", g.By, g.Note, f.By, a.Note)
				}
			}
			for key, lengths := range want {
				if !slices.Equal(have[key], lengths) {
					r.Fatalf("%s: got %v, want %v", key, have[key], lengths)
				}
			}
			merged, err := Merge(j, reply)
			if err != nil {
				r.Fatal(err)
			}
			data := jobfile.Encode(merged)
			lines := strings.Split(text, "\n")
			again, err := Merge(j, ReadReply(lines[0]+"\n"+strings.Join(rapid.Permutation(lines[1:]).Draw(r, "order"), "\n"), s, j))
			if err != nil || !bytes.Equal(jobfile.Encode(again), data) {
				r.Fatalf("another order of the lines is another job: %v", err)
			}
			doubled, err := Merge(j, ReadReply(text+text, s, j))
			if err != nil || !bytes.Equal(jobfile.Encode(doubled), data) {
				r.Fatalf("a doubled reply is another job: %v", err)
			}
			later, err := Merge(merged, ReadReply(text, s, merged))
			if err != nil || !bytes.Equal(jobfile.Encode(later), data) {
				r.Fatalf("merged once more it is another job: %v", err)
			}
		})
	}
}

// TestCutAnywhere: a reply that ends anywhere never brings a value that was not sent.
func TestCutAnywhere(t *testing.T) {
	j := load(t, plain)
	s := sheetOf(t, j, Options{All: true})
	f := filledIn(s)
	for _, c := range s.Cards()[12:] {
		delete(f.Answers, c.Key)
	}
	sent := map[string]bool{}
	text := s.Text(f)
	for _, g := range ReadReply(text, s, j).Got {
		sent[g.Key+g.Value.String()+g.Word] = true
	}
	for n := range len(text) {
		for _, g := range ReadReply(text[:n], s, j).Got {
			if !sent[g.Key+g.Value.String()+g.Word] {
				t.Fatalf("cut after %d letters: %s = %v %s was not sent", n, g.Key, g.Value, g.Word)
			}
		}
	}
}

// TestEscape: any text comes back as it was, but for characters that cannot be seen.
func TestEscape(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		text := rapid.String().Draw(r, "text")
		want := strings.ReplaceAll(tidy(text), "\n", " ")
		for _, e := range []string{escape(text), escapeKey(text)} {
			if strings.ContainsFunc(e, func(c rune) bool { return c < ' ' || c > '~' || c == '|' }) {
				r.Fatalf("%q", e)
			}
			if back := strings.ReplaceAll(tidy(unescape(e)), "\n", " "); back != want {
				r.Fatalf("%q became %q", text, back)
			}
		}
	})
	for text, want := range map[string]string{"100%": "100%", "5% or 10%": "5% or 10%", "%7C": "|", "%zz": "%zz", "%C3": "%C3", "%C3%A9": "é", "a%0Ab": "a b"} {
		if got := unescape(text); got != want { // by hand: RFC 3986, 2.1
			t.Errorf("%s: %q, want %q", text, got, want)
		}
	}
}

// TestMegabyte: 1 MB of anything is read in good time and kept.
func TestMegabyte(t *testing.T) {
	j := load(t, plain)
	s := sheetOf(t, j, Options{All: true})
	for name, line := range map[string]string{
		"letters": strings.Repeat("x", 70), "answers": "1: 12'", "words": "window 3 ft from the corner, A to B 12'", "one long line": "", "percents": "%41%42 ",
	} {
		text := s.Head() + "\n" + strings.Repeat(line+"\n", 1<<20/(len(line)+1))
		if line == "" {
			text = s.Head() + "\n" + strings.Repeat("7 1/2 ", 1<<20/6)
		}
		r := ReadReply(text, s, j)
		if _, err := Merge(j, r); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if len(r.Got)+len(r.Asks)+len(r.Unread) == 0 {
			t.Errorf("%s: nothing is left of it", name)
		}
	}
}
