package notation

import (
	"errors"
	"math"
	"regexp"
	"strconv"
	"strings"
)

// A LengthUnit is the unit of a length column.
type LengthUnit uint8

// The units of length. Others (km, cm, mm, yards, inches) are converted to
// these.
const (
	UnitUnknown LengthUnit = iota
	Metre
	Foot
)

// MetresPerFoot is the international foot.
const MetresPerFoot = 0.3048

// String returns the unit's sign, "" for UnitUnknown.
func (u LengthUnit) String() string {
	switch u {
	case Metre:
		return "m"
	case Foot:
		return "ft"
	}
	return ""
}

// A Length is what a cell says of the length of a cable, or of the depth of a
// box. Its figures are finite and not negative, at most MaxLength.
type Length struct {
	Low, High float64    // in Unit, of one run; equal unless a range was written
	Unit      LengthUnit // UnitUnknown where neither the cell nor the header gave one
	Times     int        // runs of that length, 1 if not written
	Loop      bool       // written as there and back
	OneWay    bool       // written as one way
	Slack     float64    // in Unit, written beside the length and not part of it; else 0
	Doubts    Doubts     // Bare where the cell itself gave no unit
}

// MaxLength is the largest length that is believed, in metres or feet.
const MaxLength = 200_000

// Metres returns the ends of one run in metres, and false where the unit is
// not known.
func (l Length) Metres() (low, high float64, ok bool) {
	switch l.Unit {
	case Metre:
		return l.Low, l.High, true
	case Foot:
		return l.Low * MetresPerFoot, l.High * MetresPerFoot, true
	}
	return 0, 0, false
}

// String returns the length so that ParseLength reads it again with Point.
func (l Length) String() string {
	unit := ""
	if l.Unit != UnitUnknown {
		unit = " " + l.Unit.String()
	}
	var b strings.Builder
	if l.Times > 1 {
		b.WriteString(strconv.Itoa(l.Times) + " x ")
	}
	b.WriteString(plainFigure(l.Low) + unit)
	if l.High != l.Low {
		b.WriteString(" to " + plainFigure(l.High) + unit)
	}
	if l.Slack > 0 {
		b.WriteString(" + " + plainFigure(l.Slack) + unit + " slack")
	}
	if l.Loop {
		b.WriteString(" loop")
	}
	if l.OneWay {
		b.WriteString(" one way")
	}
	return b.String()
}

// Codes of words in a length cell.
const (
	codeOneWay = 'w'
	codeLoop   = 'L'
	codeSlack  = 'k'
	codeMost   = '<'
)

var lengthItems = &itemiser{
	dimensions: []dimension{metreUnits, footUnits},
	classes:    []string{"length", "joint"},
	codes:      map[string]byte{"one way": codeOneWay, "loop": codeLoop, "slack": codeSlack, "most": codeMost, "noise": codeLine},
	prepare:    lengthTokens,
}

// lengthTokens writes feet and inch marks as units, joins mixed fractions of
// an inch, and drops the 1 of "12 m1".
func lengthTokens(tokens []token) []token {
	isUnit := func(i int) bool {
		if i >= len(tokens) {
			return false
		}
		if tokens[i].is("'") || tokens[i].is(`"`) {
			return true
		}
		_, _, ok := unitAt(tokens, i, footUnits.class)
		return ok
	}
	tokens = mixedFractions(tokens, isUnit)
	var out []token
	for i, t := range tokens {
		afterFigure := i > 0 && tokens[i-1].kind == figureToken
		switch {
		case t.is("'") && afterFigure:
			t.kind, t.text = wordToken, "ft"
		case t.is(`"`) && afterFigure:
			t.kind, t.text = wordToken, "in"
		case t.kind == figureToken && t.raw == "1" && !t.gap && i > 0 && tokens[i-1].is("m"):
			continue
		}
		out = append(out, t)
	}
	return out
}

// Shapes of a length cell. U is a figure with a unit; bare figures beside one
// take its unit.
var (
	lengthOne     = regexp.MustCompile(`^[UN]$`)
	lengthTimes   = regexp.MustCompile(`^Nx([UN])$|^\(N\)x?([UN])$|^\(Nx\)([UN])$`)
	lengthTimesBy = regexp.MustCompile(`^(U)(?:xN|\(xN\)|\(Nx\))$`)
	lengthRange   = regexp.MustCompile(`^[UN][-B][UN]$`)
	lengthEnds    = regexp.MustCompile(`^[UN]/[UN]$`)
	lengthSpread  = regexp.MustCompile(`^([UN])(?:\+/-|~)([UN])$`)
	lengthSum     = regexp.MustCompile(`^[UN](?:[+a][UN])+$`)
	lengthSlack   = regexp.MustCompile(`^([UN])[+a,(]+k?([UN])k?\)?$`)
	lengthPercent = regexp.MustCompile(`^([UN])[+a(,]+k?N%k?\)?$`)
	lengthBoth    = regexp.MustCompile(`^(U)[/(=]+(U)\)?$`)
)

// ParseLength reads a length: "120'", "85'-6\"", "120 ft", "36 m", "0,12 km",
// "2 x 40m", "150 LF", "30 ml" (linear metres), "40-50 m", "120 m one way",
// "120 m + 5 m slack", "2-9/16 in". header is the unit in the column's header;
// it serves a bare figure, which has the doubt Bare all the same.
//
// A feet figure and a metre figure for one length ("120 ft (36.6 m)") are
// accepted where they agree within 2 %, and the first is taken; else the error
// wraps ErrAmbiguous. The only length among words without meaning has the doubt
// SplitRead; one of a roll or a drum is none.
func ParseLength(s string, style Style, header LengthUnit) (Length, error) {
	return knownLengths.of(s, int(style)|int(header)<<8)
}

func parseLength(s string, style Style, header LengthUnit) (Length, error) {
	const what = "length"
	text, err := prepare(what, s)
	if err != nil {
		return Length{}, err
	}
	text = strings.TrimSpace(strings.TrimPrefix(text, "+")) // added to what is before
	l, err := readLength(what, text, style, header)
	if errors.Is(err, ErrNotUnderstood) {
		if l, ok := lengthAmongWords(text, style); ok {
			return l, nil
		}
	}
	return l, err
}

// readLength reads a length of which every word is known.
func readLength(what, text string, style Style, header LengthUnit) (Length, error) {
	items, err := lengthItems.items(what, dotted.ReplaceAllString(text, " - "), style)
	if err != nil {
		return Length{}, err
	}
	l := Length{Times: 1, Unit: header, Doubts: allDoubts(items)}
	spread := strings.Contains(text, "±")
	if strings.Contains(text, "+/-") {
		l.Doubts |= Approximate
	}
	for i, it := range items {
		switch it.code {
		case codeOneWay:
			l.OneWay = true
		case codeLoop:
			l.Loop = true
		case codeMost:
			l.Doubts |= Approximate
		case codeApprox:
			if !spread || i == 0 || items[i-1].code == codeAt {
				items[i].code = codeLine
			}
		}
	}
	if l.Loop && l.OneWay {
		return Length{}, fail(what, text, ErrAmbiguous)
	}
	each := strings.IndexByte(shapeOf(items), codeEach) >= 0
	items = without(items, "wLl<:=.e")
	items = withoutEmptyBrackets(items)
	items = feetAndInches(items)
	for len(items) > 0 && strings.IndexByte(",;-/+", items[len(items)-1].code) >= 0 {
		items = items[:len(items)-1]
	}
	if n := len(items); n >= 3 && items[0].code == '(' && items[n-1].code == ')' && strings.Count(shapeOf(items), "(") == 1 && n == 3 {
		items = items[1 : n-1]
	}
	if err := l.read(items); err != nil {
		return Length{}, fail(what, text, err)
	}
	if each && l.Doubts.Has(Bare) {
		return Length{}, fail(what, text, ErrNotUnderstood) // "2 ea" is a count
	}
	if math.Max(l.High, l.Slack) > MaxLength || l.Times > MaxCount {
		return Length{}, fail(what, text, ErrTooLarge)
	}
	return l, nil
}

// inchFactor is the factor that marks a figure in inches.
const inchFactor = 0.083333333333333333

// feetAndInches joins 85' and 6" into 85.5 feet.
func feetAndInches(items []item) []item {
	var out []item
	for i := 0; i < len(items); i++ {
		it := items[i]
		if it.code == codeFeet && it.factor == 1 && it.figure.whole {
			j := i + 1
			if j < len(items) && items[j].code == '-' {
				j++
			}
			if j < len(items) && items[j].code == codeFeet && items[j].factor == inchFactor && items[j].value < 1 {
				it.value += items[j].value
				i = j
			} else if j == i+1 && j < len(items) && items[j].code == codeNumber && items[j].value < 12 && !items[j].token.gap &&
				it.token.kind == figureToken {
				it.value += items[j].value * inchFactor // 85'6
				i = j
			}
		}
		out = append(out, it)
	}
	return out
}

// read takes the figures of a length from its items.
func (l *Length) read(items []item) error {
	codes := []byte(shapeOf(items))
	for i, c := range codes {
		if c == codeMetres || c == codeFeet {
			codes[i] = 'U'
		}
	}
	shape := string(codes)
	var unit *item
	var figures []item
	for i := range items {
		switch items[i].code {
		case codeMetres, codeFeet:
			if unit == nil {
				unit = &items[i]
			} else if items[i].code != unit.code && !lengthBoth.MatchString(shape) {
				return ErrAmbiguous
			}
			figures = append(figures, items[i])
		case codeNumber:
			figures = append(figures, items[i])
		}
	}
	if len(figures) == 0 {
		return ErrNotUnderstood
	}
	if unit == nil {
		l.Doubts |= Bare
	} else {
		l.Unit = Metre
		if unit.code == codeFeet {
			l.Unit = Foot
		}
	}
	// in returns a figure in l.Unit: bare ones take the unit beside them.
	in := func(it item) float64 {
		if it.code == codeNumber && unit != nil {
			return it.value * unit.factor
		}
		return it.value
	}
	first, last := in(figures[0]), in(figures[len(figures)-1])
	switch {
	case lengthOne.MatchString(shape):
		l.Low, l.High = first, first
	case lengthTimes.MatchString(shape) && isCount(figures[0]):
		l.Times = int(figures[0].value)
		l.Low, l.High = last, last
	case lengthTimesBy.MatchString(shape) && isCount(figures[1]):
		l.Times = int(figures[1].value)
		l.Low, l.High = first, first
	case strings.HasPrefix(shape, "Nx") && isCount(figures[0]) && lengthRange.MatchString(shape[2:]):
		l.Times = int(figures[0].value)
		l.Low, l.High = in(figures[1]), last
	case strings.HasPrefix(shape, "Nx") && isCount(figures[0]) && lengthSlack.MatchString(shape[2:]) && strings.Contains(shape, "k"):
		l.Times = int(figures[0].value)
		l.Low, l.High, l.Slack = in(figures[1]), in(figures[1]), last
	case lengthRange.MatchString(shape):
		if first >= last {
			return ErrNotUnderstood
		}
		l.Low, l.High = first, last
	case strings.Contains(shape, "k") && lengthRange.MatchString(strings.TrimSuffix(shape[:min(3, len(shape))], "+")) && len(figures) == 3:
		l.Low, l.High, l.Slack = first, in(figures[1]), last
	case strings.Contains(shape, "k") && lengthSlack.MatchString(shape):
		l.Low, l.High, l.Slack = first, first, last
	case lengthPercent.MatchString(shape):
		l.Low, l.High, l.Slack = first, first, first*figures[1].value/100
	case lengthSpread.MatchString(shape):
		if last > first {
			return ErrNotUnderstood
		}
		l.Low, l.High = first-last, first+last
		l.Doubts |= Approximate
	case lengthBoth.MatchString(shape) && figures[0].code != figures[1].code:
		a, b := figures[0].value, figures[1].value
		if figures[0].code == codeFeet {
			a *= MetresPerFoot
		} else {
			b *= MetresPerFoot
		}
		if math.Abs(a-b) > 0.02*math.Max(a, b) {
			return ErrAmbiguous
		}
		l.Low, l.High = first, first
		l.Unit = Metre
		if figures[0].code == codeFeet {
			l.Unit = Foot
		}
	case lengthEnds.MatchString(shape):
		l.Low, l.High = min(first, last), max(first, last)
		l.Doubts |= FirstOrLast
	case lengthSum.MatchString(shape):
		sum := 0.0
		for _, f := range figures {
			sum += in(f)
		}
		l.Low, l.High = sum, sum
		l.Doubts |= SumOrSpare
	default:
		return ErrNotUnderstood
	}
	if l.Low > l.High {
		return ErrNotUnderstood
	}
	return nil
}
