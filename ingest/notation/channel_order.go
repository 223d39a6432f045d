package notation

import "regexp"

// outputFirst finds an output that stands before its amplifier: a word for an
// output or a line with its name, what may stand between, and the rest.
var outputFirst = regexp.MustCompile(`^((?:\pL[\pL./]*\s*)??)(\d{1,2}|\pL?\d{1,2}|\pL)\s*(?:[,/(–-]|\s(?:of|on|at|from|von|vom|am|an|de|du|de la|de l'|del|da|di|del|dell'|della|van|à|aan|op|su|en)\s|\s)\s*(.*?)\)?$`)

// lineCode is the code of a line, with a letter for one: "L1", "K2".
var lineCode = regexp.MustCompile(`^[LK]\d{1,2}$`)

// ampCode is a name that may be that of an amplifier: "V1", "A2", "ES1", "AMP-01".
var ampCode = regexp.MustCompile(`^\pL{1,4}[-.]?\d{1,3}$`)

// amplifierFirst puts the amplifier before its output: "Ausgang 1 (V1)", "line 1
// of amp 2", "salida 1 de la etapa 1" as "V1 Ausgang 1", "amp 2 line 1". It
// returns other texts as they are.
func amplifierFirst(text string) string {
	m := outputFirst.FindStringSubmatch(text)
	if m == nil {
		return text
	}
	word, name, rest := m[1], m[2], m[3]
	kind := KeyOf(word + name).Kind
	worded := word != "" && (kind == KeyChannel || kind == KeyLine)
	if !worded && !(word == "" && lineCode.MatchString(name)) {
		return text
	}
	if lead := linkAhead.FindString(rest); lead != "" {
		rest = rest[len(lead):]
	}
	switch k := KeyOf(rest).Kind; {
	case k == KeyAmplifier && SpeaksOfAmplifier(rest):
	case k != KeyChannel && k != KeyLine && k != KeyZone && k != KeyControl && k != KeyCable && k != KeyLoudspeaker && ampCode.MatchString(rest):
	default:
		return text
	}
	return rest + " " + word + name
}

// linkAhead is a joining word with which the rest begins.
var linkAhead = regexp.MustCompile(`^(?i:of|on|at|from|von|vom|am|an|de la|de l'|de|du|del|da|di|dell'|della|van|à|aan|op|sur|su|sul|en|auf|the|la|le|el|il|der|dem|het)\s+`)
