package main

import (
	"fmt"
	"path/filepath"
	"strings"
	"testing"

	"lineaudit/ingest/house"
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
	line := func(volts, qty, tap, cable, length string) string {
		return "Line voltage," + volts + "\n\nZone,Qty,Tap,Amp,Ch,Cable,Length\nHall," + qty + "," + tap + ",A1,1," + cable + "," + length + "\n"
	}
	const whale = "A. Whale, 70-V Audio Distribution part 1, Professional Sound: 100 W at 70.7 V"
	const bosch = "Bosch PRAESENSA Installation manual (German), 2019.11, 4.5.2, p. 23: the sizes that stay under 2 dB with all load at the end, and the next smaller ones, which do not"
	for _, tt := range []struct {
		name, source, text string
		house              string // ratings of a house book
		table, column      string
		want               string
		tolerance          float64 // relative
	}{
		{"longest run for 0.5 dB", "GE Security EST3 Installation and Service Manual, B.17: 30 W at 25 V on 18 AWG of 13.0 ohm per 1000 ft pair reaches 95 ft; its wire table is 1.8 % above the standard resistivity",
			line("25 V", "6", "5 W", "18 AWG", "95 ft"), "", "lines", "loss_far_db", "0.5", 0.02},
		{"50 ft of 22 AWG, loop", whale + ", 1.614 ohm", line("70.7 V", "10", "10 W", "22 AWG", "50 ft"), "", "lines", "loop_ohm", "1.614", 1e-3},
		{"50 ft of 22 AWG, loss", whale + "; V^2/P and the loop give 0.276 dB", line("70.7 V", "10", "10 W", "22 AWG", "50 ft"), "", "lines", "loss_far_db", "0.276", 1e-3},
		{"500 ft of 12 AWG, loop", whale + ", 1.588 ohm", line("70.7 V", "10", "10 W", "12 AWG", "500 ft"), "", "lines", "loop_ohm", "1.588", 1e-3},
		{"a load of 100 W", whale + ", 50 ohm", line("70.7 V", "10", "10 W", "12 AWG", "500 ft"), "", "zones", "expected_ohm", "50", 1e-3},
		{"200 W, 500 m, 1.5 mm2", bosch, line("100 V", "20", "10 W", "1.5 mm2", "500 m"), "", "lines", "loss_far_db", "1.797", 1e-3},
		{"200 W, 500 m, 1 mm2", bosch, line("100 V", "20", "10 W", "1 mm2", "500 m"), "", "lines", "loss_far_db", "2.573", 1e-3},
		{"150 W, 1312 ft, 14 AWG", bosch, line("70.7 V", "15", "10 W", "14 AWG", "1312 ft"), "", "lines", "loss_far_db", "1.575", 1e-3},
		{"150 W, 1312 ft, 16 AWG", bosch, line("70.7 V", "15", "10 W", "16 AWG", "1312 ft"), "", "lines", "loss_far_db", "2.387", 1e-3},
		{"150 W, 1312 ft, 12 AWG clad", bosch + "; taken there as one gauge thicker, 1.59 times the resistance here", line("70.7 V", "15", "10 W", "12 AWG CCA", "1312 ft"), "", "lines", "loss_far_db", "1.575", 0.01},
		{"tap to impedance", "70-Volt Loud-Speaker Matching Systems, wa7zcz page on qsl.net: 10 W at 70.7 V is a primary of 500 ohm",
			"Line voltage,70 V\n\nTag,Zone,Tap,Amp,Ch\nS1,Hall,10 W,A1,1\n", "", "zones", "expected_ohm", "500", 1e-3},
		{"3 x 15 W on one line", "baunetzwissen.de prints 2, 4 and 6 loudspeakers of 15 W as 102 W; the sum is 180 W (hand calculation 12 x 15)",
			"Line voltage,100 V\n\nZone,Qty,Tap,Amp,Ch\nA,2,15 W,A1,1\nB,4,15 W,A1,1\nC,6,15 W,A1,1\n", "", "channels", "load_w", "180", 1e-9},
		{"70 V taps on a 100 V line", "V^2: (100/70.7)^2 = 2, so 10 taps of 5 W draw 100 W",
			"Line voltage,100 V\n\nTag,Qty,Zone,Tap,Amp,Ch\nS1,10,Hall,5 W @70V,A1,1\n", "", "channels", "load_w", "100", 1e-9},
		{"a 70 V tap on a 50 V line", "QSC CX Series user manual, p. 24: 2.5 W become 1.25 W",
			"Line voltage,50 V\n\nTag,Qty,Zone,Tap,Amp,Ch\nS1,1,Hall,2.5 W @70V,A1,1\n", "", "channels", "load_w", "1.25", 1e-3},
		{"insertion loss of 2.5 dB", "J. W. Davis, Transformer Insertion Losses, p. 1: 10 W draw 17.7 W",
			"Line voltage,70 V\n\nTag,Qty,Model,Zone,Tap,Amp,Ch\nS1,1,QT-10,Hall,10 W,A1,1\n", "QT-10,,loudspeaker,,,,,,,2.5", "channels", "load_w", "17.7", 0.005},
		{"insertion loss of 1 dB", "Peavey/Crest CKV, CKS series manual, appendix E, p. 18: a 4 W tap draws 5 W",
			"Line voltage,70 V\n\nTag,Qty,Model,Zone,Tap,Amp,Ch\nS1,1,QT-4,Hall,4 W,A1,1\n", "QT-4,,loudspeaker,,,,,,,1", "channels", "load_w", "5", 0.01},
	} {
		t.Run(tt.name, func(t *testing.T) {
			args := []string{folder(t, map[string]string{"job.csv": tt.text})}
			if tt.house != "" {
				args = append(args, "--house", folder(t, map[string]string{"ratings.csv": strings.Join(house.Columns(house.Ratings), ",") + "\n" + tt.house + "\n"}))
			}
			out, _, text := audited(t, args...)
			got := records(t, filepath.Join(out, tt.table+".csv"))
			if len(got) == 0 || !closeTo(tt.want, got[0][tt.column], tt.tolerance) {
				t.Errorf("%s: want %s = %s, got %v\n%s", tt.source, tt.column, tt.want, got, text)
			}
		})
	}
}

// A cable chart for 100 V lines (ukpublicaddress.com, Public address
// installation, 100V line cable chart) comes out at 10 % of the volts, 0.915 dB,
// in each of its 24 cells; its lengths are rounded down by up to 0.9 %.
func TestPublishedCableChart(t *testing.T) {
	areas := []string{"0.75", "1", "1.5", "2.5", "4", "6"}
	lengths := map[int][]int{30: {800, 1066, 1600, 2666, 4266, 6400}, 60: {400, 533, 800, 1333, 2133, 3200},
		120: {200, 266, 400, 666, 1066, 1600}, 240: {100, 133, 200, 333, 533, 800}}
	var b strings.Builder
	b.WriteString("Line voltage,100 V\n\nZone,Qty,Tap,Amp,Ch,Cable,Length\n")
	ch := 0
	for _, watts := range []int{30, 60, 120, 240} {
		for i, metres := range lengths[watts] {
			ch++
			fmt.Fprintf(&b, "Lawn %d,%d,10 W,A1,%d,%s mm2,%d m\n", ch, watts/10, ch, areas[i], metres)
		}
	}
	out, _, text := audited(t, folder(t, map[string]string{"job.csv": b.String()}))
	lines := records(t, filepath.Join(out, "lines.csv"))
	if len(lines) != 24 {
		t.Fatalf("%d lines\n%s", len(lines), text)
	}
	for _, l := range lines {
		if !closeTo("0.9151", l["loss_far_db"], 0.01) {
			t.Errorf("%s m of %s mm2 at %s W: %s dB, want 0.915", l["length_m"], l["area_mm2"], l["load_w"], l["loss_far_db"])
		}
	}
}
