package main

// nearest returns the word of a list that takes the fewest single-letter changes to reach: about a third of its letters, at most four.
// It returns "" where none is that near, since a far-fetched word is worse than none.
func nearest(word string, list []string) string {
	best, least := "", min(4, max(1, (len(word)+1)/3))+1
	for _, w := range list {
		if d := distance(word, w); d < least && d < len(w) {
			best, least = w, d
		}
	}
	return best
}

func hint(word string) string {
	if word == "" {
		return ""
	}
	return "hint: did you mean " + word + "?\n"
}

// distance counts single-letter changes (Levenshtein 1965).
func distance(a, b string) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := 1; i <= len(a); i++ {
		diagonal := row[0]
		row[0] = i
		for j := 1; j <= len(b); j++ {
			next := min(row[j]+1, row[j-1]+1)
			if a[i-1] == b[j-1] {
				next = min(next, diagonal)
			} else {
				next = min(next, diagonal+1)
			}
			diagonal, row[j] = row[j], next
		}
	}
	return row[len(b)]
}
