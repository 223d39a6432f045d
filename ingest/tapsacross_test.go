package ingest

import (
	"strings"
	"testing"
)

// Areas counted by what their loudspeakers are set to, the amplifier with its rating beside each: the areas may
// be words that head columns elsewhere ("Workshop", "Office"), and the amplifiers may be called like controls.
func TestAreasCountedByTapsWithAmplifiers(t *testing.T) {
	for _, c := range []struct{ head, names string }{
		{"Area | Amplifier | 3 W | 6 W | 15 W | Pieces", "Hall Workshop Office Total"},
		{"Bereich | Verstärker | 3 W | 6 W | 15 W | Stück", "Halle Werkstatt Verwaltung Summe"},
		{"Secteur | Ampli | 3 W | 6 W | 15 W | Nombre", "Hall Atelier Bureau Total"},
		{"Zona | Amplificador | 3 W | 6 W | 15 W | Unidades", "Nave Taller Oficina Total"},
		{"Zona | Amplificatore | 3 W | 6 W | 15 W | Pezzi", "Atrio Officina Ufficio Totale"},
		{"Zone | Versterker | 3 W | 6 W | 15 W | Aantal", "Hal Werkplaats Kantoor Totaal"},
	} {
		n := strings.Fields(c.names)
		j := wholeJob(t, "Depot North, 100 V\n|\n"+c.head+"\n"+n[0]+" | RV1 (240 W) | | | 6 | 6\n"+n[1]+" | RV2 (60 W) | | 2 | 2 | 4\n"+n[2]+" | RV3 (30 W) | 4 | 1 | | 5\n"+n[3]+" | | 4 | 3 | 8 | 15")
		want(t, c.head, describe(j), []string{"6 x 15 W zone " + n[0] + " channel RV1 / 1", "2 x 6 W zone " + n[1] + " channel RV2 / 1", "2 x 15 W zone " + n[1] + " channel RV2 / 1",
			"4 x 3 W zone " + n[2] + " channel RV3 / 1", "1 x 6 W zone " + n[2] + " channel RV3 / 1"})
		want(t, c.head, channelRatings(j), []string{"RV1 / 1 240 W 100 V", "RV2 / 1 60 W 100 V", "RV3 / 1 30 W 100 V"})
	}
}
