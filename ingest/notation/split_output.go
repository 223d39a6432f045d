package notation

import (
	"slices"
	"strings"
)

// A SplitOutput is a reading of a name as that of an amplifier and its output.
type SplitOutput struct {
	Amplifier string
	Output    string // "1", "A", "1+2"; "" where the name is an amplifier's alone
	Sure      bool   // an amplifier of that name is known, or the names of the column leave no other reading
}

// SplitOutputs reads names that may hold an amplifier and its output in one,
// "Y1", "A1A", "ST-1", "AX4-1+2". known are names of amplifiers written
// elsewhere. The result has one reading for each name; Amplifier is "" where
// it stays one name.
//
// Where a known name is the beginning of a name, the rest is the output.
// Without one, names of one beginning that end in 1, 2, 3 ... or A, B, C ...
// without a gap, at least two of them, are taken apart, and are not Sure: Y1
// and Y2 may be two amplifiers. A lone "A1" stays as it is.
func SplitOutputs(names, known []string) []SplitOutput {
	out := make([]SplitOutput, len(names))
	ends := map[string]map[string]bool{}
	for i, name := range names {
		text := Clean(name)
		if known := longestPrefix(text, known); known != "" {
			rest := strings.TrimLeft(text[len(known):], " -./:")
			out[i] = SplitOutput{Amplifier: known, Output: rest, Sure: true}
			continue
		}
		if stem, end := stemOf(text); stem != "" {
			if ends[stem] == nil {
				ends[stem] = map[string]bool{}
			}
			ends[stem][strings.ToUpper(end)] = true
		}
	}
	for i, name := range names {
		if out[i].Amplifier != "" {
			continue
		}
		if stem, end := stemOf(Clean(name)); stem != "" && isRow(ends[stem]) {
			out[i] = SplitOutput{Amplifier: strings.TrimRight(stem, " -./:"), Output: end}
		}
	}
	return out
}

// longestPrefix returns the longest known name that a text begins with, as
// written there, with an output behind it or nothing.
func longestPrefix(text string, known []string) string {
	best := 0
	for _, k := range known {
		k = Clean(k)
		if k == "" || len(k) <= best || len(k) > len(text) || !strings.EqualFold(text[:len(k)], k) {
			continue
		}
		if isOutputEnd(k, text[len(k):]) {
			best = len(k)
		}
	}
	return text[:best]
}

// isOutputEnd reports whether rest, behind the name of an amplifier, is
// nothing or an output: a figure may not go on the figure of the name, as in
// A1 and A12, nor a letter its letters.
func isOutputEnd(name, rest string) bool {
	if rest == "" {
		return true
	}
	end := strings.TrimLeft(rest, " -./:")
	if end == "" || len(end) > 5 || strings.ContainsFunc(end, func(r rune) bool {
		return !isDigit(r) && r != '+' && !(r >= 'A' && r <= 'H') && !(r >= 'a' && r <= 'h')
	}) {
		return false
	}
	letters := strings.TrimFunc(end, func(r rune) bool { return isDigit(r) || r == '+' })
	if len(letters) > 1 || strings.HasPrefix(end, "+") || strings.HasSuffix(end, "+") {
		return false
	}
	if len(end) < len(rest) {
		return true
	}
	last, first := []rune(name)[len([]rune(name))-1], []rune(end)[0]
	return isDigit(last) != isDigit(first)
}

// stemOf takes the output from the end of a name: "Y" and "1" of Y1, "A1" and
// "A" of A1A, "ST-" and "1" of ST-1. It returns "" where the name cannot be
// taken apart.
func stemOf(text string) (stem, end string) {
	tokens := lexCodes(text)
	n := len(tokens)
	if n < 2 || n > 4 || gapped(tokens) || tokens[0].kind != wordToken {
		return "", ""
	}
	last := tokens[n-1]
	switch {
	case last.kind == figureToken && len(last.raw) <= 2 && last.raw[0] != '0':
		if n == 2 && len([]rune(tokens[0].raw)) > 3 {
			return "", ""
		}
	case isSingleLetter(last) && last.raw >= "A" && last.raw <= "H" && tokens[n-2].kind == figureToken:
	default:
		return "", ""
	}
	return textOf(tokens[:n-1]), last.raw
}

// isRow reports whether the ends of names are 1, 2, ... or A, B, ... without a
// gap, two of them at least.
func isRow(ends map[string]bool) bool {
	if len(ends) < 2 {
		return false
	}
	count := 0
	for _, first := range []rune{'1', 'A'} {
		for i := range len(ends) {
			end := string(first + rune(i))
			if first == '1' {
				end = plainFigure(float64(i + 1))
			}
			if ends[end] {
				count++
			}
		}
		if count == len(ends) {
			return true
		}
		count = 0
	}
	return false
}

// AmplifierOrOutput reports whether a lone name such as "A1" may be that of an
// amplifier as well as that of an output: nothing in names or known says which.
func AmplifierOrOutput(name string, names, known []string) bool {
	i := slices.Index(names, name)
	if i < 0 {
		names, i = append(slices.Clone(names), name), len(names)
	}
	stem, _ := stemOf(Clean(name))
	return stem != "" && !SplitOutputs(names, known)[i].Sure
}
