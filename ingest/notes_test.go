package ingest

import (
	"strings"
	"testing"

	"lineaudit/ingest/layout"
)

// What a note says of amplifiers, read beside lists that name outputs, lines,
// amplifiers or zones. The notes are common practice in six languages, no source.
func TestNotesBesideLists(t *testing.T) {
	lists := map[string]string{
		"outputs":    "room | quantity | tap[W] | channel\nHall | 4 | 5 | 1\nYard | 2 | 7.5 | 2\nGate | 1 | 20 | 3",
		"lines":      "room | quantity | tap[W] | circuit\nHall | 4 | 5 | L1\nYard | 2 | 7.5 | L2\nGate | 1 | 20 | L3",
		"amplifiers": "room | quantity | tap[W] | amplifier\nHall | 4 | 5 | 1\nYard | 2 | 7.5 | 2\nGate | 1 | 20 | 3",
		"both":       "room | quantity | tap[W] | amplifier | channel\nHall | 4 | 5 | A1 | 1\nYard | 2 | 7.5 | A1 | 2\nGate | 1 | 20 | A2 | 1",
		"zones":      "zone | quantity | tap[W]\nHall | 4 | 5\nYard | 2 | 7.5\nGate | 1 | 20",
	}
	const each = "1 60, 2 60, 3 60"
	const mixed = "1 60, 2 60, 3 30"
	const amps = "1 / 1 60, 2 / 1 60, 3 / 1 30"
	const lines = "L1 60, L2 60, L3 60"
	for _, tt := range []struct{ list, note, want, asked string }{
		{"outputs", "Amp 3 x 60W @ 100V", each, ""},
		{"outputs", "Outputs 1 & 2: 60 W. Output 3: 30 W.", mixed, ""},
		{"outputs", "Kanäle 1 und 2 je 60 W, Kanal 3 30 W", mixed, ""},
		{"outputs", "Sorties 1 et 2 : 60 W, sortie 3 : 30 W", mixed, ""},
		{"outputs", "Salidas 1 y 2: 60 W; salida 3: 30 W", mixed, ""},
		{"outputs", "Uscite da 60 W", each, ""},
		{"outputs", "Versterker: drie uitgangen van 60 W", each, ""},
		{"outputs", "One 240 W mixer amp with 3 zone outputs", "amplifier / 1 ?, amplifier / 2 ?, amplifier / 3 ?", "frame rating"},
		{"lines", "Linien L1 bis L3: je 60 W", lines, ""},
		{"lines", "Lignes L1 à L3 : 60 W", lines, ""},
		{"lines", "L1 (60 W), L2 (60 W), L3 (60 W)", lines, ""},
		{"lines", "L1, L2: amp A; L3: amp B 60 W", "amp A / L1 ?, amp A / L2 ?, amp B / L3 60", ""},
		{"amplifiers", "Amplifiers 1 and 2: 60 W, amplifier 3: 30 W", amps, ""},
		{"amplifiers", "Amplis 1 et 2 : 60 W ; ampli 3 : 30 W", amps, ""},
		{"amplifiers", "Etapas 1 y 2 de 60 W, etapa 3 de 30 W", amps, ""},
		{"amplifiers", "Versterkers 1 en 2: 60 W, versterker 3: 30 W", amps, ""},
		{"amplifiers", "1 and 2 are 60 W amps, 3 is a 30 W amp", "1 / 1 ?, 2 / 1 ?, 3 / 1 ?", "channel rating"},
		{"both", "A1: 2 x 60 W; A2: 1 x 30 W", "A1 / 1 60, A1 / 2 60, A2 / 1 30", ""},
		{"both", "A1.1 60 W, A1.2 60 W, A2.1 30 W", "A1 / 1 60, A1 / 2 60, A2 / 1 30", ""},
		{"both", "A1 120 W, A2 30 W", "A1 / 1 ?, A1 / 2 ?, A2 / 1 30", "channel rating"},
		{"zones", "Hall and Yard on amp 1 (60 W), Gate on amp 2 (30 W)", "amp 1 / 1 60, amp 2 / 1 30", ""},
		{"zones", "Amp 1 (60 W): Hall, Yard. Amp 2 (30 W): Gate.", "Amp 1 / 1 60, Amp 2 / 1 30", ""},
		{"zones", "All on one 120 W amplifier", "amplifier / 1 120", ""},
		{"zones", "Each zone has its own 60 W amplifier", "", ""},
	} {
		t.Run(tt.note, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : "+tt.note+"\n"+lists[tt.list]))
			var got, questions []string
			for _, c := range j.Channels {
				got = append(got, c.Label()+" "+show(c.Rated))
			}
			for _, q := range j.Questions {
				questions = append(questions, q.Field)
			}
			if strings.Join(got, ", ") != tt.want || strings.Join(questions, ", ") != tt.asked {
				t.Errorf("got %s, asked %s; want %s, asked %s", strings.Join(got, ", "), questions, tt.want, tt.asked)
			}
		})
	}
}
