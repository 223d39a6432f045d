package ingest

import (
	"regexp"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A note about cables may list the length of each place, with one size for all and another for
// some: "Cable: 2C x 1.5 sq.mm. Zone-1 - 85 m, Zone-2 - 140 m, Zone-3 - 320 m (2C x 2.5 sq.mm)".

// placeLength is a place or a line with the length of its cable behind it, and perhaps its size.
var placeLength = regexp.MustCompile(`(?i)([\pL\d][\pL\d '/-]*?)\s*(?:[-–:=~≈]|\s)\s*(?:(?:about|approx|ca|circa|etwa|ungef|env|environ|unos|aprox|ongeveer|ong)\b\.?\s*|[~≈]\s*)?(\d+(?:[.,]\d+)?\s*(?:m|mtrs?|met(?:re|er|ro)s?|metri|ft|feet|')\.?)(?:\s*\(([^()]*)\)|\s+((?:\d\s?[x×]\s?)\d+(?:[.,]\d+)?(?:\s?mm²?)?|\d+(?:[.,]\d+)?\s?mm²?|\d{1,2}\s?awg|awg\s?\d{1,2}))?(?:[,;.]|\s[-–]\s|$)`)

// lengthsSaid reads such a note; it reports whether it is one: two places or lines at least, all of
// which rows name.
func (b *builder) lengthsSaid(s spoken) bool {
	if !anyDigit(s.text) || !join.HasWord(join.Cable, s.text) && !cablesWords.in(join.Fold(s.text)) {
		return false
	}
	found := placeLength.FindAllStringSubmatchIndex(s.text, -1)
	if len(found) < 2 {
		return false
	}
	at := seen{field: vocabulary.Length, source: schedule.Source{At: s.at, Written: s.text, How: schedule.FromTitle}}
	sized := func(text string) seen {
		if _, _, ok := notation.ConductorIn(text, notation.Auto); !ok {
			return seen{}
		}
		size := at
		size.text = text
		return size
	}
	all := sized(s.text[:found[0][0]])
	var lines []spokenLine
	for _, m := range found {
		name := s.text[m[2]:m[3]]
		line := spokenLine{name: spoken{at: s.at, text: name}, length: at, size: all}
		if place := b.placesIn(at, name); len(place.zones) == 1 && len(place.rooms)+len(place.tags)+len(place.rows) == 0 {
			line.zone = place.zones[0]
		} else if named := b.lineNamed(name); named != "" {
			line.key, line.name.text = join.Key(named), named
		} else {
			return false
		}
		line.length.text = s.text[m[4]:m[5]]
		for _, g := range []int{6, 8} { // in brackets or not
			if m[g] >= 0 {
				line.size = sized(s.text[m[g]:m[g+1]])
			}
		}
		lines = append(lines, line)
	}
	b.spokenLines = append(b.spokenLines, lines...)
	return true
}
