package ingest

import (
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// ampSections takes titles over outputs that say more of an amplifier than a name, "AMP 6
// 4 x 125 W, CH 1+2 bridged", for its name where the rows name their outputs and no
// amplifier. What else they say, sentences tell.
func (b *builder) ampSections() {
	for _, t := range b.tables {
		if !t.has(vocabulary.Channel) || t.has(vocabulary.Amplifier) {
			continue
		}
		for _, r := range t.rows {
			for i := range r.Sections {
				if f, ok := ampInTitle(&r.Sections[i]); ok {
					r.Sections = slices.Clone(r.Sections)
					r.Sections[i] = f
				}
			}
		}
		own := false // the titles are its own
		for i := range t.titles {
			if f, ok := ampInTitle(&t.titles[i]); ok {
				if !own {
					t.titles, own = slices.Clone(t.titles), true
				}
				t.titles[i] = f
			}
		}
	}
}

// ampInTitle is the title of an output as that of the one amplifier that it names in a sentence.
func ampInTitle(f *layout.Fact) (layout.Fact, bool) {
	if f.Field != vocabulary.Channel || f.At.Row == 0 {
		return layout.Fact{}, false
	}
	list := sentence(f.Text, schedule.Ref{})
	if len(list) != 1 || !list[0].Worded || list[0].Name == "" || list[0].Outputs < 2 {
		return layout.Fact{}, false
	}
	amp := *f
	amp.Field, amp.Text, amp.Key, amp.Cell = vocabulary.Amplifier, withKindWord(f.Text, list[0].Name), "", nil
	return amp, true
}
