package main

import (
	"encoding/json"
	"io"

	"example.org/lakelarder/units/cite"
)

// outRecipe is a result as JSON: the words are those of the printed sheet, and empty fields are left out.
type outRecipe struct {
	Title    string       `json:"title"`
	About    string       `json:"about"`
	Verdict  string       `json:"verdict"`
	Parts    []outPart    `json:"parts"`
	Cautions []outCaution `json:"cautions"`
}

type outPart struct {
	Part     string       `json:"part"`
	Absent   bool         `json:"absent,omitempty"`
	Verdict  string       `json:"verdict,omitempty"`
	Refusal  string       `json:"refusal,omitempty"`
	Note     string       `json:"note,omitempty"`
	Governs  []outFigure  `json:"governs,omitempty"`
	Computed []outFigure  `json:"computed,omitempty"`
	Findings []outFinding `json:"findings,omitempty"`
}

type outFigure struct {
	What   string     `json:"what"`
	Figure string     `json:"figure"`
	From   *outSource `json:"from,omitempty"`
}

type outFinding struct {
	What       string      `json:"what"`
	Kind       string      `json:"kind"`
	Line       string      `json:"line"`
	Stated     string      `json:"stated,omitempty"`
	Published  string      `json:"published,omitempty"`
	Difference string      `json:"difference,omitempty"`
	From       *outSource  `json:"from,omitempty"`
	Known      *outCaution `json:"known,omitempty"`
}

type outCaution struct {
	Text string     `json:"text"`
	From *outSource `json:"from,omitempty"`
}

type outSource struct {
	Document string `json:"document,omitempty"`
	Place    string `json:"place,omitempty"`
	Basis    string `json:"basis"`
}

func writeJSON(w io.Writer, all []result) error {
	out := make([]outRecipe, 0, len(all))
	for _, r := range all {
		o := outRecipe{Title: r.title, About: r.about, Verdict: r.verdict.String()}
		for _, s := range r.steps {
			o.Parts = append(o.Parts, partOut(s))
		}
		for _, c := range r.cautions {
			o.Cautions = append(o.Cautions, outCaution{Text: c.Text, From: sourceOut(c.Citation)})
		}
		out = append(out, o)
	}
	encoder := json.NewEncoder(w)
	encoder.SetIndent("", "  ")
	encoder.SetEscapeHTML(false)
	return encoder.Encode(out)
}

func partOut(s step) outPart {
	if s.verdict == 0 {
		return outPart{Part: s.name, Absent: true}
	}
	o := outPart{Part: s.name, Verdict: s.verdict.String(), Refusal: s.refusal, Note: s.note}
	for _, g := range s.governs {
		o.Governs = append(o.Governs, outFigure{What: g.what, Figure: g.text, From: sourceOut(g.citation)})
	}
	for _, c := range s.computed {
		o.Computed = append(o.Computed, outFigure{What: c.what, Figure: c.text, From: sourceOut(c.citation)})
	}
	for _, f := range s.findings {
		found := outFinding{What: f.what, Kind: f.kind, Line: f.line, Stated: f.stated, Published: f.published, Difference: f.difference, From: sourceOut(f.citation)}
		if f.known.Text != "" {
			found.Known = &outCaution{Text: f.known.Text, From: sourceOut(f.known.Citation)}
		}
		o.Findings = append(o.Findings, found)
	}
	return o
}

func sourceOut(c cite.Citation) *outSource {
	if c.IsZero() {
		return nil
	}
	o := &outSource{Place: c.Where, Basis: c.Basis.String()}
	if c.Source != 0 {
		o.Document = c.Source.String()
	}
	return o
}
