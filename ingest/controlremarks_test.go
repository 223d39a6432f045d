package ingest

import (
	"strings"
	"testing"

	"lineaudit/ingest/layout"
)

// Remarks name controls once and refer to them later, by tag or by the place of
// the row that has them. Common practice in six languages, no source.
func TestControlsThatRemarksShare(t *testing.T) {
	for _, tt := range []struct {
		cafe, hire, want string
		asked            int
	}{
		{"volume control VR1 (50W) behind the desk, feeds cafe and hire", "on VR1", "VR1 50 W x2", 0},
		{"volume control VR1 (50W) behind the desk, feeds cafe and hire", "", "VR1 50 W x1", 0},
		{"vol control in cafe 30 W", "same vol control as cafe", "control (Cafe) 30 W x2", 0},
		{"Regler 30 W", "Regler wie Cafe", "control (Cafe) 30 W x2", 0},
		{"atténuateur 30 W", "même atténuateur que Cafe", "control (Cafe) 30 W x2", 0},
		{"vol control 30 W", "vol control as above", "control (Cafe) 30 W x2", 0},
		{"vol control 30 W", "same vol control as the lobby", "control (Cafe) 30 W x1", 1},
		{"vol control 30 W", "same vol control", "control (Cafe) 30 W x2", 0},
		{"", "on the roof", "", 0},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W] | notes\nHall | 8 | 3 |\nCafe | 6 | 6 | "+tt.cafe+"\nHire | 2 | 3 | "+tt.hire))
		if got := controlsOf(j); got != tt.want || len(j.Questions) != tt.asked {
			t.Errorf("%s, %s: got %s, asked %v; want %s", tt.cafe, tt.hire, got, asked(j), tt.want)
		}
	}
}

// A cell of controls may refer to another row, or name one control of several rooms
// by where it hangs. Common practice, no source.
func TestControlsNamedByWhereTheyAre(t *testing.T) {
	for _, tt := range []struct{ cafe, hire, want string }{
		{"R1 50W", "see Cafe", "R1 50 W x2"}, {"R1 50W", "zie Cafe", "R1 50 W x2"}, {"knob 50 W", "siehe Cafe", "control (Cafe) 50 W x2"},
		{"Knob at desk (50)", "Knob at desk (50)", "Knob at desk 50 W x2"},
		{"own knob, 50 W", "same knob", "control (Cafe) 50 W x2"}, {"R1 50 W", "shared", "R1 50 W x2"}, {"knob 50 W", "same as the cafe", "control (Cafe) 50 W x2"},
		{"Regler 50 W", "derselbe Regler", "control (Cafe) 50 W x2"}, {"bouton 50 W", "même bouton", "control (Cafe) 50 W x2"}, {"mando 50 W", "el mismo mando", "control (Cafe) 50 W x2"},
		{"manopola 50 W", "stessa manopola", "control (Cafe) 50 W x2"}, {"knop 50 W", "dezelfde knop", "control (Cafe) 50 W x2"},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W] | control\nHall | 8 | 3 |\nCafe | 6 | 6 | "+tt.cafe+"\nHire | 2 | 3 | "+tt.hire))
		if got := controlsOf(j); got != tt.want {
			t.Errorf("%s, %s: got %s; want %s", tt.cafe, tt.hire, got, tt.want)
		}
	}
}

// Rows that refer to each other in a circle, and long runs of rows that refer to the
// one above, end: no control comes of the one, one for all of the other.
func TestControlsThatReferInCircles(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W] | control\nHall | 8 | 3 | see Shop\nShop | 6 | 6 | see Hall"))
	if len(j.Controls) > 0 || len(j.Questions) == 0 {
		t.Errorf("got %s, asked %v", controlsOf(j), asked(j))
	}
	j = jobOf(t, draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W] | notes\nHall | 8 | 3 | volume control as Shop\nShop | 6 | 6 | volume control as Hall"))
	if len(j.Questions) == 0 {
		t.Errorf("remarks: got %s, asked %v", controlsOf(j), asked(j))
	}
	var rows strings.Builder
	rows.WriteString("\nHall | 1 | 3 | vol control 50 W")
	for range 45 {
		rows.WriteString("\nHall | 1 | 3 | vol control as above")
	}
	j = jobOf(t, draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W] | notes"+rows.String()))
	if got := controlsOf(j); got != "control (Hall) 50 W x46" {
		t.Errorf("above: got %s", got)
	}
}

// A remark that rates a tag names the control: some rows have none, and nothing else goes
// by the tag. Common practice, no source.
func TestControlsThatRemarksRate(t *testing.T) {
	for _, tt := range []struct{ hall, cafe, hire, note, want string }{
		{"", "hinter DS1 (25 W)", "hinter DS1", "", "DS1 25 W x2"},
		{"", "op DS 1, 25 W", "op DS 1", "", "DS 1 25 W x2"},
		{"", "with DS1: 25 W", "", "", "DS1 25 W x1"},
		{"behind DS2 (40 W)", "behind DS1 (25 W)", "behind DS1", "", ""}, // all are fed by something
		{"", "on DS1 (240 W)", "on DS1", "Amplifiers: DS1 240 W", ""},
		{"", "on CH1 (240 W)", "on CH1", "", ""},
	} {
		table := draw(layout.Loudspeakers, "Heads", "title : "+tt.note+"\nroom | quantity | tap[W] | notes\nHall | 8 | 3 | "+tt.hall+"\nCafe | 2 | 6 | "+tt.cafe+"\nHire | 2 | 3 | "+tt.hire)
		if got := controlsOf(jobOf(t, table)); got != tt.want {
			t.Errorf("%s, %s: got %s, want %s", tt.cafe, tt.note, got, tt.want)
		}
	}
}

// Later remarks may say "also" before the tag of a control, and an article. Common practice, no source.
func TestControlsThatRemarksNameAgain(t *testing.T) {
	for _, c := range []struct{ first, again string }{
		{"attenuator RG1, 60 W", "also with the RG1"}, {"volume control RG1 (60 W)", "also on RG1"}, {"Regler RG1, 60 W", "auch am RG1"}, {"Regler RG1, 60 W", "ebenfalls hinter dem RG1"},
		{"atténuateur RG1, de 60 W", "aussi sur le RG1"}, {"atténuateur RG1, de 60 W", "également au RG1"}, {"regulador RG1, de 60 W", "también con el RG1"},
		{"regolatore RG1, da 60 W", "anche sul RG1"}, {"regelaar RG1, van 60 W", "ook op de RG1"}, {"regelaar RG1 (60 W)", "ook RG1"},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W] | notes\nHall | 8 | 3 |\nPress | 6 | 6 | "+c.first+"\nStore | 4 | 6 | "+c.again+"\nLoft | 4 | 6 | also on the roof"))
		if got := controlsOf(j); got != "RG1 60 W x2" {
			t.Errorf("%s, %s: got %s", c.first, c.again, got)
		}
	}
}

// A remark may refer to a control of another by any word for the way through it, with a word for "also" ahead, and the tag may
// have no figure. Common practice, no source.
func TestRemarksThatAlsoLeadThroughAControl(t *testing.T) {
	for _, c := range []struct{ first, second string }{
		{"through control RG-A of 60 W", "also through RG-A"}, {"über Regler RG-A, 60 W", "auch durch RG-A"}, {"par atténuateur RG-A de 60 W", "aussi par RG-A"},
		{"por regulador RG-A de 60 W", "también por RG-A"}, {"tramite regolatore RG-A da 60 W", "anche tramite RG-A"}, {"via regelaar RG-A van 60 W", "ook door RG-A"},
		{"por regulador RG-A de 60 W, en conserjería", "por RG-A"},
	} {
		j := wholeJob(t, "Hall, 100 V\n|\nRoom | Speakers | Tap | Remarks\nHall | 6 | 6 W | "+c.first+"\nDesk | 4 | 3 W | "+c.second+"\nYard | 2 | 15 W | by RG stairs")
		want(t, c.second, describe(j), []string{"6 x 6 W zone Hall control RG-A", "4 x 3 W zone Desk control RG-A", "2 x 15 W zone Yard"})
	}
}
