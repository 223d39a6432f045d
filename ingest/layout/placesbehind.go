package layout

import (
	"cmp"
	"strings"
	"unicode/utf8"

	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Bills end their descriptions with the place: "Ceiling loudspeaker tapped 3 W, foyer", "Volume
// control 36 W, children's library".

// fewestPlaced is the fewest loudspeakers whose descriptions tell that what stands behind them is a place.
const fewestPlaced = 3

// roomsBehind gives the rows of a bill the places that stand behind their descriptions, where most of the bill or of a
// chapter of it has some.
func roomsBehind(rows []phraseRow, col int) {
	chapters := [][]phraseRow{rows}
	if !placesBehind(rows, col) {
		chapters = chapters[:0]
		first := 0
		for i := 0; i <= len(rows); i++ {
			if i < len(rows) && rows[i].Class != Title {
				continue
			}
			if chapter := rows[first:i]; placesBehind(chapter, col) {
				chapters = append(chapters, chapter)
			}
			first = i
		}
	}
	for _, chapter := range chapters {
		for i := range chapter {
			p := &chapter[i].p
			if place := placeBehind(chapter[i].Values[col].Text); p.room == "" || !strings.HasSuffix(place, " "+p.room) { // "for the store"
				p.room = cmp.Or(place, p.room)
			}
		}
	}
}

// placesBehind reports whether most descriptions of loudspeakers end with words that may be a place,
// and these differ: colours and finishes come again and again.
func placesBehind(rows []phraseRow, col int) bool {
	speakers, ending := 0, 0
	places := map[string]bool{}
	for i := range rows {
		r := &rows[i]
		if r.Class != Device || r.p.device != vocabulary.LoudspeakerDevice || r.p.set == "" && r.p.watts == "" {
			continue
		}
		speakers++
		if place := placeBehind(r.Values[col].Text); place != "" {
			ending++
			places[vocabulary.Fold(place)] = true
		}
	}
	return len(places) >= fewestPlaced && 10*ending >= 8*speakers && 10*len(places) >= 6*ending
}

// placeBehind is the place behind the last comma or hyphen of a description, "" if what stands there is
// something else: a figure, a state, a way to mount things, another device.
func placeBehind(t string) string {
	if len(t) > maxText {
		return ""
	}
	if open := strings.LastIndexByte(t, '('); open > 0 && strings.HasSuffix(strings.TrimSpace(t), ")") {
		t = t[:open] // "(option, not in the total)"
	}
	at := max(strings.LastIndex(t, ", "), strings.LastIndex(t, " - "), strings.LastIndex(t, " – "))
	if at < 0 {
		return ""
	}
	place := strings.Trim(t[at:], ",–-. ")
	const notPlaces = classMounting | classMaterial | classStatus | classUse | classYes | classMissing | classCable | classHiZ | classNoPiece | classTotal | classFinish
	switch {
	case utf8.RuneCountInString(place) < 3, anyDigit(place), len(strings.Fields(place)) > 4, strings.ContainsAny(place, ":;=/"),
		vocabulary.DeviceIn(place) != vocabulary.NoDevice, len(notation.Statuses(place)) > 0,
		classAhead(strings.Fields(vocabulary.Fold(place)))&classExtra != 0, classOf(place)&notPlaces != 0:
		return ""
	}
	if in := placeIn(place); in != "" {
		return in // "in the store"
	}
	return place
}

// PlaceAtEnd is what may be a place at the end of a description, with its number if it has one: "classroom 1"
// of "Ceiling loudspeaker tapped at 3 W, classroom 1"; "" if there is none.
func PlaceAtEnd(t string) string {
	if place := placeBehind(t); place != "" {
		return place
	}
	head, number, ok := cutLast(strings.TrimRight(t, " .)"))
	if !ok || len(number) > 2 || strings.Trim(number, "0123456789") != "" {
		return ""
	}
	if place := placeBehind(head); place != "" {
		return place + " " + number
	}
	return ""
}

// cutLast cuts the last word off a text.
func cutLast(t string) (head, word string, ok bool) {
	i := strings.LastIndexByte(t, ' ')
	if i < 0 {
		return t, "", false
	}
	return strings.TrimRight(t[:i], " "), t[i+1:], true
}
