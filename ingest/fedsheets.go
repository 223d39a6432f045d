package ingest

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// A sheet for each wing, and on another sheet a list of what feeds them, which calls them a little otherwise:
// "Amplifier | Line to" over "V1 | wing A", beside the sheets "A" and "Outside".

// sheetsByEnd are lists of loudspeakers by the names of their sheets, and these names by their last words.
type sheetsByEnd struct {
	lists map[string][]*table
	names map[string][]string
}

// fedSheets takes the names of sheets of loudspeakers for their zones where a list of amplifiers or cables names
// them as what each leads to, and no list of loudspeakers names a zone, an output or a line.
func (b *builder) fedSheets() {
	sheets := sheetsByEnd{make(map[string][]*table), make(map[string][]string)}
	for _, t := range b.tables {
		if t.kind != layout.Loudspeakers && t.kind != layout.Mixed || t.SheetHidden || t.outdated {
			continue
		}
		zoned := slices.ContainsFunc([]vocabulary.Field{vocabulary.Zone, vocabulary.Amplifier, vocabulary.Channel, vocabulary.Circuit}, func(f vocabulary.Field) bool { return t.has(f) || t.sectioned(f) })
		words := strings.Fields(join.Fold(t.Sheet))
		if zoned || len(words) == 0 {
			continue
		}
		if end := words[len(words)-1]; sheets.lists[t.Sheet] == nil {
			sheets.names[end] = append(sheets.names[end], t.Sheet)
		}
		sheets.lists[t.Sheet] = append(sheets.lists[t.Sheet], t)
	}
	if len(sheets.lists) < 2 || len(sheets.lists) > mostKit {
		return
	}
	for _, t := range b.tables {
		if t.kind != layout.Amplifiers && t.kind != layout.Channels && t.kind != layout.Cables || t.has(vocabulary.Zone) || t.SheetHidden || t.outdated || len(t.rows) > mostKit {
			continue
		}
		for _, f := range []vocabulary.Field{vocabulary.To, vocabulary.Room, vocabulary.Circuit, vocabulary.Describe, vocabulary.Building} {
			for _, c := range slices.Clone(t.byField[f]) {
				if fed := t.sheetsIn(c, &sheets); len(fed) > 1 {
					b.zonesBySheet(t, c, fed, &sheets)
					return
				}
			}
		}
	}
}

// sheetsIn are the names of sheets by the keys of the cells of a column that name them, nil where two name one, or
// where bare figures and letters name sheets and not all of the column do: "1", "2", "3" beside the sheets "List 1", "List 2".
func (t *table) sheetsIn(c *column, sheets *sheetsByEnd) map[string]string {
	fed, by := make(map[string]string), make(map[string]string)
	twice, short, others := false, false, false
	t.eachText(c, func(text string) {
		words := strings.Fields(join.Fold(text))
		if len(words) == 0 {
			return
		}
		found := false
		for _, name := range sheets.names[words[len(words)-1]] {
			if !namesSheet(words, strings.Fields(join.Fold(name))) {
				continue
			}
			k := join.Key(text)
			twice = twice || by[name] != "" && by[name] != k || fed[k] != "" && fed[k] != name
			by[name], fed[k], found = k, name, true
			short = short || !hasLongWord(text)
		}
		others = others || !found
	})
	if twice || short && (others || len(by) < len(sheets.lists)) {
		return nil
	}
	return fed
}

// namesSheet reports whether some words are the name of a sheet, or a longer or shorter word stands in one of them for
// the same kind of place: "gebouwdeel A" for "Bouwdeel A", "A" for "Wing A".
func namesSheet(text, sheet []string) bool {
	short, long := text, sheet
	if len(short) > len(long) {
		short, long = long, short
	}
	if len(short) == 0 || short[len(short)-1] != long[len(long)-1] {
		return false
	}
	switch {
	case slices.Equal(short, long):
		return true
	case len(short) == len(long):
		return len(short) == 2 && hasLongWord(short[0]) && hasLongWord(long[0]) && (strings.HasSuffix(short[0], long[0]) || strings.HasSuffix(long[0], short[0]))
	}
	return len(short) == 1 && len(long) == 2 && len(short[0]) < 3 && !titleWords.in(long[0])
}

// zonesBySheet makes the named sheets the zones of their loudspeakers and of the list that names them.
func (b *builder) zonesBySheet(t *table, c *column, fed map[string]string, sheets *sheetsByEnd) {
	t.become(c, vocabulary.Zone, "its cells name the sheets of the loudspeakers")
	for _, r := range t.rows {
		if s := r.at(c); fed[s.key()] != "" && s.key() != join.Key(fed[s.key()]) {
			b.take(s, "zone", fed[s.key()], schedule.LikelierReading, "a sheet is called so")
		}
	}
	c.meant, c.meantBy = fed, "the name of a sheet"
	for _, k := range sortedKeys(fed) {
		name := fed[k]
		for _, list := range sheets.lists[name] {
			list.titles = append(slices.Clip(list.titles), layout.Fact{Field: vocabulary.Zone, Text: name, At: list.columns[0].At.On().Cell(0, 0)})
		}
	}
}
