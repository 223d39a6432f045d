package ingest

import (
	"fmt"
	"strings"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

func TestLoudspeakerRows(t *testing.T) {
	for _, tt := range []struct {
		name, table string
		want        []string
	}{
		{"one a row", `
			tag | zone | tap[W]
			LS-1 | Orangery | 5
			LS-2 | Orangery | 7.5`,
			[]string{"LS-1 1 x 5 W zone Orangery", "LS-2 1 x 7.5 W zone Orangery"}},
		{"groups", `
			zone | quantity | tap[W]@100
			Orangery | 12 | 5
			Foyer | (3) | 10 W`,
			[]string{"12 x 5 W at 100 V zone Orangery", "3 x 10 W at 100 V zone Foyer"}},
		{"a range of tags counts", `
			tag | zone | tap[W]
			LS-1..LS-8 | Orangery | 5`,
			[]string{"LS-1..LS-8 8 x 5 W zone Orangery"}},
		{"counts and taps in words", `
			zone | quantity | stated load[W]
			Orangery | 8@2.5W clg, 2@5W wall | 30
			Foyer | 6 x 10 W Säule | 60`,
			[]string{"8 x 2.5 W zone Orangery", "2 x 5 W zone Orangery", "6 x 10 W zone Foyer"}},
		{"a description with counts and taps", `
			zone | description
			Orangery | 8 x 1,5 W Decke + 2 x 3 W Decke
			Foyer | 4 no. wall cabinets tapped 6W`,
			[]string{"8 x 1.5 W zone Orangery", "2 x 3 W zone Orangery", "4 x 6 W zone Foyer"}},
		{"tags of a zone and a number are no ranges", `
			tag | zone | tap[W]
			1-1 | Orangery | 5
			1-2 | Orangery | 5
			1-3 | Orangery | 5
			2-1 | Foyer | 5`,
			[]string{"1-1 1 x 5 W zone Orangery", "1-2 1 x 5 W zone Orangery", "1-3 1 x 5 W zone Orangery", "2-1 1 x 5 W zone Foyer"}},
		{"ranges of bare numbers", `
			tag | zone | tap[W]
			1-4 | Orangery | 5
			5-6 | Orangery | 5`,
			[]string{"1-4 4 x 5 W zone Orangery", "5-6 2 x 5 W zone Orangery"}},
		{"taps by groups in one cell", `
			zone | quantity | tap
			Orangery | 18 | 12 @ 1W, 6 @ 1/2W`,
			[]string{"12 x 1 W zone Orangery", "6 x 0.5 W zone Orangery"}},
		{"a range is two bounds", `
			zone | quantity | tap
			Orangery | 4 | 6W - 10W`,
			[]string{"4 x 6..10 W zone Orangery"}},
		{"a total gives the tap", `
			zone | quantity | total watts[W]
			Orangery | 4 | 40`,
			[]string{"4 x 10 W zone Orangery"}},
		{"a blank count is unknown", `
			zone | quantity | tap[W]
			Orangery | 4 | 5
			Foyer | | 5`,
			[]string{"4 x 5 W zone Orangery", "? x 5 W zone Foyer"}},
		{"a blank tap is unknown, not zero", `
			tag | zone | tap[W]
			LS-1 | Orangery | 5
			LS-2 | Orangery | `,
			[]string{"LS-1 1 x 5 W zone Orangery", "LS-2 1 x ? W zone Orangery"}},
		{"a direct loudspeaker", `
			tag | zone | tap
			LS-1 | Orangery | 8Ω
			LS-2 | Orangery | 5 W`,
			[]string{"LS-1 1 x ? W zone Orangery direct 8 ohm", "LS-2 1 x 5 W zone Orangery"}},
		{"an impedance beside a tap is a figure of the data sheet", `
			tag | zone | tap[W] | impedance[ohm]
			LS-1 | Orangery | 5 | 8
			LS-2 | Orangery | | 8`,
			[]string{"LS-1 1 x 5 W zone Orangery", "LS-2 1 x ? W zone Orangery"}},
		{"a tap by its primary impedance", `
			title line voltage: 100 V
			tag | zone | tap
			LS-1 | Orangery | 2000 ohm`,
			[]string{"LS-1 1 x 5 W at 100 V zone Orangery"}},
		{"spares beside the count", `
			zone | quantity | tap[W]
			Orangery | 4 + 1 spare | 5`,
			[]string{"4 x 5 W zone Orangery", "1 x 5 W zone Orangery spare"}},
		{"status", `
			tag | zone | tap[W] | status
			LS-1 | Orangery | 5 | existing
			LS-2 | Orangery | 5 | future
			LS-3 | Orangery | 5 | removed`,
			[]string{"LS-1 1 x 5 W zone Orangery", "LS-2 1 x 5 W zone Orangery future", "LS-3 1 x 5 W zone Orangery removed"}},
		{"amplifier and channel in one cell", `
			tag | tap[W] | channel
			LS-1 | 5 | A1.2
			LS-2 | 5 | AMP 1 CH 2`,
			[]string{"LS-1 1 x 5 W channel A1 / 2", "LS-2 1 x 5 W channel A1 / 2"}},
		{"the unit of the header scales", `
			tag | zone | tap[kW]
			LS-1 | Orangery | 0.03`,
			[]string{"LS-1 1 x 30 W zone Orangery"}},
		{"sections", `
			tag | tap[W]
			section zone: Orangery
			LS-1 | 5
			section zone: Foyer
			LS-2 | 10`,
			[]string{"LS-1 1 x 5 W zone Orangery", "LS-2 1 x 10 W zone Foyer"}},
		{"two columns of taps: that of the line counts", `
			title line voltage: 70 V
			tag | tap[W]@100 | tap[W]@70
			LS-1 | 10 | 5`,
			[]string{"LS-1 1 x 5 W at 70 V"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "LS", tt.table))
			want(t, "loudspeakers", describe(j), tt.want)
			if n := j.RowsRead + len(j.LeftOut); n != len(tables(tt.table)) {
				t.Errorf("%d rows read and left out, %d in the table", n, len(tables(tt.table)))
			}
		})
	}
}

// tables are the rows of a drawn table without its facts and its header.
func tables(text string) []string {
	var out []string
	for l := range strings.SplitSeq(strings.Trim(text, "\n"), "\n") {
		l = strings.TrimSpace(l)
		if !strings.HasPrefix(l, "title ") && !strings.HasPrefix(l, "section ") {
			out = append(out, l)
		}
	}
	return out[1:]
}

// TestJoinedSheets is one job on five sheets, each written by another hand.
func TestJoinedSheets(t *testing.T) {
	j := jobOf(t,
		draw(layout.Loudspeakers, "Loudspeakers", `
			tag | room | zone | tap[W] | control
			LS-01 | Orangery | Zone 1 | 5 | VC 01
			LS-02 | Orangery | Z-01 | 5 | VC-1
			LS-03 | Foyer | 2 | 10 | `),
		draw(layout.Zones, "Zones", `
			zone | description | channel
			Z1 | Orangery | A1.1
			Z2 | Foyer | A1.2`),
		draw(layout.Amplifiers, "Amplifiers", `
			amplifier | model | channels of the amplifier | channel rating
			AMP 1 | DX-4 | 4 | 250W @100V`),
		draw(layout.Controls, "Controls", `
			tag | zone | model | control rating[W] | from
			VC-1 | 1 - Orangery | WK-35 | 35 | A1.1`),
		draw(layout.Cables, "Cables", `
			cable | from | to | length[m] | gauge[mm2]
			C1 | AMP 1 CH 1 | VC-1 | 40 | 1.5
			C2 | VC-1 | LS-1 | 12 | 1.5
			C3 | LS-1 | LS-2 | 6 | 1.5
			C4 | A1.2 | Zone 2 | 80 | 2.5`))
	want(t, "loudspeakers", describe(j), []string{
		"LS-01 1 x 5 W zone Z1 control VC-1 channel AMP 1 / 1",
		"LS-02 1 x 5 W zone Z1 control VC-1 channel AMP 1 / 1",
		"LS-03 1 x 10 W zone Z2 channel AMP 1 / 2",
	})
	if len(j.Zones) != 2 || len(j.Amplifiers) != 1 || len(j.Channels) != 4 || len(j.Controls) != 1 || len(j.Cables) != 4 {
		t.Fatalf("%d zones, %d amplifiers, %d channels, %d controls, %d cables", len(j.Zones), len(j.Amplifiers), len(j.Channels), len(j.Controls), len(j.Cables))
	}
	c := j.Controls[0]
	if c.Zone != j.Zones[0] || c.Channel != j.Loudspeakers[0].Channel || show(c.Rated) != "35" {
		t.Errorf("control %+v", c)
	}
	for _, ch := range j.Channels {
		if show(ch.Rated) != "250" || show(ch.LineVolts) != "100" {
			t.Errorf("channel %s: %s W at %s V", ch.Label(), show(ch.Rated), show(ch.LineVolts))
		}
	}
	k := j.Cables
	if k[0].From.Channel == nil || k[0].To.Control != c || k[1].From.Control != c || k[1].To.Loudspeaker != j.Loudspeakers[0] ||
		k[2].From.Loudspeaker != j.Loudspeakers[0] || k[3].To.Zone != j.Zones[1] || k[0].Reach != schedule.FromTo {
		t.Errorf("ends %+v", k[2])
	}
	if j.Loudspeakers[1].Run != k[2] || c.Run != k[0] {
		t.Error("runs do not end where they say")
	}
	want(t, "questions", asked(j), nil)
	want(t, "assumptions", takenAs(j), nil)
}

func TestAmbiguousZoneIsAsked(t *testing.T) {
	j := jobOf(t,
		draw(layout.Zones, "Zones", `
			zone | channel
			1 - Orangery | A1.1
			1 - Foyer | A1.2`),
		draw(layout.Loudspeakers, "LS", `
			tag | zone | tap[W]
			LS-1 | Zone 1 | 5`))
	if j.Loudspeakers[0].Zone != nil || j.Loudspeakers[0].Channel != nil {
		t.Errorf("guessed %s", j.Loudspeakers[0].Zone.Name)
	}
	want(t, "questions", asked(j), []string{"B2 zone"})
}

func TestControls(t *testing.T) {
	for _, tt := range []struct {
		name, table string
		want        []string // control: rating, zone
	}{
		{"a column of tags", `
			tag | zone | tap[W] | control | control rating[W]
			LS-1 | Orangery | 5 | VC-1 | 35
			LS-2 | Orangery | 5 | VC-1 | 35`,
			[]string{"VC-1 35 W Orangery"}},
		{"a tag with its rating", `
			tag | zone | tap[W] | control
			LS-1 | Orangery | 5 | VC-1 (35 W)
			LS-2 | Foyer | 5 | VC-2 (100 W)`,
			[]string{"VC-1 35 W Orangery", "VC-2 100 W Foyer"}},
		{"models, one for each zone", `
			tag | zone | tap[W] | control
			LS-1 | Orangery | 5 | WK-35
			LS-2 | Orangery | 5 | WK-35
			LS-3 | Foyer | 5 | WK-35`,
			[]string{"WK-35 (Orangery) 35 W Orangery", "WK-35 (Foyer) 35 W Foyer"}},
		{"ratings alone", `
			tag | zone | tap[W] | control
			LS-1 | Orangery | 5 | 35 W
			LS-2 | Foyer | 5 | -`,
			[]string{"control (Orangery) 35 W Orangery"}},
		{"rows among the loudspeakers", `
			tag | description | zone | tap[W] | control
			VC-1 | Volume control | Orangery | 35 |
			LS-1 | Ceiling loudspeaker | Orangery | 5 | VC-1`,
			[]string{"VC-1 35 W Orangery"}},
		{"a section title", `
			tag | tap[W] | zone
			section control: VC-3 35W
			LS-1 | 5 | Orangery
			LS-2 | 5 | Orangery`,
			[]string{"VC-3 35 W Orangery"}},
		{"no is none", `
			tag | zone | tap[W] | control
			LS-1 | Orangery | 5 | no`,
			nil},
	} {
		t.Run(tt.name, func(t *testing.T) {
			kind := layout.Loudspeakers
			if strings.Contains(tt.table, "Volume control") {
				kind = layout.Mixed
			}
			j := jobOf(t, draw(kind, "LS", tt.table))
			var got []string
			for _, c := range j.Controls {
				zone := ""
				if c.Zone != nil {
					zone = c.Zone.Name
				}
				got = append(got, fmt.Sprintf("%s %s W %s", c.Name, show(c.Rated), zone))
			}
			want(t, "controls", got, tt.want)
		})
	}
}

func TestControlFromModelName(t *testing.T) {
	j := jobOf(t, draw(layout.Controls, "C", `
		tag | model | zone
		VC-1 | WK-35 | Orangery`))
	c := j.Controls[0]
	if show(c.Rated) != "35" || c.Rated.How != schedule.FromModelName {
		t.Errorf("rated %+v", c.Rated)
	}
	want(t, "assumptions", takenAs(j), []string{"B2 control rating = 35 W"})
}

func TestControlsInSeries(t *testing.T) {
	j := jobOf(t, draw(layout.Controls, "C", `
		tag | control rating[W] | from
		VC-1 | 100 | A1.1
		VC-2 | 35 | VC-1`),
		draw(layout.Loudspeakers, "L", `
		tag | tap[W] | control
		LS-1 | 5 | VC-2`))
	if j.Controls[1].Parent != j.Controls[0] || j.Controls[0].Parent != nil {
		t.Errorf("parents %v, %v", j.Controls[0].Parent, j.Controls[1].Parent)
	}
}

func TestRatings(t *testing.T) {
	for _, tt := range []struct {
		name, table string
		want        []string // channel: rating basis
		frame       string
	}{
		{"per channel", `
			amplifier | channel rating
			A1 | 2 x 250W @100V`, []string{"1 250 W ", "2 250 W "}, "?"},
		{"frame and channels", `
			amplifier | channels of the amplifier | channel rating[W] | frame rating[W]
			A1 | 2 | 250 | 400`, []string{"1 250 W ", "2 250 W "}, "400"},
		{"a rating into 4 ohm is none of the line", `
			amplifier | channels of the amplifier | channel rating
			A1 | 1 | 250W @ 4Ω`, []string{"1 250 W 250W @ 4Ω"}, "?"},
		{"at both voltages", `
			title line voltage: 100 V
			amplifier | channels of the amplifier | channel rating
			A1 | 1 | 120W @70V / 240W @100V`, []string{"1 240 W "}, "?"},
		{"one frame sold several ways", `
			amplifier | channels of the amplifier | channel rating
			A1 | 2 | 4 x 125 W, 2 x 250 W, 1 x 500 W`, []string{"1 250 W ", "2 250 W "}, "?"},
		{"a frame with one channel", `
			amplifier | channels of the amplifier | frame rating[W]
			A1 | 1 | 240`, []string{"1 240 W "}, "240"},
		{"a frame total says nothing of its channels", `
			amplifier | channels of the amplifier | frame rating[W]
			A1 | 2 | 240`, []string{"1 ? W ", "2 ? W "}, "240"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Amplifiers, "A", tt.table))
			var got []string
			for _, c := range j.Channels {
				got = append(got, fmt.Sprintf("%s %s W %s", c.Name, show(c.Rated), c.RatedBasis.Value))
			}
			want(t, "channels", got, tt.want)
			if f := show(j.Amplifiers[0].Rated); f != tt.frame {
				t.Errorf("frame %s, want %s", f, tt.frame)
			}
		})
	}
}

func TestLengths(t *testing.T) {
	for _, tt := range []struct {
		name, table string
		want        string
		how         schedule.How
		loop        bool
	}{
		{"the header's unit", "zone | length[ft] | gauge[AWG]\nOrangery | 100 | 16", "30.48", schedule.Stated, false},
		{"the cell's unit", "zone | length | gauge\nOrangery | 120' | 16/2", "36.576", schedule.Stated, false},
		{"the other cells", "zone | length\nOrangery | 120\nFoyer | 30 m", "120", schedule.UnitAssumed, false},
		{"by the conductors", "zone | length | gauge[mm2]\nOrangery | 120 | 2.5", "120", schedule.UnitAssumed, false},
		{"by AWG", "zone | length | gauge[AWG]\nOrangery | 100 | 16", "30.48", schedule.UnitAssumed, false},
		{"nothing tells", "zone | length\nOrangery | 100", "30.48..100", schedule.UnitAssumed, false},
		{"a loop", "zone | length[m]: Length there and back [m]\nOrangery | 100", "50", schedule.Stated, true},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Cables, "C", tt.table))
			c := j.Cables[0]
			if show(c.Length) != tt.want || c.Length.How != tt.how || c.Loop != tt.loop {
				t.Errorf("length %s (%s), loop %v", show(c.Length), c.Length.How, c.Loop)
			}
			if tt.how == schedule.UnitAssumed && len(j.Assumptions) == 0 {
				t.Error("the unit was assumed silently")
			}
		})
	}
	j := jobsOf(&Options{Units: "m"}, draw(layout.Cables, "C", "zone | length\nOrangery | 100"))[0]
	if show(j.Cables[0].Length) != "100" {
		t.Errorf("with the unit set to metres: %s", show(j.Cables[0].Length))
	}
}

func TestOneAssumptionForAColumn(t *testing.T) {
	j := jobOf(t, draw(layout.Cables, "C", "zone | length: Length | gauge[mm2]\nA | 10 | 1\nB | 20 | 1\nC | 30 | 1"))
	want(t, "assumptions", takenAs(j), []string{"B1 length = metres"})
	if w := j.Assumptions[0].Written; w != `3 cells, first B2 "10"` {
		t.Errorf("written %q", w)
	}
}

func TestDatesBecomeTaps(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "L", `
		tag | zone | tap
		LS-1 | Orangery | 1/2#
		LS-2 | Orangery | 5 W`))
	l := j.Loudspeakers[0]
	if show(l.Tap) != "0.5" || l.Tap.How != schedule.RecoveredDate {
		t.Errorf("tap %s (%s)", show(l.Tap), l.Tap.How)
	}
	if a := takenAs(j); len(a) == 0 || !strings.HasPrefix(a[0], "C2 tap = 1/2") {
		t.Errorf("assumptions %v", a)
	}
}

func TestRowsLeftOut(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "L", `
		tag | zone | quantity | tap[W]
		LS-1 | Orangery | 4 | 5
		~ LS-2 | Orangery | 2 | 10
		! LS-3 | Orangery | 1 | 10
		= Total | | 4 | 20
		# all taps to be checked
		LS-4 | Orangery | 1 | 5 spare
		LS-5 | Foyer | spare |
		- Rack | | 1 |`))
	var got []string
	for _, o := range j.LeftOut {
		got = append(got, fmt.Sprintf("%s %s %s", o.At.Cell(), o.Kind, show(o.Load)))
	}
	want(t, "left out", got, []string{"row 3 struck through 20", "row 4 hidden 10", "row 5 total ?", "row 6 note ?", "row 7 spare ?", "row 8 spare ?", "row 9 no device ?"})
	if len(j.LeftOut[0].Would) != 1 || len(j.LeftOut[1].Would) != 1 {
		t.Error("rows that might count say nothing of their loudspeakers")
	}
	if j.RowsRead != 1 {
		t.Errorf("%d rows read", j.RowsRead)
	}
	if len(j.Totals) != 1 || show(j.Totals[0].Stated) != "20" || len(j.Totals[0].Rows) != 1 {
		t.Errorf("totals %+v", j.Totals)
	}
	for _, z := range j.Zones {
		if z.Name != "Orangery" && z.Name != "Foyer" {
			t.Errorf("zone %s", z.Name)
		}
	}
}

func TestRatingsInDescriptionsOfControls(t *testing.T) {
	j := jobOf(t, draw(layout.Mixed, "L", `
		description | room | quantity | tap[W]
		Ceiling loudspeaker | Foyer | 8 | 6
		Volume control 36 W | Foyer | 1 |
		Volume control, 20 W to 50 W | Shop | 1 | `))
	var got []string
	for _, c := range j.Controls {
		got = append(got, c.Room.Value+" "+show(c.Rated))
	}
	want(t, "controls", got, []string{"Foyer 36", "Shop ?"})
}

func TestUnreadableFeedsAreNotInherited(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "L", `
		tag | zone | tap[W] | channel
		LS-1 | Dock | 15 | A1.1
		LS-2 | Dock | 3 | through the old junction below the stair`))
	want(t, "loudspeakers", describe(j), []string{"LS-1 1 x 15 W zone Dock channel A1 / 1", "LS-2 1 x 3 W zone Dock"})
	want(t, "questions", asked(j), []string{"D3 channel"})
}

func TestTitleOverTheFirstOfSeveralTables(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "L", `
		title : Boathouse A
		description | quantity | tap[W]
		Horn | 4 | 15
		section zone: Boathouse B
		^ Loudspeaker | Qty | Set at
		Ceiling | 10 | 3`))
	want(t, "loudspeakers", describe(j), []string{"4 x 15 W zone Boathouse A", "10 x 3 W zone Boathouse B"})
	j = jobOf(t, draw(layout.Loudspeakers, "L", `
		title : Loudspeakers as fitted
		description | quantity | tap[W]
		Horn | 4 | 15
		section zone: Boathouse B
		Ceiling | 10 | 3`))
	want(t, "loudspeakers", describe(j), []string{"4 x 15 W", "10 x 3 W zone Boathouse B"})
}

func TestAmplifierFedFromTheMains(t *testing.T) {
	j := jobOf(t, draw(layout.Mixed, "L", `
		tag | description | tap[W] | amplifier
		PA-001 | Mixer amplifier 2 x 120 W 100 V | | mains
		PA-002 | Ceiling speaker | 3 | PA-001 output 1
		PA-003 | Ceiling speaker | 3 | PA-001 output 2`))
	want(t, "loudspeakers", describe(j), []string{"PA-002 1 x 3 W channel PA-001 / 1", "PA-003 1 x 3 W channel PA-001 / 2"})
	if len(j.Amplifiers) != 1 {
		t.Errorf("%d amplifiers", len(j.Amplifiers))
	}
}

func TestOutputsOfABridgedPairAreNoRoom(t *testing.T) {
	j := jobOf(t, draw(layout.Amplifiers, "A", `
		amplifier | channels of the amplifier | channel rating[W]
		A1 | 4 | 120`), draw(layout.Loudspeakers, "L", `
		tag | tap[W] | channel
		LS-1 | 5 | A1 ch 1+2 bridged
		LS-2 | 5 | A1 ch 3`))
	var got []string
	for _, c := range j.Channels {
		got = append(got, c.Label())
	}
	want(t, "channels", got, []string{"A1 / 1+2", "A1 / 3", "A1 / 4"})
}

// TestRatingOfABridgedPair: the rating of each output is none of the pair, a
// bridged rating none of one output, and "1+2" means the pair that is listed.
func TestRatingOfABridgedPair(t *testing.T) {
	for _, tt := range []struct{ name, amps, outputs, speakers, want string }{
		{"per channel", "amplifier | channels of the amplifier | channel rating[W]\nA1 | 2 | 240", "", "A1 ch 1+2 bridged", "A1 / 1+2 unknown"},
		{"bridged rating", "amplifier | channel rating[W]\nA1 | 2 x 240 W / 480 W bridged", "", "A1 ch 1+2 bridged", "A1 / 1+2 480"},
		{"bridged rating, one output", "amplifier | channel rating[W]\nA1 | 2 x 240 W / 480 W bridged", "", "A1 ch 1", "A1 / 1 240"},
		{"beside the pair", "", "amplifier | channel | channel rating[W]\nA1 | 1+2 bridged | 480", "A1 ch 1+2", "A1 / 1+2 480"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			var tables []*layout.Table
			if tt.amps != "" {
				tables = append(tables, draw(layout.Amplifiers, "A", tt.amps))
			}
			if tt.outputs != "" {
				tables = append(tables, draw(layout.Channels, "C", tt.outputs))
			}
			j := jobOf(t, append(tables, draw(layout.Loudspeakers, "L", "tag | tap[W] | channel\nLS-1 | 5 | "+tt.speakers))...)
			c := j.Loudspeakers[0].Channel
			if c == nil {
				t.Fatal("no channel")
			}
			rated := "unknown"
			if c.Rated.Had() {
				rated = show(c.Rated)
			}
			if got := c.Label() + " " + rated; got != tt.want {
				t.Errorf("got %s, want %s", got, tt.want)
			}
		})
	}
}

func TestTotalsOfNamedRows(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "L", `
		room | quantity | tap[W] | circuit
		Entrance | 4 | 6 | L1
		Dome | 6 | 20 | L2
		Corridor | 7 | 3 | L1
		= Totale L1 | | 45 |
		= Totale L2 | | 100 |`))
	var got []string
	for _, s := range j.Totals {
		var rows []string
		for _, l := range s.Rows {
			rows = append(rows, l.Room.Value)
		}
		got = append(got, show(s.Stated)+" "+strings.Join(rows, ", "))
	}
	want(t, "totals", got, []string{"45 Entrance, Corridor", "100 Dome"})
}

func TestListedTwice(t *testing.T) {
	j := jobOf(t,
		draw(layout.Loudspeakers, "Devices", `
			tag | zone | tap[W]
			LS-1 | Orangery | 5
			LS-2 | Orangery | 5`),
		draw(layout.Loudspeakers, "Runs", `
			tag | tap[W] | channel | length[m]: From last | gauge[mm2]
			LS1 | 5 | A1.1 | 12 | 1.5
			LS2 | 10 | A1.1 | 6 | 1.5`))
	want(t, "loudspeakers", describe(j), []string{
		"LS-1 1 x 5 W zone Orangery channel A1 / 1", "LS-2 1 x 5 W zone Orangery channel A1 / 1"})
	want(t, "questions", asked(j), []string{"B3 tap"})
	if l := j.Loudspeakers[1]; l.Run == nil || l.Run.Reach != schedule.FromPrevious || show(l.Run.Length) != "6" {
		t.Errorf("run %+v", l.Run)
	}
	if j.RowsRead != 2 || len(j.LeftOut) != 2 || j.LeftOut[0].Kind != schedule.DuplicateRow {
		t.Errorf("%d read, left out %+v", j.RowsRead, j.LeftOut)
	}
}

func TestSameTagsInOtherZonesAreOthers(t *testing.T) {
	j := jobOf(t,
		draw(layout.Loudspeakers, "North", "title zone: North\ntag | tap[W]\nLS-1 | 5"),
		draw(layout.Loudspeakers, "South", "title zone: South\ntag | tap[W]\nLS-1 | 5"))
	want(t, "loudspeakers", describe(j), []string{"LS-1 1 x 5 W zone North", "LS-1 1 x 5 W zone South"})
}

func TestZoneSummaryCountsOnce(t *testing.T) {
	j := jobOf(t,
		draw(layout.Zones, "Summary", `
			zone | quantity | total watts[W] | channel
			Orangery | 3 | 20 | A1.1
			Foyer | 1 | 10 | A1.2`),
		draw(layout.Loudspeakers, "Devices", `
			tag | zone | tap[W]
			LS-1 | Orangery | 5
			LS-2 | Orangery | 5
			LS-3 | Foyer | 10`))
	want(t, "loudspeakers", describe(j), []string{"LS-1 1 x 5 W zone Orangery channel A1 / 1", "LS-2 1 x 5 W zone Orangery channel A1 / 1",
		"LS-3 1 x 10 W zone Foyer channel A1 / 2"})
	if z := j.Zones[0]; show(z.Count) != "3" || show(z.Stated) != "20" {
		t.Errorf("claims %s, %s", show(z.Count), show(z.Stated))
	}
}

func TestZonesAlone(t *testing.T) {
	j := jobOf(t, draw(layout.Zones, "Zones", `
		zone | quantity | tap[W] | amplifier | channel | control
		Orangery | 12 | 5 | A1 | 1 | VC-1
		Foyer | 4 | 10 | A1 | 2 | `))
	want(t, "loudspeakers", describe(j), []string{"12 x 5 W zone Orangery control VC-1 channel A1 / 1", "4 x 10 W zone Foyer channel A1 / 2"})
}

func TestTypesGiveTaps(t *testing.T) {
	j := jobOf(t,
		draw(layout.Types, "Types", `
			tag | model | tap[W] | taps offered
			T1 | CL-6 | 3 | 6/3/1.5`),
		draw(layout.Loudspeakers, "Counts", `
			room | zone | kind | quantity
			Orangery | Z1 | T1 | 4`))
	want(t, "loudspeakers", describe(j), []string{"4 x 3 W zone Z1"})
	if l := j.Loudspeakers[0]; len(l.Offered) != 3 || l.Model.Value != "CL-6" {
		t.Errorf("offered %v, model %q", l.Offered, l.Model.Value)
	}
}

func TestRegister(t *testing.T) {
	jobs := jobsOf(&Options{}, draw(layout.Loudspeakers, "All", `
		job number | site | zone | quantity | tap[W] | channel
		J1 | Palm House | Z1 | 4 | 5 | A1.1
		J1 | Palm House | Z2 | 2 | 5 | A1.2
		J2 | Boathouse | Z1 | 8 | 10 | A1.1`))
	if len(jobs) != 2 || jobs[0].Number.Value != "J1" || jobs[1].Site.Value != "Boathouse" {
		t.Fatalf("%d jobs", len(jobs))
	}
	want(t, "second job", describe(jobs[1]), []string{"8 x 10 W zone Z1 channel A1 / 1"})
	if jobs[0].RowsRead != 2 || jobs[1].RowsRead != 1 {
		t.Errorf("%d and %d rows", jobs[0].RowsRead, jobs[1].RowsRead)
	}
}

func TestSheetAJob(t *testing.T) {
	a := draw(layout.Loudspeakers, "One", "title job number: J1\ntag | zone | tap[W] | channel\nLS-1 | Z1 | 5 | A1.1")
	b := draw(layout.Loudspeakers, "Two", "title job number: J2\ntag | zone | tap[W] | channel\nLS-1 | Z1 | 5 | A1.1")
	if jobs := jobsOf(&Options{}, a, b); len(jobs) != 2 || jobs[1].Sheet != "Two" || len(jobs[1].Loudspeakers) != 1 {
		t.Errorf("%d jobs", len(jobs))
	}
	c := draw(layout.Loudspeakers, "Two", "title job number: J1\ntag | zone | tap[W] | channel\nLS-2 | Z1 | 5 | A1.1")
	if jobs := jobsOf(&Options{}, a, c); len(jobs) != 1 || len(jobs[0].Loudspeakers) != 2 {
		t.Errorf("%d jobs of one number", len(jobs))
	}
}

func TestSheetAZone(t *testing.T) {
	a := draw(layout.Loudspeakers, "S1", "title : Orchid house\ntag | model | tap[W]\nLS-1 | CL-6 | 5")
	b := draw(layout.Loudspeakers, "S2", "title : Fern house\ntag | model | tap[W]\nLS-2 | CL-6 | 10")
	want(t, "sheets of one form", describe(jobOf(t, a, b)), []string{"LS-1 1 x 5 W zone Orchid house", "LS-2 1 x 10 W zone Fern house"})
	other := draw(layout.Loudspeakers, "S2", "title : Changed on site\ntag | floor | tap[W] | quantity | notes\nLS-2 | 1 | 10 | 1 | moved")
	want(t, "sheets of different things", describe(jobOf(t, a, other)), []string{"LS-1 1 x 5 W", "LS-2 1 x 10 W"})
}

// Lengths that do not grow are no reason to doubt a header that says where they begin.
func TestRunsFromTheRack(t *testing.T) {
	for _, header := range []string{"Run from rack", "Length from the amp", "Länge vom Schrank", "Longueur depuis le rack", "Metros desde el armario", "Lengte vanaf de kast"} {
		table := draw(layout.Loudspeakers, "Heads", "tag | tap[W] | channel | length[m]\nLS-1 | 5 | A1.1 | 40\nLS-2 | 5 | A1.1 | 12\nLS-3 | 5 | A1.1 | 25")
		table.Columns[3].Header = header
		for _, l := range jobOf(t, table).Loudspeakers {
			if l.Run == nil || l.Run.Reach != schedule.FromRack {
				t.Errorf("%q: the run of %s is not from the rack", header, l.Tag.Value)
			}
		}
	}
}
