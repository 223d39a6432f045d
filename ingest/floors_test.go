package ingest

import (
	"strings"
	"testing"
)

// Outputs name floors otherwise than the loudspeakers do. Common practice, no source.
func TestOutputsOfFloors(t *testing.T) {
	for _, c := range []struct {
		head, feeds    string
		floors, served [3]string
	}{
		{"Floor | Room | Qty | Watts", "Feeds", [3]string{"B", "G", "1"}, [3]string{"B", "Ground floor", "1st floor"}},
		{"Floor | Room | Qty | Watts", "Feeds", [3]string{"Level -1", "GF", "Level 1"}, [3]string{"Basement", "Ground floor (GF)", "Upstairs"}},
		{"Geschoss | Ort | Anzahl | Watt", "Speist", [3]string{"UG", "EG", "OG"}, [3]string{"Untergeschoss", "Erdgeschoss", "1. Obergeschoss"}},
		{"Étage | Local | Qté | Watts", "Alimente", [3]string{"R-1", "RDC", "R+1"}, [3]string{"Sous-sol (R-1)", "Rez-de-chaussée", "Étage"}},
		{"Planta | Sala | Cantidad | Vatios", "Alimenta", [3]string{"-1", "0", "1"}, [3]string{"Planta sótano", "Planta baja", "Planta 1"}},
		{"Piano | Locale | Quantità | Watt", "Alimenta", [3]string{"Interrato", "PT", "P1"}, [3]string{"Piano interrato", "Piano terra", "P1"}},
		{"Verdieping | Ruimte | Aantal | Watt", "Voedt", [3]string{"kelder", "BG", "1e verd."}, [3]string{"Kelder", "Begane grond", "1e verdieping"}},
	} {
		j := wholeJob(t, c.head+"\n"+c.floors[0]+" | Store | 2 | 3\n"+c.floors[1]+" | Foyer | 4 | 3\n"+c.floors[2]+" | Atrium | 2 | 10\n|\n"+
			"## Rack\nAmp | Output | "+c.feeds+" | Max. W\nE1 | 1 | "+c.served[0]+" | 60\nE1 | 2 | "+c.served[1]+" | 60\nE1 | 3 | "+c.served[2]+" | 60\n")
		want(t, c.served[1], describe(j), []string{"2 x 3 W zone Store channel E1 / 1", "4 x 3 W zone Foyer channel E1 / 2", "2 x 10 W zone Atrium channel E1 / 3"})
	}
}

// Two floors on one output; a floor that two outputs name, one of several above the ground, or one that is not there is on none.
func TestOutputsOfSomeFloors(t *testing.T) {
	const list = "Geschoss | Ort | Anzahl | Watt\nUG | Store | 2 | 3\nEG | Foyer | 4 | 3\n1. OG | Atrium | 2 | 10\n2. OG | Attic | 1 | 10\n|\n"
	for _, c := range []struct {
		served string
		want   string // the outputs of the four
	}{
		{"Keller + Erdgeschoss | Obergeschoss 1 | Obergeschoss 2", "1 1 2 3"},
		{"Erdgeschoss | 1. Stock | 1. Stock", "- 1 - -"},
		{"Untergeschoss | EG | Obergeschoss", "1 2 - -"},
		{"3. OG | 1. UG | Erdgeschoss", "2 3 - -"},
	} {
		f := strings.Split(c.served, " | ")
		j := wholeJob(t, list+"## Rack\nVerstärker | Ausgang | Speist | Max. W\nV1 | 1 | "+f[0]+" | 60\nV1 | 2 | "+f[1]+" | 60\nV1 | 3 | "+f[2]+" | 60\n")
		var got []string
		for _, l := range j.Loudspeakers {
			if got = append(got, "-"); l.Channel != nil {
				got[len(got)-1] = l.Channel.Name
			}
		}
		if s := strings.Join(got, " "); s != c.want {
			t.Errorf("%s: %s, want %s", c.served, s, c.want)
		}
	}
}
