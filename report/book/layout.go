package book

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit"
	"lineaudit/report"
)

// printed lists, for each table, the columns that go on paper in order, each
// with its width in digits. The other columns stand to their right, on screen
// only. A landscape A4 page takes some 145 digits at full size; all tables stay
// below 232 digits (62 % of full size on A4, 60 % on Letter, both landscape) so that the smallest print can be read.
var printed = map[string]string{
	"findings":      "rank:6 grade:9 certainty:9 site:18 place:20 message:44 remedy:36 file:22 cell:16 disposition:14 remark:16",
	"visits":        "stop:5 site:17 room:14 place:18 grade:10 sheet_says:30 where:20 check:30 expected_ohm:10 tool:12 do:30 part:18 result:14",
	"sites":         "place:7 site:30 score:8 danger:8 fault:8 caution:9 unknown:10 jobs:7 passed:9 unshown:9 questions:11 worst:60",
	"first":         "place:7 kind:18 name:26 text:64 findings:10 sites:8 share_pct:12",
	"questions":     "number:6 site:18 job:20 sheet:14 cell:8 question:56 settles:38 verdicts:10 answer:30",
	"undersized":    "rank:6 grade:10 site:18 place:18 listed:22 message:38 part:26 before:9 after:9 unit:11 source:22",
	"disagreements": "rank:6 grade:10 site:18 place:20 message:46 one:32 other:46 file:22",
	"completeness":  "job:26 revision:9 superseded:20 tables:8 rows_read:8 rows_left_out:9 not_understood:11 columns:30 assumptions:13 questions:11 unshown:9 passed:9 file:26",
	"register":      "site:17 job:18 rule:19 title:32 outcome:12 met:6 not_met:7 not_shown:8 limits:26 source:26 evidence:22",
	"not-examined":  "kind:11 site:18 file:32 place:22 where:18 rule:22 why:64",
	"channels":      "job:24 amplifier:13 channel:10 line_v:8 rated_w:9 load_w:9 load_pct:10 free_w:9 expected_ohm:11 verdict:15 sum:44 incomplete:24",
	"controls":      "job:24 control:14 zone:18 room:16 rated_w:9 load_w:9 load_pct:10 free_w:9 expected_ohm:11 verdict:15 sum:44",
	"amplifiers":    "job:26 amplifier:14 model:18 status:10 rated_w:10 load_w:10 load_pct:10 verdict:15 sum:60",
	"lines":         "job:20 line:16 zone:18 length_m:9 area_mm2:11 material:12 load_w:8 line_v:7 loop_ohm:8 loss_far_db:10 loss_even_db:10 loss_worst_db:13 verdict:15 reading:12 incomplete:20",
	"zones":         "job:24 zone:24 loudspeakers:13 load_w:10 expected_ohm:12 sum:60 incomplete:34",
	"loudspeakers":  "job:20 zone:18 room:16 tag:12 model:14 count:7 tap_w:7 tap_v:10 line_v:7 control:11 amplifier:11 channel:9 status:10 rows:8 sheet:14",
	"remedies":      "kind:12 place:22 change:52 before:9 after:9 unit:13 effect:40 part:24",
	"passed":        "job:22 rule:22 place:26 cell:9 measured:10 limit:9 unit:13 message:60",
	"assumptions":   "file:26 sheet:14 cell:8 field:16 written:20 taken_as:22 how:18 because:50",
	"rows":          "file:28 sheet:16 row:7 kind:16 reason:44 text:60",
	"files":         "file:34 kind:14 job:22 site:20 revision:10 rows_read:8 rows_left_out:9 reason:60",
	"rules":         "rule:22 title:36 limits:36 source:42 silent:50",
}

// printedFor holds the tables that one reader wants on paper in another way.
var printedFor = map[report.Reader]map[string]string{
	report.Compliance: {
		"files": "file:32 kind:13 bytes:11 sha256:36 job:22 site:18 revision:9 rows_read:8 rows_left_out:9 reason:38",
		"rules": "rule:20 title:32 limits:36 source:40 silent:32 cautions:36",
	},
}

// narrow is the width of a column of the overview, in digits.
const narrow = 4.6

// layout returns the printed columns of a table and their widths.
func layout(reader report.Reader, table string) (names []string, widths map[string]float64) {
	text := printed[table]
	if own := printedFor[reader][table]; own != "" {
		text = own
	}
	widths = map[string]float64{}
	if table == "overview" {
		text = "site:20 job:22"
		for _, r := range audit.Rules() {
			text += fmt.Sprintf(" %s:%g", r.Name, narrow)
		}
	}
	for field := range strings.FieldsSeq(text) {
		name, w, _ := strings.Cut(field, ":")
		width, err := strconv.ParseFloat(w, 64)
		if err != nil {
			panic(fmt.Sprintf("layout of %s: %v", table, err))
		}
		names = append(names, name)
		widths[name] = width
	}
	return names, widths
}

// A sheetColumn is a column of a sheet.
type sheetColumn struct {
	report.Column
	index   int // into the table's columns; -1 for a column that the reader fills
	width   float64
	onPaper bool // printed, and wrapped to its width
}

// filled are the columns that a sheet has beside those of its table, for its reader to fill.
var filled = map[string][]report.Column{
	"findings":  {{Name: "disposition", Label: "Disposition", Kind: report.Blank}, {Name: "remark", Label: "Remark", Kind: report.Blank}},
	"questions": {{Name: "answer", Label: "Answer", Kind: report.Blank}},
}

// columns returns the columns of a sheet in order, the printed ones first.
func (b *builder) columns(t report.Table) (cols []sheetColumn, onPaper int) {
	names, widths := layout(b.audit.For, t.Name)
	for i, c := range t.Columns {
		if c.Data && c.Name != "id" {
			continue
		}
		cols = append(cols, sheetColumn{Column: c, index: i})
	}
	for _, c := range filled[t.Name] {
		cols = append(cols, sheetColumn{Column: c, index: -1})
	}
	place := func(c sheetColumn) int {
		if i := slices.Index(names, c.Name); i >= 0 {
			return i
		}
		return len(names)
	}
	slices.SortStableFunc(cols, func(x, y sheetColumn) int { return place(x) - place(y) })
	for i := range cols {
		c := &cols[i]
		c.width, c.onPaper = widths[c.Name], widths[c.Name] > 0
		if !c.onPaper {
			c.width = float64(max(min(c.Width, 40), min(len(c.Heading()), 12)) + 2)
		}
	}
	return cols, len(names)
}
