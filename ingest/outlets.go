package ingest

import (
	"regexp"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A channelText is a text taken apart as an outlet of an amplifier.
type channelText struct {
	ref notation.ChannelRef
	ok  bool
}

func (b *builder) channelRef(text string) channelText {
	ref, err := notation.ParseChannel(text)
	return channelText{ref, err == nil}
}

// An outlet is what a row says of where it is fed from: an amplifier, its
// channels, or both.
type outlet struct {
	amp      string // as written, "" if none
	ampAt    seen
	channels []string // names as written
	at       seen
	bridged  bool
	ab       bool
	rating   rarely // a rating written behind the name of the output
	ampRated rarely // one written behind that of the amplifier, beside its outputs
	unread   bool   // something is written that was not understood
}

// A rarely is something seen that few outlets have, of which there is one for
// each row: it lies apart, and is not changed.
type rarely struct{ of *seen }

func rare(s seen) rarely {
	if s == (seen{}) {
		return rarely{}
	}
	kept := s
	return rarely{&kept}
}

func (r rarely) seen() seen {
	if r.of == nil {
		return seen{}
	}
	return *r.of
}

func (o *outlet) had() bool { return o.amp != "" || len(o.channels) > 0 }

// outletOf finds the amplifier and the channel of a row. One cell may name
// both ("A1.2"), and a table without a column for channels may number circuits.
func (b *builder) outletOf(r *row) *outlet {
	// What it is looped on from goes first, the far end of the chain foremost:
	// a line may be as long as the sheet, too long for functions within functions.
	var chain []*row
	for d := r; d != nil && d.outlet == nil && !d.asked; d = b.loopedOn(d) {
		b.opts.watch.Step()
		d.asked = true
		chain = append(chain, d)
	}
	for _, d := range slices.Backward(chain) {
		d.asked = false
		d.outlet = b.findOutlet(d)
	}
	return r.outlet
}

func (b *builder) findOutlet(r *row) *outlet {
	o := &outlet{}
	if r.partOf != nil {
		return b.outletOf(r.partOf)
	}
	if controlAmongAmps(r).had() {
		return o
	}
	if r.feed != nil && r.feed.root.had() && !r.feedsFromRack() {
		b.readChannel(o, r.feed.root, seen{})
		return o
	}
	amp, ch := r.say(vocabulary.Amplifier), r.say(vocabulary.Channel)
	if amp.col == nil && amp.cell != nil && listsOutputs(amp.cell.Text) {
		amp = seen{}
	}
	if ch.col == nil && ch.cell != nil && listsOutputs(ch.cell.Text) {
		ch = seen{}
	}
	if unnamed, ok := b.unnamedAmps[amp.source.At]; ok && amp.col == nil {
		amp.text, amp.cell = unnamed.name, nil
		o.amp, o.ampAt, o.ampRated = unnamed.name, amp, rare(unnamed.rating)
		if ch.had() {
			o.channels, o.at = []string{ch.text}, ch
		}
		return o
	}
	if ch.col == nil && !r.t.has(vocabulary.Channel) {
		circuit := r.own(vocabulary.Circuit)
		if !circuit.had() && !ch.had() {
			circuit = r.say(vocabulary.Circuit)
		}
		switch {
		case !circuit.had():
		case b.wholeOutput(amp.text), b.shareOutput(amp.text):
			ch = seen{} // the line's name, beside its output
		default:
			ch = circuit
		}
	} else if namesLines(ch.col) && b.shareOutput(amp.text) {
		ch = seen{}
	}
	if ch.col != nil && r.kind == amplifierRow && b.feedsRows(r, ch.field) {
		ch = seen{} // the mains that feed it, beside others that it feeds
	}
	if amp.col == nil && ch.col == nil {
		if t := b.titleOutlet(r); t != nil {
			return t
		}
	}
	if ch.col != nil && !amp.had() && r.kind != amplifierRow && b.isListedAmp(ch) {
		amp, ch = ch, seen{} // "V1" below "hangs on", where a row lists V1
	}
	if ch.col != nil && !amp.had() && r.kind != amplifierRow && b.ampAmongOutputs(ch) {
		amp, ch = ch, seen{}
	}
	if leads := b.dir.byRow[r]; leads != nil && r.kind == cableRow && ch.field == vocabulary.Circuit && !amp.had() {
		return leads.outlet // "C1", of a cable from the output "PA-A/1"
	}
	line := b.lineOf(r)
	if line != nil {
		r.line = line
		if !ch.had() || ch.text == line.name.text || ch.field == vocabulary.Circuit || b.dir.lines[ch.key()] == line {
			return line.outlet
		}
	}
	device, by := b.hangsOn(r)
	if device != nil && r.kind != cableRow {
		switch by.field {
		case vocabulary.Amplifier:
			amp = seen{}
		case vocabulary.Channel, vocabulary.Circuit:
			ch = seen{}
		}
		if amp.col == nil && ch.col == nil && device.kind == loudspeakerRow {
			if r.asked {
				return o
			}
			r.asked = true // a ring of devices ends here
			o = b.outletOf(device)
			r.asked = false
			return o
		}
	}
	if amp.col == nil && ch.col == nil && r.kind != zoneRow && device == nil {
		if s := b.otherFeed(r); s.had() && b.namesAmp(s.text) {
			amp = s
		} else if s.had() {
			amp, ch = seen{}, s
		}
	}
	if !ch.had() && amp.had() && r.t.zonesAreOutputs() {
		ch = r.own(vocabulary.Zone)
	}
	if amp.col != nil && !ch.had() && saysOutput.Of(amp.col.Header, 0) && amp.field == vocabulary.Amplifier && !b.namesAmp(amp.text) && !b.wholeOutput(amp.text) {
		amp, ch = seen{}, amp // "A1" below "Amp channel" is an output
	}
	if amp.col == nil && ch.col != nil && join.HasWord(join.Amplifier, ch.col.Header) && b.channelRef(ch.text).ref.Amplifier != "" {
		amp = seen{} // "1/2" below "Amp/output" names its amplifier, whatever stands above
	}
	if amp.spare() {
		amp = seen{}
	}
	if ch.spare() {
		ch = seen{}
	}
	amp.text, _, _ = b.cutControl(amp.text)
	ch.text, _, _ = b.cutControl(ch.text)
	if ch.had() {
		b.readChannel(o, ch, amp)
		b.lineAsOutput(r, ch)
	}
	if amp.had() {
		b.readAmp(o, r, amp)
	}
	if amp.col != nil && o.amp != "" && len(o.channels) == 0 {
		if said := b.remarkedOutput(r, amp.col); said != nil {
			o.channels, o.at, o.bridged = said.channels, said.at, said.bridged
		}
	}
	if !o.had() {
		if said := b.saidOutput(r); said != nil {
			return said
		}
	}
	if pair := twoOutputs.FindStringSubmatch(ch.text); pair != nil && (r.kind == channelRow || r.kind == amplifierRow) && r.saysBridged() {
		o.channels, o.bridged = pair[1:], true // "1-2" of A1 is not its output 2
	}
	return o
}

// twoOutputs are two numbers or letters of outputs.
var twoOutputs = regexp.MustCompile(`^\s*(\d{1,2}|\pL)\s*[-–+/&,]\s*(\d{1,2}|\pL)\s*$`)

// saysBridged reports whether a cell beside two outputs says that they work as one. The
// name of a place may be a bridge.
func (r *row) saysBridged() bool {
	for _, c := range r.t.columns {
		switch c.Field {
		case vocabulary.Room, vocabulary.Zone, vocabulary.Building, vocabulary.Site:
			continue
		}
		if s := r.at(c); s.had() && notation.Bridging(s.text) {
			return true
		}
	}
	return false
}

// isListedAmp reports whether a text is the tag of an amplifier that a row describes.
func (b *builder) isListedAmp(s seen) bool {
	list := b.dir.devices[s.key()]
	return len(list) == 1 && list[0].kind == amplifierRow
}

// outputTables takes tables of zones that are the outputs of zone amplifiers
// for what they are.
func (b *builder) outputTables() {
	for _, t := range b.tables {
		if t.kind == layout.Zones && t.zonesAreOutputs() {
			t.kind = layout.Channels
		}
	}
}

// zonesAreOutputs reports whether the zones of a table of amplifiers are their
// outputs: there is no other column for these, and some amplifier has several
// rows, each of another zone with a rating of its own.
func (t *table) zonesAreOutputs() bool {
	if t.zoneOutputs != nil {
		return *t.zoneOutputs
	}
	yes := false
	t.zoneOutputs = &yes
	if t.kind != layout.Amplifiers && t.kind != layout.Channels && t.kind != layout.Zones ||
		t.has(vocabulary.Channel) || t.has(vocabulary.Circuit) || t.has(vocabulary.Tap) || !t.has(vocabulary.Zone) {
		return false
	}
	zones := make(map[string]map[string]bool)
	for _, r := range t.rows {
		amp, zone := r.own(vocabulary.Amplifier), r.own(vocabulary.Zone)
		if r.Class != layout.Device || !amp.had() {
			continue
		}
		if !zone.had() || !r.own(vocabulary.ChannelWatts).had() && !r.own(vocabulary.RatedWatts).had() {
			return false
		}
		if t.kind == layout.Zones && !join.Parse(join.Zone, zone.text).Bare() {
			return false // zones with names, each on one of the amplifiers
		}
		k := amp.key()
		if zones[k] == nil {
			zones[k] = make(map[string]bool)
		}
		if zones[k][zone.key()] {
			return false
		}
		zones[k][zone.key()] = true
		yes = yes || len(zones[k]) > 1
	}
	return yes
}

// wholeOutput reports whether a text names an amplifier and its output.
func (b *builder) wholeOutput(text string) bool {
	if text == "" {
		return false
	}
	if m := findRatingBehind(text); m != nil { // "V1 out 1 (60 W)"
		text = m[1]
	}
	if _, known := b.splitKnown(text); known {
		return true
	}
	c := b.channelRef(text)
	return c.ok && c.ref.Amplifier != "" && len(c.ref.Channels) > 0
}

// otherFeed is an output that stands in a column for controls or for the ends
// of cables.
func (b *builder) otherFeed(r *row) seen {
	if r.kind == cableRow {
		return seen{} // what its ends are, the cable says
	}
	for _, f := range []vocabulary.Field{vocabulary.Control, vocabulary.From, vocabulary.To} {
		s := r.own(f)
		if !s.had() || f == vocabulary.To && r.own(vocabulary.From).had() || f == vocabulary.Control && b.isListedControl(s.text) {
			continue
		}
		if _, known := b.splitKnown(s.text); known || b.namesAmp(s.text) && f != vocabulary.Control || b.wordedOutput(s.text) {
			return s
		}
		output := b.wholeOutput(s.text)
		if c := b.channelRef(s.text); c.ok && (len(c.ref.Channels) > 0 || c.ref.Amplifier != "") {
			kind := notation.KeyOf(s.text).Kind // "Amp out 1", "Ampli S1"
			output = output || kind == notation.KeyChannel || kind == notation.KeyAmplifier || len(c.ref.Channels) > 0 && strings.Contains(s.text, " ")
		}
		if output && (f != vocabulary.Control || slices.Contains(r.t.naming, s.col)) {
			return s
		}
	}
	return seen{}
}

// longestName is the most letters that the name of an output has; what is
// longer is a sentence.
const longestName = 24

// longestTitle is the most letters of a title that names an amplifier, with
// its rating.
const longestTitle = 48

// longestOutput is the most bytes of the name of an output behind that of its
// amplifier: "channel 12".
const longestOutput = 12

// hasLongWord reports whether a text has a word that is no code: four letters on end.
func hasLongWord(text string) bool {
	n := 0
	for _, r := range text {
		if !unicode.IsLetter(r) {
			n = 0
		} else if n++; n == 4 {
			return true
		}
	}
	return false
}

// outputLetter is an output's number behind the first letter of a word for an
// output.
var outputLetter = regexp.MustCompile(`^(?i:[oswkcvu])[ .]?(\d{1,2})$`)

// readChannel reads a cell or title that names a channel, with amp beside it.
func (b *builder) readChannel(o *outlet, ch, amp seen) {
	text, _ := b.readable(&ch, notation.ChannelColumn)
	text = b.withoutRack(o.cutRating(text, ch))
	o.at = ch
	if !amp.had() && strings.ContainsFunc(text, isLetter) && anyDigit(text) && b.namesAmp(text) && b.wholeOutputsIn(ch) {
		o.amp, o.ampAt, o.at = text, ch, seen{}
		return // an amplifier of the job, in a column of outputs
	}
	c := b.channelRef(text)
	if i := strings.IndexByte(text, '('); !c.ok && i > 0 { // "A-3 (to follow)"
		text = strings.TrimSpace(text[:i])
		c = b.channelRef(text)
	}
	if known, ok := b.splitKnown(text); ok && (!c.ok || !b.namesAmp(c.ref.Amplifier)) && (!amp.had() || b.sameAmp(known.Amplifier, amp.text)) {
		c = channelText{known, true}
	} else if c.ok && b.oneName(c.ref, ch) {
		o.channels = []string{text}
		return
	}
	if ch.col == nil && c.ok && hasLongWord(c.ref.Amplifier) && !b.namesAmp(c.ref.Amplifier) && !b.wordedOutput(text) {
		return // "Folio 1/1" is no output
	}
	switch {
	case c.ok:
	case text != "" && len([]rune(text)) <= longestName && countWords(text) <= 3:
		o.channels = []string{text}
		return
	default:
		if ch.col != nil {
			b.misread(ch, notation.ErrNotUnderstood)
			o.unread = true
		}
		return
	}
	o.amp, o.channels = c.ref.Amplifier, slices.Clone(c.ref.Channels)
	o.bridged, o.ab = c.ref.Bridged, c.ref.AB
	if amp.had() && c.ref.Doubts.Has(notation.DateOrPair) && o.amp != "" && !b.sameAmp(o.amp, amp.text) {
		// "1-3" beside a column of amplifiers is a pair of channels
		o.channels, o.amp = append([]string{o.amp}, o.channels...), ""
	}
	if ch.source.How != schedule.RecoveredDate {
		b.doubt(ch, text, c.ref.Doubts&^notation.DateOrPair)
	}
	if o.amp != "" {
		o.amp, o.ampAt = withKindWord(text, o.amp), ch
	}
}

// withoutRack cuts a word for the rack off an output and its amplifier: "Rack A1/1".
func (b *builder) withoutRack(text string) string {
	folded := join.Fold(text)
	word := wordList(rackEnds).ahead(folded)
	if word == "" || len(folded) != len(text) {
		return text
	}
	rest := strings.TrimLeft(text[len(word):], " :-")
	if c := b.channelRef(rest); c.ok && strings.ContainsFunc(c.ref.Amplifier, isLetter) && len(c.ref.Channels) > 0 {
		return rest
	}
	return text
}

// readAmp reads a cell or title that names an amplifier, and perhaps its
// channel too.
func (b *builder) readAmp(o *outlet, r *row, amp seen) {
	if amp.col == nil && len([]rune(amp.text)) > longestTitle {
		return // a sentence that speaks of an amplifier
	}
	text, _ := b.readable(&amp, notation.ChannelColumn)
	rated := o.rating
	if watts := b.calledByWatts(r, amp); watts.had() && o.amp == "" {
		o.amp, o.ampAt, o.ampRated = tidy(text), amp, rare(watts)
		return
	}
	text = o.cutRating(text, amp)
	if text == "" {
		return
	}
	amp.text = text
	if o.amp == "" && b.ratesUnnamed(r, amp) {
		o.amp, o.ampAt, o.ampRated = text, amp, rare(amp)
		return
	}
	c := b.channelRef(text)
	if known, ok := b.splitKnown(text); ok && (!c.ok || !b.namesAmp(c.ref.Amplifier)) {
		c = channelText{known, true}
	}
	pair := c.ok && c.ref.Amplifier != "" && len(c.ref.Channels) > 0 && len(o.channels) == 0 &&
		(!c.ref.Doubts.Has(notation.DateOrPair) || !r.t.has(vocabulary.Channel)) && !b.besideOutputs(amp) && !(amp.col != nil && b.ratedAsOne(text))
	switch {
	case pair:
		o.amp, o.channels, o.at, o.ampAt = withKindWord(text, c.ref.Amplifier), slices.Clone(c.ref.Channels), amp, amp
		o.bridged, o.ab = c.ref.Bridged, c.ref.AB
	case amp.col == nil && len([]rune(text)) > longestName:
		// a sentence that speaks of an amplifier
	case o.amp == "" && amp.col == nil:
		o.amp, o.ampAt = b.codeInTitle(text, amp), amp
	case o.amp == "":
		o.amp, o.ampAt = text, amp
	}
	if s := o.rating.seen(); !pair && s.source.At == amp.source.At && s.had() {
		o.ampRated, o.rating = o.rating, rated
	}
}

// ratedAsOne reports whether a sentence rates an amplifier by a name that may also be one of its
// outputs: "A-1 = 60 W".
func (b *builder) ratedAsOne(text string) bool {
	return slices.ContainsFunc(b.said, func(s said) bool {
		return s.Name != "" && s.W > 0 && s.Outputs <= 1 && len(s.Ways) == 0 && join.Key(s.Name) == join.Key(text)
	})
}

// startsLike reports whether a text goes on with a letter after a letter, or a
// figure after a figure.
func startsLike(text string, last rune) bool {
	r, _ := utf8.DecodeRuneInString(text)
	return unicode.IsLetter(r) && unicode.IsLetter(last) || unicode.IsDigit(r) && unicode.IsDigit(last)
}

func (b *builder) sameAmp(x, y string) bool { return namesOneAmp(x, y) }

// namesOneAmp reports whether two texts name one amplifier by their letters and digits alone.
func namesOneAmp(x, y string) bool {
	p, q := join.Parse(join.Amplifier, x), join.Parse(join.Amplifier, y)
	return p.Full == q.Full || p.Number != "" && p.Number == q.Number
}

// readSpare reports whether a whole cell says that nothing is connected.
func readSpare(s string) bool {
	if s == "" || countWords(s) > 2 {
		return false
	}
	for _, w := range notation.Statuses(s) {
		if w.Kind == string(notation.StatusSpare) || w.Kind == string(notation.StatusFuture) {
			return w.Sure && len(w.Text)+2 >= len(s)
		}
	}
	return false
}
