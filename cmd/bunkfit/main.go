// Command bunkfit does the work of Bunkwright without a window: it checks a job, draws it, lists its parts, and explains what it is
// measured against.
package main

import "os"

func main() {
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}
