package ingest

import (
	"slices"
	"strings"
	"unicode/utf8"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
)

// What the other cells of a column of outputs say of one.

// An outputsLook is how the cells of a column name outputs with their amplifiers.
type outputsLook struct {
	whole   int             // cells that name both: "A ch1", "B/2"
	cells   int             // cells with text
	letters bool            // their amplifiers are single letters, their outputs figures
	seen    map[string]bool // amplifiers, folded
}

// outputsLook looks at a column of outputs, once.
func (b *builder) outputsLook(ch seen) *outputsLook {
	if l := ch.col.outputs; l != nil {
		return l
	}
	l := &outputsLook{letters: true, seen: make(map[string]bool)}
	ch.col.outputs = l
	for _, r := range ch.t.rows {
		s := r.at(ch.col)
		if !s.had() {
			continue
		}
		l.cells++
		c := b.channelRef(s.text)
		if !c.ok || c.ref.Amplifier == "" || len(c.ref.Channels) == 0 {
			continue
		}
		l.whole++
		l.seen[join.Fold(c.ref.Amplifier)] = true
		if !isOneLetter(c.ref.Amplifier) || !anyDigit(c.ref.Channels[0]) {
			l.letters = false
		}
	}
	return l
}

// ampAmongOutputs reports whether a cell in a column most of whose cells name an
// amplifier and its output ("A ch1") names an amplifier alone: "mixer amp", or "B"
// where the others are letters with numbered outputs.
func (b *builder) ampAmongOutputs(ch seen) bool {
	text := tidy(ch.text)
	if anyDigit(text) || !isOneLetter(text) && !notation.SpeaksOfAmplifier(text) && !mixerWords.in(join.Fold(text)) {
		return false
	}
	l := b.outputsLook(ch)
	if l.whole < 2 || 2*l.whole < l.cells {
		return false
	}
	return !isOneLetter(text) || l.letters
}

// isOneLetter reports whether a name is a single letter: "A".
func isOneLetter(name string) bool {
	return utf8.RuneCountInString(name) == 1 && strings.ContainsFunc(name, isLetter)
}

// wholeOutputsIn reports whether other cells of the column name an amplifier of
// the job with its output.
func (b *builder) wholeOutputsIn(s seen) bool {
	if s.col == nil || len(b.dir.amps) == 0 {
		return false
	}
	whole, asked := b.dir.wholeOutputs[s.col]
	if !asked {
		whole = slices.ContainsFunc(s.t.rows, func(r *row) bool {
			_, known := b.splitKnown(r.at(s.col).text)
			return known
		})
		b.dir.wholeOutputs[s.col] = whole
	}
	return whole
}

// oneName reports whether "E-1" is the name of one output rather than output 1
// of an amplifier E: there is no such amplifier, all of the column begins
// with that letter, and none says "E ch 2".
func (b *builder) oneName(ref notation.ChannelRef, ch seen) bool {
	if !ref.Doubts.Has(notation.DateOrPair) || len(ref.Amplifier) != 1 || ref.Amplifier[0] < 'A' || b.namesAmp(ref.Amplifier) || ch.col == nil {
		return false
	}
	if ch.col.before == nil {
		ch.col.before = make(map[string]bool)
		for _, r := range ch.t.rows {
			s := r.at(ch.col)
			if c := b.channelRef(s.text); s.had() && c.ok && c.ref.Amplifier != "" {
				amp := join.Fold(c.ref.Amplifier)
				ch.col.before[amp] = ch.col.before[amp] || !c.ref.Doubts.Has(notation.DateOrPair)
			}
		}
	}
	sure, named := ch.col.before[join.Fold(ref.Amplifier)]
	return len(ch.col.before) == 0 || len(ch.col.before) == 1 && named && !sure
}
