package phone

import (
	"crypto/sha256"
	"encoding/base64"
	"fmt"
	"html/template"
	"image/color"
	"slices"
	"strings"

	"bunkwright/render"
)

// page is what the template shows.
type page struct {
	Title   string
	Heading string
	Intro   []string
	Cards   []cardPage
	Blank   string // the reply to copy and fill in by hand
	Policy  string
	Style   template.CSS
	Script  template.JS
	Sheet   sheetData
}

// cardPage is a card as it stands on the page before the script gives it its blanks.
type cardPage struct {
	ID, Title  string
	Drawing    template.HTML
	Lines      []line
	Why, Photo string
}

// line is a name and what it says: From, the plaster in corner A.
type line struct{ Name, Words string }

// sheetData is what the script knows.
type sheetData struct {
	ID    string     `json:"id"`
	Title string     `json:"title"`
	Unit  string     `json:"unit"`
	Cards []cardData `json:"cards"`
}

type cardData struct {
	ID     string  `json:"id"`
	Title  string  `json:"title"`
	Group  string  `json:"group"`
	Where  string  `json:"where"`
	Field  string  `json:"field"`
	Photo  bool    `json:"photo"`
	Blanks []blank `json:"blanks"`
}

// blank is one field of a card.
type blank struct {
	Label string `json:"label"`
	Hint  string `json:"hint"`
}

// script is the whole program of the page, closed against anything else on it.
func script() string {
	return "(() => {\n'use strict'\n" + lean(append(slices.Clone(readerFiles), pageFiles...)...) + "begin()\n})()\n"
}

// style is the page's style with the palette's colours by day and by night.
func style() string {
	return ":root{" + inkVariables(render.Light) + "}\n@media (prefers-color-scheme:dark){:root{" + inkVariables(render.Dark) + "}}\n" +
		inkClasses() + lean("form.css")
}

func inks() []render.Ink {
	var list []render.Ink
	for i := render.InkMain; i.String() != "unknown"; i++ {
		list = append(list, i)
	}
	return list
}

func inkVariables(p render.Palette) string {
	var all strings.Builder
	for _, i := range inks() {
		fmt.Fprintf(&all, "--%s:%s;", i, hex(p.Color(i)))
	}
	return all.String()
}

func inkClasses() string {
	var all strings.Builder
	for _, i := range inks() {
		fmt.Fprintf(&all, ".fill-%s{fill:var(--%[1]s)}.stroke-%[1]s{stroke:var(--%[1]s)}\n", i)
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
