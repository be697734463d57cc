package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"slices"
	"strings"
)

// Exit codes of every subcommand.
const (
	exitSettled = 0 // nothing is left open
	exitOpen    = 1 // at least one answer does not fit, cannot be told yet or is too close to call
	exitUsage   = 2 // usage, or a file that cannot be read
)

// errUsage says that the command line was wrong; the flag package has already said how.
var errUsage = errors.New("usage")

// command is one subcommand.
type command struct {
	name    string
	args    string
	summary string
	example string
	run     func(*session, []string) (int, error)
}

// session is what a subcommand works with.
type session struct {
	in     io.Reader
	out    *printed
	err    io.Writer
	colour bool
}

// commands lists the subcommands in the order of the help.
func commands() []command {
	return []command{checkCommand, askCommand, answersCommand, drawCommand, partsCommand, newCommand, explainCommand, lengthCommand, solveCommand, measureCommand, placeCommand, mendCommand, compareCommand}
}

// run executes one command line and returns the exit code.
func run(args []string, in io.Reader, out, errOut io.Writer) int {
	s := &session{in: in, out: &printed{w: out}, err: errOut, colour: terminal(out)}
	if len(args) == 0 {
		help(errOut)
		return exitUsage
	}
	if args[0] == "help" || args[0] == "-h" || args[0] == "--help" {
		help(s.out)
		return s.finish(exitSettled, nil)
	}
	for _, c := range commands() {
		if c.name == args[0] {
			return s.finish(c.run(s, args[1:]))
		}
	}
	fmt.Fprintf(errOut, "bunkfit: there is no subcommand %q\n%s", args[0], hint(nearest(args[0], names())))
	return exitUsage
}

func (s *session) finish(code int, err error) int {
	switch {
	case s.out.err != nil:
		err = fmt.Errorf("what is printed does not arrive: %w", cause(s.out.err))
	case err == nil:
		return code
	case errors.Is(err, flag.ErrHelp):
		return exitSettled
	case errors.Is(err, errUsage):
		return exitUsage
	}
	fmt.Fprintf(s.err, "bunkfit: %v\n", err)
	return exitUsage
}

func help(w io.Writer) {
	fmt.Fprint(w, "bunkfit checks and draws a bunk bed in a room, from a job file, without a window.\n\n")
	for _, c := range commands() {
		fmt.Fprintf(w, "  bunkfit %-8s %-34s %s\n", c.name, c.args, c.summary)
	}
	fmt.Fprint(w, "\nEach subcommand has --help with an example. Exit 0: nothing is left open. 1: something is. 2: usage, or a file that cannot be read.\n")
}

func names() []string {
	var out []string
	for _, c := range commands() {
		out = append(out, c.name)
	}
	return out
}

// flags makes the flag set of a subcommand; its help shows the example.
func (s *session) flags(c command) *flag.FlagSet {
	f := flag.NewFlagSet("bunkfit "+c.name, flag.ContinueOnError)
	f.SetOutput(s.err)
	f.Usage = func() {
		fmt.Fprintf(s.out, "bunkfit %s %s\n%s\n", c.name, c.args, c.summary)
		f.SetOutput(s.out)
		f.PrintDefaults()
		f.SetOutput(s.err)
		fmt.Fprintf(s.out, "\nfor example\n  %s\n", c.example)
	}
	return f
}

// parse reads flags that may stand before or after the words, and returns the words.
func parse(f *flag.FlagSet, args []string) ([]string, error) {
	var words []string
	for len(args) > 0 {
		flags, rest := args, []string(nil)
		if i := slices.IndexFunc(args, dashedWord); i >= 0 {
			flags, rest = args[:i], args[i:]
		}
		if err := f.Parse(flags); err != nil {
			if errors.Is(err, flag.ErrHelp) {
				return nil, err
			}
			return nil, errUsage
		}
		args = slices.Concat(f.Args(), rest)
		if len(args) > 0 {
			words, args = append(words, args[0]), args[1:]
		}
	}
	return words, nil
}

// dashedWord tells whether an argument is a word in spite of its dash: no flag starts with a figure, a negative length does.
func dashedWord(arg string) bool {
	after, dashed := strings.CutPrefix(arg, "-")
	return dashed && strings.IndexAny(after, "0123456789. ") == 0
}

// terminal tells whether a person reads the output as it comes; colour is only for them.
func terminal(w io.Writer) bool {
	f, ok := w.(*os.File)
	if !ok || os.Getenv("NO_COLOR") != "" || os.Getenv("TERM") == "dumb" {
		return false
	}
	info, err := f.Stat()
	return err == nil && info.Mode()&os.ModeCharDevice != 0
}
