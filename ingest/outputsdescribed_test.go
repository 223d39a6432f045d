package ingest

import (
	"strings"
	"testing"
)

// Lists of a rack name amplifiers and their outputs in words, and other units that take power among them. Common practice,
// no source.
func TestOutputsDescribedInARack(t *testing.T) {
	for _, w := range []string{
		"Tag / Zone / Room / Tap (W)|Position / Unit / Rated power / Zone fed|Power amp E1, output 1|Power amp E1, output 2|Power amp E2, output 1|Power supply",
		"Kürzel / Zone / Raum / Anzapfung (W)|Platz / Gerät / Nennleistung / Zone|Endstufe E1, Ausgang 1|Endstufe E1, Ausgang 2|Endstufe E2, Ausgang 1|Netzteil",
		"Repère / Zone / Local / Prise (W)|Position / Appareil / Puissance nominale / Zone|Ampli E1, sortie 1|Ampli E1, sortie 2|Ampli E2, sortie 1|Bloc d'alimentation",
		"Etiqueta / Zona / Sala / Toma (W)|Posición / Equipo / Potencia nominal / Zona conectada|Etapa E1, salida 1|Etapa E1, salida 2|Etapa E2, salida 1|Fuente de alimentación",
		"Sigla / Zona / Locale / Presa (W)|Posizione / Apparecchio / Potenza nominale / Zona|Finale E1, uscita 1|Finale E1, uscita 2|Finale E2, uscita 1|Alimentatore",
		"Label / Zone / Ruimte / Stand (W)|Positie / Omschrijving / Nominaal vermogen / Zone|Eindversterker E1, uitgang 1|Eindversterker E1, uitgang 2|Eindversterker E2, uitgang 1|Voeding 24 V",
	} {
		f := strings.Split(w, "|")
		j := wholeJob(t, strings.ReplaceAll(`
## A
Slate library, 100 V
|
`+f[0]+`
B-01 | Cellar | Depot | 6
B-02 | Cellar | Dock | 10
B-03 | Public | Desk | 3
B-04 | Public | Press | 1.5
B-05 | Hall | Stalls | 20
## B
`+f[1]+`
1 | `+f[2]+` | 60 W | Cellar
1 | `+f[3]+` | 60 W | Public
2 | `+f[4]+` | 120 W | Hall
3 | `+f[5]+` | 150 W |`, " / ", " | "))
		var got []string
		for _, l := range j.Loudspeakers {
			c := "on nothing"
			if l.Channel != nil {
				c = l.Channel.Label()
			}
			got = append(got, strings.Join(l.Tags, ",")+" "+c[max(0, len(c)-6):])
		}
		want(t, w, got, []string{"B-01 E1 / 1", "B-02 E1 / 1", "B-03 E1 / 2", "B-04 E1 / 2", "B-05 E2 / 1"})
		if n := len(j.Channels); n != 3 {
			t.Errorf("%s: %s", w, ratedOutputs(j))
		}
	}
}

// A spare amplifier feeds nothing, whatever the line of the row above, and the ventilation of a rack is no loudspeaker.
func TestSpareAmplifiersAmongOtherUnits(t *testing.T) {
	for _, w := range []string{
		"Tags / Line / Room / Qty / Tap W|Slot / Unit / Power / Line|Amplifier|spare|Ventilation",
		"Kürzel / Linie / Raum / Anzahl / Anzapfung W|Platz / Gerät / Leistung / Linie|Endstufe|Reserve|Lüftung",
		"Repères / Ligne / Local / Qté / Prise W|Place / Appareil / Puissance / Ligne|Ampli|de rechange|Ventilation",
		"Etiquetas / Línea / Sala / Cant. / Toma W|Unidad / Aparato / Potencia / Línea|Etapa|reserva|Ventilación",
		"Sigle / Linea / Ambiente / Q.tà / Presa W|Unità / Apparecchio / Potenza / Linea|Finale|scorta|Ventilazione",
		"Labels / Lijn / Ruimte / Aantal / Stand W|Plaats / Toestel / Vermogen / Lijn|Eindversterker|reserve|Ventilatie",
	} {
		f := strings.Split(w, "|")
		j := wholeJob(t, strings.ReplaceAll(`
## A
Slate theatre, 100 V
|
`+f[0]+`
D1-D4 | 1 | Dressing | 4 | 1.5
D5-D6 | 1 | Wings | 2 | 6
D7-D8 | 2 | Foyer | 2 | 10
D9-D10 | 2 | Stair | 2 | 3
## B
`+f[1]+`
U1-U2 | `+f[2]+` F1 | 60 W | 1
U3-U4 | `+f[2]+` F2 | 120 W | 2
U5 | `+f[2]+` F3 (`+f[3]+`) | 120 W |
U6 | `+f[4]+` | |`, " / ", " | "))
		var got []string
		for _, l := range j.Loudspeakers {
			label := "nothing"
			if l.Channel != nil {
				label = l.Channel.Label()
			}
			got = append(got, plain(float64(l.Tap.Low))+" W "+label)
		}
		want(t, w, got, []string{"1.5 W " + f[2] + " F1 / 1", "6 W " + f[2] + " F1 / 1", "10 W " + f[2] + " F2 / 2", "3 W " + f[2] + " F2 / 2"})
		for _, q := range j.Questions {
			t.Errorf("%s: asked %s", w, q.Text)
		}
	}
}
