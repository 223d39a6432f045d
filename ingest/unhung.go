package ingest

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/vocabulary"
)

// askUnhung asks what feeds loudspeakers that hang on nothing while the job has outputs: one question
// for those of a sheet. Whoever reads the audit must not take it that the outputs carry no more.
func (b *builder) askUnhung() {
	if len(b.job.Channels) < 2 && len(b.job.Amplifiers) < 2 {
		return // on the only output, if on any
	}
	asked := b.sheetsAskedFor(vocabulary.Channel, vocabulary.Amplifier, vocabulary.Circuit, vocabulary.Zone, vocabulary.Control)
	first, count := make(map[string]*schedule.Loudspeaker), make(map[string]int)
	var sheets []string
	for _, l := range b.job.Loudspeakers {
		sheet := l.At.Sheet()
		if l.Status != schedule.Installed || l.FeedUnread || l.LowImpedance.Had() || asked[sheet] || hung(l) {
			continue
		}
		if first[sheet] == nil {
			first[sheet] = l
			sheets = append(sheets, sheet)
		}
		count[sheet]++
	}
	for _, sheet := range sheets {
		l, rows := first[sheet], "this row"
		if n := count[sheet]; n > 1 {
			rows = "these " + itoa(n) + " rows, from here on"
		}
		b.ask(l.At, "channel", "nothing that was understood says what feeds the loudspeakers of "+rows+": on which outputs do they hang?", "the load of the outputs")
	}
}

// hung reports whether a loudspeaker, its control or its zone hangs on an output.
func hung(l *schedule.Loudspeaker) bool {
	if len(feeding(l)) > 0 || l.Zone != nil && (l.Zone.Channel != nil || len(l.Zone.Channels) > 0) {
		return true
	}
	seen := 0
	for k := l.Control; k != nil && seen < longestChain; k = k.Parent {
		if k.Channel != nil {
			return true
		}
		seen++
	}
	return false
}

// longestChain is more controls than ever hang behind each other; a ring of them ends here.
const longestChain = 16

// sheetsAskedFor are the sheets with a question about one of some fields.
func (b *builder) sheetsAskedFor(fields ...vocabulary.Field) map[string]bool {
	names := make(map[string]bool)
	for _, f := range fields {
		names[f.String()] = true
	}
	asked := make(map[string]bool)
	for q := range b.allQuestions {
		if names[q.Field] {
			asked[q.At.Sheet()] = true
		}
	}
	return asked
}
