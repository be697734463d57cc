package control

import (
	"fmt"
	"io"
	"time"

	"fyne.io/fyne/v2"
)

// A Trace writes how long the steps of the hand take, a line for each that was painted:
//
//	step 1764090000.123456 model 3.21 drawing 9.87 painted 31.50
//
// The first figure is when the step came, in seconds since 1970. Then, in milliseconds: how long model and nominal answers took, how long
// drawings and pixels did, and when, since the step came, the toolkit had painted the window. What is neither model nor drawing is the
// toolkit's. A line that begins with "words" or "sure" is the same for what follows: the columns a frame later, and how sure the answers
// are. A nil trace writes nothing.
type Trace struct {
	out         io.Writer
	step, later time.Time // when they came; the zero time for none
	what        string    // comes later
	model       time.Duration
	drawing     time.Duration
	painting    bool
}

// Traced is the trace of the program: set before a window is shown, or left nil.
var Traced *Trace

// NewTrace returns a trace that writes to out.
func NewTrace(out io.Writer) *Trace { return &Trace{out: out} }

// Step notes that the hand moved and returns what to call once the model follows. Steps before the next painting are one.
func (t *Trace) Step() (modelled func()) {
	if t == nil {
		return func() {}
	}
	now := time.Now()
	if t.step.IsZero() {
		t.step, t.model, t.drawing = now, 0, 0
	}
	return func() { t.model += time.Since(now) }
}

// Later notes that what follows a step is told now, and that painting that step has ended.
func (t *Trace) Later(what string) {
	if t != nil {
		t.Painted()
		t.what, t.later, t.drawing = what, time.Now(), 0
	}
}

// Draw notes that the window is painted and something of ours is turned into pixels; what it returns is called when that is done.
func (t *Trace) Draw() (done func()) {
	if t == nil || t.step.IsZero() && t.later.IsZero() {
		return func() {}
	}
	if !t.painting {
		t.painting = true
		fyne.Do(t.Painted) // comes after this painting
	}
	now := time.Now()
	return func() { t.drawing += time.Since(now) }
}

// Painted notes that painting has ended, if it had begun.
func (t *Trace) Painted() {
	if !t.painting {
		return
	}
	t.painting = false
	if !t.step.IsZero() {
		fmt.Fprintf(t.out, "step %.6f model %.2f drawing %.2f painted %.2f\n", seconds(t.step), ms(t.model), ms(t.drawing), ms(time.Since(t.step)))
	}
	if !t.later.IsZero() {
		fmt.Fprintf(t.out, "%s %.6f drawing %.2f painted %.2f\n", t.what, seconds(t.later), ms(t.drawing), ms(time.Since(t.later)))
	}
	t.step, t.later = time.Time{}, time.Time{}
}

func seconds(at time.Time) float64 { return float64(at.UnixMicro()) / 1e6 }
func ms(d time.Duration) float64   { return float64(d.Microseconds()) / 1000 }
