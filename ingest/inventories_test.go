package ingest

import "testing"

// Inventories of a town list every thing with its room, a control by its code behind its kind; the only amplifier feeds all,
// wherever it stands. The first line is a title in two cells. Common practice, no source.
func TestInventoriesOfATown(t *testing.T) {
	for _, c := range []struct{ name, sheet string }{
		{"Spanish", `
Ayuntamiento de Olmeda | Inventario de bienes
Nº inv. | Dependencia | Bien | Potencia W | Regulador | Estado | Observaciones
501 | Portería | Amplificador AMP-1, línea 100 V | 120 | | en uso |
503 | Portería | Altavoz de techo | 1,5 | | en uso |
504 | Foro | Altavoz de techo | 6 | | en uso |
507 | Sala | Altavoz de techo | 3 | RV-1 | en uso |
509 | Sala | Regulador RV-1 | 12 | | en uso |
517 | Archivo | Altavoz de techo | 6 | | en uso |`},
		{"German", `
Gemeinde Ulmenau, Bauamt | Inventar Beschallung
Inv.-Nr. | Raum | Gegenstand | Leistung W | Regler | Zustand | Bemerkung
501 | Portería | Verstärker AMP-1, 100 V | 120 | | in Betrieb |
503 | Portería | Deckenlautsprecher | 1,5 | | in Betrieb |
504 | Foro | Deckenlautsprecher | 6 | | in Betrieb |
507 | Sala | Deckenlautsprecher | 3 | RV-1 | in Betrieb |
509 | Sala | Lautstärkeregler RV-1 | 12 | | in Betrieb |
517 | Archivo | Deckenlautsprecher | 6 | | in Betrieb |`},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheet)
			want(t, "loudspeakers", describe(j), []string{"1 x 1.5 W zone Portería channel AMP-1 / 1", "1 x 6 W zone Foro channel AMP-1 / 1",
				"1 x 3 W zone Sala control RV-1 channel AMP-1 / 1", "1 x 6 W zone Archivo channel AMP-1 / 1"})
			want(t, "outputs", channelRatings(j), []string{"AMP-1 / 1 120 W 100 V"})
			if len(j.Controls) != 1 || show(j.Controls[0].Rated) != "12" {
				t.Errorf("controls %s", controlsOf(j))
			}
		})
	}
}

// The tag of a control may begin with the letters of its building, and remarks name it so. Common practice, no source.
func TestControlsOfBuildings(t *testing.T) {
	j := wholeJob(t, `
Town of Elmfield, works department | Inventory of the PA
Site no. | Building | Room | Item | Qty | Watts | Amp | Remarks
2117 | Library | Office | Amplifier V1, 60 W | 1 | 60 | | 100 V
2117 | Library | Reading room | Loudspeaker | 6 | 3 | V1 | via LB-R1
2117 | Library | Corner | Loudspeaker | 2 | 1.5 | V1 |
2117 | Library | Reading room | Volume control LB-R1 | 1 | 24 | |`)
	want(t, "loudspeakers", describe(j), []string{"6 x 3 W zone Reading room control LB-R1 channel V1 / 1", "2 x 1.5 W zone Corner channel V1 / 1"})
	if len(j.Controls) != 1 || show(j.Controls[0].Rated) != "24" {
		t.Errorf("controls %s", controlsOf(j))
	}
}

// An inventory for an insurance lists what else has watts: projectors for films load no line. Common practice, no source.
func TestProjectorsInAnInventory(t *testing.T) {
	for _, c := range []struct{ head, amp, speaker, projector string }{
		{"No. | Description | Room | Qty | Value (€)", "Mixer amplifier 120 W, 100 V output", "Ceiling loudspeaker 100 V, set to 6 W", "Video projector 300 W"},
		{"Nr. | Bezeichnung | Raum | Anzahl | Neuwert (€)", "Mischverstärker 120 W, 100-V-Ausgang", "Deckenlautsprecher 100 V, eingestellt auf 6 W", "Beamer 300 W"},
		{"N° | Désignation | Local | Quantité | Valeur (€)", "Ampli-mélangeur 120 W, sortie 100 V", "Haut-parleur de plafond 100 V, réglé sur 6 W", "Vidéoprojecteur 300 W"},
		{"N.º | Descripción | Sala | Cantidad | Valor (€)", "Amplificador mezclador 120 W, salida 100 V", "Altavoz de techo 100 V, ajustado a 6 W", "Videoproyector 300 W"},
		{"N. | Descrizione | Locale | Quantità | Valore (€)", "Amplificatore mixer 120 W, uscita 100 V", "Diffusore da soffitto 100 V, regolato su 6 W", "Videoproiettore 300 W"},
		{"Nr. | Omschrijving | Plaats | Aantal | Nieuwwaarde (€)", "Mengversterker 120 W, 100 V-uitgang", "Plafondluidspreker 100 V, ingesteld op 6 W", "Videoprojector 300 W"},
	} {
		j := wholeJob(t, "Boathouse of a club\n|\n"+c.head+"\n1 | "+c.amp+" | A | 1 | 650\n2 | "+c.speaker+" | B | 4 | 200\n3 | "+c.speaker+" | C | 2 | 100\n4 | "+c.projector+" | C | 1 | 900")
		if n := len(j.Loudspeakers); n != 2 {
			t.Errorf("%s: %v", c.projector, describe(j))
		}
	}
}
