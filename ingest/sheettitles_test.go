package ingest

import "testing"

// A sheet for each zone, some of which are called like buildings. Common practice, no source.
func TestSheetsCalledLikeBuildings(t *testing.T) {
	for _, names := range [][3]string{
		{"Block A", "Block B", "Yard + school"},
		{"Gebäude 1", "Gebäude 2", "Reitplatz"},
		{"Bâtiment A", "Manège", "Bâtiment B"},
	} {
		j := wholeJob(t, "## Rack\nAmplifier | Output | Serves | Max. W\nM1 | 1 | "+names[0]+" | 60\nM1 | 2 | "+names[1]+" | 60\nM1 | 3 | "+names[2]+" | 60\n"+
			"## "+names[0]+"\nTag | Position | Type | W\nA-01 | Office | ceiling | 5\nA-02 | Store | ceiling | 5\n"+
			"## "+names[1]+"\nTag | Position | Type | W\nB-01 | Corridor | ceiling | 3\nB-02 | Wash bay | ceiling | 3\n"+
			"## "+names[2]+"\nTag | Position | Type | W\nC-01 | North | horn | 10\nC-02 | South | horn | 10\n")
		want(t, names[0], describe(j), []string{
			"A-01 1 x 5 W zone " + names[0] + " channel M1 / 1", "A-02 1 x 5 W zone " + names[0] + " channel M1 / 1",
			"B-01 1 x 3 W zone " + names[1] + " channel M1 / 2", "B-02 1 x 3 W zone " + names[1] + " channel M1 / 2",
			"C-01 1 x 10 W zone " + names[2] + " channel M1 / 3", "C-02 1 x 10 W zone " + names[2] + " channel M1 / 3"})
	}
}

// Sheets with the title of the job at the left and their own name again at the right, over headers of one line: the
// name is no group of columns, and the zone of its list, also where it is a floor. Common practice, no source.
func TestTitleAtTheLeftAndNameOfTheSheetAtTheRight(t *testing.T) {
	for _, c := range []struct{ title, heads, a, b, c string }{
		{"Mining museum of Arrow Valley (works MM-09)", "Room | Name | No. of speakers | W each | Line", "Basement", "Ground floor", "Upper floor"},
		{"Museo Minero de Arroyohondo (obra MM-09)", "Local | Nombre | Nº altavoces | W cada uno | Línea", "Planta sótano", "Planta baja", "Planta alta"},
		{"Schule am Anger (Auftrag MM-09)", "Raum | Bezeichnung | Anzahl Lautsprecher | W | Linie", "Haus Nord", "Haus Süd", "Hof"},
		{"Museo dei minerali (commessa MM-09)", "Cod. locale | Locale | N. diffusori | W cad. | Linea", "Piano terra", "Piano rialzato", "Ammezzato"},
	} {
		list := func(name, n string) string {
			return "\n## " + name + "\n" + c.title + " | | | " + name + "\n" + c.heads + "\n" + n + ".01 | Archive | 2 | 3 | " + n + "\n" + n + ".02 | Offices | 5 | 6 | " + n + "\n" + n + ".03 | Balcony | 2 | 10 | " + n
		}
		j := wholeJob(t, list(c.a, "1")+list(c.b, "2")+list(c.c, "3"))
		var zones []string
		for _, z := range j.Zones {
			zones = append(zones, z.Name)
		}
		want(t, c.title, zones, []string{c.a, c.b, c.c})
		if n := len(j.Loudspeakers); n != 9 {
			t.Errorf("%s: %d rows", c.title, n)
		}
	}
}
