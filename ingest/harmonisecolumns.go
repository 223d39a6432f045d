package ingest

import (
	"slices"
	"strings"
	"unicode/utf8"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// What a column of one table is, beyond its header, by what its cells and the
// other columns of the table say.

// devices counts the rows that are devices.
func (t *table) devices() int {
	n := 0
	for i := range t.Records {
		if t.Records[i].Class == layout.Device {
			n++
		}
	}
	return n
}

// numberedChannels takes a column of counts for channel numbers where one
// amplifier stands on several rows with a different count each.
func (t *table) numberedChannels() {
	if t.Kind != layout.Amplifiers || t.has(vocabulary.Channel) || !t.has(vocabulary.ChannelCount) || !t.has(vocabulary.Amplifier) {
		return
	}
	amp, count := t.byField[vocabulary.Amplifier][0], t.byField[vocabulary.ChannelCount][0]
	seen := make(map[[2]string]bool)
	rows, amps := 0, make(map[string]bool)
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != layout.Device || r.Values[amp.i].Text == "" || r.Values[count.i].Text == "" {
			continue
		}
		k := [2]string{join.Key(r.Values[amp.i].Text), join.Key(r.Values[count.i].Text)}
		if seen[k] {
			return
		}
		seen[k] = true
		amps[k[0]] = true
		rows++
	}
	if rows > len(amps) {
		t.become(count, vocabulary.Channel, "one amplifier on several rows, another number on each")
		t.kind = layout.Channels
	}
}

// zonesInTitles gives up a column that was hardly a zone where the title or the
// sections of the table name its zones.
func (t *table) zonesInTitles() {
	cols := t.byField[vocabulary.Zone]
	if len(cols) != 1 || cols[0].Confidence >= 0.6 {
		return
	}
	named := t.title(vocabulary.Zone).had()
	for i := range t.Records {
		for k := range t.Records[i].Sections {
			named = named || t.Records[i].Sections[k].Field == vocabulary.Zone
		}
	}
	if named {
		t.become(cols[0], vocabulary.Unknown, "the titles name the zones")
	}
}

// mostlyStates is the share of a column's cells that must say what has become
// of a device before the column is one of states.
const mostlyStates = 0.8

// linesBesideOutputs takes a column of outputs for one of lines where its header
// speaks of lines and most cells of the column of amplifiers name outputs: "L1 |
// V1 out 1".
func (t *table) linesBesideOutputs() {
	if t.has(vocabulary.Circuit) || len(t.byField[vocabulary.Channel]) != 1 || !namesLines(t.byField[vocabulary.Channel][0]) {
		return
	}
	cells, outputs := 0, 0
	for _, c := range t.byField[vocabulary.Amplifier] {
		t.eachText(c, func(text string) {
			cells++
			if ref, err := notation.ParseChannel(text); err == nil && ref.Amplifier != "" && len(ref.Channels) > 0 && !ref.Doubts.Has(notation.DateOrPair) {
				outputs++
			}
		})
	}
	if cells > 0 && 2*outputs > cells {
		t.become(t.byField[vocabulary.Channel][0], vocabulary.Circuit, "the outputs stand beside them")
	}
}

// devicesNotRooms takes a column of rooms for one of descriptions where each of
// its cells is a word for a loudspeaker: "trompe", "ceiling speaker".
func (t *table) devicesNotRooms() {
	if t.has(vocabulary.Describe) {
		return
	}
	for _, c := range slices.Clone(t.byField[vocabulary.Room]) {
		if t.allCells(c, func(text string) bool {
			return countWords(text) <= 2 && !anyDigit(text) && vocabulary.DeviceIn(text) == vocabulary.LoudspeakerDevice
		}) {
			t.become(c, vocabulary.Describe, "its cells are words for loudspeakers")
		}
	}
}

// allCells reports whether a column has two cells or more and all of them are so.
func (t *table) allCells(c *column, so func(text string) bool) bool {
	cells, all := 0, true
	t.eachText(c, func(text string) {
		cells++
		all = all && so(text)
	})
	return cells >= 2 && all
}

// mostlyWords is the least share of places that have no figure in their names.
const mostlyWords = 0.6

// placesNotTags takes a column of tags of a list of loudspeakers that has no other for
// places for one of rooms where its cells are words, most of them without a figure: "Punto" over "Serra
// calda" and "Pali 1-4" is a place, as a point on a plan is not.
func (t *table) placesNotTags() {
	cols := t.byField[vocabulary.Tag]
	if t.kind != layout.Loudspeakers || len(cols) != 1 || t.has(vocabulary.Room) || join.HasWord(join.Loudspeaker, cols[0].Header) {
		return // below "Loudspeaker" they may be names of products
	}
	cells, words, others := 0, 0, 0
	distinct := make(map[string]bool)
	t.eachText(cols[0], func(text string) {
		cells++
		distinct[join.Key(text)] = true
		switch {
		case vocabulary.DeviceIn(text) != vocabulary.NoDevice, !hasLongWord(text) && anyDigit(text):
			others++
		case hasLongWord(text) && !anyDigit(text):
			words++
		}
	})
	if cells >= 3 && others == 0 && float64(words) >= mostlyWords*float64(cells) && len(distinct) == cells {
		t.become(cols[0], vocabulary.Room, "its cells are words, and no other column names places")
	}
}

// statusColumn takes a column that was not surely understood for one of states
// when its cells are: "installed", "spare", "to follow".
func (t *table) statusColumn() {
	if t.has(vocabulary.Status) {
		return
	}
	for _, c := range t.columns {
		if c.Field == vocabulary.Notes || c.Field == vocabulary.Mounting || numeric[c.Field] {
			continue
		}
		cells, states := 0, 0
		distinct := make(map[string]bool)
		most := min(len(t.Records), mostSamples+1) // cells that can be
		for i := range t.Records {
			r := &t.Records[i]
			v := &r.Values[c.i]
			if r.Class != layout.Device || v.Text == "" || v.How != schedule.Stated {
				continue
			}
			if cells++; cells > mostSamples {
				break
			}
			if isState(v.Text) {
				states++
				distinct[join.Key(v.Text)] = true
			} else if float64(cells-states) > (1-mostlyStates)*float64(most)+1 {
				break // too few of them whatever follows
			}
		}
		if cells >= 3 && len(distinct) >= 2 && float64(states) >= mostlyStates*float64(cells) {
			t.become(c, vocabulary.Status, "its cells say what has become of the devices")
			return
		}
	}
}

// isState reports whether a whole cell is a state of a device.
func isState(text string) bool {
	if countWords(text) > 4 {
		return false
	}
	for _, s := range notation.Statuses(text) {
		if 2*utf8.RuneCountInString(s.Text) >= utf8.RuneCountInString(text) {
			return true
		}
	}
	return false
}

// ratingsWithoutControls takes ratings of controls in a list of loudspeakers
// that names no control for those of its loudspeakers.
func (t *table) ratingsWithoutControls() {
	cols := t.byField[vocabulary.ControlWatts]
	if t.kind != layout.Loudspeakers || len(cols) != 1 || !t.has(vocabulary.Tap) || t.has(vocabulary.RatedWatts) ||
		t.has(vocabulary.Control) || t.has(vocabulary.ControlModel) || t.title(vocabulary.Control).had() || saysControl(cols[0]) {
		return
	}
	for i := range t.Records {
		for k := range t.Records[i].Sections {
			if t.Records[i].Sections[k].Field == vocabulary.Control {
				return
			}
		}
	}
	t.become(cols[0], vocabulary.RatedWatts, "no control is named")
}

// controlsNotJobs takes a column of jobs or clients in a list of loudspeakers for
// one of controls where its cells are such: the words for an order and for what
// operates something are near ("commande").
func (t *table) controlsNotJobs() {
	if t.kind != layout.Loudspeakers && t.kind != layout.Mixed && t.kind != layout.Zones || t.has(vocabulary.Control) {
		return
	}
	for _, f := range []vocabulary.Field{vocabulary.Job, vocabulary.JobNo, vocabulary.Client, vocabulary.Author} {
		for _, c := range slices.Clone(t.byField[f]) {
			cells, hits := 0, 0
			t.eachText(c, func(text string) {
				cells++
				if list, err := notation.ParseControls(text, notation.Auto); err == nil && len(list) == 1 && (list[0].Name != "" || list[0].W > 0) {
					hits++
				}
			})
			if hits > 0 && hits == cells {
				t.become(c, vocabulary.Control, "its cells name controls")
				return
			}
		}
	}
}

// ratingsNotOutputs takes a column of outputs whose cells are ratings and name no
// output for one of what the lines may carry ("Kan": 60 W, 100 V).
func (t *table) ratingsNotOutputs() {
	for _, c := range slices.Clone(t.byField[vocabulary.Channel]) {
		cells, hits := 0, 0
		t.eachText(c, func(text string) {
			cells++
			if _, err := notation.ParseRating(text, notation.Auto); err == nil && len(notation.PowersIn(text, notation.Auto)) > 0 {
				if _, err := notation.ParseChannel(text); err != nil {
					hits++
				}
			}
		})
		if hits > 0 && hits == cells && !t.has(vocabulary.ChannelWatts) {
			t.become(c, vocabulary.ChannelWatts, "its cells are ratings")
		}
	}
}

// ratingsOfRooms takes a rating of outputs in a list of loudspeakers for one of
// controls where the same output has several, and the header may mean either.
func (t *table) ratingsOfRooms() {
	cols := t.byField[vocabulary.ChannelWatts]
	if t.kind != layout.Loudspeakers || len(cols) != 1 || cols[0].RunnerUp != vocabulary.ControlWatts || t.has(vocabulary.ControlWatts) {
		return
	}
	of := make(map[string]string)
	for i := range t.Records {
		r := &t.Records[i]
		watts := r.Values[cols[0].i].Text
		if _, missing := notation.Missing(watts); missing || watts == "" || r.Class != layout.Device {
			continue
		}
		var output strings.Builder
		for _, f := range slices.Concat([]vocabulary.Field{vocabulary.JobNo, vocabulary.Job, vocabulary.Site}, outputFields) {
			for _, c := range t.byField[f] {
				output.WriteString(r.Values[c.i].Text + " ")
			}
		}
		k := join.Key(output.String())
		if had, ok := of[k]; ok && k != "" && had != watts {
			t.become(cols[0], vocabulary.ControlWatts, "one output has several")
			return
		}
		of[k] = watts
	}
}

// unsureOutputs gives up a column that was hardly one of outputs beside one that
// surely names the lines.
func (t *table) unsureOutputs() {
	sure := slices.ContainsFunc(t.byField[vocabulary.Circuit], func(c *column) bool { return c.Confidence >= sureHeader })
	for _, c := range slices.Clone(t.byField[vocabulary.Channel]) {
		if sure && c.Confidence < unsureHeader && !t.has(vocabulary.Amplifier) {
			t.become(c, vocabulary.Unknown, "another column names the lines")
		}
	}
}

// namesOfValues gives up a column that was taken for one of zones by its cells, where each
// of these is a name of what the cell beside it holds: "RATED POWER | 250 W".
func (t *table) namesOfValues() {
	for _, c := range slices.Clone(t.byField[vocabulary.Zone]) {
		if c.Confidence >= unsureHeader {
			continue
		}
		cells, names := 0, 0
		t.eachText(c, func(text string) {
			if cells++; names < cells-1 {
				return // one names nothing
			}
			if best := vocabulary.NewScorer().Header(text).Best(); numeric[best.Field] && best.Score >= sureHeader {
				names++
			}
		})
		if cells > 0 && names == cells {
			t.become(c, vocabulary.Unknown, "its cells name what stands beside them")
		}
	}
}

// remarksLast takes the last column for one of remarks where its header is not
// understood, no other column has them and most of its cells are words: "what I saw".
func (t *table) remarksLast() {
	if t.Kind != layout.Loudspeakers || t.has(vocabulary.Notes) || len(t.columns) == 0 {
		return
	}
	c := t.columns[len(t.columns)-1]
	if c.Field != vocabulary.Unknown {
		return
	}
	cells, said := 0, 0
	t.eachText(c, func(text string) {
		cells++
		if countWords(text) >= 2 && !anyDigit(text[:1]) || isState(text) {
			said++
		}
	})
	if cells >= 2 && 2*said > cells {
		t.become(c, vocabulary.Notes, "the last column, and most of its cells are remarks")
	}
}

// unitsBeside gives a column of lengths or powers without a unit the one that the column
// on its right names in every cell: "120 | ft".
func (t *table) unitsBeside() {
	for i, c := range t.columns[:max(0, len(t.columns)-1)] {
		beside := t.columns[i+1]
		if c.Unit != "" || beside.Field != vocabulary.Ignored && beside.Field != vocabulary.Unknown {
			continue
		}
		unit, same := "", true
		t.eachText(beside, func(text string) {
			same = same && (unit == "" || text == unit)
			unit = text
		})
		if same && unitOf(c.Field, unit) {
			c.Unit = unit
		}
	}
}

// unitOf reports whether a text is a unit that the cells of a field are in.
func unitOf(f vocabulary.Field, text string) bool {
	switch f {
	case vocabulary.Length:
		return slices.Contains([]string{"m", "ft", "yd", "km", "cm"}, text)
	case vocabulary.Tap, vocabulary.TotalWatts, vocabulary.RatedWatts, vocabulary.ChannelWatts, vocabulary.ControlWatts:
		return text == "W" || text == "kW" || text == "mW"
	}
	return false
}

// become gives a column a field.
func (t *table) become(c *column, f vocabulary.Field, why string) {
	old := t.byField[c.Field]
	for i := range old {
		if old[i] == c {
			t.byField[c.Field] = append(append([]*column(nil), old[:i]...), old[i+1:]...)
			break
		}
	}
	c.RunnerUp = c.Field
	c.Field = f
	if c.Evidence != "" {
		why = c.Evidence + "; " + why
	}
	c.Evidence = why
	c.Confidence = max(c.Confidence, 0.6)
	t.byField[f] = append(t.byField[f], c)
}
