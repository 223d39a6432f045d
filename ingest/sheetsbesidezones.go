package ingest

import (
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// A book may have a sheet for each part of a place, of which only some are parted further: the platforms of a station by
// zones, but its building not.

// namesZones reports whether a column, a title or sections of a table name zones.
func (t *table) namesZones() bool {
	return t.has(vocabulary.Zone) || t.title(vocabulary.Zone).had() || t.sectioned(vocabulary.Zone) || t.sectionAs == vocabulary.Zone
}

// sheetsBesideZones takes the name of a sheet for the zone of its loudspeakers where lists of other sheets name zones, this
// one names none, and the name of the sheet stands again in a cell of its own above it: "Station building". A sheet that is
// called after a kind of thing or a rack is none.
func (b *builder) sheetsBesideZones() {
	zoned := make(map[string]bool) // sheets with a list that names zones
	var lists []*table
	for _, t := range b.tables {
		switch {
		case t.kind != layout.Loudspeakers && t.kind != layout.Mixed || t.SheetHidden || t.outdated:
		case t.namesZones():
			zoned[t.Sheet] = true
		default:
			lists = append(lists, t)
		}
	}
	for _, t := range lists {
		f := t.sheetAbove()
		if f == nil || zoned[t.Sheet] || t.ofEquipment() || headsKind(f.Text) || inYear.MatchString(f.Text) {
			continue
		}
		zone := *f
		zone.Field = vocabulary.Zone
		t.titles = append(t.titles[:len(t.titles):len(t.titles)], zone)
		b.take(factSeen(&zone), "zone", zone.Text, schedule.LikelierReading, "the name of the sheet, where other sheets name zones")
	}
}

// sheetAbove is the title above a list that is the name of its sheet, alone or with more behind a mark, as that name; nil if
// there is none.
func (t *table) sheetAbove() *layout.Fact {
	sheet := join.Key(t.Sheet)
	for i := range t.titles {
		f := &t.titles[i]
		switch f.Field {
		case vocabulary.Unknown, vocabulary.Floor, vocabulary.Building, vocabulary.Room:
		default:
			continue
		}
		if f.Key != "" || f.Cell == nil {
			continue
		}
		head := strings.TrimSpace(titleParts.Split(strings.TrimSpace(f.Cell.Text), 2)[0])
		if join.Key(head) != sheet {
			continue
		}
		name := *f
		name.Text = head
		return &name
	}
	return nil
}
