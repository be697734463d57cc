package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/render/raster"
	"bunkwright/render/svg"
	"bunkwright/render/view"
)

// kindOf returns the kind of file that a name asks for, ".png", ".svg" or ".pdf" in small letters, and "" for a folder. A name that ends
// in the manner of another kind of file is refused unless it is a folder already.
func kindOf(name string) (string, error) {
	if name == "" {
		return "", errors.New("-o wants the name of a folder or a file")
	}
	if info, err := os.Stat(name); err == nil && info.IsDir() {
		return "", nil
	}
	ext := strings.ToLower(filepath.Ext(name))
	switch {
	case ext == ".png", ext == ".svg", ext == ".pdf":
		return ext, nil
	case ext == "" || ext == "." || strings.EqualFold(ext, filepath.Base(name)):
		return "", nil
	}
	return "", fmt.Errorf("%s: drawings are .png, .svg or .pdf, not %s\nhint: for a folder of that name write %s/", name, ext, name)
}

// run draws what was asked for. What cannot be is said before anything is written.
func (d drawFlags) run(s *session, file *jobfile.File, scene *fit.Scene, answers []fit.Answer) error {
	kind, err := kindOf(d.out)
	if err != nil {
		return err
	}
	views, err := d.chosen(view.Drawings(scene, answers))
	if err != nil {
		return err
	}
	sheets := func(w io.Writer) error { return d.sheets(w, file, scene, answers) }
	switch {
	case kind == ".pdf" && d.view != "":
		return errors.New(d.out + ": a PDF holds all sheets, not one view\nhint: leave --view out, or name a .png, a .svg or a folder")
	case kind == ".pdf":
		return written(s, d.out, sheets)
	case kind != "":
		return d.one(s, kind, views[0], screen(file))
	}
	if err := folder(d.out); err != nil {
		return err
	}
	for _, v := range views {
		if err := written(s, filepath.Join(d.out, v.Name+".png"), png(v, screen(file))); err != nil {
			return err
		}
	}
	if d.view != "" {
		return nil
	}
	return written(s, filepath.Join(d.out, "sheets.pdf"), sheets)
}

// chosen returns the view that was asked for, all of them where none was.
func (d drawFlags) chosen(all []view.Named) ([]view.Named, error) {
	if d.view == "" {
		return all, nil
	}
	i := slices.IndexFunc(all, func(v view.Named) bool { return v.Name == d.view })
	if i >= 0 {
		return all[i : i+1], nil
	}
	var known []string
	for _, v := range all {
		known = append(known, v.Name)
	}
	return nil, fmt.Errorf("there is no view %q\nhint: one of %s", d.view, strings.Join(known, ", "))
}

// one writes one view to one file, and says which where that was not asked for.
func (d drawFlags) one(s *session, kind string, v view.Named, o view.Options) error {
	draw := png(v, o)
	if kind == ".svg" {
		draw = svgOf(v, o)
	}
	if err := written(s, d.out, draw); err != nil || d.view != "" {
		return err
	}
	_, err := fmt.Fprintf(s.out, "it shows the view %s; --view chooses another\n", v.Name)
	return err
}

func png(v view.Named, o view.Options) func(io.Writer) error {
	return func(w io.Writer) error { return raster.PNG(w, v.Draw(o).Substituted(), 1, render.Light) }
}

func svgOf(v view.Named, o view.Options) func(io.Writer) error {
	return func(w io.Writer) error { return svg.Write(w, v.Draw(o).Substituted(), render.Light) }
}
