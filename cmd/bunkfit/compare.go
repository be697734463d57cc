package main

import (
	"cmp"
	"context"
	"fmt"
	"io"
	"os"
	"os/signal"
	"path/filepath"
	"strings"
	"unicode/utf8"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/furniture/place"
	"bunkwright/render/pdf"
	"bunkwright/render/view"
	"bunkwright/room/length"
)

var compareCommand = command{
	name:    "compare",
	args:    "JOB.toml [OTHER.toml ...] [--json | -o FILE.pdf] [--all]",
	summary: "set the other ways of a job, or other jobs, side by side",
	example: "bunkfit compare samples/town-house.toml samples/basement.toml",
}

func init() { compareCommand.run = runCompare }

// asItIs is the name of the job beside its other ways.
const asItIs = "as it is"

func runCompare(s *session, args []string) (int, error) {
	f := s.flags(compareCommand)
	asJSON := f.Bool("json", false, "print the table as JSON")
	all := f.Bool("all", false, "list answers that do not differ too")
	out := f.String("o", "", "write the table as a sheet to this PDF")
	paper := f.String("paper", "", "letter or a4; letter in inches, a4 in mm where it is not said")
	date := f.String("date", "", "day to print on the sheet, such as 2027-06-09; today where it is not said")
	words, err := parse(f, args)
	if err != nil {
		return exitUsage, err
	}
	if len(words) < 1 {
		return exitUsage, fmt.Errorf("compare wants a job file\nhint: %s", compareCommand.example)
	}
	ways, unit, err := waysOf(words)
	if err != nil {
		return exitUsage, err
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	c, err := place.Compare(ctx, ways)
	if err != nil {
		return exitUsage, err
	}
	switch {
	case *out != "":
		return exitSettled, waysSheet(s, *out, *paper, *date, ways[0].Job, &c)
	case *asJSON:
		return exitSettled, writeJSON(s.out, comparisonJSON(&c))
	}
	comparison{report{s: s, unit: unit, all: *all, job: ways[0].Job}}.print(&c)
	return exitSettled, nil
}

// waysSheet writes the comparison as a PDF.
func waysSheet(s *session, name, paper, date string, j *job.Job, c *place.Comparison) error {
	if kind, err := kindOf(name); err != nil || kind != ".pdf" {
		return cmp.Or(err, fmt.Errorf("%s: a comparison is written as a .pdf", name))
	}
	d := drawFlags{out: name}
	var err error
	if d.paper, err = paperOf(paper, j.Unit); err != nil {
		return err
	}
	if d.day, err = dayOf(date); err != nil {
		return err
	}
	scene, answers, err := fit.Answers(j)
	if err != nil {
		return err
	}
	return written(s, name, func(w io.Writer) error { return d.ways(w, j, scene, answers, c) })
}

func (d drawFlags) ways(w io.Writer, j *job.Job, scene *fit.Scene, answers []fit.Answer, c *place.Comparison) error {
	return pdf.Write(w, pdf.On(d.pdfPaper(), view.WaysSheets(scene, answers, c, d.sheetOptions(j.Unit))), pdf.Info{Title: j.Name, Date: d.day})
}

// waysOf lists the job of the first file with its other ways, and the jobs of the other files.
func waysOf(files []string) (out []place.Named, unit length.Unit, err error) {
	for i, name := range files {
		file, err := open(name)
		if err != nil {
			return nil, unit, err
		}
		if i > 0 {
			out = append(out, place.Named{Name: strings.TrimSuffix(filepath.Base(name), ".toml"), Job: &file.Job})
			continue
		}
		unit = unitOf(file.Job.Unit)
		out = append(out, place.Named{Name: asItIs, Job: &file.Job})
		ways, err := jobfile.Ways(&file.Job)
		if err != nil {
			return nil, unit, fmt.Errorf("%s: %w", name, err)
		}
		for _, w := range ways {
			out = append(out, place.Named{Name: w.Name, Job: w.Job})
		}
	}
	if len(out) < 2 {
		return nil, unit, fmt.Errorf("%s holds no other way to compare with\nhint: add [[another]] to it (bunkfit explain another), or name a second job", files[0])
	}
	return out, unit, nil
}

// The JSON of compare: one column a way, in the order of ways; lengths in mm.
type (
	jsonComparison struct {
		Ways    []jsonWay       `json:"ways"`
		Answers []jsonAnswerRow `json:"answers"`
		Heads   []jsonHeadRow   `json:"headrooms"`
		Boards  []jsonBoardRow  `json:"boards"`
	}
	jsonWay struct {
		Name string `json:"name"`
		Wall string `json:"wall"`
	}
	jsonAnswerRow struct {
		ID      string     `json:"id"`
		Differs bool       `json:"differs"`
		Cells   []jsonCell `json:"cells"`
	}
	jsonCell struct {
		Verdict   string   `json:"verdict"`
		Spare     *float64 `json:"spare"`
		PlusMinus *float64 `json:"plus_minus"`
		Unit      string   `json:"unit"`
		Reason    string   `json:"reason"`
		Ask       string   `json:"ask"`
	}
	jsonHeadRow struct {
		ID   string     `json:"id"`
		Free []*float64 `json:"free"`
	}
	jsonBoardRow struct {
		Stock  string    `json:"stock"`
		Pieces []int     `json:"pieces"`
		Long   []float64 `json:"length"`
	}
)

func comparisonJSON(c *place.Comparison) jsonComparison {
	out := jsonComparison{Boards: []jsonBoardRow{}}
	for i, name := range c.Names {
		out.Ways = append(out.Ways, jsonWay{name, c.Places[i].Wall})
	}
	for i := range c.Answers {
		row := jsonAnswerRow{ID: c.Answers[i].ID, Differs: c.Answers[i].Differs()}
		for _, a := range c.Answers[i].Answers {
			row.Cells = append(row.Cells, jsonCell{a.Verdict.String(), number(a.HasSpare, a.Spare), number(a.HasSpare, a.PlusMinus), string(a.Unit), a.Reason, a.Ask})
		}
		out.Answers = append(out.Answers, row)
	}
	for _, h := range c.Heads {
		row := jsonHeadRow{ID: h.ID}
		for _, free := range h.Free {
			row.Free = append(row.Free, known(free))
		}
		out.Heads = append(out.Heads, row)
	}
	for _, b := range c.Boards {
		out.Boards = append(out.Boards, jsonBoardRow{b.Stock, b.Pieces, b.Long})
	}
	return out
}

// comparison prints ways side by side for people.
type comparison struct{ report }

func (r comparison) print(c *place.Comparison) {
	rows := [][]string{append([]string{""}, c.Names...), {"where"}}
	for _, p := range c.Places {
		rows[1] = append(rows[1], place.WhereWords(p, r.unit))
	}
	alike := 0
	for i := range c.Answers {
		if !r.all && !c.Answers[i].Differs() {
			alike++
			continue
		}
		rows = append(rows, r.answers(&c.Answers[i]))
	}
	for _, h := range c.Heads {
		row := []string{"headroom, " + h.ID}
		for _, free := range h.Free {
			row = append(row, r.length(free))
		}
		rows = append(rows, row)
	}
	for _, b := range c.Boards {
		rows = append(rows, r.boards(&b))
	}
	r.table(rows)
	if alike > 0 {
		r.line("\n%d answers do not differ; --all lists them", alike)
	}
	r.line("\n%s", wrapped(fit.Caution, 100, ""))
}

func (r comparison) length(mm float64) string {
	if mm != mm {
		return "not known"
	}
	return length.Format(length.FromMM(mm), length.Style{Unit: r.unit})
}

func (r comparison) answers(row *place.AnswerRow) []string {
	out := []string{row.ID}
	for _, a := range row.Answers {
		words := marks[a.Verdict] + " " + strings.ToLower(a.Verdict.Words())
		if a.HasSpare && a.Verdict != fit.NotApplicable && a.Verdict != fit.None {
			words += ", " + fit.SpareWords(a.Spare, a.Unit, r.unit)
		}
		out = append(out, words)
	}
	return out
}

func (r comparison) boards(b *place.BoardRow) []string {
	out := []string{"boards, " + b.Stock}
	for i, n := range b.Pieces {
		words := fmt.Sprintf("%d pieces", n)
		if n == 1 {
			words = "1 piece"
		}
		if !b.Sheet && n > 0 {
			words += ", " + r.length(b.Long[i])
		}
		out = append(out, words)
	}
	return out
}

// table prints rows in columns as wide as their widest text.
func (r comparison) table(rows [][]string) {
	var wide []int
	for _, row := range rows {
		for i, text := range row {
			if i == len(wide) {
				wide = append(wide, 0)
			}
			wide[i] = max(wide[i], utf8.RuneCountInString(text))
		}
	}
	for _, row := range rows {
		var line strings.Builder
		for i, text := range row {
			line.WriteString(text + strings.Repeat(" ", wide[i]-utf8.RuneCountInString(text)+2))
		}
		r.line("%s", strings.TrimRight(line.String(), " "))
	}
}
