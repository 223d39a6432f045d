package ingest

import (
	"fmt"
	"strings"
	"testing"
)

// A sentence says which amplifier feeds which places, the verb at the first of them alone.
func TestSentencesOfAmplifiersThatFeedPlaces(t *testing.T) {
	const list = "Area | Room | Qty | Tap\nNave | Door | 4 | 6 W\nChoir | Stalls | 2 | 6 W\nTower | Loft | 2 | 10 W"
	for _, tt := range []struct{ name, note, want string }{
		{"codes with ratings", "100 V system. ZK1 (240 W) feeds Nave and Choir, ZK2 (120 W) Tower", "ZK1 ZK1 ZK2"},
		{"a word for amplifiers", "Amplifier ZK1 (240 W, 100 V) supplies the Nave and the Choir; amplifier ZK2, 120 W, feeds the Tower", "ZK1 ZK1 ZK2"},
		{"and between them", "ZK1 (240 W) feeds Nave and Choir and ZK2 (120 W) feeds Tower", "ZK1 ZK1 ZK2"},
		{"codes that go on", "Verstärker ZK1 speist Nave und Choir, ZK2 Tower", "ZK1 ZK1 ZK2"},
		{"codes that go on in French", "L'ampli ZK1 alimente Nave et Choir, ZK2 Tower", "ZK1 ZK1 ZK2"},
		{"the rest", "Verstärker ZK1 (240 W) speist Nave, Verstärker ZK2 (120 W) speist den Rest", "ZK1 ZK2 ZK2"},
		{"in French", "L'ampli ZK1 (240 W) alimente Nave et Choir, l'ampli ZK2 (120 W) alimente Tower", "ZK1 ZK1 ZK2"},
		{"a control that serves", "ZK1 (36 W) serves Nave, ZK2 (36 W) serves Tower", "- - -"},
		{"a place that no row has", "ZK1 (240 W) feeds Nave and Crypt", "- - -"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := wholeJob(t, "## S\nChapel of Vorden\n"+tt.note+"\n\n"+list)
			var got []string
			for _, l := range j.Loudspeakers {
				c := l.Channel
				if c == nil && l.Zone != nil {
					c = l.Zone.Channel
				}
				if c == nil || c.Amplifier == nil {
					got = append(got, "-")
					continue
				}
				got = append(got, c.Amplifier.Name)
			}
			want(t, "amplifiers", []string{strings.Join(got, " ")}, []string{tt.want})
		})
	}
}

// Marks stand for what amplifiers do, above the list or below it; where one amplifier stands before one place, it may be where
// it is. Common practice, no source.
func TestAmplifiersBeforeMarks(t *testing.T) {
	const list = "Zone | Qty | Tap\nNave | 4 | 6 W\nChoir | 2 | 3 W\nTower | 3 | 10 W"
	fed := []string{"4 x 6 W zone Nave channel %[1]s 1 / 1", "2 x 3 W zone Choir channel %[1]s 1 / 1", "3 x 10 W zone Tower channel %[1]s 2 / 1"}
	for _, c := range []struct{ word, note string }{
		{"Amp", "Amp 1: Nave, Choir. Amp 2: Tower."}, {"Amp", "job 19-0711 all 100 V, Amp 1: Nave, Choir. Amp 2: Tower."}, {"Amp", "Amp 1 - Nave and Choir; Amp 2 - Tower"}, {"Amp", "Amp 1 = Nave, Choir; Amp 2 = Tower"},
		{"Verstärker", "Verstärker 1: Nave, Choir; Verstärker 2: Tower"}, {"Ampli", "Ampli 1 : Nave et Choir ; Ampli 2 : Tower"},
		{"Amplificador", "Amplificador 1: Nave y Choir. Amplificador 2: Tower."}, {"Amplificatore", "Amplificatore 1: Nave e Choir; Amplificatore 2: Tower"},
		{"Versterker", "Versterker 1: Nave en Choir; Versterker 2: Tower"},
	} {
		var wanted []string
		for _, f := range fed {
			wanted = append(wanted, fmt.Sprintf(f, c.word))
		}
		want(t, c.note, describe(wholeJob(t, "St Bride hall 100 V\n|\n"+list+"\n|\n"+c.note)), wanted)
		want(t, c.note+" above", describe(wholeJob(t, "St Bride hall 100 V\n"+c.note+"\n"+list)), wanted)
	}
	j := wholeJob(t, "St Bride hall 100 V\n|\n"+list+"\n|\nAmp 1: Nave")
	want(t, "one place", describe(j), []string{"4 x 6 W zone Nave", "2 x 3 W zone Choir", "3 x 10 W zone Tower"})
}

// What a note hangs on amplifiers and another rates belongs together, though no row names an amplifier. Common practice, no source.
func TestNotesFeedAndRateAmplifiers(t *testing.T) {
	const list = "\n|\nZone | Qty | Tap\nNave | 4 | 6 W\nChoir | 2 | 3 W\nTower | 3 | 10 W\n|\n"
	for _, c := range []struct{ feeds, rates string }{
		{"Amp A1: Nave, Choir. Amp A2: Tower.", "Amp A1 120 W, amp A2 60 W"}, {"Verstärker A1 speist Nave und Choir, Verstärker A2 Tower", "Verstärker A1 120 W, Verstärker A2 60 W"},
	} {
		want(t, c.feeds, ratedOutputs(wholeJob(t, "St Bride hall 100 V\n"+c.feeds+list+c.rates)), []string{"A1 / 1 120 W", "A2 / 1 60 W"})
	}
}

// Rows of cells say what an amplifier gives and which lines it feeds; a label stands at the first of them alone. What
// several lines get is of all of them. Common practice, no source.
func TestAmplifiersForLines(t *testing.T) {
	const list = "Line | Room | Qty | Tap\nL1 | Dome | 12 | 6 W\nL2 | Foyer | 6 | 3 W\nL3 | Yard | 3 | 15 W\n|\n"
	fed := []string{"12 x 6 W zone Dome channel V1 / L1", "6 x 3 W zone Foyer channel V2 / L2", "3 x 15 W zone Yard channel V2 / L3"}
	for _, note := range []string{
		"Amplifiers: | V1 | 120 W | for L1\n| V2 | 60 W | for L2 + L3",
		"Verstärker | V1 | 120 W | für L1\n| V2 | 60 W | für L2 und L3",
		"Amplificador V1 (120 W) para L1, amplificador V2 (60 W) para L2 y L3",
		"Versterker: V1 120 W voor L1\nVersterker: V2 60 W voor L2 en L3",
		"Ampli V1, 120 W, pour L1\nAmpli V2, 60 W, pour lignes L2 et L3",
		"L'amplificatore V1 (120 W) alimenta L1, V2 (60 W) alimenta L2, L3",
	} {
		j := wholeJob(t, "Planetarium of Seeberg 100 V\n|\n"+list+note)
		want(t, note, describe(j), fed)
		var rated []string
		for _, c := range j.Channels {
			rated = append(rated, c.Name+" "+show(c.Rated))
		}
		want(t, note+": ratings", rated, []string{"L1 120", "L2 ?", "L3 ?"})
	}
}
