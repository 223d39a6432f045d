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
