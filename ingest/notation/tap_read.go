package notation

import (
	"errors"
	"math"
	"regexp"
	"slices"
	"strings"
)

// Codes of words in a tap cell.
const (
	codeSet      = 's' // "tapped at", "eingestellt auf"
	codeTap      = 't' // "tap", "Abgriff"
	codePosition = 'n' // "no.", "position"
	codeRated    = 'r' // "rated", "max"
	codeProgram  = 'p' // "programme", "peak"
	codeDirect   = 'd' // "lo-Z", "bypass"
	codeHigh     = 'h' // "hi-Z"
	codeLine     = 'l' // "line", "system"
	codeDevices  = 'k' // "speakers", "nos"
	codeRMS      = 'R'
	codeWas      = 'w' // "was", "bisher"
	codeOutOf    = 'q' // "3 W von 6 W"
)

var tapItems = &itemiser{
	dimensions: []dimension{powerUnits, voltageUnits, resistanceUnits},
	classes:    []string{"tap", "joint"},
	codes: map[string]byte{
		"set": codeSet, "tap": codeTap, "position": codePosition, "rated": codeRated, "program": codeProgram,
		"direct": codeDirect, "high": codeHigh, "line": codeLine, "speaker": codeDevices, "rms": codeRMS, "was": codeWas, "at": codeAt, "out of": codeOutOf,
	},
	fractions: true,
	prepare:   mixedPower,
}

// ParseTap reads a tap setting: "5W", "T-5", "7,5 W @100V", "70V/7.5W",
// "5/10W tapped 5", "(2) @ 5 W", "30/15/7.5 → 15", "6W - 10W", "667Ω", "Lo-Z",
// "tap 3", "Abgriff 6 W", "réglé à 10 W". What the result means is in its Kind;
// figures whose meaning is open are in Doubts.
//
// It returns an error wrapping ErrMissing for "field set", "by others" and the
// like, ErrAmbiguous where no reading is better than the next, ErrTooLarge
// above MaxTapW.
func ParseTap(s string, style Style) (Tap, error) {
	return knownTaps.of(s, int(style))
}

func parseTap(s string, style Style) (Tap, error) {
	const what = "tap"
	text, err := prepare(what, s)
	if err != nil {
		return Tap{}, err
	}
	if tap, ok := tapOfWords(text); ok {
		return tap, nil
	}
	if tap, ok := markedTap(s, style); ok {
		return tap, nil
	}
	if tap, ok := retappedTap(text, style); ok {
		return tap, nil
	}
	tap, err := readTap(what, text, style)
	if errors.Is(err, ErrNotUnderstood) {
		if tap, ok := tapAmongWords(text, style); ok {
			return tap, nil
		}
	}
	return tap, err
}

// readTap reads a tap of which every word is known.
func readTap(what, text string, style Style) (Tap, error) {
	items, err := tapItems.items(what, kiloohms(dotted.ReplaceAllString(text, " - ")), style)
	if err != nil {
		return Tap{}, err
	}
	if len(items) > 0 && items[0].code == '+' {
		return Tap{}, fail(what, text, ErrNotUnderstood)
	}
	r := &tapReading{items: items, doubts: allDoubts(items)}
	tap, reason := r.read()
	if reason != nil {
		return Tap{}, fail(what, text, reason)
	}
	tap.Doubts |= r.doubts
	if math.Max(math.Max(tap.LowW, tap.HighW), tap.RatedW) > MaxTapW {
		return Tap{}, fail(what, text, ErrTooLarge)
	}
	return tap, nil
}

// A tapReading is a tap cell on its way from items to a Tap.
type tapReading struct {
	items  []item
	doubts Doubts
	tapped bool      // the word "tap" was there
	atV    []float64 // line voltages taken out
	count  int
}

// Patterns over the shape of a tap cell, after joining words and marks without
// meaning are gone. v is a value: power, bare figure or bare fraction.
var (
	tapPoints   = regexp.MustCompile(`^[PNF][@/(]*V\)?(?:[,;/o\-+]?[PNF][@/(]*V\)?)+$`)
	tapPointsVP = regexp.MustCompile(`^V[:/=]?[PNF](?:[,;/o]V[:/=]?[PNF])+$`)
	tapGroups   = regexp.MustCompile(`^N[x@][PNF](?:[,;a+]N[x@][PNF])+$|^NB[PNF](?:[,;a+]NB[PNF])+$`)
	tapGroupsOr = regexp.MustCompile(`^N[x@][PNF](?:o|[,;]?[oa]?)N[x@][PNF]`)
	tapSingle   = regexp.MustCompile(`^[PNF]$`)
	tapList     = regexp.MustCompile(`^[PNF](?:(?:[/,;\-oaB]|,[oa]|x)[PNF])+$`)
	tapChosen   = regexp.MustCompile(`^[PNF](?:[/,;\-oa][PNF])*(?:[,;/]?s:?|>s?|[,;]?\(s?:?)([PNF])\)?$|^[PNF](?:[/,;\-oa][PNF])+@[PNF]$`)
	tapSetFirst = regexp.MustCompile(`^s:?([PNF])(?:[,;/(]+[PNF](?:[/,;\-oa][PNF])*\)?)?$`)
	tapRated    = regexp.MustCompile(`^[PNF]r$|^r:?[PNF]$`)
	tapRatedSet = regexp.MustCompile(`^(?:([PNF])r|r:?([PNF]))[,;/]?\(?s:?([PNF])\)?$|^([PNF])r\(([PNF])\)$`)
	tapSetRated = regexp.MustCompile(`^s?:?([PNF])[,;/]?\(?(?:([PNF])r|r:?([PNF]))\)?$`)
	tapPlaced   = regexp.MustCompile(`^(P)[(,/]*[tn]+[-#]*(N)\)?$|^[tn]+[-#]*(N)[(,/-]*(P)\)?$`)
	tapWithOhms = regexp.MustCompile(`^(?:([PNF])[@/,;(=]*O\)?|O[/,;(:=]*([PNF])\)?)$`)
)

func (r *tapReading) read() (Tap, error) {
	counted := strings.ContainsAny(r.shape(), "ke")
	if tap, ok, err := r.totalled(); ok || err != nil {
		return tap, err
	}
	r.tidy()
	if tap, ok, err := r.points(); ok || err != nil {
		return tap, err
	}
	if err := r.takeVoltages(); err != nil {
		return Tap{}, err
	}
	if tap, ok, err := r.direct(); ok || err != nil {
		return tap, err
	}
	if tap, ok, err := r.position(); ok || err != nil {
		return tap, err
	}
	r.takeTapWord()
	if tap, ok, err := r.groups(); ok || err != nil {
		return tap, err
	}
	if err := r.takeCount(); err != nil {
		return Tap{}, err
	}
	tap, err := r.value()
	if err != nil {
		return Tap{}, err
	}
	if tap.Kind != TapFraction && !r.hasUnit() {
		if counted && r.count == 0 {
			return Tap{}, ErrNotUnderstood // "4 speakers", "2 ea": a count
		}
		r.doubts |= Bare
	}
	tap.AtV, tap.Count = r.atV, r.count
	if sameTap(&tap) {
		r.doubts |= OnePrimary
	}
	return tap, nil
}

// sameTap turns a list of as many powers as line voltages into one tap, if one
// primary gives them all: "7.5/15 W @ 70/100 V".
func sameTap(t *Tap) bool {
	if t.Kind != TapList || len(t.AtV) < 2 || len(t.AtV) != len(t.OfferedW) {
		return false
	}
	w := slices.Sorted(slices.Values(t.OfferedW))
	ohms := func(i int) float64 {
		v := t.AtV[i]
		if v >= 70 && v <= 71 {
			v = 100 / math.Sqrt2 // 70, 70.7 and 71 V are one class
		}
		return v * v / w[i]
	}
	for i := range w {
		if !(math.Abs(ohms(i)-ohms(0)) <= 0.03*ohms(0)) {
			return false
		}
	}
	for i := 1; i < len(w); i++ {
		t.OtherW = append(t.OtherW, TapAt{w[i], t.AtV[i]})
	}
	t.Kind, t.LowW, t.HighW, t.OfferedW, t.AtV = TapWatts, w[0], w[0], nil, t.AtV[:1]
	return true
}

func (r *tapReading) shape() string { return shapeOf(r.items) }

func (r *tapReading) hasUnit() bool { return strings.ContainsAny(r.shape(), "PuO") }

// tidy removes what says nothing of the tap: "line", "RMS", "each", marks at
// the ends; and the programme power beside a tap.
func (r *tapReading) tidy() {
	r.countedEach()
	r.outOfRated()
	r.dropBeside(codeProgram, true) // 6 W RMS / 10 W programme: the programme power is not the tap
	r.dropBeside(codeWas, false)    // 15 W (was 30 W)
	r.items = withoutEmptyBrackets(without(r.items, "lheR.~:=!&"))
	// 10 W (max.): the brackets say nothing
	for i := 0; i+2 < len(r.items); i++ {
		if r.items[i].code == '(' && r.items[i+1].code == codeRated && r.items[i+2].code == ')' {
			r.items = slices.Concat(r.items[:i], r.items[i+1:i+2], r.items[i+3:])
		}
	}
	for len(r.items) > 0 && strings.IndexByte(",;/-+", r.items[len(r.items)-1].code) >= 0 {
		r.items = r.items[:len(r.items)-1]
	}
	// a 10 W, en 10 W
	if len(r.items) > 1 && (r.items[0].code == codeAnd || r.items[0].code == codeRange && r.items[0].token.text == "a") {
		r.items = r.items[1:]
	}
	for len(r.items) > 1 && (r.items[0].code == '@' || r.items[0].code == '>' || strings.IndexByte(",;/+", r.items[0].code) >= 0) {
		r.items = r.items[1:]
	}
	if shape := r.shape(); len(shape) > 2 && shape[0] == '(' && strings.IndexByte(shape, ')') == len(shape)-1 {
		r.items = r.items[1 : len(shape)-1]
	}
	// 6 W eingestellt: the word behind the only value
	if shape := r.shape(); len(shape) > 1 && shape[len(shape)-1] == codeSet && strings.Count(shape, "s") == strings.Count(shape[:1]+shape[len(shape)-1:], "s") {
		if strings.Count(shape, "P")+strings.Count(shape, "N")+strings.Count(shape, "F") == 1 {
			r.items = r.items[:len(shape)-1]
		}
	}
	// W: 5, W = 5, Ω 500
	if shape := r.shape(); len(shape) == 2 && shape[0] == codeUnit && shape[1] == codeNumber {
		unit := codePower
		if raw := r.items[0].token.text; raw == "Ω" || raw == "ohm" || raw == "ohms" {
			unit = codeOhms
		}
		r.items = r.items[1:]
		r.items[0].code = byte(unit)
	}
	// 70/100 V: both are voltages
	for i := len(r.items) - 3; i >= 0; i-- {
		if r.items[i].code == codeNumber && strings.IndexByte("/-,o", r.items[i+1].code) >= 0 && r.items[i+2].code == codeVolts &&
			isLineVoltage(r.items[i].value) && isLineVoltage(r.items[i+2].value) {
			r.items[i].code = codeVolts
		}
	}
	// 5 W @ 70: the figure behind a power is a line voltage
	for i := 2; i < len(r.items); i++ {
		if r.items[i].code == codeNumber && r.items[i-1].code == codeAt && isLineVoltage(r.items[i].value) &&
			(r.items[i-2].code == codePower || r.items[i-2].code == codeNumber && r.items[i].value >= 70) {
			r.items[i].code = codeVolts
			r.doubts |= VoltsTaken
		}
	}
}

// dropBeside removes a power that a word marks as something else than the tap,
// with the word, which stands behind it or in front of it, if another value is
// left.
func (r *tapReading) dropBeside(word byte, behind bool) {
	shape := r.shape()
	i := strings.IndexByte(shape, word)
	if i < 0 {
		return
	}
	start, end := i, i+1
	switch {
	case behind && i > 0 && isValue(shape[i-1]):
		start--
	case !behind && end < len(shape) && isValue(shape[end]):
		end++
	default:
		return
	}
	if start > 0 && strings.IndexByte("/,;(", shape[start-1]) >= 0 {
		start--
	}
	if end < len(shape) && shape[end] == ')' {
		end++
	}
	if strings.ContainsAny(shape[:start]+shape[end:], "PNF") {
		r.items = slices.Delete(slices.Clone(r.items), start, end)
	}
}

// totalled reads a count, a tap and their product: "4x5W=20W", "20W (4 x 5W)".
func (r *tapReading) totalled() (Tap, bool, error) {
	shape := r.shape()
	var count, tap, total int
	switch shape {
	case "NxP=P", "N@P=P":
		count, tap, total = 0, 2, 4
	case "PxN=P":
		count, tap, total = 2, 0, 4
	case "P(NxP)", "P(N@P)", "P=NxP":
		count, tap, total = 2, 4, 0
	case "(NxP)P":
		count, tap, total = 1, 3, 5
	default:
		return Tap{}, false, nil
	}
	n := r.items[count]
	if !isCount(n) || math.Abs(n.value*r.items[tap].value-r.items[total].value) > 0.005*r.items[total].value {
		return Tap{}, false, ErrAmbiguous
	}
	w := r.items[tap].value
	return Tap{Kind: TapWatts, LowW: w, HighW: w, Count: int(n.value)}, true, nil
}

// points reads one tap named at several line voltages.
func (r *tapReading) points() (Tap, bool, error) {
	shape := r.shape()
	if !tapPoints.MatchString(shape) && !tapPointsVP.MatchString(shape) {
		return Tap{}, false, nil
	}
	var watts, volts []float64
	for _, it := range r.items {
		switch it.code {
		case codePower, codeNumber, codeFraction:
			watts = append(watts, it.value)
		case codeVolts:
			volts = append(volts, it.value)
		}
	}
	if !r.hasUnit() {
		r.doubts |= Bare
	}
	if len(watts) != len(volts) {
		return Tap{}, false, ErrNotUnderstood
	}
	tap := Tap{Kind: TapWatts, LowW: watts[0], HighW: watts[0], AtV: volts[:1]}
	for i := 1; i < len(watts); i++ {
		if slices.Contains(volts[:i], volts[i]) {
			return Tap{}, false, ErrAmbiguous // two taps at one voltage
		}
		tap.OtherW = append(tap.OtherW, TapAt{watts[i], volts[i]})
	}
	r.doubts |= OnePrimary
	return tap, true, nil
}

// takeVoltages moves line voltages out of the items, with the marks that tie
// them to the power.
func (r *tapReading) takeVoltages() error {
	items := r.items
	for {
		i := slices.IndexFunc(items, func(it item) bool { return it.code == codeVolts })
		if i < 0 {
			break
		}
		end := i + 1
		r.atV = append(r.atV, items[i].value)
		for end+1 < len(items) && strings.IndexByte("/-,;oaB", items[end].code) >= 0 && items[end+1].code == codeVolts {
			r.atV = append(r.atV, items[end+1].value)
			end += 2
		}
		start := i
		switch {
		case start > 0 && items[start-1].code == codeAt:
			start--
			if start > 0 && items[start-1].code == '(' && end < len(items) && items[end].code == ')' {
				start--
				end++
			}
		case start > 0 && items[start-1].code == '(' && end < len(items) && items[end].code == ')':
			start--
			end++
		case start > 0 && strings.IndexByte("/,;-", items[start-1].code) >= 0:
			start--
		case start == 0 && end < len(items) && strings.IndexByte("/,;-@", items[end].code) >= 0:
			end++
		}
		if start > 0 && end < len(items) && strings.IndexByte("/,;", items[end].code) >= 0 && isValue(items[start-1].code) &&
			end+1 < len(items) && isValue(items[end+1].code) {
			return ErrAmbiguous // 5 W 70 V / 10 W: which of them is at 70 V?
		}
		items = slices.Delete(slices.Clone(items), start, end)
	}
	if len(r.atV) > 1 {
		slices.Sort(r.atV)
		r.atV = slices.Compact(r.atV)
	}
	if len(items) == 0 {
		return ErrNotUnderstood // a line voltage, not a tap
	}
	r.items = items
	return nil
}

func isValue(code byte) bool {
	return code == codePower || code == codeNumber || code == codeFraction
}

// direct reads loudspeakers without a transformer and taps named by their
// impedance.
func (r *tapReading) direct() (Tap, bool, error) {
	shape := r.shape()
	hasDirect := strings.IndexByte(shape, codeDirect) >= 0
	ohms := strings.Count(shape, "O")
	if !hasDirect && ohms == 0 {
		return Tap{}, false, nil
	}
	if ohms > 1 {
		return Tap{}, false, ErrAmbiguous
	}
	if strings.HasPrefix(shape, "N-O") || strings.HasPrefix(shape, "N/O") || strings.HasPrefix(shape, "NBO") {
		if r.items[0].value < r.items[2].value && r.items[2].value <= maxDirectOhms {
			r.items = slices.Delete(slices.Clone(r.items), 1, 3) // 4-8 Ω
			r.items[0].code = codeOhms
			shape = r.shape()
		}
	}
	items := without(r.items, "tds@()/,;-=")
	tap := Tap{Kind: TapDirect, AtV: r.atV}
	var watts []item
	for _, it := range items {
		switch {
		case it.code == codeOhms:
			tap.Ohms = it.value
		case isValue(it.code):
			watts = append(watts, it)
		case it.code == codeRated:
		default:
			return Tap{}, false, ErrNotUnderstood
		}
	}
	if len(watts) > 1 {
		return Tap{}, false, ErrAmbiguous
	}
	switch {
	case hasDirect || tap.Ohms <= maxDirectOhms:
		if ohms == 1 && tap.Ohms <= 0 {
			return Tap{}, false, ErrZero
		}
		if ohms == 1 && tap.Ohms > maxDirectOhms {
			return Tap{}, false, ErrAmbiguous
		}
		if len(watts) == 1 {
			if watts[0].code != codePower && hasDirect {
				// "direct 8": the figure is no power
				return Tap{}, false, ErrAmbiguous
			}
			tap.RatedW = watts[0].value
		}
		return tap, true, nil
	case tap.Ohms < minPrimaryOhms:
		return Tap{}, false, ErrAmbiguous
	case len(watts) == 1:
		if !tapWithOhms.MatchString(shape) {
			return Tap{}, false, ErrNotUnderstood
		}
		tap.Kind, tap.LowW, tap.HighW = TapWatts, watts[0].value, watts[0].value
		return tap, true, nil
	}
	tap.Kind = TapImpedance
	return tap, true, nil
}

// position reads "position 3", "#2", "tap no. 3", "tap 2 (5 W)".
func (r *tapReading) position() (Tap, bool, error) {
	if m := tapPlaced.FindStringSubmatchIndex(r.shape()); m != nil {
		watts, place := m[2], m[4]
		if watts < 0 {
			place, watts = m[6], m[8]
		}
		if n := r.items[place]; isCount(n) && n.value <= 2*mostPositions {
			w := r.items[watts].value
			return Tap{Kind: TapWatts, LowW: w, HighW: w, Position: int(n.value), AtV: r.atV}, true, nil
		}
	}
	shape := strings.TrimLeft(r.shape(), "st")
	items := r.items[len(r.items)-len(shape):]
	if shape == "#N" || shape == "nN" || shape == "n-N" || shape == "n#N" {
		n := items[len(items)-1]
		if !isCount(n) || n.value > 2*mostPositions {
			return Tap{}, false, ErrNotUnderstood
		}
		return Tap{Kind: TapPosition, Position: int(n.value), AtV: r.atV}, true, nil
	}
	return Tap{}, false, nil
}

// takeTapWord removes the word "tap" and the hyphen of "T-5".
func (r *tapReading) takeTapWord() {
	var out []item
	for i := 0; i < len(r.items); i++ {
		it := r.items[i]
		if it.code == codeTap {
			r.tapped = true
			if i+2 < len(r.items) && r.items[i+1].code == '-' && isValue(r.items[i+2].code) {
				i++
			}
			continue
		}
		out = append(out, it)
	}
	r.items = out
}
