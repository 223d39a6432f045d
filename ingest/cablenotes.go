package ingest

import (
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A sizeOf is the conductors of the cable of a line or place.
type sizeOf struct {
	name  string
	cable *schedule.Cable
	at    schedule.Ref
	used  bool // a cable has it
}

// hearCableNotes reads notes about the conductors of all cables: "All wire 16/2
// except Z4 18/2".
func (b *builder) hearCableNotes() {
	for _, s := range b.spoken {
		note, err := cableNoteIn(s.text)
		if err != nil {
			continue
		}
		at := seen{text: note.Size, field: vocabulary.Gauge, source: schedule.Source{At: s.at, Written: s.text, How: schedule.FromTitle}}
		if all := new(schedule.Cable); b.cableTitle == nil && b.readConductor(all, at, vocabulary.Gauge) {
			b.cableTitle = all
		}
		for _, x := range note.Except {
			at.text = x.Size
			if other := new(schedule.Cable); b.readConductor(other, at, vocabulary.Gauge) {
				b.cableExcept = append(b.cableExcept, sizeOf{name: x.Name, cable: other, at: s.at})
			}
		}
	}
}

// cableNoteIn reads such a note, or the first sentence that is one: "Lines at 70 V. Wire 16 AWG
// unless noted."
func cableNoteIn(text string) (notation.CableNote, error) {
	note, err := notation.ParseCableNote(text, notation.Auto)
	if err == nil || !strings.Contains(text, ". ") {
		return note, err
	}
	for sentence := range strings.SplitSeq(text, ". ") {
		if note, err = notation.ParseCableNote(sentence, notation.Auto); err == nil {
			return note, nil
		}
	}
	return note, err
}

// sizesFromTitle gives cables without a size the one said for all of them, or
// for that of their line or place.
func (b *builder) sizesFromTitle() {
	if b.cableTitle == nil {
		return
	}
	for _, c := range b.job.Cables {
		if c.Area.Had() {
			continue
		}
		t := b.cableTitle
		for _, name := range namesOfCable(c) {
			if x := b.exceptFor(name); x != nil {
				t, x.used = x.cable, true
				break
			}
		}
		c.Area, c.AWG, c.Gauge = t.Area, t.AWG, t.Gauge
		setText(&c.Material, t.Material)
		if c.Parallel == 0 {
			c.Parallel = t.Parallel
		}
	}
	for i := range b.cableExcept {
		if x := &b.cableExcept[i]; !x.used && len(b.job.Cables) > 0 {
			b.ask(x.at, "cable", "which cable is that of “"+short(x.name)+"”?", "the loss on it")
		}
	}
}

// exceptFor is the size said for the line or place of a name, whole or by its
// code: "Z4" for "Z4 Back of house".
func (b *builder) exceptFor(name string) *sizeOf {
	n := join.Parse(join.Zone, name)
	for i := range b.cableExcept {
		x := &b.cableExcept[i]
		except := join.Parse(join.Zone, x.name)
		if join.Key(x.name) == join.Key(name) || n.Number != "" && except.Number == n.Number && except.Title == "" {
			return x
		}
	}
	return nil
}

// namesOfCable are the names of what a cable serves.
func namesOfCable(c *schedule.Cable) []string {
	names := []string{c.Name}
	if c.Zone != nil {
		names = append(names, c.Zone.Name)
	}
	if c.Channel != nil {
		names = append(names, c.Channel.Name, c.Channel.Label())
	}
	if c.Control != nil {
		names = append(names, c.Control.Name)
	}
	if l := c.To.Loudspeaker; l != nil {
		names = append(names, l.Tag.Value, l.Room.Value)
	}
	return names
}
