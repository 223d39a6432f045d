package ingest

import (
	"regexp"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Outside the tables there are short lists without a header: "K1 | North door |
// 20 W", "L1 | amp A output 1 | 140 m | 2 x 2.5 mm²". A row counts when its
// first cell is a name that the tables use.

// rateAmplifiers notes the ratings of several amplifiers in one note ("P1 to P4:
// 60 W") as sentences about each of them.
func (b *builder) rateAmplifiers(list []carried) {
	for _, c := range list {
		p, err := notation.ParseWatts(c.watts.text, notation.Auto)
		if err != nil {
			continue
		}
		for _, name := range c.amps {
			b.said = append(b.said, said{RatedAmplifier: notation.RatedAmplifier{Name: name, W: p.W, Worded: true}, source: c.watts.source})
		}
	}
}

// controlInRow reads a line of cells outside the tables that begins with a
// control that rows name and holds a power: "K1 | North door | 20 W max".
func (b *builder) controlInRow(cells []spoken) (carried, bool) {
	if len(cells) < 2 || !b.dir.controls[join.Key(cells[0].text)] {
		return carried{}, false
	}
	for _, c := range cells[1:] {
		if m := wattsIn.FindStringSubmatch(c.text); m != nil && len(m[0])+6 >= len(c.text) {
			s := seen{text: m[1], source: schedule.Source{At: c.at, Written: c.text, How: schedule.FromTitle}}
			return carried{controls: []string{cells[0].text}, watts: s}, true
		}
	}
	return carried{}, false
}

// A spokenLine is the cable of a line in such a row.
type spokenLine struct {
	key          string
	name         spoken
	zone         string // the zone whose cable it is, where no line is named
	length, size seen
}

// placeOfCable is the one zone that words for a cable in front of it name: "Cable zone 1";
// "" where they name none.
func (b *builder) placeOfCable(s seen, head string) string {
	first, rest, ok := strings.Cut(head, " ")
	if !ok || !join.HasWord(join.Cable, first) || b.places.lines[join.Key(head)] {
		return ""
	}
	at := b.placesIn(s, routeWord.ReplaceAllString(rest, ""))
	if len(at.zones) != 1 || len(at.rooms)+len(at.tags)+len(at.rows) > 0 {
		return ""
	}
	return at.zones[0]
}

// lineInRow reads a row that begins with a line that rows name: the output that
// feeds it, its rating, its length and its size, each where its cell says so
// with a word or a unit.
func (b *builder) lineInRow(cells []spoken) {
	k := join.Key(cells[0].text)
	if len(cells) < 2 || !b.places.lines[k] || b.dir.lines[k] != nil {
		return
	}
	line := spokenLine{key: k, name: cells[0]}
	r := route{line: tidy(cells[0].text), named: true}
	for _, c := range cells[1:] {
		s := seen{text: c.text, field: vocabulary.Length, source: schedule.Source{At: c.at, Written: c.text, How: schedule.FromTitle}}
		m := wattsIn.FindStringSubmatch(c.text)
		l, err := notation.ParseLength(c.text, notation.Auto, notation.UnitUnknown)
		_, _, metres := l.Metres()
		p, sizeErr := notation.ParseConductor(c.text, notation.Auto, notation.HintNone)
		switch feed := b.feedIn(s, c.text); {
		case feed != nil && r.outlet.amp == "" && len(r.outlet.channels) == 0:
			r.outlet, r.service.at = *feed, s
		case m != nil && len(m[0])+6 >= len(c.text):
			r.watts = s
			r.watts.text = m[1]
		case err == nil && metres:
			line.length = s
		case sizeErr == nil && (p.AWG != nil || p.AreaMM2 > 0) && strings.ContainsAny(strings.ToLower(c.text), "x×/#²ma"):
			line.size = s
		}
	}
	if r.outlet.amp != "" || len(r.outlet.channels) > 0 {
		if len(r.outlet.channels) == 0 {
			r.outlet.channels = []string{r.line}
		}
		b.routes = append(b.routes, r)
		if line.length.had() {
			b.spokenLines = append(b.spokenLines, line)
		}
	}
}

// cableParts are what stands between the parts of such a text: no decimal comma.
var cableParts = regexp.MustCompile(`\s*;\s*|\s*,\s+`)

// lineSaid reads the cable of a line in one text: "Line 1: amp A output 1, 120 W,
// 2x1.5 180 m".
func (b *builder) lineSaid(s seen) {
	head, rest, ok := cutRoute(s.text)
	if !ok || !anyDigit(rest) {
		return
	}
	name := strings.TrimSpace(head)
	place := b.placeOfCable(s, name)
	if place == "" {
		if name = b.lineNamed(name); name == "" {
			return
		}
	}
	line := spokenLine{key: join.Key(name), name: spoken{at: s.source.At, text: name}, zone: place}
	s.field = vocabulary.Length
	for _, part := range cableParts.Split(rest, -1) {
		if _, beside, ok := notation.ConductorIn(part, notation.Auto); ok && !line.size.had() {
			line.size = s
			line.size.text, part = part, beside
		}
		l, err := notation.ParseLength(part, notation.Auto, notation.UnitUnknown)
		if _, _, metres := l.Metres(); err == nil && metres && !line.length.had() {
			line.length = s
			line.length.text = part
		}
	}
	if line.length.had() {
		b.spokenLines = append(b.spokenLines, line)
	}
}

// runSpokenLines enters the cables of such rows: each carries all of its line.
func (b *builder) runSpokenLines() {
	for _, line := range b.spokenLines {
		e := b.dir.lines[line.key]
		l, ok := b.metres(line.length)
		if !ok {
			continue
		}
		if z := b.zones[b.zoneNames.Find(line.zone).Key]; line.zone != "" {
			if z != nil {
				b.runToZone(z, line, l.Quantity)
			}
			continue
		}
		var fed []*schedule.Loudspeaker
		if e != nil {
			fed = e.fed
		}
		channel := b.channelNamed(line.name.text)
		if len(fed) == 0 && channel == nil {
			continue
		}
		c := &schedule.Cable{At: line.name.at, Name: tidy(line.name.text), Key: line.key, Reach: schedule.WholeLine, Length: l.Quantity}
		if line.size.had() {
			b.readConductor(c, line.size, vocabulary.Gauge)
		}
		c.Channel = channel
		for _, l := range fed {
			if l.Run == nil {
				l.Run = c
			}
			c.Channel = l.Channel
		}
		b.enterCable(c)
	}
}

// runToZone enters the cable that a note gives a zone: it carries all of it.
func (b *builder) runToZone(z *schedule.Zone, line spokenLine, length schedule.Quantity[schedule.Metres]) {
	c := &schedule.Cable{At: line.name.at, Zone: z, Channel: z.Channel, Reach: schedule.WholeLine, Length: length}
	if line.size.had() {
		b.readConductor(c, line.size, vocabulary.Gauge)
	}
	for _, l := range b.job.Loudspeakers {
		if l.Zone == z && l.Run == nil {
			l.Run = c
		}
	}
	b.enterCable(c)
}
