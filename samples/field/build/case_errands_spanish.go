package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// errandsSpanish are a project engineer, a workshop and a theatre's electrician (whose list is of lamps).
var errandsSpanish = []typed.Case{
	{File: "errands/proyecto/2031 Museo del Corcho.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Altavoces")
		p.Put("A1", `
Ref.|Zona|Sala|Uds.|Toma
A01-A06|Z1|Sala del alcornocal|6|6 W
A07-A10|Z1|Sala de la saca|4|6 W
A11-A12|Z2|Taller de tapones|2|6 W
A13-A16|Z2|Sala de máquinas|4|10 W
A17-A20|Z3|Vestíbulo|4|3 W
A21|Z3|Guardarropa|1|1,5 W
A22-A23|Z3|Taquilla|2|1,5 W
A24-A29|Z4|Auditorio|6|10 W
A30-A31|Z4|Antesala|2|3 W
A32-A35|Z5|Jardín|4|15 W
`)
		p.Bold("A1:E1")
		q := p.Sheet("Rack")
		q.Put("A1", `
Museo del Corcho, obra 2031
Rack en el sótano, líneas de 100 V
||
Zona|Salida|Potencia de salida (W)|Cable (mm²)|Longitud (m)
Z1|E1.1|120|2x1,5|60
Z2|E1.2|120|2x1,5|85
Z3|E1.3|60|2x1,5|20
Z4|E2.1|120|2x2,5|70
Z5|E2.2|120|2x2,5|140
`)
		q.Bold("A1", "A4:E4")
		r := p.Sheet("Reguladores")
		r.Put("A1", `
Regulador|Zona|Potencia (W)|Situación
R1|Z1|100|Conserjería
R2|Z3|24|Taquilla
R3|Z4|100|Antesala
`)
		r.Bold("A1:D1")
		s := p.Sheet("Mediciones")
		s.Put("A1", `
Zona|Impedancia (ohm)|Potencia medida (W)|Visto bueno
Z1|165|61|sí
Z2|190|53|sí
Z3|600|17|sí
Z4|150|67|sí
Z5|165|61|sí
`)
		s.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("2031", "Museo del Corcho", "four sheets joined by zone numbers; job and voltage only on the second; outputs such as E1.2, measured loads on the last that are no loudspeakers")
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Z1; amplifier=E1; channel=1; control=R1", `rows|room|count|tap_w
2|Sala del alcornocal|6|6
3|Sala de la saca|4|6`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Z2; amplifier=E1; channel=2", `rows|room|count|tap_w
4|Taller de tapones|2|6
5|Sala de máquinas|4|10`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Z3; amplifier=E1; channel=3; control=R2", `rows|room|count|tap_w
6|Vestíbulo|4|3
7|Guardarropa|1|1.5
8|Taquilla|2|1.5`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Z4; amplifier=E2; channel=1; control=R3", `rows|room|count|tap_w
9|Auditorio|6|10
10|Antesala|2|3`)
		t.Speakers("sheet=Altavoces; tap_v=100; line_v=100; zone=Z5; amplifier=E2; channel=2", `rows|room|count|tap_w
11|Jardín|4|15`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
E1|1|120|60
E1|2|120|52
E1|3|60|16.5
E2|1|120|66
E2|2|120|60`)
		t.Amplifiers("", `amplifier|load_w
E1|128.5
E2|126`)
		t.Controls("", `control|zone|rated_w|load_w
R1|Z1|100|60
R2|Z3|24|16.5
R3|Z4|100|66`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Z1|60|1.5
Z2|85|1.5
Z3|20|1.5
Z4|70|2.5
Z5|140|2.5`)
		t.Left("Mediciones", `2|test|measured load of a zone
3|test|measured load of a zone
4|test|measured load of a zone
5|test|measured load of a zone
6|test|measured load of a zone`)
	}},

	{File: "errands/taller/Club de remo Ribalonga.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Megafonía")
		p.Put("A1", `
Club de remo Ribalonga, megafonía del cobertizo (100 V)
Zona|Lugar|Altavoces||Amplificador||Regulador|
||Uds|W|Equipo|Salida|Ref.|W
Nave de botes|Entrada|2|10|AM1|1||
|Fondo|4|10|AM1|1||
|Taller|2|6|AM1|1|RG1|15
Embarcadero|Pantalán norte|3|15|AM1|2||
|Pantalán sur|3|15|AM1|2||
Gimnasio|Remoergómetros|4|6|AM2|1|RG2|30
|Pesas|2|6|AM2|1|RG3|15
Vestuarios|Hombres|2|3|AM2|2||
|Mujeres|2|3|AM2|2||
Torre de jueces|Exterior|2|15|AM2|2||
||
AM1 tiene dos salidas de 120 W y AM2 dos de 60 W
`)
		p.Merge("A1:H1", "A2:A3", "B2:B3", "C2:D2", "E2:F2", "G2:H2", "A4:A6", "A7:A8", "A9:A10", "A11:A12")
		p.Bold("A1:H3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Club de remo Ribalonga", "one sheet; header of two rows and zones in merged cells, a W under loudspeakers and another under controls, outputs rated in a closing sentence")
		t.Speakers("sheet=Megafonía; tap_v=100; line_v=100; amplifier=AM1", `rows|zone|room|count|tap_w|channel|control
4|Nave de botes|Entrada|2|10|1|
5|Nave de botes|Fondo|4|10|1|
6|Nave de botes|Taller|2|6|1|RG1
7|Embarcadero|Pantalán norte|3|15|2|
8|Embarcadero|Pantalán sur|3|15|2|`)
		t.Speakers("sheet=Megafonía; tap_v=100; line_v=100; amplifier=AM2", `rows|zone|room|count|tap_w|channel|control
9|Gimnasio|Remoergómetros|4|6|1|RG2
10|Gimnasio|Pesas|2|6|1|RG3
11|Vestuarios|Hombres|2|3|2|
12|Vestuarios|Mujeres|2|3|2|
13|Torre de jueces|Exterior|2|15|2|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AM1|1|120|72
AM1|2|120|90
AM2|1|60|36
AM2|2|60|42`)
		t.Amplifiers("", `amplifier|load_w
AM1|162
AM2|78`)
		t.Controls("", `control|rated_w|load_w
RG1|15|12
RG2|30|24
RG3|15|12`)
	}},

	{File: "errands/teatro/Alumbrado de emergencia sala Alameda.xlsx", Kind: "not-a-schedule", Book: func() *excelize.File {
		p := typed.NewBook("Emergencia")
		p.Put("A1", `
Teatro Sala Alameda, alumbrado de emergencia y señalización
||
Zona|Ubicación|Luminaria|Uds|W/ud|Autonomía|Circuito
Platea|Pasillo izquierdo|balizado de peldaño|12|1|1 h|CE1
Platea|Pasillo derecho|balizado de peldaño|12|1|1 h|CE1
Platea|Puertas de salida|rótulo SALIDA|4|3|2 h|CE1
Anfiteatro|Escaleras|balizado de peldaño|16|1|1 h|CE2
Anfiteatro|Techo|bloque autónomo|4|6|2 h|CE2
Vestíbulo|Techo|bloque autónomo|5|6|2 h|CE3
Escenario|Peine|bloque estanco|3|8|2 h|CE4
Camerinos|Pasillo|bloque autónomo|4|6|2 h|CE4
|Total||60
||
Alimentación a 230 V, revisión anual en septiembre
`)
		p.Bold("A1", "A3:G3")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Teatro Sala Alameda", "emergency lamps by zone with counts, watts and circuits: no loudspeakers")
	}},
}
