package generate

import (
	"bytes"
	"encoding/csv"
	"os"
	"path/filepath"
	"testing"
	"unicode/utf8"

	"lineaudit/samples/answer"

	"github.com/xuri/excelize/v2"
	"golang.org/x/text/encoding/charmap"
)

// TestCSVHoldsTheTruth reads every tap back from files in two dialects.
func TestCSVHoldsTheTruth(t *testing.T) {
	for _, lang := range []string{"en", "de"} {
		dir := t.TempDir()
		all, err := Write(dir, Config{Seed: 5, Jobs: 2 * len(layouts), Noise: 3, Faults: 0.3, Languages: []string{lang}, Format: CSV})
		if err != nil {
			t.Fatal(err)
		}
		checked := 0
		files := map[string][][]string{}
		for _, l := range all.Loudspeakers {
			if files[l.File] == nil {
				files[l.File] = readCSV(t, filepath.Join(dir, l.File), lang)
			}
			col, row, err := excelize.CellNameToCoordinates(l.Cell)
			if err != nil {
				t.Fatalf("%s: cell %q: %v", l.File, l.Cell, err)
			}
			got := files[l.File][row-1][col-1]
			if lay := layoutOf(all.Files, l.File); findLayout(lay).fixedTap || l.LowOhm > 0 || l.TapW != l.TapW || got == "2-Jan" || got == "4-Jan" {
				continue
			}
			checked++
			if !saysTap(got, l.TapW) {
				t.Errorf("%s %s: %q, want a tap of %g W", l.File, l.Cell, got, l.TapW)
			}
		}
		if checked < 500 {
			t.Errorf("%s: only %d taps checked", lang, checked)
		}
	}
}

func readCSV(t *testing.T, path, lang string) [][]string {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if !utf8.Valid(data) {
		if data, err = charmap.Windows1252.NewDecoder().Bytes(data); err != nil {
			t.Fatal(err)
		}
	}
	r := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(data, []byte("\ufeff"))))
	if lang != "en" {
		r.Comma = ';'
	}
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatalf("%s: %v", path, err)
	}
	return rows
}

func layoutOf(files []answer.File, name string) Layout {
	for _, f := range files {
		if f.File == name {
			return Layout(f.Layout)
		}
	}
	return ""
}
