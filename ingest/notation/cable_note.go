package notation

import "strings"

// A CableNote is what a note says of the conductors of all cables.
type CableNote struct {
	Size   string      // the conductors as written: "16/2", "2 x 1.5 mm²"
	Except []NamedSize // the lines or places that have others
}

// A NamedSize is a line or place with the conductors of its cable, as written.
type NamedSize struct{ Name, Size string }

// longestSize is the most words of a conductor's size.
const longestSize = 5

// ParseCableNote reads a note about the conductors of all cables: "All wire 16/2
// except Z4 18/2", "Kabel durchgehend 2x1,5 mm²". A note with words for anything
// else is about some of the cables only.
//
// The error wraps ErrNotUnderstood for every other text.
func ParseCableNote(s string, style Style) (CableNote, error) {
	const what = "note about cables"
	text, err := prepare(what, s)
	if err != nil {
		return CableNote{}, err
	}
	words := strings.Fields(strings.NewReplacer(":", " ", ";", " ", ", ", " ").Replace(text))
	from, to := sizeAmong(words, style)
	if to == 0 || !aboutAllCables(words[:from]) {
		return CableNote{}, fail(what, text, ErrNotUnderstood)
	}
	note := CableNote{Size: strings.Join(words[from:to], " ")}
	rest := words[to:]
	for len(rest) > 0 {
		kind, n := cableNoteWord(rest)
		switch kind {
		case "except":
			from, to := sizeAmong(rest[n:], style)
			if to == 0 {
				if aboutAllCables(append([]string{"wire"}, rest...)) {
					return note, nil // sauf indication contraire
				}
				return CableNote{}, fail(what, text, ErrNotUnderstood)
			}
			if from == 0 {
				return CableNote{}, fail(what, text, ErrNotUnderstood)
			}
			note.Except = append(note.Except, NamedSize{strings.Join(rest[n:n+from], " "), strings.Join(rest[n+from:n+to], " ")})
			rest = rest[n+to:]
		case "cable", "plain":
			rest = rest[n:]
		default:
			return CableNote{}, fail(what, text, ErrNotUnderstood)
		}
	}
	return note, nil
}

// sizeAmong finds the first conductor among words that has a size with its unit or
// its number of cores: from and to, 0 and 0 if there is none.
func sizeAmong(words []string, style Style) (from, to int) {
	for from := range words {
		if !strings.ContainsAny(words[from][:1], "0123456789#") && !strings.EqualFold(words[from], "awg") {
			continue
		}
		for n := min(longestSize, len(words)-from); n > 0; n-- {
			c, err := ParseConductor(strings.Join(words[from:from+n], " "), style, HintNone)
			if err == nil && c.HasSize() && c.Type == "" && !c.Doubts.Has(AWGTaken) && (!c.Doubts.Has(AreaTaken) || c.Cores > 0) {
				return from, from + n
			}
		}
	}
	return 0, 0
}

// aboutAllCables reports whether words have one for cables and none for anything
// in particular.
func aboutAllCables(words []string) bool {
	cable := false
	for len(words) > 0 {
		kind, n := cableNoteWord(words)
		if n == 0 {
			return false
		}
		cable = cable || kind == "cable"
		words = words[n:]
	}
	return cable
}

// cableNoteWord reads the word of a note about cables that words begin with.
func cableNoteWord(words []string) (kind string, n int) {
	l := lexicons()["cablenote"]
	for n := min(l.longest, len(words)); n > 0; n-- {
		key, _ := phraseKey(strings.Join(words[:n], " "))
		if e, ok := l.phrases[key]; ok {
			return e.kind, n
		}
	}
	return "", 0
}
