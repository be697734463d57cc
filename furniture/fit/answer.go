package fit

import "bunkwright/furniture/yardstick"

// Verdict is the answer in one word. The zero verdict is "cannot tell yet", never "fits".
type Verdict int

// The verdicts.
const (
	CannotTell Verdict = iota
	DoesNotFit
	TooClose
	Fits
	NotApplicable // out of scope, or the thing is absent
	None          // only advice and outside figures here
)

var verdictIDs = [...]string{"cannot-tell", "does-not-fit", "too-close", "fits", "not-applicable", "none"}

var verdictWords = [...]string{"Cannot tell yet", "Does not fit", "Too close to call", "Fits", "Does not apply", "Nothing to measure against here"}

// String returns the verdict as files and JSON write it.
func (v Verdict) String() string { return verdictIDs[v] }

// Words returns the verdict as a person reads it.
func (v Verdict) Words() string { return verdictWords[v] }

// rank orders verdicts from worst to best.
func (v Verdict) rank() int { return [...]int{1, 0, 2, 3, 5, 4}[v] }

// Worse tells whether v is worse than w.
func (v Verdict) Worse(w Verdict) bool { return v.rank() < w.rank() }

// Open tells whether a verdict still asks for something to be done.
func (v Verdict) Open() bool { return v == DoesNotFit || v == CannotTell || v == TooClose }

// An Answer is what is known of one question.
type Answer struct {
	ID, Sentence string
	Group        Group
	Verdict      Verdict
	Band         string
	Accepted     string // the maker's reason; empty: not accepted
	Force        yardstick.Force
	Has          bool    // Value, Spare and PlusMinus hold numbers
	Value        float64 // of the line that decides, in Unit
	Unit         yardstick.Unit
	Spare        float64
	HasSpare     bool
	PlusMinus    float64 // k u
	U            float64
	Reason       string
	Ask          string
	Caution      string
	Figures      []Figure
	Lines        []Line
	Inputs       []Input
	Parts        []string
	Notes        []string
	Remedies     []Remedy // what was tried and makes it fit; whoever tries fills them in
	Decides      int      // index of the line that decides; -1: none
	Doubt        int      // place plus one of the conflict of the survey that what decides hangs on; 0: none
}

// A Line is one reading held against one row.
type Line struct {
	Row      *yardstick.Row
	Place    yardstick.Place // whose text it is, among the places of the job; "" for planning figures
	Force    yardstick.Force
	Verdict  Verdict
	At       string
	Has      bool
	Value    float64
	Spare    float64
	HasSpare bool
	U        float64
	Reason   string
	Ask      string
	Parts    []string

	reading int
}

// An Input is one thing that went into an answer.
type Input struct {
	Key   string
	Value float64
	Unit  string
	How   string
	By    string
	Share float64 // of the variance of the answer, 0 to 1
}
