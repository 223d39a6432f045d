package ingest

import (
	"regexp"
	"slices"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// ratedTags takes a column of tags that its header hardly explains for the controls of a list of loudspeakers where
// notes give each of its tags a power and some rows have none of them: "P1 | P2 | P3" under "Pt." with "P1 12 W, P2 and
// P3 6 W" below. Every loudspeaker has a tap and an output, so what only some have and what is rated is a control.
func ratedTags(notes []spoken, tables []*table) {
	rated := make(map[string]bool)
	for _, s := range notes {
		if len(s.text) <= longestSpoken && !loadWords.in(join.Fold(s.text)) {
			tagsWithPower(s.text, rated)
		}
	}
	if len(rated) == 0 {
		return
	}
	for _, t := range tables {
		if !t.lacksControls() {
			continue
		}
		for _, c := range t.columns {
			if t.mayHoldControls(c) && t.onlySomeAreIn(c, rated) {
				t.become(c, vocabulary.Control, "a note says what each of its tags carries")
				if c.RunnerUp == vocabulary.Unknown {
					c.RunnerUp = vocabulary.Tag // said aloud
				}
				break
			}
		}
	}
}

// lacksControls reports whether a table lists loudspeakers with taps and outputs, and no controls.
func (t *table) lacksControls() bool {
	return (t.kind == layout.Loudspeakers || t.kind == layout.Mixed || t.kind == layout.Zones) && !t.has(vocabulary.Control) &&
		(t.has(vocabulary.Tap) || t.has(vocabulary.TotalWatts)) &&
		(t.has(vocabulary.Channel) || t.has(vocabulary.Circuit) || t.has(vocabulary.Amplifier))
}

// mayHoldControls reports whether a column is of names and not surely of other things.
func (t *table) mayHoldControls(c *column) bool {
	switch c.Field {
	case vocabulary.Unknown, vocabulary.Tag, vocabulary.Item, vocabulary.Model, vocabulary.Describe, vocabulary.Kind, vocabulary.Notes, vocabulary.Price:
		return c.Confidence < unsureWords
	}
	return false
}

// onlySomeAreIn reports whether all cells of a column are tags of a set, of the same letters, and some devices have none.
func (t *table) onlySomeAreIn(c *column, rated map[string]bool) bool {
	cells, letters, all := 0, "", true
	t.eachText(c, func(text string) {
		if cells++; cells == 1 {
			letters = lettersIn(text)
		}
		all = all && plainTag(text) && lettersIn(text) == letters && rated[join.Key(text)]
	})
	return all && cells > 0 && cells < t.devices()
}

// pieceOfRatings is a tag, a power, a word or the end of a sentence.
var pieceOfRatings = regexp.MustCompile(`(\b(?:[A-Za-z]{1,4}[-_]?|[A-Z]{1,4} )\d{1,3}\b)|(\b\d+(?:[.,]\d+)?\s?(?:W|watts?|vatios?)\b)|(\pL+)|[.;|]`)

// longestLink is how many letters a word between a tag and its power has at most, other than one for "each".
const longestLink = 4

// tagsWithPower enters the keys of the tags in front of each power of a text, up to a longer word or the end of a
// sentence: P1, P2 and P3 of "P1 de 12 W, P2 y P3 de 6 W".
func tagsWithPower(text string, into map[string]bool) {
	var waiting []string
	for _, m := range pieceOfRatings.FindAllStringSubmatch(text, -1) {
		switch tag, watts, word := m[1], m[2], m[3]; {
		case tag != "":
			waiting = append(waiting, join.Key(tag))
		case watts != "":
			for _, k := range waiting {
				into[k] = true
			}
			waiting = nil
		case len([]rune(word)) > longestLink && !slices.Contains(everyWords, join.Fold(word)), word == "":
			waiting = nil
		}
	}
}
