package ingest

import (
	"slices"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

// A rating in the row of a loudspeaker is its own where amplifiers and controls of the same
// register have theirs in the same column. Common practice, no source.
func TestRatingsOfARegisterInGerman(t *testing.T) {
	j := wholeJob(t, `Objekt-Nr. | Bezeichnung | Objektart | Übergeordnetes Objekt | Raum | Zustandsnote | Status | Letzte Wartung | Nennwert | Einheit | Einstellwert | Bemerkung
4001 | Verstärker ELA | Verstärker | | Technik | 2 | in Betrieb | 03/2024 | 2 x 120 | W | |
4002 | Lautstärkeregler Sauna | Regler | 4001 | Sauna | 2 | in Betrieb | 03/2024 | 12 | W | | Kanal 2
4010 | Lautsprecher Halle | Lautsprecher | 4001 | Schwimmhalle | 3 | in Betrieb | 03/2024 | 30 | W | 15 | Kanal 1
4011 | Lautsprecher Halle | Lautsprecher | 4001 | Schwimmhalle | 3 | in Betrieb | 03/2024 | 30 | W | 15 | Kanal 1
4020 | Lautsprecher Sauna | Lautsprecher | 4002 | Sauna | 2 | in Betrieb | 03/2024 | 6 | W | 3 |
4021 | Lautsprecher Sauna | Lautsprecher | 4002 | Sauna | 2 | in Betrieb | 03/2024 | 6 | W | 3 |`)
	want(t, "outputs", ratedOutputs(j), []string{"4001 / 2 120 W", "4001 / 1 120 W"})
	if len(j.Loudspeakers) != 4 || show(j.Loudspeakers[0].Rated) != "30" {
		t.Errorf("%d loudspeakers, the first rated %s", len(j.Loudspeakers), show(j.Loudspeakers[0].Rated))
	}
}

// "Réglage" may be a tap or what one is set by: cells of places and ratings decide.
func TestControlsByTheirCells(t *testing.T) {
	j := wholeJob(t, `Observatoire du Mont Clair
AMPLI 1 - 4 x 100 W, voies 1+2 pontées = 200 W, 100 V

Voie | Local | Nb | Prise | Réglage
1+2 | Coupole | 8 | 20 W |
3 | Hall | 6 | 6 W | HALL 50 W
3 | Accueil | 2 | 3 W | HALL 50 W
4 | Boutique | 4 | 3 W | BOUTIQUE 24 W`)
	if got, want := controlsOf(j), "HALL 50 W x2, BOUTIQUE 24 W x1"; got != want {
		t.Errorf("controls %s, want %s", got, want)
	}
	want(t, "outputs", ratedOutputs(j), []string{"Amp 1 / 1+2 200 W", "Amp 1 / 3 100 W", "Amp 1 / 4 100 W"})
}

// Of several amplifiers that a title names, none is that of the whole list: its lines decide.
func TestSeveralAmplifiersInATitle(t *testing.T) {
	j := wholeJob(t, `Piscina di Monteverde - diffusori
Amplificatore A: 2 x 120 W (L1, L2). Amplificatore B: 60 W (L3). Linea 100 V

Linea | Locale | N. diffusori | Presa | Attenuatore
L1 | Vasca | 8 | 10 W |
L2 | Spogliatoi | 10 | 3 W | ATT1
L3 | Ufficio | 2 | 3 W | ATT3`)
	want(t, "outputs", ratedOutputs(j), []string{"A / L1 120 W", "A / L2 120 W", "B / L3 60 W"})
}

// A note may rate controls that no row names.
func TestRangesOfControlsThatNoRowNames(t *testing.T) {
	j := noted(t, "1. Fix to soffit.\n2. ATT-1 to ATT-9 are 24 W with relays.", "1")
	for _, c := range j.Controls {
		if show(c.Rated) != "24" {
			t.Errorf("%s rated %s, want 24", c.Name, show(c.Rated))
		}
	}
}

// A column of units says what the figures beside it are in.
func TestUnitsInAColumnOfTheirOwn(t *testing.T) {
	j := wholeJob(t, `Asset | Asset name | Parent | Space | Qty | UoM | Tap | Tap UoM | Cable length | Length UoM | Circuit
SP-1 | Ceiling speaker | AMP-A | Lobby | 6 | ea | 4 | W | 120 | ft | 1
SP-2 | Ceiling speaker | AMP-A | Gift shop | 4 | ea | 2 | W | 80 | ft | 1
SP-3 | Horn | AMP-A | Dock | 2 | ea | 15 | W | 210 | ft | 2
AMP-A | Amplifier, 2 x 120 W, 70 V | | Closet | 1 | ea | | | | |`)
	if len(j.Cables) == 0 || show(j.Cables[0].Length) != "36.576" { // 120 ft of 0.3048 m
		t.Errorf("cables %v", cablesOf(j))
	}
	if slices.Contains(asked(j), "I1 length") {
		t.Error("the unit is asked")
	}
}

// Taps that were found and left need no word for a tap where both are in watts.
func TestFoundAndLeftInWatts(t *testing.T) {
	j := wholeJob(t, `Retest sheet - Alder Pool
Amps: PA1 120W 100V; PA2 60W 100V

Amp | Line | Room | No. | Found W | Left W | Ohms | Tested
PA1 | 1 | Pool | 8 | 10 | 7.5 | 160 | OK
PA1 | 2 | Foyer | 4 | 6 | 3 | 830 | OK
PA2 | 1 | Gym | 6 | 6 | 6 | 270 | OK
PA2 | 2 | Studio | 2 | 6 | off | | disconnected`)
	want(t, "loudspeakers", describe(j), []string{"8 x 7.5 W zone Pool channel PA1 / 1", "4 x 3 W zone Foyer channel PA1 / 2", "6 x 6 W zone Gym channel PA2 / 1", "2 x 0 W zone Studio channel PA2 / 2 removed"})
	if len(j.Amplifiers) != 2 || show(j.Amplifiers[1].Rated) != "60" {
		t.Errorf("amplifiers %+v", j.Amplifiers)
	}
}

// A state in brackets behind a counted tap is that of all of the row; several counted taps
// count themselves.
func TestCountedTapsWithStates(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "L", "room | tap: Speakers\nTropical | 8 x 6W, 2 x 3W\nPotting | 2 x 15W (future)"))
	want(t, "loudspeakers", describe(j), []string{"8 x 6 W zone Tropical", "2 x 3 W zone Tropical", "2 x 15 W zone Potting future"})
	if slices.ContainsFunc(asked(j), func(s string) bool { return s == "B2 quantity" }) {
		t.Errorf("asked %v", asked(j))
	}
	if _, status := tapWithState("4 x 3 W (1 spare)"); status != schedule.Installed {
		t.Error("one spare makes all of the row spare")
	}
}

// Places where a device hangs on one in another place are no sites of other jobs, and what
// devices hang on may be an amplifier below a word for outputs.
func TestDevicesOfARegisterHangTogether(t *testing.T) {
	for _, drawing := range []string{`Código | Equipo | Depende de | Ubicación | Estado | Potencia máx. | Toma | Salida
ET1 | Etapa de potencia | | Armario | Operativo | 2 x 120 W | |
AT1 | Atenuador | ET1 | Vestuario | Operativo | 36 W | | 2
AL1 | Altavoz | ET1 | Piscina | Operativo | 30 W | 15 W | 1
AL2 | Altavoz | ET1 | Piscina | Operativo | 30 W | 15 W | 1
AL3 | Altavoz | AT1 | Vestuario | Operativo | 6 W | 3 W |
AL4 | Altavoz | AT1 | Vestuario | Dado de baja | 6 W | 3 W |`, `Code | Omschrijving | Soort | Hangt aan | Ruimte | Status | Vermogen | Aftakking | Opmerking
ET1 | Versterker omroep | versterker | | Techniek | in gebruik | 2 x 120 W | |
AT1 | Volumeregelaar | regelaar | ET1 | Sauna | in gebruik | 36 W | | Uitgang 2
AL1 | Luidspreker | luidspreker | ET1 | Bad | in gebruik | 30 W | 15 W | Uitgang 1
AL2 | Luidspreker | luidspreker | ET1 | Bad | in gebruik | 30 W | 15 W | Uitgang 1
AL3 | Luidspreker | luidspreker | AT1 | Sauna | in gebruik | 6 W | 3 W |
AL4 | Luidspreker | luidspreker | AT1 | Sauna | vervallen | 6 W | 3 W |`} {
		j := wholeJob(t, drawing)
		if got, want := controlsOf(j), "AT1 36 W x2"; got != want {
			t.Errorf("controls %s, want %s", got, want)
		}
		var got []string
		for _, l := range j.Loudspeakers {
			got = append(got, l.Tag.Value+" "+l.Channel.Label()+" "+l.Status.String())
		}
		want(t, "loudspeakers", got, []string{"AL1 ET1 / 1 installed", "AL2 ET1 / 1 installed", "AL3 ET1 / 2 installed", "AL4 ET1 / 2 removed"})
	}
}
