package notation

import (
	"regexp"
	"strings"
)

// sizeIn finds what may be the size of a conductor among other words: cores and
// area ("2 x 1,5 mm²", "3G1.5"), an area with its unit, a gauge ("16/2", "#14",
// "18 AWG").
var sizeIn = regexp.MustCompile(`(?i)(?:\d+\s*[x×]\s*)?\d+\s*[x×gc]\s*\d+(?:[.,]\d+)?(?:\s*(?:mm²|mm2|mm\^2|sq\.?\s?mm|qmm|²|awg))?|\d+(?:[.,]\d+)?\s*(?:mm²|mm2|sq\.?\s?mm|qmm|carrés?\b|quadrat\b|²|awg)|#\s*\d{1,2}|\b\d{2}/\d\b`)

// areaIn finds an area that is written in mm, or without a unit and with the
// decimals that no count has: "2.5mm", "1,5".
var areaIn = regexp.MustCompile(`(?i)\b(?:\d+(?:[.,]\d+)?\s*mm\b|0[.,]75\b|[1246][.,][05]\b|(?:1[0-8]|2[0-4])-[2-6]\b)`)

// areaBesideLength reads an area of which only the length beside it tells what
// it is: "2.5mm 85m", "60 m / 1,5".
func areaBesideLength(text string, style Style) (c Conductor, rest string, ok bool) {
	found := areaIn.FindAllStringIndex(text, -1)
	for _, m := range found {
		rest = strings.Trim(strings.Join(strings.Fields(text[:m[0]]+" "+text[m[1]:]), " "), " -/,;()")
		l, err := ParseLength(rest, style, UnitUnknown)
		if err != nil || l.Unit == UnitUnknown {
			continue
		}
		c, err := ParseConductor(text[m[0]:m[1]], style, HintMM2)
		if err == nil && c.AWG != nil {
			return c, rest, true // "14-2 120 ft"
		}
		if err == nil && c.AreaMM2 > 0 && c.Doubts&DiameterTaken == 0 {
			if strings.HasSuffix(strings.ToLower(text[m[0]:m[1]]), "m") {
				c.Doubts |= MMForMM2
			} else {
				c.Doubts |= AreaTaken
			}
			return c, rest, true
		}
	}
	return Conductor{}, "", false
}

// powerBehind finds a unit that makes something else of figures: "2 x 120 W".
var powerBehind = regexp.MustCompile(`(?i)^\s*(?:k?w|v|ohm|Ω|m|mm|cm|ft)(?:[^\pL²2]|$)`)

// ConductorIn finds the one size of a conductor that a text names among other
// words, "Two-core cable 2.5 mm², amplifier to output 2", and returns it with
// the text around it. It returns false where there is none or several. Beside
// a length a figure in mm, or with decimals alone, may be an area.
func ConductorIn(s string, style Style) (c Conductor, rest string, ok bool) {
	found := knownConductorsIn.Of(s, int(style))
	return found.size, found.rest, found.ok
}

// conductorFound is what ConductorIn returns.
type conductorFound struct {
	size Conductor
	rest string
	ok   bool
}

func conductorIn(s string, style Style) (c Conductor, rest string, ok bool) {
	text := Clean(s)
	if len(text) > maxText {
		return Conductor{}, "", false
	}
	found := sizeIn.FindAllStringIndex(text, -1)
	if len(found) == 0 {
		return areaBesideLength(text, style)
	}
	if len(found) != 1 {
		return Conductor{}, "", false
	}
	m := found[0]
	c, err := ParseConductor(text[m[0]:m[1]], style, HintNone)
	if err != nil || !c.HasSize() || powerBehind.MatchString(text[m[1]:]) {
		return Conductor{}, "", false
	}
	if metal, _, err := ParseMaterial(text); err == nil && c.Material == MaterialUnknown {
		c.Material = metal
	}
	return c, strings.Join(strings.Fields(text[:m[0]]+" "+text[m[1]:]), " "), true
}
