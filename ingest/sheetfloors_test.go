package ingest

import "testing"

// Sheets for each floor, with the name of the job at the left of the first line and that of the sheet at the right. Common
// practice, no source.
func TestSheetsNamedAtTheRight(t *testing.T) {
	const head = "Local | Nombre | Nº altavoces | W cada uno | Línea\n"
	j := wholeJob(t, "## Planta alta\nMuseo del Valle (obra MV-3) | | | Planta alta\n"+head+"A.01 | Archivo | 2 | 3 | 2\nA.02 | Taller | 1 | 6 | 2\n|\n"+
		"## Planta baja\nMuseo del Valle (obra MV-3) | | | Planta baja\n"+head+"B.01 | Entrada | 4 | 3 | 1\nB.02 | Sala | 6 | 3 | 1\n")
	want(t, "floors", describe(j), []string{"2 x 3 W zone Planta alta channel 2", "1 x 6 W zone Planta alta channel 2", "4 x 3 W zone Planta baja channel 1", "6 x 3 W zone Planta baja channel 1"})
}

// Sheets for each floor, each below a title that is its floor, and the title of the whole job above the first alone: the rooms
// are in no zone called like a floor. Common practice, no source.
func TestSheetsOfFloorsBelowOneTitle(t *testing.T) {
	for _, c := range []struct{ title, lower, upper, head string }{
		{"Town hall of Lowmere - sound", "Ground floor", "First floor", "Room | Qty | Tap | Circuit"},
		{"Gemeindeamt Niedermoos - Beschallung", "Erdgeschoss", "Obergeschoss", "Raum | Anzahl | Leistung | Linie"},
		{"Maison communale de Bassemare - sono", "rez-de-chaussée", "premier étage", "Local | Nombre | Puissance | Ligne"},
		{"Ayuntamiento de Vallebajo - megafonía", "Planta baja", "Planta primera", "Local | Cantidad | Toma | Línea"},
		{"Municipio di Pianbasso - diffusione", "Piano terra", "Primo piano", "Locale | Quantità | Presa | Linea"},
		{"Gemeentehuis Laagmeer - omroep", "Begane grond", "Eerste verdieping", "Ruimte | Aantal | Tap | Lijn"},
	} {
		j := wholeJob(t, "## Lower\n"+c.title+"\n"+c.lower+"\n|\n"+c.head+"\nHall | 4 | 6 W | 1\nCourt | 3 | 3 W | 1\n## Upper\n"+c.upper+"\n|\n"+c.head+"\nCouncil | 8 | 6 W | 2\nPassage | 5 | 3 W | 2\n")
		want(t, c.title, describe(j), []string{"4 x 6 W zone Hall channel 1", "3 x 3 W zone Court channel 1", "8 x 6 W zone Council channel 2", "5 x 3 W zone Passage channel 2"})
	}
}
