package notation

import (
	"regexp"
	"slices"
	"strings"
	"sync"
)

// Marks with which people pick one of the taps in a list.
const (
	marksBefore = `[*_>\[({<→✓✔•!]|\bx\s`
	marksBehind = `[*_<\])}>←✓✔•!]|\sx\b|\(x\)`
)

var (
	markedItem  = regexp.MustCompile(`^(?i)(?:(` + marksBefore + `)\s*){0,2}(\d+(?:[.,]\d+)?|\d/\d|[½¼¾])\s*(w(?:atts?)?\.?)?\s*(?:(` + marksBehind + `)\s*){0,2}(w(?:atts?)?\.?)?$`)
	markedParts = regexp.MustCompile(`\s*[/|;\n]\s*|,\s+|\s+-\s+|\s{2,}`)
)

// markedTap reads a list of taps of which one is marked, in brackets, by a star
// or an arrow: "5 / *10* / 20 W", "2.5W/5W*/10W", "[5] 10 20 W". Brackets alone
// do not pick one of two.
func markedTap(s string, style Style) (Tap, bool) {
	text := Clean(s)
	if len(text) > 60 || !strings.ContainsAny(text, `*_>[({<→✓✔•!x`) {
		return Tap{}, false
	}
	parts := markedParts.Split(text, -1)
	if len(parts) < 2 {
		parts = strings.Fields(text)
	}
	var list []item
	picked, brackets := -1, false
	for i, part := range parts {
		m := markedItem.FindStringSubmatch(part)
		if m == nil || (m[1] == `"`) != (m[4] == `"`) { // 1/2": a mark of inches picks nothing
			return Tap{}, false
		}
		p, err := ParseWatts(m[2]+" W", style)
		if err != nil {
			return Tap{}, false
		}
		list = append(list, item{code: codePower, value: p.W})
		if m[1]+m[4] == "" {
			continue
		}
		if picked >= 0 {
			return Tap{}, false
		}
		picked, brackets = i, m[1] == "(" || m[4] == ")"
	}
	if picked < 0 || len(list) < 2 || brackets && len(list) < 3 {
		return Tap{}, false
	}
	w := list[picked].value
	if w > MaxTapW {
		return Tap{}, false
	}
	return Tap{Kind: TapWatts, LowW: w, HighW: w, OfferedW: figures(list), Doubts: MarkTaken}, true
}

// sinceClause finds since when a tap has been what it is: "seit 2019", "(since 3/2018)", "(2019)".
var sinceClause = sync.OnceValue(func() *regexp.Regexp {
	var list []string
	for phrase := range words("since").phrases {
		list = append(list, regexp.QuoteMeta(phrase))
	}
	return regexp.MustCompile(`(?i)\s*[,;(]?\s*\b(?:` + strings.Join(slices.Sorted(slices.Values(list)), "|") + `)\s+(?:\d{1,2}[./-]){0,2}(?:\pL{3,10}\.?\s+)?(?:19|20)\d\d\b\s*\)?|\s*\(\s*(?:\d{1,2}[./-]){0,2}(?:19|20)\d\d\s*\)`)
})

// retappedTap reads a tap with the time since when it has been set so: the
// last of several counts, "15 W - 10 W seit 2019", "15 W, sinds 2019 10 W".
func retappedTap(text string, style Style) (Tap, bool) {
	if !strings.Contains(text, "19") && !strings.Contains(text, "20") {
		return Tap{}, false // no year: most texts
	}
	at := sinceClause().FindStringIndex(text)
	if at == nil {
		return Tap{}, false
	}
	rest := strings.TrimSpace(text[at[1]:])
	without := strings.TrimSpace(text[:at[0]])
	if rest != "" && without != "" {
		without += " - "
	}
	tap, err := readTap("tap", without+rest, style)
	if err != nil {
		return Tap{}, false
	}
	if tap.Kind == TapRange || tap.Kind == TapList {
		list := PowersIn(text, style)
		if len(list) == 0 || strings.IndexAny(rest, ",;/-") == 0 {
			return Tap{}, false // "10 W since 2019, 15 W"
		}
		w := list[len(list)-1].W
		return Tap{Kind: TapWatts, LowW: w, HighW: w, AtV: tap.AtV, Doubts: LastTaken}, true
	}
	return tap, tap.Kind == TapWatts
}
