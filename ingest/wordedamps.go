package ingest

import (
	"slices"
	"strings"
	"unicode/utf8"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Those who look after a system call its amplifiers by their looks or their place, and say below the list which line
// hangs on which: "line 1 grey amplifier 60 W", "line 2 amplifier by the door 120 W".

// A lineOnAmp is one such statement.
type lineOnAmp struct {
	lines []string
	amp   string
	watts seen
}

// lineAmps are the amplifiers that the notes hang lines on so, by their keys, each with the lines that it feeds; none
// where tables name amplifiers, or all lines have the same words: "line 1 amplifier load 60 W".
func (b *builder) lineAmps() map[string][]string {
	if b.ampsOfLines == nil {
		b.ampsOfLines = make(map[string][]string)
		for _, s := range b.spoken {
			if len(b.dir.amps) > 0 || len(s.text) > longestSpoken {
				continue
			}
			for _, statement := range statements(s.text) {
				for _, l := range b.linesOnWordedAmps(seen{text: statement, source: schedule.Source{At: s.at, How: schedule.FromTitle}}) {
					k := join.Key(l.amp)
					b.ampsOfLines[k] = append(b.ampsOfLines[k], l.lines...)
				}
			}
		}
		if len(b.ampsOfLines) < 2 {
			clear(b.ampsOfLines)
		}
	}
	return b.ampsOfLines
}

// linesOnAmps reads a statement that hangs lines on such amplifiers. The rating of an amplifier of several lines is
// that of all of them.
func (b *builder) linesOnAmps(s seen) []route {
	if !notation.SpeaksOfAmplifier(s.text) || len(b.lineAmps()) == 0 {
		return nil
	}
	var out []route
	for _, l := range b.linesOnWordedAmps(s) {
		if len(b.lineAmps()[join.Key(l.amp)]) > 1 && l.watts.had() {
			b.said = append(b.said, said{RatedAmplifier: notation.RatedAmplifier{Name: l.amp, W: wattsOf(l.watts), Worded: true}, source: s.source, routed: true})
			l.watts = seen{}
		}
		s.field = vocabulary.Amplifier
		b.take(s, "amplifier", l.amp, schedule.LikelierReading, "lines are said to hang on amplifiers that are called by words")
		for _, line := range l.lines {
			out = append(out, route{line: line, service: service{at: s}, outlet: outlet{amp: l.amp, channels: []string{line}, at: s, ampAt: s}, named: true, watts: l.watts})
		}
	}
	return out
}

// linesOnWordedAmps are the lines and amplifiers of a statement; nil where a part of it is anything else.
func (b *builder) linesOnWordedAmps(s seen) []lineOnAmp {
	if !anyDigit(s.text) || !notation.SpeaksOfAmplifier(s.text) {
		return nil
	}
	var out []lineOnAmp
	for _, segment := range segments(strings.TrimSuffix(s.text, ".")) {
		watts, segment := cutWatts(s, segment)
		if last := len(out) - 1; segment == "" && watts.had() && last >= 0 && !out[last].watts.had() { // "line 1: grey amplifier, 60 W"
			out[last].watts = watts
			continue
		}
		lines, amp := b.lineAndAmp(segment)
		if len(lines) == 0 {
			return nil
		}
		out = append(out, lineOnAmp{lines, amp, watts})
	}
	return out
}

// lineAndAmp parts "line 1 on the grey amplifier" and "grey amplifier: lines 2 and 3" in lines and an amplifier.
func (b *builder) lineAndAmp(text string) (lines []string, amp string) {
	words := strings.Fields(routeMark.ReplaceAllString(strings.NewReplacer(" - ", " ", " – ", " ", "(", " ", ")", " ").Replace(text), " "))
	for n := len(words) - 2; n > 1; n-- { // the line first
		if amp := wordedAmp(cutOnThe(routeWord.ReplaceAllString(strings.Join(words[n:], " "), ""))); amp != "" {
			if lines := b.wordedLines(words[:n]); len(lines) > 0 {
				return lines, amp
			}
		}
	}
	for n := 2; n <= min(5, len(words)-2); n++ { // the amplifier first
		rest := words[n:]
		if slices.Contains(feedingWords, join.Fold(rest[0])) {
			rest = rest[1:]
		}
		if lines := b.wordedLines(rest); len(lines) > 0 {
			if amp := wordedAmp(cutOnThe(strings.Join(words[:n], " "))); amp != "" {
				return lines, amp
			}
		}
	}
	return nil, ""
}

// wordedLines are the lines that some words name, a word for lines among them: "line 1", "lines 2 and 3".
func (b *builder) wordedLines(words []string) []string {
	if len(words) < 2 || anyDigit(words[0]) {
		return nil
	}
	text := strings.Join(words, " ")
	if lines := b.linesNamed(text); len(lines) > 0 {
		return lines
	}
	if line := b.lineNamed(text); line != "" {
		return []string{line}
	}
	return nil
}

// wordedAmp is a text that calls an amplifier by one to three words beside the word for it, "" for others: "grey
// amplifier", "ampli du fond".
func wordedAmp(text string) string {
	words := strings.Fields(text)
	if len(words) < 2 || len(words) > 4 || anyDigit(text) {
		return ""
	}
	amps, long := 0, false
	for i, w := range words {
		switch {
		case notation.SpeaksOfAmplifier(w) && (i == 0 || i == len(words)-1):
			amps++
		case outputsWords.in(join.Fold(w)) || notation.KeyOf(w).Kind == notation.KeyChannel || notation.IsControlWord(w):
			return ""
		default:
			long = long || utf8.RuneCountInString(w) > 2
		}
	}
	if amps != 1 || !long {
		return ""
	}
	return text
}
