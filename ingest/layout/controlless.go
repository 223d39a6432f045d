package layout

import (
	"slices"

	"lineaudit/ingest/vocabulary"
)

// powersWithoutControls bars a column of powers whose header does not speak of controls
// from being what controls carry, where rows with a power name no control and all rows
// name an amplifier: "Zone | Amplifier | W | Control" with a control here and there.
func powersWithoutControls(cols []*heading, base []worth) {
	named := func(f vocabulary.Field) *heading {
		if i := slices.IndexFunc(cols, func(h *heading) bool { return h.top == f && h.score >= headerScore && h.cells.cells > 0 }); i >= 0 {
			return cols[i]
		}
		return nil
	}
	controls, amplifiers := named(vocabulary.Control), named(vocabulary.Amplifier)
	if controls == nil || amplifiers == nil || amplifiers.cells.total < rowsOf(cols) {
		return
	}
	for i, h := range cols {
		if h.forced != vocabulary.Unknown || h.of(vocabulary.ControlWatts) == 0 || h.of(vocabulary.ControlWatts) >= sureWords {
			continue
		}
		bare := 0
		for _, n := range h.cells.lines {
			if _, ok := controls.cells.in(n); !ok {
				bare++
			}
		}
		if bare < 2 {
			continue
		}
		base[i][vocabulary.ControlWatts] = barred
		if amplifiers.cells.distinct == rowsOf(cols) && high(h.cells) > mostTapped && !slices.ContainsFunc(rowDevices, setting(cols).claimed) {
			base[i][vocabulary.Tap], base[i][vocabulary.TotalWatts] = barred, barred
			base[i][vocabulary.ChannelWatts] = max(base[i][vocabulary.ChannelWatts], sureWords) // of another amplifier each
		}
	}
}

// rowDevices are fields that only lists of loudspeakers have.
var rowDevices = []vocabulary.Field{vocabulary.Quantity, vocabulary.Tag, vocabulary.Model, vocabulary.Describe}

// high is the highest number of a column, 0 if it has none.
func high(s *sample) float64 {
	if len(s.numbers) == 0 {
		return 0
	}
	return slices.Max(s.numbers)
}

// rowsOf is the number of lines of a table.
func rowsOf(cols []*heading) int {
	n := 0
	for _, h := range cols {
		n = max(n, h.rows)
	}
	return n
}
