package ingest

import (
	"fmt"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// Cells that count loudspeakers with their watts and of which nothing was made are asked about, so
// that no loudspeaker is lost without a word: one question a column, or an area beside the tables.

// longestUncounted is the longest text, in bytes, that is taken for a count with its power.
const longestUncounted = 60

// highestTap is the highest power, in watts, that a loudspeaker of a line is set to: what is counted with more
// is what outputs give. Source: usual taps, common practice.
const highestTap = 100

// countsWatts are the texts that begin with a count and a power and speak of no other device:
// "8 x 3 W", "12 @ 3 W + 2 @ 6 W", "4 à 6 W".
var countsWatts = remember.New(8192, func(text string, _ int) bool {
	head, _ := splitControl(text)
	list := groupsIn(head, notation.Auto)
	if len(list) == 0 || feedsLines(text) {
		return false
	}
	for _, g := range list {
		if g.W > highestTap {
			return false
		}
	}
	return vocabulary.DeviceIn(head) != vocabulary.ControlDevice
})

// feedsLines reports whether a text speaks of an amplifier or its outputs: "2 channels of 60 W".
func feedsLines(text string) bool {
	folded := join.Fold(text)
	return notation.SpeaksOfAmplifier(text) || vocabulary.DeviceIn(text) == vocabulary.AmplifierDevice || outputWords.in(folded) || outputsWords.in(folded)
}

// mayCountWatts reports, cheaply, whether a text is worth reading as counts with powers.
func mayCountWatts(text string) bool {
	return len(text) >= len("1x1W") && len(text) <= longestUncounted && (text[0] >= '0' && text[0] <= '9' || text[0] == '(') && strings.ContainsAny(text, "wW")
}

// askUncounted asks about such cells.
func (b *builder) askUncounted() {
	made := b.madeOf()
	for _, t := range b.tables {
		if t.again || t.SheetHidden || t.outdated || t.kind == layout.Types || t.kind == layout.Cables {
			continue
		}
		for _, c := range t.columns {
			if !ofOtherPowers[c.Field] {
				b.askUncountedBelow(t, c, made)
			}
		}
	}
	b.askUncountedBeside(made)
}

// ofOtherPowers are the fields of cells that may multiply watts and count no loudspeakers.
var ofOtherPowers = func() (of [vocabulary.Fields]bool) {
	for _, f := range []vocabulary.Field{vocabulary.ChannelWatts, vocabulary.FrameWatts, vocabulary.ControlWatts, vocabulary.RatedWatts, vocabulary.TapList, vocabulary.ControlModel,
		vocabulary.Control, vocabulary.Amplifier, vocabulary.Load, vocabulary.TotalWatts, vocabulary.Headroom, vocabulary.CableType, vocabulary.Gauge, vocabulary.TapBefore} {
		of[f] = true
	}
	return of
}()

// madeOf are the cells of which loudspeakers, ratings or questions were made.
func (b *builder) madeOf() map[schedule.Ref]bool {
	made := make(map[schedule.Ref]bool)
	of := func(list []*schedule.Loudspeaker) {
		for _, l := range list {
			for _, at := range []schedule.Ref{l.Tap.At, l.Count.At, l.Rated.At, l.RowTotal.At, l.TapPosition.At} {
				made[at] = true
			}
		}
	}
	of(b.job.Loudspeakers)
	for i := range b.job.LeftOut {
		of(b.job.LeftOut[i].Would)
	}
	for _, c := range b.job.Channels {
		made[c.Rated.At] = true
	}
	for _, a := range b.job.Amplifiers {
		made[a.Rated.At] = true
	}
	for _, c := range b.job.Controls {
		made[c.Rated.At], made[c.At] = true, true
	}
	for q := range b.allQuestions {
		made[q.At] = true
	}
	return made
}

// lostRows are the reasons of rows left out that may hold loudspeakers all the same.
var lostRows = map[schedule.RowKind]bool{"": true, schedule.EmptyRow: true, schedule.NotUnderstood: true, schedule.NoteRow: true}

// askUncountedBelow asks about the cells of one column.
func (b *builder) askUncountedBelow(t *table, c *column, made map[schedule.Ref]bool) {
	var first *layout.Value
	n := 0
	var last schedule.Ref
	for _, r := range t.rows {
		v := &r.Values[c.i]
		if !mayCountWatts(v.Text) || v.How != schedule.Stated || !lostRows[r.out] || made[v.At] || r.kind == amplifierRow || r.kind == controlRow || r.kind == typeRow {
			continue
		}
		if !countsWatts.Of(v.Text, 0) {
			continue
		}
		if n++; first == nil {
			first = v
		}
		last = v.At
	}
	if first == nil {
		return
	}
	b.ask(first.At, vocabulary.Quantity.String(), uncountedText(first.Text, n, first.At, last)+": which loudspeakers are these, and what feeds them?", "the load of the line that they hang on")
}

// uncountedText tells which cells count loudspeakers of which nothing was made.
func uncountedText(text string, n int, first, last schedule.Ref) string {
	if n == 1 {
		return "“" + short(text) + "” counts loudspeakers with their watts, and nothing was made of it"
	}
	return fmt.Sprintf("%d cells from %s to %s count loudspeakers with their watts, first “%s”, and nothing was made of them", n, first.Cell(), last.Cell(), short(text))
}

// besideTables are the texts outside the tables: those that were heard, and the cells of rows that
// belong to no table.
func (b *builder) besideTables() []spoken {
	all := slices.Clone(b.spoken)
	for _, o := range b.outside {
		if o.Class == layout.Note && !o.Facts || feedsLines(o.Text) {
			continue // heard, or of no loudspeakers
		}
		for cell := range strings.SplitSeq(o.Text, " | ") {
			all = append(all, spoken{at: o.At, text: cell})
		}
	}
	slices.SortStableFunc(all, func(x, y spoken) int { return x.at.Compare(y.at) })
	return all
}

// askUncountedBeside asks about the cells outside the tables, sheet by sheet.
func (b *builder) askUncountedBeside(made map[schedule.Ref]bool) {
	var first, last *spoken
	n := 0
	ask := func() {
		if n > 0 {
			b.ask(first.at, vocabulary.Quantity.String(), uncountedText(first.text, n, first.at, last.at)+": which loudspeakers are these, and what feeds them?", "the load of the line that they hang on")
		}
		first, last, n = nil, nil, 0
	}
	all, rows := b.besideTables(), make(map[schedule.Ref]bool)
	for at := range made {
		rows[rowOf(at)] = true // "V2 | 2 x 60 W" rates an amplifier
	}
	for i := range all {
		s := &all[i]
		if first != nil && first.at.Sheet() != s.at.Sheet() {
			ask()
		}
		if !mayCountWatts(s.text) || rows[rowOf(s.at)] || !countsWatts.Of(s.text, 0) {
			continue
		}
		if n++; first == nil {
			first = s
		}
		last = s
	}
	ask()
}

// saysNone reports whether a row that is not installed says that nothing hangs there: "spare | none | 0 W".
func saysNone(r *row, l *schedule.Loudspeaker) bool {
	return l.Status != schedule.Installed && l.RowTotal.Had() && l.RowTotal.High == 0 && r.own(vocabulary.Tap).missing != notation.MissingNone
}

// noPiece reports whether the count of a loudspeaker is nought.
func noPiece(l *schedule.Loudspeaker) bool { return l.Count.Had() && l.Count.High == 0 }
