package ingest

import (
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// speakerNumbers takes the column of a list of controls or outputs that its header says numbers loudspeakers, "for
// speaker no.", for the items that hang on each, where each of its numbers is one of an item in another list.
func speakerNumbers(tables []*table) {
	items := make(map[string]*table)
	for _, t := range tables {
		if t.kind == layout.Loudspeakers && t.has(vocabulary.Item) && !t.has(vocabulary.Tag) {
			for _, c := range t.byField[vocabulary.Item] {
				t.eachText(c, func(text string) { items[join.Key(text)] = t })
			}
		}
	}
	if len(items) == 0 {
		return
	}
	for _, t := range tables {
		if t.kind != layout.Controls && t.kind != layout.Channels && t.kind != layout.Amplifiers {
			continue
		}
		for _, c := range t.columns {
			if c.Field != vocabulary.Item && (c.Field != vocabulary.Quantity || c.Confidence >= sureHeader) && c.Field != vocabulary.Unknown || !layout.NumbersSpeakers(c.Header) {
				continue
			}
			all := true
			t.eachText(c, func(text string) {
				for _, part := range listParts.Of(text, byWords) {
					all = all && items[join.Key(part)] != nil && items[join.Key(part)] != t
				}
			})
			if !all || t.has(vocabulary.Item) && c.Field != vocabulary.Item {
				continue
			}
			if c.Field != vocabulary.Item {
				t.become(c, vocabulary.Item, "its numbers are items of the list of loudspeakers")
			}
			t.itemLists = &all
			break
		}
	}
}
