package notation

import (
	"slices"
	"strings"
)

// value reads what is left: one value, a list, or a list and the tap chosen.
func (r *tapReading) value() (Tap, error) {
	shape := r.shape()
	values := func(text string, offset int) []item {
		var out []item
		for i := range text {
			if isValue(text[i]) {
				out = append(out, r.items[offset+i])
			}
		}
		return out
	}
	all := values(shape, 0)
	switch {
	case shape == "N%" && all[0].value > 0 && all[0].value <= 100:
		return Tap{Kind: TapFraction, Fraction: all[0].value / 100}, nil
	case tapSingle.MatchString(shape):
		return r.single(all[0])
	case tapRated.MatchString(shape):
		w := all[0].value
		return Tap{Kind: TapWatts, LowW: w, HighW: w, RatedW: w}, nil
	case tapRatedSet.MatchString(shape) && len(all) == 2:
		return Tap{Kind: TapWatts, LowW: all[1].value, HighW: all[1].value, RatedW: all[0].value}, nil
	case tapSetRated.MatchString(shape) && len(all) == 2:
		return Tap{Kind: TapWatts, LowW: all[0].value, HighW: all[0].value, RatedW: all[1].value}, nil
	case tapSetFirst.MatchString(shape):
		return chosen(all[0], all[1:])
	case tapChosen.MatchString(shape):
		last := all[len(all)-1]
		offered := all[:len(all)-1]
		if !strings.ContainsAny(shape, "s>") && len(offered) == 1 {
			if offered[0].code == codeNumber && last.code == codePower {
				return Tap{}, ErrAmbiguous // 2 (5 W): a count, a position, or watts
			}
			// 10 W (5 W): which of them is the tap is not said
			return listed(all), nil
		}
		return chosen(last, offered)
	case tapList.MatchString(shape):
		return r.list(all, shape)
	}
	return Tap{}, ErrNotUnderstood
}

// single reads one value.
func (r *tapReading) single(it item) (Tap, error) {
	w := it.value
	tap := Tap{Kind: TapWatts, LowW: w, HighW: w}
	switch {
	case it.code == codeFraction && w == 1:
		return Tap{Kind: TapFraction, Fraction: 1}, nil
	case it.code == codeFraction && w < 1:
		tap.Fraction = w
		r.doubts |= FractionOfRated
	case it.code == codeNumber && r.tapped && isCount(it) && w <= mostPositions:
		tap.Position = int(w)
		r.doubts |= WattsOrPosition
	}
	return tap, nil
}

// chosen returns a tap that was picked from those on offer, or from a rated
// power.
func chosen(pick item, offered []item) (Tap, error) {
	tap := Tap{Kind: TapWatts, LowW: pick.value, HighW: pick.value}
	switch {
	case len(offered) == 1:
		tap.RatedW = offered[0].value
	case len(offered) > 1:
		tap.OfferedW = figures(offered)
	}
	return tap, nil
}

func figures(items []item) []float64 {
	out := make([]float64, len(items))
	for i, it := range items {
		out[i] = it.value
	}
	return out
}

// listed returns taps on offer of which none is chosen.
func listed(items []item) Tap {
	w := figures(items)
	return Tap{Kind: TapList, OfferedW: w, LowW: slices.Min(w), HighW: slices.Max(w)}
}

// list reads several values that no word ranks.
func (r *tapReading) list(all []item, shape string) (Tap, error) {
	if strings.ContainsRune(shape, codeTimes) {
		return r.product(all, shape)
	}
	fractions := strings.Count(shape, "F")
	switch {
	case fractions == len(all) && slices.ContainsFunc(all, func(it item) bool { return it.value == 1 }):
		return Tap{}, ErrAmbiguous // 1/1, 3/4, 1/2: shares of the rated power, none chosen
	case fractions > 0 && !strings.Contains(shape, "P"):
		return listed(all), nil
	}
	tap := listed(all)
	dashed := strings.ContainsAny(shape, "-B")
	if !dashed {
		return tap, nil
	}
	if len(all) == 2 {
		tap.Kind, tap.OfferedW = TapRange, nil
		if strings.Contains(shape, "-") {
			r.doubts |= RangeOrList
		}
		if tap.LowW == tap.HighW {
			return Tap{}, ErrNotUnderstood
		}
		return tap, nil
	}
	if strings.Contains(shape, "B") || !monotone(tap.OfferedW) {
		return Tap{}, ErrNotUnderstood
	}
	return tap, nil
}

// product reads "2 x 6": two loudspeakers of six watts.
func (r *tapReading) product(all []item, shape string) (Tap, error) {
	if len(all) != 2 || !isCount(all[0]) || r.count != 0 || !strings.HasPrefix(shape, "Nx") {
		return Tap{}, ErrNotUnderstood
	}
	r.count = int(all[0].value)
	return Tap{Kind: TapWatts, LowW: all[1].value, HighW: all[1].value}, nil
}

// monotone reports whether figures strictly rise or strictly fall.
func monotone(v []float64) bool {
	up, down := true, true
	for i := 1; i < len(v); i++ {
		up = up && v[i] > v[i-1]
		down = down && v[i] < v[i-1]
	}
	return up || down
}
