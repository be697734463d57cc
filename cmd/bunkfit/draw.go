package main

import (
	"fmt"
	"io"
	"strings"
	"time"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/fit"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/render/pdf"
	"bunkwright/render/view"
)

var drawCommand = command{
	name:    "draw",
	args:    "JOB.toml [-o FOLDER | FILE.png|svg|pdf] [--view NAME] [--paper letter|a4] [--date DAY]",
	summary: "draw the room, the bed and the sheets",
	example: "bunkfit draw samples/town-house.toml -o out",
}

func init() { drawCommand.run = runDraw }

// picture is the size of a drawing for a screen, in px.
const (
	pictureWide = 1200
	pictureHigh = 800
)

// drawing is one view by its name.
type drawing struct {
	name string
	draw func(view.Options) render.Drawing
}

// drawings lists the views of a job: walls and ends by name.
func drawings(s *fit.Scene, answers []fit.Answer) []drawing {
	out := []drawing{
		{"plan", func(o view.Options) render.Drawing { return view.Plan(s, answers, o) }},
		{"section", func(o view.Options) render.Drawing { return view.Section(s, answers, o) }},
		{"stick", func(o view.Options) render.Drawing { return view.Stick(s, answers, o) }},
	}
	for i := range s.Walls {
		key := s.Walls[i].Key
		out = append(out, drawing{"wall-" + key, func(o view.Options) render.Drawing { return view.Wall(s, answers, key, o) }})
	}
	return append(out, bedDrawings(s)...)
}

// bedDrawings lists the views of the bed alone; where it cannot be built they say why.
func bedDrawings(s *fit.Scene) []drawing {
	of := func(name, title string, draw func(*bunk.Bed, view.Options) render.Drawing) drawing {
		return drawing{name, func(o view.Options) render.Drawing {
			if s.Bed == nil {
				return view.NoBed(s, title, o)
			}
			return draw(s.Bed, o)
		}}
	}
	end := func(e bunk.End) func(*bunk.Bed, view.Options) render.Drawing {
		return func(b *bunk.Bed, o view.Options) render.Drawing { return view.BedEnd(b, e, o) }
	}
	return []drawing{
		of("bed-front", "Bed from the front", view.BedFront),
		of("bed-left", "Bed from the left end", end(bunk.Left)),
		of("bed-right", "Bed from the right end", end(bunk.Right)),
		of("bed-above", "Bed from above", view.BedAbove),
	}
}

// drawFlags are what the command line asks for.
type drawFlags struct {
	out, view string
	paper     view.PaperSize
	day       time.Time
}

func runDraw(s *session, args []string) (int, error) {
	f := s.flags(drawCommand)
	out := f.String("o", "out", "folder for all drawings, or one file: .png or .svg for one view (the plan where --view names none), .pdf for all sheets")
	name := f.String("view", "", "one view only: plan, section, stick, wall-AB, bed-front, bed-left, bed-right, bed-above")
	paper := f.String("paper", "", "letter or a4; letter in inches, a4 in mm where it is not said")
	date := f.String("date", "", "day to print on the sheets, such as 2027-06-09; today where it is not said")
	words, err := parse(f, args)
	if err != nil {
		return exitUsage, err
	}
	if len(words) != 1 {
		return exitUsage, fmt.Errorf("draw wants one job file\nhint: %s", drawCommand.example)
	}
	file, err := open(words[0])
	if err != nil {
		return exitUsage, err
	}
	d := drawFlags{out: *out, view: *name}
	if d.paper, err = paperOf(*paper, file.Job.Unit); err != nil {
		return exitUsage, err
	}
	if d.day, err = dayOf(*date); err != nil {
		return exitUsage, err
	}
	scene, answers, err := fit.Answers(&file.Job)
	if err != nil {
		return exitUsage, err
	}
	return exitSettled, d.run(s, file, scene, answers)
}

func paperOf(name, unit string) (view.PaperSize, error) {
	switch {
	case strings.EqualFold(name, "a4"), name == "" && unit == "mm":
		return view.A4, nil
	case strings.EqualFold(name, "letter"), name == "":
		return view.Letter, nil
	}
	return view.Letter, fmt.Errorf("paper %q: want letter or a4", name)
}

func dayOf(text string) (time.Time, error) {
	if text == "" {
		return time.Now(), nil
	}
	day, err := time.Parse(time.DateOnly, text)
	if err != nil {
		return day, fmt.Errorf("date %q: want a day such as 2027-06-09", text)
	}
	return day, nil
}

// screen are the options of a picture for a screen.
func screen(file *jobfile.File) view.Options {
	return view.Options{Mirror: file.Job.Place.Mirror, Unit: unitOf(file.Job.Unit), W: render.Px(pictureWide), H: render.Px(pictureHigh)}
}

// sheets writes all sheets as one PDF.
func (d drawFlags) sheets(w io.Writer, file *jobfile.File, scene *fit.Scene, answers []fit.Answer) error {
	size := pdf.Letter
	if d.paper == view.A4 {
		size = pdf.A4
	}
	o := view.SheetOptions{Paper: d.paper, Unit: unitOf(file.Job.Unit), Date: d.day.Format("January 2, 2006")}
	var pages []pdf.Page
	for _, sh := range view.Sheets(scene, answers, o) {
		page := sh.Drawing.Substituted()
		page.Title = sh.Title
		pages = append(pages, pdf.Page{Drawing: page, Size: size, Landscape: page.W > page.H})
	}
	return pdf.Write(w, pages, pdf.Info{Title: file.Job.Name, Date: d.day})
}
