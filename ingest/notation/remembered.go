package notation

import (
	"lineaudit/ingest/remember"
)

// What the parsers made of texts is kept: a schedule says the same few things
// over and over, and an archive too. How a text is read is told by its style
// and, where there is one, by the hint of its header.
var (
	knownChannels          = newMemory(4096, func(s string, _ int) (ChannelRef, error) { return parseChannel(s) })
	knownConductors        = newMemory(4096, func(s string, how int) (Conductor, error) { return parseConductor(s, style(how), SizeHint(how>>8)) })
	knownGroups            = newMemory(4096, func(s string, how int) ([]TapGroup, error) { return parseGroups(s, style(how)) })
	knownLengths           = newMemory(8192, func(s string, how int) (Length, error) { return parseLength(s, style(how), LengthUnit(how>>8)) })
	knownWatts             = newMemory(4096, func(s string, how int) (Power, error) { return parseWatts(s, style(how)) })
	knownQuantities        = newMemory(4096, func(s string, how int) (Quantity, error) { return parseQuantity(s, style(how)) })
	knownNumbers           = newMemory(4096, func(s string, how int) (Number, error) { return parseNumber(s, style(how)) })
	knownRatings           = newMemory(4096, func(s string, how int) (Rating, error) { return parseRating(s, style(how)) })
	knownSentences         = newMemory(4096, func(s string, how int) ([]RatedAmplifier, error) { return parseRatingSentence(s, style(how)) })
	knownTaps              = newMemory(8192, func(s string, how int) (Tap, error) { return parseTap(s, style(how)) })
	knownVoltages          = newMemory(4096, func(s string, how int) (LineVoltage, error) { return parseLineVoltage(s, style(how)) })
	knownKeys              = remember.New(8192, func(s string, _ int) Key { return parseKey(s) })
	knownStatusMentions    = remember.New(8192, func(s string, _ int) []Mention { return parseStatuses(s) })
	knownEmergencyMentions = remember.New(8192, func(s string, _ int) []Mention { return parseEmergency(s) })
	knownOverrideMentions  = remember.New(4096, func(s string, _ int) []Mention { return parseOverride(s) })
	knownAnswers           = remember.New(8192, func(s string, _ int) Answer { return answerOf(s) })
	knownPowers            = remember.New(4096, func(s string, how int) []Power { return powersIn(s, style(how)) })
	knownControlWords      = remember.New(4096, func(s string, _ int) bool { return isControlWord(s) })
	knownAmplifierWords    = remember.New(4096, func(s string, _ int) bool { return speaksOf(s, KeyAmplifier) })
	knownDones             = remember.New(2048, func(s string, _ int) Answer { return parseDone(s) })
	knownModelRatings      = remember.New(4096, func(s string, _ int) []ModelRating { return parseModelRatings(s) })
	knownDittos            = remember.New(16_384, func(s string, _ int) bool { return parseDitto(s) })
	knownMissings          = remember.New(16_384, func(s string, _ int) missingMark {
		kind, ok := parseMissing(s)
		return missingMark{kind, ok}
	})
	knownControlCells = remember.New(4096, func(s string, _ int) ControlCell { return parseControlCell(s) })
	knownOneForEach   = remember.New(4096, func(s string, _ int) bool { return oneForEach(s) })
	knownConductorsIn = remember.New(4096, func(s string, how int) conductorFound {
		size, rest, ok := conductorIn(s, style(how))
		return conductorFound{size, rest, ok}
	})
	knownCableNotes     = newMemory(4096, func(s string, how int) (CableNote, error) { return parseCableNote(s, style(how)) })
	knownLineVoltagesIn = remember.New(8192, func(s string, _ int) lineVoltageFound {
		v, general, ok := lineVoltageIn(s)
		return lineVoltageFound{v, general, ok}
	})
	knownRatedControls = newMemory(8192, func(s string, how int) ([]RatedControl, error) { return parseControls(s, style(how)) })
	knownCountsInNames = remember.New(8192, func(s string, _ int) int { return countInName(s) })
	knownTagLists      = memory[Tags]{remember.NewIf(8192, func(s string, _ int) outcome[Tags] {
		list, err := parseTags(s)
		return outcome[Tags]{list, err}
	}, func(p outcome[Tags]) bool { return len(p.value.List) <= keptTags })}
)

// keptTags is the most tags of one text that are kept.
const keptTags = 64

type lineVoltageFound struct {
	v           float64
	general, ok bool
}

type missingMark struct {
	kind MissingKind
	ok   bool
}

// An outcome is what a parser returned.
type outcome[T any] struct {
	value T
	err   error
}

// A memory is a parser that remembers.
type memory[T any] struct{ f *remember.Func[outcome[T]] }

func newMemory[T any](most int, parse func(s string, how int) (T, error)) memory[T] {
	return memory[T]{remember.New(most, func(s string, how int) outcome[T] {
		value, err := parse(s, how)
		return outcome[T]{value, err}
	})}
}

func (m memory[T]) of(s string, how int) (T, error) {
	p := m.f.Of(s, how)
	return p.value, p.err
}

// style is the style in the number that says how to read a text.
func style(how int) Style { return Style(how & 0xff) }
