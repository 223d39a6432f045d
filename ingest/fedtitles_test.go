package ingest

import "testing"

// Titles of zones may say what feeds them, how many outputs that has, what each gives and
// which of them it is; later ones say "also". Common practice, no source.
func TestTitlesOfZonesSayWhatFeedsThem(t *testing.T) {
	for amp, sheet := range map[string]string{
		"Endstufe": `
Messehalle Moosach, ELA 100 V
Zone 1 Halle, gespeist von Endstufe 1 (2 x 240 W) Kanal A
Stk | Ort | Watt
6 | Tor | 15
Zone 2 Büros, gespeist von Endstufe 1 Kanal B
Stk | Ort | Watt
4 | Flur | 3
Zone 3 Hof, gespeist von Endstufe 2 (1 x 160 W)
Stk | Ort | Watt
3 | Rampe | 10
Zone 4 Dach, gespeist von Endstufe 2 auch
Stk | Ort | Watt
2 | Terrasse | 10`,
		"Etapa": `
Feria de Almendral, línea 100 V
Zona 1 Nave, alimentada por Etapa 1 (2 x 240 W) canal A
Cant | Lugar | Toma W
6 | Puerta | 15
Zona 2 Oficinas, alimentada por Etapa 1 canal B
Cant | Lugar | Toma W
4 | Pasillo | 3
Zona 3 Patio, alimentada por Etapa 2 (1 x 160 W)
Cant | Lugar | Toma W
3 | Muelle | 10
Zona 4 Azotea, alimentada por Etapa 2 también
Cant | Lugar | Toma W
2 | Terraza | 10`,
	} {
		t.Run(amp, func(t *testing.T) {
			want(t, "outputs", ratedOutputs(wholeJob(t, sheet)), []string{amp + " 1 / A 240 W", amp + " 1 / B 240 W", amp + " 2 / 1 160 W"})
		})
	}
}
