package notation

import (
	"math"
	"strconv"
	"strings"
)

// A TapKind says what kind of tap setting was written.
type TapKind uint8

// The kinds of tap.
const (
	TapNone      TapKind = iota
	TapWatts             // LowW = HighW is the setting, unless there are Groups
	TapRange             // undecided between LowW and HighW
	TapList              // OfferedW are on offer, none is chosen; LowW and HighW are their ends
	TapImpedance         // set by primary impedance, in Ohms: P = V²/Ohms
	TapPosition          // a position of the switch, in Position: needs the model's list
	TapFraction          // a share of the rated power, in Fraction
	TapDirect            // no transformer: low impedance, Ohms if written
)

// A TapAt is a power at a line voltage.
type TapAt struct{ W, V float64 }

// A TapGroup is a number of loudspeakers on one tap.
type TapGroup struct {
	Count int
	W     float64 // watts of each
}

// A Tap is what a cell says of the transformer setting of a loudspeaker.
// Powers are finite and not negative, at most MaxTapW; zero only where zero was
// written.
type Tap struct {
	Kind        TapKind
	LowW, HighW float64    // watts of one loudspeaker, for TapWatts, TapRange and TapList
	AtV         []float64  // line voltages the power is stated at; none if not written
	OtherW      []TapAt    // the same tap named at further line voltages
	OfferedW    []float64  // every tap named, in the order written, when several are
	RatedW      float64    // rated power where it is written beside the tap, else 0
	Count       int        // loudspeakers, where the cell says so, else 0
	Groups      []TapGroup // "12 @ 1W, 6 @ 1/2W": every group, where there are several; LowW and HighW are then their ends
	Ohms        float64    // for TapImpedance and TapDirect, or written beside the watts; else 0
	Position    int        // for TapPosition, from 1; also beside the watts ("tap 2 (5 W)"), or the second reading under WattsOrPosition
	Fraction    float64    // for TapFraction, above 0 to 1; also the second reading under FractionOfRated
	Doubts      Doubts
}

// MaxTapW is the largest tap that is believed, in watts.
const MaxTapW = 1000

// mostPositions is the largest position number of a tap switch that is
// believed. Common practice, no source.
const mostPositions = 8

// Below maxDirectOhms an impedance is that of a loudspeaker without
// transformer, from minPrimaryOhms on it is a transformer's primary. Between
// them it is not decided. Source: 45 Ω intercom loudspeakers below; 100 W at
// 70.7 V is 50 Ω above.
const (
	maxDirectOhms  = 32
	minPrimaryOhms = 50
)

// String returns the tap so that ParseTap reads it again with Point.
func (t Tap) String() string {
	var b strings.Builder
	if t.Count > 0 {
		b.WriteString("(" + strconv.Itoa(t.Count) + ") ")
	}
	watts := func(w float64) string { return plainFigure(w) + " W" }
	switch t.Kind {
	case TapWatts:
		switch {
		case len(t.Groups) > 0:
			for i, g := range t.Groups {
				if i > 0 {
					b.WriteString(", ")
				}
				b.WriteString(strconv.Itoa(g.Count) + " x " + watts(g.W))
			}
		case t.Doubts.Has(WattsOrPosition):
			b.WriteString("tap " + strconv.Itoa(t.Position))
		case t.Doubts.Has(FractionOfRated):
			b.WriteString(fractionText(t.Fraction))
		case len(t.OfferedW) > 0:
			b.WriteString(wattList(t.OfferedW) + " set " + watts(t.LowW))
		case t.RatedW > 0 && t.RatedW != t.LowW:
			b.WriteString(watts(t.RatedW) + " rated, set " + watts(t.LowW))
		case t.RatedW > 0:
			b.WriteString(watts(t.LowW) + " rated")
		default:
			b.WriteString(watts(t.LowW))
			if t.Position > 0 {
				b.WriteString(" (position " + strconv.Itoa(t.Position) + ")")
			}
		}
		if t.Ohms > 0 {
			b.WriteString(" (" + plainFigure(t.Ohms) + " Ω)")
		}
	case TapRange:
		joint := " to "
		if t.Doubts.Has(RangeOrList) {
			joint = " - "
		}
		b.WriteString(watts(t.LowW) + joint + watts(t.HighW))
	case TapList:
		b.WriteString(wattList(t.OfferedW))
	case TapImpedance:
		b.WriteString(plainFigure(t.Ohms) + " Ω")
	case TapPosition:
		b.WriteString("position " + strconv.Itoa(t.Position))
	case TapFraction:
		b.WriteString(plainFigure(t.Fraction*100) + " %")
	case TapDirect:
		b.WriteString("direct")
		if t.Ohms > 0 {
			b.WriteString(" " + plainFigure(t.Ohms) + " Ω")
		}
		if t.RatedW > 0 {
			b.WriteString(" " + watts(t.RatedW))
		}
	}
	for i, v := range t.AtV {
		if i == 0 {
			b.WriteString(" @ ")
		} else {
			b.WriteString("/")
		}
		b.WriteString(plainFigure(v) + " V")
	}
	for _, o := range t.OtherW {
		b.WriteString(" / " + watts(o.W) + " @ " + plainFigure(o.V) + " V")
	}
	return b.String()
}

// wattList writes taps on offer in a form that is no fraction: "1 W, 2 W".
func wattList(list []float64) string {
	parts := make([]string, len(list))
	for i, w := range list {
		parts[i] = plainFigure(w) + " W"
	}
	return strings.Join(parts, ", ")
}

// fractionText writes a share the way schedules do: 0.5 as "1/2", and those
// that need a fraction of one character with U+2044.
func fractionText(v float64) string {
	for den := 1.0; den <= maxDenominator; den++ {
		num := math.Round(v * den)
		if num/den != v {
			continue
		}
		if plainFractions[[2]float64{num, den}] {
			return plainFigure(num) + "/" + plainFigure(den)
		}
		return plainFigure(num) + string(fractionSlash) + plainFigure(den)
	}
	return plainFigure(v)
}
