package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
)

// Groups of an amplifier are its outputs where their numbers begin anew in each.
func TestGroupsOfAmplifiers(t *testing.T) {
	anew := draw(layout.Loudspeakers, "Lijst", "room | quantity | tap | amplifier | zone: Groep\nEntree | 6 | 6 W | V1 | 1\nTerras | 4 | 15 W | V1 | 2\nLoods | 3 | 10 W | V2 | 1")
	want(t, "loudspeakers", describe(jobOf(t, anew)), []string{"6 x 6 W zone Entree channel V1 / 1", "4 x 15 W zone Terras channel V1 / 2", "3 x 10 W zone Loods channel V2 / 1"})
	through := draw(layout.Loudspeakers, "Lijst", "room | quantity | tap | amplifier | zone: Groep\nEntree | 6 | 6 W | V1 | 1\nTerras | 4 | 15 W | V1 | 2\nLoods | 3 | 10 W | V2 | 3")
	want(t, "loudspeakers", describe(jobOf(t, through)), []string{"6 x 6 W zone 1 channel V1 / 1", "4 x 15 W zone 2 channel V1 / 1", "3 x 10 W zone 3 channel V2 / 1"})
}

func TestListOfGroupsAndWhatTheyGive(t *testing.T) {
	heads := draw(layout.Loudspeakers, "Heads", "room | quantity | tap | zone\nKas A | 6 | 10 W | 1\nKas B | 4 | 6 W | 2\nPlein | 3 | 15 W | 3")
	rack := draw(layout.Zones, "Rack", "zone: Groep | amplifier | tap: Vermogen\n1 | V1 | 120 W\n2 | V1 | 120 W\n3 | V2 | 60 W")
	want(t, "channels", channelRatings(jobOf(t, heads, rack)), []string{"V1 / 1 120 W ? V", "V1 / 2 120 W ? V", "V2 / 3 60 W ? V"})
}

// A column of jobs whose cells are controls is one of controls.
func TestControlsBelowAWordForJobs(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "HP", "room | quantity | tap | job: Commande\nCouloir | 6 | 3 W | Att. 1 (36 W)\nVestiaire | 4 | 1,5 W | Att. 2 (6 W)\nParvis | 3 | 15 W |"))
	want(t, "loudspeakers", describe(j), []string{"6 x 3 W zone Couloir control Att. 1", "4 x 1.5 W zone Vestiaire control Att. 2", "3 x 15 W zone Parvis"})
	if got := show(j.Controls[0].Rated) + " " + show(j.Controls[1].Rated); got != "36 6" {
		t.Errorf("controls rated %s", got)
	}
}

// Rows of a list of types that are amplifiers and controls are equipment.
func TestEquipmentInAListOfTypes(t *testing.T) {
	heads := draw(layout.Loudspeakers, "Heads", "tag | tap | channel | control\nP1 | 6 W | MA-1 A | VC-A\nP2 | 15 W | MA-1 B |")
	kit := draw(layout.Types, "Kit", "tag | description | loudspeaker rating\nMA-1 | Amplifier, two channel | 2 x 60 W\nVC-A | Attenuator | 25 W")
	j := jobOf(t, heads, kit)
	want(t, "channels", channelRatings(j), []string{"MA-1 / A 60 W ? V", "MA-1 / B 60 W ? V"})
	if got := show(j.Controls[0].Rated); got != "25" {
		t.Errorf("control rated %s W", got)
	}
}

// Cells of the last rows that are names with powers speak of what the list names.
func TestStatementsBelowTheList(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Inst", `
		room | quantity | tap[W] | circuit | control
		Nave | 8 | 10 | L1 |
		Aula | 4 | 6 | L2 | POT-1
		POT-1: 30 W | L1: 120 W | L2: 60 W | |`))
	want(t, "channels", channelRatings(j), []string{"L1 120 W ? V", "L2 60 W ? V"})
	if len(j.Loudspeakers) != 2 || show(j.Controls[0].Rated) != "30" || len(j.Questions) != 0 {
		t.Errorf("%d loudspeakers, control %s W, questions %v", len(j.Loudspeakers), show(j.Controls[0].Rated), asked(j))
	}
}

// The cable of a line may stand beside the amplifier that feeds it.
func TestCablesInAListOfAmplifiers(t *testing.T) {
	heads := draw(layout.Loudspeakers, "Heads", "room | quantity | tap | circuit\nAula | 4 | 6 W | 1\nPista | 10 | 15 W | 2")
	rack := draw(layout.Amplifiers, "Rack", "circuit | amplifier | channel rating | cable type | length[m]\n1 | F1 | 60 W | 2x1,5 | 55\n2 | F2 | 240 W | 2x2,5 | 110")
	want(t, "cables", cablesOf(jobOf(t, heads, rack)), []string{"1 55 m 1.5 mm² channel F1 / 1", "2 110 m 2.5 mm² channel F2 / 2"})
}

// Outputs listed amplifier by amplifier, with the place of the rack, are those that the
// loudspeakers name in one word, or with words for them. Common practice, no source.
func TestOutputsThatLoudspeakersNameInOneWord(t *testing.T) {
	for name, sheet := range map[string]string{
		"German, codes": `
## Lautsprecher
Raum | Stück | Watt | Ausgang
Saal | 4 | 6 | V1-1
Steg | 2 | 15 | V1-2
Foyer | 6 | 6 | V2-1
## Endstufen
Verstärker | Ausgang | Leistung W | Standort
V1 | 1 | 60 | Technikraum
V1 | 2 | 120 | Technikraum
V2 | 1 | 60 | Putzkammer`,
		"French, with words": `
## HP
Local | Nb | Puissance W | Sortie
Salle | 4 | 6 | V1, sortie 1
Quai | 2 | 15 | V1, sortie 2
Hall | 6 | 6 | V2, sortie 1
## Amplis
Ampli | Sortie | Puissance W | Emplacement
V1 | 1 | 60 | local technique
V1 | 2 | 120 | local technique
V2 | 1 | 60 | placard`,
	} {
		t.Run(name, func(t *testing.T) {
			j := wholeJob(t, sheet)
			want(t, "outputs", ratedOutputs(j), []string{"V1 / 1 60 W", "V1 / 2 120 W", "V2 / 1 60 W"})
			if len(j.Loudspeakers) != 3 {
				t.Errorf("%d loudspeakers, want 3", len(j.Loudspeakers))
			}
		})
	}
}

// Lines listed beside each amplifier, word for word, are its outputs, and all of them where
// there are as many; lines may be numbered on. Common practice, no source.
func TestLinesListedBesideAmplifiers(t *testing.T) {
	for _, lists := range [][2]string{{"Linie 1, Linie 2", "Linie 3"}, {"Kanal 1 und Kanal 2", "Kanal 3"}} {
		j := wholeJob(t, `
Seebühne, ELA 100 V
Verstärker | Leistung | Linien
V1 | 2 x 120 W | `+lists[0]+`
V2 | 1 x 240 W | `+lists[1]+`

Nr. | Ort | Bauart | Stk | Abgriff | Linie
1 | Eingang | Decke | 4 | 3 W | 1
2 | Steg | Horn | 3 | 15 W | 2
3 | Rang | Horn | 8 | 20 W | 3`)
		want(t, lists[0], describe(j), []string{"4 x 3 W zone Eingang channel V1 / 1", "3 x 15 W zone Steg channel V1 / 2", "8 x 20 W zone Rang channel V2 / 3"})
		if len(j.Questions) > 0 {
			t.Errorf("questions: %v", asked(j))
		}
	}
}
