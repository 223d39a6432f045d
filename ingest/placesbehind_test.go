package ingest

import "testing"

// A note names places, each with the control behind which their loudspeakers hang.
// Common practice, no source.
func TestPlacesWithTheirControls(t *testing.T) {
	for _, c := range []struct {
		name, sheets string
		want, rated  []string
	}{
		{"French, several places at a control", `
Sonorisation 100 V
Local | HP | Nombre | Prise
Accueil | Plafonnier | 6 | 6 W
Boutique | Plafonnier | 4 | 3 W
Bar | Plafonnier | 2 | 3 W
Salle | Colonne | 4 | 20 W

Accueil avec atténuateur AT1 (50 W), boutique et bar avec atténuateur AT2 (20 W).`,
			[]string{"6 x 6 W zone Accueil control AT1", "4 x 3 W zone Boutique control AT2", "2 x 3 W zone Bar control AT2", "4 x 20 W zone Salle"},
			[]string{"AT1 50", "AT2 20"}},
		{"English, places before one control", `
PA loudspeakers, 100 V line
Room | Type | Qty | Tap
Cafe | Ceiling | 6 | 3 W
Shop | Ceiling | 4 | 3 W
Hall | Horn | 4 | 15 W

Amp rack in the hall. Cafe, shop behind volume control VC7 36 W.`,
			[]string{"6 x 3 W zone Cafe control VC7", "4 x 3 W zone Shop control VC7", "4 x 15 W zone Hall"}, []string{"VC7 36"}},
		{"what is no place", `
PA loudspeakers, 100 V line
Room | Type | Qty | Tap
Cafe | Ceiling | 6 | 3 W
Hall | Horn | 4 | 15 W

Ceiling units with volume control 36 W are on order.`,
			[]string{"6 x 3 W zone Cafe", "4 x 15 W zone Hall"}, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheets)
			want(t, "loudspeakers", describe(j), c.want)
			var rated []string
			for _, k := range j.Controls {
				rated = append(rated, k.Name+" "+show(k.Rated))
			}
			want(t, "controls", rated, c.rated)
		})
	}
}

// A note may give the tag of a control before it says what it is and where.
// Common practice, no source.
func TestTagAheadOfAControl(t *testing.T) {
	j := wholeJob(t, `
Megafonía 100 V
Altavoz | Sala | Tipo | W | Etapa
A1 | Taquilla | techo | 3 | E1
A2 | Vestíbulo | techo | 6 | E1
A3 | Vestíbulo | techo | 6 | E1

Desde | Hasta | Longitud m | Cable
E1 | A1 | 20 | 2x1,5
A1 | RV3 | 8 | 2x1,5
RV3 | A2 | 5 | 2x1,5
A2 | A3 | 6 | 2x1,5

RV3 = regulador de volumen del vestíbulo, 30 W`)
	want(t, "loudspeakers", describe(j), []string{"A1 1 x 3 W zone Taquilla channel E1 / 1", "A2 1 x 6 W zone Vestíbulo control RV3 channel E1 / 1", "A3 1 x 6 W zone Vestíbulo control RV3 channel E1 / 1"})
	if len(j.Controls) != 1 || show(j.Controls[0].Rated) != "30" {
		t.Errorf("controls %+v", j.Controls)
	}
}
