package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// Notes outside the tables say which output feeds a zone ("Public = ch 1 (100
// W), Staff = ch 2 (35 W)"; "Zone 2: amp B, 60 W") and what controls carry
// ("VC-2, VC-3: 35 W"). They are read by the names that the tables use: a
// note that names none of them is left alone.

// A spoken is a text outside the tables.
type spoken struct {
	at     schedule.Ref
	text   string
	number int // of a note in a numbered list, 0 for others
}

// A route is what a note says of places, or of a line, and the output that
// feeds them.
type route struct {
	service service
	line    string // the line's name, for a route of a line
	outlet  outlet
	named   bool // the amplifier is named beside the places
	watts   seen // the output's rating; nothing if none is said
	asLine  bool // the output is called like the line, for want of a name
}

// A carried is what a note says that controls carry, or amplifiers give.
type carried struct {
	controls []string
	amps     []string
	watts    seen
	at       service // the places that they are on, if the note says so
	unnamed  bool    // the place stands for the name of the only control
}

var (
	statementEnd  = regexp.MustCompile(`\s*[;\n]\s*|[\p{L}\d)]{4}\.\s+|\d\s?[wWvV]\)?\.\s+`) // no full stop of an abbreviation
	wattsIn       = regexp.MustCompile(`(?i)\(?\s*(?:max\.?\s*)?(\d+(?:[.,]\d+)?\s*k?W(?:atts?)?)\b(?:\s*maxi?\b\.?)?(?:\s*@?\s*\d+(?:[.,]\d+)?\s*V\b)?\s*\)?`)
	routeMark     = regexp.MustCompile(`\s*(?:=>|->|→|=|:)\s*`)
	routeWord     = regexp.MustCompile(`(?i)^(?:(?:on|is|are|ist|sind|est|sont|es|son|è|sono|zijn|hang|hangs|hängt|hängen|hangt|hangen|goes|läuft|laufen|geht|gehen|va|vont|van|vanno|loopt|lopen|to|from|via|off|an|auf|von|über|sur|par|vers|en|por|a|su|da|op|aan|van|hangs on|fed by|fed from|gespeist (?:von|aus)|aliment[ée]e?s? par|alimentad[oa]s? (?:por|desde)|alimentat[oaie] d(?:a|al|all[ao'])|gevoed (?:door|van(?:uit)?))\s+)+`)
	isWord        = regexp.MustCompile(`(?i)\s+(?:is|are|rated|ist|sind|est|sont|es|son|è|sono|zijn|de|da|di|à|of|mit|van|con)$`)
	joinerAhead   = regexp.MustCompile(`(?i)^(?:and|und|et|y|e|en)\s+`)
	segmentEnd    = regexp.MustCompile(`\s*[,;]\s*`)
	longestSpoken = 400
)

// hearRoutes reads the notes and adds the names of amplifiers and places in
// them to those of the tables.
func (b *builder) hearRoutes() {
	b.spoken = append(slices.Clip(b.spoken), b.remarksOfPasses()...)
	together := 0 // the cells before were read together
	for i, s := range b.spoken {
		if len(s.text) > longestSpoken {
			continue
		}
		if i == 0 || b.spoken[i-1].at.Row != s.at.Row || b.spoken[i-1].at.Sheet() != s.at.Sheet() {
			n := i + 1
			for n < len(b.spoken) && b.spoken[n].at.Row == s.at.Row && b.spoken[n].at.Sheet() == s.at.Sheet() {
				n++
			}
			if c, ok := b.controlInRow(b.spoken[i:n]); ok {
				b.carried = append(b.carried, c)
			}
			b.lineInRow(b.spoken[i:n])
			list := b.routesAcross(b.spoken[i:n])
			if len(list) == 0 {
				list = b.feedingAcross(b.spoken[i:n])
			}
			if len(list) > 0 {
				b.routes, together = append(b.routes, list...), n
			}
		}
		if i < together {
			continue // read together
		}
		lengths := b.lengthsSaid(s)
		for _, statement := range statements(s.text) {
			if lengths && placeLength.MatchString(statement) {
				continue
			}
			at := seen{text: statement, source: schedule.Source{At: s.at, Written: s.text, How: schedule.FromTitle}}
			b.lineSaid(at)
			if list := b.carriedIn(at); len(list) > 0 {
				b.carried = append(b.carried, list...)
				b.rateAmplifiers(list)
				continue
			}
			b.carried = append(b.carried, b.controlsIn(at)...)
			if list := b.routesIn(at); len(list) > 0 {
				b.routes = append(b.routes, list...)
				named := slices.ContainsFunc(list, func(r route) bool { return r.named })
				b.said = slices.DeleteFunc(b.said, func(x said) bool { // the same, read once
					return x.source.At == s.at && !x.routed && (named || x.namesOutput(list))
				})
			}
		}
	}
	for _, c := range b.carried {
		for _, z := range c.at.zones {
			b.zoneNames.Refer(z)
		}
		for _, room := range c.at.rooms {
			b.places.roomNames.Refer(room)
		}
	}
	for _, line := range b.spokenLines {
		if line.zone != "" {
			b.zoneNames.Refer(line.zone)
		}
	}
	for i := range b.routes {
		r := &b.routes[i]
		if r.outlet.amp != "" {
			b.ampNames.Add(r.outlet.amp, 0)
		}
		if k := join.Key(r.line); k != "" && b.dir.lines[k] == nil {
			b.dir.lines[k] = &lineEntry{name: r.service.at, outlet: &r.outlet, rows: 1}
		}
		for _, z := range r.service.zones {
			b.zoneNames.Refer(z)
		}
		for _, room := range r.service.rooms {
			b.places.roomNames.Refer(room)
		}
	}
}

// remarksOfPasses are the remarks of cables that lead to a control: "VC1 36 W at the desk".
func (b *builder) remarksOfPasses() []spoken {
	var out []spoken
	for _, t := range b.tables {
		if t.fromColumn == nil {
			continue
		}
		for _, r := range t.rows {
			if !r.passes {
				continue
			}
			for s := range r.every(vocabulary.Notes) {
				text := s.text
				if tag := r.own(vocabulary.Tag); tag.had() && pureRating(strings.TrimSpace(strings.TrimPrefix(text, firstWord(text)))) && notation.IsControlWord(firstWord(text)) {
					text = firstWord(text) + " " + tag.text + " " + strings.TrimPrefix(text, firstWord(text)) // "Regulator 12 W" of the control that the cable leads to
				}
				out = append(out, spoken{at: s.source.At, text: text})
			}
		}
	}
	return out
}

// routesAcross reads a sentence that its commas parted into several cells of a row:
// "Hall on output 1 (250 W) | the rest on output 2 (60 W)".
func (b *builder) routesAcross(cells []spoken) []route {
	if len(cells) < 2 || !restWords.begins(join.Fold(cells[1].text)) {
		return nil
	}
	whole := joined(cells, ", ")
	if len(whole) > longestSpoken {
		return nil
	}
	var out []route
	for _, statement := range statements(whole) {
		out = append(out, b.routesIn(seen{text: statement, source: schedule.Source{At: cells[0].at, Written: whole, How: schedule.FromTitle}})...)
	}
	return out
}

// joined is what the cells of a row say, with a mark between them.
func joined(cells []spoken, mark string) string {
	texts := make([]string, len(cells))
	for i, c := range cells {
		texts[i] = c.text
	}
	return strings.Join(texts, mark)
}

// feedingAcross reads a row of cells that says what an amplifier feeds: "Amplifiers: | V1 | 120 W | for L1".
func (b *builder) feedingAcross(cells []spoken) []route {
	if len(cells) < 2 || !notation.SpeaksOfAmplifier(cells[0].text) {
		return nil
	}
	whole := joined(cells, " ")
	if len(whole) > longestSpoken {
		return nil
	}
	at := schedule.Source{At: cells[0].at, Written: whole, How: schedule.FromTitle}
	list := b.ampsFeeding(seen{text: whole, source: at})
	if len(list) > 0 {
		b.said = slices.DeleteFunc(b.said, func(x said) bool { return x.source.At == at.At && !x.routed })
	}
	return list
}

// statements divides a note.
func statements(text string) []string { return knownStatements.Of(text, 0) }

var knownStatements = remember.New(4096, func(text string, _ int) []string { return divideNote(text) })

func divideNote(text string) []string {
	var out []string
	for {
		m := statementEnd.FindStringIndex(text)
		if m == nil {
			return append(out, text)
		}
		end := m[0]
		if i := strings.IndexByte(text[m[0]:m[1]], '.'); i >= 0 {
			end += i
		}
		out, text = append(out, text[:end]), text[m[1]:]
	}
}

// routesIn reads what one statement says of places and outputs.
func (b *builder) routesIn(s seen) []route {
	text := s.text
	amp := ""
	if list := b.linesTogether(s); len(list) > 0 {
		return list
	}
	if list := b.linesOnAmps(s); len(list) > 0 {
		return list
	}
	if list := b.outputsToLines(s); len(list) > 0 {
		return list
	}
	if list := b.allOnOne(s); len(list) > 0 {
		return list
	}
	if list := b.fedBy(s); len(list) > 0 {
		return list
	}
	if list := b.ampsFeeding(s); len(list) > 0 {
		return list
	}
	if list := b.outputsAhead(s); len(list) > 0 {
		return list
	}
	if list := b.numberedOutputs(s); len(list) > 0 {
		return list
	}
	if m := findRouteMark(text); m != nil && routeMark.MatchString(text[m[1]:]) || m != nil && !b.placesIn(s, text[:m[0]]).had() {
		// "Amplifier: zone 1 output 1, zone 2 output 2": a heading before the places
		if head := text[:m[0]]; b.places.lines[join.Key(head)] || b.ampsHead(s, text) {
			m = nil
		} else if b.namesAmp(head) {
			amp = head
		} else if c := b.channelRef(head); b.placesIn(s, head).had() || c.ok && len(c.ref.Channels) > 0 {
			m = nil
		}
		if m != nil {
			text = text[m[1]:]
		}
	}
	var out []route
	var waiting service
	for _, segment := range segments(text) {
		watts, segment := cutWatts(s, segment)
		if last := len(out) - 1; last >= 0 && out[last].asLine {
			if feed := b.feedIn(s, segment); feed != nil && feed.amp == "" && len(feed.channels) == 1 { // "L1 = amp E1, output 1"
				out[last].outlet.channels, out[last].asLine = feed.channels, false
				if !out[last].watts.had() {
					out[last].watts = watts
				}
				continue
			}
		}
		if lines, feed := b.linesFedBy(s, segment); feed != nil {
			if len(lines) > 1 && watts.had() {
				b.said = append(b.said, said{RatedAmplifier: notation.RatedAmplifier{Name: feed.amp, W: wattsOf(watts), Worded: true}, source: s.source, routed: true})
				watts = seen{}
			}
			for _, line := range lines {
				o, bare := *feed, len(feed.channels) == 0
				if bare {
					o.channels = []string{line}
				}
				out = append(out, route{line: line, service: service{at: s}, outlet: o, named: true, watts: watts, asLine: bare && len(lines) == 1})
			}
			continue
		}
		if list := b.outputForLines(s, segment, amp, watts); len(list) > 0 {
			out = append(out, list...)
			continue
		}
		place, feed := b.divide(s, segment)
		if others := restWords.ahead(join.Fold(segment)); others != "" && len(out) > 0 && len(join.Fold(segment)) == len(segment) { // "the rest on output 2"
			place, feed = service{at: s, rest: true}, b.feedIn(s, segment[len(others):])
		}
		switch {
		case place.had() && feed != nil:
			place.zones = append(waiting.zones, place.zones...)
			place.rooms = append(waiting.rooms, place.rooms...)
			waiting = service{}
			named := feed.amp != ""
			if !named && amp != "" {
				feed.amp, feed.ampAt = amp, s
			}
			out = append(out, route{service: place, outlet: *feed, named: named, watts: watts})
		case !place.had() && waiting.had() && b.feedIn(s, segment) != nil:
			out = append(out, route{service: waiting, outlet: *b.feedIn(s, segment), watts: watts})
			waiting = service{}
		case place.had():
			waiting.zones, waiting.rooms = append(waiting.zones, place.zones...), append(waiting.rooms, place.rooms...)
		case segment == "" && len(out) > 0 && watts.had():
			if last := &out[len(out)-1]; !last.watts.had() {
				last.watts = watts
			}
		case segment != "" && len(out) == 0:
			return nil // prose
		}
	}
	return out
}

// mayStateWatts reports whether a text has a figure and the letter of a power.
func mayStateWatts(text string) bool { return anyDigit(text) && strings.ContainsAny(text, "wW") }

// routeMarks remembers where marks stand.
var routeMarks = remember.New(4096, func(text string, _ int) []int { return routeMark.FindStringIndex(text) })

// findRouteMark is where the first mark between places and an output stands; nil
// if there is none.
func findRouteMark(text string) []int {
	if !strings.ContainsAny(text, "=:→") && !strings.Contains(text, "->") {
		return nil
	}
	return routeMarks.Of(text, 0)
}

// cutRoute parts a text at its first such mark.
func cutRoute(text string) (before, after string, ok bool) {
	m := findRouteMark(text)
	if m == nil {
		return text, "", false
	}
	return text[:m[0]], text[m[1]:], true
}

// segments parts a statement at its commas.
func segments(text string) []string {
	if !strings.ContainsAny(text, ",;") {
		return []string{text}
	}
	return segmentEnd.Split(text, -1)
}

// longestRouteWord is the most bytes of the first word of routeWord.
const longestRouteWord = len("alimentados")

// cutWatts takes a power out of a text.
func cutWatts(s seen, text string) (watts seen, rest string) {
	if !mayStateWatts(text) {
		return seen{}, text
	}
	m := wattsIn.FindStringSubmatchIndex(text)
	if m == nil {
		return seen{}, text
	}
	watts = s
	watts.text = text[m[2]:m[3]]
	before := timesAhead.ReplaceAllString(text[:m[0]], "")
	if strings.TrimSpace(text[m[1]:]) == "" {
		before = cutCopula(strings.TrimSpace(before)) // "amp F1 of"
	}
	return watts, strings.TrimSpace(before + " " + text[m[1]:])
}

// timesAhead is how many outputs give a power, in front of it: "(2 x".
var timesAhead = regexp.MustCompile(`(?i)(?:^|[\s(])\d{1,2}\s*[x×*]\s*$`)

// cutAlso takes a word that points back to what was said before off the end of a name:
// "Amp 2 also".
func cutAlso(text string) string {
	for i := strings.LastIndexByte(text, ' '); i > 0; i = strings.LastIndexByte(text[:i], ' ') {
		if slices.Contains(alsoWords, join.Fold(text[i+1:])) {
			return strings.TrimRight(text[:i], " ,")
		}
	}
	return text
}

// wattsOf is the power that a text states, 0 if it is none.
func wattsOf(s seen) float64 {
	p, err := notation.ParseWatts(s.text, notation.Auto)
	if err != nil {
		return 0
	}
	return p.W
}

// had reports whether a service names anything.
func (v service) had() bool {
	return v.all || v.rest || len(v.zones)+len(v.rooms)+len(v.tags)+len(v.rows) > 0
}

// divide takes a segment apart into places and the output that feeds them.
func (b *builder) divide(s seen, segment string) (service, *outlet) {
	if head, rest, ok := cutRoute(segment); ok {
		place, feed := b.placesIn(s, head), b.feedIn(s, rest)
		if place.had() && feed != nil {
			return place, feed
		}
		if place, feed = b.placesIn(s, rest), b.feedIn(s, head); place.had() && feed != nil {
			return place, feed
		}
	}
	words := strings.Fields(segment)
	for n := len(words) - 1; n > 0; n-- {
		feed := b.feedIn(s, strings.Join(words[n:], " "))
		if feed == nil {
			continue // most words of prose: asked first, since it costs least
		}
		if place := b.placesIn(s, strings.Join(words[:n], " ")); place.had() {
			return place, feed
		}
	}
	return b.placesIn(s, segment), nil
}

// placesIn finds the places that a text names and nothing else.
func (b *builder) placesIn(s seen, text string) service {
	text = strings.Trim(text, " .:=–-")
	if inner := strings.TrimSuffix(strings.TrimPrefix(text, "("), ")"); len(inner)+2 == len(text) && !strings.ContainsAny(inner, "()") {
		text = strings.TrimSpace(inner) // "V1 = 240 W (Hall)"
	}
	if text == "" || strings.Trim(text, "0123456789") == "" {
		return service{}
	}
	if words := strings.Fields(text); len(words) > 1 && isWhole(words[0]) && (countsWhat(words[1]) || outputsWords.in(join.Fold(words[1]))) {
		return service{} // "2 outputs" are no place of that number
	}
	if tags := b.speakersNamed(text); len(tags) > 0 {
		return service{at: s, tags: tags}
	}
	if first, rest, ok := strings.Cut(text, " "); ok && len(first) <= 3 && slices.Contains(articleWords, join.Fold(first)) && !b.places.zones[join.Parse(join.Zone, text).Full] {
		text = rest // "die Halle"
	}
	n := join.Parse(join.Zone, text)
	if !b.places.zones[n.Full] && !b.places.rooms[n.Full] {
		if rows := b.rowsOnFloors(s, text); len(rows) > 0 {
			return service{at: s, rows: rows}
		}
	}
	if !hasLongWord(text) && !b.places.zones[n.Full] && !b.places.rooms[n.Full] && notation.KeyOf(text).Kind != notation.KeyZone && !b.places.zones["="+n.Title] {
		return service{} // "6 x" is no zone 6
	}
	s.text, s.field = text, vocabulary.Room
	if v := b.listOfPlaces(s); v != nil {
		return *v
	}
	return service{at: s, rows: b.rowsOfBuilding(text)}
}

// speakersNamed are the tags that a text lists, and nothing else, where rows of loudspeakers have
// all of them: "HP04 et HP05", "S1-S4".
func (b *builder) speakersNamed(text string) []string {
	if !anyDigit(text) {
		return nil
	}
	var out []string
	for _, part := range listParts.Of(text, byWords) {
		tags, err := notation.ParseTags(part)
		if err != nil || !strings.ContainsFunc(part, isLetter) {
			return nil
		}
		for _, tag := range tags.List {
			k := join.Key(tag)
			list := b.dir.devices[k]
			if b.dir.groups[k] == nil && (len(list) == 0 || list[0].kind != loudspeakerRow) {
				return nil
			}
		}
		out = append(out, tags.List...)
	}
	return out
}

// feedIn finds the output that a text names and nothing else; nil if none.
// Only a word for an output or an amplifier, or the name of an amplifier, makes
// an output of it.
func (b *builder) feedIn(s seen, text string) *outlet {
	text = strings.Trim(text, " .:=–-")
	if i := strings.IndexAny(text, " \t\n\f\r"); i > 0 && i <= longestRouteWord {
		text = strings.Trim(routeWord.ReplaceAllString(text, ""), " ")
	}
	text = cutAlso(text)
	if text == "" {
		return nil
	}
	if o := b.feedCalled(s, text); o != nil {
		return o
	}
	if rest := cutOnThe(text); rest != text {
		return b.feedCalled(s, rest)
	}
	return nil
}
