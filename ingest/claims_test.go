package ingest

import (
	"fmt"
	"strings"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

// Where no loudspeaker is listed, the load that a schedule claims for a control
// or a channel is the only one there is: it counts once, and is an assumption.
func TestClaimedLoads(t *testing.T) {
	controls := draw(layout.Controls, "C", `
		control | room | stated load[W] | control rating[W] | from
		VC1 | Lobby | 32 | 25 | Amp 1 Zone 2
		VC2 | Shop | 6 | 10 | Amp 1 Zone 2
		VC3 | Class | 20 | 50 | Amp 2 Zone 1`)
	amps := draw(layout.Amplifiers, "A", `
		amplifier | zone | channel rating[W] | stated load[W]
		1 | 1 | 100 | 40
		1 | 2 | 60 | 38
		2 | 1 | 60 | 20`)
	j := jobOf(t, controls, amps)
	loads := make(map[string]schedule.Watts)
	for _, l := range j.Loudspeakers {
		if l.Count.Had() || !l.RowTotal.Had() {
			t.Errorf("%s: count %s, total %s", l.At, show(l.Count), show(l.RowTotal))
		}
		loads[l.Channel.Label()] += l.RowTotal.Low
	}
	want(t, "loads", []string{fmt.Sprint(loads)}, []string{"map[1 / 1:40 1 / 2:38 2 / 1:20]"})
	if n := len(j.Loudspeakers); n != 4 {
		t.Errorf("%d claims, want three of controls and that of the channel without one", n)
	}
	if len(takenAs(j)) == 0 {
		t.Error("claims were taken without a word")
	}

	j = jobOf(t, controls, amps, draw(layout.Loudspeakers, "L", `
		tag | room | tap[W] | control | channel
		LS1 | Lobby | 5 | VC1 | Amp 1 Zone 2
		LS2 | Shop | 5 | VC2 | Amp 1 Zone 2`))
	for _, l := range j.Loudspeakers {
		if l.RowTotal.Had() && l.Channel.Label() == "1 / 2" {
			t.Errorf("%s: a claim beside listed loudspeakers", l.At)
		}
	}
}

func TestUnusedOutputsInAZoneTable(t *testing.T) {
	j := jobOf(t, draw(layout.Zones, "Z", `
		amplifier | channel | zone | quantity | tap[W] | channel rating[W]
		1 | A | North | 10 | 8 | 100
		1 | B | spare | | | 100`))
	var got []string
	for _, c := range j.Channels {
		got = append(got, c.Label()+" "+show(c.Rated))
	}
	want(t, "channels", got, []string{"1 / A 100", "1 / B 100"})
	if len(j.Zones) != 1 {
		t.Errorf("%d zones", len(j.Zones))
	}
}

func TestLoudspeakersToldBesideControls(t *testing.T) {
	j := jobOf(t, draw(layout.Controls, "C", `
		control | room | to | control rating[W] | stated load[W]
		VC1 | Lobby | 8 x ceiling @ 4W | 25 | 32
		VC2 | Shop | 3 wall at 2 W, 1 horn at 10 W | 10 | `))
	want(t, "loudspeakers", describe(j), []string{"8 x 4 W control VC1", "3 x 2 W control VC2", "1 x 10 W control VC2"})
}

// Rows of outputs that count their loudspeakers may describe a control without a name, in any language; a note below
// them rates the amplifiers. Common practice, no source.
func TestControlsDescribedBesideOutputs(t *testing.T) {
	for _, words := range []string{"potentiomètre", "réglage de volume", "Lautstärkeregler", "regolatore di volume", "control de volumen", "volumeregelaar", "volume control"} {
		j := wholeJob(t, strings.ReplaceAll(`## Patinoire
Patinoire de Valbrune, 100 V
|
Zone | HP desservis | Puissance HP | Ampli | Sortie | Réglage
Piste | 8 | 20 W | AMP1 | 1 |
Tribune nord | 6 | 10 W | AMP1 | 2 | CONTROL 60 W
Tribune sud | 6 | 10 W | AMP1 | 3 | CONTROL 60 W
Vestiaires | 10 | 3 W | AMP1 | 4 | CONTROL 24 W
Hall | 5 | 6 W | AMP2 | 1 |
|
AMP1 : 4 x 250 W
AMP2 : 1 x 60 W`, "CONTROL", words))
		want(t, words+": loudspeakers", describe(j), []string{"8 x 20 W zone Piste channel AMP1 / 1", "6 x 10 W zone Tribune nord control control (Tribune nord) channel AMP1 / 2",
			"6 x 10 W zone Tribune sud control control (Tribune sud) channel AMP1 / 3", "10 x 3 W zone Vestiaires control control (Vestiaires) channel AMP1 / 4", "5 x 6 W zone Hall channel AMP2 / 1"})
		var controls []string
		for _, c := range j.Controls {
			controls = append(controls, c.Name+" "+show(c.Rated))
		}
		want(t, words+": controls", controls, []string{"control (Tribune nord) 60", "control (Tribune sud) 60", "control (Vestiaires) 24"})
	}
}
