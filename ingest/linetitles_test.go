package ingest

import "testing"

// Titles that begin with the name of a line, which a list of tests leads to its output; a column "Unit" holds what hangs
// there, no amplifiers. Common practice, no source.
func TestLinesAheadOfPlacesInTitles(t *testing.T) {
	for _, c := range []struct{ name, tests, line, head, unit string }{
		{"short names", "Line | Amp | Output | Output rating W | Z at 1 kHz, ohm", "L", "Pos | Where | Unit | Tap | Remark", "horn"},
		{"in words", "Line | Amp | Output | Output rating W | Z at 1 kHz, ohm", "Line ", "Pos | Where | Unit | Tap | Remark", "ceiling"},
		{"German", "Linie | Verstärker | Ausgang | Nennleistung | Impedanz", "L", "Pos. | Ort | Bauart | Leistung | Bemerkung", "Druckkammer"},
		{"French", "Ligne | Ampli | Sortie | Puissance nominale W | Impédance", "L ", "Pos. | Emplacement | Appareil | Puissance | Remarque", "trompe"},
		{"Dutch", "Lijn | Versterker | Uitgang | Vermogen uitgang W | Impedantie", "Lijn ", "Pos. | Plaats | Type | Vermogen | Opmerking", "hoorn"},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, "## Tests\nElmfield, 100 V\n|\n"+c.tests+`
1 | Amp A | 1 | 120 W | 248
2 | Amp A | 2 | 120 W | 396
3 | Amp B | 1 | 60 W | 410
## Loudspeakers
`+c.line+`1 Quay 1
`+c.head+`
1/1 | Ramp | `+c.unit+` | 10 W
1/2 | Roof | `+c.unit+` | 10 W
|
`+c.line+`2 Quay 2
`+c.head+`
2/1 | Ramp | `+c.unit+` | 10 W
2/2 | Roof | `+c.unit+` | 5 W
|
`+c.line+`3 Waiting hall
`+c.head+`
3/1 | Desk | `+c.unit+` | 6 W
3/2 | Bench | `+c.unit+` | 6 W`)
			want(t, "loudspeakers", describe(j), []string{
				"1 x 10 W zone Quay 1 channel Amp A / 1", "1 x 10 W zone Quay 1 channel Amp A / 1", "1 x 10 W zone Quay 2 channel Amp A / 2",
				"1 x 5 W zone Quay 2 channel Amp A / 2", "1 x 6 W zone Waiting hall channel Amp B / 1", "1 x 6 W zone Waiting hall channel Amp B / 1",
			})
		})
	}
}
