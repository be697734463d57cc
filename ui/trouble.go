package ui

import (
	"errors"
	"fmt"
	"strings"

	"bunkwright/furniture/job/jobfile"
)

// trouble says in words what could not be done and why.
func (w *Window) trouble(what string, err error) {
	w.banner.say(notice{"trouble", what + ": " + strings.ReplaceAll(err.Error(), "\n", "; "), nil})
}

// cannotOpen lists everything in a file that cannot be read, each with its line and what would be right. The job that was open stays.
func (w *Window) cannotOpen(path string, err error) {
	var read *jobfile.ReadError
	if !errors.As(err, &read) || len(read.Complaints) < 2 {
		w.trouble("Not opened", err)
		return
	}
	var lines []string
	for _, c := range read.Complaints {
		lines = append(lines, strings.TrimPrefix(c.In(""), ":"))
	}
	title := fmt.Sprintf("%d things in %s cannot be read", len(lines), path)
	w.list(title, lines, nil)
}

// problems lists what the job says that cannot be, and jumps to what is chosen.
func (w *Window) problems() {
	s := w.live.scene
	if s == nil {
		return
	}
	var lines, keys []string
	for _, p := range s.Problems() {
		line := p.Key + ": " + p.Text + "; " + p.Right
		if n := w.session.Line(p.Key); n > 0 {
			line = fmt.Sprintf("line %d: %s", n, line)
		}
		lines, keys = append(lines, line), append(keys, p.Key)
	}
	if len(lines) == 0 {
		lines, keys = []string{"Nothing in this job contradicts itself."}, []string{""}
	}
	w.list("What cannot be as it is", lines, func(i int) { w.jump(keys[i]) })
}

// jump goes to the field of a key, in the stage that has it.
func (w *Window) jump(key string) {
	s := roomStage
	if table, _, _ := strings.Cut(key, "."); table == "bed" {
		s = bedStage
	} else if table == "place" {
		s = placingStage
	}
	w.show(s)
	if j, ok := w.jumps[s]; ok {
		j(key)
	}
}
