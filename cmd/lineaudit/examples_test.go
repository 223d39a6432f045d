package main

import (
	"fmt"
	"path/filepath"
	"strings"
	"testing"
)

// The circuits of audit/line/testdata, written as schedules. Losses are those
// of ngspice 39.3 (worst loudspeaker). The circuits take 70.7 V and wire tables of five digits; the audit
// takes 100/sqrt(2) V and the exact formula, which agree to 0.05 %.
func TestCircuitsOfTheSimulatorAsSchedules(t *testing.T) {
	chain := func(line, gauge string, lengths []string, taps []string) string {
		var b strings.Builder
		fmt.Fprintf(&b, "Project,Chain\nLine voltage,%s\n\nTag,Zone,Amp,Ch,Tap (W),Cable,Length from previous (ft)\n", line)
		for i := range taps {
			fmt.Fprintf(&b, "LS%d,Glass house,A1,1,%s,%s,%s\n", i+1, taps[i], gauge, lengths[min(i, len(lengths)-1)])
		}
		return b.String()
	}
	fromTo := func(line string, taps []string, cables [][4]string) string {
		var b strings.Builder
		fmt.Fprintf(&b, "Project,Tree\nLine voltage,%s\n\nLoudspeakers\nTag,Zone,Amp,Ch,Tap\n", line)
		for _, tap := range taps {
			tag, w, _ := strings.Cut(tap, "=")
			fmt.Fprintf(&b, "%s,Glass house,A1,1,%s W\n", tag, w)
		}
		b.WriteString("\nCable schedule\nCable,From,To,Size,Length\n")
		for i, c := range cables {
			fmt.Fprintf(&b, "C%02d,%s,%s,%s,%s\n", i+1, c[0], c[1], c[2], c[3])
		}
		return b.String()
	}
	twelve := strings.Split(strings.Repeat("5 ", 12), " ")[:12]
	for _, tt := range []struct {
		name, text string
		loss       float64 // dB
	}{
		{"02 twelve equal ones", chain("70.7 V", "16 AWG", []string{"100", "25"}, twelve), 0.1973},
		{"03 mixed taps at 25 V", chain("25 V", "18 AWG", []string{"60", "35", "40", "20", "55", "30"}, []string{"10", "5", "2", "4", "1", "0.5"}), 0.4013},
		{"03 as runs from and to", fromTo("25 V", []string{"S1=10", "S2=5", "S3=2", "S4=4", "S5=1", "S6=0.5"}, [][4]string{
			{"A1/1", "S1", "18 AWG", "60 ft"}, {"S1", "S2", "18 AWG", "35 ft"}, {"S2", "S3", "18 AWG", "40 ft"}, {"S3", "S4", "18 AWG", "20 ft"}, {"S4", "S5", "18 AWG", "55 ft"}, {"S5", "S6", "18 AWG", "30 ft"}}), 0.4013},
		{"04 a tree with a joint", fromTo("70.7 V", []string{"SA1=10", "SA2=10", "SA3=10", "SA4=10", "SB1=5", "SB2=5", "SB3=5", "SB4=5", "SB5=5", "SB6=5"}, [][4]string{
			{"A1/1", "JB1", "12 AWG", "250 ft"}, {"JB1", "SA1", "18 AWG", "80 ft"}, {"SA1", "SA2", "18 AWG", "30 ft"}, {"SA2", "SA3", "18 AWG", "30 ft"}, {"SA3", "SA4", "18 AWG", "30 ft"},
			{"JB1", "SB1", "16 AWG", "120 ft"}, {"SB1", "SB2", "16 AWG", "40 ft"}, {"SB2", "SB3", "16 AWG", "40 ft"}, {"SB3", "SB4", "16 AWG", "40 ft"}, {"SB4", "SB5", "16 AWG", "40 ft"}, {"SB5", "SB6", "16 AWG", "40 ft"}}), 0.2055},
		{"06 class 5 at 100 V", strings.ReplaceAll(strings.ReplaceAll(chain("100 V", "2 x 1.5 mm² class 5", []string{"180", "20"}, []string{"20", "20", "10", "10", "10", "6", "6", "3"}), "(ft)", "(m)"), "Tree", "Chain"), 0.4355},
	} {
		t.Run(tt.name, func(t *testing.T) {
			out, code, text := audited(t, folder(t, map[string]string{"job.csv": tt.text}))
			if code != done {
				t.Fatalf("exit code %d\n%s", code, text)
			}
			lines := records(t, filepath.Join(out, "lines.csv"))
			if len(lines) != 1 || !closeTo(fmt.Sprint(tt.loss), lines[0]["loss_worst_db"], 1e-3) {
				t.Errorf("want one line of %.4f dB, got %v", tt.loss, lines)
			}
		})
	}
}

// Published examples, from a schedule to the figure.
func TestPublishedExamples(t *testing.T) {
	for _, tt := range []struct {
		name, source, text string
		table, column      string
		want               string
		tolerance          float64
	}{
		{"longest run for 0.5 dB", "fire-alarm audio panel manual, appendix B: 30 W at 25 V on 18 AWG of 13.0 ohm per 1000 ft pair reaches 95 ft; its wire table is 1.8 % above the standard resistivity", //
			"Line voltage,25 V\n\nZone,Qty,Tap,Amp,Ch,Cable,Length\nEvacuation,6,5 W,A1,1,18 AWG,95 ft\n", "lines", "loss_far_db", "0.5", 0.02},
		{"tap to impedance", "line matching: 10 W at 70.7 V is a primary of 500 ohm (EIA method, as a public technical page gives it)",
			"Line voltage,70 V\n\nTag,Zone,Tap,Amp,Ch\nS1,Hall,10 W,A1,1\n", "zones", "expected_ohm", "500", 1e-3},
		{"3 x 15 W on one line", "building encyclopaedia: 2, 4 and 6 loudspeakers of 15 W are printed as 102 W; the sum is 180 W (hand calculation 12 x 15)",
			"Line voltage,100 V\n\nZone,Qty,Tap,Amp,Ch\nA,2,15 W,A1,1\nB,4,15 W,A1,1\nC,6,15 W,A1,1\n", "channels", "load_w", "180", 1e-9},
		{"70 V taps on a 100 V line", "V^2: (100/70.7)^2 = 2, so 10 taps of 5 W draw 100 W",
			"Line voltage,100 V\n\nTag,Qty,Zone,Tap,Amp,Ch\nS1,10,Hall,5 W @70V,A1,1\n", "channels", "load_w", "100", 1e-9},
	} {
		t.Run(tt.name, func(t *testing.T) {
			out, _, text := audited(t, folder(t, map[string]string{"job.csv": tt.text}))
			got := records(t, filepath.Join(out, tt.table+".csv"))
			if len(got) == 0 || !closeTo(tt.want, got[0][tt.column], tt.tolerance) {
				t.Errorf("%s: want %s = %s, got %v\n%s", tt.source, tt.column, tt.want, got, text)
			}
		})
	}
}
