package ingest

import (
	"fmt"
	"strings"
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
		{"the last row of the table", "title : Pier", "LS-1 | 5 | 1\nLS-2 | 5 | 2\nAmp EB2 | way 1 40 W | way 2 60 W", []string{"EB2 / 1 40 W ? V", "EB2 / 2 60 W ? V"}},
		{"outputs that begin with the amplifier's name", "title : ST: 2 x 40W, 70 V", "LS-1 | 5 | ST-1\nLS-2 | 5 | ST-2", []string{"ST / 1 40 W 70 V", "ST / 2 40 W 70 V"}},
		{"the same, a letter", "title : Y = ampli, 2 voies de 40 W", "LS-1 | 5 | Y1\nLS-2 | 5 | Y2", []string{"Y / 1 40 W ? V", "Y / 2 40 W ? V"}},
		{"two amplifiers over outputs that name none", "title : Amp A: 2 outputs of 60 W each. Amp B: 2 outputs of 120 W each.", "LS-1 | 5 | 1\nLS-2 | 5 | 2", []string{"1 60..120 W ? V", "2 60..120 W ? V"}},
		{"all outputs together, or each: not said", "title : PA1: 2 outputs, 240 W", "LS-1 | 5 | PA1.1\nLS-2 | 5 | PA1.2",
			[]string{"PA1 / 1 ? W ? V", "PA1 / 2 ? W ? V"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", tt.titles+"\ntag | tap[W] | channel\n"+tt.rows))
			want(t, "channels", channelRatings(j), tt.want)
		})
	}
}

// Where no row names an output, the only amplifier feeds them all.
func TestSaidOfTheOnlyAmplifier(t *testing.T) {
	for _, tt := range []struct {
		name, titles string
		want         []string
	}{
		{"named", "title : Verstärker TR, 1 Ausgang, 80 W, 100 V", []string{"TR / 1 80 W 100 V"}},
		{"without a name", "title : Amp: 30 watts", []string{"amplifier / 1 30 W ? V"}},
		{"of two outputs", "title : Amp TR: 2 x 30 W", []string{"TR / 1 30 W ? V", "TR / 2 30 W ? V"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", tt.titles+"\ntag | tap[W]\nLS-1 | 5\nLS-2 | 5"))
			want(t, "channels", channelRatings(j), tt.want)
			fed := 0
			for _, l := range j.Loudspeakers {
				if l.Channel != nil {
					fed++
				}
			}
			if one := len(tt.want) == 1; one != (fed == 2) {
				t.Errorf("%d loudspeakers are fed", fed)
			}
		})
	}
}

// "One output per zone" leads zones to outputs by their numbers, else in turn.
func TestSaidOfZonesInTurn(t *testing.T) {
	for _, tt := range []struct {
		name, zones, outputs string
		want                 []string
	}{
		{"in turn", "Hall Bar", "3", []string{"LS-1 1", "LS-2 2"}},
		{"by number", "Z2-Hall Z1-Bar", "3", []string{"LS-1 2", "LS-2 1"}},
		{"several of a number", "Z1-Hall Z1-Bar", "2", []string{"LS-1 1", "LS-2 1"}},
		{"more zones than outputs", "Hall Bar Shop", "2", []string{"LS-1 -", "LS-2 -", "LS-3 -"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			var table strings.Builder
			table.WriteString("title : Amplifier " + tt.outputs + " x 60 W, one output per zone\ntag | zone | tap[W]")
			for i, z := range strings.Fields(tt.zones) {
				table.WriteString(fmt.Sprintf("\nLS-%d | %s | 5", i+1, strings.ReplaceAll(z, "-", " ")))
			}
			var got []string
			for _, l := range jobOf(t, draw(layout.Loudspeakers, "Heads", table.String())).Loudspeakers {
				fed := "-"
				if l.Channel != nil {
					fed = l.Channel.Name
				}
				got = append(got, l.Tag.Value+" "+fed)
			}
			want(t, "outputs", got, tt.want)
		})
	}
}

func TestSaidInBills(t *testing.T) {
	j := jobOf(t, draw(layout.Mixed, "Bill", "item | description | quantity | channel | tap[W]\nB | Ceiling loudspeaker | 4 | 1 | 5\nC | Horn | 2 | 3 | 15\nD | Power amplifier, two outputs of 120 W at 100 V | 1"))
	want(t, "channels", channelRatings(j), []string{"1 120 W 100 V", "3 ? W 100 V"})
}

func TestSaidOfPlaces(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : Amp K: way 1 = Dome, way 2 = Foyer and Shop\ntag | zone | tap[W]\nLS-1 | Dome | 5\nLS-2 | Foyer | 5\nLS-3 | Shop | 5"))
	var got []string
	for _, l := range j.Loudspeakers {
		got = append(got, l.Tag.Value+" "+l.Channel.Label())
	}
	want(t, "channels", got, []string{"LS-1 K / 1", "LS-2 K / 2", "LS-3 K / 2"})
}

func TestSaidAloud(t *testing.T) {
	only := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : Amp TR, 2 outputs of 80 W each\ntag | tap[W] | channel\nLS-1 | 5 | 1"))
	want(t, "assumed", takenAs(only), []string{"A1 amplifier = TR"})
	two := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : Amp A: 2 outputs of 60 W each. Amp B: 2 outputs of 120 W each.\ntag | tap[W] | channel\nLS-1 | 5 | 1\nLS-2 | 5 | 2"))
	want(t, "asked", asked(two), []string{"A1 amplifier"})
	either := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : PA1: 2 outputs, 240 W\ntag | tap[W] | channel\nLS-1 | 5 | PA1.1\nLS-2 | 5 | PA1.2"))
	want(t, "asked", asked(either), []string{"A1 channel rating"})
}

// Titles and notes name the line voltage in passing.
func TestLineVoltageInPassing(t *testing.T) {
	const rows = "tag | tap[W] | channel\nLS-1 | 5 | A1.1"
	for _, tt := range []struct {
		name, text string
		want       string
	}{
		{"a title of the whole", "title : Pier loudspeakers 100 V\n" + rows, "100"},
		{"a number in front", "title : Pier PA  ref AL-12 100V\n" + rows, "100"},
		{"a title taken for the voltage", "title line voltage: Public address 70 V\n" + rows, "70"},
		{"a note about all", rows + "\n# 1. ALL SPEAKERS 70 V.", "70"},
		{"a note that denies", rows + "\n# cinema speakers: not on the 100 V line", "?"},
		{"a note about an exception", rows + "\n# all speakers 100 V except the foyer", "?"},
		{"a note about an amplifier", rows + "\n# amplifier 2 of the school: line 100 V", "?"},
		{"a note about something else, the only one", rows + "\n# colours are watts on the 100 V side", "100"},
		{"a description", "tag | description | tap[W] | channel\nLS-1 | ceiling loudspeaker with 70 V transformer | 5 | 1\nLS-2 | horn | 15 | 1", "70"},
		{"two voltages", "title : Pier 100 V\ntitle : Kiosk 70 V\n" + rows, "?"},
		{"a header with the rating", "tag | tap[W] | channel | channel rating[W]@70\nLS-1 | 5 | A1.1 | 60", "70"},
		{"a section", "tag | tap[W] | channel\nsection line voltage: 100 V\nLS-1 | 5 | A1.1", "100"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", tt.text))
			var c *schedule.Channel
			if len(j.Channels) > 0 {
				c = j.Channels[0]
			}
			if got := show(j.LineVoltsOf(c)); got != tt.want {
				t.Errorf("line voltage %s, want %s", got, tt.want)
			}
		})
	}
}

func TestWordsBelowTheListCount(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "L", `
		room | quantity | tap[W] | channel
		Hall | 4 | 20 | 1
		Shop | 2 | 3 | 2
		100 V Linie | | |`))
	if v, ok := j.LineVolts.Exact(); !ok || v != 100 {
		t.Errorf("line %s, want 100 V", show(j.LineVolts))
	}
	if len(j.Loudspeakers) != 2 {
		t.Errorf("%d loudspeakers", len(j.Loudspeakers))
	}
}

// A word may mean a zone and an output; the zones of the loudspeakers decide. Common practice, no source.
func TestGroupsThatAreZones(t *testing.T) {
	const zones = "IJsbaan 100 V\n|\nGroep|Ruimte|Aantal|Tap\nA|Baan noord|8|10W\nB|Zaal|6|6W\nC|Kleedkamer|6|3W\n|\n"
	j := wholeJob(t, zones+"Versterker 1 = groep A (200W)\nVersterker 2 = groep B en C (120W)")
	want(t, "zones", describe(j), []string{"8 x 10 W zone A channel Amp 1 / 1", "6 x 6 W zone B channel Amp 2 / 1", "6 x 3 W zone C channel Amp 2 / 1"})
	want(t, "outputs", ratedOutputs(j), []string{"Amp 1 / 1 200 W", "Amp 2 / 1 120 W"})
	j = wholeJob(t, zones+"Versterker 1: groep A (200W)")
	want(t, "of one zone", describe(j)[1:], []string{"6 x 6 W zone B", "6 x 3 W zone C"})
}

// What hangs on amplifiers by their words and letters is rated one by one. Common practice, no source.
func TestAmplifiersByWordAndLetter(t *testing.T) {
	for _, amp := range []string{"versterker", "amplifier", "Verstärker", "ampli", "etapa", "finale"} {
		j := wholeJob(t, "Ruimte | Luidsprekers | Ingesteld op | Aangesloten op\nBinnenbak | 4 hoorns | 10 W | "+amp+" A\nBuitenbak | 4 hoorns | 15 W | "+amp+" A\nStalgang | 5 kastjes | 3 W | "+amp+
			" B\n|\n"+strings.ToUpper(amp[:1])+amp[1:]+" A: 120 W, "+amp+" B: 60 W, 100 V. De foyer heeft een regelaar van 20 W.")
		got := channelRatings(j)
		if len(got) != 2 || !strings.HasSuffix(got[0], "A / 1 120 W 100 V") || !strings.HasSuffix(got[1], "B / 1 60 W 100 V") {
			t.Errorf("%s: %q", amp, got)
		}
	}
}
