package main

import (
	"cmp"
	"flag"
	"fmt"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

var differences = flag.String("differences", "", "log every difference from the truth whose text contains this; all: every one")

// A score counts what one file comes to.
type score struct {
	kind                      string // the kind of file, where it was mistaken
	jobs, jobsRight           int
	rows, rowsRight, invented int // invented: rows that are no loudspeakers
	parts, partsRight         map[string]int
	values, silent            int
	doubts, answered          int
}

func newScore() *score { return &score{parts: map[string]int{}, partsRight: map[string]int{}} }

func (s *score) add(o *score) {
	s.jobs, s.jobsRight = s.jobs+o.jobs, s.jobsRight+o.jobsRight
	s.rows, s.rowsRight, s.invented = s.rows+o.rows, s.rowsRight+o.rowsRight, s.invented+o.invented
	s.values, s.silent = s.values+o.values, s.silent+o.silent
	s.doubts, s.answered = s.doubts+o.doubts, s.answered+o.answered
	for _, p := range countedParts {
		s.parts[p] += o.parts[p]
		s.partsRight[p] += o.partsRight[p]
	}
}

func (s *score) line(name string) string {
	of := func(n, all int) string {
		if all == 0 {
			return "-"
		}
		return fmt.Sprintf("%d/%d", n, all)
	}
	invented := ""
	if s.invented > 0 {
		invented = fmt.Sprintf("+%d", s.invented)
	}
	cells := []string{of(s.jobsRight, s.jobs), of(s.rowsRight, s.rows) + invented}
	for _, p := range countedParts {
		cells = append(cells, of(s.partsRight[p], s.parts[p]))
	}
	cells = append(cells, of(s.silent, s.values), of(s.answered, s.doubts), s.kind)
	return scoreLine(name, cells)
}

func scoreLine(name string, cells []string) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%-42s", name)
	for _, c := range cells {
		fmt.Fprintf(&b, " %10s", c)
	}
	return strings.TrimRight(b.String(), " ")
}

var countedParts = []string{"channels", "controls", "amplifiers", "lines"}

// A hardCase is the truth of one file and what the program made of it.
type hardCase struct {
	t         *testing.T
	file      string
	want, got map[string][]record // by table
	score     *score
	read      bool // taken for a schedule, as it should be
}

// measure audits files/ below the folder, compares the outcome with truth/ beside it, file by file, and reports what is not as wanted.
func measure(t *testing.T, folder string, want reached) {
	out, _, _ := audited(t, filepath.Join(folder, "files"))
	tables := map[string][]string{"got": {"files", "loudspeakers", "channels", "controls", "amplifiers", "lines", "rows", "assumptions", "questions"},
		"want": {"files", "loudspeakers", "channels", "controls", "amplifiers", "lines", "rows", "questions"}}
	cases := map[string]*hardCase{}
	var order []string
	sort := func(dir, side string) {
		for _, table := range tables[side] {
			for _, r := range records(t, filepath.Join(dir, table+".csv")) {
				c := cases[r["file"]]
				if c == nil {
					if side == "got" {
						t.Errorf("%s is not among the samples", r["file"])
						continue
					}
					c = &hardCase{t: t, file: r["file"], want: map[string][]record{}, got: map[string][]record{}, score: newScore()}
					cases[r["file"]] = c
					order = append(order, r["file"])
				}
				if side == "got" {
					c.got[table] = append(c.got[table], r)
				} else {
					c.want[table] = append(c.want[table], r)
				}
			}
		}
	}
	sort(filepath.Join(folder, "truth"), "want")
	sort(out, "got")
	t.Log(scoreLine("file", []string{"jobs", "rows", "channels", "controls", "amplifiers", "lines", "silent", "doubts"}))
	all := newScore()
	mistaken, none := 0, 0
	for _, name := range order {
		c := cases[name]
		c.compare()
		if c.score.kind != "" {
			mistaken++
		}
		if c.want["files"][0]["kind"] == "not-a-schedule" {
			none++
		}
		t.Log(c.score.line(name))
		all.add(c.score)
	}
	all.kind = fmt.Sprintf("%d of %d files mistaken", mistaken, len(order))
	t.Log(all.line("all"))
	parts, partsRight := 0, 0
	for _, p := range countedParts {
		parts, partsRight = parts+all.parts[p], partsRight+all.partsRight[p]
	}
	least := func(what string, n, of int, want float64) {
		t.Helper()
		got := float64(n) / float64(of)
		t.Logf("%-60s %5d of %5d: %6.2f %%", what, n, of, 100*got)
		if got < want {
			t.Errorf("%s: %.2f %%, want %.2f %%", what, 100*got, 100*want)
		}
	}
	least("loudspeaker rows right", all.rowsRight, all.rows+all.invented, want.rows)
	least("channels, controls, amplifiers and cables right", partsRight, parts, want.parts)
	least("jobs with number, site and supersession right", all.jobsRight, all.jobs, want.jobs)
	least("doubts asked or assumed aloud", all.answered, all.doubts, want.answered)
	silent := float64(all.silent) / float64(all.values)
	t.Logf("%-60s %5d of %5d: %6.2f %%", "values silently wrong", all.silent, all.values, 100*silent)
	if silent > want.silent {
		t.Errorf("silently wrong: %.2f %%, want %.2f %% at most", 100*silent, 100*want.silent)
	}
	if mistaken > want.wrongKinds {
		t.Errorf("%d files were taken for what they are not, want %d at most", mistaken, want.wrongKinds)
	}
	if none == 0 || len(order) < want.files {
		t.Errorf("only %d files, %d that are no schedules: samples are missing", len(order), none)
	}
}

func (c *hardCase) differ(format string, args ...any) {
	if *differences == "" {
		return
	}
	if line := c.file + ": " + fmt.Sprintf(format, args...); *differences == "all" || strings.Contains(line, *differences) {
		c.t.Log(line)
	}
}

func (c *hardCase) compare() {
	kind := "absent"
	if len(c.got["files"]) > 0 {
		kind = c.got["files"][0]["kind"]
	}
	want := c.want["files"][0]["kind"]
	c.read = kind == want && want == "schedule"
	if kind != want {
		c.score.kind = "taken for " + kind
		c.differ("taken for %s, is %s: %s", kind, want, c.got["files"][0]["reason"])
	}
	if want != "schedule" {
		return
	}
	c.shift()
	c.jobs()
	c.loudspeakers()
	c.parts("channels", hardCase.channel, []string{"rated_w", "line_v"}, "channel rating", "line voltage")
	c.parts("controls", hardCase.control, []string{"rated_w"}, "control rating")
	c.parts("amplifiers", hardCase.amplifier, []string{"rated_w"}, "channel rating")
	c.lines()
	c.doubts()
}

// shift counts a first line that names the separator as a row, where the truth does and the program, like spreadsheet programs, does not.
func (c *hardCase) shift() {
	first := func(list []record) int {
		least := 1 << 20
		for _, r := range list {
			if n, err := strconv.Atoi(strings.Split(r["rows"], "-")[0]); err == nil {
				least = min(least, n)
			}
		}
		return least
	}
	if !strings.Contains(c.want["files"][0]["note"], "may or may not count as a row") || first(c.got["loudspeakers"])+1 != first(c.want["loudspeakers"]) {
		return
	}
	next := func(s string) string {
		n, _ := strconv.Atoi(s)
		return strconv.Itoa(n + 1)
	}
	for _, table := range c.got {
		for _, r := range table {
			for _, field := range []string{"rows", "row", "cell"} {
				r[field] = rowNumber.ReplaceAllStringFunc(r[field], next)
			}
		}
	}
}

var rowNumber = regexp.MustCompile(`\d+`)

func (c *hardCase) jobs() {
	for _, w := range c.want["files"] {
		c.score.jobs++
		var seen []string
		right := slices.ContainsFunc(c.got["files"], func(g record) bool {
			seen = append(seen, fmt.Sprintf("job %q site %q superseded %q", g["job"], g["site"], g["superseded"]))
			return strings.Contains(plain(g["job"]), plain(w["job"])) && sameSite(w["site"], g["site"]) && (w["superseded"] == "") == (g["superseded"] == "")
		})
		if right {
			c.score.jobsRight++
		} else if c.read {
			c.differ("job %q site %q superseded %q, got %s", w["job"], w["site"], w["superseded"], strings.Join(seen, ", "))
		}
	}
}

// sameSite reports whether one of two names of a site, or of a job at a site, holds the other.
func sameSite(want, got string) bool {
	w, g := plain(want), plain(got)
	return w == "" || strings.Contains(g, w) || len(g) >= 5 && strings.Contains(w, g)
}

// sameJob reports whether a line belongs to the job of a true one; a file of one job needs no telling.
func (c *hardCase) sameJob(w, g record) bool {
	return len(c.want["files"]) == 1 || strings.Contains(plain(g["job"]), plain(w["job"]))
}

// loudspeakers pairs true and read rows, those with the fewest faults first.
func (c *hardCase) loudspeakers() {
	type pair struct {
		w, g   int
		faults []fault
	}
	want, got := c.want["loudspeakers"], c.got["loudspeakers"]
	var pairs []pair
	for i, w := range want {
		for j, g := range got {
			if sameRows(w["rows"], g["rows"]) && (w["sheet"] == "" || w["sheet"] == g["sheet"]) {
				pairs = append(pairs, pair{i, j, c.faults(w, g)})
			}
		}
	}
	slices.SortStableFunc(pairs, func(a, b pair) int { return cmp.Compare(len(a.faults), len(b.faults)) })
	paired, used := make([]bool, len(want)), make([]bool, len(got))
	for _, p := range pairs {
		if paired[p.w] || used[p.g] {
			continue
		}
		paired[p.w], used[p.g] = true, true
		w, g := want[p.w], got[p.g]
		c.score.rows++
		c.score.values += 6
		if len(p.faults) == 0 {
			c.score.rowsRight++
		}
		for _, f := range p.faults {
			silent := !c.told(w["sheet"], g["rows"], f.class, f.got == "")
			c.silence(silent)
			c.differ("%s row %s: %s%s %q, want %q", w["sheet"], w["rows"], mark(silent), f.field, f.got, f.want)
		}
	}
	for i, w := range want {
		if paired[i] {
			continue
		}
		c.score.rows++
		c.score.values += 6
		said := !c.read || c.leftOut(w["sheet"], w["rows"])
		if said && c.read && w["status"] != "installed" {
			c.score.rowsRight++
			continue
		}
		for range 6 {
			c.silence(!said)
		}
		if c.read {
			c.differ("%s row %s: %sno loudspeaker, want %s x %s W %s%s", w["sheet"], w["rows"], mark(!said), w["count"], w["tap_w"], w["zone"], w["room"])
		}
	}
	for j, g := range got {
		if used[j] || g["status"] != "installed" {
			continue
		}
		c.score.invented++
		c.score.values++
		silent := !c.told(g["sheet"], g["rows"], "", false)
		c.silence(silent)
		c.differ("%s row %s: %sno loudspeaker, got %q %s x %s W in %q", g["sheet"], g["rows"], mark(silent), g["tag"], g["count"], g["tap_w"], g["zone"])
	}
}

func mark(silent bool) string {
	if silent {
		return "SILENT "
	}
	return ""
}

func (c *hardCase) silence(silent bool) {
	if silent {
		c.score.silent++
	}
}

// A fault is a value of a loudspeaker row that is not what it should be; the class is what an assumption or question about it is filed under.
type fault struct{ field, class, want, got string }

func (c *hardCase) faults(w, g record) []fault {
	var out []fault
	check := func(right bool, field, class string) {
		if !right {
			out = append(out, fault{field, class, w[field], g[field]})
		}
	}
	installed := w["status"] == "installed"
	status := installed == (g["status"] == "installed")
	switch note := w["note"]; {
	case strings.Contains(note, "removed is as good"):
		if g["status"] != "installed" {
			return nil
		}
	case strings.Contains(note, "installed without a channel is as good"):
		status = status || g["channel"] == "" && g["amplifier"] == ""
	}
	check(status, "status", "status")
	if !installed {
		return out // what draws nothing may lack the rest
	}
	blankIsGood := g["count"] == "" && strings.Contains(w["note"], "blank with a question is as good") && c.told(w["sheet"], g["rows"], "count", true)
	check(closeTo(w["count"], g["count"], 1e-6) || blankIsGood, "count", "count")
	check(sameTap(w, g), "tap_w", "tap")
	check(c.sameZone(w, g), "zone", "zone")
	check(c.sameControl(w, g), "control", "control")
	if !sameOutput(w, g) {
		out = append(out, fault{"channel", "channel", w["amplifier"] + " / " + w["channel"], strings.TrimPrefix(g["amplifier"]+" / "+g["channel"], " / ")})
	}
	return out
}

// sameTap compares taps by what they draw: 5 W at 70.7 V is 10 W at 100 V. A tap without a voltage is that of its line.
func sameTap(w, g record) bool {
	if w["tap_w"] == "" || g["tap_w"] == "" {
		return w["tap_w"] == g["tap_w"]
	}
	if g["tap_v"] == "" || w["tap_v"] == "" {
		return closeTo(w["tap_w"], g["tap_w"], 1e-6)
	}
	v1, _ := strconv.ParseFloat(w["tap_v"], 64)
	v2, _ := strconv.ParseFloat(g["tap_v"], 64)
	w1, _ := strconv.ParseFloat(w["tap_w"], 64)
	w2, _ := strconv.ParseFloat(g["tap_w"], 64)
	return closeTo(fmt.Sprint(w1*v2*v2), fmt.Sprint(w2*v1*v1), 0.011) // 70 V for 70.7 V is 2 % of the watts at most
}

// sameZone lets a room, the sheet or the site stand for a zone where the file
// has none, and a place that is read as a room for the only zone there is.
func (c *hardCase) sameZone(w, g record) bool {
	if w["zone"] != "" {
		place := cmp.Or(g["zone"], g["room"])
		return alike(w["zone"], place) || alike(w["zone"], remark.ReplaceAllString(place, "")) || w["room"] != "" && alike(w["room"], g["zone"])
	}
	return g["zone"] == "" || strings.Contains(w["note"], "section for a zone is as good") || plain(g["zone"]) == plain(w["room"]) || plain(g["zone"]) == plain(w["sheet"]) || slices.ContainsFunc(c.want["files"], func(f record) bool {
		return f["site"] != "" && sameSite(f["site"], g["zone"])
	})
}

var remark = regexp.MustCompile(`\s*\([^)]*\)$`)

// madeUp is a name that the reader gives a control without one: its place in brackets, or the number of its item.
var madeUp = regexp.MustCompile(`\([^)]*\)$|^[\d.]+$`)

// sameControl takes a blank for no control; a control without a name of its own may be called anything. Where only the
// control is said to be unnamed, the name must be one that the reader makes up.
func (c *hardCase) sameControl(w, g record) bool {
	if key(w["control"]) == key(g["control"]) {
		return true
	}
	return g["control"] != "" && slices.ContainsFunc(c.want["controls"], func(k record) bool {
		atPlace := k["zone"] != "" && (alike(k["zone"], g["room"]) || alike(k["zone"], w["room"]) || alike(k["zone"], w["zone"]))
		return unnamed(k) && c.sameJob(k, g) && (w["control"] != "" && k["control"] == w["control"] || k["control"] == "" && (atPlace || strings.Contains(w["note"], "unnamed") || strings.Contains(k["note"], "unnamed") && madeUp.MatchString(g["control"])))
	})
}

// unnamed reports whether a true control has no name, or nothing better than the number of its item.
func unnamed(k record) bool {
	return k["control"] == "" || strings.Contains(k["note"], "named only by its item") || strings.Contains(k["note"], "unnamed")
}

var letters = regexp.MustCompile(`^[A-Z]+$`)

// sameRows reports whether a read row, or the first of several, is the true one.
func sameRows(want, got string) bool {
	first, _, _ := strings.Cut(want, "-")
	from, to, ranged := strings.Cut(got, "-")
	if letters.MatchString(first) || !ranged {
		return first == from
	}
	w, _ := strconv.Atoi(first)
	a, _ := strconv.Atoi(from)
	b, _ := strconv.Atoi(to)
	return a <= w && w <= b
}

// classes are the fields of the program's assumptions and questions, by what is compared here.
var classes = map[string]string{
	"quantity": "count", "tap": "tap", "taps offered": "tap", "total watts": "tap", "loudspeaker rating": "tap", "impedance": "tap",
	"zone": "zone", "room": "zone", "control": "control", "loudspeakers behind the control": "control", "control rating": "control rating",
	"amplifier": "channel", "channel": "channel", "circuit": "channel", "channel rating": "channel rating", "frame rating": "channel rating",
	"line voltage": "line voltage", "status": "status", "length": "line", "gauge": "line", "cable type": "line", "cable": "line", "from": "line", "to": "line",
	"conductor material": "line", "what the length counts": "line",
}

var manyCells = regexp.MustCompile(`^\d+ cells, first ([A-Z]+)(\d+)`)

// told reports whether something was said against a field at some rows: an
// assumption or a question about that field there, or a remark on the row. A
// value that is missing may be asked for once in the file. With a blank class any remark at the rows does.
func (c *hardCase) told(sheet, rows, class string, missing bool) bool {
	if !c.read || c.leftOut(sheet, rows) {
		return true
	}
	about := func(r record) bool {
		if class != "" && classes[r["field"]] != class && !(class == "channel" && missing && classes[r["field"]] == "channel rating") {
			return false
		}
		if sheet != "" && r["sheet"] != "" && r["sheet"] != sheet {
			return false
		}
		if missing && class != "" {
			return true
		}
		if m := manyCells.FindStringSubmatch(r["written"]); m != nil {
			return reaches(m[1], m[2], rows)
		}
		for cell := range strings.SplitSeq(r["cell"], "; ") {
			if inRows(cell, rows) {
				return true
			}
		}
		return false
	}
	return slices.ContainsFunc(c.got["assumptions"], about) || slices.ContainsFunc(c.got["questions"], about)
}

var cellName = regexp.MustCompile(`^([A-Z]+)(\d+)$`)

// inRows reports whether a cell lies in rows such as "12", "12-15", or in a column such as "C".
func inRows(cell, rows string) bool {
	m := cellName.FindStringSubmatch(cell)
	return m != nil && (sameRows(m[2], rows) || m[1] == rows)
}

// reaches reports whether rows lie at or behind the first of several cells.
func reaches(col, row, rows string) bool {
	if letters.MatchString(rows) {
		return len(col) < len(rows) || len(col) == len(rows) && col <= rows
	}
	first, _, _ := strings.Cut(rows, "-")
	a, _ := strconv.Atoi(row)
	b, _ := strconv.Atoi(first)
	return a <= b
}

// leftOut reports whether the row is among those left out. A column of a table on its side has no row.
func (c *hardCase) leftOut(sheet, rows string) bool {
	return slices.ContainsFunc(c.got["rows"], func(r record) bool {
		return (sheet == "" || r["sheet"] == sheet) && (sameRows(rows, r["row"]) || letters.MatchString(rows) && r["row"] == "")
	})
}
