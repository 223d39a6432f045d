package ingest

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"time"

	"lineaudit/ingest/join"
)

// isoDate turns days of the 1900 system into an ISO date, "" if out of range.
// The system counts a 29 February 1900 that never was.
func isoDate(days float64) string {
	if !(days >= 1 && days < 2958466) { // 9999-12-31
		return ""
	}
	n := int(math.Floor(days))
	if n > 60 {
		n--
	}
	return time.Date(1900, 1, 0, 0, 0, 0, 0, time.UTC).AddDate(0, 0, n).Format(time.DateOnly)
}

var (
	isoPattern  = regexp.MustCompile(`^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$`)
	dayPattern  = regexp.MustCompile(`^(\d{1,2})[-/. ]+(\d{1,2})[-/. ]+(\d{4})$`)
	wordPattern = regexp.MustCompile(`^(\d{1,2})[.\-/ ]*([a-z]+)[.\-/, ]*(\d{4})$`)
)

// months are the first letters of the months in the six languages, folded.
var months = []struct {
	stems []string
	n     int
}{
	{[]string{"jan", "janv", "ene", "gen"}, 1}, {[]string{"feb", "fev"}, 2}, {[]string{"mar", "mrz", "maa", "mrt"}, 3},
	{[]string{"apr", "avr", "abr"}, 4}, {[]string{"may", "mai", "mag", "mei"}, 5}, {[]string{"jun", "juin", "giu"}, 6},
	{[]string{"jul", "juil", "lug"}, 7}, {[]string{"aug", "aou", "ago"}, 8}, {[]string{"sep", "set"}, 9},
	{[]string{"oct", "okt", "ott", "out"}, 10}, {[]string{"nov"}, 11}, {[]string{"dec", "dez", "dic"}, 12},
}

// isoText turns a written date into an ISO date. A date that could be day and
// month or month and day stays as written: "".
func isoText(s string) string {
	s = strings.TrimSpace(join.Fold(s))
	if m := isoPattern.FindStringSubmatch(s); m != nil {
		return isoOf(m[1], m[2], m[3])
	}
	if m := dayPattern.FindStringSubmatch(s); m != nil {
		a, _ := strconv.Atoi(m[1])
		b, _ := strconv.Atoi(m[2])
		switch {
		case strings.Contains(s, ".") || a > 12 || a == b: // dots: day first
			return isoOf(m[3], m[2], m[1])
		case b > 12:
			return isoOf(m[3], m[1], m[2])
		}
		return ""
	}
	if m := wordPattern.FindStringSubmatch(s); m != nil {
		best, length := 0, 0
		for _, month := range months {
			for _, stem := range month.stems {
				if strings.HasPrefix(m[2], stem) && len(stem) > length {
					best, length = month.n, len(stem)
				}
			}
		}
		if best > 0 {
			return isoOf(m[3], strconv.Itoa(best), m[1])
		}
	}
	return ""
}

func isoOf(year, month, day string) string {
	y, _ := strconv.Atoi(year)
	m, _ := strconv.Atoi(month)
	d, _ := strconv.Atoi(day)
	t := time.Date(y, time.Month(m), d, 0, 0, 0, 0, time.UTC)
	if t.Day() != d || int(t.Month()) != m {
		return ""
	}
	return t.Format(time.DateOnly)
}
