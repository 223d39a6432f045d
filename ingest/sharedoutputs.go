package ingest

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// shareOutput reports whether the lines that rows hang on an amplifier are
// several on one output: a sentence, or what stands behind its name ("Amp 2 (1 x
// 120 W)"), says that it, or each of all amplifiers, has a single one.
func (b *builder) shareOutput(amp string) bool {
	if !b.hasOneOutput(amp) && !ratedOnce(amp) {
		return false
	}
	if b.circuits == nil {
		b.circuits = b.circuitsOfAmps()
	}
	return len(b.circuits[join.Key(amp)]) > 1
}

// lineAsOutput notes that a line is taken for the output that it hangs on, where
// lines are numbered on from amplifier to amplifier: "circuits 1 and 2 on amp 1, 3
// to 5 on amp 2" may share outputs.
func (b *builder) lineAsOutput(r *row, ch seen) {
	if ch.field != vocabulary.Circuit && !namesLines(ch.col) || !r.own(vocabulary.Amplifier).had() {
		return
	}
	if b.circuits == nil {
		b.circuits = b.circuitsOfAmps()
	}
	if b.linesRunOn {
		b.take(ch, "channel", "an output of its own", schedule.LikelierReading, "the lines are numbered on from amplifier to amplifier, and no outputs are named")
	}
}

// runOn reports whether no two amplifiers have a line of the same name, and some
// amplifier has several.
func runOn(circuits map[string]map[string]bool) bool {
	of := make(map[string]bool)
	amps, most := 0, 0
	for amp, lines := range circuits {
		if amp == "" {
			continue
		}
		amps, most = amps+1, max(most, len(lines))
		for line := range lines {
			if of[line] {
				return false // each amplifier has its own line 1
			}
			of[line] = true
		}
	}
	return amps > 1 && most > 1
}

// sharedLine is the key of the line that a row names beside others on the same
// output; "" if its output is its own.
func (b *builder) sharedLine(r *row) string {
	if name := b.lineName(r); name != "" && b.shareOutput(r.say(vocabulary.Amplifier).text) {
		return join.Key(name)
	}
	return ""
}

// lineName is the line that a row names, "" if none.
func (b *builder) lineName(r *row) string {
	if s := r.own(vocabulary.Channel); namesLines(s.col) {
		return tidy(s.text)
	}
	if c := r.own(vocabulary.Circuit); c.had() {
		return tidy(c.text)
	}
	return ""
}

// circuitsOfAmps are the lines that rows name beside each amplifier.
func (b *builder) circuitsOfAmps() map[string]map[string]bool {
	of := make(map[string]map[string]bool)
	for _, t := range b.tables {
		for _, r := range t.rows {
			name := b.lineName(r)
			if r.out != "" || name == "" {
				continue
			}
			amp := r.say(vocabulary.Amplifier).key()
			if of[amp] == nil {
				of[amp] = make(map[string]bool)
			}
			of[amp][join.Key(name)] = true
		}
	}
	b.linesRunOn = runOn(of)
	return of
}

// namesLines reports whether the header of a column taken for outputs speaks of
// lines first.
func namesLines(c *column) bool {
	if c == nil || c.Field != vocabulary.Channel {
		return false
	}
	said := vocabulary.Score(c.Header)
	return len(said) > 0 && said[0].Field == vocabulary.Circuit
}

// hasOneOutput reports whether a sentence gives an amplifier, or all of them, a
// single output.
func (b *builder) hasOneOutput(amp string) bool {
	all := false
	for i := range b.said {
		s := &b.said[i]
		one := s.Outputs == 1 && len(s.Ways) == 0 && !s.PerZone
		if s.Name != "" && amp != "" && b.sameAmp(s.ampText(), amp) {
			return one
		}
		all = all || one && s.Name == "" && s.Worded || amp == "" && s.takesAll()
	}
	return all
}

// ratedOnce reports whether behind the name of an amplifier stands the rating of
// its one output, said to be one.
func ratedOnce(amp string) bool {
	m := ratingBehind.FindStringSubmatch(amp)
	if m == nil {
		return false
	}
	out := ratingInText(m[2], notation.Auto)
	return len(out) == 1 && out[0].Channels == 1
}

// takesAll reports whether a sentence hangs all there is on the one output that it
// names: "All off amp OP way 1".
func (s *said) takesAll() bool {
	if len(s.Ways) != 1 || s.Outputs > 1 || !s.Worded {
		return false
	}
	first, _, _ := strings.Cut(s.source.Written, " ")
	return slices.Contains(allWords, join.Fold(first))
}
