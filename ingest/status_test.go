package ingest

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

// The words are common practice, no source.
func TestStatesOfRows(t *testing.T) {
	for _, tt := range []struct {
		name, columns, row string
		want               schedule.Status
		asked              bool
	}{
		{"in brackets behind a place", "room | tap[W] | channel", "Pier (réserve) | 5 | A1.1", schedule.Spare, false},
		{"in brackets in a description", "description | tap[W] | channel", "Horn in its box (spare) | 5 | A1.1", schedule.Spare, false},
		{"in brackets behind an output", "room | tap[W] | channel", "Pier | 5 | A1.1 (à venir)", schedule.Future, false},
		{"a count of spares", "room | quantity | tap[W]", "Pier | 2 reserve | 5", schedule.Spare, false},
		{"a count", "room | quantity | tap[W]", "Pier | 2 | 5", schedule.Installed, false},
		{"a tap", "tag | room | tap | channel", "LS-1 | Pier | removed | A1.1", schedule.Removed, false},
		{"two states in a column", "room | status | tap[W]", "Pier | existing, taken down | 5", schedule.Removed, false},
		{"a room of that name", "room | tap[W] | channel", "Lager | 5 | A1.1", schedule.Installed, false},
		{"in place of an amplifier", "room | tap[W] | amplifier", "Pier | 5 | entfällt", schedule.Removed, false},
		{"of the control alone", "room | tap[W] | control | amplifier", "Pier | 5 | eliminato | A1", schedule.Installed, false},
		{"two that agree, the last alone", "room | tap[W] | notes", "Pier | 5 | add alternate 2 - not installed", schedule.Removed, false},
		{"two of which none stands alone", "room | tap[W] | notes", "Pier | 5 | 2 more planned for next year", schedule.Installed, true},
		{"behind a control that is none", "room | tap[W] | control", "Pier | 5 | no - not connected any more", schedule.Removed, false},
		{"another one, in a remark on one that is fed", "tag | tap[W] | channel | notes", "LS-1 | 5 | A1.1 | spare horn in store", schedule.Installed, true},
		{"another one, counted in words", "tag | tap[W] | channel | notes", "LS-1 | 5 | A1.1 | spare one in cupboard", schedule.Installed, true},
		{"another one, counted in German", "tag | tap[W] | channel | notes", "LS-1 | 5 | A1.1 | Reserve eine im Schrank", schedule.Installed, true},
		{"a part of the row", "tag | quantity | tap[W] | notes", "LS-1 | 4 | 5 | una sin conectar", schedule.Installed, true},
		{"a part of the row, counted in figures", "tag | quantity | tap[W] | notes", "LS-1 | 4 | 5 | 2 removed", schedule.Installed, true},
		{"a part of the row, in German", "tag | quantity | tap[W] | notes", "LS-1 | 4 | 5 | einer demontiert", schedule.Installed, true},
		{"all of the row", "tag | quantity | tap[W] | notes", "LS-1 | 2 | 5 | removed", schedule.Removed, false},
		{"a spare in a remark on one that nothing feeds", "tag | tap[W] | channel | notes", "LS-1 | 5 | | spare horn in store", schedule.Spare, false},
		{"put away, en", "tag | tap[W] | channel | status", "LS-1 | 5 | A1.1 | In storage", schedule.Spare, false},
		{"put away, de", "tag | tap[W] | channel | status", "LS-1 | 5 | A1.1 | Im Depot", schedule.Spare, false},
		{"put away, fr", "tag | tap[W] | channel | status", "LS-1 | 5 | A1.1 | Entreposé", schedule.Spare, false},
		{"put away, es", "tag | tap[W] | channel | status", "LS-1 | 5 | A1.1 | En bodega", schedule.Spare, false},
		{"put away, it", "tag | tap[W] | channel | status", "LS-1 | 5 | A1.1 | Immagazzinato", schedule.Spare, false},
		{"put away, nl", "tag | tap[W] | channel | status", "LS-1 | 5 | A1.1 | In het magazijn", schedule.Spare, false},
		{"a sentence is asked about", "room | tap[W] | notes", "Pier | 5 | stands where the removed horn stood before", schedule.Installed, true},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", tt.columns+"\n"+tt.row))
			if len(j.Loudspeakers) != 1 || j.Loudspeakers[0].Status != tt.want {
				t.Fatalf("%v, want %v", describe(j), tt.want)
			}
			isAsked := false
			for _, q := range j.Questions {
				isAsked = isAsked || q.Field == "status"
			}
			if isAsked != tt.asked {
				t.Errorf("questions %v", asked(j))
			}
		})
	}
}

// What hangs on nothing while all others hang on something, and is named after a
// state, is no room of that name.
func TestStateInPlaceOfARoom(t *testing.T) {
	for table, want := range map[string]string{
		"Hall | 4 | 6 | A1\nreserve in kast | 2 | 6 |":   "installed spare",
		"Hall | 4 | 6 | A1\nRéserve au dépôt | 2 | 6 |":  "installed spare",
		"Hall | 4 | 6 | A1\nReserve | 2 | 6 |":           "installed spare",
		"Hall | 4 | 6 | A1\nReserve room | 2 | 6 | A1":   "installed installed",
		"Hall | 4 | 6 |\nReserve room | 2 | 6 |":         "installed installed",
		"Hall | 4 | 6 | A1\nYard | 2 | 6 |":              "installed installed",
		"Hall | 4 | 6 | A1\nReserveraum Nord | 2 | 6 | ": "installed installed",
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "LS", "room | quantity | tap[W] | amplifier\n"+table))
		var got []string
		for _, l := range j.Loudspeakers {
			got = append(got, l.Status.String())
		}
		if s := strings.Join(got, " "); s != want {
			t.Errorf("%s: %s, want %s", table, s, want)
		}
	}
}

func TestLegendOfStates(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Plan", "title : (E) EXISTING TO REMAIN  (N) NEW  (R) REMOVE  (F) FUTURE\ntag | room | tap[W]\n(E)S1 | Hall | 5\n(R)S2 | Hall | 5\n(N)S3 | Hall | 5\n(F)S4 | Hall | 5"))
	var got []string
	for _, l := range j.Loudspeakers {
		got = append(got, l.Status.String())
	}
	want(t, "states", got, []string{"installed", "removed", "installed", "future"})
}

// A legend may explain bare letters, which stand alone in a column of states;
// what a header asks for is answered by yes and no. Common practice, no source.
func TestLettersAndAnswers(t *testing.T) {
	for _, tt := range []struct{ name, table, want string }{
		{"letters of a legend", "title : Key: E = existing, N = new, R = remove, F = future\ntag | room | tap[W] | status\nS1 | Hall | 5 | E\nS2 | Hall | 5 | R\nS3 | Hall | 5 | N\nS4 | Hall | 5 | F", "installed removed installed future"},
		{"installed or not", "tag | room | tap[W] | status: Installed?\nS1 | Hall | 5 | Y\nS2 | Hall | 5 | N", "installed future"},
		{"tested or not", "tag | room | tap[W] | status: Tested?\nS1 | Hall | 5 | Y\nS2 | Hall | 5 | N", "installed installed"},
		{"in German", "tag | room | tap[W] | status: montiert\nS1 | Hall | 5 | ja\nS2 | Hall | 5 | nein", "installed future"},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Plan", tt.table))
		var got []string
		for _, l := range j.Loudspeakers {
			got = append(got, l.Status.String())
		}
		want(t, tt.name, got, strings.Fields(tt.want))
	}
}

func TestColumnOfStatesUnderAnyHeader(t *testing.T) {
	for _, field := range []string{"job: Measure", ": Action", "from: Findings"} {
		j := jobOf(t, draw(layout.Loudspeakers, "Plan", "tag | room | tap[W] | "+field+"\nS1 | Hall | 5 | existing\nS2 | Hall | 5 | removed\nS3 | Hall | 5 | new\nS4 | Bar | 5 | future"))
		var got []string
		for _, l := range j.Loudspeakers {
			got = append(got, l.Status.String())
		}
		want(t, field, got, []string{"installed", "removed", "installed", "future"})
	}
}

// Words for a store are rooms where they stand for a place, and states in a
// remark or a count; what is denied is none. Common practice, no source.
func TestWordsThatMayBeStates(t *testing.T) {
	for _, tt := range []struct {
		name, table string
		want        []schedule.Status
		asked       int
	}{
		{"a store room as a description", "description | tap[W]\nLager | 5\nStock | 5", []schedule.Status{schedule.Installed, schedule.Installed}, 0},
		{"in store, in a remark", "tag | tap[W] | notes\nLS-1 | 5 | Lager\nLS-2 | 5 | op voorraad", []schedule.Status{schedule.Spare, schedule.Spare}, 0},
		{"a state and why", "tag | tap[W] | notes\nLS-1 | 5 | future - duct and draw rope only, no cable", []schedule.Status{schedule.Future}, 0},
		{"a state denied", "tag | tap[W] | notes\nLS-1 | 5 | not spare", []schedule.Status{schedule.Installed}, 0},
		{"still to come", "tag | tap[W] | notes\nLS-1 | 5 | nog te plaatsen\nLS-2 | 5 | not fitted yet\nLS-3 | 5 | reste à poser", []schedule.Status{schedule.Future, schedule.Future, schedule.Future}, 0},
		{"gone", "tag | tap[W] | notes\nLS-1 | 5 | missing\nLS-2 | 5 | fehlt\nLS-3 | 5 | robado", []schedule.Status{schedule.Removed, schedule.Removed, schedule.Removed}, 0},
		{"does not work", "tag | tap[W] | notes\nLS-1 | 5 | dead\nLS-2 | 5 | defekt", []schedule.Status{schedule.Installed, schedule.Installed}, 2},
		{"does not work, in a column for it", "tag | tap[W] | status\nLS-1 | 5 | en panne", []schedule.Status{schedule.Installed}, 1},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", tt.table))
			var got []schedule.Status
			for _, l := range j.Loudspeakers {
				got = append(got, l.Status)
			}
			n := 0
			for _, q := range j.Questions {
				if q.Field == "status" {
					n++
				}
			}
			if !slices.Equal(got, tt.want) || n != tt.asked {
				t.Errorf("%v, %d questions; want %v, %d", got, n, tt.want, tt.asked)
			}
		})
	}
}

// What is to be fitted is new where all is planned, and not there yet where
// other rows say that they are; a year makes it plain. Common practice, no source.
func TestToBeFitted(t *testing.T) {
	for _, tt := range []struct {
		name, states string // parted by slashes
		want         string
		taken        int
	}{
		{"all of a design", "à poser/existant/à poser", "installed installed installed", 0},
		{"among installed ones", "montato/da montare/montato", "installed future installed", 1},
		{"pending", "instalado/pendiente/quitado en 2021", "installed future removed", 1},
		{"in a year", "neu/wird montiert 2027/Bestand", "installed future installed", 0},
		{"there since", "ok/sinds 2018/te plaatsen in 2027", "installed installed future", 0},
	} {
		t.Run(tt.name, func(t *testing.T) {
			var table strings.Builder
			table.WriteString("room | tap[W] | status")
			for i, s := range strings.Split(tt.states, "/") {
				table.WriteString(fmt.Sprintf("\nHall %d | 5 | %s", i, s))
			}
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", table.String()))
			var got []string
			for _, l := range j.Loudspeakers {
				got = append(got, l.Status.String())
			}
			want(t, "states", got, strings.Fields(tt.want))
			n := 0
			for _, a := range j.Assumptions {
				if a.Field == "status" {
					n++
				}
			}
			if n != tt.taken {
				t.Errorf("%d assumptions on states, want %d", n, tt.taken)
			}
		})
	}
}

func TestRowsThatAreTitlesOfAState(t *testing.T) {
	j := jobOf(t, draw(layout.Zones, "Zones", "zone | quantity | tap[W] | channel\nInstalled | | |\nHall | 4 | 5 | A1.1\nSpare - on the shelf | | |\nHorn | 2 | 10 |\nPhase 2 (not yet fitted) | | |\nTerrace | 4 | 10 | A1.2"))
	var got []string
	for _, l := range j.Loudspeakers {
		got = append(got, l.Zone.Name+" "+l.Status.String())
	}
	want(t, "states", got, []string{"Hall installed", "Horn spare", "Terrace future"})
	if len(j.Zones) != 3 {
		t.Errorf("%d zones", len(j.Zones))
	}
}

func TestStateBehindATap(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "L", `
		tag | zone | tap
		LS-1 | Dock | 2W (spare - in store)
		LS-2 | Dock | 15W
		LS-3 | Dock | 5 W (1 spare)`))
	for _, l := range j.Loudspeakers {
		if want := map[string]schedule.Status{"LS-1": schedule.Spare, "LS-2": schedule.Installed, "LS-3": schedule.Installed}[l.Tag.Value]; l.Status != want {
			t.Errorf("%s is %s, want %s", l.Tag.Value, l.Status, want)
		}
		if l.Tag.Value == "LS-1" && show(l.Tap) != "2" {
			t.Errorf("tap %s", show(l.Tap))
		}
	}
}

// An odd word among states that are known is asked; a column of odd words says nothing.
func TestOddStateIsAsked(t *testing.T) {
	const head = "tag | room | tap[W] | status\nS1 | Hall | 5 | installed\nS2 | Hall | 5 | installed\nS3 | Hall | 5 | removed\n"
	j := jobOf(t, draw(layout.Loudspeakers, "L", head+"S4 | Yard | 5 | wobbly thing"))
	if len(asked(j)) != 1 || j.Loudspeakers[3].Status != schedule.Installed {
		t.Errorf("asked %v, status %v", asked(j), j.Loudspeakers[3].Status)
	}
	j = jobOf(t, draw(layout.Loudspeakers, "L", "tag | room | tap[W] | status\nS1 | Hall | 5 | north\nS2 | Hall | 5 | south\nS3 | Hall | 5 | installed"))
	if len(asked(j)) != 0 {
		t.Errorf("asked %v", asked(j))
	}
}

// Where few rows of a list say that they are to be fitted, the others are there.
// Common practice, no source.
func TestFewRowsToBeFitted(t *testing.T) {
	for rows, want := range map[string]string{
		"A | \nB | \nC | \nD | to be added":                                      "installed installed installed future",
		"A | to be fitted\nB | to be fitted\nC | to be fitted\nD | to be fitted": "installed installed installed installed",
	} {
		rows = strings.ReplaceAll(rows, " |", " | 4 | 6 |")
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W] | notes\n"+rows))
		var got []string
		for _, l := range j.Loudspeakers {
			got = append(got, l.Status.String())
		}
		if strings.Join(got, " ") != want {
			t.Errorf("%s: %s, want %s", rows, got, want)
		}
	}
}
