package phone

import (
	"crypto/sha256"
	"encoding/base64"
	"fmt"
	"image/color"
	"slices"
	"strings"

	"bunkwright/render"
)

// The scripts, in the order they build on each other. The reader follows room/length rule by rule; a test compares the two.
var (
	readerFiles = []string{"exact.js", "words.js", "lex.js", "reader.js", "questions.js", "section.js"}
	pageFiles   = []string{"echo.js", "keep.js", "page.js", "reply.js", "blank.js", "card.js", "end.js", "views.js"}
)

// script is the whole program of the page, closed against anything else on it.
func script() string {
	return "(() => {\n'use strict'\n" + lean(append(slices.Clone(readerFiles), pageFiles...)...) + "begin()\n})()\n"
}

// style is the page's style with the palette's colours by day and by night.
func style() string {
	return ":root{" + inks(render.Light) + "}\n@media (prefers-color-scheme:dark){:root{" + inks(render.Dark) + "}}\n" + lean("form.css")
}

// inks are the colours of a palette as variables of a style.
func inks(p render.Palette) string {
	var all strings.Builder
	for i := render.InkMain; i.String() != "unknown"; i++ {
		fmt.Fprintf(&all, "--%s:%s;", i, hex(p.Color(i)))
	}
	return all.String()
}

func hex(c color.RGBA) string { return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B) }

// policy allows this script and this style and nothing else: no network, no pictures from elsewhere, nothing that a name could
// bring in.
func policy(style, script string) string {
	return fmt.Sprintf("default-src 'none'; style-src %s; script-src %s; base-uri 'none'; form-action 'none'", digest(style), digest(script))
}

func digest(text string) string {
	sum := sha256.Sum256([]byte(text))
	return "'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"
}
