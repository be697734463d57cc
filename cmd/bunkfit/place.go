package main

import (
	"context"
	"fmt"
	"os"
	"os/signal"
	"strconv"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/place"
	"bunkwright/room/length"
)

var placeCommand = command{
	name:    "place",
	args:    "JOB.toml [--json] [--step LENGTH] [--first ID,ID] [--must ID,ID] [--ends] [--rooms]",
	summary: "find where in the room the bed could stand",
	example: "bunkfit place samples/town-house.toml --first fan-and-lights,way-out",
}

func init() { placeCommand.run = runPlace }

func runPlace(s *session, args []string) (int, error) {
	f := s.flags(placeCommand)
	asJSON := f.Bool("json", false, "print the spots as JSON")
	step := f.String("step", "", "how far from one place to the next along a wall; 1/4 in or 5 mm where it is not said")
	first := f.String("first", "", "what counts first, ids with commas between: questions, or "+strings.Join(measureIDs(), ", "))
	must := f.String("must", "", "answers that have to fit for a place to be a spot, ids with commas between, such as way-out")
	ends := f.Bool("ends", false, "try the ends of the bed at the walls too, whatever hangs on the wall")
	rooms := f.Bool("rooms", false, "draw 10,000 rooms that agree with the readings, and count those in which all safety answers fit where the bed stands now")
	words, err := parse(f, args)
	if err != nil {
		return exitUsage, err
	}
	if len(words) != 1 {
		return exitUsage, fmt.Errorf("place wants one job file\nhint: %s", placeCommand.example)
	}
	file, err := open(words[0])
	if err != nil {
		return exitUsage, err
	}
	o, err := placeOptions(*step, *ends, unitOf(file.Job.Unit))
	if err != nil {
		return exitUsage, err
	}
	o.Order, o.Must = ids(*first), ids(*must)
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	found, err := place.Search(ctx, &file.Job, o)
	if err != nil {
		return exitUsage, err
	}
	var drawn *place.Rooms
	if *rooms {
		if drawn, err = drawRooms(ctx, &file.Job); err != nil {
			return exitUsage, err
		}
	}
	code := exitOpen
	if len(found.Spots) > 0 {
		if _, open := found.Spots[0].Worst(); !open {
			code = exitSettled
		}
	}
	if *asJSON {
		return code, writeJSON(s.out, spotsJSON(found, drawn))
	}
	spotReport{report{s: s, unit: unitOf(file.Job.Unit), job: &file.Job}}.print(found, drawn)
	return code, nil
}

// drawRooms counts the rooms in which the safety answers fit where the bed of a job stands.
func drawRooms(ctx context.Context, j *job.Job) (*place.Rooms, error) {
	scene, answers, err := fit.Answers(j)
	if err != nil {
		return nil, err
	}
	r, err := place.PlausibleRooms(ctx, scene, answers, place.RoomsOptions{})
	return &r, err
}

func measureIDs() []string {
	var out []string
	for _, c := range place.Criteria() {
		if c.Measure {
			out = append(out, c.ID)
		}
	}
	return out
}

// leastStep is the smallest step that is tried, so that a slip does not keep a machine busy for hours.
const leastStep = length.Millimetre

// ids takes a list of ids apart; nil where none is given.
func ids(text string) []string {
	if text == "" {
		return nil
	}
	return strings.Split(text, ",")
}

func placeOptions(step string, ends bool, unit length.Unit) (o place.Options, err error) {
	if step != "" {
		if o.Step, err = length.Parse(step, length.Context{Unit: unit}); err != nil {
			return o, err
		}
		if o.Step < leastStep {
			return o, fmt.Errorf("--step %s: want 1 mm or more", step)
		}
	}
	if ends {
		o.Turns = []job.Turn{job.AgainstSide, job.AgainstLeft, job.AgainstRight}
	}
	return o, nil
}

// The JSON of place: lengths in mm; from and to are the near side of the bed from the wall's first corner; null where there is no number.
type (
	jsonSpots struct {
		Spots   []jsonSpot `json:"spots"`
		Walls   []jsonNo   `json:"walls"`
		Tried   int        `json:"tried"`
		Missing string     `json:"missing"`
		Rooms   *jsonRooms `json:"rooms"`
	}
	jsonRooms struct {
		Drawn    int            `json:"drawn"`
		Fit      int            `json:"fit"`
		Share    *float64       `json:"share"`
		U        *float64       `json:"u"`
		Asked    []string       `json:"asked"`
		Untold   []string       `json:"untold"`
		Accepted []string       `json:"accepted"`
		Fails    map[string]int `json:"fails"`
		Moves    string         `json:"moves_most"`
	}
	jsonSpot struct {
		Wall     string        `json:"wall"`
		From     float64       `json:"from"`
		To       float64       `json:"to"`
		Turn     string        `json:"turn"`
		Mirror   bool          `json:"mirror"`
		Head     string        `json:"head"`
		Place    jsonPlace     `json:"place"`
		Sure     bool          `json:"sure"`
		Verdicts []jsonVerdict `json:"verdicts"`
		Comfort  jsonComfort   `json:"comfort"`
		Rank     int           `json:"rank"`
	}
	jsonPlace struct {
		Wall     string   `json:"wall"`
		From     string   `json:"from"`
		Along    float64  `json:"along"`
		Gap      *float64 `json:"gap"`
		Against  string   `json:"against"`
		Mirrored bool     `json:"mirrored"`
	}
	jsonVerdict struct {
		ID        string   `json:"id"`
		Verdict   string   `json:"verdict"`
		Spare     *float64 `json:"spare"`
		PlusMinus *float64 `json:"plus_minus"`
		Reason    string   `json:"reason"`
		Ask       string   `json:"ask"`
	}
	jsonComfort struct {
		Way    *float64 `json:"way_length"`
		Window *float64 `json:"pillow_window"`
		Outlet *float64 `json:"pillow_outlet"`
		Square *float64 `json:"free_square"`
		Studs  int      `json:"studs_behind"`
	}
	jsonNo struct {
		Wall    string   `json:"wall"`
		Reasons []string `json:"reasons"`
	}
)

func spotsJSON(r place.Result, drawn *place.Rooms) jsonSpots {
	out := jsonSpots{Spots: []jsonSpot{}, Walls: []jsonNo{}, Tried: r.Tried, Missing: r.Missing}
	for i := range r.Spots {
		out.Spots = append(out.Spots, spotJSON(&r.Spots[i]))
	}
	for _, w := range r.Walls {
		out.Walls = append(out.Walls, jsonNo{w.Wall, list(w.Reasons)})
	}
	if drawn != nil {
		out.Rooms = &jsonRooms{drawn.N, drawn.Fit, known(drawn.Share()), known(drawn.U()), list(drawn.Asked), list(drawn.Untold), list(drawn.Accepted), map[string]int{}, drawn.Moves}
		for _, f := range drawn.Fails {
			out.Rooms.Fails[f.ID] = f.N
		}
	}
	return out
}

func spotJSON(p *place.Spot) jsonSpot {
	c := &p.Comfort
	out := jsonSpot{
		Wall: p.Wall, From: p.From, To: p.To, Turn: string(p.Turn), Mirror: p.Mirror, Head: p.Head, Sure: p.Answers != nil, Rank: p.Rank,
		Place:   jsonPlace{p.Place.Wall, p.Place.From, p.Place.Along.MM(), number(p.Place.Gap.Set, p.Place.Gap.Value.MM()), string(p.Place.Turn), p.Place.Mirror},
		Comfort: jsonComfort{known(c.Way), known(c.Window), known(c.Outlet), known(c.Square), c.Studs},
	}
	for _, v := range p.Asked {
		a, _ := p.Answer(v.ID)
		out.Verdicts = append(out.Verdicts, jsonVerdict{v.ID, v.Verdict.String(), number(a.HasSpare, a.Spare), number(a.HasSpare, a.PlusMinus), a.Reason, a.Ask})
	}
	return out
}

// known is a number that may be missing.
func known(v float64) *float64 { return number(v == v, v) }

// spotReport prints spots for people.
type spotReport struct{ report }

func (r spotReport) print(found place.Result, drawn *place.Rooms) {
	if found.Missing != "" {
		r.line("Cannot tell yet: %s", found.Missing)
		return
	}
	r.line("%d places tried; what counts first: safety answers, then the build, then comfort", found.Tried)
	for i := range found.Spots {
		r.spot(&found.Spots[i])
	}
	if len(found.Walls) > 0 {
		r.line("\nWalls without a spot")
	}
	for _, w := range found.Walls {
		r.line("    %s: %s", wallName(w.Wall), wrapped(strings.Join(w.Reasons, "; "), 90, "        "))
	}
	if drawn != nil {
		r.rooms(drawn)
	}
	r.line("\n%s", wrapped(fit.Caution, 100, ""))
}

// rooms tells how many plausible rooms the bed fits in where it stands now.
func (r spotReport) rooms(d *place.Rooms) {
	r.line("\nWhere it stands now, all safety answers that hang on the room fit")
	r.line("    %s", d.Words())
	for _, f := range d.Fails {
		r.line("    %s does not in %d of %d", f.ID, f.N, d.N)
	}
	if d.Moves != "" {
		r.line("    what moves it most is the reading %s", d.Moves)
	}
	if len(d.Untold) > 0 {
		r.line("    %s", wrapped("left out, since nobody can tell yet: "+strings.Join(d.Untold, ", "), 94, "        "))
	}
	if len(d.Accepted) > 0 {
		r.line("    %s", wrapped("left out, since it is accepted: "+strings.Join(d.Accepted, ", "), 94, "        "))
	}
}

// wallName writes a wall as people say it: "D to A".
func wallName(key string) string {
	letters := []rune(key)
	if len(letters) != 2 {
		return key
	}
	return string(letters[0]) + " to " + string(letters[1])
}

func (r spotReport) spot(p *place.Spot) {
	say := func(mm float64, how length.Rounding) string {
		return length.Format(length.FromMM(mm), length.Style{Unit: r.unit, Rounding: how})
	}
	title := strconv.Itoa(p.Rank) + "  " + wallName(p.Wall)
	if p.Head != "" {
		title += ", head at " + p.Head
	}
	if p.Turn != job.AgainstSide {
		title += ", " + string(p.Turn) + " at the wall"
	}
	if p.Mirror {
		title += ", built as its mirror image"
	}
	where := "in corner " + p.Place.From
	if p.Place.Along > 0 {
		where = say(p.Place.Along.MM(), length.Nearest) + " from corner " + p.Place.From
	}
	r.line("\n%s", title)
	r.line("    %s; slides %s, free wall %s", where, say(p.Slides(), length.TowardZero), say(p.Free(), length.TowardZero))
	r.open(p)
	r.line("    %s", wrapped(comfortWords(&p.Comfort, say), 96, "        "))
}

// open lists what does not fit, cannot be told or is too close there, in the order that counts.
func (r spotReport) open(p *place.Spot) {
	none := true
	for _, v := range p.Asked {
		if !v.Verdict.Open() {
			continue
		}
		none = false
		words := v.Verdict.Words()
		if a, ok := p.Answer(v.ID); ok {
			words = a.Say(r.unit)
		}
		r.line("    %s %s", r.paint(v.Verdict, marks[v.Verdict]), wrapped(v.ID+": "+words, 94, "        "))
	}
	if none {
		r.line("    %s", r.paint(fit.Fits, "+ all that hangs on where it stands fits"))
	}
	if p.Answers == nil {
		r.line("    as if every reading were exact")
	}
}

func comfortWords(c *place.Comfort, say func(float64, length.Rounding) string) string {
	var out []string
	add := func(what string, mm float64) {
		if mm == mm {
			out = append(out, what+" "+say(mm, length.Nearest))
		}
	}
	add("way from the door", c.Way)
	add("pillow to outlet", c.Outlet)
	add("pillow to window", c.Window)
	add("largest clear square of floor", c.Square)
	if c.Studs > 0 {
		out = append(out, fmt.Sprintf("%d studs found behind the shelves", c.Studs))
	}
	return strings.Join(out, "; ")
}
