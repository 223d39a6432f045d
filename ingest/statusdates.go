package ingest

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
)

// figuresOfDate are the figures of a day, a month or a year: "3/14/21", "03.2019", "14.1.", "2022", "'21";
// dayAndMonth is a date that may be a fraction: "14/1", but "2/4" may be two of four.
var (
	figuresOfDate = regexp.MustCompile(`^(?:'\d\d|(?:19|20)\d\d|\d{1,4}[./-]\d{1,2}[./-]\d{2,4}|\d{1,2}[./-](?:19|20)\d\d|\d{1,2}\.\d{1,2}\.?)$`)
	dayAndMonth   = regexp.MustCompile(`^(\d{1,2})[/-](\d{1,2})$`)
)

// stateWithDate is the state that a remark says with the time of it, or the whole of
// one of its parts between commas, where no other part has a figure: "2022 removed",
// "Beyond repair, taken down 14/1".
func stateWithDate(text string) schedule.Status {
	if countWords(text) > 2*fewWords {
		return schedule.Installed
	}
	found := schedule.Installed
	for part := range strings.FieldsFuncSeq(text, func(r rune) bool { return r == ',' || r == ';' }) {
		status := statusAlone(withoutDate(part))
		switch {
		case status == schedule.Installed && anyDigit(part), status != schedule.Installed && found != schedule.Installed && status != found:
			return schedule.Installed // "1 of 3, taken down 14/1"
		case status == schedule.Installed && speaksOfSome(part):
			return schedule.Installed
		case status != schedule.Installed:
			found = status
		}
	}
	if found != schedule.Removed {
		return schedule.Installed
	}
	return found
}

// speaksOfSome reports whether words speak of some loudspeakers of a row rather than of
// what was wrong with all: "the left one", "horn at the gate".
func speaksOfSome(part string) bool {
	return kindInWords(part) == loudspeakerRow || slices.ContainsFunc(strings.Fields(join.Fold(part)), func(w string) bool {
		return slices.Contains(wordClasses["some of them"], w)
	})
}

// withoutDate takes a date off the front or the end of a few words, and the word that
// leads to it: "taken down 14/1", "demontiert im Mai 2022".
func withoutDate(text string) string {
	words := strings.Fields(text)
	for len(words) > 1 && isWordOfDate(words[len(words)-1]) {
		words = words[:len(words)-1]
	}
	for len(words) > 1 && isWordOfDate(words[0]) {
		words = words[1:]
	}
	return strings.Join(words, " ")
}

// isWordOfDate reports whether a word is the figures of a date, a month, or a word in
// front of them.
func isWordOfDate(word string) bool {
	folded := strings.Trim(join.Fold(word), ".()")
	if figuresOfDate.MatchString(folded) {
		return true
	}
	if m := dayAndMonth.FindStringSubmatch(folded); m != nil {
		first, _ := strconv.Atoi(m[1])
		second, _ := strconv.Atoi(m[2])
		return first > second && first > 0 && first <= 31
	}
	if slices.Contains(wordClasses["date link"], folded) {
		return true
	}
	if len(folded) < 3 {
		return false
	}
	for _, m := range months {
		if slices.ContainsFunc(m.stems, func(stem string) bool { return strings.HasPrefix(folded, stem) && len(folded) <= longestMonth }) {
			return true
		}
	}
	return false
}

// longestMonth is the most letters of the name of a month: "septiembre".
const longestMonth = 10

// stateOfDescribed is the state of a loudspeaker that its description says in front of a colon or between
// commas: "Bedarfsposition: Lautsprecher 6 W, Foyer", "Weatherproof horn, spare, to stores".
func stateOfDescribed(text string) schedule.Status {
	if kindInWords(text) != loudspeakerRow {
		return schedule.Installed
	}
	if head, _, ok := strings.Cut(text, ":"); ok {
		if status := statusAlone(head); status != schedule.Installed {
			return status
		}
	}
	return statusBetween(text)
}

// statusBetween is a sure status that stands alone between commas.
func statusBetween(text string) schedule.Status {
	for part := range strings.SplitSeq(text, ",") {
		if status := statusAlone(part); status != schedule.Installed {
			return status
		}
	}
	return schedule.Installed
}
