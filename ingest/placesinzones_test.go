package ingest

import "testing"

// Controls listed by a zone and a place in it, in one cell: each serves that place alone, and the zone keeps
// its output. Common practice, no source.
func TestControlsByZoneAndRoom(t *testing.T) {
	for _, c := range [][3]string{{"Zone / room", "Z2 Foyer", "Z2 Shop"}, {"Zona / local", "Z2, Foyer", "Z2 - Shop"}, {"Sirve a", "Z2 Foyer", "Z2 / Shop"}, {"Zone / Ort", "Zone 2 Foyer", "Zone 2: Shop"}} {
		j := wholeJob(t, `## Lista
Zona | Local | Uds. | Toma (W)
Z1 | Dome | 8 | 10
Z2 | Foyer | 6 | 6
Z2 | Shop | 2 | 3
|
## Etapas
Etapa | Canal | Potencia | Zona
ET-1 | A | 120 W | Z1
ET-1 | B | 120 W | Z2
|
## Mandos
Mando | `+c[0]+` | Potencia máx.
M1 | `+c[1]+` | 36
M2 | `+c[2]+` | 12`)
		want(t, c[1], describe(j), []string{"8 x 10 W zone Z1 channel ET-1 / A", "6 x 6 W zone Z2 control M1 channel ET-1 / B", "2 x 3 W zone Z2 control M2 channel ET-1 / B"})
	}
}
