package line

import (
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

var spiceVoltage = regexp.MustCompile(`(?m)^v\((a|b)(\d+)\) = (\S+)`)

// TestSimulatorOnRandomTrees has ngspice solve trees that nobody has seen
// before. It is skipped where ngspice is not installed; testdata/spice holds
// what it said of six fixed circuits.
func TestSimulatorOnRandomTrees(t *testing.T) {
	ngspice, err := exec.LookPath("ngspice")
	if err != nil {
		t.Skip("ngspice is not installed")
	}
	seed := rand.Uint64()
	r := rand.New(rand.NewPCG(seed, 0))
	for range 5 {
		nodes := randomTree(r, 1+r.IntN(80))
		file := filepath.Join(t.TempDir(), "tree.cir")
		if err := os.WriteFile(file, []byte(netlist(100, nodes)), 0o600); err != nil {
			t.Fatal(err)
		}
		out, err := exec.Command(ngspice, "-b", file).Output()
		if err != nil {
			t.Fatalf("seed %d: ngspice: %v\n%s", seed, err, out)
		}
		sol := must(Solve(100, nodes))(t)
		found := spiceVoltage.FindAllStringSubmatch(string(out), -1)
		if len(found) != 2*len(nodes) {
			t.Fatalf("seed %d: ngspice printed %d voltages of %d nodes:\n%s", seed, len(found), len(nodes), out)
		}
		for _, m := range found {
			i := must(strconv.Atoi(m[2]))(t)
			want := must(strconv.ParseFloat(m[3], 64))(t)
			got := sol.Nodes[i].InVolts
			if m[1] == "b" {
				got = sol.Nodes[i].Volts
			}
			if !near(got, want, 1e-6) {
				t.Errorf("seed %d, %d nodes: v(%s%d) = %v, ngspice %v", seed, len(nodes), m[1], i, got, want)
			}
		}
	}
}

// netlist writes a tree for the simulator: node a<i> is ahead of a control, b<i>
// behind it. A control is its resistance and an ideal autotransformer (a
// voltage source following the input times the ratio, a current source taking
// the output current times the ratio); sources of 0 V stand for segments of no
// resistance and measure the currents.
func netlist(volts float64, nodes []Node) string {
	var b strings.Builder
	fmt.Fprintf(&b, "* random tree\nVamp amp 0 %g\n", volts)
	var names []string
	for i, n := range nodes {
		from := "amp"
		if n.Parent != Source {
			from = fmt.Sprintf("b%d", n.Parent)
		}
		series := func(name, from, to string, ohms float64) {
			if ohms == 0 {
				fmt.Fprintf(&b, "V%s%d %s %s 0\n", name, i, from, to)
				return
			}
			fmt.Fprintf(&b, "R%s%d %s %s %.17g\n", name, i, from, to, ohms)
		}
		ratio := n.Ratio
		if ratio == 0 {
			ratio = 1
		}
		a, core, out, behind := fmt.Sprint("a", i), fmt.Sprint("c", i), fmt.Sprint("o", i), fmt.Sprint("b", i)
		series("seg", from, a, n.LoopOhms)
		series("ctl", a, core, n.ControlOhms)
		fmt.Fprintf(&b, "E%d %s 0 %s 0 %.17g\n", i, out, core, ratio)
		fmt.Fprintf(&b, "F%d %s 0 Vout%d %.17g\n", i, core, i, ratio)
		fmt.Fprintf(&b, "Vout%d %s %s 0\n", i, out, behind)
		if n.LoadSiemens > 0 {
			fmt.Fprintf(&b, "Rload%d %s 0 %.17g\n", i, behind, 1/n.LoadSiemens)
		}
		names = append(names, fmt.Sprintf("v(%s) v(%s)", a, behind))
	}
	fmt.Fprintf(&b, ".control\nset numdgt=12\nop\nprint %s\nquit 0\n.endc\n.end\n", strings.Join(names, " "))
	return b.String()
}
