package main

import (
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"bunkwright/furniture/ask"
	"bunkwright/furniture/fit"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/render/pdf"
	"bunkwright/render/phone"
	"bunkwright/render/view"
)

var askCommand = command{
	name:    "ask",
	args:    "JOB.toml [-o FILE.pdf|html|json] [--again KEY,...] [--all] [--table] [--paper letter|a4]",
	summary: "make the sheet that asks for what is still to be measured",
	example: "bunkfit ask samples/half-measured.toml -o sheet.pdf",
}

func init() { askCommand.run = runAsk }

// askFlags are what the command line asks for.
type askFlags struct {
	out   string
	table bool
	paper view.PaperSize
	day   time.Time
}

func runAsk(s *session, args []string) (int, error) {
	f := s.flags(askCommand)
	out := f.String("o", "", "file to write: .pdf to print, .html for a phone, .json; a list to read over the phone is printed where it is not said")
	again := f.String("again", "", "only these readings, once more, separated by commas: wall.AB.length,window.garden.sill")
	all := f.Bool("all", false, "also what is known well enough")
	table := f.Bool("table", false, "a PDF with one table instead of cards")
	paper := f.String("paper", "", "letter or a4; letter in inches, a4 in mm where it is not said")
	date := f.String("date", "", "day to print on the sheets, such as 2027-06-09; today where it is not said")
	words, err := parse(f, args)
	if err != nil {
		return exitUsage, err
	}
	if len(words) != 1 {
		return exitUsage, fmt.Errorf("ask wants one job file\nhint: %s", askCommand.example)
	}
	file, err := open(words[0])
	if err != nil {
		return exitUsage, err
	}
	a := askFlags{out: *out, table: *table}
	if a.paper, err = paperOf(*paper, file.Job.Unit); err != nil {
		return exitUsage, err
	}
	if a.day, err = dayOf(*date); err != nil {
		return exitUsage, err
	}
	sheet, err := askSheet(file, *again, *all)
	if err != nil {
		return exitUsage, err
	}
	return exitSettled, a.run(s, file, sheet)
}

// askSheet makes the sheet; a key to ask again that nobody can be asked for is refused.
func askSheet(file *jobfile.File, again string, all bool) (ask.Sheet, error) {
	o := ask.Options{All: all}
	for key := range strings.SplitSeq(again, ",") {
		if key = strings.TrimSpace(key); key != "" {
			o.Keys = append(o.Keys, key)
		}
	}
	sheet, err := ask.New(&file.Job, o)
	for _, key := range o.Keys {
		asked := func(c ask.Card) bool { return c.Key == key || strings.HasPrefix(c.Key, key+".") }
		if err == nil && !slices.ContainsFunc(sheet.Cards(), asked) {
			err = fmt.Errorf("--again %s: the job has no reading of that name\nhint: such as wall.AB.length; bunkfit answers JOB.toml names those worth taking again", key)
		}
	}
	return sheet, err
}

func (a askFlags) run(s *session, file *jobfile.File, sheet ask.Sheet) error {
	ext := strings.ToLower(filepath.Ext(a.out))
	switch {
	case a.out == "" && a.table:
		return errors.New("--table is for a PDF\nhint: name one with -o sheet.pdf")
	case a.out == "":
		askList(s.out, sheet)
		return nil
	case ext == ".json":
		return written(s, a.out, func(w io.Writer) error { return writeJSON(w, sheet) })
	case ext == ".txt":
		return written(s, a.out, func(w io.Writer) error { _, err := io.WriteString(w, sheet.Form()); return err })
	case ext == ".pdf", ext == ".html":
		return a.drawn(s, file, sheet, ext)
	}
	return fmt.Errorf("%s: a sheet is .pdf, .html, .json or .txt, not %s", a.out, ext)
}

// drawn writes a sheet that has drawings.
func (a askFlags) drawn(s *session, file *jobfile.File, sheet ask.Sheet, ext string) error {
	scene, _, err := fit.Answers(&file.Job)
	if err != nil { // readings so wrong that they give the room no shape are asked for all the same
		scene = &fit.Scene{Job: &file.Job}
	}
	if ext == ".html" {
		return written(s, a.out, func(w io.Writer) error { return phone.Write(w, sheet, cardDrawings(scene, sheet, file)) })
	}
	if len(sheet.Groups) == 0 {
		return errors.New("nothing is left to ask\nhint: --all asks for everything once more")
	}
	return written(s, a.out, func(w io.Writer) error { return a.pages(w, file, scene, sheet) })
}

// cardDrawings are the drawings of a sheet for a screen, in the order of its cards; a card with nothing to show has one without marks.
func cardDrawings(scene *fit.Scene, sheet ask.Sheet, file *jobfile.File) []render.Drawing {
	var out []render.Drawing
	for _, c := range sheet.Cards() {
		out = append(out, view.CardDrawing(scene, c, view.Options{Unit: unitOf(file.Job.Unit)}))
	}
	return out
}

// pages writes the sheet for paper.
func (a askFlags) pages(w io.Writer, file *jobfile.File, scene *fit.Scene, sheet ask.Sheet) error {
	o := view.SheetOptions{Paper: a.paper, Unit: unitOf(file.Job.Unit), Date: a.day.Format("January 2, 2006")}
	pages := view.AskCards
	if a.table {
		pages = view.AskTable
	}
	size := pdf.Letter
	if a.paper == view.A4 {
		size = pdf.A4
	}
	return pdf.Write(w, pdf.On(size, pages(scene, sheet, o)), pdf.Info{Title: file.Job.Name, Date: a.day})
}

// askList prints a sheet as a numbered list that can be read over the phone, and a reply to copy and fill in.
func askList(w io.Writer, sheet ask.Sheet) {
	fmt.Fprintf(w, "%s: sheet %s of job %s\n", sheet.Name, sheet.Version, sheet.Job)
	if len(sheet.Groups) == 0 {
		fmt.Fprintln(w, "\nnothing is left to ask; --all asks for everything once more")
		return
	}
	fmt.Fprintf(w, "\n%s\nHave at hand: %s.\n", wrapped(sheet.Start, 100, ""), strings.Join(sheet.Bring, "; "))
	for _, c := range sheet.Cautions {
		fmt.Fprintln(w, wrapped("caution: "+c, 100, "  "))
	}
	for _, g := range sheet.Groups {
		fmt.Fprintf(w, "\n%s\n", strings.TrimSpace(g.Title+". "+g.Lead))
		for _, c := range g.Cards {
			askLines(w, c)
		}
	}
	fmt.Fprintf(w, "\nCopy from here, fill in, and send back. The second number is read from the other end.\n\n%s", sheet.Form())
}

func askLines(w io.Writer, c ask.Card) {
	fmt.Fprintf(w, "\n%3d. %s\n", c.Number, c.Title)
	line := func(name, words string) {
		if words != "" {
			fmt.Fprintf(w, "     %s\n", wrapped(name+words, 95, "       "))
		}
	}
	line("from ", c.From)
	line("to ", c.To)
	line("hook: ", c.Hook)
	line("other end: ", c.Other)
	if c.Kind != ask.Length {
		line("", c.Ask)
	}
	var labels []string
	for _, word := range c.Words {
		labels = append(labels, word.Label)
	}
	line("one of: ", strings.Join(labels, ", "))
	line("photo, please, tape in the picture: ", c.Photo)
	line("why: ", c.Why)
	line("caution: ", c.Caution)
}
