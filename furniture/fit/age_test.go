package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/job"
)

// Ages asked: 6 by the US label (16 CFR 1213.5, 1513.5), the French decree 95-949 and the Canadian guidance, 9 by AS/NZS 4220, 10 by the
// Queensland guidance, which is advice in AU.
func TestOldEnough(t *testing.T) {
	aged := func(age float64) func(*Scene) {
		return func(s *Scene) { s.Job.Sleepers[0].Age = age }
	}
	runCases(t, "old-enough", []bedCase{
		{"ten in the US", "US", nil, Fits, 4, "top.youngest"},
		{"just six", "US", aged(6), Fits, 0, "top.youngest"},
		{"nearly six counts as five", "US", aged(5.99), DoesNotFit, -1, "top.youngest"},
		{"eight in AU", "AU", aged(8), DoesNotFit, -1, "top.youngest"},
		{"eight and a half in FR", "FR", aged(8.5), Fits, 2, "top.youngest"},
		{"five in CA", "CA", aged(5), DoesNotFit, -1, "top.youngest"},
		{"an age not told", "US", aged(0), CannotTell, none, "top.Ida"},
		{"a grown-up who gave no age", "AU", func(s *Scene) { s.Job.Sleepers[0] = job.Sleeper{Name: "Ann", Sex: "woman", Bed: "upper"} }, Fits, 9, "top.youngest"},
		{"nobody said to sleep on top", "US", func(s *Scene) { s.Job.Sleepers = s.Job.Sleepers[1:] }, CannotTell, none, "top.youngest"},
		{"no text of a place without one", "UK", nil, None, none, ""},
		{"a bed too low to be covered", "US", low, NotApplicable, none, ""},
		{"no bed to tell the scope by", "US", unbuildable, CannotTell, none, ""},
	})
}

func TestOldEnoughTakesTheYoungest(t *testing.T) {
	s := plainScene(t, "US")
	s.Job.Sleepers = append(s.Job.Sleepers, job.Sleeper{Name: "Tor", Age: 7.9, Bed: "upper"}, job.Sleeper{Name: "Kim", Bed: "upper"})
	a := answer(t, s, "old-enough")
	if a.Verdict != CannotTell || a.Ask != "how old is Kim?" {
		t.Errorf("%v, asks %q", a.Verdict, a.Ask)
	}
	if l := line(t, a, "us-age-upper", "top.youngest"); l.Value != 7 || math.Abs(l.Spare-1) > 1e-6 {
		t.Errorf("youngest is %v with %v to spare, want 7 and 1", l.Value, l.Spare)
	}
}

// Queensland's ten years are advice at AU: a nine-year-old fits with a line of advice beside it.
func TestOldEnoughAdvice(t *testing.T) {
	s := plainScene(t, "AU")
	s.Job.Sleepers[0].Age = 9
	a := answer(t, s, "old-enough")
	if l := line(t, a, "qld-age-upper", "top.youngest"); a.Verdict != Fits || l.Verdict != DoesNotFit || l.Force.String() != "advice" {
		t.Errorf("answer %v, advice %v with force %s", a.Verdict, l.Verdict, l.Force)
	}
}
