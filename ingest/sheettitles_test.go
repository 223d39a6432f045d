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
