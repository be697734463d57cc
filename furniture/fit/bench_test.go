package fit

import "testing"

// BenchmarkNominal asks all questions of one placement as if every reading were exact (budget 0.2 ms).
func BenchmarkNominal(b *testing.B) {
	s := stage(b, bedroom(4000, 3500))
	if len(s.Answers()) != len(questions) {
		b.Fatal("not every question was answered")
	}
	for b.Loop() {
		for _, q := range questions {
			s.Nominal(q)
		}
	}
}

// BenchmarkAnswers asks all questions with how sure they are (budget 10 ms).
func BenchmarkAnswers(b *testing.B) {
	s := stage(b, bedroom(4000, 3500))
	if len(s.Answers()) != len(questions) {
		b.Fatal("not every question was answered")
	}
	for b.Loop() {
		s.Answers()
	}
}

// BenchmarkScene solves the room, builds the bed and puts it in its place.
func BenchmarkScene(b *testing.B) {
	j := bedroom(4000, 3500)
	for b.Loop() {
		if _, err := NewScene(j); err != nil {
			b.Fatal(err)
		}
	}
}
