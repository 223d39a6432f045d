package line

import (
	"errors"
	"fmt"
	"math"
)

// What can be wrong with an input. Errors of this package wrap one of these.
var (
	// ErrValue: NaN, infinite, negative, or past any electrical sense.
	ErrValue = errors.New("value out of range")
	// ErrParent: a node's parent is neither Source nor another node.
	ErrParent = errors.New("no such parent node")
	// ErrCycle: following parents from a node leads back to it, not to the source.
	ErrCycle = errors.New("nodes form a closed ring")
	// ErrNoStandardValue: the standard gives no resistance for this size,
	// material and class.
	ErrNoStandardValue = errors.New("no value in IEC 60228")
)

// maxMagnitude bounds volts, ohms, siemens and metres alike: far past
// anything on a line, and far from where products would overflow.
const maxMagnitude = 1e9

// minVolts is the least voltage of a source: any less is no line.
const minVolts = 1e-3

// minRatio is the smallest voltage ratio of a control, -120 dB: silence.
const minRatio = 1e-6

// NodeError says which node of a network an error is about.
type NodeError struct {
	Node int // index in the slice handed to Solve
	Err  error
}

func (e *NodeError) Error() string { return fmt.Sprintf("node %d: %v", e.Node, e.Err) }

// Unwrap returns the cause.
func (e *NodeError) Unwrap() error { return e.Err }

// notNegative reports whether v is a usable quantity that may be 0.
func notNegative(v float64) bool { return v >= 0 && v <= maxMagnitude }

// positive reports whether v is a usable quantity above 0.
func positive(v float64) bool { return v > 0 && v <= maxMagnitude }

func usableVolts(v float64) bool { return v >= minVolts && v <= maxMagnitude }

func badValue(what string, v float64) error {
	if math.IsNaN(v) {
		return fmt.Errorf("%s: not a number: %w", what, ErrValue)
	}
	return fmt.Errorf("%s %g: %w", what, v, ErrValue)
}
