package ingest

import (
	"fmt"
	"strings"
	"testing"
)

// A list without a header by amplifiers: titles say which amplifier it is before they name it, and how many outputs it
// has; count, kind and tap stand in one cell. Common practice, no source.
func TestAmplifiersCalledBeforeTheirNames(t *testing.T) {
	for _, titles := range []string{
		`Top amp - "AMP 1" - 2 channels, 300 W each|Bottom amp - "AMP 2" - 1 channel, 120 W`,
		`AMP 1 - 2 channels, 300 W each|AMP 2 - 1 channel, 120 W`,
		`Upper amp (AMP 1): 2 channels, 300 W each|Lower amp (AMP 2): 120 W`,
		`Top amp - “AMP 1” - 2 channels, 300 W each|Bottom amp - “AMP 2” - 120 W`,
		`Obere Endstufe - „AMP 1“ - 2 Kanäle, je 300 W|Untere Endstufe - „AMP 2“ - 1 Kanal, 120 W`,
		`Ampli du haut - « AMP 1 » - 2 voies, 300 W chacune|Ampli du bas - « AMP 2 » - 1 voie, 120 W`,
		`Etapa de arriba - "AMP 1" - 2 salidas, 300 W cada una|Etapa de abajo - "AMP 2" - 1 salida, 120 W`,
		`Finale in alto - "AMP 1" - 2 uscite, 300 W ciascuna|Finale in basso - "AMP 2" - 1 uscita, 120 W`,
		`Bovenste versterker - "AMP 1" - 2 uitgangen, elk 300 W|Onderste versterker - "AMP 2" - 1 uitgang, 120 W`,
	} {
		upper, lower, _ := strings.Cut(titles, "|")
		j := wholeJob(t, fmt.Sprintf(`
Elmfield landing stage - sound rack (all 70 volt)
|
%s
Ch 1 | Ice | 8 horns @ 30 W
Ch 2 | Bleachers | 10 speakers @ 15 W
| Boxes | 2 speakers @ 7.5 W
|
%s
Ch 1 | Lobby | 6 ceiling @ 5 W
| Store | 1 horn @ 15 W
`, upper, lower))
		want(t, titles, ratedOutputs(j), []string{"AMP 1 / 1 300 W", "AMP 1 / 2 300 W", "AMP 2 / 1 120 W"})
		want(t, titles, describe(j), []string{"8 x 30 W zone Ice channel AMP 1 / 1", "10 x 15 W zone Bleachers channel AMP 1 / 2",
			"2 x 7.5 W zone Boxes channel AMP 1 / 2", "6 x 5 W zone Lobby channel AMP 2 / 1", "1 x 15 W zone Store channel AMP 2 / 1"})
	}
}

// Titles of amplifiers with their outputs counted in words. Common practice, no source.
func TestOutputsCountedInTitles(t *testing.T) {
	for _, title := range []string{"Endstufe V1: 2 Kanäle, je 300 W", "Endstufe V1: zwei Kanäle mit je 300 W", "Amplifier V1: two channels of 300 W each"} {
		j := wholeJob(t, "Elmfield landing stage, 100 V\n|\n"+title+"\nCh 1 | Ice | 8 horns @ 30 W\nCh 2 | Bleachers | 10 horns @ 15 W\n|\nAmp V2: 120 W\nCh 1 | Lobby | 6 ceiling @ 5 W")
		name, _, _ := strings.Cut(title, ":")
		want(t, title, ratedOutputs(j), []string{name + " / 1 300 W", name + " / 2 300 W", "Amp V2 / 1 120 W"})
	}
}
