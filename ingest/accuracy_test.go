package ingest_test

import (
	"context"
	"fmt"
	"path/filepath"
	"slices"
	"testing"

	"lineaudit/ingest"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/source"
	"lineaudit/ingest/vocabulary"
	"lineaudit/samples/answer"
	"lineaudit/samples/generate"
)

// The accuracy suite: archives in every layout, unit system, language and
// level of noise, written by a generator that does not know the reader, each
// value compared with what the generator meant to write.

// What is asked, as shares: right on clean and on noisy archives, silently wrong
// anywhere, and values on clean layouts against which something was assumed. A
// little less than is reached, so that a step back shows.
const (
	rightClean    = 0.998
	rightNoisy    = 0.995
	silentAnyhow  = 0.0005
	assumedClean  = 0.05
	ownHeaders    = 0.20
	enoughRows    = 2000
	lengthAllowed = 0.006 // lengths are written rounded to a tenth or to whole feet
)

// A tally counts what was compared.
type tally struct {
	rows, right                 int // loudspeaker rows with zone, count, tap, channel and control all right
	parts, partsRight           int // ratings of channels and controls, lengths and areas of lines
	values, silent, assumptions int
}

func (t *tally) add(o tally) {
	t.rows += o.rows
	t.right += o.right
	t.parts += o.parts
	t.partsRight += o.partsRight
	t.values += o.values
	t.silent += o.silent
	t.assumptions += o.assumptions
}

func share(n, of int) float64 {
	if of == 0 {
		return 1
	}
	return float64(n) / float64(of)
}

func (t tally) String() string {
	return fmt.Sprintf("%6d rows %7.2f %%   %5d parts %7.2f %%   silently wrong %6.3f %%   assumed %5.2f %%",
		t.rows, 100*share(t.right, t.rows), t.parts, 100*share(t.partsRight, t.parts), 100*share(t.silent, t.values), 100*share(t.assumptions, t.values))
}

func TestAccuracy(t *testing.T) {
	perLayout, languages := 2, generate.Languages()
	systems, levels := []generate.Units{generate.Metric, generate.Imperial, generate.Mixed}, []int{0, 1, 2, 3}
	whole := false
	switch {
	case slower > 1: // under the race detector a part of it is enough
		perLayout, languages, systems, levels = 1, []string{"en", "fr"}, systems[2:], []int{0, 3}
	case testing.Short():
		perLayout, languages = 1, []string{"en", "de"}
	default:
		whole = true
	}
	byNoise := make(map[int]*tally)
	byLayout, byLanguage, byUnits, byFormat := make(map[string]*tally), make(map[string]*tally), make(map[string]*tally), make(map[string]*tally)
	count := func(m map[string]*tally, k string, x tally) {
		if m[k] == nil {
			m[k] = &tally{}
		}
		m[k].add(x)
	}
	seed := uint64(100)
	for _, noise := range levels {
		byNoise[noise] = &tally{}
		for _, units := range systems {
			for _, lang := range languages {
				seed++
				format := generate.XLSX
				if seed%5 == 0 {
					format = generate.CSV
				}
				dir := t.TempDir()
				cfg := generate.Config{Seed: seed, Jobs: perLayout * len(generate.Layouts()), Units: units, Languages: []string{lang}, Noise: noise, Format: format,
					Loudspeakers: 30}
				truth, err := generate.Write(dir, cfg)
				if err != nil {
					t.Fatal(err)
				}
				for layout, x := range compareArchive(t, dir, truth, noise) {
					byNoise[noise].add(x)
					count(byLayout, layout, x)
					count(byLanguage, lang, x)
					count(byUnits, string(units), x)
					count(byFormat, string(format), x)
				}
			}
		}
	}
	all := tally{}
	for _, noise := range levels {
		t.Logf("noise %d         %v", noise, *byNoise[noise])
		all.add(*byNoise[noise])
	}
	for _, m := range []map[string]*tally{byUnits, byLanguage, byFormat, byLayout} {
		for _, k := range keysOf(m) {
			t.Logf("%-15s %v", k, *m[k])
		}
	}
	t.Logf("%-15s %v", "all", all)
	if whole && all.rows < enoughRows {
		t.Errorf("only %d rows were compared", all.rows)
	}
	goal := func(what string, got, want float64) {
		t.Helper()
		if got < want {
			t.Errorf("%s: %.3f %%, goal %.3f %%", what, 100*got, 100*want)
		}
	}
	for noise, x := range byNoise {
		want := rightNoisy
		if noise == 0 {
			want = rightClean
		}
		goal(fmt.Sprintf("loudspeaker rows right at noise %d", noise), share(x.right, x.rows), want)
		goal(fmt.Sprintf("channels, controls and lines right at noise %d", noise), share(x.partsRight, x.parts), want)
		if s := share(x.silent, x.values); s > silentAnyhow && whole { // a thousandth of a part is less than one file
			t.Errorf("silently wrong at noise %d: %.3f %%, goal %.3f %%", noise, 100*s, 100*silentAnyhow)
		}
	}
	if s := share(byNoise[0].assumptions, byNoise[0].values); s > assumedClean {
		t.Errorf("assumptions on clean layouts: %.2f %%, goal %.2f %%", 100*s, 100*assumedClean)
	}
}

func keysOf[V any](m map[string]V) []string {
	var keys []string
	for k := range m {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return keys
}

// compareArchive reads every file of a generated archive and compares it with
// the truth. The tallies are by layout.
func compareArchive(t *testing.T, dir string, truth answer.Archive, noise int) map[string]tally {
	listing, err := source.Find(context.Background(), []string{dir}, source.Options{})
	if err != nil {
		t.Fatal(err)
	}
	files := make(map[string]*ingest.File)
	for _, f := range listing.Files {
		book, err := f.Read(context.Background(), source.Options{})
		if err != nil {
			t.Errorf("%s: %v", f.Name, err)
			continue
		}
		files[filepath.Base(f.Name)] = readBook(t, book)
	}
	out := make(map[string]tally)
	for _, tf := range truth.Files {
		c := comparison{t: t, truth: &truth, tf: tf, file: files[filepath.Base(tf.File)]}
		if c.file == nil || c.file.Kind != ingest.Schedule {
			why := "not listed"
			if c.file != nil {
				why = string(c.file.Kind) + ": " + c.file.Reason
			}
			c.fault("", "file", tf.File, why)
		} else {
			c.findJob()
		}
		c.run()
		x := out[tf.Layout]
		x.add(c.tally)
		out[tf.Layout] = x
	}
	return out
}

// readBook reads a book; a panic costs that book and fails the test.
func readBook(t *testing.T, book *grid.Book) (f *ingest.File) {
	defer func() {
		if v := recover(); v != nil {
			t.Errorf("%s: the reader panicked: %v", book.File, v)
			f = &ingest.File{Kind: ingest.Unreadable, Reason: fmt.Sprint(v)}
		}
	}()
	return ingest.Read(book, ingest.Options{})
}

// The generator does not know the reader: at least a fifth of its header
// spellings are no words of the reader's vocabulary.
func TestHeadersOfTheGeneratorAreItsOwn(t *testing.T) {
	absent := 0
	all := generate.HeaderSpellings()
	for _, s := range all {
		if !vocabulary.Known(s.Text) {
			absent++
		}
	}
	t.Logf("%d of %d header spellings are absent from the vocabulary", absent, len(all))
	if share(absent, len(all)) < ownHeaders {
		t.Errorf("%.1f %% of the header spellings are absent, at least %.0f %% must be", 100*share(absent, len(all)), 100*ownHeaders)
	}
}
