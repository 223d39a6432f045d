package layout

import (
	"slices"
	"strings"
	"testing"

	"lineaudit/ingest/vocabulary"
)

// Small tables whose rows are amplifiers, outputs or controls, as people write
// them under or beside a list of loudspeakers; what each is, a reader sees at a glance.
func TestWhatRowsAreAbout(t *testing.T) {
	for _, tt := range []struct {
		name, drawing string
		kind          Kind
		fields        []vocabulary.Field
	}{
		{"amplifiers, watts, what they feed", "Amp|Watts|Feeds\nA1|120|Main ice\nA2|60|Skate hire", Amplifiers, []vocabulary.Field{vocabulary.Amplifier, vocabulary.ChannelWatts, vocabulary.Unknown}},
		{"de: bare W", "Endstufe|W|Räume\nES1|250|Palmenhaus, Orangerie\nES2|120|Kasse, Foyer", Amplifiers, []vocabulary.Field{vocabulary.Amplifier, vocabulary.ChannelWatts, vocabulary.Unknown}},
		{"es: potencia", "Etapa|Potencia|Zona\nE1|120 W|Z1\nE2|240 W|Z2", Amplifiers, []vocabulary.Field{vocabulary.Amplifier, vocabulary.ChannelWatts, vocabulary.Zone}},
		{"fr: puissance", "Ampli|Puissance|Zones desservies\nAMP 1|120 W|Z1, Z2\nAMP 2|240 W|Z3", Amplifiers, []vocabulary.Field{vocabulary.Amplifier, vocabulary.ChannelWatts, vocabulary.Unknown}},
		{"it: outputs in the rating", "Finale|Potenza|Linee\nF1|2 x 120 W|L1 L2\nF2|60 W|L3", Amplifiers, []vocabulary.Field{vocabulary.Amplifier, vocabulary.ChannelWatts, vocabulary.Unknown}},
		{"nl: vermogen", "Versterker|Vermogen|Zones\nV1|120 W|1, 2\nV2|240 W|3", Amplifiers, []vocabulary.Field{vocabulary.Amplifier, vocabulary.ChannelWatts, vocabulary.Unknown}},
		{"a rack, units and boxes", "U|Box|What it gives|All together\n4|AX1|4 x 250W @70V|1000 W\n7|AX2|2 x 250W @ 4 ohm|\n9|AX3|240 W @ 100V|\n11|AX4|2 x 120W @70V|240 W", Amplifiers,
			[]vocabulary.Field{vocabulary.Ignored, vocabulary.Amplifier, vocabulary.ChannelWatts, vocabulary.Unknown}},
		{"it: what the outputs give", "Zona|Amplificatore|Potenza nominale|Uscita\nZ1|A1|60 W|100 V\nZ2|A2|120 W|100 V", Amplifiers, []vocabulary.Field{vocabulary.Zone, vocabulary.Amplifier, vocabulary.ChannelWatts, vocabulary.LineVoltage}},
		{"a line for each output", "Line|Amplifier|Output (W)|Speakers\n1|PA1|30|S1 - S4\n2|PA1|30|S5 - S7\n3|PA2|60|S8 - S11", Channels, []vocabulary.Field{vocabulary.Channel, vocabulary.Amplifier, vocabulary.ChannelWatts, vocabulary.Unknown}},
		{"outputs that are called zones", "Amp|Zone output|W\nPA1|Z1|120\nPA1|Z2|120\nPA2|Z1|30\nPA2|Z2|30", Channels, []vocabulary.Field{vocabulary.Amplifier, vocabulary.Channel, vocabulary.ChannelWatts}},
		{"outputs among what else is in a rack", "RU|Device|Output|W|Lands on\n20|AMP 1|A|400|HR-1, HR-2\n20|AMP 1|B|400|HR-3, HR-4\n18|AMP 2|A|60|HR-5\n18|AMP 2|B|60|HR-7\n16|BLANK\n14|PROCESSOR", Channels,
			[]vocabulary.Field{vocabulary.Ignored, vocabulary.Amplifier, vocabulary.Channel, vocabulary.ChannelWatts}},
		{"numbered amplifiers, named by what they are", "No.|Make of thing|Watts @100V\n1|power amp|180\n2|mixer amp|60", Amplifiers, []vocabulary.Field{vocabulary.Amplifier, vocabulary.Unknown, vocabulary.ChannelWatts}},
		{"controls and what they control", "Ref|Position|Controls|Rating (W)\nVC1|Foyer desk|S5 - S7|35\nVC2|Crew room|S8|10", Controls, []vocabulary.Field{vocabulary.Control, vocabulary.Room, vocabulary.Unknown, vocabulary.ControlWatts}},
		{"controls and their size", "Volume control|Where|Size\nVC1|Foyer desk|35 W\nVC2|Crew room|10 W", Controls, []vocabulary.Field{vocabulary.Control, vocabulary.Room, vocabulary.ControlWatts}},
		{"de: bare W", "Regler|Raum|W\nR1|Kasse|10\nR2|Foyer|35", Controls, []vocabulary.Field{vocabulary.Control, vocabulary.Room, vocabulary.ControlWatts}},
		{"fr: the description tells", "Rep.|Désignation|Puissance|Nb\nAT1|Atténuateur mural|35 W|2\nAT2|Atténuateur mural|10 W|1", Controls, []vocabulary.Field{vocabulary.Control, vocabulary.Unknown, vocabulary.ControlWatts, vocabulary.Unknown}},
		{"loudspeakers and what they hang on", "Ref|Item|W|Hangs on\nVC-1|Wall knob, hall|35|A1/1\nL1|Marl 6|3|VC-1\nL2|Marl 6|3|VC-1\nL3|Marl 20|10|A1/1\nL4|Marl 20|10|A1/2", Mixed,
			[]vocabulary.Field{vocabulary.Tag, vocabulary.Unknown, vocabulary.Tap, vocabulary.Channel}},
		{"amplifiers and controls", "Equipo|Descripción|Watts\nAMP-1|Amplificador 2 x 120 W|240\nAMP-2|Amplificador 1 x 120 W|120\nCV-1|Control de volumen de pared|35\nCV-2|Control de volumen de pared|10", Mixed,
			[]vocabulary.Field{vocabulary.Tag, vocabulary.Unknown, vocabulary.Unknown}},
		{"loudspeakers with a control each", "VC|Room|Tap\nVC1|Foyer|6 W\nVC2|Shop|3 W", Loudspeakers, []vocabulary.Field{vocabulary.Control, vocabulary.Room, vocabulary.Tap}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := Read(bookOf(draw("Sheet1", "Loudspeaker system 100 V\n\n"+tt.drawing)), Options{})
			table := only(t, r)
			if table.Kind != tt.kind {
				t.Errorf("a table of %s, want %s\n%s", table.Kind, tt.kind, show(r))
			}
			for i, want := range tt.fields {
				if got := table.Columns[i].Field; want != vocabulary.Unknown && got != want {
					t.Errorf("%q is %s, want %s", table.Columns[i].Header, got, want)
				}
			}
		})
	}
}

// Names on a sheet of amplifiers may be any, where one stands on several rows, each with another output.
func TestOutputsUnderATitle(t *testing.T) {
	const outputs = "Bezeichnung|Kanal|Linie|Leistung|Spannung\nKN1|1|1|125 W|100 V\nKN1|2|2|125 W|100 V"
	for sheet, want := range map[string]Kind{"Amplifiers": Channels, "Verstärker": Channels, "Loudspeakers": Loudspeakers} {
		if table := only(t, Read(bookOf(draw(sheet, outputs)), Options{})); table.Kind != want {
			t.Errorf("%s: a table of %s, want %s", sheet, table.Kind, want)
		}
	}
}

// Under a title of controls numbers of rows are their names, if nothing speaks of loudspeakers.
func TestControlsUnderATitle(t *testing.T) {
	const rows = "Emplacement|Puissance\n1|Z3|Salle|24 W\n2|Z3|Bureau|6 W"
	for sheet, want := range map[string]Kind{"Atténuateurs": Controls, "Haut-parleurs": Loudspeakers} {
		if table := only(t, Read(bookOf(draw(sheet, "N°|Zone|"+rows)), Options{})); table.Kind != want {
			t.Errorf("%s: a table of %s, want %s", sheet, table.Kind, want)
		}
	}
}

// What describes each row and names no device is the place, where another column says what the loudspeakers are.
func TestPlacesUnderDescription(t *testing.T) {
	table := only(t, Read(bookOf(draw("Lines", "Loudspeaker lines 100 V\n\nLine|Description|Speaker|Qty|Tap W|Amp\n1|Main pool|horn|10|20|PA1\n2|Small pool|horn|4|10|PA2\n3|Lockers|ceiling|14|1.5|PA2")), Options{}))
	if got := table.Columns[1].Field; got != vocabulary.Room {
		t.Errorf("%s, want room", got)
	}
	for title, want := range map[string]vocabulary.Field{"niveau sous-sol": vocabulary.Floor, "Level basement": vocabulary.Floor, "Level list": vocabulary.Unknown} {
		if got := sectionField(title); got != want {
			t.Errorf("%q is %s, want %s", title, got, want)
		}
	}
}

// Rows that belong to no loudspeaker inside or under a list of loudspeakers.
func TestRowsThatAreNoLoudspeakers(t *testing.T) {
	r := Read(bookOf(draw("Sheet1", `
Loudspeaker list, 100 V
|||
Head|Area|Set W|Ch|State
101|Ice|15|1|new
102|Ice|15|1|new
103|Kiosk|6|2|new
104|Kiosk|6|2|new
Heads fitted|4
|||
Amp EB2|way 1 40 W|way 2 60 W
`)), Options{})
	table := only(t, r)
	var last []string
	for _, rec := range table.Records {
		if rec.Class != Device {
			last = append(last, string(rec.Class)+": "+rec.Text)
		}
	}
	if want := []string{"total: Heads fitted | 4"}; !slices.Equal(last, want) || table.Range.Row2 != 8 {
		t.Errorf("no devices: %s, down to row %d, want %s\n%s", strings.Join(last, ", "), table.Range.Row2, want, show(r))
	}
}

// A tap taken out of the words of another cell has no cell of its own.
func TestFiguresOfValuesWithoutACell(t *testing.T) {
	table := &Table{Columns: []Column{{Field: vocabulary.Tap}}, Records: []Record{
		{Class: Device, Values: []Value{{Text: "3 W"}}}, {Class: Device, Values: []Value{{Text: "6 W"}}}}}
	if !columnFigures(table, vocabulary.Tap) {
		t.Error("watts without a cell are no figures")
	}
}
