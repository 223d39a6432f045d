package audit

import "math"

// The score of a finding, 0 to 100, is
//
//	100 x severity x extent x reach x certainty
//
// with four factors from 0 to 1, each shown beside it:
//
//   - severity: danger 1, fault 0.6, caution 0.25, unknown 0.1;
//   - extent: 0.5 at the limit (of an overload: at the rating), 1 at twice the limit or more (or, for a limit
//     that is a smallest value, at half of it or less), straight between; 0.75
//     where the rule measures nothing. What is certain counts: the low end of a
//     certain figure, the high end of a possible one;
//   - reach: 0.5 + 0.3 x log10(1 + n)/2 for n loudspeakers that hang on it
//     (n counts up to 99), + 0.2 where they serve emergency use;
//   - certainty: certain 1, possible 0.5, cannot be shown 0.2.
//
// The weights are a judgement, common practice, no source. A site and a job
// score what their worst finding scores; equals are decided by the next worst.
func (f *Finding) score() {
	f.Factors = Factors{Severity: severity[f.Grade], Extent: f.extent(), Reach: f.reach(), Certainty: weight[f.Certainty]}
	f.Score = 100 * f.Factors.Severity * f.Factors.Extent * f.Factors.Reach * f.Factors.Certainty
}

var (
	severity = [...]float64{Unknown: 0.1, Caution: 0.25, Fault: 0.6, Danger: 1}
	weight   = [...]float64{CannotBeShown: 0.2, Possible: 0.5, Certain: 1}
)

const (
	extentAtLimit  = 0.5
	extentUnscaled = 0.75
	reachFloor     = 0.5
	reachPieces    = 0.3
	reachEmergency = 0.2
	mostPieces     = 99
)

func (f *Finding) extent() float64 {
	if !f.Measured.Known || f.Limit <= 0 {
		return extentUnscaled
	}
	v := f.Measured.Low
	if f.Certainty == Possible && !math.IsInf(f.Measured.High, 1) {
		v = f.Measured.High
	}
	ratio := v / f.Limit
	if ratio < 1 && v > 0 {
		ratio = 1 / ratio
	}
	return extentAtLimit + (1-extentAtLimit)*math.Min(1, math.Max(0, ratio-1))
}

func (f *Finding) reach() float64 {
	n := math.Min(math.Max(f.pieces, 0), mostPieces)
	r := reachFloor + reachPieces*math.Log10(1+n)/2
	if f.emergency {
		r += reachEmergency
	}
	return r
}

// ScoreFormula is the formula in one line, for reports.
const ScoreFormula = "score = 100 x severity (danger 1, fault 0.6, caution 0.25, unknown 0.1) x extent (0.5 at the limit to 1 at twice the limit; 0.75 where nothing is measured) " +
	"x reach (0.5 + 0.15 x log10(1 + loudspeakers, up to 99) + 0.2 for emergency use) x certainty (certain 1, possible 0.5, cannot be shown 0.2)"
