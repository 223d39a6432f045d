package notation

import (
	"slices"
	"strings"
	"unicode"
)

// A RatedAmplifier is what a sentence outside a table says of an amplifier.
// Fields that the sentence leaves open are zero.
type RatedAmplifier struct {
	Name       string // as written, without its kind word: "PA1", "2"; "" if it has none
	Worded     bool   // a word for an amplifier stands in the text; without one, Name may be another thing's
	Amplifiers int    // amplifiers alike without a name, "two amps"
	Outputs    int    // outputs, at most mostChannels
	W          float64
	PerOutput  bool         // W is of each output; otherwise of the only one, or not said
	TotalW     float64      // of all outputs together, "together no more than 180 W"
	AtV        []float64    // line voltages, volts as written (70 stays 70), ascending
	Ways       []NamedWatts // outputs named, in the order written
	Zones      []string     // zones that hang on it, in the order written
	Doubts     Doubts
}

// A NamedWatts is an output with its own rating.
type NamedWatts struct {
	Name string  // "1", "K2"
	W    float64 // 0 if not written
}

// ParseRatingSentence finds amplifiers with their outputs, ratings and line
// voltages in a sentence in one of the six languages of the vocabulary: "PA1:
// two outputs, 60W each", "Verstärker V1 4 x 125 W an 100 V", "ampli A: 2
// sorties de 60 W", "Amp 1 = 70 V, 120 W. Amp 2 = 100 V, 120 W.".
//
// Words without meaning here are passed over, with the doubt SplitRead. A
// power beside several outputs without "each" or "together" has the doubt
// FrameOrOutput. The error wraps ErrNotUnderstood where the text says nothing
// of an amplifier, as where it describes a loudspeaker, a control or a cable.
func ParseRatingSentence(s string, style Style) ([]RatedAmplifier, error) {
	return knownSentences.of(s, int(style))
}

func parseRatingSentence(s string, style Style) ([]RatedAmplifier, error) {
	const what = "sentence about amplifiers"
	text, err := prepare(what, s)
	if err != nil {
		return nil, err
	}
	r := &sentenceReading{}
	for _, clause := range clausesOf(text) {
		r.clause(lex(clause, style))
	}
	out := r.finish()
	if len(out) == 0 {
		return nil, fail(what, text, ErrNotUnderstood)
	}
	return out, nil
}

// clausesOf splits a text at semicolons, line breaks and full stops.
func clausesOf(text string) []string {
	var out []string
	runes := []rune(text)
	start := 0
	for i, c := range runes {
		stop := c == '.' && i+2 < len(runes) && runes[i+1] == ' ' && unicode.IsUpper(runes[i+2]) && !endsInNameWord(string(runes[start:i]))
		if c == ';' || c == '\n' || stop {
			out = append(out, string(runes[start:i]))
			start = i + 1
		}
	}
	return append(out, string(runes[start:]))
}

// endsInNameWord reports whether a full stop may be that of an abbreviation,
// as in "amp. A".
func endsInNameWord(text string) bool {
	fields := strings.Fields(text)
	if len(fields) == 0 {
		return false
	}
	_, known := words("name").phrases[fold(fields[len(fields)-1])]
	return known
}

// A sentenceReading is a sentence on its way to amplifiers.
type sentenceReading struct {
	found []saidOf
	atV   []float64 // said before any amplifier: of all
}

// A saidOf is an amplifier being read, with what was said in passing.
type saidOf struct {
	RatedAmplifier
	worded bool // a word for an amplifier stood there
}

// A clauseReading is one clause on its way into a sentence.
type clauseReading struct {
	tokens  []token
	at      int
	group   []saidOf // amplifiers of the clause; the last is being read
	pending int      // ways of the last amplifier that wait for their watts
	total   bool     // a word for all together waits for its watts
	each    bool
	foreign bool // a loudspeaker, control or cable is spoken of
	glued   bool // "of", "de" stood directly before
}

func (c *clauseReading) now() *saidOf { return &c.group[len(c.group)-1] }

// clause reads one clause and joins it to those before.
func (r *sentenceReading) clause(tokens []token) {
	c := &clauseReading{tokens: tokens, group: make([]saidOf, 1)}
	c.leadingName()
	for c.at < len(tokens) {
		c.step()
	}
	c.settle()
	if c.foreign && !slices.ContainsFunc(c.group, func(a saidOf) bool { return a.worded }) {
		return
	}
	for _, a := range c.group {
		r.join(a)
	}
}

// join adds what a clause said to the sentence: as a new amplifier, as a way
// or more of the one before, or as the line voltage of all.
func (r *sentenceReading) join(a saidOf) {
	var last *saidOf
	if n := len(r.found); n > 0 {
		last = &r.found[n-1]
	}
	onlyVolts := a.Name == "" && !a.worded && a.W == 0 && a.Outputs == 0 && len(a.Ways) == 0 && a.TotalW == 0
	switch {
	case onlyVolts && last == nil:
		r.atV = append(r.atV, a.AtV...)
	case onlyVolts || last != nil && a.Name == "" && !a.worded && a.W == 0 && a.Outputs == 0:
		last.AtV = append(last.AtV, a.AtV...)
		last.Ways = append(last.Ways, a.Ways...)
		last.Doubts |= a.Doubts
		if a.TotalW > 0 {
			last.TotalW = a.TotalW
		}
	case last != nil && last.worded && last.W == 0 && last.Name != "" && !a.worded && a.Name != "" && a.Outputs == 0 && len(a.Ways) == 0:
		last.Ways = append(last.Ways, NamedWatts{a.Name, a.W}) // Verstärker VG; K1: 60 W; K2: 30 W
		last.AtV = append(last.AtV, a.AtV...)
		last.Doubts |= a.Doubts
	default:
		r.found = append(r.found, a)
	}
}

// finish returns the amplifiers of which something is said.
func (r *sentenceReading) finish() []RatedAmplifier {
	var out []RatedAmplifier
	for _, a := range r.found {
		ways := len(a.Ways)
		if a.Outputs == 0 && ways == 0 && a.W == 0 && a.TotalW == 0 && len(a.AtV) == 0 && len(r.atV) == 0 {
			continue
		}
		if a.Name == "" && !a.worded && !slices.ContainsFunc(a.Ways, func(w NamedWatts) bool { return w.W > 0 }) {
			continue
		}
		a.Worded = a.worded
		if len(a.AtV) == 0 {
			a.AtV = slices.Clone(r.atV)
		}
		slices.Sort(a.AtV)
		a.AtV = slices.Compact(a.AtV)
		if a.W > 0 && !a.PerOutput && max(a.Outputs, ways) > 1 {
			a.Doubts |= FrameOrOutput
		}
		out = append(out, a.RatedAmplifier)
	}
	return out
}

// leadingName reads a name in front of the clause with a sign behind it, "G1:",
// "Y =", or with "2 x 60 W".
func (c *clauseReading) leadingName() {
	name, n := nameCode(c.tokens, 0)
	if n == 0 || n >= len(c.tokens) || isOtherKind(c.tokens[0].text) {
		return
	}
	signed := c.tokens[n].is(":") || c.tokens[n].is("=")
	times := n+1 < len(c.tokens) && c.tokens[n].kind == figureToken && c.tokens[n].gap && c.tokens[n+1].is("x")
	if signed || times {
		c.now().Name = name
		c.at = n
	}
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
	t := c.tokens[c.at]
	ofBefore := c.glued
	c.glued = false
	if n, ok := c.amplifier(); ok {
		c.at += n
		return
	}
	if count, n := c.count(); n > 0 {
		switch {
		case c.outputWord(c.at+n) > 0: // two outputs
			c.at += n + c.outputWord(c.at+n)
			c.now().Outputs = count
			return
		case c.at+n < len(c.tokens) && (c.tokens[c.at+n].is("x") || c.tokens[c.at+n].is("*")):
			if w, m := c.power(c.at + n + 1); m > 0 { // 2 x 60 W
				c.at += n + 1 + m
				a := c.now()
				a.Outputs, a.W, a.PerOutput = count, w, true
				return
			}
		}
	}
	if w, n := c.power(c.at); n > 0 {
		c.at += n
		c.watts(w, ofBefore)
		return
	}
	if v, n := c.unit(c.at, voltageUnits.class); n > 0 {
		c.at += n
		if isLineVoltage(v) {
			c.now().AtV = append(c.now().AtV, v)
		}
		return
	}
	if e, n, ok := words("said").at(c.tokens, c.at); ok {
		c.at += n
		c.total = c.total || e.kind == "total"
		c.each = c.each || e.kind == "each"
		c.glued = e.kind == "of"
		return
	}
	if n := c.outputWord(c.at); n > 0 {
		c.at += n
		for _, name := range c.list() {
			c.addWay(name)
		}
		return
	}
	if kind, sure, n, ok := nameAt(c.tokens, c.at); ok && sure {
		c.at += n
		switch kind {
		case KeyZone:
			c.now().Zones = append(c.now().Zones, c.list()...)
		case KeyLoudspeaker, KeyControl, KeyCable:
			c.foreign = true
		}
		return
	}
	if t.is("(") || t.is("=") {
		if name, n := nameCode(c.tokens, c.at+1); n > 0 && c.now().Name == "" && c.now().W > 0 && (c.at+1+n == len(c.tokens) || c.tokens[c.at+1+n].is(")")) {
			c.now().Name = name // 4 x 60 W (A1)
			c.at += 1 + n
			return
		}
	}
	if t.is(",") || t.is("(") {
		c.total = c.total && c.now().W == 0
	}
	if t.kind != markToken && !isAnd(t.text) && !isLinkWord(t.text) {
		c.now().Doubts |= SplitRead
	}
	c.at++
}

// watts takes a power: of the ways that wait for one, of all together, or of
// the amplifier.
func (c *clauseReading) watts(w float64, of bool) {
	a := c.now()
	if e, n, ok := words("said").at(c.tokens, c.at); ok && e.kind == "total" {
		c.total = true
		c.at += n
	}
	switch {
	case c.total:
		a.TotalW, c.total = w, false
	case c.pending > 0:
		for i := len(a.Ways) - c.pending; i < len(a.Ways); i++ {
			a.Ways[i].W = w
		}
		c.pending = 0
	case a.W > 0 && a.W != w:
		a.Doubts |= SplitRead // the first power counts
	default:
		a.W = w
		a.PerOutput = a.PerOutput || of && a.Outputs > 0 || c.each
	}
}

func (c *clauseReading) addWay(name string) {
	a := c.now()
	if len(a.Ways) >= mostChannels || slices.ContainsFunc(a.Ways, func(w NamedWatts) bool { return w.Name == name }) {
		return
	}
	a.Ways = append(a.Ways, NamedWatts{Name: name})
	c.pending++
}

// amplifier reads a word for an amplifier with its name, if one stands here. A
// second name in one clause starts a further amplifier.
func (c *clauseReading) amplifier() (int, bool) {
	e, n, ok := words("name").at(c.tokens, c.at)
	if !ok || e.kind != string(KeyAmplifier) || !e.sure {
		return 0, false
	}
	next := c.at + n
	if next+1 < len(c.tokens) && c.tokens[next].is("-") && !c.tokens[next].gap && !c.tokens[next+1].gap && c.tokens[next+1].kind == wordToken {
		c.named(c.tokens[c.at].raw + "-" + c.tokens[next+1].raw) // AMP-P
		return n + 2, true
	}
	quoted := 0
	for next+quoted < len(c.tokens) && (c.tokens[next+quoted].is(`"`) || c.tokens[next+quoted].is("-")) {
		quoted++
	}
	name, taken := nameCode(c.tokens, next+quoted)
	if taken == 0 && next < len(c.tokens) && c.tokens[next].kind == figureToken && c.tokens[next].figure.whole && c.bareFigure(next) {
		name, taken, quoted = c.tokens[next].raw, 1, 0 // Amp 1 = 70 V
	}
	if taken == 0 {
		c.now().worded = true
		if c.at > 0 && c.now().Name == "" {
			if count, ok := numeralOf(c.tokens[c.at-1]); ok && count <= mostChannels {
				c.now().Amplifiers = count
			}
		}
		return n, true
	}
	c.named(name)
	return n + quoted + taken, true
}

// named sets the name of the amplifier being read, or starts the next.
func (c *clauseReading) named(name string) {
	if a := c.now(); a.Name != "" && a.Name != name {
		c.group = append(c.group, saidOf{})
		c.pending = 0
	}
	a := c.now()
	a.Name, a.worded = name, true
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

// settle gives what was said of all amplifiers of the clause to each of them.
func (c *clauseReading) settle() {
	last := *c.now()
	for i := range c.group {
		a := &c.group[i]
		if a.W == 0 && len(a.Ways) == 0 && last.W > 0 {
			a.W, a.PerOutput = last.W, last.PerOutput
		}
		if len(a.AtV) == 0 {
			a.AtV = slices.Clone(last.AtV)
		}
		a.PerOutput = a.PerOutput || c.each && a.W > 0
	}
}
