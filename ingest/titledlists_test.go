package ingest

import (
	"strings"
	"testing"
)

// A list without a header, a blank line before each title with its place and its output. Common practice, no source.
func TestListsWithoutAHeaderUnderTitles(t *testing.T) {
	for _, w := range []string{
		"GROUND FLOOR|HALL|BACKSTAGE|output|wall|horn|on the 60 W volume control by the door|on the same volume control",
		"ERDGESCHOSS|HALLE|HINTERBÜHNE|Ausgang|Wand|Horn|am 60 W Lautstärkeregler bei der Tür|am selben Regler",
		"REZ-DE-CHAUSSÉE|GRANDE HALLE|COULISSES|sortie|mural|pavillon|sur l'atténuateur 60 W près de la porte|sur le même atténuateur",
		"PLANTA BAJA|NAVE|BASTIDORES|salida|pared|bocina|en el atenuador de 60 W junto a la puerta|en el mismo atenuador",
		"PIANO TERRA|SALONE|RETROPALCO|uscita|parete|tromba|su regolatore da 60 W vicino alla porta|sullo stesso regolatore",
		"BEGANE GROND|HAL|COULISSEN|uitgang|wand|hoorn|op volumeregelaar van 60 W bij de deur|op dezelfde volumeregelaar",
	} {
		f := strings.Split(w, "|")
		r := strings.NewReplacer("GROUND", f[0], "HALL", f[1], "BACK", f[2], "OUT", f[3], "WALL", f[4], "HORN", f[5], "OWN", f[6], "SAME", f[7])
		j := wholeJob(t, r.Replace(`
Grebe corn exchange
100 V
|
GROUND, OUT 1
Desk | 1 WALL | 3 W
Porch | 4 WALL | 3 W
Yard | 1 HORN | 10 W
|
HALL, OUT 2
Middle | 6 WALL | 6 W | OWN
Under the balcony | 4 WALL | 3 W | SAME
|
BACK, OUT 3
Dock | 2 HORN | 10 W
`))
		want(t, w, describe(j), []string{"1 x 3 W zone " + f[0] + " channel 1", "4 x 3 W zone " + f[0] + " channel 1", "1 x 10 W zone " + f[0] + " channel 1",
			"6 x 6 W zone " + f[1] + " control control (Middle) channel 2", "4 x 3 W zone " + f[1] + " control control (Middle) channel 2", "2 x 10 W zone " + f[2] + " channel 3"})
	}
}

// A title for each floor with its amplifier and what that gives, over headers that come again; some floors have a name that
// is no word for one. Common practice, no source.
func TestFloorsWithAmplifiersOverRepeatedHeaders(t *testing.T) {
	for _, w := range []string{
		"GROUND FLOOR, amplifier AP1 of 120 W|HALL, amplifier AP2 of 60 W|FIRST FLOOR, amplifier AP3, 60 W|Room / Speakers / Tap (W) / Remarks",
		"ERDGESCHOSS, Verstärker AP1 mit 120 W|HALLE, Verstärker AP2 mit 60 W|OBERGESCHOSS, Verstärker AP3, 60 W|Raum / Lautsprecher / Anzapfung (W) / Bemerkung",
		"REZ-DE-CHAUSSÉE, ampli AP1 de 120 W|GRANDE HALLE, ampli AP2 de 60 W|ÉTAGE, ampli AP3, 60 W|Local / Haut-parleurs / Prise (W) / Remarques",
		"PLANTA BAJA, etapa AP1 de 120 W|NAVE, etapa AP2 de 60 W|PRIMERA PLANTA, etapa AP3, 60 W|Sala / Altavoces / Toma (W) / Observaciones",
		"PIANO TERRA, amplificatore AP1 da 120 W|PRIMO PIANO, amplificatore AP2 da 60 W|SECONDO PIANO, amplificatore AP3, 60 W|Locale / Diffusori / Presa (W) / Osservazioni",
		"BEGANE GROND, versterker AP1 van 120 W|HAL, versterker AP2 van 60 W|VERDIEPING, versterker AP3, 60 W|Ruimte / Luidsprekers / Stand (W) / Opmerking",
	} {
		f := strings.Split(w, "|")
		r := strings.NewReplacer("GROUND", f[0], "MIDDLE", f[1], "UPPER", f[2], "HEADER", strings.ReplaceAll(f[3], "/", "|"))
		zones := make([]string, 3)
		for i := range zones {
			zones[i], _, _ = strings.Cut(f[i], ",")
		}
		j := wholeJob(t, r.Replace(`
Grebe school
100 V
|
GROUND
HEADER
Desk | 1 | 3 |
Gym | 4 | 10 | over the bars
Bar | 2 | 6 |
|
MIDDLE
HEADER
Class 1 | 3 | 3 |
Corridor | 2 | 3 |
|
UPPER
HEADER
Class 2 | 3 | 6 |
Lab | 2 | 3 |
`))
		want(t, w, describe(j), []string{"1 x 3 W zone " + zones[0] + " channel AP1 / 1", "4 x 10 W zone " + zones[0] + " channel AP1 / 1", "2 x 6 W zone " + zones[0] + " channel AP1 / 1",
			"3 x 3 W zone " + zones[1] + " channel AP2 / 1", "2 x 3 W zone " + zones[1] + " channel AP2 / 1", "3 x 6 W zone " + zones[2] + " channel AP3 / 1", "2 x 3 W zone " + zones[2] + " channel AP3 / 1"})
		want(t, w, ratedOutputs(j), []string{"AP1 / 1 120 W", "AP2 / 1 60 W", "AP3 / 1 60 W"})
	}
}
