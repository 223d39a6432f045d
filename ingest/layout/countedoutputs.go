package layout

import (
	"slices"
	"strings"

	"lineaudit/ingest/notation"
)

// Titles that name an amplifier, count its outputs and say what each gives.

// countsOutputs reports whether a title says how many outputs an amplifier has and what each
// gives, and nothing else: "AMP 1, 2 channels of 120 W", "AMP 3 - 1 channel, 120 W".
func countsOutputs(t string) bool {
	list, err := notation.ParseRatingSentence(t, notation.Auto)
	return err == nil && len(list) == 1 && list[0].Outputs > 0 && ratesOne(t)
}

// ratesOne reports whether a title names one amplifier and rates it, and says nothing else: "AMP 3: 120 W".
func ratesOne(t string) bool {
	list, err := notation.ParseRatingSentence(t, notation.Auto)
	return err == nil && len(list) == 1 && list[0].Name != "" && list[0].Worded && len(list[0].Ways) == 0 && list[0].W > 0 && list[0].Doubts == 0
}

// quotes are marks around a name.
const quotes = "\"'“”„«»‘’‹›"

// withoutAmpLead leaves out what a title calls an amplifier before it names it:
// `Top amp - "AMP 1" - 2 channels, 300 W each` is about AMP 1, "Obere Endstufe (V1): 2 x 120 W" about Endstufe V1.
func withoutAmpLead(t string) string {
	at := reParts.FindStringIndex(t)
	if at == nil {
		return ""
	}
	lead, rest := t[:at[0]], strings.TrimLeft(t[at[1]:], quotes+" ")
	i := strings.IndexAny(rest, quotes+"),;:–— ")
	if name := strings.Fields(rest); len(name) > 1 && notation.SpeaksOfAmplifier(name[0]) { // "AMP 1"
		i = len(name[0]) + 1 + strings.IndexAny(rest[len(name[0])+1:]+" ", quotes+"),;:–— ")
	}
	words := strings.Fields(lead)
	k := slices.IndexFunc(words, notation.SpeaksOfAmplifier)
	if i <= 0 || i >= len(rest) || k < 0 || len(words) > longestAmpLead || anyDigit(lead) || !anyDigit(rest[:i]) {
		return ""
	}
	name := rest[:i]
	if !notation.SpeaksOfAmplifier(name) {
		name = words[k] + " " + name
	}
	return name + ": " + strings.TrimLeft(rest[i:], quotes+"),;:–—- ")
}

// longestAmpLead is how many words say which amplifier a title is about.
const longestAmpLead = 5
