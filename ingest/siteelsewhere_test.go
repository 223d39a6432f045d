package ingest

import "testing"

// Sites and job numbers that no title states plainly. Common practice, no source.
func TestSitesElsewhere(t *testing.T) {
	const list = "Room | Qty | Tap\nStacks | 4 | 6 W\nYard | 2 | 15 W"
	for _, c := range []struct{ drawing, site, number string }{
		{list + "\n|\nTown library Fernhill, amplifier 60 W / 100 V in the office", "Town library Fernhill", ""},
		{list + "\n|\nPiscine municipale du Val, demande 887", "Piscine municipale du Val", "887"},
		{list + "\n|\nStazione di Campo Alto, rilievo del 9 maggio, ordine 33/B", "Stazione di Campo Alto", "33/B"},
		{"Survey Fernhill Ice Rink, job 4412, one amplifier 240 W (100 V)\n|\n" + list, "Fernhill Ice Rink", "4412"},
		{"Zwembad De Beek, omroep\nWerkorder 44-1187\n|\n" + list, "Zwembad De Beek", "44-1187"},
		{"Reitanlage Moosgrund\nGruppenliste Beschallung, Stand Mai 2009\n|\n" + list, "Reitanlage Moosgrund", ""},
		{"## Cover\nJob | 1742\nClient | Fernhill Livery Stables\n|\n## List\n" + list, "Fernhill Livery Stables", "1742"},
		{"## Rapport\nRapport | V20-318\nSite | Gare de Fernhill\n|\n## Liste\n" + list, "Gare de Fernhill", "V20-318"},
		{"JARDÍN BOTÁNICO DE PEÑA | | | EPA-62\nDocumentación final de obra: altavoces | | | Rev. C\n|\nSala | Tipo | Cant. | Toma\nA | techo | 4 | 6 W\nB | techo | 2 | 3 W", "JARDÍN BOTÁNICO DE PEÑA", "EPA-62"},
		{"COMMESSA | SITO | ZONA | N. | TAP W\n2010-77 | Deposito Fontana | 01 | 8 | 15\n2010-77 | Deposito Fontana | 02 | 4 | 10", "Deposito Fontana", "2010-77"},
		{"Verbale di manutenzione periodica n. 3306\nCliente / impianto: | Teatro comunale di Alto, diffusione nei locali\n|\n" + list, "Teatro comunale di Alto", "3306"},
	} {
		j := wholeJob(t, c.drawing)
		if j.Site.Value != c.site || j.Number.Value != c.number {
			t.Errorf("%s: site %q number %q, want %q and %q", c.drawing, j.Site.Value, j.Number.Value, c.site, c.number)
		}
	}
}

// What a note says of a room, of the work or of two buildings names no site.
func TestNotesThatNameNoSite(t *testing.T) {
	const list = "Room | Qty | Tap\nReading hall | 4 | 6 W\nYard | 2 | 15 W"
	for _, drawing := range []string{
		list + "\n|\nReading hall, one control by the door",
		list + "\n|\nHall, no control",
		"## Block A\n" + list + "\n|\n## Block B\n" + list,
	} {
		if j := wholeJob(t, drawing); j.Site.Because != "the job's name stands for the site" {
			t.Errorf("%s: site %q (%s)", drawing, j.Site.Value, j.Site.Because)
		}
	}
}
