package ingest

import "testing"

// A list of zones with their amplifiers has what these give beside them; words for none in the column of controls.
// Common practice, no source.
func TestPowersBesideTheAmplifiersOfZones(t *testing.T) {
	for _, c := range []struct{ list, zones, none string }{
		{"Room | Zone | Quantity | Type | Tap (W)", "Zone | Amplifier | Power (W) | Line (V) | Attenuator | Attenuator (W)", "has none"},
		{"Raum | Zone | Anzahl | Typ | Abgriff (W)", "Zone | Verstärker | Leistung (W) | Linie (V) | Regler | Regler (W)", "hat keinen"},
		{"Local | Zone | Quantité | Type | Prise (W)", "Zone | Ampli | Puissance (W) | Ligne (V) | Atténuateur | Atténuateur (W)", "n'en a pas"},
		{"Ambiente | Zona | Cantidad | Tipo | Toma (W)", "Zona | Amplificador | Potencia (W) | Línea (V) | Atenuador | Atenuador (W)", "no lleva"},
		{"Locale | Zona | Quantità | Tipo | Presa (W)", "Zona | Amplificatore | Potenza (W) | Linea (V) | Attenuatore | Attenuatore (W)", "non previsto"},
		{"Ruimte | Zone | Aantal | Type | Stand (W)", "Zone | Versterker | Vermogen (W) | Lijn (V) | Regelaar | Regelaar (W)", "heeft geen"},
	} {
		j := wholeJob(t, "Fern garden\n|\n"+c.list+"\nOrchids | Z1 | 6 | wall | 10\nPalms | Z1 | 6 | column | 15\nTickets | Z2 | 1 | ceiling | 3\nOffices | Z3 | 4 | ceiling | 1.5\n|\n## Z\n"+
			c.zones+"\nZ1 | AMP-1 | 240 | 100 | "+c.none+" |\nZ2 | AMP-2 | 120 | 100 | AT-01 | 100\nZ3 | AMP-3 | 60 | 100 | AT-02 | 36")
		want(t, c.zones, ratedOutputs(j), []string{"AMP-1 / 1 240 W", "AMP-2 / 1 120 W", "AMP-3 / 1 60 W"})
		want(t, c.zones, []string{controlsOf(j)}, []string{"AT-01 100 W x1, AT-02 36 W x1"})
	}
}
