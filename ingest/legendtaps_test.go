package ingest

import "testing"

// A legend says what each code can give at most, the list that repeats the codes what is set: the legend counts
// nothing. Common practice, no source.
func TestLegendsBesideListsWithTaps(t *testing.T) {
	for _, c := range []struct{ legend, head string }{
		{"Code | Equipment | IP rating | Colour\nCS | Ceiling speaker transformer 6 W | IP20 | white\nPJ | Projector transformer 20 W | IP65 | grey\nVC | Volume control | IP20 | white",
			"No. | Room | Description | Code | Qty | Tap (W) | Line"},
		{"Repère | Matériel | Indice de protection | Teinte\nCS | Plafonnier transformateur 6 W | IP20 | blanc\nPJ | Projecteur de son transformateur 20 W | IP65 | gris\nAT | Atténuateur encastré | IP20 | blanc",
			"N° | Local | Désignation | Repère | Qté | Réglage (W) | Ligne"},
		{"Kürzel | Bedeutung | Schutzart | Farbe\nCS | Deckenlautsprecher 6 W | IP20 | weiß\nPJ | Tonprojektor 20 W | IP65 | grau\nLR | Lautstärkeregler | IP20 | weiß",
			"Nr. | Raum | Bezeichnung | Kürzel | Anzahl | Abgriff (W) | Linie"},
		{"code | omschrijving | IP | kleur\nCS | plafondluidspreker 6 W | IP20 | wit\nPJ | geluidsprojector 20 W | IP65 | grijs",
			"nr | ruimte | omschrijving | code | aantal | stand (W) | lijn"},
	} {
		j := wholeJob(t, "## A\n"+c.legend+"\n## B\n"+c.head+"\n1 | A01 | Hall | CS | 6 | 3 | L1\n2 | A02 | Shop | CS | 1 | 1.5 | L1\n3 | B01 | Pool | PJ | 4 | 10 | L2\n4 | B02 | Yard | PJ | 2 | 20 | L2")
		if n := len(j.Loudspeakers); n != 4 {
			t.Errorf("%s: %v", c.head, describe(j))
		}
	}
}

// A second list of the same tags, each once, is no list of what a legend explains.
func TestListsOfTagsAreNoLegends(t *testing.T) {
	j := wholeJob(t, "## A\nTag | Type | Tap\nS1 | ceiling | 6 W\nS2 | ceiling | 6 W\n## B\nTag | Room | Tap\nS1 | Hall | 3 W\nS2 | Shop | 3 W\nS3 | Pool | 3 W")
	for _, l := range j.Loudspeakers {
		if len(l.Tags) == 0 {
			t.Errorf("no tags: %v", describe(j))
		}
	}
}
