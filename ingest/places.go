package ingest

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// The names of places that a job uses, and the texts that name them.

// places are the zones and rooms that the loudspeakers and zones of a job name.
type places struct {
	zones, rooms map[string]bool // by key, number and title
	lines        map[string]bool // by key: what rows of loudspeakers name as line or output
	roomNames    *join.Set
	texts        map[string]seen            // zones and rooms by their folded names
	initials     map[initialsOf][]string    // the names of places by the first letters of their words
	byWord       map[string][]string        // names of zones by the words in them
	named        map[*column]map[string]int // how many rows of a list name each zone
	plain        map[string][]seen          // zones and rooms by their folded names without small words
	called       map[string]seen            // the same without what stands in brackets behind; nothing where several would be called so
	inZones      map[string][]*row          // rows of loudspeakers by zone and room
	doubled      map[string]bool            // keys of zones of which each building has its own
	columns      map[*table]*column         // what placeColumn found
	// buildings are the rows of loudspeakers in each, by key; buildingWords those of the headers over them.
	buildings     map[string][]*row
	buildingWords []string
	floors        map[string][]*row // the rows of loudspeakers by floors and buildings; nil before a note asks for them
	storeys       []*storey         // the floors of the loudspeakers, once they are known
	storeysKnown  bool
	onFloors      map[*column]map[*storey]int // how many rows of a list name each floor
	roomsZones    bool                        // no loudspeaker names a zone: its room stands for one
}

// gatherPlaces finds the names of places, and whether rooms stand for zones.
func (b *builder) gatherPlaces() {
	b.places = places{zones: make(map[string]bool), rooms: make(map[string]bool), lines: make(map[string]bool), roomNames: join.NewSet(join.Room), texts: make(map[string]seen)}
	zoned := false
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.out == "" && (r.kind == loudspeakerRow || r.kind == zoneRow) && (r.zoneText().had() || r.kind == zoneRow) {
				zoned = true
			}
		}
	}
	b.places.roomsZones = !zoned
	b.gatherDoubled()
	b.gatherBuildings()
	lastZone, lastRoom := "", ""
	zoneKey, roomKey := "", "" // by which places are found in texts
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.out != "" || r.kind != loudspeakerRow && r.kind != zoneRow {
				continue
			}
			z := b.placeText(r)
			if r.kind == zoneRow {
				z, _ = r.zoneName()
			}
			for _, f := range []vocabulary.Field{vocabulary.Circuit, vocabulary.Channel} {
				if s := r.own(f); s.had() {
					b.places.lines[s.key()] = true
				}
			}
			if z.had() {
				if z.text != lastZone {
					enterPlace(b.places.zones, join.Zone, z.text)
					lastZone, zoneKey = z.text, join.Fold(tidy(z.text))
				}
				b.places.texts[zoneKey] = z
				if n := r.zoneNumber(z); n != "" {
					enterPlace(b.places.zones, join.Zone, n)
					b.places.texts[join.Fold(n)] = z
				}
			}
			if room := r.say(vocabulary.Room); room.had() {
				if room.text != lastRoom {
					enterPlace(b.places.rooms, join.Room, room.text)
					lastRoom, roomKey = room.text, join.Fold(tidy(room.text))
				}
				b.places.texts[roomKey] = room
				b.places.roomNames.Add(room.text, r.t.number)
			}
		}
	}
}

// placeText is what a row says of its zone: its room, else its building, where
// no loudspeaker of the job names a zone.
func (b *builder) placeText(r *row) seen {
	z := r.zoneText()
	if z.had() || !b.places.roomsZones || r.kind != loudspeakerRow {
		return b.ofBuilding(r, z)
	}
	z = r.say(vocabulary.Room)
	if !z.had() && !r.t.has(vocabulary.Room) {
		if z = r.own(vocabulary.Building); !z.had() && r.t.Matrix {
			z = r.own(vocabulary.Floor) // counts by floor
		}
	}
	if c := r.own(vocabulary.Circuit); !z.had() && r.t.has(vocabulary.Channel) && hasLongWord(c.text) && !anyDigit(c.text) {
		z = c // a loop that bears the name of its place
	}
	if z.spare() {
		return seen{}
	}
	return z
}

// ofBuilding adds the building to the name of a zone of which each building
// has one of its own.
func (b *builder) ofBuilding(r *row, z seen) seen {
	if len(b.places.doubled) == 0 || !z.had() || !b.places.doubled[z.key()] {
		return z
	}
	if building := r.say(vocabulary.Building); building.had() {
		z.text = tidy(z.text) + " (" + tidy(building.text) + ")"
	}
	return z
}

// gatherDoubled finds the zones that stand in several buildings and are not
// one: other outputs feed them, or they are but numbers that begin anew.
func (b *builder) gatherDoubled() {
	if !slices.ContainsFunc(b.tables, (*table).namesBuildings) {
		return
	}
	type one struct {
		outputs map[string]bool
		silent  bool // a row of it names no output
	}
	zones := make(map[string]map[string]*one)
	texts := make(map[string]seen)
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.out != "" || r.kind != loudspeakerRow && r.kind != zoneRow {
				continue
			}
			z := r.zoneText()
			if r.kind == zoneRow {
				z, _ = r.zoneName()
			}
			if !z.had() {
				continue
			}
			k, building := z.key(), r.say(vocabulary.Building).key()
			if zones[k] == nil {
				zones[k], texts[k] = make(map[string]*one), z
			}
			x := zones[k][building]
			if x == nil {
				x = &one{outputs: make(map[string]bool)}
				zones[k][building] = x
			}
			out := r.say(vocabulary.Amplifier).key() + "/" + r.say(vocabulary.Channel).key()
			if out == "/" {
				x.silent = true
			} else {
				x.outputs[out] = true
			}
		}
	}
	for _, k := range sortedKeys(zones) {
		if len(zones[k]) < 2 {
			continue
		}
		outputs, total, silent := make(map[string]bool), 0, false
		for _, x := range zones[k] {
			total += len(x.outputs)
			silent = silent || x.silent
			for o := range x.outputs {
				outputs[o] = true
			}
		}
		apart := len(outputs) == total && !silent
		number := join.Parse(join.Zone, texts[k].text)
		if !apart && (total > 0 || number.Number == "" || number.Title != "") {
			continue
		}
		if b.places.doubled == nil {
			b.places.doubled = make(map[string]bool)
		}
		b.places.doubled[k] = true
		if !apart {
			b.take(texts[k], "zone", "one in each building", schedule.LikelierReading, "the numbers begin anew in each building")
		}
	}
}

// namesBuildings reports whether the table says of any row in which building it is.
func (t *table) namesBuildings() bool {
	return t.has(vocabulary.Building) || t.title(vocabulary.Building).had() || t.sectioned(vocabulary.Building)
}

func enterPlace(m map[string]bool, kind join.Kind, text string) {
	n := join.Parse(kind, text)
	for _, k := range []string{n.Full, "#" + n.Number, "=" + n.Title} {
		if len(k) > 1 || k == n.Full && k != "" {
			m[k] = true
		}
	}
}

// namesPlace reports whether a text names one of the places: by all of it, by its
// number or by its words.
func namesPlace(m map[string]bool, kind join.Kind, text string) bool {
	n := join.Parse(kind, text)
	return n.Full != "" && (m[n.Full] || n.Number != "" && m["#"+n.Number] || n.Title != "" && m["="+n.Title])
}

// leastMention is the fewest letters of a place that is found among words.
const leastMention = 4

// placeIn is the one place that a text names among other words; nil if it names
// none or several.
func (b *builder) placeIn(s seen) *service {
	if len(s.text) > longestSpoken {
		return nil
	}
	folded := join.Fold(s.text)
	found := ""
	for _, k := range sortedKeys(b.places.texts) {
		i := strings.Index(folded, k)
		if len(k) < leastMention || i < 0 || !apart(folded, i, i+len(k)) {
			continue
		}
		if found != "" && !strings.Contains(k, found) && !strings.Contains(found, k) {
			return nil
		}
		if len(k) > len(found) {
			found = k
		}
	}
	if found == "" {
		return nil
	}
	place := b.places.texts[found]
	if place.field == vocabulary.Zone || b.places.roomsZones {
		return &service{at: s, zones: []string{place.text}}
	}
	return &service{at: s, rooms: []string{place.text}}
}

// placeNamed is the name of the one place that a service names.
func (b *builder) placeNamed(v *service) string {
	for _, name := range slices.Concat(v.zones, v.rooms) {
		return name
	}
	return ""
}

// placeColumn is a column that was hardly understood and names a known place in
// each row: what the outputs or controls of the table serve. It is nil if there
// is none.
func (b *builder) placeColumn(t *table) *column {
	if c, ok := b.places.columns[t]; ok {
		return c
	}
	var found *column
	for _, c := range t.columns {
		if c.Confidence >= unsureHeader || c.Field != vocabulary.Unknown && c.Field != vocabulary.Floor && c.Field != vocabulary.Building && c.Field != vocabulary.Model {
			continue
		}
		cells, hits := 0, 0
		t.eachText(c, func(text string) {
			cells++
			if strings.ContainsFunc(text, unicode.IsLetter) && (namesPlace(b.places.zones, join.Zone, text) || namesPlace(b.places.rooms, join.Room, text)) {
				hits++
			}
		})
		if found == nil && cells > 0 && hits == cells && cells == t.devices() {
			found = c
		}
	}
	if b.places.columns == nil {
		b.places.columns = make(map[*table]*column)
	}
	b.places.columns[t] = found
	return found
}

// listOfPlaces takes a cell apart that names several places, or one that is
// no zone but a room.
func (b *builder) listOfPlaces(s seen) *service {
	isZone := func(text string) bool { return namesPlace(b.places.zones, join.Zone, text) }
	isRoom := func(text string) bool { return namesPlace(b.places.rooms, join.Room, text) }
	whole := join.Parse(join.Zone, s.text).Full
	switch {
	case s.field == vocabulary.Describe && countWords(s.text) > 8:
		return nil // prose
	case b.places.zones[whole] && (s.field == vocabulary.Zone || s.field == vocabulary.Describe):
		return nil // one zone of that very name
	case b.places.zones[whole]:
		return &service{at: s, zones: []string{s.text}}
	}
	if b.places.rooms[join.Parse(join.Room, s.text).Full] {
		return &service{at: s, rooms: []string{s.text}}
	}
	for marks := bySlashes; marks >= byMarks; marks-- { // the finest first: "2 and 3" is not zone 2
		parts := spread(listParts.Of(s.text, marks), isZone)
		if len(parts) < 2 {
			continue
		}
		v := &service{at: s}
		for _, p := range parts {
			if strings.Trim(p, "0123456789") == "" {
				p = "Zone " + p // "zones 1 and 3"
			}
			switch {
			case isZone(p):
				v.zones = append(v.zones, p)
			case isRoom(p):
				v.rooms = append(v.rooms, p)
			}
		}
		if n := len(v.zones) + len(v.rooms); n == len(parts) {
			return v
		}
	}
	if isZone(s.text) && s.field != vocabulary.Zone && s.field != vocabulary.Describe {
		return &service{at: s, zones: []string{s.text}}
	}
	if !isZone(s.text) && isRoom(s.text) {
		return &service{at: s, rooms: []string{s.text}}
	}
	return nil
}

// How a list of names is parted: by commas and the like; by words such as
// "and" too; by slashes too.
const (
	byMarks = iota
	byWords
	bySlashes
)

// listParts parts a list of names. The parts are shared: they must not be changed.
var listParts = remember.New(8192, func(text string, how int) []string {
	parts := listMarks.Split(text, -1)
	if how >= byWords {
		parts = splitAll(parts, listWords)
	}
	if how >= bySlashes {
		parts = splitAll(parts, slashMark)
	}
	return parts
})

func splitAll(list []string, at *regexp.Regexp) []string {
	var out []string
	for _, s := range list {
		out = append(out, at.Split(s, -1)...)
	}
	return out
}

// spread replaces ranges of numbers ("zones 1-3") by what they stand for, where
// both ends are names.
func spread(parts []string, isName func(string) bool) []string {
	var out []string
	for _, p := range parts {
		p = strings.Trim(p, " .")
		if p == "" {
			continue
		}
		var m []string
		if last := p[len(p)-1]; last >= '0' && last <= '9' {
			m = numbersTo.FindStringSubmatch(p)
		}
		if m == nil || !isName(m[1]+m[2]) || !isName(m[1]+m[3]) {
			out = append(out, p)
			continue
		}
		from, _ := strconv.Atoi(m[2])
		to, _ := strconv.Atoi(m[3])
		if to <= from {
			out = append(out, p)
		}
		for n := from; n <= to; n++ {
			out = append(out, m[1]+itoa(n))
		}
	}
	return out
}
