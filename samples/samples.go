// Package samples holds the jobs that come with the program: invented rooms, each with something to learn from.
package samples

import "embed"

// Files holds the job files by name.
//
//go:embed *.toml
var Files embed.FS
