package ingest

import (
	"regexp"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Rows of tables that are sentences about amplifiers, not devices.

// sentenceRows takes rows of a list of devices for what they are where they
// are sentences about an amplifier: "Amp EB2 | way 1 40 W | way 2 60 W".
func (b *builder) sentenceRows() {
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.Class == layout.Device && r.out == "" && statesOnly(r) {
				r.out, r.reason = schedule.NoteRow, "names and powers, and no device"
				for i := range r.Values {
					if v := &r.Values[i]; v.Text != "" && v.How == schedule.Stated {
						b.spoken = append(b.spoken, spoken{at: v.At, text: v.Text})
					}
				}
				continue
			}
			if r.out == "" && r.kind == amplifierRow && b.billedAmplifier(r) {
				continue
			}
			if r.out != "" || r.kind == channelRow || r.kind == amplifierRow && t.kind != layout.Loudspeakers {
				continue
			}
			if tap := r.own(vocabulary.Tap); tap.had() {
				if p, err := notation.ParseTap(tap.text, notation.Auto); err == nil && !p.Doubts.Has(notation.SplitRead) {
					continue
				}
			}
			if _, first := r.stated(); !speaksOfAmplifier.Of(first, 0) {
				continue
			}
			var cells []spoken
			for i := range r.Values {
				if v := &r.Values[i]; v.Text != "" && v.How == schedule.Stated {
					cells = append(cells, spoken{at: v.At, text: v.Text})
				}
			}
			if listsOutput(r) {
				continue
			}
			list := saidIn(cells, b.opts.watch)
			if len(list) > 0 && list[0].Worded && list[0].Name != "" && strings.Contains(cells[0].text, list[0].Name) && (list[0].W > 0 || list[0].TotalW > 0 || len(list[0].Ways) > 0) {
				b.said = append(b.said, list...)
				b.keepBillFeeds(r, list[0].Name)
				r.out, r.reason = schedule.NoteRow, "says what an amplifier gives"
			}
		}
	}
}

// listsOutput reports whether a row lists an output of the amplifier that it names, with what it
// feeds or carries: "AMP 1 (2-channel, 250 W/ch) | A | Bowl east | 220".
func listsOutput(r *row) bool {
	return r.own(vocabulary.Amplifier).col != nil && r.own(vocabulary.Channel).had() &&
		(r.zoneText().had() || r.own(vocabulary.Room).had() || r.own(vocabulary.Load).had())
}

// statement is a name with a power: "POT-1: 30 W", "L2 = 2 x 60 W".
var statement = regexp.MustCompile(`(?i)^\s*\pL.{0,30}?\s*[:=]\s*(?:\d+\s*[x×]\s*)?\d+(?:[.,]\d+)?\s*k?w\b`)

// statesOnly reports whether all cells of a row are such statements.
func statesOnly(r *row) bool {
	n := 0
	for i := range r.Values {
		if v := &r.Values[i]; v.Text != "" && v.How == schedule.Stated {
			if !strings.ContainsAny(v.Text, ":=") || !statement.MatchString(v.Text) {
				return false
			}
			n++
		}
	}
	return n > 0
}

// billedAmplifier takes a row of a bill whose description says what an
// amplifier gives, "Power amplifier, two outputs of 120 W", as that sentence,
// if no column names the amplifier.
func (b *builder) billedAmplifier(r *row) bool {
	for _, f := range []vocabulary.Field{vocabulary.Amplifier, vocabulary.Tag, vocabulary.Model, vocabulary.ChannelWatts, vocabulary.FrameWatts, vocabulary.Channel} {
		if r.own(f).had() {
			return false
		}
	}
	d := r.own(vocabulary.Describe)
	if n, _ := b.pieces(r.own(vocabulary.Quantity)); n.Had() && n.High > 1 {
		return false
	}
	list := sentence(d.text, d.source.At)
	if !d.had() || len(list) != 1 || !list[0].Worded || list[0].W == 0 || list[0].Outputs < 2 && len(list[0].Ways) == 0 {
		return false
	}
	b.said = append(b.said, list...)
	b.keepBillFeeds(r, list[0].Name)
	r.out, r.reason = schedule.NoteRow, "says what an amplifier gives"
	return true
}
