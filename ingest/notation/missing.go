package notation

import (
	"slices"
	"strings"
)

// A MissingKind is why a value is missing.
type MissingKind uint8

// The kinds of missing mark.
const (
	MissingNone MissingKind = iota
	MissingBlank
	MissingDash
	MissingNotApplicable
	MissingToBeConfirmed
	MissingUnknown
	MissingByOthers
	MissingFieldSet
	MissingSeePlan
)

// missingNames are the kinds as messages and the word lists name them.
var missingNames = [...]string{MissingNone: "", MissingBlank: "blank", MissingDash: "dash", MissingNotApplicable: "not applicable",
	MissingToBeConfirmed: "to be confirmed", MissingUnknown: "unknown", MissingByOthers: "by others", MissingFieldSet: "set in the field", MissingSeePlan: "see plan"}

func (k MissingKind) String() string { return missingNames[k] }

// Missing reports whether a whole cell is a mark for a missing value, and of
// which kind: blank, a dash, "n/a", "TBC", "k.A.", "à définir", "by others".
//
// "s.o." is both a missing mark (French, sans objet) and a ditto mark (German,
// siehe oben): Missing and Ditto both report it, and the language decides.
func Missing(s string) (MissingKind, bool) {
	if s != "" && isDigit(rune(s[0])) { // no mark starts with a figure
		return MissingNone, false
	}
	m := knownMissings.Of(s, 0)
	return m.kind, m.ok
}

func parseMissing(s string) (MissingKind, bool) {
	text := Clean(s)
	if text == "" {
		return MissingBlank, true
	}
	if len(text) > 4*maxText || isDigit(rune(text[0])) {
		return MissingNone, false
	}
	switch marks := strings.Map(dropSpace, text); {
	case strings.Trim(marks, `-_./\*x`) == "" && strings.Trim(marks, "xX") != "" && !strings.Contains(marks, ","):
		return MissingDash, true
	case strings.Trim(marks, "?()[]") == "" && strings.Contains(marks, "?"):
		return MissingUnknown, true
	case strings.Trim(marks, "xX") == "" && len(marks) > 1:
		return MissingToBeConfirmed, true
	}
	if e, ok := words("missing").whole(strings.TrimRight(text, "? ")); ok {
		return MissingKind(slices.Index(missingNames[:], e.kind)), true
	}
	return MissingNone, false
}

// Ditto reports whether a whole cell repeats the one above: ", -do-, ditto,
// "as above", dto., "wie oben", idem, "come sopra", "zie boven", ↓.
func Ditto(s string) bool {
	return knownDittos.Of(s, 0)
}

func parseDitto(s string) bool {
	text := Clean(s)
	if text == "" || len(text) > 4*maxText || isDigit(rune(text[0])) {
		return false
	}
	marks := strings.Map(dropSpace, text)
	if strings.Trim(marks, `-"'`) == "" && strings.ContainsAny(marks, `"'`) {
		return true
	}
	if strings.Trim(marks, "↓⇓⬇▼|v") == "" && strings.ContainsAny(marks, "↓⇓⬇▼") {
		return true
	}
	_, ok := words("ditto").whole(text)
	return ok
}

func dropSpace(r rune) rune {
	if r == ' ' || r == '\n' {
		return -1
	}
	return r
}
