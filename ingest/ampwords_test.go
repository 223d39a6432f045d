package ingest

import (
	"strconv"
	"strings"
	"testing"
)

// Words in front of "amp" tell one amplifier from others, in cells of outputs and in notes that
// rate them. Common practice, no source.
func TestAmplifiersCalledByWords(t *testing.T) {
	for _, c := range []struct{ note, header, first, second, third, want string }{
		{"The old amp is 120 W and the new amp is 2 x 60 W, all 100 volt", "on", "old amp", "new amp ch 1", "new amp ch 2", "old amp|new amp"},
		{"Amplifiers: old amp 120 W; new amp 2 x 60 W. All 100 V.", "on", "old amp", "new amp, channel 1", "new amp - channel 2", "old amp|new amp"},
		{"The old amp is 120 W, the new amp has 2 outputs of 60 W. All on 100 V.", "Amplifier", "old", "new ch 1", "new ch 2", "old|new"},
		{"Our plant amplifier gives 120 W, the foyer amplifier 2 x 60 W, 100 V", "on", "Plant amplifier", "Foyer amplifier out 1", "Foyer amplifier out 2", "Plant amplifier|Foyer amplifier"},
	} {
		j := wholeJob(t, "Larchmere rink - speakers\n"+c.note+"\n|\nWhere | What | How many | Watts | "+c.header+"\n"+
			"North | horn | 4 | 15 | "+c.first+"\nSouth | horn | 4 | 10 | "+c.second+"\nHall | ceiling | 6 | 6 | "+c.third)
		one, two, _ := strings.Cut(c.want, "|")
		want(t, c.note, channelRatings(j), []string{one + " / 1 120 W 100 V", two + " / 1 60 W 100 V", two + " / 2 60 W 100 V"})
	}
}

// What is written in a column of outputs and not understood is asked; the only output of the job
// is not taken for it.
func TestOutputsThatAreNotUnderstood(t *testing.T) {
	j := wholeJob(t, "Rink - 100 V\n|\nWhere | What | How many | Watts | Output\n"+
		"North | horn | 4 | 15 | A\nSouth | horn | 4 | 15 | A\nHall | ceiling | 6 | 6 | see the label on the back of it")
	want(t, "asked", asked(j), []string{"E6 channel"})
	for i, unread := range []bool{false, false, true} {
		if l := j.Loudspeakers[i]; l.FeedUnread != unread || (l.Channel == nil) != unread {
			t.Errorf("loudspeaker %d hangs on %v, unread: %v", i, l.Channel, l.FeedUnread)
		}
	}
}

// Titles rate one amplifier after the other in the words of a sentence.
func TestTitlesThatRateAmplifiersInWords(t *testing.T) {
	for _, titles := range []string{
		"amp 1: 120 W|amp 2: 60 W|amp 3: 30 W",
		"amp 1 is 120 W|amp 2, 60 W|amp 3 single channel 30 W",
		"amp 1 gives 120 W|amp 2 one channel 60 W|amp 3 1 x 30 W",
	} {
		part := strings.Split(titles, "|")
		j := wholeJob(t, "Rink - speakers, 100 V\n|\nWhere | What | How many | Watts\n"+part[0]+"\nNorth | horn | 4 | 15\n"+
			part[1]+"\nSouth | horn | 2 | 15\n"+part[2]+"\nHall | ceiling | 4 | 6")
		want(t, titles, channelRatings(j), []string{"amp 1 / 1 120 W 100 V", "amp 2 / 1 60 W 100 V", "amp 3 / 1 30 W 100 V"})
	}
}

// Titles call lines by the amplifier that they hang on, by letters too, and say what was measured.
func TestTitlesOfLinesOnAmplifiers(t *testing.T) {
	for _, title := range []string{"Line 1 on amp A (60 W)", "Linie 1 an Verstärker A (60 W), gemessen 310 Ohm", "Ligne 1 sur ampli A (60 W), mesurée 310 ohms", "Line 1 on amp A, 60 W, Z 310 ohm"} {
		second := strings.NewReplacer(" 1 ", " 2 ", " A", " B", "310", "155").Replace(title)
		j := wholeJob(t, "Planetarium - loudspeakers 100 V\n|\n"+title+"\nNo | Room | Qty | W\n1 | Hall | 4 | 3\n2 | Stair | 4 | 3\n|\n"+second+"\nNo | Room | Qty | W\n3 | Dome | 4 | 6\n4 | Roof | 4 | 6")
		var got []string
		for _, c := range j.Channels {
			n := 0
			for _, l := range j.Loudspeakers {
				if l.Channel == c {
					n++
				}
			}
			amp := c.Amplifier.Name
			got = append(got, amp[len(amp)-1:]+" "+show(c.Rated)+" W: "+strconv.Itoa(n))
		}
		want(t, title, got, []string{"A 60 W: 2", "B 60 W: 2"})
		for _, l := range j.Loudspeakers {
			if l.Zone != nil && strings.ContainsAny(l.Zone.Name, "0123456789") {
				t.Errorf("%s: a zone %s", title, l.Zone.Name)
			}
		}
	}
}

// A title above a list names the amplifier by its code, whatever word stands before it, as notes do. Common practice, no source.
func TestCodesOfAmplifiersInTitles(t *testing.T) {
	const list = "\n|\nNo. | Room | Zone | W\nM01 | Hall | 1 | 6\nM02 | Yard | 2 | 6\nM03 | Attic | 3 | 6"
	for _, title := range []string{
		"Amplifier E1 (100 V): three channels of 60 W each, zone 1 = channel 1, zone 2 = channel 2 etc.",
		"Endstufe E1 (100 V): drei Kanäle mit je 60 W, Zone 1 = Kanal 1, Zone 2 = Kanal 2 usw.",
		"Ampli E1 (100 V) : trois voies de 60 W chacune, zone 1 = voie 1, zone 2 = voie 2 etc.",
	} {
		j := wholeJob(t, "Fern museum, loudspeakers\n"+title+list)
		want(t, title, describe(j), []string{"M01 1 x 6 W zone 1 channel E1 / 1", "M02 1 x 6 W zone 2 channel E1 / 2", "M03 1 x 6 W zone 3 channel E1 / 3"})
		want(t, title, channelRatings(j), []string{"E1 / 1 60 W 100 V", "E1 / 2 60 W 100 V", "E1 / 3 60 W 100 V"})
	}
}
