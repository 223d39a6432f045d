package ingest

import (
	"strings"
	"testing"
)

// Lists of outputs and of controls leave small words out of the names of places. Common practice, no source.
func TestPlacesButForSmallWords(t *testing.T) {
	for _, c := range []struct{ head, heads, listed, written string }{
		{"Zone | Room | Qty | Watts", "Amp | Output | Feeds | Max. W", "Hall of the guides", "Hall guides"},
		{"Zone | Raum | Anzahl | Watt", "Verstärker | Ausgang | Speist | Max. W", "Werkstatt der Schreiner", "Werkstatt Schreiner"},
		{"Zone | Local | Qté | Watts", "Ampli | Voie | Alimente | P. max", "Bureau du chef de bassin", "Bureau chef bassin"},
		{"Zone | Local | Qté | Watts", "Ampli | Voie | Alimente | P. max", "Salle attente", "Salle d’attente"},
		{"Zona | Sala | Altavoces | Vatios", "Etapa | Salida | Alimenta | W máx.", "Sala de los guías", "Sala guías"},
		{"Zona | Locale | Diffusori | Watt", "Ampli | Uscita | Alimenta | W max.", "Sala dell'archivio", "Sala archivio"},
		{"Zone | Ruimte | Aantal | Watt", "Versterker | Uitgang | Voedt | Max. W", "Kantoor van de beheerder", "Kantoor beheerder"},
	} {
		j := wholeJob(t, c.head+"\n"+c.listed+" | east | 2 | 3\nFoyer | west | 4 | 3\n|\n"+
			"## Rack\n"+c.heads+"\nE1 | 1 | "+c.written+" | 60\nE1 | 2 | Foyer | 60\n")
		want(t, c.written, describe(j), []string{"2 x 3 W zone " + c.listed + " channel E1 / 1", "4 x 3 W zone Foyer channel E1 / 2"})
	}
}

// A letter that stands alone tells places apart; of two that differ in small words alone it is asked which is meant.
func TestPlacesThatSmallWordsTellApart(t *testing.T) {
	for _, c := range []struct {
		zones   [2]string
		written string
		asks    bool
	}{
		{[2]string{"Salle D", "Salle L"}, "Salle", false},
		{[2]string{"Cour de la ferme", "Cour des fermes"}, "Cour d'honneur", false},
		{[2]string{"Salle du repos", "Salle de repos"}, "Salle repos", true},
	} {
		j := wholeJob(t, "Zone | Local | Qté | Watts\n"+c.zones[0]+" | est | 2 | 3\n"+c.zones[1]+" | ouest | 4 | 3\n|\n"+
			"## Rack\nAmpli | Voie | Alimente | P. max\nE1 | 1 | "+c.written+" | 60\n")
		for _, l := range describe(j) {
			if strings.Contains(l, "channel") {
				t.Errorf("%s: %s", c.written, l)
			}
		}
		asked := false
		for _, q := range j.Questions {
			asked = asked || strings.Contains(q.Text, c.written+"” could be")
		}
		if asked != c.asks {
			t.Errorf("%s: asked %v, want %v", c.written, asked, c.asks)
		}
	}
}

// All loudspeakers of a place are not all of the job. Common practice, no source.
func TestControlsOfAllOfAPlace(t *testing.T) {
	for _, c := range []struct{ head, served string }{
		{"Zone | Room | Qty | Watts", "Lobby, all speakers"},
		{"Zone | Room | Qty | Watts", "all of the Lobby"},
		{"Zone | Raum | Anzahl | Watt", "Alle Lautsprecher in der Lobby"},
		{"Zone | Local | Qté | Watts", "Lobby (tous les haut-parleurs)"},
		{"Zona | Sala | Cantidad | Vatios", "todos los altavoces del Lobby"},
		{"Zona | Locale | Quantità | Watt", "Lobby, tutti i diffusori"},
		{"Zone | Ruimte | Aantal | Watt", "alle luidsprekers Lobby"},
	} {
		j := wholeJob(t, c.head+"\nLobby | east | 2 | 3\nFoyer | west | 4 | 3\n|\n## Controls\nTag | Feeds | Rating\nAT-1 | "+c.served+" | 35 W\n")
		want(t, c.served, describe(j), []string{"2 x 3 W zone Lobby control AT-1", "4 x 3 W zone Foyer"})
	}
	j := wholeJob(t, "Zone | Room | Qty | Watts\nLobby | east | 2 | 3\nFoyer | west | 4 | 3\n|\n## Controls\nTag | Feeds | Rating\nAT-1 | all speakers | 35 W\n")
	want(t, "all", describe(j), []string{"2 x 3 W zone Lobby control AT-1", "4 x 3 W zone Foyer control AT-1"})
}
