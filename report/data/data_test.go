package data_test

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"os"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	reflector "github.com/invopop/jsonschema"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"lineaudit/report"
	"lineaudit/report/data"
	"lineaudit/report/reporttest"
)

// The columns that other programs rely on, in their order; more may follow.
var columns = map[string]string{
	"files":        "file,kind,job,site,revision,superseded,tables,rows_read,rows_left_out,reason",
	"loudspeakers": "file,sheet,rows,job,zone,tag,model,count,tap_w,tap_v,line_v,control,amplifier,channel,status",
	"zones":        "file,job,zone,loudspeakers,load_w,expected_ohm",
	"channels":     "file,job,amplifier,channel,line_v,rated_w,load_w,load_pct,free_w,expected_ohm",
	"amplifiers":   "file,job,amplifier,model,rated_w,load_w",
	"controls":     "file,job,control,zone,rated_w,load_w,load_pct,free_w,expected_ohm",
	"lines":        "file,job,line,zone,length_m,area_mm2,material,load_w,line_v,loop_ohm,loss_far_db,loss_even_db,loss_worst_db",
	"findings":     "rank,score,grade,certainty,rule,job,site,place,file,sheet,cell,measured,limit,unit,measured_low,measured_high,remedy,id",
	"questions":    "file,job,sheet,cell,field,question,settles",
	"remedies":     "finding,kind,change,before,after,unit",
	"assumptions":  "file,sheet,cell,field,written,taken_as,how",
	"rows":         "file,sheet,row,kind,reason,text",
}

func written(t *testing.T, table report.Table) [][]string {
	t.Helper()
	var b bytes.Buffer
	if err := data.WriteCSV(&b, table); err != nil {
		t.Fatal(err)
	}
	records, err := csv.NewReader(&b).ReadAll()
	if err != nil {
		t.Fatalf("%s.csv: %v", table.Name, err)
	}
	return records
}

func TestColumnsOthersRelyOn(t *testing.T) {
	tables := reporttest.Overloaded().Tables()
	if len(tables) != len(columns) {
		t.Errorf("%d tables, want %d", len(tables), len(columns))
	}
	for _, table := range tables {
		header := strings.Join(written(t, table)[0], ",")
		if want := columns[table.Name]; want == "" || header != want && !strings.HasPrefix(header, want+",") {
			t.Errorf("%s.csv begins with\n%s, want\n%s", table.Name, header, want)
		}
	}
}

// 8 x 10 W = 80 W on a 50 W control at 100 V: 160 %; 100^2/80 = 125 ohm. Hand calculation.
func TestFiguresOfAControl(t *testing.T) {
	records := written(t, reporttest.Overloaded().ControlsTable())
	got := map[string]string{}
	for i, name := range records[0] {
		got[name] = records[1][i]
	}
	for name, want := range map[string]string{"control": "VC-1", "rated_w": "50", "load_w": "80", "load_pct": "160", "free_w": "-30", "expected_ohm": "125"} {
		if got[name] != want {
			t.Errorf("%s = %q, want %q", name, got[name], want)
		}
	}
}

func TestNothingBecomesAFormula(t *testing.T) {
	for _, table := range reporttest.Hostile().Tables() {
		for _, record := range written(t, table)[1:] {
			for i, cell := range record {
				if table.Columns[i].Kind == report.Words || table.Columns[i].Kind == report.Long {
					if strings.HasPrefix(cell, "=") || strings.HasPrefix(cell, "@") || strings.HasPrefix(cell, "+1;") || strings.HasPrefix(cell, "-1+1") {
						t.Errorf("%s.csv, %s: %q", table.Name, table.Columns[i].Name, cell)
					}
				}
				if strings.ContainsAny(cell, "\x00\x07\x1b") {
					t.Errorf("%s.csv, %s: control characters in %q", table.Name, table.Columns[i].Name, cell)
				}
			}
		}
	}
}

func TestKeepText(t *testing.T) {
	for _, tt := range []struct{ in, want string }{
		{"=1+1", "'=1+1"}, {" =1+1", "' =1+1"}, {"@SUM(A1)", "'@SUM(A1)"}, {"-1+1", "'-1+1"}, {"+49 30", "'+49 30"},
		{"-", "-"}, {"-7.5", "-7.5"}, {"-7,5", "-7,5"}, {"Palm house", "Palm house"}, {"", ""}, {"\t=1", "' =1"}, {"\uff1d1+1", "'\uff1d1+1"}, {"bad \xff", "bad \uFFFD"},
	} {
		if got := data.KeepText(tt.in); got != tt.want {
			t.Errorf("KeepText(%q) = %q, want %q", tt.in, got, tt.want)
		}
	}
}

// Whatever is written, a program that opens the data file sees no formula, and
// the text can be had back.
func FuzzKeepText(f *testing.F) {
	for _, s := range []string{"=1", "+1", "-", " @x", "\n-1+1", "'=1", "plain"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		got := data.KeepText(s)
		first := strings.TrimLeft(got, " \u00a0\n")
		begins, _ := utf8.DecodeRuneInString(first)
		_, notNumber := strconv.ParseFloat(strings.Replace(first, ",", ".", 1), 64)
		if strings.ContainsRune("=@\uff1d\uff20\uff0b\uff0d", begins) || strings.ContainsRune("+-", begins) && len(first) > 1 && notNumber != nil {
			t.Errorf("KeepText(%q) = %q begins a formula", s, got)
		}
		// What KeepText put in front is all that it added to a text without control characters.
		if plain := strings.ToValidUTF8(s, "\uFFFD"); !strings.ContainsFunc(plain, func(r rune) bool { return r < ' ' && r != '\n' || r == 0x7f }) && got != plain && got != "'"+plain {
			t.Errorf("KeepText(%q) = %q", s, got)
		}
		if again := strings.TrimPrefix(got, "'"); len(got) > len(s)+1+2*strings.Count(got, "\uFFFD") && again != s {
			t.Errorf("KeepText(%q) grew to %q", s, got)
		}
	})
}

func TestFindingsKeepTheirSchema(t *testing.T) {
	r := reflector.Reflector{ExpandedStruct: true}
	generated := r.Reflect(&data.Findings{})
	generated.ID, generated.Title = data.SchemaID, "lineaudit findings"
	schema, err := json.MarshalIndent(generated, "", "  ")
	if err != nil {
		t.Fatal(err)
	}
	schema = append(schema, '\n')
	const published = "findings.schema.json"
	if os.Getenv("UPDATE_GOLDEN") != "" {
		os.WriteFile(published, schema, 0o644)
	} else if !bytes.Equal(schema, data.Schema()) {
		t.Errorf("the published schema %s is not that of the types; set UPDATE_GOLDEN to write it", published)
	}
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(schema))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	if err := c.AddResource("findings.json", doc); err != nil {
		t.Fatal(err)
	}
	compiled, err := c.Compile("findings.json")
	if err != nil {
		t.Fatal(err)
	}
	for name, a := range map[string]*report.Audit{"overloaded": reporttest.Overloaded(), "hostile": reporttest.Hostile(), "empty": reporttest.Of()} {
		var b bytes.Buffer
		if err := data.WriteFindings(&b, a); err != nil {
			t.Fatal(err)
		}
		inst, err := jsonschema.UnmarshalJSON(bytes.NewReader(b.Bytes()))
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		if err := compiled.Validate(inst); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		var back data.Findings
		if err := json.Unmarshal(b.Bytes(), &back); err != nil {
			t.Fatal(err)
		}
		if len(back.Findings) != len(a.AllFindings()) {
			t.Errorf("%s: %d findings in the file, want %d", name, len(back.Findings), len(a.AllFindings()))
		}
	}
}
