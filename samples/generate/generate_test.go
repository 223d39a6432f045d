package generate

import (
	"bytes"
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"lineaudit/samples/answer"
	"lineaudit/samples/book"

	"github.com/xuri/excelize/v2"
)

func TestSameSeedSameFiles(t *testing.T) {
	cfg := Config{Seed: 7, Jobs: len(layouts), Noise: 3, Faults: 0.5, Languages: []string{"de"}}
	a, b := t.TempDir(), t.TempDir()
	if _, err := Write(a, cfg); err != nil {
		t.Fatal(err)
	}
	if _, err := Write(b, cfg); err != nil {
		t.Fatal(err)
	}
	files, err := filepath.Glob(filepath.Join(a, "*"))
	if err != nil || len(files) == 0 {
		t.Fatalf("no files: %v", err)
	}
	for _, f := range files {
		x, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		y, err := os.ReadFile(filepath.Join(b, filepath.Base(f)))
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(x, y) {
			t.Errorf("%s differs between two runs", filepath.Base(f))
		}
	}
}

// TestTruthStandsInTheFile reads every written tap back, raw, and looks for
// the truth in it.
func TestTruthStandsInTheFile(t *testing.T) {
	for _, lay := range layouts {
		for noise := range 4 {
			t.Run(fmt.Sprintf("%s/%d", lay.name, noise), func(t *testing.T) {
				dir := t.TempDir()
				all, err := Write(dir, Config{Seed: uint64(noise), Jobs: max(2, lay.jobs), Layouts: []Layout{lay.name},
					Noise: noise, Faults: 0.5, Languages: Languages()[noise:]})
				if err != nil {
					t.Fatal(err)
				}
				checkTaps(t, dir, all, lay.fixedTap)
				checkSums(t, all)
			})
		}
	}
}

func checkTaps(t *testing.T, dir string, all answer.Archive, counts bool) {
	t.Helper()
	open := map[string]*excelize.File{}
	if len(all.Loudspeakers) == 0 {
		t.Fatal("no loudspeakers")
	}
	for _, l := range all.Loudspeakers {
		f := open[l.File]
		if f == nil {
			var err error
			if f, err = excelize.OpenFile(filepath.Join(dir, l.File)); err != nil {
				t.Fatal(err)
			}
			defer f.Close()
			open[l.File] = f
		}
		if l.Sheet == "" || l.Cell == "" {
			t.Fatalf("%s: %s %s is not drawn", l.File, l.Zone, l.Tag)
		}
		got, err := f.GetCellValue(l.Sheet, l.Cell, excelize.Options{RawCellValue: true})
		if err != nil {
			t.Fatal(err)
		}
		switch {
		case counts:
			if got != strconv.Itoa(l.Count) {
				t.Errorf("%s %s!%s: %q, want the count %d", l.File, l.Sheet, l.Cell, got, l.Count)
			}
		case math.IsNaN(l.TapW) && l.LowOhm == 0:
			if numbers.MatchString(got) {
				t.Errorf("%s %s!%s: %q, want no tap", l.File, l.Sheet, l.Cell, got)
			}
		case l.LowOhm > 0:
			if got != fmt.Sprintf("%g Ω", l.LowOhm) {
				t.Errorf("%s %s!%s: %q, want %g ohm", l.File, l.Sheet, l.Cell, got, l.LowOhm)
			}
		case !saysTap(got, l.TapW):
			t.Errorf("%s %s!%s: %q, want a tap of %g W", l.File, l.Sheet, l.Cell, got, l.TapW)
		}
	}
}

var numbers = regexp.MustCompile(`\d+(?:[.,]\d+)?`)

// saysTap tells whether a cell holds the number, as such, as a fraction, or
// as the serial number of a day in January 2019 (43466 is its first).
func saysTap(cell string, w float64) bool {
	if s, ok := fraction(w); ok && strings.Contains(cell, s) {
		return true
	}
	if d, err := strconv.Atoi(cell); err == nil && d > 43000 {
		return 1/float64(d-43465) == w
	}
	for _, n := range numbers.FindAllString(cell, -1) {
		if f, err := strconv.ParseFloat(strings.Replace(n, ",", ".", 1), 64); err == nil && f == w {
			return true
		}
	}
	return false
}

// checkSums adds the loads up a second way: every channel, and every zone,
// sums to the job.
func checkSums(t *testing.T, all answer.Archive) {
	t.Helper()
	devices, zones, channels, frames := map[string]float64{}, map[string]float64{}, map[string]float64{}, map[string]float64{}
	for _, l := range all.Loudspeakers {
		if l.Status == "installed" && !l.Excluded && l.LowOhm == 0 {
			devices[l.File+l.Job] += float64(l.Count) * l.TapW * math.Pow(l.LineV/l.TapV, 2)
		}
	}
	for _, z := range all.Zones {
		zones[z.File+z.Job] += z.LoadW
	}
	for _, c := range all.Channels {
		channels[c.File+c.Job] += c.LoadW
	}
	for _, f := range all.Amplifiers {
		frames[f.File+f.Job] += f.LoadW
	}
	for k, w := range devices {
		for name, sum := range map[string]float64{"zones": zones[k], "channels": channels[k], "amplifiers": frames[k]} {
			if math.Abs(sum-w) > 1e-9*w {
				t.Errorf("%s: %s add up to %g W, loudspeakers to %g W", k, name, sum, w)
			}
		}
	}
}

// TestCleanJobsAreClean checks the promise of jobs without faults: three
// quarters of every rating at most, half a decibel, no tag twice.
func TestCleanJobsAreClean(t *testing.T) {
	for noise := range 4 {
		all, err := Write(t.TempDir(), Config{Seed: 3, Jobs: 3 * len(layouts), Noise: noise, Languages: Languages()})
		if err != nil {
			t.Fatal(err)
		}
		if len(all.Faults) > 0 {
			t.Errorf("noise %d: %d faults planted", noise, len(all.Faults))
		}
		for _, c := range all.Controls {
			if c.LoadW > share*c.RatedW {
				t.Errorf("%s %s: %g W on %g W", c.File, c.Control, c.LoadW, c.RatedW)
			}
		}
		for _, c := range all.Channels {
			if c.LoadW > share*c.RatedW {
				t.Errorf("%s %s.%s: %g W on %g W", c.File, c.Amplifier, c.Channel, c.LoadW, c.RatedW)
			}
		}
		for _, a := range all.Amplifiers {
			if a.LoadW > a.RatedW {
				t.Errorf("%s %s: %g W on %g W", a.File, a.Amplifier, a.LoadW, a.RatedW)
			}
		}
		for _, l := range all.Lines {
			if !(l.WorstDB < 0.5) {
				t.Errorf("%s %s: %g dB", l.File, l.Zone, l.WorstDB)
			}
		}
		tags := map[string]bool{}
		for _, l := range all.Loudspeakers {
			if k := l.File + "|" + l.Job + "|" + l.Tag; l.Tag != "" {
				if tags[k] {
					t.Errorf("%s: tag %s twice", l.File, l.Tag)
				}
				tags[k] = true
			}
		}
	}
}

// TestFaultsAreFaults plants one rule after the other and checks each fault
// by the limits of the trade.
func TestFaultsAreFaults(t *testing.T) {
	for i, rule := range Rules() {
		t.Run(rule, func(t *testing.T) {
			all, err := Write(t.TempDir(), Config{Seed: uint64(i), Jobs: 2 * len(layouts), Noise: i % 4, Faults: 1, Rules: []string{rule}})
			if err != nil {
				t.Fatal(err)
			}
			if len(all.Faults) == 0 {
				t.Fatal("none planted")
			}
			for _, f := range all.Faults {
				checkFault(t, f, rule)
			}
		})
	}
}

func checkFault(t *testing.T, f answer.Fault, rule string) {
	t.Helper()
	if f.Rule != rule {
		t.Errorf("%s: %s planted", f.File, f.Rule)
	}
	if f.Cell == "" && (rule != "cannot-check" || f.Sheet != "") {
		t.Errorf("%s: %s has no cell", f.File, rule)
	}
	switch rule {
	case "control-overload", "control-voltage-mismatch", "channel-overload", "frame-overload", "headroom-short", "line-loss":
		if !(f.Measured > f.Limit) {
			t.Errorf("%s: %s at %g against %g", f.File, rule, f.Measured, f.Limit)
		}
	case "total-mismatch", "voltage-mismatch", "count-mismatch", "measured-load-differs":
		if f.Measured == f.Limit || math.IsNaN(f.Measured-f.Limit) {
			t.Errorf("%s: %s: %g against %g", f.File, rule, f.Measured, f.Limit)
		}
	}
}

func TestHeaderSpellings(t *testing.T) {
	own, seen := 0, map[Spelling]bool{}
	for _, s := range HeaderSpellings() {
		if s.Own {
			own++
		}
		if seen[s] {
			t.Errorf("%v twice", s)
		}
		seen[s] = true
	}
	if own*5 < len(seen) {
		t.Errorf("%d of %d spellings are our own, want a fifth", own, len(seen))
	}
}

func TestConfigErrors(t *testing.T) {
	for _, cfg := range []Config{{Layouts: []Layout{"round"}}, {Languages: []string{"xx"}}, {Rules: []string{"x"}}, {Units: "furlongs"}, {Format: "doc"}, {Noise: 4}} {
		if _, err := Write(t.TempDir(), cfg); err == nil {
			t.Errorf("no error for %+v", cfg)
		}
	}
}

// TestByHand draws one job that was made up here and compares its truth with
// figures worked out on paper.
//
// On 100 V: Fernery, 4 x 6 W + 2 x 3 W of which the four hang on VC-1; Foyer,
// 3 x 10 W tapped for 70.7 V, which draw twice their tap, 60 W. Output 1
// carries 30 W, output 2 60 W, the amplifier 90 W. The cable of the fernery,
// 50 m of 1.5 mm2: 2 x 50 / 58 / 1.5 = 1.14943 ohm; its load 10000 / 30 =
// 333.33 ohm; 20 log10(334.48276 / 333.33333) = 0.029900 dB.
func TestByHand(t *testing.T) {
	a := &amp{tag: "A1"}
	fern, foyer := &zone{name: "Fernery", n: 1}, &zone{name: "Foyer", n: 2}
	for i, z := range []*zone{fern, foyer} {
		z.channel = &channel{amp: a, name: strconv.Itoa(i + 1), ratedW: 120}
		a.channels = append(a.channels, z.channel)
		z.line = &line{tag: "C" + z.channel.name, zone: z, lengthM: 50, written: 50, areaMM2: 1.5, material: "copper"}
	}
	vc := &control{tag: "VC-1", zone: fern, ratedW: 35}
	north, south, hall := &room{name: "North", zone: fern, control: vc}, &room{name: "South", zone: fern}, &room{name: "Hall", zone: foyer}
	vc.room = north
	j := &job{number: "J1", lineV: 100, amps: []*amp{a}, zones: []*zone{fern, foyer}, controls: []*control{vc}, groups: []*group{
		{count: 4, kind: &kinds[0], tapW: 6, room: north, control: vc, status: "installed"},
		{count: 2, kind: &kinds[0], tapW: 3, room: south, status: "installed"},
		{count: 3, kind: &kinds[1], tapW: 10, tapV: answer.Class(70), room: hall, status: "installed"},
	}}
	for i, g := range j.groups {
		g.tags = []string{fmt.Sprint("S", i)}
	}
	lay := findLayout("groups")
	d := &drawing{hand: newHand(rand.New(rand.NewPCG(1, 1)), Config{Units: Metric}, "en"), book: &book.Book{}, drawn: map[string]bool{}}
	lay.draw(d, []*job{j})
	d.record(j, lay, Config{})
	d.truth.Work()
	got := d.truth
	for _, tt := range []struct {
		name      string
		got, want float64
	}{
		{"fernery", got.Zones[0].LoadW, 30}, {"foyer", got.Zones[1].LoadW, 60}, {"VC-1", got.Controls[0].LoadW, 24},
		{"output 1", got.Channels[0].LoadW, 30}, {"output 2", got.Channels[1].LoadW, 60}, {"amplifier", got.Amplifiers[0].LoadW, 90},
		{"loop", got.Lines[0].LoopOhm, 1.14943}, {"loss", got.Lines[0].FarDB, 0.029900},
	} {
		if math.Abs(tt.got-tt.want) > 1e-4*tt.want {
			t.Errorf("%s: got %v, want %v", tt.name, tt.got, tt.want)
		}
	}
}
