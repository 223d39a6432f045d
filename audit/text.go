package audit

import (
	"math"
	"strconv"
	"strings"

	"lineaudit/audit/line"
)

// appendFigure writes a number as a person would in a sum: a full stop, no
// thousands mark, at most three decimals, none that are zero.
func appendFigure(b []byte, v float64) []byte {
	scale := 1000.0
	switch size := math.Abs(v); {
	case math.IsInf(v, 1):
		return append(b, "any number"...)
	case !(size < 1e12):
		return strconv.AppendFloat(b, math.Round(v), 'f', -1, 64)
	case size >= 1000:
		scale = 10
	}
	n := int64(math.Round(v * scale))
	if n < 0 {
		b, n = append(b, '-'), -n
	}
	whole, rest := n/int64(scale), n%int64(scale)
	b = strconv.AppendInt(b, whole, 10)
	if rest == 0 {
		return b
	}
	b = append(b, '.')
	for unit := int64(scale) / 10; rest > 0; unit /= 10 {
		b = append(b, byte('0'+rest/unit))
		rest %= unit
	}
	return b
}

// figure is appendFigure as a string.
func figure(v float64) string {
	var b [24]byte
	return string(appendFigure(b[:0], v))
}

// span writes an interval: "7.5", "2.5 to 10", "at least 20", "unknown".
func span(i Interval) string {
	switch {
	case !i.Known:
		return "unknown"
	case same(i.Low, i.High):
		return figure(i.Low)
	case math.IsInf(i.High, 1):
		return "at least " + figure(i.Low)
	}
	return figure(i.Low) + " to " + figure(i.High)
}

// percent writes a percentage without decimals, unless that would hide on which
// side of a limit it is: limits are multiples of 5, as 80, 100 and 125.
func percent(v float64) string {
	whole := math.Round(v)
	round := strconv.FormatFloat(whole, 'f', 0, 64)
	if math.Mod(whole, 5) != 0 || same(v, whole) {
		return round + " %"
	}
	for decimals := 1; decimals < 6; decimals++ {
		text := strconv.FormatFloat(v, 'f', decimals, 64)
		if shown, err := strconv.ParseFloat(text, 64); err == nil && shown != whole {
			return text + " %"
		}
	}
	return figure(v) + " %"
}

// percents writes an interval of percentages.
func percents(i Interval) string {
	switch {
	case !i.Known:
		return "unknown"
	case same(i.Low, i.High):
		return percent(i.Low)
	case math.IsInf(i.High, 1):
		return "at least " + percent(i.Low)
	}
	return strings.TrimSuffix(percent(i.Low), " %") + " to " + percent(i.High)
}

// decibels writes a level with two decimals.
func decibels(v float64) string { return strconv.FormatFloat(v, 'f', 2, 64) + " dB" }

// decibelSpan writes an interval of levels.
func decibelSpan(i Interval) string {
	if !i.Known || i.exact() {
		return decibels(i.Low)
	}
	if math.IsInf(i.High, 1) {
		return "at least " + decibels(i.Low)
	}
	return strconv.FormatFloat(i.Low, 'f', 2, 64) + " to " + decibels(i.High)
}

// metres writes a length, to the decimetre.
func metres(i Interval) string {
	round := func(v float64) float64 { return math.Round(v*10) / 10 }
	return span(Interval{round(i.Low), round(i.High), i.Known})
}

// volts writes a line voltage as people say it: 70.7, not 70.7107.
func volts(v float64) string {
	if nominal, ok := line.Class(v); ok {
		return figure(math.Round(nominal*10)/10) + " V"
	}
	return figure(v) + " V"
}

// counted writes a number of things: "1 control", "12 controls".
func counted(n float64, thing string) string {
	if n == 1 {
		return "1 " + thing
	}
	return figure(n) + " " + thing + "s"
}

// listed joins names with commas and a last "and".
func listed(names []string) string {
	switch len(names) {
	case 0:
		return ""
	case 1:
		return names[0]
	}
	return strings.Join(names[:len(names)-1], ", ") + " and " + names[len(names)-1]
}

// folded is a name as compared with another: lower case, single spaces.
func folded(s string) string {
	plain, space := true, true
	for i := 0; i < len(s) && plain; i++ {
		c := s[i]
		plain = c < 0x80 && (c < 'A' || c > 'Z') && c > ' ' || c == ' ' && !space
		space = c == ' '
	}
	if plain && (len(s) == 0 || !space) {
		return s
	}
	return strings.ToLower(strings.Join(strings.Fields(s), " "))
}
