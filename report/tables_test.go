package report_test

import (
	"cmp"
	"slices"
	"strings"
	"testing"

	"lineaudit/audit"
	"lineaudit/report"
	"lineaudit/report/reporttest"
)

func audits() map[string]*report.Audit {
	return map[string]*report.Audit{"fixed": reporttest.Fixed(), "overloaded": reporttest.Overloaded(), "hostile": reporttest.Hostile(), "empty": reporttest.Of()}
}

func TestTablesSayHowLongTheyAre(t *testing.T) {
	for name, a := range audits() {
		for _, table := range append(a.Tables(), a.SheetTables()...) {
			n := 0
			for row := range table.Rows {
				n++
				if len(row) != len(table.Columns) {
					t.Fatalf("%s, %s: %d values for %d columns", name, table.Name, len(row), len(table.Columns))
				}
				for i, v := range row {
					if c := table.Columns[i]; c.IsText() && v.IsNum || !c.IsText() && v.Words != "" {
						t.Errorf("%s, %s, %s: %+v", name, table.Name, c.Name, v)
					}
				}
			}
			if n != table.Count {
				t.Errorf("%s, %s: %d rows, it says %d", name, table.Name, n, table.Count)
			}
		}
	}
}

// A reader of rows may stop at any time.
func TestTablesStopWhenAsked(t *testing.T) {
	for _, table := range reporttest.Fixed().SheetTables() {
		for range table.Rows {
			break
		}
	}
}

// The rules that the reports name are those of the audit.
func TestNamedRulesExist(t *testing.T) {
	for _, name := range report.NamedRules() {
		if audit.RuleNamed(name) == nil {
			t.Errorf("there is no rule %q", name)
		}
	}
}

func TestATableTooLongForASheetIsADataFile(t *testing.T) {
	a := reporttest.Fixed()
	a.Archive.Results[0].Passed = make([]audit.Pass, report.MaxSheetRows+1)
	if !slices.ContainsFunc(a.Tables(), func(t report.Table) bool { return t.Name == "passed" && t.Count > report.MaxSheetRows }) {
		t.Error("the passed checks stand nowhere")
	}
	if n := len(reporttest.Fixed().Tables()); n != 12 {
		t.Errorf("%d data tables, want 12", n)
	}
}

func TestFirstPage(t *testing.T) {
	has := func(blocks []report.Block, title, text string) bool {
		return slices.ContainsFunc(blocks, func(b report.Block) bool {
			return b.Title == title && slices.ContainsFunc(b.Items, func(i report.Item) bool {
				return strings.Contains(strings.Join([]string{i.Sign, i.Head, i.Text, i.Do}, " | "), text)
			})
		})
	}
	for _, tt := range []struct {
		audit       string
		reader      report.Reader
		title, text string
	}{
		{"fixed", report.Service, "What to do today", "danger | Glass gardens, Fern room, control VC-1 | 8 x 10 W = 80 W on a 50 W control: 160 % | replace control VC-1"},
		{"fixed", report.Service, "Sites to visit first", "1 | Glass gardens | 1 danger, 1 fault, 1 caution; score 51.5 | bring control, 100 W at 100 V"},
		{"fixed", report.Bid, "Can this bid be trusted?", "no |  | As listed it does not work: 1 danger and 1 fault."},
		{"fixed", report.Bid, "Under-sized, and the size that would do", "control, 100 W at 100 V"},
		{"fixed", report.Bid, "Does not add up", "9 loudspeakers are stated, 8 are listed"},
		{"fixed", report.Bid, "Ask now", "At which distances"},
		{"fixed", report.Compliance, "Open points that concern danger", "control VC-1"},
		{"fixed", report.Compliance, "Every rule against every job", "2 | not met"},
		{"fixed", report.Compliance, "What this audit says nothing of", "old/broken.xlsx"},
		{"fixed", report.Service, "What this audit says nothing of", "no copy |  | gardens/palm.xlsx: The workbook was left as it is"},
		{"empty", report.Service, "Nothing was audited", "None of 0 files"},
	} {
		a := audits()[tt.audit]
		a.For = tt.reader
		if blocks := a.FirstPage(); !has(blocks, tt.title, tt.text) {
			t.Errorf("%s for %s: no %q under %q in %+v", tt.audit, tt.reader, tt.text, tt.title, blocks)
		}
	}
}

// 4 x 5 W = 20 W of 50 W: nothing is wrong, and the page says what is in order.
func TestFirstPageOfACleanAudit(t *testing.T) {
	a := reporttest.Of(reporttest.Job("a.xlsx", "Boathouse", 240, 50, 5, 4))
	if len(a.Archive.Findings) > 0 {
		t.Skipf("no longer clean: %s", a.Archive.Findings[0].Message)
	}
	items := a.FirstPage()[0].Items
	if !strings.Contains(items[0].Text, "No finding at all") || !strings.Contains(items[1].Text, "control VC-1 with 20 W of 50 W") {
		t.Errorf("%+v", items)
	}
}

func TestVisitsLeaveOutWhatIsSettledAtADesk(t *testing.T) {
	a := reporttest.Fixed()
	a.Archive.Sites[0].Findings[2].Rule = audit.RuleNamed("total-mismatch")
	r := a.Archive.Sites[0].Results[0]
	r.Questions = append(r.Questions, audit.Question{At: r.Questions[0].At, Field: "total", Text: "What does the total include?"})
	var stops []string
	for row := range a.VisitsTable().Rows {
		stops = append(stops, cmp.Or(row[a.VisitsTable().Column("place")].Words, row[a.VisitsTable().Column("check")].Words))
	}
	if want := []string{"control VC-1", "line W1", "At which distances do the loudspeakers of W1 stand?", "the job"}; !slices.Equal(stops, want) {
		t.Errorf("stops %q, want %q", stops, want)
	}
}

// Every stop says what to look at and with what, in the words of its rule, and
// what to bring is for the remedy that is shown.
func TestVisitsSayWhatToCheck(t *testing.T) {
	a := reporttest.Fixed()
	f := a.Archive.Sites[0].Findings[0]
	first := func(name string) string {
		table := a.VisitsTable()
		for row := range table.Rows {
			return row[table.Column(name)].Words
		}
		return ""
	}
	for _, tt := range []struct {
		rule, check, tool, do, part string
		change                      func()
	}{
		{"control-overload", "feel whether the control runs warm", "impedance meter", "replace it", "control, 75 W",
			func() { f.Remedies = []audit.Remedy{{Change: "replace it", Part: "control, 75 W"}} }},
		{"headroom-short", "with the amplifier off", "impedance meter", "could it move?", "",
			func() {
				f.Remedies = []audit.Remedy{{Change: "could it move?"}, {Change: "replace it", Part: "channel"}}
			}},
		{"line-loss", "measure the volts at the amplifier", "voltmeter and a test tone", "No remedy on paper: no thicker cable would do.", "",
			func() {
				f.Remedies, f.NoRemedy = nil, "No remedy on paper: no thicker cable would do. On site: measure the volts."
			}},
		{"control-without-override", "play a message", "", "", "", func() { f.NoRemedy = "On site: play a message." }},
	} {
		tt.change()
		f.Rule, f.ExpectedOhm, f.Ask = audit.RuleNamed(tt.rule), audit.Interval{Known: true, Low: 100, High: 100}, ""
		if got := first("check"); !strings.Contains(got, tt.check) {
			t.Errorf("%s: to check: %q", tt.rule, got)
		}
		if got := []string{first("tool"), first("do"), first("part")}; !slices.Equal(got, []string{tt.tool, tt.do, tt.part}) {
			t.Errorf("%s: %q", tt.rule, got)
		}
	}
	for _, r := range audit.Rules() {
		if r.OnSite == "" || strings.Contains(r.OnSite, "measure the") && r.Tool == "" {
			t.Errorf("%s: on site %q with %q", r.Name, r.OnSite, r.Tool)
		}
	}
}

func TestQuestionsAsTheyAreSent(t *testing.T) {
	table := reporttest.Fixed().QuestionsTable()
	for row := range table.Rows {
		want := "1. gardens/palm.xlsx, sheet Schedule, cell D20: At which distances do the loudspeakers of W1 stand? (The answer settles: whether line W1 loses more than 3 dB.)"
		if got := row[table.Column("text")].Words; got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}
