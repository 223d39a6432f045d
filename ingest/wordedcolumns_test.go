package ingest

import (
	"strings"
	"testing"
)

// A column for each line, a loudspeaker in words in each cell. Common practice, no source.
func TestColumnsOfLoudspeakersInWords(t *testing.T) {
	for _, w := range []string{"Line amp horn ceiling total", "Linie Verstärker Horn Decke Summe", "Ligne ampli pavillon plafond total", "Línea etapa bocina techo total", "Linea ampli tromba soffitto tot.", "Lijn versterker hoorn plafond totaal"} {
		f := strings.Fields(w)
		r := strings.NewReplacer("LINE", f[0], "AMP", f[1], "HORN", f[2], "CEILING", f[3], "TOTAL", f[4])
		j := wholeJob(t, r.Replace(`
Grebe bus depot, what hangs on each line (100 V)
|
LINE 1 | LINE 2 | LINE 3
AMP A, 240 W | AMP B, 120 W | AMP C, 60 W
Yard north, HORN 30 W | Workshop, HORN 10 W | Crew room, CEILING 6 W
Yard north, HORN 30 W | Workshop, HORN 10 W | Corridor, CEILING 1,5 W
Ramp, HORN 15 W | Wash, HORN 10 W
 | Tyres, HORN 10 W
TOTAL 75 W | TOTAL 40 W | TOTAL 7,5 W
`))
		a, b, c := " channel "+f[1]+" A / 1", " channel "+f[1]+" B / 2", " channel "+f[1]+" C / 3"
		want(t, w, describe(j), []string{"1 x 30 W zone Yard north" + a, "1 x 10 W zone Workshop" + b, "1 x 6 W zone Crew room" + c, "1 x 30 W zone Yard north" + a, "1 x 10 W zone Workshop" + b,
			"1 x 1.5 W zone Corridor" + c, "1 x 15 W zone Ramp" + a, "1 x 10 W zone Wash" + b, "1 x 10 W zone Tyres" + b})
		want(t, w, ratedOutputs(j), []string{f[1] + " A / 1 240 W", f[1] + " B / 2 120 W", f[1] + " C / 3 60 W"})
	}
}
