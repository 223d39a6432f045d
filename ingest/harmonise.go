package ingest

import (
	"cmp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// What one table does not tell of a column, the other tables of the book may:
// the same header elsewhere, or the same names below another one.

// harmonise settles columns that were not understood, or not surely, by what
// other tables of the book say.
func harmonise(tables []*table) {
	for _, t := range tables {
		t.mixedByWords()
		t.unitsBeside()
		t.chainColumns()
		t.amplifierColumns()
		t.tapsNotRatings()
		t.describedAmps()
		t.ampsInRacks()
		t.outputsDescribed()
		t.numberedChannels()
		t.measuredLines()
		t.zonesInTitles()
		t.namesOfValues()
		t.linesBesideOutputs()
		t.cablesNotModels()
		t.devicesNotRooms()
		t.placesNotTags()
		t.statusColumn()
		t.ratingsWithoutControls()
		t.namesOfControls()
		t.controlsNotJobs()
		t.countsNotJobs()
		t.controlsByTheirCells()
		t.headerlessAmps()
		t.ratingsNotOutputs()
		t.tapsOfAmplifiers()
		t.ratedOutputColumn()
		t.ratingsOfRooms()
		t.ratingsOfOutputs()
		t.unsureOutputs()
		t.placesOfJobs()
		t.servesNotPlaces()
	}
	measuredOutputs(tables)
	legendsOfItems(tables)
	settingsOfItems(tables)
	speakerNumbers(tables)
	codesOfSites(tables)
	placesHangTogether(tables)
	ratingsOfSplitLists(tables)
	constantZones(tables)
	zoneAmplifiers(tables)
	ampsAsTypes(tables)
	ampsAsPlaces(tables)
	ratingsByRows(tables)
	sameKinds(tables)
	agreeByHeader(tables)
	lengthsOfCables(tables)
	byHeader(tables)
	byNames(tables)
	controlsWithTags(tables)
	controlLists(tables)
	tagsNotJobs(tables)
	tagsOfControls(tables)
	equipmentOfCables(tables)
	outputLists(tables)
	countedOutputs(tables)
	linesAsItems(tables)
	groupsAsLines(tables)
	linesOfZones(tables)
	linesByPlace(tables)
	for _, t := range tables {
		t.outputList()
		t.remarksLast()
		t.remarksOnControls()
	}
}

// constantZones gives up columns that were hardly zones and say the same in
// every row of the book.
func constantZones(tables []*table) {
	texts := make(map[string]bool)
	var cols []*column
	var of []*table
	for _, t := range tables {
		for _, c := range t.byField[vocabulary.Zone] {
			if c.Confidence >= 0.5 {
				return
			}
			t.eachName(c, join.Plain, func(k, _ string) { texts[k] = true })
			cols, of = append(cols, c), append(of, t)
		}
	}
	if len(texts) != 1 {
		return
	}
	for i, c := range cols {
		of[i].become(c, vocabulary.Unknown, "the same in every row")
	}
}

// ratingsByRows takes a rating of channels for one of controls when, over all
// tables with that header, only rows with a control have it.
func ratingsByRows(tables []*table) {
	type count struct{ with, without, bare int }
	counts := make(map[string]*count)
	each := func(do func(t *table, rating, control *column)) {
		for _, t := range tables {
			cols, controls := slices.Concat(t.byField[vocabulary.ChannelWatts], t.byField[vocabulary.ControlWatts]), t.byField[vocabulary.Control]
			if len(cols) == 1 && len(controls) == 1 {
				do(t, cols[0], controls[0])
			}
		}
	}
	each(func(t *table, rating, control *column) {
		n := counts[headerKey(rating)]
		if n == nil {
			n = &count{}
			counts[headerKey(rating)] = n
		}
		for i := range t.Records {
			r := &t.Records[i]
			if r.Class != layout.Device {
				continue
			}
			rated, controlled := r.Values[rating.i].Text != "", r.Values[control.i].Text != ""
			switch {
			case rated && controlled:
				n.with++
			case rated:
				n.without++
			case !controlled:
				n.bare++
			}
		}
	})
	each(func(t *table, rating, _ *column) {
		if n := counts[headerKey(rating)]; rating.Field == vocabulary.ChannelWatts && rating.Confidence < 0.9 && n.without == 0 && n.with >= 3 && n.bare >= 2 {
			t.become(rating, vocabulary.ControlWatts, "only rows with a control have it")
		}
	})
}

// rivals are the fields that one header may be read as in one table and
// another: which of them it is, the surer tables decide for all.
var rivals = map[vocabulary.Field]bool{vocabulary.ChannelWatts: true, vocabulary.ControlWatts: true, vocabulary.RatedWatts: true,
	vocabulary.TotalWatts: true, vocabulary.Room: true, vocabulary.Zone: true, vocabulary.Length: true, vocabulary.Height: true}

// agreeByHeader lets tables of one kind that bear the same header agree on what
// it means: sheet after sheet of one form is filled in the same way.
func agreeByHeader(tables []*table) {
	type place struct {
		kind   layout.Kind
		header string
	}
	weights := make(map[place]map[vocabulary.Field]float64)
	for _, t := range tables {
		for _, c := range t.columns {
			if k := headerKey(c); k != "" && rivals[c.Field] {
				p := place{t.kind, k}
				if weights[p] == nil {
					weights[p] = make(map[vocabulary.Field]float64)
				}
				weights[p][c.Field] += c.Confidence
			}
		}
	}
	for _, t := range tables {
		for _, c := range t.columns {
			w := weights[place{t.kind, headerKey(c)}]
			if !rivals[c.Field] || len(w) < 2 {
				continue
			}
			best := c.Field
			for _, f := range sortedKeys(w) {
				if w[f] > w[best] {
					best = f
				}
			}
			if best != c.Field && !t.has(best) {
				t.become(c, best, "the same header means "+best.String()+" in most tables")
			}
		}
	}
}

// lengthsOfCables gives up a column of a list of loudspeakers that was hardly
// a length when the book has a list of cables with their lengths.
func lengthsOfCables(tables []*table) {
	listed := false
	for _, t := range tables {
		for _, c := range t.byField[vocabulary.Length] {
			listed = listed || t.kind == layout.Cables && c.Confidence >= unsureHeader
		}
	}
	if !listed {
		return
	}
	for _, t := range tables {
		cols := t.byField[vocabulary.Length]
		if len(cols) == 1 && t.kind == layout.Loudspeakers && cols[0].Confidence < 0.75 && !t.has(vocabulary.Cable) && !t.has(vocabulary.Gauge) && !t.has(vocabulary.CableType) {
			t.become(cols[0], vocabulary.Unknown, "the lengths of cables stand in a list of their own")
		}
	}
}

// controlLists takes a list with one watts column for one of controls, when
// each row names another control and other rows of the book say what hangs
// behind these controls.
func controlLists(tables []*table) {
	behind := make(map[string]*table)
	for _, t := range tables {
		if t.has(vocabulary.Tap) && (t.has(vocabulary.Tag) || t.has(vocabulary.Quantity) || t.has(vocabulary.TotalWatts)) {
			for _, c := range t.byField[vocabulary.Control] {
				t.eachName(c, join.Plain, func(k, _ string) { behind[k] = t })
			}
		}
	}
	for _, t := range tables {
		if !t.mayListControls() {
			continue
		}
		names := t.byField[vocabulary.Control]
		if len(names) == 0 {
			names = t.columnsOf(behind)
		}
		if len(names) != 1 {
			continue
		}
		rows, known := 0, 0
		seen := make(map[string]bool)
		t.eachName(names[0], join.Plain, func(k, _ string) {
			rows++
			if from := behind[k]; from != nil && from != t {
				known++
			}
			seen[k] = true
		})
		if rows < 2 || len(seen) != rows || 2*known < rows || 10*rows < 9*t.devices() {
			continue
		}
		t.kind = layout.Controls
		if names[0].Field != vocabulary.Control {
			t.become(names[0], vocabulary.Control, "its cells are controls that other rows name")
		}
		if t.has(vocabulary.ControlWatts) {
			continue
		}
		for _, f := range []vocabulary.Field{vocabulary.Tap, vocabulary.ChannelWatts, vocabulary.FrameWatts, vocabulary.RatedWatts} {
			if cols := t.byField[f]; len(cols) > 0 {
				t.become(cols[0], vocabulary.ControlWatts, "a list of controls: its watts are what they carry")
				break
			}
		}
	}
}

// mayListControls reports whether a table may be a list of controls: one without loudspeakers, or without
// amplifiers and outputs of its own.
func (t *table) mayListControls() bool {
	switch t.kind {
	case layout.Loudspeakers, layout.Mixed, layout.Types:
	case layout.Amplifiers, layout.Channels:
		if t.has(vocabulary.Amplifier) || t.has(vocabulary.Channel) || t.has(vocabulary.Circuit) {
			return false
		}
	default:
		return false
	}
	return !t.has(vocabulary.Tag) && !t.has(vocabulary.Quantity) && !t.has(vocabulary.TotalWatts)
}

// columnsOf are the columns of a table, headed by a word for something else, whose cells
// all are names of other tables: "Réglage" is a tap, or what one is set by.
func (t *table) columnsOf(names map[string]*table) []*column {
	var out []*column
	for _, f := range []vocabulary.Field{vocabulary.Tap, vocabulary.Model, vocabulary.Item, vocabulary.Describe, vocabulary.Unknown} {
		for _, c := range t.byField[f] {
			cells, known := 0, 0
			t.eachName(c, join.Plain, func(k, _ string) {
				cells++
				if from := names[k]; from != nil && from != t {
					known++
				}
			})
			if cells > 1 && known == cells {
				out = append(out, c)
			}
		}
	}
	return out
}

// sureHeader is the confidence from which a column's reading holds for the
// same header elsewhere in the book.
const sureHeader = 0.7

// unsureHeader is the confidence below which a column may be given up for what
// another table says.
const unsureHeader = 0.45

// byHeader gives a column that was not understood the field that the same
// header has in another table.
func byHeader(tables []*table) {
	known := make(map[string]vocabulary.Field)
	for _, t := range tables {
		for _, c := range t.columns {
			if k := headerKey(c); k != "" && c.Field != vocabulary.Unknown && c.Field != vocabulary.Ignored && c.Confidence >= sureHeader {
				if f, ok := known[k]; ok && f != c.Field {
					known[k] = vocabulary.Unknown // read in two ways: no help
					continue
				}
				known[k] = c.Field
			}
		}
	}
	for _, t := range tables {
		for _, c := range t.columns {
			f := known[headerKey(c)]
			if c.Field != vocabulary.Unknown && c.Confidence >= unsureHeader || f == vocabulary.Unknown || f == c.Field || t.has(f) || t.namesOwnControls(c, tables) {
				continue
			}
			t.become(c, f, "the same header means "+f.String()+" in another table")
		}
	}
}

func headerKey(c *column) string {
	if len(c.Header) < 3 {
		return ""
	}
	return join.Key(c.Header)
}

// namedFields are the fields whose cells are names that other tables repeat.
var namedFields = []struct {
	field vocabulary.Field
	kind  join.Kind
}{{vocabulary.Zone, join.Zone}, {vocabulary.Control, join.Control}, {vocabulary.Amplifier, join.Amplifier}}

// byNames gives a column that was not understood a field of names when most of
// its cells name things that a column of another table names.
func byNames(tables []*table) {
	if len(tables) < 2 {
		return
	}
	for _, n := range namedFields {
		names := make(map[bareName]*table) // name -> the table that has it
		for _, t := range tables {
			for _, c := range t.byField[n.field] {
				if c.Confidence >= sureHeader {
					t.eachName(c, n.kind, func(k, letter string) { names[bareName{k, letter}], names[bareName{k, "*"}] = t, t })
				}
			}
		}
		if len(names) < 2 {
			continue
		}
		for _, t := range tables {
			if t.has(n.field) {
				continue
			}
			var best *column
			for _, c := range t.columns {
				if c.Field != vocabulary.Unknown && c.Confidence >= sureHeader {
					continue
				}
				cells, hits := 0, 0
				distinct := make(map[string]bool)
				t.eachName(c, n.kind, func(k, letter string) {
					cells++
					from := names[bareName{k, cmp.Or(letter, "*")}]
					if from == nil {
						from = names[bareName{k, ""}] // "V1" may be "Verstärker 1", but is not "E1"
					}
					if from != nil && from != t {
						hits++
						distinct[k] = true
					}
				})
				if cells > 0 && hits*10 >= cells*8 && len(distinct) >= 2 && best == nil {
					best = c
				}
			}
			if best != nil {
				t.become(best, n.field, "its cells are the "+n.field.String()+"s of another table")
			}
		}
	}
}

// eachName hands the names in a column, without the words of their kind, to do,
// each with the one letter that stands for its kind, "" where a word does.
func (t *table) eachName(c *column, kind join.Kind, do func(name, letter string)) {
	n := 0
	for i := range t.Records {
		r := &t.Records[i]
		v := &r.Values[c.i]
		if r.Class != layout.Device || v.Text == "" || v.How != schedule.Stated {
			continue
		}
		if n++; n > mostSamples {
			return
		}
		if x := namesIn.Of(v.Text, int(kind)); x.name != "" {
			do(x.name, x.letter)
		}
	}
}

// A bareName is a name without the words of its kind, "" for a number alone, which
// names anything, and the one letter before its number, if there is one.
type bareName struct{ name, letter string }

var namesIn = remember.New(8192, func(text string, kind int) bareName {
	p := join.Parse(join.Kind(kind), text)
	if p.Full == "" || p.Bare() {
		return bareName{}
	}
	letters := strings.TrimRight(join.Fold(text), "0123456789. -_/")
	if len(letters) != 1 {
		letters = ""
	}
	return bareName{p.Number + " " + p.Title, letters}
})
