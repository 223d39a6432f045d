package ingest

import (
	"regexp"
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// zonesAsOutputs takes a column of zones for one of outputs where each of its
// cells is the word and number of an output ("CH 1"), or where its header is a
// word for outputs too and its cells are bare numbers that begin anew in each
// amplifier ("Groep": 1), beside a column of amplifiers in a table that has no
// other for their outputs.
func (b *builder) zonesAsOutputs() {
	for _, t := range b.tables {
		cols := t.byField[vocabulary.Zone]
		b.groupsRated(t)
		if len(cols) != 1 || !t.has(vocabulary.Amplifier) || t.has(vocabulary.Channel) || t.has(vocabulary.Circuit) {
			continue
		}
		devices := 0
		worded := outputWords.in(join.Fold(cols[0].Header)) && t.besideSeveral(cols[0], t.byField[vocabulary.Amplifier][0])
		other := slices.ContainsFunc(t.rows, func(r *row) bool {
			s := r.at(cols[0])
			if r.Class != layout.Device || !s.had() {
				return false
			}
			devices++
			if worded && join.Parse(join.Zone, s.text).Bare() {
				return false
			}
			c := b.channelRef(s.text)
			return !c.ok || c.ref.Amplifier != "" || len(c.ref.Channels) == 0 || notation.KeyOf(s.text).Kind != notation.KeyChannel
		})
		if devices > 1 && !other {
			t.become(cols[0], vocabulary.Channel, "its cells name outputs")
		}
	}
}

// groupsRated takes numbered groups for outputs where the table has rooms and nothing else that feeds them, the
// header is a word for outputs too, and a sentence of an amplifier without a name rates all of them: "Groep" 1 to 3
// and "de versterker heeft drie uitgangen: groep 1 is 240 W, groep 2 en 3 zijn 60 W".
func (b *builder) groupsRated(t *table) {
	cols := t.byField[vocabulary.Zone]
	if len(cols) != 1 || !t.has(vocabulary.Room) || t.has(vocabulary.Amplifier) || t.has(vocabulary.Channel) || t.has(vocabulary.Circuit) ||
		!outputWords.in(join.Fold(cols[0].Header)) || !t.bareNames(cols[0]) {
		return
	}
	for i := range b.said {
		s := &b.said[i]
		if s.Name != "" || !s.Worded || len(s.Ways) < 2 || s.Amplifiers > 1 {
			continue
		}
		rated := make(map[string]bool)
		for _, w := range s.Ways {
			rated[channelID(w.Name)] = w.W > 0
		}
		all := true
		t.eachText(cols[0], func(text string) { all = all && rated[channelID(text)] })
		if all {
			t.become(cols[0], vocabulary.Channel, "what is said of the amplifier rates each")
			return
		}
	}
}

// groupsOfAmplifiers is the column of groups of a list that names nothing else
// and whose title or sheet speaks of amplifiers: the watts beside them are what
// these give.
func (t *table) groupsOfAmplifiers() []*column {
	cols := t.byField[vocabulary.Zone]
	if len(cols) != 1 || t.has(vocabulary.Room) || !slices.ContainsFunc(t.titles, func(f layout.Fact) bool {
		return f.Field == vocabulary.Unknown && notation.SpeaksOfAmplifier(f.Text)
	}) {
		return nil
	}
	return cols
}

// groupsAsOutputs takes groups for outputs, here and where the loudspeakers name
// them under the same header, where that is a word for an output too ("groep").
func groupsAsOutputs(t *table, tables []*table) {
	cols := t.byField[vocabulary.Zone]
	if len(cols) != 1 || t.has(vocabulary.Amplifier) || !outputWords.in(join.Fold(cols[0].Header)) || !t.bareNames(cols[0]) {
		return
	}
	header := headerKey(cols[0])
	for _, o := range tables {
		for _, c := range slices.Clone(o.byField[vocabulary.Zone]) {
			if headerKey(c) == header && !o.has(vocabulary.Channel) {
				o.become(c, vocabulary.Channel, "the list of amplifiers rates each")
			}
		}
	}
}

// groupsAsLines takes groups for lines where a list gives each, beside the output
// that feeds it, and their header is a word for a line too: "Groep | Versterker |
// Uitgang". The loudspeakers name their places themselves, and a list of cables may
// name nothing else: "Groep | Kabel | Lengte".
func groupsAsLines(tables []*table) {
	lines := make(map[string]bool)
	for _, t := range tables {
		cols := t.byField[vocabulary.Zone]
		if t.kind != layout.Channels && t.kind != layout.Amplifiers || len(cols) != 1 || t.has(vocabulary.Circuit) || !t.has(vocabulary.Amplifier) || !t.has(vocabulary.Channel) {
			continue
		}
		if saysLine(cols[0].Header) && t.bareNames(cols[0]) {
			lines[headerKey(cols[0])] = true
		}
	}
	delete(lines, "")
	for _, t := range tables {
		for _, c := range slices.Clone(t.byField[vocabulary.Zone]) {
			list := t.kind == layout.Channels || t.kind == layout.Amplifiers
			if lines[headerKey(c)] && !t.has(vocabulary.Circuit) && (list || t.kind == layout.Cables || t.has(vocabulary.Room)) {
				t.become(c, vocabulary.Circuit, "a list of amplifiers gives the output of each")
			}
		}
	}
}

// saysLine reports whether a header may mean lines.
func saysLine(header string) bool {
	return slices.ContainsFunc(vocabulary.Score(header), func(c vocabulary.Candidate) bool { return c.Field == vocabulary.Circuit && c.Score >= 0.75 })
}

// ratedOutput is the name of an output with what it gives: "1, 60 W", "A (120 W)".
var ratedOutput = regexp.MustCompile(`(?i)^(?:\pL{0,3}\d{1,2}|\pL)\s*[,;:/(–-]?\s+\(?\d+(?:[.,]\d+)?\s?k?W(?:atts?)?\)?$`)

// ratedOutputColumn takes a column that was not understood, or taken for ratings, for one of outputs where
// its header has a word for them and its cells name one with its power.
func (t *table) ratedOutputColumn() {
	if t.has(vocabulary.Channel) {
		return
	}
	for _, c := range t.columns {
		unsure := c.Field == vocabulary.Unknown || c.Field == vocabulary.ChannelWatts || c.Field == vocabulary.Model && c.Confidence < unsureHeader
		if !unsure || !outputWords.in(join.Fold(c.Header)) {
			continue
		}
		cells, hits := 0, 0
		t.eachText(c, func(text string) {
			if _, missing := notation.Missing(text); missing {
				return
			}
			cells++
			if ratedOutput.MatchString(text) {
				hits++
			}
		})
		if cells > 0 && hits == cells {
			t.become(c, vocabulary.Channel, "its cells name outputs with their power")
			return
		}
	}
}

// sparesFeedNothing takes what a spare output would have of the row above, which a blank
// often repeats, off its row.
func (b *builder) sparesFeedNothing() {
	for _, t := range b.tables {
		switch t.kind {
		case layout.Channels, layout.Amplifiers, layout.Mixed:
		default:
			continue
		}
		for _, r := range t.rows {
			if t.kind == layout.Mixed && r.kind != amplifierRow && r.kind != channelRow {
				continue
			}
			if r.out != "" || r.status != schedule.Spare && !slices.ContainsFunc(slices.Collect(r.every(vocabulary.Notes)), func(s seen) bool { return readSpare(s.text) }) {
				continue
			}
			for _, f := range []vocabulary.Field{vocabulary.Circuit, vocabulary.Zone, vocabulary.Room} {
				for _, c := range t.byField[f] {
					if r.Values[c.i].How != schedule.Stated {
						r.Values[c.i].Text, r.Values[c.i].Cell, r.wordings[c.i] = "", nil, blankCell
					}
				}
			}
		}
	}
}
