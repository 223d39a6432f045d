package ingest

import "testing"

// Below a list stand amplifiers down and their outputs across with what each gives, controls with their places under a
// title, and cables that tell their output and places in one cell. Common practice, no source.
func TestListsBelowAListOfLoudspeakers(t *testing.T) {
	for _, c := range []struct{ head, amps, across, controls, cables, cable, run string }{
		{"Qty | Item | Goes to | Tap | Amp/Ch", "AMPS", "Amp | Ch 1 | Ch 2", "LINE ATTENUATORS", "CABLE", "Reel | Gauge | Length | Run", "Amp A ch 1"},
		{"Anzahl | Artikel | Ort | Abgriff | Verstärker/Kanal", "VERSTÄRKER", "Verstärker | Kanal 1 | Kanal 2", "LAUTSTÄRKEREGLER", "KABEL", "Trommel | Querschnitt | Länge | Strecke", "Verstärker A Kanal 1"},
		{"Qté | Article | Lieu | Prise | Ampli/sortie", "AMPLIS", "Ampli | Sortie 1 | Sortie 2", "ATTÉNUATEURS", "CÂBLES", "Touret | Section | Longueur | Trajet", "Ampli A sortie 1"},
		{"Cantidad | Artículo | Lugar | Toma | Etapa/canal", "ETAPAS", "Etapa | Canal 1 | Canal 2", "ATENUADORES", "CABLES", "Bobina | Sección | Longitud | Tramo", "Etapa A canal 1"},
		{"Quantità | Articolo | Luogo | Presa | Ampli/uscita", "AMPLIFICATORI", "Amplificatore | Uscita 1 | Uscita 2", "ATTENUATORI", "CAVI", "Bobina | Sezione | Lunghezza | Percorso", "Amplificatore A uscita 1"},
		{"Aantal | Artikel | Plaats | Stand | Versterker/kanaal", "VERSTERKERS", "Versterker | Kanaal 1 | Kanaal 2", "VOLUMEREGELAARS", "KABELS", "Haspel | Doorsnede | Lengte | Traject", "Versterker A kanaal 1"},
	} {
		t.Run(c.amps, func(t *testing.T) {
			j := wholeJob(t, "Fern Fair, 100 V\n|\n"+c.head+"\n8 | horn | Boards | 15W | A/1\n4 | horn | Quay | 15W | A/2\n6 | box | Kiosk | 5W | B/1\n4 | box | Weir | 5W | B/2\n|\n"+
				c.amps+"\n"+c.across+"\nA | 200W | 100W\nB | 60W | 60W\n|\n"+c.controls+"\nAT1 | 35W | Kiosk\nAT2 | 25W | Weir\n|\n"+
				c.cables+"\n"+c.cable+"\nR1 | 2 x 2.5 mm² | 90 m | "+c.run+" - Boards\nR2 | 2 x 2.5 mm² | 75 m | "+c.run[:len(c.run)-1]+"2 - Quay")
			want(t, "loudspeakers", describe(j), []string{"8 x 15 W zone Boards channel A / 1", "4 x 15 W zone Quay channel A / 2", "6 x 5 W zone Kiosk control AT1 channel B / 1", "4 x 5 W zone Weir control AT2 channel B / 2"})
			want(t, "outputs", ratedOutputs(j), []string{"A / 1 200 W", "A / 2 100 W", "B / 1 60 W", "B / 2 60 W"})
			want(t, "controls", []string{controlsOf(j)}, []string{"AT1 35 W x1, AT2 25 W x1"})
			want(t, "cables", cablesOf(j), []string{"R1 90 m 2.5 mm² channel A / 1", "R2 75 m 2.5 mm² channel A / 2"})
		})
	}
}

// Below a title for controls each may go by its place alone; one amplifier without a name feeds all. Common practice, no source.
func TestControlsByTheirPlacesBelowAList(t *testing.T) {
	for _, c := range []struct{ amp, head, controls string }{
		{"Amplifier 180 W with a 100 V output, one line for all", "Where | Qty | Tap | Total W", "Wall attenuators"},
		{"Verstärker 180 W mit 100-V-Ausgang, eine Linie für alles", "Ort | Anzahl | Abgriff | Summe W", "Wandregler"},
		{"Ampli de 180 W, une sortie 100 V pour tout", "Lieu | Qté | Prise | Total W", "Atténuateurs muraux"},
		{"Potencia de 180 W con salida de 100 V, una sola línea para todo", "Lugar | Cant. | Derivación | Total W", "Atenuadores de pared"},
		{"Amplificatore da 180 W con uscita a 100 V", "Luogo | Q.tà | Presa | Totale W", "Attenuatori a parete"},
		{"Versterker van 180 W met uitgang 100 V", "Plaats | Aantal | Stand | Totaal W", "Volumeregelaars"},
	} {
		j := wholeJob(t, "Speakers of the stables\n"+c.amp+"\n|\n"+c.head+"\nStalls | 6 | 5 W | 30\nRiding hall | 4 | 10 W | 40\nVet | 2 | 3 W | 6\nTotal | 12 | | 76\n|\n"+c.controls+"\nRiding hall | 60 W\nVet | 10 W")
		want(t, c.amp, []string{controlsOf(j)}, []string{"control (Riding hall) 60 W x1, control (Vet) 10 W x1"})
		if len(j.Channels) != 1 || show(j.Channels[0].Rated) != "180" || j.Loudspeakers[0].Channel != j.Channels[0] {
			t.Errorf("%s: outputs %v, loudspeakers %v", c.amp, ratedOutputs(j), describe(j))
		}
	}
	j := wholeJob(t, "Speakers of the stables, 100 V\n|\nWhere | Qty | Tap\nStalls | 6 | 5 W\nVet | 2 | 3 W\n|\nAttenuators\nTack room | 60 W")
	if len(j.Controls) != 0 || len(j.Questions) == 0 {
		t.Errorf("a control at no place of the list: %v, asked %v", controlsOf(j), asked(j))
	}
}
