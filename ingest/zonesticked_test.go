package ingest

import "testing"

// A table of zones across outputs ticks which output feeds which zone: it lists no loudspeaker. A line below its
// header states what the outputs give. Common practice, no source.
func TestTicksThatFeedZones(t *testing.T) {
	for _, c := range []struct{ list, cross string }{
		{"Zone | Room | Qty | Tap", "Zone | Output 1 | Output 2 | Output 3 | Volume control\nPower W | 120 | 60 | 60 |"},
		{"Bereich | Raum | Stück | Abgriff", "Bereich | Ausgang 1 | Ausgang 2 | Ausgang 3 | Lautstärkeregler\nLeistung W | 120 | 60 | 60 |"},
		{"Zone | Local | Nombre | Prise", "Zone | Sortie 1 | Sortie 2 | Sortie 3 | Atténuateur\nPuissance W | 120 | 60 | 60 |"},
		{"Zona | Sala | Cantidad | Toma", "Zona | Salida 1 | Salida 2 | Salida 3 | Atenuador\nPotencia W | 120 | 60 | 60 |"},
		{"Zona | Locale | Quantità | Presa", "Zona | Uscita 1 | Uscita 2 | Uscita 3 | Attenuatore\nPotenza W | 120 | 60 | 60 |"},
		{"Zone | Ruimte | Aantal | Stand", "Zone | Uitgang 1 | Uitgang 2 | Uitgang 3 | Volumeregelaar\nVermogen W | 120 | 60 | 60 |"},
	} {
		for _, between := range []string{"|", "## Outputs"} {
			j := wholeJob(t, "Fern Garden, 100 V\n|\n"+c.list+"\nPalm | Low | 4 | 6 W\nPalm | High | 2 | 6 W\nKiln | Shop | 2 | 3 W\nYard | Herbs | 4 | 7.5 W\n"+between+"\n"+
				c.cross+"\nPalm | x | | |\nKiln | | x | | VC-1 20 W\nYard | | x | |\nStore | | | x |")
			want(t, c.cross, describe(j), []string{"4 x 6 W zone Palm channel 1", "2 x 6 W zone Palm channel 1",
				"2 x 3 W zone Kiln control VC-1 channel 2", "4 x 7.5 W zone Yard channel 2"})
			want(t, c.cross, ratedOutputs(j), []string{"1 120 W", "2 60 W", "3 60 W"})
		}
	}
}
