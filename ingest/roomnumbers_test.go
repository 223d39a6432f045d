package ingest

import (
	"strings"
	"testing"
)

// Controls that name what hangs behind them by the numbers of rooms, which the list of loudspeakers has beside
// their names. A sheet of types sets no taps. Common practice, no source.
func TestControlsByTheNumbersOfRooms(t *testing.T) {
	for _, c := range []struct{ list, rooms, tag, title, head string }{
		{"Room | Name | Type | Qty | W each", "0.01 and 0.02", "Ref.", "Attenuators", "Ref. | Rooms | Max. load"},
		{"Raum | Bezeichnung | Typ | Anzahl | W je Stück", "0.01 und 0.02", "Kennzeichen", "Regler", "Kennzeichen | Räume | Max. Belastung"},
		{"Local | Dénomination | Type | Nbre | W/HP", "0.01 et 0.02", "Repère", "Régleurs", "Repère | Locaux | Puissance max."},
		{"Local | Denominación | Tipo | Cant. | W c/u", "0.01 y 0.02", "Ref.", "Atenuadores", "Ref. | Locales | Potencia máx."},
		{"Locale | Denominazione | Tipo | Q.tà | W cad.", "0.01, 0.02", "Sigla", "Attenuatori", "Sigla | Locali | Potenza max"},
		{"Lokaal | Benaming | Type | Aantal | Verm./st.", "0.01 en 0.02", "Merkteken", "Volumeregelaars", "Merkteken | Lokalen | Max. vermogen"},
	} {
		j := wholeJob(t, "Museum of the Moor, 100 V\n|\n"+c.list+"\n0.01 | Foyer | P6 | 4 | 3\n0.02 | Shop | P6 | 4 | 3\n0.05 | Cloakroom | P6 | 1 | 1.5\n1.01 | Lecture room | P6 | 8 | 6\n|\n## "+
			c.title+"\n"+c.head+"\nR1 | "+c.rooms+" | 36 W\nR2 | 1.01 Lecture room | 60 W")
		want(t, c.list, describe(j), []string{"4 x 3 W zone Foyer control R1", "4 x 3 W zone Shop control R1", "1 x 1.5 W zone Cloakroom", "8 x 6 W zone Lecture room control R2"})
		want(t, c.list, []string{controlsOf(j)}, []string{"R1 36 W x2, R2 60 W x1"})
	}
}

// The name of the room behind its number may be cut short, and the number may be that of the item. Common practice, no source.
func TestControlsByNumbersAndNames(t *testing.T) {
	for _, c := range []struct{ name, sheet, controls string }{
		{"Italian, codes of rooms below the title of the list", `
## Diffusori
Archivio di Stato, linea 100 V
Elenco diffusori
Cod. locale | Denominazione | Zona | Tipo | N. | W per diff.
0.01 | Atrio | Z1 | plafone | 6 | 3
0.02 | Sala studio grande | Z1 | colonna | 4 | 10
-1.01 | Deposito | Z2 | tromba | 2 | 15
## Regolatori
Sigla | Locale | Potenza
R1 | 0.01 Atrio | 35 W
R2 | 0.02 S. studio grande | 50 W`, "R1 35 W x1, R2 50 W x1"},
		{"English, items", `
## Bill
Granary hall PA, 100 V line
Item | Description | Location | Qty | Tap
C.1 | Ceiling loudspeaker | Ticket desk | 2 | 3 W
C.2 | Ceiling loudspeaker | Cloakroom | 4 | 3 W
## Controls
Ref | Power | For
D1 | 10 W | C.1 Ticket desk
D2 | 24 W | C.2 Cloakroom`, "D1 10 W x1, D2 24 W x1"},
		{"German, rooms with letters", `
## Lautsprecher
Rathaus, 100 V
Raum | Bezeichnung | Anzahl | Stufe
E01 | Foyer | 4 | 6 W
E02 | Kleiner Sitzungssaal | 6 | 6 W
## Regler
Kennzeichen | Raum | Leistung
LR1 | E02 Kl. Sitzungssaal | 60 W`, "LR1 60 W x1"},
	} {
		t.Run(c.name, func(t *testing.T) {
			want(t, "controls", []string{controlsOf(wholeJob(t, c.sheet))}, []string{c.controls})
		})
	}
}

// A number of a job may have full stops in it. Common practice, no source.
func TestJobNumbersWithFullStops(t *testing.T) {
	for _, c := range []struct{ title, want string }{
		{"Dossier 2016.118", "2016.118"}, {"Project no. 24.0871.B", "24.0871.B"}, {"Projekt 2016.118, Eishalle", "2016.118"},
		{"Order 55120.", "55120"},
	} {
		j := wholeJob(t, c.title+" | Ice hall\n|\nRoom | Qty | Tap\nHall | 4 | 6 W\nYard | 2 | 15 W")
		if j.Number.Value != c.want {
			t.Errorf("%s: number %q, want %q", c.title, j.Number.Value, c.want)
		}
	}
}

// A list of controls names rooms by their numbers, which stand beside the names of the rooms below a word for rooms,
// or before them in one cell. Common practice, no source.
func TestControlsByNumbersOfRooms(t *testing.T) {
	for _, c := range []struct{ name, room, described, qty, tap, output, control string }{
		{"English", "Room", "Description", "Qty", "Tap", "Output", "Attenuator"},
		{"German", "Raum", "Bezeichnung", "Anzahl", "Abgriff", "Ausgang", "Regler"},
		{"French", "Local", "Désignation", "Nb", "Prise", "Sortie", "Atténuateur"},
		{"Spanish", "Local", "Descripción", "Uds", "Toma", "Salida", "Atenuador"},
		{"Italian", "Locale", "Descrizione", "N. diff.", "Presa", "Uscita", "Attenuatore"},
		{"Dutch", "Ruimte", "Omschrijving", "Aantal", "Afgetakt op", "Uitgang", "Regelaar"},
	} {
		rest := " | " + c.qty + " | " + c.tap + " | " + c.output
		controls := "\n## C\n" + c.control + " | " + c.room + " | W\nVR1 | 0.02 | 12\nVR2 | 0.10 | 6"
		hung := []string{"12 x 6 W zone Atrium channel 1", "3 x 3 W zone Forum control VR1 channel 1", "2 x 3 W zone Studio control VR2 channel 2", "1 x 3 W zone Archiv channel 2"}
		j := wholeJob(t, "## L\nFern library, 100 V\n|\n"+c.room+" | "+c.described+" | Typ"+rest+
			"\n0.01 | Atrium | PL | 12 | 6 W | 1\n0.02 | Forum | PL | 3 | 3 W | 1\n0.10 | Studio | PR | 2 | 3 W | 2\nP1 | Archiv | PL | 1 | 3 W | 2"+controls)
		want(t, c.name, describe(j), hung)
		for i, number := range []string{"0.01", "0.02", "0.10", "0.11"} {
			hung[i] = strings.Replace(hung[i], "zone ", "zone "+number+" ", 1)
		}
		j = wholeJob(t, "## L\nFern library, 100 V\n|\n"+c.room+rest+
			"\n0.01 Atrium | 12 | 6 W | 1\n0.02 Forum | 3 | 3 W | 1\n0.10 Studio | 2 | 3 W | 2\n0.11 Archiv | 1 | 3 W | 2"+controls)
		want(t, c.name+", in one cell", describe(j), hung)
	}
}
