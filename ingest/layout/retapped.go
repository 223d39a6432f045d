package layout

import (
	"slices"

	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Lists of what is to be changed, or was, have two columns of taps.

// A stage is when a tap held, by the words of its header.
type stage uint8

const (
	noStage      stage = iota
	plannedStage       // meant to be, or asked for
	foundStage         // found, or formerly
	lastStage          // as it was left
)

// stagesOf are the stages of two headers by the words that they have apart from each other.
func stagesOf(a, b string) [2]stage {
	of := func(own, other class) stage {
		switch own &^= other; {
		case own&classLater != 0:
			return lastStage
		case own&classEarlier != 0:
			return foundStage
		case own&classPlanned != 0:
			return plannedStage
		}
		return noStage
	}
	x, y := classWithin(a), classWithin(b)
	return [2]stage{of(x, y), of(y, x)}
}

// rank orders the stages: a header that says nothing of when stands for what is.
func rank(s stage) int {
	switch s {
	case lastStage:
		return 3
	case noStage:
		return 2
	case foundStage:
		return 1
	}
	return 0
}

// twoTaps tells two columns of taps apart: the one as it was left counts, and
// what was designed before gives way to what was found. Where a tap is asked
// for behind the one that was found, or that holds until the change is told to
// be done, both are kept: the rows say which of them is set.
func twoTaps(cols []*heading, base []worth) {
	var taps []int
	for i, h := range cols {
		named := h.ofLoudspeakers && h.top == vocabulary.Tap && h.cells.share(anyPower|lookNumber|lookMissing) >= 0.5
		// "As left" beside "Design tap" needs no word for a tap; "Found" alone could be something measured
		free := h.score < headerScore || h.top == vocabulary.Tap || h.top == vocabulary.Measured || h.top == vocabulary.MeasuredLoad
		told := free && h.unit == "" && h.cells.share(lookTapUsual|lookTapValue) >= 0.8 && classWithin(h.words)&(classLater|classEarlier|classPlanned) != 0
		if h.forced == vocabulary.Unknown && (named || told) {
			taps = append(taps, i)
		}
	}
	give := func(i int, f vocabulary.Field) {
		for j := range base[i] {
			base[i][j] = min(base[i][j], 0)
		}
		base[i][f] = 1.2
		if f == vocabulary.Tap && cols[i].top != vocabulary.Tap {
			cols[i].aside = "which of the taps it is, beside the others"
		}
	}
	if staged, last := stagedWatts(cols); last >= 0 && !slices.ContainsFunc(taps, func(i int) bool { return !slices.Contains(staged, i) }) {
		for _, i := range staged {
			give(i, vocabulary.Ignored)
		}
		give(last, vocabulary.Tap)
		return
	}
	if len(taps) == 0 {
		switch left, right, second := foundAndLeft(cols); second {
		case lastStage:
			give(left, vocabulary.Ignored)
			give(right, vocabulary.Tap)
			cols[right].earlier = []int{cols[left].col}
		case plannedStage: // "W now | W proposed"
			give(left, vocabulary.TapBefore)
			give(right, vocabulary.Tap)
			cols[right].planned = true
		}
		return
	}
	if len(taps) > 2 {
		lastOfTaps(cols, taps, give)
	}
	if len(taps) != 2 || !slices.ContainsFunc(taps, func(i int) bool { return cols[i].top == vocabulary.Tap }) {
		return
	}
	left, right := taps[0], taps[1]
	stages := stagesOf(cols[left].words, cols[right].words)
	asked := stages[0] == foundStage && stages[1] == plannedStage
	done := doneAt(cols)
	told := done >= 0 && (stages[0] == foundStage || stages[0] == lastStage && stages[1] == plannedStage)
	switch {
	case asked || told:
		if done >= 0 {
			give(done, vocabulary.Status)
		}
		give(left, vocabulary.TapBefore)
		give(right, vocabulary.Tap)
		cols[right].planned = stages[1] == plannedStage
	case rank(stages[0]) > rank(stages[1]):
		give(right, vocabulary.Ignored)
		give(left, vocabulary.Tap)
	case rank(stages[0]) < rank(stages[1]):
		give(left, vocabulary.Ignored)
		give(right, vocabulary.Tap)
	}
}

// foundAndLeft are two columns of watts, side by side, whose headers tell when they held,
// and the stage of the second: "Found W | Left W", or "W now | W proposed". In a list with
// no other tap they are taps. The stage is noStage where there are none.
func foundAndLeft(cols []*heading) (left, right int, second stage) {
	for i := 1; i < len(cols); i++ {
		l, r := cols[i-1], cols[i]
		watts := func(h *heading) bool {
			return h.forced == vocabulary.Unknown && h.unit == "W" && h.cells.share(lookTapUsual|lookTapValue) >= 0.7
		}
		if !watts(l) || !watts(r) && !r.tapsChanged() {
			continue
		}
		switch stages := stagesOf(l.words, r.words); {
		case stages == [2]stage{foundStage, lastStage}, stages == [2]stage{lastStage, plannedStage}, stages == [2]stage{foundStage, plannedStage}:
			return i - 1, i, stages[1]
		}
	}
	return 0, 0, noStage
}

// tapsChanged reports whether a column of watts states taps, and in words where there is none or none that is new:
// "2.5", "NC", "REMOVED".
func (h *heading) tapsChanged() bool {
	if h.forced != vocabulary.Unknown || h.unit != "W" || h.cells.share(lookTapUsual|lookTapValue) < 0.3 {
		return false
	}
	for i, k := range h.cells.looks {
		if t := h.cells.texts[i]; k&(lookTapUsual|lookTapValue|lookNumber|lookMissing|lookStatus) == 0 && !notation.Unchanged(t) {
			return false
		}
	}
	return true
}

// stagedWatts are three columns of watts or more whose headers tell when each held, and the one that tells
// how the taps were left: "Found (W) | Per dwg (W) | Left at (W)"; last is -1 where there are none.
func stagedWatts(cols []*heading) (staged []int, last int) {
	last = -1
	for i, h := range cols {
		k := classWithin(h.words) & (classLater | classEarlier | classPlanned)
		if k == 0 || h.forced != vocabulary.Unknown || h.unit != "W" && h.top != vocabulary.Tap || h.cells.share(lookTapUsual|lookTapValue|lookFraction) < 0.7 {
			continue
		}
		staged = append(staged, i)
		if k&classLater != 0 {
			if last >= 0 {
				return nil, -1
			}
			last = i
		}
	}
	if len(staged) < 3 {
		return nil, -1
	}
	return staged, last
}

// lastOfTaps gives the one of several columns that tells how the taps were left
// the field, where there is just one.
func lastOfTaps(cols []*heading, taps []int, give func(int, vocabulary.Field)) {
	var last []int
	for _, i := range taps {
		if classWithin(cols[i].words)&classLater != 0 {
			last = append(last, i)
		}
	}
	if len(last) != 1 {
		return
	}
	for _, i := range taps {
		f := vocabulary.Ignored
		if i == last[0] {
			f = vocabulary.Tap
		}
		give(i, f)
	}
}

// doneAt finds the column that says of each row whether it is done, -1 if there is none.
func doneAt(cols []*heading) int {
	return slices.IndexFunc(cols, func(h *heading) bool {
		if h.cells.cells == 0 || h.top != vocabulary.Status && notation.DoneOf(h.words) != notation.Yes {
			return false
		}
		answers := 0
		for _, t := range h.cells.texts {
			if notation.DoneOf(t) != notation.NoAnswer {
				answers++
			}
		}
		return 10*answers >= 8*h.cells.cells
	})
}
