// Package phone answers how an asking sheet becomes one page that a phone opens, fills in and sends without a network.
package phone

import (
	"embed"
	"strings"
)

//go:embed form
var form embed.FS

// readerFiles read a tape's notation in the browser, in the order they build on each other. They follow room/length rule by
// rule; a test compares the two.
var readerFiles = []string{"exact.js", "words.js", "lex.js", "reader.js", "questions.js", "section.js"}

func scripts(names ...string) string {
	var all strings.Builder
	for _, name := range names {
		data, err := form.ReadFile("form/" + name)
		if err != nil {
			panic(err) // embedded above
		}
		all.Write(data)
	}
	return all.String()
}
