package ingest

import "testing"

// A short list of models that gives the outputs of each amplifier, without a word for it in its headers. Common
// practice, no source.
func TestAmplifiersInAListOfTypes(t *testing.T) {
	for _, c := range []struct{ name, types, zones, list string }{
		{"English", "Power stages\nRef. | Configuration | Weight kg", "Zone | Amplifier | Channel", "Zone | Room | Qty | Tap (W)"},
		{"German", "Endstufen\nRef. | Konfiguration | Gewicht kg", "Zone | Verstärker | Kanal", "Zone | Raum | Anzahl | Abgriff (W)"},
		{"French", "Amplificateurs\nRéf. | Configuration | Poids kg", "Zone | Amplificateur | Canal", "Zone | Local | Qté | Réglage (W)"},
		{"Spanish", "Etapas\nRef. | Configuración | Peso kg", "Zona | Etapa | Canal", "Zona | Local | Cant. | Toma (W)"},
		{"Italian", "Amplificatori\nRif. | Configurazione | Peso kg", "Zona | Amplificatore | Canale", "Zona | Locale | Q.tà | Presa (W)"},
		{"Dutch", "Versterkers\nRef. | Configuratie | Gewicht kg", "Zone | Versterker | Kanaal", "Zone | Ruimte | Aantal | Stand (W)"},
	} {
		j := wholeJob(t, "## List\nKolba, 100 V\n|\n"+c.list+"\n1 | Langa | 6 | 10\n2 | Dusha | 3 | 5\n3 | Hal | 2 | 5\n## Rack\n"+c.zones+"\n1 | EP1 | A\n2 | EP1 | B\n3 | EP2 | A\n|\n"+
			c.types+"\nEP1 | 2 x 240 W | 14.5\nEP2 | 2 x 120 W | 11.2")
		want(t, c.name, ratedOutputs(j), []string{"EP1 / A 240 W", "EP1 / B 240 W", "EP2 / A 120 W", "EP2 / B 120 W"})
	}
}
