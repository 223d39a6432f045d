package ingest

import (
	"fmt"
	"testing"
)

// A form has its keys down a column: one on each sheet, or several below each other. Common practice, no source.
func TestFormsOfZones(t *testing.T) {
	for name, k := range map[string][7]string{
		"English": {"Zone", "Amplifier", "Channel", "Number of speakers", "Tap", "Volume control", "Cable"},
		"German":  {"Zone", "Verstärker", "Kanal", "Anzahl Lautsprecher", "Abgriff", "Lautstärkeregler", "Kabel"},
		"French":  {"Zone", "Amplificateur", "Voie", "Nombre de HP", "Prise", "Atténuateur", "Câble"},
		"Spanish": {"Zona", "Amplificador", "Canal", "Nº altavoces", "Toma", "Atenuador", "Cable"},
		"Italian": {"Zona", "Amplificatore", "Canale", "N. diffusori", "Presa", "Attenuatore", "Cavo"},
		"Dutch":   {"Zone", "Versterker", "Kanaal", "Aantal luidsprekers", "Aftakking", "Volumeregelaar", "Kabel"},
	} {
		form := func(zone, amp, channel, count, tap, control, cable string) string {
			out := ""
			for i, v := range []string{zone, amp, channel, count, tap, control, cable} {
				out += k[i] + " | " + v + "\n"
			}
			return out
		}
		one, two := form("Palm house", "V1", "1", "8", "10 W", "VC1 (100 W)", "110 m 2.5 mm²"), form("Shop", "V1", "2", "6", "3 W", "VC2 (12 W)", "60 m 1.5 mm²")
		for layout, file := range map[string]string{"sheets": "## A\n" + one + "## B\n" + two, "below each other": one + "|\n" + two, "without a gap": one + two} {
			j := wholeJob(t, file)
			want(t, name+", "+layout, describe(j), []string{"8 x 10 W zone Palm house control VC1 channel V1 / 1", "6 x 3 W zone Shop control VC2 channel V1 / 2"})
			var got []string
			for _, c := range j.Cables {
				got = append(got, fmt.Sprint(show(c.Length), " m ", show(c.Area), " mm²"))
			}
			want(t, name+", cables, "+layout, got, []string{"110 m 2.5 mm²", "60 m 1.5 mm²"})
		}
	}
	j := wholeJob(t, "Zone | Palm house\nFed from | V1/1 (120 W)\nLoudspeakers | 8 x horn @ 10 W\nAttenuator | VC1 (100 W)")
	want(t, "one form, loudspeakers in words", describe(j), []string{"8 x 10 W zone Palm house control VC1 channel V1 / 1"})
}
