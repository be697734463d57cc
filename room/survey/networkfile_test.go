package survey

import (
	"errors"
	"io/fs"
	"math"
	"os"
	"strings"
	"testing"
	"testing/fstest"
)

const (
	goodPoints = "point,x_approx,y_approx,x_fixed,y_fixed\nA,0,0,1,1\nB,3,0,1,1\nP,0,4,0,0\n"
	obsHeader  = "obs,type,station,from,to,value,unit,sd,sd_unit,value_dms\n"
	goodObs    = obsHeader + "1,distance,,A,P,4,m,0.01,m,\n2,distance,,B,P,5,m,0.01,m,\n"
)

func folder(points, observations string) fs.FS {
	return fstest.MapFS{pointsFile: {Data: []byte(points)}, observationsFile: {Data: []byte(observations)}}
}

func TestFolderComplaints(t *testing.T) {
	for name, c := range map[string]struct{ points, observations, want string }{
		"word for a number": {strings.Replace(goodPoints, "B,3", "B,three", 1), goodObs,
			`points.csv:3: x_approx: "three": want a number from -1e+09 to 1e+09`},
		"no number": {strings.Replace(goodPoints, "B,3", "B,", 1), goodObs,
			`points.csv:3: x_approx: nothing: want a number from -1e+09 to 1e+09`},
		"NaN":              {strings.Replace(goodPoints, "B,3", "B,NaN", 1), goodObs, `points.csv:3: x_approx: "NaN": want a number from -1e+09 to 1e+09`},
		"flag":             {strings.Replace(goodPoints, "0,0,1,1", "0,0,yes,1", 1), goodObs, `points.csv:2: x_fixed: "yes": want 1 for fixed or 0 for free`},
		"same name":        {strings.Replace(goodPoints, "B,", "A,", 1), strings.Replace(goodObs, "B", "A", 1), `points.csv:3: point: "A": want a name that no other point has`},
		"no name":          {goodPoints + ",1,1,0,0\n", goodObs, `points.csv:5: point: nothing: want a name`},
		"both files":       {goodPoints + "Q,1,1\n", obsHeader + "1\n", "points.csv:5: 3 fields: want 5 as in the header\nobservations.csv:2: 1 fields: want 10 as in the header"},
		"short line":       {goodPoints + "Q,1,1\n", goodObs, `points.csv:5: 3 fields: want 5 as in the header`},
		"no column":        {strings.Replace(goodPoints, "y_fixed", "fixed", 1), goodObs, `points.csv:1: no column "y_fixed": want the header point,x_approx,y_approx,x_fixed,y_fixed`},
		"twice":            {strings.Replace(goodPoints, "y_fixed", "x_fixed", 1), goodObs, "points.csv:1: x_fixed: a second column of that name: want one\npoints.csv:1: no column \"y_fixed\": want the header point,x_approx,y_approx,x_fixed,y_fixed"},
		"empty":            {"", goodObs, `points.csv: no header: want point,x_approx,y_approx,x_fixed,y_fixed`},
		"header only":      {"point,x_approx,y_approx,x_fixed,y_fixed\n", obsHeader, "points.csv: no point: want at least two\nobservations.csv: no observation: want at least one"},
		"quote":            {goodPoints + "\"Q,1,1,0,0\n", goodObs, `points.csv:5: extraneous or missing " in quoted-field: want fields separated by commas, quoted where needed`},
		"kind":             {goodPoints, strings.Replace(goodObs, "distance", "slope", 1), `observations.csv:2: type: "slope": want distance or angle_clockwise`},
		"who":              {goodPoints, strings.Replace(goodObs, "A,P", "X,P", 1), `observations.csv:2: from: "X": want a point of points.csv`},
		"itself":           {goodPoints, strings.Replace(goodObs, "A,P", "P,P", 1), `observations.csv:2: to: "P": want another point than the ones before it`},
		"station":          {goodPoints, strings.Replace(goodObs, ",,A,P", ",B,A,P", 1), `observations.csv:2: station: "B": want nothing: a distance runs from from to to`},
		"no distance":      {goodPoints, strings.Replace(goodObs, ",4,", ",0,", 1), `observations.csv:2: value: "0": want a number from 1e-09 to 1e+09`},
		"sd":               {goodPoints, strings.Replace(goodObs, "0.01", "-0.01", 1), `observations.csv:2: sd: "-0.01": want a number from 1e-09 to 1e+09`},
		"unit":             {goodPoints, obsHeader + "1,distance,,A,P,4,yd,0.01,yd,\n", "observations.csv:2: unit: \"yd\": want a unit of length: cm, ft, in, km, m, mm"},
		"two units":        {goodPoints, strings.Replace(goodObs, "5,m,0.01,m", "5,ft,0.01,ft", 1), `observations.csv:3: unit: "ft": want m as in the first distance, which is also the unit of the coordinates`},
		"same reading":     {goodPoints, strings.Replace(goodObs, "2,dist", "1,dist", 1), `observations.csv:3: obs: "1": want a name that no other observation has`},
		"angle unit":       {goodPoints, goodObs + "3,angle_clockwise,P,A,B,37,m,10,arcsec,\n", `observations.csv:4: unit: "m": want a unit of angle: arcmin, arcsec, deg, gon, mgon, rad`},
		"dms":              {goodPoints, goodObs + "3,angle_clockwise,P,A,B,37,deg,10,arcsec,37 60 0\n", `observations.csv:4: value_dms: "37 60 0": want degrees, minutes and seconds such as 240 01 30.5`},
		"dms differs":      {goodPoints, goodObs + "3,angle_clockwise,P,A,B,37,deg,10,arcsec,38 00 0\n", `observations.csv:4: value_dms: "38 00 0": want the same angle as value, 37`},
		"a turn and a bit": {goodPoints, goodObs + "3,angle_clockwise,P,A,B,370,deg,10,arcsec,\n", `observations.csv:4: value: "370": want a number from 0 to 360`},
		"too many":         {goodPoints + strings.Repeat("Q,1,1,0,0\n", maxPoints), goodObs, `points.csv:402: too many lines: want at most 400`},
		"huge":             {strings.Repeat("#", maxFileSize+1), goodObs, `points.csv: a file of more than 4 MB: want a table of a few hundred lines`},
	} {
		_, err := ReadNetwork(folder(c.points, c.observations))
		if err == nil || !strings.HasPrefix(err.Error(), c.want) {
			t.Errorf("%s:\ngot  %v\nwant %s", name, err, c.want)
		}
		var faults FileErrors
		if !errors.As(err, &faults) {
			t.Errorf("%s: %T is not FileErrors", name, err)
		}
	}
}

func TestFolderWithoutFiles(t *testing.T) {
	_, err := ReadNetwork(fstest.MapFS{pointsFile: {Data: []byte(goodPoints)}})
	if !errors.Is(err, fs.ErrNotExist) || !strings.Contains(err.Error(), observationsFile) {
		t.Errorf("got %v, want it to name %s", err, observationsFile)
	}
	if _, err := ReadNetwork(fstest.MapFS{"points.csv/x": {}}); err == nil {
		t.Error("a folder of that name was read as a file")
	}
}

// A byte order mark, returns, comments, blanks and columns in another order. Seen from P at (0, 4), A lies south and B at
// (3, 0) to the left of it: clockwise from A to B is a whole turn less atan(3/4) = 36 52 11.6, that is 323 07 48.4.
func TestFolderForms(t *testing.T) {
	points := "\ufeff# by hand\r\nx_fixed,y_fixed,point,x_approx,y_approx\r\n1,1, A ,0,0\r\n1,1,B,3,0\r\n0,0,P,0.1,4\r\n"
	obs := obsHeader + "1,distance,,A,P,4,m,10,mm,\n3,angle_clockwise,P,A,B,,deg,0.1,arcmin,323 07 48.4\n"
	n, err := ReadNetwork(folder(points, obs))
	if err != nil {
		t.Fatal(err)
	}
	if o := n.Observations[0]; math.Abs(o.SD-0.01) > 1e-15 {
		t.Errorf("sd of 10 mm on metres: got %v, want 0.01", o.SD)
	}
	if o := n.Observations[1]; math.Abs(o.Value-(323*3600+7*60+48.4)) > 1e-9 || o.SD != 6 {
		t.Errorf("angle: got %v with sd %v", o.Value, o.SD)
	}
	a, err := Adjust(n)
	if err != nil || math.Hypot(a.Points[2].X, a.Points[2].Y-4) > 1e-4 {
		t.Errorf("P: got %+v, %v; want (0, 4)", a.Points, err)
	}
}

func FuzzReadNetwork(f *testing.F) {
	f.Add(goodPoints, goodObs)
	for _, name := range []string{"n1_braced_square", "n4_free", "n9_traverse"} {
		points, err1 := os.ReadFile(networks + name + "/" + pointsFile)
		observations, err2 := os.ReadFile(networks + name + "/" + observationsFile)
		if err1 != nil || err2 != nil {
			f.Fatal(err1, err2)
		}
		f.Add(string(points), string(observations))
	}
	f.Fuzz(func(t *testing.T, points, observations string) {
		n, err := ReadNetwork(folder(points, observations))
		if err != nil || len(n.Points) > 20 || len(n.Observations) > 40 {
			return
		}
		a, err := Adjust(n)
		if err != nil {
			return
		}
		for _, p := range a.Points {
			if !finite(p.X) || !finite(p.Y) || !finite(p.SX) || !finite(p.SY) {
				t.Errorf("point %+v is not finite", p)
			}
		}
	})
}
