package survey

import (
	"errors"
	"math"
	"strings"
	"testing"
)

// room_reference.csv and room_cases.csv hold a constructed room of 144 x 120 in, computed for this project from the same
// readings by other means. Corner A is the origin, B lies on the x axis, y runs into the room.

// roomNetwork makes the network of one case of room_reference.csv.
func roomNetwork(t *testing.T, name string) Network {
	t.Helper()
	n := Network{Points: []Point{{ID: "A", FixedX: true, FixedY: true}, {ID: "B", X: 144, FixedY: true},
		{ID: "C", X: 144, Y: 120}, {ID: "D", Y: 120}}}
	for _, r := range readRecords(t, "room_reference.csv") {
		if r["case"] == name {
			n.Observations = append(n.Observations, Observation{ID: r["obs"], Kind: DistanceKind, From: r["from"], To: r["to"],
				Value: r.float(t, "reading_in"), SD: r.float(t, "sd_in")})
		}
	}
	return n
}

func TestRoomReference(t *testing.T) {
	for _, name := range []string{"six_readings", "six_readings_DA_plus_12", "twice", "twice_DA_plus_12"} {
		a, err := Adjust(roomNetwork(t, name))
		if err != nil {
			t.Fatal(err)
		}
		i := 0
		for _, r := range readRecords(t, "room_reference.csv") {
			if r["case"] != name {
				continue
			}
			what := name + " " + r["obs"]
			printed(t, what+" residual", a.Observations[i].Residual, r["residual_adj_minus_obs"], 1)
			printed(t, what+" redundancy", a.Observations[i].Redundancy, r["redundancy"], 1)
			printed(t, what+" w", a.Observations[i].W, r["w"], 1)
			i++
		}
	}
}

func TestRoomCases(t *testing.T) {
	for _, r := range readCases(t, "room_cases.csv", "room") {
		a, err := Adjust(roomNetwork(t, r.inputs()["case"]))
		if err != nil {
			t.Fatal(err)
		}
		worst, located := a.Solution.Worst()
		switch q := r["quantity"]; q {
		case "f":
			r.compare(t, float64(a.F))
		case "vPv":
			r.compare(t, a.VPV)
		case "located":
			r.compareText(t, map[bool]string{true: "yes", false: "no"}[located])
		case "worst_reading":
			r.compareText(t, a.Observations[worst].Key)
		case "estimated_error":
			r.compare(t, a.Observations[worst].Error)
		default:
			p := a.point(t, q[:1])
			r.compare(t, map[string]float64{"_x": p.X, "_y": p.Y}[q[1:]])
		}
	}
}

func TestRectangleDesign(t *testing.T) {
	for _, r := range readCases(t, "room_cases.csv", "design") {
		in := r.inputs()
		plan := RectanglePlan{A: in.float(t, "a"), B: in.float(t, "b"), Sigma: in.float(t, "sd_in"), AngleSigma: in.float(t, "angle_sd_deg")}
		if err := plan.ParseRectangleSet(in["set"]); err != nil {
			t.Fatal(err)
		}
		out, err := plan.Outlook()
		if err != nil {
			t.Fatal(err)
		}
		got, ok := map[string]float64{"f": float64(out.F), "sd_C_x": out.Corners[2][0], "sd_C_y": out.Corners[2][1],
			"mdb_wall_144": out.Wall[0].Smallest, "mdb_wall_120": out.Wall[1].Smallest, "mdb_diagonal": out.Diagonal[0].Smallest}[r["quantity"]]
		if !ok {
			t.Fatalf("%s: unknown quantity", r["id"])
		}
		r.compare(t, got)
	}
}

func TestRectangleRedundancy(t *testing.T) {
	for _, r := range readCases(t, "room_cases.csv", "rectangle_redundancy") {
		in := r.inputs()
		a, b := in.float(t, "a"), in.float(t, "b")
		out, err := RectanglePlan{A: a, B: b, Sigma: 1, Walls: 4, Diagonals: 2}.Outlook()
		if err != nil {
			t.Fatal(err)
		}
		got := map[string]float64{"r_wall_a": out.Wall[0].Redundancy, "r_wall_b": out.Wall[1].Redundancy, "r_diagonal": out.Diagonal[0].Redundancy}
		r.compare(t, got[r["quantity"]])
		closed := map[string]float64{"r_wall_a": a * a / 4 / (a*a + b*b), "r_wall_b": b * b / 4 / (a*a + b*b), "r_diagonal": 0.25}
		r.compare(t, closed[r["quantity"]])
	}
}

func TestRectangleSet(t *testing.T) {
	for set, want := range map[string]RectanglePlan{
		"4 walls 2 diagonals 4 soft right angles": {Walls: 4, Diagonals: 2, RightAngles: 4, Times: 1},
		"each twice and 4 soft right angles":      {Walls: 4, Diagonals: 2, RightAngles: 4, Times: 2},
		"4 walls 2 diagonals + 4 right angles":    {Walls: 4, Diagonals: 2, RightAngles: 4, Times: 1},
		"4 walls with 1 diagonal":                 {Walls: 4, Diagonals: 1, Times: 1},
		"3 walls, 1 diagonal, each twice":         {Walls: 3, Diagonals: 1, Times: 2},
	} {
		var got RectanglePlan
		if err := got.ParseRectangleSet(set); err != nil || got != want {
			t.Errorf("%q: got %+v, %v", set, got, err)
		}
	}
	for _, set := range []string{"", "5 walls", "3 diagonals", "walls", "4", "each thrice", "12 walls", "some walls", "4 walls 2"} {
		if err := new(RectanglePlan).ParseRectangleSet(set); err == nil {
			t.Errorf("%q was accepted", set)
		}
	}
}

// Four walls alone let the room lean over like a parallelogram: no corner but A is held across.
func TestFourWallsAreOpen(t *testing.T) {
	_, err := RectanglePlan{A: 144, B: 120, Sigma: 0.125, Walls: 4}.Outlook()
	var open *UndeterminedError
	if !errors.As(err, &open) || !strings.Contains(err.Error(), "unknowns 1 3") {
		t.Errorf("got %v, want x of C and of D (unknowns 1 and 3) open", err)
	}
}

// With four walls and a diagonal nothing is left over: no reading is checked.
func TestOneDiagonalChecksNothing(t *testing.T) {
	out, err := RectanglePlan{A: 144, B: 120, Sigma: 0.125, Walls: 4, Diagonals: 1}.Outlook()
	if err != nil || out.F != 0 || out.Wall[0].Checked() || !math.IsInf(out.Diagonal[0].Smallest, 1) {
		t.Errorf("got %+v, %v", out, err)
	}
}
