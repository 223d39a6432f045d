package ingest

import (
	"testing"
)

// Titles of sections may end in the cable of what they name, in a cell of its own or in the same one; the place behind an
// output is its zone, also where it begins like a word for an output. Common practice, no source.
func TestCablesInTitlesOfSections(t *testing.T) {
	for _, c := range []struct{ name, head, one, two, a, b, out, cable string }{
		{"English", "Room | Speakers | Tap W | Remarks", "Output 1 - North wing | | | 16 AWG, 340 ft to the last speaker", "Output 2 - Outside | | | 14 AWG, 260 ft to the last speaker", "North wing", "Outside", "103.632 m 1.3086957277552627 mm²", "79.248 m 2.080907717098377 mm²"},
		{"German", "Raum | Lautsprecher | Stufe W | Bemerkung", "Ausgang 1 - Kirche | | | 2 x 1,5 mm², 104 m", "Ausgang 2 - Kasse | | | 2 x 2,5 mm², 79 m bis zum letzten", "Kirche", "Kasse", "104 m 1.5 mm²", "79 m 2.5 mm²"},
		{"French", "Local | Haut-parleurs | Réglage W | Remarque", "Sortie 1 - Hall, 2 x 1,5 mm², 104 m", "Sortie 2 - Cour, 2 x 2,5 mm², 79 m jusqu'au dernier", "Hall", "Cour", "104 m 1.5 mm²", "79 m 2.5 mm²"},
		{"Spanish", "Sala | Altavoces | Toma W | Observaciones", "Salida 1 - Aulas | 2 x 1,5 mm² | 104 m |", "Salida 2 - Patio | 2 x 2,5 mm² | 79 m |", "Aulas", "Patio", "104 m 1.5 mm²", "79 m 2.5 mm²"},
		{"Italian", "Locale | Diffusori | Presa W | Note", "Uscita 1 - Aule (2x1,5 mm², 104 m)", "Uscita 2 - Cortile (2x2,5 mm², 79 m)", "Aule", "Cortile", "104 m 1.5 mm²", "79 m 2.5 mm²"},
		{"Dutch", "Ruimte | Luidsprekers | Stand W | Opmerking", "Uitgang 1 - Hal | | | kabel 2 x 1,5 mm², 104 m", "Uitgang 2 - Plein | | | kabel 2 x 2,5 mm², 79 m tot de laatste", "Hal", "Plein", "104 m 1.5 mm²", "79 m 2.5 mm²"},
	} {
		j := wholeJob(t, "Elmfield, 100 V\n|\n"+c.one+"\n"+c.head+"\n101 A | 1 | 6 | \nStage | 4 | 3 |\n|\n"+c.two+"\n"+c.head+"\nSide | 3 | 15 |\nField | 2 | 30 |")
		want(t, c.name, describe(j), []string{"1 x 6 W zone " + c.a + " channel 1", "4 x 3 W zone " + c.a + " channel 1", "3 x 15 W zone " + c.b + " channel 2", "2 x 30 W zone " + c.b + " channel 2"})
		want(t, c.name, cablesOf(j), []string{" " + c.out + " channel 1", " " + c.cable + " channel 2"})
	}
}

// What stands behind an output and is no cable is none. Common practice, no source.
func TestNoCablesInTitlesOfSections(t *testing.T) {
	for _, behind := range []string{"seen 3 May", "120 W", "4 of 6 m", "old wing"} {
		j := wholeJob(t, "Elmfield, 100 V\n|\nOutput 1 - Hall | | | "+behind+"\nRoom | Speakers | Tap W | Remarks\nStage | 4 | 3 |\nDesk | 1 | 6 |")
		want(t, behind, cablesOf(j), nil)
	}
}
