package line

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"gonum.org/v1/gonum/mat"
)

// randomTree makes n nodes in random order, with branches, groups, places
// without load, segments of no length and, one node in six, a control.
func randomTree(r *rand.Rand, n int) []Node { return growTree(r, r.Perm(n), n) }

// growTree is randomTree with the k-th node grown put at place[k] and fed by
// one of the reach nodes grown before it.
func growTree(r *rand.Rand, place []int, reach int) []Node {
	n := len(place)
	nodes := make([]Node, n)
	for k := range n {
		node := Node{Parent: Source}
		if k > 0 && r.IntN(20) > 0 {
			node.Parent = place[k-1-r.IntN(min(k, reach))]
		}
		if r.IntN(10) > 0 {
			node.LoopOhms = 5 * r.ExpFloat64()
		}
		if r.IntN(6) == 0 {
			node.ControlOhms = 20 * r.Float64()
			node.Ratio = 0.1 + 0.9*r.Float64()
		}
		if r.IntN(4) > 0 {
			node.LoadSiemens = Siemens(100, 0.5+30*r.Float64()) * float64(1+r.IntN(5))
		}
		nodes[place[k]] = node
	}
	return nodes
}

// dense solves the same network as a matrix that knows nothing of trees: for
// each node the volts ahead of and behind its control and its amperes,
//
//	feed volts - ahead - R amps = 0
//	ahead - R control amps - behind/n = 0
//	amps - n (load behind + amperes of the nodes fed from here) = 0
//
// and returns ahead and behind.
func dense(volts float64, nodes []Node) (ahead, behind []float64) {
	n := len(nodes)
	a := mat.NewDense(3*n, 3*n, nil)
	b := mat.NewVecDense(3*n, nil)
	for i, node := range nodes {
		vIn, vOut, amps := i, n+i, 2*n+i
		ratio := node.Ratio
		if ratio == 0 {
			ratio = 1
		}
		a.Set(i, vIn, -1)
		a.Set(i, amps, -node.LoopOhms)
		if node.Parent == Source {
			b.SetVec(i, -volts)
		} else {
			a.Set(i, n+node.Parent, 1)
			parentRatio := nodes[node.Parent].Ratio
			if parentRatio == 0 {
				parentRatio = 1
			}
			a.Set(2*n+node.Parent, amps, -parentRatio)
		}
		a.Set(n+i, vIn, 1)
		a.Set(n+i, amps, -node.ControlOhms)
		a.Set(n+i, vOut, -1/ratio)
		a.Set(2*n+i, amps, 1)
		a.Set(2*n+i, vOut, -ratio*node.LoadSiemens)
	}
	var x mat.VecDense
	if err := x.SolveVec(a, b); err != nil {
		panic(err)
	}
	for i := range n {
		ahead = append(ahead, x.AtVec(i))
		behind = append(behind, x.AtVec(n+i))
	}
	return ahead, behind
}

// TestSolveAgainstMatrix compares random trees with a dense matrix solution by
// gonum's LU factorisation.
func TestSolveAgainstMatrix(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	var solver Solver
	for round := range 60 {
		n := 1 + r.IntN(60)
		if round%20 == 0 {
			n = 200
		}
		nodes := randomTree(r, n)
		sol := must(solver.Solve(100, nodes))(t)
		ahead, behind := dense(100, nodes)
		for i, got := range sol.Nodes {
			if !near(got.InVolts, ahead[i], 1e-10) || !near(got.Volts, behind[i], 1e-10) {
				t.Fatalf("round %d, %d nodes, node %d: %v V ahead and %v behind, matrix %v and %v",
					round, n, i, got.InVolts, got.Volts, ahead[i], behind[i])
			}
			if want := 20 * math.Log10(100/behind[i]); math.Abs(got.LossDB-want) > 1e-9 {
				t.Fatalf("round %d, node %d: %v dB, matrix %v", round, i, got.LossDB, want)
			}
		}
	}
}

// checkBalance checks that no watt is lost from the books: in all, and at each
// node, what comes in is burnt, delivered or passed on.
func checkBalance(t *testing.T, nodes []Node, sol *Solution) {
	t.Helper()
	if out := sol.LoadWatts + sol.CableWatts + sol.ControlWatts; !near(out, sol.Watts, 1e-9) {
		t.Errorf("%v W in, %v W out", sol.Watts, out)
	}
	passed := make([]float64, len(nodes))
	fromSource, amps, nominal := 0.0, 0.0, 0.0
	for i, n := range nodes {
		res := sol.Nodes[i]
		nominal += sol.Volts * sol.Volts * n.LoadSiemens
		if n.Parent == Source {
			fromSource += res.FeedWatts
			amps += res.Amps
		} else {
			passed[n.Parent] += res.FeedWatts
		}
	}
	if !near(fromSource, sol.Watts, 1e-9) || !near(amps, sol.Amps, 1e-9) {
		t.Errorf("segments at the source carry %v W and %v A of %v and %v", fromSource, amps, sol.Watts, sol.Amps)
	}
	if !near(sol.NominalWatts, nominal, 1e-9) {
		t.Errorf("nominal load %v W, sum of loads %v W", sol.NominalWatts, nominal)
	}
	for i, res := range sol.Nodes {
		if out := res.CableWatts + res.ControlWatts + res.LoadWatts + passed[i]; math.Abs(out-res.FeedWatts) > 1e-9*sol.Watts {
			t.Errorf("node %d: %v W in, %v W out", i, res.FeedWatts, out)
		}
	}
}

func TestEnergyBalance(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 200 {
		nodes := randomTree(r, 1+r.IntN(200))
		checkBalance(t, nodes, must(Solve(70.7, nodes))(t))
	}
}

// TestScaling: the network is linear, so twice the volts are twice the volts
// and amperes and four times the watts everywhere; and volts depend only on
// ratios of impedances.
func TestScaling(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 50 {
		nodes := randomTree(r, 1+r.IntN(100))
		one := must(Solve(50, nodes))(t)
		two := must(Solve(100, nodes))(t)
		halved := make([]Node, len(nodes))
		for i, n := range nodes {
			n.LoopOhms, n.ControlOhms, n.LoadSiemens = n.LoopOhms/2, n.ControlOhms/2, n.LoadSiemens*2
			halved[i] = n
		}
		low := must(Solve(50, halved))(t)
		for i, res := range one.Nodes {
			if d := two.Nodes[i]; !near(d.Volts, 2*res.Volts, 1e-12) || !near(d.Amps, 2*res.Amps, 1e-12) ||
				!near(d.LoadWatts, 4*res.LoadWatts, 1e-12) || !near(d.NominalWatts, 4*res.NominalWatts, 1e-12) {
				t.Fatalf("node %d at 50 V: %+v; at 100 V: %+v", i, res, d)
			}
			if h := low.Nodes[i]; !near(h.Volts, res.Volts, 1e-12) || !near(h.Amps, 2*res.Amps, 1e-12) {
				t.Fatalf("node %d: %+v; at half the impedance: %+v", i, res, h)
			}
		}
	}
}

// TestOrderOfNodes: the order in which nodes are listed changes nothing.
func TestOrderOfNodes(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	for range 50 {
		nodes := randomTree(r, 1+r.IntN(100))
		at := r.Perm(len(nodes))
		shuffled := make([]Node, len(nodes))
		for i, n := range nodes {
			if n.Parent != Source {
				n.Parent = at[n.Parent]
			}
			shuffled[at[i]] = n
		}
		a, b := must(Solve(100, nodes))(t), must(Solve(100, shuffled))(t)
		for i, res := range a.Nodes {
			if got := b.Nodes[at[i]]; !near(got.Volts, res.Volts, 1e-12) || !near(got.NominalWatts, res.NominalWatts, 1e-12) {
				t.Fatalf("node %d: %+v; shuffled %+v", i, res, got)
			}
		}
	}
}

// TestGroup: n loudspeakers in one place are one load of n times the admittance.
func TestGroup(t *testing.T) {
	each := Siemens(100, 6)
	group := must(Solve(100, []Node{{Parent: Source, LoopOhms: 3, LoadSiemens: 4 * each}}))(t)
	single := must(Solve(100, []Node{
		{Parent: Source, LoopOhms: 3, LoadSiemens: each},
		{Parent: 0, LoadSiemens: each}, {Parent: 0, LoadSiemens: each}, {Parent: 1, LoadSiemens: each},
	}))(t)
	for i := range single.Nodes {
		if got, want := single.Nodes[i].Volts, group.Nodes[0].Volts; !near(got, want, 1e-14) {
			t.Errorf("loudspeaker %d: %v V, in a group %v", i, got, want)
		}
	}
	if !near(single.LoadWatts, group.LoadWatts, 1e-14) || single.Worst != 0 {
		t.Errorf("four: %+v; group: %+v", single, group)
	}
}

// TestMoreLoadLessVolts: another loudspeaker anywhere raises no voltage.
func TestMoreLoadLessVolts(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 10))
	for range 50 {
		nodes := randomTree(r, 1+r.IntN(100))
		before := must(Solve(100, nodes))(t)
		nodes[r.IntN(len(nodes))].LoadSiemens += Siemens(100, 50)
		after := must(Solve(100, nodes))(t)
		for i, res := range after.Nodes {
			if res.Volts > before.Nodes[i].Volts*(1+1e-13) {
				t.Fatalf("node %d: %v V before, %v V with more load", i, before.Nodes[i].Volts, res.Volts)
			}
		}
	}
}

// TestControl is a hand calculation: 100 V, 10 ohm of cable, a control of
// 5 ohm at a ratio of 1/2 and 100 W (100 ohm) behind it. The control shows
// 5 + 100/0.25 = 405 ohm, so 100/415 A flow; its core gets 100 x 400/415 V and
// hands on half.
func TestControl(t *testing.T) {
	sol := must(Solve(100, []Node{{Parent: Source, LoopOhms: 10, ControlOhms: 5, Ratio: 0.5, LoadSiemens: 0.01}}))(t)
	amps := 100.0 / 415
	want := NodeResult{
		InVolts: 100 - 10*amps, Volts: 0.5 * 100 * 400 / 415, LossDB: 20 * math.Log10(2*415.0/400),
		Amps: amps, FeedWatts: 100 * amps, CableWatts: 10 * amps * amps, ControlWatts: 5 * amps * amps,
		LoadWatts: math.Pow(0.5*100*400/415, 2) / 100, NominalWatts: 100,
	}
	got := sol.Nodes[0]
	for _, pair := range [][2]float64{
		{got.InVolts, want.InVolts}, {got.Volts, want.Volts}, {got.LossDB, want.LossDB}, {got.Amps, want.Amps},
		{got.FeedWatts, want.FeedWatts}, {got.CableWatts, want.CableWatts}, {got.ControlWatts, want.ControlWatts},
		{got.LoadWatts, want.LoadWatts}, {got.NominalWatts, want.NominalWatts}, {sol.LoadOhms, 415},
	} {
		if !near(pair[0], pair[1], 1e-13) {
			t.Fatalf("got %+v, want %+v", got, want)
		}
	}
}

// TestNominalLoad: ratings see every load below once, at full volts, however
// the controls are set and whatever the cable loses.
func TestNominalLoad(t *testing.T) {
	watts := func(w float64) float64 { return Siemens(100, w) }
	nodes := []Node{
		{Parent: 1, LoopOhms: 5, LoadSiemens: watts(6)},
		{Parent: 3, LoopOhms: 5, ControlOhms: 50, Ratio: 0.3, LoadSiemens: watts(10)},
		{Parent: 3, LoadSiemens: watts(20)},
		{Parent: Source, LoopOhms: 40, Ratio: 0.5},
		{Parent: Source, LoadSiemens: watts(3)},
	}
	sol := must(Solve(100, nodes))(t)
	for i, want := range []float64{6, 16, 20, 36, 3} {
		if got := sol.Nodes[i].NominalWatts; !near(got, want, 1e-14) {
			t.Errorf("node %d: %v W, want %v", i, got, want)
		}
	}
	if !near(sol.NominalWatts, 39, 1e-14) {
		t.Errorf("in all %v W, want 39", sol.NominalWatts)
	}
}

func TestNoLoad(t *testing.T) {
	for _, nodes := range [][]Node{nil, {{Parent: Source, LoopOhms: 7}, {Parent: 0, LoopOhms: 7}}} {
		sol := must(Solve(100, nodes))(t)
		if sol.Amps != 0 || sol.Watts != 0 || !math.IsInf(sol.LoadOhms, 1) || sol.Worst != -1 || len(sol.Nodes) != len(nodes) {
			t.Errorf("%+v", sol)
		}
		for _, res := range sol.Nodes {
			if res.Volts != 100 || res.LossDB != 0 {
				t.Errorf("%+v", res)
			}
		}
	}
}

// TestWorstOfEquals: among equals the first in the list is the worst, so that
// a report does not depend on the way the tree was walked.
func TestWorstOfEquals(t *testing.T) {
	load := Siemens(100, 10)
	for _, nodes := range [][]Node{
		{{Parent: Source, LoopOhms: 5}, {Parent: 0, LoopOhms: 5, LoadSiemens: load}, {Parent: 0, LoopOhms: 5, LoadSiemens: load}},
		{{Parent: Source, LoadSiemens: load}, {Parent: 3, LoopOhms: 5, LoadSiemens: load}, {Parent: 3, LoopOhms: 5, LoadSiemens: load}, {Parent: Source, LoopOhms: 5}},
	} {
		if got := must(Solve(100, nodes))(t).Worst; got != 1 {
			t.Errorf("worst is %d, want 1: %+v", got, nodes)
		}
	}
}

func TestSolveErrors(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	good := Node{Parent: Source, LoopOhms: 1, LoadSiemens: 0.01}
	for _, tt := range []struct {
		name  string
		volts float64
		nodes []Node
		err   error
		node  int // -1: about no node
	}{
		{"no volts", 0, []Node{good}, ErrValue, -1},
		{"negative volts", -70, []Node{good}, ErrValue, -1},
		{"NaN volts", nan, []Node{good}, ErrValue, -1},
		{"infinite volts", inf, []Node{good}, ErrValue, -1},
		{"negative cable", 100, []Node{good, {LoopOhms: -1}}, ErrValue, 1},
		{"NaN cable", 100, []Node{good, {LoopOhms: nan}}, ErrValue, 1},
		{"infinite cable", 100, []Node{good, {LoopOhms: inf}}, ErrValue, 1},
		{"negative control", 100, []Node{good, {ControlOhms: -1}}, ErrValue, 1},
		{"NaN control", 100, []Node{good, {ControlOhms: nan}}, ErrValue, 1},
		{"control that amplifies", 100, []Node{good, {Ratio: 1.01}}, ErrValue, 1},
		{"cable past all sense", 100, []Node{good, {LoopOhms: 2e9}}, ErrValue, 1},
		{"load past all sense", 100, []Node{good, {LoadSiemens: 2e9}}, ErrValue, 1},
		{"volts past all sense", 2e9, []Node{good}, ErrValue, -1},
		{"silent ratio", 100, []Node{good, {Ratio: 9e-7}}, ErrValue, 1},
		{"negative ratio", 100, []Node{good, {Ratio: -0.5}}, ErrValue, 1},
		{"NaN ratio", 100, []Node{good, {Ratio: nan}}, ErrValue, 1},
		{"negative load", 100, []Node{good, {LoadSiemens: -0.01}}, ErrValue, 1},
		{"short circuit", 100, []Node{good, {LoadSiemens: inf}}, ErrValue, 1},
		{"NaN load", 100, []Node{good, {LoadSiemens: nan}}, ErrValue, 1},
		{"parent past the end", 100, []Node{good, {Parent: 2}}, ErrParent, 1},
		{"parent before the source", 100, []Node{good, {Parent: -2}}, ErrParent, 1},
		{"own parent", 100, []Node{good, {Parent: 1}}, ErrCycle, 1},
		{"ring of two", 100, []Node{good, {Parent: 2}, {Parent: 1}}, ErrCycle, 1},
		{"node hanging on a ring", 100, []Node{{Parent: 1}, {Parent: 3}, good, {Parent: 4}, {Parent: 1}}, ErrCycle, 1},
	} {
		t.Run(tt.name, func(t *testing.T) {
			sol, err := Solve(tt.volts, tt.nodes)
			if !errors.Is(err, tt.err) || sol != nil {
				t.Fatalf("%v, %v; want %v", sol, err, tt.err)
			}
			node := -1
			if about, ok := errors.AsType[*NodeError](err); ok {
				node = about.Node
			}
			if node != tt.node {
				t.Errorf("%v: node %d, want %d", err, node, tt.node)
			}
		})
	}
}

// TestSolverAfterError: a network that failed leaves nothing behind in the next.
func TestSolverAfterError(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 12))
	nodes := randomTree(r, 40)
	want := *must(Solve(100, nodes))(t)
	var solver Solver
	for _, bad := range [][]Node{{{Parent: 1}, {Parent: 0}}, {{Parent: 7}}, make([]Node, 80)} {
		if _, err := solver.Solve(100, bad); err == nil {
			t.Fatal("no error")
		}
		got := must(solver.Solve(100, nodes))(t)
		for i := range nodes {
			if got.Nodes[i] != want.Nodes[i] {
				t.Fatalf("node %d: %+v, want %+v", i, got.Nodes[i], want.Nodes[i])
			}
		}
		if got.Watts != want.Watts || got.CableWatts != want.CableWatts || got.Worst != want.Worst {
			t.Errorf("%+v, want %+v", got, want)
		}
	}
}

// shapes are trees of n loudspeakers of 6 W on 100 V, whatever their number:
// the cable shrinks as n grows, so that the volts stay sensible.
var shapes = []struct {
	name string
	tree func(n int) []Node
}{
	{"chain", func(n int) []Node {
		nodes := make([]Node, n)
		for i := range nodes {
			nodes[i] = Node{Parent: i - 1, LoopOhms: 100 / float64(n) / float64(n), LoadSiemens: Siemens(100, 6)}
		}
		return nodes
	}},
	{"chain from the far end", func(n int) []Node {
		nodes := make([]Node, n)
		for i := range nodes {
			nodes[i] = Node{Parent: i + 1, LoopOhms: 100 / float64(n) / float64(n), LoadSiemens: Siemens(100, 6)}
		}
		nodes[n-1].Parent = Source
		return nodes
	}},
	{"star", func(n int) []Node {
		nodes := make([]Node, n)
		for i := range nodes {
			nodes[i] = Node{Parent: Source, LoopOhms: 100, LoadSiemens: Siemens(100, 6)}
		}
		return nodes
	}},
	{"random", func(n int) []Node {
		place := make([]int, n)
		for i := range place {
			place[i] = i
		}
		return thicken(growTree(rand.New(rand.NewPCG(13, 14)), place, 50))
	}},
	// Neighbours far apart in memory: what grows here is the number of misses of
	// the processor's cache, not the work.
	{"random and shuffled", func(n int) []Node {
		return thicken(randomTree(rand.New(rand.NewPCG(13, 14)), n))
	}},
}

// thicken divides all series resistance by the number of nodes.
func thicken(nodes []Node) []Node {
	for i := range nodes {
		nodes[i].LoopOhms /= float64(len(nodes))
		nodes[i].ControlOhms /= float64(len(nodes))
	}
	return nodes
}

// TestHundredThousand: as many loudspeakers on one line as nobody will ever
// hang there, 100,000 deep, solve in well under a second.
func TestHundredThousand(t *testing.T) {
	const n = 100_000
	for _, shape := range shapes {
		nodes := shape.tree(n)
		start := time.Now()
		sol := must(Solve(100, nodes))(t)
		if took := time.Since(start); took > time.Second {
			t.Errorf("%s: %v", shape.name, took)
		}
		checkBalance(t, nodes, sol)
		switch shape.name {
		case "chain", "chain from the far end":
			// The closed form in TestEvenlySpacedClosedForm, found another way.
			want := must(EvenlySpaced(100, 6*n, 100.0/n, n))(t)
			last := sol.Nodes[sol.Worst]
			if !near(last.Volts, want.Volts, 1e-9) || !near(last.LossDB, want.LossDB, 1e-9) {
				t.Errorf("%s: %+v, evenly spaced %+v", shape.name, last, want)
			}
		case "star": // Z/(Z + 100), Z = 100^2/6
			for i, res := range sol.Nodes {
				if !near(res.Volts, 100*(1e4/6)/(1e4/6+100), 1e-12) {
					t.Fatalf("star: node %d: %v V", i, res.Volts)
				}
			}
		}
	}
}

// TestSolverReuse: a solver that has seen a network of a size allocates nothing
// for the next.
func TestSolverReuse(t *testing.T) {
	nodes := randomTree(rand.New(rand.NewPCG(15, 16)), 1000)
	var solver Solver
	allocations := testing.AllocsPerRun(10, func() {
		if _, err := solver.Solve(100, nodes); err != nil {
			t.Fatal(err)
		}
	})
	if allocations != 0 {
		t.Errorf("%v allocations", allocations)
	}
}

// BenchmarkSolve shows the time per node: flat, whatever the size and shape.
func BenchmarkSolve(b *testing.B) {
	for _, shape := range shapes {
		for _, n := range []int{1_000, 10_000, 100_000} {
			b.Run(fmt.Sprintf("%s/%d", shape.name, n), func(b *testing.B) {
				nodes := shape.tree(n)
				var solver Solver
				for b.Loop() {
					if _, err := solver.Solve(100, nodes); err != nil {
						b.Fatal(err)
					}
				}
				b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/float64(n), "ns/node")
			})
		}
	}
}
