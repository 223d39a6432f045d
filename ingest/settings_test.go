package ingest

import "testing"

// A list of items may have its taps and outputs in another list, by the codes of the items. Common practice, no source.
func TestSettingsOfItems(t *testing.T) {
	for _, c := range []struct {
		name, sheet string
		want        []string
	}{
		{"Italian, a bill with points in its codes", `
## Computo
Velodromo di Colle Alto - offerta 31-22, linea 100 V
Pos. | Descrizione | Ubicazione | U.M. | Q.tà | P.U. € | Importo €
A.1 | Tromba 30 W | Curva nord | cad | 3 | 110 | 330
A.2 | Tromba 30 W | Curva sud | cad | 4 | 110 | 440
B.1 | Plafoniera 6 W | Cassa | cad | 2 | 19 | 38
## Tarature
Pos. | Presa da usare | Uscita
A1 | 15 W | U1
A2 | 10 W | U1
B1 | 1,5 W | U2`,
			[]string{"3 x 15 W zone Curva nord channel U1", "4 x 10 W zone Curva sud channel U1", "2 x 1.5 W zone Cassa channel U2"}},
		{"English, tags", `
## Devices
Tithe barn PA, 100 V line
Ref | Location | Type | Qty
LS-1 | Threshing floor | Column | 4
LS-2 | Porch | Horn | 1
LS-3 | Store | Ceiling | 2
## Settings
Ref | Tap | Amp output
LS-1 | 10 W | 1
LS-2 | 15 W | 1
LS-3 | 3 W | 2`,
			[]string{"LS-1 4 x 10 W zone Threshing floor channel 1", "LS-2 1 x 15 W zone Porch channel 1", "LS-3 2 x 3 W zone Store channel 2"}},
		{"German, numbers below one header", `
## Stückliste
Sternwarte Kahlenfels, 100 V
Pos. | Raum | Bauart | Stück
1 | Kuppel | Säule | 2
2 | Vortragsraum | Decke | 6
## Einstellung
Pos. | Übertragerstufe | Ausgang
1 | 10 W | A1
2 | 3 W | A2`,
			[]string{"2 x 10 W zone Kuppel channel A1", "6 x 3 W zone Vortragsraum channel A2"}},
	} {
		t.Run(c.name, func(t *testing.T) { want(t, "loudspeakers", describe(wholeJob(t, c.sheet)), c.want) })
	}
}
