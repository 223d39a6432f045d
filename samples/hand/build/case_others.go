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
	}
}
