package layout

import "lineaudit/ingest/vocabulary"

// Loss reports and surveys count what was there, what went and what is left in columns of their own, beside the taps:
// "Tapping | Before flood | Written off | In place now". What is left counts.

// leftCounts leaves the other columns of such counts out.
func leftCounts(cols []*heading) {
	taps := 0
	for _, h := range cols {
		switch {
		case h.cells.share(lookWatts) >= 0.8:
			taps++
		case h.forced == vocabulary.Quantity || h.of(vocabulary.Quantity) >= named && classWithin(h.words)&(classEarlier|classLater) == 0:
			return
		}
	}
	if taps != 1 {
		return
	}
	for was := range cols {
		if !cols[was].barelyCounts() || classWithin(cols[was].words)&(classEarlier|classLater) != classEarlier {
			continue
		}
		for now := was + 1; now <= was+2 && now < len(cols) && cols[now].barelyCounts(); now++ {
			if classWithin(cols[now].words)&(classEarlier|classLater) != classLater || now == was+2 && !leaves(cols[was], cols[was+1], cols[now]) {
				continue
			}
			cols[now].forced, cols[now].aside = vocabulary.Quantity, "the last state of what the columns beside it count"
			for _, h := range cols[was:now] {
				h.forced, h.aside = vocabulary.Ignored, "a later state stands beside it"
			}
			return
		}
	}
}

// barelyCounts reports whether the cells of a column are small whole numbers without a unit, 0 among them.
func (h *heading) barelyCounts() bool {
	if h.forced != vocabulary.Unknown || h.unit != "" || h.cells.cells < 2 || len(h.cells.numbers) < h.cells.cells {
		return false
	}
	for _, v := range h.cells.numbers {
		if v < 0 || v > 999 || v != float64(int(v)) {
			return false
		}
	}
	return true
}

// leaves reports whether what was there without what went is what is left, in every line.
func leaves(was, went, left *heading) bool {
	of := func(h *heading) map[int]float64 {
		out := make(map[int]float64, len(h.cells.numbers))
		for j, v := range h.cells.numbers {
			out[h.cells.lines[h.cells.numberAt[j]]] = v
		}
		return out
	}
	gone, rest := of(went), of(left)
	for line, n := range of(was) {
		if n-gone[line] != rest[line] {
			return false
		}
	}
	return true
}
