package ingest

import "testing"

// Columns headed by what turns loudspeakers down name controls, with where each is behind; an amplifier that one sentence
// places has the outputs that the next one counts. Common practice, no source.
func TestColumnsOfWhatTurnsDown(t *testing.T) {
	for _, c := range []struct{ amp, head, first, second string }{
		{"The amplifier is in the plant room. Four outputs at 100 V, 120 W each.", "Output | Where | How many | Set to | To turn it down", "knob B1 (60 W) in the booth", "knob B2 (10 W) behind the door"},
		{"Der Verstärker steht im Technikraum. Vier Ausgänge mit 100 V, je 120 W.", "Ausgang | Wo | Anzahl | Eingestellt auf | Zum Leiserstellen", "Knopf B1 (60 W) in der Kabine", "Knopf B2 (10 W) hinter der Tür"},
		{"L'ampli est dans le local technique. Quatre sorties en 100 V, 120 W chacune.", "Sortie | Où | Combien de HP | Réglés sur | Pour baisser le son", "bouton B1 (60 W) dans la cabine", "bouton B2 (10 W) derrière la porte"},
		{"El amplificador está en la sala técnica. Cuatro salidas de 100 V, 120 W cada una.", "Salida | Dónde | Cantidad | Puesto en | Para bajar el volumen", "mando B1 (60 W) en la cabina", "mando B2 (10 W) tras la puerta"},
		{"L'amplificatore è nel locale tecnico. Quattro uscite a 100 V, 120 W ciascuna.", "Uscita | Dove | Quantità | Impostato su | Per abbassare il volume", "manopola B1 (60 W) in cabina", "manopola B2 (10 W) dietro la porta"},
		{"De versterker staat in de machinekamer. Vier uitgangen op 100 V, elk 120 W.", "Uitgang | Waar | Aantal | Ingesteld op | Om zachter te zetten", "knop B1 (60 W) in de cabine", "knop B2 (10 W) achter de deur"},
	} {
		j := wholeJob(t, "Ice hall\n"+c.amp+"\n|\n"+c.head+"\n1 | Ice | 4 | 10 W |\n2 | Stand | 6 | 6 W | "+c.first+"\n3 | Lobby | 3 | 3 W | "+c.second+"\n4 | First aid | 1 | 3 W |")
		want(t, c.head, []string{controlsOf(j)}, []string{"B1 60 W x1, B2 10 W x1"})
		want(t, c.head, ratedOutputs(j), []string{"1 120 W", "2 120 W", "3 120 W", "4 120 W"})
		if len(j.Amplifiers) != 1 {
			t.Errorf("%s: %d amplifiers", c.amp, len(j.Amplifiers))
		}
	}
}
