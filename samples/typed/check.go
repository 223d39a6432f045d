package typed

import (
	"bytes"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// Check tests a corpus whose files and truth are checked in under the given folder: that both are what the cases build, that the sums typed by hand
// add up, and that every value is of its kind.
func Check(t *testing.T, folder string, all []Case) {
	t.Run("files are current", func(t *testing.T) { current(t, folder, all) })
	t.Run("truth adds up", func(t *testing.T) { addsUp(t, told(all)) })
	t.Run("truth is plain", func(t *testing.T) { isPlain(t, told(all)) })
}

// current builds every file that does not need LibreOffice, and the truth, and compares them with what is checked in.
func current(t testing.TB, folder string, all []Case) {
	dir := t.TempDir()
	if err := Build(dir, "", all); err != nil {
		t.Fatal(err)
	}
	same := func(path string) {
		want, err := os.ReadFile(filepath.Join(dir, path))
		if err != nil {
			t.Error(err)
			return
		}
		got, err := os.ReadFile(filepath.Join(folder, path))
		if err != nil {
			t.Error(err)
		} else if !bytes.Equal(got, want) {
			t.Errorf("%s is not what the program builds", path)
		}
	}
	for _, c := range all {
		if c.Saved == "" {
			same(filepath.Join("files", c.File))
		} else if _, err := os.Stat(filepath.Join(folder, "files", c.File)); err != nil {
			t.Error(err)
		}
	}
	for name := range columns {
		same(filepath.Join("truth", name+".csv"))
	}
}

// addsUp redoes the sums that were typed by hand: the loads of channels, controls and amplifiers from the loudspeakers.
func addsUp(t testing.TB, told *Truth) {
	loads := map[string]float64{} // what installed loudspeakers draw, by place
	known := map[string]bool{}    // false where a tap is missing
	add := func(key string, s record) {
		if _, ok := known[key]; !ok {
			known[key] = true
		}
		if s["low_ohm"] != "" {
			return
		}
		if s["tap_w"] == "" {
			known[key] = false
			return
		}
		volts := 1.0 // where the file states no voltage, the taps are those of the line
		if s["line_v"] != "" || s["tap_v"] != "" {
			volts = nominal(t, s["line_v"]) / nominal(t, s["tap_v"])
		}
		loads[key] += number(t, s["count"]) * number(t, s["tap_w"]) * volts * volts
	}
	channels := map[string]bool{}
	for _, c := range told.tables["channels"] {
		channels[place(c, "amplifier", "channel")] = true
	}
	behind := map[string]string{}
	for _, c := range told.tables["controls"] {
		if c["upstream"] != "" {
			behind[place(c, "control")] = c["upstream"]
		}
	}
	for _, s := range told.tables["loudspeakers"] {
		if s["status"] != "installed" {
			continue
		}
		key := place(s, "amplifier", "channel")
		if !channels[key] && s["amplifier"]+s["channel"] != "" {
			t.Errorf("%s %s row %s: no channel %q %q in the truth", s["file"], s["sheet"], s["rows"], s["amplifier"], s["channel"])
		}
		add(key, s) // a loudspeaker without amplifier and channel hangs on the one output there is
		for control := s["control"]; control != ""; {
			one := record{"file": s["file"], "job": s["job"], "control": control}
			add(place(one, "control"), s)
			control = behind[place(one, "control")]
		}
	}
	check := func(table string, names ...string) {
		n := 0
		for _, c := range told.tables[table] {
			key := place(c, names...)
			if c["load_w"] != "" && c["note"] != "unnamed" {
				n++
				if got := number(t, c["load_w"]); math.Abs(got-loads[key]) > 0.005 || loads[key] > 0 && !known[key] {
					t.Errorf("%s %s: load %v, its loudspeakers sum to %v (all taps known: %v)", c["file"], key, got, loads[key], known[key])
				}
			}
			if c["load_min_w"] != "" {
				if got := number(t, c["load_min_w"]); got < loads[key]-0.005 {
					t.Errorf("%s %s: at least %v, but known loads are %v", c["file"], key, got, loads[key])
				}
			}
		}
		if n == 0 {
			t.Errorf("no sum in %s", table)
		}
	}
	check("channels", "amplifier", "channel")
	check("controls", "control")

	frames := map[string]float64{}
	for _, c := range told.tables["channels"] {
		if c["load_w"] != "" {
			frames[place(c, "amplifier")] += number(t, c["load_w"])
		}
	}
	for _, a := range told.tables["amplifiers"] {
		if a["load_w"] == "" {
			continue
		}
		if got := number(t, a["load_w"]); math.Abs(got-frames[place(a, "amplifier")]) > 0.005 {
			if a["amplifier"] == "" && frames[place(a, "amplifier")] == 0 {
				continue
			}
			t.Errorf("%s amplifier %q: load %v, its channels sum to %v", a["file"], a["amplifier"], got, frames[place(a, "amplifier")])
		}
	}
}

var plain = regexp.MustCompile(`^-?\d+(\.\d+)?$`)

// isPlain checks that numbers are numbers, kinds are the known ones, and every file is told about.
func isPlain(t testing.TB, told *Truth) {
	for table, rows := range told.tables {
		for _, r := range rows {
			for _, name := range columns[table] {
				numeric := strings.HasSuffix(name, "_w") || strings.HasSuffix(name, "_v") || strings.HasSuffix(name, "_m") || name == "area_mm2" || name == "count" || name == "low_ohm"
				if numeric && r[name] != "" && !plain.MatchString(r[name]) {
					t.Errorf("%s: %s %s is %q", r["file"], table, name, r[name])
				}
			}
		}
	}
	devices := map[string]int{}
	for _, s := range told.tables["loudspeakers"] {
		devices[s["file"]]++
		switch s["status"] {
		case "installed", "spare", "future", "removed":
		default:
			t.Errorf("%s row %s: status %q", s["file"], s["rows"], s["status"])
		}
	}
	for _, f := range told.tables["files"] {
		if schedule := f["kind"] == "schedule"; schedule != (devices[f["file"]] > 0) {
			t.Errorf("%s is a %s with %d loudspeaker rows", f["file"], f["kind"], devices[f["file"]])
		}
		if f["note"] == "" {
			t.Errorf("%s: no note on what makes it hard", f["file"])
		}
	}
}

func place(r record, names ...string) string {
	var key strings.Builder
	key.WriteString(r["file"] + "|" + r["job"])
	for _, n := range names {
		key.WriteString("|" + r[n])
	}
	return key.String()
}

// nominal returns a line voltage, 70.7 standing for 100 divided by the root of 2.
func nominal(t testing.TB, text string) float64 {
	if v := number(t, text); v != 70.7 {
		return v
	}
	return 50 * math.Sqrt2
}

func number(t testing.TB, text string) float64 {
	t.Helper()
	n, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatalf("not a number: %q", text)
	}
	return n
}
