package phone

import (
	"fmt"
	"hash/fnv"
	"html/template"
	"strconv"
	"strings"
	"unicode/utf8"

	"bunkwright/furniture/ask"
	"bunkwright/render/svg"
	"bunkwright/room/length"
)

// page is what the template shows.
type page struct {
	ask.Sheet
	Heading string
	Bring   string
	Count   int
	Groups  []group
	Blank   string // the reply to copy and fill in by hand
	Policy  string
	Style   template.CSS
	Script  template.JS
	Defs    template.HTML
	Data    sheetData
}

type group struct {
	Title, Lead string
	Cards       []card
}

// card is a card as it stands on the page before the script gives it its blanks.
type card struct {
	ask.Card
	Drawing template.HTML
	Usual   bool   // asks what the tape says, as most do
	Choices string // what may be answered, for who reads the list
}

// sheetData is what the script knows beside what stands on the page.
type sheetData struct {
	ID      string     `json:"id"` // what is kept on the phone is kept for these very cards
	Job     string     `json:"job"`
	Version string     `json:"version"`
	Name    string     `json:"name"`
	Unit    string     `json:"unit"`
	Cards   []cardData `json:"cards"`
}

type cardData struct {
	Number int          `json:"n"`
	Key    string       `json:"key"`
	Kind   ask.Kind     `json:"kind,omitempty"`  // "" for a length
	Field  length.Field `json:"field,omitempty"` // "" for any length
	Words  [][2]string  `json:"words,omitempty"` // value and label
}

func pageOf(sheet ask.Sheet, drawn svg.Inlined) page {
	style, program := style()+drawn.Style, script()
	p := page{
		Sheet: sheet, Heading: "Measuring the room", Bring: upper(strings.Join(sheet.Bring, "; ")), Count: len(sheet.Cards()), Blank: sheet.Form(),
		Policy: policy(style, program), Style: template.CSS(style), Script: template.JS(program), Defs: template.HTML(drawn.Defs),
		Data: sheetData{ID: idOf(sheet), Job: sheet.Job, Version: sheet.Version, Name: sheet.Name, Unit: sheet.Unit, Cards: []cardData{}},
	}
	if sheet.Again {
		p.Heading = "A few readings once more"
	}
	for _, g := range sheet.Groups {
		shown := group{Title: g.Title, Lead: g.Lead}
		for _, c := range g.Cards {
			drawing := template.HTML(drawn.Parts[len(p.Data.Cards)])
			shown.Cards = append(shown.Cards, card{c, drawing, c.Kind == ask.Length && c.Ask == usual, choices(c)})
			p.Data.Cards = append(p.Data.Cards, dataOf(c))
		}
		p.Groups = append(p.Groups, shown)
	}
	return p
}

// usual is what most cards ask. The page's script says it in its own words.
const usual = "What does the tape say?"

func dataOf(c ask.Card) cardData {
	d := cardData{Number: c.Number, Key: c.Key, Kind: c.Kind, Field: c.Field}
	if c.Kind == ask.Length {
		d.Kind = ""
	}
	for _, w := range c.Words {
		d.Words = append(d.Words, [2]string{w.Value, w.Label})
	}
	return d
}

// idOf tells sheets apart, one that asks again from the one before it too: that one starts empty.
func idOf(sheet ask.Sheet) string {
	h := fnv.New64a()
	fmt.Fprint(h, sheet.Job, sheet.Version, sheet.Again)
	for _, c := range sheet.Cards() {
		fmt.Fprint(h, " ", c.Key)
	}
	return strconv.FormatUint(h.Sum64(), 36)
}

// choices lists what a card may be answered with.
func choices(c ask.Card) string {
	var labels []string
	for _, w := range c.Words {
		labels = append(labels, w.Label)
	}
	if c.Kind == ask.YesNo {
		labels = []string{"yes", "no"}
	}
	return strings.Join(labels, ", ")
}

// upper makes a sentence of words: its first letter large.
func upper(words string) string {
	_, n := utf8.DecodeRuneInString(words)
	return strings.ToUpper(words[:n]) + words[n:]
}
