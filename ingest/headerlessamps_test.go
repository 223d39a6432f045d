package ingest

import "testing"

// The sheet of a rack names its amplifiers without a heading, upright or turned. Common practice, no source.
func TestAmplifiersWithoutHeading(t *testing.T) {
	const list = "## List\nIce hall, loudspeakers\n|\nZone | Place | Qty | W\n1 | Ring | 6 | 15\n2 | Stand | 4 | 10\n3 | Foyer | 8 | 3\n"
	for _, c := range []struct{ rack, amp string }{
		{"Rack\n| Amp A | Amp B | Amp C\nZone | 1 | 2 | 3\nPower W | 360 | 180 | 120\nFuse | 6.3 A | 4 A | 2.5 A\nCable | 2 x 4 mm² | 2 x 2.5 mm² | 2 x 1.5 mm²\nLength m | 150 | 130 | 60", "Amp"},
		{"Rek\n| Verst. A | Verst. B | Verst. C\nZone | 1 | 2 | 3\nVermogen W | 360 | 180 | 120\nZekering | 6,3 A | 4 A | 2,5 A\nKabel | 2 x 4 mm² | 2 x 2,5 mm² | 2 x 1,5 mm²\nLengte m | 150 | 130 | 60", "Verst."},
		{"Schrank\n| Endstufe A | Endstufe B | Endstufe C\nZone | 1 | 2 | 3\nLeistung W | 360 | 180 | 120\nSicherung | 6,3 A | 4 A | 2,5 A\nKabel | 2 x 4 mm² | 2 x 2,5 mm² | 2 x 1,5 mm²\nLänge m | 150 | 130 | 60", "Endstufe"},
		{"Baie\n| Ampli A | Ampli B | Ampli C\nZone | 1 | 2 | 3\nPuissance W | 360 | 180 | 120\nFusible | 6,3 A | 4 A | 2,5 A\nCâble | 2 x 4 mm² | 2 x 2,5 mm² | 2 x 1,5 mm²\nLongueur m | 150 | 130 | 60", "Ampli"},
		{"| Zone | Power W | Cable | Length m\nAmp A | 1 | 360 | 2 x 4 mm² | 150\nAmp B | 2 | 180 | 2 x 2.5 mm² | 130\nAmp C | 3 | 120 | 2 x 1.5 mm² | 60", "Amp"},
	} {
		j := wholeJob(t, list+"## Rack\n"+c.rack)
		want(t, c.rack, channelRatings(j), []string{c.amp + " A / 1 360 W ? V", c.amp + " B / 1 180 W ? V", c.amp + " C / 1 120 W ? V"})
		if n := len(j.Loudspeakers); n != 3 {
			t.Errorf("%s: %v", c.rack, describe(j))
		}
	}
}
