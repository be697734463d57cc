package survey

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math"
	"slices"
	"sort"
	"strconv"
	"strings"
)

const (
	maxFileSize   = 4 << 20
	maxCoordinate = 1e9
	smallest      = 1e-9 // of a distance or an sd, so that weights stay finite
	fullTurn      = 360 * 3600.0
)

var (
	metres = map[string]float64{"m": 1, "cm": 0.01, "mm": 0.001, "km": 1000, "ft": 0.3048, "in": 0.0254}

	arcseconds = map[string]float64{"deg": 3600, "arcmin": 60, "arcsec": 1, "gon": 3240, "mgon": 3.24,
		"rad": 3600 * 180 / math.Pi}
)

// names lists a table's units in a fixed order.
func names(units map[string]float64) string {
	list := make([]string, 0, len(units))
	for u := range units {
		list = append(list, u)
	}
	sort.Strings(list)
	return strings.Join(list, ", ")
}

// table is a comma separated file with a header; row one line of it.
type table struct {
	file    string
	columns map[string]int
	rows    []row
}

type row struct {
	table  *table
	line   int
	fields []string
}

// readTable reads a file whose header has at least the wanted columns; every line of the wrong length is a fault.
func readTable(folder fs.FS, file string, want []string, maxRows int) (table, error) {
	text, err := readLimited(folder, file)
	if err != nil {
		return table{}, err
	}
	r := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(text, []byte("\ufeff"))))
	r.Comment, r.FieldsPerRecord, r.TrimLeadingSpace = '#', -1, true
	fields, err := r.Read()
	if errors.Is(err, io.EOF) {
		return table{}, FileErrors{{File: file, Found: "no header", Want: strings.Join(want, ",")}}
	}
	if err != nil {
		return table{}, FileErrors{syntaxFault(file, err)}
	}
	line, _ := r.FieldPos(0)
	columns, err := header(file, line, fields, want)
	if err != nil {
		return table{}, err
	}
	t := table{file: file, columns: columns}
	if faults := t.readRows(r, maxRows); len(faults) > 0 {
		return table{}, faults
	}
	return t, nil
}

func (t *table) readRows(r *csv.Reader, maxRows int) (faults FileErrors) {
	for {
		fields, err := r.Read()
		if errors.Is(err, io.EOF) {
			return faults
		}
		if err != nil {
			return append(faults, syntaxFault(t.file, err))
		}
		line, _ := r.FieldPos(0)
		if len(t.rows) == maxRows {
			return append(faults, &FileError{File: t.file, Line: line, Found: "too many lines", Want: fmt.Sprintf("at most %d", maxRows)})
		}
		if len(fields) != len(t.columns) {
			faults = append(faults, &FileError{File: t.file, Line: line, Found: fmt.Sprintf("%d fields", len(fields)),
				Want: fmt.Sprintf("%d as in the header", len(t.columns))})
		}
		t.rows = append(t.rows, row{table: t, line: line, fields: fields})
	}
}

// readLimited reads a whole file that is not absurdly large.
func readLimited(folder fs.FS, file string) ([]byte, error) {
	f, err := folder.Open(file)
	if err != nil {
		return nil, fmt.Errorf("network: %w", err)
	}
	defer f.Close()
	text, err := io.ReadAll(io.LimitReader(f, maxFileSize+1))
	if err != nil {
		return nil, fmt.Errorf("network: %w", err)
	}
	if len(text) > maxFileSize {
		return nil, FileErrors{{File: file, Found: "a file of more than 4 MB", Want: "a table of a few hundred lines"}}
	}
	return text, nil
}

func syntaxFault(file string, err error) *FileError {
	fault := &FileError{File: file, Found: err.Error(), Want: "fields separated by commas, quoted where needed"}
	var syntax *csv.ParseError
	if errors.As(err, &syntax) {
		fault.Line, fault.Found = syntax.Line, syntax.Err.Error()
	}
	return fault
}

// header finds the columns; a missing or doubled one is a fault.
func header(file string, line int, fields, want []string) (map[string]int, error) {
	columns := make(map[string]int, len(fields))
	var faults FileErrors
	for i, name := range fields {
		name = strings.TrimSpace(name)
		if _, twice := columns[name]; twice {
			faults = append(faults, &FileError{File: file, Line: line, Column: name, Found: "a second column of that name", Want: "one"})
		}
		columns[name] = i
	}
	for _, name := range want {
		if _, ok := columns[name]; !ok {
			faults = append(faults, &FileError{File: file, Line: line, Found: fmt.Sprintf("no column %q", name),
				Want: "the header " + strings.Join(want, ",")})
		}
	}
	if len(faults) > 0 {
		return nil, faults
	}
	return columns, nil
}

// get returns a field without blanks around it, "" where the file has no such column.
func (r row) get(column string) string {
	i, ok := r.table.columns[column]
	if !ok {
		return ""
	}
	return strings.TrimSpace(r.fields[i])
}

func (r row) fault(column, want string, faults *FileErrors) {
	found := strconv.Quote(r.get(column))
	if found == `""` {
		found = "nothing"
	}
	*faults = append(*faults, &FileError{File: r.table.file, Line: r.line, Column: column, Found: found, Want: want})
}

func (r row) text(column string, faults *FileErrors) string {
	if r.get(column) == "" {
		r.fault(column, "a name", faults)
	}
	return r.get(column)
}

func (r row) number(column string, low, high float64, faults *FileErrors) float64 {
	v, err := strconv.ParseFloat(r.get(column), 64)
	if err != nil || !(v >= low && v <= high) {
		r.fault(column, fmt.Sprintf("a number from %g to %g", low, high), faults)
		return low
	}
	return v
}

func (r row) flag(column string, faults *FileErrors) bool {
	v := r.get(column)
	if v != "0" && v != "1" {
		r.fault(column, "1 for fixed or 0 for free", faults)
	}
	return v == "1"
}

// factor reads a unit and returns what one of it is in the table's own; 1 for an unknown one.
func (r row) factor(column, what string, units map[string]float64, faults *FileErrors) float64 {
	f, ok := units[r.get(column)]
	if !ok {
		r.fault(column, "a unit of "+what+": "+names(units), faults)
		return 1
	}
	return f
}

// parseDMS reads degrees, minutes and seconds such as "240 01 30.5" as arcseconds.
func parseDMS(text string) (float64, bool) {
	parts := strings.Fields(text)
	if len(parts) != 3 {
		return 0, false
	}
	degrees, err1 := strconv.ParseUint(parts[0], 10, 16)
	minutes, err2 := strconv.ParseUint(parts[1], 10, 16)
	seconds, err3 := strconv.ParseFloat(parts[2], 64)
	ok := !slices.ContainsFunc([]error{err1, err2, err3}, func(err error) bool { return err != nil })
	value := float64(degrees)*3600 + float64(minutes)*60 + seconds
	return value, ok && minutes < 60 && seconds >= 0 && seconds < 60 && value <= fullTurn
}
