package layout

import (
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/vocabulary"
)

// Bills may tell below an item where its pieces are: "1.1 | ceiling loudspeaker, 3 W | 14" above "Hall | 8" and
// "Shop | 6". The rows below are the loudspeakers, the item's own count is their sum.

// placesOfItems makes such rows of a table what the item above them describes.
func placesOfItems(t *Table) {
	describe, count := columnOf(t, vocabulary.Describe), columnOf(t, vocabulary.Quantity)
	place := columnOf(t, vocabulary.Room)
	if place < 0 {
		place = columnOf(t, vocabulary.Notes)
	}
	if describe < 0 || count < 0 || place < 0 || t.Matrix {
		return
	}
	var parts [][]int // the records of each item, itself first
	below := map[int]bool{}
	for i := range t.Records {
		if !describesPieces(t, i, describe, count) || t.Records[i].Values[place].Text != "" { // who says where it is stands beside the rows below
			continue
		}
		list, sum := []int{i}, 0.0
		for j := i + 1; j < len(t.Records) && isPart(&t.Records[j], describe, count, place); j++ {
			n, _ := factor(t.Records[j].Values[count].Text)
			sum += n
			list = append(list, j)
		}
		if all, _ := factor(t.Records[i].Values[count].Text); len(list) > 1 && sum == all {
			parts = append(parts, list)
			for _, j := range list[1:] {
				below[j] = true
			}
		}
	}
	if len(parts) == 0 {
		return
	}
	if t.Columns[place].Field == vocabulary.Notes {
		for i := range t.Records {
			if t.Records[i].Class == Device && t.Records[i].Values[place].Text != "" && !below[i] {
				return // remarks of other rows
			}
		}
		t.Columns[place].Field, t.Columns[place].Evidence = vocabulary.Room, t.Columns[place].Evidence+"; it says where the pieces of the items are"
	}
	for _, list := range parts {
		item := &t.Records[list[0]]
		for _, j := range list[1:] {
			r := &t.Records[j]
			r.Class, r.Reason = Device, ""
			v := item.Values[describe]
			v.How, v.Because = schedule.CarriedDown, "the item above"
			r.Values[describe] = v
		}
		item.Class, item.Reason = Total, "the sum of the rows below"
	}
}

// describesPieces reports whether a record is a loudspeaker with its count.
func describesPieces(t *Table, i, describe, count int) bool {
	r := &t.Records[i]
	n, ok := factor(r.Values[count].Text)
	return r.Class == Device && ok && n >= 1 && r.Values[describe].How == schedule.Stated && vocabulary.DeviceIn(r.Values[describe].Text) == vocabulary.LoudspeakerDevice
}

// isPart reports whether a record says nothing but a place and a count.
func isPart(r *Record, describe, count, place int) bool {
	if _, ok := factor(r.Values[count].Text); !ok || r.Values[describe].Text != "" && r.Values[describe].How == schedule.Stated || lookText(oneLine(r.Values[place].Text))&lookWords == 0 {
		return false
	}
	others := 0
	for j := range r.Values {
		if j != count && j != place && j != describe && r.Values[j].Text != "" && r.Values[j].How == schedule.Stated {
			others++
		}
	}
	return others == 0 && (r.Class == Device || r.Class == NoDevice || r.Class == Unclear)
}

// columnOf is the first column of a field, -1 if there is none.
func columnOf(t *Table, f vocabulary.Field) int {
	return slices.IndexFunc(t.Columns, func(c Column) bool { return c.Field == f })
}
