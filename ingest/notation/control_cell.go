package notation

import (
	"regexp"
	"strconv"
	"strings"
)

// A ControlCell is a cell or title about one control taken apart.
type ControlCell struct {
	Name  string // its tag or name as written; "" if only words for a control stand there
	Watts string // its rating as written, "" if none
	Place string // where it hangs, "" if not said
}

var (
	controlWatts  = regexp.MustCompile(`(?i)[\s,;(/:–-]*\(?\b((?:\d+\s?[x×*]\s?)?\d+(?:[.,]\d+)?\s?k?W(?:atts?)?\b[^)–]*?)(?:\)|$|\s+[–-]\s+)`)
	wattsAhead    = regexp.MustCompile(`(?i)^\(?(\d+(?:[.,]\d+)?\s?k?W(?:atts?)?)\)?[\s,;:/–-]+(\S.*)$`)
	controlJoiner = regexp.MustCompile(`(?i)(?:[\s,;(/:–-]*\s|[\s,;/:–-]*\()(?:da|de|di|d'|of|with|rated|for|max\.?|maxi|up to|bis|mit|von|für|à|a|con|tot|van|met|jusqu'à)\.?$`)
	controlBehind = regexp.MustCompile(`(?i)^(?:behind|via|through|after|on|derrière|sur|après|hinter|über|an|tras|detrás de|dietro|su|achter|op)\s+(?:the |a |an |le |la |l'|un |une |dem |der |einem |el |il |lo |de |het |een )?`)
	controlTag    = regexp.MustCompile(`^(?:\p{L}{1,4}[-. ]?\d{1,3}\p{L}?|\p{Lu}{1,4}-\p{Lu}{1,3}\d{0,2})$`)
)

// ParseControlCell finds the name of a control, its rating and its place in a
// text: "VC-1 (10 W) - Seed room", "R1 da 10 W", "behind attenuator T1, 12 W",
// "35 W wall control". Words for a control in front of a tag are left out.
func ParseControlCell(s string) ControlCell { return knownControlCells.Of(s, 0) }

func parseControlCell(s string) ControlCell {
	name := strings.Join(strings.Fields(strings.TrimRight(s, " :")), " ")
	var p ControlCell
	ahead := wattsAhead.FindStringSubmatch(name)
	if ahead != nil && IsControlWord(ahead[2]) {
		return ControlCell{Watts: ahead[1]}
	}
	if m := controlWatts.FindStringSubmatchIndex(name); m != nil && m[0] > 0 {
		p.Watts = strings.TrimRight(name[m[2]:m[3]], " ,;:-–")
		p.Place = strings.Trim(name[m[1]:], " ,;:()-–")
		figure := powerHead.FindString(p.Watts)
		switch rest := p.Watts[len(figure):]; {
		case strings.Contains(p.Watts, " ") && startsPlace(rest): // "35 W Orchid house"
			p.Watts, p.Place = figure, strings.TrimSpace(rest+" "+p.Place)
		case strings.HasPrefix(rest, ","), strings.HasPrefix(rest, ";"): // "12 W, 24 V override"
			p.Watts = figure
		}
		name = strings.TrimRight(name[:m[0]], " ,;(/:–-")
		name = strings.TrimRight(controlJoiner.ReplaceAllString(name, ""), " ,;(/:–-")
	} else {
		for _, mark := range []string{" - ", " – "} {
			if before, after, ok := strings.Cut(name, mark); ok && controlTag.MatchString(strings.TrimSpace(before)) {
				name, p.Place = strings.TrimSpace(before), strings.TrimSpace(after)
				break
			}
		}
	}
	name = tagAlone(controlBehind.ReplaceAllString(name, ""))
	fields := strings.Fields(name)
	for n := 1; n <= 2 && n < len(fields); n++ {
		tag, kind := strings.Join(fields[len(fields)-n:], " "), strings.Join(fields[:len(fields)-n], " ")
		if controlTag.MatchString(tag) && IsControlWord(kind) {
			name = tag
			break
		}
	}
	if !IsControlWord(name) {
		p.Name = name
	}
	return p
}

// tagAlone frees the tag of a control from a yes in front of it and from remarks
// behind a comma: "yes - AT1", "AT2, same one as the shop". Other texts come back whole.
func tagAlone(name string) string {
	for _, mark := range []string{" - ", " – ", ", ", ": "} {
		before, after, ok := strings.Cut(name, mark)
		switch before, after = strings.TrimSpace(before), strings.TrimSpace(after); {
		case !ok:
		case AnswerOf(before) == Yes && controlTag.MatchString(after):
			return after
		case mark == ", " && controlTag.MatchString(before) && !HasDigit(after):
			return before
		}
	}
	return name
}

var (
	powerHead = regexp.MustCompile(`(?i)^(?:\d+\s?[x×*]\s?)?\d+(?:[.,]\d+)?\s?k?W(?:atts?)?`)
	placeHead = regexp.MustCompile(`^\s+(\p{Lu}\pL{2,})`)
)

// startsPlace reports whether what stands behind a rating begins with a word in
// capitals that says nothing of a power.
func startsPlace(s string) bool {
	m := placeHead.FindStringSubmatch(s)
	if m == nil || IsControlWord(m[1]) {
		return false
	}
	switch fold(m[1]) {
	case "max", "maxi", "rms", "maximum", "total", "rated", "watt", "watts":
		return false
	}
	return true
}

// IsControlWord reports whether a text is no more than words for a control:
// "Regler", "wall knob", "volume control".
func IsControlWord(s string) bool { return knownControlWords.Of(s, 0) }

func isControlWord(s string) bool {
	tokens := lex(Clean(s), Point)
	control := false
	for i := 0; i < len(tokens); {
		if e, n, ok := words("name").at(tokens, i); ok && e.kind == string(KeyControl) {
			control = true
			i += n
			continue
		}
		_, n, beside := words("beside control").at(tokens, i) // words that name none
		if tokens[i].kind == figureToken || tokens[i].kind == wordToken && !beside {
			return false
		}
		i += max(n, 1)
	}
	return control
}

// WithoutControl reports whether a text says no more than that there is no
// control: "No VC", "ohne Regler".
func WithoutControl(s string) bool {
	head, rest, ok := strings.Cut(Clean(s), " ")
	tokens := lex(head, Point)
	return ok && len(tokens) == 1 && isNegation(tokens[0]) && IsControlWord(rest)
}

// CountedControls takes the number of controls off the front of a text, "(6) 10 W",
// "2 x VC 20 W"; n is 0 if there is none.
func CountedControls(s string) (n int, rest string) {
	s = strings.TrimSpace(s)
	if s == "" || s[0] != '(' && (s[0] < '0' || s[0] > '9') {
		return 0, s
	}
	m := groupCount.FindStringSubmatch(s)
	if m == nil || m[1]+m[2] == "" || len(m[0]) == len(s) {
		return 0, s
	}
	n, err := strconv.Atoi(m[1] + m[2])
	if err != nil {
		return 0, s
	}
	return n, s[len(m[0]):]
}

// OneForEach reports whether a text about controls says that there is one for
// each of several things: "one 10 W knob per booth", "je Kabine ein Regler". A
// word that also means "by" or "for" does so behind "one" alone: "un
// atténuateur par cabine", but not "par AT1".
func OneForEach(s string) bool { return knownOneForEach.Of(s, 0) }

func oneForEach(s string) bool {
	tokens := lex(Clean(s), Point)
	if len(tokens) < 2 {
		return false
	}
	one, _, ok := words("numeral").at(tokens, 0)
	counted := ok && one.kind == "1" || tokens[0].raw == "1"
	for i := range tokens {
		if e, _, ok := words("said").at(tokens, i); ok && e.kind == "each" {
			return true
		}
		if e, _, ok := words("foreach").at(tokens, i); ok && (e.sure || counted) {
			return true
		}
	}
	return false
}

// OneEach reports whether a text gives one to each of the things that it names: "je ein
// Regler", "one knob each", "chacun un atténuateur". Where a word says of what each, "one
// per cabin", it does not.
func OneEach(s string) bool {
	tokens := lex(Clean(s), Point)
	each, one := false, false
	for i := range tokens {
		if _, _, of := words("foreach").at(tokens, i); of {
			return false
		}
		if e, _, ok := words("said").at(tokens, i); ok && e.kind == "each" {
			each = true
		}
		if e, _, ok := words("numeral").at(tokens, i); ok && e.kind == "1" || tokens[i].raw == "1" || tokens[i].text == "a" {
			one = true
		}
	}
	return each && one
}
