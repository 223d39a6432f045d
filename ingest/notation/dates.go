package notation

import (
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"time"
)

// A Column says what a column holds, for RecoverFraction.
type Column uint8

// The columns in which a spreadsheet program turns text into dates.
const (
	TapColumn      Column = iota // "1/2", "5/10", "1/2/4"
	GaugeColumn                  // "16/2", "14-2"
	ChannelColumn                // "1-3"
	QuantityColumn               // "1-6"
)

// A Recovered is what was probably typed where a cell shows a date. The mark
// that was typed is lost: texts have "/", in a ChannelColumn and a
// QuantityColumn "-".
type Recovered struct {
	Texts     []string // likeliest first, at least one
	Ambiguous bool     // more than one text fits the column
}

var (
	shownNoYear   = regexp.MustCompile(`^(\d{1,2})[-. /]+\p{L}+\.?$|^\p{L}+\.?[- ]+(\d{1,2})$`) // 2-Jan, 02. Jan
	shownMonth    = regexp.MustCompile(`^\p{L}+\.?[-' ]+(\d{2})$`)                              // Jan-45
	shownWithTime = regexp.MustCompile(`\d:\d\d`)
)

// RecoverFraction says what was typed in a cell that the spreadsheet program
// turned into the date given. shown is the date as the cell displays it; it
// tells a program set to month/day ("2-Jan" from 1/2) from one set to
// day/month ("01-Feb" from 1/2), and whether a year was typed. The day, the
// month and the two last figures of the year make the candidates; those that
// fit the column come first.
//
// It returns an error wrapping ErrNotUnderstood for a date that no fraction,
// list or range of that column gives.
func RecoverFraction(year, month, day int, shown string, column Column) (Recovered, error) {
	const what = "date"
	date := time.Date(year, time.Month(month), day, 0, 0, 0, 0, time.UTC)
	if year < 1900 || year > 2200 || date.Day() != day || int(date.Month()) != month {
		return Recovered{}, fail(what, shown, ErrNotUnderstood)
	}
	text := Clean(shown)
	if shownWithTime.MatchString(text) {
		return Recovered{}, failBecause(what, shown, "has a time", ErrNotUnderstood)
	}
	var found []candidate
	offer := func(weight int, parts ...int) {
		fit := fitness(parts, column)
		if fit == 0 {
			return
		}
		c := candidate{text: joinParts(parts, column), score: 2*fit + weight}
		if !slices.ContainsFunc(found, func(o candidate) bool { return o.text == c.text }) {
			found = append(found, c)
		}
	}
	monthFirst, dayFirst := orderHints(text, day)
	yearTyped := !shownNoYear.MatchString(text)
	yy := year % 100
	if day == 1 && shownMonth.MatchString(text) { // 1/45 became January 1945
		offer(1, month, yy)
	}
	offer(monthFirst, month, day)
	offer(dayFirst, day, month)
	if yearTyped && column == TapColumn && year >= 2000 && year < 2100 {
		offer(0, month, day, yy)
		offer(0, day, month, yy)
	}
	if len(found) == 0 {
		return Recovered{}, failBecause(what, shown, "fits no value of the column", ErrNotUnderstood)
	}
	slices.SortStableFunc(found, func(a, b candidate) int { return b.score - a.score })
	out := Recovered{Ambiguous: len(found) > 1}
	for _, c := range found {
		out.Texts = append(out.Texts, c.text)
	}
	return out, nil
}

// A candidate is a text that may have been typed.
type candidate struct {
	text  string
	score int
}

// orderHints weighs month/day against day/month by the look of the date: a
// program set to month/day shows 2-Jan, one set to day/month 02-Jan or
// "02. Jan". Source: default formats of spreadsheet programs, from memory.
func orderHints(shown string, day int) (monthFirst, dayFirst int) {
	m := shownNoYear.FindStringSubmatch(shown)
	if m == nil || day > 9 || m[1] == "" {
		return 0, 0
	}
	if len(m[1]) == 1 {
		return 1, 0
	}
	return 0, 1
}

func joinParts(parts []int, column Column) string {
	mark := "/"
	if column == ChannelColumn || column == QuantityColumn {
		mark = "-"
	}
	text := make([]string, len(parts))
	for i, p := range parts {
		text[i] = strconv.Itoa(p)
	}
	return strings.Join(text, mark)
}

// fitness says how well figures fit a column: 0 not at all, 3 best.
func fitness(parts []int, column Column) int {
	a, b := float64(parts[0]), float64(parts[1])
	if a == 0 || b == 0 {
		return 0
	}
	switch column {
	case TapColumn:
		if len(parts) == 3 {
			return min(tapRatio(a, b), tapRatio(b, float64(parts[2])))
		}
		if plainFractions[[2]float64{a, b}] && a != b {
			return 3
		}
		return tapRatio(a, b)
	case GaugeColumn:
		switch {
		case a < 8 || a > 26 || b > 12 || b < 2:
			return 0
		case math.Mod(a, 2) == 0 && math.Mod(b, 2) == 0:
			return 3
		}
		return 1
	case QuantityColumn:
		if a < b {
			return 2
		}
		return 0
	}
	return 1
}

// tapRatio says whether two figures are neighbours in a list of taps: each is
// about twice or half of the other. Source: tap series in a survey of
// catalogues, all of steps from 1.5 to 3.
func tapRatio(a, b float64) int {
	switch r := math.Max(a, b) / math.Min(a, b); {
	case r == 2:
		return 2
	case r >= 1.5 && r <= 3:
		return 1
	}
	return 0
}

// RecoverSerial is RecoverFraction for a date serial of the 1900 system, as
// spreadsheet files store dates. A serial with a time of day is not
// understood.
func RecoverSerial(serial float64, shown string, column Column) (Recovered, error) {
	const lastSerial = 2958465 // 9999-12-31
	if !(serial >= 1 && serial <= lastSerial) || serial != math.Trunc(serial) || serial == 60 {
		return Recovered{}, fail("date", shown, ErrNotUnderstood)
	}
	days := int(serial)
	if days < 60 { // the 1900 system counts a 29 February 1900 that never was
		days++
	}
	date := time.Date(1899, 12, 30+days, 0, 0, 0, 0, time.UTC)
	return RecoverFraction(date.Year(), int(date.Month()), date.Day(), shown, column)
}
