package ingest

import "testing"

// A list of lines and the outputs that feed them names no outputs by its lines;
// a list of loudspeakers by outputs is none of outputs.
func TestLinesBesideTheirOutputs(t *testing.T) {
	for _, c := range []struct {
		name, sheets string
		want         []string
	}{
		{"German", `
## LS
Bootshaus ELA 100 V
Raum | Typ | Stk. | P/Stk. [W] | Linie
Steg | Horn | 2 | 15 | L1
Halle | Horn | 4 | 10 | L2
## Verstärker
Linie | Verstärker | Nennleistung
L1 | V1 Ausg. 1 | 60 W
L2 | V1 Ausg. 2 | 120 W`, []string{"2 x 15 W zone Steg channel V1 / 1", "4 x 10 W zone Halle channel V1 / 2"}},
		{"Dutch, a list of loudspeakers by outputs", `
## Lijst
Kas omroep 100 V
nr | plek | watt | versterker | uitgang
1 | kas | 15 | V1 | 1
2 | kas | 15 | V1 | 1
3 | hal | 3 | V1 | 2`, []string{"1 x 15 W zone kas channel V1 / 1", "1 x 15 W zone kas channel V1 / 1", "1 x 3 W zone hal channel V1 / 2"}},
	} {
		t.Run(c.name, func(t *testing.T) { want(t, "loudspeakers", describe(wholeJob(t, c.sheets)), c.want) })
	}
}

// 1/2" is a size of pipes.
func TestInchesPickNoTap(t *testing.T) {
	if tapOf := wholeJobs(`
Garden taps
Ref | House | Tap | Qty | Pipe run m
T1 | Palm house | 1/2" | 4 | 22
T2 | Fern house | 3/4" | 1 | 35
T3 | Yard | 1/2" | 2 | 40`); len(tapOf) != 0 {
		t.Errorf("%d jobs", len(tapOf))
	}
}
