package ingest

import "testing"

// Registers of all assets of a building: parents may be controls, and what is of another class, or an
// extinguisher or a heater by its words, is no loudspeaker without a tap. Common practice, no source.
func TestRegisterOfAllAssets(t *testing.T) {
	for _, c := range []struct{ name, head, amp, control, speaker, extinguisher, ladder string }{
		{"English", "Asset | Class | Description | Location | Qty | Watts each | Parent | Condition", "Amplifier 100V", "Volume control", "Loudspeaker ceiling", "Extinguisher 6L water", "Loft steps"},
		{"German", "Anlage | Klasse | Bezeichnung | Ort | Anzahl | Watt je Stück | Übergeordnet | Zustand", "Verstärker 100V", "Lautstärkeregler", "Lautsprecher Decke", "Feuerlöscher 6 l", "Bodentreppe"},
		{"French", "Repère | Classe | Désignation | Emplacement | Qté | Watts unitaires | Parent | État", "Amplificateur 100V", "Atténuateur", "Haut-parleur plafond", "Extincteur 6 l", "Échelle meunière"},
		{"Spanish", "Activo | Clase | Descripción | Ubicación | Cantidad | Vatios por unidad | Padre | Estado", "Amplificador 100V", "Atenuador", "Altavoz techo", "Extintor 6 l", "Escalera plegable"},
		{"Italian", "Codice | Classe | Descrizione | Ubicazione | Quantità | Watt cad. | Padre | Stato", "Amplificatore 100V", "Attenuatore", "Diffusore soffitto", "Estintore 6 l", "Scala retrattile"},
		{"Dutch", "Code | Klasse | Omschrijving | Locatie | Aantal | Watt per stuk | Hangt onder | Staat", "Versterker 100V", "Volumeregelaar", "Luidspreker plafond", "Brandblusser 6 l", "Zoldertrap"},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, "Fern Library register 0147\n"+c.head+
				"\nPA01 | PA | "+c.amp+" 120W | Loft | | | - | B\nPA02 | PA | "+c.control+" 24W | Desk | 1 | | PA01 | A"+
				"\nPA03 | PA | "+c.speaker+" | Lending | 12 | 3 | PA01 | A\nPA04 | PA | "+c.speaker+" | Desk | 2 | 1.5 | PA02 | A\nPA05 | PA | "+c.speaker+" | Stack | 6 | 3 | PA02 | B"+
				"\nFE20 | FE | "+c.extinguisher+" | Lending | 3 | | | A\nLD01 | LD | "+c.ladder+" | Loft | 1 | | | B")
			want(t, "loudspeakers", describe(j), []string{"PA03 12 x 3 W zone Lending channel PA01 / 1", "PA04 2 x 1.5 W zone Desk control PA02 channel PA01 / 1", "PA05 6 x 3 W zone Stack control PA02 channel PA01 / 1"})
		})
	}
}
