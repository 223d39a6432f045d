package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Bills and inventories say in the description of an amplifier what it feeds: "Amplifier A, 250 W, feeds the
// dome", "Amplifier B, 120 W, feeds the rest", "for ground floor loudspeakers".

// routesOfAmps adds what the rows of amplifiers say that they feed to the routes of the notes.
func (b *builder) routesOfAmps() {
	var floors map[string][]*row
	for _, t := range b.tables {
		if t.kind != layout.Mixed && t.kind != layout.Loudspeakers || !t.has(vocabulary.Describe) {
			continue
		}
		for _, r := range t.rows {
			s := r.own(vocabulary.Describe)
			if r.kind != amplifierRow || r.out != "" || !s.had() {
				continue
			}
			parts := fedIn(s.text)
			if len(parts) == 0 || b.outletOf(r).had() {
				continue
			}
			if floors == nil {
				floors = b.rowsOfFloors()
			}
			name, _ := b.ampName(r)
			var v *service
			for n := len(parts); n > 0 && v == nil; n-- { // what stands behind the places may be something else
				v = b.placesFed(s, strings.Join(parts[:n], ", "), floors)
			}
			if v != nil && name.had() {
				b.routes = append(b.routes, route{service: *v, named: true, outlet: outlet{amp: name.text, ampAt: name, at: name}})
				if !v.rest && r.zoneText().col == nil {
					r.feeds = v // not the chapter that it stands in
				}
			}
		}
	}
}

// fedIn is what a description says that an amplifier feeds, and the parts behind it: "the dome" of "Amplifier A, 250 W, feeds
// the dome", "the hall", "the shop and the office" and "wall rack" of "Amp 2 for the hall, the shop and the office, wall rack";
// nothing if it says nothing of it.
func fedIn(text string) []string {
	if len(text) > longestSpoken {
		return nil
	}
	parts := strings.Split(text, ",")
	for i, part := range parts {
		words := strings.Fields(part)
		for j := 0; j+1 < len(words); j++ {
			if slices.Contains(feedingWords, join.Fold(words[j])) {
				parts[i] = strings.Join(words[j+1:], " ")
				return parts[i:min(len(parts), i+mostPlacesFed)]
			}
		}
	}
	return nil
}

// mostPlacesFed is the most places between commas that one amplifier may be said to feed.
const mostPlacesFed = 8

// placesFed is what the words for places behind such a verb mean: all the rest, zones or rooms, or the
// rows of a floor; nil if no row names it.
func (b *builder) placesFed(s seen, place string, floors map[string][]*row) *service {
	if restWords.in(join.Fold(place)) {
		return &service{at: s, rest: true}
	}
	parts := slices.Clone(listParts.Of(place, byWords))
	for i, part := range parts { // "the stands and the lockers"
		words := strings.Fields(part)
		for len(words) > 1 && articleWords.begins(join.Fold(words[0])) {
			words = words[1:]
		}
		for len(words) > 1 && kindInWords(words[len(words)-1]) == loudspeakerRow {
			words = words[:len(words)-1]
		}
		parts[i] = strings.Join(words, " ")
	}
	s.text, s.field = strings.Join(parts, ", "), vocabulary.Room
	if v := b.listOfPlaces(s); v != nil {
		return v
	}
	if rows := floors[s.key()]; len(rows) > 0 {
		return &service{at: s, rows: rows}
	}
	return nil
}

// rowsOfFloors are the rows of loudspeakers by the keys of their floors and buildings.
func (b *builder) rowsOfFloors() map[string][]*row {
	out := make(map[string][]*row)
	b.each(loudspeakerRow, func(r *row) {
		for _, f := range []vocabulary.Field{vocabulary.Floor, vocabulary.Building} {
			if s := r.say(f); s.had() {
				out[s.key()] = append(out[s.key()], r)
			}
		}
	})
	return out
}

// ampCode is the short code of an amplifier: "A", "AMP-G", "V-2", "LB-V1", "LV1", but not the model "QX-480".
var ampCode = regexp.MustCompile(`^(?:[A-Z]|\p{Lu}{1,4}-(?:[A-Z]|\d{1,2}|\p{Lu}\d{1,2})|\p{Lu}{2,3}1?\d)$`)

// codeOfAmp is the code behind the word for an amplifier in a text that states its watts, where its
// row does not: "AMP-G" of "Amplifier AMP-G, 120 W"; "" if there is none.
func codeOfAmp(text string, rated bool) string {
	if !rated && !mayStateWatts(text) {
		return ""
	}
	words := strings.Fields(text)
	for i := 0; i+1 < len(words) && i < longestKind; i++ {
		if code := strings.Trim(words[i+1], ",;:()"); notation.SpeaksOfAmplifier(words[i]) && ampCode.MatchString(code) {
			return code
		}
	}
	return ""
}
