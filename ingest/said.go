package ingest

import (
	"slices"
	"strings"
	"unicode"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
	"lineaudit/ingest/watch"
)

// What a sentence outside the tables says of an amplifier ("PA1: two outputs,
// 60 W each") holds where the tables say nothing of it. A sentence counts for
// the amplifiers that a table names; the only one that a file names at all is
// the amplifier of its outputs.

// A said is one amplifier of a sentence.
type said struct {
	notation.RatedAmplifier
	source schedule.Source
	bare   bool // watts beside a name and no word that says what they are
	routed bool // read with the lines that the amplifier feeds
}

// saidIn finds the sentences about amplifiers in the texts of a sheet, each
// alone or all of a row together.
func saidIn(cells []spoken, w *watch.Watch) []said {
	var out []said
	for len(cells) > 0 {
		w.Step()
		n := 1
		for n < len(cells) && cells[n].at.Row == cells[0].at.Row {
			n++
		}
		row := cells[:n]
		cells = cells[n:]
		whole := false
		for _, between := range []string{"; ", " "} {
			text := joined(row, between)
			if list := sentence(text, row[0].at); n > 1 && namesFirst(list) {
				out, whole = append(out, list...), true
				break
			}
		}
		for _, c := range row {
			if !whole {
				out = append(out, sentence(c.text, c.at)...)
			}
		}
	}
	return out
}

// namesFirst reports whether a sentence names its first amplifier and says something of it.
func namesFirst(list []said) bool {
	return len(list) > 0 && list[0].Name != "" && (list[0].Worded || list[0].W > 0)
}

func sentence(text string, at schedule.Ref) []said {
	list, err := notation.ParseRatingSentence(text, notation.Auto)
	if err != nil {
		return nil
	}
	var out []said
	for _, a := range list {
		s := said{RatedAmplifier: a, source: schedule.Source{At: at, Written: text, How: schedule.FromTitle}}
		s.bare = !a.Worded && a.Outputs == 0 && !a.PerOutput
		if a.Name == "" && s.bare && slices.ContainsFunc(a.Ways, func(w notation.NamedWatts) bool { return !usualOutput(w.W) }) {
			continue // loads, more likely
		}
		out = append(out, s)
	}
	return out
}

// ampText is the name of the amplifier of a sentence as the tables may have it.
func (s *said) ampText() string { return ampText(&s.RatedAmplifier) }

func ampText(a *notation.RatedAmplifier) string {
	if len(a.Name) == 1 {
		return "Amp " + a.Name // a bare figure or letter names nothing
	}
	return a.Name
}

// hearAmplifiers adds the names in sentences to those of the tables.
func (b *builder) hearAmplifiers() {
	for i := range b.said {
		b.waysAreZones(&b.said[i])
		if b.said[i].Name != "" {
			b.ampNames.Refer(b.said[i].ampText())
		}
		for _, zone := range b.said[i].Zones {
			if namesPlace(b.places.zones, join.Zone, zone) {
				b.zoneNames.Refer(zone)
			}
		}
	}
}

// waysAreZones takes what a sentence names by a word for zones and for outputs alike, "groep
// A", for zones where the loudspeakers have zones of these names and no output or line is listed.
func (b *builder) waysAreZones(s *said) {
	if len(s.Ways) == 0 || s.PerZone || len(s.Zones) > 0 || len(b.places.lines) > 0 || !join.HasWord(join.Zone, s.source.Written) {
		return
	}
	for _, w := range s.Ways {
		if w.W != s.Ways[0].W || !namesPlace(b.places.zones, join.Zone, w.Name) {
			return
		}
	}
	for _, w := range s.Ways {
		s.Zones = append(s.Zones, w.Name)
	}
	s.W, s.Ways = s.Ways[0].W, nil
}

// keepSaid keeps the sentences about amplifiers that a table names, about all
// of them, and about the only one that the file names.
func (b *builder) keepSaid() {
	known := b.ampsInTables()
	b.ampsAsOutputs(known)
	b.waysAreAmps(known)
	worded, unworded := make(map[string]bool), make(map[string]bool)
	for i := range b.said {
		s := &b.said[i]
		switch k := b.ampNames.Find(s.ampText()).Key; {
		case s.Name == "":
		case s.Worded:
			worded[k] = true
		case s.Outputs > 0 || len(s.Ways) > 0:
			unworded[k] = true
		}
	}
	named := worded
	if len(worded) == 0 {
		named = unworded
	}
	only := len(known) == 0 && len(named) == 1
	fed := b.ampsFed()
	b.said = slices.DeleteFunc(b.said, func(s said) bool {
		k := b.ampNames.Find(s.ampText()).Key
		if s.Name == "" || known[k] || fed[k] || only && named[k] || b.feedsKnown(&s) {
			return false
		}
		if s.Worded && s.W > 0 && len(known) == 0 {
			b.loose = append(b.loose, s)
		}
		return true
	})
	for i := range b.said {
		s := &b.said[i]
		if s.Name == "" {
			continue
		}
		name := seen{text: s.Name, field: vocabulary.Amplifier, source: s.source}
		a := b.amplifier(name, s.ampText())
		if a == nil {
			continue
		}
		if a.Name == s.ampText() && unicode.IsLetter([]rune(s.Name)[0]) {
			a.Name = s.Name
		}
		if only {
			a.Name = s.Name
			b.take(name, "amplifier", s.Name, schedule.LikelierReading, "the only amplifier that the file names")
		}
		if len(s.AtV) == 1 && len(s.Ways) != 1 {
			b.saidLine[a] = s.AtV[0]
		}
		if n := max(s.Outputs, len(s.Ways)); n > 0 && b.slots[a.Key] == 0 && b.numberedWays(s) && len(b.waysOwned(s)) == 0 {
			b.slots[a.Key] = n
		}
	}
}

// ampsAsOutputs takes what sentences say of amplifiers whose names rows use for
// outputs, "G1 is a 100 W amplifier", for said of these outputs.
func (b *builder) ampsAsOutputs(known map[string]bool) {
	if len(known) > 0 {
		return
	}
	for i := range b.said {
		s := &b.said[i]
		said := s.Worded || b.places.lines[join.Key(s.Name)] // "PA1: 60 W" may do where PA1 is a line
		if said && s.W > 0 && s.Outputs <= 1 && len(s.Ways) == 0 && anyDigit(s.Name) && b.looseOutputs()[channelID(s.Name)] && strings.ContainsFunc(s.Name, isLetter) {
			s.Ways = []notation.NamedWatts{{Name: s.Name, W: s.W}}
			s.Name, s.W, s.PerOutput = "", 0, false
		}
	}
}

// waysAreAmps takes what a sentence says of outputs that are called like amplifiers of the tables,
// by a word or without a figure, for said of these: "mixer 60 W", "amplifier A: 120 W, amplifier B: 60 W".
func (b *builder) waysAreAmps(known map[string]bool) {
	var out []said
	for _, s := range b.said {
		other := func(w notation.NamedWatts) bool {
			return !notation.SpeaksOfAmplifier(w.Name) && (anyDigit(w.Name) || !known[b.ampNames.Find(w.Name).Key])
		}
		if s.Name != "" || s.W > 0 || len(s.Ways) == 0 || slices.ContainsFunc(s.Ways, other) {
			out = append(out, s)
			continue
		}
		for _, w := range s.Ways {
			one := s
			one.Name, one.W, one.Ways, one.Worded = w.Name, w.W, nil, true
			b.ampNames.Refer(one.ampText())
			out = append(out, one)
		}
	}
	b.said = out
}

// looseOutputs are the outputs that rows name without an amplifier.
func (b *builder) looseOutputs() map[string]bool {
	if b.looseIDs == nil {
		b.looseIDs = make(map[string]bool)
		for _, t := range b.tables {
			for _, r := range t.rows {
				if o := b.outletOf(r); r.out == "" && o.amp == "" {
					for _, ch := range o.channels {
						b.looseIDs[channelID(ch)] = true
					}
				}
			}
		}
	}
	return b.looseIDs
}

// waysOwned are the outputs that rows name without an amplifier and a sentence
// gives to one: "Amp A feeds lines 1 and 2", or by their first letter, "all A
// circuits are on amplifier 1" where the outputs are A1, A2, A3.
func (b *builder) waysOwned(s *said) []string {
	loose := b.looseOutputs()
	var out []string
	for _, w := range s.Ways {
		id := channelID(w.Name)
		if loose[id] {
			out = append(out, id)
			continue
		}
		for _, k := range sortedKeys(loose) {
			if len(id) == 1 && strings.HasPrefix(k, id) && strings.Trim(k[1:], "0123456789") == "" && len(k) > 1 && letterNumber(id) > 0 {
				out = append(out, k)
			}
		}
	}
	return out
}

// feedsKnown reports whether a sentence names an amplifier together with
// outputs or zones that rows name: then it is known by what it feeds.
func (b *builder) feedsKnown(s *said) bool {
	if !s.Worded || s.Name == "" {
		return false
	}
	for _, name := range s.Zones {
		if f := b.zoneNames.Find(name); f.Key == "" || f.Match == join.Unclear || !namesPlace(b.places.zones, join.Zone, name) {
			return false
		}
	}
	return len(s.Zones) > 0 || len(b.waysOwned(s)) > 0
}

// ampsFed are the keys of the amplifiers that notes hang places on, and of those whose outputs cables lead from.
func (b *builder) ampsFed() map[string]bool {
	fed := make(map[string]bool)
	for i := range b.routes {
		if r := &b.routes[i]; r.named && r.outlet.amp != "" {
			fed[b.ampNames.Find(r.outlet.amp).Key] = true
		}
	}
	b.each(cableRow, func(r *row) {
		if from := r.own(vocabulary.From); b.nearOutput(from) {
			if amp := b.channelRef(from.text).ref.Amplifier; amp != "" {
				fed[b.ampNames.Find(amp).Key] = true
			}
		}
	})
	return fed
}

// ampsInTables are the keys of the amplifiers that rows name.
func (b *builder) ampsInTables() map[string]bool {
	known := make(map[string]bool)
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.out != "" {
				continue
			}
			name := b.outletOf(r).amp
			if from := r.own(vocabulary.From); r.kind == cableRow && name == "" && b.nearAmp(from) {
				name = from.text
			}
			if r.kind == amplifierRow || r.kind == channelRow {
				if own, _ := b.ampName(r); own.had() {
					name = own.text
				}
			}
			if name != "" {
				known[b.ampNames.Find(name).Key] = true
			}
		}
	}
	return known
}

// sentenceName is the name that a text of an amplifier gives it as a sentence:
// "Amp DOME: chan. 1 60 W, chan. 2 60 W" is DOME.
func sentenceName(f *layout.Fact) (string, bool) {
	text := f.Text
	if f.Key != "" {
		text = f.Key + ": " + text
	}
	list, err := notation.ParseRatingSentence(text, notation.Auto)
	if err != nil || len(list) != 1 || list[0].Name == "" {
		return "", false
	}
	return ampText(&list[0]), true
}
