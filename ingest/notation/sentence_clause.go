package notation

import (
	"slices"
	"strings"
)

// A clauseReading is one clause on its way into a sentence.
type clauseReading struct {
	tokens  []token
	at      int
	group   []saidOf // amplifiers of the clause; the last is being read
	pending int      // ways of the last amplifier that wait for their watts
	total   bool     // a word for all together waits for its watts
	each    bool     // "each"
	outputs bool     // "each output", which waits for its watts
	zones   int      // zones counted
	plural  bool     // outputs were spoken of and not counted: "outputs of 60 W", "outputs 60 W each"
	loads   bool     // the watts of the clause are what an amplifier carries, not what it gives
	listing bool     // names follow, each with its rating: "Amplifiers: OBS 30 W, LILY 60 W"
	fed     bool     // outputs were named before their amplifier: "A circuits on amplifier 1"
	foreign bool     // a loudspeaker, control or cable is spoken of
	glued   bool     // "of", "de" stood directly before
	was     bool     // the next watts are those of before
	now     bool     // the next watts take the place of those before
	// zonesNamed are the zones that were named last and wait for their watts.
	zonesNamed []string
	bridge     bool // the next two outputs are one: "bridged 1+2"
}

func (c *clauseReading) last() *saidOf { return &c.group[len(c.group)-1] }

// step reads what stands at the present token.
func (c *clauseReading) step() {
	ofBefore := c.glued
	c.glued = false
	for _, read := range []func() bool{c.amplifier, c.outputsCounted, c.codedOutput, c.laterName, c.laterNumber, c.lettered} {
		if read() {
			return
		}
	}
	if c.placeNumbered() || c.listedWatts() || c.wattsBeforeOutputs() {
		return
	}
	if w, n := c.power(c.at); n > 0 {
		c.at += n
		if k := c.intoOhms(); k > 0 {
			c.at += k // 250 W at 4 Ω: no rating of a line
			c.pending, c.last().direct = 0, c.last().W == 0
			return
		}
		c.watts(w, n, ofBefore)
		return
	}
	if t := c.tokens[c.at]; t.kind == figureToken && !t.figure.bad && c.at+2 < len(c.tokens) && c.tokens[c.at+1].is("+") {
		if _, n := c.power(c.at + 2); n > 0 && t.figure.value > 0 && t.figure.value <= MaxWatts { // 120 + 60 W
			c.at++
			c.watts(t.figure.value, 1, ofBefore)
			return
		}
	}
	if v, n := c.unit(c.at, voltageUnits.class); n > 0 {
		c.at += n
		if isLineVoltage(v) {
			c.last().AtV = append(c.last().AtV, v)
		}
		return
	}
	for _, read := range []func() bool{c.phrase, c.namedOutputs, c.waysBehind, c.otherKind, c.nameBehind} {
		if read() {
			return
		}
	}
	t := c.tokens[c.at]
	if t.is(",") || t.is("(") {
		c.total = c.total && c.last().W == 0
	}
	if t.kind != markToken && !isAnd(t.text) && !isLinkWord(t.text) {
		c.last().Doubts |= SplitRead
	}
	c.at++
}

// placeNumbered passes over the number of the room in which something stands: "in room T02" names no amplifier.
func (c *clauseReading) placeNumbered() bool {
	_, n, ok := words("within").at(c.tokens, c.at)
	if !ok {
		return false
	}
	if _, code := nameCode(c.tokens, c.at+n); code > 0 {
		n += code
	} else if i := c.at + n; i < len(c.tokens) && c.tokens[i].kind == figureToken && (i+1 >= len(c.tokens) || c.tokens[i+1].kind == markToken) {
		n++
	} else {
		return false
	}
	c.at += n
	return true
}

// selectorAt is the number of tokens up to a word for a switch among zones, of at most two;
// 0 if there is none: its ways are no outputs of an amplifier.
func (c *clauseReading) selectorAt(i int) int {
	for k := i; k < min(i+2, len(c.tokens)); k++ {
		if e, n, ok := words("said").at(c.tokens, k); ok && e.kind == "selector" {
			return k + n - i
		}
	}
	return 0
}

// outputsCounted reads "two outputs", "2 x 60 W" and, behind an amplifier,
// "4 x 120".
func (c *clauseReading) outputsCounted() bool {
	count, n := c.count()
	if n == 0 {
		return false
	}
	next := c.at + n
	if m := c.outputWord(next); m > 0 { // two outputs
		if k := c.selectorAt(next + m); k > 0 { // 3 way zone selector
			c.at = next + m + k
			return true
		}
		c.at = next + m
		if a := c.last(); a.Outputs <= 1 || count > 1 { // 3 x 60 W, one output per zone
			a.Outputs = count
		}
		c.last().counted = true
		if c.at < len(c.tokens) && (c.tokens[c.at].is("x") || c.tokens[c.at].is("*")) {
			if w, k := c.power(c.at + 1); k > 0 { // 4 channels x 250 W
				c.at += 1 + k
				c.last().W, c.last().PerOutput = w, true
			}
		}
		return true
	}
	if w, m := c.power(next); m > 0 && c.outputWord(next+m) > 0 && c.tokens[c.at].kind == wordToken { // two 75 W outputs
		c.at = next + m + c.outputWord(next+m)
		c.last().Outputs, c.last().W, c.last().PerOutput, c.last().counted = count, w, true, true
		return true
	}
	if kind, sure, m, ok := nameAt(c.tokens, next); ok && sure && kind == KeyZone {
		c.zones = count // 2 zones, 30 W per zone: as many outputs
		c.at = next + m
		return true
	}
	if next >= len(c.tokens) || !c.tokens[next].is("x") && !c.tokens[next].is("*") {
		return false
	}
	w, m := c.power(next + 1)
	a := c.last()
	if m == 0 && (a.Name != "" || a.worded) && next+1 < len(c.tokens) && c.tokens[next+1].kind == figureToken && !c.tokens[next+1].figure.bad &&
		c.tokens[next+1].figure.value >= leastBareW && (next+2 == len(c.tokens) || c.tokens[next+2].kind == markToken || c.tokens[next+2].gap && isAt(c.tokens[next+2].text)) {
		w, m = c.tokens[next+1].figure.value, 1 // A1 4x120
		a.Doubts |= Bare
	}
	if m == 0 || c.deviceAt(next+1+m) {
		return false
	}
	c.at = next + 1 + m
	a.Outputs, a.W, a.PerOutput = count, w, true
	a.PerZone = a.PerZone || c.zones == count // 2 zone mixer amp, 2 x 120 W
	return true
}

// intoOhms is the number of tokens of the impedance behind a power, "@ 4 Ω"; 0
// if there is none.
func (c *clauseReading) intoOhms() int {
	i := c.at
	for i < len(c.tokens) && (c.tokens[i].is("@") || c.tokens[i].is("/") || c.tokens[i].is("(") || c.tokens[i].kind == wordToken && isAt(c.tokens[i].text)) {
		i++
	}
	if _, n := c.unit(i, resistanceUnits.class); n > 0 {
		return i - c.at + n
	}
	return 0
}

func isAt(word string) bool {
	e, ok := words("joint").phrases[word]
	return ok && e.kind == "at"
}

// leastBareW is the least figure that is taken for an amplifier's watts without
// a unit. Common practice, no source.
const leastBareW = 20

// HasDigit reports whether a text has a figure.
func HasDigit(s string) bool {
	for i := range len(s) {
		if '0' <= s[i] && s[i] <= '9' {
			return true
		}
	}
	return false
}

func isRackWord(word string) bool {
	e, ok := words("name").phrases[word]
	return ok && KeyKind(e.kind) == KeyRack
}

// phrase reads a word for each, all together, now, before.
func (c *clauseReading) phrase() bool {
	if e, n, ok := words("said").at(c.tokens, c.at); ok {
		c.at += n
		switch e.kind {
		case "total":
			c.total = true
		case "each":
			c.each = true
		case "called":
			if name, taken := nameCode(c.tokens, c.at); taken > 0 && c.last().Name == "" {
				c.last().Name = name
				c.at += taken
			}
		case "each output":
			c.eachOutput()
		case "each zone":
			if c.zones == 0 {
				c.last().PerZone = true
				return true
			}
			c.last().Outputs, c.last().PerZone = c.zones, true
			c.eachOutput()
		case "all outputs":
			if list := c.list(false); len(list) > 0 { // toutes les lignes A
				c.addWays(list)
				return true
			}
			if c.last().W > 0 && !c.last().PerOutput {
				c.last().TotalW, c.last().W = c.last().W, 0 // 480 W all channels
				c.last().outputs = true
			} else {
				c.eachOutput()
			}
		case "of":
			c.glued = true
		case "now":
			c.now = true
		}
		return true
	}
	if e, n, ok := words("tap").at(c.tokens, c.at); ok && e.kind == "was" && !slices.Contains(olds, c.tokens[c.at].text) {
		c.at += n
		c.was = true
		return true
	}
	if e, n, ok := words("bridging").at(c.tokens, c.at); ok && e.kind == "bridged" {
		c.at += n
		c.bridge = !c.bridgeLast()
		return true
	}
	if c.tokens[c.at].is("/") && c.last().W > 0 {
		if n := c.outputWord(c.at + 1); n > 0 { // 250 W/ch
			c.at += 1 + n
			c.eachOutput()
			return true
		}
	}
	return false
}

// olds say what an amplifier is like, not what it was.
var olds = []string{"old", "alt", "ancien", "ancienne", "antiguo", "oud", "before"}

// eachOutput notes that the watts are those of each output.
func (c *clauseReading) eachOutput() {
	c.each, c.outputs = true, true
	if c.last().W > 0 {
		c.last().outputs = true
	}
}

// otherKind reads a word for a zone with its names, or for a thing that is no
// amplifier.
func (c *clauseReading) otherKind() bool {
	if c.deviceAt(c.at) {
		c.foreign = true
		c.at++
		return true
	}
	kind, sure, n, ok := nameAt(c.tokens, c.at)
	if !ok || !sure {
		return false
	}
	c.at += n
	switch kind {
	case KeyZone:
		c.zonesNamed = c.list(true)
		c.last().Zones = append(c.last().Zones, c.zonesNamed...)
	case KeyLoudspeaker, KeyControl, KeyCable:
		c.foreign = true
	}
	return true
}

// watts takes a power of n tokens: of the ways that wait for one, of all
// together, or of the amplifier. One of loudspeakers is passed over.
func (c *clauseReading) watts(w float64, n int, of bool) {
	if c.deviceAt(c.at) || c.at > n+1 && of && c.deviceAt(c.at-n-2) || c.at > n && c.deviceAt(c.at-n-1) {
		c.foreign = true
		return
	}
	a := c.last()
	for _, zone := range c.zonesNamed {
		a.zoneWatts = append(a.zoneWatts, NamedWatts{Name: zone, W: w})
	}
	c.zonesNamed = nil
	if e, n, ok := words("said").at(c.tokens, c.at); ok && e.kind == "total" {
		c.total = true
		c.at += n
	}
	switch {
	case c.loads:
	case c.was:
		c.was = false
	case c.total:
		a.TotalW, c.total = w, false
	case c.pending > 1 && c.at < len(c.tokens) && isAmplifierWord(c.tokens[c.at].text) && c.outputWord(c.at+1) == 0 && !c.verbBefore(c.at-n): // lines A and B off the 20 W amp
		a.W, c.pending = w, 0
	case c.pending > 0:
		for i := len(a.Ways) - c.pending; i < len(a.Ways); i++ {
			a.Ways[i].W = w
		}
		c.pending = 0
	case a.W > 0 && !c.now && c.at > n && c.tokens[c.at-n-1].is("+") && len(a.Ways) == 0: // 120 W + 60 W
		a.Ways, a.W, a.PerOutput = []NamedWatts{{Name: "1", W: a.W}, {Name: "2", W: w}}, 0, false
	case of && a.Outputs > 1 && a.W == float64(a.Outputs)*w: // a 120 W amplifier with two outputs of 60 W
		a.TotalW, a.W, a.PerOutput = a.W, w, true
	case a.W > 0 && a.W != w && !c.now:
		a.Doubts |= OtherPower // the first power counts
	default:
		a.W = w
		if of && c.plural && a.Outputs == 0 && len(a.Ways) == 0 { // outputs of 60 W
			a.PerOutput, a.outputs = true, true
		}
		if of && c.zones > 0 && a.Outputs == 0 { // 3 zones of 60 W
			a.Outputs, a.PerZone = c.zones, true
		}
		a.PerOutput = a.PerOutput || of && a.Outputs > 0 || c.each
		a.outputs = a.outputs || c.outputs
	}
	c.now = false
}

// verbBefore reports whether one of the two words before tokens[i] says what something is: "G1 and G2 are 100 W amplifiers".
func (c *clauseReading) verbBefore(i int) bool {
	for k := max(0, i-2); k < min(i, len(c.tokens)); k++ {
		if slices.Contains(verbs, c.tokens[k].text) {
			return true
		}
	}
	return false
}

// bridgeLast makes one output of the last two that were named, where these have the same
// watts or none yet: "ch 1+2 bridged = 250 W".
func (c *clauseReading) bridgeLast() bool {
	a := c.last()
	n := len(a.Ways)
	if n < 2 || a.Ways[n-1].W != a.Ways[n-2].W || c.pending == 1 {
		return false
	}
	a.Ways[n-2].Name += "+" + a.Ways[n-1].Name
	a.Ways = a.Ways[:n-1]
	c.pending = min(c.pending, 1)
	return true
}

func (c *clauseReading) addWay(name string) {
	a := c.last()
	if len(a.Ways) >= mostChannels || slices.ContainsFunc(a.Ways, func(w NamedWatts) bool { return w.Name == name }) {
		return
	}
	a.Ways = append(a.Ways, NamedWatts{Name: name})
	c.pending++
}

// bareFigure reports whether the figure at tokens[i] has no unit and counts
// nothing.
func (c *clauseReading) bareFigure(i int) bool {
	if _, n := c.power(i); n > 0 {
		return false
	}
	if _, n := c.unit(i, voltageUnits.class); n > 0 {
		return false
	}
	return i+1 >= len(c.tokens) || !c.tokens[i+1].is("x") && !c.tokens[i+1].is("*") && (c.outputWord(i+1) == 0 || c.namesOutput(i+1+c.outputWord(i+1)))
}

// namesOutput reports whether tokens[i], behind a word for an output, names it: "2" of "amp 2 output 2: 125 W", "B" of
// "AMP 2 CH B - 125 W". The figure of "amp 2 ch 125 W" is a power.
func (c *clauseReading) namesOutput(i int) bool {
	if i >= len(c.tokens) {
		return false
	}
	t := c.tokens[i]
	return t.kind == figureToken && t.figure.whole && t.figure.value <= mostChannels && c.bareFigure(i) || isSingleLetter(t) && t.raw == strings.ToUpper(t.raw)
}

// settle gives what was said of several amplifiers of the clause together, or
// of all of them, to each.
func (c *clauseReading) settle() {
	for i := len(c.group) - 2; i >= 0; i-- { // P1 and P2: 120 W
		a, next := &c.group[i], &c.group[i+1]
		if !a.direct && a.W == 0 && len(a.Ways) == 0 && a.Outputs == 0 && a.TotalW == 0 && next.W > 0 {
			a.W, a.PerOutput, a.Outputs, a.Doubts = next.W, next.PerOutput, next.Outputs, a.Doubts|next.Doubts
		}
	}
	last := *c.last()
	for i := range c.group {
		a := &c.group[i]
		if c.fed && a.W == 0 && last.W > 0 && c.each { // A circuits on VA1, B circuits on VA2, both 250 W a circuit
			a.W, a.PerOutput = last.W, last.PerOutput
		}
		if len(a.AtV) == 0 && !a.direct {
			a.AtV = slices.Clone(last.AtV)
		}
		if a.Outputs == 1 && a.PerOutput && c.outputs {
			a.Outputs = 0 // one output of 120 W per line: how many is not said
		}
		if len(a.Ways) == a.Outputs && a.PerOutput {
			for k := range a.Ways { // lines 1 and 2: a 120 W amplifier with two outputs of 60 W
				if a.Ways[k].W == float64(a.Outputs)*a.W {
					a.Ways[k].W = a.W
				}
			}
		}
		a.shared = len(c.group) > 1
		a.worded = a.worded || last.worded || c.listing || a.Name != "" && slices.ContainsFunc(c.group, func(o saidOf) bool {
			return o.worded && HasDigit(o.Name) && sameLetters([]string{a.Name, o.Name}) // Amplifier PA1: 60 W, PA2: 30 W
		})
		a.PerOutput = a.PerOutput && a.W > 0 || c.each && a.W > 0
		if len(c.group) > 1 && c.each && !c.outputs && !c.plural && a.Outputs == 0 && len(a.Ways) == 0 {
			a.PerOutput = false // amplifiers 1 and 2, 120 W each
		}
		a.outputs = a.outputs || (c.outputs || c.plural && c.each) && a.W > 0
	}
}
