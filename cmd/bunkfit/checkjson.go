package main

import (
	"encoding/json"
	"io"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/furniture/yardstick"
)

// The JSON of check: lengths in mm, areas and angles in their own unit, null where there is no number.
type (
	jsonCheck struct {
		Job       jsonJob        `json:"job"`
		Problems  []jsonProblem  `json:"problems"`
		Gaps      []jsonGap      `json:"gaps"`
		Conflicts []jsonConflict `json:"conflicts"`
		Answers   []jsonAnswer   `json:"answers"`
	}
	jsonJob struct {
		Name   string   `json:"name"`
		File   string   `json:"file"`
		Unit   string   `json:"unit"`
		Places []string `json:"places"`
	}
	jsonProblem struct {
		Key   string `json:"key"`
		Line  int    `json:"line"`
		Text  string `json:"text"`
		Right string `json:"right"`
	}
	jsonGap struct {
		Key  string `json:"key"`
		Text string `json:"text"`
	}
	// Of readings that do not agree: the likeliest to be wrong, what the others say, and the difference.
	jsonConflict struct {
		Key    string  `json:"key"`
		First  float64 `json:"first"`
		Second float64 `json:"second"`
		Size   float64 `json:"size"`
		Agree  float64 `json:"agree"`
	}
	jsonFigure struct {
		Value float64 `json:"value"`
		Unit  string  `json:"unit"`
	}
	jsonRule struct {
		ID       string    `json:"id"`
		Place    string    `json:"place"`
		Relation string    `json:"relation"`
		Need     []float64 `json:"need"`
		Value    *float64  `json:"value"`
		Unit     string    `json:"unit"`
		Spare    *float64  `json:"spare"`
		U        *float64  `json:"u"`
		Verdict  string    `json:"verdict"`
		Force    string    `json:"force"`
		Reason   string    `json:"reason"`
		Ask      string    `json:"ask"`
		At       string    `json:"at"`
		Source   string    `json:"source"`
		Basis    string    `json:"basis"`
	}
	jsonInput struct {
		Key   string  `json:"key"`
		Value float64 `json:"value"`
		Unit  string  `json:"unit"`
		How   string  `json:"how"`
		By    string  `json:"by"`
		Share float64 `json:"share"`
	}
	jsonAnswer struct {
		ID        string                `json:"id"`
		Sentence  string                `json:"sentence"`
		Verdict   string                `json:"verdict"`
		Band      string                `json:"band"`
		Accepted  string                `json:"accepted"`
		Force     string                `json:"force"`
		Value     *float64              `json:"value"`
		Unit      string                `json:"unit"`
		Spare     *float64              `json:"spare"`
		PlusMinus *float64              `json:"plus_minus"`
		U         *float64              `json:"u"`
		Reason    string                `json:"reason"`
		Ask       string                `json:"ask"`
		Caution   string                `json:"caution"`
		Print     string                `json:"print"`
		Figures   map[string]jsonFigure `json:"figures"`
		Rules     []jsonRule            `json:"rules"`
		Inputs    []jsonInput           `json:"inputs"`
		Parts     []string              `json:"parts"`
		Notes     []string              `json:"notes"`
	}
)

func writeJSON(w io.Writer, v any) error {
	e := json.NewEncoder(w)
	e.SetIndent("", "  ")
	e.SetEscapeHTML(false)
	return e.Encode(v)
}

func checkJSON(f *jobfile.File, s *fit.Scene, answers []fit.Answer) jsonCheck {
	out := jsonCheck{
		Job:      jsonJob{f.Job.Name, f.Name, f.Job.Unit, list(f.Job.Places)},
		Problems: []jsonProblem{}, Gaps: []jsonGap{}, Conflicts: []jsonConflict{},
	}
	for _, p := range s.Problems() {
		out.Problems = append(out.Problems, jsonProblem{p.Key, f.Line(p.Key), p.Text, p.Right})
	}
	for _, g := range s.Survey.Gaps {
		out.Gaps = append(out.Gaps, jsonGap{g.Key, g.Text})
	}
	for _, c := range s.Survey.Conflicts {
		first := c.Suspects[0]
		value := s.Survey.Sources[first.Source].Value
		out.Conflicts = append(out.Conflicts, jsonConflict{c.Key, value, value - first.Off, first.Off, c.Agree})
	}
	for _, a := range answers {
		out.Answers = append(out.Answers, answerJSON(a))
	}
	return out
}

func answerJSON(a fit.Answer) jsonAnswer {
	out := jsonAnswer{
		ID: a.ID, Sentence: a.Sentence, Verdict: a.Verdict.String(), Band: a.Band, Accepted: a.Accepted, Force: a.Force.String(),
		Unit: string(a.Unit), Reason: a.Reason, Ask: a.Ask, Caution: a.Caution, Print: a.Print(),
		Value: number(a.Has, a.Value), Spare: number(a.HasSpare, a.Spare), PlusMinus: number(a.HasSpare, a.PlusMinus), U: number(a.HasSpare, a.U),
		Figures: map[string]jsonFigure{}, Rules: []jsonRule{}, Inputs: []jsonInput{}, Parts: list(a.Parts), Notes: list(a.Notes),
	}
	for _, f := range a.Figures {
		out.Figures[f.Name] = jsonFigure{f.Value, f.Unit}
	}
	for _, l := range a.Lines {
		out.Rules = append(out.Rules, ruleJSON(l))
	}
	for _, i := range a.Inputs {
		out.Inputs = append(out.Inputs, jsonInput(i))
	}
	return out
}

func ruleJSON(l fit.Line) jsonRule {
	need := l.Row.Need
	if need == nil || l.Row.Unit == yardstick.YesNo {
		need = []float64{}
	}
	return jsonRule{
		ID: l.Row.ID, Place: string(l.Place), Relation: string(l.Row.Relation), Need: need, Value: number(l.Has, l.Value), Unit: string(l.Row.Unit),
		Spare: number(l.HasSpare, l.Spare), U: number(l.HasSpare, l.U), Verdict: l.Verdict.String(), Force: l.Force.String(),
		Reason: l.Reason, Ask: l.Ask, At: l.At, Source: l.Row.Source, Basis: l.Row.Basis,
	}
}

func number(has bool, v float64) *float64 {
	if !has {
		return nil
	}
	return &v
}

func list(in []string) []string {
	if in == nil {
		return []string{}
	}
	return in
}
