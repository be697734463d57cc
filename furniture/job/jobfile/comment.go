package jobfile

import (
	"maps"
	"slices"
	"strings"
	"unicode/utf8"

	"bunkwright/furniture/job"
)

// comment is the lines of a comment without their sign.
type comment []string

func (c comment) add(lines ...string) comment { return append(c, lines...) }
func (c comment) String() string              { return strings.Join(c, "\n") }

// uncomment takes the sign and the blank behind it off a comment.
func uncomment(text string) string {
	text = strings.TrimRight(strings.TrimPrefix(text, "#"), " \t\r")
	return strings.TrimPrefix(text, " ")
}

// commentLine puts the sign before a line; what cannot stand in a file becomes a blank.
func commentLine(line string) string {
	line = strings.Map(func(r rune) rune {
		if control(r) {
			return ' '
		}
		return r
	}, strings.ToValidUTF8(line, string(utf8.RuneError)))
	return strings.TrimRight("# "+line, " \t")
}

// gather takes the comments of a node and of everything in it, in the order in which they stand.
func gather(n *node) comment {
	if n == nil {
		return nil
	}
	out := n.comment
	n.comment = nil
	for _, c := range n.order {
		out = out.add(gather(c)...)
	}
	for _, e := range n.list {
		out = out.add(gather(e)...)
	}
	return out
}

// comments hands the comments of the text to the job. Each stands with the key that it will be written before.
func (d *decoder) comments() {
	d.said[""] = d.said[""].add(d.tail...)
	d.job.Comments = map[string]string{}
	for key, lines := range d.said {
		d.job.Comments[key] = lines.String()
	}
	d.job.Comments = settled(d.job)
}

// settled returns the comments of a job by the keys that are written: those of a key that is not, because it was taken out or has its
// default, go to the table it would stand in, or to the end of the file.
func settled(j *job.Job) map[string]string {
	w := newWriter(j)
	w.whole(j)
	var out map[string]string
	for _, key := range slices.Sorted(maps.Keys(j.Comments)) {
		text, to := j.Comments[key], key
		if text == "" {
			continue
		}
		if out == nil {
			out = map[string]string{}
		}
		for to != "" && !w.keys[to] {
			to = to[:max(0, strings.LastIndexByte(to, '.'))]
		}
		if before, there := out[to]; there && to != key {
			text = before + "\n" + text
		} else if there {
			text = text + "\n" + before
		}
		out[to] = text
	}
	return out
}
