package main

import (
	"fmt"

	"bunkwright/furniture/fit"
	"bunkwright/room/length"
)

var checkCommand = command{
	name:    "check",
	args:    "JOB.toml [--json] [--all]",
	summary: "answer every question about the bed in the room",
	example: "bunkfit check samples/town-house.toml",
}

func init() { checkCommand.run = runCheck }

func runCheck(s *session, args []string) (int, error) {
	f := s.flags(checkCommand)
	asJSON := f.Bool("json", false, "print all that is known of every answer as JSON")
	all := f.Bool("all", false, "list every line that each answer is measured against")
	words, err := parse(f, args)
	if err != nil {
		return exitUsage, err
	}
	if len(words) != 1 {
		return exitUsage, fmt.Errorf("check wants one job file\nhint: %s", checkCommand.example)
	}
	file, err := open(words[0])
	if err != nil {
		return exitUsage, err
	}
	scene, answers, err := fit.Answers(&file.Job)
	if err != nil {
		return exitUsage, err
	}
	code := exitSettled
	if !fit.Settled(answers) {
		code = exitOpen
	}
	if *asJSON {
		return code, writeJSON(s.out, checkJSON(file, scene, answers))
	}
	report{s, unitOf(file.Job.Unit), *all, &file.Job, scene}.print(file, scene, answers)
	return code, nil
}

func unitOf(name string) length.Unit {
	if name == "mm" {
		return length.Millimetres
	}
	return length.Inches
}
