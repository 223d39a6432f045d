package notation

import "strings"

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
	list := c.list(false)
	for _, name := range list {
		c.addWay(name)
	}
	return true
}

// codedOutput reads an output with its amplifier in front, "A1.2 = 60 W".
func (c *clauseReading) codedOutput() bool {
	if name, way, ok := c.dottedOutput(); ok {
		c.ownedWay(name, way)
		c.at += 2
		return true
	}
	name, n := nameCode(c.tokens, c.at)
	next := c.at + n
	if n == 0 || next+2 >= len(c.tokens) || !hasDigit(name) || isOtherKind(c.tokens[c.at].text) || !(c.tokens[next].is("/") || c.tokens[next].is(".")) || c.tokens[next].gap {
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

// dottedOutput reads A1.2, whose figures are one token.
func (c *clauseReading) dottedOutput() (name, way string, ok bool) {
	if c.at+1 >= len(c.tokens) {
		return "", "", false
	}
	letters, figures := c.tokens[c.at], c.tokens[c.at+1]
	amp, way, dotted := strings.Cut(figures.raw, ".")
	if letters.kind != wordToken || letters.raw != strings.ToUpper(letters.raw) || len([]rune(letters.raw)) > 4 || isOtherKind(letters.text) ||
		figures.kind != figureToken || figures.gap || !dotted || len(way) > 2 {
		return "", "", false
	}
	if _, n := c.power(c.at + 1); n > 0 {
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
