package notation

import (
	"slices"
	"strings"
)

// A ModelRating is a power that may be hidden in a model name.
type ModelRating struct {
	W    float64 // watts, above 0
	Text string  // the part of the name that it was taken from
	Unit bool    // a W stood behind the figure
}

// modelPowers are the powers that models are named after. Source: ladders of
// controls and amplifiers in a survey of public schedules and catalogues.
var modelPowers = []float64{
	5, 6, 7.5, 10, 12, 15, 20, 24, 25, 30, 35, 36, 40, 45, 50, 60, 65, 75, 80, 90, 100, 120, 125, 150, 160, 180, 200, 240, 250,
	300, 350, 360, 400, 450, 480, 500, 600, 650, 700, 750, 800, 900, 1000, 1200, 1500, 2000,
}

// ModelRatings finds the powers that a model name may contain: 35 in "WK-35",
// 100 in "VC100W". They are guesses: those with a W behind them first, then
// those that models are usually named after, in the order of the text. Line
// voltages, impedances and figures in longer numbers do not count.
func ModelRatings(model string) []ModelRating {
	return knownModelRatings.Of(model, 0)
}

func parseModelRatings(model string) []ModelRating {
	runes := []rune(Clean(model))
	if len(runes) > maxText {
		return nil
	}
	tokens := lex(string(runes), Point)
	var out []ModelRating
	for i, t := range tokens {
		if t.kind != figureToken || t.figure.bad || isPadded(t.raw) || t.figure.value <= 0 || t.figure.value > MaxWatts {
			continue
		}
		if strings.ContainsAny(t.raw, " ',") {
			continue
		}
		m := ModelRating{W: t.figure.value, Text: t.raw}
		if factor, n, ok := unitAt(tokens, i+1, powerUnits.class); ok {
			last := tokens[i+n]
			m.W *= factor
			m.Text = string(runes[t.at : last.at+len([]rune(last.raw))])
			m.Unit = true
			out = append(out, m)
			continue
		}
		if namesOther(tokens, i) || !isOneOf(m.W, modelPowers) {
			continue
		}
		out = append(out, m)
	}
	slices.SortStableFunc(out, func(a, b ModelRating) int {
		switch {
		case a.Unit && !b.Unit:
			return -1
		case b.Unit && !a.Unit:
			return 1
		}
		return 0
	})
	return out
}

// namesOther reports whether the figure at tokens[i] is a voltage, an
// impedance or one of several figures joined by slashes before such a unit.
func namesOther(tokens []token, i int) bool {
	for _, class := range []string{voltageUnits.class, resistanceUnits.class, frequencyUnits.class, metreUnits.class} {
		if _, _, ok := unitAt(tokens, i+1, class); ok && (class != resistanceUnits.class || !tokens[i+1].is("r")) {
			return true
		}
	}
	if i+2 < len(tokens) && tokens[i+1].is("/") && tokens[i+2].kind == figureToken {
		return namesOther(tokens, i+2)
	}
	return i == 0 || tokens[i-1].kind == figureToken
}
