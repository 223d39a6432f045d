package line_test

import (
	"fmt"

	"lineaudit/audit/line"
)

// A 100 V line of 1.5 mm2 copper: 60 m to a wall control, then two groups of
// loudspeakers behind it, 20 m apart.
func ExampleSolve() {
	loop := func(lengthM float64) float64 {
		ohms, err := line.Conductor{AreaMM2: 1.5}.LoopOhms(lengthM)
		if err != nil {
			panic(err)
		}
		return ohms
	}
	// Four taps of 10 W marked for 100 V, and two marked for 70 V by mistake.
	right := 4 * line.TapWatts(10, 100, 100)
	wrong := 2 * line.TapWatts(10, 70, 100)
	sol, err := line.Solve(100, []line.Node{
		{Parent: line.Source, LoopOhms: loop(60)}, // the control
		{Parent: 0, LoopOhms: loop(20), LoadSiemens: line.Siemens(100, right)},
		{Parent: 1, LoopOhms: loop(20), LoadSiemens: line.Siemens(100, wrong)},
	})
	if err != nil {
		panic(err)
	}
	fmt.Printf("load on the control %.0f W\n", sol.Nodes[0].NominalWatts)
	fmt.Printf("worst loss %.2f dB, at node %d\n", sol.Nodes[sol.Worst].LossDB, sol.Worst)
	fmt.Printf("%.1f W from the amplifier, %.1f W burnt in cable\n", sol.Watts, sol.CableWatts)
	// Output:
	// load on the control 80 W
	// worst loss 0.14 dB, at node 2
	// 78.8 W from the amplifier, 1.2 W burnt in cable
}
