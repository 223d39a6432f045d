package ingest

import "testing"

// Tags that only some loudspeakers have, and that a note rates, are controls whatever stands over them; so are tags under
// a shortened word for a potentiometer. Common practice, no source.
func TestTagsThatANoteRates(t *testing.T) {
	for _, c := range []struct{ header, note string }{
		{"Item | Zone | Room | Tap | Amp | Output | Xr", "P1 12 W, P2 and P3 6 W each"},
		{"Nr. | Zone | Raum | Abgriff | Endstufe | Ausgang | Drehp.", "P1 mit 12 W, P2 und P3 je 6 W"},
		{"N° | Zone | Local | Prise | Ampli | Sortie | Potent.", "P1 de 12 W, P2 et P3 de 6 W"},
		{"Nº | Zona | Sitio | Toma | Etapa | Salida | Potenc.", "P1 de 12 W, P2 y P3 de 6 W"},
		{"N. | Zona | Locale | Presa | Finale | Uscita | Potenz.", "P1 da 12 W, P2 e P3 da 6 W"},
		{"Nr. | Zone | Ruimte | Stand | Versterker | Uitgang | Pt", "P1: 12 W, P2 en P3: 6 W"},
	} {
		j := wholeJob(t, "Slate museum, 100 V\n"+c.header+`
1 | Hall | Desk | 3 W | E1 | 1 | P1
2 | Hall | Lobby | 6 W | E1 | 1 |
3 | Offices | Loans | 1.5 W | E1 | 2 | P2
4 | Offices | Papers | 1.5 W | E1 | 2 | P3
5 | Offices | Stairs | 3 W | E1 | 2 |

`+c.note)
		want(t, c.header, describe(j), []string{"1 x 3 W zone Hall control P1 channel E1 / 1", "1 x 6 W zone Hall channel E1 / 1",
			"1 x 1.5 W zone Offices control P2 channel E1 / 2", "1 x 1.5 W zone Offices control P3 channel E1 / 2", "1 x 3 W zone Offices channel E1 / 2"})
		for i, w := range []string{"12", "6", "6"} {
			if i >= len(j.Controls) || show(j.Controls[i].Rated) != w {
				t.Errorf("%s: control %d, want %s W", c.header, i, w)
			}
		}
	}
	j := wholeJob(t, `
Slate museum, 100 V
Item | Room | Tap | Output | Xr
1 | Desk | 3 W | 1 | P1
2 | Lobby | 6 W | 1 | P2
3 | Stairs | 3 W | 2 |

P1 see plan 12, P2 not there`)
	if len(j.Controls) != 0 {
		t.Errorf("tags that no note rates are controls: %v", describe(j))
	}
}
