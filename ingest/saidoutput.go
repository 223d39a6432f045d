package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// hangsWord stands between what a text describes and what feeds that: "Projector
// in the hall on output A of amplifier 1".
var hangsWord = regexp.MustCompile(`(?i)(?:^|\s)(?:on|on to|onto|off|fed by|fed from|an|über|sur|en|su|op|aan)\s+`)

// feedPart are the parts of a text that each may say what feeds a device.
var feedPart = regexp.MustCompile(`\s*[,;()]\s*`)

// saidOutput is the output that the words of a row's description or remarks
// name, where its table has no column for outputs, amplifiers or lines: with
// words for both or for one of them. Nil if none does, or several.
func (b *builder) saidOutput(r *row) *outlet {
	if r.kind != loudspeakerRow && r.kind != zoneRow || slices.ContainsFunc([]vocabulary.Field{vocabulary.Amplifier, vocabulary.Channel, vocabulary.Circuit}, r.t.has) || r.Class != layout.Device {
		return nil
	}
	var found *outlet
	for _, f := range []vocabulary.Field{vocabulary.Describe, vocabulary.Notes} {
		for s := range r.every(f) {
			for _, feed := range b.feedsIn(s) {
				if found != nil && (found.amp != feed.amp || !slices.Equal(found.channels, feed.channels)) {
					return nil
				}
				found = feed
			}
		}
	}
	return found
}

// feedsIn are the outputs that the words of a cell say something hangs on.
func (b *builder) feedsIn(s seen) []*outlet {
	if !s.had() || len(s.text) > longestSpoken || len(notation.Statuses(s.text)) > 0 {
		return nil // "was on amplifier 2"
	}
	var out []*outlet
	for _, part := range feedPart.Split(s.text, -1) {
		for _, at := range hangsWord.FindAllStringIndex(part, -1) {
			if feed := b.feedIn(s, b.beforeControl(strings.TrimSpace(part[at[1]:]))); feed != nil && countWords(feed.amp) <= 2 {
				out = append(out, feed)
			}
		}
	}
	return out
}

// beforeControl cuts the control that stands between a device and what feeds it off the name of the
// latter: "amplifier A" of "amplifier A via volume control VC1".
func (b *builder) beforeControl(text string) string {
	words := strings.Fields(text)
	for i := 1; i+1 < len(words); i++ {
		if !slices.Contains(viaWords, join.Fold(words[i])) {
			continue
		}
		if behind := strings.Join(words[i+1:], " "); vocabulary.DeviceIn(behind) == vocabulary.ControlDevice || b.namesControl(behind) {
			return strings.Join(words[:i], " ")
		}
	}
	return text
}

// remarkedOutput is the output that a remark begins with, "Channel 1 - bracket rusty",
// in a row that names its amplifier, in the column amp, and has no other column for
// outputs; nil if none does, or several.
func (b *builder) remarkedOutput(r *row, amp *column) *outlet {
	other := func(c *column) bool { return c != amp }
	if slices.ContainsFunc(r.t.byField[vocabulary.Channel], other) || slices.ContainsFunc(r.t.byField[vocabulary.Circuit], other) || r.Class != layout.Device {
		return nil
	}
	var found *outlet
	for s := range r.every(vocabulary.Notes) {
		head := feedPart.Split(dash.Split(s.text, 2)[0], 2)[0]
		if len(head) > longestOutput || !join.HasWord(join.Channel, head) && !saysOutput.Of(head, 0) {
			continue
		}
		c := b.channelRef(head)
		if !c.ok || c.ref.Amplifier != "" || len(c.ref.Channels) == 0 {
			continue
		}
		if found != nil {
			return nil
		}
		found = &outlet{channels: slices.Clone(c.ref.Channels), at: s, bridged: c.ref.Bridged}
	}
	return found
}

// dash stands between the parts of a remark.
var dash = regexp.MustCompile(`\s+[–—-]\s+`)
