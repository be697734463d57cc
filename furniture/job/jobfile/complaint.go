package jobfile

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strings"
)

// Reasons why a file is not read at all, to compare with errors.Is.
var (
	ErrNewerFormat = errors.New("a newer format")
	ErrTooLarge    = errors.New("too large")
)

// A Complaint is one thing in a file that cannot be read: what is there, and what would be right.
type Complaint struct {
	Line int    // 1 is the first; 0 for the file as a whole
	Key  string // "wall.AB.length"; "" where there is none
	Have string
	Want string
}

// In writes the complaint behind the name of its file: "attic.toml:12: wall.AB.length: the number 67; a text, such as ...".
func (c Complaint) In(file string) string {
	parts := []string{file}
	if c.Line > 0 {
		parts[0] = fmt.Sprintf("%s:%d", file, c.Line)
	}
	if c.Key != "" {
		parts = append(parts, clip(c.Key))
	}
	text := c.Have
	if c.Want != "" {
		text += "; " + c.Want
	}
	return strings.Join(append(parts, text), ": ")
}

// A ReadError lists everything in a file that cannot be read, in the order of the file.
type ReadError struct {
	Name       string // of the file
	Complaints []Complaint
	Err        error // ErrNewerFormat, ErrTooLarge or what the system said; nil for complaints about the text
}

// mostPrinted bounds what is printed of a file that is nothing but complaints.
const mostPrinted = 200

func (e *ReadError) Error() string {
	var lines []string
	for _, c := range e.Complaints[:min(len(e.Complaints), mostPrinted)] {
		lines = append(lines, c.In(e.Name))
	}
	if more := len(e.Complaints) - mostPrinted; more > 0 {
		lines = append(lines, fmt.Sprintf("%s: and %d more", e.Name, more))
	}
	return strings.Join(lines, "\n")
}

func (e *ReadError) Unwrap() error { return e.Err }

// inOrder sorts complaints as the file runs; those of one line by key.
func inOrder(cs []Complaint) {
	slices.SortStableFunc(cs, func(a, b Complaint) int {
		return cmp.Or(a.Line-b.Line, strings.Compare(a.Key, b.Key))
	})
}
