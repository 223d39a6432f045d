package ingest

import (
	"strings"
	"testing"

	"lineaudit/audit/schedule"
)

// A line in a title below that of an amplifier is an output of it; how old and of what colour an amplifier is says of no place.
// Common practice, no source.
func TestLinesInTitlesBelowAmplifiers(t *testing.T) {
	for _, c := range []struct{ one, two, a, b, lines string }{
		{"AMP 1 (old grey one, 100W)", "AMP 2 (new, 2x120)", "Line A", "Line B", "A B"},
		{"Verstärker 1 (alt, 100 W)", "Verstärker 2 (neu, 2 x 120 W)", "Linie 1", "Linie 2", "1 2"},
		{"Ampli 1 - 100 W", "Ampli 2 - 2 x 120 W", "Ligne A", "Ligne B", "A B"},
		{"Amplificador 1 (viejo, 100 W)", "Amplificador 2 (2x120 W)", "Línea 1", "Línea 2", "1 2"},
		{"Amplificatore 1 (100 W)", "Amplificatore 2 (nuovo, 2x120)", "Linea A", "Linea B", "A B"},
		{"Versterker 1, oud, 100 W", "Versterker 2, 2 x 120 W", "Lijn 1", "Lijn 2", "1 2"},
	} {
		j := wholeJob(t, "Where | What | How many | Set to\n"+c.one+"\nPit road | horn | 3 | 7.5 W\nWash | horn | 2 | 15 W\n|\n"+
			c.two+"\n"+c.a+"\nCanteen | ceiling | 6 | 6 W\n"+c.b+"\nOffices | ceiling | 10 | 1.5 W\nStores | ceiling | 4 | 6 W")
		var got []string
		for _, l := range j.Loudspeakers {
			got = append(got, l.Zone.Name+": "+l.Channel.Label()+" "+show(l.Channel.Rated))
		}
		one, two, lines := strings.Fields(strings.ReplaceAll(c.one, ",", ""))[0]+" 1", strings.Fields(c.two)[0]+" 2", strings.Fields(c.lines)
		want(t, c.two, got, []string{"Pit road: " + one + " / 1 100", "Wash: " + one + " / 1 100",
			"Canteen: " + two + " / " + lines[0] + " 120", "Offices: " + two + " / " + lines[1] + " 120", "Stores: " + two + " / " + lines[1] + " 120"})
	}
}

// A list of controls by their places may cut names short and end in a word for none; an item of a place that no row has is
// asked about. Common practice, no source.
func TestControlsByPlacesInShort(t *testing.T) {
	const rows = "Room | Qty | Tap\nHall | 6 | 6 W\nTraining room | 4 | 6 W\nOffices | 10 | 1.5 W\n|\n"
	for _, note := range []string{
		"Knobs: hall 50W, training rm 24W, none elsewhere", "Regler: Hall 50 W, Training rm 24 W, sonst keine", "Atténuateurs : hall 50 W, training rm 24 W, aucun ailleurs",
		"Atenuadores: hall 50 W, training rm 24 W, ninguno más", "Attenuatori: hall 50 W, training rm 24 W, nessun altro", "Regelaars: hall 50 W, training rm 24 W, elders geen",
	} {
		j := wholeJob(t, rows+note)
		want(t, note, controlsOn(j), []string{"Hall 50", "Training room 24", "Offices -"})
		if len(j.Questions) > 0 {
			t.Errorf("%s: asked %q", note, j.Questions[0].Text)
		}
	}
	j := wholeJob(t, rows+"Knobs: hall 50W, training room 24W, paint shop 12W")
	want(t, "a place that no row has", controlsOn(j), []string{"Hall 50", "Training room 24", "Offices -"})
	var asked []string
	for _, q := range j.Questions {
		asked = append(asked, q.Text)
	}
	want(t, "a place that no row has", asked, []string{"“paint shop 12W” in “Knobs: hall 50W, training room 24W, paint shop 12W”: which loudspeakers hang behind this control?"})
}

// controlsOn lists the zones of a job's loudspeakers with the rating of the control behind each.
func controlsOn(j *schedule.Job) []string {
	var out []string
	for _, l := range j.Loudspeakers {
		c, w := l.Control, "-"
		if c == nil {
			c = l.Zone.Control
		}
		if c != nil {
			w = show(c.Rated)
		}
		out = append(out, l.Zone.Name+" "+w)
	}
	return out
}

// Titles of zones say in a cell of their own what feeds them; a remark that is the tag of a control hangs its row on it, and one
// note rates the control and lists the cables. Common practice, no source.
func TestZonesWithTheirFeedBeside(t *testing.T) {
	const head = "Room | Type | Qty | Tap | Notes\n"
	for _, c := range []struct{ one, two, three, note string }{
		{"Zone 1 - Jetty | | | Amplifier VA, channel 1 (120 W)", "Zone 2 - Workshop | | | Amplifier VA, channel 2 (120 W)", "Zone 3 - Shop | | | Amplifier VB (60 W)", "VC2: 50 W. Cables: Zone 1 120 m 2x2.5, Zone 2 45 m 2x1.5, Zone 3 60 m 2x1.5"},
		{"Zone 1 – Steg | | | Verstärker VA, Kanal 1 (120 W)", "Zone 2 – Werkstatt | | | Verstärker VA, Kanal 2 (120 W)", "Zone 3 – Shop | | | Verstärker VB (60 W)", "VC2: 50 W. Leitungen: Zone 1 120 m 2x2,5, Zone 2 45 m 2x1,5, Zone 3 60 m 2x1,5"},
		{"Zone 1 - Ponton | | | Ampli VA, voie 1 (120 W)", "Zone 2 - Atelier | | | Ampli VA, voie 2 (120 W)", "Zone 3 - Boutique | | | Ampli VB (60 W)", "VC2 : 50 W. Câbles : Zone 1 120 m 2x2,5, Zone 2 45 m 2x1,5, Zone 3 60 m 2x1,5"},
		{"Zona 1 - Muelle | | | Amplificador VA, canal 1 (120 W)", "Zona 2 - Taller | | | Amplificador VA, canal 2 (120 W)", "Zona 3 - Tienda | | | Amplificador VB (60 W)", "VC2: 50 W. Cables: Zona 1 120 m 2x2,5, Zona 2 45 m 2x1,5, Zona 3 60 m 2x1,5"},
		{"Zona 1 - Molo | | | Amplificatore VA, canale 1 (120 W)", "Zona 2 - Officina | | | Amplificatore VA, canale 2 (120 W)", "Zona 3 - Negozio | | | Amplificatore VB (60 W)", "VC2: 50 W. Cavi: Zona 1 120 m 2x2,5, Zona 2 45 m 2x1,5, Zona 3 60 m 2x1,5"},
		{"Zone 1 - Steiger | | | Versterker VA, kanaal 1 (120 W)", "Zone 2 - Werkplaats | | | Versterker VA, kanaal 2 (120 W)", "Zone 3 - Winkel | | | Versterker VB (60 W)", "VC2: 50 W. Kabels: Zone 1 120 m 2x2,5, Zone 2 45 m 2x1,5, Zone 3 60 m 2x1,5"},
	} {
		j := wholeJob(t, "Boathouse of Vorden, public address\n|\n"+c.one+"\n"+head+"Gate | horn | 4 | 15 W |\n|\n"+c.two+"\n"+head+"Bench | wall | 6 | 6 W |\nOffice | ceiling | 2 | 3 W |\n|\n"+
			c.three+"\n"+head+"Counter | ceiling | 8 | 3 W | VC2\nTerrace | wall | 6 | 6 W | VC2\n|\n"+c.note)
		var got []string
		for _, l := range j.Loudspeakers {
			on := l.Zone.Channel.Label() + " " + show(l.Zone.Channel.Rated)
			if l.Channel != nil {
				on = l.Channel.Label() + " " + show(l.Channel.Rated)
			}
			if l.Control != nil {
				on += " " + l.Control.Name + " " + show(l.Control.Rated)
			}
			got = append(got, l.Room.Value+": "+on)
		}
		want(t, c.one, got, []string{"Gate: VA / 1 120", "Bench: VA / 2 120", "Office: VA / 2 120", "Counter: VB / 1 60 VC2 50", "Terrace: VB / 1 60 VC2 50"})
		got = nil
		for _, k := range j.Cables {
			got = append(got, show(k.Length)+" m "+show(k.Area)+" mm²")
		}
		want(t, c.note, got, []string{"120 m 2.5 mm²", "45 m 1.5 mm²", "60 m 1.5 mm²"})
	}
}
