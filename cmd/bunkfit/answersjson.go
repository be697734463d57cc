package main

import (
	"fmt"
	"math"

	"bunkwright/furniture/ask"
	"bunkwright/room/length"
	"bunkwright/room/survey"
)

// The JSON of answers: lengths in mm, null where there is no number.
type (
	jsonAnswers struct {
		Readings  []jsonReading `json:"readings"`
		Conflicts []jsonDoubt   `json:"conflicts"`
		Chains    []jsonChain   `json:"chains"`
		Missing   []jsonMissing `json:"missing"`
		Again     []jsonAgain   `json:"again"`
	}
	jsonReading struct {
		ID         string        `json:"id"` // the key of the quantity and the place among its readings, 1 the first
		Key        string        `json:"key"`
		Value      float64       `json:"value"`
		U          float64       `json:"u"`
		How        string        `json:"how"`
		By         string        `json:"by"`
		When       string        `json:"when"`
		State      string        `json:"state"`
		Off        *float64      `json:"off"`
		Redundancy float64       `json:"redundancy"`
		W          *float64      `json:"w"`
		Smallest   *float64      `json:"smallest"`  // the smallest slip that would be noticed; null: none would
		Unnoticed  jsonUnnoticed `json:"unnoticed"` // what that slip would do
	}
	jsonUnnoticed struct {
		Slip    float64     `json:"slip"` // smallest, or a foot where nothing would be noticed
		Corners []jsonShift `json:"corners"`
	}
	jsonShift struct {
		Corner string  `json:"corner"`
		X      float64 `json:"x"`
		Y      float64 `json:"y"`
	}
	jsonDoubt struct {
		Text     string      `json:"text"`
		Readings []string    `json:"readings"` // ids, the likeliest first; one: it is found
		Off      []float64   `json:"off"`      // how far each is off, if it alone is
		Size     float64     `json:"size"`     // the largest of them, without sign
		Least    float64     `json:"least"`    // and the smallest
		Believed bool        `json:"believed"`
		Causes   []jsonCause `json:"causes"`
	}
	jsonCause struct {
		Reading  string  `json:"reading"`
		ID       string  `json:"id"`
		Cause    string  `json:"cause"`
		Question string  `json:"question"`
		Value    float64 `json:"value"`
		About    bool    `json:"about"`
	}
	jsonChain struct {
		Wall      string   `json:"wall"`
		Pieces    []string `json:"pieces"`
		Whole     string   `json:"whole"`
		Off       float64  `json:"off"`
		Tolerance float64  `json:"tolerance"`
		AddsUp    bool     `json:"adds_up"`
	}
	jsonMissing struct {
		Key     string   `json:"key"`
		Text    string   `json:"text"`
		Answers []string `json:"answers"`
	}
	jsonAgain struct {
		Key       string   `json:"key"`
		Read      bool     `json:"read"`
		Answers   []string `json:"answers"`
		Unnoticed []string `json:"unnoticed"`
		Conflict  bool     `json:"conflict"`
		Worth     float64  `json:"worth"`
	}
)

// usualSlip is what an unnoticed slip is shown for where nothing would be noticed: a foot, mm.
const usualSlip = 304.8

func (r readings) json() jsonAnswers {
	out := jsonAnswers{Readings: []jsonReading{}, Conflicts: []jsonDoubt{}, Chains: []jsonChain{}, Missing: []jsonMissing{}, Again: []jsonAgain{}}
	for i, src := range r.s.Sources {
		if src.Index >= 0 {
			out.Readings = append(out.Readings, r.reading(i))
		}
	}
	for _, c := range r.s.Conflicts {
		out.Conflicts = append(out.Conflicts, r.doubt(c))
	}
	for _, c := range r.s.Chains() {
		last := len(c.Keys) - 1
		out.Chains = append(out.Chains, jsonChain{c.Wall, c.Keys[:last], c.Keys[last], c.Off(), c.Tolerance, c.AddsUp()})
	}
	for _, m := range r.missing {
		out.Missing = append(out.Missing, jsonMissing{m.Key, m.Text, some(m.Answers)})
	}
	for _, a := range r.again {
		out.Again = append(out.Again, againJSON(a))
	}
	return out
}

func againJSON(a ask.Again) jsonAgain {
	return jsonAgain{a.Key, a.Read, some(a.Open), some(a.Unnoticed), a.Conflict, a.Worth}
}

// some turns nothing into an empty list.
func some(list []string) []string {
	if list == nil {
		return []string{}
	}
	return list
}

func (r readings) id(source int) string {
	src := r.s.Sources[source]
	return fmt.Sprintf("%s.%d", src.Key, src.Index+1)
}

func (r readings) reading(source int) jsonReading {
	src, st, check := r.s.Sources[source], r.s.Standing(source), r.s.Checks()[source]
	out := jsonReading{ID: r.id(source), Key: src.Key, Value: src.Value, U: src.U, How: string(src.How), By: src.By, When: src.When,
		State: string(st.State), Off: number(st.Conflict >= 0, st.Off), Redundancy: st.Redundancy, W: number(check.Checked(), check.W),
		Smallest: number(!math.IsInf(st.Smallest, 1), st.Smallest)}
	out.Unnoticed = jsonUnnoticed{Slip: min(st.Smallest, usualSlip), Corners: []jsonShift{}}
	if !math.IsInf(st.Smallest, 1) {
		out.Unnoticed.Slip = st.Smallest
	}
	const still = 1e-6 // mm
	for _, shift := range r.s.IfOff(source, out.Unnoticed.Slip) {
		if math.Hypot(shift.X, shift.Y) > still {
			out.Unnoticed.Corners = append(out.Unnoticed.Corners, jsonShift{shift.Corner, shift.X, shift.Y})
		}
	}
	return out
}

func (r readings) doubt(c survey.Conflict) jsonDoubt {
	style := length.Style{Unit: unitOf(r.file.Job.Unit)}
	out := jsonDoubt{Text: r.s.Say(c, style), Believed: c.Believed, Causes: []jsonCause{}}
	out.Least, out.Size = c.Size()
	for _, one := range c.Suspects {
		id := r.id(one.Source)
		out.Readings, out.Off = append(out.Readings, id), append(out.Off, one.Off)
		for _, cause := range one.Causes {
			out.Causes = append(out.Causes, jsonCause{id, cause.ID, cause.Cause, cause.Question(style), cause.Value.MM(), cause.About})
		}
	}
	return out
}
