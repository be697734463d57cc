package main

import (
	"os"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

// TestMain lets scripts run the command in this process's binary.
func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){
		"bunkfit": func() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) },
	})
}

// TestScripts runs the command as a person would: testdata/script, one file a subcommand.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir: "testdata/script",
		Setup: func(e *testscript.Env) error {
			return os.CopyFS(e.Getenv("WORK")+"/samples", os.DirFS("../../samples"))
		},
	})
}
