// Command bunkwright is the window: bunkwright [job.toml]
package main

import (
	"flag"
	"fmt"
	"os"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"

	"bunkwright/ui"
	"bunkwright/ui/control"
	"bunkwright/ui/session"
)

func main() { os.Exit(run(os.Args[1:])) }

func run(args []string) int {
	f := flag.NewFlagSet("bunkwright", flag.ContinueOnError)
	f.Usage = func() { fmt.Fprintln(f.Output(), "usage: bunkwright [job.toml]") }
	traceTo := f.String("trace", "", "")
	bare := f.Bool("bare", false, "")
	if err := f.Parse(args); err != nil {
		return 2
	}
	if *traceTo != "" {
		out, err := os.Create(*traceTo)
		if err != nil {
			fmt.Fprintln(os.Stderr, err)
			return 2
		}
		defer out.Close()
		control.Traced = control.NewTrace(out)
	}
	a := app.NewWithID("org.bunkwright.planner")
	folder := a.Storage().RootURI().Path()
	w := ui.New(a, session.New(session.Options{Post: fyne.Do, Folder: folder}), folder)
	if f.NArg() > 0 {
		if err := w.Open(f.Arg(0)); err != nil {
			fmt.Fprintln(os.Stderr, err) // the window says it too
		}
	}
	if *bare {
		time.AfterFunc(time.Second, func() { fyne.Do(w.Bare) }) // the window has its size by then
	}
	go tick(w)
	w.ShowAndRun()
	return 0
}

// tick lets the window look after its file every second.
func tick(w *ui.Window) {
	for range time.Tick(time.Second) {
		fyne.Do(w.Tick)
	}
}
