package ingest

import (
	"fmt"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

func channelRatings(j *schedule.Job) []string {
	var out []string
	for _, c := range j.Channels {
		v := j.LineVoltsOf(c)
		out = append(out, fmt.Sprintf("%s %s W %s V", c.Label(), show(c.Rated), show(v)))
	}
	return out
}

// The sentences are common practice, no source.
func TestSaidOfAmplifiers(t *testing.T) {
	for _, tt := range []struct {
		name, titles, rows string
		want               []string
	}{
		{"an amplifier that the table names", "title : PA1: two outputs, 60W each, 100 V", "LS-1 | 5 | PA1.1\nLS-2 | 5 | PA1.2",
			[]string{"PA1 / 1 60 W 100 V", "PA1 / 2 60 W 100 V"}},
		{"an output that nothing hangs on", "title : PA1: three outputs, 60W each, 100 V", "LS-1 | 5 | PA1.1\nLS-2 | 5 | PA1.2",
			[]string{"PA1 / 1 60 W 100 V", "PA1 / 2 60 W 100 V", "PA1 / 3 60 W 100 V"}},
		{"an amplifier that no table names, beside one that does", "title : Amp ZZ: two outputs, 60W each", "LS-1 | 5 | PA1.1",
			[]string{"PA1 / 1 ? W ? V"}},
		{"the only amplifier of the file", "title : Verstärker TR, 2 Ausgänge, je 80 W, 100 V", "LS-1 | 5 | 1\nLS-2 | 5 | 2",
			[]string{"TR / 1 80 W 100 V", "TR / 2 80 W 100 V"}},
		{"other watts and volts", "title : Amp 1 = 70 V, 120 W. Amp 2 = 100 V, 60 W.", "LS-1 | 5 | Amp 1 ch 1\nLS-2 | 5 | Amp 2 ch 1",
			[]string{"Amp 1 / 1 120 W 70 V", "Amp 2 / 1 60 W 100 V"}},
		{"all outputs together, or each: not said", "title : PA1: 2 outputs, 240 W", "LS-1 | 5 | PA1.1\nLS-2 | 5 | PA1.2",
			[]string{"PA1 / 1 ? W ? V", "PA1 / 2 ? W ? V"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", tt.titles+"\ntag | tap[W] | channel\n"+tt.rows))
			want(t, "channels", channelRatings(j), tt.want)
		})
	}
}

func TestSaidAloud(t *testing.T) {
	only := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : Amp TR, 2 outputs of 80 W each\ntag | tap[W] | channel\nLS-1 | 5 | 1"))
	want(t, "assumed", takenAs(only), []string{"A1 amplifier = TR"})
	either := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : PA1: 2 outputs, 240 W\ntag | tap[W] | channel\nLS-1 | 5 | PA1.1\nLS-2 | 5 | PA1.2"))
	want(t, "asked", asked(either), []string{"A1 channel rating"})
}
