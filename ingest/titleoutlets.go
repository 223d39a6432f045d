package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Titles of sections that name an amplifier or an output among other things.

// titleParts are what stands between the parts of a title.
var titleParts = regexp.MustCompile(`\s*[,;()\[\]|]\s*|\s+[–—-]\s+|\s*:\s+`)

// titleOutlet reads the section title in force that names an amplifier among
// other things: "Circuit 3 (amplifier 2, output B, 60 W)"; nil if none does.
func (b *builder) titleOutlet(r *row) *outlet {
	for i := len(r.Sections) - 1; i >= 0; i-- {
		f := &r.Sections[i]
		if f.Cell == nil || f.Field == vocabulary.Control || listsOutputs(f.Cell.Text) {
			continue
		}
		s := factSeen(f)
		s.cell = nil
		o := &outlet{at: s, ampAt: s}
		parts := titleParts.Split(strings.TrimSpace(f.Cell.Text), -1)
		line := "" // what the title calls the line of the amplifier, which stands for its output
		for _, part := range parts {
			if part == "" || len(parts) < 2 {
				continue
			}
			if m := wattsIn.FindStringSubmatch(part); m != nil && len(m[0]) == len(part) {
				o.rating = rare(s.saying(m[1]))
				continue
			}
			named := &outlet{}
			name := named.cutRating(part, s) // "amplifier V1 2 x 60 W"
			feed := b.feedIn(s, name)
			if amp := calledAmp(name); feed == nil && amp != "" && figureOfWatts.MatchString(f.Cell.Text) {
				feed = &outlet{amp: amp}
			}
			if words := strings.Fields(name); feed == nil && f.Field == vocabulary.Circuit && len(words) == 2 && notation.SpeaksOfAmplifier(words[0]) && shortTag.MatchString(words[1]) {
				feed = &outlet{amp: ownCode(name)} // "Line 2: amplifier VS2"
			}
			if feed == nil && f.Field == vocabulary.Channel && layout.CallsAmplifier(part) {
				feed = &outlet{amp: tidy(part)}
			}
			if out := ratingInText(part, notation.Auto); feed == nil && len(out) == 1 && out[0].Channels > 0 { // "- 1 output of 60 W"
				o.ampRated = rare(s.saying(itoa(out[0].Channels) + " x " + plain(out[0].W) + " W"))
				continue
			}
			if feed == nil || notation.KeyOf(name).Kind == notation.KeyLine {
				if feed != nil && line == "" && (f.Field == vocabulary.Amplifier || anyDigit(name) && !r.t.titlesNameOutputs()) {
					line = tidy(name) // "Line 2 - Amplifier 2"
				}
				continue
			}
			if feed.amp != "" && o.amp == "" {
				o.amp = feed.amp
			}
			if len(feed.channels) > 0 && len(o.channels) == 0 {
				o.channels, o.bridged = feed.channels, feed.bridged
			}
			switch {
			case !named.rating.seen().had():
			case len(feed.channels) > 0:
				o.rating = named.rating
			default:
				o.ampRated = named.rating
			}
		}
		if o.amp != "" {
			if ch := r.say(vocabulary.Channel); len(o.channels) == 0 && ch.had() && ch.source.At != s.source.At { // "Channel 2" below "Amplifier 1 - 2 x 120 W"
				amp := s
				amp.text = o.amp
				inner := &outlet{}
				if b.readChannel(inner, ch, amp); inner.amp == "" || b.sameAmp(inner.amp, o.amp) {
					o.channels, o.at, o.bridged = inner.channels, inner.at, inner.bridged
				}
			}
			if inner := innermostLine(r.Sections[i+1:]); len(o.channels) == 0 && line == "" {
				line = inner
			}
			if len(o.channels) == 0 && line != "" && !b.shareOutput(o.amp) {
				o.channels = []string{line}
				if !o.ampRated.seen().had() { // it stands behind the amplifier, which may have several lines
					o.ampRated, o.rating = o.rating, rarely{}
				}
			}
			return o
		}
	}
	return nil
}

// innermostLine is the line that the innermost of some titles names, "" if none does: "Line A" below "Amp 2 (2 x 120 W)".
func innermostLine(titles []layout.Fact) string {
	for i := len(titles) - 1; i >= 0; i-- {
		if f := &titles[i]; f.Field == vocabulary.Circuit && f.Key == "" && notation.KeyOf(f.Text).Kind == notation.KeyLine {
			return tidy(f.Text)
		}
	}
	return ""
}

// calledAmp is what a part of a title calls an amplifier by one word behind that for it:
// "amplifier left"; "" if it is anything else.
func calledAmp(part string) string {
	words := strings.Fields(part)
	if len(words) != 2 || anyDigit(part) || !notation.SpeaksOfAmplifier(words[0]) {
		return ""
	}
	if ref, err := notation.ParseChannel(part); err != nil || ref.Amplifier != words[1] || len(ref.Channels) > 0 {
		return ""
	}
	return words[1]
}

// listsOutputs reports whether a title names two outputs or more by their numbers, each with what it feeds
// behind, "Amplifier V1: output 1 hall, output 2 yard": it is of none alone.
func listsOutputs(title string) bool {
	if !strings.ContainsAny(title, ",;") || len(title) > longestSpoken {
		return false
	}
	n := 0
	for _, part := range titleParts.Split(title, -1) {
		words := strings.Fields(part)
		if len(words) > 2 && saysOutput.Of(words[0], 0) && channelID(words[1]) != "" && len(words[1]) <= 2 {
			n++
		}
	}
	return n > 1
}

// titlesNameOutputs reports whether a section title of the table names an output by a word for it: then
// the line of another, "Circuit 3 (amplifier 2, 120 W)", is not called like its output.
func (t *table) titlesNameOutputs() bool {
	if t.titledOutputs != nil {
		return *t.titledOutputs
	}
	named := false
	t.titledOutputs = &named
	last := schedule.Ref{}
	for _, r := range t.rows {
		for i := range r.Sections {
			f := &r.Sections[i]
			if f.Cell == nil || f.At == last || named {
				continue
			}
			last = f.At
			named = slices.ContainsFunc(titleParts.Split(f.Cell.Text, -1), func(part string) bool { return notation.KeyOf(part).Kind == notation.KeyChannel })
		}
	}
	return named
}
