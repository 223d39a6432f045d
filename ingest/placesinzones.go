package ingest

import (
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// A list of controls names a zone and a place in it in one cell: "Z2 Foyer", "Zone 2 - Foyer".

// roomInZone is what a control serves whose place is a zone and a room of that zone, as the
// loudspeakers name them; nil where it is a zone by itself, or names no such rows.
func (b *builder) roomInZone(s seen) *service {
	text := tidy(s.text)
	if _, whole := b.places.texts[join.Fold(text)]; whole || !s.had() || len(text) > longestTitle || b.places.roomsZones {
		return nil
	}
	for i := range len(text) {
		if text[i] != ' ' && text[i] != ',' && text[i] != '/' {
			continue
		}
		zone, room := strings.TrimRight(text[:i], " ,:/–-"), strings.TrimLeft(text[i:], " ,:/–-")
		if zone == "" || room == "" {
			continue
		}
		if rows := b.rowsInZones()[zoneID(zone)+"\x00"+join.Key(room)]; len(rows) > 0 {
			return &service{at: s, rows: rows}
		}
	}
	return nil
}

// zoneID is the number of a zone that has no other name, else its key: the same for "Zone 2" and "2".
func zoneID(name string) string {
	if n := join.Parse(join.Zone, name); n.Number != "" && n.Title == "" {
		return n.Number
	}
	return join.Key(name)
}

// rowsInZones are the rows of loudspeakers by their zone and their room.
func (b *builder) rowsInZones() map[string][]*row {
	if b.places.inZones != nil {
		return b.places.inZones
	}
	b.places.inZones = make(map[string][]*row)
	for _, t := range b.tables {
		for _, r := range t.rows {
			zone, room := r.zoneText(), r.say(vocabulary.Room)
			if r.kind != loudspeakerRow || r.out != "" || !zone.had() || !room.had() {
				continue
			}
			k := zoneID(zone.text) + "\x00" + room.key()
			b.places.inZones[k] = append(b.places.inZones[k], r)
		}
	}
	return b.places.inZones
}
