package ingest

import (
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A deviceKind is what one row describes.
type deviceKind uint8

const (
	noKind deviceKind = iota
	loudspeakerRow
	zoneRow
	amplifierRow
	channelRow
	controlRow
	cableRow
	typeRow
	measurementRow
)

// kindOf decides what a row describes, from the kind of its table, and in a
// list of several kinds from its words and the fields it fills.
func kindOf(r *row) deviceKind {
	if r.passes {
		return cableRow
	}
	switch r.t.kind {
	case layout.Zones:
		return zoneRow
	case layout.Amplifiers:
		if controlAmongAmps(r).had() {
			return controlRow
		}
		return amplifierRow
	case layout.Channels:
		return channelRow
	case layout.Controls:
		return controlRow
	case layout.Cables:
		return cableRow
	case layout.Types:
		if words := wordKind(r); (words == amplifierRow || words == controlRow) && !r.own(vocabulary.Tap).had() {
			return words // a list of equipment
		}
		return typeRow
	case layout.Measurements:
		if r.own(vocabulary.ChannelWatts).had() && r.own(vocabulary.Channel).had() && r.own(vocabulary.Zone).had() {
			return channelRow // it says what the output is, too
		}
		return measurementRow
	}
	words := wordKind(r)
	filled := func(f vocabulary.Field) bool { return r.own(f).had() }
	tapLike := filled(vocabulary.Tap) || filled(vocabulary.TotalWatts)
	switch {
	case words == controlRow && !tapLike,
		words == controlRow && filled(vocabulary.ControlWatts):
		return controlRow
	case words == amplifierRow && !tapLike:
		return amplifierRow
	case words == loudspeakerRow:
		return loudspeakerRow
	case words == controlRow && r.t.kind == layout.Mixed && tapLike && filled(vocabulary.Quantity) && behindDescribed(r):
		return loudspeakerRow
	case words == controlRow && r.t.kind == layout.Mixed:
		return controlRow
	case words == amplifierRow && r.t.kind == layout.Mixed:
		return amplifierRow
	case !tapLike && words == noKind && r.t.kind == layout.Mixed:
		switch {
		case filled(vocabulary.FrameWatts) || filled(vocabulary.ChannelWatts):
			return amplifierRow
		case filled(vocabulary.ControlWatts) && !filled(vocabulary.RatedWatts):
			return controlRow
		}
	}
	return loudspeakerRow
}

// controlAmongAmps is the name of a control in the column of names of a list of amplifiers:
// "POT1" below "AMP2", where the header does not speak of amplifiers, or one that cables lead to and from.
func controlAmongAmps(r *row) seen {
	if len(r.t.controlsAmong) > 0 {
		if s := r.own(vocabulary.Amplifier); s.had() && r.t.controlsAmong[s.key()] {
			return s
		}
	}
	if s := r.own(vocabulary.Amplifier); r.t.kind == layout.Amplifiers && s.col != nil && !join.HasWord(join.Amplifier, s.col.Header) && notation.KeyOf(s.text).Kind == notation.KeyControl && isTag(s.text) {
		return s
	}
	return seen{}
}

// wordKind is the kind that the row's words say: those of a column for it,
// else its description, its tag, its model.
func wordKind(r *row) deviceKind {
	for _, f := range []vocabulary.Field{vocabulary.Kind, vocabulary.Describe, vocabulary.Tag, vocabulary.Model} {
		s := r.own(f)
		if !s.had() {
			continue
		}
		if f == vocabulary.Tag {
			switch notation.KeyOf(s.text).Kind {
			case notation.KeyControl:
				return controlRow
			case notation.KeyAmplifier:
				return amplifierRow
			case notation.KeyLoudspeaker:
				return loudspeakerRow
			}
			continue
		}
		if k := kindInWords(s.text); k != noKind {
			return k
		}
	}
	return noKind
}

// kindInWords finds a word for a device in a text.
func kindInWords(text string) deviceKind {
	if i := strings.IndexByte(text, '('); i > 0 && anyDigit(text[:i]) { // "8 x 3 W ceiling (VC 30 W)"
		text = text[:i]
	}
	switch vocabulary.DeviceIn(text) {
	case vocabulary.ControlDevice:
		return controlRow
	case vocabulary.AmplifierDevice:
		return amplifierRow
	case vocabulary.LoudspeakerDevice:
		return loudspeakerRow
	}
	return noKind
}

// longestKind is the most words of the kind of a device: "PA power amplifier".
const longestKind = 4

// mixedByWords takes a list of loudspeakers for one of several kinds of devices where a column tells
// the kinds apart: "PA amplifier" and "Volume control" among "Loudspeaker, ceiling".
func (t *table) mixedByWords() {
	if t.kind != layout.Loudspeakers || !t.has(vocabulary.Tap) || t.Matrix {
		return
	}
	for _, f := range []vocabulary.Field{vocabulary.Kind, vocabulary.Describe} {
		for _, c := range t.byField[f] {
			speakers, others := 0, 0
			t.eachText(c, func(text string) {
				switch kindInWords(text) {
				case loudspeakerRow:
					speakers++
				case amplifierRow, controlRow:
					if countWords(text) <= longestKind && !namesLoudspeaker(text) {
						others++
					}
				}
			})
			if speakers > 0 && others > 0 && others <= speakers {
				t.kind = layout.Mixed
				return
			}
		}
	}
}

// namesLoudspeaker reports whether one of the words of a text is one for a loudspeaker:
// "altavoz amplificado" is one with an amplifier.
func namesLoudspeaker(text string) bool {
	for w := range strings.FieldsSeq(text) {
		if kindInWords(w) == loudspeakerRow {
			return true
		}
	}
	return false
}
