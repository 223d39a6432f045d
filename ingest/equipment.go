package ingest

import (
	"regexp"
	"slices"
	"strings"
	"unicode"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Lists of equipment say what they say of an amplifier or a control in any of
// their columns: its name in a column of kinds ("Amplifier 2"), its rating
// among remarks ("2 x 120 W, in the rack"), the line that it feeds beside its
// place ("rack, line 2"). A name is one that rows of other things use.

// textFields are the fields of cells that hold words, in the order in which
// they are asked for the name of a piece of equipment.
var textFields = []vocabulary.Field{vocabulary.Kind, vocabulary.Describe, vocabulary.Item, vocabulary.Model, vocabulary.ControlModel, vocabulary.Notes, vocabulary.Tag}

// gatherFeeders notes what amplifiers a row of something else names.
func (b *builder) gatherFeeders(r *row) {
	for _, f := range []vocabulary.Field{vocabulary.Amplifier, vocabulary.Channel, vocabulary.Circuit, vocabulary.From, vocabulary.To} {
		s := r.say(f)
		if !s.had() || f == vocabulary.To && r.own(vocabulary.From).had() {
			continue
		}
		b.dir.feederKeys[s.key()] = true
		if f == vocabulary.Amplifier || strings.ContainsFunc(s.text, unicode.IsLetter) {
			b.dir.feeders[ampIdentity(s.text)] = true
		}
		if c := b.channelRef(s.text); c.ok && c.ref.Amplifier != "" {
			b.dir.feeders[ampIdentity(c.ref.Amplifier)] = true
		}
	}
	delete(b.dir.feeders, "")
}

// longestAmpName is the most words that the name of an amplifier has in a text.
const longestAmpName = 3

// feederIn is the name of an amplifier that rows use, in a text: all of it, or
// the words "Amplifier 2" or the code "M1" of "Booster, 60 W (M1)".
func (b *builder) feederIn(text string) string {
	if text == "" || len(b.dir.feeders) == 0 {
		return ""
	}
	named := func(s string) bool {
		return strings.ContainsFunc(s, unicode.IsLetter) && b.dir.feeders[ampIdentity(s)]
	}
	if named(text) {
		return text
	}
	words := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(" ,;:()–=\"“”„«»", r) })
	for n := 1; n <= min(longestAmpName, len(words)); n++ {
		for i := 0; i+n <= len(words); i++ {
			run := strings.Join(words[i:i+n], " ")
			if i+n < len(words) && n > 1 && countsWhat(words[i+n]) {
				continue // "amplifier 3 x 60 W"
			}
			id := join.Parse(join.Amplifier, run)
			if n > 1 && !join.HasWord(join.Amplifier, run) || n == 1 && !anyDigit(run) && strings.ToUpper(run) != run {
				continue // "main" is no amplifier because one is called so
			}
			if named(run) && (n > 1 || id.Number == "" || id.Title != "" || b.dir.ampRefs[join.Key(run)]) {
				return run
			}
		}
	}
	return ""
}

// countsWhat reports whether a word behind a figure is what the figure counts.
func countsWhat(word string) bool {
	folded := join.Fold(word)
	return strings.HasPrefix(folded, "x") && strings.Trim(folded, "x0123456789w") == "" || folded == "×" || folded == "*" || outputWords.in(folded) || join.HasWord(join.Zone, word) || join.HasWord(join.Channel, word)
}

// equipmentName is the name of an amplifier that rows use, in the words of a
// row of equipment.
func (b *builder) equipmentName(r *row) seen {
	for _, f := range textFields {
		if s := r.own(f); s.had() {
			if name := b.feederIn(s.text); name != "" {
				s.text = name
				return s
			}
		}
	}
	return seen{}
}

// titledOutputs gives a list of outputs that names no amplifier the one that its
// title names and other rows know: "Rack Z1" above outputs 1 to 4, where
// loudspeakers hang on Z1.3.
func (b *builder) titledOutputs() {
	for _, t := range b.tables {
		if t.kind != layout.Channels || t.has(vocabulary.Amplifier) || t.title(vocabulary.Amplifier).had() || slices.ContainsFunc(t.rows, func(r *row) bool {
			c := b.channelRef(r.own(vocabulary.Channel).text)
			return c.ok && c.ref.Amplifier != ""
		}) {
			continue
		}
		for _, f := range t.titles {
			if name := b.feederIn(f.Text); name != "" {
				t.titles = append(slices.Clip(t.titles), layout.Fact{Field: vocabulary.Amplifier, Text: name, At: f.At})
				break
			}
		}
	}
}

// linesFed makes rows of outputs of amplifiers without a name that say which
// lines they feed: "Amplifier 60 W | Rack, line 1".
func (b *builder) linesFed() {
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.out != "" || r.kind != amplifierRow || r.own(vocabulary.Amplifier).had() || r.own(vocabulary.Channel).had() ||
				b.dir.feeders[ampIdentity(r.own(vocabulary.Tag).text)] || b.equipmentName(r).had() {
				continue
			}
			for _, f := range []vocabulary.Field{vocabulary.Circuit, vocabulary.Room, vocabulary.Notes, vocabulary.Describe, vocabulary.Zone} {
				s := r.own(f)
				if lines := b.linesIn(s.text); len(lines) > 0 {
					r.kind = channelRow
					r.outlet = &outlet{channels: lines, at: s}
					break
				}
			}
		}
	}
}

// linesIn are the lines or outputs that rows name among the parts of a text,
// each with a word for a line in front: "rack, lines 1 and 2".
func (b *builder) linesIn(text string) []string {
	var out []string
	for _, part := range listMarks.Split(text, -1) {
		for _, name := range listWords.Split(part, -1) {
			name = strings.Trim(name, " .:()")
			words := strings.Fields(name)
			if len(words) == 0 {
				continue
			}
			last := words[len(words)-1]
			if len(out) > 0 && len(words) == 1 && b.places.lines[join.Key(name)] {
				out = append(out, name)
				continue
			}
			kind := notation.KeyOf(name).Kind
			if kind != notation.KeyLine && kind != notation.KeyChannel {
				continue
			}
			switch {
			case b.places.lines[join.Key(name)]:
				out = append(out, name)
			case len(words) == 2 && b.places.lines[join.Key(last)]:
				out = append(out, last)
			}
		}
	}
	return out
}

// ratingFields are the fields of cells in which a row of equipment may state a
// rating though no column is one of ratings.
var ratingFields = []vocabulary.Field{vocabulary.Tap, vocabulary.TotalWatts, vocabulary.ChannelCount, vocabulary.Describe, vocabulary.Kind, vocabulary.Item,
	vocabulary.Model, vocabulary.Notes, vocabulary.Quantity, vocabulary.Unknown}

// ratingInRow is the rating of an amplifier that its row states outside the
// columns for it: a cell that is a rating, else a sentence about it.
func (b *builder) ratingInRow(r *row) ([]notation.RatedOutput, seen) {
	for _, f := range ratingFields {
		for _, c := range r.t.byField[f] {
			s := r.at(c)
			if f == vocabulary.Model && timesBare.MatchString(s.text) {
				text := s.text + " W"
				b.take(s, "channel rating", text, schedule.LikelierReading, "a model of an amplifier: outputs and their watts")
				s.source.How, s.source.Because = schedule.FromModelName, "outputs and their watts"
				return ratingInText(text, notation.Auto), s
			}
			if !s.had() || !strings.ContainsAny(s.text, "wW") && (s.unit() != "w" || f != vocabulary.Tap) {
				continue
			}
			if f == vocabulary.Tap {
				if out, s := b.rating(s); len(out) > 0 {
					b.take(s, "channel rating", "the amplifier’s rating", schedule.LikelierReading, "an amplifier has no tap")
					return out, s
				}
				continue
			}
			text, style := b.readable(&s, notDate)
			if out := ratingInText(b.withoutFeeder(text), style); len(out) > 0 {
				s.source.How, s.source.Because = schedule.Stated, "in the description"
				return out, s
			}
		}
	}
	return nil, seen{}
}

// withoutFeeder takes the name of an amplifier that rows use out of the parts of a text, where it has a part
// for itself: "Amplifier, 120 W" of "Amplifier, Amp 1, 120 W".
func (b *builder) withoutFeeder(text string) string {
	parts := strings.Split(text, ",")
	if len(parts) < 3 {
		return text
	}
	kept := slices.DeleteFunc(parts, func(part string) bool {
		part = strings.TrimSpace(part)
		return anyDigit(part) && b.dir.feeders[ampIdentity(part)] && len(notation.PowersIn(part, notation.Auto)) == 0
	})
	if len(kept) == 0 {
		return text
	}
	return strings.Join(kept, ",")
}

// timesBare is a number of outputs and the watts of each without their unit: "2X60".
var timesBare = regexp.MustCompile(`^\d{1,2}\s*[xX×]\s*[2-9]\d\d?$|^\d{1,2}\s*[xX×]\s*1\d\d$`)

// ratingInText is the one rating that a description of an amplifier states.
func ratingInText(text string, style notation.Style) []notation.RatedOutput {
	if rating, err := notation.ParseRating(text, style); err == nil {
		return rating.Outputs
	}
	list, err := notation.ParseRatingSentence(text, style)
	if err != nil || len(list) != 1 || list[0].W == 0 || len(list[0].Ways) > 0 {
		return nil
	}
	s := &list[0]
	return []notation.RatedOutput{{Channels: s.Outputs, W: s.W, PerChannel: s.PerOutput, AtV: slices.Clone(s.AtV)}}
}
