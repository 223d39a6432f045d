package layout

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// Keys and values in titles and title blocks.

// keyValues reads "Zone: 3  Amp: A1" as keys and values; nil when the text has none.
func (f *finder) keyValues(t string, at schedule.Ref, c *grid.Cell) []Fact {
	switch {
	case !strings.ContainsAny(t, ":="):
		return nil
	case len(f.forced) > 0:
		return placedAt(f.readKeys(t), at, c)
	}
	return placedAt(slices.Clone(keysRead.Of(t, 0)), at, c)
}

// readKeys is keyValues without a place.
func (f *finder) readKeys(t string) []Fact {
	found := reKey.FindAllStringSubmatchIndex(t, 8)
	if len(found) == 0 || strings.TrimSpace(t[:found[0][0]]) != "" {
		return nil
	}
	for _, m := range found { // "120 W.  Amp 2 = ...": the key begins behind the full stop
		for _, gap := range []string{"  ", ". "} {
			if j := strings.LastIndex(t[m[2]:m[3]], gap); j >= 0 {
				m[0], m[2] = m[2]+j+len(gap), m[2]+j+len(gap)
			}
		}
	}
	var facts []Fact
	for i, m := range found {
		end := len(t)
		if i+1 < len(found) {
			end = found[i+1][0]
		}
		key, value := strings.TrimSpace(t[m[2]:m[3]]), strings.Trim(t[m[1]:end], " ,;|\n\r\t")
		value = strings.TrimRight(value, " -–") // "2 x 60 W - A2: 120 W"
		if strings.Count(value, ")") > strings.Count(value, "(") {
			value = strings.TrimRight(value, ") ,;")
		}
		if value == "" {
			continue
		}
		facts = append(facts, f.readPair(key, oneLine(value))...)
	}
	for i := range facts { // "A1: 2 x 60 W - A2: 120 W": both are amplifiers
		if a := &facts[i]; a.Field == vocabulary.Unknown && reLabelWatts.MatchString(a.Text) && slices.ContainsFunc(facts, func(o Fact) bool {
			return o.Field == vocabulary.Amplifier && lettersOf(o.Key) == lettersOf(a.Key)
		}) {
			a.Field = vocabulary.Amplifier
		}
	}
	return facts
}

// lettersOf is what stands before the figures of a short tag.
func lettersOf(key string) string { return strings.TrimRight(vocabulary.Fold(key), "0123456789 ") }

// pair is what a key of a title block and its value say: one fact, and one more for a line
// voltage that the value names beside other things.
func (f *finder) pair(key, value string, at schedule.Ref, c *grid.Cell) []Fact {
	return placedAt(f.readPair(key, value), at, c)
}

func (f *finder) readPair(key, value string) []Fact {
	fact := f.fact(key, value)
	if keyedPlaces[fact.Field] {
		fact.Text = withoutFeed(fact.Text)
	}
	facts := []Fact{fact}
	if loose[fact.Field] && !reShortTag.MatchString(key) {
		if m := reAnyVolts.FindAllString(value, 3); len(m) == 1 {
			facts = append(facts, Fact{Field: vocabulary.LineVoltage, Text: m[0], Key: key})
		}
	}
	return facts
}

// cabled are the fields of keys behind which a conductor may stand.
var cabled = [vocabulary.Fields]bool{vocabulary.Unknown: true, vocabulary.Cable: true, vocabulary.Circuit: true, vocabulary.Route: true, vocabulary.Length: true, vocabulary.From: true, vocabulary.To: true}

// loose are the fields of keys such as "System" or "Line", behind which a line voltage may stand.
var loose = [vocabulary.Fields]bool{vocabulary.Circuit: true, vocabulary.Unknown: true, vocabulary.Use: true, vocabulary.Channel: true}

// fact is a key of a title block and its value.
func (f *finder) fact(key, value string) Fact {
	field := f.keyField(key)
	watts := reLabelWatts.MatchString(value)
	switch sect := sectionField(key); {
	case sect != vocabulary.Unknown && anyDigit(key):
		field = sect // "Amp 1 = 70 V, 120 W"
	case watts && reShortTag.MatchString(key) && reSeveral.MatchString(value):
		field = vocabulary.Amplifier // "A1: 2 x 60 W"
	case reShortTag.MatchString(key) && anyDigit(key):
		field = vocabulary.Unknown
	}
	if !watts && loose[field] && len(value) < 32 && reAnyVolts.MatchString(value) {
		field = vocabulary.LineVoltage // "Line: 100 V"
	}
	if k := lookText(value); k&(lookGauge|lookCableWord) != 0 && k&(lookWatts|lookCountWatts|lookVolts) == 0 && !watts && cabled[field] {
		field = vocabulary.CableType // "Runs: 12/2"
	}
	if field == vocabulary.Channel && reWattsOnly.MatchString(value) {
		field = vocabulary.ChannelWatts // "Output: 250 W"
	}
	if field == vocabulary.Job && anyDigit(value) && (!strings.Contains(value, " ") || !reNameWord.MatchString(value)) {
		field = vocabulary.JobNo
	}
	if field == vocabulary.Zone && namesBoth(key, value) {
		value = key + " - " + value // "Zone 1: Hall"
	}
	return Fact{Field: field, Text: value, Key: key}
}

// namesBoth reports whether a key numbers a zone and its value names it in words: other tables may call it by either.
func namesBoth(key, value string) bool {
	return sectionField(key) == vocabulary.Zone && sectionField(value) == vocabulary.Unknown && !anyDigit(value) && reNameWord.MatchString(value)
}

// keyField is the field that a key of a title block means.
func (f *finder) keyField(key string) vocabulary.Field {
	key = strings.TrimRight(key, ": =")
	if field, ok := f.forced[vocabulary.Fold(key)]; ok {
		return field
	}
	h := f.s.Header(key)
	best, score := vocabulary.Unknown, 0.0
	for _, cand := range h.Candidates {
		s := cand.Score
		if titleFields[cand.Field] {
			s += 0.12 // in a title block "Location" is the site
		}
		if s > score {
			best, score = cand.Field, s
		}
	}
	if score < headerScore {
		return vocabulary.Unknown
	}
	return best
}
