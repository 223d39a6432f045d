package layout

import (
	"slices"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// Surveys set what was found beside what the drawings show, each with a count and mostly a tap: "As drawn" and "As
// found", each over "Qty | W", or "Qty drawn | W drawn | Qty found | W found". What was found counts, wherever it stands.

// surveyed leaves the columns of what is drawn out, and reads those of what was found by what they share with them.
func (f *finder) surveyed(cols []*heading) {
	drawn, found := stagesOfSurvey(cols)
	if len(drawn) == 0 || len(drawn) != len(found) {
		return
	}
	counts, watts := false, slices.ContainsFunc(cols, func(h *heading) bool { return h.unit == "W" || h.top == vocabulary.Tap })
	fields := make([]vocabulary.Field, 0, len(drawn))
	rests := make([]string, 0, len(drawn))
	for k := range drawn {
		rest := sharedWords(cols[drawn[k]], cols[found[k]])
		field := f.countOr(rest, cols[found[k]])
		asked := drawn[k] > found[k] && classWithin(cols[drawn[k]].words)&classDrawn == 0 // behind what is there may stand what it shall become
		if field == vocabulary.Unknown || asked || slices.Contains(fields, field) {
			return
		}
		counts = counts || field == vocabulary.Quantity
		fields, rests = append(fields, field), append(rests, rest)
	}
	if !counts || !watts || len(rests) == 1 && f.s.Header(rests[0]).Best().Field != vocabulary.Quantity { // "LS soll | LS ist"
		return
	}
	for k, rest := range rests {
		was, is := cols[drawn[k]], cols[found[k]]
		is.replaces, is.earlier = was.words, []int{was.col}
		words := is.words
		is.reword(f.s, rest)
		is.words = words
		if fields[k] == vocabulary.Quantity && is.top != vocabulary.Quantity {
			is.forced, is.aside = vocabulary.Quantity, "what was found, beside what is drawn"
		}
		was.forced, was.aside = vocabulary.Ignored, "what was found stands beside it"
	}
}

// countOr is what words say of a column: that it counts, where its cells do and the words may mean it ("No." above 4, 1,
// 3), else the best they say; Unknown where that is not sure.
func (f *finder) countOr(words string, h *heading) vocabulary.Field {
	read := f.s.Header(words)
	if h.cells.cells > 0 && h.cells.countShare() >= 0.5 && slices.ContainsFunc(read.Candidates, func(c vocabulary.Candidate) bool {
		return c.Field == vocabulary.Quantity && c.Score >= headerScore
	}) {
		return vocabulary.Quantity
	}
	if best := read.Best(); best.Score >= named && best.Field != vocabulary.Quantity {
		return best.Field
	}
	return vocabulary.Unknown
}

// ofStages are the classes of words that tell what is planned from what is there.
const ofStages = classDrawn | classSeen | classPlanned | classLater

// stagesOfSurvey are the columns of what is drawn or planned and those of what was found.
func stagesOfSurvey(cols []*heading) (drawn, found []int) {
	for i, h := range cols {
		if h.forced != vocabulary.Unknown {
			continue
		}
		k := classWithin(h.words)
		if head, _ := h.underHead(); classWithin(head)&ofStages != 0 {
			k = classWithin(head)
		}
		switch seen := k&(classSeen|classLater) != 0; {
		case k&(classDrawn|classPlanned) != 0 && !seen:
			drawn = append(drawn, i)
		case seen && k&(classDrawn|classPlanned) == 0:
			found = append(found, i)
		}
	}
	return drawn, found
}

// sharedWords are the words under two headings for stages, where they are the same, else those that two headers
// share but for words that tell a stage: "Qty" of "Qty drawn" and "Qty found".
func sharedWords(a, b *heading) string {
	over, x := a.underHead()
	if beside, y := b.underHead(); classWithin(over)&ofStages != 0 && classWithin(beside)&ofStages != 0 {
		if vocabulary.Fold(x) == vocabulary.Fold(y) {
			return x
		}
		return ""
	}
	var others, shared []string
	for w := range strings.FieldsSeq(b.words) {
		others = append(others, vocabulary.Fold(w))
	}
	for w := range strings.FieldsSeq(a.words) {
		if slices.Contains(others, vocabulary.Fold(w)) && classOf(w)&(ofStages|classEarlier) == 0 {
			shared = append(shared, w)
		}
	}
	return strings.Join(shared, " ")
}

// stageLabels counts the cells of a strip that tell two stages over the same headers: "As drawn" and "As found", each over
// "Qty | W" on the line below. Whatever else the strip says, it heads that line.
func stageLabels(s *strip, below []line) int {
	if len(below) == 0 {
		return 0
	}
	was := -1 // column of the label before
	for _, sl := range s.slots {
		if sl.cell.Kind != grid.String || classWithin(text(sl.cell))&(ofStages|classEarlier) == 0 {
			continue
		}
		if was < 0 || sl.col-was < 2 {
			was = sl.col
			continue
		}
		for k := range sl.col - was {
			first, second := below[0].at(was+k), below[0].at(sl.col+k)
			if first.blank() || second.blank() || first.Kind != grid.String || first.folded() != second.folded() {
				return 0
			}
		}
		return 2
	}
	return 0
}

// headsStages reports whether cells of a line head what is drawn and what was found, each over the same headers or with
// two headers of its own: "Area | Qty drawn | W drawn | Qty found | W found".
func headsStages(slots []slot, below []line) bool {
	drawn, found := 0, 0
	for _, sl := range slots {
		switch k := classWithin(text(sl.cell)); {
		case sl.cell.Kind != grid.String || k&ofStages == 0:
		case k&(classSeen|classLater) == 0:
			drawn++
		case k&(classDrawn|classPlanned) == 0:
			found++
		}
	}
	return drawn > 1 && found > 1 || stageLabels(&strip{slots: slots}, below) > 0
}
