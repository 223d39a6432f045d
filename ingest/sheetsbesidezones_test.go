package ingest

import (
	"strings"
	"testing"
)

// Where some sheets name zones and one does not, the name of that sheet is the zone of its loudspeakers if it stands again
// above them, and that is told. Common practice, no source.
func TestSheetsBesideSheetsWithZones(t *testing.T) {
	for _, c := range []struct{ name, sheet, title, heads, zoned string }{
		{"German", "Empfangsgebäude", "Empfangsgebäude", "Raum | Anzahl | Leistung je Stück | Kreis", "Bereich | Mast | Stück | je Stück | Kreis"},
		{"English", "Station building", "Station building, ground floor", "Room | Qty | Tap W | Circuit", "Zone | Mast | Qty | Tap W | Circuit"},
		{"French", "Bâtiment voyageurs", "Bâtiment voyageurs", "Local | Quantité | Réglage W | Ligne", "Zone | Mât | Quantité | Réglage W | Ligne"},
		{"Spanish", "Edificio", "EDIFICIO", "Sala | Cantidad | Toma W | Línea", "Zona | Poste | Cantidad | Toma W | Línea"},
		{"Italian", "Fabbricato", "Fabbricato - interno", "Locale | Quantità | Presa W | Linea", "Zona | Palo | Quantità | Presa W | Linea"},
		{"Dutch", "Stationsgebouw", "Stationsgebouw", "Ruimte | Aantal | Stand W | Lijn", "Zone | Mast | Aantal | Stand W | Lijn"},
	} {
		j := wholeJob(t, "## "+c.sheet+"\nElmfield, 100 V\n"+c.title+"\n|\n"+c.heads+"\nHall | 6 | 6 W | K1\nDesk | 2 | 3 W | K1\n## Outdoors\nElmfield, 100 V\n|\n"+
			c.zoned+"\nTrack 1 | M1 bis M4 | 4 | 10 W | K2\nTrack 2 | M5 bis M8 | 4 | 10 W | K3")
		var zones []string
		for _, l := range j.Loudspeakers {
			if l.Zone == nil {
				zones = append(zones, "-")
				continue
			}
			zones = append(zones, l.Zone.Name)
		}
		name := strings.TrimSpace(titleParts.Split(c.title, 2)[0])
		want(t, c.name, zones, []string{name, name, "Track 1", "Track 2"})
		if taken := strings.Join(takenAs(j), "; "); !strings.Contains(taken, name) {
			t.Errorf("%s: taken %s", c.name, taken)
		}
	}
	for _, sheet := range []string{"Loudspeakers", "Rack 2", "Survey 2021"} { // no place
		j := wholeJob(t, "## "+sheet+"\nElmfield, 100 V\n"+sheet+"\n|\nRoom | Qty | Tap W | Circuit\nHall | 6 | 6 W | K1\nDesk | 2 | 3 W | K1\n## Outdoors\nElmfield, 100 V\n|\n"+
			"Zone | Mast | Qty | Tap W | Circuit\nTrack 1 | M1 | 4 | 10 W | K2\nTrack 2 | M5 | 4 | 10 W | K3")
		if l := j.Loudspeakers[0]; l.Zone != nil && l.Zone.Name == sheet {
			t.Errorf("%s is taken as a zone", sheet)
		}
	}
}
