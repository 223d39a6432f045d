package ingest

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
)

// Bills tell in the description of an amplifier what it gives, and in a remark beside it which line each of its outputs feeds:
// "Amplifier A1, two channels of 120 W | 1 | channel 1 to L1, channel 2 to L2".

// A billFeed is the amplifier of such a row and a cell beside its description.
type billFeed struct {
	amp string
	at  seen
}

// keepBillFeeds keeps the cells beside the description of an amplifier until the names of lines are known.
func (b *builder) keepBillFeeds(r *row, amp string) {
	if amp == "" {
		return
	}
	for i := range r.Values {
		v := &r.Values[i]
		if v.How == schedule.Stated && len(v.Text) <= longestSpoken && anyDigit(v.Text) && strings.Contains(v.Text, " ") {
			b.billFeeds = append(b.billFeeds, billFeed{amp, seen{text: v.Text, source: schedule.Source{At: v.At, Written: v.Text, How: schedule.FromTitle}}})
		}
	}
}

// routesOfBills adds what these cells say to the routes of the notes.
func (b *builder) routesOfBills() {
	for _, f := range b.billFeeds {
		var list []route
		for _, part := range segmentEnd.Split(f.at.text, -1) {
			channel, line := b.outputToLine(part)
			if line == "" {
				list = nil
				break
			}
			o := outlet{amp: f.amp, ampAt: f.at, channels: []string{channel}, at: f.at}
			list = append(list, route{line: line, service: service{at: f.at}, outlet: o, named: true})
		}
		b.routes = append(b.routes, list...)
	}
}

// outputToLine parts "channel 1 to L1", "output 2: L2" into an output and a line that loudspeakers hang on; nothing of any other text.
func (b *builder) outputToLine(text string) (channel, line string) {
	words := strings.Fields(routeMark.ReplaceAllString(text, " "))
	if n := len(words); n < 3 || n > 5 || n > 3 && !slices.Contains(leadsToWords, join.Fold(words[2])) && !slices.Contains(feedingWords, join.Fold(words[2])) {
		return "", ""
	}
	if notation.KeyOf(words[0]+" "+words[1]).Kind != notation.KeyChannel {
		return "", ""
	}
	for i := 2; i < min(len(words), 4); i++ { // "to line 1"
		if name := strings.Join(words[i:], " "); b.places.lines[join.Key(name)] {
			return words[1], name
		}
	}
	return "", ""
}
