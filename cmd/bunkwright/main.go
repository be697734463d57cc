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
	"bunkwright/ui/session"
)

func main() { os.Exit(run(os.Args[1:])) }

func run(args []string) int {
	f := flag.NewFlagSet("bunkwright", flag.ContinueOnError)
	f.Usage = func() { fmt.Fprintln(f.Output(), "usage: bunkwright [job.toml]") }
	if err := f.Parse(args); err != nil {
		return 2
	}
	a := app.NewWithID("org.bunkwright.planner")
	folder := a.Storage().RootURI().Path()
	w := ui.New(a, session.New(session.Options{Post: fyne.Do, Folder: folder}), folder)
	if f.NArg() > 0 {
		if err := w.Open(f.Arg(0)); err != nil {
			fmt.Fprintln(os.Stderr, err) // the window says it too
		}
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
