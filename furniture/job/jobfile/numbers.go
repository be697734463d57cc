package jobfile

import (
	"math"
	"reflect"
	"strconv"
)

// boolKind is true or false, or one of two words of which the second means true.
type boolKind struct{}

func (boolKind) read(d *decoder, at spot, v any, dst reflect.Value) {
	if words := at.f.words; words != nil {
		if text, ok := v.(string); !ok {
			d.wrong(at, v)
		} else if d.fits(at, text) {
			dst.SetBool(text == words[1])
		}
		return
	}
	b, ok := v.(bool)
	if !ok {
		d.complain(at, describe(v), "true or false, without quotes")
		return
	}
	dst.SetBool(b)
}

func (boolKind) write(w *writer, f *field, v reflect.Value) (string, bool) {
	if f.words != nil {
		return quote(f.words[1]), v.Bool()
	}
	return "true", v.Bool()
}

// countKind is a whole number.
type countKind struct{}

// mostOf bounds counts of which a house or a bed cannot have more; others go to 99.
var mostOf = map[string]int64{"door.leaves": 2}

func (countKind) read(d *decoder, at spot, v any, dst reflect.Value) {
	n, ok := v.(int64)
	most, bounded := mostOf[at.f.path]
	if !bounded {
		most = 99
	}
	switch {
	case !ok:
		d.complain(at, describe(v), "a whole number, "+d.suchAs(at.f))
	case n < 1 || n > most:
		d.complain(at, describe(v), "a whole number from 1 to "+strconv.FormatInt(most, 10))
	default:
		dst.SetInt(n)
	}
}

func (countKind) write(w *writer, f *field, v reflect.Value) (string, bool) {
	return strconv.FormatInt(v.Int(), 10), v.Int() != 0
}

// numberKind is a number of degrees or of years.
type numberKind struct{}

func (numberKind) read(d *decoder, at spot, v any, dst reflect.Value) {
	n, ok := v.(float64)
	if whole, is := v.(int64); is {
		n, ok = float64(whole), true
	}
	below, unit := 360.0, "degrees: a number over 0 and under 360"
	if at.f.row.Unit == Years {
		below, unit = 120, "years: a number over 0 and under 120"
	}
	switch {
	case !ok:
		d.complain(at, describe(v), "a number without quotes, "+d.suchAs(at.f))
	case math.IsNaN(n) || n <= 0 || n >= below:
		d.complain(at, describe(v), unit)
	default:
		dst.SetFloat(n)
	}
}

func (numberKind) write(w *writer, f *field, v reflect.Value) (string, bool) {
	return strconv.FormatFloat(v.Float(), 'g', -1, 64), v.Float() != 0
}
