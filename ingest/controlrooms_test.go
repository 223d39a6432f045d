package ingest

import (
	"fmt"
	"strings"
	"testing"

	"lineaudit/audit/schedule"
)

// Chapters of a bill name the amplifier of their place by letters; one chapter has rooms behind its descriptions, and
// its control is for one of them; what is offered stands behind a word for options. Common practice, no source.
func TestChaptersWithTheirAmplifiersAndRooms(t *testing.T) {
	for _, c := range []struct{ head, amp, horn, ceiling, control, cable, total, option string }{
		{"Item | Description | Unit | Qty | Rate", "amp %s of", "Horn loudspeaker set to 15 W", "Ceiling loudspeaker set to 3 W", "Attenuator AT2 of 6 W, for the office", "Cable 2 x 2.5 mm²", "Total", "OPTION not in the total: surroundings"},
		{"Pos. | Bezeichnung | Einheit | Menge | EP", "Verstärker %s,", "Hornlautsprecher eingestellt auf 15 W", "Deckenlautsprecher eingestellt auf 3 W", "Lautstärkeregler AT2, 6 W, für office", "Kabel 2 x 2,5 mm²", "Gesamt", "OPTION, nicht im Gesamt: Umgebung"},
		{"N° | Désignation | U | Qté | PU", "ampli %s de", "Projecteur de son réglé sur 15 W", "Plafonnier réglé sur 3 W", "Atténuateur AT2 de 6 W, pour office", "Câble 2 x 2,5 mm²", "TOTAL HT", "OPTION non comprise dans le total : abords"},
		{"Partida | Descripción | Ud | Cantidad | Precio", "etapa %s de", "Altavoz de bocina ajustado a 15 W", "Altavoz de techo ajustado a 3 W", "Atenuador AT2 de 6 W, para office", "Cable 2 x 2,5 mm²", "Total", "OPCIÓN no incluida en el total: alrededores"},
		{"Voce | Descrizione | U.M. | Quantità | Prezzo", "finale %s da", "Tromba regolata a 15 W", "Diffusore da soffitto regolato a 3 W", "Attenuatore AT2 da 6 W, per office", "Cavo 2 x 2,5 mm²", "Totale", "OPZIONE non compresa nel totale: dintorni"},
		{"Post | Omschrijving | Eenheid | Hoeveelheid | Prijs", "versterker %s van", "Hoornluidspreker ingesteld op 15 W", "Plafondluidspreker ingesteld op 3 W", "Volumeregelaar AT2 van 6 W, voor office", "Kabel 2 x 2,5 mm²", "Totaal", "OPTIE niet in het totaal: omgeving"},
	} {
		amp := func(name, watts string) string {
			return " (" + strings.Replace(c.amp, "%s", name, 1) + " " + watts + " W)"
		}
		j := wholeJob(t, "Fern Baths, 100 V\n|\n"+c.head+"\n6.1 | ARENA"+amp("AB", "240")+"\n6.1.1 | "+c.horn+" | u | 8 | 62\n6.1.2 | "+c.cable+" | m | 160 | 2\n6.2 | ALCOVA"+amp("AV", "60")+
			"\n6.2.1 | "+c.ceiling+", east side | u | 4 | 19\n6.2.2 | "+c.ceiling+", west side | u | 4 | 19\n6.2.3 | "+c.ceiling+", office | u | 1 | 19\n6.2.4 | "+c.control+" | u | 1 | 18\n | "+c.total+
			" | | | 1463\n|\n"+c.option+"\n6.4.1 | "+c.horn+" | u | 4 | 62")
		want(t, c.option, describe(j)[:4], []string{"8 x 15 W zone ARENA channel AB / 1", "4 x 3 W zone ALCOVA channel AV / 1", "4 x 3 W zone ALCOVA channel AV / 1", "1 x 3 W zone ALCOVA control AT2 channel AV / 1"})
		want(t, c.option, ratedOutputs(j), []string{"AV / 1 60 W", "AB / 1 240 W"})
		want(t, c.option, cablesOf(j), []string{"6.1.2 160 m 2.5 mm² channel AB / 1"})
		if n := len(j.Loudspeakers); n != 5 || j.Loudspeakers[4].Status != schedule.Future {
			t.Errorf("%s: %v", c.option, describe(j))
		}
	}
}

// A control whose room is the only one of its zone, or of which nothing stands in a room, is for all of the zone.
func TestControlsOfTheWholeChapter(t *testing.T) {
	for _, where := range []string{", office", ""} {
		j := wholeJob(t, "Fern Baths, 100 V\n|\nItem | Description | Unit | Qty | Rate\n6.1 | ARENA (amp AB of 240 W)\n6.1.1 | Horn loudspeaker set to 15 W | u | 8 | 62\n6.2 | ALCOVA (amp AV of 60 W)\n6.2.1 | Ceiling loudspeaker set to 3 W"+where+
			" | u | 4 | 19\n6.2.2 | Wall loudspeaker set to 6 W"+where+" | u | 1 | 19\n6.2.3 | Attenuator AT2 of 36 W"+where+" | u | 1 | 18")
		if got := controlsOf(j); len(j.Controls) != 1 || j.Loudspeakers[1].Control != j.Controls[0] && (j.Loudspeakers[1].Zone == nil || j.Loudspeakers[1].Zone.Control != j.Controls[0]) {
			t.Errorf("%q: %s", where, got)
		}
	}
}

// A list of controls says where each can be reached: the only control of a zone carries all of it. Common practice, no source.
func TestControlsThatStandElsewhere(t *testing.T) {
	for _, c := range []struct{ control, place string }{
		{"Volume control", "Location"}, {"Regler", "Standort"}, {"Atténuateur", "Emplacement"}, {"Regulador", "Situación"}, {"Attenuatore", "Ubicazione"}, {"Regelaar", "Plaats"},
	} {
		list := "## A\nRef. | Zone | Room | Qty | Tap\nA1 | Z1 | Grove | 6 | 6 W\nA2 | Z1 | Press | 4 | 6 W\nA3 | Z2 | Entry | 4 | 3 W\nA4 | Z2 | Tickets | 2 | 1.5 W\n" +
			"## B\n" + c.control + " | Zone | W | " + c.place + "\nR1 | Z1 | 100 | %s\nR2 | Z2 | 24 | Tickets\n"
		j := wholeJob(t, fmt.Sprintf(list, "Lodge"))
		want(t, c.control, describe(j), []string{"A1 6 x 6 W zone Z1 control R1", "A2 4 x 6 W zone Z1 control R1", "A3 4 x 3 W zone Z2 control R2", "A4 2 x 1.5 W zone Z2 control R2"})
		j = wholeJob(t, fmt.Sprintf(list, "Press")) // each in a room of its zone: they may be for these
		want(t, c.control+", rooms", describe(j), []string{"A1 6 x 6 W zone Z1", "A2 4 x 6 W zone Z1 control R1", "A3 4 x 3 W zone Z2", "A4 2 x 1.5 W zone Z2 control R2"})
	}
}
