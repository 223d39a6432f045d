package data

import (
	"bytes"
	_ "embed"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"math"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
	"lineaudit/report"
)

// SchemaID names the form of findings.json; it changes when a field changes its meaning.
const SchemaID = report.FindingsSchema + "1"

// Findings is the content of findings.json.
type Findings struct {
	Schema   string    `json:"schema" jsonschema:"description=the form of this file"`
	Version  string    `json:"version" jsonschema:"description=version of the program that wrote it"`
	Reader   string    `json:"reader" jsonschema:"enum=service,enum=bid,enum=compliance"`
	Date     string    `json:"date,omitempty" jsonschema:"description=the date that the user gave"`
	Counts   Counts    `json:"counts"`
	Findings []Finding `json:"findings"`
}

// Counts are the numbers of the summary; superseded jobs are left out of all but their own.
type Counts struct {
	Files      int `json:"files"`
	Jobs       int `json:"jobs"`
	Superseded int `json:"superseded"`
	Danger     int `json:"danger"`
	Fault      int `json:"fault"`
	Caution    int `json:"caution"`
	Unknown    int `json:"unknown"`
	Questions  int `json:"questions"`
	Passed     int `json:"passed" jsonschema:"description=checks that held"`
	Unshown    int `json:"unshown" jsonschema:"description=checks that could not be decided"`
}

// Finding is one finding of findings.json.
type Finding struct {
	ID           string       `json:"id" jsonschema:"description=the same in the next run as long as job and rule and place are the same"`
	Rank         int          `json:"rank,omitempty" jsonschema:"description=over the archive from 1; absent for superseded jobs"`
	Score        float64      `json:"score" jsonschema:"minimum=0,maximum=100"`
	Factors      Factors      `json:"factors"`
	Grade        string       `json:"grade" jsonschema:"enum=danger,enum=fault,enum=caution,enum=unknown"`
	Certainty    string       `json:"certainty" jsonschema:"enum=certain,enum=possible,enum=cannot be shown"`
	Rule         string       `json:"rule"`
	Title        string       `json:"title"`
	Job          string       `json:"job"`
	Site         string       `json:"site"`
	SupersededBy string       `json:"superseded_by,omitempty"`
	Place        string       `json:"place"`
	Room         string       `json:"room,omitempty"`
	Zone         string       `json:"zone,omitempty"`
	At           Place        `json:"at"`
	Cells        []Evidence   `json:"cells"`
	Assumed      []Assumption `json:"assumed"`
	Measured     *float64     `json:"measured,omitempty"`
	MeasuredLow  *float64     `json:"measured_low,omitempty"`
	MeasuredHigh *float64     `json:"measured_high,omitempty"`
	Limit        *float64     `json:"limit,omitempty"`
	Unit         string       `json:"unit,omitempty"`
	LimitSource  string       `json:"limit_source,omitempty"`
	Message      string       `json:"message"`
	Higher       string       `json:"higher,omitempty"`
	Ask          string       `json:"ask,omitempty"`
	Cautions     []string     `json:"cautions"`
	Remedies     []Remedy     `json:"remedies"`
	NoRemedy     string       `json:"no_remedy,omitempty"`
}

// Factors are what the score is the product of.
type Factors struct {
	Severity  float64 `json:"severity"`
	Extent    float64 `json:"extent"`
	Reach     float64 `json:"reach"`
	Certainty float64 `json:"certainty"`
}

// Place is a cell of an input file; row and column count from 1.
type Place struct {
	File   string `json:"file"`
	Sheet  string `json:"sheet,omitempty"`
	Cell   string `json:"cell,omitempty"`
	Row    int    `json:"row,omitempty"`
	Column int    `json:"column,omitempty"`
}

// Evidence is a cell that a finding rests on.
type Evidence struct {
	At      Place  `json:"at"`
	Written string `json:"written"`
	Role    string `json:"role,omitempty"`
}

// Assumption is a value under a finding that was taken rather than stated.
type Assumption struct {
	At      Place  `json:"at"`
	Field   string `json:"field"`
	Written string `json:"written,omitempty"`
	TakenAs string `json:"taken_as"`
	How     string `json:"how"`
	Because string `json:"because,omitempty"`
}

// Remedy is a computed way out.
type Remedy struct {
	Kind   string   `json:"kind"`
	Change string   `json:"change"`
	Part   string   `json:"part,omitempty"`
	Before *float64 `json:"before,omitempty"`
	After  *float64 `json:"after,omitempty"`
	Unit   string   `json:"unit,omitempty"`
	Effect string   `json:"effect,omitempty"`
	Source string   `json:"source,omitempty"`
}

//go:embed findings.schema.json
var schema []byte

// Schema returns the JSON Schema of findings.json. A test writes it from the
// types, so that the program need not hold what generates it.
func Schema() []byte { return schema }

// WriteFindings writes findings.json.
func WriteFindings(w io.Writer, a *report.Audit) error {
	n := a.Archive.Counts
	out := Findings{
		Schema: SchemaID, Version: a.Version, Reader: string(a.For), Date: a.Date,
		Counts: Counts{Files: len(a.Files), Jobs: n.Jobs, Superseded: n.Superseded, Danger: n.Danger, Fault: n.Fault, Caution: n.Caution,
			Unknown: n.Unknown, Questions: n.Questions, Passed: n.Passed, Unshown: n.Unshown},
		Findings: []Finding{},
	}
	results := map[*audit.Finding]*audit.Result{}
	for _, r := range a.Results() {
		for _, f := range r.Findings {
			results[f] = r
		}
	}
	frame, err := json.MarshalIndent(out, "", "  ")
	if err != nil {
		return err
	}
	// The findings stand last in the frame; they are written one by one.
	head, found := bytes.CutSuffix(frame, []byte("[]\n}"))
	if !found {
		return errors.New("the findings are not the last field")
	}
	if _, err := w.Write(head); err != nil {
		return err
	}
	before, after := "[", "[]\n}\n"
	for _, f := range a.AllFindings() {
		text, err := json.MarshalIndent(finding(f, results[f]), "    ", "  ")
		if err != nil {
			return err
		}
		if _, err := fmt.Fprintf(w, "%s\n    %s", before, text); err != nil {
			return err
		}
		before, after = ",", "\n  ]\n}\n"
	}
	_, err = io.WriteString(w, after)
	return err
}

func finding(f *audit.Finding, r *audit.Result) Finding {
	o := Finding{
		ID: f.ID, Rank: f.Rank, Score: round(f.Score), Grade: f.Grade.String(), Certainty: f.Certainty.String(),
		Factors: Factors{round(f.Factors.Severity), round(f.Factors.Extent), round(f.Factors.Reach), round(f.Factors.Certainty)},
		Rule:    f.Rule.Name, Title: f.Rule.Title, Job: report.JobName(r.Job), Site: r.Job.Site.Value, SupersededBy: r.SupersededBy,
		Place: f.Place, Room: f.Room, Zone: f.Zone, At: place(f.At), Cells: []Evidence{}, Assumed: []Assumption{}, Remedies: []Remedy{}, Cautions: []string{},
		Limit: finite(f.Limit), Unit: f.Unit, LimitSource: f.LimitSource, Message: f.Message, Higher: f.Higher, Ask: f.Ask, NoRemedy: f.NoRemedy,
	}
	if v, ok := report.Measured(f); ok {
		o.Measured, o.MeasuredLow, o.MeasuredHigh = finite(v), finite(f.Measured.Low), finite(f.Measured.High)
	}
	o.Cautions = append(o.Cautions, f.Cautions...)
	for _, e := range f.Cells {
		o.Cells = append(o.Cells, Evidence{At: place(e.At), Written: e.Written, Role: e.Role})
	}
	for _, s := range f.Assumed {
		o.Assumed = append(o.Assumed, Assumption{At: place(s.At), Field: s.Field, Written: s.Written, TakenAs: s.TakenAs, How: s.How.String(), Because: s.Because})
	}
	for _, m := range f.Remedies {
		o.Remedies = append(o.Remedies, Remedy{Kind: m.Kind, Change: m.Change, Part: m.Part, Before: finite(m.Before), After: finite(m.After), Unit: m.Unit, Effect: m.Effect, Source: m.Source})
	}
	return o
}

func place(r schedule.Ref) Place {
	return Place{File: r.File(), Sheet: r.Sheet(), Cell: r.Cell(), Row: int(r.Row), Column: int(r.Col)}
}

// finite returns nil for a number that JSON cannot hold.
func finite(v float64) *float64 {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return nil
	}
	v = round(v)
	return &v
}

// round drops the noise of binary fractions beyond nine significant digits.
func round(v float64) float64 {
	if v == 0 || math.IsNaN(v) || math.IsInf(v, 0) {
		return v
	}
	scale := math.Pow(10, 8-math.Floor(math.Log10(math.Abs(v))))
	return math.Round(v*scale) / scale
}
