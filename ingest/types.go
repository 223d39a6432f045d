package ingest

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A typeEntry is what a type schedule says of a model or type mark.
type typeEntry struct {
	name    string
	tap     tapped
	offered []schedule.TapOffer
	rated   schedule.Quantity[schedule.Watts]
	ohms    schedule.Quantity[schedule.Ohms]
	model   schedule.Text
	mount   schedule.Text
	count   schedule.Quantity[schedule.Pieces] // how many there should be
	row     *row
	rows    []*schedule.Loudspeaker
}

// addType enters a row of a type schedule under every name it gives.
func (b *builder) addType(r *row) {
	if b.conductorOfLegend(r) {
		return
	}
	e := &typeEntry{row: r}
	var names []seen
	for _, f := range []vocabulary.Field{vocabulary.Tag, vocabulary.Model, vocabulary.Kind, vocabulary.Describe, vocabulary.Item} {
		s := r.own(f)
		if !s.had() {
			continue
		}
		if f == vocabulary.Model {
			e.model = s.asText()
		}
		if len(names) == 0 || f == vocabulary.Model || f == vocabulary.Tag {
			names = append(names, s)
		}
	}
	if len(names) == 0 {
		r.out, r.reason = schedule.NotUnderstood, "no name of a type"
		return
	}
	e.name = names[0].text
	e.tap = b.tap(r, float64(b.job.LineVolts.Low))
	b.askTapsAtVolts(&e.tap)
	e.offered = b.offers(r.own(vocabulary.TapList))
	e.offered = append(e.offered, e.tap.offered...)
	e.rated = b.watts(r.own(vocabulary.RatedWatts)).Or(e.tap.rated)
	e.ohms = b.ohms(r.own(vocabulary.Impedance))
	e.mount = r.own(vocabulary.Mounting).asText()
	e.count, _ = b.pieces(r.own(vocabulary.Quantity))
	for _, n := range names {
		if k := n.key(); b.types[k] == nil {
			b.types[k] = e
		}
	}
	r.used = true
}

// typeOf finds the type that a row of loudspeakers names.
func (b *builder) typeOf(r *row) *typeEntry {
	if len(b.types) == 0 {
		return nil
	}
	for _, f := range []vocabulary.Field{vocabulary.Model, vocabulary.Kind, vocabulary.Tag, vocabulary.Describe} {
		if s := r.own(f); s.had() {
			if e := b.types[s.key()]; e != nil {
				return e
			}
			if word, rest, ok := strings.Cut(tidy(s.text), " "); ok && slices.Contains(vocabulary.NewScorer().Concepts(word), "type") { // "Type L1"
				if e := b.types[join.Key(rest)]; e != nil {
					return e
				}
			}
		}
	}
	return nil
}

// demoteSummaries finds tables that list again what other tables list one by
// one: a row a zone above a list of the zones' loudspeakers, or a bill by type
// beside a list by place. They become zones and types, so that nothing counts twice.
func (b *builder) demoteSummaries() {
	var lists []*table
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.kind == loudspeakerRow && r.out == "" {
				lists = append(lists, t)
				break
			}
		}
	}
	if len(lists) < 2 {
		return
	}
	shapes := make([]listShape, len(lists))
	for i, t := range lists {
		shapes[i] = shapeOf(t)
	}
	for i, t := range lists {
		for k := range lists {
			if i == k {
				continue
			}
			s, o := &shapes[i], &shapes[k]
			switch {
			case s.byZone && !o.byZone && o.rows > s.rows && shared(s.zones, o.zones)*2 > len(s.zones):
				demote(t, zoneRow)
			case s.noPlace && o.placed && shared(s.types, o.types)*2 > len(s.types) && len(s.types) == s.rows:
				demote(t, typeRow)
			case s.noPlace && o.placed && countsAgain(t, lists[k]):
				demote(t, typeRow)
			}
		}
	}
	b.pricesCountAgain(lists, shapes)
}

// mostKit is the most rows of a list of kit by type; what is longer is a list by place.
const mostKit = 100

// countsAgain reports whether every loudspeaker row of a table without taps counts what another
// table lists place by place: "10 W projector, 14" beside rooms whose projectors are 14.
func countsAgain(t, o *table) bool {
	if t.has(vocabulary.Tap) || len(t.rows) > mostKit {
		return false
	}
	rows := 0
	for _, r := range t.rows {
		if r.kind != loudspeakerRow || r.out != "" {
			continue
		}
		sum := 0
		words := r.typeWords()
		for _, other := range o.rows {
			if other.kind == loudspeakerRow && other.out == "" && shared(words, other.typeWords()) > 0 {
				sum += countIn(other)
			}
		}
		if sum == 0 || sum != countIn(r) {
			return false
		}
		rows++
	}
	return rows > 0
}

// countIn is the whole number in a row's count, 0 if there is none.
func countIn(r *row) int {
	q, err := notation.ParseQuantity(r.own(vocabulary.Quantity).text, notation.Auto)
	if err != nil {
		return 0
	}
	return q.Count
}

// leastTypeWord is the fewest letters of a word that tells what a loudspeaker is.
const leastTypeWord = 4

// typeWords are the words of a row that may tell what its loudspeakers are, without figures.
func (r *row) typeWords() map[string]bool {
	words := make(map[string]bool)
	for _, f := range []vocabulary.Field{vocabulary.Model, vocabulary.Describe, vocabulary.Kind, vocabulary.Item} {
		for w := range strings.FieldsSeq(join.Fold(r.own(f).text)) {
			if w = strings.Trim(w, ".,;:()"); len(w) >= leastTypeWord && !anyDigit(w) && vocabulary.DeviceIn(w) != vocabulary.OtherDevice {
				words[w] = true
			}
		}
	}
	return words
}

// demote makes the loudspeaker rows of a table rows of another kind.
func demote(t *table, kind deviceKind) {
	for _, r := range t.rows {
		if r.kind == loudspeakerRow {
			r.kind = kind
		}
	}
}

// A listShape is what demoteSummaries looks at.
type listShape struct {
	rows         int
	zones, types map[string]bool
	byZone       bool // each row another zone, no tags or models of single devices
	noPlace      bool // no row says where, or what feeds it
	unplaced     bool // no row says where
	placed       bool // every row says where
}

func shapeOf(t *table) listShape {
	s := listShape{zones: make(map[string]bool), types: make(map[string]bool), noPlace: true, unplaced: true, placed: true, byZone: true}
	for _, r := range t.rows {
		if r.kind != loudspeakerRow || r.out != "" {
			continue
		}
		s.rows++
		z := r.zoneText()
		zone := ""
		if z.had() {
			n := join.Parse(join.Zone, z.text)
			zone = n.Number + " " + n.Title
		}
		if zone == "" || s.zones[zone] || r.own(vocabulary.Tag).had() || r.own(vocabulary.Model).had() || !r.own(vocabulary.Quantity).had() {
			s.byZone = false
		}
		s.zones[zone] = true
		s.unplaced = s.unplaced && !z.had() && !r.say(vocabulary.Room).had()
		if z.had() || r.say(vocabulary.Room).had() || r.say(vocabulary.Channel).had() || r.say(vocabulary.Control).had() {
			s.noPlace = false
		} else {
			s.placed = false
		}
		for _, f := range []vocabulary.Field{vocabulary.Model, vocabulary.Tag, vocabulary.Kind} {
			if x := r.own(f); x.had() {
				s.types[x.key()] = true
				break
			}
		}
	}
	return s
}

func shared(a, b map[string]bool) int {
	n := 0
	for k := range a {
		if b[k] {
			n++
		}
	}
	return n
}
