package line

import (
	"maps"
	"math"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// feetOhms is the loop of a one-way length in feet of wire of the given
// ohm/1000 ft, as the netlists write it.
func feetOhms(ft, ohmPer1000 float64) float64 { return 2 * ft * ohmPer1000 / 1000 }

// circuit is a netlist of testdata/spice written as nodes.
type circuit struct {
	volts float64
	nodes []Node
	names map[string]int // netlist node -> node; behind the control where there is one
	ahead map[string]int // netlist node ahead of a control -> node
}

func newCircuit(volts float64) *circuit {
	return &circuit{volts: volts, names: map[string]int{}, ahead: map[string]int{}}
}

// add puts a named node with a tap in watts (0 for none) behind a loop of ohms
// and returns its index.
func (c *circuit) add(name string, parent int, ohms, tapW float64) int {
	c.nodes = append(c.nodes, Node{Parent: parent, LoopOhms: ohms, LoadSiemens: tapW / (c.volts * c.volts)})
	c.names[name] = len(c.nodes) - 1
	return len(c.nodes) - 1
}

// control puts a wall control with netlist nodes in and out.
func (c *circuit) control(in, out string, parent int, ohms, controlOhms, ratio float64) int {
	i := c.add(out, parent, ohms, 0)
	c.ahead[in] = i
	c.nodes[i].ControlOhms, c.nodes[i].Ratio = controlOhms, ratio
	return i
}

// chain adds nodes one behind the other, with steps in ohms and taps in watts.
func (c *circuit) chain(prefix string, parent int, steps, taps []float64) int {
	for i, tap := range taps {
		parent = c.add(prefix+string(rune('1'+i)), parent, steps[i], tap)
	}
	return parent
}

func circuit01() *circuit {
	c := newCircuit(70.7)
	c.add("n1", Source, feetOhms(300, 6.3850), 100)
	return c
}

func circuit02() *circuit {
	c := newCircuit(70.7)
	at := c.add("n1", Source, feetOhms(100, 4.0160), 5)
	for name := range strings.FieldsSeq("n2 n3 n4 n5 n6 n7 n8 n9 n10 n11 n12") {
		at = c.add(name, at, feetOhms(25, 4.0160), 5)
	}
	return c
}

func circuit03() *circuit {
	c := newCircuit(25)
	var steps []float64
	for _, ft := range []float64{60, 35, 40, 20, 55, 30} {
		steps = append(steps, feetOhms(ft, 6.3850))
	}
	c.chain("n", Source, steps, []float64{10, 5, 2, 4, 1, 0.5})
	return c
}

func circuit04() *circuit {
	c := newCircuit(70.7)
	j := c.add("j", Source, feetOhms(250, 1.5880), 0)
	a := feetOhms(30, 6.3850)
	b := feetOhms(40, 4.0160)
	c.chain("a", j, []float64{feetOhms(80, 6.3850), a, a, a}, []float64{10, 10, 10, 10})
	c.chain("b", j, []float64{feetOhms(120, 4.0160), b, b, b, b, b}, []float64{5, 5, 5, 5, 5, 5})
	return c
}

// circuit05 is copy f (prefix "f", both controls at 0 dB) or s (-6 and -3 dB).
func circuit05(prefix string, aDB, bDB float64) *circuit {
	const awg18 = 6.3850
	c := newCircuit(70.7)
	// Each control loses 0.5 dB at its rated 35 W and 10 W, as in the netlist.
	share := math.Pow(10, 0.5/20) - 1
	ohmsA, ohmsB := 70.7*70.7/35*share, 70.7*70.7/10*share
	at := c.control(prefix+"ain", prefix+"ao", Source, feetOhms(150, awg18), ohmsA, math.Pow(10, aDB/20))
	at = c.chain(prefix+"a", at, []float64{feetOhms(20, awg18), feetOhms(25, awg18)}, []float64{10, 10})
	at = c.control(prefix+"bin", prefix+"bo", at, feetOhms(40, awg18), ohmsB, math.Pow(10, bDB/20))
	c.chain(prefix+"b", at, []float64{feetOhms(15, awg18), feetOhms(25, awg18)}, []float64{5, 5})
	return c
}

func circuit06() *circuit {
	c := newCircuit(100)
	metres := func(m float64) float64 { return 2 * m * 13.3 / 1000 }
	steps := []float64{metres(180)}
	for range 7 {
		steps = append(steps, metres(20))
	}
	c.chain("n", Source, steps, []float64{20, 20, 10, 10, 10, 6, 6, 3})
	return c
}

// circuits maps a row of summary.csv to the circuit and its amplifier's node.
var circuits = map[string]struct {
	build func() *circuit
	amp   string
}{
	"01-lumped":          {circuit01, "amp"},
	"02-even12":          {circuit02, "amp"},
	"03-daisy-mixed-25v": {circuit03, "amp"},
	"04-tree2":           {circuit04, "amp"},
	"05-two-controls/f":  {func() *circuit { return circuit05("f", 0, 0) }, "ampf"},
	"05-two-controls/s":  {func() *circuit { return circuit05("s", -6, -3) }, "amps"},
	"06-100v-mm2":        {circuit06, "amp"},
}

// TestCircuitSimulator checks every node of every netlist in testdata/spice
// against ngspice 39.3 (see the source column). The simulator prints nine
// decimals; 1e-6 is asked for, 1e-8 holds.
func TestCircuitSimulator(t *testing.T) {
	var rows []record
	files, err := filepath.Glob("testdata/spice/[0-9]*.csv")
	if err != nil || len(files) != 6 {
		t.Fatalf("files %v, error %v; want 6", files, err)
	}
	for _, file := range files {
		rows = append(rows, readReference(t, file)...)
	}
	checked := map[int]bool{} // index in rows
	for _, name := range slices.Sorted(maps.Keys(circuits)) {
		c := circuits[name].build()
		sol := must(Solve(c.volts, c.nodes))(t)
		seen := map[string]bool{}
		file, copyName, _ := strings.Cut(name, "/")
		for i, row := range rows {
			if row["circuit"] != file || copyName != "" && !strings.HasPrefix(strings.TrimPrefix(row["node"], "amp"), copyName) {
				continue
			}
			checked[i], seen[row["node"]] = true, true
			node, volts, loss := row["node"], 0.0, 0.0
			if node == circuits[name].amp {
				volts = sol.Volts
			} else if k, ok := c.ahead[node]; ok {
				volts = sol.Nodes[k].InVolts
				loss = LossDB(sol.Volts, volts)
			} else if k, ok := c.names[node]; ok {
				volts, loss = sol.Nodes[k].Volts, sol.Nodes[k].LossDB
			} else {
				t.Errorf("%s: node %s is not in the circuit", name, node)
				continue
			}
			if want := row.number(t, "v_ngspice"); !near(volts, want, 1e-8) {
				t.Errorf("%s: node %s: %.9f V, want %.9f", name, node, volts, want)
			}
			if want := row.number(t, "level_db"); math.Abs(-loss-want) > 0.6e-4 {
				t.Errorf("%s: node %s: level %.5f dB, want %.4f", name, node, -loss, want)
			}
			if row["kind"] == "speaker" {
				got := sol.Nodes[c.names[node]].LoadWatts
				if want := row.number(t, "watts_delivered"); math.Abs(got-want) > 0.6e-4 {
					t.Errorf("%s: node %s: %.5f W, want %.4f", name, node, got, want)
				}
			}
		}
		if want := len(c.names) + len(c.ahead) + 1; len(seen) != want {
			t.Errorf("%s: %d nodes checked, the circuit has %d", name, len(seen), want)
		}
	}
	if len(checked) != len(rows) {
		t.Errorf("%d of %d rows checked", len(checked), len(rows))
	}
}

// TestCircuitTotals checks what the amplifier sees and where the worst
// loudspeaker is against testdata/spice/summary.csv.
func TestCircuitTotals(t *testing.T) {
	rows := readReference(t, "testdata/spice/summary.csv")
	if len(rows) != len(circuits) {
		t.Fatalf("%d rows, %d circuits", len(rows), len(circuits))
	}
	for _, row := range rows {
		name := row["circuit"]
		c := circuits[name].build()
		sol := must(Solve(c.volts, c.nodes))(t)
		for _, check := range []struct {
			column   string
			got, abs float64
		}{
			{"line_v", sol.Volts, 0},
			{"sum_of_taps_w", sol.NominalWatts, 1e-9},
			{"amp_current_a", sol.Amps, 0.6e-6},
			{"amp_power_w", sol.Watts, 0.6e-4},
			{"load_seen_ohm", sol.LoadOhms, 0.6e-4},
			{"delivered_w", sol.LoadWatts, 0.6e-4},
			{"lost_in_cable_and_controls_w", sol.CableWatts + sol.ControlWatts, 0.6e-4},
			{"worst_level_db", -sol.Nodes[sol.Worst].LossDB, 0.6e-4},
		} {
			if want := row.number(t, check.column); math.Abs(check.got-want) > check.abs {
				t.Errorf("%s: %s = %.7f, want %v", name, check.column, check.got, want)
			}
		}
		if k := c.names[row["worst_node"]]; sol.Worst != k {
			t.Errorf("%s: worst node %d, want %d (%s)", name, sol.Worst, k, row["worst_node"])
		}
		if row["level_db_if_all_load_at_far_end"] != "" {
			loop := 0.0
			for _, n := range c.nodes {
				loop += n.LoopOhms
			}
			far := must(EvenlySpaced(c.volts, sol.NominalWatts, loop, 1))(t)
			if want := row.number(t, "level_db_if_all_load_at_far_end"); math.Abs(-far.LossDB-want) > 0.6e-4 {
				t.Errorf("%s: far-end level %.5f dB, want %v", name, -far.LossDB, want)
			}
		}
	}
}
