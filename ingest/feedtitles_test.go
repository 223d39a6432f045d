package ingest

import "testing"

// What a title says that an amplifier feeds is no zone above rows that name
// their own places.
func TestWhatATitleSaysThatItFeeds(t *testing.T) {
	for _, c := range []struct {
		name, sheet  string
		zones, rated []string
	}{
		{"German, behind a rating in brackets", `
Orchideenhaus Beschallung
Nr | Raum | Watt | Regler
Verstärker 1 (240 W) versorgt Halle und Galerie
L1 | Halle Nord | 15
L2 | Galerie | 6 | R1
Verstärker 2 (120 W) versorgt den Rest
L3 | Foyer | 6 | R2
L4 | Werkstatt | 10`,
			[]string{"Halle Nord", "Galerie", "Foyer", "Werkstatt"}, []string{"Verstärker 1 / 1 240 W", "Verstärker 2 / 1 120 W"}},
		{"French, rows without places", `
Hangar du lac - sonorisation 100 V
HP | Réglage | Atténuateur
Ampli A - 120 W - alimente quai
HP1 | 15 W
HP2 | 15 W
Ampli B - 60 W - alimente hangar 2
HP3 | 6 W | P1
HP4 | 3 W | P2`,
			[]string{"quai", "quai", "hangar 2", "hangar 2"}, []string{"Ampli A / 1 120 W", "Ampli B / 1 60 W"}},
		{"Spanish, in one breath", `
Invernadero central
Altavoz | Dependencia | Toma W
Etapa E1 da servicio a sala palmeras
A1 | Palmeras norte | 10
A2 | Palmeras sur | 10
Etapa E2 da servicio a aulas
A3 | Aula 1 | 6
A4 | Aula 2 | 6`,
			[]string{"Palmeras norte", "Palmeras sur", "Aula 1", "Aula 2"}, []string{"Etapa E1 / 1 ? W", "Etapa E2 / 1 ? W"}},
		{"outputs, and several places with a number", `
Planetarium PA
Tag | Location | Tap W
Amp 1 ch 1, 120 W, feeds dome, gallery 2 and foyer
S1 | Dome east | 10
S2 | Dome west | 10
Amp 1 ch 2, 60 W, feeds offices
S3 | Office 1 | 3
S4 | Office 2 | 3`,
			[]string{"Dome east", "Dome west", "Office 1", "Office 2"}, []string{"Amp 1 / 1 120 W", "Amp 1 / 2 60 W"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheet)
			want(t, "zones", zoned(j), c.zones)
			want(t, "outputs", ratedOutputs(j), c.rated)
		})
	}
}

// An amplifier in a line of several facts above the table has its rating behind
// its name, and is no place of the site.
func TestAmplifierAmongTheFactsOfATitle(t *testing.T) {
	for _, c := range []struct{ name, sheet, site, rated string }{
		{"number, volts and amplifier", `
Boothuis Meerzicht
projectnr. 5544, 100 volt, versterker V1 2 x 60 watt
nr | plek | watt | versterker | uitgang
1 | steiger | 15 | V1 | 1
2 | loods | 10 | V1 | 2
3 | reserve (in kast) | 6`, "Boothuis Meerzicht", "V1 / 1 60 W, V1 / 2 60 W"},
		{"places behind two amplifiers", `
Eisbahn Obermoos
ELA 100 V, Verstärker 1 = 250 W (Platz), Verstärker 2 = 125 W (Gebäude)

Stk | Lautsprecher | Ort | a Watt | Verst.
8 | Horn | Platz | 20 | 1
4 | Horn | Tribüne | 20 | 1
6 | Einbau | Garderobe | 2.5 | 2`, "Eisbahn Obermoos", "1 / 1 250 W, 2 / 1 125 W"},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheet)
			if j.Site.Value != c.site {
				t.Errorf("site %q, want %q", j.Site.Value, c.site)
			}
			want(t, "outputs", []string{joinAll(ratedOutputs(j))}, []string{c.rated})
			for _, l := range j.Loudspeakers {
				if (l.Channel == nil) != (l.Status.String() == "spare") {
					t.Errorf("%s: %v", l.At.Cell(), l.Status)
				}
			}
		})
	}
}

// A title may name a line and its amplifier; what stands behind the amplifier is its rating,
// which several lines may share. Common practice, no source.
func TestTitlesOfLinesAndAmplifiers(t *testing.T) {
	j := wholeJob(t, `Altavoces, línea de 100 V
LÍNEA 1 - AMPLIFICADOR 1 (120 W)
Situación | Cantidad | Potencia
Entrada | 2 | 10 W

LÍNEA 2 - AMPLIFICADOR 2 (240 W)
Situación | Cantidad | Potencia
Vivero | 2 | 10 W

LÍNEA 3 - AMPLIFICADOR 2 (240 W)
Situación | Cantidad | Potencia
Aula | 4 | 10 W`)
	var got []string
	for _, c := range j.Channels {
		got = append(got, c.Amplifier.Name+" / "+c.Name+" "+show(c.Rated)+" of "+show(c.Amplifier.Rated))
	}
	want(t, "outputs", got, []string{"AMPLIFICADOR 1 / 1 120 of ?", "AMPLIFICADOR 2 / 2 ? of 240", "AMPLIFICADOR 2 / 3 ? of 240"})
}
