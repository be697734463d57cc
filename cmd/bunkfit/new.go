package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"strings"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/furniture/yardstick"
	"bunkwright/room/length"
)

var newCommand = command{
	name:    "new",
	args:    "A-TO-B B-TO-C [CEILING] [--unit in|mm] [--place US] [--name NAME] [-o FILE]",
	summary: "begin a job from the size of a room",
	example: `bunkfit new "11 ft 6 in" "9 ft 10 in" "8 ft" --place US -o room.toml`,
}

func init() { newCommand.run = runNew }

func runNew(s *session, args []string) (int, error) {
	f := s.flags(newCommand)
	unit := f.String("unit", "in", "unit of the job: in or mm")
	places := f.String("place", "US", "places it is measured against, separated by commas: US, EU, FR, UK, CA, AU, NZ")
	name := f.String("name", "A bunk bed", "name of the job")
	out := f.String("o", "", "file to write; a file that exists is not overwritten")
	words, err := parse(f, args)
	if err != nil {
		return exitUsage, err
	}
	start, err := startOf(words, *unit, *places, *name)
	if err != nil {
		return exitUsage, err
	}
	data := jobfile.Encode(ptr(job.New(start)))
	if *out == "" {
		_, err = s.out.Write(data)
		return exitSettled, err
	}
	if err := writeNew(*out, data); err != nil {
		return exitUsage, err
	}
	fmt.Fprintf(s.out, "wrote %s\nnext: bunkfit check %s\n", *out, *out)
	return exitSettled, nil
}

func ptr[T any](v T) *T { return &v }

func startOf(words []string, unit, places, name string) (job.Start, error) {
	s := job.Start{Name: name, Places: strings.Split(places, ",")}
	var err error
	if s.Unit, err = length.ParseUnit(unit); err != nil {
		return s, err
	}
	if len(words) < 2 || len(words) > 3 {
		return s, fmt.Errorf("new wants two walls of a rectangular room, and its height where that is known\nhint: %s", newCommand.example)
	}
	for _, p := range s.Places {
		if _, err := yardstick.ParsePlace(p); err != nil {
			return s, err
		}
	}
	fields := []length.Field{length.WallLength, length.WallLength, length.RoomHeight}
	into := []*length.Length{&s.AB, &s.BC, &s.Ceiling}
	for i, w := range words {
		if *into[i], err = length.Parse(w, length.Context{Unit: s.Unit, Field: fields[i]}); err != nil {
			return s, err
		}
	}
	return s, nil
}

// writeNew writes a file that does not exist yet, whole or not at all.
func writeNew(name string, data []byte) error {
	f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	switch {
	case errors.Is(err, fs.ErrExist):
		return fmt.Errorf("%s: exists already and is not overwritten\nhint: choose another name with -o", name)
	case err != nil:
		return unwritten(name, err)
	}
	_, err = f.Write(data)
	if closing := f.Close(); err == nil {
		err = closing
	}
	if err != nil {
		os.Remove(name)
		return unwritten(name, err)
	}
	return nil
}
