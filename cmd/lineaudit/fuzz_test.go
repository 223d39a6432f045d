package main

import (
	"context"
	"slices"
	"strings"
	"testing"
	"time"

	"lineaudit/audit"
	"lineaudit/ingest/grid/source"
	"lineaudit/report"
)

// Any bytes go all the way from the file to the findings: nothing of ours
// breaks on them, and the same comes out again.
func FuzzOneFile(f *testing.F) {
	f.Add([]byte(job))
	f.Add([]byte(clean))
	f.Add([]byte("Tag;Zone;Tap;Run;Cable\nLS1;Orangery;5 W @ 70V;35 m;2 x 1,5 mm²\nLS2;\";10;ditto;\"\nTotal;;15;;\n"))
	f.Add([]byte("From,To,Length,Tap\nAMP-1.1,LS-1,30 m,10 W\nLS-1,LS-2,5 m,10 W\nLS-2,LS-1,5 m,\n"))
	f.Add([]byte("Amplifier,Channel,Rated,Zones\nA1,1,4 x 125 W,Z1; Z2\nA1,2,\"\",Z3-Z9\n\nZone,Control,Qty,Watts\nZ1,VC-1 (35 W),6,5\nZ2,VC-1,3a,2.5/5/10\n"))
	f.Add([]byte("<table><tr><th>Tag<th>Zone<th>Tap<tr><td>1<td>Pier<td>5 W</table>"))
	f.Fuzz(func(t *testing.T, data []byte) {
		p := &pipeline{set: &settings{timeLimit: 20 * time.Second}, limits: audit.DefaultSettings(), reading: source.Options{Soffice: func() string { return "" }}}
		tell := func() (out []string) {
			book, err := source.Parse(context.Background(), "a.csv", data, p.reading)
			if err != nil {
				return []string{err.Error()}
			}
			got := p.understood(context.Background(), time.Now(), report.File{Name: "a.csv"}, book)
			if strings.Contains(got.Reason, "failed on it") || strings.Contains(got.Reason, "given up") {
				t.Fatal(got.Reason)
			}
			for _, r := range got.Results {
				if len(r.Broken) > 0 {
					t.Fatal(r.Broken)
				}
				for _, f := range r.Findings {
					out = append(out, f.At.String()+" "+f.Rule.Name+" "+f.Message+" "+f.NoRemedy)
				}
			}
			return append(out, string(got.Kind), got.Reason)
		}
		if a, b := tell(), tell(); !slices.Equal(a, b) {
			t.Fatalf("first %q, then %q", a, b)
		}
	})
}
