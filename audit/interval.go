package audit

import (
	"math"

	"lineaudit/audit/schedule"
)

// tolerance is how far past a limit, as a share of it, a figure may be and
// still count as at the limit: one part in a million. It absorbs the rounding
// of the arithmetic and is far below the last digit anybody writes.
const tolerance = 1e-6

// past reports whether v is beyond the limit; at the limit passes.
func past(v, limit float64) bool { return v > limit+tolerance*math.Abs(limit) }

// below reports whether v is short of the limit; at the limit passes.
func below(v, limit float64) bool { return v < limit-tolerance*math.Abs(limit) }

// same reports whether two figures are equal within the tolerance.
func same(a, b float64) bool {
	if math.IsInf(a, 0) || math.IsInf(b, 0) {
		return a == b
	}
	return math.Abs(a-b) <= tolerance*math.Max(math.Abs(a), math.Abs(b))
}

// between is the interval from low to high.
func between(low, high float64) Interval { return Interval{low, high, true} }

// atLeast is an interval without an upper bound.
func atLeast(low float64) Interval { return Interval{low, math.Inf(1), true} }

// quantity is the interval of a value; unknown when there is none.
func quantity[T ~float64](q schedule.Quantity[T]) Interval {
	return Interval{float64(q.Low), float64(q.High), q.Had()}
}

// bounded reports whether both ends of the interval are known.
func (i Interval) bounded() bool { return i.Known && !math.IsInf(i.High, 1) }

// exact reports whether the interval has no width.
func (i Interval) exact() bool { return i.Known && i.Low == i.High }

// plus adds two intervals; an unknown one counts as nothing known.
func (i Interval) plus(o Interval) Interval {
	return Interval{i.Low + o.Low, i.High + o.High, i.Known && o.Known}
}

// times multiplies two intervals of numbers that are not negative.
func (i Interval) times(o Interval) Interval {
	return Interval{product(i.Low, o.Low), product(i.High, o.High), i.Known && o.Known}
}

// product is a*b where nothing times infinity is nothing.
func product(a, b float64) float64 {
	if a == 0 || b == 0 {
		return 0
	}
	return a * b
}

// scaled multiplies an interval by a number that is not negative.
func (i Interval) scaled(k float64) Interval { return i.times(Exact(k)) }

// over divides by an interval of positive numbers, such as a rating. A rating
// that may be 0 leaves the upper end open.
func (i Interval) over(o Interval) Interval {
	if !i.Known || !o.Known || o.High <= 0 {
		return Interval{}
	}
	high := math.Inf(1)
	switch {
	case i.High == 0:
		high = 0
	case o.Low > 0:
		high = i.High / o.Low
	}
	return Interval{i.Low / o.High, high, true}
}

// minus is what is left of i after o; it may be negative.
func (i Interval) minus(o Interval) Interval {
	return Interval{i.Low - o.High, i.High - o.Low, i.Known && o.Known}
}

// hull is the smallest interval that holds both; an unknown one adds nothing.
func (i Interval) hull(o Interval) Interval {
	switch {
	case !i.Known:
		return o
	case !o.Known:
		return i
	}
	return between(math.Min(i.Low, o.Low), math.Max(i.High, o.High))
}
