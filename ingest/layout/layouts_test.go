package layout

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"lineaudit/ingest/grid"
)

// brief writes a reading down without the words of the evidence: what was
// found where, row by row.
func brief(r *Reading) string {
	var b strings.Builder
	if r.NearestMiss != "" {
		fmt.Fprintf(&b, "no schedule: %s\n", r.NearestMiss)
	}
	for _, s := range r.Sheets {
		for _, f := range s.Facts {
			at := f.At.Cell()
			if at == "" {
				at = "of the sheet's name"
			}
			fmt.Fprintf(&b, "fact %s %s = %s\n", at, orUnknown(f.Field.String()), f.Text)
		}
		for _, t := range s.Tables {
			fmt.Fprintf(&b, "\n%s %s:%s", t.Kind, grid.A1(t.Range.Row1, t.Range.Col1), grid.A1(t.Range.Row2, t.Range.Col2))
			if t.Transposed {
				b.WriteString(" transposed")
			}
			if t.Matrix {
				b.WriteString(" matrix")
			}
			if t.Form {
				b.WriteString(" form")
			}
			b.WriteString("\n  ")
			for i, c := range t.Columns {
				if i > 0 {
					b.WriteString(" | ")
				}
				b.WriteString(orUnknown(c.Field.String()))
				if c.Unit != "" {
					b.WriteString(" [" + c.Unit + "]")
				}
				if c.Volts != 0 {
					fmt.Fprintf(&b, " @%gV", c.Volts)
				}
			}
			b.WriteString("\n")
			for _, r := range t.Records {
				fmt.Fprintf(&b, "  %s ", r.Rows)
				if r.Class != Device {
					fmt.Fprintf(&b, "%s: %s", r.Class, r.Text)
				} else {
					for i, v := range r.Values {
						if i > 0 {
							b.WriteString(" | ")
						}
						b.WriteString(v.Text)
						if v.Because != "" {
							b.WriteString(" (" + v.Because + ")")
						}
					}
				}
				if r.Class == Device || r.Class == Title {
					for _, f := range r.Sections {
						fmt.Fprintf(&b, " § %s=%s", orUnknown(f.Field.String()), f.Text)
					}
				}
				b.WriteString("\n")
			}
		}
		for _, o := range s.Outside {
			fmt.Fprintf(&b, "outside %s %s: %s\n", o.At.Cell(), o.Class, o.Text)
		}
	}
	return b.String()
}

func orUnknown(s string) string {
	if s == "" {
		return "?"
	}
	return s
}

// Every file of testdata/layouts is a drawing of a workbook and, after a line
// of dashes, what a reader of it should find. The drawings follow the layouts that schedules were seen
// in; what is right was settled by reading them, not by running the program.
// A line "# name" begins another sheet.
func TestLayouts(t *testing.T) {
	files, err := filepath.Glob("testdata/layouts/*.txt")
	if err != nil || len(files) < 20 {
		t.Fatalf("%d drawings, %v", len(files), err)
	}
	for _, name := range files {
		t.Run(strings.TrimSuffix(filepath.Base(name), ".txt"), func(t *testing.T) {
			data, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			drawing, want, _ := strings.Cut(string(data), "\n--------\n")
			var sheets []*grid.Sheet
			for i, part := range strings.Split("\n"+drawing, "\n# ") {
				sheet := "Sheet1"
				if i > 0 {
					sheet, part, _ = strings.Cut(part, "\n")
				} else if strings.TrimSpace(part) == "" {
					continue
				}
				sheets = append(sheets, draw(sheet, part))
			}
			book := bookOf(sheets...)
			r := Read(book, Options{})
			if err := accounted(book, r); err != nil {
				t.Error(err)
			}
			got := brief(r)
			if os.Getenv("UPDATE_GOLDEN") != "" {
				if err := os.WriteFile(name, []byte(drawing+"\n--------\n"+got), 0o644); err != nil {
					t.Fatal(err)
				}
				return
			}
			if got != want {
				t.Errorf("got:\n%s\nwant:\n%s", got, want)
			}
		})
	}
}
