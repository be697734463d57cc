package view

import (
	"strings"
	"testing"
)

// TestQuantitiesInWords: heights are named by where they were read, parts by what they are, figures of the yardstick by what they measure.
// The chamber's flat ceiling was read at B and C, its slope at D and 1200 mm from D.
func TestQuantitiesInWords(t *testing.T) {
	j := odd(t, "chamber")
	s, answers := asked(t, &j)
	b := &binder{s: s, answers: answers, known: knownOf(s), o: SheetOptions{Unit: unitOf(&j)}}
	for key, want := range map[string]string{
		"ceiling.flat.height.1.height":  "ceiling flat at B",
		"ceiling.flat.height.2.height":  "ceiling flat at C",
		"ceiling.slope.height.2.height": "ceiling slope, 1200 mm from D",
		"ceiling.slope.height.2.out":    "ceiling slope, 1200 mm from D, how far out",
		"left.lower.1":                  "gap in the left end between the decks",
		"own-drying":                    "growth of a gap as boards dry from 19 % to 8 % moisture",
		"wall.BC.stud.3.at":             "wall B to C, stud 3",
		"door.hall.at":                  "door hall, how far along",
	} {
		if got := b.quantity(key); got != want {
			t.Errorf("%s: %q, want %q", key, got, want)
		}
	}
}

// TestAllToReadAgainIsListed: every reading to take again stands on the sheets, however many there are.
func TestAllToReadAgainIsListed(t *testing.T) {
	for _, name := range append(sampleNames(t), "chamber", "nook") {
		j := jobNamed(t, name)
		s, answers := asked(t, &j)
		o := SheetOptions{Unit: unitOf(&j)}
		var all strings.Builder
		for _, sh := range Sheets(s, answers, o) {
			all.WriteString(strings.Join(texts(sh.Marks), " ") + " ")
		}
		b := &binder{s: s, answers: answers, known: knownOf(s), o: o}
		for _, words := range b.readAgain() {
			if !strings.Contains(all.String(), strings.TrimPrefix(words, "wall ")) {
				t.Errorf("%s: %q is on no sheet", name, words)
			}
		}
	}
}

// TestInputsKeepNameAndNumberApart: a colon stands between what an input is and its value.
func TestInputsKeepNameAndNumberApart(t *testing.T) {
	j := odd(t, "chamber")
	s, answers := asked(t, &j)
	b := &binder{s: s, answers: answers, known: knownOf(s), o: SheetOptions{Unit: unitOf(&j)}}
	for i := range answers {
		words := b.inputWords(answers[i])
		for _, one := range strings.Split(words, "; ") {
			if one != "" && strings.Count(one, ": ") != 1 {
				t.Errorf("%s: %q", answers[i].ID, one)
			}
		}
	}
}
