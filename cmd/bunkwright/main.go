// Command bunkwright is the window.
package main

import (
	"fmt"
	"os"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"

	"bunkwright/ui"
	"bunkwright/ui/session"
)

func main() { os.Exit(run(os.Args[1:])) }

func run(args []string) int {
	a := app.NewWithID("org.bunkwright.planner")
	w := ui.New(a, session.New(session.Options{Post: fyne.Do, Folder: a.Storage().RootURI().Path()}))
	if len(args) > 0 {
		if err := w.Open(args[0]); err != nil {
			fmt.Fprintln(os.Stderr, err)
		}
	}
	w.ShowAndRun()
	return 0
}
