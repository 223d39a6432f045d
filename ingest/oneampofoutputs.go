package ingest

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// oneAmpOfOutputs gives all outputs to one amplifier without a name where a single list tells of them, its header
// says that they are those of an amplifier ("Amp output", "Uscita amplificatore (W)"), they are numbered or
// lettered through (1 to 4, P1 to P3, A and B), and nothing in the file names an amplifier or speaks of several.
func (b *builder) oneAmpOfOutputs() {
	if len(b.job.Amplifiers) > 0 || len(b.job.Channels) < 2 || len(b.loose) > 0 ||
		slices.ContainsFunc(b.said, func(s said) bool { return s.Name != "" || s.Amplifiers > 1 }) ||
		slices.ContainsFunc(b.job.Channels, func(c *schedule.Channel) bool { return c.Amplifier != nil || len(c.Bridged) > 0 || c.Pair }) ||
		slices.ContainsFunc(b.spoken, func(s spoken) bool { return speaksOfAmplifier.Of(s.text, 0) || frameWords.in(join.Fold(s.text)) }) {
		return
	}
	var of *column
	for _, t := range b.tables {
		names := b.outputsListed(t)
		if len(names) == 0 {
			continue
		}
		c := t.outputsOfAmplifier()
		if of != nil || c == nil || len(names) != len(b.job.Channels) || !throughout(names) {
			return
		}
		of = c
	}
	if of == nil {
		return
	}
	header := seen{text: of.Header, field: vocabulary.Amplifier}
	header.source = schedule.Source{At: b.job.Channels[0].At, Written: of.Header, How: schedule.FromTitle}
	b.ampOfAll(&said{source: header.source}, ampOfHeader(of.Header))
	b.take(header, "amplifier", fmt.Sprintf("one amplifier of %d outputs", len(b.job.Channels)), schedule.LikelierReading,
		"the header speaks of the outputs of an amplifier, and none is named")
}

// ampTag is a tag that a header may end in: "VA", "A1".
var ampTag = regexp.MustCompile(`^\p{Lu}{1,3}\d{0,2}$`)

// ampOfHeader is the tag of the amplifier that ends the header of a column of outputs, "" where it has none: "Output of
// amplifier VA".
func ampOfHeader(header string) string {
	words := strings.Fields(header)
	if n := len(words); n > 1 && notation.SpeaksOfAmplifier(words[n-2]) && ampTag.MatchString(words[n-1]) {
		return words[n-1]
	}
	return ""
}

// outputsListed are the outputs of the rows of a list of them, in its order; one of them where it comes twice.
func (b *builder) outputsListed(t *table) []string {
	var names []string
	had := make(map[string]bool)
	for _, r := range t.rows {
		if r.out != "" || !r.used || r.kind != channelRow && r.kind != amplifierRow && r.kind != zoneRow {
			continue
		}
		for _, c := range b.outletOf(r).channels {
			id := channelID(c)
			if had[id] {
				return []string{id} // of another amplifier, or another line
			}
			had[id] = true
			names = append(names, id)
		}
	}
	return names
}

// outputsOfAmplifier is the column of a table whose header speaks of outputs of an amplifier, nil if none does.
func (t *table) outputsOfAmplifier() *column {
	for _, f := range []vocabulary.Field{vocabulary.Channel, vocabulary.ChannelWatts, vocabulary.Circuit, vocabulary.Amplifier} {
		for _, c := range t.byField[f] {
			concepts := vocabulary.NewScorer().Concepts(publicAddress.ReplaceAllString(c.Header, ""))
			if slices.Contains(concepts, "amplifier") && slices.Contains(concepts, "channel") {
				return c
			}
		}
	}
	return nil
}

// throughout reports whether names are numbered or lettered through from the first: "1", "2", "3" or "p1", "p2" or "a", "b".
func throughout(names []string) bool {
	stem := strings.TrimRight(names[0], "0123456789")
	for i, name := range names {
		number, ok := strings.CutPrefix(name, stem)
		if (!ok || number != strconv.Itoa(i+1)) && strings.ToUpper(name) != letterOf(strconv.Itoa(i+1)) {
			return false
		}
	}
	return len(names) > 1
}
