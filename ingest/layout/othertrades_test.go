package layout

import "testing"

// Circuits of heating cables have zones, lines, lengths, watts and controllers as loudspeakers have, but powers
// per metre, or the voltage of the mains above them, and nothing that speaks of sound. A list that says
// of its loudspeakers as much as a word is one. Common practice, no source.
func TestOtherTrades(t *testing.T) {
	for _, c := range []struct {
		name, sheet string
		schedule    bool
	}{
		{"heating by the metre", `
			Zone | Line | Cable | W/m | Length (m) | Watts | Circuit | Controller | Controller (W)
			Dock | Water | self-regulating | 5 | 60 | 300 | P1-2 | TC1 | 3000
			Roof | North | self-regulating | 10 | 30 | 300 | P1-4 | TC2 | 2500
			Shop | Drain | constant | 5 | 20 | 100 | P1-6 | none |`, false},
		{"the mains above", `
			Boathouse, all circuits 230 V
			Zone | Line | Watts | Circuit | Controller | Controller (W)
			Dock | Water | 15 | P1-2 | TC1 | 30
			Roof | North | 30 | P1-4 | TC2 | 60
			Shop | Drain | 10 | P1-6 | none |`, false},
		{"lamps on dimmers, one of them recessed", `
			Musée des barques, éclairage 230 V
			Salle | Type | Nb | W unitaire | Circuit | Variateur | W max variateur
			Cartes | spot LED sur rail | 12 | 9 | E1 | V1 | 300
			Cartes | réglette | 4 | 18 | E2 | |
			Hall | luminaire suspendu | 6 | 25 | E3 | V2 | 500
			Couloir | encastré | 10 | 12 | E4 | |`, false},
		{"lamps in German", `
			Bootshaus, Beleuchtung 230 V
			Raum | Typ | Anzahl | W je Stück | Kreis | Regler | W max
			Halle | LED-Strahler | 12 | 10 | E1 | V1 | 300
			Halle | Leuchte | 4 | 20 | E2 | |
			Gang | Einbau | 6 | 15 | E3 | V2 | 500
			Hof | Lampe | 10 | 10 | E4 | |`, false},
		{"ventilation in Dutch", `
			School de Hei, inventaris ventilatie
			Zone | Lokaal | Aantal units | Vermogen per unit (W) | Stand | Kanaal | Regelaar
			Onderbouw | Lokaal 1 | 1 | 85 | 2 | K1 | R1
			Onderbouw | Lokaal 2 | 1 | 85 | 2 | K1 | R2
			Bovenbouw | Aula | 3 | 120 | 3 | K4 | R6
			Algemeen | Toiletten | 4 | 25 | 1 | K5 |`, false},
		{"ventilation", `
			School of the Moor, ventilation units
			Zone | Room | Number of units | Power per unit (W) | Channel | Controller
			Infants | Room 1 | 1 | 85 | K1 | R1
			Infants | Room 2 | 1 | 85 | K1 | R2
			Juniors | Hall | 3 | 120 | K4 | R6
			All | Lavatories | 4 | 25 | K5 |`, false},
		{"ventilation in German", `
			Schule am Moor, Lüftungsgeräte
			Zone | Raum | Anzahl | Leistung je Gerät (W) | Kanal | Regler
			Unten | Raum 1 | 1 | 85 | K1 | R1
			Unten | Raum 2 | 1 | 85 | K1 | R2
			Oben | Aula | 3 | 120 | K4 | R6
			Alle | WC | 4 | 25 | K5 |`, false},
		{"ventilation in French", `
			École de la lande, inventaire de la ventilation
			Zone | Local | Nombre | Puissance unitaire (W) | Canal | Régleur
			Bas | Salle 1 | 1 | 85 | K1 | R1
			Bas | Salle 2 | 1 | 85 | K1 | R2
			Haut | Aula | 3 | 120 | K4 | R6
			Tous | WC | 4 | 25 | K5 |`, false},
		{"ventilation in Spanish", `
			Colegio del páramo, ventilación
			Zona | Sala | Cantidad | Potencia unitaria (W) | Canal | Regulador
			Baja | Aula 1 | 1 | 85 | K1 | R1
			Baja | Aula 2 | 1 | 85 | K1 | R2
			Alta | Salón | 3 | 120 | K4 | R6
			Toda | Aseos | 4 | 25 | K5 |`, false},
		{"ventilation in Italian", `
			Scuola della brughiera, ventilazione
			Zona | Locale | Quantità | Potenza unitaria (W) | Canale | Regolatore
			Bassa | Aula 1 | 1 | 85 | K1 | R1
			Bassa | Aula 2 | 1 | 85 | K1 | R2
			Alta | Salone | 3 | 120 | K4 | R6
			Tutta | Bagni | 4 | 25 | K5 |`, false},
		{"lights of a panel in Spanish", `
			Teatro del Páramo - cuadro C-3 alumbrado
			Circuito | Zona | Punto de luz | Uds | W/ud | W total
			C1 | Platea | aplique led | 14 | 6 | 84
			C1 | Platea | baliza de escalón | 32 | 1,5 | 48
			C2 | Taquilla | downlight | 2 | 10 | 20
			C3 | Escenario | luz de servicio | 8 | 15 | 120`, false},
		{"lights of a panel in Italian", `
			Teatro della brughiera, quadro Q3
			Circuito | Zona | Punto luce | Q.tà | W cad. | W totali
			C1 | Platea | segnapasso | 14 | 6 | 84
			C1 | Platea | faretto | 32 | 1,5 | 48
			C2 | Cassa | corpo illuminante | 2 | 10 | 20
			C3 | Scena | plafoniera led | 8 | 15 | 120`, false},
		{"lights of a panel in French", `
			Théâtre de la lande, tableau T3
			Circuit | Zone | Point lumineux | Qté | W unitaire | W total
			C1 | Salle | spot led | 14 | 6 | 84
			C1 | Salle | balisage lumineux | 32 | 1,5 | 48
			C2 | Caisse | downlight | 2 | 10 | 20
			C3 | Scène | réglette | 8 | 15 | 120`, false},
		{"lights of a panel in German", `
			Theater am Moor, Verteiler V3
			Kreis | Zone | Brennstelle | Anzahl | W je Stück | W gesamt
			C1 | Saal | Downlight | 14 | 6 | 84
			C1 | Saal | Notleuchte | 32 | 1,5 | 48
			C2 | Kasse | Leuchte | 2 | 10 | 20
			C3 | Bühne | Lampe | 8 | 15 | 120`, false},
		{"lights of a panel in Dutch", `
			Theater op de hei, kast K3
			Groep | Zone | Lichtpunt | Aantal | W per stuk | W totaal
			C1 | Zaal | inbouwspot | 14 | 6 | 84
			C1 | Zaal | tredeverlichting | 32 | 1,5 | 48
			C2 | Kassa | downlight | 2 | 10 | 20
			C3 | Toneel | armatuur | 8 | 15 | 120`, false},
		{"lights of a panel", `
			Theatre on the moor, panel P3
			Circuit | Zone | Light point | Qty | W each | W total
			C1 | Stalls | downlight | 14 | 6 | 84
			C1 | Stalls | spotlight | 32 | 1.5 | 48
			C2 | Desk | luminaire | 2 | 10 | 20
			C3 | Stage | light fittings | 8 | 15 | 120`, false},
		{"loudspeakers in a building for ventilation", `
			Building of the ventilation plant
			Zone | Room | Number | Power each (W) | Channel | Controller
			Low | Room 1 | 1 | 6 | K1 | R1
			Low | Room 2 | 1 | 3 | K1 | R2
			High | Hall | 3 | 10 | K4 | R6
			All | Passage | 4 | 1.5 | K5 |`, true},
		{"the mains above loudspeakers", `
			Boathouse PA, supply 230 V
			Zone | Line | Watts | Control | Control (W)
			Dock | 1 | 15 | VC1 | 30
			Roof | 2 | 30 | VC2 | 60
			Shop | 3 | 10 | none |`, true},
		{"the mains and the line", `
			Supply 230 V, lines 100 V
			Zone | Line | Watts | Control | Control (W)
			Dock | 1 | 15 | VC1 | 30
			Roof | 2 | 30 | VC2 | 60
			Shop | 3 | 10 | none |`, true},
	} {
		r := Read(bookOf(draw("Sheet1", c.sheet)), Options{})
		if got := len(r.AllTables()) > 0; got != c.schedule {
			t.Errorf("%s: taken for a schedule: %v, want %v", c.name, got, c.schedule)
		}
	}
}
