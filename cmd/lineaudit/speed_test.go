//go:build unix

package main

import (
	"cmp"
	"encoding/csv"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/xuri/excelize/v2"

	"lineaudit/samples/generate"
)

// TestSpeed prints the table of DEVELOPERS.md. It runs where LINEAUDIT_SPEED
// says how many jobs to measure with; LINEAUDIT_SPEED=10000 takes many minutes.
// All figures are processor time, by pairs of one run: a busy machine stretches
// both. Nothing is judged.
func TestSpeed(t *testing.T) {
	jobs, err := strconv.Atoi(os.Getenv("LINEAUDIT_SPEED"))
	if err != nil {
		t.Skip("LINEAUDIT_SPEED is not set")
	}
	s := newBench(t, min(jobs, 300))
	n := len(s.files)
	forty := make([]int, min(40, n))
	for i := range forty {
		forty[i] = i
	}
	t.Logf("%d workbooks, median %d bytes", n, median(s.content, func(c []byte) float64 { return float64(len(c)) }))
	var out strings.Builder
	out.WriteString("| what | to reach | measured | ms a workbook |\n| --- | --- | --- | --- |\n")
	floor := func() float64 { return processorTime(s.unpack) / float64(n) }
	row := func(what, goal string, of int, do func(), than func() float64) {
		ratios, own := make([]float64, 5), make([]float64, 5)
		for i := range ratios {
			base := than()
			own[i] = processorTime(do) / float64(of)
			ratios[i] = own[i] / base
		}
		slices.Sort(ratios)
		slices.Sort(own)
		line := fmt.Sprintf("| %s | %s | %.2f (%.2f to %.2f) | %.3f |\n", what, goal, ratios[2], ratios[0], ratios[4], own[2])
		t.Log(line)
		out.WriteString(line)
	}
	runtime.GOMAXPROCS(1)
	reading := func() float64 { return processorTime(s.read) / float64(n) }
	row("reading a workbook / floor", "1.3", n, s.read, floor)
	row("library's rows, raw / reading", "20", n, s.libraryRows, reading)
	row("library's rows, merges, visibility, notes / reading", "40", n, s.libraryMore, reading)
	if s.python(readScript, forty) {
		row("openpyxl read-only / reading", "60", len(forty), func() { s.python(readScript, forty) }, reading)
	}
	row("whole run, CSV and JSON / floor", "3", n, s.whole, floor)
	row("- understanding / floor", "", n, s.understand, floor)
	row("- rules and remedies / floor", "", n, func() { s.check(); s.rank() }, floor)
	row("- CSV and JSON / floor", "", n, s.tables, floor)
	row("audit.xlsx / floor", "apart", n, s.workbook, floor)
	row("audit.html / floor", "apart", n, s.page, floor)
	if with := s.withFindings(); s.python(markScript, with[:min(20, len(with))]) {
		few := with[:min(20, len(with))]
		row("marked copies / openpyxl, the same kind of edits", "0.25", len(with), s.marks,
			func() float64 { return processorTime(func() { s.python(markScript, few) }) / float64(len(few)) })
	}
	runtime.GOMAXPROCS(runtime.NumCPU())
	out.WriteString(whole(t, jobs))
	t.Log("\n" + out.String())
}

// whole measures the program itself: cores, memory, and whether cost is linear.
func whole(t *testing.T, jobs int) string {
	program := filepath.Join(t.TempDir(), "lineaudit")
	if text, err := exec.Command("go", "build", "-o", program, ".").CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	var out strings.Builder
	for _, n := range []int{max(1, jobs/10), jobs} {
		dir := t.TempDir()
		all, err := generate.Write(dir, generate.Config{Seed: 2, Jobs: n, Loudspeakers: 100, Noise: 1, Faults: 0.3, Languages: []string{"en"}, Format: "xlsx"})
		if err != nil {
			t.Fatal(err)
		}
		one, _ := ran(t, program, 1, dir)
		two, results := ran(t, program, 2, dir)
		findings := lines(t, filepath.Join(results, "findings.csv"))
		fmt.Fprintf(&out, "| program, all outputs, %d workbooks: two cores against one, wall | 1.6 | %.2f | %.3f |\n", len(all.Files), one.wall/two.wall, one.cpu/float64(len(all.Files)))
		fmt.Fprintf(&out, "| - peak memory, %d findings | %d MiB | %d MiB | |\n", findings, 256+findings/1024, two.peak>>20)
	}
	for _, rows := range []int{20_000, 200_000} {
		dir := t.TempDir()
		path := filepath.Join(dir, "register.xlsx")
		register(t, path, rows)
		peak, held := cellsAlone(t, path)
		fmt.Fprintf(&out, "| its cells alone, %d rows: peak memory, and what they hold | 64 MiB | %d MiB, %d MiB | |\n", rows, peak>>20, held>>20)
		m, _ := ran(t, program, 1, dir)
		fmt.Fprintf(&out, "| one register of %d rows, all outputs: peak memory | 512 MiB | %d MiB | %.0f |\n", rows, m.peak>>20, m.cpu)
	}
	return out.String()
}

// A run is what one run of the program took.
type timed struct {
	wall, cpu float64 // ms
	peak      int64   // bytes
}

func ran(t *testing.T, program string, workers int, dir string) (timed, string) {
	out := filepath.Join(t.TempDir(), "out")
	cmd := exec.Command(program, "--workers", strconv.Itoa(workers), "--time-limit", "3600", "--quiet", "--out", out, dir)
	cmd.Env = append(os.Environ(), "GOMAXPROCS="+strconv.Itoa(workers))
	start := time.Now()
	if text, err := cmd.CombinedOutput(); err != nil {
		t.Logf("%v: %s", err, text)
	}
	m := timed{wall: ms(time.Since(start)), cpu: ms(cmd.ProcessState.UserTime() + cmd.ProcessState.SystemTime())}
	if u, ok := cmd.ProcessState.SysUsage().(*syscall.Rusage); ok {
		m.peak = maxResident(u)
	}
	return m, out
}

func ms(d time.Duration) float64 { return float64(d.Microseconds()) / 1000 }

// processorTime is the processor time that a step takes, children included, in ms.
func processorTime(do func()) float64 {
	now := func() (sum float64) {
		for _, who := range []int{syscall.RUSAGE_SELF, syscall.RUSAGE_CHILDREN} {
			var u syscall.Rusage
			if syscall.Getrusage(who, &u) == nil {
				sum += float64(u.Utime.Nano()+u.Stime.Nano()) / 1e6
			}
		}
		return sum
	}
	before := now()
	do()
	return now() - before
}

func median[T any](list []T, of func(T) float64) int {
	sorted := slices.SortedFunc(slices.Values(list), func(a, b T) int { return cmp.Compare(of(a), of(b)) })
	return int(of(sorted[len(sorted)/2]))
}

func lines(t *testing.T, path string) int {
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	all, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return len(all) - 1
}

// register writes one list of loudspeakers of many jobs, 13 columns wide.
func register(t *testing.T, path string, rows int) {
	f := excelize.NewFile()
	defer f.Close()
	s, err := f.NewStreamWriter("Sheet1")
	if err != nil {
		t.Fatal(err)
	}
	put := func(row int, cells ...any) {
		if err := s.SetRow("A"+strconv.Itoa(row), cells); err != nil {
			t.Fatal(err)
		}
	}
	put(1, "Job no.", "Site", "Room", "Zone", "Tag", "Model", "Qty", "Tap (W)", "Line (V)", "Control", "Control max (W)", "Amplifier", "Channel")
	for i := range rows {
		j, k := i/100, i%100
		put(i+2, fmt.Sprintf("J%04d", j), fmt.Sprintf("Garden %d", j), fmt.Sprintf("House %d", k/5), fmt.Sprintf("Zone %d", k/10), fmt.Sprintf("LS-%03d", k+1),
			"CS-6", 1, []float64{3, 6, 10}[i%3], 100, fmt.Sprintf("VC-%d", k/10), 120, fmt.Sprintf("A%d", 1+k/40), 1+k/10%4)
	}
	if err := s.Flush(); err != nil {
		t.Fatal(err)
	}
	if err := f.SaveAs(path); err != nil {
		t.Fatal(err)
	}
}
