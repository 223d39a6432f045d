package layout

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/vocabulary"
)

// taggedLists takes apart the cells of a table without other taps that list
// loudspeakers with their watts, "D1 6 W + D2 3 W" under "Loudspeakers" or "Loudspeakers and taps": a row for each.
func taggedLists(t *Table) {
	if t.Kind == Cables || t.Matrix {
		return
	}
	col, columns := -1, 0
	for j := range t.Columns {
		if c := &t.Columns[j]; feeders[c.Field] || c.Field == vocabulary.Control {
			continue // "A1 60 W" under "Amp" is an amplifier
		}
		lists, rows, items := 0, 0, 0
		for i := range t.Records {
			if r := &t.Records[i]; r.Class == Device && r.Values[j].Text != "" {
				rows++
				if list := taggedWith(r.Values[j].Text); list != nil {
					lists++
					items += len(list)
				}
			}
		}
		if lists > 0 && items >= 2 && 10*lists >= 7*rows {
			col = j
			columns++
		}
	}
	if columns != 1 {
		return
	}
	for j := range t.Columns {
		if f := t.Columns[j].Field; j != col && (f == vocabulary.Tap || f == vocabulary.TotalWatts) {
			return
		}
	}
	of := &t.Columns[col]
	of.Field, of.RunnerUp, of.Confidence, of.Evidence = vocabulary.Tag, vocabulary.Unknown, 0.8, "each cell lists tags with their watts"
	for j := range t.Columns {
		if j != col && t.Columns[j].Field == vocabulary.Tag {
			t.Columns[j].Field = vocabulary.Unknown
		}
	}
	t.Columns = append(t.Columns, Column{At: of.At, Header: of.Header, Field: vocabulary.Tap, Confidence: 0.8, Evidence: of.Evidence})
	t.Columns = append(t.Columns, Column{At: of.At, Header: of.Header, Field: vocabulary.Notes, Confidence: 0.8, Evidence: "behind the watts"})
	t.Kind, t.Matrix = Loudspeakers, true
	tap, notes := len(t.Columns)-2, len(t.Columns)-1
	remarks := false
	var out []Record
	for _, r := range t.Records {
		r.Values = pad(r.Values, len(t.Columns))
		list := taggedWith(r.Values[col].Text)
		if r.Class != Device || list == nil {
			out = append(out, r)
			continue
		}
		from := r.Values[col]
		for _, x := range list {
			one := r
			one.Values = slices.Clone(r.Values)
			one.Values[col].Text, one.Values[col].Because = x.tag, "in the cell"
			one.Values[tap] = Value{Cell: from.Cell, At: from.At, Text: x.watts, How: schedule.Stated, Because: "in the cell"}
			if x.remark != "" {
				one.Values[notes] = Value{Cell: from.Cell, At: from.At, Text: x.remark, How: schedule.Stated, Because: "in the cell"}
				remarks = true
			}
			out = append(out, one)
		}
	}
	t.Records = out
	if !remarks {
		t.Columns = t.Columns[:notes]
		for i := range t.Records {
			t.Records[i].Values = t.Records[i].Values[:notes]
		}
	}
}

// reTaggedLine is what parts loudspeakers with remarks of their own.
var reTaggedLine = regexp.MustCompile(`\s*[;\n]\s*`)

// taggedWith are the loudspeakers of a text and what it says behind the watts of each: "D14 3 W, taken down" is D14
// and "taken down". It is nil for other texts, and where a remark may be of one loudspeaker or of several.
func taggedWith(t string) []tagged {
	if list := taggedIn(t); list != nil || !anyDigit(t) || len(t) > maxText {
		return list
	}
	var out []tagged
	for _, part := range reTaggedLine.Split(strings.TrimSpace(t), -1) {
		head, rest := cutRemark(part)
		list := taggedIn(head)
		if len(list) == 0 || len(list) > 1 && rest != "" {
			return nil
		}
		out = append(out, list...)
		out[len(out)-1].remark = rest
	}
	return out
}

// cutRemark cuts what stands behind a mark or in brackets off a text that ends in no figure, "LS3 6 W (removed)".
func cutRemark(t string) (head, remark string) {
	last := strings.LastIndexAny(t, "0123456789½")
	mark := strings.IndexAny(t[last+1:], ",(-–")
	if mark < 0 {
		return t, ""
	}
	head, remark = strings.TrimSpace(t[:last+1+mark]), strings.Trim(t[last+1+mark:], " ,-–")
	if strings.HasPrefix(remark, "(") && strings.HasSuffix(remark, ")") {
		remark = remark[1 : len(remark)-1]
	}
	return head, remark
}
