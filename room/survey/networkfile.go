package survey

import (
	"fmt"
	"io/fs"
	"slices"
	"strings"
)

// FileError is one complaint about a file: where it is, what stands there, what would be right.
type FileError struct {
	File   string
	Line   int    // 0 for the file as a whole
	Column string // name of the column, "" for the line as a whole
	Found  string
	Want   string
}

func (e *FileError) Error() string {
	place := e.File
	if e.Line > 0 {
		place += fmt.Sprintf(":%d", e.Line)
	}
	if e.Column != "" {
		place += ": " + e.Column
	}
	return fmt.Sprintf("%s: %s: want %s", place, e.Found, e.Want)
}

// FileErrors is every complaint about a folder, in the order of its files and lines.
type FileErrors []*FileError

func (e FileErrors) Error() string {
	lines := make([]string, len(e))
	for i, one := range e {
		lines[i] = one.Error()
	}
	return strings.Join(lines, "\n")
}

const (
	pointsFile       = "points.csv"
	observationsFile = "observations.csv"
	maxPoints        = 400 // a network is solved as one dense matrix: more would take minutes
	maxObservations  = 4000
)

var (
	pointColumns       = []string{"point", "x_approx", "y_approx", "x_fixed", "y_fixed"}
	observationColumns = []string{"obs", "type", "station", "from", "to", "value", "unit", "sd", "sd_unit"}
)

// ReadNetwork reads points.csv (point, x_approx, y_approx, x_fixed, y_fixed) and observations.csv (obs, type, station,
// from, to, value, unit, sd, sd_unit and optionally value_dms) of a folder. Lines that begin with # are comments.
// Other columns are left alone. What is wrong with the content comes back as FileErrors, all of it.
func ReadNetwork(folder fs.FS) (Network, error) {
	points, err1 := readTable(folder, pointsFile, pointColumns, maxPoints)
	observations, err2 := readTable(folder, observationsFile, observationColumns, maxObservations)
	if err := bothErrors(err1, err2); err != nil {
		return Network{}, err
	}
	r := networkReader{known: map[string]bool{}, seen: map[string]bool{}}
	r.readPoints(points)
	r.readObservations(observations)
	if len(r.faults) > 0 {
		return Network{}, r.faults
	}
	return r.network, nil
}

// bothErrors makes one list of the complaints about two files; an error of another kind comes first.
func bothErrors(a, b error) error {
	one, ok1 := a.(FileErrors)
	two, ok2 := b.(FileErrors)
	switch {
	case a != nil && !ok1:
		return a
	case b != nil && !ok2:
		return b
	case len(one)+len(two) > 0:
		return append(one, two...)
	}
	return nil
}

type networkReader struct {
	network     Network
	known, seen map[string]bool // points and observations met
	unit        string          // of the distances
	faults      FileErrors
}

func (r *networkReader) readPoints(t table) {
	for _, row := range t.rows {
		p := Point{ID: row.text("point", &r.faults)}
		p.X = row.number("x_approx", -maxCoordinate, maxCoordinate, &r.faults)
		p.Y = row.number("y_approx", -maxCoordinate, maxCoordinate, &r.faults)
		p.FixedX, p.FixedY = row.flag("x_fixed", &r.faults), row.flag("y_fixed", &r.faults)
		if r.known[p.ID] {
			row.fault("point", "a name that no other point has", &r.faults)
		}
		r.known[p.ID] = true
		r.network.Points = append(r.network.Points, p)
	}
	if len(t.rows) == 0 {
		r.faults = append(r.faults, &FileError{File: pointsFile, Found: "no point", Want: "at least two"})
	}
}

func (r *networkReader) readObservations(t table) {
	for _, row := range t.rows {
		o := Observation{ID: row.text("obs", &r.faults), Kind: ObservationKind(row.get("type"))}
		if r.seen[o.ID] {
			row.fault("obs", "a name that no other observation has", &r.faults)
		}
		r.seen[o.ID] = true
		switch o.Kind {
		case DistanceKind:
			r.readDistance(row, &o)
		case ClockwiseKind:
			r.readAngle(row, &o)
		default:
			row.fault("type", "distance or angle_clockwise", &r.faults)
		}
		r.network.Observations = append(r.network.Observations, o)
	}
	if len(t.rows) == 0 {
		r.faults = append(r.faults, &FileError{File: observationsFile, Found: "no observation", Want: "at least one"})
	}
}

func (r *networkReader) readDistance(row row, o *Observation) {
	o.From, o.To = r.point(row, "from"), r.point(row, "to")
	r.differ(row, "to", o.To, o.From)
	if row.get("station") != "" {
		row.fault("station", "nothing: a distance runs from from to to", &r.faults)
	}
	unit, size := row.get("unit"), row.factor("unit", "length", metres, &r.faults)
	if r.unit == "" {
		r.unit = unit
	}
	if unit != r.unit {
		row.fault("unit", r.unit+" as in the first distance, which is also the unit of the coordinates", &r.faults)
	}
	o.Value = row.number("value", smallest, maxCoordinate, &r.faults)
	o.SD = row.number("sd", smallest, maxCoordinate, &r.faults)
	if unit != row.get("sd_unit") {
		o.SD *= row.factor("sd_unit", "length", metres, &r.faults) / size
	}
}

func (r *networkReader) readAngle(row row, o *Observation) {
	o.Station, o.From, o.To = r.point(row, "station"), r.point(row, "from"), r.point(row, "to")
	r.differ(row, "from", o.From, o.Station)
	r.differ(row, "to", o.To, o.Station, o.From)
	if row.get("value") != "" || row.get("value_dms") == "" {
		unit := row.factor("unit", "angle", arcseconds, &r.faults)
		o.Value = unit * row.number("value", 0, fullTurn/unit, &r.faults)
	}
	if row.get("value_dms") != "" {
		r.readDMS(row, o)
	}
	o.SD = row.number("sd", smallest, fullTurn, &r.faults) * row.factor("sd_unit", "angle", arcseconds, &r.faults)
}

// readDMS takes the exact degrees, minutes and seconds in place of their rounded value in degrees.
func (r *networkReader) readDMS(row row, o *Observation) {
	const rounding = 0.36 // arcseconds, that is 0.0001 degree
	exact, ok := parseDMS(row.get("value_dms"))
	if !ok {
		row.fault("value_dms", "degrees, minutes and seconds such as 240 01 30.5", &r.faults)
		return
	}
	if row.get("value") != "" && !(exact-o.Value < rounding && o.Value-exact < rounding) {
		row.fault("value_dms", "the same angle as value, "+row.get("value"), &r.faults)
	}
	o.Value = exact
}

// point reads the name of a point that points.csv has.
func (r *networkReader) point(row row, column string) string {
	id := row.text(column, &r.faults)
	if id != "" && !r.known[id] {
		row.fault(column, "a point of "+pointsFile, &r.faults)
	}
	return id
}

func (r *networkReader) differ(row row, column, id string, others ...string) {
	if id != "" && slices.Contains(others, id) {
		row.fault(column, "another point than the ones before it", &r.faults)
	}
}
