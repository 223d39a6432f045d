package ingest

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// A row may tell of a part of the loudspeakers of the row above: "of which behind
// the foyer control", "davon auf 3 W". Counted beside them they would count twice.

// partsOfRows finds such rows.
func (b *builder) partsOfRows() {
	for _, t := range b.tables {
		var above *row
		for _, r := range t.rows {
			if r.out != "" || r.kind != loudspeakerRow {
				continue
			}
			if above != nil && r.ofWhich() {
				r.partOf = above
				continue
			}
			above = r
		}
	}
}

// ofWhich reports whether the words of a row begin as those of a part do.
func (r *row) ofWhich() bool {
	for _, f := range []vocabulary.Field{vocabulary.Room, vocabulary.Zone, vocabulary.Describe, vocabulary.Kind, vocabulary.Model, vocabulary.Tag} {
		if s := r.own(f); s.had() && s.ofWhich() {
			return true
		}
	}
	return false
}

func readOfWhich(text string) bool { return ofWhichWords.begins(join.Fold(text)) }

// mostOfRow is how many loudspeakers back those of the row above are looked for.
const mostOfRow = 64

// takePart takes the loudspeakers of a part from those of the row above. It is asked
// where their numbers do not tell how many are left.
func (b *builder) takePart(r *row, l *schedule.Loudspeaker) {
	var whole *schedule.Loudspeaker
	for i := len(b.job.Loudspeakers) - 1; i >= max(0, len(b.job.Loudspeakers)-mostOfRow) && whole == nil; i-- {
		if o := b.job.Loudspeakers[i]; b.origin[o] == r.partOf {
			whole = o
		}
	}
	if whole == nil || b.lookOnly {
		return
	}
	l.Room, l.Zone = whole.Room, whole.Zone
	n, known := l.Count.Exact()
	all, counted := whole.Count.Exact()
	s := seen{t: r.t, source: schedule.Source{At: r.At, Written: r.Text}}
	if !known || !counted || n >= all {
		b.ask(r.At, "quantity", "“"+short(r.Text)+"”: are these among the loudspeakers of the row above? They are counted beside them.", "the load of both rows")
		return
	}
	src := whole.Count.Source
	src.How, src.Because = schedule.Computed, "without those of the row below"
	whole.Count = schedule.Exactly(all-n, src)
	whole.RowTotal = schedule.Quantity[schedule.Watts]{}
	b.take(s, "quantity", "a part of the row above, of which "+plain(float64(all-n))+" are left", schedule.LikelierReading, "its words say so")
}
