package ingest_test

import (
	"context"
	"encoding/csv"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest"
	"lineaudit/ingest/grid/source"
	"lineaudit/ingest/join"
)

// The schedules that are hard to read were written by hand, by people who did
// not know the reader; their truth was typed beside them.

// A corpus is a folder of schedules with a truth beside it. The goals are
// shares; they are what the reader reaches, rounded down, and may only be raised.
type corpus struct {
	files, truth  string
	kinds, right  float64
	silentAtWorst float64
}

var (
	hardCorpus    = corpus{"../samples/hard/files", "../samples/hard/truth", 0.92, 0.40, 0.12}
	archiveCorpus = corpus{"../samples/archive", "../samples/truth", 1, 0.99, 0.002}
)

// records reads one table of the truth, as maps from column to cell.
func (c corpus) records(t *testing.T, name string) []map[string]string {
	t.Helper()
	f, err := os.Open(filepath.Join(c.truth, name+".csv"))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var out []map[string]string
	for _, r := range rows[1:] {
		m := make(map[string]string)
		for i, h := range rows[0] {
			m[h] = r[i]
		}
		out = append(out, m)
	}
	return out
}

func TestHardSchedules(t *testing.T) { hardCorpus.compare(t) }

func TestSampleArchive(t *testing.T) { archiveCorpus.compare(t) }

func (c corpus) compare(t *testing.T) {
	root := c.files
	listing, err := source.Find(context.Background(), []string{root}, source.Options{})
	if err != nil {
		t.Fatal(err)
	}
	files := make(map[string]*ingest.File)
	for _, f := range listing.Files {
		name, err := filepath.Rel(root, filepath.Join(root, f.Name))
		if err != nil {
			t.Fatal(err)
		}
		book, err := f.Read(context.Background(), source.Options{})
		if err != nil {
			files[filepath.ToSlash(name)] = &ingest.File{Kind: ingest.Unreadable, Reason: err.Error()}
			continue
		}
		files[filepath.ToSlash(name)] = readBook(t, book)
	}
	kinds, kindsRight := 0, 0
	for _, want := range c.records(t, "files") {
		f := files[want["file"]]
		kinds++
		switch {
		case f == nil:
			hardFault(t, want["file"], "", "file", want["kind"], "not listed")
		case string(f.Kind) == want["kind"]:
			kindsRight++
		default:
			hardFault(t, want["file"], "", "kind", want["kind"], string(f.Kind)+": "+f.Reason)
		}
	}
	x := hardLoudspeakers(t, files, c.records(t, "loudspeakers"))
	t.Logf("files %d of %d; %v", kindsRight, kinds, x)
	if s := share(kindsRight, kinds); s < c.kinds {
		t.Errorf("kinds of files right: %.1f %%, goal %.1f %%", 100*s, 100*c.kinds)
	}
	if s := share(x.right, x.rows); s < c.right {
		t.Errorf("rows right: %.1f %%, goal %.1f %%", 100*s, 100*c.right)
	}
	if s := share(x.silent, x.values); s > c.silentAtWorst {
		t.Errorf("silently wrong: %.1f %%, goal %.1f %%", 100*s, 100*c.silentAtWorst)
	}
}

func hardFault(t *testing.T, file, at, field, want, got string) {
	if verbose == "" {
		return
	}
	if line := fmt.Sprintf("%s %s %s: want %q, got %q", file, at, field, want, got); verbose == "all" || strings.Contains(line, verbose) {
		t.Log(line)
	}
}

// spoken is what a file says against its rows: the rows with an assumption, a
// question or left out, and the columns with an assumption.
func spoken(f *ingest.File) map[string]bool {
	told := make(map[string]bool)
	for _, j := range f.Jobs {
		c := comparison{told: told}
		for _, a := range j.Assumptions {
			c.tell(a.At)
		}
		for _, q := range j.Questions {
			c.tell(q.At)
		}
		for _, l := range j.LeftOut {
			c.tell(l.At)
		}
	}
	return told
}

func hardLoudspeakers(t *testing.T, files map[string]*ingest.File, truth []map[string]string) tally {
	var x tally
	used := make(map[*schedule.Loudspeaker]bool)
	told := make(map[*ingest.File]map[string]bool)
	for _, want := range truth {
		f := files[want["file"]]
		if f == nil {
			continue
		}
		if told[f] == nil {
			told[f] = spoken(f)
		}
		x.rows++
		at := want["sheet"] + "!" + want["rows"]
		silent := !told[f][want["sheet"]+"|row "+strings.Split(want["rows"], "-")[0]]
		wrong := func(field, w, g string) {
			hardFault(t, want["file"], at, field, w, g)
			if silent {
				x.silent++
				hardFault(t, want["file"], at, field+" SILENT", w, g)
			}
		}
		x.values += 5
		l := hardPick(f, want, used)
		if l == nil {
			if want["status"] != "installed" {
				x.right++ // left out with a reason is as right as read with its status
				continue
			}
			wrong("row", want["count"]+" x "+want["tap_w"]+" W in "+want["zone"]+want["room"], "nothing")
			continue
		}
		used[l] = true
		ok := true
		check := func(right bool, field, w, g string) {
			if !right {
				ok = false
				wrong(field, w, g)
			}
		}
		check(hardNumber(want["count"], l.Count.Low, l.Count.High, l.Count.Had()), "count", want["count"], num(l.Count))
		check(hardNumber(want["tap_w"], l.Tap.Low, l.Tap.High, l.Tap.Had()), "tap", want["tap_w"], num(l.Tap))
		if want["zone"] != "" {
			got := ""
			if l.Zone != nil {
				got = l.Zone.Name
			}
			check(hardName(want["zone"], got), "zone", want["zone"], got)
		}
		if want["control"] != "" {
			got := ""
			if l.Control != nil {
				got = l.Control.Name
			}
			check(hardName(want["control"], got), "control", want["control"], got)
		}
		if want["channel"] != "" || want["amplifier"] != "" {
			amp, ch := "", ""
			if l.Channel != nil {
				ch = l.Channel.Name
				if l.Channel.Amplifier != nil {
					amp = l.Channel.Amplifier.Name
				}
			}
			right := (want["channel"] == "" || hardName(want["channel"], ch)) && (want["amplifier"] == "" || hardName(want["amplifier"], amp))
			check(right, "channel", want["amplifier"]+" / "+want["channel"], amp+" / "+ch)
		}
		check(l.Status.String() == want["status"], "status", want["status"], l.Status.String())
		if ok {
			x.right++
		}
	}
	for name, f := range files {
		for _, j := range f.Jobs {
			for _, l := range j.Loudspeakers {
				if !used[l] && l.Status == schedule.Installed {
					x.rows++
					x.values += 5
					hardFault(t, name, l.At.Sheet()+"!"+l.Rows.String(), "row", "no loudspeaker", fmt.Sprintf("%s %s x %s W", l.Tag.Value, num(l.Count), num(l.Tap)))
				}
			}
		}
	}
	return x
}

// hardNumber compares a number with the truth; a blank in the truth is a value
// that nobody can know.
func hardNumber[T ~float64](want string, low, high T, had bool) bool {
	if want == "" {
		return !had || low != high
	}
	v, err := strconv.ParseFloat(want, 64)
	return err == nil && had && low == high && math.Abs(float64(low)-v) <= 0.006*math.Max(v, 1)
}

// hardName compares names by letters and digits, without the word for the kind
// of thing and without zeros in front of numbers.
func hardName(want, got string) bool {
	if join.Key(want) == join.Key(got) {
		return true
	}
	for _, k := range []join.Kind{join.Zone, join.Amplifier, join.Channel, join.Control} {
		a, b := join.Parse(k, want), join.Parse(k, got)
		if a.Number != "" && a.Number == b.Number && (a.Title == b.Title || a.Title == "" || b.Title == "") {
			return true
		}
		if a.Title != "" && a.Title == b.Title && (a.Number == "" || b.Number == "") {
			return true
		}
	}
	return false
}

// hardPick finds the loudspeaker that was read from the place of a truth's row.
func hardPick(f *ingest.File, want map[string]string, used map[*schedule.Loudspeaker]bool) *schedule.Loudspeaker {
	var best *schedule.Loudspeaker
	score := -1
	for _, j := range f.Jobs {
		for _, l := range j.Loudspeakers {
			if used[l] || l.At.Sheet() != want["sheet"] || !slices.Contains([]string{l.Rows.String(), strings.Split(l.Rows.String(), "-")[0]}, want["rows"]) && l.Rows.String() != strings.Split(want["rows"], "-")[0] {
				continue
			}
			n := 0
			if hardNumber(want["tap_w"], l.Tap.Low, l.Tap.High, l.Tap.Had()) {
				n += 2
			}
			if l.Zone != nil && hardName(want["zone"], l.Zone.Name) {
				n += 2
			}
			if hardNumber(want["count"], l.Count.Low, l.Count.High, l.Count.Had()) {
				n++
			}
			if l.Status.String() == want["status"] {
				n++
			}
			if want["tag"] != "" && join.Key(want["tag"]) == join.Key(l.Tag.Value) {
				n += 3
			}
			if n > score {
				best, score = l, n
			}
		}
	}
	return best
}
