package main

import "lineaudit/samples/typed"

// others are lists from the same folders that are no loudspeaker schedules.
func others() []typed.Case {
	return []typed.Case{
		{File: "Ravensmoor/Emergency lighting log.xlsx", Kind: "not-a-schedule", Book: book("EL", `
RAVENSMOOR ICE RINK - EMERGENCY LIGHTING LUMINAIRE SCHEDULE
Ref|Location|Type|Qty|Lamp (W)|Circuit|Duration
E1|North stand|Bulkhead|6|8|EL1|3h
E2|South stand|Bulkhead|6|8|EL1|3h
E3|Skate hire|Recessed LED|4|3|EL2|3h
E4|Lockers|Recessed LED|3|3|EL2|3h
E5|Plant room|Twin spot|2|20|EL3|3h
Total|||21|||
`, bold("A1:G2")), Truth: stranger("luminaires with watts, quantities and circuits: no sound anywhere")},

		{File: "Cold Fork Ice Center/sprinkler heads.csv", Kind: "not-a-schedule", Bytes: plain(`
Zone,Room,Head Type,Qty,K-Factor,Temp (F),Riser,GPM
1,Rink 1,Upright,64,8.0,200,R1,25
1,Bleachers,Upright,32,8.0,200,R1,25
2,Lobby,Pendent,18,5.6,155,R2,15
2,Locker Rooms,Pendent,24,5.6,155,R2,15
3,Mech Room,Upright,8,5.6,286,R2,15
`), Truth: stranger("sprinkler heads by zone and room")},

		{File: "Harrowmere/structured cabling outlets.xlsx", Kind: "not-a-schedule", Saved: "xlsx", Book: book("Outlets", `
Harrowmere Botanic Garden - data outlet schedule
Zone|Room|Outlet type|Qty|Cable|From|To|Length (m)|Port
1|Reception|Double RJ45|4|Cat6|CAB1|FP01|22|1-8
1|Seed shop|Double RJ45|2|Cat6|CAB1|FP02|31|9-12
2|Classroom|Double RJ45|6|Cat6|CAB1|FP03|40|13-24
2|Orchid house|Single RJ45 IP67|1|Cat6|CAB1|FP04|65|25
Total|||13
`), Truth: stranger("data outlets: zone, room, quantity, cable from-to, but no sound")},

		{File: "Planétarium d'Aubresin/salle immersive.csv", Kind: "not-a-schedule", Bytes: ansi(`
Salle immersive - chaîne sonore 5.1;;;;
Repère;Enceinte;Impédance;Puissance;Ampli
L;Enceinte écran 3 voies;8 ohms;500 W;A1 voie 1
C;Enceinte écran 3 voies;8 ohms;500 W;A1 voie 2
R;Enceinte écran 3 voies;8 ohms;500 W;A2 voie 1
Ls;Enceinte surround;8 ohms;150 W;A3 voie 1
Rs;Enceinte surround;8 ohms;150 W;A3 voie 2
Sub;Caisson double 46 cm;4 ohms;1000 W;A2 voie 2
`), Truth: stranger("a low-impedance cinema system: no line, no transformer")},

		{File: "Eissportzentrum Quellrode/Zutrittskontrolle.xls", Kind: "not-a-schedule", Saved: "xls", Book: book("Türen", `
Zutrittskontrolle - Türliste
Nr.|Raum|Leser|Anzahl|Linie|Netzteil|Leistung (W)|Bemerkung
1|Haupteingang|Leser außen|2|1|NT1|6|
2|Kasse|Leser|1|1|NT1|3|
3|Technik|Leser + Tastatur|1|2|NT2|5|
4|Umkleiden|Leser|4|2|NT2|12|
Summe|||8|||26|
`), Truth: stranger("door readers with lines, watts and quantities")},

		{File: "Botenhuis Wierdermeer/verfstaat.csv", Kind: "not-a-schedule", Bytes: ansi(`
Botenhuis Wierdermeer - verfstaat;;;;;
Ruimte;Onderdeel;Kleur;Lagen;Liter;Opmerking
Loods;Wanden;RAL 7035;2;60;
Loods;Spanten;RAL 5010;2;24;
Kleedkamers;Plafond;RAL 9010;2;18;vochtwerend
Steiger;Leuning;RAL 3020;3;12;
Totaal;;;;114;
`), Truth: stranger("a paint list by room with counts and sums")},

		{File: "Palaghiaccio Valsolina/estintori.xlsx", Kind: "not-a-schedule", Saved: "xlsx", Book: book("Estintori", `
Palaghiaccio di Valsolina - registro estintori
Sigla|Locale|Tipo|Q.tà|Kg|Classe|Scadenza|Linea antincendio
E1|Atrio|Polvere|2|6|34A 233BC|06/2020|1
E2|Pista|Polvere|6|9|55A 233BC|06/2020|1
E3|Cabina elettrica|CO2|2|5|113B|06/2020|2
Totale|||10
`), Truth: stranger("fire extinguishers by place and line")},

		{File: "Cold Fork Ice Center/VAV and fan schedule.xlsx", Kind: "not-a-schedule", Book: book("M-601", `
COLD FORK ICE CENTER - FAN SCHEDULE
TAG|LOCATION|TYPE|QTY|CFM|WATTS|VOLTS|CONTROL|REMARKS
EF-1|LOCKER 1|CEILING|1|150|80|120|SWITCH|
EF-2|LOCKER 2|CEILING|1|150|80|120|SWITCH|
EF-3|COMPRESSOR RM|WALL|2|2500|560|208|T-STAT|
EF-4|RESTROOMS|CEILING|2|300|120|120|SWITCH|
TOTAL|||6||1520
`), Truth: stranger("fans with tags, watts, volts, ceiling and wall types and controls")},
	}
}
