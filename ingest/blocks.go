package ingest

import (
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// A sheet for each line has a title block that names the amplifier and its output, and
// rates it with a bare word: "Amplifier | PA-1 | Output | 2", "Rated | 120 W".

// A ratedBlock is the rating in the title block of a sheet.
type ratedBlock struct {
	sheet string
	rated ratedSeen
}

// ratesBlock keeps a rating for the output that the title block around it names, and
// reports whether there is one. A key that speaks of controls rates these.
func (b *builder) ratesBlock(f *layout.Fact, s seen) bool {
	top, table := b.firstRows()[f.At.Sheet()]
	if f.Key == "" || !table || int(f.At.Row) >= top || slices.Contains(vocabulary.NewScorer().Concepts(f.Key), "control") {
		return false
	}
	names := slices.ContainsFunc(b.facts, func(o layout.Fact) bool {
		outlet := o.Field == vocabulary.Amplifier || o.Field == vocabulary.Channel || o.Field == vocabulary.Circuit
		return outlet && o.Key != "" && o.At.Sheet() == f.At.Sheet() && int(o.At.Row) < top
	})
	out, s := b.rating(s)
	if !names || len(out) == 0 {
		return false
	}
	b.blocks = append(b.blocks, ratedBlock{f.At.Sheet(), ratedSeen{out, s}})
	return true
}

// applyBlocks rates the output on which all loudspeakers of a sheet hang as its title
// block says. Where they hang on several, the rating is said for all.
func (b *builder) applyBlocks() {
	for _, block := range b.blocks {
		var only *schedule.Channel
		one := true
		for _, l := range b.job.Loudspeakers {
			if l.At.Sheet() != block.sheet || l.Channel == nil {
				continue
			}
			one = one && (only == nil || only == l.Channel)
			only = l.Channel
		}
		if one && only != nil {
			b.noteChannelRating(only, block.rated.outputs, block.rated.at)
		} else {
			b.ampTitle = append(b.ampTitle, block.rated)
		}
	}
}
