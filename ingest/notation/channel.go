package notation

import (
	"slices"
	"strconv"
	"strings"
)

// A ChannelRef names one or more outputs of an amplifier.
type ChannelRef struct {
	Amplifier string   // as written, without its kind word: "1", "A1", "PA-02"; "" if none
	Channels  []string // in the order written: "1", "B"; none where only the amplifier is named
	Bridged   bool     // the channels are one, bridged
	Parallel  bool     // the channels are one, in parallel
	AB        bool     // a pair of interleaved circuits A and B
	Doubts    Doubts
}

// mostChannelRefs is the most channels that one cell may name.
const mostChannelRefs = 64

// longestAmplifier is the longest name of an amplifier, in runes.
const longestAmplifier = 40

// String returns the reference so that ParseChannel reads it again.
func (c ChannelRef) String() string {
	var parts []string
	if c.Amplifier != "" {
		parts = append(parts, "Amp "+c.Amplifier)
	}
	if len(c.Channels) > 0 {
		parts = append(parts, "Ch "+strings.Join(c.Channels, "+"))
	}
	if c.Bridged {
		parts = append(parts, "bridged")
	}
	if c.Parallel {
		parts = append(parts, "parallel")
	}
	return strings.Join(parts, " ")
}

// ParseChannel reads a reference to an amplifier's output: "A1.2", "AMP 1 CH
// B", "1-3" (amplifier 1, channel 3, with the doubt DateOrPair), "Amp 2 / ch
// 3+4 bridged", "A1/CH3", "PA-02:4", "Ch 1+2", "A/B", "Endstufe 2 Kanal 3",
// "Ampli 1 sortie 2", "Amp 1 zone 2", "DSP amp 3, out 2", "A1 s2", "rack 1 amp 2 ch 3" (amplifier
// "rack 1 / 2"). A single figure or code is a channel.
func ParseChannel(s string) (ChannelRef, error) {
	return knownChannels.of(s, 0)
}

func parseChannel(s string) (ChannelRef, error) {
	const what = "channel"
	text, err := prepare(what, s)
	if err != nil {
		return ChannelRef{}, err
	}
	text = amplifierFirst(strings.ReplaceAll(text, "\n", " "))
	r := channelReading{}
	rest := r.takeBridging(r.plainCodes(lexCodes(text)))
	for len(rest) > 0 && rest[0].is("(") && rest[len(rest)-1].is(")") {
		rest = rest[1 : len(rest)-1]
	}
	if len(rest) == 0 {
		return ChannelRef{}, fail(what, text, ErrNotUnderstood)
	}
	if rest[0].is("-") || rest[0].is("+") || isStandard(rest) {
		return ChannelRef{}, fail(what, text, ErrNotUnderstood)
	}
	for _, t := range rest {
		if t.kind == markToken && !strings.Contains("-./:+,;&#()_|→", t.text) {
			return ChannelRef{}, failBecause(what, text, strconv.Quote(t.raw)+" has no meaning here", ErrNotUnderstood)
		}
	}
	found, ok := r.worded(rest)
	if !found {
		ok = r.coded(rest)
	}
	if !ok {
		return ChannelRef{}, fail(what, text, ErrNotUnderstood)
	}
	if len(r.c.Channels) > mostChannelRefs {
		return ChannelRef{}, fail(what, text, ErrTooLarge)
	}
	if len([]rune(r.c.Amplifier)) > longestAmplifier {
		return ChannelRef{}, fail(what, text, ErrNotUnderstood)
	}
	if isPairAB(r.c.Channels) {
		r.c.AB = !r.c.Bridged && !r.c.Parallel
		if r.c.AB {
			r.c.Doubts |= PairOrCircuits
		}
	}
	return r.c, nil
}

// standardBodies begin the names of standards: "EN 54-24", "BS 5839-8".
var standardBodies = []string{"en", "din", "iso", "iec", "bs", "vde", "nen", "nf", "une", "uni", "ul"}

// leastStandard is the least number that is taken for a standard's behind its
// body. Common practice, no source.
const leastStandard = 50

// isStandard reports whether tokens name a standard.
func isStandard(tokens []token) bool {
	if len(tokens) < 2 || !slices.Contains(standardBodies, tokens[0].text) || tokens[1].kind != figureToken {
		return false
	}
	n, ok := numberOf(tokens[1].raw)
	return ok && n >= leastStandard
}

func isPairAB(channels []string) bool {
	return len(channels) == 2 && strings.EqualFold(channels[0], "a") && strings.EqualFold(channels[1], "b")
}

// A channelReading is a channel cell on its way to a ChannelRef.
type channelReading struct {
	c   ChannelRef
	end bool // it reads an end of a range, which is no range itself
}

// Bridging reports whether a text begins with a word for outputs that are bridged, and
// is little more than that: "Bridged", "gebrückt, 100 V".
func Bridging(s string) bool {
	tokens := lex(Clean(s), Point)
	e, n, ok := words("bridging").at(tokens, 0)
	return ok && e.kind == "bridged" && len(tokens)-n <= 4
}

// takeBridging removes "bridged" and "parallel", with the brackets around them.
func (r *channelReading) takeBridging(tokens []token) []token {
	var out []token
	for i := 0; i < len(tokens); i++ {
		e, n, ok := words("bridging").at(tokens, i)
		if !ok {
			out = append(out, tokens[i])
			continue
		}
		r.c.Bridged = r.c.Bridged || e.kind == "bridged"
		r.c.Parallel = r.c.Parallel || e.kind == "parallel"
		i += n - 1
		if len(out) > 0 && out[len(out)-1].is("(") && i+1 < len(tokens) && tokens[i+1].is(")") {
			out = out[:len(out)-1]
			i++
		}
		if i+1 < len(tokens) {
			tokens[i+1].gap = true
		}
	}
	for len(out) > 0 && out[len(out)-1].kind == markToken && strings.Contains("-/,;:+&", out[len(out)-1].text) {
		out = out[:len(out)-1]
	}
	return out
}

// nameAt returns the kind of a name word at tokens[i], where a name may follow
// it: behind a word comes a figure, a short code or a mark.
func nameAt(tokens []token, i int) (kind KeyKind, sure bool, n int, ok bool) {
	if i >= len(tokens) || i > 0 && !tokens[i].gap && tokens[i-1].kind == figureToken && len(tokens[i].text) < 2 {
		return "", false, 0, false
	}
	e, n, ok := words("name").at(tokens, i)
	return KeyKind(e.kind), e.sure, n, ok
}

// worded reads a reference with a word for the channel or the amplifier, if
// there is one.
func (r *channelReading) worded(tokens []token) (found, ok bool) {
	channelAt, channelN := -1, 0
	ampAt, ampN := -1, 0
	lineAt, lineN := -1, 0 // "line 2" is an output where no other word is
	for i := 0; i < len(tokens); i++ {
		kind, sure, n, ok := nameAt(tokens, i)
		if !ok {
			continue
		}
		switch {
		case kind == KeyChannel && sure && channelAt < 0:
			channelAt, channelN = i, n
		case kind == KeyAmplifier && sure && ampAt < 0:
			ampAt, ampN = i, n
		case sure && lineAt < 0 && (kind == KeyLine || kind == KeyZone && isOutputWord(tokens[i].text)):
			lineAt, lineN = i, n
		case kind == KeyZone && sure && ampAt >= 0 && lineAt < 0:
			lineAt, lineN = i, n // "amp 1 zone 2": the outputs of a zone amplifier
		}
		i += n - 1
	}
	if channelAt < 0 && lineAt > ampAt && lineAt+lineN < len(tokens) {
		channelAt, channelN = lineAt, lineN
	}
	if ampAt > 0 && channelAt != 0 && isWordName(tokens[:ampAt]) { // "rink amp", "new amp ch 2"
		end := ampAt + ampN
		switch {
		case end == len(tokens):
			r.c.Amplifier = textOf(tokens)
			return true, true
		case channelAt == end || channelAt == end+1 && tokens[end].kind == markToken:
			r.c.Amplifier = textOf(tokens[:end])
			return true, r.setChannels(tokens[channelAt+channelN:])
		}
	}
	switch {
	case channelAt < 0 && ampAt < 0:
		return false, false
	case channelAt < 0:
		if ampAt != 0 {
			return true, false
		}
		return true, r.afterAmplifier(tokens[ampN:])
	case ampAt > channelAt: // Kanal 3 von Endstufe 2
		if channelAt != 0 {
			return true, false
		}
		between := tokens[channelN:ampAt]
		for len(between) > 0 && (between[len(between)-1].kind == markToken || isLinkWord(between[len(between)-1].text)) {
			between = between[:len(between)-1]
		}
		return true, r.setChannels(between) && r.setAmplifier(tokens[ampAt+ampN:])
	case ampAt > 0: // rack 1 amp 2 ch 3
		if kind, sure, n, ok := nameAt(tokens, 0); !ok || !sure || kind != KeyRack || n >= ampAt {
			return true, false
		}
		both := slices.Concat(trimMarks(tokens[:ampAt]), []token{{kind: markToken, text: "/", raw: "/", gap: true}}, tokens[ampAt+ampN:channelAt])
		return true, r.setAmplifier(both) && r.setChannels(tokens[channelAt+channelN:])
	case ampAt < 0 && channelAt == 0:
		for i := channelN + 1; i+1 < len(tokens); i++ { // way 3 of A1
			if tokens[i].kind == wordToken && tokens[i].gap && isLinkWord(tokens[i].text) {
				return true, r.setChannels(tokens[channelN:i]) && r.setAmplifier(tokens[i+1:])
			}
		}
	case ampAt == 0: // the amplifier may be the only one: "Amplifier output 2"
		return true, r.setAmplifierOrNone(tokens[ampN:channelAt]) && r.setChannels(tokens[channelAt+channelN:])
	}
	return true, r.setAmplifierOrNone(tokens[:channelAt]) && r.setChannels(tokens[channelAt+channelN:])
}

// mostNameWords is the most words that name an amplifier in front of its word.
const mostNameWords = 3

// isWordName reports whether tokens are words that may tell one amplifier from others, in
// front of the word for it: "rink" amp, "old plant" amplifier.
func isWordName(tokens []token) bool {
	if len(tokens) > mostNameWords {
		return false
	}
	for i, t := range tokens {
		if _, sure, _, ok := nameAt(tokens, i); t.kind != wordToken || isLinkWord(t.text) || isNumberWord(t.text) || ok && sure {
			return false
		}
		if _, numeral := numeralOf(t); numeral {
			return false
		}
	}
	return true
}

// linkWords stand between a channel and its amplifier.
var linkWords = []string{"of", "von", "de", "di", "van", "on", "an", "am", "del", "du", "der", "dell", "l"}

func isLinkWord(w string) bool { return slices.Contains(linkWords, w) }

// afterAmplifier reads what follows the amplifier's word: "1", "1.2", "2-B".
func (r *channelReading) afterAmplifier(tokens []token) bool {
	tokens = trimMarks(tokens)
	for i := 1; i < len(tokens)-1; i++ {
		if tokens[i].kind == markToken && strings.Contains("./:-", tokens[i].text) && i == lastMark(tokens[:i+1]) && (tokens[i-1].kind == figureToken || i == 1 && isSingleLetter(tokens[0])) {
			if r.setAmplifier(tokens[:i]) && r.setChannels(tokens[i+1:]) {
				return true
			}
		}
	}
	return r.setAmplifier(tokens)
}

func lastMark(tokens []token) int {
	for i := len(tokens) - 1; i >= 0; i-- {
		if tokens[i].kind == markToken {
			return i
		}
	}
	return -1
}

func (r *channelReading) setAmplifierOrNone(tokens []token) bool {
	if len(trimMarks(tokens)) == 0 {
		return true
	}
	return r.setAmplifier(tokens)
}

// setAmplifier takes tokens as the amplifier's name.
func (r *channelReading) setAmplifier(tokens []token) bool {
	tokens = trimMarks(tokens)
	for len(tokens) > 0 && isNumberWord(tokens[0].text) {
		tokens = trimMarks(tokens[1:])
	}
	if len(tokens) == 0 {
		return false
	}
	for i := range tokens {
		if kind, sure, _, ok := nameAt(tokens, i); ok && sure && kind != KeyRack {
			return false // "zone output 3": a zone is no amplifier
		}
	}
	name := textOf(tokens)
	if strings.ContainsAny(name, "+,;&|→") || !hasAlnum(name) {
		return false
	}
	r.c.Amplifier = name
	return true
}

// setChannels takes tokens as a list of channels: "3", "B", "1+2", "1-4",
// "1 & 2".
func (r *channelReading) setChannels(tokens []token) bool {
	tokens = trimMarks(tokens)
	if len(tokens) == 0 {
		return false
	}
	var channels []string
	var id string
	flush := func() bool {
		if id == "" {
			return false
		}
		channels = append(channels, id)
		id = ""
		return true
	}
	for i := 0; i < len(tokens); i++ {
		t := tokens[i]
		switch {
		case t.kind == markToken && strings.Contains("+,;&/|", t.text):
			if !flush() {
				return false
			}
		case (t.is("-") || t.kind == wordToken && t.gap && isRangeWord(t.text)) && id != "" && i+1 < len(tokens) && !strings.ContainsFunc(id, notDigit) && tokens[i+1].kind == figureToken:
			from, ok1 := numberOf(id)
			to, ok2 := numberOf(tokens[i+1].raw)
			if !ok1 || !ok2 || to <= from || to-from > mostChannelRefs {
				return false
			}
			for n := from; n < to; n++ {
				channels = append(channels, strconv.Itoa(n))
			}
			id = strconv.Itoa(to)
			i++
		case (t.is("-") || t.is("_")) && id != "" && tokens[i-1].kind == wordToken && i+1 < len(tokens) && tokens[i+1].kind == figureToken && !t.gap && !tokens[i+1].gap:
			id += t.raw // a code such as PA-02
		case t.kind == markToken:
			return false
		case t.kind == wordToken && isAnd(t.text) && t.gap && id != "":
			if !flush() {
				return false
			}
		case id == "" && len(channels) > 0 && outputWordAt(tokens, i) > 0: // line 1, line 2
			i += outputWordAt(tokens, i) - 1
		case t.kind == wordToken && len([]rune(t.raw)) > 2 && !startsCode(tokens, i) && !isRoman(tokens[i:i+1]):
			return false
		case t.gap && id != "":
			return false
		default:
			if k, _, n, ok := nameAt(tokens, i); id == "" && ok && k == KeyChannel && n == 1 {
				continue // ch 1 + ch 2
			}
			id += t.raw
		}
	}
	if !flush() {
		return false
	}
	r.c.Channels = channels
	return true
}

// outputWordAt is the number of tokens of a word for an output or a line, in front of its
// name, at tokens[i]; 0 if there is none.
func outputWordAt(tokens []token, i int) int {
	kind, sure, n, ok := nameAt(tokens, i)
	if !ok || !sure || kind != KeyChannel && kind != KeyLine || i+n >= len(tokens) {
		return 0
	}
	return n
}

// startsCode reports whether the word at tokens[i] is the letters of a code of
// at most four, such as SPK in "SPK-02".
func startsCode(tokens []token, i int) bool {
	next := i + 1
	if next < len(tokens) && (tokens[next].is("-") || tokens[next].is("_")) && !tokens[next].gap {
		next++
	}
	return len([]rune(tokens[i].raw)) <= 4 && next < len(tokens) && tokens[next].kind == figureToken && !tokens[next].gap
}

func notDigit(r rune) bool { return !isDigit(r) }

func isAnd(word string) bool {
	e, ok := words("joint").phrases[word]
	return ok && e.kind == "and"
}

// coded reads a reference without words: "A1.2", "PA-02:4", "1-3", "A/B", "3".
func (r *channelReading) coded(tokens []token) bool {
	tokens = trimMarks(tokens)
	if len(tokens) == 0 {
		return false
	}
	if r.lettered(tokens) || r.spaced(tokens) || r.spread(tokens) {
		return true
	}
	if isRoman(tokens) {
		r.c.Channels = []string{tokens[0].raw}
		return true
	}
	figures := 0
	for i, t := range tokens {
		switch {
		case t.kind == figureToken:
			figures++
			if len(t.raw) > 3 {
				return false // a telephone number or a year
			}
		case t.kind == wordToken && len([]rune(t.raw)) > 2 && !startsCode(tokens, i):
			return false // a name
		case t.kind == wordToken && i > 0 && tokens[i-1].kind == figureToken && (t.gap || isFigureWord(t.text)):
			return false // 5 W, 70V, 2x1
		}
	}
	if parts := splitAt(tokens, "/"); len(parts) == 2 && alike(parts[0], parts[1]) { // A1/A2, A1.2/A1.3
		r.c.Doubts |= DateOrPair
		return r.codedList(parts)
	}
	// a list of whole references, "A1.2 & A1.3", is one amplifier's channels
	if parts := splitAt(tokens, "+,;&|"); len(parts) > 1 {
		return r.codedList(parts)
	}
	sep := lastMark(tokens)
	if sep < 0 {
		if figures > 1 || len(tokens) > 3 || gapped(tokens) || figures == 0 && len([]rune(tokens[0].raw)) > 2 {
			return false
		}
		if _, sure, n, ok := nameAt(tokens, 0); ok && sure && n == len(tokens) {
			return false
		}
		r.c.Channels = []string{textOf(tokens)}
		return true
	}
	head, tail := tokens[:sep], tokens[sep+1:]
	mark := tokens[sep].text
	if mark == "-" && sep > 0 && tokens[sep-1].kind == markToken {
		return false // 0 / -15: figures with a sign
	}
	if len(tail) == 0 || len(head) == 0 || gapped(tail) {
		return false
	}
	simple := len(head) == 1 && len(tail) == 1
	switch {
	case simple && (r.c.Bridged || r.c.Parallel) && head[0].kind == figureToken && tail[0].kind == figureToken: // bridged 3/4
		r.c.Channels = []string{head[0].raw, tail[0].raw}
		return true
	case mark == "/" && simple && isSingleLetter(head[0]) && isSingleLetter(tail[0]): // A/B
		r.c.Channels = []string{head[0].raw, tail[0].raw}
		return true
	case (mark == "-" || mark == "_") && simple && isSingleLetter(head[0]): // amplifier A, or one name
		r.c.Doubts |= DateOrPair
	case (mark == "-" || mark == "_") && simple && head[0].kind == wordToken && tail[0].kind == figureToken && !tokens[sep].gap && !tail[0].gap: // PA-02: a tag
		r.c.Channels = []string{textOf(tokens)}
		return true
	case simple && head[0].kind == figureToken && tail[0].kind == figureToken:
		if head[0].raw == "0" || strings.Trim(tail[0].raw, "0") == "" || mark == ":" && len(tail[0].raw) == 2 {
			return false // 45.00, 12:30
		}
		if mark == "-" || mark == "/" {
			r.c.Doubts |= DateOrPair
		}
	case lastMark(head) >= 0 && (strings.Count(textOf(head), "-")+strings.Count(textOf(head), ".") > 1 || head[0].kind == figureToken):
		return false // three or more figures: a date or an address
	case head[len(head)-1].kind != figureToken && !(len(head) == 1 && tail[0].kind == figureToken):
		return false
	}
	return r.setAmplifier(head) && r.setChannels(tail)
}

// gapped reports whether a space stands inside the tokens.
func gapped(tokens []token) bool {
	for i, t := range tokens {
		if i > 0 && t.gap {
			return true
		}
	}
	return false
}

// splitAt splits tokens at marks.
func splitAt(tokens []token, marks string) [][]token {
	var out [][]token
	var part []token
	for _, t := range tokens {
		if t.kind == markToken && strings.Contains(marks, t.text) {
			out = append(out, part)
			part = nil
			continue
		}
		part = append(part, t)
	}
	return append(out, part)
}

// isFigureWord reports whether a word behind a figure makes it a quantity.
func isFigureWord(w string) bool {
	switch w {
	case "w", "v", "m", "x", "kw", "mm", "ft", "in", "va", "db":
		return true
	}
	return false
}

// codedList reads "A1.2 & A1.3", "L1A, L1B", "1+2".
func (r *channelReading) codedList(parts [][]token) bool {
	if len(parts) == 2 && len(parts[1]) == 1 && len(parts[1][0].raw) == 3 && !parts[1][0].gap && parts[1][0].kind == figureToken {
		return false // 1,200
	}
	var out ChannelRef
	for i, part := range parts {
		one := channelReading{end: r.end}
		if !one.coded(part) || len(one.c.Channels) == 0 {
			return false
		}
		if i > 0 && one.c.Amplifier != "" && one.c.Amplifier != out.Amplifier {
			return false
		}
		if i == 0 {
			out.Amplifier = one.c.Amplifier
		}
		out.Channels = append(out.Channels, one.c.Channels...)
		out.Doubts |= one.c.Doubts
	}
	out.Bridged, out.Parallel = r.c.Bridged, r.c.Parallel
	out.Doubts |= r.c.Doubts
	r.c = out
	return true
}
