package ingest

import (
	"testing"

	"lineaudit/audit/schedule"
)

// Bills tell what each amplifier feeds by the zones of their chapters, in which cables by the metre and a control stand
// too; a chapter of options below the total is not installed; the number of a chapter in the name of a sheet is no output.
// Common practice, no source.
func TestChaptersOfOptionsAndCables(t *testing.T) {
	for _, c := range []struct{ head, amps, amp, feeds, and, horn, ceiling, cable, control, total, option string }{
		{"Item | Description | Unit | Qty | Rate", "Amplification", "Amplifier", "feeding the", "and the", "Horn loudspeaker set to 20 W", "Ceiling loudspeaker set to 3 W", "Cable 2 x 2.5 mm²", "Attenuator ATT-1, 36 W, for all ceiling loudspeakers", "Total", "Options not in the total"},
		{"Pos. | Bezeichnung | Einheit | Menge | EP", "Verstärkung", "Verstärker", "speist die", "und die", "Hornlautsprecher eingestellt auf 20 W", "Deckenlautsprecher eingestellt auf 3 W", "Kabel 2 x 2,5 mm²", "Lautstärkeregler ATT-1, 36 W, für alle Deckenlautsprecher", "Gesamt", "Optionen, nicht im Gesamt"},
		{"Art. | Désignation | U | Qté | PU HT", "Amplification", "Amplificateur", "alimentant la", "et les", "Projecteur de son réglé à 20 W", "Plafonnier réglé à 3 W", "Câble 2 x 2,5 mm²", "Atténuateur ATT-1, 36 W, commandant tous les plafonniers", "Total HT", "Option non comprise au total"},
		{"Partida | Descripción | Ud | Cantidad | Precio", "Amplificación", "Amplificador", "alimenta la", "y la", "Altavoz de bocina ajustado a 20 W", "Altavoz de techo ajustado a 3 W", "Cable 2 x 2,5 mm²", "Atenuador ATT-1, 36 W, para todos los altavoces de techo", "Total", "Opción no incluida en el total"},
		{"Voce | Descrizione | U.M. | Quantità | Prezzo", "Amplificazione", "Amplificatore", "alimenta la", "e la", "Tromba regolata a 20 W", "Diffusore da soffitto regolato a 3 W", "Cavo 2 x 2,5 mm²", "Attenuatore ATT-1, 36 W, per tutti i diffusori da soffitto", "Totale", "Opzione non compresa nel totale"},
		{"Post | Omschrijving | Eenheid | Hoeveelheid | Prijs", "Versterking", "Versterker", "voedt de", "en de", "Hoornluidspreker ingesteld op 20 W", "Plafondluidspreker ingesteld op 3 W", "Kabel 2 x 2,5 mm²", "Volumeregelaar ATT-1, 36 W, voor alle plafondluidsprekers", "Totaal", "Optie niet in het totaal"},
	} {
		t.Run(c.option, func(t *testing.T) {
			j := wholeJob(t, "## BOQ 12.4\nFern Ice Hall, 100 V\n|\n"+c.head+"\n12.4.1 | "+c.amps+"\n12.4.1.1 | "+c.amp+" AMP-1, 240 W, "+c.feeds+" Arena | u | 1 | 890\n"+
				"12.4.1.2 | "+c.amp+" AMP-2, 120 W, "+c.feeds+" Tribuna "+c.and+" Alcova | u | 1 | 640\n"+
				"12.4.2 | Arena\n12.4.2.1 | "+c.horn+" | u | 8 | 145\n12.4.2.2 | "+c.cable+" | m | 180 | 3.2\n"+
				"12.4.3 | Tribuna\n12.4.3.1 | "+c.horn+" | u | 3 | 160\n12.4.3.2 | "+c.cable+" | m | 95 | 3.2\n"+
				"12.4.4 | Alcova\n12.4.4.1 | "+c.ceiling+" | u | 10 | 48\n12.4.4.2 | "+c.control+" | u | 1 | 55\n12.4.4.3 | "+c.cable+" | m | 120 | 2.4\n"+
				" | "+c.total+" | | | 5353\n12.4.5 | "+c.option+"\n12.4.5.1 | "+c.horn+" | u | 2 | 145")
			want(t, "loudspeakers", describe(j)[:3], []string{"8 x 20 W zone Arena channel AMP-1 / 1", "3 x 20 W zone Tribuna channel AMP-2 / 1", "10 x 3 W zone Alcova control ATT-1 channel AMP-2 / 1"})
			if n := len(j.Loudspeakers); n != 4 || j.Loudspeakers[3].Status != schedule.Future {
				t.Errorf("option: %v", describe(j))
			}
			want(t, "cables", cablesOf(j), []string{"12.4.2.2 180 m 2.5 mm² channel AMP-1 / 1", "12.4.3.2 95 m 2.5 mm² channel AMP-2 / 1", "12.4.4.3 120 m 2.5 mm² channel AMP-2 / 1"})
		})
	}
}
