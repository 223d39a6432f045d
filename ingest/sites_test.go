package ingest

import (
	"strings"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

// What a title line is about was decided by a person who reads it; no source.
func TestPlaceInTitles(t *testing.T) {
	for title, want := range map[string]string{
		"CONTROL PANEL SCHEDULE - MEREWATER ROWING CENTRE": "MEREWATER ROWING CENTRE", "Regelaarlijst en luidsprekers Plantage Oudewater": "Plantage Oudewater",
		"Glasshouse 6 heads": "Glasshouse 6",
		"Bibliothèque communale - métré récapitulatif": "Bibliothèque communale",
		"Plantentuin Oost - heraanleg kassen":          "Plantentuin Oost",
		"Winter garden - loudspeaker schedule":         "Winter garden",
		"Winter garden - north wing - as built":        "Winter garden - north wing",
		"Stiftung Erlenau - Eisbahn - Bestand":         "Eisbahn",
		"Lautsprecherliste":                            "",
		"Change Order 11 - Paging speakers":            "",
		"Wijziging 4 - omroep":                         "", "Variante n. 2 - altoparlanti": "", "Avenant 3 - haut-parleurs": "", "Modificado 2 - altavoces": "",
		"Change order 11 - Fernhill Garage": "Fernhill Garage", "Änderungsauftrag 5 - Betriebshof Nordfeld": "Betriebshof Nordfeld",
		"LEISTUNGSVERZEICHNIS Bootshalle am Wehr":                 "Bootshalle am Wehr",
		"Serre du lac - relevé des HP":                            "Serre du lac",
		"Fundación Arroyo - planetario - altavoces":               "planetario",
		"Pista coperta - tarature":                                "Pista coperta",
		"Kassen Oost - luidsprekerlijnen":                         "Kassen Oost",
		"Ceiling loudspeakers":                                    "",
		"Sound schedule":                                          "",
		"Aller Park ice rink speaker list":                        "Aller Park ice rink",
		"Relevé haut-parleur - Orangerie":                         "Orangerie",
		"Panel AMP-R - 4 ways - 60 W a way":                       "",
		"100 V line":                                              "",
		"Public address - Winter garden":                          "Winter garden",
		"HERBARIUM PUBLIC ADDRESS":                                "HERBARIUM",
		"Winter gardens - PA zones":                               "Winter gardens",
		"Winter garden 100 V PA":                                  "Winter garden",
		"Winter garden heads (70 V)":                              "Winter garden",
		"Slipway horns":                                           "Slipway",
		"Loudspeakers of the winter garden":                       "winter garden",
		"Altavoces de la casa de té":                              "casa de té",
		"Diffusione sonora della serra grande":                    "serra grande",
		"Relevé des HP de la serre du lac":                        "serre du lac",
		"Sternwarte - Umbau Foyer, ELA-Lautsprecher":              "Sternwarte",
		"WINTER GARDEN - SOUND REINFORCEMENT BID":                 "WINTER GARDEN",
		"Meadow Sound Contractors":                                "",
		"[logo]":                                                  "",
		"Voice evac spkr ckts":                                    "",
		"The Meadow Trust":                                        "",
		"JX-0552 Start tower":                                     "Start tower",
		"Relevé sur site du 08/11/2016 - Planétarium de Sauvigny": "Planétarium de Sauvigny",
		"Site survey - Fern Lodge":                                "Fern Lodge",
		"PROPOSAL NO. 3341 - FERN LODGE":                          "FERN LODGE",
		"Angebot Nr. 3341 - Bootshalle am Wehr":                   "Bootshalle am Wehr",
		"Offre n° 3341 - Serre du lac":                            "Serre du lac",
		"PROPUESTA N° 3341 - CASA DE TÉ":                          "CASA DE TÉ",
		"Proposta n. 3341/B - Serra grande":                       "Serra grande",
		"Voorstel nr. 3341 - Kassen Oost":                         "Kassen Oost",
	} {
		if got := placeIn(title); got != want {
			t.Errorf("%q: %q, want %q", title, got, want)
		}
	}
}

func TestPlaceOfFile(t *testing.T) {
	for file, want := range map[string]string{
		"DCE Médiathèque des Tanneurs.xlsx": "Médiathèque des Tanneurs", "Bestandsunterlagen Museum Lohr.ods": "Museum Lohr",
		"Boathouse 7 spkr taps.xlsx": "Boathouse 7", "a/Winter garden rev B.xls": "Winter garden", "JX104 Winter garden as built (2).xlsx": "Winter garden",
		"winter_garden_speakers_2019-05-12.csv": "winter garden", "speaker list final.xlsx": "", "PA schedule rev D.xlsx": "", "Serre du lac - relevé HP.ods": "Serre du lac",
		"Fern lodge survey.xlsx": "Fern lodge",
	} {
		if got := placeOfFile(file); got != want {
			t.Errorf("%q: %q, want %q", file, got, want)
		}
	}
}

// Where no title names a place, the file's name does, or its folder.
func TestSiteByDefault(t *testing.T) {
	for _, tt := range []struct{ file, sheet, want string }{
		{"Rinks/Winter garden taps.xlsx", "", "Winter garden"}, {"2004/slipway horns.csv", "", "slipway"}, {"Meadow Boathouse/club rooms.csv", "", "Meadow Boathouse"},
		{"Meadow/conservatory walkthrough.csv", "", "Meadow"}, {"Meadow/speaker list.csv", "", "Meadow"}, {"2013/by channel.xls", "", "2013"}, {"jobs/all.xlsx", "Pump house", "Pump house"},
	} {
		j := &schedule.Job{}
		nameJob(j, tt.file, tt.sheet, false)
		if j.Site.Value != tt.want {
			t.Errorf("%s %s: %q, want %q", tt.file, tt.sheet, j.Site.Value, tt.want)
		}
	}
}

// Words for a job number are common practice, no source.
func TestKeyedNumber(t *testing.T) {
	for text, want := range map[string]string{
		"PA and music, 100V line. Contract 5120": "5120", "Bid no. 44-17": "44-17", "Auftrags-Nr. 4471, 100-V-Linie": "4471", "Works order 6640": "6640",
		"Dossier 2011-B-07": "2011-B-07", "Obra 15/206": "15/206", "Affaire n° 2217": "2217", "Commessa: EM-77": "EM-77", "Werknr. 20164": "20164", "JOB # 08-226": "08-226",
		"WINTER GARDEN   PROJ 2217-04   70.7V": "2217-04", "Prj 33-9 Fern Lodge": "33-9", "Commessa n. 1290/B - linea 100 V": "1290/B", "Project: Winter garden": "", "order 3 knobs": "", "job 1": "",
		"Proposal no. 3341 - Fern Lodge": "3341", "Arbeitsauftrag 5518": "5518", "Ordre de travail 5518": "5518", "OT 5518": "5518", "Propuesta N° 3341": "3341", "Preventivo n. 77/19": "77/19", "Voorstel nr. 3341": "3341", "OT a las 10": "", "Comm. 2207": "2207", "Comm. n. 2207/B": "2207/B", "Aff. n° 5518": "5518", "Opdr. 5518": "5518", "Comms room 12": "", "Ref 7713/C": "", "Projekt Halle 2": "",
	} {
		if got := keyedNumber(text, false); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
	if got := keyedNumber("whole garden. Ref 7713/C.", true); got != "7713/C" {
		t.Errorf("reference: %q", got)
	}
}

// A list of one job may repeat the name of its site on every row, a title may
// stand behind a word for a subject, or read like a sentence.
func TestSiteOfOneJob(t *testing.T) {
	for _, tt := range []struct{ name, text, want string }{
		{"a column", "site | room | quantity | tap[W]\nFern Gardens | Hall | 4 | 3\nFern Gardens | Yard | 2 | 15", "Fern Gardens"},
		{"a voltage is no site", "title line voltage: 100 volt\nroom | quantity | tap[W]\nHall | 4 | 3", "job"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := jobOf(t, draw(layout.Loudspeakers, "Heads", tt.text)).Site.Value; got != tt.want {
				t.Errorf("site %q, want %q", got, tt.want)
			}
		})
	}
}

// A list without a title may name its place in a column of buildings. Common practice, no source.
func TestSiteOfTheOnlyBuilding(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Sheet1", "tag | building | room | tap[W]\nS1 | Lowfield Glasshouses | Fernery | 5\nS2 | Lowfield Glasshouses | Desert | 5"))
	if got := j.Site.Value; got != "Lowfield Glasshouses" {
		t.Errorf("site %q", got)
	}
	j = jobOf(t, draw(layout.Loudspeakers, "Sheet1", "tag | building | room | tap[W]\nS1 | Palm house | Fernery | 5\nS2 | Pump house | Desert | 5"))
	if got := j.Site.Value; got == "Palm house" || got == "Pump house" {
		t.Errorf("site %q of two buildings", got)
	}
}

// What the titles of sheets have in common is the place; what they differ in is on each sheet.
func TestPlaceInTitlesOfSeveralSheets(t *testing.T) {
	for _, tt := range []struct{ first, second, want string }{
		{"RACK A  PLANT ROOM 1 - HOLM LANE ICE RINK", "RACK B  BOX - HOLM LANE ICE RINK", "HOLM LANE ICE RINK"},
		{"Holm Lane Ice Rink - stands", "Holm Lane Ice Rink - pad", "Holm Lane Ice Rink"},
	} {
		j := wholeJob(t, "## A\n"+tt.first+"\n\nTag | Room | Tap W\nS1 | Hall | 6\nS2 | Hall | 6\n## B\n"+tt.second+"\n\nTag | Room | Tap W\nS3 | Yard | 6\nS4 | Yard | 6")
		if j.Site.Value != tt.want {
			t.Errorf("%q, %q: site %q, want %q", tt.first, tt.second, j.Site.Value, tt.want)
		}
	}
}

// The town that orders the work stands over the house, which is the site.
func TestTownOverTheHouse(t *testing.T) {
	const list = "\n|\nRoom | Qty | Tap (W)\nA | 4 | 6\nB | 2 | 3"
	for title, site := range map[string]string{
		"Commune de Fontaine\nBibliothèque communale - métré récapitulatif": "Bibliothèque communale",
		"Stadt Ulmenau\nStadtbibliothek - Leistungsverzeichnis":             "Stadtbibliothek",
		"Town of Fernley\nTown library - bill of quantities":                "Town library",
		"Municipio de Olmeda\nBiblioteca municipal - mediciones":            "Biblioteca municipal",
		"Città di Fiume\nBiblioteca civica - computo metrico":               "Biblioteca civica",
		"Stad Waterdijk\nBibliotheek De Varen - meetstaat":                  "Bibliotheek De Varen",
		"Salle du Lac - liste des HP, ligne 70,7 V":                         "Salle du Lac",
	} {
		if j := wholeJob(t, title+list); j.Site.Value != site {
			t.Errorf("%s: %s, want %s", title, j.Site.Value, site)
		}
	}
}

// An address in a network is no site. Common practice, no source.
func TestAddressInANetworkIsNoSite(t *testing.T) {
	for _, header := range []string{"Address", "Adresse", "Dirección", "Indirizzo", "Adres"} {
		j := wholeJob(t, `
## Cover
Abbey library, loudspeakers
## Speakers
Room | Zone | Qty | Tap
Hall | Z1 | 4 | 6 W
Yard | Z2 | 2 | 15 W
## Rack
Amplifier | Channel | Zone | Channel power | `+header+`
A1 | 1 | Z1 | 120 W | 192.168.8.21
A1 | 2 | Z2 | 120 W |`)
		if strings.HasPrefix(j.Site.Value, "192.") {
			t.Errorf("%s: site %q", header, j.Site.Value)
		}
	}
}
