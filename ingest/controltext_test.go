package ingest

import (
	"fmt"
	"strings"
	"testing"

	"lineaudit/ingest/layout"
)

func TestControlsInRemarks(t *testing.T) {
	for _, tt := range []struct{ remark, control, rating string }{
		{"local att. ATT-1, 6 W", "ATT-1", "6"},
		{"regelaar VR-W 15 W", "VR-W", "15"},
		{"behind a wall knob of 35W", "control (Hall)", "35"},
		{"no volume control", "", ""},
		{"volume control removed 2011", "", ""},
		{"10 W horn", "", ""},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "tag | room | tap[W] | notes\nS1 | Hall | 5 | "+tt.remark))
		name, rating := "", ""
		if c := j.Loudspeakers[0].Control; c != nil {
			name, rating = c.Name, show(c.Rated)
		}
		if name != tt.control || rating != tt.rating {
			t.Errorf("%s: control %q rated %s, want %q, %s", tt.remark, name, rating, tt.control, tt.rating)
		}
	}
}

func TestControlsInSectionTitles(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "description | quantity | tap[W]\nsection control: VC-1 (10 W) - Seed room\nCeiling loudspeaker | 2 | 2.5\nsection control: VC-2 rated 40 W - Tunnel\nHorn | 4 | 10"))
	want(t, "loudspeakers", describe(j), []string{"2 x 2.5 W zone Seed room control VC-1", "4 x 10 W zone Tunnel control VC-2"})
	if j.Controls[0].Rated.Low != 10 || j.Controls[1].Rated.Low != 40 {
		t.Errorf("rated %v and %v", j.Controls[0].Rated, j.Controls[1].Rated)
	}
}

func TestSeveralControlsInOneCellAreAsked(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "zone | quantity | tap[W] | control\nBar | 4 | 3 | AT1\nOffices | 6 | 1.5 | AT2 / AT3"),
		draw(layout.Controls, "Knobs", "control | control rating[W]\nAT1 | 15\nAT2 | 6\nAT3 | 6"))
	want(t, "loudspeakers", describe(j), []string{"4 x 3 W zone Bar control AT1", "6 x 1.5 W zone Offices"})
	want(t, "asked", asked(j), []string{"D3 control"})
}

func TestOneControlForEachIsAsked(t *testing.T) {
	for _, text := range []string{"je Kabine ein Regler 10 W", "one 10 W knob per booth", "un atténuateur par cabine"} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W] | control\nBooths | 6 | 3 | "+text))
		if len(j.Controls) != 0 || len(j.Questions) != 1 || j.Questions[0].Field != "control" {
			t.Errorf("%s: %d controls, asked %v", text, len(j.Controls), asked(j))
		}
	}
}

// What stands in brackets behind a count and watts is beside the device.
func TestBracketsMakeNoControl(t *testing.T) {
	j := jobOf(t, draw(layout.Mixed, "L", "tag: Way | description | tap[W]\nCh 1 | 8 x ceiling (VC 30 W) | 3\nCh 2 | 4 x horn | 15"))
	if len(j.Loudspeakers) != 2 {
		t.Errorf("%d loudspeakers, %d controls", len(j.Loudspeakers), len(j.Controls))
	}
}

// Numbers of controls beside their rating: several are asked, one is one. Rooms of a
// zone that differ in their controls have each its own. Common practice, no source.
func TestCountedControls(t *testing.T) {
	j := wholeJob(t, `Ice rink PA, 100 V
Zone | Qty | Tap | Vol
Lobby | 14 | 4 W | (1) 100W
Lockers | 12 | 2 W | (6) 10W
Offices | 4 | 3 W | 2 x 10W`)
	if got, want := controlsOf(j), "control (Lobby) 100 W x1"; got != want {
		t.Errorf("controls %s, want %s", got, want)
	}
	want(t, "asked", asked(j), []string{"D4 control", "D5 control"})
	j = wholeJob(t, `Museum PA, 70 V
Zone | Room | Qty | Tap | Volume control (Y/N) | VC rating
1 | Vestibule | 2 | 4 W | N |
1 | Lobby | 8 | 4 W | Y | 50
1 | Store | 6 | 2 W | Y | 10
2 | Hall | 4 | 2 W | Y | 10
2 | Hall annex | 4 | 2 W | Y | 10`)
	if got, want := controlsOf(j), "control (Lobby) 50 W x1, control (Store) 10 W x1, control (2) 10 W x2"; got != want {
		t.Errorf("controls %s, want %s", got, want)
	}
	j = wholeJob(t, `Museum PA, 70 V
Zone | Room | Qty | Tap | Remarks
1 | Lobby | 8 | 4 W | on 50 W vol ctrl
1 | Store | 6 | 2 W | vol ctrl 15 W
1 | Hall | 4 | 2 W | new grilles`)
	if got, want := controlsOf(j), "control (Lobby) 50 W x1, control (Store) 15 W x1"; got != want {
		t.Errorf("controls in remarks %s, want %s", got, want)
	}
}

// A range of controls beside loudspeakers is several controls, of which nothing says
// what hangs behind each; a tag with a hyphen is one. Common practice, no source.
func TestRangeOfControls(t *testing.T) {
	j := wholeJob(t, `Ice rink PA, 100 V
Room | Qty | Tap | Control | Control W
Kiosk | 2 | 6 W | ST1 | 10
Changing 1-4 | 8 | 3 W | ST3 ... ST6 | 10
Office | 1 | 6 W | VC1-4 | 10`)
	if got, want := controlsOf(j), "ST1 10 W x1, VC1-4 10 W x1"; got != want {
		t.Errorf("controls %s, want %s", got, want)
	}
	want(t, "asked", asked(j), []string{"D4 control"})
}

// A description of groups may end in the control that they hang behind, and the watts of
// the groups stand beside it once more. Common practice, no source.
func TestGroupsBehindAControl(t *testing.T) {
	j := wholeJob(t, `ELA-Anlage Sternwarte, 100 V
Linie | Räume | Lautsprecher | berechnet | Ausgang
L1 | Foyer | 6 DL à 3 W + 2 DL à 1,5 W | 21 W | V1/1
L2 | Saal | 4 Boxen à 10 W, über Regler R1 (40 W) | 40 W | V1/2
L3 | Kuppel | 2 Boxen à 5 W | 10 W | V2/1
L4 | Hof | 2 Horn à 15 W | 30 W | V2/2`)
	if got, want := controlsOf(j), "R1 40 W x1"; got != want {
		t.Errorf("controls %s, want %s", got, want)
	}
	var got []string
	for _, l := range j.Loudspeakers {
		got = append(got, fmt.Sprintf("%v x %v W", l.Count.Low, l.Tap.Low))
	}
	want(t, "groups", got, []string{"6 x 3 W", "2 x 1.5 W", "4 x 10 W", "2 x 5 W", "2 x 15 W"})
}

// What feeds a row is its control, or none; amplifiers may be called by their watts. Common practice, no source.
func TestFedDirectly(t *testing.T) {
	j := wholeJob(t, `Palm house loudspeakers
100v line. 1 no. 120W amp (palms) 1 no. 60W amp (rest)

speakers | where | tap | which amp | how fed
6 no. columns | palm house | 10W | 120 | direct
4 no. ceiling | balcony | 3W | 60 | vc 1
2 no. horns | yard | 7.5W | 60 | direct

vc 1 is 15W`)
	if got, want := controlsOf(j), "vc 1 15 W x1"; got != want {
		t.Errorf("controls %s, want %s", got, want)
	}
	var got []string
	for _, c := range j.Channels {
		v := j.LineVoltsOf(c)
		got = append(got, fmt.Sprintf("%s %v W %v V", c.Label(), c.Rated.Low, v.Low))
	}
	want(t, "outputs", got, []string{"120 / 1 120 W 100 V", "60 / 1 60 W 100 V"})
}

// Several controls of one row in a zone leave open what hangs behind each. Common practice, no source.
func TestSeveralControlsOfAZone(t *testing.T) {
	j := jobOf(t, draw(layout.Mixed, "Bill", "tag | description | quantity | zone | tap[W] | control rating[W]\nA1 | Ceiling loudspeaker | 14 | 1 | 3 |\nA5 | Volume control | 2 | 1 | | 24"))
	if j.Loudspeakers[0].Control != nil || j.Zones[0].Control != nil {
		t.Error("one of two controls carries all")
	}
	want(t, "asked", asked(j), []string{"A3 control"})
}

// A short list rates lines by their names, which may be those of amplifiers. Common practice, no source.
func TestLinesNamedAsAmplifiers(t *testing.T) {
	j := wholeJob(t, `Take-off of loudspeakers, 100 V
Room | Qty | Type | Tap | Circuit
Hall | 4 | projector | 10 W | PA1
Gym | 8 | ceiling | 3 W | PA2

Amplifiers |
PA1 | 60W
PA2 | 240W`)
	var got []string
	for _, c := range j.Channels {
		got = append(got, c.Name+" "+show(c.Rated))
	}
	want(t, "outputs", got, []string{"PA1 60", "PA2 240"})
}

// A cell may tell where the control hangs behind its tag, a note call it by the tag alone.
func TestControlsWithTheirPlaces(t *testing.T) {
	for _, tt := range []struct {
		note string
		want string
	}{
		{"LR1 = 35 W, LR2 = 12 W", "LR1 35; LR2 12"},
		{"LR1 Kasse 35 W", "LR1 Kasse 35; LR2 ?"},
		{"Regler siehe Plan", "LR1 Kasse ?; LR2 ?"},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "L", "title : "+tt.note+"\nroom | quantity | tap[W] | control\nEingang | 6 | 3 | LR1 Kasse\nKasse | 1 | 3 | LR1 Kasse\nSauna | 4 | 3 | LR2"))
		var got []string
		for _, c := range j.Controls {
			got = append(got, c.Name+" "+show(c.Rated))
		}
		if s := strings.Join(got, "; "); s != tt.want {
			t.Errorf("%s: %s, want %s", tt.note, s, tt.want)
		}
	}
}

// A list of kit beside a list of rooms counts the same loudspeakers once more; its amplifier
// has an output for each zone. Common practice, no source.
func TestKitBesideRooms(t *testing.T) {
	j := wholeJob(t, `Boathouses PA enquiry
 | | | | | | Kit list |
Room | Speakers | Type | Watts each | Zone | | Item | Qty
Bay 1 | 4 | projector | 10 | A | | 2 zone mixer amp 2 x 120W 100V | 1
Bay 2 | 4 | projector | 10 | A | | 10W projector | 8
Office | 1 | ceiling | 3 | B | | 6W ceiling | 7
Trophies | 6 | ceiling | 3 | B | | gooseneck mic | 1

Volume controls: office 12W, trophies 24W, third one spare`)
	want(t, "loudspeakers", describe(j), []string{"4 x 10 W zone A channel A", "4 x 10 W zone A channel A", "1 x 3 W zone B control control (office) channel B", "6 x 3 W zone B control control (trophies) channel B"})
	if got, want := controlsOf(j), "control (office) 12 W x1, control (trophies) 24 W x1"; got != want {
		t.Errorf("controls %s, want %s", got, want)
	}
}

// A tag with its rating behind it is no model, in however many rooms it stands. Common practice, no source.
func TestTagsWithTheirRatings(t *testing.T) {
	j := wholeJob(t, `Boathouse loudspeakers, 100 V
Room | Qty | Tap | Attenuator
Club room | 4 | 3 W | AT/2 15W
Store | 1 | 3 W | AT/2 15W
Committee | 2 | 3 W | AT/3 10W`)
	if got, want := controlsOf(j), "AT/2 15 W x2, AT/3 10 W x1"; got != want {
		t.Errorf("controls %s, want %s", got, want)
	}
}

// Under a title of controls alone numbers name them, and each stands in the room whose
// loudspeakers it controls where these name none. Common practice, no source.
func TestControlsByTheirRooms(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "HP", "zone | room | quantity | tap[W]\nZ3 | Hall | 6 | 3\nZ3 | Salle | 4 | 3\nZ3 | Bureau | 1 | 1.5"),
		draw(layout.Controls, "Atténuateurs", "control | zone | room | control rating[W]\n1 | Z3 | Salle | 24\n2 | Z3 | Bureau | 6"))
	if got, want := controlsOf(j), "1 24 W x1, 2 6 W x1"; got != want {
		t.Errorf("controls %s, want %s", got, want)
	}
}

// The control may be told in the cell of a tap, or behind a description without a comma. Common practice, no source.
func TestControlsInOtherCells(t *testing.T) {
	j := wholeJob(t, `Zwembad omroep, 100 V
Ruimte | Luidsprekers | Afgeregeld op | Totaal (W)
Zaal | 6 kolommen | 10 W | 60
Vergaderruimte | 2 inbouw | 6 W (regelaar 20 W) | 12`)
	if got, want := controlsOf(j), "control (Vergaderruimte) 20 W x1"; got != want {
		t.Errorf("controls %s, want %s", got, want)
	}
	if _, tail := splitControl("6 plafonniers 1,5 W derrière atténuateur 12 W"); tail != "derrière atténuateur 12 W" {
		t.Errorf("tail %q", tail)
	}
	if _, tail := splitControl("4 Boxen à 10 W, über Regler R1 (40 W)"); tail != "über Regler R1 (40 W" {
		t.Errorf("tail %q", tail)
	}
}
