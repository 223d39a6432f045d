package ingest

import (
	"fmt"
	"strings"
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
			var out strings.Builder
			for i, v := range []string{zone, amp, channel, count, tap, control, cable} {
				out.WriteString(k[i] + " | " + v + "\n")
			}
			return out.String()
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

// The loudspeakers of a form may take several lines, each with the same key. Common practice, no source.
func TestFormsOfSeveralLoudspeakers(t *testing.T) {
	for _, k := range []string{
		"Zone#Loudspeakers#ceiling#wall#tap#Amplifier#output#Attenuator", "Zone#Lautsprecher#Decke#Wand#Abgriff#Verstärker#Ausgang#Lautstärkeregler",
		"Zone#Haut-parleurs#plafonniers#enceintes murales#prise#Amplificateur#sortie#Atténuateur", "Zona#Altavoces#de techo#de pared#toma#Amplificador#salida#Atenuador",
		"Zona#Diffusori#a soffitto#a parete#presa#Amplificatore#uscita#Attenuatore", "Zone#Luidsprekers#plafond#wand#stand#Versterker#uitgang#Volumeregelaar",
	} {
		w := strings.Split(k, "#")
		one := w[0] + " | Map room\n" + w[1] + " | 4 x " + w[2] + ", " + w[4] + " 3 W\n" + w[1] + " | 2 x " + w[3] + ", " + w[4] + " 6 W\n" + w[5] + " | V1, " + w[6] + " 2\n" + w[7] + " | VC2, 36 W\n"
		two := w[0] + " | Yard\n" + w[1] + " | 5 x " + w[3] + ", " + w[4] + " 10 W\n" + w[5] + " | V1, " + w[6] + " 1\n" + w[7] + " | VC1, 100 W\n"
		rows := []string{"4 x 3 W zone Map room control VC2 channel V1 / 2", "2 x 6 W zone Map room control VC2 channel V1 / 2"}
		yard := "5 x 10 W zone Yard control VC1 channel V1 / 1"
		want(t, w[1], describe(wholeJob(t, "## A\n"+one+"## B\n"+two)), append(rows, yard))
		want(t, w[1]+", below each other", describe(wholeJob(t, two+"|\n"+one)), append([]string{yard}, rows...))
	}
}
