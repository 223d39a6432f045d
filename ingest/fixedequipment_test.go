package ingest

import (
	"strings"
	"testing"
)

// Lists of all fixed equipment of a building have loudspeakers of a line among clocks and pumps: a list of loudspeakers,
// in which the other things are left out. Common practice, no source.
func TestFixedEquipmentWithLoudspeakers(t *testing.T) {
	for _, c := range []struct{ header, clock, column, ceiling, printer, pump, wall, amp string }{
		{"Item | Location | Description | Qty | Sum insured", "Timing clock, 40 W", "Loudspeaker, column, 100 V line, set to 20 W", "Loudspeaker, ceiling, 100 V line, set to 3 W", "Printer, 60 W", "Circulation pump, 2.2 kW",
			"Loudspeaker, wall, 100 V line, set to 6 W", "Public address amplifier, 240 W, 100 V line"},
		{"Pos. | Raum | Bezeichnung | Anzahl | Versicherungswert", "Uhr, 40 W", "Lautsprecher, Säule, 100 V, eingestellt auf 20 W", "Lautsprecher, Decke, 100 V, eingestellt auf 3 W", "Drucker, 60 W", "Umwälzpumpe, 2,2 kW",
			"Lautsprecher, Wand, 100 V, eingestellt auf 6 W", "Verstärker, 240 W, 100 V"},
		{"N° | Local | Désignation | Qté | Valeur assurée", "Horloge, 40 W", "Haut-parleur, colonne, 100 V, réglé sur 20 W", "Haut-parleur, plafond, 100 V, réglé sur 3 W", "Imprimante, 60 W", "Pompe de circulation, 2,2 kW",
			"Haut-parleur, mural, 100 V, réglé sur 6 W", "Amplificateur, 240 W, 100 V"},
		{"Nº | Sala | Descripción | Cant. | Valor asegurado", "Reloj, 40 W", "Altavoz, columna, 100 V, ajustado a 20 W", "Altavoz, techo, 100 V, ajustado a 3 W", "Impresora, 60 W", "Bomba de circulación, 2,2 kW",
			"Altavoz, pared, 100 V, ajustado a 6 W", "Amplificador, 240 W, 100 V"},
		{"N. | Locale | Descrizione | Q.tà | Valore assicurato", "Orologio, 40 W", "Altoparlante, colonna, 100 V, presa 20 W", "Altoparlante, soffitto, 100 V, presa 3 W", "Stampante, 60 W", "Pompa di circolazione, 2,2 kW",
			"Altoparlante, parete, 100 V, presa 6 W", "Amplificatore, 240 W, 100 V"},
		{"Nr. | Ruimte | Omschrijving | Aantal | Verzekerd bedrag", "Klok, 40 W", "Luidspreker, zuil, 100 V, ingesteld op 20 W", "Luidspreker, plafond, 100 V, ingesteld op 3 W", "Printer, 60 W", "Circulatiepomp, 2,2 kW",
			"Luidspreker, wand, 100 V, ingesteld op 6 W", "Versterker, 240 W, 100 V"},
	} {
		jobs := wholeJobs("Schedule B\nPremises: Slate baths\n|\n" + c.header + `
1 | Pool | ` + c.clock + ` | 1 | 2400
2 | Pool | ` + c.column + ` | 6 | 1500
3 | Lobby | ` + c.ceiling + ` | 4 | 260
4 | Lobby | ` + c.printer + ` | 1 | 350
5 | Plant | ` + c.pump + ` | 2 | 5200
6 | Office | ` + c.wall + ` | 1 | 65
7 | Office | ` + c.amp + ` | 1 | 780`)
		if len(jobs) != 1 {
			t.Errorf("%s: %d jobs", c.header, len(jobs))
			continue
		}
		got := describe(jobs[0])
		for i := range got {
			got[i], _, _ = strings.Cut(got[i], " channel")
		}
		want(t, c.header, got, []string{"6 x 20 W zone Pool", "4 x 3 W zone Lobby", "1 x 6 W zone Office"})
	}
	if jobs := wholeJobs(`
Schedule B
Item | Location | Description | Qty | Sum insured
1 | Pool | Timing clock, 40 W | 1 | 2400
2 | Lobby | Ticket printer, 60 W | 1 | 350
3 | Lobby | Active loudspeaker, 120 W | 2 | 350
4 | Plant | Circulation pump, 2.2 kW | 2 | 5200`); len(jobs) != 0 {
		t.Error("loudspeakers of no line are a schedule")
	}
}
