package ingest

import (
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A column of controls may say of each no more than where in its room it hangs and what it may carry: "next to the door,
// 35 W" in the hall and "next to the door, 10 W" in the office are two controls.

// A hungWhere is what rows say of the controls at places of one description.
type hungWhere struct {
	watts, rooms map[string]bool
}

// oneInEach reports whether what says where a control hangs is said of one in each of several rooms: their ratings differ,
// or the words are for what each room has of its own, as a door.
func (b *builder) oneInEach(where string) bool {
	if b.whereHung == nil {
		b.whereHung = make(map[string]*hungWhere)
		b.each(loudspeakerRow, b.noteWhere)
	}
	h := b.whereHung[join.Key(where)]
	return h != nil && len(h.rooms) > 1 && (len(h.watts) > 1 || ownPlaceWords.in(join.Fold(where)))
}

// noteWhere notes where the control of a row hangs, where its column says no more.
func (b *builder) noteWhere(r *row) {
	s := r.own(vocabulary.Control)
	if !s.had() || !saysOnlyWhere(s.text) {
		return
	}
	cell := notation.ParseControlCell(s.text)
	k := join.Key(cell.Name)
	if b.whereHung[k] == nil {
		b.whereHung[k] = &hungWhere{watts: make(map[string]bool), rooms: make(map[string]bool)}
	}
	watts := cell.Watts
	if w := r.own(vocabulary.ControlWatts); w.had() {
		watts = w.text
	}
	if watts != "" {
		b.whereHung[k].watts[join.Key(watts)] = true
	}
	b.whereHung[k].rooms[r.zoneText().key()+"\n"+r.own(vocabulary.Room).key()] = true
}
