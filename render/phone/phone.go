// Package phone answers how an asking sheet becomes one page that a phone opens, fills in and sends without a network.
package phone

import (
	"embed"
	"html/template"
	"strings"
)

//go:embed form
var form embed.FS

var pageTemplate = template.Must(template.New("form.html").ParseFS(form, "form/form.html"))

// The scripts, in the order they build on each other. The reader follows room/length rule by rule; a test compares the two.
var (
	readerFiles = []string{"exact.js", "words.js", "lex.js", "reader.js", "questions.js", "section.js"}
	pageFiles   = []string{"echo.js", "keep.js", "page.js", "card.js", "reply.js", "end.js", "views.js"}
)

// lean returns the embedded files as one text, without their comment lines and their indents: a phone does not read them.
func lean(names ...string) string {
	var all strings.Builder
	for _, name := range names {
		data, err := form.ReadFile("form/" + name)
		if err != nil {
			panic(err) // embedded above
		}
		for line := range strings.Lines(string(data)) {
			line = strings.TrimSpace(line)
			if line != "" && !strings.HasPrefix(line, "//") && !strings.HasPrefix(line, "/*") {
				all.WriteString(line + "\n")
			}
		}
	}
	return all.String()
}
