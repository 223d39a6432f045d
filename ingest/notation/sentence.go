package notation

import (
	"regexp"
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
	PerZone    bool         // each zone has an output of its own
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
// sorties de 60 W", "Amp 1 = 70 V, 120 W. Amp 2 = 100 V, 120 W.", "60 W per
// output".
//
// Words without meaning here are passed over, with the doubt SplitRead. A
// power beside several outputs without "each" or "together" has the doubt
// FrameOrOutput. The error wraps ErrNotUnderstood where the text says nothing
// of an amplifier, as where it describes a loudspeaker, a control or a cable,
// or an amplifier that is not in use.
func ParseRatingSentence(s string, style Style) ([]RatedAmplifier, error) {
	return knownSentences.of(s, int(style))
}

// numberSign finds the sign in front of a number: "Amp #1".
var numberSign = regexp.MustCompile(`#\s?(\d)`)

// powerWithOutput finds an amplifier that is called a power, which has an output: "Potencia de 180 W con
// salida de 100 V". Spanish of the Río de la Plata, common practice, no source.
var powerWithOutput = regexp.MustCompile(`(?i)^(?:la\s+)?(potencia\s+de\s+(?:\d\s*[x×]\s*)?\d+\s*W\b.*\bsalidas?\b)`)

func parseRatingSentence(s string, style Style) ([]RatedAmplifier, error) {
	const what = "sentence about amplifiers"
	text, err := prepare(what, s)
	if err != nil {
		return nil, err
	}
	text = numberSign.ReplaceAllString(text, "$1")
	text = powerWithOutput.ReplaceAllString(text, "etapa de $1")
	text = bracketFirst(text, style)
	r := &sentenceReading{}
	for _, clause := range clausesOf(text) {
		clause = withoutStandby(clause)
		for _, part := range ratedParts(clause, style) {
			r.clause(splitFigures(lex(part, style), style), part)
		}
	}
	out := r.finish()
	if len(out) == 0 {
		return nil, fail(what, text, ErrNotUnderstood)
	}
	return out, nil
}

// lastBracket is a remark in brackets at the end of a sentence.
var lastBracket = regexp.MustCompile(`^(.*\S)\s*\(([^()]*)\)\s*$`)

// bracketFirst puts what brackets at the end of several ratings say of their amplifier in front of
// them: "L1: 150 W; L2: 60 W (amplifier with 2 outputs)".
func bracketFirst(text string, style Style) string {
	m := lastBracket.FindStringSubmatch(text)
	if m == nil || !SpeaksOfAmplifier(m[2]) || len(PowersIn(m[2], style)) > 0 || len(PowersIn(m[1], style)) < 2 || SpeaksOfAmplifier(m[1]) {
		return text
	}
	return m[2] + "; " + m[1]
}

// withoutStandby leaves out what a clause says, behind a comma, of an amplifier
// that waits: "All amplifiers 1 x 160 W, one standby amplifier AMP-S".
func withoutStandby(clause string) string {
	parts := strings.Split(clause, ", ")
	for i := 1; i < len(parts); i++ {
		if status, sure := StatusOf(parts[i]); sure && (status == StatusStandby || status == StatusSpare) && SpeaksOfAmplifier(parts[i]) {
			return strings.Join(parts[:i], ", ")
		}
	}
	return clause
}

// joinedAmps finds what joins two amplifiers in one breath: "4x100W amp + 60W mixer amp".
var joinedAmps = regexp.MustCompile(`(?i)\s+(?:[+&/,]|and|und|et|y|e|en|plus)\s+|,\s+`)

// ratedParts splits a clause that tells of several amplifiers without names, each with
// its word and its one power; any other clause is left whole.
func ratedParts(clause string, style Style) []string {
	whole := []string{clause}
	if !strings.ContainsAny(clause, "wW") {
		return whole
	}
	parts := joinedAmps.Split(clause, -1)
	for _, part := range parts {
		if len(PowersIn(part, style)) != 1 || !SpeaksOfAmplifier(part) || ampNamed.MatchString(part) {
			return whole
		}
	}
	return parts
}

// ampNamed finds what may be the name of an amplifier: a letter or code with a figure, or
// a letter alone.
var ampNamed = regexp.MustCompile(`\b(?:\p{Lu}{1,4}[-. ]?\d{1,2}|[A-HK-UX-Z])\b(?:[^\pL]|$)|[=:]|\d\.\d`)

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
	found   []saidOf
	atV     []float64 // said before any amplifier: of all
	listing bool      // the clause before listed amplifiers: "Amps: PA1 120 W; PA2 60 W"
}

// A saidOf is an amplifier being read, with what was said in passing.
type saidOf struct {
	RatedAmplifier
	worded  bool // a word for an amplifier stood there
	outputs bool // watts were said of each output
	counted bool // outputs were counted in words: "3 circuits"
	shared  bool // said of several amplifiers together
	// zoneWatts are the powers behind the names of zones.
	zoneWatts []NamedWatts
	direct    bool // its watts go into a few ohms, not onto a line
}

// clause reads one clause and joins it to those before.
func (r *sentenceReading) clause(tokens []token, text string) {
	c := &clauseReading{tokens: tokens, group: make([]saidOf, 1), listing: r.listing}
	c.leadingNames()
	for c.at < len(tokens) {
		c.step()
	}
	c.settle()
	r.listing = c.listing && c.last().Name != ""
	worded := slices.ContainsFunc(c.group, func(a saidOf) bool { return a.worded })
	if c.foreign && !worded || c.outOfUse(text) {
		return
	}
	for _, a := range c.group {
		r.join(a)
	}
}

// outOfUse reports whether a clause is about an amplifier that is kept on a
// shelf, or is gone.
func (c *clauseReading) outOfUse(text string) bool {
	if len(c.group) > 1 || c.group[0].Outputs > 1 || len(c.group[0].Ways) > 0 {
		return false
	}
	status, sure := StatusOf(text)
	switch status {
	case StatusSpare, StatusStandby, StatusRemoved, StatusByOthers:
		return sure
	}
	return false
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
	case last != nil && a.Name == "" && !a.worded && a.W > 0 && a.outputs && last.W == 0: // Two amps; 60 W per output
		last.W, last.PerOutput, last.Doubts = a.W, true, last.Doubts|a.Doubts
		last.AtV = append(last.AtV, a.AtV...)
	case onlyVolts || last != nil && a.Name == "" && !a.worded && a.W == 0 && a.Outputs == 0:
		last.AtV = append(last.AtV, a.AtV...)
		last.Ways = append(last.Ways, a.Ways...)
		last.Zones = append(last.Zones, a.Zones...)
		last.Doubts |= a.Doubts
		if a.TotalW > 0 {
			last.TotalW = a.TotalW
		}
	case last != nil && last.worded && last.W == 0 && last.Name != "" && !a.worded && a.Name != "" && a.Outputs == 0 && len(a.Ways) == 0:
		last.Ways = append(last.Ways, NamedWatts{Name: a.Name, W: a.W}) // Verstärker VG; K1: 60 W; K2: 30 W
		last.AtV = append(last.AtV, a.AtV...)
		last.Doubts |= a.Doubts
	default:
		r.found = append(r.found, a)
	}
}

// finish returns the amplifiers of which something is said.
func (r *sentenceReading) finish() []RatedAmplifier {
	var out []RatedAmplifier
	for i, a := range r.found {
		if a.shared && slices.ContainsFunc(r.found[i+1:], func(b saidOf) bool { return b.Name == a.Name && b.W > 0 && !b.shared }) {
			continue // Amps 1 to 3 are 2 x 200 W. Amp 3 is bridged: 400 W
		}
		a.splitAmongZones()
		ways := len(a.Ways)
		if a.Outputs == 0 && ways == 0 && a.W == 0 && a.TotalW == 0 && len(a.AtV) == 0 && len(r.atV) == 0 {
			continue
		}
		wayed := slices.ContainsFunc(a.Ways, func(w NamedWatts) bool { return w.W > 0 })
		if a.Name == "" && !a.worded && !wayed && !(a.W > 0 && (a.outputs || a.counted && a.PerOutput)) {
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

// splitAmongZones takes the powers of zones for those of the outputs, one for each, where
// they make up that of the amplifier: "240 W (zone 1: 120 W, zone 2: 120 W)".
func (a *saidOf) splitAmongZones() {
	sum := 0.0
	for _, z := range a.zoneWatts {
		sum += z.W
	}
	if len(a.zoneWatts) < 2 || sum != max(a.W, a.TotalW) || len(a.Ways) > 0 || a.Outputs > 1 {
		return
	}
	a.TotalW, a.W, a.PerOutput = 0, 0, false // what the outputs give together says no more
	a.Ways, a.Zones, a.Outputs, a.PerZone = a.zoneWatts, nil, len(a.zoneWatts), true
	a.Doubts &^= OtherPower
}
