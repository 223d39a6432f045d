package layout

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/vocabulary"
)

// Bills of quantities and notes describe devices in sentences. What these say
// becomes columns of the table, so that a sentence reads like a row of cells;
// the values keep the cell that they stand in.

// worded are the fields of columns whose cells may be sentences about devices.
var worded = [vocabulary.Fields]bool{vocabulary.Describe: true, vocabulary.Model: true, vocabulary.Kind: true, vocabulary.Tag: true, vocabulary.Quantity: true, vocabulary.Unknown: true}

// phrases reads the sentences of a table that has no column of taps.
func (f *finder) phrases(t *Table) {
	if t.Kind == Cables || t.Kind == Measurements || t.Matrix {
		return
	}
	col := phraseColumn(t)
	if col < 0 {
		return
	}
	rows := phraseRows(t, col)
	if t.Kind != Mixed {
		t.Kind = Loudspeakers
	}
	set := slices.ContainsFunc(rows, func(r phraseRow) bool { return r.p.set != "" || r.p.full })
	switch t.Columns[col].Field {
	case vocabulary.Quantity, vocabulary.Tag, vocabulary.Tap:
		t.Columns[col].Field = vocabulary.Describe
	}
	split := len(rows) > len(t.Records)
	t.Matrix = t.Matrix || split
	made := newPhraseColumns(t, col)
	units := unitColumn(t)
	t.Records = nil
	roomsBehind(rows, col)
	for _, r := range rows {
		if r.Class == Device {
			r.classify(units)
		}
		if r.Class == Device || r.Class == Struck || r.Class == Hidden {
			made.read(&r, set)
		}
		t.Records = append(t.Records, r.Record)
	}
	t.padRecords()
}

// A phraseRow is a record and the sentence it consists of.
type phraseRow struct {
	Record
	p phrase
}

// phraseColumn finds the column whose sentences name loudspeakers and watts, -1 if there is none.
func phraseColumn(t *Table) int {
	best, most := -1, 0
	tap := slices.IndexFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Tap })
	for j, c := range t.Columns {
		if tap >= 0 && j != tap || tap < 0 && !worded[c.Field] {
			continue
		}
		hits, rows := 0, 0
		for i := range t.Records {
			r := &t.Records[i]
			if r.Class != Device {
				continue
			}
			rows++
			text := r.Values[j].Text
			if len(text) < 6 || len(text) > 400 || !rePhraseW.MatchString(text) {
				continue
			}
			p := phraseOf(oneLine(text))
			switch { // a column of taps must count its loudspeakers and say a word of them, in most rows
			case j == tap:
				if p.count != "" && rePhraseWord.MatchString(text) {
					hits++
				}
			case p.device == vocabulary.LoudspeakerDevice, p.set != "" && (p.count != "" || p.same):
				hits++
			}
		}
		need := 4
		if j == tap || t.Kind != Loudspeakers && t.Kind != Mixed {
			need = 2
		}
		if (hits >= 2 || hits == rows) && need*hits >= rows && hits > most {
			best, most = j, hits
		}
	}
	return best
}

// rePhraseWord finds a word that is no unit.
var rePhraseWord = regexp.MustCompile(`\p{L}{4,}`)

// rePhraseParts parts a cell that describes several groups of devices.
var rePhraseParts = regexp.MustCompile(`\s*(?:\n|\r|;|\s\+\s|\s&\s)\s*`)

// rePhraseNext finds where the next group of a list may begin: "4 horns at 15 W,
// 2 horns at 10 W".
var rePhraseNext = regexp.MustCompile(`(?:,\s+|\s(?:and|und|et|y|e|en)\s+)(\(?\d)`)

// groupsOf divides a text into the groups of devices that it describes, each
// with a count; one that does not is a part by itself.
func groupsOf(text string) []string {
	parts := rePhraseParts.Split(text, -1)
	if len(parts) == 1 {
		parts = nil
		start := 0
		for _, m := range rePhraseNext.FindAllStringSubmatchIndex(text, -1) {
			parts, start = append(parts, text[start:m[0]]), m[2]
		}
		parts = append(parts, text[start:])
	}
	counted := func(s string) bool {
		p := phraseOf(s)
		return p.count != "" && (p.set != "" || p.watts != "" || p.same)
	}
	if len(parts) > 1 && slices.ContainsFunc(parts, func(s string) bool { return !counted(s) }) {
		return []string{oneLine(text)}
	}
	return parts
}

// phraseRows takes the records apart where their sentence describes several
// groups with a count each, and joins sentences that go on in the row below.
func phraseRows(t *Table, col int) []phraseRow {
	var out []phraseRow
	var before phrase // of the last device that was described in full
	for i := 0; i < len(t.Records); i++ {
		r := t.Records[i]
		if r.Class != Device && r.Class != Struck && r.Class != Hidden {
			out = append(out, phraseRow{Record: r})
			continue
		}
		var whole strings.Builder
		whole.WriteString(r.Values[col].Text)
		for k := i + 1; k < len(t.Records) && t.Records[k].Reason == goesOn; k++ {
			whole.WriteString(" " + t.Records[k].Text)
		}
		parts := groupsOf(whole.String())
		for _, part := range parts {
			one := phraseRow{Record: r, p: phraseOf(part)}
			if one.p.same {
				one.p.device = before.device
				if one.p.watts == "" {
					one.p.watts = before.watts
				}
				if one.p.amp == "" && one.p.output == "" && one.p.line == "" { // on the same output
					one.p.amp, one.p.output, one.p.line, one.p.sameLine = before.amp, before.output, before.line, true
				} else if one.p.amp == "" {
					one.p.amp = before.amp
				}
			}
			before = one.p
			if len(parts) > 1 {
				one.p.sum = "" // of all of them
				one.Values = slices.Clone(r.Values)
				one.Values[col].Text = part
				for j, c := range t.Columns {
					if rowSums[c.Field] {
						one.Values[j] = Value{At: r.Values[j].At}
					}
				}
			}
			out = append(out, one)
		}
		if len(parts) > 1 && r.Class == Device {
			out = appendSum(out, t, &r)
		}
	}
	return out
}

// rowSums are the fields that state something of a whole row.
var rowSums = [vocabulary.Fields]bool{vocabulary.TotalWatts: true, vocabulary.Load: true, vocabulary.Quantity: true}

// appendSum adds a record for what a row states of all its groups together, if it does.
func appendSum(out []phraseRow, t *Table, r *Record) []phraseRow {
	sum := *r
	sum.Values = make([]Value, len(t.Columns))
	stated := false
	for j, c := range t.Columns {
		sum.Values[j].At = r.Values[j].At
		if rowSums[c.Field] && r.Values[j].Text != "" {
			sum.Values[j], stated = r.Values[j], true
			sum.At = r.Values[j].At
			sum.Text = oneLine(r.Values[j].Text)
		}
	}
	if !stated {
		return out
	}
	sum.Class, sum.Reason = Total, "what the groups of the row come to"
	return append(out, phraseRow{Record: sum})
}

// classify decides whether a row of a bill is one of devices at all: not where it
// names cable or other equipment, nor where it counts metres or hours.
func (r *phraseRow) classify(units int) {
	switch {
	case r.p.device == vocabulary.CableDevice:
		r.Class, r.Reason = NoDevice, "names a cable"
	case r.p.device == vocabulary.OtherDevice && r.p.set == "":
		r.Class, r.Reason = NoDevice, "names other equipment"
	case units >= 0 && classOf(r.Values[units].Text)&classNoPiece != 0:
		r.Class, r.Reason = NoDevice, "is not counted in pieces: "+quote(r.Values[units].Text)
	case r.p.device == vocabulary.NoDevice && !r.p.same && r.p.watts == "" && r.p.set == "" && !r.p.mounted:
		r.Class, r.Reason = NoDevice, "names no device"
	default:
		return
	}
	if r.Text == "" {
		var words []string
		for _, v := range r.Values {
			if v.Text != "" && v.How == schedule.Stated {
				words = append(words, oneLine(v.Text))
			}
		}
		r.Text = strings.Join(words, " | ")
	}
}

// unitColumn finds the column of a bill that says what each row is counted in, -1 if there is none.
func unitColumn(t *Table) int {
	for j := range t.Columns {
		hits, cells := 0, 0
		for i := range t.Records {
			if r := &t.Records[i]; r.Class == Device && r.Values[j].Text != "" {
				cells++
				if classOf(r.Values[j].Text)&(classPiece|classNoPiece) != 0 {
					hits++
				}
			}
		}
		if hits >= 2 && 10*hits >= 7*cells {
			return j
		}
	}
	return -1
}

// phraseColumns adds the columns that sentences fill.
type phraseColumns struct {
	t   *Table
	col int
	has []vocabulary.Field       // what the table has columns of by itself
	at  map[vocabulary.Field]int // the columns made
}

func newPhraseColumns(t *Table, col int) *phraseColumns {
	made := &phraseColumns{t: t, col: col, at: map[vocabulary.Field]int{}}
	for _, c := range t.Columns {
		made.has = append(made.has, c.Field)
	}
	return made
}

// padRecords gives records that were made before a column was added a blank in it.
func (t *Table) padRecords() {
	for i := range t.Records {
		if r := &t.Records[i]; len(r.Values) < len(t.Columns) {
			r.Values = pad(r.Values, len(t.Columns))
		}
	}
}

// read takes what a sentence says as values of its row. set says that sentences of the table
// tell what loudspeakers are set to from what they are rated.
func (c *phraseColumns) read(r *phraseRow, set bool) {
	p := &r.p
	if p.device == vocabulary.AmplifierDevice {
		return // its outputs are no place of a loudspeaker
	}
	if p.device == vocabulary.ControlDevice {
		c.put(r, vocabulary.ControlWatts, p.watts)
		c.put(r, vocabulary.Room, p.room)
		c.put(r, vocabulary.Zone, p.zone)
		return
	}
	switch {
	case p.set != "":
		c.put(r, vocabulary.Tap, p.set)
		c.put(r, vocabulary.RatedWatts, p.watts)
	case p.full:
		c.put(r, vocabulary.Tap, p.watts)
	case set:
		c.put(r, vocabulary.RatedWatts, p.watts)
	default:
		c.put(r, vocabulary.Tap, p.watts)
	}
	c.put(r, vocabulary.Quantity, p.count)
	c.put(r, vocabulary.TotalWatts, p.sum)
	if p.amp != "" && p.output != "" {
		c.put(r, vocabulary.Amplifier, p.amp)
	}
	c.put(r, vocabulary.Channel, p.output)
	c.put(r, vocabulary.Circuit, p.line)
	for _, f := range []vocabulary.Field{vocabulary.Amplifier, vocabulary.Channel, vocabulary.Circuit} {
		if j, ok := c.at[f]; ok && p.sameLine && j < len(r.Values) && r.Values[j].Text != "" {
			r.Values[j].How, r.Values[j].Because = schedule.CarriedDown, "as in the row above"
		}
	}
	c.put(r, vocabulary.Zone, p.zone)
	c.put(r, vocabulary.Room, p.room)
}

// put adds a value to a row, and its column to the table where that has none of the field.
func (c *phraseColumns) put(r *phraseRow, f vocabulary.Field, text string) {
	if text == "" || slices.Contains(c.has, f) {
		return
	}
	j, ok := c.at[f]
	if !ok {
		of := c.t.Columns[c.col]
		j = len(c.t.Columns)
		c.at[f] = j
		c.t.Columns = append(c.t.Columns, Column{At: of.At, Header: of.Header, Field: f, Confidence: 0.7, Evidence: "said in words under the header “" + of.Header + "”"})
	}
	if len(r.Values) <= j {
		r.Values = pad(r.Values, j+1)
	}
	from := r.Values[c.col]
	r.Values[j] = Value{Cell: from.Cell, At: from.At, Text: text, How: schedule.Stated, Because: "in the description"}
}
