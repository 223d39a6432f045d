package notation

import (
	"math"
	"regexp"
	"strconv"
	"strings"
)

// decibels is a tap as an attenuation: "-3 dB".
var decibels = regexp.MustCompile(`^(?i)[-−]?\s*(\d{1,2})\s*dB$`)

// tapOfWords reads a tap without a figure of watts: a share of the rated power
// in words ("half power", "volle Leistung") or in steps of 3 dB, each of which
// halves the power; or none, "off".
func tapOfWords(text string) (Tap, bool) {
	if m := decibels.FindStringSubmatch(text); m != nil {
		if n, err := strconv.Atoi(m[1]); err == nil && n%3 == 0 && n <= 18 {
			return Tap{Kind: TapFraction, Fraction: math.Pow(2, -float64(n)/3)}, true
		}
		return Tap{}, false
	}
	if strings.ContainsAny(text, "0123456789") {
		return Tap{}, false
	}
	if e, ok := words("share").whole(text); ok {
		share, err := strconv.ParseFloat(e.kind, 64)
		return Tap{Kind: TapFraction, Fraction: share}, err == nil
	}
	if _, ok := words("idle").whole(text); ok {
		return Tap{Kind: TapWatts, Doubts: OffTaken}, true
	}
	return Tap{}, false
}

// mostPassedOver is the most words without meaning that may stand around a tap.
const mostPassedOver = 5

// tapAmongWords reads the only power among words without meaning, "6 W blue
// wire", with the doubt SplitRead. Any other figure but a line voltage, a word
// that denies, and one that makes the power something else than the tap leave
// the text unread.
func tapAmongWords(text string, style Style) (Tap, bool) {
	powers := PowersIn(text, style)
	if len(powers) != 1 || powers[0].W > MaxTapW {
		return Tap{}, false
	}
	tap := Tap{Kind: TapWatts, LowW: powers[0].W, HighW: powers[0].W, Doubts: powers[0].Doubts | SplitRead}
	tokens := lex(text, style)
	passed, figures := 0, 0
	for i := 0; i < len(tokens); i++ {
		t := tokens[i]
		switch {
		case t.kind == figureToken:
			if _, n, ok := unitAt(tokens, i+1, powerUnits.class); ok {
				figures++
				i += n
				continue
			}
			if simpleFraction(tokens, i) {
				continue // its denominator has the unit
			}
			_, n, ok := unitAt(tokens, i+1, voltageUnits.class)
			if !ok || t.figure.bad || !isLineVoltage(t.figure.value) || len(tap.AtV) > 0 {
				return Tap{}, false
			}
			tap.AtV = append(tap.AtV, t.figure.value)
			i += n
		case isNegation(t):
			return Tap{}, false
		case t.kind == wordToken:
			n, other := otherThanTap(tokens, i)
			if other {
				return Tap{}, false
			}
			passed++
			i += n - 1
		case t.is("%") || t.is(">") || t.is("+"):
			return Tap{}, false
		}
	}
	return tap, figures == 1 && passed <= mostPassedOver
}

// otherThanTap reports whether a word at tokens[i] makes a power beside it
// something else than a tap: a rated, former or total power, a status, an
// amplifier or a control. n is the number of tokens of the words, at least 1.
func otherThanTap(tokens []token, i int) (n int, other bool) {
	if e, n, ok := words("tap").at(tokens, i); ok {
		switch e.kind {
		case "rated", "program", "was", "direct":
			return n, true
		}
		return n, false
	}
	if _, n, ok := words("status").at(tokens, i); ok {
		return n, true
	}
	if e, n, ok := words("name").at(tokens, i); ok && e.sure && (e.kind == string(KeyAmplifier) || e.kind == string(KeyControl)) {
		return n, true
	}
	for _, class := range []string{"load", "idle", "share"} {
		if _, n, ok := words(class).at(tokens, i); ok {
			return n, true
		}
	}
	e, n, ok := words("joint").at(tokens, i)
	if !ok {
		return 1, false
	}
	upTo := e.kind == "range" && i+n < len(tokens) && tokens[i+n].kind == figureToken
	return n, e.kind == "or" || upTo
}

// SaysOr reports whether a text has a word for "or": "3 or 6".
func SaysOr(s string) bool {
	for w := range strings.FieldsSeq(fold(s)) {
		if e, ok := words("joint").phrases[w]; ok && e.kind == "or" {
			return true
		}
	}
	return false
}
