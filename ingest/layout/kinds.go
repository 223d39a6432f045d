package layout

import (
	_ "embed"
	"encoding/csv"
	"slices"
	"strings"
	"sync"

	"lineaudit/ingest/vocabulary"
)

//go:embed kinds.csv
var kindsCSV string

// kindOrder is the order in which kinds are tried; of equals the first wins.
var kindOrder = []Kind{Loudspeakers, Zones, Channels, Amplifiers, Controls, Cables, Types, Measurements, Mixed}

// How much the kind of a table speaks for or against a field in it.
const (
	coreField  = 0.12
	usualField = 0.0
	oddField   = -0.15
)

// priors is kinds.csv: kind and field to the weight above.
var priors = sync.OnceValue(func() map[Kind]map[vocabulary.Field]float64 {
	rows, err := csv.NewReader(strings.NewReader(kindsCSV)).ReadAll()
	if err != nil {
		panic(err) // part of the program; a test reads it
	}
	m := map[Kind]map[vocabulary.Field]float64{}
	for _, row := range rows[1:] {
		k := Kind(row[0])
		if m[k] == nil {
			m[k] = map[vocabulary.Field]float64{}
		}
		for f := range strings.SplitSeq(row[2], ";") {
			weight := usualField
			if row[1] == "core" {
				weight = coreField
			}
			field, ok := vocabulary.Named(f)
			if !ok {
				panic("kinds.csv: no field " + f)
			}
			m[k][field] = weight
		}
	}
	return m
})

// needs are the fields of which a table of a kind must have one of each group.
var needs = map[Kind][][]vocabulary.Field{
	Loudspeakers: {{vocabulary.Tap, vocabulary.TotalWatts, vocabulary.RatedWatts, vocabulary.TapList, vocabulary.Quantity},
		{vocabulary.Tag, vocabulary.Model, vocabulary.Describe, vocabulary.Zone, vocabulary.Room, vocabulary.Quantity, vocabulary.Channel, vocabulary.Control}},
	Zones: {{vocabulary.Zone, vocabulary.Room}, {vocabulary.Quantity, vocabulary.Load, vocabulary.TotalWatts, vocabulary.Tap, vocabulary.Channel, vocabulary.Amplifier, vocabulary.Use, vocabulary.Control}},
	Amplifiers: {{vocabulary.Amplifier, vocabulary.Model, vocabulary.Channel, vocabulary.Circuit}, {vocabulary.ChannelWatts, vocabulary.FrameWatts, vocabulary.ChannelCount, vocabulary.LineVoltage},
		{vocabulary.Amplifier, vocabulary.ChannelCount, vocabulary.ChannelWatts}},
	Channels:     {{vocabulary.Channel}, {vocabulary.ChannelWatts, vocabulary.Load, vocabulary.LineVoltage, vocabulary.Zone}},
	Controls:     {{vocabulary.Control}, {vocabulary.ControlWatts, vocabulary.ControlModel, vocabulary.Override, vocabulary.BoxDepth, vocabulary.Level, vocabulary.Zone, vocabulary.Room}},
	Cables:       {{vocabulary.Length, vocabulary.Gauge, vocabulary.CableType}, {vocabulary.From, vocabulary.Cable, vocabulary.Gauge, vocabulary.CableType}, {vocabulary.To, vocabulary.Length}},
	Types:        {{vocabulary.Model, vocabulary.Tag, vocabulary.Describe}, {vocabulary.TapList, vocabulary.RatedWatts, vocabulary.Tap}},
	Measurements: {{vocabulary.Measured, vocabulary.MeasuredLoad}},
	Mixed:        {{vocabulary.Kind, vocabulary.Describe, vocabulary.Model, vocabulary.Tag}, {vocabulary.Tap, vocabulary.Quantity, vocabulary.TotalWatts, vocabulary.ChannelWatts}},
}

// An alias says that in a table of a kind a column of one field names another.
type alias struct{ from, to vocabulary.Field }

var aliases = map[Kind][]alias{
	Amplifiers:   {{vocabulary.Tag, vocabulary.Amplifier}, {vocabulary.Tap, vocabulary.ChannelWatts}, {vocabulary.RatedWatts, vocabulary.ChannelWatts}},
	Channels:     {{vocabulary.Tap, vocabulary.ChannelWatts}, {vocabulary.RatedWatts, vocabulary.ChannelWatts}, {vocabulary.Circuit, vocabulary.Channel}},
	Controls:     {{vocabulary.Tag, vocabulary.Control}, {vocabulary.RatedWatts, vocabulary.ControlWatts}, {vocabulary.Tap, vocabulary.ControlWatts}},
	Cables:       {{vocabulary.Tag, vocabulary.Cable}, {vocabulary.RatedWatts, vocabulary.ChannelWatts}},
	Zones:        {{vocabulary.Tag, vocabulary.Zone}, {vocabulary.From, vocabulary.Channel}, {vocabulary.To, vocabulary.Room}},
	Loudspeakers: {{vocabulary.From, vocabulary.Channel}, {vocabulary.To, vocabulary.Room}},
	Mixed:        {{vocabulary.From, vocabulary.Channel}},
}

// textual are the fields whose cells must look like the alias.
var textual = [vocabulary.Fields]bool{vocabulary.Tag: true, vocabulary.From: true, vocabulary.To: true}

// conceptKinds are the words of a sheet's name or title that tell the kind.
var conceptKinds = map[string]Kind{"speaker": Loudspeakers, "tap": Loudspeakers, "zone": Zones, "amplifier": Amplifiers,
	"channel": Channels, "control": Controls, "cable": Cables, "type": Types, "model": Types, "measured": Measurements, "impedance": Measurements}

// saidRated reports whether the header of the column of ratings of outputs speaks of
// ratings before it speaks of taps.
func saidRated(cols []*heading, fields []vocabulary.Field) bool {
	i := slices.Index(fields, vocabulary.ChannelWatts)
	return i >= 0 && max(cols[i].of(vocabulary.ChannelWatts), cols[i].of(vocabulary.RatedWatts)) > cols[i].of(vocabulary.Tap)
}

// setRated reports whether the header of the column of ratings of outputs speaks of
// taps alone, over nothing but usual ones.
func setRated(cols []*heading, fields []vocabulary.Field) bool {
	i := slices.Index(fields, vocabulary.ChannelWatts)
	return i >= 0 && cols[i].of(vocabulary.Tap) > max(cols[i].of(vocabulary.ChannelWatts), cols[i].of(vocabulary.RatedWatts), cols[i].of(vocabulary.FrameWatts)) &&
		cols[i].cells.share(lookTapUsual|lookTapValue) >= 0.9
}

// fitKind weighs what the columns together say of the kind, beyond the fields.
// about is what the rows of the table are about, "" where that is not plain.
func fitKind(k, about Kind, cols []*heading, fields []vocabulary.Field) float64 {
	at := func(f vocabulary.Field) *sample {
		if i := slices.Index(fields, f); i >= 0 {
			return cols[i].cells
		}
		return nil
	}
	has := func(f vocabulary.Field) bool { return slices.Contains(fields, f) }
	fit := 0.0
	switch k {
	case Loudspeakers:
		if has(vocabulary.Tap) {
			fit += 0.25
		}
		if !slices.ContainsFunc([]vocabulary.Field{vocabulary.Tag, vocabulary.Zone, vocabulary.Room, vocabulary.Describe, vocabulary.Quantity, vocabulary.Control, vocabulary.Circuit}, has) {
			fit -= 0.5
		}
		if z := at(vocabulary.Zone); z != nil && !has(vocabulary.Tag) && !has(vocabulary.Model) && !has(vocabulary.Describe) && !has(vocabulary.Room) && z.cells > 2 && z.distinct == z.cells {
			fit -= 0.3 // a row for each zone and nothing of a device
		}
	case Zones:
		if has(vocabulary.Tag) || has(vocabulary.Model) && has(vocabulary.Tap) {
			fit -= 0.4
		}
		if z := at(vocabulary.Zone); z != nil && z.cells > 2 && z.distinct < z.cells*8/10 {
			fit -= 0.5
		}
	case Amplifiers:
		if has(vocabulary.Channel) && has(vocabulary.Zone) {
			fit -= 0.1 // a row for each channel
		}
		if a := at(vocabulary.Amplifier); a != nil && a.distinct < a.cells {
			fit -= 0.5 // several rows for an amplifier
		}
		if !has(vocabulary.Amplifier) && !has(vocabulary.Channel) && setRated(cols, fields) {
			fit -= 0.5 // what rows are set to is no rating
		}
	case Channels:
		if a, c := at(vocabulary.Amplifier), at(vocabulary.Channel); a != nil && c != nil && saidRated(cols, fields) && !has(vocabulary.Tap) && !has(vocabulary.Quantity) &&
			a.distinct*c.distinct >= a.cells && a.share(lookJoint) < 0.5 {
			fit += 0.2 // a row for each output
		}
	case Cables:
		if has(vocabulary.Tap) {
			fit -= 0.5
		}
	case Controls:
		if c := at(vocabulary.Control); c != nil && has(vocabulary.Amplifier) && 2*c.total < rowsOf(cols) {
			fit -= 0.6 // most rows name none: their amplifiers or zones do
		}
		if has(vocabulary.Tap) && has(vocabulary.Quantity) {
			fit -= 0.6 // each control with all that hangs behind it: a list of loudspeakers
		}
	case Mixed:
		fit -= 0.35
		for _, f := range []vocabulary.Field{vocabulary.Kind, vocabulary.Describe, vocabulary.Tag, vocabulary.Model} {
			if i := slices.Index(fields, f); i >= 0 {
				if other := cols[i].otherDevices(); other > 0.02 && (other < 0.9 || cols[i].cells.share(lookAmp) > 0 && cols[i].cells.share(lookControl) > 0) {
					fit += 0.5
					break
				}
			}
		}
	}
	switch {
	case about == "":
	case k == about:
		fit += 0.5
	case k == Loudspeakers || k == Zones || k == Mixed:
		fit -= 0.3
	}
	return fit
}

// titleKinds weighs the words of a sheet's name and the titles above a table.
func titleKinds(s *vocabulary.Scorer, texts ...string) map[Kind]float64 {
	m := map[Kind]float64{}
	for _, t := range texts {
		if len(t) > 80 || classOf(t)&classNote != 0 {
			continue
		}
		hits := map[Kind]bool{}
		for _, c := range s.Concepts(t) {
			if k, ok := conceptKinds[c]; ok {
				hits[k] = true
			}
		}
		for k := range hits {
			m[k] = max(m[k], 0.3/float64(len(hits)))
		}
	}
	return m
}
