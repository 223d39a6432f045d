package page

import (
	"encoding/xml"
	"fmt"
	"io"
	"strings"
	"testing"

	"lineaudit/audit"
)

// tree is a line with a control, a joint and two branches of loudspeakers.
func tree(branch int) *audit.Line {
	l := &audit.Line{Name: "W1 <east>", Nodes: []audit.Node{
		{Parent: -1, Kind: "amplifier", Place: "channel A1 / 1", Volts: 100},
		{Parent: 0, Kind: "control", Place: "control VC-1", LengthM: 40, AreaMM2: 1.5, Volts: 98.2, LossDB: 0.16, ThroughW: 60},
		{Parent: 1, Kind: "joint", Place: "J1", LengthM: 10, AreaMM2: 1.5, Volts: 97.9, LossDB: 0.18, ThroughW: 60},
	}}
	for b := range 2 {
		parent := 2
		for i := range branch {
			volts := 97 - float64(i) - float64(b)
			l.Nodes = append(l.Nodes, audit.Node{Parent: parent, Kind: "loudspeaker", Place: fmt.Sprintf("loudspeaker LS-%d%02d & co", b+1, i+1), LengthM: 6, AreaMM2: 0.75, Volts: volts, LossDB: 3 - volts/50, Watts: 9, ThroughW: 30, Loudspeakers: 1 + b})
			parent = len(l.Nodes) - 1
		}
	}
	return l
}

func TestNetworkIsWellFormedAndSaysTheWorst(t *testing.T) {
	text := network(tree(4))
	for d := xml.NewDecoder(strings.NewReader(text)); ; {
		if _, err := d.Token(); err == io.EOF {
			break
		} else if err != nil {
			t.Fatalf("%v\n%s", err, text)
		}
	}
	// the last loudspeaker of the second branch: 97 - 3 - 1 = 93 V, 3 - 93/50 = 1.14 dB
	for _, want := range []string{`aria-label="Network of W1 &lt;east&gt;: the worst loudspeaker is LS-204 &amp; co with 93 V, 1.14 dB"`, ">LS-101 &amp; co<", ">LS-201 &amp;… ×2<", "carries 60 W", ">40 m<"} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
	if n := strings.Count(text, "worst\""); n != 1 {
		t.Errorf("%d points are marked as the worst", n)
	}
}

// Points never lie on each other, and labels of one row keep apart.
func TestNetworkKeepsPointsApart(t *testing.T) {
	for _, branch := range []int{1, 3, 12, 60} {
		p := lay(tree(branch))
		for i := range p.x {
			for k := range i {
				if p.y[i] == p.y[k] && p.x[i]-p.x[k] < 70 && p.x[k]-p.x[i] < 70 {
					t.Errorf("%d a branch: points %d and %d lie %g apart", branch, k, i, p.x[i]-p.x[k])
				}
			}
			if p.x[i] > p.width || p.y[i] > p.height {
				t.Errorf("point %d lies outside", i)
			}
		}
	}
}

// A parent that is no parent must not hang the drawing.
func TestNetworkOfNonsense(t *testing.T) {
	network(&audit.Line{Nodes: []audit.Node{{Parent: 0}, {Parent: 7}, {Parent: -3}}})
}
