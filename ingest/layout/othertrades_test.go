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
