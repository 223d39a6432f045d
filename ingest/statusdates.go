package ingest

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
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
	for part := range strings.FieldsFuncSeq(strings.NewReplacer(" - ", "; ", " – ", "; ").Replace(text), func(r rune) bool { return r == ',' || r == ';' }) {
		status := statusAlone(withoutDate(beforeWhen(part)))
		switch {
		case status == schedule.Installed && anyDigit(part), status != schedule.Installed && found != schedule.Installed && status != found:
			return schedule.Installed // "1 of 3, taken down 14/1"
		case status == schedule.Installed && backAgain.in(join.Fold(part)) && !notation.Denies(part):
			return schedule.Installed // "taken down last summer, put back since"
		case status == schedule.Installed && (speaksOfSome(part) || notation.MentionsStatus(part, notation.StatusInstalled)):
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

// beforeWhen is what a part of a remark says before it tells when or why that came about: "taken down" of "taken down when
// the sauna went". A figure, a piece or a device behind it may be what went: such a part is left whole.
func beforeWhen(part string) string {
	words := strings.Fields(part)
	for i := 1; i+1 < len(words); i++ {
		if !whenWords.in(join.Fold(words[i])) {
			continue
		}
		rest := strings.Join(words[i+1:], " ")
		if anyDigit(rest) || vocabulary.DeviceIn(rest) != vocabulary.NoDevice {
			return part
		}
		return strings.Join(words[:i], " ")
	}
	return part
}

// monthFirst is a day behind its month, which can be no other number of a month: "8/14".
var monthFirst = regexp.MustCompile(`\b(?:0?[1-9]|1[0-2])/(1[3-9]|2\d|3[01])(?:/(?:20)?\d\d)?\b`)

// goneOnDay reports whether a remark says that its row went on a day behind its month, "taken down 8/14, hole
// patched", where the row counts fewer: else it may be 8 of 14.
func (r *row) goneOnDay(text string) bool {
	m := monthFirst.FindStringSubmatchIndex(text)
	if m == nil {
		return false
	}
	day, _ := strconv.Atoi(text[m[2]:m[3]])
	quantity := r.own(vocabulary.Quantity).text
	count, _ := strconv.Atoi(quantity[:len(quantity)-len(strings.TrimLeft(quantity, "0123456789"))])
	return count < day && stateWithDate(text[:m[0]]+text[m[1]:]) == schedule.Removed
}

// speaksOfSome reports whether words speak of some loudspeakers of a row rather than of
// what was wrong with all: "the left one", "horn at the gate".
func speaksOfSome(part string) bool {
	return kindInWords(part) == loudspeakerRow || slices.ContainsFunc(strings.Fields(join.Fold(part)), func(w string) bool {
		return slices.Contains(wordClasses["some of them"], w)
	})
}

// withoutDate takes a date off the front or the end of a few words, and the word that
// leads to it: "taken down 14/1", "demontiert im Mai 2022", "déposé le 11 mars", "was taken down last summer".
func withoutDate(text string) string {
	words := strings.Fields(text)
	first, last := 0, len(words) // a day is told by its month, which goes before it or after
	for last > 1 && (isWordOfDate(words[last-1]) || isDayOfMonth(words, last-1)) {
		last--
	}
	for first < last-1 && (isWordOfDate(words[first]) || isDayOfMonth(words, first)) {
		first++
	}
	return strings.Join(words[first:last], " ")
}

// isDayOfMonth reports whether one of several words is the number of a day with its month in front of it or
// behind: "11 mars", "May 3rd", "4 de mayo".
func isDayOfMonth(words []string, i int) bool {
	if !dayOfMonth.MatchString(join.Fold(strings.Trim(words[i], "().,"))) {
		return false
	}
	next := i + 1
	if next+1 < len(words) && slices.Contains(dateLinkWords, join.Fold(words[next])) {
		next++
	}
	return i > 0 && isMonth(words[i-1]) || next < len(words) && isMonth(words[next])
}

// dayOfMonth is the number of a day: "11", "3rd", "1er".
var dayOfMonth = regexp.MustCompile(`^(?:[1-9]|[12]\d|3[01])(?:st|nd|rd|th|er|de|º|°)?$`)

// isWordOfDate reports whether a word is the figures of a date, a month, a season or the like, a word in
// front of them, or one that only makes a sentence of a state: "last summer", "has been".
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
	if slices.Contains(dateLinkWords, folded) || slices.Contains(timeToldWords, folded) || slices.Contains(itWasWords, folded) {
		return true
	}
	return isMonth(word)
}

// isMonth reports whether a word is the name of a month, or begins it.
func isMonth(word string) bool {
	folded := strings.Trim(join.Fold(word), ".()")
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
