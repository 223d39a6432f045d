package numfmt

import "strconv"

const lastDay = 2958465 // 31 December 9999, the last day a spreadsheet shows

// Civil returns the calendar day of a serial number in the 1900 system, in
// which 60 is 29 February 1900, a day that never was, and 0 is 0 January 1900.
// The serial must lie in 0 ... 2,958,465.
func Civil(serial int) (year, month, day int) {
	switch {
	case serial == 60:
		return 1900, 2, 29
	case serial < 60:
		if serial > 31 {
			return 1900, 2, serial - 31
		}
		return 1900, 1, serial
	}
	// Days since 1 March of year 0, in 400-year eras whose years begin in March.
	z := serial + 693899
	era := z / 146097
	doe := z % 146097
	yoe := (doe - doe/1460 + doe/36524 - doe/146096) / 365
	doy := doe - (365*yoe + yoe/4 - yoe/100)
	mp := (5*doy + 2) / 153
	day = doy - (153*mp+2)/5 + 1
	month = mp + 3
	year = yoe + era*400
	if month > 12 {
		month -= 12
		year++
	}
	return year, month, day
}

// Serial returns the serial number of a calendar day in the 1900 system, from
// 1 March 1900 on.
func Serial(year, month, day int) int {
	y, m := year, month
	if m <= 2 {
		y--
		m += 12
	}
	return 365*y + y/4 - y/100 + y/400 + (153*(m-3)+2)/5 + day - 1 - 693899
}

var units = [...]int64{1, 10, 100, 1000}

// appendDate shows v as a date or time. What no calendar holds is shown as
// the number it is.
func (s *section) appendDate(dst []byte, v float64) []byte {
	if v < 0 || v >= lastDay+1 {
		return appendGeneral(dst, v)
	}
	unit := units[s.subsec] // parts of a second that are shown
	total := int64(v*86400*float64(unit) + 0.5)
	ticks, seconds := total%unit, total/unit
	days := int(seconds / 86400)
	if days > lastDay {
		return appendGeneral(dst, v)
	}
	year, month, day := Civil(days)
	hour, minute, second := int(seconds/3600%24), int(seconds/60%60), int(seconds%60)
	for _, it := range s.items {
		switch it.kind {
		case itemLiteral:
			dst = append(dst, it.lit...)
		case itemGeneral, itemText:
			dst = appendGeneral(dst, v)
		case itemTicks:
			t := ticks
			for range s.subsec - it.n {
				t /= 10
			}
			dst = append(dst, '.')
			dst = padded(dst, t, it.n)
		case itemAMPM:
			dst = appendHalf(dst, it.lit, hour)
		case itemSpan:
			n := seconds
			switch it.char {
			case 'h':
				n /= 3600
			case 'm':
				n /= 60
			}
			dst = padded(dst, n, it.n)
		case itemDate:
			switch it.char {
			case 'y':
				if it.n <= 2 {
					dst = padded(dst, int64(year%100), 2)
				} else {
					dst = padded(dst, int64(year), 4)
				}
			case 'm':
				dst = s.appendMonth(dst, it.n, month)
			case 'd':
				if it.n <= 2 {
					dst = padded(dst, int64(day), it.n)
				} else {
					name := names(s.language).days[(days+6)%7]
					dst = append(dst, name.shown(it.n == 3)...)
				}
			case 'h':
				h := hour
				if s.twelve {
					h = (hour+11)%12 + 1
				}
				dst = padded(dst, int64(h), it.n)
			case 'M':
				dst = padded(dst, int64(minute), it.n)
			case 's':
				dst = padded(dst, int64(second), it.n)
			}
		}
	}
	return dst
}

func (s *section) appendMonth(dst []byte, n, month int) []byte {
	if n <= 2 {
		return padded(dst, int64(month), n)
	}
	name := names(s.language).months[max(month-1, 0)]
	if n == 5 { // the initial
		for _, r := range name.long {
			return append(dst, string(r)...)
		}
	}
	return append(dst, name.shown(n == 3)...)
}

func appendHalf(dst []byte, lit string, hour int) []byte {
	t := "AM"
	if hour >= 12 {
		t = "PM"
	}
	if len(lit) == 3 { // A/P
		t = t[:1]
	}
	return append(dst, t...)
}

func padded(dst []byte, n int64, width int) []byte {
	t := strconv.FormatInt(n, 10)
	for range min(width, 20) - len(t) {
		dst = append(dst, '0')
	}
	return append(dst, t...)
}
