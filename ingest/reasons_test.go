package ingest

import "testing"

// A form of changes counts loudspeakers beside their power before and after it, and why: these are states
// of the taps, not types with counts, and reasons are no places. Common practice, no source.
func TestPowersBeforeAndAfterBesideCounts(t *testing.T) {
	for _, c := range []struct{ room, count, was, now, why, same, gone string }{
		{"Room", "Speakers", "Power before (W)", "Power now (W)", "Reason", "no change", "removed"},
		{"Raum", "Lautsprecher", "Leistung vorher (W)", "Leistung jetzt (W)", "Grund", "unverändert", "entfernt"},
		{"Local", "Haut-parleurs", "Puissance avant (W)", "Puissance après (W)", "Motif", "inchangé", "supprimé"},
		{"Recinto", "Parlantes", "Potencia antes (W)", "Potencia ahora (W)", "Motivo", "sin cambio", "retirados"},
		{"Locale", "Diffusori", "Potenza prima (W)", "Potenza adesso (W)", "Motivo", "invariato", "rimosso"},
		{"Ruimte", "Luidsprekers", "Vermogen voorheen (W)", "Vermogen nu (W)", "Reden", "ongewijzigd", "verwijderd"},
	} {
		j := wholeJob(t, "Hillside library 100 V\n|\n"+c.room+" | "+c.count+" | "+c.was+" | "+c.now+" | "+c.why+"\nLobby | 4 | 6 | 3 | too loud at the desk\nPapers | 4 | 3 | "+c.same+
			" |\nLoft | 8 | 6 | 1.5 | readers complain\nDepot | 2 | 6 | 10 | not heard\nStairs | 2 | 3 | "+c.gone+" | has its own")
		want(t, c.now, describe(j), []string{"4 x 3 W zone Lobby", "4 x 3 W zone Papers", "8 x 1.5 W zone Loft", "2 x 10 W zone Depot", "2 x ? W zone Stairs removed"})
	}
}
