package ingest

import (
	"testing"

	"lineaudit/ingest/grid"
)

// Lists of what was moved: a blank below "new" leaves what was before. Common practice, no source.
func TestMovedLoudspeakers(t *testing.T) {
	for _, w := range []struct{ was, is, row, head string }{
		{"before", "new", "No. | Place | Qty | W | Amp | Out", "W | Amp | Out"}, {"bisher", "neu", "Nr. | Ort | Stk. | W | Verst. | Ausg.", "W | Verst. | Ausg."},
		{"ancien", "nouveau", "N° | Local | Nombre | Prise W | Ampli | Sortie", "Prise W | Ampli | Sortie"}, {"antes", "ahora", "Nº | Sala | Cantidad | Toma W | Etapa | Salida", "Toma W | Etapa | Salida"},
		{"prima", "dopo", "N. | Locale | Q.tà | Presa W | Ampli | Uscita", "Presa W | Ampli | Uscita"}, {"oud", "nieuw", "Nr. | Ruimte | Aantal | Stand W | Versterker | Uitgang", "Stand W | Versterker | Uitgang"},
	} {
		book := drawnBook("Grebe station, 100 V\n|\n| | | " + w.was + " | | | " + w.is + " | | |\n" + w.row + " | " + w.head + `
1 | Platform 1 | 6 | 10 | V1 | 1 | 6 | |
2 | Platform 2 | 8 | 10 | V1 | 2 | | V2 | 1
3 | Subway | 4 | 6 | V1 | 2 | | |
4 | Hall | 6 | 6 | V2 | 1 | 3 | V1 | 2
5 | Forecourt | 2 | 15 | V2 | 2 | | |
`)
		mergeGroups(book.Sheets[0], 3)
		book.Sheets[0].Merges = append(book.Sheets[0].Merges, grid.Range{Row1: 3, Row2: 3, Col1: 7, Col2: 9})
		j := Read(book, Options{}).Jobs[0]
		want(t, w.was, describe(j), []string{"6 x 6 W zone Platform 1 channel V1 / 1", "8 x 10 W zone Platform 2 channel V2 / 1", "4 x 6 W zone Subway channel V1 / 2",
			"6 x 3 W zone Hall channel V1 / 2", "2 x 15 W zone Forecourt channel V2 / 2"})
	}
}

// Groups of loudspeakers by outputs across, with what the outputs give above and what hangs on them below. Common practice, no source.
func TestGroupsByOutputsWithRatingsAndLoads(t *testing.T) {
	for _, w := range []struct{ room, rated, load, control string }{
		{"Room", "Rated W", "Load W", "Control"}, {"Raum", "Nennleistung W", "Last W", "Regler"}, {"Local", "Puissance W", "Charge W", "Atténuateur"},
		{"Local", "W nominal", "Carga W", "Atenuador"}, {"Locale", "Potenza W", "Carico W", "Attenuatore"}, {"Ruimte", "Vermogen W", "Belasting W", "Regelaar"},
	} {
		j := wholeJob(t, "Grebe school, 100 V\n|\n"+w.room+" | E1-1 | E1-2 | E2-1 | "+w.control+"\n"+w.rated+` | 120 | 120 | 60
Tracks | 4x15 | | |
Porch | 2x10 | | |
Gym | | 4x10 | |
Stage | | 6x6 | |
Office | | 1x1,5 | |
Library | | | 4x3 | AT1 24 W
Staff | | | 2x3 |
`+w.load+" | 80 | 77.5 | 18\n")
		want(t, w.rated, describe(j), []string{"4 x 15 W zone Tracks channel E1 / 1", "2 x 10 W zone Porch channel E1 / 1", "4 x 10 W zone Gym channel E1 / 2", "6 x 6 W zone Stage channel E1 / 2",
			"1 x 1.5 W zone Office channel E1 / 2", "4 x 3 W zone Library control AT1 channel E2 / 1", "2 x 3 W zone Staff channel E2 / 1"})
		want(t, w.rated, ratedOutputs(j), []string{"E1 / 1 120 W", "E1 / 2 120 W", "E2 / 1 60 W"})
	}
}

// What holds a loudspeaker is none. Common practice, no source.
func TestBracketsOfLoudspeakers(t *testing.T) {
	for _, name := range []string{"Montagebügel für Horn", "Mounting bracket for horn", "Étrier de fixation pour pavillon", "Soporte de pared para bocina", "Staffa di fissaggio per tromba", "Montagebeugel voor hoorn"} {
		j := wholeJob(t, "Grebe rink, 100 V\n|\nPos. | Description | Qty | Unit\n01.01 | Horn loudspeaker 30 W, tapped 15 W | 8 | pcs\n01.02 | "+name+" | 8 | pcs\n01.03 | Column loudspeaker 40 W, tapped 20 W | 6 | pcs\n")
		want(t, name, describe(j), []string{"8 x 15 W", "6 x 20 W"})
	}
}
