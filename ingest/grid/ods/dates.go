package ods

import (
	"math"
	"strconv"
	"strings"
	"time"
)

// epoch is day 0 of OpenDocument programs. Its days agree with the 1900 system
// of other workbooks from 1 March 1900 on; the programs keep the numbers of
// earlier days when they save for one another.
var epoch = time.Date(1899, 12, 30, 0, 0, 0, 0, time.UTC)

// serialOfDate returns the days since the epoch of an office:date-value such
// as "2026-01-02" or "2026-01-02T08:30:00.5".
func serialOfDate(s string) (float64, bool) {
	for _, layout := range []string{"2006-01-02", "2006-01-02T15:04:05", "2006-01-02T15:04", "2006-01-02T15:04:05Z07:00"} {
		t, err := time.Parse(layout, s)
		if err != nil {
			continue
		}
		seconds := t.Unix() - epoch.Unix() // a Duration overflows after 292 years
		return (float64(seconds) + float64(t.Nanosecond())/1e9) / 86400, true
	}
	return 0, false
}

// serialOfTime returns the days of an office:time-value, an XML Schema
// duration such as "PT08H30M00.5S". Years and months have no fixed length and
// are refused.
func serialOfTime(s string) (float64, bool) {
	s, negative := strings.CutPrefix(s, "-")
	s, ok := strings.CutPrefix(s, "P")
	if !ok || s == "" {
		return 0, false
	}
	days, inTime := 0.0, false
	for s != "" {
		if s[0] == 'T' && !inTime {
			inTime, s = true, s[1:]
			continue
		}
		i := strings.IndexFunc(s, func(r rune) bool { return (r < '0' || r > '9') && r != '.' && r != ',' })
		if i <= 0 {
			return 0, false
		}
		v, err := strconv.ParseFloat(strings.Replace(s[:i], ",", ".", 1), 64)
		if err != nil || math.IsInf(v, 0) {
			return 0, false
		}
		switch unit := s[i]; {
		case unit == 'D' && !inTime:
			days += v
		case unit == 'H' && inTime:
			days += v / 24
		case unit == 'M' && inTime:
			days += v / 1440
		case unit == 'S' && inTime:
			days += v / 86400
		default:
			return 0, false
		}
		s = s[i+1:]
	}
	if negative {
		days = -days
	}
	return days, true
}
