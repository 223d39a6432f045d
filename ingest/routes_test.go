package ingest

import (
	"strings"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

// The notes are common practice, no source.
func TestNotesRouteZones(t *testing.T) {
	zoned := "tag | zone | tap[W]\nLS-1 | 1 - Public | 5\nLS-2 | 2 - Staff | 5"
	roomed := "tag | room | tap[W]\nLS-1 | Public | 5\nLS-2 | Staff | 5"
	for _, tt := range []struct{ name, note, rows, one, two string }{
		{"zones = outputs, rated", "title : Amplifier channel: Public = ch 1 (100 W), Staff = ch 2 (35 W)", zoned, "1 100 W", "2 35 W"},
		{"zone output, side by side", "title : Versterker: zone 1 uitgang 1 (100W), zone 2 uitgang 2 (35W)", zoned, "1 100 W", "2 35 W"},
		{"an amplifier each", "title : Zone 1 : ampli 1, 100 W\ntitle : Zone 2 : ampli 2, 35 W", zoned, "ampli 1 / 1 100 W", "ampli 2 / 1 35 W"},
		{"outputs first", "title : Ch 1: Public, 100 W; Ch 2: Staff, 35 W", roomed, "1 100 W", "2 35 W"},
		{"rooms", "title : Public -> output 1; Staff -> output 2", roomed, "1 ? W", "2 ? W"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", tt.note+"\n"+tt.rows))
			var got []string
			for _, l := range j.Loudspeakers {
				if l.Channel == nil {
					got = append(got, "none")
					continue
				}
				got = append(got, l.Channel.Label()+" "+show(l.Channel.Rated)+" W")
			}
			want(t, "outputs", got, []string{tt.one, tt.two})
		})
	}
}

func TestNotesThatRouteNothing(t *testing.T) {
	for _, note := range []string{"title : Public hours are 9 to 5", "title : Zone 1 was rewired in 2009", "title : Staff: 12 persons, 2 shifts", "title : Public address, 100 W", "title : System: 2 x 60 W"} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", note+"\ntag | zone | tap[W]\nLS-1 | 1 - Public | 5\nLS-2 | 2 - Staff | 5"))
		if len(j.Channels) > 0 {
			t.Errorf("%s: channel %s", note, j.Channels[0].Label())
		}
	}
}

func TestNotesRateControls(t *testing.T) {
	for _, note := range []string{"VC-2, VC-3: 35 W", "VC-2 et VC-3 : 35 W maxi", "VC-2 & VC-3: 35W attenuator, 1-gang", "VC-2 und VC-3 max. 35 W", "VC-2 to VC-3: 35 W"} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : "+note+"\ntag | tap[W] | control\nLS-1 | 5 | VC-2\nLS-2 | 5 | VC-3\nLS-3 | 5 | VC-4"))
		var got []string
		for _, c := range j.Controls {
			got = append(got, c.Name+" "+show(c.Rated))
		}
		want(t, note, got, []string{"VC-2 35", "VC-3 35", "VC-4 ?"})
	}
}

func TestNotesRouteLines(t *testing.T) {
	for _, note := range []string{"title : Línea L1: etapa 1, 60 W\ntitle : Línea L2: etapa 2, 30 W", "title : L1 = amp 1 60 W; L2 = amp 2 30 W"} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", note+"\ntag | tap[W] | circuit: Line\nLS-1 | 5 | L1\nLS-2 | 5 | L2"))
		var got []string
		for _, l := range j.Loudspeakers {
			got = append(got, l.Channel.Name+" "+show(l.Channel.Rated))
			if l.Channel.Amplifier == nil {
				t.Errorf("%s: no amplifier", note)
			}
		}
		want(t, note, got, []string{"L1 60", "L2 30"})
	}
}

// Controls that remarks and notes name among other words; common practice, no
// source.
func TestControlsAmongWords(t *testing.T) {
	for _, tt := range []struct {
		name, table string
		want        []string
	}{
		{"in a remark", "tag | tap[W] | channel | notes\nLS-1 | 5 | A1.1 | local att. ATT-1, 6 W\nLS-2 | 5 | A1.1 |", []string{"ATT-1 6 W: LS-1"}},
		{"a remark that denies", "tag | tap[W] | channel | notes\nLS-1 | 5 | A1.1 | not behind VC-1\nLS-2 | 5 | A1.1 |", nil},
		{"in a section title", "tag | tap[W]\nsection control: behind attenuator T1, 12 W\nLS-1 | 5\nLS-2 | 5", []string{"T1 12 W: LS-1 LS-2"}},
		{"two ratings in a note", "tag | tap[W] | control\nLS-1 | 5 | AT1\nLS-2 | 5 | AT2\n# AT1 : 3 W max - AT2 : 12 W max", []string{"AT1 3 W: LS-1", "AT2 12 W: LS-2"}},
		{"letters for numbers", "tag | tap[W] | control\nLS-1 | 5 | VC A\nLS-2 | 5 | VC B\n# VC A and VC B are 6 W controls, VC B is on the landing", []string{"VC A 6 W: LS-1", "VC B 6 W: LS-2"}},
		{"on a room", "tag | tap[W] | room\nLS-1 | 5 | Viewing\nLS-2 | 5 | Shop\n# Volume control VC-V (35 W) on Viewing", []string{"VC-V 35 W: LS-1"}},
		{"a word before the rating", "tag | tap[W] | control\nLS-1 | 5 | R1 da 10 W", []string{"R1 10 W: LS-1"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", tt.table))
			var got []string
			for _, c := range j.Controls {
				var text strings.Builder
				text.WriteString(c.Name + " " + show(c.Rated) + " W:")
				for _, l := range j.Loudspeakers {
					if l.Control == c {
						text.WriteString(" " + l.Tag.Value)
					}
				}
				got = append(got, text.String())
			}
			want(t, "controls", got, tt.want)
		})
	}
}

func TestNotesRateLines(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : HR-1, HR-2: 100W amp channel. HR-3: 200W amp channel.\ntag | room | tap[W] | cable: Homerun\nS1 | Hall | 5 | HR-1\nS2 | Hall | 5 | HR-1\nS3 | Bar | 5 | HR-2\nS4 | Rink | 15 | HR-3\nS5 | Rink | 15 | HR-3"))
	want(t, "channels", channelRatings(j), []string{"HR-1 100 W ? V", "HR-2 100 W ? V", "HR-3 200 W ? V"})
}

func TestRowsOfControlsOutsideTables(t *testing.T) {
	drawn := draw(layout.Loudspeakers, "Heads", "tag | room | tap[W] | control\nS1 | Hall | 5 | K1\nS2 | Bar | 5 | K2")
	for i, text := range []string{"K1", "North door", "20W max"} {
		drawn.Titles = append(drawn.Titles, layout.Fact{Text: text, At: schedule.At("job.xlsx", "Heads", 31, 2+i)})
	}
	j := jobOf(t, drawn)
	if c := j.Controls[0]; c.Rated.Low != 20 || j.Controls[1].Rated.Had() {
		t.Errorf("%s rated %v, the other %v", c.Name, c.Rated, j.Controls[1].Rated)
	}
}

func TestNotesRateAmplifiers(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : P1 à P2 : 60 W\ntag | room | tap[W] | amplifier\nS1 | Hall | 5 | P1\nS2 | Bar | 5 | P2\nS3 | Bar | 5 | P3"))
	want(t, "channels", channelRatings(j), []string{"P1 / 1 60 W ? V", "P2 / 1 60 W ? V", "P3 / 1 ? W ? V"})
}

func TestRowsOfLinesOutsideTables(t *testing.T) {
	drawn := draw(layout.Loudspeakers, "Heads", "zone | quantity | tap[W] | circuit: Line\nRink | 12 | 10 | L1\nBar | 4 | 3 | L2")
	for row, cells := range [][]string{{"L1", "Ampli A sortie 1", "140 m", "2x2,5"}, {"L2", "Ampli B", "60 m", "2x1,5", "30 W"}} {
		for i, text := range cells {
			drawn.Titles = append(drawn.Titles, layout.Fact{Text: text, At: schedule.At("job.xlsx", "Heads", 31+row, 1+i)})
		}
	}
	j := jobOf(t, drawn)
	want(t, "loudspeakers", describe(j), []string{"12 x 10 W zone Rink channel Ampli A / 1", "4 x 3 W zone Bar channel Ampli B / L2"})
	want(t, "channels", channelRatings(j), []string{"Ampli A / 1 ? W ? V", "Ampli B / L2 30 W ? V"})
	for i, m := range []float64{140, 60} {
		if r := j.Loudspeakers[i].Run; r == nil || float64(r.Length.Low) != m || r.Reach != schedule.WholeLine || !r.Area.Had() {
			t.Errorf("line %d: %+v", i+1, r)
		}
	}
}

// Notes may give lines to amplifiers, several at once; watts said of an amplifier with several lines are those
// of all of them, as far as can be told. Common practice, no source.
func TestNotesFeedLines(t *testing.T) {
	const list = "Where | Qty | W | Circuit\nHall | 4 | 6 | 1\nYard | 2 | 15 | 2\nDock | 2 | 15 | 3\n|\n"
	for note, wanted := range map[string]string{
		"Linea 1: finale F1 da 120 W. Linee 2 e 3: finale F2 da 60 W":          "F",
		"Line 1: amp F1 of 120 W. Lines 2 and 3: amp F2 of 60 W":               "F",
		"Kreis 1: Endstufe F1 mit 120 W, Kreise 2 und 3: Endstufe F2 mit 60 W": "F",
		"Ligne 1 : ampli F1 de 120 W. Lignes 2 et 3 : ampli F2 de 60 W":        "F",
	} {
		j := wholeJob(t, "## List\nRowing hall\n|\n"+list+note+"\n")
		want(t, note, describe(j), []string{"4 x 6 W zone Hall channel " + wanted + "1 / 1", "2 x 15 W zone Yard channel " + wanted + "2 / 2", "2 x 15 W zone Dock channel " + wanted + "2 / 3"})
		for _, a := range j.Amplifiers {
			if a.Name == "F2" && show(a.Rated) != "60" {
				t.Errorf("%s: F2 rated %s", note, show(a.Rated))
			}
		}
		want(t, note, channelRatings(j)[:min(1, len(j.Channels))], []string{"F1 / 1 120 W ? V"})
	}
}

// Amplifiers may be listed each with its rating and its place, before or behind. Common practice, no source.
func TestNotesRateAmplifiersAndNameTheirPlaces(t *testing.T) {
	for _, note := range []string{"100 V, V1 = 240 W (Hall), V2 = 120 W (Side)", "V1: 240 W - Hall; V2: 120 W - Side", "Amp V1 (240 W): Hall, amp V2 (120 W): Side"} {
		j := wholeJob(t, "## Now\nIce rink\n"+note+"\n|\nArea | Where | Kind | Qty | W/pc | Amp\nHall | North | ceiling | 4 | 6 | V1\nHall | South | horn | 2 | 15 | V1\nSide | Dock | horn | 2 | 15 | V2")
		want(t, note, describe(j), []string{"4 x 6 W zone Hall channel V1 / 1", "2 x 15 W zone Hall channel V1 / 1", "2 x 15 W zone Side channel V2 / 1"})
		for i, w := range []string{"240", "120"} {
			if got := show(j.Channels[i].Rated); got != w {
				t.Errorf("%s: %s rated %s, want %s", note, j.Channels[i].Label(), got, w)
			}
		}
	}
}

// Cables may run from room to room where loudspeakers have rooms. Common practice, no source.
func TestCablesFromRoomToRoom(t *testing.T) {
	j := wholeJob(t, "## List\nRowing club, 100 V\n|\nArea | Where | Kind | Qty | W/pc | Amp\nHall | North | ceiling | 4 | 6 | V1\nHall | South | horn | 2 | 15 | V1\n## Cables\nvan / von | naar / nach | Typ | m\nV1 | North | 2x2,5 | 60\nNorth | South | 2x2,5 | 24")
	for _, c := range j.Cables {
		if !c.From.Resolved() || c.To.Loudspeaker == nil {
			t.Errorf("%v to %v", c.From.Text, c.To.Text)
		}
	}
	if len(j.Cables) != 2 {
		t.Errorf("%d cables", len(j.Cables))
	}
}

// A list of cables from amplifiers without outputs, to loudspeakers that another list tells of. Common practice, no source.
func TestCablesFromWholeAmplifiers(t *testing.T) {
	j := wholeJob(t, "## Pool\nPool hall, 100 V\n|\nCable | From | To | Type | m\nC1 | Amp A | LS1 | 2C 2.5mm2 | 28\nC2 | LS1 | LS2 | 2C 2.5mm2 | 12\nC3 | Amp B | VC1 | 2C 1.5mm2 | 6\nC4 | VC1 | LS3 | 2C 1.5mm2 | 9\n|\n"+
		"Spkr | Where | Tap\nLS1 | Deep end | 10W\nLS2 | Shallow end | 10W\nLS3 | Reception | 3W\n|\nAmp A 120W, Amp B 60W, both in plant room. VC1 is the 12W wall control at reception.")
	want(t, "feeds", describe(j), []string{"LS1 1 x 10 W zone Deep end channel A / 1", "LS2 1 x 10 W zone Shallow end channel A / 1", "LS3 1 x 3 W zone Reception control VC1 channel B / 1"})
	for _, c := range j.Channels {
		if w := map[string]string{"A": "120", "B": "60"}[c.Amplifier.Name]; show(c.Rated) != w {
			t.Errorf("%s rated %s, want %s", c.Label(), show(c.Rated), w)
		}
	}
}

// A note may name the amplifier of a line and, behind a comma, its output. Common practice, no source.
func TestNotesNameTheOutputOfALine(t *testing.T) {
	for _, note := range []string{"L1 = amp E1, output 1, 60 W", "L1: Verstärker E1, Ausgang 1, 60 W", "L1 : ampli E1, sortie 1, 60 W", "L1 = etapa E1, salida 1, 60 W, línea de 100 V", "L1: finale E1, uscita 1, 60 W", "L1: versterker E1, uitgang 1, 60 W"} {
		j := wholeJob(t, "## Now\nRink\n|\nWhere | Kind | Qty | W | Line\nHall | ceiling | 4 | 6 | L1\nGate | ceiling | 2 | 6 | L1\n|\n"+note)
		if len(j.Channels) != 1 || j.Channels[0].Label() != "E1 / 1" || show(j.Channels[0].Rated) != "60" {
			t.Errorf("%s: %v", note, channelRatings(j))
		}
	}
}
