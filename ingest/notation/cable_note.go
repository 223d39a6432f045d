package notation

import "strings"

// A CableNote is what a note says of the conductors of all cables.
type CableNote struct {
	Size   string      // the conductors as written: "16/2", "2 x 1.5 mm2"
	Except []NamedSize // the lines or places that have others
}

// A NamedSize is a line or place with the conductors of its cable, as written.
type NamedSize struct{ Name, Size string }

// ParseCableNote reads a note about the conductors of all cables: "All wire 16/2
// except Z4 18/2", "Kabel durchgehend 2x1,5 mm²". A note with words for anything
// else is about some of the cables only.
//
// The error wraps ErrNotUnderstood for every other text.
func ParseCableNote(s string, style Style) (CableNote, error) {
	return knownCableNotes.of(s, int(style))
}

func parseCableNote(s string, style Style) (CableNote, error) {
	const what = "note about cables"
	text, err := prepare(what, s)
	if err != nil {
		return CableNote{}, err
	}
	sizes := sizeIn.FindAllStringIndex(text, -1)
	var note CableNote
	from := 0
	for i, m := range sizes {
		before, size := text[from:m[0]], text[m[0]:m[1]]
		c, err := ParseConductor(size, style, HintNone)
		plain, name, cable := cableNoteWords(before)
		switch {
		case err != nil || !c.HasSize() || powerBehind.MatchString(text[m[1]:]):
			return CableNote{}, fail(what, text, ErrNotUnderstood)
		case i == 0 && plain && cable:
			note.Size = size
		case i > 0 && name != "":
			note.Except = append(note.Except, NamedSize{name, size})
		default:
			return CableNote{}, fail(what, text, ErrNotUnderstood)
		}
		from = m[1]
	}
	if plain, _, _ := cableNoteWords(text[from:]); len(sizes) == 0 || !plain {
		return CableNote{}, fail(what, text, ErrNotUnderstood)
	}
	return note, nil
}

// cableNoteWords looks through words of a note: whether they name nothing in
// particular; else the name that all behind a word for an exception is; and
// whether one of them is a word for cables.
func cableNoteWords(text string) (plain bool, name string, cable bool) {
	words := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(" ,;:()", r) })
	l := lexicons()["cablenote"]
	except := false
	for len(words) > 0 {
		kind, n := "", 0
		for k := min(l.longest, len(words)); k > 0 && n == 0; k-- {
			key, _ := phraseKey(strings.Join(words[:k], " "))
			if e, ok := l.phrases[key]; ok {
				kind, n = e.kind, k
			}
		}
		if n == 0 {
			if except {
				return false, strings.Join(words, " "), cable
			}
			if key, _ := phraseKey(words[0]); key != "" {
				return false, "", cable
			}
			n = 1 // marks only
		}
		except = except || kind == "except"
		cable = cable || kind == "cable"
		words = words[n:]
	}
	return true, "", cable
}
