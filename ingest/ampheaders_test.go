package ingest

import (
	"strings"
	"testing"
)

// The header over the names of amplifiers may tell their line voltage. Common practice, no source.
func TestLineVoltageOverAmplifiers(t *testing.T) {
	for _, w := range []string{
		"Line | Place | Qty | Tap#Line | Amplifier (100 V) | Power", "Linie | Ort | Anzahl | Anzapfung#Linie | Verstärker (100 V) | Leistung",
		"Ligne | Local | Qté | Prise#Ligne | Amplificateur (100 V) | Puissance", "Línea | Sala | Cant. | Toma#Línea | Amplificador (100 V) | Potencia",
		"Linea | Locale | Q.tà | Presa#Linea | Amplificatore (100 V) | Potenza", "Lijn | Ruimte | Aantal | Stand#Lijn | Versterker (100 V) | Vermogen",
	} {
		list, amps, _ := strings.Cut(w, "#")
		j := wholeJob(t, `
## A
Slate bus station
|
`+list+`
1 | Bays | 6 | 10 W
1 | Shelter | 2 | 10 W
2 | Hall | 8 | 3 W
2 | Desk | 2 | 1.5 W
## B
`+amps+`
1 | AMP-A | 120 W
2 | AMP-B | 60 W`)
		for _, l := range j.Loudspeakers {
			if v, ok := j.LineVoltsOf(l.Channel).Exact(); !ok || v != 100 || l.Channel == nil {
				t.Errorf("%s: %s", w, describe(j))
				break
			}
		}
	}
}
