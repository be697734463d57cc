package ask

import (
	"fmt"
	"hash/fnv"
	"strconv"

	"bunkwright/furniture/job"
)

// jobNumber tells jobs apart in a reply: six figures made of the name, short enough to be read over the phone.
func jobNumber(j *job.Job) string { return figures(900000, 100000, j.Name) }

// version tells sheets of one job apart: four figures made of the corners and the cards, so that a number on an older sheet is not taken
// for one on this.
func version(j *job.Job, s *Sheet) string {
	parts := []string{j.Room.Outline}
	for _, c := range s.Cards() {
		parts = append(parts, c.Key)
	}
	return figures(9000, 1000, parts...)
}

// figures makes a number from texts.
func figures(many, from uint64, texts ...string) string {
	h := fnv.New64a()
	for _, t := range texts {
		fmt.Fprintf(h, "%d:%s", len(t), t)
	}
	return strconv.FormatUint(from+h.Sum64()%many, 10)
}

func numbered(key string, n int) string { return key + "." + strconv.Itoa(n) }
