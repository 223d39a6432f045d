package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A list of outputs looks much like a list of loudspeakers: names, watts, a
// place. These functions tell them apart by the other tables of the book.

// outputList takes a short list of outputs with a watts column for a list of
// channels: each row names another output, and nothing says where it plays.
func (t *table) outputList() {
	taps := t.byField[vocabulary.Tap]
	if t.kind != layout.Loudspeakers && t.kind != layout.Mixed || len(taps) != 1 || len(t.columns) > 4 {
		return
	}
	if slices.ContainsFunc([]vocabulary.Field{vocabulary.Zone, vocabulary.Room, vocabulary.Quantity, vocabulary.Model, vocabulary.Describe, vocabulary.Control}, t.has) {
		return
	}
	var names []*column
	for _, f := range []vocabulary.Field{vocabulary.Tag, vocabulary.Amplifier, vocabulary.Channel} {
		names = append(names, t.byField[f]...)
	}
	if len(names) == 0 || len(names) > 2 || len(names) == 2 && t.has(vocabulary.Tag) {
		return // a tag beside an output is a loudspeaker on it
	}
	rows := 0
	seen := make(map[string]bool)
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != layout.Device {
			continue
		}
		var text strings.Builder
		for _, c := range names {
			text.WriteString(r.Values[c.i].Text + " ")
		}
		if ref, err := notation.ParseChannel(strings.TrimSpace(text.String())); len(names) == 1 && (err != nil || ref.Amplifier == "" || len(ref.Channels) != 1) {
			return
		}
		rows++
		seen[join.Key(text.String())] = true
	}
	if rows < 2 || len(seen) != rows {
		return
	}
	t.kind = layout.Channels
	if len(names) == 1 && names[0].Field == vocabulary.Tag {
		t.become(names[0], vocabulary.Channel, "a list of outputs")
	}
	t.become(taps[0], vocabulary.ChannelWatts, "a list of outputs: its watts are what they give")
}

// outputLists takes lists with one watts column and a different output on each
// row for lists of what the outputs give, when another table of the book lists
// the loudspeakers: on these outputs, or without a word of outputs.
func outputLists(tables []*table) {
	for _, t := range tables {
		names := t.outputNames()
		if names == nil {
			continue
		}
		for _, o := range tables {
			if o == t || o.kind != layout.Loudspeakers && o.kind != layout.Mixed && o.kind != layout.Zones || !o.has(vocabulary.Tap) && !o.has(vocabulary.TotalWatts) ||
				!o.has(vocabulary.Tag) && !o.has(vocabulary.Quantity) && !o.has(vocabulary.Model) && !o.has(vocabulary.Room) {
				continue
			}
			cells, hits := 0, 0
			of := outputFields
			if !slices.ContainsFunc(outputFields, t.has) {
				of = []vocabulary.Field{vocabulary.Zone} // groups of amplifiers
			}
			for _, f := range of {
				for _, c := range o.byField[f] {
					o.eachText(c, func(text string) {
						cells++
						if names[join.Key(text)] || names[outputKey(text)] {
							hits++
						}
					})
				}
			}
			if cells > 0 && 2*hits < cells {
				continue
			}
			t.kind = layout.Amplifiers
			groupsAsOutputs(t, tables)
			if t.has(vocabulary.Channel) || t.has(vocabulary.Zone) && !t.has(vocabulary.Amplifier) {
				t.kind = layout.Channels
			}
			for _, f := range []vocabulary.Field{vocabulary.Tap, vocabulary.TotalWatts} {
				for _, c := range slices.Clone(t.byField[f]) {
					t.become(c, vocabulary.ChannelWatts, "a list of outputs: its watts are what they give")
				}
			}
			break
		}
	}
}

// countedOutputs takes a list that names an output, counts and watts for one of
// loudspeakers, when another table of the book rates the same amplifiers.
func countedOutputs(tables []*table) {
	for _, t := range tables {
		if t.kind != layout.Channels && t.kind != layout.Amplifiers || !t.has(vocabulary.Quantity) || t.has(vocabulary.Tap) || len(t.byField[vocabulary.ChannelWatts]) != 1 {
			continue
		}
		for _, o := range tables {
			if o == t || o.kind != layout.Channels && o.kind != layout.Amplifiers || o.has(vocabulary.Quantity) || !o.has(vocabulary.ChannelWatts) && !o.has(vocabulary.FrameWatts) {
				continue
			}
			names := make(map[string]bool)
			for _, f := range []vocabulary.Field{vocabulary.Amplifier, vocabulary.Tag, vocabulary.Channel} {
				for _, c := range o.byField[f] {
					o.eachText(c, func(text string) { names[join.Key(text)] = true })
				}
			}
			cells, hits := 0, 0
			for _, c := range slices.Concat(t.byField[vocabulary.Amplifier], t.byField[vocabulary.Channel]) {
				t.eachText(c, func(text string) {
					cells++
					if names[join.Key(text)] && strings.ContainsFunc(text, isLetter) {
						hits++
					}
				})
			}
			if hits > 0 && 3*hits >= cells {
				t.kind = layout.Loudspeakers
				t.become(t.byField[vocabulary.ChannelWatts][0], vocabulary.Tap, "another table rates the amplifiers")
				break
			}
		}
	}
}

// outputFields are the fields of columns that name outputs.
// Amplifiers come first, as in the names of their outputs: "V2" and "1" are "V2-1".
var outputFields = []vocabulary.Field{vocabulary.Amplifier, vocabulary.Channel, vocabulary.Circuit}

// outputKey is the key of the one output that a text names with its amplifier, without
// the words for them: "Amp V2, out 1" is "V2 1"; "" where it names none.
func outputKey(text string) string {
	ref, err := notation.ParseChannel(text)
	if err != nil || ref.Amplifier == "" || len(ref.Channels) != 1 {
		return ""
	}
	return join.Key(ref.Amplifier + " " + ref.Channels[0])
}

// outputNames are the keys of the outputs that the rows of a table name, if it
// may be a list of outputs: one watts column, each row another output, and no
// column that only devices have.
func (t *table) outputNames() map[string]bool {
	if t.kind != layout.Loudspeakers && t.kind != layout.Mixed && t.kind != layout.Zones || t.Matrix ||
		len(t.byField[vocabulary.Tap])+len(t.byField[vocabulary.TotalWatts]) != 1 ||
		slices.ContainsFunc([]vocabulary.Field{vocabulary.Tag, vocabulary.Quantity, vocabulary.Model, vocabulary.Describe, vocabulary.Kind, vocabulary.TapList, vocabulary.Control}, t.has) {
		return nil
	}
	var cols []*column
	for _, f := range outputFields {
		cols = append(cols, t.byField[f]...)
	}
	if len(cols) == 0 {
		cols = t.groupsOfAmplifiers()
	}
	if len(cols) == 0 {
		return nil
	}
	if t.has(vocabulary.Amplifier) {
		for _, c := range t.byField[vocabulary.Zone] {
			if t.bareNames(c) {
				cols = append(cols, c) // the groups of an amplifier are its outputs
			}
		}
	}
	names, whole := make(map[string]bool), make(map[string]bool)
	rows := 0
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != layout.Device {
			continue
		}
		var text strings.Builder
		for _, c := range cols {
			v := r.Values[c.i].Text
			names[join.Key(v)] = true
			text.WriteString(v + " ")
		}
		rows++
		whole[join.Key(text.String())] = true
		names[join.Key(text.String())] = true
	}
	delete(names, "")
	if rows == 0 || len(whole) != rows {
		return nil
	}
	return names
}

// bareNames reports whether a column holds nothing but numbers and letters of zones.
func (t *table) bareNames(c *column) bool {
	bare, cells := true, 0
	t.eachText(c, func(text string) {
		cells++
		bare = bare && (join.Parse(join.Zone, text).Bare() || initialled(c.Header, text))
	})
	return bare && cells > 0
}

// initialled reports whether a text is a number behind letters the first or the last of which begins a header:
// "G1", "LG 1" and "LG-1" below "Groep".
func initialled(header, text string) bool {
	text = strings.TrimSpace(text)
	letters := text[:len(text)-len(strings.TrimLeftFunc(text, isLetter))]
	number := strings.TrimLeft(text[len(letters):], " -.")
	if letters == "" || len(letters) > 3 || len(number) > 2 || !isWhole(number) || header == "" {
		return false
	}
	return strings.EqualFold(letters[:1], header[:1]) || strings.EqualFold(letters[len(letters)-1:], header[:1])
}

// eachText hands the texts of the devices in a column to do.
func (t *table) eachText(c *column, do func(string)) {
	for i := range t.Records {
		if r := &t.Records[i]; r.Class == layout.Device && r.Values[c.i].Text != "" {
			do(r.Values[c.i].Text)
		}
	}
}

// eachRow hands the texts in a column to do, those of the rows of the job alone.
func (t *table) eachRow(c *column, do func(string)) {
	for _, r := range t.rows {
		if s := r.at(c); r.out == "" && s.had() {
			do(s.text)
		}
	}
}

// linesAsItems takes numbers of the rows of a list of outputs, cables or
// controls for lines, where loudspeakers name lines under the same header.
func linesAsItems(tables []*table) {
	fields := make(map[string]vocabulary.Field)
	for _, t := range tables {
		if t.kind != layout.Loudspeakers && t.kind != layout.Mixed && t.kind != layout.Zones {
			continue
		}
		for _, f := range []vocabulary.Field{vocabulary.Circuit, vocabulary.Channel} {
			for _, c := range t.byField[f] {
				fields[join.Key(c.Header)] = f
			}
		}
	}
	delete(fields, "")
	for _, t := range tables {
		if t.kind != layout.Amplifiers && t.kind != layout.Channels && t.kind != layout.Cables {
			continue
		}
		for _, c := range slices.Clone(t.byField[vocabulary.Item]) {
			if f, ok := fields[join.Key(c.Header)]; ok && !t.has(f) {
				t.become(c, f, "the same header means "+f.String()+" in the list of loudspeakers")
			}
		}
	}
}

// measuredLines takes numbers of rows for lines where the header is a word for both and the impedance of each row is told,
// as a line has one: "Line | Area | Speakers | Tap | Impedance measured", "Line | Amp | Output | Impedance".
func (t *table) measuredLines() {
	if t.has(vocabulary.Circuit) || t.has(vocabulary.Channel) && !t.has(vocabulary.Amplifier) || !t.has(vocabulary.Measured) && !t.has(vocabulary.Impedance) {
		return
	}
	for _, c := range t.byField[vocabulary.Item] {
		if join.HasWord(join.Cable, c.Header) {
			t.become(c, vocabulary.Circuit, "each row has an impedance, as lines have")
			return
		}
	}
}

// amplifierColumns takes columns of a list of loudspeakers for the amplifiers
// where no other column has them: one whose header has a word for an amplifier,
// or for a rack whose outputs are numbered anew in each.
func (t *table) amplifierColumns() {
	t.outputColumns()
	if t.kind != layout.Loudspeakers && t.kind != layout.Mixed && t.kind != layout.Zones || t.has(vocabulary.Amplifier) || t.Matrix {
		return
	}
	for _, c := range t.columns {
		if t.worded(c) {
			t.become(c, vocabulary.Amplifier, "its cells name amplifiers")
			return
		}
		free := c.Field == vocabulary.Unknown || c.Field == vocabulary.Model || c.Field == vocabulary.Item || c.Field == vocabulary.Describe
		if !free || join.HasWord(join.Loudspeaker, c.Header) || strings.ContainsAny(c.Header, "0123456789") || !t.namesFew(c) ||
			c.Field == vocabulary.Describe && t.allCells(c, layout.SaysLoudspeaker) {
			continue
		}
		switch {
		case join.HasWord(join.Amplifier, c.Header) && !modelWords.in(join.Fold(c.Header)):
			t.become(c, vocabulary.Amplifier, "its header names amplifiers")
		case join.HasWord(join.Rack, c.Header) && t.numberedAnew(c):
			t.become(c, vocabulary.Amplifier, "the outputs are numbered anew in each")
		default:
			continue
		}
		return
	}
}

// publicAddress finds the short word for a whole system, which is one for an
// amplifier too: a "PA zone" is a zone.
var publicAddress = regexp.MustCompile(`(?i)\bP\.?A\b\.?`)

// outputColumns takes columns of a list of loudspeakers for outputs or lines
// where no other column has them: "Amp zone", and cables that several
// loudspeakers share without a length of their own.
func (t *table) outputColumns() {
	if t.kind != layout.Loudspeakers && t.kind != layout.Mixed || t.has(vocabulary.Channel) || t.has(vocabulary.Circuit) || t.Matrix {
		return
	}
	for _, c := range t.byField[vocabulary.Zone] {
		if join.HasWord(join.Amplifier, publicAddress.ReplaceAllString(c.Header, "")) && t.namesFew(c) {
			t.become(c, vocabulary.Channel, "its header names amplifiers: their outputs")
			return
		}
	}
	if t.has(vocabulary.Amplifier) || t.has(vocabulary.From) || t.has(vocabulary.To) || t.has(vocabulary.Length) {
		return
	}
	for _, c := range t.byField[vocabulary.Cable] {
		if t.namesFew(c) {
			t.become(c, vocabulary.Circuit, "several loudspeakers share each")
			return
		}
	}
}

// namesFew reports whether a column holds short names, fewer than there are rows.
func (t *table) namesFew(c *column) bool {
	cells, names := 0, make(map[string]bool)
	short := true
	t.eachText(c, func(text string) {
		cells++
		names[join.Key(text)] = true
		short = short && countWords(text) <= 3 && !strings.ContainsAny(text, ".,")
	})
	return short && cells > 0 && (len(names) < cells || cells == 1)
}

// numberedAnew reports whether the same output stands beside several names of a column.
func (t *table) numberedAnew(c *column) bool {
	return slices.ContainsFunc(t.byField[vocabulary.Channel], func(ch *column) bool { return t.besideSeveral(ch, c) })
}

// besideSeveral reports whether a name of one column stands beside several of another.
func (t *table) besideSeveral(c, of *column) bool {
	beside := make(map[string]string)
	for i := range t.Records {
		r := &t.Records[i]
		name, other := join.Key(r.Values[c.i].Text), join.Key(r.Values[of.i].Text)
		if r.Class != layout.Device || name == "" || other == "" {
			continue
		}
		if had, ok := beside[name]; ok && had != other {
			return true
		}
		beside[name] = other
	}
	return false
}
