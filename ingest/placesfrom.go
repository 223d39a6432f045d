package ingest

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// placesFromTags are the columns of the two ends of such cables whose lines begin at tags of any letters, "AC1", which
// the rest of the list tells the outputs of; nil if the table has none.
func (t *table) placesFromTags() (from, to *column) {
	if len(t.byField[vocabulary.From]) != 1 || len(t.byField[vocabulary.Room]) != 1 || t.has(vocabulary.To) || t.has(vocabulary.Tag) || !t.watted() {
		return nil, nil
	}
	from, to = t.byField[vocabulary.From][0], t.byField[vocabulary.Room][0]
	far := t.endsIn(to)
	cells, chained, tags := 0, 0, true
	t.eachText(from, func(text string) {
		cells++
		if far.names[join.Key(text)] {
			chained++
		} else {
			tags = tags && isTag(text) && anyDigit(text)
		}
	})
	if !far.each || !tags || chained == 0 || chained == cells || float64(chained) < leastChained*float64(cells) {
		return nil, nil
	}
	return from, to
}

// placesOnOutputs are the columns of the two ends of cables from place to place whose rows name their outputs too, so that
// what stands at the head of a line may be anything that is no place of the list: "Cabinet -> Pool north | A1/1", "Pool
// north -> Pool south | A1/1"; nil if the table has none.
func (t *table) placesOnOutputs() (from, to *column) {
	if len(t.byField[vocabulary.From]) != 1 || len(t.byField[vocabulary.Room]) != 1 || t.has(vocabulary.To) || !t.has(vocabulary.Length) ||
		!t.has(vocabulary.Channel) && !t.has(vocabulary.Circuit) || !t.watted() {
		return nil, nil
	}
	from, to = t.byField[vocabulary.From][0], t.byField[vocabulary.Room][0]
	far := t.endsIn(to)
	output := make(map[string]string) // by place
	outputOf := func(r *row) string {
		return join.Key(r.own(vocabulary.Amplifier).text) + " " + join.Key(r.own(vocabulary.Channel).text) + " " + join.Key(r.own(vocabulary.Circuit).text)
	}
	for _, r := range t.rows {
		if r.Class == layout.Device {
			output[r.at(to).key()] = outputOf(r)
		}
	}
	cells, chained := 0, 0
	for _, r := range t.rows {
		near := r.at(from)
		if r.Class != layout.Device || !near.had() {
			continue
		}
		cells++
		if !far.names[near.key()] {
			continue
		}
		if chained++; near.key() == r.at(to).key() || output[near.key()] != outputOf(r) {
			return nil, nil // a cable does not lead on to another output
		}
	}
	if !far.each || chained == 0 || chained == cells || float64(chained) < leastChained*float64(cells) {
		return nil, nil
	}
	return from, to
}

// branchesAt keeps the near ends of cables from place to place where their lines do not run from row to row: "AC1 ->
// Foyer", "Foyer -> Cloakroom", "Foyer -> Stairs".
func (t *table) branchesAt(from, to *column) {
	before, ends := "", make(map[string]bool)
	for _, r := range t.rows {
		if r.Class != layout.Device || !r.at(to).had() {
			continue
		}
		if near := r.at(from).key(); before != "" && near != before && ends[near] {
			t.placesFrom = from
			return
		}
		before = r.at(to).key()
		ends[before] = true
	}
}

// nearPlaces resolves such near ends, once all loudspeakers are there: the loudspeakers at the place before, else
// what else goes by the name. Where one of a table is not found, its cables run from row to row.
func (b *builder) nearPlaces() {
	ends := make(map[*schedule.Loudspeaker]schedule.End)
	lost := make(map[*table]bool)
	for _, l := range b.job.Loudspeakers {
		r := b.origin[l]
		if r.t.placesFrom == nil || l.Run == nil || l.Run.To.Loudspeaker != l {
			continue
		}
		s := r.at(r.t.placesFrom)
		e := schedule.End{Text: s.asText(), Loudspeaker: b.speakersIn(s.key())}
		if e.Loudspeaker == nil {
			if e = b.end(r, s); !e.Resolved() && l.Channel != nil {
				e.Channel, e.Amplifier = l.Channel, l.Channel.Amplifier // what stands at the head of its line feeds it
			}
		}
		if !e.Resolved() || e.Loudspeaker == l || e.Zone != nil {
			lost[r.t] = true
		}
		ends[l] = e
	}
	for _, l := range b.job.Loudspeakers {
		if e, ok := ends[l]; ok && !lost[b.origin[l].t] {
			l.Run.From, l.Run.Reach = e, schedule.FromTo
		}
	}
}
