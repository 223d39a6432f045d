package ingest

import (
	"strings"
	"testing"
)

// Cable lists whose last columns tell what hangs at the far end are lists of
// loudspeakers; what they are is no place.
func TestLoudspeakersAtTheFarEnd(t *testing.T) {
	for _, c := range []struct {
		name, sheet string
		want        []string
	}{
		{"German", `
Eishalle Moorsee - Kabelzugliste Beschallung 100 V
Ltg. | Start | Ziel | Typ | Länge/m | LS am Ziel | Abgriff/W
W1 | V1.1 | LS 1 | NYM-J 3x2,5 | 38 | Horn | 20
W2 | LS 1 | LS 2 | NYM-J 3x2,5 | 14 | Horn | 20
W3 | V1.2 | LS 3 | NYM-J 3x1,5 | 22 | Decke | 6`,
			[]string{"LS 1 1 x 20 W channel V1 / 1", "LS 2 1 x 20 W channel V1 / 1", "LS 3 1 x 6 W channel V1 / 2"}},
		{"French", `
Patinoire du Lac - liste des câbles HP - ligne 100 V
Câble | Départ | Arrivée | Section | Long. (m) | HP à l'arrivée | Prise (W)
C1 | A1.1 | HP1 | 2x2,5 | 40 | trompe | 20
C2 | HP1 | HP2 | 2x2,5 | 12 | trompe | 20
C3 | A1.2 | HP3 | 2x1,5 | 25 | plafonnier | 6`,
			[]string{"HP1 1 x 20 W channel A1 / 1", "HP2 1 x 20 W channel A1 / 1", "HP3 1 x 6 W channel A1 / 2"}},
		{"English, a column that could be rooms", `
Boathouse PA pulls, 70 V
Cable | From | To | Cable type | Length ft | Fitting | Tap
S1 | AMP1-1 | LS-1 | 16/2 | 120 | Horn | 15W
S2 | LS-1 | LS-2 | 16/2 | 45 | Horn | 15W`,
			[]string{"LS-1 1 x 15 W channel AMP1 / 1", "LS-2 1 x 15 W channel AMP1 / 1"}},
	} {
		t.Run(c.name, func(t *testing.T) { want(t, "loudspeakers", describe(wholeJob(t, c.sheet)), c.want) })
	}
}

// Notes that list the powers of the outputs that rows number.
func TestPowersOfOutputsInNotes(t *testing.T) {
	for _, c := range []struct {
		name, note string
		rated      []string
	}{
		{"German strings", "Verstärker im Keller: Strang 1 = 60 W, Strang 2 = 30 W, 100 Volt", []string{"1 60 W", "2 30 W"}},
		{"French, in order", "ampli 2 sorties : 60 W / 30 W, 100 V", []string{"1 60 W", "2 30 W"}},
		{"Spanish, in order", "Etapa con 2 salidas (60 y 30 W), línea 100 V", []string{"1 60 W", "2 30 W"}},
		{"of both together", "lines 1 and 2 off the 60 watt amp, 100 V", []string{"amplifier / 1 ? W", "amplifier / 2 ? W"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, `
Bootshaus Hinterau
Nr | wo | Watt eingestellt | Strang
1 | Stiege | 3 | 1
2 | Steg | 15 | 2
3 | Steg | 15 | 2

`+c.note)
			want(t, "outputs", ratedOutputs(j), c.rated)
			if strings.Contains(c.rated[0], "?") && len(j.Questions) == 0 {
				t.Error("nothing asked")
			}
		})
	}
}

// A number of a job may have marks inside; "Werf" is a site.
func TestTitleBlocksOfJobs(t *testing.T) {
	const list = `
Zona | Altavoces | Toma (W) | Etapa
Pista | 12 | 20 | E1
Gradas | 8 | 10 | E2`
	for in, want := range map[string][2]string{
		"PISTA DE HIELO\nExpte. OB-2019/027":        {"OB-2019/027", "PISTA DE HIELO"},
		"Werf: | IJsbaan Zuid | | Werfnr.: | B-772": {"B-772", "IJsbaan Zuid"},
		"Botanischer Garten\nAuftrag Nr. 2019/114":  {"2019/114", "Botanischer Garten"},
	} {
		j := wholeJob(t, in+"\n"+list)
		if got := [2]string{j.Number.Value, j.Site.Value}; got != want {
			t.Errorf("%q: %q, want %q", in, got, want)
		}
	}
}
