package ingest

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// siteOfClient takes for the site what is named for the client where that is a place in two
// words or more and no title names one: "Client | Fern Hill Stables".
func (b *builder) siteOfClient() {
	if b.job.Site.Had() || b.job.Name.Had() {
		return
	}
	for i := range b.facts {
		f := &b.facts[i]
		key, _, _ := strings.Cut(f.Key, "/")
		if f.Field != vocabulary.Client && !clientWords.in(join.Fold(key)) {
			continue
		}
		s := factSeen(f)
		if place := placeIn(s.text); isPlace(place) && countWords(place) > 1 {
			s.text = place
			b.job.Site = s.asText()
			b.take(s, "site", place, schedule.LikelierReading, "the client is called like a place, and nothing else names one")
			return
		}
	}
}

// siteInNotes takes for the site the place with which a note begins, or the title of a first sheet
// without a table, where no title names one: "Fern Hill Library, amplifier 60 W in the office".
// What is the zone or room of a row is none.
func (b *builder) siteInNotes() {
	if b.job.Site.Had() || b.job.Name.Had() {
		return
	}
	for _, s := range b.spoken {
		head := titleBreaks.Split(s.text, 2)[0]
		if len(s.text) > longestSpoken || countWords(head) > longestSiteName || anyDigit(head) {
			continue
		}
		place := placeIn(head)
		if place != strings.TrimSpace(head) || !isPlace(place) || countWords(place) < 2 || b.namesZone(place, s.at.Sheet()) || b.isRoom(place) {
			continue
		}
		at := seen{text: place, field: vocabulary.Site, source: schedule.Source{At: s.at, Written: s.text, How: schedule.FromTitle}}
		b.job.Site = at.asText()
		b.take(at, "site", place, schedule.LikelierReading, "a note begins with it, and no title names a place")
		return
	}
}

// otherBuilding reports whether another title names another building: each has its list.
func (b *builder) otherBuilding(f *layout.Fact) bool {
	return slices.ContainsFunc(b.facts, func(o layout.Fact) bool {
		return o.Field == vocabulary.Building && join.Key(o.Text) != join.Key(f.Text)
	})
}

// longestSiteName is the most words of the name of a site.
const longestSiteName = 6

// isRoom reports whether a row stands in a room, or in a zone or building, called so.
func (b *builder) isRoom(name string) bool {
	key := join.Key(name)
	for _, t := range b.tables {
		for _, r := range t.rows {
			for _, f := range []vocabulary.Field{vocabulary.Room, vocabulary.Zone, vocabulary.Building} {
				if s := r.say(f); s.had() && s.key() == key {
					return true
				}
			}
		}
	}
	return false
}
