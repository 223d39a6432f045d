package ingest

import (
	"testing"

	"lineaudit/audit/schedule"
)

// Chapters of a bill are zones where the next items are numbered under them; its options are not installed;
// a control is for the zone of its chapter. Common practice, no source.
func TestChaptersOfABill(t *testing.T) {
	for _, c := range []struct{ head, speaker, control, option, amp string }{
		{"Item | Qty | Unit | Description | Rate", "Ceiling loudspeaker 6 W, tapped 3 W, ", "Volume control 30 W for ", "Optional: Ceiling loudspeaker 6 W, tapped 3 W, waiting area", "Mixer amplifier 120 W"},
		{"Pos. | Menge | Einh. | Bezeichnung | EP", "Deckenlautsprecher 6 W, Anzapfung 3 W, ", "Lautstärkeregler 30 W für ", "Bedarfsposition: Deckenlautsprecher 6 W, Anzapfung 3 W, Wartebereich", "Mischverstärker 120 W"},
	} {
		j := wholeJob(t, "Fern Baths, 100 V\n|\n"+c.head+`
01 | | | Pool hall |
01.01 | 8 | Stk | `+c.speaker+`long side | 40
01.02 | 4 | Stk | `+c.speaker+`children's pool | 40
02 | | | Lobby |
02.01 | 5 | Stk | `+c.speaker+`ticket desk | 40
02.02 | 1 | Stk | `+c.control+`Lobby | 58
02.03 | 2 | Stk | `+c.option+` | 40
03 | | | Rack |
03.01 | 1 | Stk | `+c.amp+` | 780`)
		want(t, c.head, describe(j)[:2], []string{"8 x 3 W zone Pool hall channel " + c.amp + " / 1", "4 x 3 W zone Pool hall channel " + c.amp + " / 1"})
		for _, l := range j.Loudspeakers[2:] {
			if installed := l.Zone.Name == "Lobby" && l.Count.Low == 5; installed != (l.Status == schedule.Installed) {
				t.Errorf("%s: %v", c.head, describe(j))
			}
		}
		if n := len(j.Controls); n != 1 || j.Controls[0].Zone == nil || j.Controls[0].Zone.Name != "Lobby" || j.Loudspeakers[2].Control != j.Controls[0] {
			t.Errorf("%s: controls %s", c.head, controlsOf(j))
		}
	}
}

// Descriptions of a bill end with the place, of controls too; amplifiers say which floor they feed, and cables by the metre
// where they lie. Chapters that are kinds of things are no zones. Common practice, no source.
func TestPlacesInABill(t *testing.T) {
	j := wholeJob(t, `
Fern Library, 100 V line
Item | Description | Unit | Qty | Rate
6.1 | LOUDSPEAKERS - GROUND FLOOR | | |
6.1.1 | Ceiling speaker tapped 3 W, foyer | No. | 6 | 118
6.1.2 | Ceiling speaker tapped 3 W, roof terrace | No. | 10 | 118
6.2 | LOUDSPEAKERS - FIRST FLOOR | | |
6.2.1 | Wall speaker tapped 6 W, children's library | No. | 4 | 162
6.2.2 | Ceiling speaker tapped 3 W, study rooms | No. | 8 | 118
6.3 | AMPLIFIERS AND CONTROLS | | |
6.3.1 | Amplifier AMP-G, 120 W, for ground floor loudspeakers | No. | 1 | 980
6.3.2 | Amplifier AMP-F, 60 W, for first floor loudspeakers | No. | 1 | 760
6.3.3 | Wall attenuator 36 W, children's library | No. | 1 | 96
6.4 | CABLE | | |
6.4.1 | 2 core 1.5 mm² double insulated, ground floor | m | 185 | 4.20
6.4.2 | 2 core 1.5 mm² double insulated, first floor | m | 140 | 4.20`)
	want(t, "loudspeakers", describe(j), []string{"6 x 3 W zone foyer channel AMP-G / 1", "10 x 3 W zone roof terrace channel AMP-G / 1",
		"4 x 6 W zone children's library control 6.3.3 channel AMP-F / 1", "8 x 3 W zone study rooms channel AMP-F / 1"})
	want(t, "outputs", ratedOutputs(j), []string{"AMP-G / 1 120 W", "AMP-F / 1 60 W"})
	want(t, "cables", cablesOf(j), []string{"6.4.1 185 m 1.5 mm² channel AMP-G / 1", "6.4.2 140 m 1.5 mm² channel AMP-F / 1"})

	j = wholeJob(t, `
Bibliotheek De Varen, 100 V
Art. | Omschrijving | Eenh. | Hoev. | EP
68.1 | Luidsprekers | | |
68.1.1 | Plafondluidspreker ingesteld op 3 W, leeszaal | st | 12 |
68.1.2 | Plafondluidspreker ingesteld op 1,5 W, jeugdafdeling | st | 6 |
68.1.3 | Wandluidspreker ingesteld op 6 W, grote zaal | st | 4 |
68.2 | Volumeregelaars | | |
68.2.1 | Volumeregelaar 50 W, leeszaal | st | 1 |
68.3 | Versterking | | |
68.3.1 | Mengversterker 120 W, in de berging | st | 1 |
68.4 | Bekabeling | | |
68.4.1 | Luidsprekerkabel 2 x 1,5 mm², berging naar leeszaal | m | 35 |`)
	if n := len(j.Controls); n != 1 || j.Loudspeakers[0].Control != j.Controls[0] || j.Loudspeakers[1].Control != nil {
		t.Errorf("controls %s: %v", controlsOf(j), describe(j))
	}
	if n := len(j.Cables); n != 1 || j.Cables[0].From.Text.Value != "berging" || j.Cables[0].To.Text.Value != "leeszaal" || j.Loudspeakers[0].Run != j.Cables[0] || j.Loudspeakers[1].Run != nil {
		t.Errorf("cables %v", cablesOf(j))
	}
}

// Such bills in French and Italian: chapters of things are no zones, options are not installed.
func TestPlacesInBillsOfOtherLanguages(t *testing.T) {
	for _, c := range []struct{ name, sheet string }{
		{"French", `
Sonorisation ligne 100 V
N° | Désignation | U | Qté | P.U. HT
1 | Haut-parleurs | | |
1.1 | Haut-parleur de plafond réglé sur 3 W, lecture | u | 12 |
1.2 | Haut-parleur de plafond réglé sur 1,5 W, jeunesse | u | 6 |
1.3 | Enceinte murale réglée sur 6 W, grande salle | u | 4 |
1.4 | Haut-parleur à pavillon réglé sur 10 W, abri (option, non comprise dans le total) | u | 2 |
2 | Atténuateurs | | |
2.1 | Atténuateur 50 W, lecture | u | 1 |
3 | Amplification | | |
3.1 | Amplificateur A 120 W, alimente la grande salle | u | 1 |
3.2 | Amplificateur B 120 W, alimente le reste | u | 1 |
4 | Câblage | | |
4.1 | Câble 2 x 1,5 mm², réserve vers lecture | ml | 35 |`},
		{"Italian", `
Diffusione sonora 100 V
Voce | Descrizione | U.M. | Q.tà | Prezzo
1 | Diffusori | | |
1.1 | Diffusore da soffitto presa 3 W, lecture | n. | 12 |
1.2 | Diffusore da soffitto presa 1,5 W, jeunesse | n. | 6 |
1.3 | Diffusore da parete presa 6 W, grande salle | n. | 4 |
1.4 | Opzione: tromba presa 10 W, abri | n. | 2 |
2 | Regolatori | | |
2.1 | Regolatore di volume 50 W, lecture | n. | 1 |
3 | Amplificazione | | |
3.1 | Amplificatore A 120 W, alimenta la grande salle | n. | 1 |
3.2 | Amplificatore B 120 W, alimenta il resto | n. | 1 |
4 | Cavi | | |
4.1 | Cavo 2 x 1,5 mm², deposito verso lecture | m | 35 |`},
	} {
		j := wholeJob(t, c.sheet)
		want(t, c.name, describe(j)[:3], []string{"12 x 3 W zone lecture control 2.1 channel B / 1", "6 x 1.5 W zone jeunesse channel B / 1", "4 x 6 W zone grande salle channel A / 1"})
		if l := j.Loudspeakers[3]; l.Status != schedule.Future {
			t.Errorf("%s: option %v", c.name, l.Status)
		}
		want(t, c.name, cablesOf(j), []string{"4.1 35 m 1.5 mm² channel B / 1"})
	}
}

// What stands behind descriptions is no place where it is a colour, a way to mount things or a figure.
func TestWhatIsNoPlaceInABill(t *testing.T) {
	for _, behind := range [][]string{{"white", "black", "grey"}, {"surface", "flush", "pendant"}, {"IP65", "IP55", "IP44"}, {"with bracket", "complete", "incl. grille"}} {
		j := wholeJob(t, `
Fern Library, 100 V line
Item | Description | Unit | Qty | Rate
1 | Ceiling speaker tapped 3 W, `+behind[0]+` | No. | 6 | 118
2 | Wall speaker tapped 6 W, `+behind[1]+` | No. | 10 | 118
3 | Horn speaker tapped 15 W, `+behind[2]+` | No. | 4 | 162
4 | Amplifier 240 W | No. | 1 | 980`)
		for _, l := range j.Loudspeakers {
			if l.Zone != nil || l.Room.Had() {
				t.Errorf("%v: %v", behind, describe(j))
			}
		}
	}
}

// An inventory says what each amplifier feeds, the last one the rest; what is in its box is not installed.
func TestAmplifiersThatFeedTheRest(t *testing.T) {
	j := wholeJob(t, `
Sonido ambiental (línea de 70 V)
Partida | Ubicación | Descripción | Cantidad
1 | Domo | Bocina de muro, derivación de 10 W | 8
2 | Vestíbulo | Bocina de plafón, derivación de 5 W | 6
3 | Taller | Bocina de plafón, derivación de 2.5 W | 4
4 | Taller | Control de volumen de 35 W | 1
5 | Cuarto | Amplificador A de 250 W, alimenta el domo | 1
6 | Cuarto | Amplificador B de 120 W, alimenta el resto | 1
7 | Bodega | Bocina de plafón en caja, sin instalar | 3`)
	want(t, "loudspeakers", describe(j)[:3], []string{"8 x 10 W zone Domo channel A / 1", "6 x 5 W zone Vestíbulo channel B / 1", "4 x 2.5 W zone Taller control control (Taller) channel B / 1"})
	if l := j.Loudspeakers[3]; l.Status != schedule.Future {
		t.Errorf("in its box: %v", l.Status)
	}
	want(t, "outputs", ratedOutputs(j), []string{"A / 1 250 W", "B / 1 120 W"})
}
