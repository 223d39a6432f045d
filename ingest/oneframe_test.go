package ingest

import (
	"fmt"
	"testing"

	"lineaudit/audit/schedule"
)

// frames are the amplifiers of a job with the number of their outputs.
func frames(j *schedule.Job) []string {
	var out []string
	for _, a := range j.Amplifiers {
		out = append(out, fmt.Sprintf("%q %s W %d outputs", a.Name, show(a.Rated), len(a.Channels)))
	}
	return out
}

// Common practice, no source.
func TestOneFrameOfSeveralOutputs(t *testing.T) {
	const list = "\nRoom | Type | Qty | Tap W | Output\nHall | ceiling | 4 | 6 | 1\nYard | horn | 2 | 15 | 2\nStand | horn | 2 | 10 | 3\n|\n"
	for _, c := range []struct {
		said string
		want []string
	}{
		{"Amp 4 x 60 W, each line has its own output", []string{`"" ? W 3 outputs`}},
		{"Amp: (1) four channel, 120 W per channel at 70V", []string{`"" ? W 3 outputs`}},
		{"Verstärker mit 4 Ausgängen zu je 120 W", []string{`"" ? W 3 outputs`}},
		{"ELA-Zentrale mit 4 Ausgängen", []string{`"" ? W 3 outputs`}},
		{"Un amplificateur 100 V, 4 x 120 W", []string{`"" ? W 3 outputs`}},
		{"Amplificador único de 4 salidas de 120 W", []string{`"" ? W 3 outputs`}},
		{"Centrale 4 linee da 120 W", []string{`"" ? W 3 outputs`}},
		{"Impianto a 100 V, centrale con 6 uscite", []string{`"" ? W 3 outputs`}},
		{"De versterker heeft vier uitgangen", []string{`"" ? W 3 outputs`}},
		{"Amp: 4 x 120 W, together no more than 240 W", []string{`"" 240 W 3 outputs`}},
		// no amplifier is spoken of, or there may be several
		{"Outputs 1 to 3: 120 W each", nil},
		{"Two amplifiers, 4 x 120 W each", nil},
		{"Amp with two outputs of 120 W each", nil},
	} {
		j := wholeJob(t, "Elmfield landing stage\n|"+list+c.said)
		want(t, c.said, frames(j), c.want)
	}
}
