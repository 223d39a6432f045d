package ingest

import (
	"fmt"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

func cablesOf(j *schedule.Job) []string {
	var out []string
	for _, c := range j.Cables {
		to := ""
		if c.Channel != nil {
			to = " channel " + c.Channel.Label()
		}
		out = append(out, fmt.Sprintf("%s %s m %s mm²%s", c.Name, show(c.Length), show(c.Area), to))
	}
	return out
}

// Metres in a bill are the cable of the line that their description names.
func TestCableInABill(t *testing.T) {
	j := jobOf(t, draw(layout.Mixed, "Bill", `
		item | description | quantity | ignored | tap | channel
		1 | Ceiling loudspeaker in the foyer, line 1 | 8 | pcs | 3 W | 1
		2 | Horn in the yard, line 2 | 2 | pcs | 15 W | 2
		- 3 | Cable 2 x 1.5 mm² laid for line 1 | 140 | m | |
		- 4 | The same, 2 x 2.5 mm², line 2 | 95 | m | |
		- 5 | Conduit, 20 mm, line 2 | 95 | m | |
		- 6 | Cable 2 x 2.5 mm², stock | 50 | m | |`))
	want(t, "cables", cablesOf(j), []string{"3 140 m 1.5 mm² channel 1", "4 95 m 2.5 mm² channel 2"})
	want(t, "taken", takenAs(j)[len(takenAs(j))-2:], []string{"B4 length = 140 m of the whole line 1", "B5 length = 95 m of the whole line 2"})
}

func TestSizeAndLengthInOneCell(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Lines", `
		zone | quantity | tap | channel | cable
		Hall | 8 | 3 W | 1 | 2x2,5 - 60 m
		Yard | 2 | 15 W | 2 | 2x4 mm² / 150 m
		Office | 1 | 3 W | 3 | 2x1,5`))
	want(t, "cables", cablesOf(j), []string{" 60 m 2.5 mm² channel 1", " 150 m 4 mm² channel 2", " ? m 1.5 mm² channel 3"})
}

func TestLengthAndSizeWhereverTheyStand(t *testing.T) {
	for _, rows := range []string{
		"length\nHall | 8 | 3 W | 1 | 40 m 2x1.5\nYard | 2 | 15 W | 2 | 80 m 2x2.5",
		"notes\nHall | 8 | 3 W | 1 | 40 m of 2x1.5\nYard | 2 | 15 W | 2 | 80 m of 2x2.5",
		"cable type\nHall | 8 | 3 W | 1 | 2 x 1.5 mm², 40 m\nYard | 2 | 15 W | 2 | 2 x 2.5 mm², 80 m",
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Lines", "room | quantity | tap | channel | "+rows))
		want(t, rows, cablesOf(j), []string{" 40 m 1.5 mm² channel 1", " 80 m 2.5 mm² channel 2"})
		if len(j.Questions) > 0 {
			t.Errorf("%s: asked %v", rows, asked(j))
		}
	}
}

// In a bill by rooms the cable by the foot is that of the output that its title names, and a
// control is known by the tag in its description.
func TestCableAndControlsOfABillByRooms(t *testing.T) {
	j := wholeJob(t, `Takeoff, 70 V
Item | Description | Qty | Unit | Tap (W) | Unit $
1 | ROOM 101 BOAT BAY - ZONE 1, AMP CH 1
1.01 | Horn speaker, 15 W | 6 | ea | 15 | 118.00
1.02 | Cable 14 AWG 2C | 220 | ft | | 0.62
2 | ROOM 102 TANK - ZONE 2, AMP CH 2
2.01 | Pendant speaker | 8 | ea | 8 | 96.00
2.02 | Volume control VC-2, 100 W | 1 | ea | | 74.00
2.03 | Cable 16 AWG 2C | 180 | ft | | 0.48
3 | HEAD END
3.01 | 2-channel amplifier A1, 120 W per channel, 70 V | 1 | ea | | 1890.00`)
	want(t, "loudspeakers", describe(j), []string{"6 x 15 W zone ZONE 1 channel A1 / 1", "8 x 8 W zone ZONE 2 control VC-2 channel A1 / 2"})
	if got, want := controlsOf(j), "VC-2 100 W x1"; got != want {
		t.Errorf("controls %s, want %s", got, want)
	}
	var got []string
	for _, c := range j.Cables {
		got = append(got, fmt.Sprintf("%s %.2f m %.3f mm² %s", c.Name, float64(c.Length.Low), float64(c.Area.Low), c.Channel.Label()))
	}
	want(t, "cables", got, []string{"1.02 67.06 m 2.081 mm² A1 / 1", "2.03 54.86 m 1.309 mm² A1 / 2"}) // 220 and 180 ft of 0.3048 m
}
