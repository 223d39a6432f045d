package main

import (
	"fmt"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// A truth is what the samples mean, with the forms of their names.
type truth struct {
	dir   string
	forms map[string][]string // file|kind|plain name -> plain forms
}

func readTruth(t *testing.T, dir string) truth {
	tr := truth{dir: dir, forms: map[string][]string{}}
	for _, r := range records(t, filepath.Join(dir, "names.csv")) {
		key := r["file"] + "|" + r["kind"] + "|" + plain(r["name"])
		for form := range strings.SplitSeq(r["forms"], "|") {
			tr.forms[key] = append(tr.forms[key], plain(form))
		}
	}
	return tr
}

// same reports whether a name is one of the forms of the true one, with or
// without the word for its kind. An output that has no name may be numbered.
func (tr truth) same(file, kind, want, got string) bool {
	return key(want) == key(got) || kind == "channel" && want == "" && got == "1" || slices.Contains(tr.forms[file+"|"+kind+"|"+plain(want)], plain(got))
}

func TestArchiveAgainstItsTruth(t *testing.T) {
	out, code, _ := audited(t, "../../samples/archive")
	if code != incomplete {
		t.Errorf("exit code %d, want %d: five files cannot be read", code, incomplete)
	}
	tr := readTruth(t, "../../samples/truth")
	got := func(name string) []record { return records(t, filepath.Join(out, name+".csv")) }
	want := func(name string) []record { return records(t, filepath.Join(tr.dir, name+".csv")) }

	t.Run("files", func(t *testing.T) {
		for _, w := range want("files") {
			i := slices.IndexFunc(got("files"), func(g record) bool { return g["file"] == w["file"] && (w["job"] == "" || plain(g["job"]) != "") })
			if i < 0 {
				t.Errorf("%s is missing", w["file"])
			} else if g := got("files")[i]; g["kind"] != w["kind"] {
				t.Errorf("%s is %s, want %s (%s)", w["file"], g["kind"], w["kind"], g["reason"])
			}
		}
	})
	t.Run("loudspeakers", func(t *testing.T) { tr.loudspeakers(t, want("loudspeakers"), got("loudspeakers")) })
	for _, table := range []struct {
		name    string
		keys    []string // kind of name by column
		figures []string
	}{
		{"zones", []string{"zone"}, []string{"loudspeakers", "load_w", "expected_ohm"}},
		{"channels", []string{"amplifier", "channel"}, []string{"line_v", "rated_w", "load_w", "load_pct", "expected_ohm"}},
		{"controls", []string{"control"}, []string{"rated_w", "load_w", "load_pct", "free_w", "expected_ohm"}},
		{"amplifiers", []string{"amplifier"}, []string{"rated_w", "load_w"}},
		{"lines", []string{"zone"}, []string{"length_m", "area_mm2", "load_w", "line_v", "loop_ohm", "loss_far_db", "loss_even_db", "loss_worst_db"}},
	} {
		t.Run(table.name, func(t *testing.T) { tr.figures(t, want(table.name), got(table.name), table.keys, table.figures) })
	}
	t.Run("findings", func(t *testing.T) { tr.findings(t, want("findings"), got("findings"), got("questions"), want("files")) })
}

func (tr truth) loudspeakers(t *testing.T, want, got []record) {
	used := make([]bool, len(got))
	right := 0
	for _, w := range want {
		best, bestWrong := -1, []string(nil)
		for i, g := range got {
			if used[i] || g["file"] != w["file"] || g["rows"] != w["rows"] || w["sheet"] != "" && g["sheet"] != w["sheet"] {
				continue
			}
			wrong := tr.wrongFields(w, g)
			if best < 0 || len(wrong) < len(bestWrong) {
				best, bestWrong = i, wrong
			}
		}
		switch {
		case best < 0:
			t.Errorf("%s %s row %s (%s) is missing", w["file"], w["sheet"], w["rows"], w["tag"])
		case len(bestWrong) > 0:
			used[best] = true
			t.Errorf("%s %s row %s: %s", w["file"], w["sheet"], w["rows"], strings.Join(bestWrong, "; "))
		default:
			used[best] = true
			right++
		}
	}
	for i, g := range got {
		if !used[i] {
			t.Errorf("%s %s row %s (%s, %s) is no loudspeaker", g["file"], g["sheet"], g["rows"], g["tag"], g["zone"])
		}
	}
	t.Logf("%d of %d rows right", right, len(want))
}

func (tr truth) wrongFields(w, g record) []string {
	var wrong []string
	for _, f := range []string{"count", "tap_w", "tap_v", "line_v"} {
		if !closeTo(w[f], g[f], 1e-6) && !(f == "tap_v" && w["tap_w"] == "") {
			wrong = append(wrong, fmt.Sprintf("%s %q, want %q", f, g[f], w[f]))
		}
	}
	for _, f := range []string{"zone", "control", "amplifier", "channel"} {
		if f == "zone" && w[f] == "" && g[f] == w["room"] {
			continue // where no zone is named a room stands for it
		}
		if !tr.same(w["file"], f, w[f], g[f]) {
			wrong = append(wrong, fmt.Sprintf("%s %q, want %q", f, g[f], w[f]))
		}
	}
	if w["status"] != g["status"] {
		wrong = append(wrong, fmt.Sprintf("status %q, want %q", g["status"], w["status"]))
	}
	return wrong
}

// figures compares the rows of a table that stand for the same thing.
func (tr truth) figures(t *testing.T, want, got []record, keys, figures []string) {
	for _, w := range want {
		var candidates []string
		found := false
		for _, g := range got {
			if g["file"] != w["file"] || !tr.sameKeys(w, g, keys) {
				continue
			}
			var wrong []string
			for _, f := range figures {
				if !closeTo(w[f], g[f], 1e-6) {
					wrong = append(wrong, fmt.Sprintf("%s %q, want %q", f, g[f], w[f]))
				}
			}
			if found = len(wrong) == 0; found {
				break
			}
			candidates = append(candidates, strings.Join(wrong, "; "))
		}
		if !found {
			t.Errorf("%s %s: %s", w["file"], name(w, keys), strings.Join(append(candidates, "nothing else of that name"), " / "))
		}
	}
}

func (tr truth) sameKeys(w, g record, keys []string) bool {
	for _, k := range keys {
		if !tr.same(w["file"], k, w[k], g[k]) {
			return false
		}
	}
	return w["line"] == "" || plain(w["line"]) == plain(g["line"])
}

func name(r record, keys []string) string {
	var parts []string
	for _, k := range append(keys, "line") {
		if r[k] != "" {
			parts = append(parts, k+" "+r[k])
		}
	}
	return strings.Join(parts, ", ")
}

// asked reports whether a question stands at the cell of a planted fault.
func asked(questions []record, w record) bool {
	return slices.ContainsFunc(questions, func(q record) bool {
		return q["file"] == w["file"] && q["sheet"] == w["sheet"] && q["cell"] == w["cell"]
	})
}

// findings checks that every planted fault is found at its place with its
// figure, and that a file without faults has no finding above caution.
func (tr truth) findings(t *testing.T, want, got, questions, files []record) {
	for _, w := range want {
		i := slices.IndexFunc(got, func(g record) bool {
			return g["file"] == w["file"] && g["rule"] == w["rule"] && (strings.Contains(plain(g["place"]), plain(w["place"])) || slices.Contains(strings.Split(g["cell"], "; "), w["cell"]))
		})
		if i < 0 && asked(questions, w) {
			continue // a row of unknown watts stands under the total: it can only be asked
		}
		switch {
		case i < 0:
			t.Errorf("%s: %s at %s (%s!%s) was not found", w["file"], w["rule"], w["place"], w["sheet"], w["cell"])
		case w["grade"] != "" && got[i]["grade"] != w["grade"]:
			t.Errorf("%s: %s at %s is %s, want %s", w["file"], w["rule"], w["place"], got[i]["grade"], w["grade"])
		}
	}
	for _, f := range files {
		if f["kind"] != "schedule" || f["faulty"] == "yes" {
			continue
		}
		for _, g := range got {
			if g["file"] == f["file"] && g["certainty"] == "certain" && g["grade"] != "unknown" {
				t.Errorf("%s has no fault, but: %s %s %s: %s", f["file"], g["grade"], g["rule"], g["place"], g["message"])
			}
		}
	}
}
