package ingest

import "testing"

// Titles of sections name an amplifier, its output and what it gives, and behind a colon the place that it
// feeds; powers are those of each loudspeaker of a range of tags. Common practice, no source.
func TestPlacesBehindOutputsInTitles(t *testing.T) {
	for _, c := range []struct{ name, sheet, hall, yard, control, amp string }{
		{"English", `
Fern House, loudspeaker list
100 V
|
Amplifier 1, output A (120 W): Hall and desk
No. | Room | Type | Transformer | Control
LS 01-06 | Hall | flush | each 6 W |
LS 07 | Desk | flush | 3 W | VC 1 (10 W)
|
Amplifier 2, output A (60 W): Yard
No. | Room | Type | Transformer | Control
LS 18-19 | Gate | horn | each 10 W |
LS 20 | Shed | horn | 15 W |`, "Hall and desk", "Yard", "VC 1", "Amplifier"},
		{"German", `
Farnhaus, Lautsprecherliste
100 V
|
Endstufe 1, Ausgang A (120 W): Halle und Theke
Nr. | Raum | Typ | Trafo | Lautstärkesteller
LS 01-06 | Halle | Einbau | je 6 W |
LS 07 | Theke | Einbau | 3 W | LST 1 (10 W)
|
Endstufe 2, Ausgang A (60 W): Hof
Nr. | Raum | Typ | Trafo | Lautstärkesteller
LS 18-19 | Tor | Horn | je 10 W |
LS 20 | Schuppen | Horn | 15 W |`, "Halle und Theke", "Hof", "LST 1", "Endstufe"},
		{"French", `
Maison des Fougères, liste des haut-parleurs
100 V
|
Ampli 1, sortie A (120 W) : salle et accueil
N° | Local | Type | Transfo | Atténuateur
HP 01-06 | salle | encastré | chacun 6 W |
HP 07 | accueil | encastré | 3 W | ATT 1 (10 W)
|
Ampli 2, sortie A (60 W) : cour
N° | Local | Type | Transfo | Atténuateur
HP 18-19 | portail | pavillon | chacun 10 W |
HP 20 | remise | pavillon | 15 W |`, "salle et accueil", "cour", "ATT 1", "Ampli"},
	} {
		tag := "LS"
		if c.name == "French" {
			tag = "HP"
		}
		j := wholeJob(t, c.sheet)
		want(t, c.name, describe(j), []string{
			tag + " 01-06 6 x 6 W zone " + c.hall + " channel " + c.amp + " 1 / A",
			tag + " 07 1 x 3 W zone " + c.hall + " control " + c.control + " channel " + c.amp + " 1 / A",
			tag + " 18-19 2 x 10 W zone " + c.yard + " channel " + c.amp + " 2 / A",
			tag + " 20 1 x 15 W zone " + c.yard + " channel " + c.amp + " 2 / A"})
		want(t, c.name, ratedOutputs(j), []string{c.amp + " 1 / A 120 W", c.amp + " 2 / A 60 W"})
	}
}
