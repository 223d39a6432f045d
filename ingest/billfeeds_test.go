package ingest

import (
	"strings"
	"testing"
)

// Rows of amplifiers in a bill say beside their description which line each output feeds. Common practice, no source.
func TestOutputsBesideDescribedAmplifiers(t *testing.T) {
	for _, c := range []struct{ head, amp, of, feeds string }{
		{"Item | Description | Place | Qty | Tap (W) | Circuit | Remarks", "Amplifier", "2 channels of 120 W", "channel 1 to %, channel 2 to &"},
		{"Pos. | Bezeichnung | Raum | Anzahl | Leistung (W) | Linie | Bemerkung", "Verstärker", "2 Kanäle je 120 W", "Kanal 1: %, Kanal 2: &"},
		{"N° | Désignation | Local | Nombre | Puissance (W) | Ligne | Remarque", "Amplificateur", "2 canaux de 120 W", "canal 1 vers %; canal 2 vers &"},
		{"Ítem | Descripción | Espacio | Cant. | Tap (W) | Línea | Observación", "Amplificador", "2 canales de 120 W", "canal 1 a %, canal 2 a &"},
		{"N. | Descrizione | Locale | Quantità | Presa (W) | Linea | Note", "Amplificatore", "2 canali da 120 W", "canale 1 a %, canale 2 a &"},
		{"Nr. | Omschrijving | Ruimte | Aantal | Tap (W) | Lijn | Opmerking", "Versterker", "2 kanalen van 120 W", "kanaal 1 naar %, kanaal 2 naar &"},
	} {
		amp := func(no, name, one, two string) string {
			return "\n" + no + " | " + c.amp + " " + name + ", " + c.of + " | Plant | 1 | | | " + strings.NewReplacer("%", one, "&", two).Replace(c.feeds)
		}
		j := wholeJob(t, "Library, 100 V\n|\n"+c.head+"\n1 | Horn | Hall | 6 | 2 | L1\n2 | Horn | Stacks | 4 | 3 | L2\n3 | Horn | Lecture | 6 | 6 | L3\n4 | Horn | Roof | 2 | 15 | L4"+
			amp("5", "A1", "L1", "L2")+amp("6", "A2", "L3", "L4"))
		want(t, c.amp, channelRatings(j), []string{"A1 / 1 120 W 100 V", "A1 / 2 120 W 100 V", "A2 / 1 120 W 100 V", "A2 / 2 120 W 100 V"})
	}
}

func TestWhenSomethingWent(t *testing.T) {
	for text, before := range map[string]string{
		"taken down when the sauna went": "taken down", "demontiert wegen Umbau": "demontiert", "retiré quand la salle a fermé": "retiré",
		"retirado cuando se cerró la sala": "retirado", "rimosso quando chiuse la sala": "rimosso", "losgehaald vanwege muizen": "losgehaald",
		"taken down when 2 of them failed": "taken down when 2 of them failed", "when the stage was built": "when the stage was built",
	} {
		if got := beforeWhen(text); got != before {
			t.Errorf("%s: %q", text, got)
		}
	}
}
