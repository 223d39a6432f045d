// Package join lets names meet that several hands wrote differently: "Zone 1",
// "Z-01" and "1 - Orangery" are one zone, "AMP 1" and "A1" one amplifier. It
// knows no schedule, only written names, and says when a match is ambiguous.
package join

import (
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"
)

// A Kind is what a name names; the words for it carry no meaning of their own
// ("zone" in "Zone 1").
type Kind uint8

// The kinds of names. Plain has no words of its own.
const (
	Plain Kind = iota
	Zone
	Amplifier
	Channel
	Control
	Loudspeaker
	Cable
	Room
	Rack
)

// kindWords are the folded words of each kind, in English, German, French,
// Spanish, Italian and Dutch. Sources: trade words from memory and the public
// schedules behind the header vocabulary.
var kindWords = map[Kind]map[string]bool{
	Zone: words("zone zones zonen zona zonas zn zo paging evac rufkreis rufzone kreis gruppe group groupe grupo gruppo groep pagingzone " +
		"bereich sector secteur zonenr oproepzone"),
	Amplifier: words("amp amps amplifier ampli amplificateur amplificador amplificatore verstaerker verstarker endstufe endstufen etapa finale " +
		"versterker eindversterker eindtrap potencia poweramp pa power unit booster leistungsverstarker"),
	Channel: words("channel ch chan output out op o p kanal kan ausgang ausg canal voie sortie salida canale uscita kanaal uitgang k line linie " +
		"ligne linea lijn lig lin ltg circ circuit cct kreis stromkreis"),
	Control: words("vc vol volume control ctrl att attenuator vr lsr regler lautstarkeregler lautstarkesteller lautstaerkeregler lautstaerkesteller attenuateur " +
		"potentiometre atenuador regulador mando attenuatore regolatore volumeregelaar regelaar steller reglage"),
	Loudspeaker: words("ls spk spkr speaker loudspeaker lautsprecher ls hp hautparleur haut parleur altavoz altoparlante diffusore luidspreker lsp sp"),
	Cable:       words("cable cbl kabel cavo run line linie ligne linea lijn lig lin ltg circ circuit leitung kreis strang circuito kring"),
	Room:        words("room rm raum local sala ruimte locale"),
	Rack:        words("rack rk schrank baie armadio kast"),
}

// shortWords are kind words of one or two letters, which count only next to a
// number: the Z of "Z1", not that of "Z".
var shortWords = map[Kind]map[string]bool{
	Zone:        words("z"),
	Amplifier:   words("a v e"),
	Channel:     words("c"),
	Control:     words("v"),
	Loudspeaker: words("l s"),
	Cable:       words("k c l"),
	Room:        words("r"),
}

func words(s string) map[string]bool {
	m := make(map[string]bool)
	for w := range strings.FieldsSeq(s) {
		m[w] = true
	}
	return m
}

// Fold lowers the case of s and takes accents off its letters, so that "Größe"
// and "GROSSE" are one. Compatibility forms become plain (½ is 1/2, ² is 2).
func Fold(s string) string {
	if isASCII(s) {
		return strings.ToLower(s)
	}
	var b strings.Builder
	b.Grow(len(s))
	for _, r := range norm.NFKD.String(strings.ToValidUTF8(s, " ")) {
		switch {
		case unicode.Is(unicode.Mn, r):
		case r == 'ß' || r == 'ẞ':
			b.WriteString("ss")
		case r == 'æ' || r == 'Æ':
			b.WriteString("ae")
		case r == 'œ' || r == 'Œ':
			b.WriteString("oe")
		case r == 'ø' || r == 'Ø':
			b.WriteByte('o')
		default:
			b.WriteRune(unicode.ToLower(r))
		}
	}
	return b.String()
}

func isASCII(s string) bool {
	for i := range len(s) {
		if s[i] >= 0x80 {
			return false
		}
	}
	return true
}

// Key is s reduced to its folded letters and digits, zeros in front of numbers
// left out, two numbers kept apart by a dot, and the plus sign kept, since
// "WK-35+" is another product than "WK-35".
func Key(s string) string { return keys.Of(s, 0) }

func joined(toks []token) string {
	var b strings.Builder
	for i, t := range toks {
		if i > 0 && t.digits && toks[i-1].digits {
			b.WriteByte('.')
		}
		b.WriteString(t.text)
	}
	return b.String()
}

// A token is a run of letters or of digits.
type token struct {
	text   string
	digits bool
	glued  bool // no separator between this one and the one before
}

// tokens takes a folded text apart.
func tokens(s string) []token {
	var out []token
	start, kind, sep := -1, 0, true
	flush := func(end int) {
		if start < 0 {
			return
		}
		t := token{text: s[start:end], digits: kind == 1, glued: !sep}
		if t.digits {
			t.text = strings.TrimLeft(t.text, "0")
			if t.text == "" {
				t.text = "0"
			}
		}
		out = append(out, t)
		start, sep = -1, false
	}
	for i, r := range s {
		k := 0
		switch {
		case r >= '0' && r <= '9':
			k = 1
		case unicode.IsLetter(r) || r == '+' && start >= 0, unicode.IsDigit(r):
			k = 2
		}
		if k != kind || k == 0 {
			flush(i)
			kind = k
			if k != 0 {
				start = i
			} else {
				sep = true
			}
		}
	}
	flush(len(s))
	return out
}

// A Name is a written name taken apart.
type Name struct {
	Written string
	Full    string // every letter and digit: "zone1orangery"
	Number  string // the number that identifies it: "1", "12b"; "" if there is none
	Title   string // the words that identify it: "orangery"; "" if there are none
	Prefix  string // letters in front of a number that are no word of the kind: "evac" of "EVAC-3"
	Tail    string // the number behind such a prefix: "3"
	Rest    string // the words behind that number: "foyer" of "B3 - Foyer"
}

// Bare reports whether the name is nothing but a number: "3", "03".
func (n Name) Bare() bool { return n.Number != "" && n.Title == "" && n.Full == n.Number }

// identity is the name without the words of its kind.
func (n Name) identity() string { return n.Number + "\x00" + n.Title }

// Parse takes a name of the given kind apart. A number identifies the thing
// where it stands alone, first, or behind a word of the kind: "Rink 2" is a
// title, "Zone 2" and "2 - Rink" have the number 2.
func Parse(kind Kind, written string) Name { return names.Of(written, int(kind)) }

// longestName is the bytes of a name that is still taken apart; what is longer
// names nothing but itself.
const longestName = 500

func parse(kind Kind, written string) Name {
	toks := tokens(Fold(written))
	n := Name{Written: written}
	n.Full = joined(toks)
	if len(written) > longestName {
		n.Title = n.Full
		return n
	}

	long, short := kindWords[kind], shortWords[kind]
	var title []string
	for i := 0; i < len(toks); i++ {
		t := toks[i]
		next := i+1 < len(toks) && toks[i+1].digits
		if !t.digits {
			// a word of the kind says nothing, unless it is all there is
			if long[t.text] && len(toks) > 1 || short[t.text] && next && toks[i+1].glued || short[t.text] && next && i == 0 {
				if next && n.Number == "" {
					n.Number, i = number(toks, i+1)
				}
				continue
			}
			// "no 3", "nr. 3", "n° 3"; N3 is a name
			if next && n.Number == "" && len(title) == 0 && numberWords[t.text] && (len(t.text) > 1 || !toks[i+1].glued) {
				n.Number, i = number(toks, i+1)
				continue
			}
			title = append(title, t.text)
			continue
		}
		if n.Number == "" && len(title) == 0 && !ordinal(toks, i) {
			n.Number, i = number(toks, i)
			continue
		}
		title = append(title, t.text)
	}
	n.Title = strings.Join(title, " ")
	if n.Number == "" && len(toks) >= 2 && !toks[0].digits && toks[1].digits {
		n.Prefix, n.Tail = toks[0].text, toks[1].text
		rest := make([]string, 0, len(toks)-2)
		for _, t := range toks[2:] {
			rest = append(rest, t.text)
		}
		n.Rest = strings.TrimSpace(strings.Join(rest, " "))
	}
	return n
}

// coded reports whether the name begins with a short code of letters and a
// number and has a title behind it: "B1 - Orangery".
func (n Name) coded() bool { return n.Prefix != "" && len(n.Prefix) <= 2 && len(n.Rest) > 2 }

// HasWord reports whether a text has a word of the kind: "Amp ref" has one for
// an amplifier.
func HasWord(kind Kind, text string) bool { return worded.Of(text, int(kind)) }

func hasWord(kind Kind, text string) bool {
	for _, t := range tokens(Fold(text)) {
		if kindWords[kind][t.text] {
			return true
		}
	}
	return false
}

var numberWords = words("no nr n num numero nummer number nro")

// number returns the number at toks[i] with a single letter or a further
// number that is glued to it ("12b", "1.2"), and the last token it used.
func number(toks []token, i int) (string, int) {
	n := toks[i].text
	if i+1 < len(toks) && toks[i+1].glued && !toks[i+1].digits && len(toks[i+1].text) == 1 {
		return n + toks[i+1].text, i + 1
	}
	return n, i
}

// ordinal reports whether the number at toks[i] belongs to a word: "1st", "2nd", "3e", "4x".
func ordinal(toks []token, i int) bool {
	if i+1 >= len(toks) || !toks[i+1].glued || toks[i+1].digits {
		return false
	}
	return len(toks[i+1].text) > 1
}
