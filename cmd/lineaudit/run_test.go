package main

import (
	"archive/zip"
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/csv"
	"encoding/hex"
	"fmt"
	"io/fs"
	"maps"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"lineaudit/ingest/house"
	"lineaudit/report/stage"
)

// job is a schedule with one overloaded control: 6 x 10 W = 60 W on 50 W.
const job = `Job:,Glass house,,,,
Line:,100 V,,,,
,,,,,
Tag,Zone,Tap,Control,Control max load,Qty
LS-1,Palm house,10 W,VC-1,50 W,4
LS-2,Palm house,10 W,VC-1,50 W,2
`

// clean is the same with room to spare.
var clean = strings.ReplaceAll(job, "50 W", "100 W")

func folder(t *testing.T, files map[string]string) string {
	t.Helper()
	dir := t.TempDir()
	for name, text := range files {
		path := filepath.Join(dir, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

// xlsxOf is a workbook with the cells of a text table.
func xlsxOf(t *testing.T, text string) []byte {
	t.Helper()
	rows, err := csv.NewReader(strings.NewReader(text)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	f := excelize.NewFile()
	defer f.Close()
	for i, row := range rows {
		if err := f.SetSheetRow("Sheet1", fmt.Sprintf("A%d", i+1), &row); err != nil {
			t.Fatal(err)
		}
	}
	b, err := f.WriteToBuffer()
	if err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// zipOf is a zip of files in a folder.
func zipOf(t *testing.T, folder string, files map[string][]byte) []byte {
	t.Helper()
	var b bytes.Buffer
	z := zip.NewWriter(&b)
	for _, name := range slices.Sorted(maps.Keys(files)) {
		w, err := z.Create(folder + name)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := w.Write(files[name]); err != nil {
			t.Fatal(err)
		}
	}
	if err := z.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// called runs the program and returns what it said.
func called(args ...string) (code int, stdout, stderr string) {
	var out, err bytes.Buffer
	code = run(context.Background(), args, screen{out: &out, err: &err})
	return code, out.String(), err.String()
}

func TestArguments(t *testing.T) {
	dir := folder(t, map[string]string{"job.csv": job, "clean/clean.csv": clean, "bad/empty.xlsx": "", "none/list.csv": "Name,Phone\nA,1\nB,2\n"})
	in := func(name string) string { return filepath.Join(dir, name) }
	out := func() string { return filepath.Join(t.TempDir(), "out") }
	for _, tt := range []struct {
		name           string
		args           []string
		code           int
		stdout, stderr string // parts of what is said
	}{
		{"help", []string{"--help"}, done, "Usage:", ""},
		{"help of read", []string{"read", "-h"}, done, "--explain", ""},
		{"version", []string{"--version"}, done, "lineaudit ", ""},
		{"help as a word", []string{"help"}, done, "-o, --out folder folder for the results", ""},
		{"version as a word", []string{"version"}, done, "lineaudit ", ""},
		{"a mistyped word", []string{"rule"}, wrongUse, "", "did you mean rules?"},
		{"unknown encoding", []string{"--encoding", "klingon", dir}, wrongUse, "", "try utf-8"},
		{"no path", nil, wrongUse, "", "name at least one file"},
		{"unknown flag", []string{"--grad", "fault", dir}, wrongUse, "", "did you mean --grade?"},
		{"unknown grade", []string{"--grade", "fautl", dir}, wrongUse, "", "danger, fault, caution, unknown; did you mean fault?"},
		{"unknown reader", []string{"--for", "insurer", dir}, wrongUse, "", "service, bid, compliance"},
		{"no workers", []string{"--workers", "0", dir}, wrongUse, "", "--workers 0: from 1 to 256"},
		{"more workers than any machine feeds", []string{"--workers", "100000", dir}, wrongUse, "", "--workers 100000: from 1 to 256"},
		{"a grade that a script did not set", []string{"--fail-at", "", dir}, wrongUse, "", "--fail-at is empty; give it a value or leave it out"},
		{"a house book that a script did not set", []string{"--house=", dir}, wrongUse, "", "--house is empty"},
		{"an output folder that a script did not set", []string{"--out", " ", dir}, wrongUse, "", "--out is empty"},
		{"a path that a script did not set", []string{dir, ""}, wrongUse, "", "the name of a file or folder is empty"},
		{"a name that would talk to the terminal", []string{"\x1b[31mred\n"}, wrongUse, "", "lineaudit: [31mred : no such file"},
		{"no time", []string{"--time-limit", "0", dir}, wrongUse, "", "--time-limit 0: from 1 to 86400"},
		{"no size", []string{"--size-limit", "-1", dir}, wrongUse, "", "--size-limit -1: from 1 to 4096"},
		{"more cells than allowed", []string{in("clean"), "--cell-limit", "5", "--out", out()}, incomplete, "more than 5 cells", ""},
		{"bad date", []string{"--date", "1.2.2026", dir}, wrongUse, "", "2026-11-25"},
		{"bad units", []string{"--units", "yards", dir}, wrongUse, "", "m, ft"},
		{"no such path", []string{in("nowhere")}, wrongUse, "", "nowhere"},
		{"a fault", []string{in("job.csv"), "--out", out()}, done, "60 W on a 50 W control", ""},
		{"a fault in a script", []string{in("job.csv"), "--fail-at", "fault", "--out", out()}, found, "60 W on a 50 W control", ""},
		{"no danger in a script", []string{in("job.csv"), "--fail-at", "danger", "--out", out()}, done, "60 W on a 50 W control", ""},
		{"clean", []string{in("clean"), "--fail-at", "caution", "--out", out()}, done, "0 danger, 0 fault", ""},
		{"unreadable and clean", []string{in("clean"), in("bad"), "--out", out()}, incomplete, "the file is empty", ""},
		{"1 beats 3", []string{in("job.csv"), in("bad"), "--fail-at", "fault", "--out", out()}, found, "the file is empty", ""},
		{"no schedule beside one", []string{in("clean"), in("none"), "--out", out()}, done, "not-a-schedule", ""},
		{"no schedule at all", []string{in("none"), "--out", out()}, incomplete, "audit.xlsx to work in, the tables as CSV", ""},
		{"quiet", []string{in("clean"), "-q", "--out", out()}, done, "1 job at 1 site", ""},
		{"read", []string{"read", in("job.csv")}, done, "Control max load", ""},
		{"explain", []string{"read", in("job.csv"), "--explain", "C5"}, done, "tap = 10 W", ""},
		{"explain nothing", []string{"read", in("job.csv"), "--explain", "ZZ900"}, done, "empty", ""},
		{"explain no cell", []string{"read", in("job.csv"), "--explain", "12C"}, wrongUse, "", "not a cell name"},
		{"explain a sheet that is not there", []string{"read", in("job.csv"), "--explain", "Rink!C5"}, wrongUse, "", `there is no sheet "Rink" in job.csv`},
		{"explain in a folder", []string{"read", dir, "--explain", "C5"}, wrongUse, "", "one file"},
		{"rules", []string{"rules"}, done, "control-overload", ""},
		{"one rule", []string{"rules", "line-loss"}, done, "Limits", ""},
		{"no such rule", []string{"rules", "line-los"}, wrongUse, "", "did you mean line-loss?"},
		{"schema", []string{"schema"}, done, `"$schema"`, ""},
		{"house without a name", []string{"house"}, wrongUse, "", "house.xlsx"},
		{"house of the wrong kind", []string{"house", "house.csv"}, wrongUse, "", ".xlsx"},
		{"no such house book", []string{in("clean"), "--house", in("nowhere.xlsx"), "--out", out()}, wrongUse, "", "nowhere.xlsx"},
		{"a house book that is none", []string{in("clean"), "--house", in("job.csv"), "--out", out()}, wrongUse, "", "no sheet of a house book"},
		{"dispositions that are none", []string{in("clean"), "--dispositions", in("job.csv"), "--out", out()}, wrongUse, "", "Disposition"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			code, stdout, stderr := called(tt.args...)
			if code != tt.code {
				t.Errorf("exit code %d, want %d\n%s%s", code, tt.code, stdout, stderr)
			}
			if !strings.Contains(strings.Join(strings.Fields(stdout), " "), tt.stdout) || tt.stdout == "" && stdout != "" {
				t.Errorf("stdout has no %q:\n%s", tt.stdout, stdout)
			}
			if !strings.Contains(stderr, tt.stderr) || tt.stderr == "" && stderr != "" {
				t.Errorf("stderr has no %q:\n%s", tt.stderr, stderr)
			}
			if tt.code == wrongUse && strings.Count(stderr, "\n") > 8 {
				t.Errorf("a usage error of %d lines:\n%s", strings.Count(stderr, "\n"), stderr)
			}
		})
	}
}

// sums are the SHA-256 of every file below a folder.
func sums(t *testing.T, dir string) map[string]string {
	t.Helper()
	m := map[string]string{}
	err := filepath.WalkDir(dir, func(p string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		b, err := os.ReadFile(p)
		rel, _ := filepath.Rel(dir, p)
		sum := sha256.Sum256(b)
		m[filepath.ToSlash(rel)] = hex.EncodeToString(sum[:])
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return m
}

// One core or two, one worker or eight, and the files put on the disk in another
// order: every output is the same, byte by byte.
func TestSameBytesEveryTime(t *testing.T) {
	const archive = "../../samples/archive"
	before := sums(t, archive)
	var first map[string]string
	for _, way := range []struct {
		cores    int
		workers  string
		shuffled uint64 // 0: as it lies
	}{{1, "1", 0}, {2, "2", 0}, {1, "8", 0}, {2, "2", 1}, {2, "1", 2}} {
		in := archive
		if way.shuffled > 0 {
			in = shuffled(t, archive, way.shuffled)
		}
		usual := runtime.GOMAXPROCS(way.cores)
		out, _, _ := audited(t, in, "--workers", way.workers, "--date", "2026-11-25")
		runtime.GOMAXPROCS(usual)
		got := sums(t, out)
		if first == nil {
			first = got
		}
		for name, sum := range first {
			if got[name] != sum {
				t.Errorf("%s differs with %+v", name, way)
			}
		}
		if len(got) != len(first) || len(got) < 20 {
			t.Errorf("%d files with %+v, %d before", len(got), way, len(first))
		}
	}
	if !maps.Equal(before, sums(t, archive)) {
		t.Error("an input has changed")
	}
}

// shuffled copies a folder, the files in a random order, under the same name.
func shuffled(t *testing.T, dir string, seed uint64) string {
	t.Helper()
	names := slices.Sorted(maps.Keys(sums(t, dir)))
	r := rand.New(rand.NewPCG(seed, 0))
	r.Shuffle(len(names), func(i, j int) { names[i], names[j] = names[j], names[i] })
	to := filepath.Join(t.TempDir(), filepath.Base(dir))
	for _, name := range names {
		b, err := os.ReadFile(filepath.Join(dir, filepath.FromSlash(name)))
		if err != nil {
			t.Fatal(err)
		}
		path := filepath.Join(to, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, b, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return to
}

func TestStoppedRunLeavesNothing(t *testing.T) {
	dir := folder(t, map[string]string{"job.csv": job})
	out := filepath.Join(t.TempDir(), "out")
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	var stdout, stderr bytes.Buffer
	if code := run(ctx, []string{dir, "--out", out}, screen{out: &stdout, err: &stderr}); code != incomplete {
		t.Errorf("exit code %d", code)
	}
	if _, err := os.Stat(out); !os.IsNotExist(err) {
		t.Errorf("the output folder is there: %v", err)
	}
}

// The output folder may lie inside the archive: the next run must not read it.
func TestOutputInsideTheArchive(t *testing.T) {
	dir := folder(t, map[string]string{"job.csv": job})
	out := filepath.Join(dir, "out")
	for range 2 {
		if code, stdout, stderr := called(dir, "--out", out); code != done || !strings.Contains(stdout, "1 job at 1 site in 1 file") {
			t.Fatalf("exit code %d\n%s%s", code, stdout, stderr)
		}
	}
}

// Results of earlier audits that lie among the schedules are not audited as
// schedules: neither the folder of a run, nor copies of its files, nor marked
// copies whose originals are there, nor any of them in a zip.
func TestResultsAmongTheSchedules(t *testing.T) {
	other := strings.ReplaceAll(strings.ReplaceAll(job, "Palm", "Fern"), "Glass", "Boat")
	dir := folder(t, map[string]string{"jobs/job.csv": job})
	if err := os.WriteFile(filepath.Join(dir, "jobs", "other.xlsx"), xlsxOf(t, other), 0o644); err != nil {
		t.Fatal(err)
	}
	first := filepath.Join(dir, "review")
	if code, stdout, stderr := called(dir, "--out", first); code != done {
		t.Fatal(stdout, stderr)
	}
	results := map[string][]byte{}
	for name := range sums(t, first) {
		b, err := os.ReadFile(filepath.Join(first, filepath.FromSlash(name)))
		if err != nil {
			t.Fatal(err)
		}
		results[name] = b
	}
	known := maps.Clone(results) // by its list
	delete(results, stage.Manifest)
	for at, files := range map[string]map[string][]byte{"jobs/known.zip": known, "jobs/loose.zip": results} {
		if err := os.WriteFile(filepath.Join(dir, filepath.FromSlash(at)), zipOf(t, "out/", files), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	for name, b := range results {
		if err := os.WriteFile(filepath.Join(dir, "jobs", "copy of "+filepath.Base(name)), b, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	out := filepath.Join(t.TempDir(), "out")
	n := len(results)
	code, stdout, stderr := called(dir, "--out", out)
	if text := strings.Join(strings.Fields(stdout), " "); code != done || !strings.Contains(text, fmt.Sprintf("2 jobs at 2 sites in %d files (%d files no schedule): 0 danger, 2 fault", 2+2*n+2, 2*n+2)) {
		t.Errorf("exit code %d\n%s%s", code, stdout, stderr)
	}
	list, err := os.ReadFile(filepath.Join(out, "files.csv"))
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{
		fmt.Sprintf(`review,not-a-schedule,,,,,,,,"%d results of an earlier audit, left out"`, n),
		fmt.Sprintf(`jobs/known.zip/out,not-a-schedule,,,,,,,,"%d results of an earlier audit, left out"`, n),
		`jobs/loose.zip/out/marked/jobs/other.xlsx,not-a-schedule,,,,,,,,"a marked copy of jobs/other.xlsx, left out"`,
		`jobs/copy of job.csv.xlsx,not-a-schedule,,,,,,,,"a marked copy of jobs/job.csv, left out"`,
		`jobs/copy of audit.html,not-a-schedule,,,,,,,,"` + earlierResult,
		`jobs/copy of findings.json,not-a-schedule,,,,,,,,"` + earlierResult,
		`jobs/copy of house-todo.xlsx,not-a-schedule,,,,,,,,"a house book, no schedule`,
	} {
		if !strings.Contains(string(list), "\n"+want) {
			t.Errorf("files.csv has no %s:\n%s", want, list)
		}
	}
	// Without its original a marked copy is the schedule.
	alone := filepath.Join(first, "marked", "jobs", "job.csv.xlsx")
	if code, stdout, stderr := called(alone, "-q", "--out", filepath.Join(t.TempDir(), "out")); code != done || !strings.Contains(stdout, "1 job at 1 site in 1 file (every file read): 0 danger, 1 fault") {
		t.Errorf("exit code %d\n%s%s", code, stdout, stderr)
	}
	if code, stdout, stderr := called("read", alone); code != done || !strings.Contains(strings.Join(strings.Fields(stdout), " "), "job.csv.xlsx: schedule (xlsx): a marked copy of an earlier audit; no other file says the same") {
		t.Errorf("exit code %d\n%s%s", code, stdout, stderr)
	}
	for _, tt := range []struct {
		args []string
		want string
	}{
		{[]string{first, "--out", filepath.Join(t.TempDir(), "out")}, "results of an earlier audit are left out"},
		{[]string{first, "--out", first}, "results go to it and are never read"},
		{[]string{t.TempDir(), "--out", filepath.Join(t.TempDir(), "out")}, "no file to read in "},
	} {
		if code, stdout, stderr := called(tt.args...); code != incomplete || !strings.Contains(stderr, tt.want) || strings.Contains(stderr, "[") {
			t.Errorf("%v: exit code %d\n%s%s", tt.args, code, stdout, stderr)
		}
	}
}

// What somebody typed into the output folder stops a run before it reads anything.
func TestWorkInTheOutputFolderIsKept(t *testing.T) {
	dir := folder(t, map[string]string{"job.csv": job})
	out := folder(t, map[string]string{"zones.csv": "mine"})
	code, stdout, stderr := called(dir, "--out", out)
	if b, _ := os.ReadFile(filepath.Join(out, "zones.csv")); string(b) != "mine" || code != incomplete || !strings.Contains(stderr, "zones.csv is no result of lineaudit") {
		t.Errorf("exit code %d, zones.csv reads %q\n%s%s", code, b, stdout, stderr)
	}
	os.Remove(filepath.Join(out, "zones.csv"))
	if code, stdout, stderr := called(dir, "--out", out); code != done {
		t.Fatal(stdout, stderr)
	}
	todo := filepath.Join(out, "house-todo.xlsx")
	os.WriteFile(todo, []byte("filled in"), 0o644)
	code, stdout, stderr = called(dir, "--out", out)
	if b, _ := os.ReadFile(todo); string(b) != "filled in" || code != incomplete || !strings.Contains(stderr, "house-todo.xlsx was changed since") {
		t.Errorf("exit code %d\n%s%s", code, stdout, stderr)
	}
}

func TestHouseBookIsWrittenOnceAndReadBack(t *testing.T) {
	name := filepath.Join(t.TempDir(), "house.xlsx")
	if code, _, stderr := called("house", name); code != done {
		t.Fatal(stderr)
	}
	if code, _, stderr := called("house", name); code != wrongUse || !strings.Contains(stderr, "exists") {
		t.Errorf("it was written over: %d %s", code, stderr)
	}
	dir := folder(t, map[string]string{"job.csv": job})
	if code, _, stderr := called(dir, "--house", name, "--out", filepath.Join(t.TempDir(), "out")); code != done {
		t.Errorf("an empty house book is not accepted: %s", stderr)
	}
}

func TestHouseLimitsCount(t *testing.T) {
	house := folder(t, map[string]string{"limits.csv": "rule,limit,value,unit,use,source\ncontrol-overload,fault,130,% of rating,any,our own rule\ncontrol-overload,danger,150,% of rating,any,our own rule\n"})
	dir := folder(t, map[string]string{"job.csv": job})
	code, stdout, stderr := called(dir, "--house", house, "--fail-at", "fault", "--out", filepath.Join(t.TempDir(), "out"))
	if code != done {
		t.Errorf("exit code %d: 120 %% is inside the firm's limit of 130 %%\n%s%s", code, stdout, stderr)
	}
}

func TestHouseErrorsStopTheRun(t *testing.T) {
	house := folder(t, map[string]string{
		"limits.csv":  "rule,limit,value,unit,use,source\nno-such-rule,fault,130,%,any,x\nline-loss,fault,2,W,any,x\nheadroom-short,caution,-5,%,any,x\n",
		"ratings.csv": "model,other_names,kind,rated_w,taps_w,impedance_ohm,channels,frame_w,box_depth_mm,insertion_loss_db\nWK-35,,control,35,,,,,,\nwk 35,,control,50,,,,,,\nM-6,,loudspeaker,abc,6/3/0,,,,,99\nX-1,,horn,1,,,,,,\n"})
	out := filepath.Join(t.TempDir(), "out")
	code, _, stderr := called(folder(t, map[string]string{"job.csv": job}), "--house", house, "--out", out)
	if code != wrongUse {
		t.Errorf("exit code %d", code)
	}
	var got []string
	for _, line := range strings.Split(stderr, "\n")[3:] {
		if f := strings.Fields(line); len(f) > 2 {
			got = append(got, f[0]+" "+f[1])
		}
	}
	want := []string{"limits.csv A2", "limits.csv C3", "limits.csv C4", "ratings.csv A3", "ratings.csv D4", "ratings.csv E4", "ratings.csv J4", "ratings.csv C5"}
	if !slices.Equal(got, want) {
		t.Errorf("errors at %q, want %q\n%s", got, want, stderr)
	}
	if _, err := os.Stat(out); err == nil {
		t.Error("something was written")
	}
}

// A finding keeps its disposition over re-ordering and added rows.
func TestDispositionsSurvive(t *testing.T) {
	lines := strings.Split(strings.TrimSpace(job), "\n")
	slices.Reverse(lines[4:])
	changed := strings.Join(append(lines, "LS-3,Palm house,10 W,VC-1,50 W,1"), "\n")
	var ids [2]string
	for i, text := range []string{job, changed} {
		dir := folder(t, map[string]string{"job.csv": text})
		out, _, _ := audited(t, dir)
		for _, r := range records(t, filepath.Join(out, "findings.csv")) {
			if r["rule"] == "control-overload" {
				ids[i] = r["id"]
			}
		}
	}
	if ids[0] == "" || ids[0] != ids[1] {
		t.Errorf("ids %q", ids)
	}
}

// Answers in the house book turn what cannot be shown into verdicts.
func TestAnswersDecide(t *testing.T) {
	const open = `Job:,Cactus house
Line:,100 V

Tag,Zone,Tap,Control,Control model,Qty
LS-1,Cacti,10 W,VC-1,ATT-Q,6
LS-2,Ferns,5 W,VC-2,ATT-Q,2
`
	dir := folder(t, map[string]string{"job.csv": open})
	before, _, _ := audited(t, dir)
	todo := filepath.Join(before, "house-todo.xlsx")
	book, err := excelize.OpenFile(todo)
	if err != nil {
		t.Fatal(err)
	}
	defer book.Close()
	if got, _ := book.GetCellValue("ratings", "A2"); got != "ATT-Q" {
		t.Fatalf("the first model to rate is %q, want ATT-Q", got)
	}
	rated := ""
	for i, name := range house.Columns(house.Ratings) {
		if name == "rated_w" {
			rated, _ = excelize.CoordinatesToCellName(i+1, 2)
		}
	}
	if err := book.SetCellInt("ratings", rated, 50); err != nil {
		t.Fatal(err)
	}
	answered := filepath.Join(t.TempDir(), "answered.xlsx")
	if err := book.SaveAs(answered); err != nil {
		t.Fatal(err)
	}
	// Answers typed into the book of the output folder would be replaced by the run that reads them.
	var said strings.Builder
	if code := run(t.Context(), []string{dir, "--out", before, "--house", todo}, screen{out: &said, err: &said}); code != wrongUse || !strings.Contains(said.String(), "move it elsewhere") {
		t.Errorf("exit code %d\n%s", code, said.String())
	}
	after, code, text := audited(t, dir, "--house", answered)
	if code != done {
		t.Fatalf("exit code %d\n%s", code, text)
	}
	verdicts := func(out string) (got []string) {
		for _, r := range records(t, filepath.Join(out, "controls.csv")) {
			got = append(got, r["control"]+" "+r["verdict"])
		}
		return got
	}
	if got, want := verdicts(before), []string{"VC-1 not shown", "VC-2 not shown"}; !slices.Equal(got, want) {
		t.Errorf("before: %v, want %v", got, want)
	}
	// 6 x 10 W = 60 W on 50 W: 120 %; 2 x 5 W = 10 W on 50 W. Hand calculation.
	if got, want := verdicts(after), []string{"VC-1 fault", "VC-2 passed"}; !slices.Equal(got, want) {
		t.Errorf("after: %v, want %v", got, want)
	}
}
