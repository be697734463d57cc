package main

import (
	"fmt"
	"io"
	"strings"
	"time"

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

// drawFlags are what the command line asks for.
type drawFlags struct {
	out, view string
	paper     view.PaperSize
	day       time.Time
}

func runDraw(s *session, args []string) (int, error) {
	f := s.flags(drawCommand)
	out := f.String("o", "out", "folder for all drawings, or one file: .png or .svg for one view (the plan where --view names none), .pdf for all sheets")
	name := f.String("view", "", "one view only: plan, room, section, stick, sit-up, wall-AB, bed-front, bed-left, bed-right, bed-above, bed-corner")
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
	return view.Options{Unit: unitOf(file.Job.Unit), W: render.Px(pictureWide), H: render.Px(pictureHigh)}
}

// sheets writes all sheets as one PDF.
func (d drawFlags) sheets(w io.Writer, file *jobfile.File, scene *fit.Scene, answers []fit.Answer) error {
	o := d.sheetOptions(file.Job.Unit)
	return pdf.Write(w, pdf.On(d.pdfPaper(), view.Sheets(scene, answers, o)), pdf.Info{Title: file.Job.Name, Date: d.day})
}

func (d drawFlags) pdfPaper() pdf.Size {
	if d.paper == view.A4 {
		return pdf.A4
	}
	return pdf.Letter
}

func (d drawFlags) sheetOptions(unit string) view.SheetOptions {
	return view.SheetOptions{Paper: d.paper, Unit: unitOf(unit), Date: d.day.Format("January 2, 2006")}
}
