package notation

import (
	"encoding/csv"
	"path"
	"strings"
	"testing"
)

// One phrase has one meaning in each class: the first row would win silently.
func TestVocabularyAgrees(t *testing.T) {
	files, err := vocabularyFiles.ReadDir("vocabulary")
	if err != nil || len(files) == 0 {
		t.Fatal(err, len(files))
	}
	languages := map[string]bool{"en": true, "de": true, "fr": true, "es": true, "it": true, "nl": true, "vi": true}
	seen := map[[2]string]string{}
	for _, file := range files {
		f, err := vocabularyFiles.Open(path.Join("vocabulary", file.Name()))
		if err != nil {
			t.Fatal(err)
		}
		rows, err := csv.NewReader(f).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		if got := strings.Join(rows[0], ","); got != "class,kind,language,words,sure" {
			t.Errorf("%s: header %q", file.Name(), got)
		}
		for _, row := range rows[1:] {
			if !languages[row[2]] || row[4] != "y" && row[4] != "n" {
				t.Errorf("%s: row %q", file.Name(), row)
			}
			for pattern := range strings.SplitSeq(row[3], "|") {
				for _, text := range spelledOut(pattern) {
					key, n := phraseKey(text)
					if n == 0 && strings.Trim(text, "?@+#&↓ ") != "" {
						t.Errorf("%s: %q has no words", file.Name(), text)
					}
					if (row[0] == "missing" || row[0] == "ditto") && n > 0 && isDigit(rune(key[0])) {
						t.Errorf("%s: %q: Missing and Ditto pass over cells that start with a figure", file.Name(), text)
					}
					at := [2]string{row[0], key}
					if kind, known := seen[at]; n > 0 && known && kind != row[1] {
						t.Errorf("%s: %s %q means both %q and %q", file.Name(), row[0], text, kind, row[1])
					}
					seen[at] = row[1]
				}
			}
		}
	}
}

func TestMissingAndDitto(t *testing.T) {
	for _, tt := range []struct {
		in    string
		kind  MissingKind
		ditto bool
	}{
		{"", MissingBlank, false},
		{"  \u00a0", MissingBlank, false},
		{"-", MissingDash, false},
		{"—", MissingDash, false},
		{"---", MissingDash, false},
		{"/", MissingDash, false},
		{"...", MissingDash, false},
		{"n/a", MissingNotApplicable, false},
		{"N.A.", MissingNotApplicable, false},
		{"entfällt", MissingNotApplicable, false},
		{"sans objet", MissingNotApplicable, false},
		{"n.v.t.", MissingNotApplicable, false},
		{"no aplica", MissingNotApplicable, false},
		{"non applicabile", MissingNotApplicable, false},
		{"TBC", MissingToBeConfirmed, false},
		{"T.B.A.", MissingToBeConfirmed, false},
		{"(tbd)", MissingToBeConfirmed, false},
		{"tbc?", MissingToBeConfirmed, false},
		{"xx", MissingToBeConfirmed, false},
		{"à définir", MissingToBeConfirmed, false},
		{"A DEFINIR", MissingToBeConfirmed, false},
		{"por definir", MissingToBeConfirmed, false},
		{"da definire", MissingToBeConfirmed, false},
		{"n.t.b.", MissingToBeConfirmed, false},
		{"noch offen", MissingToBeConfirmed, false},
		{"?", MissingUnknown, false},
		{"(??)", MissingUnknown, false},
		{"k.A.", MissingUnknown, false},
		{"k. A.", MissingUnknown, false},
		{"n.d.", MissingUnknown, false},
		{"INDETERMINADO", MissingUnknown, false}, // public schedules survey: a Spanish inventory
		{"onbekend", MissingUnknown, false},
		{"by others", MissingByOthers, false},
		{"N.I.C.", MissingByOthers, false},
		{"bauseits", MissingByOthers, false},
		{"hors lot", MissingByOthers, false},
		{"field set", MissingFieldSet, false},
		{"vor Ort", MissingFieldSet, false},
		{"per plan", MissingSeePlan, false},
		{"siehe Plan", MissingSeePlan, false},
		{"s.o.", MissingNotApplicable, true}, // sans objet, or siehe oben
		{"\"", MissingNone, true},
		{"″", MissingNone, true},
		{"''", MissingNone, true},
		{"- \" -", MissingNone, true},
		{"-do-", MissingNone, true},
		{"`-do-`", MissingNone, true},
		{"Ditto", MissingNone, true},
		{"as above", MissingNone, true},
		{"dto.", MissingNone, true},
		{"wie oben", MissingNone, true},
		{"idem", MissingNone, true},
		{"ídem", MissingNone, true},
		{"come sopra", MissingNone, true},
		{"zie boven", MissingNone, true},
		{"↓", MissingNone, true},
		{"5 W", MissingNone, false},
		{"0", MissingNone, false},
		{"x", MissingNone, false}, // a tick
		{"Orangery", MissingNone, false},
		{"n/a until phase 2", MissingNone, false},
		{"by others: 5 W", MissingNone, false},
	} {
		t.Run(tt.in, func(t *testing.T) {
			kind, missing := Missing(tt.in)
			if kind != tt.kind || missing != (tt.kind != MissingNone) {
				t.Errorf("Missing: %q, %v", kind, missing)
			}
			if got := Ditto(tt.in); got != tt.ditto {
				t.Errorf("Ditto: %v", got)
			}
		})
	}
}

func FuzzMissing(f *testing.F) {
	f.Add("n/a")
	f.Add("\"")
	f.Add("k. A.")
	f.Fuzz(func(t *testing.T, s string) {
		kind, missing := Missing(s)
		if missing != (kind != MissingNone) {
			t.Fatalf("Missing(%q) = %q, %v", s, kind, missing)
		}
		if again, _ := Missing(Clean(s)); again != kind {
			t.Fatalf("Missing(%q) = %q, of the cleaned text %q", s, kind, again)
		}
		Ditto(s)
	})
}
