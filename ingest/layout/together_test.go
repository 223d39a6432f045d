package layout

import (
	"testing"

	"lineaudit/ingest/vocabulary"
)

// Columns that their neighbours settle; small lists of our own.
func TestColumnsSettleEachOther(t *testing.T) {
	const (
		no  = vocabulary.Ignored
		any = vocabulary.Field(vocabulary.Fields)
	)
	for _, tt := range []struct {
		name, drawing string
		fields        []vocabulary.Field
	}{
		{"the final of two taps", "LS ID|Room|Design tap|Final tap|Output\nOP1|Cloaks|3W|3W|1-1\nOP2|Foyer|6W|3W|1-1\nOP3|Foyer|6W|3W|1-1\nOP4|Hall|7.5W|15W|1-2",
			[]vocabulary.Field{vocabulary.Tag, vocabulary.Room, no, vocabulary.Tap, vocabulary.Channel}},
		{"as left, without a word for a tap", "Zone|Speakers|Location|Design tap|As left|VC\nZ1|S1-S4|House|6W|3W|\nZ1|S5-S6|Fernery|3W|3W|\nZ2|S7|Lobby|6W|3W|VC1\nZ2|S8|Office|3W|1.5W|VC2",
			[]vocabulary.Field{vocabulary.Zone, vocabulary.Tag, vocabulary.Room, no, vocabulary.Tap, vocabulary.Control}},
		{"de: Ist and Soll", "LS-Nr.|Raum|Abgriff Soll (W)|Abgriff Ist (W)|Kanal\nL1|Foyer|6|3|1\nL2|Foyer|6|3|1\nL3|Halle|10|10|2",
			[]vocabulary.Field{vocabulary.Tag, vocabulary.Room, no, vocabulary.Tap, vocabulary.Channel}},
		{"the most that an amplifier gives", "Groep|Omschrijving|St.|Trafo (W)|Eindversterker|Max W\n1|Hal|8|3|EV-1|60\n2|Kas|12|1,5|EV-1|60\n3|Baan|6|20|EV-3|240",
			[]vocabulary.Field{vocabulary.Zone, any, vocabulary.Quantity, vocabulary.Tap, vocabulary.Amplifier, vocabulary.ChannelWatts}},
		{"a result is no zone", "Equipo|Ubicación|Nº|Toma|Línea|Resultado\nAltavoz|Taquillas|2|3 W|1|Conforme\nAltavoz|Aseos|4|1,5 W|1|una rota\nBocina|Paseo|5|15 W|3|Conforme",
			[]vocabulary.Field{any, vocabulary.Room, vocabulary.Quantity, vocabulary.Tap, vocabulary.Circuit, vocabulary.Status}},
		{"a total that counts", "Way|Place|Set W|Total\n1|Slip|10|2\n1|Yard|5|4\n2|Club|2.5|8",
			[]vocabulary.Field{vocabulary.Channel, vocabulary.Room, vocabulary.Tap, vocabulary.Quantity}},
		{"numbers of rows, some of them gone", "Speaker|Where|Kind|Set W\n1|Quay|horn|15\n2|Quay|horn|15\n5|Slip|horn|10\n6|Club|ceiling|3\n8|Club|ceiling|3\n9|Loft|ceiling|3",
			[]vocabulary.Field{vocabulary.Tag, vocabulary.Room, any, vocabulary.Tap}},
		{"fr: lines that start, and end nowhere", "Départ|Endroit|HP|P (W)\nD1|Serre|2|6\nD1|Verger|3|10\nD2|Accueil|4|3",
			[]vocabulary.Field{vocabulary.Circuit, vocabulary.Room, vocabulary.Quantity, vocabulary.Tap}},
		{"a frequency in a header", "Circuit|Ampli|Capacité|Z relevée (1 kHz)\nC1|AMP-1|60 W|108 ohms\nC2|AMP-1|60 W|91 ohms\nC3|AMP-2|60 W|224 ohms",
			[]vocabulary.Field{vocabulary.Channel, vocabulary.Amplifier, any, any}},
		{"money beside a price", "Désignation|U|Qté|P.U.|Total\nHP de plafond 6 W, réglé sur 3 W|u|8|45|360\nHP mural 20 W, réglé sur 10 W|u|6|90|540\nHP de plafond 6 W, réglé sur 1,5 W|u|4|45|180",
			[]vocabulary.Field{vocabulary.Describe, any, vocabulary.Quantity, vocabulary.Price, vocabulary.Price}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := Read(bookOf(draw("Sheet1", "Loudspeaker system 100 V\n\n"+tt.drawing)), Options{})
			table := only(t, r)
			for i, want := range tt.fields {
				if got := table.Columns[i].Field; want != any && got != want {
					t.Errorf("%q is %s, want %s\n%s", table.Columns[i].Header, got, want, show(r))
				}
			}
		})
	}
}
