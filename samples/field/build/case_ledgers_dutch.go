package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// ledgersDutch are workbooks of a consultant, installers and a maintenance firm, and lists of a caretaker and a pupil, in Dutch.
var ledgersDutch = []typed.Case{
	{File: "ledgers/OV-271 omroep station Veenwijk.xlsx", Kind: "schedule", Book: func() *excelize.File {
		c := typed.NewBook("Voorblad")
		c.Put("B2", `
Omroepinstallatie station Veenwijk
Staat van componenten behorend bij bestek OV-271
||
Versie|Datum|Status|Opsteller
'0.9|11-01-2021|concept|HvD
'1.0|08-03-2021|definitief|HvD
||
Alle luidsprekerlijnen 100 V. Kabel: koper.
`)
		c.Bold("B2", "B5:E5")
		l := c.Sheet("Legenda")
		l.Put("A1", `
Afkorting|Betekenis
PL|plafondluidspreker, 6 W
PR|projector, 20 W
HL|hoornluidspreker, 30 W
VR|volumeregelaar
LG|luidsprekergroep
`)
		l.Bold("A1:B1")
		p := c.Sheet("Luidsprekers")
		p.Put("A1", `
Ruimte|Omschrijving|Codes|Soort|Aantal|Afgetakt op|Groep|RAL|Tekening
'0.01|Stationshal|LS001 t/m LS012|PL|12|6 W|LG1|9010|E-101
'0.02|Loketten|LS013 t/m LS015|PL|3|3 W|LG1|9010|E-101
'0.03|Fietsenstalling|LS016 t/m LS019|PR|4|10 W|LG1|7016|E-102
P1|Perron 1|LS101 t/m LS114|PR|14|10 W|LG2|7016|E-103
P1|Perron 1, abri|LS115 t/m LS116|PL|2|6 W|LG2|9010|E-103
P2|Perron 2|LS201 t/m LS214|PR|14|10 W|LG3|7016|E-104
P2|Perron 2, kop west|LS215|HL|1|15 W|LG3|7016|E-104
'0.10|Personeelsruimte|LS301 t/m LS302|PL|2|3 W|LG4|9010|E-101
'0.11|Kantoor chef|LS303|PL|1|1,5 W|LG4|9010|E-101
'0.12|Technische ruimte|LS304|PL|1|6 W|LG4|9010|E-101
|||totaal|54
`)
		p.Bold("A1:I1")
		v := c.Sheet("Versterkers en regelaars")
		v.Put("A1", `
Versterker|Uitgang|Vermogen (W)|Groep|Bestemming
V1|1|240|LG 1|hal en stalling
V1|2|240|LG 2|perron 1
V2|1|240|LG 3|perron 2
V2|2|60|LG 4|personeel
||
Regelaar|Ruimte|W
VR1|'0.02|12
VR2|'0.10|12
VR3|'0.11|6
`)
		v.Bold("A1:E1", "A7:C7")
		k := c.Sheet("Kabelstaat")
		k.Put("A1", `
Kabelnr.|Van|Naar groep|Doorsnede mm²|Lengte m|Mantel
K-01|kast V1.1|LG-1|2 x 2,5|95|grijs
K-02|kast V1.2|LG-2|2 x 4|260|zwart UV
K-03|kast V2.1|LG-3|2 x 4|290|zwart UV
K-04|kast V2.2|LG-4|2 x 1,5|40|grijs
`)
		k.Bold("A1:F1")
		return c.File
	}, Truth: func(t *typed.Truth) {
		t.Is("OV-271", "station Veenwijk", "five sheets; nominal watts in the legend, taps in the list; groups LG1, LG 1 and LG-1; ranges of tags; controls by room number")
		t.Revision("1.0", false)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=V1; channel=1", `rows|room|model|count|tap_w|control
2|Stationshal|PL|12|6|
3|Loketten|PL|3|3|VR1
4|Fietsenstalling|PR|4|10|`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=V1; channel=2", `rows|room|model|count|tap_w
5|Perron 1|PR|14|10
6|Perron 1, abri|PL|2|6`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=V2; channel=1", `rows|room|model|count|tap_w
7|Perron 2|PR|14|10
8|Perron 2, kop west|HL|1|15`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; amplifier=V2; channel=2", `rows|room|model|count|tap_w|control
9|Personeelsruimte|PL|2|3|VR2
10|Kantoor chef|PL|1|1.5|VR3
11|Technische ruimte|PL|1|6|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
V1|1|240|121
V1|2|240|152
V2|1|240|155
V2|2|60|13.5`)
		t.Amplifiers("", `amplifier|load_w
V1|273
V2|168.5`)
		t.Controls("", `control|rated_w|load_w
VR1|12|9
VR2|12|6
VR3|6|1.5`)
		t.Lines("material=copper; note=home run", `line|from|length_m|area_mm2
K-01|kast V1.1|95|2.5
K-02|kast V1.2|260|4
K-03|kast V2.1|290|4
K-04|kast V2.2|40|1.5`)
		t.Left("Luidsprekers", `12|total|number of loudspeakers`)
	}},

	{File: "ledgers/20417 Scholengemeenschap De Waard.xls", Kind: "schedule", Saved: "xls", Book: func() *excelize.File {
		p := typed.NewBook("Bouwdeel A")
		p.Put("A1", `
Project 20417 - Scholengemeenschap De Waard - bouwdeel A
||
lokaal|aantal|stand trafo|regelaar|uitvoering
A01 aula|8|6W|ja|opbouw
A02 t/m A07 lokalen|12|3W||inbouw
A10 gang|6|3W||inbouw
A11 toiletten|2|1,5W||inbouw
A12 podium (fase 2, 2024)|2|6W||opbouw
`)
		p.Bold("A1", "A3:E3")
		q := p.Sheet("Bouwdeel B")
		q.Put("A1", `
Project 20417 - Scholengemeenschap De Waard - bouwdeel B
||
lokaal|aantal|stand trafo|regelaar|uitvoering
B01 gymzaal|4|15W||balvast
B02 kleedkamers|4|3W||opbouw
B03 docentenkamer|2|3W|ja|inbouw
B04 t/m B09 lokalen|12|3W||inbouw
B10 trappenhuis|3|3W||opbouw
`)
		q.Bold("A1", "A3:E3")
		r := p.Sheet("Buiten")
		r.Put("A1", `
Project 20417 - Scholengemeenschap De Waard - buitenterrein
||
plaats|aantal|stand trafo|regelaar|uitvoering
schoolplein|4|15W||hoorn
fietsenhok|1|10W||hoorn
`)
		r.Bold("A1", "A3:E3")
		s := p.Sheet("19 inch kast")
		s.Put("A1", `
versterker|lijn 100 V naar|max. W|kabel|lengte
VST1|gebouwdeel A|240|2x2,5 mm2|70 m
VST2|gebouwdeel B|240|2x2,5 mm2|115 m
VST3|buiten|120|2x2,5 mm2|60 m
||
regelaars
code|lokaal|W
RG-A01|A01|60
RG-B03|B03|12
`)
		s.Bold("A1:E1", "A6", "A7:C7")
		u := p.Sheet("Prijzen")
		u.Put("A1", `
art.|omschrijving|aantal|eenheidsprijs|totaal
1001|inbouwluidspreker 6 W|34|18.9|642.6
1002|opbouwluidspreker 6 W|17|27.5|467.5
1003|balvaste luidspreker 15 W|4|66|264
1004|hoorn 15 W|5|58|290
|||totaal excl. btw|1664.1
`)
		u.Bold("A1:E1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("20417", "Scholengemeenschap De Waard", "a sheet a wing, joined to amplifiers as bouwdeel and gebouwdeel; control said to be there in the list, its tag by room on another sheet; one row of phase 2; price sheet that counts phase 2 too")
		t.Speakers("sheet=Bouwdeel A; tap_v=100; line_v=100; zone=Bouwdeel A; amplifier=VST1; note=wing as zone", `rows|room|count|tap_w|control
4|A01 aula|8|6|RG-A01
5|A02 t/m A07 lokalen|12|3|
6|A10 gang|6|3|
7|A11 toiletten|2|1.5|`)
		t.Speakers("sheet=Bouwdeel B; tap_v=100; line_v=100; zone=Bouwdeel B; amplifier=VST2; note=wing as zone", `rows|room|count|tap_w|control
4|B01 gymzaal|4|15|
5|B02 kleedkamers|4|3|
6|B03 docentenkamer|2|3|RG-B03
7|B04 t/m B09 lokalen|12|3|
8|B10 trappenhuis|3|3|`)
		t.Speakers("sheet=Buiten; tap_v=100; line_v=100; zone=Buiten; amplifier=VST3; note=area as zone", `rows|room|count|tap_w
4|schoolplein|4|15
5|fietsenhok|1|10`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
VST1|240|105
VST2|240|123
VST3|120|70`)
		t.Amplifiers("", `amplifier|rated_w|load_w
VST1|240|105
VST2|240|123
VST3|120|70`)
		t.Controls("", `control|rated_w|load_w
RG-A01|60|48
RG-B03|12|6`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Bouwdeel A|70|2.5
Bouwdeel B|115|2.5
Buiten|60|2.5`)
		t.Left("Bouwdeel A", `8|future|phase 2`)
		t.Left("Prijzen", `2|other|priced quantity of loudspeakers that are listed elsewhere
3|other|priced quantity of loudspeakers that are listed elsewhere
4|other|priced quantity of loudspeakers that are listed elsewhere
5|other|priced quantity of loudspeakers that are listed elsewhere`)
	}},

	{File: "ledgers/Meetrapport M-5582 zwembad.xlsx", Kind: "schedule", Book: func() *excelize.File {
		c := typed.NewBook("Rapport")
		c.Put("A1", `
Meetrapport geluidsinstallatie
Rapportnummer|M-5582
Object|Zwembad De Kolk
Monteur|T. en W.
Versterker|vierkanaals, 4 x 125 W, 100 V
Volgende beurt|mei 2024
`)
		c.Bold("A1")
		p := c.Sheet("Lijnmeting")
		p.Put("A1", `
Kanaal|Lijn naar|Z bij 1 kHz (ohm)|Opgenomen (W)|Isolatie|Oordeel
1|Wedstrijdbad|152|66|> 50 MΩ|goed
2|Recreatiebad|139|72|> 50 MΩ|goed
3|Kleedruimten|605|16,5|12 MΩ|matig, vocht in doos bij douche
4|Hal|490|20,4|> 50 MΩ|goed
`)
		p.Bold("A1:F1")
		q := p.Sheet("Luidsprekers")
		q.Put("A1", `
Lijn|Plaats|Stuks|Trafostand W|Bevinding
wedstrijdbad|lange zijde|6|10|geen
wedstrijdbad|startblokken|1|6|geen
recreatiebad|glijbaan|2|15|geen
recreatiebad|peuterbad|2|6|rooster los, vastgezet
recreatiebad|ligweide binnen|3|10|geen
kleedruimte|groepskleedkamers|4|3|geen
kleedruimte|douches|3|1,5|geen
hal|kassa|1|3|geen
hal|entree|4|3|geen
hal|vergaderkamer|2|3|geen
||28
`)
		q.Bold("A1:E1")
		r := p.Sheet("Regelaars")
		r.Put("A1", `
Nr.|Waar|Type W|Bevinding
R1|vergaderkamer|12|kraakt op stand 3
R2|kassa|6|geen
R3|peuterbad|20|geen
`)
		r.Bold("A1:D1")
		return c.File
	}, Truth: func(t *typed.Truth) {
		t.Is("M-5582", "Zwembad De Kolk", "test record with drawn watts that are no taps; lines joined by names in singular and plural; unnamed amplifier of four channels, rated on the cover")
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=Wedstrijdbad; channel=1", `rows|room|count|tap_w
2|lange zijde|6|10
3|startblokken|1|6`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=Recreatiebad; channel=2", `rows|room|count|tap_w|control
4|glijbaan|2|15|
5|peuterbad|2|6|R3
6|ligweide binnen|3|10|`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=Kleedruimten; channel=3", `rows|room|count|tap_w
7|groepskleedkamers|4|3
8|douches|3|1.5`)
		t.Speakers("sheet=Luidsprekers; tap_v=100; line_v=100; zone=Hal; channel=4", `rows|room|count|tap_w|control
9|kassa|1|3|R2
10|entree|4|3|
11|vergaderkamer|2|3|R1`)
		t.Channels("line_v=100; rated_w=125", `channel|load_w
1|66
2|72
3|16.5
4|21`)
		t.Amplifiers("", `amplifier|load_w
|175.5`)
		t.Controls("", `control|zone|rated_w|load_w
R1|Hal|12|6
R2|Hal|6|3
R3|Recreatiebad|20|12`)
		t.Left("Luidsprekers", `12|total|number of loudspeakers`)
	}},

	{File: "ledgers/speakers gemeentewerf.csv", Kind: "schedule", Bytes: func() []byte {
		return typed.Windows1252(typed.DOS(`
Luidsprekers gemeentewerf;;;;
Opgeschreven door de beheerder, voor als er weer een nieuwe monteur komt;;;;
Welke kast;Ruimte;Hoeveel;Watt per stuk;Opmerking
linkse versterker (120 W);kantine;4;6;
linkse versterker;kantoor beneden;3;3;
linkse versterker;kantoor boven;4;3;
linkse versterker;kleedruimte;2;3;
linkse versterker;vergaderzaal;4;3;draaiknop bij de deur, 24 W
rechtse versterker (240 W);loods 1 strooiwagens;3;15;
rechtse versterker;loods 2 maaiers;3;15;één hangt scheef
rechtse versterker;werkplaats;2;10;
rechtse versterker;zoutloods;1;20;
rechtse versterker;buiten bij de poort;2;15;
;;;;
Het zijn 100 volt lijnen, dus nooit een gewone speaker aansluiten!;;;;
`))
	}, Truth: func(t *typed.Truth) {
		t.Is("", "gemeentewerf", "caretaker's plain list; amplifiers called left and right, rated at their first row; one control without a name in a remark")
		t.Speakers("tap_v=100; line_v=100; amplifier=linkse versterker", `rows|room|count|tap_w|note
4|kantine|4|6|
5|kantoor beneden|3|3|
6|kantoor boven|4|3|
7|kleedruimte|2|3|
8|vergaderzaal|4|3|unnamed`)
		t.Speakers("tap_v=100; line_v=100; amplifier=rechtse versterker", `rows|room|count|tap_w
9|loods 1 strooiwagens|3|15
10|loods 2 maaiers|3|15
11|werkplaats|2|10
12|zoutloods|1|20
13|buiten bij de poort|2|15`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
linkse versterker|120|63
rechtse versterker|240|160`)
		t.Amplifiers("", `amplifier|rated_w|load_w
linkse versterker|120|63
rechtse versterker|240|160`)
		t.Controls("note=unnamed", `control|rated_w|load_w
|24|12`)
	}},

	{File: "ledgers/stageopdracht botenhuis.ods", Kind: "schedule", Saved: "ods", Book: func() *excelize.File {
		p := typed.NewBook("Blad1")
		p.Put("A1", `
Stageopdracht 4: inventariseer de geluidsinstallatie
Roeivereniging Het Riet, botenhuis

speaker|ruimte|verdieping|trafo|lijn
S1|botenloods|bg|15 W|A
S2|botenloods|bg|15 W|A
S3|botenloods|bg|15 W|A
S4|steiger|bg|15 W|A
S5|steiger|bg|15 W|A
S6|werkplaats|bg|7,5 W|A
S7|kleedkamer dames|bg|2,5 W|B
S8|kleedkamer heren|bg|2,5 W|B
S9|ergometerzaal|1e|10 W|B
S10|ergometerzaal|1e|10 W|B
S11|bestuurskamer|1e|5 W|B
S12|gang|1e|2,5 W|B

lijn|versterker|vermogen|kabel|meter
A|versterker 1|120 W|2 x 1,5 mm2|85
B|versterker 2|60 W|2 x 0,75 mm2|50

Volumeknop VK1 (24 W) ergometerzaal, volumeknop VK2 (6 W) bestuurskamer. 100 V gemeten op beide lijnen.
`)
		p.Bold("A1", "A4:E4", "A18:E18")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("", "Roeivereniging Het Riet, botenhuis", "pupil's list with two tables on one sheet; controls and voltage in a sentence below")
		t.Speakers("sheet=Blad1; tap_v=100; line_v=100; amplifier=versterker 1; channel=A", `rows|tag|room|tap_w
5|S1|botenloods|15
6|S2|botenloods|15
7|S3|botenloods|15
8|S4|steiger|15
9|S5|steiger|15
10|S6|werkplaats|7.5`)
		t.Speakers("sheet=Blad1; tap_v=100; line_v=100; amplifier=versterker 2; channel=B", `rows|tag|room|tap_w|control
11|S7|kleedkamer dames|2.5|
12|S8|kleedkamer heren|2.5|
13|S9|ergometerzaal|10|VK1
14|S10|ergometerzaal|10|VK1
15|S11|bestuurskamer|5|VK2
16|S12|gang|2.5|`)
		t.Channels("line_v=100", `amplifier|channel|rated_w|load_w
versterker 1|A|120|82.5
versterker 2|B|60|32.5`)
		t.Amplifiers("", `amplifier|rated_w|load_w
versterker 1|120|82.5
versterker 2|60|32.5`)
		t.Controls("", `control|rated_w|load_w
VK1|24|20
VK2|6|5`)
		t.Lines("note=one length a line", `line|length_m|area_mm2
A|85|1.5
B|50|0.75`)
	}},

	{File: "ledgers/Revisie ijshal 1162.xlsx", Kind: "schedule", Book: func() *excelize.File {
		p := typed.NewBook("Lijst")
		p.Put("A1", `
IJshal Noorderkwartier|||||Werknr. 1162|Revisiebescheiden
Luidsprekers per zone
||
Zone 1 IJsvloer|||||||
Pos|Omschrijving|St|W|Totaal W|VR|Hoogte m|IP-klasse
'1.a|hoorn boven boarding noord|6|15|90||6.5|IP66
'1.b|hoorn boven boarding zuid|6|15|90||6.5|IP66
|||subtotaal|180
Zone 2 Tribunes|||||||
Pos|Omschrijving|St|W|Totaal W|VR|Hoogte m|IP-klasse
'2.a|tribune oost|4|10|40||4|IP54
'2.b|tribune west|4|10|40||4|IP54
'2.c|persplaatsen|2|6|12|x|3|IP54
|||subtotaal|92
Zone 3 Publieksruimten|||||||
Pos|Omschrijving|St|W|Totaal W|VR|Hoogte m|IP-klasse
'3.a|entreehal|8|3|24||3|
'3.b|schaatsverhuur|5|3|15|x|3|
'3.c|toiletten|4|1,5|6||2.7|
|||subtotaal|45
Zone 4 Techniek en staf|||||||
Pos|Omschrijving|St|W|Totaal W|VR|Hoogte m|IP-klasse
'4.a|machinekamer|2|15|30||4|IP66
'4.b|ijsmeesterkantoor|1|3|3|x|2.7|
|||subtotaal|33
|||totaal|350
`)
		p.Bold("A1:G1", "A4", "A5:H5", "A9", "A10:H10", "A15", "A16:H16", "A21", "A22:H22", "D26:E26")
		q := p.Sheet("Versterkerrek")
		q.Put("A1", `
Rek 1 (100 V-lijnen)
|Verst. A|Verst. B|Verst. C|Verst. D
Zone|1|2|3|4
Vermogen W|360|180|120|120
Zekering|6,3 A|4 A|2,5 A|2,5 A
Kabel|2 x 4 mm²|2 x 2,5 mm²|2 x 1,5 mm²|2 x 1,5 mm²
Lengte m|150|130|60|45
`)
		q.Bold("A1", "B2:E2", "A3:A7")
		r := p.Sheet("VR-lijst")
		r.Put("A1", `
VR|Pos|W|Plaats bediening
VR-1|2c|20|perstafel
VR-2|3b|20|balie
VR-3|4b|6|naast deur
`)
		r.Bold("A1:D1")
		s := p.Sheet("Wijzigingen")
		s.Put("A1", `
Nr|Datum|Omschrijving|Verwerkt
1|07-09|Hoorns ijsvloer van 20 naar 15 W|ja
2|14-09|2 st. persplaatsen toegevoegd incl. VR-1|ja
3|21-09|Verst. A was 240 W, nu 360 W|ja
`)
		s.Bold("A1:D1")
		return p.File
	}, Truth: func(t *typed.Truth) {
		t.Is("1162", "IJshal Noorderkwartier", "sections with repeated headers and subtotals; amplifier sheet that runs across; crosses for controls whose tags stand on a third sheet by position 2c for 2.c; log of changes already made")
		t.Speakers("sheet=Lijst; tap_v=100; line_v=100; zone=Zone 1 IJsvloer; amplifier=Verst. A; tap_w=15", `rows|tag|room|count
6|1.a|hoorn boven boarding noord|6
7|1.b|hoorn boven boarding zuid|6`)
		t.Speakers("sheet=Lijst; tap_v=100; line_v=100; zone=Zone 2 Tribunes; amplifier=Verst. B", `rows|tag|room|count|tap_w|control
11|2.a|tribune oost|4|10|
12|2.b|tribune west|4|10|
13|2.c|persplaatsen|2|6|VR-1`)
		t.Speakers("sheet=Lijst; tap_v=100; line_v=100; zone=Zone 3 Publieksruimten; amplifier=Verst. C", `rows|tag|room|count|tap_w|control
17|3.a|entreehal|8|3|
18|3.b|schaatsverhuur|5|3|VR-2
19|3.c|toiletten|4|1.5|`)
		t.Speakers("sheet=Lijst; tap_v=100; line_v=100; zone=Zone 4 Techniek en staf; amplifier=Verst. D", `rows|tag|room|count|tap_w|control
23|4.a|machinekamer|2|15|
24|4.b|ijsmeesterkantoor|1|3|VR-3`)
		t.Channels("line_v=100", `amplifier|rated_w|load_w
Verst. A|360|180
Verst. B|180|92
Verst. C|120|45
Verst. D|120|33`)
		t.Amplifiers("", `amplifier|rated_w|load_w
Verst. A|360|180
Verst. B|180|92
Verst. C|120|45
Verst. D|120|33`)
		t.Controls("", `control|zone|rated_w|load_w
VR-1|Zone 2 Tribunes|20|12
VR-2|Zone 3 Publieksruimten|20|15
VR-3|Zone 4 Techniek en staf|6|3`)
		t.Lines("note=one length a zone", `zone|length_m|area_mm2
Zone 1 IJsvloer|150|4
Zone 2 Tribunes|130|2.5
Zone 3 Publieksruimten|60|1.5
Zone 4 Techniek en staf|45|1.5`)
		t.Left("Lijst", `8|total|subtotal
14|total|subtotal
20|total|subtotal
25|total|subtotal
26|total|sum`)
	}},
}
