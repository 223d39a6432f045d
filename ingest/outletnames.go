package ingest

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
)

// What stands behind the names of outputs and amplifiers, and is no part of them.

// cutRating takes a rating off the end of a name, and a number of outputs that
// says no more: "Output A - 120 W", "PA1 2 outputs, 160 W each".
func (o *outlet) cutRating(text string, s seen) string {
	name := text
	if title, rating := ratedTitle(text); title != "" && s.col == nil {
		s.text, s.cell = rating, nil
		o.rating = rare(s)
		return title
	}
	if m := findRatingBehind(text); m != nil {
		s.text, s.cell = m[2], nil
		o.rating = rare(s)
		name = cutCopula(strings.TrimRight(m[1], " ,;(/:–-"))
	}
	name, outputs := cutOutputs(name)
	if rated := o.rating.seen(); outputs != "" && rated.had() && notation.OneForEach(rated.text) {
		rated.text = outputs + " x " + rated.text
		o.rating = rare(rated)
	}
	return name
}

// ratedTitle parts a title that counts the outputs of an amplifier and says what each gives, in whatever words:
// "Endstufe V1: zwei Kanäle mit je 300 W" is "Endstufe V1" and "2 x 300 W".
func ratedTitle(text string) (name, rating string) {
	list, err := notation.ParseRatingSentence(text, notation.Auto)
	if err != nil || len(list) != 1 {
		return "", ""
	}
	s := &list[0]
	i := strings.Index(text, s.Name)
	if s.Name == "" || i < 0 || !s.Worded || !s.PerOutput || s.Outputs < 2 || s.W == 0 || len(s.Ways) > 0 || s.Doubts != 0 {
		return "", ""
	}
	return text[:i+len(s.Name)], itoa(s.Outputs) + " x " + plain(s.W) + " W"
}

// cutCopula takes the verb off the end of what a rating is said of: "amp 1 is", "l'ampli 1 a", but
// not the letter of "amp A", nor a name such as "Bâtiment Est".
func cutCopula(name string) string {
	words := strings.Fields(name)
	if n := len(words); n > 1 && slices.Contains(copulaWords, join.Fold(words[n-1])) && (words[n-1] == strings.ToLower(words[n-1]) || len(words[n-1]) > 1 && name == strings.ToUpper(name)) {
		return strings.Join(words[:n-1], " ")
	}
	return name
}

// cutOutputs takes how many outputs an amplifier has off the end of its name,
// and returns the number where it is written in figures: "PA1 2 outputs", "PA1, 2
// zones", "A2 sortie unique".
func cutOutputs(name string) (rest, outputs string) {
	if !strings.ContainsFunc(name, unicode.IsSpace) {
		return name, "" // one word
	}
	words := strings.Fields(strings.TrimRight(name, " )"))
	n := len(words)
	for k := 1; k <= 2 && k < n; k++ {
		if slices.Contains(oneOutputWords, join.Fold(strings.Trim(strings.Join(words[n-k:], " "), "("))) {
			return strings.TrimRight(strings.Join(words[:n-k], " "), " ,;(/:–-"), ""
		}
	}
	zones := n > 2 && words[n-2] != "1" && join.HasWord(join.Zone, words[n-1]) // "AMP1, 2 zones"
	if n > 2 && (zones || slices.Contains(outputsWords, join.Fold(words[n-1]))) {
		if outputs = strings.Trim(words[n-2], "("); outputs != "" && strings.Trim(outputs, "0123456789") == "" {
			return strings.TrimRight(strings.Join(words[:n-2], " "), " ,;(/:–-"), outputs
		}
	}
	return name, ""
}

// mostCapitals is the most letters of a code without a figure.
const mostCapitals = 3

// ownCode is the name of an amplifier without the word in front of a code of letters and
// figures, or of two or three capitals: "amplifier F1" is F1, "finale FA" is FA, "amp 1" stays.
func ownCode(name string) string {
	word, code, ok := strings.Cut(name, " ")
	if ok && speaksOfAmplifier.Of(word, 0) && (anyDigit(code) || len(code) <= mostCapitals && isTag(code)) && !strings.Contains(code, " ") && isLetter(rune(code[0])) {
		return code
	}
	return name
}

// codeInTitle is the name of the amplifier that a title names: by its code alone where the title goes on to name
// its outputs, "Amplifier E1 (100 V): zone 1 = channel 1", or begins with the place, "HALL, amplifier E1, 60 W".
func (b *builder) codeInTitle(text string, title seen) string {
	code := ownCode(text)
	if title.cell != nil && !strings.HasPrefix(strings.TrimSpace(title.cell.Text), text) {
		return code
	}
	if slices.ContainsFunc(b.said, func(s said) bool { return s.source.At == title.source.At && s.Name == code && len(s.Ways) > 0 }) {
		return code
	}
	return text
}

// withKindWord is an amplifier's name with the word in front of it: the text
// "AMP1 / ch A" names the amplifier "AMP1".
func withKindWord(text, amp string) string {
	name := amp
	for from := 0; ; {
		i := strings.Index(text[from:], amp)
		if i < 0 || amp == "" {
			return name
		}
		i += from
		from = i + len(amp)
		if last, _ := utf8.DecodeLastRuneInString(amp); isAlnum(last) && startsLike(text[from:], last) {
			continue // a piece of a longer name
		}
		if i == 0 {
			return name
		}
		before := strings.TrimRight(text[:i], " .-_#")
		word := strings.TrimRightFunc(before, unicode.IsLetter)
		if len(word) == len(before) {
			continue
		}
		if with := text[len(word):from]; speaksOfAmplifier.Of(with, 0) {
			return with
		} else if last := join.Fold(before[len(word):]); name == amp && !outputWords.in(last) && !linkWords[last] {
			name = with
		}
	}
}
