package ingest

import (
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// control returns the control that a tag names, and makes it when it is new.
func (b *builder) control(s seen, name string) *schedule.Control {
	f := b.controlNames.Find(name)
	if f.Key == "" {
		return nil
	}
	if f.Match == join.Unclear {
		b.unclear(s, "control", name, f.Between)
		return nil
	}
	b.guessed(s, "control", name, f)
	return b.controlByKey(f.Key, f.Name, s.source.At)
}

func (b *builder) controlByKey(key, name string, at schedule.Ref) *schedule.Control {
	c := b.controls[key]
	if c == nil && !b.lookOnly {
		c = &schedule.Control{At: at, Key: key, Name: tidy(name)}
		b.controls[key] = c
		b.job.Controls = append(b.job.Controls, c)
	}
	return c
}

// controlOf is the control that a row of loudspeakers or of a zone names. A
// control that is said to be there without a tag is one for each zone, or for
// each room where there is no zone.
func (b *builder) controlOf(r *row, z *schedule.Zone) *schedule.Control {
	m := b.controlText(r)
	return b.controlSaid(r, &m, z)
}

// controlSaid is controlOf for what is known to be said of it.
func (b *builder) controlSaid(r *row, m *controlMention, z *schedule.Zone) *schedule.Control {
	if !m.any {
		return nil
	}
	if m.as != nil {
		r, z = m.as, b.zoneOf(m.as)
	}
	var c *schedule.Control
	if m.name != "" {
		c = b.control(m.at, m.name)
	} else {
		c = b.unnamedControl(r, *m, z)
	}
	if c == nil || b.lookOnly {
		return c
	}
	setText(&c.Model, m.model.asText())
	setText(&c.Room, m.place.asText())
	if m.rating.had() {
		b.noteControlRating(c, m.rating)
	} else if rating := ratingInRemark(r, c.Name); rating.had() {
		b.noteControlRating(c, rating)
	}
	return c
}

// ratingInRemark is the only power in a remark of a row that names the row's control by its tag and speaks of nothing else:
// "R11 is the big one, 24 W".
func ratingInRemark(r *row, name string) seen {
	if !isTag(name) {
		return seen{}
	}
	for s := range r.every(vocabulary.Notes) {
		if len(s.text) > longestSpoken || len(notation.PowersIn(s.text, notation.Auto)) != 1 || loadWords.in(join.Fold(s.text)) {
			continue
		}
		if d := vocabulary.DeviceIn(s.text); d != vocabulary.NoDevice && d != vocabulary.ControlDevice {
			continue
		}
		named := slices.ContainsFunc(wordsAt(s.text), func(w [2]int) bool { return join.Key(s.text[w[0]:w[1]]) == join.Key(name) })
		if watts, _ := cutWatts(s, s.text); named && watts.had() {
			return watts
		}
	}
	return seen{}
}

// controlsByRoom are the zones of a table whose rooms differ in whether they have a
// control, or in its rating: each room has its own.
func (t *table) controlsByRoom() map[string]bool {
	if t.roomControls != nil {
		return t.roomControls
	}
	t.roomControls = make(map[string]bool)
	first := make(map[string][2]string) // by zone: what a row says of its control, and its room
	for _, r := range t.rows {
		zone, room := r.zoneText().text, r.own(vocabulary.Room)
		if r.out != "" || zone == "" || !room.had() {
			continue
		}
		var said strings.Builder
		said.WriteString(join.Fold(r.own(vocabulary.Control).text) + " " + r.own(vocabulary.ControlWatts).text)
		for s := range r.every(vocabulary.Notes) {
			if m := controlIn(r, s); m.any {
				said.WriteString(" " + m.name + " " + m.rating.text)
			}
		}
		if was, ok := first[zone]; !ok {
			first[zone] = [2]string{said.String(), room.text}
		} else if was[0] != said.String() && was[1] != room.text {
			t.roomControls[zone] = true
		}
	}
	return t.roomControls
}

// titlePlace is what the title of a control calls the place of its loudspeakers.
func titlePlace(r *row, title seen) string {
	for _, f := range []vocabulary.Field{vocabulary.Zone, vocabulary.Room, vocabulary.Circuit, vocabulary.Channel} {
		if s := r.say(f); s.had() && s.source.At == title.source.At {
			return s.text
		}
	}
	return "row " + strconv.Itoa(int(title.source.At.Row))
}

// unnamedKey begins the keys of controls without a tag.
const unnamedKey = "unnamed "

// unnamedControl is the control of a zone or room that has no tag of its own.
func (b *builder) unnamedControl(r *row, m controlMention, z *schedule.Zone) *schedule.Control {
	place, placeKey := "", ""
	room := r.own(vocabulary.Room)
	if m.at.source.How == schedule.FromTitle {
		place, placeKey = titlePlace(r, m.at), "title "+m.at.source.At.String() // one for all below its title
	} else if b.mergedBelow(r, m.at) { // one for all beside its cell
		place, placeKey = room.text, "cell "+m.at.source.At.String()
	} else if z != nil && !(room.had() && r.t.controlsByRoom()[r.zoneText().text]) {
		place, placeKey = z.Name, "zone "+z.Key
	} else if room.had() {
		place, placeKey = room.text, "room "+room.key()
	} else {
		// nothing says whose it is: one for each row
		place, placeKey = "row "+r.Rows.String(), "row "+r.At.String()
	}
	what := "control"
	key := unnamedKey + placeKey
	if m.model.had() {
		what = m.model.text
		key += " " + m.model.key()
	}
	name := what + " (" + place + ")"
	if b.controls[key] == nil && !b.lookOnly {
		at := m.at
		at.source.Written = what
		b.take(at, "control", "one for each zone or room", schedule.LikelierReading, "the schedule names a kind of control, not each one")
	}
	return b.controlByKey(key, name, m.at.source.At)
}

// standsIn reports whether a control is one without a tag, known by its place alone.
func standsIn(c *schedule.Control) bool { return c != nil && strings.HasPrefix(c.Key, unnamedKey) }

// mergedBelow reports whether a cell of a row's table is merged over several rows.
func (b *builder) mergedBelow(r *row, s seen) bool {
	if s.col == nil {
		return false
	}
	merged, known := b.mergedControls[s.col]
	if !known {
		merged = make(map[schedule.Ref]bool)
		for _, o := range r.t.rows {
			if v := &o.Values[s.col.i]; v.Merged {
				merged[v.At] = true
			}
		}
		b.mergedControls[s.col] = merged
	}
	return merged[s.source.At]
}

// addControl makes or completes the controls of a row of controls.
func (b *builder) addControl(r *row) {
	name := b.ownControlName(r)
	zones := b.zonesServed(r)
	var zone *schedule.Zone
	if len(zones) == 1 {
		zone = zones[0]
	}
	var list []*schedule.Control
	if name.had() {
		tags := []string{name.text}
		if t, err := notation.ParseTags(name.text); err == nil && len(t.List) > 1 && !(name.field == vocabulary.Tag && r.t.sharesStem(name.text)) {
			tags = t.List
		}
		for _, tag := range tags {
			if len(tags) == 1 {
				list = append(list, b.control(name, tag))
			} else {
				list = append(list, b.controlByKey(join.Key(tag), tag, name.source.At))
			}
		}
	} else {
		m := controlMention{any: true, at: r.first(vocabulary.Model, vocabulary.ControlModel, vocabulary.Describe, vocabulary.ControlWatts, vocabulary.Zone)}
		if model := r.first(vocabulary.ControlModel, vocabulary.Model); model.had() {
			m.model = model
		}
		if !m.at.had() {
			r.out, r.reason = schedule.NotUnderstood, "no tag, model or rating of a control"
			return
		}
		r.control = b.unnamedControl(r, m, zone)
		list = append(list, r.control)
	}
	for _, c := range list {
		if c == nil {
			r.out, r.reason = schedule.NotUnderstood, "the control’s tag could mean several"
			continue
		}
		r.out, r.used = "", true
		if r.Reason == layout.GuessedControl {
			b.take(name, "control", c.Name, schedule.LikelierReading, layout.GuessedControl)
		}
		b.fillControl(r, c, zone, len(list))
		for _, z := range zones {
			if len(zones) > 1 && z.Control == nil {
				z.Control = c
			}
		}
	}
}

// first is what the first of some fields says that is filled.
func (r *row) first(fields ...vocabulary.Field) seen {
	for _, f := range fields {
		if s := r.own(f); s.had() {
			return s
		}
	}
	return seen{}
}

// fillControl takes over what a row says of its control.
func (b *builder) fillControl(r *row, c *schedule.Control, zone *schedule.Zone, ofMany int) {
	of := "control " + c.Name
	setText(&c.Model, r.first(vocabulary.ControlModel, vocabulary.Model).asText())
	setText(&c.Room, r.said(vocabulary.Room))
	if c.Zone == nil {
		c.Zone = zone
	}
	if list := b.channelsOf(r); len(list) == 1 && c.Channel == nil {
		c.Channel = list[0]
	}
	if r.status != schedule.Installed {
		c.Status = r.status
	}
	if ofMany == 1 {
		n, spare := b.pieces(r.own(vocabulary.Quantity))
		set(b, &c.Count, n, "quantity", of)
		if spare > 0 {
			b.ask(n.At, "quantity", "are the "+itoa(spare)+" spare controls fitted?", "nothing that is counted")
		}
	}
	switch s := r.first(vocabulary.ControlWatts, vocabulary.RatedWatts, vocabulary.ChannelWatts); {
	case s.had():
		b.noteControlRating(c, s)
	case r.own(vocabulary.Tap).had():
		tap := r.own(vocabulary.Tap)
		if b.noteControlRating(c, tap) {
			b.take(tap, "control rating", "the control’s rating", schedule.LikelierReading, "a control has no tap")
		}
	default:
		b.ratingInWords(r, c)
	}
	if s := r.own(vocabulary.LineVoltage); s.had() {
		v, s := b.volts(s)
		for _, x := range v.V {
			c.RatedVolts = append(c.RatedVolts, schedule.Exactly(schedule.Volts(x), s.source))
		}
	}
	if load := b.watts(r.first(vocabulary.Load, vocabulary.TotalWatts)); load.Had() && ofMany == 1 {
		set(b, &c.Stated, load, "stated load", of)
		b.claims.ofControl(c, r)
	} else if groups, _ := b.told(r); len(groups) > 0 && ofMany == 1 {
		b.claims.ofControl(c, r)
	}
	if flag := b.overrideOf(r); flag.Had() {
		c.Override = flag
	}
	for _, f := range []vocabulary.Field{vocabulary.Describe, vocabulary.Notes, vocabulary.Model, vocabulary.ControlModel, vocabulary.Kind} {
		s := r.own(f)
		if !s.had() {
			continue
		}
		if has, stated := notation.OffStep(s.text); stated && !c.HasOff.Had() {
			c.HasOff = schedule.Flag{Yes: has, Source: s.source}
		}
		words := " " + join.Fold(s.text) + " "
		if remoteWords.in(words) && !c.Remote.Had() {
			c.Remote = schedule.Flag{Yes: true, Source: s.source}
		}
		if stereoWords.in(words) && !c.Stereo.Had() {
			c.Stereo = schedule.Flag{Yes: true, Source: s.source}
		}
	}
	if s := r.own(vocabulary.Level); s.had() {
		text, style := b.readable(&s, notDate)
		if l, err := notation.ParseLevel(text, style); err != nil {
			b.misread(s, err)
		} else if l.IsPercent {
			c.Level = schedule.Exactly(schedule.Fraction(l.Percent/100), s.source)
		}
	}
	if s := r.own(vocabulary.InsertionLoss); s.had() {
		text, style := b.readable(&s, notDate)
		text = strings.TrimSpace(strings.TrimSuffix(strings.ToLower(text), "db"))
		if n, err := notation.ParseNumber(strings.TrimLeft(text, "-− "), style); err == nil {
			c.LossDB = schedule.Exactly(schedule.Decibels(n.Value), s.source)
		} else {
			b.misread(s, err)
		}
	}
	setText(&c.Box.Name, r.own(vocabulary.BoxName).asText())
	set(b, &c.Box.Depth, b.depth(r.own(vocabulary.BoxDepth)), "box depth", of)
	b.measure(r, schedule.Measurement{Control: c})
	if d, at := b.hangsOn(r); d != nil && d.kind == controlRow {
		at.text = b.ownControlName(d).text
		b.parents = append(b.parents, parentText{c, at})
	} else if s := r.own(vocabulary.From); s.had() {
		b.parents = append(b.parents, parentText{c, s})
	} else if s := r.own(vocabulary.Control); s.had() && r.own(vocabulary.Tag).had() && b.controlNames.Find(s.text).Key != c.Key {
		b.parents = append(b.parents, parentText{c, s})
	} else {
		for i := len(r.Sections) - 1; i >= 0; i-- {
			if f := factSeen(&r.Sections[i]); r.Sections[i].Field == vocabulary.Control && b.controlNames.Find(f.text).Key != c.Key {
				b.parents = append(b.parents, parentText{c, f})
				break
			}
		}
	}
	if run := b.runAlong(r, &schedule.Cable{Zone: c.Zone, Channel: c.Channel, Control: c, Reach: schedule.FromRack}); run != nil {
		run.To = schedule.End{Text: schedule.Said(c.Name, c.At), Control: c}
		run.Control = nil // it feeds the control, it does not hang behind it
		c.Run = run
	}
}

// ratingInWords takes the only power in the description of a control for its
// rating: "volume control 36 W".
func (b *builder) ratingInWords(r *row, c *schedule.Control) {
	for _, f := range []vocabulary.Field{vocabulary.Describe, vocabulary.Kind, vocabulary.Notes} {
		s := r.own(f)
		if !s.had() || f == vocabulary.Notes && kindInWords(s.text) != controlRow && !pureRating(tidy(s.text)) {
			continue
		}
		text, style := b.readable(&s, notDate)
		if list := notation.PowersIn(text, style); len(list) == 1 {
			s.text, s.cell = plain(list[0].W)+" W", nil
			b.noteControlRating(c, s)
			return
		}
	}
}

// noteControlRating notes a rating, once for each text, and reports whether
// there was one.
func (b *builder) noteControlRating(c *schedule.Control, s seen) bool {
	out, s := b.rating(s)
	if len(out) == 0 {
		return false
	}
	if slices.ContainsFunc(b.controlRated[c], func(had ratedSeen) bool { return had.at.source.Written == s.source.Written }) {
		return true
	}
	b.controlRated[c] = append(b.controlRated[c], ratedSeen{out, s})
	return true
}

// overrideOf reads whether an emergency message gets past the control: a
// column for it, else words in the remarks.
func (b *builder) overrideOf(r *row) schedule.Flag {
	if s := r.own(vocabulary.Override); s.text != "" {
		answer := notation.AnswerOf(s.text)
		source := s.source
		source.How = schedule.Stated
		switch {
		case answer == notation.No || s.missing == notation.MissingNotApplicable:
			return schedule.Flag{Source: source}
		case answer == notation.Yes || len(notation.Override(s.text)) > 0:
			return schedule.Flag{Yes: true, Source: source}
		case s.had():
			b.ask(s.source.At, "override", "does “"+short(s.text)+"” mean that an emergency message gets past the control?", "whether the control is safe in an emergency")
		}
	}
	for _, f := range []vocabulary.Field{vocabulary.Notes, vocabulary.Describe, vocabulary.Model} {
		for s := range r.every(f) {
			for _, m := range notation.Override(s.text) {
				if m.Sure && s.had() {
					return schedule.Flag{Yes: true, Source: s.source}
				}
			}
		}
	}
	return schedule.Flag{}
}

// depth reads the depth of a box, in mm.
func (b *builder) depth(s seen) schedule.Quantity[schedule.Millimetres] {
	if !s.had() {
		return schedule.Quantity[schedule.Millimetres]{}
	}
	text, style := b.readable(&s, notDate)
	if n, err := notation.ParseNumber(text, style); err == nil {
		scale := 1.0
		switch s.unit() {
		case "cm":
			scale = 10
		case "in":
			scale = 25.4
		case "mm":
		default:
			s.source.How, s.source.Because = schedule.UnitAssumed, "no unit is written"
			b.take(s, "box depth", "millimetres", schedule.UnitAssumed, "no unit is written")
		}
		return schedule.Exactly(schedule.Millimetres(n.Value*scale), s.source)
	}
	l, err := notation.ParseLength(text, style, notation.Metre)
	if err != nil {
		b.misread(s, err)
		return schedule.Quantity[schedule.Millimetres]{}
	}
	low, high, ok := l.Metres()
	if !ok {
		return schedule.Quantity[schedule.Millimetres]{}
	}
	return schedule.Between(schedule.Millimetres(low*1000), schedule.Millimetres(high*1000), s.source)
}
