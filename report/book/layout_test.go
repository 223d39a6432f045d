package book

import (
	"bytes"
	"iter"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"lineaudit/report"
	"lineaudit/report/reporttest"
)

// mostPrinted is how many digits the printed columns of a table may take
// together: 62 % of full size on A4, 60 % on Letter, both landscape.
const mostPrinted = 232

// Every table is laid out; what is printed fits a landscape page at a scale
// that can be read. A page of A4 takes 145 digits of 10 point at full size, one of Letter 140: measured in LibreOffice.
func TestEverythingPrintsLargeEnough(t *testing.T) {
	a := reporttest.Fixed()
	for _, reader := range []report.Reader{report.Service, report.Bid, report.Compliance} {
		b := &builder{audit: a}
		a.For = reader
		for _, table := range a.SheetTables() {
			names, widths := layout(reader, table.Name)
			if len(names) == 0 {
				t.Errorf("%s is not laid out", table.Name)
			}
			total := 0.0
			for _, name := range names {
				total += widths[name]
				known := table.Column(name) >= 0
				for _, c := range filled[table.Name] {
					known = known || c.Name == name
				}
				if !known {
					t.Errorf("%s has no column %q", table.Name, name)
				}
			}
			if total > mostPrinted || 140/total < 0.6 {
				t.Errorf("%s for %s: %g digits are printed, at %.0f %% of full size", table.Name, reader, total, 14000/total)
			}
			if cols, n := b.columns(table); n != len(names) || cols[0].Name != names[0] {
				t.Errorf("%s: %d columns are printed, want %d", table.Name, n, len(names))
			}
		}
	}
	for name := range printed {
		found := false
		for _, table := range a.SheetTables() {
			found = found || table.Name == name
		}
		if !found {
			t.Errorf("there is no table %q to lay out", name)
		}
	}
}

// A wrapped text gets the height of its lines: programs that do not fit rows
// themselves would print texts over each other.
func TestRowsAreAsHighAsTheirTexts(t *testing.T) {
	a := reporttest.Fixed()
	long := strings.Repeat("many words about one loudspeaker ", 12)
	a.Archive.Findings[0].Message = long
	var out bytes.Buffer
	if err := Write(&out, a, nil); err != nil {
		t.Fatal(err)
	}
	f, err := excelize.OpenReader(&out)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	high, err := f.GetRowHeight("Findings", 5)
	_, widths := layout(report.Service, "findings")
	if want := float64(report.Lines(long, widths["message"])) * 12; err != nil || high < want {
		t.Errorf("the row is %g points high, want at least %g", high, want)
	}
}

func TestATableThatIsTooLongStaysADataFile(t *testing.T) {
	b := &builder{file: excelize.NewFile(), audit: reporttest.Fixed(), rules: map[string]int{}}
	if err := b.makeStyles(); err != nil {
		t.Fatal(err)
	}
	table := b.audit.PassedTable()
	table.Count = report.MaxSheetRows + 1
	table.Rows = iter.Seq[[]report.Value](func(func([]report.Value) bool) { t.Error("its rows are written all the same") })
	if err := b.table(table); err != nil {
		t.Fatal(err)
	}
	text, err := b.file.GetCellValue("Passed", "A5")
	if err != nil || text != "1000001 rows are more than a sheet holds; they are in passed.csv." || len(b.notes) != 1 {
		t.Errorf("%q, %v; notes %q", text, err, b.notes)
	}
}
