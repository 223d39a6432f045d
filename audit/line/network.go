package line

import (
	"fmt"
	"math"
)

// Source is the Parent of a node that the amplifier feeds directly.
const Source = -1

// Node is one place on a line: the segment of cable that leads to it, a control
// if one sits there, and the load that hangs on it behind the control.
// Everything whose Parent is this node is fed from behind its control.
// No quantity may be negative or above 1e9.
type Node struct {
	Parent      int     // index of the node that feeds this one, or Source
	LoopOhms    float64 // out-and-back resistance of the segment leading here; may be 0
	ControlOhms float64 // series resistance of the control; may be 0
	Ratio       float64 // voltage ratio of the control, 1e-6 to 1; 0 is taken as 1
	LoadSiemens float64 // the load here; may be 0; n equal loudspeakers are n times one
}

// NodeResult is what one node gets and carries.
type NodeResult struct {
	InVolts      float64 // at the end of the segment, ahead of the control
	Volts        float64 // behind the control: what the load and the nodes below get
	LossDB       float64 // 20 log10(source volts / Volts)
	Amps         float64 // through the segment and into the control
	FeedWatts    float64 // through the segment, measured where it begins
	CableWatts   float64 // burnt in the segment
	ControlWatts float64 // burnt in the control
	LoadWatts    float64 // delivered to the node's own load
	NominalWatts float64 // own load and all below at source volts: no cable, controls fully on
}

// Solution is the state of a whole network.
type Solution struct {
	Volts        float64      // at the source
	Nodes        []NodeResult // in the order of the nodes handed in
	Amps         float64      // from the source
	Watts        float64      // from the source
	LoadWatts    float64      // delivered to all loads
	CableWatts   float64      // burnt in all segments
	ControlWatts float64      // burnt in all controls
	LoadOhms     float64      // seen by the source, cable counted; +Inf without load
	NominalWatts float64      // all loads at source volts: no cable, controls fully on
	Worst        int          // the node with a load that has the largest LossDB; the first of equals; -1 without load
}

// Solver solves networks, keeping its buffers from one to the next. The zero
// value is ready. A Solver must not be used by two goroutines at once.
type Solver struct {
	solution Solution
	sums     []sum // per node
	order    []int // nodes, every child before its parent
	pending  []int // per node: children not yet in order
}

// sum is what has been folded into a node.
type sum struct {
	siemens float64 // own load and everything below, as seen behind the control
	nominal float64 // the same without cable and with the controls fully on
}

// Solve works out a tree of nodes fed with the given RMS volts, exactly and in
// time proportional to the number of nodes, whatever their order and depth.
// Several nodes may have Source as parent. No nodes is an amplifier without load.
//
// A branch is folded into the admittance that its parent sees: a load Y behind
// a control of series resistance R and ratio n is n^2 Y/(1 + R n^2 Y), and an
// admittance Y behind a segment of R ohms is Y/(1 + R Y). Folding goes from the
// leaves to the source; volts then go from the source to the leaves.
//
// It returns ErrValue for volts outside 0.001 to 1e9, and a *NodeError wrapping
// ErrValue, ErrParent or ErrCycle for a node that cannot be solved.
// The Solution belongs to the Solver and is valid until the next call.
func (s *Solver) Solve(volts float64, nodes []Node) (*Solution, error) {
	if !usableVolts(volts) {
		return nil, badValue("source volts", volts)
	}
	s.prepare(len(nodes))
	for i := range nodes {
		if err := nodes[i].check(len(nodes)); err != nil {
			return nil, &NodeError{Node: i, Err: err}
		}
	}
	if err := s.sort(nodes); err != nil {
		return nil, err
	}
	total := s.fold(nodes)
	sol := &s.solution
	*sol = Solution{Volts: volts, Nodes: sol.Nodes, Worst: -1, LoadOhms: math.Inf(1)}
	sol.Amps = volts * total
	sol.Watts = volts * sol.Amps
	if total > 0 {
		sol.LoadOhms = 1 / total
	}
	s.unfold(volts, nodes)
	return sol, nil
}

// Solve is Solver.Solve with buffers of its own.
func Solve(volts float64, nodes []Node) (*Solution, error) {
	return new(Solver).Solve(volts, nodes)
}

// prepare makes room for n nodes.
func (s *Solver) prepare(n int) {
	if cap(s.order) < n {
		s.sums = make([]sum, n)
		s.order = make([]int, 0, n)
		s.pending = make([]int, n)
		s.solution.Nodes = make([]NodeResult, n)
	}
	s.sums = s.sums[:n]
	s.order = s.order[:0]
	s.pending = s.pending[:n]
	s.solution.Nodes = s.solution.Nodes[:n]
}

// check says what makes a node, one of count, impossible to solve by itself.
func (n *Node) check(count int) error {
	switch {
	case n.Parent < Source || n.Parent >= count:
		return fmt.Errorf("parent %d: %w", n.Parent, ErrParent)
	case !notNegative(n.LoopOhms):
		return badValue("loop ohms", n.LoopOhms)
	case !notNegative(n.ControlOhms):
		return badValue("control ohms", n.ControlOhms)
	case n.Ratio != 0 && !(n.Ratio >= minRatio && n.Ratio <= 1):
		return badValue("control ratio", n.Ratio)
	case !notNegative(n.LoadSiemens):
		return badValue("load siemens", n.LoadSiemens)
	}
	return nil
}

// ratio is the voltage ratio of the node's control, 1 without one.
func (n *Node) ratio() float64 {
	if n.Ratio == 0 {
		return 1
	}
	return n.Ratio
}

// sort lists the nodes with every child before its parent, or finds a ring.
func (s *Solver) sort(nodes []Node) error {
	clear(s.pending)
	parentsFirst := true
	for i := range nodes {
		if p := nodes[i].Parent; p != Source {
			s.pending[p]++
			parentsFirst = parentsFirst && p < i
		}
	}
	if parentsFirst { // as most lists are written
		for i := len(nodes) - 1; i >= 0; i-- {
			s.order = append(s.order, i)
		}
		return nil
	}
	const done = -1
	for leaf := range nodes {
		// From each leaf climb for as long as the parent waits for no other.
		for i := leaf; i != Source && s.pending[i] == 0; i = nodes[i].Parent {
			s.pending[i] = done
			s.order = append(s.order, i)
			if p := nodes[i].Parent; p != Source {
				s.pending[p]--
			}
		}
	}
	for i := range s.pending {
		if s.pending[i] != done { // only the nodes of a ring wait for ever
			return &NodeError{Node: i, Err: ErrCycle}
		}
	}
	return nil
}

// fold sums admittances from the leaves to the source and returns what the
// source sees.
func (s *Solver) fold(nodes []Node) (total float64) {
	for i := range nodes {
		s.sums[i] = sum{nodes[i].LoadSiemens, nodes[i].LoadSiemens}
	}
	for _, i := range s.order {
		n, own := &nodes[i], s.sums[i]
		seen := n.seenAhead(own.siemens)
		seen /= 1 + n.LoopOhms*seen
		if n.Parent == Source {
			total += seen
			continue
		}
		s.sums[n.Parent].siemens += seen
		s.sums[n.Parent].nominal += own.nominal
	}
	return total
}

// seenAhead returns the siemens seen ahead of the node's control when there
// are y siemens behind it.
func (n *Node) seenAhead(y float64) float64 {
	r := n.ratio()
	y *= r * r
	return y / (1 + n.ControlOhms*y)
}

// unfold hands volts down from the source, parents first, and fills the results.
func (s *Solver) unfold(volts float64, nodes []Node) {
	sol := &s.solution
	for k := len(s.order) - 1; k >= 0; k-- {
		i := s.order[k]
		n, res := &nodes[i], &sol.Nodes[i]
		feedV, feedDB := volts, 0.0
		if n.Parent != Source {
			parent := &sol.Nodes[n.Parent]
			feedV, feedDB = parent.Volts, parent.LossDB
		}
		ratio := n.ratio()
		behind := ratio * ratio * s.sums[i].siemens
		controlDrop := 1 + n.ControlOhms*behind
		ahead := behind / controlDrop
		cableDrop := 1 + n.LoopOhms*ahead

		res.InVolts = feedV / cableDrop
		res.Volts = ratio * res.InVolts / controlDrop
		// Summed per step, so that a very long chain keeps a finite loss.
		res.LossDB = feedDB + LossDB(cableDrop*controlDrop, ratio)
		res.Amps = res.InVolts * ahead
		res.FeedWatts = feedV * res.Amps
		res.CableWatts = res.Amps * res.Amps * n.LoopOhms
		res.ControlWatts = res.Amps * res.Amps * n.ControlOhms
		res.LoadWatts = res.Volts * res.Volts * n.LoadSiemens
		res.NominalWatts = volts * volts * s.sums[i].nominal

		sol.LoadWatts += res.LoadWatts
		sol.CableWatts += res.CableWatts
		sol.ControlWatts += res.ControlWatts
		if n.Parent == Source {
			sol.NominalWatts += res.NominalWatts
		}
		if n.LoadSiemens > 0 && worse(sol, i) {
			sol.Worst = i
		}
	}
}

// worse reports whether node i is further down in level than the worst so far,
// or as far and earlier in the list.
func worse(sol *Solution, i int) bool {
	if sol.Worst < 0 {
		return true
	}
	loss, worst := sol.Nodes[i].LossDB, sol.Nodes[sol.Worst].LossDB
	return loss > worst || loss == worst && i < sol.Worst
}
