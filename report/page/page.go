// Package page writes audit.html: one file, no network, to read, filter and print.
package page

import (
	"bytes"
	"embed"
	"encoding/json"
	"errors"
	"fmt"
	"html/template"
	"io"
	"math"
	"net/url"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

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
	return write(upright{w}, a, marked)
}

// upright passes on what is written to it, whole characters each time, without
// those that have no place in a page.
type upright struct{ to io.Writer }

func (u upright) Write(p []byte) (int, error) {
	out := p
	if mayHoldNoText(p) {
		out = bytes.Map(func(r rune) rune {
			if noText(r) {
				return -1
			}
			return r
		}, p)
	}
	if _, err := u.to.Write(out); err != nil {
		return 0, err
	}
	return len(p), nil
}

// mayHoldNoText looks at bytes, which is much cheaper than to look at
// characters: 0xC2 and 0xE2 begin those that have no place beside ASCII.
func mayHoldNoText(p []byte) bool {
	for _, c := range p {
		if c < ' ' && c != '\n' && c != '\t' || c == 0x7f || c == 0xC2 || c == 0xE2 {
			return true
		}
	}
	return !utf8.Valid(p)
}

// noText reports whether a character has no place in a page: it controls a
// terminal, or turns the direction of what follows it, so that the figures
// behind a text of a schedule would show the wrong way round.
func noText(r rune) bool {
	return unicode.IsControl(r) && r != '\n' && r != '\t' || r >= '\u202a' && r <= '\u202e' || r >= '\u2066' && r <= '\u2069'
}

func write(w io.Writer, a *report.Audit, marked map[string]string) error {
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
	var frame bytes.Buffer
	err = t.Execute(&frame, map[string]any{
		"Audit": a, "Counts": a.Archive.Counts, "Grades": grades(a), "Style": template.CSS(css), "Script": template.JS(js),
		"Data":   template.JS(dataHere),
		"Charts": charts(a), "Lead": leads[a.For], "Blocks": a.FirstPage(), "Caution": report.PaperCaution, "Top": top(a, 25), "Broken": broken(a),
	})
	if err != nil {
		return err
	}
	before, after, found := bytes.Cut(frame.Bytes(), []byte(dataHere))
	if !found {
		return errors.New("the page has no place for its data")
	}
	if _, err := w.Write(before); err != nil {
		return err
	}
	if err := content(a, marked).write(w); err != nil {
		return err
	}
	_, err = w.Write(after)
	return err
}

// dataHere stands for the data in the frame of the page.
const dataHere = "lineaudit-data-here"

// write writes the data as JSON, table by table and row by row. json.Marshal
// escapes <, > and &, so that no text can end the script element.
func (d *pageData) write(w io.Writer) error {
	o := object{w: w, before: "{"}
	o.field("findings", d.Findings)
	o.field("hidden", d.Hidden)
	o.open("tables", "[")
	for i, t := range d.tables {
		if i > 0 {
			o.text(",")
		}
		writeTable(&o, t, slices.Contains(open[d.reader], t.Name))
	}
	o.text("]")
	o.field("pictures", d.Pictures)
	o.field("toSend", d.ToSend)
	o.text("}")
	return o.err
}

// An object is a JSON object on its way to a file.
type object struct {
	w      io.Writer
	before string // what stands before the next field
	err    error
}

func (o *object) text(s string) {
	if o.err == nil {
		_, o.err = io.WriteString(o.w, s)
	}
}

func (o *object) value(v any) { o.written(json.Marshal(v)) }

func (o *object) written(b []byte, err error) {
	if o.err == nil {
		o.err = err
	}
	if o.err == nil {
		_, o.err = o.w.Write(b)
	}
}

// open begins a field whose value follows piece by piece.
func (o *object) open(name, s string) {
	o.text(o.before + `"` + name + `":` + s)
	o.before = ","
}

func (o *object) field(name string, v any) {
	o.open(name, "")
	o.value(v)
}

// writeTable writes one table with at most maxRows rows.
func writeTable(o *object, t report.Table, isOpen bool) {
	outer := o.before
	o.before = "{"
	o.field("name", t.Name)
	o.field("title", t.Title)
	o.field("note", t.Note)
	var columns []pageColumn
	for _, c := range t.Columns {
		if !c.Data {
			columns = append(columns, pageColumn{c.Heading(), !c.IsText()})
		}
	}
	o.field("columns", columns)
	o.open("rows", "[")
	n, hidden := 0, 0
	var cells []byte
	for row := range t.Rows {
		if n == maxRows {
			hidden = t.Count - n
			break
		}
		if n++; n > 1 {
			o.text(",")
		}
		var err error
		cells, err = appendCells(cells[:0], t, row)
		o.written(cells, err)
	}
	o.text("]")
	o.field("hidden", hidden)
	o.field("open", isOpen)
	o.text("}")
	o.before = outer
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

// pageData is what the script of the page reads; see write.
type pageData struct {
	Findings []pageFinding
	Hidden   int // findings that did not fit
	tables   []report.Table
	reader   report.Reader
	Pictures map[string]string // drawings of lines, by key
	ToSend   []string          // the questions as they are sent
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

func content(a *report.Audit, marked map[string]string) *pageData {
	d := &pageData{reader: a.For, Findings: []pageFinding{}, Pictures: map[string]string{}}
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
		if path, ok := marked[f.At.File()]; ok {
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
	d.tables = tables
	return d
}

func findingOf(f *audit.Finding, r *audit.Result, site string) pageFinding {
	p := pageFinding{Rank: f.Rank, Score: math.Round(f.Score*10) / 10, Grade: f.Grade.String(), Level: int(f.Grade), Certainty: f.Certainty.String(),
		Rule: f.Rule.Name, Title: f.Rule.Title, Why: f.Rule.Why, Site: site, Job: report.JobName(r.Job), Place: f.Place, Room: f.Room,
		File: f.At.File(), Cell: f.At.String(), Message: f.Message, Higher: f.Higher, Ask: f.Ask, Source: f.LimitSource, Ohm: report.Bounds(f.ExpectedOhm),
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
		if at.File() == f.At.File() {
			at = schedule.At("", at.Sheet(), int(at.Row), int(at.Col)) // the file is named above
		}
		p.Evidence = append(p.Evidence, [3]string{strings.TrimSpace(at.String()), e.Written, e.Role})
	}
	for _, s := range f.Assumed {
		p.Assumed = append(p.Assumed, assumption(s))
	}
	for _, m := range f.Remedies {
		p.Remedies = append(p.Remedies, effectOf(m))
	}
	return p
}

// effectOf is a remedy with its effect behind it.
func effectOf(m audit.Remedy) string {
	if m.Effect == "" {
		return m.Change
	}
	return m.Change + " → " + m.Effect
}

func assumption(s schedule.Assumption) string {
	text := s.Field + ": " + s.TakenAs + " (" + s.How.String()
	if s.Because != "" {
		text += ", " + s.Because
	}
	return text + ")"
}

// appendCells writes the cells of a row that the page shows, as json.Marshal would.
func appendCells(b []byte, t report.Table, row []report.Value) (_ []byte, err error) {
	b = append(b, '[')
	for i, v := range row {
		c := &t.Columns[i]
		if c.Data {
			continue
		}
		if len(b) > 1 {
			b = append(b, ',')
		}
		switch {
		case v.IsNum && c.Kind == report.Figures:
			b, err = appendNumber(b, report.Round(v.Number))
		case v.IsNum:
			b, err = appendNumber(b, v.Number)
		default:
			b, err = appendText(b, v.Words)
		}
		if err != nil {
			return nil, err
		}
	}
	return append(b, ']'), nil
}

func appendNumber(b []byte, v float64) ([]byte, error) {
	if a := math.Abs(v); v != 0 && !(a >= 1e-6 && a < 1e21) {
		return appendJSON(b, v)
	}
	return strconv.AppendFloat(b, v, 'f', -1, 64), nil
}

func appendText(b []byte, s string) ([]byte, error) {
	for i := range len(s) {
		if c := s[i]; c < ' ' || c > '~' || c == '"' || c == '\\' || c == '<' || c == '>' || c == '&' {
			return appendJSON(b, s)
		}
	}
	return append(append(append(b, '"'), s...), '"'), nil
}

func appendJSON(b []byte, v any) ([]byte, error) {
	text, err := json.Marshal(v)
	return append(b, text...), err
}

// top lists the first findings for readers without scripts.
func top(a *report.Audit, n int) []*audit.Finding {
	return a.Archive.Findings[:min(n, len(a.Archive.Findings))]
}
