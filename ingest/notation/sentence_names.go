package notation

import (
	"slices"
	"strconv"
	"strings"
)

// The names of amplifiers in sentences: in front of a clause, behind a word for
// an amplifier, or inside.

// leadingNames reads the names in front of the clause with a sign behind them,
// "G1:", "Y =", "A1, A2:", "A1-A3:", or with "2 x 60 W", a word for an
// amplifier or one for an output.
func (c *clauseReading) leadingNames() {
	names, n := c.names(0)
	if n == 0 || n >= len(c.tokens) || isOtherKind(c.tokens[0].text) || n == 1 && (isAmpCode(c.tokens[0].text) || c.letteredOutputs() > 0) || !c.opensRating(n) && !(c.listing && c.ratedAt(n)) {
		return
	}
	for i, name := range names {
		if i > 0 {
			c.group = append(c.group, saidOf{})
		}
		c.last().Name = name
	}
	c.at = n
}

// opensRating reports whether what stands at tokens[i] makes the name before
// it that of an amplifier: a sign, "4 x", a verb, or a word for an amplifier
// or an output.
func (c *clauseReading) opensRating(i int) bool {
	t := c.tokens[i]
	if t.is(":") || t.is("=") {
		return true
	}
	times := func(i int) bool {
		return i+1 < len(c.tokens) && c.tokens[i].kind == figureToken && (c.tokens[i+1].is("x") || c.tokens[i+1].is("*"))
	}
	if times(i) && t.gap || (t.is("(") || t.is("-") && t.gap) && times(i+1) {
		return true
	}
	if kind, sure, _, ok := nameAt(c.tokens, i); ok && sure && t.gap && (kind == KeyAmplifier || kind == KeyChannel) {
		return i > 1 || len([]rune(c.tokens[0].raw)) <= 3 // not PANEL AMP-P
	}
	if t.kind == wordToken && slices.Contains(verbs, t.text) && i+1 < len(c.tokens) {
		for k := i + 1; k < min(i+6, len(c.tokens)); k++ {
			if e, _, ok := words("name").at(c.tokens, k); ok && e.kind == string(KeyAmplifier) || times(k) {
				return true
			}
		}
	}
	return false
}

// verbs stand between the name of an amplifier and its rating.
var verbs = []string{"is", "ist", "est", "es", "has", "hat", "ha", "heeft", "tiene", "gives", "are", "sind", "sont", "son", "sono", "zijn"}

// names reads one name or several: "A1", "A1, A2", "E1 und E2", "A1-A3".
func (c *clauseReading) names(i int) (list []string, n int) {
	for {
		name, taken := c.code(i + n)
		if taken == 0 {
			break
		}
		if many := spreadName(name); len(many) > 0 {
			list = append(list, many...)
		} else {
			list = append(list, name)
		}
		n += taken
		next := i + n
		if next+1 >= len(c.tokens) || !(c.tokens[next].is(",") || c.tokens[next].is("+") || c.tokens[next].is("&") || isAnd(c.tokens[next].text)) {
			break
		}
		if _, more := nameCode(c.tokens, next+1); more == 0 {
			break
		}
		n++
	}
	if len(list) > 1 && !sameLetters(list) && slices.ContainsFunc(list, func(name string) bool { return len([]rune(name)) > 1 }) {
		name, taken := nameCode(c.tokens, i)
		return []string{name}, taken
	}
	return list, n
}

// code reads a code at tokens[i], with a figure apart from its letters where a
// mark follows it, and no unit: "VS 1: 4 outputs".
func (c *clauseReading) code(i int) (name string, n int) {
	name, n = nameCode(c.tokens, i)
	figure := i + n
	if n == 0 || figure+1 >= len(c.tokens) || HasDigit(name) || len(name) > 4 || c.tokens[figure].kind != figureToken || !c.tokens[figure].figure.whole || !c.tokens[figure].gap {
		return name, n
	}
	if mark := c.tokens[figure+1]; mark.is(":") || mark.is("=") || mark.is("-") && mark.gap {
		return name + " " + c.tokens[figure].raw, n + 1
	}
	return name, n
}

// nameRange reads the names from one to another, "L1 to L3", and returns them
// and the number of tokens of the range.
func (c *clauseReading) nameRange(i int, from string, taken int) (list []string, n int) {
	next := i + taken
	if next+1 >= len(c.tokens) || c.tokens[next].kind != wordToken || !isRangeWord(c.tokens[next].text) {
		return nil, 0
	}
	to, k := nameCode(c.tokens, next+1)
	if k == 0 {
		return nil, 0
	}
	return spreadName(from + "-" + to), taken + 1 + k
}

// isAmpCode reports whether letters alone say that an amplifier follows: "PA amp".
func isAmpCode(letters string) bool {
	return KeyKind(words("name").phrases[letters].kind) == KeyAmplifier
}

// spreadName returns the names that one of the form A1-A3 stands for, if any.
func spreadName(name string) []string {
	from, to, ok := strings.Cut(name, "-")
	if !ok || from == "" || to == "" {
		return nil
	}
	tags, err := ParseTags(from + " to " + to)
	if err != nil || !tags.Ranged || len(tags.List) > 16 || strings.TrimRight(from, "0123456789") != strings.TrimRight(to, "0123456789") {
		return nil
	}
	return tags.List
}

// sameLetters reports whether names differ in their figures alone.
func sameLetters(list []string) bool {
	letters := func(s string) string { return strings.TrimRight(s, "0123456789") }
	return !slices.ContainsFunc(list, func(s string) bool { return letters(s) != letters(list[0]) })
}

// isOtherKind reports whether the letters of a code are those of loudspeakers,
// controls, zones or cables: "LS-1", "VC2", "Z1".
func isOtherKind(letters string) bool {
	switch KeyKind(words("name").phrases[letters].kind) {
	case KeyLoudspeaker, KeyControl, KeyZone, KeyCable:
		return true
	}
	return false
}

// laterName reads the name of a further amplifier inside a clause: "A1 = 2 x
// 120 W, A2 = 240 W".
func (c *clauseReading) laterName() bool {
	if c.at == 0 {
		return false
	}
	before := c.tokens[c.at-1]
	if before.kind == markToken && before.is("(") {
		return false
	}
	if names, n := c.names(c.at); len(names) > 1 && c.at+n < len(c.tokens) && HasDigit(names[0]) && !isOtherKind(c.tokens[c.at].text) && c.opensRating(c.at+n) { // ", G3 and G4 are 60 W amplifiers"
		for _, name := range names {
			if a := c.last(); a.Name != "" || a.W > 0 || a.Outputs > 0 {
				c.group = append(c.group, saidOf{})
				c.pending = 0
			}
			c.last().Name = name
		}
		c.at += n
		return true
	}
	name, n := c.code(c.at)
	next := c.at + n
	if n == 0 || next >= len(c.tokens) || isOtherKind(c.tokens[c.at].text) || isRackWord(c.tokens[c.at].text) {
		return false
	}
	if !c.tokens[next].is("=") && !c.tokens[next].is(":") && !(c.opensRating(next) && HasDigit(name)) && !(c.listing && c.ratedAt(next)) && !(c.goesOn() && c.ratedAt(next)) {
		return false
	}
	a := c.last()
	if a.Name != "" || a.W > 0 || a.Outputs > 0 {
		c.group = append(c.group, saidOf{})
		c.pending = 0
	}
	c.last().Name = name
	c.at = next
	return true
}

// goesOn reports whether "and" stands behind an amplifier with its rating: "amps A 240 W and B 60 W".
func (c *clauseReading) goesOn() bool {
	a := c.last()
	return isAnd(c.tokens[c.at-1].text) && a.worded && a.Name != "" && a.W > 0
}

// nameBehind reads the name of an amplifier behind its rating: "4 x 60 W (A1)".
func (c *clauseReading) nameBehind() bool {
	t := c.tokens[c.at]
	a := c.last()
	if !(t.is("(") || t.is("=") && len(a.Ways) == 0) || a.Name != "" || a.W == 0 { // "channel 1 = L1" names no amplifier
		return false
	}
	name, n := nameCode(c.tokens, c.at+1)
	if n == 0 || c.at+1+n < len(c.tokens) && !c.tokens[c.at+1+n].is(")") {
		return false
	}
	a.Name = name
	c.at += 1 + n
	return true
}

// amplifier reads a word for an amplifier with its name, if one stands here. A
// second name in one clause starts a further amplifier.
func (c *clauseReading) amplifier() bool {
	e, n, ok := words("name").at(c.tokens, c.at)
	named := ok && e.sure && e.kind == string(KeyAmplifier)
	if ok && e.sure && e.kind == string(KeyChannel) && n > 1 && isAmplifierWord(c.tokens[c.at].text) {
		n, named = 1, true // amp output 120 W
	}
	if central := c.centralUnit(); central > 0 {
		n, named = central, true
	}
	if !named {
		if c.tokens[c.at].kind == wordToken && ratingCompound(c.tokens[c.at].text) { // Verstärkerleistung
			c.last().worded = true
			c.at++
			return true
		}
		return false
	}
	next := c.at + n
	if next < len(c.tokens) && isRackWord(c.tokens[next].text) {
		if name, taken := nameCode(c.tokens, next+1); taken > 0 && HasDigit(name) {
			next++ // amp rack A1
		}
	}
	if next+1 < len(c.tokens) && c.tokens[next].is("-") && !c.tokens[next].gap && !c.tokens[next+1].gap && c.tokens[next+1].kind != markToken {
		c.named(c.tokens[c.at].raw + "-" + c.tokens[next+1].raw) // AMP-P, AMP-1
		c.at = next + 2
		return true
	}
	if c.listed(next) {
		c.listing, c.last().worded = true, true
		c.at = next + 1
		return true
	}
	quoted := 0
	for next+quoted < len(c.tokens) && (c.tokens[next+quoted].is(`"`) || c.tokens[next+quoted].is("-")) {
		quoted++
	}
	names, taken := c.names(next + quoted)
	if len(names) == 1 && !HasDigit(names[0]) && len(names[0]) > 2 && c.shouted() {
		taken = 0 // AMP ROOM
	}
	if taken == 0 {
		quoted = c.numberSigns(next)
		if figure := next + quoted; figure < len(c.tokens) && c.tokens[figure].kind == figureToken && c.tokens[figure].figure.whole && c.bareFigure(figure) {
			names, taken = c.numbers(figure) // Amp 1 = 70 V
		}
	}
	if taken > 0 && isOtherKind(c.tokens[min(next+quoted, len(c.tokens)-1)].text) {
		taken = 0
	}
	if taken == 0 {
		c.last().worded = true
		if c.at > 0 && c.last().Name == "" {
			if count, ok := numeralOf(c.tokens[c.at-1]); ok && count <= mostChannels {
				c.last().Amplifiers = count
			}
		}
		c.at = next
		if next < len(c.tokens) {
			_, n, ok := words("drawn").at(c.tokens, next)
			c.loads = c.loads || ok && n > 0 // "Amplifier load before: 91 W"
		}
		return true
	}
	for _, name := range names {
		c.named(name)
	}
	c.at = next + quoted + taken
	return true
}

// centralUnit is how many words for a central unit open the clause with a short name behind them, "Centrale CD con uscite
// U1, U2", 0 for none. Elsewhere such a word may say which hall is meant.
func (c *clauseReading) centralUnit() int {
	if c.at > 0 {
		return 0
	}
	_, n, ok := words("central").at(c.tokens, 0)
	if !ok {
		return 0
	}
	if _, taken := nameCode(c.tokens, n); taken == 0 {
		return 0
	}
	return n
}

// numberSigns is how many signs for "number" stand from tokens[i] on.
func (c *clauseReading) numberSigns(i int) int {
	n := 0
	for i+n < len(c.tokens) && (c.tokens[i+n].is("#") || c.tokens[i+n].is("°") || isNumberWord(c.tokens[i+n].text)) {
		n++
	}
	return n
}

// laterNumber reads the number of a further amplifier of a list: "Amp 1 = 250 W,
// 2 = 125 W".
func (c *clauseReading) laterNumber() bool {
	a := c.last()
	if !a.worded || a.W == 0 || c.at == 0 || !c.tokens[c.at-1].is(",") {
		return false
	}
	if _, numbered := numberOf(a.Name); !numbered {
		return false
	}
	figure := c.at + c.numberSigns(c.at)
	if figure+1 >= len(c.tokens) || c.tokens[figure].kind != figureToken || !c.tokens[figure].figure.whole || !c.tokens[figure+1].is("=") && !c.tokens[figure+1].is(":") {
		return false
	}
	c.named(c.tokens[figure].raw)
	c.at = figure + 1
	return true
}

// listed reports whether a colon at tokens[i], behind a word for amplifiers,
// opens a list of names with their ratings: "Amplifiers: OBS 30 W, LILY 60 W",
// "Amplifier: PA-1, 4 x 120 W".
func (c *clauseReading) listed(i int) bool {
	if i >= len(c.tokens) || !c.tokens[i].is(":") {
		return false
	}
	_, n := c.code(i + 1)
	return n > 0 && !isOtherKind(c.tokens[i+1].text) && c.ratedAt(i+1+n)
}

// ratedAt reports whether a rating stands at tokens[i], a comma in front or not.
func (c *clauseReading) ratedAt(i int) bool {
	if i < len(c.tokens) && c.tokens[i].is(",") {
		i++
	}
	if _, n := c.power(i); n > 0 {
		return true
	}
	return i+1 < len(c.tokens) && c.tokens[i].kind == figureToken && (c.tokens[i+1].is("x") || c.tokens[i+1].is("*"))
}

// numbers reads the figures behind a word for amplifiers, the first of which
// stands at tokens[i]: "1", "1 and 2", "1 to 3".
func (c *clauseReading) numbers(i int) (list []string, n int) {
	if to, k := c.rangeEnd(i); k > 0 {
		for v := int(c.tokens[i].figure.value); v <= to; v++ {
			list = append(list, strconv.Itoa(v))
		}
		return list, k
	}
	list, n = []string{c.tokens[i].raw}, 1
	for {
		next := i + n
		if next+1 >= len(c.tokens) || !(c.tokens[next].is(",") || c.tokens[next].is("+") || c.tokens[next].is("&") || isAnd(c.tokens[next].text)) ||
			c.tokens[next+1].kind != figureToken || !c.tokens[next+1].figure.whole || !c.bareFigure(next+1) {
			return list, n
		}
		list, n = append(list, c.tokens[next+1].raw), n+2
	}
}

// named sets the name of the amplifier being read, or starts the next.
func (c *clauseReading) named(name string) {
	if a := c.last(); a.Name != "" && a.Name != name {
		c.group = append(c.group, saidOf{})
		c.pending = 0
	}
	a := c.last()
	if a.Name == "" && len(a.Ways) > 0 {
		c.fed, c.pending = true, 0 // what follows is said of the amplifier
	}
	a.Name, a.worded = name, true
}

// shouted reports whether the clause has no small letters but in units.
func (c *clauseReading) shouted() bool {
	return !slices.ContainsFunc(c.tokens, func(t token) bool {
		return t.kind == wordToken && len([]rune(t.raw)) > 2 && t.raw != strings.ToUpper(t.raw)
	})
}
