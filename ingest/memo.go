package ingest

import (
	"strings"

	"lineaudit/ingest/notation"
)

// A memo remembers what the notations made of texts: a schedule says the same
// few things over and over. It serves one book and is not shared between
// goroutines.
type memo struct {
	missing    map[string]missing
	statuses   map[string][]notation.Mention
	kinds      map[string]notation.KeyKind
	channels   map[string]parsed[notation.ChannelRef]
	taps       map[styled]parsed[notation.Tap]
	conductors map[styled]parsed[notation.Conductor]
	lengths    map[styled]parsed[notation.Length]
	counts     map[styled]parsed[notation.Quantity]
}

type missing struct {
	kind notation.MissingKind
	ok   bool
}

// A styled text is a text with the decimal mark of its column and the hint
// that its header gives.
type styled struct {
	text  string
	style notation.Style
	hint  uint8
}

type parsed[T any] struct {
	value T
	err   error
}

// mostRemembered bounds a memo: texts that never come again are not worth keeping.
const mostRemembered = 50_000

func newMemo() *memo {
	return &memo{missing: make(map[string]missing), statuses: make(map[string][]notation.Mention), kinds: make(map[string]notation.KeyKind),
		channels: make(map[string]parsed[notation.ChannelRef]), taps: make(map[styled]parsed[notation.Tap]),
		conductors: make(map[styled]parsed[notation.Conductor]), lengths: make(map[styled]parsed[notation.Length]),
		counts: make(map[styled]parsed[notation.Quantity])}
}

// remember returns what parse gives for a key, asking it once.
func remember[K comparable, V any](m map[K]V, k K, parse func() V) V {
	v, ok := m[k]
	if !ok {
		v = parse()
		if len(m) < mostRemembered {
			m[k] = v
		}
	}
	return v
}

func (m *memo) missingMark(s string) (notation.MissingKind, bool) {
	v := remember(m.missing, s, func() missing {
		kind, ok := notation.Missing(s)
		return missing{kind, ok}
	})
	return v.kind, v.ok
}

func (m *memo) statusWords(s string) []notation.Mention {
	return remember(m.statuses, s, func() []notation.Mention { return notation.Statuses(s) })
}

// keyKind is the kind of thing that a tag names, which its letters tell: tags
// that differ in their figures alone are of one kind.
func (m *memo) keyKind(s string) notation.KeyKind {
	shape := strings.Map(func(r rune) rune {
		if r >= '1' && r <= '9' {
			return '0'
		}
		return r
	}, s)
	return remember(m.kinds, shape, func() notation.KeyKind { return notation.KeyOf(s).Kind })
}

func (m *memo) channel(s string) (notation.ChannelRef, error) {
	p := remember(m.channels, s, func() (p parsed[notation.ChannelRef]) {
		p.value, p.err = notation.ParseChannel(s)
		return p
	})
	return p.value, p.err
}

func (m *memo) tap(s string, style notation.Style) (notation.Tap, error) {
	p := remember(m.taps, styled{s, style, 0}, func() (p parsed[notation.Tap]) {
		p.value, p.err = notation.ParseTap(s, style)
		return p
	})
	return p.value, p.err
}

func (m *memo) conductor(s string, style notation.Style, hint notation.SizeHint) (notation.Conductor, error) {
	p := remember(m.conductors, styled{s, style, uint8(hint)}, func() (p parsed[notation.Conductor]) {
		p.value, p.err = notation.ParseConductor(s, style, hint)
		return p
	})
	return p.value, p.err
}

func (m *memo) length(s string, style notation.Style, header notation.LengthUnit) (notation.Length, error) {
	p := remember(m.lengths, styled{s, style, uint8(header)}, func() (p parsed[notation.Length]) {
		p.value, p.err = notation.ParseLength(s, style, header)
		return p
	})
	return p.value, p.err
}

func (m *memo) count(s string, style notation.Style) (notation.Quantity, error) {
	p := remember(m.counts, styled{s, style, 0}, func() (p parsed[notation.Quantity]) {
		p.value, p.err = notation.ParseQuantity(s, style)
		return p
	})
	return p.value, p.err
}
