package ingest

import "testing"

// A sheet for each wing, and a list of amplifiers on another that calls them a little otherwise, with the line voltage
// in the header. Common practice, no source.
func TestSheetsThatAmplifiersFeed(t *testing.T) {
	for _, c := range []struct{ heads, a, b, c, volts, fedA, fedB, fedC string }{
		{"Amplifier | 100 V line to | max. W | Cable | Length", "Wing A", "Wing B", "Outside", "100", "A", "B", "outside"},
		{"versterker | lijn 100 V naar | max. W | kabel | lengte", "Bouwdeel A", "Bouwdeel B", "Buiten", "100", "gebouwdeel A", "gebouwdeel B", "buiten"},
		{"Verstärker | 100-V-Linie nach | max. W | Kabel | Länge", "Trakt A", "Trakt B", "Hof", "100", "Gebäudetrakt A", "Gebäudetrakt B", "Hof"},
		{"Amplifier | Serves | Watts | Cable | Length", "North", "South", "Yard", "?", "north", "south", "yard"},
	} {
		list := func(name, n string) string {
			return "## " + name + "\nProject 20417 - School of Elm - " + name + "\n|\nroom | qty | tap | kind\n" + n + "01 hall | 8 | 6W | surface\n" + n + "02 office | 2 | 3W | flush\n"
		}
		j := wholeJob(t, list(c.a, "A")+list(c.b, "B")+list(c.c, "C")+"## Rack\n"+c.heads+"\nV1 | "+c.fedA+" | 240 | 2x2.5 mm2 | 70 m\nV2 | "+c.fedB+" | 240 | 2x2.5 mm2 | 115 m\nV3 | "+c.fedC+" | 120 | 2x2.5 mm2 | 60 m")
		want(t, c.heads, describe(j), []string{
			"8 x 6 W zone " + c.a + " channel V1 / 1", "2 x 3 W zone " + c.a + " channel V1 / 1",
			"8 x 6 W zone " + c.b + " channel V2 / 1", "2 x 3 W zone " + c.b + " channel V2 / 1",
			"8 x 6 W zone " + c.c + " channel V3 / 1", "2 x 3 W zone " + c.c + " channel V3 / 1"})
		want(t, c.heads, channelRatings(j), []string{"V1 / 1 240 W " + c.volts + " V", "V2 / 1 240 W " + c.volts + " V", "V3 / 1 120 W " + c.volts + " V"})
		if n := len(j.Cables); n != 3 {
			t.Errorf("%s: %d cables", c.heads, n)
		}
	}
}

// Numbers of lists are no places that an amplifier leads to.
func TestNumberedListsAreNotFed(t *testing.T) {
	list := func(n string) string {
		return "## List " + n + "\nroom | qty | tap | kind\nhall " + n + " | 8 | 6W | surface\noffice " + n + " | 2 | 3W | flush\n"
	}
	j := wholeJob(t, list("1")+list("2")+"## Rack\nAmplifier | Line to | max. W\nV1 | 1 | 240\nV2 | 2 | 240")
	for _, l := range j.Loudspeakers {
		if l.Channel != nil {
			t.Errorf("%s hangs on %s", l.Zone.Name, l.Channel.Label())
		}
	}
}
