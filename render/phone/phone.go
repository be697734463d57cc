// Package phone answers how an asking sheet becomes one page that a phone opens, fills in and sends without a network.
package phone

import (
	"embed"
	"fmt"
	"html/template"
	"io"

	"bunkwright/furniture/ask"
	"bunkwright/render"
	"bunkwright/render/svg"
)

//go:embed form
var form embed.FS

var pageTemplate = template.Must(template.New("form.html").ParseFS(form, "form/form.html"))

// Write writes the sheet as one HTML file with everything inside. It holds a drawing for each card, in the order of
// sheet.Cards(), one without marks where there is nothing to show. The same sheet gives the same bytes.
//
// The page asks card by card and sends the reply that ask.ReadReply reads. Where no script may run it reads as a list with a
// reply to copy and fill in. It asks for nothing outside itself and forbids itself to (Content-Security-Policy).
func Write(w io.Writer, sheet ask.Sheet, drawings []render.Drawing) error {
	cards := sheet.Cards()
	if len(drawings) != len(cards) {
		return fmt.Errorf("asking sheet: %d drawings for %d cards", len(drawings), len(cards))
	}
	drawn, err := svg.Inline(drawings)
	if err != nil {
		return fmt.Errorf("asking sheet: %w", err)
	}
	return pageTemplate.Execute(w, pageOf(sheet, drawn))
}
