package jobfile

import (
	"reflect"
	"strings"

	"bunkwright/furniture"
	"bunkwright/furniture/timber"
	"bunkwright/room/length"
)

// stockKind is a board or a sheet: "2x4", "45x95 mm", "plywood 1/2 in", or a table of what was sold and what it really measures.
type stockKind struct{}

// soldStock is that table.
type soldStock struct {
	Sold   string `file:"sold"`
	Actual string `file:"actual"`
}

// sheetWord begins the name of a sheet.
const sheetWord = "plywood "

const boardExamples = `"2x4", "1-1/2 x 5-1/2 in", "45x95 mm" or "plywood 1/2 in"`

func (stockKind) read(d *decoder, at spot, v any, dst reflect.Value) {
	var s furniture.Stock
	var ok bool
	switch v := v.(type) {
	case string:
		s, ok = d.stock(at, v)
	case map[string]any:
		s, ok = d.sold(at, v)
	default:
		d.complain(at, describe(v), "a text such as "+boardExamples)
	}
	if ok {
		dst.Set(reflect.ValueOf(s))
	}
}

// sold reads a board whose real size is not the one that its name says.
func (d *decoder) sold(at spot, v map[string]any) (furniture.Stock, bool) {
	var sold soldStock
	d.table(stocks(), v, reflect.ValueOf(&sold).Elem(), at)
	if sold.Actual == "" {
		return furniture.Stock{}, false
	}
	s, fault := sectionOf(sold.Actual, d.unit)
	if fault != "" {
		d.complain(at.in("actual"), describe(sold.Actual)+": "+fault, d.suchAs(stocks().byKey["actual"]))
	}
	s.Name = sold.Sold
	return s, fault == ""
}

// stock reads the name of a board or sheet.
func (d *decoder) stock(at spot, text string) (furniture.Stock, bool) {
	s, fault := named(text, d.unit)
	if fault != "" && d.noUnit {
		s, fault = named(text, length.Millimetres)
	}
	if fault != "" {
		d.complain(at, describe(text)+": "+fault, "such as "+boardExamples)
	}
	return s, fault == ""
}

// named finds the stock of a name: a nominal size has its dressed size (PS 20), dry; anything else says its size itself.
func named(name string, u length.Unit) (s furniture.Stock, fault string) {
	size, err := timber.DressedSize(name, timber.Dry)
	if err == nil {
		return furniture.Stock{Name: name, Thick: size.Thick, Wide: size.Wide}, ""
	}
	if sheet, ok := strings.CutPrefix(name, sheetWord); ok {
		s, fault = thickness(sheet, u)
	} else {
		s, fault = sectionOf(name, u)
	}
	switch {
	case name == "":
	case !strings.ContainsAny(name, "0123456789½¼¾"):
		fault = "no size in it"
	case fault == askActual:
		fault = "no lumber has this nominal size"
	case fault == "" && s.Sheet && !strings.HasPrefix(name, sheetWord):
		fault = "one size only"
	}
	s.Name = name
	return s, fault
}

const askActual = "a nominal size, and the real one is asked for"

// sectionOf reads an actual size: thickness x width of a board, thickness of a sheet.
func sectionOf(text string, u length.Unit) (s furniture.Stock, fault string) {
	if !strings.ContainsAny(text, "x×X") {
		return thickness(text, u)
	}
	got := length.Read(text, length.Context{Unit: u, Field: length.Section})
	if got.Outcome == length.Value && got.Reason != "" && got.Reason != "actual size" {
		return s, askActual
	}
	s.Thick, s.Wide = got.Value, got.Second
	switch {
	case got.Outcome == length.Ask:
		return s, got.Reason + ": " + got.Question
	case got.Outcome != length.Value:
		return s, got.Reason
	case s.Thick > s.Wide:
		return s, "thickness comes first"
	}
	return s, tooBig(s.Wide)
}

func thickness(text string, u length.Unit) (s furniture.Stock, fault string) {
	got := length.Read(text, length.Context{Unit: u, Field: length.BoardThickness})
	switch {
	case got.Outcome == length.Ask:
		return s, got.Reason + ": " + got.Question
	case got.Outcome != length.Value:
		return s, got.Reason
	case got.Value == 0 || got.Note64 != 0:
		return s, "no thickness of a sheet"
	}
	return furniture.Stock{Thick: got.Value, Sheet: true}, tooBig(got.Value)
}

// widestStock bounds a section, 2 m: our own bound against slips.
const widestStock = 2000 * length.Millimetre

func tooBig(l length.Length) string {
	if l > widestStock {
		return "more than 2 m across"
	}
	return ""
}

// write gives a stock by its name where the name says its size, else with its actual size beside it.
func (stockKind) write(w *writer, f *field, v reflect.Value) (string, bool) {
	s := v.Interface().(furniture.Stock)
	if s == (furniture.Stock{}) {
		return "", false
	}
	if same, fault := named(s.Name, w.unit); fault == "" && same == s {
		return quote(s.Name), true
	}
	actual := length.Exact(s.Thick, length.Millimetres)
	if !s.Sheet {
		actual = w.across(s)
	} else if w.unit == length.Inches {
		actual = length.Exact(s.Thick, length.Inches)
	}
	if s.Name == "" {
		return "{ actual = " + quote(actual) + " }", true
	}
	return "{ sold = " + quote(s.Name) + ", actual = " + quote(actual) + " }", true
}

// across writes both sizes in one unit.
func (w *writer) across(s furniture.Stock) string {
	thick, wide := length.Exact(s.Thick, w.unit), length.Exact(s.Wide, w.unit)
	if strings.HasSuffix(thick, " mm") != strings.HasSuffix(wide, " mm") {
		thick, wide = length.Exact(s.Thick, length.Millimetres), length.Exact(s.Wide, length.Millimetres)
	}
	unit := thick[strings.LastIndexByte(thick, ' '):]
	return strings.TrimSuffix(thick, unit) + " x " + wide
}
