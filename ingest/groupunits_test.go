package ingest

import (
	"strings"
	"testing"
)

// Groups that are not merged, as in CSV, over a line of counts and taps reach over its second column too: that line
// begins anew under each. Common practice, no source.
func TestGroupsThatAreNotMergedOverCountsAndTaps(t *testing.T) {
	for _, c := range []struct{ head, contract, after, sub, wall string }{
		{"Item | Room | Speaker", "Contract", "After", "Qty | Tap W", "wall"},
		{"Pos. | Raum | Lautsprecher", "Hauptauftrag", "Nach Nachtrag 2", "Stk. | Abgriff W", "Wand"},
		{"Poste | Local | HP", "Marché", "Après avenant", "Nb | Prise W", "mural"},
		{"Partida | Local | Altavoz", "Contrato", "Tras modificado", "Uds. | Toma W", "pared"},
		{"Pos. | Locale | Diffusore", "Contratto", "Dopo variante", "N. | Presa W", "parete"},
		{"Post | Ruimte | Luidspreker", "Opdracht", "Na meerwerk", "Aantal | Stand W", "wand"},
	} {
		j := wholeJob(t, "Slate school, 100 V\n|\n"+c.head+" | "+c.contract+" | | "+c.after+" | | Amp\n | | | "+c.sub+" | "+c.sub+" |\n"+strings.ReplaceAll(`1 | Kapell | * | 6 | 5 | 8 | 5 | A
2 | Kantor | * | 4 | 2.5 | 4 | 5 | A
3 | Loft | * | 2 | 5 | 0 | | A
4 | Store | * | 0 | | 1 | 10 | A`, "*", c.wall))
		want(t, c.contract, describe(j), []string{"8 x 5 W zone Kapell channel A / 1", "4 x 5 W zone Kantor channel A / 1", "1 x 10 W zone Store channel A / 1"})
	}
	for _, c := range []struct{ head, sub string }{
		{"Room | Ceiling | | Horns | | Output", "Qty | W each"},
		{"Raum | Decken-LS | | Wand-LS | | Linie", "Stk. | W/Stk."},
		{"Ruimte | Plafond | | Wand | | Uitgang", "Aantal | W/st."},
	} {
		j := wholeJob(t, "Slate school, 100 V\n|\n"+c.head+"\n | "+c.sub+" | "+c.sub+" |\nFoyer | 6 | 3 | 2 | 15 | 1\nShop | 4 | 1.5 | | | 1")
		want(t, c.head, describe(j), []string{"6 x 3 W zone Foyer channel 1", "2 x 15 W zone Foyer channel 1", "4 x 1.5 W zone Shop channel 1"})
	}
}
