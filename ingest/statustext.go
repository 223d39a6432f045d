package ingest

import (
	"regexp"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
)

// What a text says of the state of a device: alone, in front of other words, in
// brackets or beside a count or a tap.

// stateOfCount is the state behind a count and nothing else: "2 reserve" are spares,
// "3 + 1 spare" is a count.
func stateOfCount(text string) schedule.Status {
	rest := strings.TrimLeft(text, "0123456789 x×")
	for _, m := range notation.Statuses(rest) {
		if status := statuses[m.Kind]; len(rest) < len(text) && strings.EqualFold(m.Text, rest) {
			return status
		}
	}
	return schedule.Installed
}

// statesAgree is the state that stands alone behind others in a short remark, where each
// of them keeps a part from loading its line: "add alternate 2 - not installed". Words with other meanings
// say the same as the last: "prévus en 2024, pas encore posés". A figure ahead may mean that some of its row
// are: "1 is missing since the works, dropped".
func statesAgree(text string) schedule.Status {
	list := notation.Statuses(text)
	if len(list) < 2 || text[0] >= '0' && text[0] <= '9' || countWords(text) > 2*fewWords {
		return schedule.Installed
	}
	last := list[len(list)-1]
	for _, m := range list {
		if _, known := statuses[m.Kind]; !known || !m.Sure && (!last.Sure || m.Kind != last.Kind) || m.Negated {
			return schedule.Installed
		}
	}
	if _, part, ok := cutAny(text, " - ", " – ", "; ", ", "); ok && strings.EqualFold(part, last.Text) {
		return statuses[last.Kind]
	}
	return schedule.Installed
}

// goneTwice reports whether a short remark says in several sure words that its row is gone, and nothing else of its
// state but why: "burnt, taken down and thrown away". A figure ahead may mean that some of it are.
func goneTwice(text string) bool {
	if countWords(text) > 3*fewWords || text == "" || text[0] >= '0' && text[0] <= '9' {
		return false
	}
	times := 0
	for _, m := range notation.Statuses(text) {
		switch {
		case m.Kind == string(notation.StatusFaulty):
		case m.Kind != string(notation.StatusRemoved) || !m.Sure || m.Negated:
			return false
		default:
			times++
		}
	}
	return times > 1
}

// statusInBrackets is a sure status that stands in brackets: "store (spare)".
func statusInBrackets(text string) schedule.Status {
	if !strings.ContainsAny(text, "([") {
		return schedule.Installed
	}
	return statusesInBrackets.Of(text, 0)
}

// tapWithState parts a tap from the state of all of its row in brackets: "2 W
// (spare - in store)". In "5 W (1 spare)" or "5 W, 2 W (removed)" the state is
// that of some only: such a text is left whole, as is one without a state.
func tapWithState(text string) (watts string, status schedule.Status) {
	if !strings.ContainsAny(text, "([") {
		return text, schedule.Installed
	}
	if m := tapState.FindStringSubmatch(text); m != nil {
		if status := statusInBrackets(text); status != schedule.Installed {
			return m[1], status
		}
	}
	return text, schedule.Installed
}

// statusAhead is a sure status with which a text begins, apart from the rest:
// "Spare - on the shelf".
func statusAhead(text string) schedule.Status { return stateAhead(text, false) }

// stateAhead is statusAhead, with words that have other meanings too if any is
// set: "Lager (Keller)" is a room, unless nothing feeds what is there.
func stateAhead(text string, any bool) schedule.Status {
	for _, mark := range []string{" - ", " – ", ": ", ", ", "; ", " ("} {
		head, _, ok := strings.Cut(text, mark)
		if !ok {
			continue
		}
		head = strings.TrimSpace(head)
		for _, m := range notation.Statuses(head) {
			if status, known := statuses[m.Kind]; known && (m.Sure || any) && strings.EqualFold(m.Text, head) {
				return status
			}
		}
	}
	return schedule.Installed
}

// statusAlone is a sure status that is all a text says.
func statusAlone(text string) schedule.Status {
	for _, m := range notation.Statuses(text) {
		if status, known := statuses[m.Kind]; known && m.Sure && !m.Negated && strings.EqualFold(m.Text, strings.Trim(text, " .()[]")) {
			return status
		}
	}
	return schedule.Installed
}

// sureStatus is the first sure status in a text.
func sureStatus(text string) schedule.Status {
	for _, m := range notation.Statuses(text) {
		if status, known := statuses[m.Kind]; known && m.Sure && !m.Negated {
			return status
		}
	}
	return schedule.Installed
}

// faulty reports whether a text says that a part does not work.
func faulty(text string) bool {
	status, sure := notation.StatusOf(text)
	return status == notation.StatusFaulty && sure
}

// unknownState reports whether a cell of a column of states is a few words of
// which none is known.
func unknownState(text string) bool {
	return countWords(text) <= 3 && strings.ContainsFunc(text, isLetter) && len(notation.Statuses(text)) == 0 &&
		notation.AnswerOf(text) == notation.NoAnswer && notation.DoneOf(text) == notation.NoAnswer
}

// behindNo is what a cell says behind the answer that there is no control, which is
// then said of the row: "no - not connected any more".
func behindNo(text string) string {
	if head, rest, ok := cutAny(text, " - ", " – ", ", ", "; "); ok && notation.AnswerOf(head) == notation.No {
		return rest
	}
	return text
}

// inBrackets finds what stands in brackets.
var inBrackets = regexp.MustCompile(`[(\[]([^()\[\]]+)[)\]]`)

// tapState is one tap, counted or not, and a remark in brackets, which counts nothing.
var tapState = regexp.MustCompile(`^\s*((?:\d{1,3}\s*[x×]\s*)?\d+(?:[.,/]\d+)?\s*[wW]?)\s*[(\[][^\d()\[\]][^()\[\]]*[)\]]\s*$`)

// stateBehind is a text that ends in brackets without a figure, its only ones.
var stateBehind = regexp.MustCompile(`^[^()\[\]]*[(\[][^\d()\[\]]+[)\]]\s*$`)

// backAgain are words for what was put back where it was.
var backAgain = wordList(wordClasses["back again"])

// backAfter reports whether a part of a text behind the words for its state says that it was put back: "was taken down last
// summer, put back since".
func backAfter(text, state string) bool {
	_, rest, _ := strings.Cut(join.Fold(text), join.Fold(state))
	_, rest, ok := cutAny(rest, ",", ";", " - ", " – ", "(", " and ", " und ", " et ", " y ", " e ", " en ")
	return ok && backAgain.in(rest) && !notation.Denies(rest)
}
