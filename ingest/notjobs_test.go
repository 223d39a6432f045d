package ingest

import (
	"strings"
	"testing"

	"lineaudit/audit/schedule"
)

// Words for an order or a job are also those for what a control operates: tags of loudspeakers below them divide nothing
// into jobs. Zones are numbered and named by titles, and outputs say their numbers. Common practice, no source.
func TestTagsUnderAWordForAnOrder(t *testing.T) {
	for _, w := range []string{
		"Tag / Room / Type / Tap (W)|Zone 1: Dome|Zone 2: Hall|Output / Zone / Rated W|Tag / Place / Power (W) / Order|Attenuators",
		"Kürzel / Raum / Art / Anzapfung (W)|Zone 1: Kuppel|Zone 2: Halle|Ausgang / Zone / Leistung W|Kürzel / Ort / Leistung (W) / Auftrag|Lautstärkeregler",
		"Repère / Local / Type / Prise (W)|Zone 1 : Coupole|Zone 2 : Hall|Sortie / Zone / Puissance W|Repère / Emplacement / Puissance (W) / Commande|Atténuateurs",
		"Etiqueta / Sala / Tipo / Toma (W)|Zona 1: Cúpula|Zona 2: Vestíbulo|Salida / Zona / Potencia W|Etiqueta / Lugar / Potencia (W) / Pedido|Reguladores de volumen",
		"Sigla / Locale / Tipo / Presa (W)|Zona 1: Cupola|Zona 2: Atrio|Uscita / Zona / Potenza W|Sigla / Posizione / Potenza (W) / Ordine|Attenuatori",
		"Label / Ruimte / Type / Stand (W)|Zone 1: Koepel|Zone 2: Hal|Uitgang / Zone / Vermogen W|Label / Plaats / Vermogen (W) / Opdracht|Volumeregelaars",
	} {
		f := strings.Split(w, "|")
		r := strings.NewReplacer("HEADER", f[0], "FIRST", f[1], "SECOND", f[2], "OUTPUTS", f[3], "CONTROLS", f[4], "TITLE", f[5])
		j := wholeJob(t, strings.ReplaceAll(r.Replace(`
## A
Slate dome, 100 V
|
FIRST
HEADER
HP101 | Stalls | ceiling | 10
HP102 | Booth | ceiling | 1.5
SECOND
HEADER
HP201 | Desk | ceiling | 3
HP202 | Desk | ceiling | 3
HP203 | Show | ceiling | 6
## B
OUTPUTS
1 | 1 | 120
2 | 2 | 60
## TITLE
CONTROLS
AT1 | Booth | 6 | HP102
AT2 | Desk | 12 | HP201, HP202`), " / ", " | "))
		first, second := strings.Replace(strings.Replace(f[1], " :", ":", 1), ": ", " - ", 1), strings.Replace(strings.Replace(f[2], " :", ":", 1), ": ", " - ", 1)
		want(t, w, describe(j), []string{
			"HP101 1 x 10 W zone " + first + " channel 1", "HP102 1 x 1.5 W zone " + first + " control AT1 channel 1",
			"HP201 1 x 3 W zone " + second + " control AT2 channel 2", "HP202 1 x 3 W zone " + second + " control AT2 channel 2", "HP203 1 x 6 W zone " + second + " channel 2"})
	}
}

// Counts under a word for a contract, beside those that hold, divide nothing into jobs either; short words for a change do
// as well as long ones.
func TestCountsUnderAWordForAContract(t *testing.T) {
	for _, heads := range []string{"Contract | Var. 2", "Vertrag | Änd. 2", "Marché | Modif. 2", "Contrato | Modif. 2", "Contratto | Modif. 2", "Bestek | Wijz. 2", "Contract | Qty"} {
		jobs := wholeJobs(`
Slate bus station, 100 V
|
Line | Place | Type | ` + heads + ` | Tap
1 | Bays | horn | 6 | 6 | 10 W
1 | Shelter | horn | 2 | 1 | 10 W
2 | Hall | ceiling | 6 | 8 | 3 W
2 | Desk | ceiling | 2 | 2 | 1.5 W
3 | Store | ceiling | 4 | 3 | 3 W`)
		if len(jobs) != 1 {
			t.Errorf("%s: %d jobs", heads, len(jobs))
			continue
		}
		want(t, heads, describe(jobs[0]), []string{"6 x 10 W zone Bays channel 1", "1 x 10 W zone Shelter channel 1", "8 x 3 W zone Hall channel 2", "2 x 1.5 W zone Desk channel 2", "3 x 3 W zone Store channel 3"})
	}
}

// A register of jobs by small numbers stays one.
func TestSmallNumbersOfJobs(t *testing.T) {
	if jobs := wholeJobs(`
Job | Room | Qty | Tap (W)
1 | Hall | 2 | 6
1 | Store | 2 | 3
2 | Gym | 4 | 10
2 | Foyer | 2 | 3`); len(jobs) != 2 {
		t.Errorf("%d jobs", len(jobs))
	}
}

// A kind of spare is no place.
func TestPricedSparesHaveNoPlace(t *testing.T) {
	for _, spare := range []string{"Ceiling loudspeaker 6 W, kept in reserve", "Deckenlautsprecher 6 W, in Reserve", "Plafonnier 6 W, fourni en secours", "Altavoz de techo 6 W, en reserva", "Diffusore 6 W, in riserva", "Plafondluidspreker 6 W, in reserve"} {
		j := wholeJob(t, `
## A
Slate hall, 100 V
|
Tag | Room | Tap (W)
LS1 | Hall | 6
LS2 | Hall | 6
LS3 | Store | 6
## B
No. | Description | Unit | Qty | Rate | Amount
1 | Ceiling loudspeaker 6 W | ea | 3 | 40 | 120
2 | `+spare+` | ea | 1 | 40 | 40
 | | | | Total | 160`)
		installed := 0
		for _, l := range j.Loudspeakers {
			if l.Status == schedule.Installed {
				installed++
			}
		}
		if installed != 3 {
			t.Errorf("%s: %s", spare, describe(j))
		}
	}
}
