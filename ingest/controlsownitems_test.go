package ingest

import "testing"

// Controls below the header that numbers the loudspeakers in another list, with tags of their own. Common practice, no
// source.
func TestControlsWithItemsOfTheirOwn(t *testing.T) {
	for _, c := range []struct{ name, list, controls string }{
		{"English", "Pos. | Description | Location | Qty | Tap (W)", "Volume controls\nPos. | Power | For"},
		{"German", "Pos. | Beschreibung | Ort | Anzahl | Abgriff (W)", "Lautstärkesteller\nPos. | Leistung | Für"},
		{"French", "Pos. | Désignation | Emplacement | Qté | Réglage (W)", "Atténuateurs\nPos. | Puissance | Pour"},
		{"Spanish", "Pos. | Descripción | Ubicación | Cant. | Toma (W)", "Reguladores\nPos. | Potencia | Para"},
		{"Italian", "Pos. | Descrizione | Ubicazione | Q.tà | Presa (W)", "Regolatori di volume\nPos. | Potenza | Per"},
		{"Dutch", "Pos. | Omschrijving | Plaats | Aantal | Stand (W)", "Volumeregelaars\nPos. | Vermogen | Voor"},
	} {
		j := wholeJob(t, "## List\nKolba, 100 V\n|\n"+c.list+"\nA.1 | Horn | Langa | 2 | 15\nC.1 | Horn | Kassa | 2 | 3\nC.2 | Horn | Noleggio | 3 | 6\n## Rack\nKolba\n|\n"+c.controls+"\nD.1 | 10 W | C.1 Kassa\nD.2 | 24 W | C.2 Noleggio")
		var got []string
		for _, l := range j.Loudspeakers {
			name := ""
			if l.Control != nil {
				name = l.Control.Name
			}
			got = append(got, l.Room.Value+" "+name)
		}
		want(t, c.name, got, []string{"Langa ", "Kassa D.1", "Noleggio D.2"})
	}
}
