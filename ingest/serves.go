package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A list of outputs or of controls says what each of them serves: a zone,
// several in one cell ("zones 1, 2", "Skate hire + Lockers"), rooms where the
// loudspeakers name rooms, tags of loudspeakers ("S5 - S7"), or all there is.

// A service is what a row of an output or a control serves, beyond the one
// zone that it may name.
type service struct {
	at    seen
	zones []string // names of zones, as written
	rooms []string
	tags  []string
	rows  []*row // rows of loudspeakers that it names by their items
	all   bool
	rest  bool // all that no other statement names
}

// between are what stands between the names of a list.
var (
	listMarks = regexp.MustCompile(`\s*[,;+&\n]\s*`)
	listWords = regexp.MustCompile(`(?i)\s+(?:and|und|et|y|e|en|plus|sowie)\s+`)
	slashMark = regexp.MustCompile(`\s*/\s*`)
	numbersTo = regexp.MustCompile(`(?i)^(.*?)(\d{1,2})\s*(?:-|–|\.\.+|to|bis|à|a|al|t/m|tot)\s*(\d{1,2})$`)
)

// serviceOf finds what a row serves; nil if it says nothing, or no more than
// the one zone that its own column names.
func (b *builder) serviceOf(r *row) *service {
	if tags, at := b.servedTags(r); len(tags) > 0 {
		return &service{at: at, tags: tags}
	}
	if r.feeds != nil {
		return r.feeds
	}
	if v := b.servedNumbers(r); v != nil {
		return v
	}
	if v := b.actedOn(r); v != nil {
		return v
	}
	if r.kind == controlRow {
		if v := b.servedItems(r); v != nil {
			return v
		}
		if v := b.servedEnding(r); v != nil {
			return v
		}
		if v := b.servedRoomNumbers(r); v != nil {
			return v
		}
		for _, s := range []seen{r.own(vocabulary.Zone), r.own(vocabulary.To)} {
			if v := b.roomInZone(s); v != nil {
				return v
			}
		}
	}
	cells := []seen{r.zoneText()}
	if !cells[0].had() {
		cells = []seen{r.say(vocabulary.Room), r.own(vocabulary.To), r.own(vocabulary.Describe)}
		switch {
		case r.kind == controlRow && len(b.dir.controls) > 0:
			cells = cells[1:] // where it hangs; what hangs behind it, the loudspeakers say
		case r.kind == amplifierRow && r.t.ampsStandSomewhere():
			cells = cells[1:]
		}
	}
	if c := b.placeColumn(r.t); c != nil && !cells[0].had() {
		s := r.at(c)
		s.field = vocabulary.Room
		cells = append(cells, s)
	}
	for _, s := range cells {
		if !s.had() || s.field == vocabulary.To && r.kind == cableRow {
			continue
		}
		if allWords.in(join.Fold(s.text)) && !namesPlace(b.places.zones, join.Zone, s.text) {
			if v := b.wholePlace(r, s); v != nil {
				return v
			}
			if countWords(s.text) <= 3 {
				return &service{at: s, all: true}
			}
		}
		if v := b.listOfPlaces(s); v != nil {
			return v
		}
		if v := b.shortPlace(r, s); v != nil {
			return v
		}
		if v := b.placeButSmallWords(s); v != nil {
			return v
		}
		if r.kind == channelRow || r.kind == amplifierRow && s.field != vocabulary.Room {
			if v := b.floorServed(r, s); v != nil {
				return v
			}
		}
		if v := b.zoneInOtherWords(r, s); v != nil {
			return v
		}
	}
	if r.kind == controlRow {
		return b.placeMentioned(r)
	}
	return nil
}

// placeMentioned is the one place that the description of a control names among
// other words: "wall control 30 W for the loudspeakers of the corridors".
func (b *builder) placeMentioned(r *row) *service {
	for _, f := range []vocabulary.Field{vocabulary.Describe, vocabulary.Notes} {
		if s := r.own(f); s.had() {
			if v := b.placeIn(s); v != nil {
				return v
			}
		}
	}
	return nil
}

// servedItems are the rows of loudspeakers that a control's row refers to by
// their items: "for the loudspeakers of item C", "Pos. 3".
func (b *builder) servedItems(r *row) *service {
	if !r.t.has(vocabulary.Item) {
		return nil
	}
	for _, c := range r.t.columns {
		s := r.at(c)
		if !s.had() || c.Field == vocabulary.Item {
			continue
		}
		v := service{at: s}
		for _, ref := range notation.ItemRefs(s.text) {
			for _, o := range r.t.rows {
				if o != r && o.kind == loudspeakerRow && o.out == "" && o.own(vocabulary.Item).key() == join.Key(ref) {
					v.rows = append(v.rows, o)
				}
			}
		}
		if len(v.rows) == 0 && c.Field != vocabulary.Describe {
			v.rows = b.itemsBehindWords(r, s.text)
		}
		if len(v.rows) > 0 {
			return &v
		}
	}
	return nil
}

// rowsOfItems are the rows of loudspeakers whose items a text refers to.
func (b *builder) rowsOfItems(text string) []*row {
	var out []*row
	for _, ref := range notation.ItemRefs(text) {
		b.each(loudspeakerRow, func(r *row) {
			if item := r.own(vocabulary.Item); item.had() && item.key() == join.Key(ref) {
				out = append(out, r)
			}
		})
	}
	return out
}

// servedTags are the tags of loudspeakers of other tables that a cell of a row
// lists.
func (b *builder) servedTags(r *row) ([]string, seen) {
	if r.kind == cableRow {
		return nil, seen{}
	}
	for _, c := range r.t.columns {
		s := r.at(c)
		named := strings.ContainsFunc(s.text, isLetter) || r.kind == controlRow && slices.Contains(vocabulary.NewScorer().Concepts(c.Header), "speaker")
		if !s.had() || !anyDigit(s.text) || !named || len(s.text) > 200 {
			continue
		}
		tags, err := notation.ParseTags(s.text)
		if err != nil {
			continue
		}
		hits := 0
		for _, tag := range tags.List {
			k := join.Key(tag)
			list, group := b.dir.devices[k], b.dir.groups[k]
			if len(list) > 0 && list[0].kind == loudspeakerRow && list[0].t != r.t || group != nil && group.t != r.t {
				hits++
			}
		}
		if hits > 0 && hits*10 >= len(tags.List)*8 {
			return tags.List, s
		}
	}
	return nil, seen{}
}

func isLetter(r rune) bool { return r >= 'A' && r <= 'Z' || r >= 'a' && r <= 'z' || r > 0x7f }

// serves reports whether rows of a kind serve something.
func (k deviceKind) serves() bool { return k == channelRow || k == amplifierRow || k == controlRow }

// collectService adds the places that a row serves to the names of zones and rooms.
func (b *builder) collectService(r *row) {
	r.service = b.serviceOf(r)
	if r.service == nil {
		if z := b.placeText(r); z.had() {
			b.zoneNames.Refer(z.text)
		}
		return
	}
	for _, z := range r.service.zones {
		b.zoneNames.Refer(z)
	}
	for _, room := range r.service.rooms {
		b.places.roomNames.Refer(room)
	}
}

// zonesServed are the zones that a row of an output or a control names.
func (b *builder) zonesServed(r *row) []*schedule.Zone {
	var out []*schedule.Zone
	if r.service == nil {
		if z := b.zoneOf(r); z != nil {
			out = append(out, z)
		}
		return out
	}
	for _, name := range r.service.zones {
		if z := b.zone(r.service.at, name); z != nil && !slices.Contains(out, z) {
			out = append(out, z)
		}
	}
	return out
}

// applyServices hangs loudspeakers that name no output or no control on those
// that say that they serve them.
func (b *builder) applyServices() {
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.out == "" && r.used && r.service != nil {
				b.applyService(r)
			}
		}
	}
	b.dropStandIns()
}

func (b *builder) applyService(r *row) {
	var channel *schedule.Channel
	var control *schedule.Control
	if r.kind == controlRow {
		if name := b.ownControlName(r); name.had() {
			control = b.controls[b.controlNames.Find(name.text).Key]
		} else if r.control != nil {
			control = r.control
		}
	}
	if list := b.channelsOf(r); len(list) == 1 && control == nil {
		channel = list[0]
	}
	b.serve(r.service, channel, control)
}

// serve hangs what a service names, and names none itself, on a channel or a control.
func (b *builder) serve(v *service, channel *schedule.Channel, control *schedule.Control) {
	rooms := make(map[string]bool)
	for _, name := range v.rooms {
		if f := b.places.roomNames.Find(name); f.Key != "" && f.Match != join.Unclear {
			rooms[f.Key] = true
		}
	}
	tags := make(map[string]bool)
	for _, tag := range v.tags {
		tags[join.Key(tag)] = true
	}
	rows := make(map[*row]bool)
	for _, r := range v.rows {
		rows[r] = true
	}
	for _, l := range b.job.Loudspeakers {
		served := v.all || rows[b.origin[l]]
		if l.Room.Had() && len(rooms) > 0 {
			served = served || rooms[b.places.roomNames.Find(l.Room.Value).Key]
		}
		some := 0
		for _, tag := range l.Tags {
			if tags[join.Key(tag)] {
				some++
			}
		}
		if !served && some == 0 {
			continue
		}
		if !served && some < len(l.Tags) {
			b.ask(l.At, "control", "“"+short(v.at.text)+"” serves "+itoa(some)+" of these "+itoa(len(l.Tags))+" loudspeakers: what do the others hang on? All are taken for served.", "what it carries")
		}
		if channel != nil && l.Channel == nil {
			l.Channel = channel
			b.servedBy(l, "channel", channel.Label(), v)
		}
		ticked := control != nil && len(v.rows) > 0 && standsIn(l.Control) && !standsIn(control) // "x" beside the loudspeaker, its name in the list of controls
		if control != nil && (l.Control == nil || ticked) && !b.origin[l].saysNoControl() {
			if ticked {
				b.stoodIn = append(b.stoodIn, l.Control)
			}
			l.Control = control
			b.servedBy(l, "control", control.Name, v)
		}
	}
}

// servedBy says of a loudspeaker what it was hung on where that does not
// follow from its tag.
func (b *builder) servedBy(l *schedule.Loudspeaker, what, name string, v *service) {
	if len(v.tags) > 0 {
		return
	}
	r := b.origin[l]
	s := seen{t: r.t, source: schedule.Source{At: l.At, Written: v.at.text}}
	b.take(s, what, name, schedule.Computed, "it serves “"+short(v.at.text)+"”")
}

// dropStandIns takes away the controls without tags that listed ones have replaced at all their loudspeakers, where nothing else
// hangs on them.
func (b *builder) dropStandIns() {
	if len(b.stoodIn) == 0 {
		return
	}
	drop := make(map[*schedule.Control]bool)
	for _, c := range b.stoodIn {
		drop[c] = true
	}
	for _, l := range b.job.Loudspeakers {
		delete(drop, l.Control)
	}
	for _, c := range b.job.Controls {
		delete(drop, c.Parent)
	}
	for _, c := range b.job.Cables {
		for _, k := range []*schedule.Control{c.Control, c.From.Control, c.To.Control} {
			delete(drop, k)
		}
	}
	b.job.Controls = slices.DeleteFunc(b.job.Controls, func(c *schedule.Control) bool { return drop[c] })
}
