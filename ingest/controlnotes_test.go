package ingest

import (
	"fmt"
	"strings"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

// controlsOf prints the controls of a job: name, rating, loudspeaker rows behind each.
func controlsOf(j *schedule.Job) string {
	var out []string
	for _, k := range j.Controls {
		n := 0
		for _, l := range j.Loudspeakers {
			if l.Control == k {
				n++
			}
		}
		out = append(out, fmt.Sprintf("%s %s W x%d", k.Name, show(k.Rated), n))
	}
	return strings.Join(out, ", ")
}

// What cells and notes say of controls. The texts are common practice in six
// languages, no source.
func TestControlsInCellsAndNotes(t *testing.T) {
	const two = "VC1 35 W x1, VC2 20 W x1"
	const both = "R1 12 W x1, R2 12 W x1"
	const places = "control (Hall) 35 W x1, control (Yard) 20 W x1"
	for _, tt := range []struct{ hall, yard, note, want string }{
		{"VC1", "VC2", "VC1: 35 W, VC2: 20 W", two},
		{"VC1", "VC2", "Controls: VC1 35 W; VC2 20 W", two},
		{"VC1", "VC2", "VC1 and VC2 35 W", "VC1 35 W x1, VC2 35 W x1"},
		{"VC1", "VC2", "All volume controls 35 W", "VC1 35 W x1, VC2 35 W x1"},
		{"VC1", "VC2", "Volume controls are rated 35 W", "VC1 35 W x1, VC2 35 W x1"},
		{"knob 1", "knob 2", "The knobs are all 12 W", "knob 1 12 W x1, knob 2 12 W x1"},
		{"Knopf 1", "Knopf 2", "Die Knöpfe sind alle 12 W", "Knopf 1 12 W x1, Knopf 2 12 W x1"},
		{"bouton 1", "bouton 2", "Les boutons sont tous de 12 W", "bouton 1 12 W x1, bouton 2 12 W x1"},
		{"mando 1", "mando 2", "Los mandos son todos de 12 W", "mando 1 12 W x1, mando 2 12 W x1"},
		{"manopola 1", "manopola 2", "Le manopole sono tutte da 12 W", "manopola 1 12 W x1, manopola 2 12 W x1"},
		{"knop 1", "knop 2", "De knoppen zijn allemaal 12 W", "knop 1 12 W x1, knop 2 12 W x1"},
		{"R1", "R2", "Regler R1 36 W, R2 24 W", "R1 36 W x1, R2 24 W x1"},
		{"R1", "R2", "Alle Regler 36 W", "R1 36 W x1, R2 36 W x1"},
		{"P1", "P2", "Potentiomètres P1 : 36 W, P2 : 24 W", "P1 36 W x1, P2 24 W x1"},
		{"AT1", "AT2", "Atenuadores AT1 de 36 W y AT2 de 24 W", "AT1 36 W x1, AT2 24 W x1"},
		{"RV1", "RV2", "Regolatori RV1 da 36 W e RV2 da 24 W", "RV1 36 W x1, RV2 24 W x1"},
		{"VR1", "VR2", "Volumeregelaars VR1 36 W, VR2 24 W", "VR1 36 W x1, VR2 24 W x1"},
		{"VA-1", "VA-2", "Ratings: VA-1 35 W, VA-2 20 W", "VA-1 35 W x1, VA-2 20 W x1"},
		{"VR-A", "VR-B", "Controls: VR-A 35 W, VR-B 20 W", "VR-A 35 W x1, VR-B 20 W x1"},
		{"RG-A", "RG-B", "Regler: RG-A 35 W, RG-B 20 W", "RG-A 35 W x1, RG-B 20 W x1"},
		{"AT-A", "AT-B", "Atténuateurs : AT-A 35 W, AT-B 20 W", "AT-A 35 W x1, AT-B 20 W x1"},
		{"AT-A", "AT-B", "Atenuadores: AT-A 35 W, AT-B 20 W", "AT-A 35 W x1, AT-B 20 W x1"},
		{"RV-A", "RV-B", "RV-A e RV-B da 35 W", "RV-A 35 W x1, RV-B 35 W x1"},
		{"VR-A", "VR-B", "Regelaars: VR-A 35 W, VR-B 20 W", "VR-A 35 W x1, VR-B 20 W x1"},
		{"VA-1", "VA-2", "VA-1/VA-2: 35 W / 20 W", "VA-1 35 W x1, VA-2 20 W x1"},
		{"VA-1", "VA-2", "VA-1 and VA-2 are both good for 35 W", "VA-1 35 W x1, VA-2 35 W x1"},
		{"VA-1", "VA-2", "Pad VA-1 takes up to 35 W; the pad VA-2 takes 20 W", "VA-1 35 W x1, VA-2 20 W x1"},
		{"VA-1", "VA-2", "Belastbarkeit der Steller: VA-1 35 W, VA-2 20 W", "VA-1 35 W x1, VA-2 20 W x1"},
		{"R1", "R2", "Amplifier with 4 lines of 120 W, R1 and R2 12 W", both},
		{"R1", "R2", "Zentrale mit 4 Linien zu 120 W, R1 und R2 je 12 W", both},
		{"R1", "R2", "Ampli 4 lignes de 120 W, R1 et R2 de 12 W", both},
		{"R1", "R2", "Central de 4 líneas de 120 W, R1 y R2 de 12 W", both},
		{"R1", "R2", "Centrale 4 linee da 120 W; R1 e R2 da 12 W", both},
		{"R1", "R2", "Versterker met 4 lijnen van 120 W, R1 en R2 van 12 W", both},
		{"VC1 (35W)", "VC2 (20W)", "", two},
		{"35W VC", "20W VC", "", places},
		{"Yes - 35W", "Y 20 W", "", places},
		{"35W", "20W", "", places},
		{"Regler 35 W", "Regler 20 W", "", places},
		{"wall knob 35W", "wall knob 20W", "", places},
		{"yes", "no", "VC in the hall is 35 W", "control (Hall) 35 W x1"},
		{"", "", "Hall has a 35 W volume control", "control (Hall) 35 W x1"},
		{"", "", "Volume controls: Hall 35 W, Yard 20 W", places},
		{"", "", "VC1 Hall 35 W, VC2 Yard 20 W", two},
		{"", "", "Volume controls: VC1 (hall, 35 W), VC2 (yard, 20 W)", two},
		{"", "", "Attenuators: VC1 (35 W) for the hall only and VC2 (20 W) for the yard.", two},
		{"", "", "Attenuators: VC1 (35 W) for the hall only, VC2 (20 W) for the yard.", two},
		{"", "", "Regler: VC1 (35 W) nur für Hall, VC2 (20 W) für Yard", two},
		{"", "", "Atténuateurs : VC1 (35 W) pour le hall seulement, VC2 (20 W) pour le yard.", two},
		{"", "", "Atenuadores: VC1 (35 W) para el hall, VC2 (20 W) para el yard", two},
		{"", "", "Regolatori: VC1 (hall, 35 W), VC2 (yard, 20 W)", two},
		{"", "", "Volumeregelaars: VC1 (hall, 35 W), VC2 (yard, 20 W)", two},
		{"", "", "Regler Hall 35 W, Regler Yard 20 W", places},
	} {
		t.Run(tt.hall+" "+tt.note, func(t *testing.T) {
			title := ""
			if tt.note != "" {
				title = "title : " + tt.note + "\n"
			}
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", title+"room | quantity | tap[W] | control\nHall | 4 | 5 | "+tt.hall+"\nYard | 2 | 7.5 | "+tt.yard+"\nGate | 1 | 20 |"))
			if got := controlsOf(j); got != tt.want || len(j.Questions) > 0 {
				t.Errorf("got %s, asked %v; want %s", got, asked(j), tt.want)
			}
		})
	}
	// as a title block, where the whole is one fact
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title control: VC1 35 W; VC2 20 W\nroom | quantity | tap[W] | control\nHall | 4 | 5 | VC1\nYard | 2 | 7.5 | VC2\nGate | 1 | 20 |"))
	if got := controlsOf(j); got != two {
		t.Errorf("a fact: got %s", got)
	}
}

// Watts beside the names of controls that may be loads, or are not told apart,
// rate nothing: they are asked. Common practice, no source.
func TestWattsOfControlsThatAreNoRatings(t *testing.T) {
	for _, note := range []string{"VA-1 carries 20 W, VA-2 15 W", "VA-1 35 W 20 W", "VA-1 replaced 10 W 35 W", "VA-1 in the box of S3 35 W"} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : "+note+"\nroom | quantity | tap[W] | control\nHall | 4 | 5 | VA-1\nYard | 2 | 7.5 | VA-2"))
		if got := controlsOf(j); got != "VA-1 ? W x1, VA-2 ? W x1" || len(j.Questions) == 0 {
			t.Errorf("%s: got %s, asked %v", note, got, asked(j))
		}
	}
}

// Controls that only a note names, with the places behind them. Common
// practice, no source.
func TestControlsThatServePlaces(t *testing.T) {
	const hallGate = "VC1 60 W x2"
	for _, tt := range []struct{ note, want string }{
		{"VC1 (60 W) serves Hall and Gate", hallGate},
		{"VC1 60 W: zones 1 and 3", hallGate},
		{"VC1 = 60 W, zone 1 and zone 3", hallGate},
		{"Volume control VC1 60 W for zones 1 & 3", hallGate},
		{"VC1 60 W for zones 1, 2 and 3", "VC1 60 W x3"},
		{"Regler R1 60 W für Zonen 1 bis 3", "R1 60 W x3"},
		{"Potentiomètre P1 de 60 W pour les zones 1 et 3", "P1 60 W x2"},
		{"Atenuador AT1 de 60 W para Hall y Gate", "AT1 60 W x2"},
		{"K7: volume control 60 W, serves Hall and Gate", "K7 60 W x2"},
		{"K7: Lautstärkeregler 60 W, regelt Hall", "K7 60 W x1"},
		{"K7 : réglage de volume 60 W, commande Hall et Gate", "K7 60 W x2"},
		{"K7: regulador de volumen 60 W, regula Hall y Gate", "K7 60 W x2"},
		{"K7: regolatore di volume da 60 W, comanda Hall e Gate", "K7 60 W x2"},
		{"K7: volumeregelaar 60 W, regelt Hall en Gate", "K7 60 W x2"},
		{"VC1 for the Hall by the north door, 60 W", "VC1 60 W x1"},
		{"VC1 (60 W) in zone 1, VC2 (20 W) in zone 2", "VC1 60 W x1, VC2 20 W x1"},
		{"Zones 1 and 3 share a 60 W control", "control (Zones 1 and 3) 60 W x2"},
		{"Zone 1: wall control 60 W; zone 2: wall control 20 W", "control (Zone 1) 60 W x1, control (zone 2) 20 W x1"},
		{"Controls: zone 1 60 W, zone 2 20 W, zone 3 none", "control (zone 1) 60 W x1, control (zone 2) 20 W x1"},
		{"VC1 serves Hall and the roof", "VC1 ? W x1"},
		{"In the Hall a volume control (VR1), 15 W", "VR1 15 W x1"},
		{"The Hall is behind a 10 watt wall attenuator marked SM", "SM 10 W x1"},
		{"In the Hall a volume control (new), 15 W", "control (Hall) 15 W x1"},
		{"4 x horn 15 W in zone 1", ""},
	} {
		t.Run(tt.note, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : "+tt.note+"\nitem: Zone no. | zone | quantity | tap[W]\n1 | Hall | 4 | 5\n2 | Yard | 2 | 7.5\n3 | Gate | 1 | 20"))
			if got := controlsOf(j); got != tt.want || len(j.Questions) > 0 {
				t.Errorf("got %s, asked %v; want %s", got, asked(j), tt.want)
			}
		})
	}
}

// A remark or a state may say no more than that there is a control. Common
// practice in six languages, no source.
func TestOnlyThatThereIsAControl(t *testing.T) {
	for _, tt := range []struct{ field, text, want string }{
		{"status", "con attenuatore", "control (Bar) ? W x1"},
		{"notes", "mit Regler", "control (Bar) ? W x1"},
		{"notes", "avec atténuateur", "control (Bar) ? W x1"},
		{"notes", "with local volume control", "control (Bar) ? W x1"},
		{"notes", "sin atenuador", ""},
		{"notes", "zonder regelaar", ""},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W] | channel | "+tt.field+"\nHall | 4 | 6 | A1.1 |\nBar | 2 | 6 | A1.1 | "+tt.text))
		if got := controlsOf(j); got != tt.want {
			t.Errorf("%q: %q, want %q", tt.text, got, tt.want)
		}
	}
}

// A short list of controls beside the loudspeakers that another table lists is
// none of loudspeakers: nothing counts twice. Common practice, no source.
func TestControlsListedWithLoudspeakers(t *testing.T) {
	heads := draw(layout.Loudspeakers, "Heads", "tag | room | quantity | tap[W]\nS1 | Dome | 8 | 6\nS2 | Booth | 1 | 1.5\nS3 | Hall | 6 | 3")
	j := jobOf(t, heads, draw(layout.Loudspeakers, "Knobs", "control | tag: Loudspeakers | tap[W]: Watts\nVC1 | S2 | 6\nVC2 | S1, S3 | 80"))
	if got := controlsOf(j); got != "VC1 6 W x1, VC2 80 W x2" || len(j.Loudspeakers) != 3 {
		t.Errorf("got %s, %d loudspeakers", got, len(j.Loudspeakers))
	}
	// loudspeakers of its own make it a list of these
	j = jobOf(t, heads, draw(layout.Loudspeakers, "More", "control | tag | tap[W]\nVC1 | S8 | 6\nVC2 | S9 | 10"))
	if len(j.Loudspeakers) != 5 {
		t.Errorf("%d loudspeakers", len(j.Loudspeakers))
	}
}

// A tag of which nothing is known is a control where a note says that it
// regulates places, and how much it may carry. Common practice, no source.
func TestUnknownTagsThatRegulate(t *testing.T) {
	for note, want := range map[string]string{
		"P1: 2 x 60 W. K1 serves hall and gate, 40 W.": "K1 40 W x2", "X7 regelt Hall (40 W)": "X7 40 W x1", "X7 commande Hall, 40 W": "X7 40 W x1",
		"X7 feeds Hall, 40 W": "", "H9 in Hall, 15 W": "", "X7 serves Hall": "",
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : "+note+"\nzone | quantity | tap[W] | channel\nHall | 4 | 5 | P1/1\nGate | 1 | 20 | P1/1"))
		if got := controlsOf(j); got != want {
			t.Errorf("%s: %s", note, got)
		}
	}
}

// A note may say what a place has, with the rating behind a comma. Common practice, no source.
func TestPlacesThatHaveControls(t *testing.T) {
	for note, wanted := range map[string]string{
		"Hall has attenuator AT1, 24 W.":              "AT1 24",
		"The hall has a volume knob, K1, rated 36 W.": "K1 36",
		"Le hall a un atténuateur AT1 de 24 W":        "AT1 24",
		"Die Hall hat einen Regler R1, 24 W":          "R1 24",
		"De hall heeft een regelaar R1, 24 W":         "R1 24",
		"El hall tiene un atenuador AT1, de 24 W":     "AT1 24",
	} {
		j := wholeJob(t, "## Now\nIce rink\n"+note+"\n|\nWhere | Kind | Qty | W | Amp\nHall | ceiling | 4 | 6 | V1\nYard | horn | 2 | 15 | V1")
		if len(j.Controls) != 1 || j.Controls[0].Name+" "+show(j.Controls[0].Rated) != wanted || j.Loudspeakers[0].Control != j.Controls[0] || j.Loudspeakers[1].Control != nil {
			t.Errorf("%s: %v", note, describe(j))
		}
	}
}

// Of one of several controls a note may say that nothing is written on it. Common practice, no source.
func TestControlsOfWhichOneShowsNoFigure(t *testing.T) {
	for _, note := range []string{"P1 says 12 W, P2 says nothing", "P1 hat 12 W, P2 ohne Angabe", "P1 fait 12 W, P2 sans indication",
		"P1 pone 12 W, P2 no pone nada", "P1 riporta 12 W, P2 non riporta nulla", "P1 is 12 W, P2 geen opgave"} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : "+note+"\nroom | quantity | tap[W] | control\nHall | 4 | 2.5 | P1\nYard | 2 | 7.5 | P2"))
		if got := controlsOf(j); got != "P1 12 W x1, P2 ? W x1" {
			t.Errorf("%s: %s", note, got)
		}
	}
}

// A column of controls may say where each hangs and, in brackets, what it is. Common practice, no source.
func TestControlsByWhereTheyHang(t *testing.T) {
	j := wholeJob(t, "## List\nChapel, 100 V\n|\nWhere | Kind | How many | Set at | Volume knob\nNave | column | 3 | 10W | no\nAisle | small box | 2 | 2.5W | by the door (25W knob)\nHall | small box | 6 | 5W | stage left (50W knob)")
	var got []string
	for _, c := range j.Controls {
		got = append(got, c.Room.Value+" "+show(c.Rated))
	}
	want(t, "controls", got, []string{"by the door 25", "stage left 50"})
}
