package notation

import (
	"regexp"
	"slices"
	"strings"
)

// A LineKind says what kind of line a voltage cell means.
type LineKind uint8

// The kinds of line.
const (
	LineNone         LineKind = iota
	ConstantVoltage           // V holds the line voltage or several
	HighImpedance             // constant voltage, value not written
	LowImpedanceLine          // direct connection, Ohms if written
)

// A LineVoltage is what a cell says of the line voltage.
type LineVoltage struct {
	Kind   LineKind
	V      []float64 // volts as written (70 stays 70), ascending, each above 0; several when the text names several
	Ohms   float64   // for LowImpedanceLine, the lowest written, else 0
	Doubts Doubts
}

// MaxVolts is the largest line voltage that is believed.
const MaxVolts = 1000

// String returns the line voltage so that ParseLineVoltage reads it again with
// Point.
func (l LineVoltage) String() string {
	switch l.Kind {
	case HighImpedance:
		return "Hi-Z"
	case LowImpedanceLine:
		if l.Ohms > 0 {
			return "Lo-Z " + plainFigure(l.Ohms) + " Ω"
		}
		return "Lo-Z"
	case ConstantVoltage:
		parts := make([]string, len(l.V))
		for i, v := range l.V {
			parts[i] = plainFigure(v) + " V"
		}
		return strings.Join(parts, "/")
	}
	return ""
}

var voltageItems = &itemiser{
	dimensions: []dimension{voltageUnits, resistanceUnits},
	classes:    []string{"everywhere", "tap", "joint"},
	codes:      map[string]byte{"all": codeLine, "direct": codeDirect, "high": codeHigh, "line": codeLine, "tap": codeLine, "rms": codeRMS, "rated": codeLine, "set": codeLine},
}

// ParseLineVoltage reads a line voltage: "70V", "70.7 V", "100V line",
// "100 V-Linie", "ligne 100 V", "100 V for all", "25/70V" (two values), "Hi-Z" (value open),
// "Lo-Z", "8Ω". A bare figure is taken as volts with the doubt Bare. It returns
// an error wrapping ErrAmbiguous where a high and a low impedance stand side by
// side.
func ParseLineVoltage(s string, style Style) (LineVoltage, error) {
	return knownVoltages.of(s, int(style))
}

func parseLineVoltage(s string, style Style) (LineVoltage, error) {
	const what = "line voltage"
	text, err := prepare(what, s)
	if err != nil {
		return LineVoltage{}, err
	}
	items, err := voltageItems.items(what, text, style)
	if err != nil {
		return LineVoltage{}, err
	}
	out := LineVoltage{Doubts: allDoubts(items)}
	var bare []float64
	var high, low bool
	for i, it := range items {
		switch it.code {
		case codeVolts:
			out.V = append(out.V, it.value)
		case codeNumber:
			bare = append(bare, it.value)
		case codeOhms:
			low = true
			if it.value > maxDirectOhms || it.value <= 0 {
				return LineVoltage{}, fail(what, text, ErrNotUnderstood)
			}
			if out.Ohms == 0 || it.value < out.Ohms {
				out.Ohms = it.value
			}
		case codeDirect:
			low = true
		case codeHigh:
			high = true
		case codeLine, codeRMS, codeOr, codeAnd, codeRange, codeApprox, codeUnit,
			'/', ',', ';', '-', '(', ')', '@', ':', '=', '.', '+', '"', '\'':
			if it.code == '-' && i == 0 {
				return LineVoltage{}, fail(what, text, ErrNotUnderstood)
			}
		default:
			return LineVoltage{}, fail(what, text, ErrNotUnderstood)
		}
	}
	switch {
	case low && (high || len(out.V) > 0):
		return LineVoltage{}, fail(what, text, ErrAmbiguous)
	case low:
		for _, b := range bare { // 4/8 Ω
			if b <= 0 || b > maxDirectOhms || out.Ohms == 0 {
				return LineVoltage{}, fail(what, text, ErrNotUnderstood)
			}
			out.Ohms = min(out.Ohms, b)
		}
		out.Kind = LowImpedanceLine
		return out, nil
	case len(out.V) == 0 && len(bare) == 0 && high:
		out.Kind = HighImpedance
		return out, nil
	}
	for _, b := range bare {
		if !isLineVoltage(b) {
			return LineVoltage{}, fail(what, text, ErrNotUnderstood)
		}
	}
	if len(out.V) == 0 && !strings.ContainsRune(shapeOf(items), codeUnit) {
		out.Doubts |= Bare
	}
	out.V = append(out.V, bare...)
	slices.Sort(out.V)
	out.V = slices.Compact(out.V)
	switch {
	case len(out.V) == 0 || out.V[0] <= 0:
		return LineVoltage{}, fail(what, text, ErrNotUnderstood)
	case out.V[len(out.V)-1] > MaxVolts:
		return LineVoltage{}, fail(what, text, ErrTooLarge)
	}
	out.Kind = ConstantVoltage
	return out, nil
}

// LineVoltageIn finds the one line voltage that a text of many words names:
// "1. ALL SPEAKERS 70.7V", "Speaker schedule (70V)". It returns false for two
// different ones, and where a word denies, makes an exception or speaks of
// what was. general reports whether a word in the text says that it is about
// lines, loudspeakers or everything.
func LineVoltageIn(s string) (v float64, general, ok bool) {
	found := knownLineVoltagesIn.Of(s, 0)
	return found.v, found.general, found.ok
}

func lineVoltageIn(s string) (v float64, general, ok bool) {
	text := Clean(s)
	if len(text) > 4*maxText {
		return 0, false, false
	}
	var tokens []token
	for _, t := range lex(text, Auto) {
		if t.kind == figureToken && strings.Contains(t.raw, " ") {
			tokens = append(tokens, figuresApart(t, Auto)...) // no line has thousands of volts
		} else {
			tokens = append(tokens, t)
		}
	}
	for i := 0; i < len(tokens); i++ {
		t := tokens[i]
		if t.kind == figureToken {
			_, n, unit := unitAt(tokens, i+1, voltageUnits.class)
			if !unit || t.figure.bad || !isLineVoltage(t.figure.value) {
				continue
			}
			if v != 0 && v != t.figure.value {
				return 0, false, false
			}
			v = t.figure.value
			i += n
			continue
		}
		if t.kind != wordToken {
			continue
		}
		if isNegation(t) && !countsBefore(tokens, i) {
			return 0, false, false
		}
		if _, _, except := words("exception").at(tokens, i); except {
			return 0, false, false
		}
		if e, _, known := words("tap").at(tokens, i); known {
			if e.kind == "was" {
				return 0, false, false
			}
			general = general || (e.kind == "line" || e.kind == "tap") && len([]rune(t.text)) > 3
		}
		if _, _, known := words("everywhere").at(tokens, i); known && len([]rune(t.text)) > 2 {
			general = true
		}
		if _, _, known := words("device").at(tokens, i); known {
			general = true
		}
	}
	return v, general, v != 0
}

// countsBefore reports whether the word at tokens[i] is the "no." behind a count: "2 no. amplifiers".
func countsBefore(tokens []token, i int) bool {
	return i > 0 && tokens[i].text == "no" && tokens[i-1].kind == figureToken && tokens[i-1].figure.whole
}

// An Impedance is one impedance.
type Impedance struct {
	Ohms   float64 // above 0
	Doubts Doubts
}

// MaxOhms is the largest impedance that is believed.
const MaxOhms = 1e7

// String returns the impedance so that ParseOhms reads it again with Point.
func (z Impedance) String() string { return plainFigure(z.Ohms) + " Ω" }

var ohmItems = &itemiser{
	dimensions: []dimension{resistanceUnits, frequencyUnits},
	classes:    []string{"joint", "tap", "load"},
	codes:      map[string]byte{"line": codeLine, "rms": codeLine, "rated": codeLine, "noise": codeLine},
}

// thousandsOfOhms is a resistance with k for its decimal mark, "2k0", "4k",
// "1k5 Ω". Source: IEC 60062.
var thousandsOfOhms = regexp.MustCompile(`(?i)^(\d{1,4})k(\d{0,3})(?: ?(?:Ω|ohms?))?$`)

// kiloohms writes such a resistance out in ohms; other texts stay as they are.
func kiloohms(text string) string {
	m := thousandsOfOhms.FindStringSubmatch(text)
	if m == nil {
		return text
	}
	return strings.TrimLeft(m[1]+(m[2] + "000")[:3], "0") + " Ω"
}

// ParseOhms reads one impedance or resistance: "83 Ω", "1.2 kΩ", "500 ohm",
// "83 Ω @ 1 kHz", "2k0". A bare figure is taken as ohms with the doubt Bare.
func ParseOhms(s string, style Style) (Impedance, error) {
	const what = "impedance"
	text, err := prepare(what, s)
	if err != nil {
		return Impedance{}, err
	}
	items, err := ohmItems.items(what, kiloohms(text), style)
	if err != nil {
		return Impedance{}, err
	}
	out := Impedance{Doubts: allDoubts(items)}
	rest := without(items, "l~@()=:f,")
	if len(rest) == 2 && rest[0].code == codeUnit {
		rest = rest[1:]
		rest[0].code = codeOhms
	}
	switch shape := shapeOf(rest); {
	case shape == "N":
		out.Doubts |= Bare
	case shape == "O":
	case strings.Count(shape, "O")+strings.Count(shape, "N") > 1:
		return Impedance{}, fail(what, text, ErrAmbiguous)
	default:
		return Impedance{}, fail(what, text, ErrNotUnderstood)
	}
	out.Ohms = rest[0].value
	switch {
	case out.Ohms <= 0:
		return Impedance{}, fail(what, text, ErrZero)
	case out.Ohms > MaxOhms:
		return Impedance{}, fail(what, text, ErrTooLarge)
	}
	return out, nil
}
