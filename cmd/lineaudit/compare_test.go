package main

import (
	"bytes"
	"context"
	"encoding/csv"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"unicode"
)

// audited runs the whole program over paths and returns the output folder and the exit code.
func audited(t *testing.T, args ...string) (out string, code int, text string) {
	t.Helper()
	out = filepath.Join(t.TempDir(), "out")
	var stdout, stderr bytes.Buffer
	code = run(context.Background(), append(args, "--out", out), screen{out: &stdout, err: &stderr})
	if stderr.Len() > 0 {
		t.Logf("stderr: %s", stderr.String())
	}
	return out, code, stdout.String()
}

// A record is one line of a data file, by column.
type record map[string]string

func records(t *testing.T, path string) []record {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	all, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatalf("%s: %v", path, err)
	}
	var out []record
	for _, row := range all[1:] {
		r := record{}
		for i, name := range all[0] {
			r[name] = row[i]
		}
		out = append(out, r)
	}
	return out
}

// plain is a name as it is compared: its letters and digits, without case.
func plain(s string) string {
	s = strings.TrimPrefix(s, "'")
	var b strings.Builder
	for _, r := range strings.ToLower(s) {
		switch {
		case '①' <= r && r <= '⑳':
			b.WriteString(strconv.Itoa(int(r-'①') + 1))
		case unicode.IsLetter(r) || unicode.IsDigit(r):
			b.WriteRune(r)
		}
	}
	return b.String()
}

// closeTo reports whether two figures agree; a blank agrees with a blank alone.
func closeTo(want, got string, tolerance float64) bool {
	w, err1 := strconv.ParseFloat(want, 64)
	g, err2 := strconv.ParseFloat(got, 64)
	if err1 != nil || err2 != nil {
		return want == got
	}
	return math.Abs(w-g) <= tolerance*max(math.Abs(w), 1e-9)
}

// kindWords stand beside the number of an amplifier, an output, a line, a zone or a control and say no more than its column.
var kindWords = strings.Fields(`amp ampli amplifier amplificateur amplificador amplificatore verstärker versterker etapa booster
	ch chan channel way out output line ausgang ausg kanal weg linie voie ligne lijn linea línea salida canal uscita canale kanaal groep uitgang
	zone zona sector bereich ber volume control knob`)

var (
	leadingZeros = regexp.MustCompile(`\b0+(\d)`)
	numberWords  = regexp.MustCompile(`[\p{L}]+|\d+`)
	titleBreak   = regexp.MustCompile(`\s+[-–—:]\s+|^\s*(?:\p{L}+\s*)?\d+\s+`)
)

// key is a name without the word for its kind, and without zeros in front of its number.
func key(name string) string {
	name = leadingZeros.ReplaceAllString(strings.ToLower(name), "$1")
	var words []string
	for _, w := range numberWords.FindAllString(name, -1) {
		if !slices.Contains(kindWords, w) {
			words = append(words, w)
		}
	}
	if len(words) == 0 {
		return plain(name)
	}
	return strings.Join(words, "")
}

// forms are the keys that a name answers to: all of it, and, of a number with a
// title ("ZONE 1 - MAIN ICE"), either.
func forms(name string) []string {
	out := []string{plain(name), key(name)}
	if at := titleBreak.FindStringIndex(name); at != nil {
		out = append(out, key(name[:at[1]]), key(name[at[1]:])) // the number, the title
	}
	return slices.DeleteFunc(out, func(k string) bool { return k == "" })
}

// alike reports whether two names share a form.
func alike(a, b string) bool {
	return slices.ContainsFunc(forms(a), func(k string) bool { return slices.Contains(forms(b), k) })
}

// ratingName is a rating such as 250 W, which names no output.
var ratingName = regexp.MustCompile(`(?i)^\d+ ?W$`)

// numberLetter is a circuit such as 1A, which on amplifier 1 may as well be its output A.
var numberLetter = regexp.MustCompile(`^\d+[A-Z]$`)

// sameOutput compares amplifier and channel. Of an amplifier without a name the
// output alone tells, and may stand for the amplifier.
func sameOutput(w, g record) bool {
	amplifier := w["amplifier"] == "" || key(w["amplifier"]) == key(g["amplifier"])
	if w["channel"] == "" && g["amplifier"] == "" && !amplifier {
		return key(w["amplifier"]) == key(g["channel"]) // an amplifier of one output, read as an output
	}
	channel := w["channel"] == "" && !ratingName.MatchString(g["channel"]) || key(w["channel"]) == key(g["channel"]) ||
		numberLetter.MatchString(w["channel"]) && key(w["channel"]) == key(g["amplifier"])+key(g["channel"])
	if w["amplifier"] == "" && !channel {
		return key(w["channel"]) == key(g["amplifier"]+g["channel"])
	}
	return amplifier && channel
}
