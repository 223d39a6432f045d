// Package page writes audit.html: one file, no network, to read, filter and print.
package page

import (
	"embed"
	"encoding/json"
	"fmt"
	"html/template"
	"io"
	"math"
	"net/url"
	"slices"
	"strings"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
	"lineaudit/report"
)

//go:embed page.html page.css page.js
var files embed.FS

// maxRows is how many rows of a table the page carries; the rest is in the data files.
const maxRows = 5000

// maxPictures is how many bytes of drawings the page carries, those of the worst findings.
const maxPictures = 4 << 20

// Write writes the page. Marked says which files have a marked copy, as a path
// relative to the page.
func Write(w io.Writer, a *report.Audit, marked map[string]string) error {
	t, err := template.New("page.html").Funcs(template.FuncMap{"plural": report.Plural, "signClass": signClass, "where": report.Where}).ParseFS(files, "page.html")
	if err != nil {
		return err
	}
	css, err := files.ReadFile("page.css")
	if err != nil {
		return err
	}
	js, err := files.ReadFile("page.js")
	if err != nil {
		return err
	}
	data, err := json.Marshal(content(a, marked))
	if err != nil {
		return err
	}
	return t.Execute(w, map[string]any{
		"Audit": a, "Counts": a.Archive.Counts, "Grades": grades(a), "Style": template.CSS(css), "Script": template.JS(js),
		// json.Marshal escapes <, > and &, so the text cannot end the script element.
		"Data":   template.JS(data),
		"Charts": charts(a), "Lead": leads[a.For], "Blocks": a.FirstPage(), "Caution": report.PaperCaution, "Top": top(a, 25), "Broken": broken(a),
	})
}

// signClass is the look of the sign of a line: a grade in its colour.
func signClass(sign string) string {
	for _, g := range []string{"danger", "fault", "caution", "unknown"} {
		if strings.HasSuffix(sign, g) {
			return "grade g-" + g
		}
	}
	return "sign"
}

// leads says in one sentence what the page is for.
var leads = map[report.Reader]string{
	report.Service:    "Written for service: sites to visit first, what to measure there, what to change.",
	report.Bid:        "Written for a bid review: what is under-sized, what does not add up, what to ask.",
	report.Compliance: "Written for compliance: what is met, not met, or cannot be shown, with the source of every limit.",
}

type gradeCount struct {
	Grade string
	N     int
	Means string
}

func grades(a *report.Audit) []gradeCount {
	n := a.Archive.Counts
	return []gradeCount{
		{"danger", n.Danger, "heat, fire, damaged equipment, or an emergency message not heard"},
		{"fault", n.Fault, "past a limit"},
		{"caution", n.Caution, "inside the limit, short of good practice"},
		{"unknown", n.Unknown, "cannot be shown"},
	}
}

func broken(a *report.Audit) []string {
	var out []string
	for _, r := range a.Results() {
		for _, b := range r.Broken {
			out = append(out, report.JobName(r.Job)+": "+b)
		}
	}
	return out
}

// pageData is what the script of the page reads.
type pageData struct {
	Findings []pageFinding     `json:"findings"`
	Hidden   int               `json:"hidden"` // findings that did not fit
	Tables   []pageTable       `json:"tables"`
	Pictures map[string]string `json:"pictures"` // drawings of lines, by key
	ToSend   []string          `json:"toSend"`   // the questions as they are sent
}

type pageFinding struct {
	Rank      int         `json:"rank"`
	Score     float64     `json:"score"`
	Factors   string      `json:"factors"`
	Grade     string      `json:"grade"`
	Level     int         `json:"level"`
	Certainty string      `json:"certainty"`
	Rule      string      `json:"rule"`
	Title     string      `json:"title"`
	Why       string      `json:"why"`
	Site      string      `json:"site"`
	Job       string      `json:"job"`
	Place     string      `json:"place"`
	Room      string      `json:"room"`
	File      string      `json:"file"`
	Cell      string      `json:"cell"`
	Link      string      `json:"link,omitempty"`
	Message   string      `json:"message"`
	Higher    string      `json:"higher,omitempty"`
	Ask       string      `json:"ask,omitempty"`
	Limit     string      `json:"limit,omitempty"`
	Source    string      `json:"source,omitempty"`
	Ohm       string      `json:"ohm,omitempty"`
	Evidence  [][3]string `json:"evidence"`
	Assumed   []string    `json:"assumed"`
	Remedies  []string    `json:"remedies"`
	NoRemedy  string      `json:"noRemedy,omitempty"`
	Cautions  []string    `json:"cautions"`
	Picture   string      `json:"picture,omitempty"`
	ID        string      `json:"id"`
	Decided   string      `json:"decided,omitempty"` // the disposition of an earlier audit
}

type pageTable struct {
	Name    string       `json:"name"`
	Title   string       `json:"title"`
	Note    string       `json:"note"`
	Columns []pageColumn `json:"columns"`
	Rows    [][]any      `json:"rows"`
	Hidden  int          `json:"hidden"`
	Open    bool         `json:"open"`
}

type pageColumn struct {
	Label   string `json:"label"`
	Numeric bool   `json:"numeric"`
}

// open lists the tables that come first and stand open on the page, by reader.
var open = map[report.Reader][]string{
	report.Service:    {"visits", "sites", "first"},
	report.Bid:        {"questions", "undersized", "disagreements", "completeness"},
	report.Compliance: {"overview", "register", "not-examined", "files"},
}

func content(a *report.Audit, marked map[string]string) pageData {
	d := pageData{Findings: []pageFinding{}, Pictures: map[string]string{}}
	sites := a.SiteNames()
	results := map[*audit.Finding]*audit.Result{}
	for _, r := range a.Archive.Results {
		for _, f := range r.Findings {
			results[f] = r
		}
	}
	drawn := 0
	for i, f := range a.Archive.Findings {
		if i == 2*maxRows {
			d.Hidden = len(a.Archive.Findings) - i
			break
		}
		p := findingOf(f, results[f], sites[f])
		if path, ok := marked[f.At.File]; ok {
			p.Link = (&url.URL{Path: path}).EscapedPath()
		}
		if d := a.Dispositions[f.ID]; d != (report.Disposition{}) {
			p.Decided = strings.Trim(d.Decision+"; "+d.Remark, "; ")
		}
		if key, picture := pictureOf(f, results[f]); key != "" && drawn+len(picture) < maxPictures {
			if d.Pictures[key] == "" {
				drawn += len(picture)
			}
			d.Pictures[key], p.Picture = picture, key
		}
		d.Findings = append(d.Findings, p)
	}
	for row := range a.QuestionsTable().Rows {
		if len(d.ToSend) == maxRows {
			break
		}
		d.ToSend = append(d.ToSend, row[len(row)-1].Words)
	}
	tables := slices.DeleteFunc(a.SheetTables(), func(t report.Table) bool { return t.Name == "findings" || t.Count == 0 })
	leading := open[a.For]
	place := func(t report.Table) int {
		if i := slices.Index(leading, t.Name); i >= 0 {
			return i - len(leading)
		}
		return 0
	}
	slices.SortStableFunc(tables, func(x, y report.Table) int { return place(x) - place(y) })
	for _, t := range tables {
		d.Tables = append(d.Tables, tableOf(t, slices.Contains(leading, t.Name)))
	}
	return d
}

func findingOf(f *audit.Finding, r *audit.Result, site string) pageFinding {
	p := pageFinding{Rank: f.Rank, Score: math.Round(f.Score*10) / 10, Grade: f.Grade.String(), Level: int(f.Grade), Certainty: f.Certainty.String(),
		Rule: f.Rule.Name, Title: f.Rule.Title, Why: f.Rule.Why, Site: site, Job: report.JobName(r.Job), Place: f.Place, Room: f.Room,
		File: f.At.File, Cell: f.At.String(), Message: f.Message, Higher: f.Higher, Ask: f.Ask, Source: f.LimitSource, Ohm: report.Bounds(f.ExpectedOhm),
		NoRemedy: f.NoRemedy, ID: f.ID, Evidence: [][3]string{}, Assumed: []string{}, Remedies: []string{}, Cautions: append([]string{}, f.Cautions...)}
	p.Factors = fmt.Sprintf("100 × severity %s × extent %s × reach %s × certainty %s", report.Figure(f.Factors.Severity), report.Figure(f.Factors.Extent),
		report.Figure(f.Factors.Reach), report.Figure(f.Factors.Certainty))
	if f.Unit != "" {
		p.Limit = strings.TrimSpace(report.Figure(f.Limit) + " " + f.Unit)
	}
	for i, e := range f.Cells {
		if i == 200 {
			p.Evidence = append(p.Evidence, [3]string{"", fmt.Sprintf("and %d more cells, in findings.json", len(f.Cells)-i), ""})
			break
		}
		at := e.At
		if at.File == f.At.File {
			at.File = "" // it is named above
		}
		p.Evidence = append(p.Evidence, [3]string{strings.TrimSpace(at.String()), e.Written, e.Role})
	}
	for _, s := range f.Assumed {
		p.Assumed = append(p.Assumed, assumption(s))
	}
	for _, m := range f.Remedies {
		p.Remedies = append(p.Remedies, strings.TrimSpace(m.Change+". "+m.Effect))
	}
	return p
}

func assumption(s schedule.Assumption) string {
	text := s.Field + ": " + s.TakenAs + " (" + s.How.String()
	if s.Because != "" {
		text += ", " + s.Because
	}
	return text + ")"
}

func tableOf(t report.Table, isOpen bool) pageTable {
	p := pageTable{Name: t.Name, Title: t.Title, Note: t.Note, Open: isOpen, Rows: [][]any{}}
	for _, c := range t.Columns {
		if c.Data {
			continue
		}
		p.Columns = append(p.Columns, pageColumn{c.Heading(), !c.IsText()})
	}
	for row := range t.Rows {
		if len(p.Rows) == maxRows {
			p.Hidden++
			continue
		}
		var cells []any
		for i, v := range row {
			switch c := t.Columns[i]; {
			case c.Data:
			case v.IsNum && c.Kind == report.Figures:
				cells = append(cells, report.Round(v.Number))
			case v.IsNum:
				cells = append(cells, v.Number)
			default:
				cells = append(cells, v.Words)
			}
		}
		p.Rows = append(p.Rows, cells)
	}
	return p
}

// top lists the first findings for readers without scripts.
func top(a *report.Audit, n int) []*audit.Finding {
	return a.Archive.Findings[:min(n, len(a.Archive.Findings))]
}
