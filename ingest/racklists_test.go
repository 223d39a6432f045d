package ingest

import "testing"

// A list of amplifiers with a column for each output names them by what each row
// has of its own, and rates them by their description.
func TestOutputsAcrossARack(t *testing.T) {
	for _, c := range []struct {
		name, sheets string
		want, rated  []string
	}{
		{"English, units", `
## Zones
Lily house, PA zones (100 V)
Zone | Speakers | Tap | Load
Foyer | 6 ceiling | 6W | 36W
Exhibition | 8 pendant | 10W | 80W
Stairs | 4 wall | 3W | 12W
Car park | 3 horn | 15W | 45W
## Rack
Unit | Description | Out 1 | Out 2
1 | Amplifier 2 x 120W | Foyer | Exhibition
2 | Amplifier 2 x 60W | Stairs | Car park
3 | Blank panel`,
			[]string{"6 x 6 W zone Foyer channel 1 / 1", "8 x 10 W zone Exhibition channel 1 / 2", "4 x 3 W zone Stairs channel 2 / 1", "3 x 15 W zone Car park channel 2 / 2"},
			[]string{"1 / 1 120 W", "1 / 2 120 W", "2 / 1 60 W", "2 / 2 60 W"}},
		{"German, places in a rack", `
## Zonen
Orangerie ELA 100 V
Zone | Lautsprecher | Abgriff
Halle | 6 | 10 W
Kasse | 2 | 3 W
## Schrank
Platz | Gerät | Ausgang 1 | Ausgang 2
HE 3 | Verstärker 2 x 120 W | Halle | Kasse
HE 5 | Leerblende`,
			[]string{"6 x 10 W zone Halle channel HE 3 / 1", "2 x 3 W zone Kasse channel HE 3 / 2"}, []string{"HE 3 / 1 120 W", "HE 3 / 2 120 W"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheets)
			want(t, "loudspeakers", describe(j), c.want)
			want(t, "outputs", ratedOutputs(j), c.rated)
		})
	}
}

// An output "C/1" is no loudspeaker C1, which it would hang on; an amplifier in a
// title block may be counted before it is named.
func TestOutputsWrittenLikeTags(t *testing.T) {
	j := wholeJob(t, `
## Loudspeakers
Ice rink, 100 V
Tag | Position | Type | Tap (W) | Amplifier output
C1 | Entrance | Ceiling | 6 | A/2
C2 | Entrance | Ceiling | 6 | A/2
K1 | Stand | Column | 20 | C/1
K2 | Stand | Column | 20 | C/1
## Amplifiers
Amplifier | Output | Rating (W)
A | 2 | 60
C | 1 | 120`)
	want(t, "loudspeakers", describe(j), []string{"C1 1 x 6 W zone Entrance channel A / 2", "C2 1 x 6 W zone Entrance channel A / 2",
		"K1 1 x 20 W zone Stand channel C / 1", "K2 1 x 20 W zone Stand channel C / 1"})

	for title, rated := range map[string][]string{
		"Amplifier: | one, AMP1, 2 outputs of 60 W":    {"AMP1 / 1 60 W", "AMP1 / 2 60 W"},
		"Amplis: | un seul, AMPLI2, 2 sorties de 60 W": {"AMPLI2 / 1 60 W", "AMPLI2 / 2 60 W"},
	} {
		j := wholeJob(t, title+`
Site: | Boathouse

Ref | Room | Tap | Output
S1 | Slip | 10 W | 1
S2 | Gym | 10 W | 2
S3 | Gym | 10 W | 2`)
		want(t, title, ratedOutputs(j), rated)
	}
}

// What is named alone beside others with an output is an amplifier like them.
func TestAmplifiersNamedAloneBesideOutputs(t *testing.T) {
	for _, c := range []struct {
		name, sheet string
		want        []string
	}{
		{"where they are fed from", `
Orangery PA 100 V
Room | Heads | Tap W | Fed from
Hall | 6 | 10 | rack 1 out A
Foyer | 4 | 6 | rack 1 out B
Shop | 2 | 3 | rack 2
Office | 3 | 3 | rack 2`, []string{"6 x 10 W zone Hall channel rack 1 / A", "4 x 6 W zone Foyer channel rack 1 / B", "2 x 3 W zone Shop channel rack 2 / 1", "3 x 3 W zone Office channel rack 2 / 1"}},
		{"German, in a column of outputs", `
Orangerie ELA 100 V
Raum | Stk. | Abgriff W | Ausgang
Halle | 6 | 10 | Verst. 1 Ausg. 1
Foyer | 4 | 6 | Verst. 1 Ausg. 2
Kasse | 2 | 3 | Verst. 2`, []string{"6 x 10 W zone Halle channel Verst. 1 / 1", "4 x 6 W zone Foyer channel Verst. 1 / 2", "2 x 3 W zone Kasse channel Verst. 2 / 1"}},
		{"French", `
Serre - ligne 100 V
Local | Nb | Réglage W | Sortie
Halle | 6 | 10 | baie 1 voie A
Accueil | 2 | 3 | baie 2`, []string{"6 x 10 W zone Halle channel baie 1 / A", "2 x 3 W zone Accueil channel baie 2 / 1"}},
	} {
		t.Run(c.name, func(t *testing.T) { want(t, "loudspeakers", describe(wholeJob(t, c.sheet)), c.want) })
	}
}

// The sheet of a rack says which lines land on which output, and a list of controls which
// loudspeakers each one serves; in a list of outputs "Feeds" is what they feed. Common practice, no source.
func TestLinesThatLandOnOutputs(t *testing.T) {
	j := wholeJob(t, `
## Rooms
Twin rinks room sheet
Room|Spkr|Qty|Tap|Home run
Rink north|pendant|8|25W|HR-1
Rink south|pendant|8|25W|HR-2
Office|ceiling|4|5W|HR-3
Lobby|ceiling|6|5W|HR-4
## Rack
All outputs 70V
RU|Device|Output|W|Lands on
20|AMP 1|A|400|HR-1, HR-2
20|AMP 1|B|60|HR-3
18|AMP 2|A|60|HR-4
16|BLANK|||`)
	want(t, "home runs", describe(j), []string{"8 x 25 W zone Rink north channel AMP 1 / A", "8 x 25 W zone Rink south channel AMP 1 / A",
		"4 x 5 W zone Office channel AMP 1 / B", "6 x 5 W zone Lobby channel AMP 2 / A"})
	want(t, "outputs", ratedOutputs(j), []string{"AMP 1 / A 400 W", "AMP 1 / B 60 W", "AMP 2 / A 60 W"})

	j = wholeJob(t, `
## Speakers
Museum store, 100 V
ID|Bay|Model|Tapping|Cct
1|Bay 1|Round 6"|3W|1
2|Bay 1|Round 6"|3W|1
3|Studio|Round 6"|6W|2
4|Loading|Horn|15W|2
## Volume controls
VC|Size|Controls speakers
VC-A|12W|1 to 2
VC-B|10W|3
## Outputs
Zone output|Rating|Feeds
1|40W|Cct 1
2|60W|Cct 2`)
	want(t, "controls", describe(j), []string{"1 1 x 3 W control VC-A channel 1", "2 1 x 3 W control VC-A channel 1",
		"3 1 x 6 W control VC-B channel 2", "4 1 x 15 W channel 2"})
}
