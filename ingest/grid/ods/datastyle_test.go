package ods

import (
	"os"
	"testing"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/numfmt"
)

// The codes are those that LibreOffice 7.4 gives the same formats when it
// saves the schedule as .xlsx, but for the language it puts before them and
// the marks before single literal characters.
func TestFormatCodes(t *testing.T) {
	data, err := os.ReadFile("testdata/schedule.ods")
	if err != nil {
		t.Fatal(err)
	}
	b, err := Read("a.ods", data, grid.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	want := map[string]string{"B5": `0.0" W"`, "A8": "d-mmm", "B8": "h:mm", "C8": "0%", "D8": "#,##0.00", "G8": "# ?/?", "A9": ""}
	for _, r := range b.Sheets[0].Rows {
		for c := range r.Cells() {
			at := grid.A1(r.Number, c.Col)
			if code, ok := want[at]; ok && c.Format() != code {
				t.Errorf("%s: format %q, want %q", at, c.Format(), code)
			}
			if c.Kind == grid.Number || c.Kind == grid.Date {
				if shown := numfmt.Compile(firstOf(c.Format(), "General")).Text(c.Number); shown != c.Text {
					t.Errorf("%s: %v under %q shows as %q, stored is %q", at, c.Number, c.Format(), shown, c.Text)
				}
			}
		}
	}
}

func TestDataStyles(t *testing.T) {
	number := func(s string) string {
		return `<number:number-style style:name="N">` + s + `</number:number-style>`
	}
	for _, tt := range []struct{ styles, want string }{
		{number(`<number:number number:min-integer-digits="1"/>`), ""},
		{number(`<number:number number:min-integer-digits="1"/><number:text> W</number:text>`), `General" W"`},
		{number(`<number:number number:decimal-places="0" number:min-integer-digits="3"/>`), "000"},
		{number(`<number:number number:decimal-places="3" number:min-decimal-places="1" number:min-integer-digits="0"/>`), "#.0##"},
		{number(`<number:number number:decimal-places="0" number:min-integer-digits="0" number:grouping="true"/>`), "#,###"},
		{number(`<number:number number:decimal-places="0" number:min-integer-digits="5" number:grouping="true"/>`), "00,000"},
		{number(`<number:number number:decimal-places="1" number:min-integer-digits="1" number:display-factor="1000"/><number:text>kW</number:text>`), `0.0,"kW"`},
		{number(`<number:scientific-number number:decimal-places="2" number:min-integer-digits="1" number:min-exponent-digits="2"/>`), "0.00E+00"},
		{number(`<number:fraction number:min-numerator-digits="2" number:denominator-value="16"/>`), "??/16"},
		{`<number:date-style style:name="N"><number:day-of-week number:style="long"/><number:text> </number:text><number:day number:style="long"/><number:text>.</number:text><number:month number:style="long"/><number:text>.</number:text><number:year number:style="long"/></number:date-style>`, `dddd dd"."mm"."yyyy`},
		{`<number:time-style style:name="N" number:truncate-on-overflow="false"><number:hours/><number:text>:</number:text><number:minutes number:style="long"/><number:text>:</number:text><number:seconds number:style="long" number:decimal-places="1"/></number:time-style>`, "[h]:mm:ss.0"},
		{`<number:number-style style:name="P"><number:number number:decimal-places="1" number:min-integer-digits="1"/></number:number-style>` +
			number(`<number:text>-</number:text><number:number number:decimal-places="1" number:min-integer-digits="1"/><style:map style:condition="value()&gt;=0" style:apply-style-name="P"/>`), "[>=0]0.0;-0.0"},
		{`<number:text-style style:name="N"><number:text-content/><number:text> W</number:text></number:text-style>`, `@" W"`},
	} {
		b, err := Read("a.fods", flat(tt.styles+`<style:style style:name="c" style:family="table-cell" style:data-style-name="N"/>`, row("", text(`table:style-name="c"`, "x"))), grid.DefaultLimits())
		if err != nil {
			t.Fatal(err)
		}
		c := b.Sheets[0].Rows[0].At(0)
		if got := c.Format(); got != tt.want {
			t.Errorf("%s\nis %q, want %q", tt.styles, got, tt.want)
		}
	}
}
