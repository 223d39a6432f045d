package ingest

import (
	"strings"
	"testing"

	"lineaudit/ingest/layout"
)

// How people write the output that a loudspeaker hangs on, in six languages;
// common practice, no source.
func TestOutputsAsWritten(t *testing.T) {
	for _, tt := range []struct{ column, cells, want string }{
		{"channel", "Amp 1 ch 1|Amp 1 ch 2|Amp 2 ch 1", "Amp 1 / 1, Amp 1 / 2, Amp 2 / 1"},
		{"channel", "A1/1|A1/2|A2/1", "A1 / 1, A1 / 2, A2 / 1"},
		{"channel", "Ausgang 1 (V1)|Ausgang 2 (V1)|Ausgang 1 (V2)", "V1 / 1, V1 / 2, V2 / 1"},
		{"channel", "sortie 1 ampli 1|sortie 2 ampli 1|sortie 1 ampli 2", "ampli 1 / 1, ampli 1 / 2, ampli 2 / 1"},
		{"channel", "line 1 of amp 1|line 2 of amp 1|line 1 of amp 2", "amp 1 / 1, amp 1 / 2, amp 2 / 1"},
		{"channel", "salida 1 de la etapa 1|salida 2 de la etapa 1|salida 1 de la etapa 2", "etapa 1 / 1, etapa 1 / 2, etapa 2 / 1"},
		{"channel", "uscita 1 finale 1|uscita 2 finale 1|uscita 1 finale 2", "finale 1 / 1, finale 1 / 2, finale 2 / 1"},
		{"channel", "uitgang 1 van V1|uitgang 2 van V1|uitgang 1 van V2", "V1 / 1, V1 / 2, V2 / 1"},
		{"channel", "Amp A, output 1|Amp A, output 2|Amp B, output 1", "Amp A / 1, Amp A / 2, Amp B / 1"},
		{"channel", "A Ausgang 1|A Ausgang 2|B Ausgang 1", "A / 1, A / 2, B / 1"},
		{"channel", "ES1/L1|ES1/L2|ES2/L1", "ES1 / L1, ES1 / L2, ES2 / L1"},
		{"circuit", "L1 (A1)|L2 (A1)|L3 (A2)", "A1 / L1, A1 / L2, A2 / L3"},
		{"circuit", "Linie 1 / V1|Linie 2 / V1|Linie 3 / V2", "V1 / 1, V1 / 2, V2 / 3"},
		{"circuit", "Line 1 (60 W)|Line 2 (60 W)|Line 3 (60 W)", "1, 2, 3"},
		{"amplifier", "Ampli 1 ligne 1|Ampli 1 ligne 2|Ampli 2 ligne 1", "Ampli 1 / 1, Ampli 1 / 2, Ampli 2 / 1"},
	} {
		t.Run(tt.cells, func(t *testing.T) {
			cells := strings.Split(tt.cells, "|")
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W] | "+tt.column+"\nHall | 4 | 5 | "+cells[0]+"\nYard | 2 | 7.5 | "+cells[1]+"\nGate | 1 | 20 | "+cells[2]))
			var got []string
			for _, l := range j.Loudspeakers {
				name := "?"
				if l.Channel != nil {
					name = l.Channel.Label()
				}
				got = append(got, name)
			}
			if strings.Join(got, ", ") != tt.want {
				t.Errorf("got %s, want %s", strings.Join(got, ", "), tt.want)
			}
		})
	}
}
