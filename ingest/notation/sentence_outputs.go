package notation

import (
	"slices"
	"strconv"
	"strings"
)

// letteredOutputs is the number of tokens of outputs of one letter before their
// word, "A circuits"; 0 if there are none. "60 W A CIRCUIT" has none.
func (c *clauseReading) letteredOutputs() int {
	t := c.tokens[c.at]
	if t.kind != wordToken || len([]rune(t.raw)) != 1 || t.raw != strings.ToUpper(t.raw) || c.at+1 >= len(c.tokens) || !c.tokens[c.at+1].gap {
		return 0
	}
	if e, n, ok := words("said").at(c.tokens, c.at); ok && n > 1 && e.kind == "each output" {
		return 0
	}
	if n := c.outputWord(c.at + 1); n > 0 {
		return 1 + n
	}
	return 0
}

// lettered reads such outputs.
func (c *clauseReading) lettered() bool {
	n := c.letteredOutputs()
	if n > 0 {
		name := c.tokens[c.at].raw
		c.at += n
		c.addWays([]string{name})
	}
	return n > 0
}

// namedOutputs reads a word for an output with names behind it: "ch 1 and 2".
func (c *clauseReading) namedOutputs() bool {
	n := c.outputWord(c.at)
	if n == 0 {
		return false
	}
	c.at += n
	if c.at+1 < len(c.tokens) && c.tokens[c.at].is("=") {
		if kind, sure, m, ok := nameAt(c.tokens, c.at+1); ok && sure && kind == KeyZone { // ch = zone
			c.last().PerZone = true
			c.at += 1 + m
			return true
		}
	}
	if c.ratedInTurn() {
		return true
	}
	if c.numberedWatts() {
		return true
	}
	list := c.list(false)
	c.plural = len(list) == 0
	c.addWays(list)
	return true
}

// numberedWatts reads outputs by their numbers with their powers, whose unit stands
// behind the last: "outputs: 1 = 120, 2 = 60, 3 = 120 watts".
func (c *clauseReading) numberedWatts() bool {
	a, i := c.last(), c.at
	if len(a.Ways) > 0 || a.W > 0 {
		return false
	}
	if i < len(c.tokens) && (c.tokens[i].is(":") || c.tokens[i].is("=")) {
		i++
	}
	var ways []NamedWatts
	for i+2 < len(c.tokens) {
		number, sign, watts := c.tokens[i], c.tokens[i+1], c.tokens[i+2]
		if number.kind != figureToken || !number.figure.whole || number.figure.value > mostChannels || !sign.is("=") && !sign.is(":") || watts.kind != figureToken || watts.figure.bad || watts.figure.value <= 0 || watts.figure.value > MaxWatts {
			return false
		}
		ways = append(ways, NamedWatts{Name: number.raw, W: watts.figure.value})
		if _, n := c.power(i + 2); n > 0 { // the unit of all
			if len(ways) < 2 {
				return false
			}
			a.Ways, c.pending, c.at = ways, 0, i+2+n
			return true
		}
		i += 3
		if i >= len(c.tokens) || !c.tokens[i].is(",") {
			return false
		}
		i++
	}
	return false
}

// ratedInTurn reads outputs behind their word, each with its power, two or more of them:
// "Circuits: A 250 W, B 125 W".
func (c *clauseReading) ratedInTurn() bool {
	a, i := c.last(), c.at
	if len(a.Ways) > 0 || a.W > 0 {
		return false
	}
	if i < len(c.tokens) && c.tokens[i].is(":") {
		i++
	}
	var ways []NamedWatts
	for i+1 < len(c.tokens) {
		name, n := nameCode(c.tokens, i)
		if isSingleLetter(c.tokens[i]) && c.tokens[i].raw == strings.ToUpper(c.tokens[i].raw) && c.tokens[i+1].gap {
			name, n = c.tokens[i].raw, 1
		}
		if n == 0 {
			break
		}
		next := i + n
		for next < len(c.tokens) && (c.tokens[next].is("=") || c.tokens[next].is(":") || c.tokens[next].is("-") || c.tokens[next].is("(")) {
			next++
		}
		w, k := c.power(next)
		if k == 0 {
			break
		}
		ways = append(ways, NamedWatts{Name: name, W: w})
		for i = next + k; i < len(c.tokens) && (c.tokens[i].is(")") || c.tokens[i].is(",") || c.tokens[i].is("/") || isAnd(c.tokens[i].text)); i++ {
		}
	}
	if len(ways) < 2 || len(ways) > mostChannels {
		return false
	}
	a.Ways, c.at, c.pending = ways, i, 0
	return true
}

// waysBehind reads the lines behind a rated amplifier: "F1 240 W: L1 + L2", "A 2 x 240 W
// (L1, L2)".
func (c *clauseReading) waysBehind() bool {
	a, t := c.last(), c.tokens[c.at]
	if a.Name == "" || a.W == 0 || len(a.Ways) > 0 || !t.is(":") && !t.is("=") && !t.is("(") && !(t.is("-") && t.gap) || c.at+1 >= len(c.tokens) {
		return false
	}
	switch KeyKind(words("name").phrases[c.tokens[c.at+1].text].kind) {
	case KeyLine, KeyChannel:
	default:
		return false
	}
	names, n := c.names(c.at + 1)
	if next := c.at + 1 + n; n == 0 || !HasDigit(names[0]) || next < len(c.tokens) && (c.tokens[next].is(":") || c.opensRating(next) || c.ratedAt(next)) {
		return false
	}
	c.at += 1 + n
	c.addWays(names)
	return true
}

// addWays adds outputs to the amplifier being read, or to the next where
// outputs stand before theirs: "A circuits on amplifier 1, B circuits on
// amplifier 2".
func (c *clauseReading) addWays(list []string) {
	if len(list) > 0 && c.fed && c.last().Name != "" {
		c.group = append(c.group, saidOf{})
		c.pending = 0
	}
	for _, name := range list {
		c.addWay(name)
	}
	if c.bridge && len(list) == 2 {
		c.bridgeLast()
	}
	c.bridge = false
}

// codedOutput reads an output with its amplifier in front, "A1.2 = 60 W".
func (c *clauseReading) codedOutput() bool {
	if name, way, ok := c.dottedOutput(c.at); ok {
		c.ownedWay(name, way)
		c.at += 2
		return true
	}
	name, n := nameCode(c.tokens, c.at)
	next := c.at + n
	if n == 0 || next+2 >= len(c.tokens) || !HasDigit(name) || isOtherKind(c.tokens[c.at].text) || !(c.tokens[next].is("/") || c.tokens[next].is(".")) || c.tokens[next].gap {
		return false
	}
	figure := c.tokens[next+1]
	if figure.kind != figureToken || figure.gap || !figure.figure.whole || figure.figure.value > mostChannels {
		return false
	}
	if _, unit := c.power(next + 1); unit > 0 {
		return false
	}
	c.ownedWay(name, figure.raw)
	c.at = next + 2
	return true
}

// dottedOutput reads A1.2 at tokens[i], whose figures are one token.
func (c *clauseReading) dottedOutput(i int) (name, way string, ok bool) {
	if i+1 >= len(c.tokens) {
		return "", "", false
	}
	letters, figures := c.tokens[i], c.tokens[i+1]
	amp, way, dotted := strings.Cut(figures.raw, ".")
	if letters.kind != wordToken || letters.raw != strings.ToUpper(letters.raw) || len([]rune(letters.raw)) > 4 || isOtherKind(letters.text) ||
		figures.kind != figureToken || figures.gap || !dotted || len(way) > 2 {
		return "", "", false
	}
	if _, n := c.power(i + 1); n > 0 {
		return "", "", false
	}
	return letters.raw + amp, way, true
}

// ownedWay adds an output of a named amplifier.
func (c *clauseReading) ownedWay(name, way string) {
	if a := c.last(); a.Name != "" && a.Name != name || a.Name == "" && (a.W > 0 || a.Outputs > 0) {
		c.group = append(c.group, saidOf{})
		c.pending = 0
	}
	c.last().Name = name
	c.addWay(way)
}

// listedWatts reads as many powers as outputs were counted, "3 outputs: 60 W / 60 W
// / 30 W", "two outputs, 120 and 60 W": those of outputs 1, 2, 3 in this order.
func (c *clauseReading) listedWatts() bool {
	a := c.last()
	if a.Outputs < 2 || a.W > 0 || len(a.Ways) > 0 || c.was {
		return false
	}
	var list []float64
	i, unit := c.at, false
	for len(list) < a.Outputs {
		if len(list) > 0 {
			from := i
			for i < len(c.tokens) && (c.tokens[i].is("/") || c.tokens[i].is(",") || c.tokens[i].is("+") || c.tokens[i].is("&") || isAnd(c.tokens[i].text)) {
				i++
			}
			if i == from {
				return false
			}
		}
		w, n := c.power(i)
		if unit = n > 0; !unit && i < len(c.tokens) && c.tokens[i].kind == figureToken && !c.tokens[i].figure.bad && c.bareFigure(i) {
			w, n = c.tokens[i].figure.value, 1
		}
		if n == 0 || w <= 0 || w > MaxWatts {
			return false
		}
		list, i = append(list, w), i+n
	}
	if !unit || c.deviceAt(i) {
		return false
	}
	for k, w := range list {
		a.Ways = append(a.Ways, NamedWatts{Name: strconv.Itoa(k + 1), W: w})
		if w != list[0] {
			a.Doubts |= InOrder
		}
	}
	c.at, c.pending = i, 0
	return true
}

// wattsBeforeOutputs reads powers that stand before the outputs they are of, two
// or more of them: "250 W ch 1, 125 W ch 2".
func (c *clauseReading) wattsBeforeOutputs() bool {
	start, a := c.at, c.last()
	if len(a.Ways) > 0 || a.W > 0 {
		return false
	}
	var ways []NamedWatts
	pairs := 0
	for {
		w, n := c.power(c.at)
		if n == 0 {
			break
		}
		c.at += n
		if t := c.at; t < len(c.tokens) && (c.tokens[t].is("(") || c.tokens[t].kind == wordToken && (isAt(c.tokens[t].text) || slices.Contains(placeWords, c.tokens[t].text))) {
			c.at++
		}
		m := c.outputWord(c.at)
		c.at += m
		names := []string(nil)
		if m > 0 {
			names = c.list(false)
		}
		if len(names) == 0 {
			pairs = 0
			break
		}
		pairs++
		for _, name := range names {
			ways = append(ways, NamedWatts{Name: name, W: w})
		}
		for c.at < len(c.tokens) && (c.tokens[c.at].is(")") || c.tokens[c.at].is(",") || c.tokens[c.at].is("/") || isAnd(c.tokens[c.at].text)) {
			c.at++
		}
	}
	if pairs < 2 || len(ways) > mostChannels {
		c.at = start
		return false
	}
	a.Ways, c.pending = ways, 0
	return true
}
