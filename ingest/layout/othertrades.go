package layout

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/vocabulary"
)

// What tells a table of another trade, of heating cables or lamps, that has zones, lines,
// watts and controllers as one of loudspeakers has.

var (
	wattsPerLength = regexp.MustCompile(`(?i)^[^\d]*\bw(?:atts?)?\s*(?:/|per|pro|je|par|por|al|p\.)\s*(?:lin\.?\s*)?(?:m|ft|lf|lm|mtr|metre|meter|foot|feet|metro|mètre|m[2²]|sq\.?\s*ft)\b`)
	mainsVolts     = regexp.MustCompile(`(?i)\b(?:110|115|120|127|208|220|230|240|277|347|380|400|415|460|480)\s*-?\s*v(?:olts?|ac)?\b`)
)

// soundConcepts are the concepts in headers and titles that only lists of loudspeakers and amplifiers have.
var soundConcepts = []string{"speaker", "amplifier", "tap", "transformer", "paging"}

// speaksOfSound reports whether one of the headers of a table does. A word for taps that means something else here does not:
// "Stand", 1 to 3, of a fan.
func speaksOfSound(t *Table, s *vocabulary.Scorer) bool {
	return slices.ContainsFunc(t.Columns, func(c Column) bool {
		return c.Field == vocabulary.Amplifier || c.Field == vocabulary.TapList || slices.ContainsFunc(s.Concepts(c.Header), func(k string) bool {
			return slices.Contains(soundConcepts, k) && !(k == "tap" && (c.Field == vocabulary.Revision || c.Field == vocabulary.Status))
		})
	})
}

// perLength reports whether a header of a table is a power per metre or foot, which no
// loudspeaker has: "W/ft". The sensitivity of one, "dB/W/m", is none.
func perLength(t *Table) bool {
	return slices.ContainsFunc(t.Columns, func(c Column) bool {
		return wattsPerLength.MatchString(c.Header) && !strings.Contains(strings.ToLower(c.Header), "db")
	})
}

// titledBy reports whether a text above a table is so, and none there has a word for loudspeakers or what belongs to them.
func titledBy(t *Table, sr *sheetReader, so func(w *wording) bool) bool {
	titled := false
	for i := range sr.p.lines[:min(len(sr.p.lines), linesJudged)] {
		l := &sr.p.lines[i]
		if l.n >= t.Range.Row1 {
			break
		}
		for _, sl := range l.slots {
			w := sl.cell.says()
			if len(w.line) > 120 {
				continue
			}
			if w.is(aboutLines) {
				return false
			}
			titled = titled || so(w)
		}
	}
	return titled
}

// onMains reports whether what stands above a table states the voltage of the mains.
func onMains(t *Table, sr *sheetReader) bool {
	return titledBy(t, sr, func(w *wording) bool { return mainsVolts.MatchString(w.line) })
}

// titledForeign reports whether what stands above a table names what belongs to another trade: "Inventory of ventilation".
func titledForeign(t *Table, sr *sheetReader) bool {
	return titledBy(t, sr, func(w *wording) bool { return w.is(foreignWords) })
}

// otherTrade reports whether a table without a word for loudspeakers, amplifiers or taps, and without the
// voltage of a line, is of another trade: by powers per metre, by the voltage of the mains above it, or by a title
// over powers that are no taps.
func otherTrade(t *Table, sr *sheetReader, s *vocabulary.Scorer) bool {
	return !speaksOfSound(t, s) && aboutWords(s, t.Sheet) == 0 && (perLength(t) || onMains(t, sr) || titledForeign(t, sr) && oddPowers(t))
}

// oddPowers reports whether a table has powers most of which no line transformer is usually tapped at: 85 W.
func oddPowers(t *Table) bool {
	return slices.ContainsFunc(powerFields, func(f vocabulary.Field) bool {
		return columnFigures(t, f) && lookShare(t, f, lookTapUsual|lookTapValue) <= 0.5
	})
}
