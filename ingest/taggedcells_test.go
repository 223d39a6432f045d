package ingest

import (
	"testing"

	"lineaudit/audit/schedule"
)

// Lists with whole loudspeakers in their cells, and notes that give each floor an amplifier. Common practice in six
// languages, no source.
func TestLoudspeakersInCellsAndAmplifiersOfFloors(t *testing.T) {
	for _, c := range []struct{ note, header, ground, upper, removed, want string }{
		{"Ground floor: amplifier PA1, 120 W. First floor: amplifier PA2, 60 W. 100 V lines.", "Floor | Room | Loudspeakers and taps", "Ground", "First", "removed", "PA"},
		{"EG: Verstärker VA1 120 W; OG: Verstärker VA2 60 W. Alle Linien 100 V.", "Geschoss | Raum | Lautsprecher", "Erdgeschoss", "Obergeschoss", "ausgebaut", "VA"},
		{"Rez-de-chaussée : ampli A1 de 120 W. Étage : ampli A2 de 60 W. Lignes 100 V.", "Niveau | Local | Haut-parleurs et puissances", "RDC", "Étage", "déposé", "A"},
		{"Planta baja: etapa EA1 de 120 W. Planta primera: etapa EA2 de 60 W. Líneas de 100 V.", "Planta | Sala | Altavoces", "Baja", "Primera", "retirado", "EA"},
		{"Piano terra: finale FA1 da 120 W. Primo piano: finale FA2 da 60 W. Linee a 100 V.", "Piano | Sala | Diffusori e prese", "Terra", "Primo", "tolto", "FA"},
		{"Begane grond: versterker VA1, 120 W. Verdieping: versterker VA2, 60 W. Alle lijnen 100 V.", "Verdieping | Ruimte | Luidsprekers", "Begane grond", "Eerste", "verwijderd", "VA"},
	} {
		j := wholeJob(t, "Depot\n"+c.note+"\n|\n"+c.header+"\n"+c.ground+" | 101 Hall | D1 6 W + D2 3 W\n"+c.upper+" | 201 Room | D4 15 W\n"+c.upper+" | 202 Room | D5 6 W, "+c.removed)
		got := ""
		for _, l := range j.Loudspeakers {
			if l.Status != schedule.Installed {
				continue
			}
			if got != "" {
				got += ", "
			}
			if l.Channel != nil && l.Channel.Amplifier != nil {
				got += l.Channel.Label()
			}
			got += ": " + show(l.Tap)
		}
		w := c.want + "1 / 1: 6, " + c.want + "1 / 1: 3, " + c.want + "2 / 1: 15"
		if got != w {
			t.Errorf("%s: %s, want %s", c.note, got, w)
		}
		want(t, c.note, channelRatings(j), []string{c.want + "1 / 1 120 W 100 V", c.want + "2 / 1 60 W 100 V"})
	}
}
