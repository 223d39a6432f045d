package ingest

import "testing"

// Lists of equipment at which the cables of the book begin rate amplifiers and controls, whatever their tags; what
// feeds the loudspeakers follows from the cables. Common practice, no source.
func TestEquipmentAtWhichCablesBegin(t *testing.T) {
	for _, c := range []struct{ cables, list, equipment string }{
		{"Cable | From | To | Size mm2 | Length m", "Tag | Location | Type | Qty | Power W", "Device | Output | Power W | Remarks"},
		{"Kabel-Nr. | von | nach | Querschnitt mm² | Länge m", "LS-Nr. | Standort | Ausführung | Anz. | Leistung W", "Gerät | Ausgang | Leistung W | Bemerkung"},
		{"Câble | De | Vers | Section mm² | Longueur m", "Repère | Local | Type | Nbre | Puissance W", "Appareil | Sortie | Puissance W | Remarques"},
		{"Cable | Desde | Hasta | Sección mm² | Longitud m", "Ref. | Ubicación | Tipo | Cant. | Potencia W", "Equipo | Salida | Potencia W | Observaciones"},
		{"Cavo | Da | A | Sezione mm² | Lunghezza m", "Sigla | Posizione | Tipo | Q.tà | Potenza W", "Apparecchio | Uscita | Potenza W | Note"},
		{"Kabel | Van | Naar | Doorsnede mm² | Lengte m", "Code | Plaats | Type | Aantal | Vermogen W", "Toestel | Uitgang | Vermogen W | Opmerking"},
	} {
		j := wholeJob(t, "## Loudspeakers\nGarden of moss, project 5520, 100 V\n|\n"+c.list+"\nL01 | Palm house | A | 1 | 10\nL02 | Fern house | A | 2 | 6\nL03 | Seminar | B | 2 | 3\nL04 | Rose bed | B | 4 | 15\n"+
			"## Cables\n"+c.cables+"\nK01 | PV1.1 | L01 | 2.5 | 64\nK02 | L01 | L02 | 2.5 | 22\nK03 | PV1.2 | RG1 | 1.5 | 8\nK04 | RG1 | L03 | 1.5 | 14\nK05 | PV2.1 | L04 | 4 | 128\n"+
			"## Equipment\n"+c.equipment+"\nPV1 | 1 | 120\nPV1 | 2 | 60\nPV2 | 1 | 240\nRG1 | | 20 | Seminar")
		want(t, c.equipment, describe(j), []string{"L01 1 x 10 W zone Palm house channel PV1 / 1", "L02 2 x 6 W zone Fern house channel PV1 / 1", "L03 2 x 3 W zone Seminar control RG1 channel PV1 / 2", "L04 4 x 15 W zone Rose bed channel PV2 / 1"})
		want(t, c.equipment, ratedOutputs(j), []string{"PV1 / 1 120 W", "PV1 / 2 60 W", "PV2 / 1 240 W"})
		want(t, c.equipment, []string{controlsOf(j)}, []string{"RG1 20 W x1"})
	}
	j := wholeJob(t, "## Loudspeakers\nGarden of moss, 100 V\n|\nTag | Location | Qty | W\nL01 | Palm house | 1 | 10\nL02 | Fern house | 2 | 6\n## Cables\nCable | From | To | Size mm2 | Length m\nK01 | PV1 | L01 | 2.5 | 64\nK02 | PV2 | L02 | 2.5 | 22\n## Rack\nDevice | Power W\nPV1 | 120\nPV2 | 60")
	want(t, "one output each", ratedOutputs(j), []string{"PV1 / 1 120 W", "PV2 / 1 60 W"})
	want(t, "one output each", describe(j), []string{"L01 1 x 10 W zone Palm house channel PV1 / 1", "L02 2 x 6 W zone Fern house channel PV2 / 1"})
	j = wholeJob(t, "## Loudspeakers\nGarden of moss, 100 V\n|\nTag | Location | Qty | W\nL01 | Palm house | 1 | 10\nL02 | Fern house | 2 | 6\n## Cables\nCable | From | To | Size mm2 | Length m\nK01 | AMP1 | L01 | 2.5 | 64\nK02 | L01 | L02 | 2.5 | 22\nK03 | L02 | L05 | 2.5 | 22\n## More\nTag | W\nL05 | 20\nL06 | 6")
	if n := len(j.Loudspeakers); n != 4 {
		t.Errorf("loudspeakers of a second list: %d rows", n)
	}
}
