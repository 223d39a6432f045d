package notation

import (
	"math"
	"slices"
	"strconv"
	"strings"
)

// A RatedOutput is one rating of an amplifier, a channel or a control.
type RatedOutput struct {
	Channels     int       // outputs of W each; 0 if not written
	W            float64   // watts, of one channel where Channels is set; 0 only where zero was written
	AtV          []float64 // line voltages it is stated at, ascending; none if not written
	Ohms         float64   // load it is stated at, 0 if not written
	LowImpedance bool      // a rating into a few ohms, which says nothing of a line
	PerChannel   bool      // written as "per channel"
	Total        bool      // written as a total
	Max          bool      // written as a maximum: "max", "up to", "not exceeding"
	Peak         bool      // peak or programme power, not continuous
	Bridged      bool
	Method       string // how it was measured, if written, in upper case: "1000 HZ", "EIAJ FTC"
}

// A Rating is what a cell says of the power that a thing may give or carry.
type Rating struct {
	Outputs  []RatedOutput // in the order written, at least one: alternatives, or ratings at several voltages
	Together bool          // the outputs exist side by side ("2 x 250 W + 2 x 125 W"), not as alternatives
	Doubts   Doubts
}

// String returns the rating so that ParseRating reads it again with Point.
func (r Rating) String() string {
	joint := "; "
	if r.Together {
		joint = " + "
	}
	parts := make([]string, len(r.Outputs))
	for i, o := range r.Outputs {
		parts[i] = o.String()
	}
	return strings.Join(parts, joint)
}

// String returns one rating so that ParseRating reads it again with Point.
func (o RatedOutput) String() string {
	var b strings.Builder
	if o.Channels > 0 {
		b.WriteString(strconv.Itoa(o.Channels) + " x ")
	}
	b.WriteString(plainFigure(o.W) + " W")
	for _, flag := range []struct {
		set  bool
		text string
	}{{o.PerChannel, " per channel"}, {o.Total, " total"}, {o.Max, " max"}, {o.Peak, " peak"}, {o.Bridged, " bridged"}} {
		if flag.set {
			b.WriteString(flag.text)
		}
	}
	if o.LowImpedance && (o.Ohms == 0 || o.Ohms > maxDirectOhms) {
		b.WriteString(" lo-Z")
	}
	for i, v := range o.AtV {
		b.WriteString([]string{" @ ", "/"}[min(i, 1)] + plainFigure(v) + " V")
	}
	if o.Ohms > 0 {
		b.WriteString(" @ " + plainFigure(o.Ohms) + " Ω")
	}
	if o.Method != "" {
		b.WriteString(" (" + strings.ToLower(o.Method) + ")")
	}
	return b.String()
}

// Codes of words in a rating cell.
const (
	codePerChannel = 'c'
	codeChannel    = 'n'
	codeTotal      = 'T'
	codeMax        = 'm'
	codePeak       = 'p'
	codeBridged    = 'b'
	codeMethod     = 'E'
	codeLow        = 'd'
)

var ratingItems = &itemiser{
	dimensions: []dimension{powerUnits, voltageUnits, resistanceUnits, frequencyUnits},
	classes:    []string{"rating", "joint"},
	codes: map[string]byte{
		"per channel": codePerChannel, "channel": codeChannel, "total": codeTotal, "max": codeMax, "peak": codePeak,
		"bridged": codeBridged, "noise": codeLine, "method": codeMethod, "low": codeLow, "high": codeHigh, "device": codeDevices,
	},
}

// mostChannels is the most channels of one frame that are believed.
const mostChannels = 256

// ParseRating reads the rating of an amplifier, a channel or a control: "4 x
// 250W @70V", "200 W/ch", "0.24 kW", "4x125 W, 2x250 W" (alternatives),
// "1200W peak", "240/120/60", "500W @ 4Ω / 2000W bridge", "100 W 25/70V",
// "10W (max.)", "total power not exceeding 40 W", "2x300 (1 kHz)".
//
// A figure without a unit has the doubt Bare, which is for the whole cell. The
// error wraps ErrTooLarge above MaxWatts.
func ParseRating(s string, style Style) (Rating, error) {
	return knownRatings.of(s, int(style))
}

func parseRating(s string, style Style) (Rating, error) {
	const what = "rating"
	text, err := prepare(what, s)
	if err != nil {
		return Rating{}, err
	}
	items, err := ratingItems.items(what, text, style)
	if err != nil {
		return Rating{}, err
	}
	shape := shapeOf(items)
	if shape != "" && shape[0] == '+' {
		return Rating{}, fail(what, text, ErrNotUnderstood)
	}
	r := &ratingReading{doubts: allDoubts(items), named: strings.ContainsAny(shape, "ke")}
	r.items = r.tidy(items)
	if o, ok := r.worked(); ok {
		return Rating{Outputs: []RatedOutput{o}, Doubts: r.doubts}, nil
	}
	r.items = without(r.items, "=")
	out, reason := r.read()
	if reason != nil {
		return Rating{}, fail(what, text, reason)
	}
	out.Doubts |= r.doubts
	return out, nil
}

// A ratingReading is a rating cell on its way to a Rating.
type ratingReading struct {
	items  []item
	at     int
	doubts Doubts
	named  bool // a word for a device, or "each", stands beside the figures
}

// tidy drops words without meaning here and settles what bare figures are.
func (r *ratingReading) tidy(items []item) []item {
	items = slices.Clone(items)
	for i := range items {
		// 25/70 V, 70/100 V: the bare figure is a line voltage too
		for j := i; j >= 2 && items[j].code == codeVolts && items[j-2].code == codeNumber &&
			strings.IndexByte("/-,o", items[j-1].code) >= 0 && isLineVoltage(items[j-2].value); j -= 2 {
			if j >= 3 && items[j-3].code == codeTimes {
				break // 4 x 70/100 V has lost its watts
			}
			items[j-2].code = codeVolts
		}
		if i < 2 || items[i].code != codeNumber || items[i-1].code != codeAt {
			continue
		}
		switch v := items[i].value; {
		case i+1 < len(items) && strings.IndexByte("x", items[i+1].code) >= 0:
		case isLineVoltage(v) && items[i-2].code != codeNumber || isLineVoltage(v) && v >= 70:
			items[i].code = codeVolts
			r.doubts |= VoltsTaken
		case v == 2 || v == 4 || v == 8 || v == 16:
			items[i].code = codeOhms
			r.doubts |= OhmsTaken
		}
	}
	return withoutEmptyBrackets(without(items, "lhke~.:<!"))
}

// worked reads a total with its working beside it, "500W (2x250W)" and "2 x 250
// W = 500 W", where the working is right.
func (r *ratingReading) worked() (RatedOutput, bool) {
	var total, n, w int
	switch shapeOf(without(r.items, "T")) {
	case "P(NxP)", "P=NxP":
		total, n, w = 0, 2, 4
	case "NxP(P)", "NxP=P", "NxP/P":
		n, w, total = 0, 2, 4
	default:
		return RatedOutput{}, false
	}
	items := without(r.items, "T")
	count, each := items[n], items[w].value
	ok := isCount(count) && count.value <= mostChannels && each <= MaxWatts &&
		math.Abs(count.value*each-items[total].value) <= 0.005*items[total].value
	return RatedOutput{Channels: int(count.value), W: each}, ok
}

func (r *ratingReading) peek(ahead int) byte {
	if r.at+ahead < len(r.items) && r.at+ahead >= 0 {
		return r.items[r.at+ahead].code
	}
	return 0
}

// read reads outputs until the items end.
func (r *ratingReading) read() (Rating, error) {
	var out Rating
	bare := true
	for {
		o, hasUnit, err := r.output()
		if err != nil {
			return Rating{}, err
		}
		bare = bare && !hasUnit
		if n := len(out.Outputs); n > 0 && hasUnit && r.firstIsNumber(out.Outputs[0], o) {
			return Rating{}, ErrNotUnderstood
		}
		out.Outputs = append(out.Outputs, o)
		if r.at == len(r.items) {
			break
		}
		switch c := r.peek(0); c {
		case ',', ';', '/', 'o', 'a', '\n':
			r.at++
			if c == ',' && (r.peek(0) == 'o' || r.peek(0) == 'a') {
				r.at++
			}
			if out.Together {
				return Rating{}, ErrAmbiguous
			}
		case '+':
			r.at++
			if len(out.Outputs) > 1 && !out.Together {
				return Rating{}, ErrAmbiguous
			}
			out.Together = true
		default:
			return Rating{}, ErrNotUnderstood
		}
	}
	if bare {
		r.doubts |= Bare
		if r.named {
			return Rating{}, ErrNotUnderstood // "AMP 1" is a name, "2 ea" a count
		}
		for _, o := range out.Outputs {
			switch {
			case o.Channels > 0 && o.W < 5:
				return Rating{}, ErrAmbiguous // 16 x 2: steps and gangs of a control, or channels and watts
			case len(out.Outputs) > 1 && o.W < 3:
				return Rating{}, ErrNotUnderstood // 1/2, 16/2
			}
		}
	}
	return out, nil
}

// firstIsNumber reports whether the first of several ratings is the number of what is rated rather than another rating:
// "Amplifier 1, 120 W".
func (r *ratingReading) firstIsNumber(first, next RatedOutput) bool {
	numbered := r.items[0].code == codeNumber && len(r.items) > 1 && r.items[1].code == ','
	return numbered && next.Channels == 0 && next.W >= 4*first.W && (first.W < smallestRating || r.named && first.W <= mostNumbered)
}

// What amplifiers and controls are rated at is at least smallestRating in lists of several ratings, in W, and their numbers in
// schedules are at most mostNumbered: common practice, no source.
const (
	smallestRating = 5
	mostNumbered   = 12
)

// output reads one rating: an optional count of channels, a power, and what is
// said of them on either side.
func (r *ratingReading) output() (o RatedOutput, hasUnit bool, err error) {
	havePower := false
	depth := 0
	var method []string
	for r.at < len(r.items) {
		it := r.items[r.at]
		switch it.code {
		case '(':
			depth++
		case ')':
			depth--
			if depth < 0 {
				return o, false, ErrNotUnderstood
			}
		case codePower, codeNumber, codeFraction:
			if n := r.channelsHere(havePower); n > 0 {
				if o.Channels > 0 && o.Channels != n {
					return o, false, ErrAmbiguous
				}
				o.Channels = n
				continue
			}
			if havePower || it.code == codeFraction || it.value > MaxWatts {
				if it.value > MaxWatts {
					return o, false, ErrTooLarge
				}
				return o, false, ErrNotUnderstood
			}
			o.W, havePower, hasUnit = it.value, true, it.code == codePower
		case codeVolts:
			if it.value <= 0 || it.value > MaxVolts {
				return o, false, ErrNotUnderstood
			}
			o.AtV = append(o.AtV, it.value)
		case codeOhms:
			if o.Ohms > 0 || it.value <= 0 || it.value > MaxOhms {
				return o, false, ErrAmbiguous
			}
			o.Ohms = it.value
			o.LowImpedance = o.LowImpedance || it.value <= maxDirectOhms
		case codeFrequency:
			method = append(method, plainFigure(it.value)+" HZ")
		case codeMethod:
			method = append(method, strings.ToUpper(it.token.text))
		case codePerChannel:
			o.PerChannel = true
		case codeChannel:
			if !(r.peek(-1) == '/' && havePower) && !o.PerChannel { // 200 W/ch
				return o, false, ErrNotUnderstood
			}
			o.PerChannel = true
		case codeTotal:
			o.Total = true
		case codeMax:
			o.Max = true
		case codePeak:
			o.Peak = true
		case codeBridged:
			o.Bridged = true
		case codeLow:
			o.LowImpedance = true
		case codeAt:
		case codeTimes: // 250 W x 4
			if !havePower || o.Channels > 0 || r.peek(1) != codeNumber || !isCount(r.items[r.at+1]) || r.items[r.at+1].value > mostChannels {
				return o, false, ErrNotUnderstood
			}
			r.at++
			o.Channels = int(r.items[r.at].value)
		case codeUnit:
			if havePower || r.peek(1) != codeNumber || strings.EqualFold(it.token.text, "v") { // W: 250, but not V1
				return o, false, ErrNotUnderstood
			}
			r.items[r.at+1].code = codePower
		case ',', ';', '/', 'o', 'a', '+', '-':
			if !r.goesOn(it.code, havePower, depth) {
				if !havePower || depth != 0 || it.code == '-' {
					return o, false, ErrNotUnderstood
				}
				return r.finished(o, method, hasUnit)
			}
		default:
			return o, false, ErrNotUnderstood
		}
		r.at++
	}
	if !havePower || depth != 0 {
		return o, false, ErrNotUnderstood
	}
	return r.finished(o, method, hasUnit)
}

func (r *ratingReading) finished(o RatedOutput, method []string, hasUnit bool) (RatedOutput, bool, error) {
	o.Method = strings.Join(method, " ")
	slices.Sort(o.AtV)
	o.AtV = slices.Compact(o.AtV)
	return o, hasUnit, nil
}

// channelsHere reads a count of channels at the present item: "4 x", "4 ch",
// "(4)", "4-channel x", or "x 4" behind a power. It returns 0 where there is
// none, and moves past it otherwise.
func (r *ratingReading) channelsHere(havePower bool) int {
	it := r.items[r.at]
	if !isCount(it) || it.value > mostChannels {
		return 0
	}
	if havePower {
		return 0
	}
	isPower := func(c byte) bool { return c == codePower || c == codeNumber }
	n := 1
	if r.peek(n) == '-' && r.peek(n+1) == codeChannel {
		n++
	}
	switch {
	case r.peek(n) == codeTimes && isPower(r.peek(n+1)):
		n++
	case r.peek(n) == codeChannel && (r.peek(n+1) == codeTimes || r.peek(n+1) == codeAt) && isPower(r.peek(n+2)):
		n += 2
	case r.peek(n) == codeChannel && (r.peek(n+1) == ',' || r.peek(n+1) == '/') && isPower(r.peek(n+2)):
		n += 2
	case r.peek(n) == codeChannel && isPower(r.peek(n+1)):
		n++
	case r.peek(-1) == '(' && r.peek(n) == ')' && isPower(r.peek(n+1)) && r.at == 1:
		// the opening bracket was counted: leave the closing one
	case r.peek(-1) == '(' && r.peek(n) == codeTimes && r.peek(n+1) == ')':
		n++
	default:
		return 0
	}
	r.at += n
	return int(it.value)
}

// goesOn reports whether a separator continues the present rating: before a
// voltage, a load, or words about it.
func (r *ratingReading) goesOn(c byte, havePower bool, depth int) bool {
	next := r.peek(1)
	if !havePower || depth > 0 && c != '+' {
		return next != 0 && (c != '/' || next != codePower) || depth > 0
	}
	switch next {
	case codeVolts, codeOhms:
		// "100 W / 70 V: 200 W" would be the next rating's voltage
		return r.peek(2) != codePower && r.peek(2) != codeNumber
	case codePerChannel, codeChannel, codeMethod, codeFrequency:
		return true
	case codeTotal, codeMax, codePeak, codeBridged, codeLow, codeAt:
		return r.peek(2) != codePower && r.peek(2) != codeNumber && !(next == codeAt && r.peek(2) == 0)
	}
	return false
}
