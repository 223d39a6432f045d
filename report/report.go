// Package report holds what every report of one run is written from: the files that
// were read, the ranked archive, and the words and numbers that all reports share.
// It computes no electricity.
package report

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
)

// An Audit is one run: what came in and what was found.
type Audit struct {
	Files   []File // in the order they were read
	Archive *audit.Archive
	Shelf   *Shelf // holds the rows of jobs that have shed them; nil if none has
	For     Reader
	Date    string // as given by the user; "" leaves a blank line to fill in
	Version string
	House   string      // name of the house book; "" if none
	Shown   audit.Grade // the lowest grade listed on the terminal

	Dispositions map[string]Disposition // what was decided in an earlier audit, by finding id
	Unwritten    []string               // what could not be written, each with its reason
	Beside       []string               // workbooks whose findings stand in one of their own, and why
}

// A Disposition is what a reader decided about a finding.
type Disposition struct {
	Decision string // accepted, fixed, wrong because ...
	Remark   string
}

// A File is one input file and what became of it.
type File struct {
	Name      string // slash-separated, as people see it
	Kind      Kind
	Reason    string // why it is not a schedule, could not be read, or was converted
	Format    string
	Size      int64
	SHA256    string
	Results   []*audit.Result    // one for each job in it
	NotTables []schedule.LeftOut // rows of a file without a job
}

// A Kind says what a file turned out to be.
type Kind string

// The kinds of files.
const (
	Schedule    Kind = "schedule"
	NotSchedule Kind = "not-a-schedule"
	Unreadable  Kind = "unreadable"
)

// A Reader is whom the audit is written for. It changes order, wording and
// which tables lead, never a figure.
type Reader string

// The readers.
const (
	Service    Reader = "service"
	Bid        Reader = "bid"
	Compliance Reader = "compliance"
)

// Results returns the results of all files in input order.
func (a *Audit) Results() []*audit.Result {
	var rs []*audit.Result
	for _, f := range a.Files {
		rs = append(rs, f.Results...)
	}
	return rs
}

// AllFindings returns the ranked findings of the current jobs, then those of superseded ones.
func (a *Audit) AllFindings() []*audit.Finding {
	all := slices.Clone(a.Archive.Findings)
	for _, r := range a.Results() {
		if r.SupersededBy != "" {
			all = append(all, r.Findings...)
		}
	}
	return all
}

// JobName is what people call the job: its number where one is written, else its name, else its file.
func JobName(j *schedule.Job) string {
	if j.Number.How != schedule.Default && j.Number.Had() {
		return j.Number.Value
	}
	return cmp.Or(j.Name.Value, j.Number.Value, j.File)
}

// Cells lists the cells of a finding as people write them, the first being
// where to look; cells of another sheet carry its name.
func Cells(f *audit.Finding) string {
	var out []string
	told := make(map[string]bool) // a finding may rest on every row of a register
	add := func(at schedule.Ref) {
		cell := at.Cell()
		if cell == "" {
			return
		}
		if at.Sheet() != f.At.Sheet() || at.File() != f.At.File() {
			cell = at.Sheet() + "!" + cell
		}
		if !told[cell] {
			told[cell] = true
			out = append(out, cell)
		}
	}
	add(f.At)
	for _, e := range f.Cells {
		add(e.At)
	}
	return strings.Join(out, "; ")
}

// Measured is the one figure of a finding: the exact one, or the end of its
// bounds that decides - the lower end of what is certain, the upper end of what is possible.
func Measured(f *audit.Finding) (float64, bool) {
	switch m := f.Measured; {
	case !m.Known:
		return 0, false
	case f.Certainty == audit.Certain:
		return nearest(m, f.Limit), true
	default:
		return farthest(m, f.Limit), true
	}
}

func nearest(m audit.Interval, limit float64) float64 {
	if math.Abs(m.Low-limit) <= math.Abs(m.High-limit) {
		return m.Low
	}
	return m.High
}

func farthest(m audit.Interval, limit float64) float64 {
	if math.Abs(m.Low-limit) > math.Abs(m.High-limit) {
		return m.Low
	}
	return m.High
}

// Number writes a figure for a data file: full stop, no thousands mark, up to
// 9 significant digits, no trailing zeros. Infinities and NaN are blank.
func Number(v float64) string {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return ""
	}
	if v == math.Trunc(v) && math.Abs(v) < 1<<53 {
		return strconv.FormatInt(int64(v), 10)
	}
	digits := 8 - int(math.Floor(math.Log10(math.Abs(v))))
	digits = max(0, min(digits, 12))
	s := strconv.FormatFloat(v, 'f', digits, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		return "0"
	}
	return s
}

// Figure writes a figure for people: whole from 100 on, below with as many
// decimals as matter (96, 7.5, 0.385, 1250).
func Figure(v float64) string {
	if math.IsInf(v, 1) {
		return "no limit"
	}
	return Number(Round(v))
}

// Round drops the decimals of a figure that no reader needs.
func Round(v float64) float64 {
	switch a := math.Abs(v); {
	case a >= 100:
		return math.Round(v)
	case a >= 10:
		return math.Round(v*10) / 10
	case a >= 1:
		return math.Round(v*100) / 100
	}
	return math.Round(v*1000) / 1000
}

// Bounds writes an interval for people: "96", "60-120", "at least 60", "" when unknown.
func Bounds(i audit.Interval) string {
	switch {
	case !i.Known:
		return ""
	case i.Low == i.High || Figure(i.Low) == Figure(i.High):
		return Figure(i.Low)
	case math.IsInf(i.High, 1):
		return "at least " + Figure(i.Low)
	}
	return Figure(i.Low) + " to " + Figure(i.High)
}

// Plain makes text from a schedule safe to show on one line of a terminal, a
// note or a table: control characters, terminal escapes and bidirectional
// overrides go, white space becomes single blanks.
func Plain(s string) string {
	s = strings.Map(func(r rune) rune {
		switch {
		case unicode.IsSpace(r):
			return ' '
		case r == unicode.ReplacementChar, !unicode.IsGraphic(r) && r != '\u200d':
			return -1
		}
		return r
	}, s)
	return strings.Join(strings.Fields(s), " ")
}

// Found is what was found, with the higher grade that it may be.
func Found(f *audit.Finding) string {
	if f.Higher == "" {
		return f.Message
	}
	return f.Message + "; " + f.Higher
}

// Shorten cuts a text to at most n characters, marking the cut with "…".
func Shorten(s string, n int) string {
	r := []rune(s)
	if len(r) <= n {
		return s
	}
	return strings.TrimRight(string(r[:max(0, n-1)]), " ") + "…"
}

// Plural writes a count with its noun: "1 finding", "3 findings".
func Plural(n int, noun string) string {
	if n == 1 {
		return "1 " + noun
	}
	if strings.HasSuffix(noun, "y") && !strings.HasSuffix(noun, "ay") {
		return fmt.Sprintf("%d %sies", n, strings.TrimSuffix(noun, "y"))
	}
	return fmt.Sprintf("%d %ss", n, noun)
}
