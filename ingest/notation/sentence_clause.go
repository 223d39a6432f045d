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
	fed     bool     // outputs were named before their amplifier: "A circuits on amplifier 1"
	foreign bool     // a loudspeaker, control or cable is spoken of
	glued   bool     // "of", "de" stood directly before
	was     bool     // the next watts are those of before
	now     bool     // the next watts take the place of those before
}

func (c *clauseReading) last() *saidOf { return &c.group[len(c.group)-1] }

// leadingNames reads the names in front of the clause with a sign behind them,
// "G1:", "Y =", "A1, A2:", "A1-A3:", or with "2 x 60 W", a word for an
// amplifier or one for an output.
func (c *clauseReading) leadingNames() {
	names, n := c.names(0)
	if n == 0 || n >= len(c.tokens) || isOtherKind(c.tokens[0].text) || n == 1 && (isAmpCode(c.tokens[0].text) || c.letteredOutputs() > 0) || !c.opensRating(n) {
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
		for k := i + 1; k < min(i+4, len(c.tokens)); k++ {
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
	if len(list) > 1 && !sameLetters(list) {
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
	if n == 0 || figure+1 >= len(c.tokens) || hasDigit(name) || len(name) > 4 || c.tokens[figure].kind != figureToken || !c.tokens[figure].figure.whole || !c.tokens[figure].gap {
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

// step reads what stands at the present token.
func (c *clauseReading) step() {
	ofBefore := c.glued
	c.glued = false
	for _, read := range []func() bool{c.amplifier, c.outputsCounted, c.codedOutput, c.laterName, c.lettered} {
		if read() {
			return
		}
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
	for _, read := range []func() bool{c.phrase, c.namedOutputs, c.otherKind, c.nameBehind} {
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

// outputsCounted reads "two outputs", "2 x 60 W" and, behind an amplifier,
// "4 x 120".
func (c *clauseReading) outputsCounted() bool {
	count, n := c.count()
	if n == 0 {
		return false
	}
	next := c.at + n
	if m := c.outputWord(next); m > 0 { // two outputs
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
	name, n := c.code(c.at)
	next := c.at + n
	if n == 0 || next >= len(c.tokens) || isOtherKind(c.tokens[c.at].text) || isRackWord(c.tokens[c.at].text) {
		return false
	}
	if !c.tokens[next].is("=") && !c.tokens[next].is(":") && !(c.opensRating(next) && hasDigit(name)) {
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

func hasDigit(s string) bool { return strings.ContainsAny(s, "0123456789") }

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
		c.last().Zones = append(c.last().Zones, c.list(true)...)
	case KeyLoudspeaker, KeyControl, KeyCable:
		c.foreign = true
	}
	return true
}

// nameBehind reads the name of an amplifier behind its rating: "4 x 60 W (A1)".
func (c *clauseReading) nameBehind() bool {
	t := c.tokens[c.at]
	a := c.last()
	if !(t.is("(") || t.is("=")) || a.Name != "" || a.W == 0 {
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

// watts takes a power of n tokens: of the ways that wait for one, of all
// together, or of the amplifier. One of loudspeakers is passed over.
func (c *clauseReading) watts(w float64, n int, of bool) {
	if c.deviceAt(c.at) || c.at > n+1 && of && c.deviceAt(c.at-n-2) || c.at > n && c.deviceAt(c.at-n-1) {
		c.foreign = true
		return
	}
	a := c.last()
	if e, n, ok := words("said").at(c.tokens, c.at); ok && e.kind == "total" {
		c.total = true
		c.at += n
	}
	switch {
	case c.was:
		c.was = false
	case c.total:
		a.TotalW, c.total = w, false
	case c.pending > 0:
		for i := len(a.Ways) - c.pending; i < len(a.Ways); i++ {
			a.Ways[i].W = w
		}
		c.pending = 0
	case a.W > 0 && !c.now && c.at > n && c.tokens[c.at-n-1].is("+") && len(a.Ways) == 0: // 120 W + 60 W
		a.Ways, a.W, a.PerOutput = []NamedWatts{{Name: "1", W: a.W}, {Name: "2", W: w}}, 0, false
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

func (c *clauseReading) addWay(name string) {
	a := c.last()
	if len(a.Ways) >= mostChannels || slices.ContainsFunc(a.Ways, func(w NamedWatts) bool { return w.Name == name }) {
		return
	}
	a.Ways = append(a.Ways, NamedWatts{Name: name})
	c.pending++
}

// amplifier reads a word for an amplifier with its name, if one stands here. A
// second name in one clause starts a further amplifier.
func (c *clauseReading) amplifier() bool {
	e, n, ok := words("name").at(c.tokens, c.at)
	named := ok && e.sure && e.kind == string(KeyAmplifier)
	if ok && e.sure && e.kind == string(KeyChannel) && n > 1 && isAmplifierWord(c.tokens[c.at].text) {
		n, named = 1, true // amp output 120 W
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
	if next+1 < len(c.tokens) && c.tokens[next].is("-") && !c.tokens[next].gap && !c.tokens[next+1].gap && c.tokens[next+1].kind != markToken {
		c.named(c.tokens[c.at].raw + "-" + c.tokens[next+1].raw) // AMP-P, AMP-1
		c.at = next + 2
		return true
	}
	quoted := 0
	for next+quoted < len(c.tokens) && (c.tokens[next+quoted].is(`"`) || c.tokens[next+quoted].is("-")) {
		quoted++
	}
	names, taken := c.names(next + quoted)
	if len(names) == 1 && !hasDigit(names[0]) && len(names[0]) > 2 && c.shouted() {
		taken = 0 // AMP ROOM
	}
	if taken == 0 && next < len(c.tokens) && c.tokens[next].kind == figureToken && c.tokens[next].figure.whole && c.bareFigure(next) {
		names, taken, quoted = []string{c.tokens[next].raw}, 1, 0 // Amp 1 = 70 V
		for {                                                     // Amplifiers 1 and 2
			i := next + taken
			if i+1 >= len(c.tokens) || !(c.tokens[i].is(",") || c.tokens[i].is("+") || c.tokens[i].is("&") || isAnd(c.tokens[i].text)) ||
				c.tokens[i+1].kind != figureToken || !c.tokens[i+1].figure.whole || !c.bareFigure(i+1) {
				break
			}
			names, taken = append(names, c.tokens[i+1].raw), taken+2
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
		return true
	}
	for _, name := range names {
		c.named(name)
	}
	c.at = next + quoted + taken
	return true
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

// bareFigure reports whether the figure at tokens[i] has no unit and counts
// nothing.
func (c *clauseReading) bareFigure(i int) bool {
	if _, n := c.power(i); n > 0 {
		return false
	}
	if _, n := c.unit(i, voltageUnits.class); n > 0 {
		return false
	}
	return i+1 >= len(c.tokens) || !c.tokens[i+1].is("x") && !c.tokens[i+1].is("*") && c.outputWord(i+1) == 0
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
		a.worded = a.worded || last.worded
		a.PerOutput = a.PerOutput && a.W > 0 || c.each && a.W > 0
		a.outputs = a.outputs || (c.outputs || c.plural && c.each) && a.W > 0
	}
}
