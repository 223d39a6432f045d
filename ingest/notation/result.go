package notation

import (
	"errors"
	"fmt"
	"strings"
)

// The reasons why a text gives no value. Every error of this package wraps
// exactly one of them.
var (
	ErrEmpty         = errors.New("nothing is written")
	ErrMissing       = errors.New("a mark for a missing value")         // "n/a", "TBC", "by others"; see Missing
	ErrDitto         = errors.New("a mark that repeats the cell above") // see Ditto
	ErrNotUnderstood = errors.New("not understood")
	ErrAmbiguous     = errors.New("several values, none preferred")
	ErrNoUnit        = errors.New("no unit")
	ErrNegative      = errors.New("negative")
	ErrZero          = errors.New("zero")
	ErrNotWhole      = errors.New("not a whole number")
	ErrTooLarge      = errors.New("too large")
	ErrLump          = errors.New("a lump of unknown count") // "lot", "set", "job"
)

// fail returns an error that names what was being read and quotes the text.
func fail(what, text string, reason error) error {
	return fmt.Errorf("%s %q: %w", what, shorten(text), reason)
}

// failBecause is fail with a detail, such as the word that is not known.
func failBecause(what, text, detail string, reason error) error {
	return fmt.Errorf("%s %q: %s: %w", what, shorten(text), detail, reason)
}

// shorten keeps an error message readable when a cell holds a paragraph.
func shorten(s string) string {
	const most = 60
	r := []rune(s)
	if len(r) <= most {
		return s
	}
	return string(r[:most]) + "…"
}

// Doubts is a set of things that a parser took for granted or could not
// decide. The zero value means that the text said everything.
type Doubts uint64

// The doubts.
const (
	Bare            Doubts = 1 << iota // no unit was written
	DecimalMark                        // a mark or space in a figure may be decimal or thousands
	Approximate                        // "~", "approx.", "ca."
	WattsOrPosition                    // "tap 3": three watts or the third position
	FractionOfRated                    // "1/2": half a watt or half of the rated power
	RangeOrList                        // "6W - 10W": two ends, or two taps on offer
	FirstOrLast                        // "80/120": nearest and farthest loudspeaker, or two runs
	SumOrSpare                         // "3+1": four, or three and a spare
	ProductTaken                       // "2x2": four
	MMForMM2                           // "2 x 1.5 mm": the area was meant
	DiameterTaken                      // "2x2x0.8": the last figure is a diameter in mm
	AreaTaken                          // a bare figure taken as mm²
	AWGTaken                           // a bare figure taken as AWG
	SizesDisagree                      // "16 AWG (1.0 mm²)": both were written and differ
	CladOrFireClass                    // "CCA": copper-clad aluminium or the fire class Cca
	UnitLetterCase                     // "MW" taken as milliwatts, "M" as metres
	VoltsTaken                         // a bare figure after a power taken as a line voltage
	DateOrPair                         // "1-3": amplifier and channel, a range, or a recovered date
	FromModelName                      // a figure inside a model number
	PairOrCircuits                     // "A/B": two channels, or a pair of interleaved circuits
	OnePrimary                         // "5W@70 / 10W@100": one terminal named at two line voltages
	SplitRead                          // the text was read only in part: words were passed over
	ParallelTaken                      // "2 x 16/2": two cables side by side taken as parallel
	OhmsTaken                          // "250W @ 4": a bare figure taken as the load in ohms
	RangeOrTag                         // "LS1-8": eight tags, or one with a hyphen
	SignTaken                          // "6 dB": an attenuation written without its sign
	FrameOrOutput                      // "4 outputs, 240 W": watts of each output, or of all together
	OffTaken                           // "off": no watts
	OtherPower                         // "60 W, 120 W peak": the first of two powers counts
	MarkTaken                          // "5 / *10* / 20 W": the marked one of several taps
	LastTaken                          // "15 W - 10 W since 2019": the last of several taps
	InOrder                            // "2 outputs: 120 / 60 W": of the first and of the second
	endOfDoubts
)

var doubtText = []string{
	"no unit written",
	"decimal or thousands mark not certain",
	"written as approximate",
	"watts or position number not certain",
	"watts or fraction of the rated power not certain",
	"range or list of taps not certain",
	"nearest and farthest, or two runs, not certain",
	"sum or spare not certain",
	"two factors taken as their product",
	"mm taken as mm²",
	"taken as a diameter in mm",
	"bare figure taken as mm²",
	"bare figure taken as AWG",
	"two sizes written that differ",
	"copper-clad aluminium or fire class not certain",
	"unit taken whatever its letter case",
	"bare figure taken as a line voltage",
	"pair, range or date not certain",
	"taken from a model name",
	"channels or pair of circuits not certain",
	"one tap written for two line voltages",
	"words passed over",
	"cables side by side taken as parallel",
	"bare figure taken as ohms",
	"range or one tag not certain",
	"attenuation written without its sign",
	"watts of each output or of all together not certain",
	"off taken as no watts",
	"another power is written beside it",
	"the marked one of several taps",
	"the last of several taps",
	"powers of outputs taken in the order written",
}

// Has reports whether all of d2 are among the doubts.
func (d Doubts) Has(d2 Doubts) bool { return d&d2 == d2 }

// Texts returns the doubts in words, in a fixed order.
func (d Doubts) Texts() []string {
	var out []string
	for i, text := range doubtText {
		if d&(1<<i) != 0 {
			out = append(out, text)
		}
	}
	return out
}

// String returns the doubts in words, separated by semicolons.
func (d Doubts) String() string { return strings.Join(d.Texts(), "; ") }
