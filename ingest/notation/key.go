package notation

import (
	"strings"
)

// A KeyKind is the kind of thing that a name starts with.
type KeyKind string

// The kinds of key.
const (
	KeyNone        KeyKind = ""
	KeyZone        KeyKind = "zone"
	KeyChannel     KeyKind = "channel"
	KeyAmplifier   KeyKind = "amplifier"
	KeyControl     KeyKind = "control"
	KeyLine        KeyKind = "line"
	KeyLoudspeaker KeyKind = "loudspeaker"
	KeyCable       KeyKind = "cable"
	KeyRack        KeyKind = "rack"
)

// A Key is a name in comparable form: "Zone 1", "Z-01" and "1 - Orangery" have
// the ID "1", "1 - Orangery" and "Orangery" the name "orangery".
type Key struct {
	Kind    KeyKind // what a word of the text says it is, in any language
	Letters string  // folded letters of a code that names no kind: "ph" of "PH-01"
	ID      string  // number without zero padding, parts joined by dots, with a letter: "1", "1.2", "1a", "a"; "" if none
	Name    string  // free name, folded, words joined by single spaces: "palm house 2"
}

// IsZero reports whether the key names nothing.
func (k Key) IsZero() bool { return k.ID == "" && k.Name == "" }

// String returns the key as a message shows it; it is not meant to be read again.
func (k Key) String() string {
	code := k.ID
	switch {
	case k.Letters != "":
		code = k.Letters + "-" + k.ID
	case k.Kind != KeyNone && k.ID != "":
		code = string(k.Kind) + " " + k.ID
	case k.Kind != KeyNone:
		code = string(k.Kind)
	}
	switch {
	case code == "":
		return k.Name
	case k.Name == "":
		return code
	}
	return code + " - " + k.Name
}

// KeyOf returns the key of a name: "Zone 1", "Z-01", "zone 01 (Orangery)",
// "1 - Orangery", "Orangery", "VC-3", "Rink 2". A number behind a word for a
// kind, in front of a name, or in a short code is the ID; any other is part of
// the name, so that Rink 1 and Rink 2 stay apart. A blank, missing or ditto
// mark has the zero Key.
func KeyOf(s string) Key {
	return knownKeys.Of(s, 0)
}

func parseKey(s string) Key {
	text := Clean(s)
	if _, missing := Missing(text); missing || Ditto(text) || len(text) > 4*maxText {
		return Key{}
	}
	tokens := trimMarks(lexCodes(strings.ReplaceAll(text, "\n", " ")))
	var k Key
	rest := tokens
	if n, ok := k.takeCode(tokens, 0); ok {
		rest = tokens[n:]
	} else if n, ok := k.takeNumber(tokens); ok {
		rest = tokens[n:]
	} else {
		// Orangery (Zone 1)
		for i := 1; i < len(tokens); i++ {
			var tail Key
			n, ok := tail.takeCode(tokens, i)
			if !ok || tail.Kind == KeyNone {
				continue
			}
			k = tail
			rest = append(append([]token(nil), tokens[:i]...), tokens[i+n:]...)
			break
		}
	}
	k.Name = nameOf(rest)
	if k.ID == "" && k.Name == "" {
		return Key{}
	}
	if k.ID == "" && k.Kind != KeyZone { // "Control room" is a room
		k.Kind = KeyNone
		k.Name = nameOf(tokens)
	}
	return k
}

// takeCode reads a kind word with its number, or a short code, at tokens[i].
// "Zone Orangery" gives the kind alone.
func (k *Key) takeCode(tokens []token, i int) (n int, ok bool) {
	if i >= len(tokens) || tokens[i].kind != wordToken {
		return 0, false
	}
	kind, sure, n, found := nameAt(tokens, i)
	if found {
		next, taken := idAt(tokens, i+n)
		if taken > 0 && (sure || !tokens[i+n].gap || kind == KeyZone) {
			k.Kind, k.ID = kind, next
			return n + taken, true
		}
		if sure && kind == KeyZone && i == 0 && taken == 0 {
			k.Kind = kind
			return n, true
		}
		return 0, false
	}
	if i > 0 || len([]rune(tokens[i].raw)) > 3 || i+1 >= len(tokens) {
		return 0, false
	}
	next := i + 1
	if tokens[next].gap && len([]rune(tokens[i].raw)) > 1 {
		return 0, false // "Dry 2" is a name
	}
	id, taken := idAt(tokens, next)
	if taken == 0 || !strings.ContainsAny(id, "0123456789") {
		return 0, false
	}
	k.Letters, k.ID = tokens[i].text, id
	return 1 + taken, true
}

// takeNumber reads a number in front of a name: "1 - Orangery", "01 Orangery".
func (k *Key) takeNumber(tokens []token) (n int, ok bool) {
	if len(tokens) == 0 || tokens[0].kind != figureToken {
		return 0, false
	}
	id, n := idAt(tokens, 0)
	if n == 0 || n < len(tokens) && !tokens[n].gap && tokens[n].kind == wordToken {
		return 0, false // "3rd rink"
	}
	k.ID = id
	if n < len(tokens) { // "1 - Zone Orangery", "1. Zone"
		at := n
		for at < len(tokens) && tokens[at].kind == markToken {
			at++
		}
		if kind, sure, words, found := nameAt(tokens, at); found && sure && kind == KeyZone {
			k.Kind = kind
			return at + words, true
		}
	}
	return n, true
}

// idAt reads an ID at tokens[i]: digits with parts and a letter, or a single
// letter, a numeral or a Roman number, after marks such as - # and "no.".
func idAt(tokens []token, i int) (id string, n int) {
	start := i
	for i < len(tokens) && (tokens[i].kind == markToken && strings.Contains("-#._:°", tokens[i].text) ||
		tokens[i].kind == wordToken && isNumberWord(tokens[i].text) && i+1 < len(tokens)) {
		i++
	}
	if i >= len(tokens) {
		return "", 0
	}
	t := tokens[i]
	spelled, isSpelled := spelledID(t)
	switch {
	case t.kind == figureToken:
		id = unpadded(t.raw)
		i++
		for i+1 < len(tokens) && tokens[i].is(".") && !tokens[i].gap && tokens[i+1].kind == figureToken && !tokens[i+1].gap {
			id += "." + unpadded(tokens[i+1].raw)
			i += 2
		}
		if i < len(tokens) && isSingleLetter(tokens[i]) && (!tokens[i].gap || i+1 == len(tokens)) {
			id += tokens[i].text
			i++
		}
	case isSpelled && (i > start || t.gap || start == 0):
		id = spelled
		i++
	case isSingleLetter(t) && i > 0:
		id = t.text
		i++
		if i < len(tokens) && tokens[i].kind == figureToken && !tokens[i].gap {
			id += unpadded(tokens[i].raw)
			i++
		}
	default:
		return "", 0
	}
	return id, i - start
}

func isNumberWord(w string) bool {
	switch w {
	case "no", "nr", "number", "num", "numero", "n", "nummer", "nº":
		return true
	}
	return false
}

// romanNumbers are those of more than one letter: a single one is a letter.
var romanNumbers = map[string]string{
	"II": "2", "III": "3", "IV": "4", "VI": "6", "VII": "7", "VIII": "8", "IX": "9", "XI": "11", "XII": "12",
}

// spelledID reads "II" and "two".
func spelledID(t token) (string, bool) {
	if t.kind != wordToken {
		return "", false
	}
	if id, ok := romanNumbers[t.raw]; ok {
		return id, true
	}
	e, ok := words("numeral").phrases[t.text]
	return e.kind, ok
}

// unpadded returns digits without leading zeros.
func unpadded(digits string) string {
	if s := strings.TrimLeft(digits, "0"); s != "" {
		return s
	}
	return "0"
}

// nameOf returns the folded words and numbers of tokens.
func nameOf(tokens []token) string {
	var b strings.Builder
	for i, t := range tokens {
		if t.kind == markToken {
			continue
		}
		if b.Len() > 0 && (t.gap || t.kind == tokens[i-1].kind || tokens[i-1].kind == markToken) {
			b.WriteByte(' ')
		}
		if t.kind == figureToken {
			b.WriteString(unpadded(t.raw))
		} else {
			b.WriteString(t.text)
		}
	}
	return b.String()
}
