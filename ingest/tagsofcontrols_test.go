package ingest

import (
	"strings"
	"testing"
)

// Lists of controls that no row of the loudspeakers names: the title, the tags or the header of these tell them; what
// hangs behind them, their places or the items of the loudspeakers. Common practice, no source.
func TestListsOfTagsOfControls(t *testing.T) {
	for _, w := range []string{
		"No. / Room / Qty / Tap (W) / Line|Line 1|Ln 1|Volume controls|Place / Ref. / W / Checked",
		"Nr. / Raum / Anzahl / Anzapfung (W) / Linie|Ltg 1|Linie 1|Lautstärkeregler|Raum / Kürzel / W / Prüfung",
		"N° / Local / Qté / Réglage (W) / Ligne|LIG-1|Ligne 1|Atténuateurs|Local / Repère / W / Essai",
		"Nº / Sala / Cant. / Toma (W) / Línea|LIN-1|Línea 1|Reguladores de volumen|Sala / Ref. / W / Prueba",
		"N. / Locale / Q.tà / Presa (W) / Linea|Lin. 1|Linea 1|Attenuatori|Locale / Sigla / W / Prova",
		"Nr. / Ruimte / Aantal / Stand (W) / Lijn|Lijn 1|lijn 1|Volumeregelaars|Ruimte / Ref. / W / Proef",
	} {
		f := strings.Split(w, "|")
		r := strings.NewReplacer("HEADER", f[0], "LINE", f[1], "OUTPUT", f[2], "CONTROLS", f[3], "PLACES", f[4])
		j := wholeJob(t, strings.ReplaceAll(r.Replace(`
## A
Teal hall, 100 V
|
HEADER
1 | Gym | 2 | 6 | LINE
2 | Store | 1 | 1.5 | LINE
3 | Court | 4 | 3 | LINE
## B
Line | Amplifier | Output | W
OUTPUT | AX1 | 1 | 120
|
|
CONTROLS
PLACES
Gym | K1 | 24 | good
Store | K2 | 6 | loose`), " / ", " | "))
		want(t, w, describe(j), []string{"2 x 6 W zone Gym control K1 channel AX1 / 1", "1 x 1.5 W zone Store control K2 channel AX1 / 1", "4 x 3 W zone Court channel AX1 / 1"})
		if got, want := controlsOf(j), "K1 24 W x1, K2 6 W x1"; got != want {
			t.Errorf("%s: controls %s, want %s", w, got, want)
		}
	}
}

// The tags of a list are a word for controls with a number, and numbers under a header for loudspeakers are the items
// behind each where these are at the same places. Common practice, no source.
func TestControlsOfItemsAtTheirPlaces(t *testing.T) {
	for _, w := range []string{
		"No. / Room / Qty / Tap (W) / Line|Tag / Place / LS no. / Power",
		"Nr. / Raum / Anzahl / Anzapfung (W) / Linie|Kennzeichen / Ort / LS-Nr. / Leistung",
		"N° / Local / Qté / Réglage (W) / Ligne|Repère / Emplacement / N° HP commandés / Puissance",
		"Nº / Sala / Cant. / Toma (W) / Línea|Ref. / Sitio / Nº altavoces / Potencia",
	} {
		f := strings.Split(w, "|")
		r := strings.NewReplacer("HEADER", f[0], "LIST", f[1])
		j := wholeJob(t, strings.ReplaceAll(r.Replace(`
## A
Teal hall, 100 V
|
HEADER
1 | Gym | 2 | 6 | L1
2 | Gym | 1 | 1.5 | L1
3 | Court | 4 | 3 | L1
## B
LIST
VC1 | Gym, north wall | 1 | 24 W
VC2 | Court | 3 | 30 W`), " / ", " | "))
		want(t, w, describe(j), []string{"2 x 6 W zone Gym control VC1 channel L1", "1 x 1.5 W zone Gym channel L1", "4 x 3 W zone Court control VC2 channel L1"})
		if got, want := controlsOf(j), "VC1 24 W x1, VC2 30 W x1"; got != want {
			t.Errorf("%s: controls %s, want %s", w, got, want)
		}
	}
}

// Loudspeakers with tags of their own that say what they are, or under a title for them, are no controls.
func TestTagsThatAreNoControls(t *testing.T) {
	for _, list := range []string{"Tag | Place | W\nS3 | Gym | 6 W\nS4 | Court | 6 W", "Tag | Place | Type | W\nVC3 | Gym | horn | 6 W\nVC4 | Court | horn | 6 W"} {
		j := wholeJob(t, "\n## A\nTeal hall, 100 V\n|\nTag | Room | Tap (W) | Line\nS1 | Hall | 6 | L1\nS2 | Yard | 3 | L1\n## B\n"+list)
		if len(j.Loudspeakers) != 4 || len(j.Controls) > 0 {
			t.Errorf("%s: %v, controls %s", list, describe(j), controlsOf(j))
		}
	}
}
