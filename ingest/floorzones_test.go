package ingest

import (
	"strings"
	"testing"
)

// Floors and the grounds head the rooms of one list: they are its zones. Common practice, no source.
func TestFloorsBesideOtherZones(t *testing.T) {
	for _, c := range []struct{ head, titles string }{
		{"Room | No. | Type | Tap", "Basement|Ground floor|Grounds"},
		{"Raum | Anzahl | Typ | Anzapfung", "Untergeschoss|Freigelände|Erdgeschoss"},
		{"Local | Quantité | Type | Prise", "Rez-de-chaussée|1er étage|Extérieur"},
		{"Sala | Cantidad | Tipo | Toma", "Planta baja|Primera planta|Patio"},
		{"Locale | Quantità | Tipo | Presa", "Cortile|Piano terra|Primo piano"},
		{"Ruimte | Aantal | Type | Aftakking", "Begane grond|Eerste verdieping|Buitenterrein"},
	} {
		titles := strings.Split(c.titles, "|")
		j := wholeJob(t, "Slate museum, 100 V\n|\n"+c.head+
			"\n"+titles[0]+"\nR1 | 2 | W6 | 3 W\nR2 | 1 | W6 | 6 W\n"+titles[1]+"\nR3 | 4 | W6 | 6 W\nR4 | 3 | W6 | 3 W\n"+titles[2]+"\nR5 | 2 | H10 | 10 W\n")
		var got []string
		for _, l := range j.Loudspeakers {
			got = append(got, l.Room.Value+" in "+l.Zone.Name)
		}
		want(t, c.titles, got, []string{"R1 in " + titles[0], "R2 in " + titles[0], "R3 in " + titles[1], "R4 in " + titles[1], "R5 in " + titles[2]})
	}
}

// Zones stand at the head of floors: the floors are none.
func TestZonesOfFloors(t *testing.T) {
	j := wholeJob(t, "Slate museum, 100 V\n|\nRoom | No. | Type | Tap\nGround floor\nNorth side\nR1 | 2 | W6 | 3 W\nSouth side\nR2 | 1 | W6 | 6 W\n"+
		"First floor\nNorth gallery\nR3 | 4 | W6 | 6 W\n")
	var got []string
	for _, l := range j.Loudspeakers {
		got = append(got, l.Room.Value+" in "+l.Zone.Name)
	}
	want(t, "zones of floors", got, []string{"R1 in North side", "R2 in South side", "R3 in North gallery"})
}
