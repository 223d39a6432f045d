package ingest

import (
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// unsureWords is the confidence below which what the cells of a column name outweighs a header that may say of what kind devices are.
const unsureWords = 0.75

// worded reports whether each cell of a column whose header says little calls an amplifier by a word for it, and
// several rows name the same: "Which box" over "left amplifier (120 W)", "left amplifier", "right amplifier".
func (t *table) worded(c *column) bool {
	free := c.Field == vocabulary.Unknown || c.Field == vocabulary.Notes && c.Confidence < sureHeader || c.Confidence < unsureHeader && (c.Field == vocabulary.Zone || c.Field == vocabulary.Room) ||
		c.Confidence < unsureWords && (c.Field == vocabulary.Model || c.Field == vocabulary.Describe)
	if !free {
		return false
	}
	cells, names, all := 0, make(map[string]bool), true
	t.eachText(c, func(text string) {
		name := text
		if m := findRatingBehind(text); m != nil {
			name = m[1]
		}
		cells++
		names[join.Key(name)] = true
		all = all && countWords(name) <= 3 && notation.SpeaksOfAmplifier(name) && !join.HasWord(join.Loudspeaker, name)
	})
	return all && len(names) < cells && 2*cells > t.devices()
}
