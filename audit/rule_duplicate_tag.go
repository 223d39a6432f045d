package audit

import (
	_ "embed"
	"fmt"
	"slices"
	"strings"
)

//go:embed doc/duplicate-tag.md
var duplicateTagDoc string

// duplicateTag finds tags that two loudspeakers share.
var duplicateTag = &Rule{
	Name:  "duplicate-tag",
	Title: "two loudspeakers have the same tag",
	Why:   "What is joined by the tag goes wrong, a loudspeaker may be counted twice or not at all, and a visit goes to the wrong room.",
	Doc:   duplicateTagDoc,
	Limits: []Limit{
		{Name: "caution", Grade: Caution, Default: 1, Unit: "loudspeakers with one tag", Source: "one number per device: common practice, no source"},
		{Name: "type marks from", Default: 30, Unit: "% of tags repeated", Source: "common practice, no source",
			Note: "where more tags than this repeat, the column holds type marks or numbers that start anew in each zone"},
	},
	Silent: []string{
		"the tag is a type mark or equals the model",
		"the row stands for several loudspeakers",
		"the same device is listed on two sheets with the same values: it is counted once",
		"most tags repeat: the column does not number devices",
	},
	Cautions: []string{cautionPaper},
	OnSite:   "read the tags in both places",
	OfJob:    true,
	Check:    checkDuplicateTag,
}

func checkDuplicateTag(x *Examination) error {
	c := x.circuit
	first := make(map[string]int, len(c.rows)) // tag to its first row
	again := map[string][]int{}                // repeated tags to all their rows
	var order []string                         // repeated tags
	for i := range c.rows {
		r := &c.rows[i]
		if r.part != counts {
			continue
		}
		deviceTags(r, func(tag string) {
			k, met := first[tag]
			switch {
			case !met:
				first[tag] = i
			case len(again[tag]) == 0:
				order = append(order, tag)
				again[tag] = []int{k, i}
			default:
				again[tag] = append(again[tag], i)
			}
		})
	}
	repeated := len(order)
	if len(first) == 0 {
		return nil
	}
	if repeated > 1 && past(100*float64(repeated), x.setting("type marks from")*float64(len(first))) {
		return nil
	}
	if repeated == 0 {
		x.pass(&claim{place: "tags", at: x.Job.Loudspeakers[0].At, measured: Exact(1), unit: "loudspeakers with one tag",
			message: counted(float64(len(first)), "tag") + ", each used once"})
	}
	for _, tag := range order {
		rows := again[tag]
		slices.SortFunc(rows, func(a, b int) int { return c.rows[a].l.At.Compare(c.rows[b].l.At) })
		last := c.rows[rows[len(rows)-1]].l
		var where []string
		for _, i := range rows {
			l := c.rows[i].l
			where = append(where, fmt.Sprintf("%s (%s)", l.At.String(), cmpOr(cmpOr(l.Room.Value, zoneName(l.Zone)), l.Model.Value)))
		}
		cl := &claim{key: "tag\x1f" + tag, place: "loudspeaker " + last.Tag.Value, room: last.Room.Value, zone: zoneName(last.Zone), at: placeOf(last.Tag.Source, last.At),
			pieces: float64(len(rows)), measured: Exact(float64(len(rows))), unit: "loudspeakers with one tag",
			message:   fmt.Sprintf("%s stands for %d loudspeakers: %s", last.Tag.Value, len(rows), strings.Join(where, ", ")),
			equipment: []equipment{{"habit", "repeated tags"}},
			cells: func() []Evidence {
				var cells []Evidence
				for _, i := range rows {
					l := c.rows[i].l
					cells = append(cells, Evidence{At: placeOf(l.Tag.Source, l.At), Written: l.Tag.Written, Role: "tag"})
				}
				return cells
			}}
		x.judge(cl)
	}
	return nil
}

// deviceTags hands the folded tags of single loudspeakers in a row to yield;
// none where its tag is a type mark or stands for a group.
func deviceTags(r *row, yield func(string)) {
	l := r.l
	if len(l.Tags) > 1 {
		if r.count.exact() && int(r.count.Low) == len(l.Tags) {
			for _, t := range l.Tags {
				yield(modelKey(t))
			}
		}
		return
	}
	if tag, ok := singleTag(l); ok {
		yield(tag)
	}
}
