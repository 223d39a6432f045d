package ingest

import (
	"strings"
	"testing"
)

// Change orders put counts of the contract beside those after a change: the last state holds, aloud, and what
// comes to no piece is left out; outputs list the items that hang on them. Common practice, no source.
func TestCountsOfTheContractAndAfterAChange(t *testing.T) {
	for _, c := range []struct{ item, where, device, contract, first, last, output, rated, items string }{
		{"Item", "Area", "Speaker, tap", "Contract", "Variation 1", "Variation 2", "Channel", "Rated W", "Items"},
		{"Pos.", "Raum", "Lautsprecher, Abgriff", "Vertrag", "Nachtrag 1", "Nachtrag 2", "Ausgang", "Leistung W", "Positionen"},
		{"Poste", "Local", "HP et prise", "Marché", "Avenant 1", "Avenant 2", "Sortie", "Puissance W", "Postes"},
		{"Partida", "Local", "Altavoz y toma", "Contrato", "Modificado 1", "Modificado 2", "Canal", "Potencia W", "Partidas"},
		{"Pos.", "Locale", "Diffusore e presa", "Contratto", "Variante 1", "Variante 2", "Uscita", "Potenza W", "Voci"},
		{"Post", "Ruimte", "Luidspreker en stand", "Bestek", "Meerwerk 1", "Meerwerk 2", "Uitgang", "Vermogen W", "Posten"},
	} {
		jobs := wholeJobs(`
Slate pool, 100 V loudspeakers
|
` + c.item + ` | ` + c.where + ` | ` + c.device + ` | ` + c.contract + ` | ` + c.first + ` | ` + c.last + `
1 | Basin | 15 W | 4 | 6 | 6
2 | Stand | 20 W | 2 | 2 | 3
3 | Hall | 3 W | 2 | 1 | 0
4 | Terrace | 10 W | 0 | 0 | 2
|
` + c.output + ` | ` + c.rated + ` | ` + c.items + `
1 | 240 | 1, 4
2 | 120 | 2`)
		if len(jobs) != 1 {
			t.Errorf("%s: %d jobs", c.contract, len(jobs))
			continue
		}
		j := jobs[0]
		want(t, c.contract, describe(j), []string{"6 x 15 W zone Basin channel 1", "3 x 20 W zone Stand channel 2", "2 x 10 W zone Terrace channel 1"})
		aloud, none := false, false
		for _, a := range j.Assumptions {
			aloud = aloud || strings.Contains(a.Because, c.contract)
		}
		for _, o := range j.LeftOut {
			none = none || o.Reason == "no piece of them"
		}
		if !aloud || !none {
			t.Errorf("%s: aloud %v, left out %v", c.contract, aloud, none)
		}
	}
}

// Both states have a count and a tap.
func TestContractAndAfterItWithTaps(t *testing.T) {
	for _, c := range []struct{ contract, after string }{{"Contract", "After this CO"}, {"Hauptauftrag", "Nach Nachtrag 2"}, {"Marché", "Après avenant"}, {"Contrato", "Tras modificado"}, {"Contratto", "Dopo variante"}, {"Opdracht", "Na meerwerk"}} {
		book := drawnBook(`
Slate school, 100 V loudspeakers
|
Item | Room | Speaker | ` + c.contract + ` | | ` + c.after + ` | | Change W
 | | | Qty | Tap W | Qty | Tap W |
1 | Hall | ceiling | 6 | 5 | 8 | 5 | 10
2 | Lab | ceiling | 4 | 2.5 | 4 | 5 | 10
3 | Loft | wall | 2 | 5 | 0 | 0 | -10
4 | Store | horn | 0 | 0 | 1 | 10 | 10`)
		mergeGroups(book.Sheets[0], 3)
		j := Read(book, Options{}).Jobs[0]
		want(t, c.contract, describe(j), []string{"8 x 5 W zone Hall", "4 x 5 W zone Lab", "1 x 10 W zone Store"})
	}
}
