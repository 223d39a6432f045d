package layout

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// A row for each line or group may name the rooms on it in one cell, a line of text each, with how many loudspeakers at
// how many watts: "Upper foyer: 5 x 6 W" over "Lower foyer: 6 x 6 W". It becomes a row for each room.

var (
	rePlacedParts = regexp.MustCompile(`\s*[\n\r;]+\s*`)
	// rePlacedGroup is a place, a mark and a group: "Dressing room 1: 2 x 3 W", "Foyer - 6 @ 3".
	rePlacedGroup = regexp.MustCompile(`(?i)^[•·*-]?\s*(\pL[^:=;]{1,50}?)\s*(?:[:=]|\s[-–—]\s|\t)\s*(\d{1,3})\s*[x×*@]\s*(\d{1,3}(?:[.,]\d{1,2})?)\s*(?:w(?:atts?)?\.?)?$`)
	// rePlacedBare is one with nothing but a space between, where the place has no figure: "Foyer 6 x 3 W".
	rePlacedBare = regexp.MustCompile(`(?i)^[•·*-]?\s*(\pL[^:=;\d]{1,50}?)\s+(\d{1,3})\s*[x×*@]\s*(\d{1,3}(?:[.,]\d{1,2})?)\s*w(?:atts?)?\.?$`)
	// rePlacedBehind is a group with its place behind it: "2 x 3 W Dressing room 1", "6 x 3 W (foyer)".
	rePlacedBehind = regexp.MustCompile(`(?i)^[•·*-]?\s*(\d{1,3})\s*[x×*@]\s*(\d{1,3}(?:[.,]\d{1,2})?)\s*w(?:atts?)?\.?[\s:,(–-]+(\pL[^:=;()]{1,50}?)\)?$`)
)

// A placedGroup is a number of loudspeakers at a tap in a place.
type placedGroup struct{ place, count, watts string }

// placedGroupsOf takes a cell apart into its groups, nil where a part of it is none. A word for a kind of
// loudspeaker is no place.
func placedGroupsOf(t string) []placedGroup {
	if len(t) > 1000 || !anyDigit(t) {
		return nil
	}
	return groupsPlaced.Of(t, 0)
}

// groupsPlaced remembers the groups in cells.
var groupsPlaced = remember.New(4096, func(t string, _ int) []placedGroup { return readPlacedGroups(t) })

func readPlacedGroups(t string) []placedGroup {
	var out []placedGroup
	for _, part := range rePlacedParts.Split(strings.TrimSpace(t), -1) {
		part = strings.TrimSpace(part)
		g := placedGroup{}
		if m := rePlacedGroup.FindStringSubmatch(part); m != nil {
			g = placedGroup{m[1], m[2], m[3]}
		} else if m := rePlacedBare.FindStringSubmatch(part); m != nil {
			g = placedGroup{m[1], m[2], m[3]}
		} else if m := rePlacedBehind.FindStringSubmatch(part); m != nil {
			g = placedGroup{m[3], m[1], m[2]}
		}
		if g.place == "" || isTotalText(g.place) || vocabulary.DeviceIn(g.place) != vocabulary.NoDevice || classWithin(g.place)&(classDevice|classMounting) != 0 {
			return nil
		}
		switch sectionField(g.place) {
		case vocabulary.Amplifier, vocabulary.Channel, vocabulary.Circuit, vocabulary.Control:
			return nil
		}
		out = append(out, g)
	}
	return out
}

// placedGroupsColumn finds the column of such cells, -1 if there is none: all rows of devices that fill it have groups,
// and one has several.
func placedGroupsColumn(t *Table) int {
	for j := range t.Columns {
		rows, several := 0, false
		for i := range t.Records {
			v := &t.Records[i].Values[j]
			if t.Records[i].Class != Device || v.Text == "" {
				continue
			}
			groups := placedGroupsOf(v.Text)
			if groups == nil {
				rows = 0
				break
			}
			rows++
			several = several || len(groups) > 1
		}
		if several && rows >= 2 {
			return j
		}
	}
	return -1
}

// placedGroups makes of each row a record for each room that such a cell names.
func placedGroups(t *Table) {
	if t.Kind == Cables || t.Kind == Measurements || t.Matrix || slices.ContainsFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Room }) {
		return
	}
	col := placedGroupsColumn(t)
	if col < 0 {
		return
	}
	of, n := t.Columns[col], len(t.Columns)
	zonesByName(t, col)
	t.Kind, t.Matrix = Loudspeakers, true
	t.Columns[col].Field, t.Columns[col].RunnerUp = vocabulary.Describe, vocabulary.Unknown
	for _, f := range []vocabulary.Field{vocabulary.Room, vocabulary.Quantity, vocabulary.Tap} {
		c := Column{At: of.At, Header: of.Header, Field: f, Confidence: 0.8, Evidence: "rooms with counts and watts under the header “" + of.Header + "”"}
		if f == vocabulary.Tap {
			c.Unit = "W"
		}
		t.Columns = append(t.Columns, c)
	}
	var out []phraseRow
	for i := range t.Records {
		r := t.Records[i]
		r.Values = pad(r.Values, len(t.Columns))
		groups := placedGroupsOf(r.Values[col].Text)
		if r.Class != Device && r.Class != Struck && r.Class != Hidden || groups == nil {
			out = append(out, phraseRow{Record: r})
			continue
		}
		for _, g := range groups {
			one := r
			one.Values = slices.Clone(r.Values)
			for j, c := range t.Columns[:n] {
				if rowSums[c.Field] {
					one.Values[j] = Value{At: r.Values[j].At}
				}
			}
			from := r.Values[col]
			for j, text := range []string{g.place, g.count, g.watts} {
				one.Values[n+j] = Value{Cell: from.Cell, At: from.At, Text: text, How: schedule.Stated, Because: "one of the rooms in the cell"}
			}
			out = append(out, phraseRow{Record: one})
		}
		if r.Class == Device {
			out = appendSum(out, t, &r)
		}
	}
	t.Records = t.Records[:0:0]
	for _, r := range out {
		t.Records = append(t.Records, r.Record)
	}
}

// zonesByName takes the names beside the numbers of zones for the zones, and the numbers for those of the rows:
// "G1 | Foyers", "G2 | Offices". groups is the column of the rooms.
func zonesByName(t *Table, groups int) {
	zone := slices.IndexFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Zone })
	if zone < 0 || zone+1 == groups || zone+1 >= len(t.Columns) || !mayBeNames[t.Columns[zone+1].Field] || slices.ContainsFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Item }) {
		return
	}
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class == Device && (!isRoomNumber(r.Values[zone].Text) || lookText(r.Values[zone+1].Text)&lookRoom == 0 || vocabulary.DeviceIn(r.Values[zone+1].Text) != vocabulary.NoDevice) {
			return
		}
	}
	t.Columns[zone].Field, t.Columns[zone].RunnerUp = vocabulary.Item, vocabulary.Unknown
	t.Columns[zone].Evidence += "; the zones are named beside their numbers"
	t.Columns[zone+1].Field, t.Columns[zone+1].RunnerUp = vocabulary.Zone, vocabulary.Unknown
	t.Columns[zone+1].Evidence += "; beside the numbers of zones"
}

// mayBeNames are the fields of a column of names: "Nombre" is a name or a number.
var mayBeNames = [vocabulary.Fields]bool{vocabulary.Describe: true, vocabulary.Quantity: true, vocabulary.Unknown: true}
