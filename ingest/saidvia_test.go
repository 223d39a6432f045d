package ingest

import "testing"

// Descriptions name the amplifier of loudspeakers and the control between the two. Common practice, no source.
func TestAmplifierThatAControlFollows(t *testing.T) {
	for _, c := range []struct{ name, head, amp, speaker, on, via, control string }{
		{"English", "Item | Description | Where | Sum insured £", "Amplifier", "ceiling loudspeakers set to", "on amplifier", "via volume control", "Volume control"},
		{"German", "Pos. | Beschreibung | Ort | Versicherungswert", "Verstärker", "Deckenlautsprecher eingestellt auf", "an Verstärker", "über Lautstärkeregler", "Lautstärkeregler"},
		{"French", "N° | Désignation | Local | Valeur assurée", "Amplificateur", "haut-parleurs de plafond réglés à", "sur amplificateur", "via atténuateur", "Atténuateur"},
		{"Spanish", "Pos. | Descripción | Ubicación | Valor asegurado", "Amplificador", "altavoces de techo ajustados a", "en amplificador", "mediante atenuador", "Atenuador"},
		{"Italian", "Pos. | Descrizione | Locale | Valore assicurato", "Amplificatore", "diffusori da soffitto regolati a", "su amplificatore", "tramite attenuatore", "Attenuatore"},
		{"Dutch", "Pos. | Omschrijving | Ruimte | Verzekerd bedrag", "Versterker", "plafondluidsprekers ingesteld op", "op versterker", "via volumeregelaar", "Volumeregelaar"},
	} {
		j := wholeJob(t, "Fern House, 100 V\n|\n"+c.head+"\n1 | "+c.amp+" A, 240 W | Loft | 1450\n2 | "+c.amp+" B, 60 W | Loft | 620\n"+
			"3 | 12 "+c.speaker+" 6 W, "+c.on+" A | Mill | 1560\n"+
			"4 | 4 "+c.speaker+" 3 W, "+c.on+" A "+c.via+" VC1 | Weir | 520\n"+
			"5 | 4 "+c.speaker+" 1.5 W, "+c.on+" B "+c.via+" VC2 | Barn | 520\n"+
			"6 | "+c.control+" VC1, 24 W | Weir | 60\n7 | "+c.control+" VC2, 12 W | Barn | 45")
		want(t, c.name, describe(j), []string{"12 x 6 W zone Mill channel A / 1", "4 x 3 W zone Weir control VC1 channel A / 1", "4 x 1.5 W zone Barn control VC2 channel B / 1"})
	}
}
