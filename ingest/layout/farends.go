package layout

import (
	"regexp"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/vocabulary"
)

// A cable list may say at the far end of each cable what hangs there: "Palm
// house (6 x 6W)", "Fern house, 4 x 6 W via VC1 30W".

// reFarEnd parts such a text into the place and what hangs there.
var reFarEnd = regexp.MustCompile(`^(\p{L}.*?)[\s,;:–-]*(?:[(\[]\s*|[,;:–-]\s+|\s)(\d{1,3}\s*(?:\p{L}{1,5}\.?|[x×*])?\s+?\S.*?|\d{1,3}\s*[x×*]\s*\S.*?)\s*[)\]]?$`)

// A farEnd is such a text taken apart.
type farEnd struct {
	place, count, watts, control string
}

func farEndOf(text string) (e farEnd, ok bool) {
	m := reFarEnd.FindStringSubmatch(oneLine(text))
	if m == nil || len(text) > 120 {
		return e, false
	}
	control, rest := cutControl(m[2])
	if len(groupsOf(rest)) > 1 {
		return e, false
	}
	p := phraseOf(rest)
	e = farEnd{place: m[1], count: p.count, watts: p.set, control: control}
	if e.watts == "" {
		e.watts = p.watts
	}
	return e, e.count != "" && e.watts != "" && (p.device == vocabulary.LoudspeakerDevice || p.device == vocabulary.NoDevice)
}

// farEnds gives a list of cables the columns that its far ends fill, where most
// of them say what hangs there.
func farEnds(t *Table) {
	if t.Kind != Cables {
		return
	}
	to, found := -1, map[int]farEnd{}
	for j, c := range t.Columns {
		switch c.Field {
		case vocabulary.Quantity, vocabulary.Tap:
			return
		case vocabulary.To:
			to = j
		}
	}
	if to < 0 {
		return
	}
	rows := 0
	for i := range t.Records {
		if r := &t.Records[i]; r.Class == Device && r.Values[to].Text != "" {
			rows++
			if e, ok := farEndOf(r.Values[to].Text); ok {
				found[i] = e
			}
		}
	}
	if len(found) < 2 || 2*len(found) < rows {
		return
	}
	made := newPhraseColumns(t, to)
	for i := range t.Records {
		e, ok := found[i]
		if !ok {
			continue
		}
		one := phraseRow{Record: t.Records[i]}
		made.put(&one, vocabulary.Quantity, e.count)
		made.put(&one, vocabulary.Tap, e.watts)
		made.put(&one, vocabulary.Control, e.control)
		if !anyDigit(e.place) {
			made.put(&one, vocabulary.Room, e.place)
		}
		v := &one.Values[to]
		v.Text, v.Cell, v.How, v.Because = e.place, nil, schedule.Stated, "before what hangs there"
		t.Records[i] = one.Record
	}
	t.padRecords()
}
