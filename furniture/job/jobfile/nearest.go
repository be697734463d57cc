package jobfile

import "strings"

// nearest returns the word that text was most likely meant to be: about a third of its letters differ, at most three; capitals do not
// count. It returns "" where no word is that near.
func nearest(text string, words []string) string {
	const longest = 40
	if len(text) > longest {
		return ""
	}
	best, least := "", min(3, max(1, (len(text)+1)/3))+1
	for _, w := range words {
		if d := distance(strings.ToLower(text), strings.ToLower(w)); d < least && d < len(w) {
			best, least = w, d
		}
	}
	return best
}

// distance counts the letters to put in, take out or change to make b of a, two neighbours swapped counting once (Damerau 1964,
// Levenshtein 1966; the restricted form).
func distance(a, b string) int {
	before, last := []int(nil), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		now := make([]int, len(b)+1)
		now[0] = i
		for j := 1; j <= len(b); j++ {
			change := last[j-1]
			if a[i-1] != b[j-1] {
				change++
			}
			now[j] = min(change, last[j]+1, now[j-1]+1)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				now[j] = min(now[j], before[j-2]+1)
			}
		}
		before, last = last, now
	}
	return last[len(b)]
}
