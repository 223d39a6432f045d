package layout

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A list of amplifiers and the lines on them may have each rating behind the amplifier's name: "Rack unit | Device | Line" over
// "2 | Amplifier PA1 (120 W) | L3".

// reRatedName finds a rating behind a name, in brackets or not.
var reRatedName = regexp.MustCompile(`(?i)^(.*?\pL.*?)\s*[\s(,:;–/-]\s*(?:(?:at|zu|mit|de|da|van|of|à)\s+)?((?:\d{1,2}\s*[x×]\s*)?\d{2,4}\s*w(?:att)?s?)\s*\)?$`)

// ratedNames parts the ratings from the names of amplifiers in a table that has lines or outputs, and neither other powers nor
// loudspeakers. What reads like taps and only numbers the rows are their places.
func ratedNames(t *Table) {
	if t.Kind == Cables || t.Matrix {
		return
	}
	fed := false
	for i := range t.Columns {
		switch f := t.Columns[i].Field; {
		case f == vocabulary.Circuit || f == vocabulary.Channel:
			fed = true
		case f == vocabulary.Tap && t.numbersPlaces(i): // "Puesto" over the places in a rack
		case f == vocabulary.Quantity || f != vocabulary.Measured && f != vocabulary.Load && slices.Contains(powerFields, f):
			return
		}
	}
	if !fed {
		return
	}
	for i := range t.Columns {
		c := t.Columns[i]
		if c.Field != vocabulary.Amplifier && c.Field != vocabulary.Unknown && !describing[c.Field] || !t.ratesNames(i) || t.otherPowers(i) {
			continue
		}
		t.Kind = Amplifiers
		if slices.ContainsFunc(t.Columns, func(o Column) bool { return o.Field == vocabulary.Channel }) {
			t.Kind = Channels
		}
		for k := range t.Columns {
			if k != i && (t.Columns[k].Field == vocabulary.Amplifier || t.Columns[k].Field == vocabulary.Tap) {
				t.Columns[k].Field, t.Columns[k].Evidence = vocabulary.Item, "it numbers the amplifiers beside it"
			}
		}
		of := &t.Columns[i]
		of.Field, of.RunnerUp, of.Confidence, of.Evidence = vocabulary.Amplifier, vocabulary.Unknown, 0.8, "each cell names an amplifier and rates it"
		added := Column{At: of.At, Header: of.Header, Field: vocabulary.ChannelWatts, Unit: "W", Confidence: 0.8, Evidence: "behind the names of amplifiers"}
		t.partColumn(i, added, func(text string) (name, watts string) {
			if m := reRatedName.FindStringSubmatch(oneLine(text)); m != nil {
				return tagOfAmplifier(m[1]), m[2]
			}
			return "", ""
		})
		return
	}
}

// numbersPlaces reports whether a column without a unit numbers the devices of a table, up or down: 1, 2, 4.
func (t *Table) numbersPlaces(i int) bool {
	n, last, step := 0, 0, 0
	for k := range t.Records {
		r := &t.Records[k]
		if r.Class != Device {
			continue
		}
		place, err := strconv.Atoi(strings.TrimSpace(r.Values[i].Text))
		if err != nil || place < 1 || n > 0 && (place == last || step != 0 && (place > last) != (step > 0)) {
			return false
		}
		if n > 0 {
			step = place - last
		}
		last = place
		n++
	}
	return n > 1 && t.Columns[i].Unit == ""
}

// ratesNames reports whether each device of a table has an amplifier and its rating in a column.
func (t *Table) ratesNames(i int) bool {
	n := 0
	for k := range t.Records {
		r := &t.Records[k]
		if r.Class != Device || r.Values[i].Text == "" && t.Columns[i].Field == vocabulary.Amplifier {
			continue
		}
		m := reRatedName.FindStringSubmatch(oneLine(r.Values[i].Text))
		if m == nil || len(m[1]) > mostName || t.Columns[i].Field != vocabulary.Amplifier && !notation.SpeaksOfAmplifier(m[1]) {
			return false
		}
		n++
	}
	return n > 0
}

// otherPowers reports whether a device of a table states a power outside a column: "4 x 10 W" beside "V1 (120 W)".
func (t *Table) otherPowers(i int) bool {
	return slices.ContainsFunc(t.Records, func(r Record) bool {
		if r.Class != Device {
			return false
		}
		for k := range r.Values {
			if k != i && rePhraseW.MatchString(r.Values[k].Text) {
				return true
			}
		}
		return false
	})
}

// mostName is the most bytes of an amplifier's name.
const mostName = 40

// tagOfAmplifier is a name of an amplifier without the word in front of its tag: "Amplifier PA1" is PA1.
func tagOfAmplifier(name string) string {
	name = strings.TrimRight(name, " (,:;–/-")
	word, tag, ok := strings.Cut(name, " ")
	if ok && notation.SpeaksOfAmplifier(word) && reAmpTag.MatchString(tag) {
		return tag
	}
	return name
}

// reAmpTag is a short tag that no word need stand in front of.
var reAmpTag = regexp.MustCompile(`^\p{Lu}{1,3}(?:[-.]?\d{1,2})?$`)
