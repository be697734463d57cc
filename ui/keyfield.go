package ui

import (
	"errors"
	"regexp"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room/length"
	"bunkwright/ui/control"
)

// keyField is a field of one key of the job: what is typed is read by the rules of the file, and setting it is one edit named after label.
func (w *Window) keyField(key, label string) *control.Field {
	f := control.NewField(
		func() string { return w.shown(key) },
		func(text string) error { return w.setKey(key, label, text) },
	)
	f.Says = func() string { return label + keyWords(key) }
	w.live.watch(f.Follow)
	return f
}

// lengthField is a keyField that echoes the length it understood.
func (w *Window) lengthField(key, label string) *control.Field {
	f := w.keyField(key, label)
	f.Echo = func(text string) (string, bool) { return w.echo(text) }
	return f
}

func (w *Window) shown(key string) string {
	if j := w.session.Job(); j != nil {
		return jobfile.Shown(j, key)
	}
	return ""
}

// setKey makes a typed text an edit. What cannot be taken is said in a line.
func (w *Window) setKey(key, label, text string) error {
	return plain(w.session.Do("Set "+label, "", func(j *job.Job) (*job.Job, error) {
		return jobfile.Set(j, jobfile.Change{Key: key, Text: text})
	}))
}

// inFile finds how a value is written in a file, such as mattress_thick = "6 in", which is no way to write it in a field.
var inFile = regexp.MustCompile(`\b[a-z_]+ = ("?)([^"]*)("?)`)

// plain is an error as a field shows it: what is there and what would be right, without file, line and key.
func plain(err error) error {
	var read *jobfile.ReadError
	if errors.As(err, &read) && len(read.Complaints) > 0 {
		c := read.Complaints[0]
		if c.Want != "" {
			return errors.New(c.Have + "; " + inFile.ReplaceAllString(c.Want, "$2"))
		}
		return errors.New(c.Have)
	}
	return err
}

// echo says what a text in tape notation means.
func (w *Window) echo(text string) (words string, good bool) {
	if text == "" {
		return "", true
	}
	unit := w.live.unit()
	switch got := length.Read(text, length.Context{Unit: unit}); got.Outcome {
	case length.Value:
		return "= " + jobfile.ShownLength(got.Value, unit), true
	case length.Ask:
		return got.Question, false
	default:
		return got.Reason, false
	}
}

// keyWords are the meaning of a key, for the status line.
func keyWords(key string) string {
	if row, ok := jobfile.Find(key); ok {
		return ": " + row.Meaning
	}
	return ""
}
