package main

import "lineaudit/samples/typed"

// An apprentice: plain CSV exports with one header row, everything repeated in every row.
var apprentice = []typed.Case{
	{File: "exports/BG-Thornacre.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
Job No,Site,Room,Zone,Speaker ID,Speaker Model,Tap (W),Line Voltage,Amp,Channel,Channel Rating (W),Volume Control,VC Rating (W)
J2218,Thornacre Botanical Garden,Alpine house,1,S01,WB-10,5,100,AMP1,1,60,VC-A,36
J2218,Thornacre Botanical Garden,Alpine house,1,S02,WB-10,5,100,AMP1,1,60,VC-A,36
J2218,Thornacre Botanical Garden,Alpine house,1,S03,WB-10,5,100,AMP1,1,60,VC-A,36
J2218,Thornacre Botanical Garden,Alpine house,1,S04,WB-10,5,100,AMP1,1,60,VC-A,36
J2218,Thornacre Botanical Garden,Fern pit,1,S05,WB-10,5,100,AMP1,1,60,VC-B,12
J2218,Thornacre Botanical Garden,Fern pit,1,S06,WB-10,5,100,AMP1,1,60,VC-B,12
J2218,Thornacre Botanical Garden,Fern pit,1,S07,WB-10,5,100,AMP1,1,60,VC-B,12
J2218,Thornacre Botanical Garden,Entrance,2,S08,CM-6,6,100,AMP1,2,60,VC-C,36
J2218,Thornacre Botanical Garden,Entrance,2,S09,CM-6,6,100,AMP1,2,60,VC-C,36
J2218,Thornacre Botanical Garden,Entrance,2,S10,CM-6,6,100,AMP1,2,60,VC-C,36
J2218,Thornacre Botanical Garden,Seed shop,2,S11,CM-6,3,100,AMP1,2,60,VC-D,12
J2218,Thornacre Botanical Garden,Seed shop,2,S12,CM-6,3,100,AMP1,2,60,VC-D,12
J2218,Thornacre Botanical Garden,Corridor,2,S13,CM-6,1.5,100,AMP1,2,60,,
J2218,Thornacre Botanical Garden,Corridor,2,S14,CM-6,1.5,100,AMP1,2,60,,
J2218,Thornacre Botanical Garden,Lime walk,3,S15,HN-15,15,100,AMP2,1,120,,
J2218,Thornacre Botanical Garden,Lime walk,3,S16,HN-15,15,100,AMP2,1,120,,
J2218,Thornacre Botanical Garden,Lime walk,3,S17,HN-15,15,100,AMP2,1,120,,
J2218,Thornacre Botanical Garden,Car park,3,S18,HN-15,15,100,AMP2,1,120,,
J2218,Thornacre Botanical Garden,Car park,3,S19,HN-15,15,100,AMP2,1,120,,
J2218,Thornacre Botanical Garden,Yard,4,S20,HN-15,7.5,100,AMP2,2,120,,
J2218,Thornacre Botanical Garden,Potting shed,4,S21,WB-10,5,100,AMP2,2,120,VC-E,12
J2218,Thornacre Botanical Garden,Potting shed,4,S22,WB-10,5,100,AMP2,2,120,VC-E,12
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("J2218", "Thornacre Botanical Garden", "flat export, ratings repeated in every row, job and site as columns")
		t.Speakers("tap_v=100; line_v=100", `rows|tag|room|zone|model|tap_w|amplifier|channel|control
2..5|S01..|Alpine house|1|WB-10|5|AMP1|1|VC-A
6..8|S05..|Fern pit|1|WB-10|5|AMP1|1|VC-B
9..11|S08..|Entrance|2|CM-6|6|AMP1|2|VC-C
12..13|S11..|Seed shop|2|CM-6|3|AMP1|2|VC-D
14..15|S13..|Corridor|2|CM-6|1.5|AMP1|2|
16..18|S15..|Lime walk|3|HN-15|15|AMP2|1|
19..20|S18..|Car park|3|HN-15|15|AMP2|1|
21|S20|Yard|4|HN-15|7.5|AMP2|2|
22..23|S21..|Potting shed|4|WB-10|5|AMP2|2|VC-E`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
AMP1|1|60|35
AMP1|2|60|27
AMP2|1|120|75
AMP2|2|120|17.5`)
		t.Amplifiers("", `amplifier|load_w
AMP1|62
AMP2|92.5`)
		t.Controls("", `control|rated_w|load_w
VC-A|36|20
VC-B|12|15
VC-C|36|18
VC-D|12|6
VC-E|12|10`)
	}},

	{File: "exports/BH-Ouzel.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
site,job,amp_id,amp_ch,line_v,spk_type,qty,watts_each,area,run_m,cable_mm2
Ouzel Reach Boathouse,J2231,PA1,1,100,horn,3,10,Landing stage,65,1.5
Ouzel Reach Boathouse,J2231,PA1,1,100,horn,2,10,Slipway,81,1.5
Ouzel Reach Boathouse,J2231,PA1,2,100,ceiling,6,3,Club stairs and hall,38,1.5
Ouzel Reach Boathouse,J2231,PA1,2,100,ceiling,4,1.5,Corridor,52,1.5
Ouzel Reach Boathouse,J2231,PA1,3,100,cabinet,4,5,Boat store east,52,1.5
Ouzel Reach Boathouse,J2231,PA1,3,100,cabinet,4,5,Boat store west,66,1.5
Ouzel Reach Boathouse,J2231,PA1,4,100,cabinet,2,10,Workshop,47,1.5
Ouzel Reach Boathouse,J2231,PA2,1,100,horn,4,20,Finish line,340,2.5
Ouzel Reach Boathouse,J2231,PA2,2,100,column,2,30,Bank enclosure,180,2.5
Ouzel Reach Boathouse,J2231,PA2,2,100,column,2,15,Umpires' stand,215,2.5
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("J2231", "Ouzel Reach Boathouse", "header of field names; each area with its own cable")
		t.Speakers("tap_v=100; line_v=100", `rows|room|model|count|tap_w|amplifier|channel
2|Landing stage|horn|3|10|PA1|1
3|Slipway|horn|2|10|PA1|1
4|Club stairs and hall|ceiling|6|3|PA1|2
5|Corridor|ceiling|4|1.5|PA1|2
6|Boat store east|cabinet|4|5|PA1|3
7|Boat store west|cabinet|4|5|PA1|3
8|Workshop|cabinet|2|10|PA1|4
9|Finish line|horn|4|20|PA2|1
10|Bank enclosure|column|2|30|PA2|2
11|Umpires' stand|column|2|15|PA2|2`)
		t.Channels("line_v=100", `amplifier|channel|load_w
PA1|1|50
PA1|2|24
PA1|3|40
PA1|4|20
PA2|1|80
PA2|2|90`)
		t.Amplifiers("", `amplifier|load_w
PA1|134
PA2|170`)
		t.Lines("", `to|length_m|area_mm2
Landing stage|65|1.5
Slipway|81|1.5
Club stairs and hall|38|1.5
Corridor|52|1.5
Boat store east|52|1.5
Boat store west|66|1.5
Workshop|47|1.5
Finish line|340|2.5
Bank enclosure|180|2.5
Umpires' stand|215|2.5`)
	}},

	{File: "exports/rink-kettle.csv", Kind: "schedule", Bytes: func() []byte {
		return []byte(typed.DOS(`
"Kettle Moss Ice Rink","Job J2240","System 70V","","","","",""
"","","","","","","",""
"ID","Description","Location","Zone","Tap","Amp/Ch","VC","Status"
"SP-1","Horn 30W","Rink north","Rink","15W","A/1","None","Installed"
"SP-2","Horn 30W","Rink north","Rink","15W","A/1","None","Installed"
"SP-3","Horn 30W","Rink south","Rink","15W","A/1","None","Installed"
"SP-4","Horn 30W","Rink south","Rink","15W","A/1","None","Installed"
"SP-5","Ceiling 8W","Lobby","Front","4W","A/2","VC1","Installed"
"SP-6","Ceiling 8W","Lobby","Front","4W","A/2","VC1","Installed"
"SP-7","Ceiling 8W","Lobby","Front","4W","A/2","VC1","Installed"
"SP-8","Ceiling 8W","Skate desk","Front","2W","A/2","VC2","Installed"
"SP-9","Ceiling 8W","Skate desk","Front","2W","A/2","VC2","Installed"
"SP-10","Ceiling 8W","Office","Front","1W","A/2","VC3","Installed"
"SP-11","Ceiling 8W","Lockers A","Back","4W","B/1","None","Installed"
"SP-12","Ceiling 8W","Lockers B","Back","4W","B/1","None","Installed"
"SP-13","Ceiling 8W","Lockers C","Back","4W","B/1","None","Not yet installed"
"SP-14","Horn 30W","Plant room","Back","7.5W","B/1","None","Installed"
"SP-15","Horn 30W","Compressor yard","Back","7.5W","B/1","None","Removed"
"SP-16","Ceiling 8W","Shelf in store","","","","","Spare"
"","","","","","","",""
"VC","Rating","Location","","","","",""
"VC1","10W","Lobby","","","","",""
"VC2","10W","Skate desk","","","","",""
"VC3","10W","Office","","","","",""
"","","","","","","",""
"Amp","Channels","Watts per channel","","","","",""
"A","2","100","","","","",""
"B","1","60","","","","",""
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("J2240", "Kettle Moss Ice Rink", "three tables in one quoted text file; states")
		t.Speakers("tap_v=70.7; line_v=70.7; zone=Rink; amplifier=A; channel=1; model=Horn 30W; tap_w=15", `rows|tag|room
4..5|SP-1..|Rink north
6..7|SP-3..|Rink south`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=Front; amplifier=A; channel=2; model=Ceiling 8W", `rows|tag|room|tap_w|control
8..10|SP-5..|Lobby|4|VC1
11..12|SP-8..|Skate desk|2|VC2
13|SP-10|Office|1|VC3`)
		t.Speakers("tap_v=70.7; line_v=70.7; zone=Back; amplifier=B; channel=1", `rows|tag|room|model|tap_w|status
14|SP-11|Lockers A|Ceiling 8W|4|installed
15|SP-12|Lockers B|Ceiling 8W|4|installed
16|SP-13|Lockers C|Ceiling 8W|4|future
17|SP-14|Plant room|Horn 30W|7.5|installed
18|SP-15|Compressor yard|Horn 30W|7.5|removed`)
		t.Speakers("status=spare", `rows|tag|room|model
19|SP-16|Shelf in store|Ceiling 8W`)
		t.Channels("line_v=70.7", `amplifier|channel|rated_w|load_w
A|1|100|60
A|2|100|17
B|1|60|15.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
A||77
B|60|15.5`)
		t.Controls("", `control|rated_w|load_w
VC1|10|12
VC2|10|4
VC3|10|1`)
	}},
}
