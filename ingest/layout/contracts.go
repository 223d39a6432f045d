package layout

import (
	"slices"
	"strings"

	"lineaudit/ingest/vocabulary"
)

// Change orders put what was agreed beside what holds after a change: "Contract | Variation 1 | Variation 2"
// over counts, or "Contract" and "After this change", each over a count and a tap. The last state holds, and
// what it leaves blank is as it was before.

// contractStates leaves the earlier of such columns out.
func (f *finder) contractStates(cols []*heading) {
	heads, subs := make([]string, len(cols)), make([]string, len(cols))
	for i, h := range cols {
		if heads[i], subs[i] = h.underHead(); heads[i] == "" {
			heads[i] = h.words
		}
	}
	for first := range cols {
		agreed := classWithin(heads[first])&classContract != 0 || subs[first] != "" && classWithin(heads[first])&classEarlier != 0 // "was" over a count and a tap
		if !agreed || first > 0 && heads[first] == heads[first-1] || cols[first].forced != vocabulary.Unknown {
			continue
		}
		if classWithin(heads[first])&classContract == 0 && f.s.Header(subs[first]).Best().Field != vocabulary.Quantity {
			continue // taps found and left: see the columns that replace others
		}
		size := 1
		for subs[first] != "" && first+size < len(cols) && heads[first+size] == heads[first] {
			size++
		}
		last, states := first, []string{heads[first]}
		for at := first + size; at+size <= len(cols); at += size {
			one := heads[at : at+size]
			if classWithin(one[0])&(classChange|classLater|classRevision) == 0 || slices.Contains(states, one[0]) || slices.ContainsFunc(one, func(s string) bool { return s != one[0] }) ||
				subs[first] != "" && !sameFolded(subs[at:at+size], subs[first:first+size]) {
				break
			}
			last, states = at, append(states, one[0])
		}
		if last > first && f.lastState(cols, subs, first, last, size) {
			cols[last].replaces = strings.Join(states[:len(states)-1], ", ")
			for j := range size {
				for at := last - size; at >= first; at -= size {
					cols[last+j].earlier = append(cols[last+j].earlier, cols[at+j].col)
				}
			}
			return
		}
	}
}

// lastState gives the columns of the last state what they say by themselves, and the earlier ones nothing; ok is false
// where they hold no counts.
func (f *finder) lastState(cols []*heading, subs []string, first, last, size int) (ok bool) {
	for i := first; i < last+size; i++ {
		if c := cols[i].cells; cols[i].forced != vocabulary.Unknown || c.cells > 0 && c.share(lookNumber|lookWatts|lookCount) < 0.8 {
			return false
		}
	}
	if size == 1 {
		h := cols[last]
		if h.cells.cells == 0 || h.cells.countShare() < 0.8 {
			return false
		}
		h.forced, h.aside = vocabulary.Quantity, "the last state of what the columns beside it count"
	} else {
		for j := range size {
			cols[last+j].reword(f.s, subs[last+j])
		}
	}
	for i := first; i < last; i++ {
		cols[i].forced, cols[i].aside = vocabulary.Ignored, "a later state stands beside it"
	}
	return true
}

// changeLabels counts the cells of a strip that number changes to a contract that another names: "Contract | Variation 1".
func changeLabels(s *strip) int {
	labels, contract := 0, false
	for _, sl := range s.slots {
		k := sl.cell.says().within()
		contract = contract || k&classContract != 0
		if k&classChange != 0 && anyDigit(text(sl.cell)) {
			labels++
		}
	}
	if !contract {
		return 0
	}
	return labels
}
